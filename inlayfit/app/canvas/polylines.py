"""Points on the screen, many at once: thinning, resampling, how far inwards a line may move, strips.

Everything here is arithmetic on arrays; no point is ever handled alone, so a wall of 100,000 vertices costs
milliseconds. Lengths are in whatever unit the points have: millimetres before the view, pixels after it.

Terms
    ring: (n, 2) points of a closed line that does not repeat its first point.
    run: part of a line, (m, 2) points, drawn in one piece.
    reach: radius of the largest disk that touches the line at a point from inside and holds no other point
        of it. A line may move inwards by less than its reach and never meets itself: the disk's centre is
        on the medial axis. (Ma, Bae and Choi 2012, "3D medial axis point approximation using nearest
        neighbors and the normal field": the shrinking ball.)
    strip: a line given a width, as polygons.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from inlayfit.geometry.path import Points

_MOST_SHRINKINGS = 8
_BALL_SLACK = 0.02
_SHARP_TURN = 0.3
"""Tangent of the turn at a corner."""


@dataclass(frozen=True, eq=False, slots=True)
class Samples:
    """Points along one line with a value at each.

    Attributes:
        points: (n, 2).
        values: (n,).
        closed: whether the last point joins the first.
    """

    points: Points
    values: Points
    closed: bool


def ring_lengths(ring: Points) -> Points:
    """Length along the ring up to each point, and all round at the end: (n + 1,)."""
    x, y = np.append(ring[:, 0], ring[0, 0]), np.append(ring[:, 1], ring[0, 1])
    return np.concatenate([[0.0], np.cumsum(np.hypot(np.diff(x), np.diff(y)))])


def line_lengths(points: Points) -> Points:
    """Length along an open line up to each point, (n,)."""
    steps = points[1:] - points[:-1]
    return np.concatenate([[0.0], np.cumsum(np.hypot(steps[:, 0], steps[:, 1]))])


def thinned(ring: Points, step: float) -> Points:
    """The ring with at most about one point every `step` of its length.

    The points that stay are points of the ring, in order, so it moves by less than `step`.
    """
    if len(ring) < 8:
        return ring
    bucket = np.floor(ring_lengths(ring)[:-1] / step)
    keep = np.concatenate([[True], np.diff(bucket) != 0])
    return ring[keep] if keep.sum() >= 3 else ring[:: max(1, len(ring) // 3)][:3]


def resampled(
    ring: Points, values: Points, lengths: Points, step: float, *, corners_only: bool = False
) -> Samples:
    """Even samples of a ring, about `step` apart, its vertices among them where they are not denser.

    With `corners_only` just those vertices where the ring turns sharply.
    """
    total = float(lengths[-1])
    count = max(12, int(np.ceil(total / step)))
    at: Points = np.arange(count, dtype=np.float64) * (total / count)
    if len(ring) <= 2 * count:
        vertices = lengths[:-1]
        at = np.unique(np.concatenate([at, vertices[_corners(ring)] if corners_only else vertices]))
    return _sampled_at(ring, values, lengths, at, closed=True)


def _corners(ring: Points) -> NDArray[np.bool_]:
    """Where a ring turns by more than a chord of a smooth curve does."""
    after = np.concatenate([ring[1:], ring[:1]]) - ring
    before = np.concatenate([after[-1:], after[:-1]])
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    straight = (before * after).sum(axis=1)
    sharp: NDArray[np.bool_] = np.abs(cross) > _SHARP_TURN * straight
    return sharp


def resampled_within(
    ring: Points, values: Points, lengths: Points, step: float, box: tuple[float, float, float, float]
) -> list[Samples]:
    """The same, only of the parts of the ring that pass the box (x0, y0, x1, y1)."""
    ends = np.roll(ring, -1, axis=0)
    x0, y0, x1, y1 = box
    low, high = np.minimum(ring, ends), np.maximum(ring, ends)
    passes = (high[:, 0] >= x0) & (low[:, 0] <= x1) & (high[:, 1] >= y0) & (low[:, 1] <= y1)
    edges = np.flatnonzero(np.diff(np.concatenate([[False], passes, [False]]).astype(np.int8)))
    runs = []
    for first, last in edges.reshape(-1, 2).tolist():
        start, end = _clipped_span(ring, ends, lengths, first, last, box)
        inner = lengths[first + 1 : last]
        even = np.arange(start, end, step)
        at = np.unique(np.concatenate([even, [end], inner[(inner > start) & (inner < end)]]))
        if len(at) > 1:
            runs.append(_sampled_at(ring, values, lengths, at, closed=False))
    return runs


def _clipped_span(
    ring: Points, ends: Points, lengths: Points, first: int, last: int, box: tuple[float, float, float, float]
) -> tuple[float, float]:
    """Length along the ring where a run of segments enters and leaves the box, so long ones stay cheap."""
    entry = _share_inside(ring[first], ends[first], box)[0]
    leave = _share_inside(ring[last - 1], ends[last - 1], box)[1]
    start = lengths[first] + entry * (lengths[first + 1] - lengths[first])
    end = lengths[last - 1] + leave * (lengths[last] - lengths[last - 1])
    return float(start), float(end)


def _share_inside(a: Points, b: Points, box: tuple[float, float, float, float]) -> tuple[float, float]:
    """The part of a segment inside a box, as shares of its length (the slab method)."""
    step = np.where(b == a, 1e-300, b - a)
    one, other = (np.array(box[:2]) - a) / step, (np.array(box[2:]) - a) / step
    enter = float(np.minimum(one, other).max())
    leave = float(np.maximum(one, other).min())
    return (0.0, 1.0) if enter > leave else (max(0.0, enter), min(1.0, leave))


def _sampled_at(ring: Points, values: Points, lengths: Points, at: Points, *, closed: bool) -> Samples:
    round_values = np.concatenate([values, values[:1]])
    round_ring = np.vstack([ring, ring[:1]])
    points = np.column_stack([np.interp(at, lengths, round_ring[:, axis]) for axis in (0, 1)])
    return Samples(points, np.interp(at, lengths, round_values), closed)


def left_normals(points: Points, *, closed: bool) -> Points:
    """Unit normals to the left of the line, (n, 2): inwards for a counter-clockwise ring seen with y up."""
    if closed:
        along: Points = np.roll(points, -1, axis=0) - np.roll(points, 1, axis=0)
    else:
        along = np.vstack([points[1:2] - points[:1], points[2:] - points[:-2], points[-1:] - points[-2:-1]])
    long = np.hypot(along[:, 0], along[:, 1])
    long = np.where(long == 0, 1.0, long)
    return np.column_stack([-along[:, 1] / long, along[:, 0] / long])


def reaches(walls: Points, points: Points, normals: Points, furthest: float) -> Points:
    """How far each point may move along its normal, at most `furthest`; see *reach* above.

    Args:
        walls: (m, 2) all points of all lines; `points` are among them.
        points: (n, 2) to move.
        normals: (n, 2) unit directions to move in.
        furthest: where to stop looking.
    """
    from scipy.spatial import cKDTree  # heavy; the window is shown before there is a wall

    tree = cKDTree(walls, balanced_tree=False, compact_nodes=False)
    radius = np.full(len(points), furthest)
    active = np.arange(len(points))
    for _ in range(_MOST_SHRINKINGS):
        centres = points[active] + normals[active] * radius[active, None]
        apart, found = (np.asarray(answer) for answer in tree.query(centres))
        touched = apart < radius[active] * (1 - _BALL_SLACK)
        active, found = active[touched], found[touched]
        if not len(active):
            break
        chord = walls[found] - points[active]
        rise = np.einsum("ij,ij->i", chord, normals[active])
        smaller = np.einsum("ij,ij->i", chord, chord) / np.maximum(2 * rise, 1e-9)
        radius[active] = np.where(rise > 1e-9, np.minimum(radius[active], smaller), 0.0)
    return radius


def strips(points: Points, normals: Points, width: float, *, pieces_of: int = 20) -> list[Points]:
    """An open line as polygons of at most so many steps; each overlaps the next by one step.

    The overlap hides the edge between two pieces, which antialiasing would let shine through.
    """
    left, right = points + normals * (width / 2), points - normals * (width / 2)
    last = len(points) - 1
    ends = [(start, min(start + pieces_of + 1, last)) for start in range(0, last, pieces_of)]
    return [np.concatenate((left[a : b + 1], right[a : b + 1][::-1])) for a, b in ends]


def with_joints(points: Points, *, at: Points) -> Points:
    """An open line with further points inserted at these lengths along it."""
    lengths = line_lengths(points)
    where = np.unique(np.concatenate([lengths, at[(at > 0) & (at < lengths[-1])]]))
    return np.column_stack([np.interp(where, lengths, points[:, axis]) for axis in (0, 1)])


def dashes(points: Points, width: float, *, on: float, off: float) -> list[Points]:
    """An open line in dashes of equal length, the first and the last at its ends, as polygons."""
    total = float(line_lengths(points)[-1])
    count = max(1, round((total + off) / (on + off)))
    stretch = total / (count * (on + off) - off)
    starts = np.arange(count) * ((on + off) * stretch)
    joints = np.concatenate([starts, starts + on * stretch])
    split = with_joints(points, at=joints)
    lengths = line_lengths(split)
    normals = left_normals(split, closed=False)
    left, right = split + normals * (width / 2), split - normals * (width / 2)
    first = np.searchsorted(lengths, starts - 1e-9)
    last = np.searchsorted(lengths, starts + on * stretch - 1e-9)
    return [
        np.concatenate((left[a : b + 1], right[a : b + 1][::-1]))
        for a, b in zip(first.tolist(), last.tolist(), strict=True)
        if b > a
    ]


def even_places(points: Points, beside: Points, spacing: float) -> tuple[Points, Points]:
    """Points evenly along an open line, at least one, and the (n, 2) values `beside` its points there."""
    lengths = line_lengths(points)
    count = max(1, round(float(lengths[-1]) / spacing))
    at = (np.arange(count) + 0.5) * (lengths[-1] / count)
    places = np.column_stack([np.interp(at, lengths, points[:, axis]) for axis in (0, 1)])
    values = np.column_stack([np.interp(at, lengths, beside[:, axis]) for axis in (0, 1)])
    return places, values


def class_runs(numbers: NDArray[np.intp], *, closed: bool) -> list[tuple[int, NDArray[np.intp]]]:
    """Runs of one class along a line: (class, indices of its points).

    A run reaches to the first point of the next one, so that no gap stays between them. On a closed line
    the last run joins the first; a single run all round ends on its first point again.
    """
    count = len(numbers)
    if count == 0:
        return []
    order = np.arange(count)
    changes = np.flatnonzero(np.diff(numbers)) + 1
    if closed and len(changes):
        order = np.roll(order, -int(changes[0]))
        changes = np.flatnonzero(np.diff(numbers[order])) + 1
    bounds = [0, *changes.tolist(), count]
    follow = np.concatenate([order, order[:1]]) if closed else order
    return [(int(numbers[order[a]]), follow[a : b + 1]) for a, b in pairwise(bounds)]
