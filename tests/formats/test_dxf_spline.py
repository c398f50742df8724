from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.interpolate import BSpline

from inlayfit.formats.dxf_spline import even_knots, spline_path


@given(
    degree=st.integers(2, 5),
    extra=st.integers(0, 6),
    seed=st.integers(0, 2**32 - 1),
    clamped=st.booleans(),
)
def test_the_beziers_are_the_spline_itself(degree: int, extra: int, seed: int, clamped: bool) -> None:
    """Against SciPy's B-spline (de Boor's algorithm in compiled code), clamped or not, knots uneven."""
    random = np.random.default_rng(seed)
    count = degree + 1 + extra
    control = random.uniform(-10, 10, (count, 2))
    knots = np.cumsum(random.uniform(0.1, 1.0, count + degree + 1))
    if clamped:
        knots[: degree + 1], knots[-degree - 1 :] = knots[degree], knots[-degree - 1]
    path = spline_path(control, degree, knots.tolist())
    reference = BSpline(knots, control, degree)
    spans = knots[degree : count + 1]
    t = np.linspace(0, 1, 7)
    for i, (low, high) in enumerate(pairwise(spans)):
        assert path.curves[i].at(t) == pytest.approx(reference(low + (high - low) * t), abs=1e-8)


def test_a_rational_spline_of_degree_two_draws_the_circle_exactly() -> None:
    """The nine-point circle of every NURBS textbook (Piegl and Tiller, The NURBS Book, example 7.2)."""
    corner = 0.5**0.5
    control = [(5, 0), (5, 5), (0, 5), (-5, 5), (-5, 0), (-5, -5), (0, -5), (5, -5), (5, 0)]
    knots = [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4]
    path = spline_path(control, 2, knots, [1, corner, 1, corner, 1, corner, 1, corner, 1])
    for curve in path.curves.values():
        assert np.hypot(*curve.at(np.linspace(0, 1, 33)).T) == pytest.approx(np.full(33, 5.0), abs=1e-12)


def test_degree_one_is_a_polyline() -> None:
    path = spline_path([(0, 0), (1, 2), (3, 2)], 1, even_knots(3, 1))
    assert not path.curves
    assert path.vertices.tolist() == [[0, 0], [1, 2], [3, 2]]


@pytest.mark.parametrize(
    ("control", "degree", "knots", "weights"),
    [
        ([(0, 0), (1, 1)], 3, [0, 1, 2], None),
        ([(0, 0), (1, 1)], 1, [0, 1], None),
        ([(0, 0), (1, 1)], 1, [0, 1, 0, 1], None),
        ([(0, 0), (1, 1)], 1, [0, 0, 0, 0], None),
        ([(0, 0), (1, float("nan"))], 1, [0, 0, 1, 1], None),
        ([(0, 0), (1, 1)], 1, [0, 0, 1, 1], [1, -1]),
        ([(0, 0)] * 5, 2_000_000, [0], None),
    ],
)
def test_numbers_that_are_no_spline_are_refused(
    control: list[tuple[float, float]], degree: int, knots: list[float], weights: list[float] | None
) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        spline_path(control, degree, knots, weights)
