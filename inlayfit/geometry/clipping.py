"""What of a region lies in each of many boxes.

Clipping the whole region once a box costs boxes times vertices. Here the boxes are parted by their middles,
the region is clipped to the bounds of each part, and so on: every vertex is looked at about once a level.

GEOS's quick clip to a rectangle is not used: it can answer with a valid but wrong shape.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import GeometryType
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

Shapes = NDArray[Any]
"""Polygons and multipolygons, an object each; none is None, some may be empty."""

_FEW = 8


def clipped(region: Region, boxes: Points) -> Shapes:
    """The part of the region in each box (x0, y0, x1, y1), (n,)."""
    found: Shapes = np.empty(len(boxes), dtype=object)
    _clip(region.shape, boxes, np.arange(len(boxes)), found)
    return found


def _clip(shape: BaseGeometry, boxes: Points, which: NDArray[np.intp], found: Shapes) -> None:
    if len(which) <= _FEW:
        found[which] = polygonal(np.asarray(shapely.intersection(shape, shapely.box(*boxes[which].T))))
        return
    middles = boxes[which, :2] + boxes[which, 2:]
    axis = int(np.ptp(middles, axis=0).argmax())
    order = which[np.argsort(middles[:, axis], kind="stable")]
    for part in (order[: len(order) // 2], order[len(order) // 2 :]):
        x0, y0 = boxes[part, :2].min(axis=0)
        x1, y1 = boxes[part, 2:].max(axis=0)
        (inside,) = polygonal(shapely.intersection(shape, shapely.box([x0], [y0], [x1], [y1])))
        _clip(inside, boxes, part, found)


def polygonal(shapes: Shapes) -> Shapes:
    """The same shapes without the lines and points in them."""
    kinds = shapely.get_type_id(shapes)
    mixed = (kinds != GeometryType.POLYGON) & (kinds != GeometryType.MULTIPOLYGON)
    for i in np.flatnonzero(mixed).tolist():
        shapes[i] = Region.of(shapes[i]).shape
    return shapes
