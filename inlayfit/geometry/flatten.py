"""Turn true curves into chords, by a named tolerance: the only place where a curve loses its exactness.

The points lie on the curve, so a chord is off by at most its sagitta, always towards the inside of the bend.
"""

from __future__ import annotations

import math

import numpy as np

from inlayfit.geometry.path import Bezier, Path, Points, arc_centres

_MOST_PIECES = 100_000
_FIRST_PIECES = 4


def arc_steps(radius: float, sweep_rad: float, tolerance: float) -> int:
    """How many chords keep an arc of this radius and sweep within `tolerance`.

    A chord over the angle a is off by r·(1 − cos(a/2)), its sagitta.
    """
    if radius <= tolerance:
        return max(1, math.ceil(abs(sweep_rad) / (math.pi / 2)))
    step = 2 * math.acos(1 - tolerance / radius)
    return min(_MOST_PIECES, max(1, math.ceil(abs(sweep_rad) / step - 1e-9)))


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


def _flatten_arc(start: Points, end: Points, bulge: float, tolerance: float) -> Points:
    centres, radii = arc_centres(start[None], end[None], np.array([bulge]))
    sweep = 4 * math.atan(bulge)
    steps = arc_steps(float(radii[0]), sweep, tolerance)
    first = math.atan2(start[1] - centres[0, 1], start[0] - centres[0, 0])
    angles = first + sweep * np.arange(1, steps + 1) / steps
    points: Points = centres[0] + radii[0] * np.column_stack([np.cos(angles), np.sin(angles)])
    points[-1] = end
    return points


def flatten(path: Path, tolerance: float) -> Points:
    """Points of the path, (n, 2), every chord within `tolerance` of the curve.

    An open path starts at its first vertex and ends at its last; a closed one does not repeat its first.
    """
    if not path.bulges.any() and not path.curves:
        return path.vertices
    starts, ends = path.segment_ends()
    pieces: list[Points] = [path.vertices[:1]]
    special = sorted({*np.flatnonzero(path.bulges).tolist(), *path.curves})
    done = 0
    for i in special:
        pieces.append(ends[done:i])
        curve = path.curves.get(i)
        if curve is not None:
            pieces.append(flatten_bezier(curve, tolerance))
        else:
            pieces.append(_flatten_arc(starts[i], ends[i], float(path.bulges[i]), tolerance))
        done = i + 1
    pieces.append(ends[done:])
    points = np.vstack(pieces)
    return points[:-1] if path.closed else points
