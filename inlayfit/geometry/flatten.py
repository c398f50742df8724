"""Turn true curves into chords, by a named tolerance: the only place where a curve loses its exactness.

The points lie on the curve, so a chord is off by at most its sagitta, always towards the inside of the bend.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from inlayfit.geometry.groups import members
from inlayfit.geometry.path import Bezier, Path, Points, arc_centres

_MOST_PIECES = 100_000
_KEPT_PATHS = 4096
_FIRST_PIECES = 4


def arc_steps(radius: float, sweep_rad: float, tolerance: float) -> int:
    """How many chords keep an arc of this radius and sweep within `tolerance`.

    A chord over the angle a is off by r·(1 − cos(a/2)), its sagitta.
    """
    if radius <= tolerance:
        return max(1, math.ceil(abs(sweep_rad) / (math.pi / 2)))
    step = 2 * math.acos(1 - tolerance / radius)
    return min(_MOST_PIECES, max(1, math.ceil(abs(sweep_rad) / step - 1e-9)))


def _arc_steps(radii: Points, sweeps_rad: Points, tolerance: float) -> NDArray[np.intp]:
    """`arc_steps` of many arcs."""
    is_small = radii <= tolerance
    sagitta = tolerance / np.where(is_small, 2 * tolerance, radii)
    step = np.where(is_small, math.pi / 2, 2 * np.arccos(1 - sagitta))
    slack = np.where(is_small, 0.0, 1e-9)
    most = np.where(is_small, np.inf, _MOST_PIECES)
    return np.clip(np.ceil(np.abs(sweeps_rad) / step - slack), 1, most).astype(np.intp)


def quad_segments(radius: float, tolerance: float) -> int:
    """How many chords a quarter circle takes: the number GEOS asks for when it rounds corners."""
    return max(2, arc_steps(radius, math.pi / 2, tolerance))


def flatten_bezier(curve: Bezier, tolerance: float) -> Points:
    """Points along the curve without its first one, (n, 2), chords within `tolerance`.

    A polynomial curve of degree d in n equal parameter steps is off by at most d·(d−1)/8 · M / n², M the
    largest second difference of its control points (the classic bound for Bézier flattening). A rational
    one is sampled, and the steps are doubled until the middles of its chords agree.
    """
    if curve.weights is None:
        second = np.diff(curve.control, n=2, axis=0)
        largest = float(np.hypot(second[:, 0], second[:, 1]).max(initial=0.0))
        factor = curve.degree * (curve.degree - 1) / 8
        steps = min(_MOST_PIECES, max(1, math.ceil(math.sqrt(factor * largest / tolerance))))
        return _at_even_steps(curve, steps)
    steps = _FIRST_PIECES
    while steps < _MOST_PIECES:
        fine = np.vstack([curve.control[:1], _at_even_steps(curve, 2 * steps)])
        middles = (fine[:-2:2] + fine[2::2]) / 2
        # A chord's sagitta at its middle parameter; the safety of 3/4 covers a maximum a little off it.
        if np.hypot(*(fine[1::2] - middles).T).max() <= 0.75 * tolerance:
            points: Points = fine[2::2]
            return points
        steps *= 2
    return _at_even_steps(curve, steps)


def _at_even_steps(curve: Bezier, steps: int) -> Points:
    points = curve.at(np.arange(1, steps + 1) / steps)
    points[-1] = curve.control[-1]
    return points


def flatten(path: Path, tolerance: float) -> Points:
    """Points of the path, (n, 2), every chord within `tolerance` of the curve.

    An open path starts at its first vertex and ends at its last; a closed one does not repeat its first.
    All arcs, and all polynomial curves of one degree, are worked out at once.
    """
    if not path.bulges.any() and not path.curves:
        return path.vertices
    return _flattened(path, tolerance)


@lru_cache(maxsize=_KEPT_PATHS)
def _flattened(path: Path, tolerance: float) -> Points:
    """The same for a path that is not straight; kept, because a drawing is looked at several times."""
    starts, ends = path.segment_ends()
    is_curve = np.zeros(len(ends), dtype=bool)
    is_curve[list(path.curves)] = True
    parts: list[_Part] = []
    arcs = np.flatnonzero((path.bulges != 0) & ~is_curve)
    if len(arcs):
        parts.append(_arcs(arcs, starts[arcs], ends[arcs], path.bulges[arcs], tolerance))
    parts += _curves(path, tolerance)
    points = _joined(path, ends, parts)
    points.flags.writeable = False
    return points


@dataclass(frozen=True, slots=True)
class _Part:
    """Segments of one kind: their numbers, how many chords each takes, and the points between its ends."""

    numbers: NDArray[np.intp]
    steps: NDArray[np.intp]
    between: Points


def _joined(path: Path, ends: Points, parts: list[_Part]) -> Points:
    """The points of all segments in their order; every segment ends exactly on its vertex."""
    steps = np.ones(len(ends), dtype=np.intp)
    for part in parts:
        steps[part.numbers] = part.steps
    last = np.cumsum(steps)
    points = np.empty((int(last[-1]) + 1, 2))
    points[0] = path.vertices[0]
    points[last] = ends
    for part in parts:
        owner, number = _inner(part.steps)
        points[(last - steps)[part.numbers][owner] + number] = part.between
    return points[:-1] if path.closed else points


def _inner(steps: NDArray[np.intp]) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """For each point between the ends of segments: which segment, and which of its points, from 1."""
    owner, number = members(steps - 1)
    return owner, number + 1


def _arcs(numbers: NDArray[np.intp], starts: Points, ends: Points, bulges: Points, tolerance: float) -> _Part:
    centres, radii = arc_centres(starts, ends, bulges)
    sweeps = 4 * np.arctan(bulges)
    steps = _arc_steps(radii, sweeps, tolerance)
    first = np.arctan2(starts[:, 1] - centres[:, 1], starts[:, 0] - centres[:, 0])
    owner, number = _inner(steps)
    angles = first[owner] + sweeps[owner] * number / steps[owner]
    round_one = np.column_stack([np.cos(angles), np.sin(angles)])
    return _Part(numbers, steps, centres[owner] + radii[owner, None] * round_one)


def _curves(path: Path, tolerance: float) -> list[_Part]:
    """Polynomial curves by degree; each rational one by itself."""
    parts: list[_Part] = []
    by_degree: dict[int, list[int]] = {}
    for number, curve in path.curves.items():
        if curve.weights is None:
            by_degree.setdefault(curve.degree, []).append(number)
        else:
            points = flatten_bezier(curve, tolerance)
            parts.append(_Part(np.array([number]), np.array([len(points)]), points[:-1]))
    for degree, numbers in by_degree.items():
        control = np.array([path.curves[number].control for number in numbers])
        second = np.diff(control, n=2, axis=1)
        largest = np.hypot(second[..., 0], second[..., 1]).max(axis=1, initial=0.0)
        wanted = np.ceil(np.sqrt(degree * (degree - 1) / 8 * largest / tolerance))
        steps = np.clip(wanted, 1, _MOST_PIECES).astype(np.intp)
        parts.append(_Part(np.array(numbers), steps, _between(control, steps)))
    return parts


def _between(control: Points, steps: NDArray[np.intp]) -> Points:
    """Points at even parameters between the ends of curves of one degree, by Bernstein's polynomials."""
    owner, number = _inner(steps)
    t = number / steps[owner]
    degree = control.shape[1] - 1
    points = np.zeros((len(owner), 2))
    for i in range(degree + 1):
        weight = math.comb(degree, i) * t**i * (1 - t) ** (degree - i)
        points += weight[:, None] * control[owner, i]
    return points
