"""Where one wall leaves another: the parts of a difference that matter, without computing all of it.

Two regions whose walls coincide almost everywhere (a shape and what a cutter leaves of it) are the worst
case for an overlay: every pair of nearly equal edges must be cut against each other. Distances are cheap.
So the places where the one wall is farther than a given distance from the other are found first, boxes are
put round them, and only there is the difference taken.

Both walls are followed. Wherever a disk leaves something, its own arc departs, and an arc's chords are short
beside the piece it cuts off: that finds every piece, even one in the middle of a long straight wall. How far
a piece reaches away from its mouth, only the other wall can tell.
"""

from __future__ import annotations

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import GeometryCollection

from inlayfit.geometry.clipping import clipped
from inlayfit.geometry.distance import BoundaryIndex, with_samples
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

_MOST_BOXES = 48
_LARGEST_SHARE = 0.5  # of the area that boxes may cover before the whole difference is cheaper
_MERGE_ROUNDS = 8
_CHORDS_APART = (
    1.5  # chords of one arc, cut anew, lie a little apart; a piece twice `distance` thick departs more
)


def departing_difference(
    larger: Region, smaller: Region, *, wall: Region, other: BoundaryIndex, distance: float, reach: float
) -> Region:
    """`larger` minus `smaller`, complete wherever the wall departs by more than `distance`.

    Args:
        larger: what contains the other, but for rounding.
        smaller: what is taken away.
        wall: the one of the two that a disk was to follow.
        other: the boundary of the other one, made of what is left of that wall and of the disk's arcs.
        distance: walls nearer than this coincide; pieces thinner than this may be missing or cut short.
        reach: the disk's radius: no piece reaches farther than this from the wall.
    """
    if larger.is_empty or smaller.is_empty:
        return larger.minus(smaller)
    boxes = _departures(wall, other, distance, reach)
    if len(boxes) == 0:
        return Region.empty()
    if len(boxes) > _MOST_BOXES or _share(boxes, larger) > _LARGEST_SHARE:
        return larger.minus(smaller)
    pieces = shapely.difference(clipped(larger, boxes), clipped(smaller, boxes))
    return Region.of(GeometryCollection(list(pieces)))


def _share(boxes: Points, region: Region) -> float:
    x0, y0, x1, y1 = region.bounds
    covered = float(((boxes[:, 2] - boxes[:, 0]) * (boxes[:, 3] - boxes[:, 1])).sum())
    return covered / max((x1 - x0) * (y1 - y0), 1e-300)


def _departures(wall: Region, other: BoundaryIndex, distance: float, reach: float) -> Points:
    """Boxes (n, 4) that do not overlap, round the stretches of both walls that are too far from the other."""
    arcs = other.region.rings()
    middles = [(ring + np.roll(ring, -1, axis=0)) / 2 for ring in arcs]
    aside, _ = BoundaryIndex(wall).nearest(np.vstack(middles))
    far = aside > _CHORDS_APART * distance
    if not far.any() and len(arcs) == wall.ring_count:
        return np.empty((0, 4))
    walls = [with_samples(ring, reach / 4) for ring in wall.rings()]
    away, _ = other.nearest(np.vstack(walls))
    round_arcs = _round_runs(middles, far, reach + aside)
    return _merged(np.vstack([round_arcs, _round_runs(walls, away > distance, reach + away)]))


def _round_runs(rings: list[Points], far: NDArray[np.bool_], margins: Points) -> Points:
    """A box (n, 4) round each run of points that are far, wider than it by the largest margin in it."""
    places = np.flatnonzero(far)
    if len(places) == 0:
        return np.empty((0, 4))
    points, margin = np.vstack(rings)[places], margins[places]
    ring = np.repeat(np.arange(len(rings)), [len(ring) for ring in rings])[places]
    firsts = np.concatenate([[0], np.flatnonzero((np.diff(places) > 1) | (np.diff(ring) > 0)) + 1])
    margin = np.maximum.reduceat(margin, firsts)[:, None]
    low, high = np.minimum.reduceat(points, firsts, axis=0), np.maximum.reduceat(points, firsts, axis=0)
    return np.hstack([low - margin, high + margin])


def _merged(boxes: Points) -> Points:
    """Overlapping boxes replaced by the box round them, until none overlap."""
    if len(boxes) == 0:
        return boxes
    for _ in range(_MERGE_ROUNDS):
        parts = shapely.get_parts(shapely.union_all(shapely.box(*boxes.T)))
        if len(parts) == len(boxes):
            break
        boxes = shapely.bounds(parts)
    return boxes
