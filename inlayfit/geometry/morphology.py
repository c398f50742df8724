"""What a disk can reach: erosion, dilation, opening and closing by a disk.

    erode(X, r):  centres of disks of radius r that lie inside X
    dilate(X, r): all that such disks cover when their centres run over X
    opened(X, r): erode, then dilate: the union of all disks of radius r inside X
    closed(X, r): dilate, then erode: the complement of the union of all disks of radius r outside X

(Standard mathematical morphology; see Serra, Image Analysis and Mathematical Morphology, 1982.)

GEOS computes the offsets; the number of chords per quarter turn comes from the arc tolerance, so each
result is within `Tolerance.arc_mm` of the true one for every radius. A slot exactly one disk wide would
vanish from an opening by one rounding error, so the first step uses the radius less
`Tolerance.cutter_slack_mm`, and the second gives back as much as the first took.
"""

from __future__ import annotations

import shapely

from inlayfit.geometry.flatten import quad_segments
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance


def dilate(region: Region, distance: float, tolerance: Tolerance) -> Region:
    """Grow by `distance`, corners rounded; a negative distance erodes."""
    if distance == 0 or region.is_empty:
        return region
    steps = quad_segments(abs(distance), tolerance.arc_mm)
    return Region.of(shapely.buffer(region.shape, distance, quad_segs=steps))


def erode(region: Region, distance: float, tolerance: Tolerance) -> Region:
    """Shrink by `distance`; a negative distance dilates."""
    return dilate(region, -distance, tolerance)


def opened(region: Region, radius: float, tolerance: Tolerance) -> Region:
    """All that a disk of this radius can sweep inside the region; convex corners come out rounded."""
    slack = min(tolerance.cutter_slack_mm, radius / 2)
    shrunk = radius - slack
    return dilate(erode(region, shrunk, tolerance), shrunk, tolerance) if radius > 0 else region


def closed(region: Region, radius: float, tolerance: Tolerance) -> Region:
    """The region with everything filled that a disk outside cannot reach; concave corners rounded."""
    slack = min(tolerance.cutter_slack_mm, radius / 2)
    grown = radius - slack
    return erode(dilate(region, grown, tolerance), grown, tolerance) if radius > 0 else region


def simplified(region: Region, tolerance: Tolerance) -> Region:
    """Leave out points that move the wall by less than `simplify_mm`; unchanged if that breaks it."""
    thinner = shapely.simplify(region.shape, tolerance.simplify_mm, preserve_topology=False)
    if not shapely.is_valid(thinner) or thinner.is_empty:
        return region
    result = Region.of(thinner)
    same_topology = len(result.polygons) == len(region.polygons) and result.hole_count == region.hole_count
    return result if same_topology else region
