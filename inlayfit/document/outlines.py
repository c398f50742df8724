"""Outlines: the closed shapes of a drawing, each with an id, a name, its region and its true contours."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, Tolerance

_SAME_ROW = 0.5


@dataclass(frozen=True, slots=True)
class Outline:
    """One connected shape that can become a pocket or a plug.

    Attributes:
        id: "o1", "o2", … in reading order; the same drawing always gives the same ids.
        name: what the file calls it: an SVG id, a block, a layer; may be empty.
        layer: the layer it lies on.
        region: what it encloses, holes cut out.
        contours: its outer contour first, then its holes, with true curves where they survived.
        drawn_as: its id in its own drawing, where that had to change because another outline has it.
        drawing: path of its own drawing, where that is not the document's.
    """

    id: str
    name: str
    layer: str
    region: Region
    contours: tuple[Path, ...]
    drawn_as: str = ""
    drawing: str = ""

    @property
    def id_there(self) -> str:
        """Its id in the drawing it came from."""
        return self.drawn_as or self.id


def in_reading_order(outlines: Sequence[Outline]) -> tuple[Outline, ...]:
    """Rows from the top, each from the left, numbered; two are in a row if they overlap by half a height."""
    boxes = np.array([o.region.bounds for o in outlines]).reshape(-1, 4)
    from_top = sorted(range(len(outlines)), key=lambda i: (-boxes[i, 3], boxes[i, 0]))
    rows: list[list[int]] = []
    for i in from_top:
        if rows and _in_row(boxes[rows[-1][0]], boxes[i]):
            rows[-1].append(i)
        else:
            rows.append([i])
    order = [i for row in rows for i in sorted(row, key=lambda i: (boxes[i, 0], -boxes[i, 3]))]
    return tuple(replace(outlines[i], id=f"o{number}") for number, i in enumerate(order, 1))


def _in_row(
    first: np.ndarray[tuple[int], np.dtype[np.float64]], box: np.ndarray[tuple[int], np.dtype[np.float64]]
) -> bool:
    shared = min(first[3], box[3]) - max(first[1], box[1])
    return bool(shared >= _SAME_ROW * min(first[3] - first[1], box[3] - box[1]))


def region_of_contours(contours: tuple[Path, ...], tolerance: Tolerance = EXACT) -> Region:
    """The region inside closed contours, flattened within `tolerance.arc_mm`; empty if there is none.

    What lies inside an odd number of contours is the region (the even-odd rule).
    """
    rings = [flatten(path, tolerance.arc_mm) for path in contours if path.closed]
    polygons = [Polygon(ring) for ring in rings if len(ring) >= 3]
    whole = [polygon if shapely.is_valid(polygon) else shapely.make_valid(polygon) for polygon in polygons]
    region: BaseGeometry = shapely.MultiPolygon()
    for polygon in sorted(whole, key=lambda p: -p.area):
        region = shapely.symmetric_difference(region, polygon)
    return Region.of(region)
