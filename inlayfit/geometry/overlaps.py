"""Lines that lie on each other: found, and each stretch kept once.

Straight pieces lie on each other if they are on one line, arcs if they are on one circle; where stretches
of one line or circle overlap, the second one adds nothing. Curves are compared whole.

A line is known by its direction and its distance from the middle of all, a circle by its centre and radius;
what is equal within a few tolerances is sorted together. Before a stretch counts as a repetition, its ends
are measured against the line or circle that stays.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components
from scipy.spatial import cKDTree

from inlayfit.geometry.path import Path, Points, arc_centres

_FULL_TURN = 2 * math.pi
_HALF_STEP = 1e-7  # radians: parts directions where no drawing has a line, just below the x-axis
_CELL = 2.0
_FAR = 6.0  # tolerances: a stretch further from the line or circle that stays is another one


@dataclass(frozen=True, slots=True)
class Cleared:
    """Single segments, and what was removed to get them.

    Attributes:
        segments: open paths of one segment each.
        removed: how many segments lay wholly or in part on others.
        place: where the first of them was.
    """

    segments: tuple[Path, ...]
    removed: int
    place: tuple[float, float] | None


@dataclass(slots=True)
class _Stretch:
    low: float
    high: float
    segment: Path


def single_segments(path: Path) -> list[Path]:
    """Each segment of a path as an open path of its own."""
    starts, ends = path.segment_ends()
    result = []
    for i, bulge in enumerate(path.bulges):
        curve = path.curves.get(i)
        curves = {} if curve is None else {0: curve}
        result.append(Path(np.array([starts[i], ends[i]]), np.array([bulge]), False, curves))
    return result


def clear_overlaps(segments: Iterable[Path], *, tolerance: float) -> Cleared:
    """Keep each stretch of a line or circle once.

    Args:
        segments: open paths of one segment each.
        tolerance: stretches nearer than this are the same, in millimetres.
    """
    everything = list(segments)
    removed: list[Path] = []
    kept = _single_curves([s for s in everything if s.curves], tolerance, removed)
    straight = [s for s in everything if not s.curves and not s.bulges[0]]
    for stretches in _on_same_line(straight, tolerance):
        kept += _disjoint(stretches, tolerance, tolerance, removed)
    round_ones = [s for s in everything if not s.curves and s.bulges[0]]
    for radius, stretches in _on_same_circle(round_ones, tolerance):
        slack = tolerance / max(radius, tolerance)
        kept += _disjoint(_from_a_gap(stretches, slack), slack, tolerance, removed)
    place = None if not removed else (float(removed[0].start[0]), float(removed[0].start[1]))
    return Cleared(tuple(kept), len(removed), place)


def _single_curves(segments: Iterable[Path], tolerance: float, removed: list[Path]) -> list[Path]:
    """Curves, each set of control points once, in whichever direction."""
    curves: dict[tuple[int, ...], Path] = {}
    for segment in segments:
        control = segment.curves[0].control
        if tuple(control[0]) > tuple(control[-1]):
            control = control[::-1]
        key = tuple(round(float(v) / tolerance) for v in control.ravel())
        if key in curves:
            removed.append(segment)
        else:
            curves[key] = segment
    return list(curves.values())


def _together(marks: Points) -> list[NDArray[np.int64]]:
    """Row numbers of rows that are the same within one unit, together."""
    cells, cell_of = np.unique(np.rint(marks), axis=0, return_inverse=True)
    pairs = cKDTree(cells).query_pairs(1.1, p=np.inf, output_type="ndarray")
    links = coo_array((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(len(cells), len(cells)))
    labels = connected_components(links, directed=False)[1][np.asarray(cell_of).reshape(-1)]
    order = np.argsort(labels, kind="stable")
    return np.split(order, np.flatnonzero(np.diff(labels[order])) + 1)


def _on_same_line(segments: Sequence[Path], tolerance: float) -> list[list[_Stretch]]:
    """Straight segments by the line they are on, as stretches of it from a point near its middle."""
    if not segments:
        return []
    ends = np.array([segment.vertices for segment in segments])
    ends = ends - (ends.min(axis=(0, 1)) + ends.max(axis=(0, 1))) / 2
    reach = float(np.abs(ends).max())
    angles = np.arctan2(*(ends[:, 1] - ends[:, 0]).T[::-1])
    angles = (angles + _HALF_STEP) % math.pi - _HALF_STEP  # one direction for both ways to draw a line
    along = np.column_stack([np.cos(angles), np.sin(angles)])
    away = ends.mean(axis=1)[:, 1] * along[:, 0] - ends.mean(axis=1)[:, 0] * along[:, 1]
    places = np.sort((ends * along[:, None, :]).sum(axis=2), axis=1)
    cell = _CELL * tolerance
    groups = _together(np.column_stack([angles * reach / cell, away / cell]))
    return [
        [_Stretch(float(places[i, 0]), float(places[i, 1]), segments[i]) for i in rows] for rows in groups
    ]


def _on_same_circle(segments: Sequence[Path], tolerance: float) -> list[tuple[float, list[_Stretch]]]:
    """Arcs by the circle they are on, with its radius, as counter-clockwise stretches of angle."""
    if not segments:
        return []
    ends = np.array([segment.vertices for segment in segments])
    bulges = np.array([segment.bulges[0] for segment in segments])
    centres, radii = arc_centres(ends[:, 0], ends[:, 1], bulges)
    first = np.where(bulges[:, None] > 0, ends[:, 0], ends[:, 1]) - centres
    low = np.arctan2(first[:, 1], first[:, 0]) % _FULL_TURN
    high = low + 4 * np.arctan(np.abs(bulges))
    groups = _together(np.column_stack([centres, radii]) / (_CELL * tolerance))
    return [
        (float(radii[rows[0]]), [_Stretch(float(low[i]), float(high[i]), segments[i]) for i in rows])
        for rows in groups
    ]


def _from_a_gap(stretches: list[_Stretch], slack: float) -> list[_Stretch]:
    """Stretches of a circle, angles counted from one that no other stretch runs over.

    If stretches run over each other all around there is none; they are then taken as they are.
    """
    reach = max(stretch.high for stretch in stretches) - _FULL_TURN
    base = 0.0
    for stretch in sorted(stretches, key=lambda s: s.low):
        if stretch.low >= reach - slack:
            base = stretch.low
            break
        reach = max(reach, stretch.high)
    turned = []
    for stretch in stretches:
        low = (stretch.low - base + slack) % _FULL_TURN - slack
        turned.append(_Stretch(low, low + stretch.high - stretch.low, stretch.segment))
    return turned


def _disjoint(stretches: list[_Stretch], slack: float, tolerance: float, removed: list[Path]) -> list[Path]:
    """Stretches in order, those that overlap joined to one."""
    kept: list[Path] = []
    others: list[Path] = []
    reach = -math.inf
    for stretch in sorted(stretches, key=lambda s: (s.low, -s.high)):
        if stretch.low >= reach - slack:
            kept.append(stretch.segment)
            reach = stretch.high
        elif not _lies_on(stretch.segment, kept[-1], _FAR * tolerance):
            others.append(stretch.segment)
        else:
            removed.append(stretch.segment)
            if stretch.high > reach + slack:
                kept[-1] = _over_both(kept[-1], stretch.segment)
                reach = stretch.high
    return kept + others


def _lies_on(segment: Path, other: Path, distance: float) -> bool:
    """Whether the ends of a segment lie on the line or circle of another."""
    if other.bulges[0]:
        centres, radii = arc_centres(other.vertices[:1], other.vertices[1:], other.bulges)
        off = np.hypot(*(segment.vertices - centres[0]).T) - radii[0]
    else:
        dx, dy = other.vertices[1] - other.vertices[0]
        x, y = (segment.vertices - other.vertices[0]).T
        off = (x * dy - y * dx) / math.hypot(dx, dy)
    return bool(np.abs(off).max() <= distance)


def _over_both(one: Path, other: Path) -> Path:
    return _arc_between(one, other) if one.bulges[0] else _line_between(one, other)


def _line_between(one: Path, other: Path) -> Path:
    """The longest line between ends of two collinear ones."""
    points: Sequence[np.ndarray[tuple[int], np.dtype[np.float64]]] = [*one.vertices, *other.vertices]
    pairs = [
        (float(np.hypot(*(a - b))), i, j) for i, a in enumerate(points) for j, b in enumerate(points[:i])
    ]
    _, i, j = max(pairs)
    return Path(np.array([points[j], points[i]]), np.zeros(1), closed=False)


def _arc_between(one: Path, other: Path) -> Path:
    """The arc from the start of the first to the end of the second, both counter-clockwise."""
    first = one if one.bulges[0] > 0 else one.reversed()
    second = other if other.bulges[0] > 0 else other.reversed()
    centres, _ = arc_centres(first.vertices[:1], first.vertices[1:], first.bulges)
    (x, y), start, end = centres[0], first.vertices[0], second.vertices[1]
    sweep = (math.atan2(end[1] - y, end[0] - x) - math.atan2(start[1] - y, start[0] - x)) % (2 * math.pi)
    return Path(np.array([start, end]), np.array([math.tan(sweep / 4)]), closed=False)
