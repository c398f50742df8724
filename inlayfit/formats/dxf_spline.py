"""B-splines as Béziers, without error.

On one knot span a B-spline of degree p is a polynomial; its Bézier control points are the values of its
polar form (blossom) at j times the span's end and p − j times its start, j = 0 … p. The blossom is computed
by de Boor's scheme with a different parameter at each step. (L. Ramshaw, Blossoms are polar forms, 1989;
G. Farin, Curves and Surfaces for CAGD, ch. 8.) A rational spline is the same in homogeneous coordinates.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from numpy.typing import ArrayLike

from inlayfit.geometry.path import Bezier, Path, Points, Segment

HIGHEST_DEGREE = 25
_FLAT_WEIGHTS = 1e-12


def spline_path(
    control: ArrayLike, degree: int, knots: Sequence[float], weights: Sequence[float] | None = None
) -> Path:
    """A B-spline as an open path of Béziers, one a knot span.

    Args:
        control: (n, 2) control points.
        degree: of the polynomials.
        knots: n + degree + 1 numbers that do not fall; need not be clamped.
        weights: n positive numbers, or None.

    Raises:
        ValueError: the numbers do not describe a spline.
    """
    points = np.asarray(control, dtype=float).reshape(-1, 2)
    values = np.asarray(knots, dtype=float)
    weighted = _checked_weights(points, weights)
    _check(points, degree, values)
    homogeneous = points if weighted is None else np.column_stack([points * weighted[:, None], weighted])
    pieces = _bezier_pieces(homogeneous, degree, values)
    curves = [_as_bezier(piece) for piece in pieces]
    for before, after in pairwise(curves):
        if not np.allclose(before.control[-1], after.control[0], rtol=0, atol=1e-9 * (1 + _size(points))):
            raise ValueError("the spline falls into pieces at a knot")
    segments: list[Segment] = []
    start = curves[0].control[0]
    for curve in curves:
        joined = np.vstack([start[None], curve.control[1:]])
        segments.append((joined[-1], 0.0 if degree == 1 else Bezier(joined, curve.weights)))
        start = joined[-1]
    return Path.of_segments(curves[0].control[0], segments, closed=False)


def even_knots(count: int, degree: int) -> list[float]:
    """Clamped knots in even steps, for a spline that states none."""
    inner = max(0, count - degree - 1)
    return [0.0] * (degree + 1) + [float(i + 1) for i in range(inner)] + [float(inner + 1)] * (degree + 1)


def _size(points: Points) -> float:
    return float(np.abs(points).max(initial=0.0))


def _checked_weights(points: Points, weights: Sequence[float] | None) -> Points | None:
    if weights is None or len(weights) == 0:
        return None
    values = np.asarray(weights, dtype=float)
    if len(values) != len(points) or not np.isfinite(values).all() or (values <= 0).any():
        raise ValueError("a weight is missing or not positive")
    return None if np.ptp(values) <= _FLAT_WEIGHTS * values[0] else values


def _check(points: Points, degree: int, knots: Points) -> None:
    if not 1 <= degree <= HIGHEST_DEGREE:
        raise ValueError(f"a degree of {degree} is out of range")
    if len(points) <= degree:
        raise ValueError("there are too few control points")
    if len(knots) != len(points) + degree + 1:
        raise ValueError("the number of knots does not fit")
    if not (np.isfinite(points).all() and np.isfinite(knots).all()) or (np.diff(knots) < 0).any():
        raise ValueError("a knot or a control point is out of order or not finite")
    if not knots[degree] < knots[len(points)]:
        raise ValueError("all its knots are equal")


def _bezier_pieces(control: Points, degree: int, knots: Points) -> Points:
    """Bézier control points, (spans, degree + 1, columns)."""
    spans = np.arange(degree, len(control))
    spans = spans[knots[spans] < knots[spans + 1]]
    low, high = knots[spans], knots[spans + 1]
    pieces = np.empty((len(spans), degree + 1, control.shape[1]))
    for j in range(degree + 1):
        arguments = [high] * j + [low] * (degree - j)
        pieces[:, j] = _blossom(control, degree, knots, spans, arguments)
    return pieces


def _blossom(
    control: Points, degree: int, knots: Points, spans: np.ndarray[tuple[int], np.dtype[np.int64]],
    arguments: list[Points],
) -> Points:  # fmt: skip
    rows = [control[spans - degree + i] for i in range(degree + 1)]
    for step in range(1, degree + 1):
        at = arguments[step - 1]
        for i in range(degree, step - 1, -1):
            left, right = knots[spans - degree + i], knots[spans + 1 + i - step]
            alpha = ((at - left) / (right - left))[:, None]
            rows[i] = rows[i - 1] * (1 - alpha) + rows[i] * alpha
    return rows[degree]


def _as_bezier(piece: Points) -> Bezier:
    if piece.shape[1] == 2:
        return Bezier(piece)
    weights = piece[:, 2]
    return Bezier(piece[:, :2] / weights[:, None], weights / weights[0])
