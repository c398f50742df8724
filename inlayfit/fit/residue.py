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
from shapely import Polygon

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
    """

    region: Region
    kind: ResidueKind
    place: tuple[float, float]
    depth: float

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
    return Residue(piece, ResidueKind.LOST_PIECE, _inner_point(piece.polygons[0]), 0.0)


def _all_judged(
    left: Region, edge: BoundaryIndex, radius: float, tolerance: Tolerance
) -> tuple[Residue, ...]:
    """Judge all thick pieces; `edge` is the boundary of what the cutter reaches."""
    pieces = thick_parts(left, tolerance.settle_mm).pieces
    if not pieces:
        return ()
    rings = [ring for piece in pieces for ring in piece.rings()]
    middles = [(ring + np.roll(ring, -1, axis=0)) / 2 for ring in rings]
    distances, _ = edge.nearest(np.vstack([*rings, *middles]))
    cuts = np.cumsum([len(ring) for ring in (*rings, *middles)])[:-1]
    parts = iter(np.split(distances, cuts))
    corners = [next(parts) for _ in rings]
    walls = [_Wall(ring, corner, next(parts)) for ring, corner in zip(rings, corners, strict=True)]
    found = []
    for piece in pieces:
        own, walls = walls[: piece.ring_count], walls[piece.ring_count :]
        found.append(_judged(piece, own, radius, tolerance))
    return tuple(sorted(found, key=lambda residue: -residue.area))


@dataclass(frozen=True, slots=True)
class _Wall:
    """A ring of a piece, and how far its vertices and the middles of its edges are from what is reached."""

    ring: Points
    at_vertices: Points
    at_middles: Points


def _judged(piece: Region, walls: list[_Wall], radius: float, tolerance: Tolerance) -> Residue:
    if min(float(wall.at_vertices.min()) for wall in walls) > tolerance.settle_mm:
        return _lost(piece)
    depth = max(float(wall.at_vertices.max()) for wall in walls)
    place = _inner_point(piece.polygons[0])
    x0, y0, x1, y1 = piece.bounds
    if max(x1 - x0, y1 - y0) < _SMALL_RADII * radius:
        return Residue(piece, ResidueKind.CORNER, place, depth)
    mouths = [span for wall in walls for span in _mouths(wall, tolerance)]
    if len(mouths) > 1:
        return Residue(piece, ResidueKind.NECK, place, depth)
    width = mouths[0] if mouths else 0.0
    narrows = not mouths or depth < width / 4 or piece.area <= _NARROWS_BELOW * width * depth
    return Residue(piece, ResidueKind.CORNER if narrows else ResidueKind.DEAD_END, place, depth)


def _inner_point(polygon: Polygon) -> tuple[float, float]:
    point = polygon.representative_point()
    return float(point.x), float(point.y)


def _mouths(wall: _Wall, tolerance: Tolerance) -> list[float]:
    """How wide each stretch of the ring is that lies against the reached area.

    The piece is a difference, so it shares its mouth with the reached area to the last digits; a wider
    tolerance would also take in the wall next to a corner's tips, which meets the mouth at a tangent. A
    stretch of wall shorter than dust does not divide a mouth.
    """
    shared = wall.at_middles < _SHARED_EDGE_MM
    if shared.all():
        return [_span(wall.ring)]
    first = int(np.flatnonzero(~shared)[0])
    ring, shared = np.roll(wall.ring, -first, axis=0), np.roll(shared, -first)
    ends = np.roll(ring, -1, axis=0)
    lengths = np.hypot(*(ends - ring).T)
    stretches: list[list[int]] = []
    dividing = math.inf
    for i, is_shared in enumerate(shared.tolist()):
        if not is_shared:
            dividing += float(lengths[i])
        elif dividing > 2 * tolerance.settle_mm:
            stretches.append([i])
            dividing = 0.0
        else:
            stretches[-1].append(i)
            dividing = 0.0
    spans = [_span(np.vstack([ring[stretch], ends[stretch]])) for stretch in stretches]
    return [span for span in spans if span > 10 * tolerance.settle_mm]


def _span(points: Points) -> float:
    sizes = points.max(axis=0) - points.min(axis=0)
    return math.hypot(float(sizes[0]), float(sizes[1]))
