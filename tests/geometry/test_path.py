"""Paths are values: lines, arcs and curves that keep their form however they are looked at."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Bezier, Path, arc_centres, bulge_of_sweep
from tests.strategies import arc_paths, examples

paths = st.one_of(arc_paths(), arc_paths(closed=False))
coordinates = st.floats(-50, 50).map(lambda value: round(value, 4))
beziers = st.lists(st.tuples(coordinates, coordinates), min_size=3, max_size=5).map(
    lambda points: Bezier(np.array(points))
)


@examples(30, 300)
@given(path=paths)
def test_turning_round_twice_is_the_same_path(path: Path) -> None:
    assert path.reversed().reversed() == path
    assert hash(path.reversed().reversed()) == hash(path)


@examples(30, 300)
@given(path=paths)
def test_the_way_back_has_the_same_points(path: Path) -> None:
    there, back = flatten(path, 0.01), flatten(path.reversed(), 0.01)
    if path.closed:
        back = np.roll(back[::-1], 1, axis=0)
        there = np.roll(there, -np.flatnonzero((there == back[0]).all(axis=1))[0], axis=0)
        assert np.abs(there - back).max() <= 1e-9
    else:
        assert np.abs(there - back[::-1]).max() <= 1e-9


@examples(30, 300)
@given(path=paths)
def test_the_bounds_hold_the_path(path: Path) -> None:
    x0, y0, x1, y1 = path.bounds()
    points = flatten(path, 0.001)
    assert points.min(axis=0)[0] >= x0 - 1e-9
    assert points.min(axis=0)[1] >= y0 - 1e-9
    assert points.max(axis=0)[0] <= x1 + 1e-9
    assert points.max(axis=0)[1] <= y1 + 1e-9


@examples(50, 500)
@given(
    centre=st.tuples(coordinates, coordinates),
    radius=st.floats(0.01, 500),
    first=st.floats(-math.pi, math.pi),
    sweep=st.one_of(st.floats(0.01, 6.2), st.floats(-6.2, -0.01)),
)
def test_bulge_is_the_tangent_of_a_quarter_of_the_sweep(
    centre: tuple[float, float], radius: float, first: float, sweep: float
) -> None:
    """DXF reference, VERTEX group 42: "the bulge is the tangent of one fourth the included angle"."""
    ends = [
        (centre[0] + radius * math.cos(angle), centre[1] + radius * math.sin(angle))
        for angle in (first, first + sweep)
    ]
    bulge = bulge_of_sweep(sweep)
    assert bulge == pytest.approx(math.tan(sweep / 4))
    centres, radii = arc_centres(np.array([ends[0]]), np.array([ends[1]]), np.array([bulge]))
    assert radii[0] == pytest.approx(radius, rel=1e-6)
    assert centres[0] == pytest.approx(centre, abs=1e-6 * (1 + radius))


def test_a_positive_bulge_turns_left() -> None:
    """Half a circle from (0, 0) to (2, 0) with bulge 1 runs counter-clockwise, below the chord."""
    points = flatten(Path(np.array([(0, 0), (2, 0)]), np.array([1.0]), closed=False), 0.001)
    assert points[:, 1].min() == pytest.approx(-1, abs=0.001)
    assert points[:, 1].max() == pytest.approx(0, abs=1e-12)


def test_a_circle_is_two_half_circles() -> None:
    circle = Path.circle((3, 4), 5)
    assert circle.bulges.tolist() == [1, 1]
    points = flatten(circle, 0.0001)
    assert np.hypot(*(points - (3, 4)).T) == pytest.approx(5)
    assert circle.bounds() == pytest.approx((-2, -1, 8, 9))


@examples(30, 200)
@given(curve=beziers, t=st.floats(0, 1))
def test_a_bezier_is_bernsteins_polynomial(curve: Bezier, t: float) -> None:
    """B(t) = Σ C(d, i)·(1 − t)^(d−i)·t^i·P_i (Bernstein form; any textbook on curves)."""
    d = curve.degree
    weights = [math.comb(d, i) * (1 - t) ** (d - i) * t**i for i in range(d + 1)]
    expected = np.array(weights) @ curve.control
    assert np.abs(curve.at(np.array([t]))[0] - expected).max() <= 1e-9
    assert np.abs(curve.reversed().at(np.array([1 - t]))[0] - expected).max() <= 1e-9


@given(curve=beziers, weight=st.floats(0.1, 10))
@examples(20, 200)
def test_equal_weights_weigh_nothing(curve: Bezier, weight: float) -> None:
    weighted = Bezier(curve.control, np.full(len(curve.control), weight))
    t = np.linspace(0, 1, 9)
    assert np.abs(weighted.at(t) - curve.at(t)).max() <= 1e-9
    assert weighted != curve


def test_building_from_segments() -> None:
    curve = Bezier(np.array([(4.0, 0), (5, 2), (4, 4)]))
    path = Path.of_segments(
        (0, 0), [((4, 0), 0.0), ((4, 4), curve), ((0, 4), 0.5), ((0, 0), 0.0)], closed=True
    )
    assert path.vertices.tolist() == [[0, 0], [4, 0], [4, 4], [0, 4]]
    assert path.bulges.tolist() == [0, 0, 0.5, 0]
    assert dict(path.curves) == {1: curve}
    assert path.reversed().curves[2] == curve.reversed()
    assert path.end.tolist() == [0, 0]


def test_closing_an_open_path_joins_its_ends() -> None:
    opened = Path.polyline([(0, 0), (4, 0), (4, 4)], closed=False)
    assert opened.joined_closed().segment_count == 3
    returning = Path.polyline([(0, 0), (4, 0), (4, 4), (0, 0)], closed=False)
    assert returning.joined_closed() == Path.polyline([(0, 0), (4, 0), (4, 4)])
    closed = Path.circle((0, 0), 1)
    assert closed.joined_closed() is closed


def test_a_path_is_a_value() -> None:
    points = np.array([(0.0, 0.0), (4.0, 0.0), (4.0, 4.0)])
    path = Path.polyline(points)
    points[0] = 99
    assert path.start.tolist() == [0, 0], "a later change of the array does not reach it"
    with pytest.raises(ValueError, match="read-only"):
        path.vertices[0, 0] = 1.0
    assert path != Path.polyline([(0, 0), (4, 0), (4, 5)])
    assert path != "a path"


def test_the_wrong_number_of_bulges_is_refused() -> None:
    with pytest.raises(ValueError, match="3 vertices need 3 bulges, not 2"):
        Path(np.array([(0, 0), (1, 0), (1, 1)]), np.zeros(2))


@pytest.mark.parametrize("bad", [math.nan, math.inf])
def test_a_path_knows_whether_it_is_finite(bad: float) -> None:
    assert Path.circle((0, 0), 1).is_finite()
    assert not Path.polyline([(0, 0), (bad, 0), (1, 1)]).is_finite()
    assert not Path(np.array([(0, 0), (1, 0)]), np.array([bad, 0.0])).is_finite()
    curve = Bezier(np.array([(0, 0), (bad, 1), (1, 0)]))
    assert not Path(np.array([(0, 0), (1, 0)]), np.zeros(1), False, {0: curve}).is_finite()
