"""The area of polygons inside stadiums, in closed form and for many at once.

A stadium is what a disk sweeps on a straight line. Seen from the centre of its first disk, any shape is the
sum over its edges of the triangle between that centre and the edge, those that run clockwise counted
negative. Of such a triangle the stadium keeps the triangle on the part of the edge inside it, and on the
parts outside it the sector of the stadium between the two directions. So the area is

    Σ over edges of ½ p'×q' + F(p') − F(p) + F(q) − F(q'),

p'q' being the part of the edge pq inside, and F the stadium's area between its axis and a direction: from
the axis on the sector of the last disk, ½ r²ψ + ½ Lr sin ψ with ψ the angle at that disk's centre; then the
triangle along its side; then the sector of the first disk. (The same sum for a disk alone is the common way
to the area that a circle and a polygon share; from memory.)
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely

from inlayfit.geometry.clipping import Shapes
from inlayfit.geometry.groups import Numbers, members, starts_of
from inlayfit.geometry.path import Points

_TINY = 1e-300


@dataclass(frozen=True, eq=False, slots=True)
class Edges:
    """The edges of many shapes.

    Attributes:
        starts, ends: their ends, (e, 2), shape after shape.
        counts: how many each shape has, (n,); an empty shape has none.
    """

    starts: Points
    ends: Points
    counts: Numbers

    @classmethod
    def of(cls, shapes: Shapes) -> Edges:
        """Those of polygons and multipolygons, whose outer rings all run the same way round."""
        polygons, owner = shapely.get_parts(shapes, return_index=True)
        rings, of_polygon = shapely.get_rings(polygons, return_index=True)
        points, of_ring = shapely.get_coordinates(rings, return_index=True)
        is_edge = of_ring[1:] == of_ring[:-1]
        whose = owner[of_polygon[of_ring[:-1][is_edge]]]
        return cls(points[:-1][is_edge], points[1:][is_edge], np.bincount(whose, minlength=len(shapes)))

    def chosen(self, which: Numbers) -> tuple[Points, Points, Numbers]:
        """The edges of the shapes with these numbers, in that order and as often; of each its place there."""
        place, within = members(self.counts[which])
        edge = starts_of(self.counts)[which][place] + within
        return self.starts[edge], self.ends[edge], place


@dataclass(frozen=True, eq=False, slots=True)
class Stadiums:
    """What a disk sweeps on straight lines.

    Attributes:
        origins: where each line begins, (m, 2).
        units: its direction, of length 1, (m, 2).
        lengths: its length, (m,).
        radius: the disk's.
    """

    origins: Points
    units: Points
    lengths: Points
    radius: float

    def areas_inside(self, edges: Edges, which: Numbers) -> Points:
        """The area (m,) inside each stadium of one of the shapes, that with the number in `which`, (m,)."""
        starts, ends, own = edges.chosen(which)
        p, q, length = self._seen(starts, own), self._seen(ends, own), self.lengths[own]
        enters, leaves = _stay(p, q, length, self.radius)
        span = q - p
        inner_p, inner_q = p + enters * span, p + leaves * span
        parts = (inner_p[0] * inner_q[1] - inner_p[1] * inner_q[0]) / 2
        before, after = enters > 0, (leaves < 1) & (enters < 1)
        parts[before] += _sectors(p[:, before], inner_p[:, before], length[before], self.radius)
        parts[after] += _sectors(inner_q[:, after], q[:, after], length[after], self.radius)
        areas: Points = np.abs(np.bincount(own, parts, minlength=len(which)))
        return areas

    def _seen(self, points: Points, own: Numbers) -> Points:
        """Points as seen from the stadiums with these numbers: along them and to the left, (2, k)."""
        x, y = (points - self.origins[own]).T
        ahead, aside = self.units[own].T
        return np.stack([x * ahead + y * aside, y * ahead - x * aside])


def _stay(p: Points, q: Points, length: Points, radius: float) -> tuple[Points, Points]:
    """Where on the way from p to q one enters the stadium and leaves it, from 0 to 1; 1 and 1 if never.

    The stadium is two disks and a rectangle, and convex: one is in it from the first entry to the last exit.
    """
    span = q - p
    stays = [
        _stay_in_disk(p, span, radius),
        _stay_in_disk(p - np.stack([length, np.zeros_like(length)]), span, radius),
        _both(_stay_between(p[0], span[0], 0.0, length), _stay_between(p[1], span[1], -radius, radius)),
    ]
    enters, leaves = np.ones_like(length), np.zeros_like(length)
    for enter, leave in stays:
        enter, leave = np.maximum(enter, 0.0), np.minimum(leave, 1.0)
        is_in = enter < leave
        enters = np.where(is_in, np.minimum(enters, enter), enters)
        leaves = np.where(is_in, np.maximum(leaves, leave), leaves)
    is_never = enters >= leaves
    return np.where(is_never, 1.0, enters), np.where(is_never, 1.0, leaves)


def _stay_in_disk(p: Points, span: Points, radius: float) -> tuple[Points, Points]:
    square = np.maximum((span * span).sum(axis=0), _TINY)
    middle = -(p * span).sum(axis=0) / square
    half_squared = middle**2 - ((p * p).sum(axis=0) - radius**2) / square
    half = np.where(half_squared > 0, np.sqrt(np.maximum(half_squared, 0.0)), -np.inf)
    return middle - half, middle + half


def _stay_between(
    p: Points, span: Points, low: float | Points, high: float | Points
) -> tuple[Points, Points]:
    slope = np.where(np.abs(span) < _TINY, _TINY, span)
    one, other = (low - p) / slope, (high - p) / slope
    return np.minimum(one, other), np.maximum(one, other)


def _both(one: tuple[Points, Points], other: tuple[Points, Points]) -> tuple[Points, Points]:
    return np.maximum(one[0], other[0]), np.minimum(one[1], other[1])


def _sectors(p: Points, q: Points, length: Points, radius: float) -> Points:
    """The stadium's area between the directions to p and to q, the shorter way round, counter-clockwise."""
    (from_axis, angle), (to_axis, end) = (
        _sector_from_axis(p, length, radius),
        _sector_from_axis(q, length, radius),
    )
    whole = np.pi * radius**2 + 2 * length * radius
    turned = end - angle
    sectors: Points = to_axis - from_axis + whole * ((turned < -np.pi).astype(float) - (turned > np.pi))
    return sectors


def _sector_from_axis(p: Points, length: Points, radius: float) -> tuple[Points, Points]:
    """The stadium's area from its axis to the direction of p, negative to the right; and that direction."""
    u, v = p
    angle = np.arctan2(v, u)
    turn = np.abs(angle)
    cos, sin = np.cos(turn), np.sin(turn)
    # On the last disk: the far one of the two points at which the direction meets it.
    far = length * cos + np.sqrt(np.maximum(radius**2 - (length * sin) ** 2, 0.0))
    at_end = np.arctan2(far * sin, far * cos - length)
    on_end = radius**2 * at_end / 2 + length * radius * np.sin(at_end) / 2
    at_corner = np.pi * radius**2 / 4 + length * radius / 2
    on_side = at_corner + radius * (length - radius * cos / np.maximum(sin, _TINY)) / 2
    on_start = at_corner + length * radius / 2 + radius**2 * (turn - np.pi / 2) / 2
    area = np.where(turn >= np.pi / 2, on_start, np.where(radius * cos > length * sin, on_end, on_side))
    return np.copysign(area, angle), angle
