"""Curves become chords within the tolerance that was named, and not with more chords than it needs."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.flatten import arc_steps, flatten, flatten_bezier, quad_segments
from inlayfit.geometry.path import Bezier, Path, arc_centres
from inlayfit.geometry.transform import arc_as_beziers
from tests.strategies import arc_paths, examples

tolerances = st.floats(-4.5, -1).map(lambda exponent: 10**exponent)
coordinates = st.floats(-50, 50).map(lambda value: round(value, 4))
control = st.tuples(coordinates, coordinates)


@examples(50, 500)
@given(radius=st.floats(0.001, 5000), sweep=st.floats(0.01, 2 * math.pi), tolerance=tolerances)
def test_an_arcs_chords_are_within_the_tolerance_and_one_fewer_are_not(
    radius: float, sweep: float, tolerance: float
) -> None:
    """Sagitta of a chord over the angle a: r·(1 − cos(a/2)) (plane geometry)."""
    steps = arc_steps(radius, sweep, tolerance)

    def sagitta(count: int) -> float:
        return radius * (1 - math.cos(min(math.pi, sweep / count / 2)))

    if radius > tolerance:
        assert sagitta(steps) <= tolerance * (1 + 1e-6)
        assert steps == 1 or sagitta(steps - 1) > tolerance * (1 - 1e-6)


@pytest.mark.parametrize("radius", [0.01, 0.5, 1.5, 6.0, 25.0])
def test_geos_rounds_a_circle_within_the_tolerance(radius: float) -> None:
    disk = shapely.buffer(shapely.Point(0, 0), radius, quad_segs=quad_segments(radius, 0.00025))
    middles = (shapely.get_coordinates(disk)[:-1] + shapely.get_coordinates(disk)[1:]) / 2
    assert radius - np.hypot(*middles.T).min() <= 0.00025 * (1 + 1e-6)


@examples(30, 300)
@given(path=arc_paths(), tolerance=tolerances)
def test_flattened_arcs_lie_on_their_circles(path: Path, tolerance: float) -> None:
    points = flatten(path, tolerance)
    starts, ends = path.segment_ends()
    arcs = np.flatnonzero(path.bulges)
    at = [int(np.flatnonzero((points == vertex).all(axis=1))[0]) for vertex in path.vertices]
    for i in arcs:
        centre, radius = arc_centres(starts[[i]], ends[[i]], path.bulges[[i]])
        last = at[(i + 1) % len(at)] or len(points)
        run = np.vstack([points, points[:1]])[at[i] : last + 1]
        assert np.abs(np.hypot(*(run - centre[0]).T) - radius[0]).max() <= 1e-9 * max(1.0, radius[0])
        middles = (run[1:] + run[:-1]) / 2
        assert (radius[0] - np.hypot(*(middles - centre[0]).T)).max() <= tolerance * (1 + 1e-6)


@examples(40, 400)
@given(points=st.lists(control, min_size=3, max_size=5), tolerance=tolerances)
def test_a_flattened_bezier_is_within_the_tolerance(
    points: list[tuple[float, float]], tolerance: float
) -> None:
    curve = Bezier(np.array(points))
    chords = np.vstack([curve.control[:1], flatten_bezier(curve, tolerance)])
    assert (chords[-1] == curve.control[-1]).all()
    samples = curve.at(np.linspace(0, 1, 3000))
    line = shapely.LineString(chords)
    shapely.prepare(line)
    assert shapely.distance(line, shapely.points(samples)).max() <= tolerance * (1 + 1e-6) + 1e-12


@examples(30, 300)
@given(bulge=st.floats(0.02, 0.99), size=st.floats(0.1, 200), tolerance=tolerances)
def test_a_rational_bezier_arc_flattens_onto_its_circle(bulge: float, size: float, tolerance: float) -> None:
    start, end = np.array([0.0, 0.0]), np.array([size, 0.3 * size])
    centre, radius = arc_centres(start[None], end[None], np.array([bulge]))
    for piece in arc_as_beziers(start, end, bulge):
        chords = np.vstack([piece.control[:1], flatten_bezier(piece, tolerance)])
        middles = (chords[1:] + chords[:-1]) / 2
        assert np.abs(np.hypot(*(chords - centre[0]).T) - radius[0]).max() <= 1e-9 * max(1.0, radius[0])
        assert (radius[0] - np.hypot(*(middles - centre[0]).T)).max() <= tolerance * (1 + 1e-6)


def test_straight_pieces_stay_as_they_are() -> None:
    path = Path.polyline([(0, 0), (4, 0), (4, 3)])
    assert flatten(path, 0.1) is path.vertices


@examples(30, 300)
@given(path=arc_paths(closed=False), tolerance=tolerances)
def test_an_open_path_keeps_its_ends_and_all_its_vertices(path: Path, tolerance: float) -> None:
    points = flatten(path, tolerance)
    assert (points[0] == path.start).all()
    assert (points[-1] == path.end).all()
    for vertex in path.vertices:
        assert (points == vertex).all(axis=1).any()


def test_a_closed_path_does_not_repeat_its_first_point() -> None:
    points = flatten(Path.circle((1, 2), 3), 0.001)
    assert not np.allclose(points[0], points[-1])
    assert shapely.Polygon(points).area == pytest.approx(9 * math.pi, rel=1e-3)
