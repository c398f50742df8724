"""What lies between two walls that coincide almost everywhere: the pieces that matter, quickly.

Two regions of which one is what a cutter leaves of the other are the worst case for an overlay: every pair of
nearly equal edges must be cut against each other. Distances are cheap. So they are measured along both
walls, and the pieces are traced (`geometry.tracing`) where that tells them; round what is left boxes are put,
and only there is the difference taken.

Both walls are followed. Wherever a disk leaves something, its own arc departs, and an arc's chords are short
beside the piece it cuts off: that finds every piece, even one in the middle of a long straight wall. How far
a piece reaches away from its mouth, only the other wall can tell.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import GeometryCollection

from inlayfit.geometry.clipping import Shapes, clipped
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.groups import Flags
from inlayfit.geometry.morphology import thick_parts
from inlayfit.geometry.mouths import Apart
from inlayfit.geometry.outlines import Piece
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.rings import Rings
from inlayfit.geometry.tracing import Tracing, traced

_MOST_BOXES = 48
_LARGEST_SHARE = 0.5  # of the area that boxes may cover before the whole difference is cheaper
_MERGE_ROUNDS = 8
_SAMPLES_A_RADIUS = 4
_SHARED_EDGE_MM = 1e-6


def departing_pieces(
    wall: Region, other: Region, *, wall_is_outside: bool, thickness: float, reach: float
) -> list[Piece]:
    """The pieces thicker than that between a wall and what a disk leaves of it; none of both is empty.

    Films at the tips of a piece, thinner than that, may be cut short.

    Args:
        wall: what a disk was to follow: what it runs in, or what it runs round.
        other: what is left of that wall, and arcs of the disk.
        wall_is_outside: which of the two contains the other, but for rounding.
        thickness: in millimetres.
        reach: the disk's radius: no piece reaches farther than this from the wall.
    """
    edge = BoundaryIndex(other)
    apart = Apart.between(BoundaryIndex(wall), edge, thickness / 2, reach / _SAMPLES_A_RADIUS)
    tracing = traced(apart, wall_is_outside=wall_is_outside)
    if tracing.left.is_nothing:
        return list(tracing.pieces)
    larger, smaller = (wall, other) if wall_is_outside else (other, wall)
    boxes = _boxes(apart, tracing, edge, reach)
    if len(boxes) > _MOST_BOXES or _share(boxes, larger) > _LARGEST_SHARE:
        return _of_difference(thick_parts(larger.minus(smaller), thickness), edge, thickness)
    parts = Region.of(
        GeometryCollection(list(shapely.difference(clipped(larger, boxes), clipped(smaller, boxes))))
    )
    others = thick_parts(_beyond(parts, tracing.pieces), thickness)
    return [*tracing.pieces, *_of_difference(others, edge, thickness)]


def _beyond(parts: Region, pieces: Sequence[Piece]) -> Region:
    """What of the parts in boxes is not in a traced piece; one may hang on such a piece by a film."""
    known = shapely.disjoint_subset_union_all([piece.region.shape for piece in pieces])
    return Region.of(shapely.difference(parts.shape, known))


def _share(boxes: Points, region: Region) -> float:
    x0, y0, x1, y1 = region.bounds
    covered = float(((boxes[:, 2] - boxes[:, 0]) * (boxes[:, 3] - boxes[:, 1])).sum())
    return covered / max((x1 - x0) * (y1 - y0), 1e-300)


def _boxes(apart: Apart, tracing: Tracing, edge: BoundaryIndex, reach: float) -> Points:
    """Boxes (n, 4) that do not overlap, round the stretches of both that tracing left."""
    arcs, walls = apart.arcs, apart.walls.with_samples(apart.step)
    away, _ = edge.nearest(walls.points)
    far = np.flatnonzero(away > 2 * apart.distance)
    known = shapely.STRtree([piece.region.shape for piece in tracing.pieces]).query(
        shapely.points(walls.points[far]), predicate="dwithin", distance=_SHARED_EDGE_MM
    )[0]
    is_left = np.zeros(len(away), dtype=bool)
    is_left[np.delete(far, known)] = True
    round_arcs = _round_runs(arcs, arcs.edge_middles, tracing.left.of_arcs, reach + apart.aside)
    return _merged(np.vstack([round_arcs, _round_runs(walls, walls.points, is_left, reach + away)]))


def _round_runs(rings: Rings, points: Points, chosen: Flags, margins: Points) -> Points:
    """A box (n, 4) round each run of chosen points, wider than it by the largest margin in it."""
    places = np.flatnonzero(chosen)
    if len(places) == 0:
        return np.empty((0, 4))
    firsts = np.flatnonzero((np.diff(places, prepend=-2) > 1) | np.isin(places, rings.starts))
    margin = np.maximum.reduceat(margins[places], firsts)[:, None]
    low = np.minimum.reduceat(points[places], firsts, axis=0)
    high = np.maximum.reduceat(points[places], firsts, axis=0)
    return np.hstack([low - margin, high + margin])


def _merged(boxes: Points) -> Points:
    """Overlapping boxes replaced by the box round them, until none overlap."""
    if len(boxes) == 0:
        return boxes
    for _ in range(_MERGE_ROUNDS):
        parts = shapely.get_parts(shapely.disjoint_subset_union_all(shapely.box(*boxes.T)))
        if len(parts) == len(boxes):
            break
        boxes = shapely.bounds(parts)
    return boxes


def _of_difference(parts: Region, edge: BoundaryIndex, thickness: float) -> list[Piece]:
    """The pieces of a difference; `edge` is the boundary of the disk's side."""
    pieces = parts.pieces
    if not pieces:
        return []
    walls, found = _walls(np.array([piece.shape for piece in pieces], dtype=object), edge), []
    for piece in pieces:
        own, walls = walls[: piece.ring_count], walls[piece.ring_count :]
        deepest = max(own, key=lambda wall: wall.depth)
        mouths = tuple(mouth for wall in own for mouth in _mouths(wall, thickness))
        is_apart = min(wall.nearest for wall in own) > thickness
        found.append(Piece(piece, mouths, deepest.depth, deepest.tip, is_apart))
    return found


@dataclass(frozen=True, eq=False, slots=True)
class _Wall:
    """A ring of a piece beside the disk's side.

    Attributes:
        ring: its vertices, the first one repeated.
        shared: whether the middle of each edge lies on that side.
        nearest, depth: how far the nearest and the farthest vertex are from it.
        tip: the farthest one.
    """

    ring: Points
    shared: NDArray[np.bool_]
    nearest: float
    depth: float
    tip: tuple[float, float]


def _walls(shapes: Shapes, edge: BoundaryIndex) -> list[_Wall]:
    """All rings in turn. The ends of a shared edge lie on the disk's side; others are measured."""
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


def _mouths(wall: _Wall, thickness: float) -> list[Points]:
    """The points of each stretch of the ring that lies against the disk's side.

    The piece is a difference, so it shares its mouth with that side to the last digits; a wider tolerance
    would also take in the wall next to a corner's tips, which meets the mouth at a tangent. A stretch of wall
    shorter than dust does not divide a mouth.
    """
    begins = np.flatnonzero(wall.shared & ~np.roll(wall.shared, 1))
    if len(begins) == 0:
        return [wall.ring] if wall.shared.all() else []
    edges = (begins[0] + np.arange(len(wall.shared))) % len(wall.shared)
    starts, ends, shared = wall.ring[:-1][edges], wall.ring[1:][edges], wall.shared[edges]
    stretches = [np.flatnonzero(shared)]
    if len(begins) > 1:
        walls = np.cumsum(np.hypot(*(ends - starts).T) * ~shared)[shared]
        stretches = np.split(stretches[0], np.flatnonzero(np.diff(walls) > 2 * thickness) + 1)
    return [np.vstack([starts[part], ends[part[-1:]]]) for part in stretches]
