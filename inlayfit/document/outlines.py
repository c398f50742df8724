"""The region that an outline's contours enclose, for outlines that come out of a project file.

The contours of one outline are its outer ring and its holes, and of islands in holes again rings; what
lies inside an odd number of them is the region (the even-odd rule).
"""

from __future__ import annotations

import shapely
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, Tolerance


def region_of_contours(contours: tuple[Path, ...], tolerance: Tolerance = EXACT) -> Region:
    """The region inside closed contours, flattened within `tolerance.arc_mm`; empty if there is none."""
    rings = [flatten(path, tolerance.arc_mm) for path in contours if path.closed]
    polygons = [Polygon(ring) for ring in rings if len(ring) >= 3]
    whole = [polygon if shapely.is_valid(polygon) else shapely.make_valid(polygon) for polygon in polygons]
    region: BaseGeometry = shapely.MultiPolygon()
    for polygon in sorted(whole, key=lambda p: -p.area):
        region = shapely.symmetric_difference(region, polygon)
    return Region.of(region)
