"""A region: part of the plane, with holes and islands, in millimetres.

A region is always valid: no ring crosses itself or another, outer rings run counter-clockwise, holes
clockwise, and no polygon is empty. Boundaries are chords; true curves live in `Path` until they are
flattened.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import ArrayLike
from shapely import GeometryType, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.path import Points, frozen_array
from inlayfit.geometry.transform import Transform


@dataclass(frozen=True, slots=True)
class Region:
    """A valid, oriented part of the plane; empty if it has no polygon."""

    shape: MultiPolygon

    def __hash__(self) -> int:
        """By bounds and number of vertices alone.

        What is kept for a region is asked for at every step of a slider; going through 100,000 vertices took
        a third of that step.
        """
        count = int(shapely.get_num_coordinates(self.shape))
        return hash((count, self.bounds)) if count else 0

    @classmethod
    def of(cls, geometry: BaseGeometry) -> Region:
        """The polygons of a valid geometry; lines and points in it have no area and are left out."""
        return cls(shapely.orient_polygons(_polygons(geometry), exterior_cw=False))

    @classmethod
    def each(cls, geometries: Iterable[BaseGeometry]) -> list[Region]:
        """The polygons of each of many valid geometries, quicker than one by one."""
        given = np.array(list(geometries), dtype=object)
        plain = (shapely.get_type_id(given) == GeometryType.POLYGON) & ~shapely.is_empty(given)
        single = shapely.orient_polygons(given[plain], exterior_cw=False)
        given[plain] = shapely.multipolygons(single, indices=np.arange(len(single)))
        several = (shapely.get_type_id(given) == GeometryType.MULTIPOLYGON) & ~shapely.is_empty(given)
        several &= ~plain
        given[several] = shapely.orient_polygons(given[several], exterior_cw=False)
        return [
            cls(shape) if is_done else cls.of(shape)
            for shape, is_done in zip(given, plain | several, strict=True)
        ]

    @classmethod
    def of_ring(cls, outer: ArrayLike, holes: Iterable[ArrayLike] = ()) -> Region:
        """One polygon from (n, 2) points and holes; the rings must not cross."""
        return cls.of(Polygon(np.asarray(outer), [np.asarray(h) for h in holes]))

    @classmethod
    def empty(cls) -> Region:
        """Nothing."""
        return cls(MultiPolygon())

    @property
    def polygons(self) -> tuple[Polygon, ...]:
        """The connected pieces."""
        return tuple(self.shape.geoms)

    @property
    def pieces(self) -> tuple[Region, ...]:
        """The connected pieces, each a region."""
        return tuple(Region.each(self.shape.geoms))

    @property
    def is_empty(self) -> bool:
        """Whether there is nothing."""
        return bool(self.shape.is_empty)

    @property
    def area(self) -> float:
        """Square millimetres."""
        return float(self.shape.area)

    @property
    def perimeter(self) -> float:
        """Length of all rings, holes included."""
        return float(self.shape.length)

    @property
    def hole_count(self) -> int:
        """Holes of all pieces."""
        return sum(len(polygon.interiors) for polygon in self.shape.geoms)

    @property
    def ring_count(self) -> int:
        """Outer rings and holes."""
        return len(self.shape.geoms) + self.hole_count

    @property
    def bounds(self) -> tuple[float, float, float, float]:
        """x0, y0, x1, y1; nan if empty."""
        x0, y0, x1, y1 = self.shape.bounds
        return x0, y0, x1, y1

    @property
    def vertex_count(self) -> int:
        """Vertices of all rings, the first of each counted once."""
        return sum(len(ring) for ring in self.rings())

    def rings(self) -> list[Points]:
        """All rings as (n, 2) points, not repeating the first: outer counter-clockwise, holes clockwise."""
        return [
            frozen_array(np.asarray(ring.coords)[:-1, :2], columns=2)
            for polygon in self.shape.geoms
            for ring in (polygon.exterior, *polygon.interiors)
        ]

    def union(self, other: Region) -> Region:
        """What is in either."""
        return Region.of(self.shape.union(other.shape))

    def minus(self, other: Region) -> Region:
        """What is here and not in the other."""
        return Region.of(self.shape.difference(other.shape))

    def common(self, other: Region) -> Region:
        """What is in both."""
        return Region.of(self.shape.intersection(other.shape))

    def within(self, x0: float, y0: float, x1: float, y1: float) -> Region:
        """What lies in a box. GEOS's quick clip is not used: it can answer with a valid but wrong shape."""
        return Region.of(shapely.intersection(self.shape, shapely.box(x0, y0, x1, y1)))

    def moved(self, transform: Transform) -> Region:
        """The image under an affine map; a mirror image keeps its rings oriented."""
        return Region.of(shapely.transform(self.shape, transform.points))


def _polygons(geometry: BaseGeometry) -> MultiPolygon:
    """All polygons that are not empty, of however deep a collection; a difference may have thousands."""
    if isinstance(geometry, Polygon) and not geometry.is_empty:
        return MultiPolygon([geometry])
    parts = shapely.get_parts(geometry)
    while (shapely.get_type_id(parts) >= GeometryType.MULTIPOINT).any():
        parts = shapely.get_parts(parts)
    kept = (shapely.get_type_id(parts) == GeometryType.POLYGON) & ~shapely.is_empty(parts)
    polygons = shapely.multipolygons(parts[kept])
    assert isinstance(polygons, MultiPolygon)
    return polygons
