"""Residues: what a round cutter leaves of what was wanted, told apart by shape.

corner: a residue with one mouth towards the reached area, narrowing away from it. Every sharp corner
    leaves one.
dead end: a residue with one mouth that does not narrow: a channel the cutter cannot enter.
neck: a residue with two mouths or more: a passage between reached areas.
lost piece: a residue with no mouth: a piece none of which the cutter reaches.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Polygon

from inlayfit.geometry.clipping import Shapes
from inlayfit.geometry.departures import departing_difference
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.morphology import thick_parts
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance

_SHARED_EDGE_MM = 1e-6
_SMALL_RADII = 0.1
_NARROWS_BELOW = 0.62  # area over mouth × depth: 0.5 for a wedge, 1 for a channel, less what arcs take


class ResidueKind(StrEnum):
    """See the module docstring."""

    CORNER = "corner"
    DEAD_END = "dead end"
    NECK = "neck"
    LOST_PIECE = "lost piece"


@dataclass(frozen=True, slots=True)
class Residue:
    """One connected piece that the cutter leaves.

    Attributes:
        region: the piece.
        kind: its shape.
        place: a point in it, far from its edges.
        depth: how far its farthest point is from the reached area; 0 for a lost piece.
        tip: that point, a vertex.
    """

    region: Region
    kind: ResidueKind
    place: tuple[float, float]
    depth: float
    tip: tuple[float, float]

    @property
    def area(self) -> float:
        """Square millimetres."""
        return self.region.area


def residues(wanted: Region, reached: Region, radius: float, tolerance: Tolerance) -> tuple[Residue, ...]:
    """All pieces of `wanted` outside `reached` that are thicker than numerical dust, largest first.

    For a cutter that runs inside what is wanted (a pocket). `radius` is the cutter's; a piece much smaller
    than it can only be the corner of two chords.
    """
    if radius <= 0:
        return ()
    if reached.is_empty:
        return tuple(_lost(piece) for piece in wanted.pieces)
    edge = BoundaryIndex(reached)
    away = tolerance.settle_mm / 2
    left = departing_difference(wanted, reached, wall=wanted, other=edge, distance=away, reach=radius)
    return _all_judged(left, edge, radius, tolerance)


def residues_outside(
    wanted: Region, left: Region, radius: float, tolerance: Tolerance
) -> tuple[Residue, ...]:
    """The same for a cutter that runs outside (of a plug), which leaves `left` of what is `wanted`.

    What it reaches is all outside `left`; a hole of which it reaches nothing is a lost piece.
    """
    if radius <= 0 or left.is_empty:
        return ()
    edge = BoundaryIndex(left)
    away = tolerance.settle_mm / 2
    extra = departing_difference(left, wanted, wall=wanted, other=edge, distance=away, reach=radius)
    return _all_judged(extra, edge, radius, tolerance)


def outer_vertices(region: Region) -> Points:
    """All vertices of all rings, (n, 2)."""
    return np.vstack(region.rings())


def _lost(piece: Region) -> Residue:
    place = _inner_point(piece.polygons[0])
    return Residue(piece, ResidueKind.LOST_PIECE, place, 0.0, place)


def _all_judged(
    left: Region, edge: BoundaryIndex, radius: float, tolerance: Tolerance
) -> tuple[Residue, ...]:
    """Judge all thick pieces; `edge` is the boundary of what the cutter reaches."""
    pieces = thick_parts(left, tolerance.settle_mm).pieces
    if not pieces:
        return ()
    shapes = np.array([piece.shape for piece in pieces], dtype=object)
    walls = _walls(shapes, edge)
    measures = zip(
        pieces,
        shapely.get_coordinates(shapely.point_on_surface(shapes)).tolist(),
        shapely.area(shapes).tolist(),
        np.ptp(shapely.bounds(shapes).reshape(-1, 2, 2), axis=1).max(axis=1).tolist(),
        strict=True,
    )
    found: list[tuple[float, Residue]] = []
    for piece, (x, y), area, size in measures:
        own, walls = walls[: piece.ring_count], walls[piece.ring_count :]
        deepest = max(own, key=lambda wall: wall.depth)
        depth = deepest.depth
        if min(wall.nearest for wall in own) > tolerance.settle_mm:
            kind, depth = ResidueKind.LOST_PIECE, 0.0
        elif size < _SMALL_RADII * radius:
            kind = ResidueKind.CORNER
        else:
            kind = _kind([span for wall in own for span in _mouths(wall, tolerance)], depth, area)
        found.append((area, Residue(piece, kind, (x, y), depth, deepest.tip)))
    return tuple(residue for _, residue in sorted(found, key=lambda one: -one[0]))


@dataclass(frozen=True, slots=True)
class _Wall:
    """A ring of a piece beside what is reached.

    Attributes:
        ring: its vertices, the first one repeated.
        shared: whether the middle of each edge lies on the reached area's wall.
        nearest, depth: how far the nearest and the farthest vertex are from that wall.
        tip: the farthest one.
    """

    ring: Points
    shared: NDArray[np.bool_]
    nearest: float
    depth: float
    tip: tuple[float, float]


def _walls(shapes: Shapes, edge: BoundaryIndex) -> list[_Wall]:
    """The rings of all shapes in turn. The ends of a shared edge lie on the wall; the others are measured."""
    rings = shapely.get_rings(shapely.get_parts(shapes))
    points = shapely.get_coordinates(rings)
    ends = np.cumsum(shapely.get_num_coordinates(rings))
    shared = edge.nearest((points[:-1] + points[1:]) / 2)[0] < _SHARED_EDGE_MM
    shared[ends[:-1] - 1] = False  # from one ring to the next
    off = np.ones(len(points), dtype=bool)
    off[:-1] &= ~shared
    off[1:] &= ~shared
    away = np.zeros(len(points))
    if off.any():
        away[off], _ = edge.nearest(points[off])
    found = []
    for first, end in zip([0, *ends[:-1].tolist()], ends.tolist(), strict=True):
        own = away[first:end]
        deepest = int(own.argmax())
        x, y = points[first + deepest].tolist()
        wall = _Wall(
            points[first:end], shared[first : end - 1], float(own.min()), float(own[deepest]), (x, y)
        )
        found.append(wall)
    return found


def _kind(mouths: list[float], depth: float, area: float) -> ResidueKind:
    """The kind of a piece that is large enough to have a form, by the widths of its mouths."""
    if len(mouths) > 1:
        return ResidueKind.NECK
    width = mouths[0] if mouths else 0.0
    narrows = not mouths or depth < width / 4 or area <= _NARROWS_BELOW * width * depth
    return ResidueKind.CORNER if narrows else ResidueKind.DEAD_END


def _inner_point(polygon: Polygon) -> tuple[float, float]:
    point = polygon.representative_point()
    return float(point.x), float(point.y)


def _mouths(wall: _Wall, tolerance: Tolerance) -> list[float]:
    """How wide each stretch of the ring is that lies against the reached area.

    The piece is a difference, so it shares its mouth with the reached area to the last digits; a wider
    tolerance would also take in the wall next to a corner's tips, which meets the mouth at a tangent. A
    stretch of wall shorter than dust does not divide a mouth.
    """
    begins = np.flatnonzero(wall.shared & ~np.roll(wall.shared, 1))
    if len(begins) == 0:
        return [_span(wall.ring)] if wall.shared.all() else []
    edges = (begins[0] + np.arange(len(wall.shared))) % len(wall.shared)
    starts, ends, shared = wall.ring[:-1][edges], wall.ring[1:][edges], wall.shared[edges]
    stretches = [np.flatnonzero(shared)]
    if len(begins) > 1:
        walls = np.cumsum(np.hypot(*(ends - starts).T) * ~shared)[shared]
        stretches = np.split(stretches[0], np.flatnonzero(np.diff(walls) > 2 * tolerance.settle_mm) + 1)
    spans = [_span(np.vstack([starts[part], ends[part]])) for part in stretches]
    return [span for span in spans if span > 10 * tolerance.settle_mm]


def _span(points: Points) -> float:
    sizes = points.max(axis=0) - points.min(axis=0)
    return math.hypot(float(sizes[0]), float(sizes[1]))
