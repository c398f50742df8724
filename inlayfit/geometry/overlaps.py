"""Lines that lie on each other: found, and each stretch kept once.

Straight pieces lie on each other if they are on one line, arcs if they are on one circle; where stretches
of one line or circle overlap, the second one adds nothing. Curves are compared whole.

A line is known by its direction and its distance from the origin, a circle by its centre and radius, both
rounded to the tolerance. Rounding can part two that are nearly equal at the edge of a cell; then the stretch
stays double, and the faces between two equal lines have no area.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

import numpy as np

from inlayfit.geometry.path import Path, arc_centres

_Key = tuple[float, ...]


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
    lines: dict[_Key, list[_Stretch]] = {}
    arcs: dict[_Key, list[_Stretch]] = {}
    curves: dict[_Key, Path] = {}
    removed: list[Path] = []
    for segment in segments:
        if segment.curves:
            key = _curve_key(segment, tolerance)
            if key in curves:
                removed.append(segment)
            curves.setdefault(key, segment)
        elif segment.bulges[0]:
            key, stretch = _on_circle(segment, tolerance)
            arcs.setdefault(key, []).append(stretch)
        else:
            key, stretch = _on_line(segment, tolerance)
            lines.setdefault(key, []).append(stretch)
    kept = list(curves.values())
    for stretches in lines.values():
        kept += _disjoint(stretches, tolerance, removed, _line_between)
    for (_, _, radius), stretches in arcs.items():
        kept += _disjoint(stretches, tolerance / max(radius, tolerance), removed, _arc_between)
    place = None if not removed else (float(removed[0].start[0]), float(removed[0].start[1]))
    return Cleared(tuple(kept), len(removed), place)


def _curve_key(segment: Path, tolerance: float) -> _Key:
    control = segment.curves[0].control
    ends = sorted([tuple(control[0]), tuple(control[-1])])
    if tuple(control[0]) != ends[0]:
        control = control[::-1]
    return tuple(round(float(v) / tolerance) for v in control.ravel())


def _on_line(segment: Path, tolerance: float) -> tuple[_Key, _Stretch]:
    (x0, y0), (x1, y1) = segment.vertices.tolist()
    angle = math.atan2(y1 - y0, x1 - x0)
    forward = -math.pi / 2 < round(angle, 9) <= round(math.pi / 2, 9)
    if not forward:
        angle -= math.copysign(math.pi, angle)
    cos, sin = math.cos(angle), math.sin(angle)
    away = (x0 + x1) / 2 * -sin + (y0 + y1) / 2 * cos
    at0, at1 = x0 * cos + y0 * sin, x1 * cos + y1 * sin
    reach = max(abs(x0), abs(y0), abs(x1), abs(y1), 1.0)
    key = (round(angle / (tolerance / reach * 10)), round(away / tolerance / 10))
    return key, _Stretch(min(at0, at1), max(at0, at1), segment)


def _on_circle(segment: Path, tolerance: float) -> tuple[_Key, _Stretch]:
    bulge = segment.bulges
    centres, radii = arc_centres(segment.vertices[:1], segment.vertices[1:], bulge)
    (x, y), radius = centres[0].tolist(), float(radii[0])
    first = segment.vertices[0 if bulge[0] > 0 else 1]
    start = math.atan2(first[1] - y, first[0] - x) % (2 * math.pi)
    cell = tolerance * 10
    key = (round(x / cell), round(y / cell), round(radius / cell) * cell)
    return key, _Stretch(start, start + 4 * math.atan(abs(float(bulge[0]))), segment)


def _disjoint(
    stretches: list[_Stretch], slack: float, removed: list[Path], between: Callable[[Path, Path], Path]
) -> list[Path]:
    """Stretches in order, those that overlap joined to one."""
    kept: list[Path] = []
    reach = -math.inf
    for stretch in sorted(stretches, key=lambda s: (s.low, -s.high)):
        if stretch.low >= reach - slack:
            kept.append(stretch.segment)
            reach = stretch.high
            continue
        removed.append(stretch.segment)
        if stretch.high > reach + slack:
            kept[-1] = between(kept[-1], stretch.segment)
            reach = stretch.high
    return kept


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
