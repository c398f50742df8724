"""The box round paths, compared with a fine flattening."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Bezier, Path

coordinates = st.floats(-100, 100)


@given(coordinates, coordinates, st.floats(0.1, 50), st.floats(-6, 6), st.floats(0.1, 6.2), st.booleans())
def test_the_box_of_an_arc_is_that_of_its_points(
    x: float, y: float, radius: float, first: float, sweep: float, clockwise: bool
) -> None:
    turn = -sweep if clockwise else sweep
    angles = np.array([first, first + turn])
    ends = (x, y) + radius * np.column_stack([np.cos(angles), np.sin(angles)])
    path = Path(ends, np.array([math.tan(turn / 4)]), closed=False)
    points = flatten(path, 1e-7)
    assert np.allclose(path.bounds(), [*points.min(axis=0), *points.max(axis=0)], atol=2e-7)


def test_a_circle_reaches_its_radius_on_every_side() -> None:
    assert Path.circle((3, 4), 12.5).bounds() == pytest.approx((-9.5, -8.5, 15.5, 16.5))


@given(st.lists(coordinates, min_size=6, max_size=6))
def test_a_bezier_lies_in_its_box(numbers: list[float]) -> None:
    curve = Bezier(np.array(numbers).reshape(3, 2))
    box = Path(curve.control[[0, -1]], np.zeros(1), False, {0: curve}).bounds()
    points = curve.at(np.linspace(0, 1, 500))
    assert (points >= np.array(box[:2]) - 0.004).all()  # a hundred-thousandth of its size, at most 300 mm
    assert (points <= np.array(box[2:]) + 0.004).all()
