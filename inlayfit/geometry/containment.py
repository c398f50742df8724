"""Nest areas that do not cross: what is material, what is a hole in it, what is an island in the hole.

Each area lies at a *depth*: in how many others it lies. Even depth is inside, odd is a hole of the smallest
area around it (the even-odd rule, for areas that do not cross). Islands are areas of their own again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Polygon

Indices = NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class Nested:
    """One connected piece.

    Attributes:
        polygon: the piece, its holes cut out.
        outer: number of the area that bounds it.
        holes: numbers of the areas cut out.
        depth: in how many areas it lies; even.
    """

    polygon: Polygon
    outer: int
    holes: tuple[int, ...]
    depth: int


def nest(areas: Sequence[Polygon], units: Sequence[int] | None = None) -> list[Nested]:
    """Nest areas by the even-odd rule.

    Args:
        areas: valid polygons; any two are disjoint, or one lies in the other, or they only touch.
        units: areas of one unit lie side by side and never count as lying in each other; by default each
            area is a unit of its own.

    Returns:
        The pieces in the order of their outer areas.
    """
    if not areas:
        return []
    shapes = np.array(areas, dtype=object)
    unit = np.arange(len(areas)) if units is None else np.asarray(units)
    inner, outer = _pairs_within(shapes, unit)
    depth = np.bincount(inner, minlength=len(shapes))
    parent = _smallest_around(shapes, inner, outer, keep=depth[outer] == depth[inner] - 1)
    holes: dict[int, list[int]] = {}
    for i in np.flatnonzero((depth % 2 == 1) & (parent >= 0)).tolist():
        holes.setdefault(int(parent[i]), []).append(i)
    return [
        Nested(
            _cut(shapes[i], [shapes[h] for h in holes.get(i, [])]), i, tuple(holes.get(i, ())), int(depth[i])
        )
        for i in np.flatnonzero(depth % 2 == 0).tolist()
    ]


def _pairs_within(shapes: NDArray[np.object_], unit: Indices) -> tuple[Indices, Indices]:
    """Numbers (inner, outer) of areas that lie in others."""
    points = shapely.point_on_surface(shapes)
    shapely.prepare(shapes)
    outer, inner = shapely.STRtree(points).query(shapes, predicate="contains_properly")
    apart = unit[inner] != unit[outer]
    inner, outer = inner[apart], outer[apart]
    size = shapely.area(shapes)
    smaller = size[inner] < size[outer]
    return inner[smaller], outer[smaller]


def _smallest_around(
    shapes: NDArray[np.object_], inner: Indices, outer: Indices, *, keep: NDArray[np.bool_]
) -> Indices:
    parent = np.full(len(shapes), -1, dtype=np.int64)
    inner, outer = inner[keep], outer[keep]
    order = np.argsort(-shapely.area(shapes[outer]), kind="stable")  # the smallest is written last
    parent[inner[order]] = outer[order]
    return parent


def _cut(area: Polygon, holes: list[Polygon]) -> Polygon:
    """An area without holes that lie in it."""
    if not holes:
        return area
    if not any(hole.interiors for hole in holes):
        whole = Polygon(area.exterior, [*area.interiors, *(hole.exterior for hole in holes)])
        if shapely.is_valid(whole):
            return whole
    rest = shapely.difference(area, shapely.union_all(holes))
    return rest if isinstance(rest, Polygon) else max(shapely.get_parts(rest), key=shapely.area)
