"""Points on the screen: thinning and resampling stay on the line, reaches are those of the closed forms."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Polygon
from shapely.geometry import LinearRing, Point
from shapely.ops import unary_union

from inlayfit.app.canvas import polylines
from inlayfit.geometry.path import Points


def circle(radius: float, count: int = 400, *, clockwise: bool = False) -> Points:
    angles = np.arange(count) * (2 * math.pi / count) * (-1 if clockwise else 1)
    ring: Points = radius * np.column_stack([np.cos(angles), np.sin(angles)])
    return ring


def star(count: int, seed: int) -> Points:
    rng = np.random.default_rng(seed)
    angles = np.sort(rng.uniform(0, 2 * math.pi, count))
    ring: Points = (10 + 5 * rng.random(count))[:, None] * np.column_stack([np.cos(angles), np.sin(angles)])
    return ring


stars = st.builds(star, st.integers(5, 300), st.integers(0, 10_000))


@given(stars, st.floats(0.05, 2))
def test_thinning_keeps_points_of_the_ring_and_its_course(ring: Points, step: float) -> None:
    thin = polylines.thinned(ring, step)
    assert {tuple(p) for p in thin} <= {tuple(p) for p in ring}
    assert len(thin) >= 3
    perimeter = float(polylines.ring_lengths(ring)[-1])
    assert len(thin) <= max(8, perimeter / step + 2)
    if len(thin) > 3:
        assert LinearRing(thin).hausdorff_distance(LinearRing(ring)) <= step + 1e-9


@given(stars, st.floats(0.1, 2))
def test_samples_lie_on_the_ring_and_carry_its_values(ring: Points, step: float) -> None:
    lengths = polylines.ring_lengths(ring)
    values = ring[:, 0] + 2 * ring[:, 1]
    samples = polylines.resampled(ring, values, lengths, step)
    line = LinearRing(ring)
    assert max(line.distance(Point(p)) for p in samples.points) < 1e-9
    assert samples.values == pytest.approx(samples.points[:, 0] + 2 * samples.points[:, 1])
    apart = np.hypot(*np.diff(samples.points, axis=0).T)
    assert apart.max() <= step + 1e-9 or len(samples.points) == 12


@given(stars, st.floats(-8, 8), st.floats(-8, 8), st.floats(0.5, 12))
def test_sampling_within_a_box_misses_nothing_there(ring: Points, x: float, y: float, side: float) -> None:
    box = (x, y, x + side, y + side)
    lengths = polylines.ring_lengths(ring)
    pieces = polylines.resampled_within(ring, np.zeros(len(ring)), lengths, 0.3, box)
    inside = LinearRing(ring).intersection(
        Polygon([(x, y), (x + side, y), (x + side, y + side), (x, y + side)])
    )
    found = unary_union([LineString(piece.points) for piece in pieces])
    assert inside.difference(found.buffer(1e-6)).length < 1e-6


def test_sampling_within_a_box_stays_small_for_long_segments() -> None:
    ring = np.array([(0.0, 0.0), (1e6, 0.0), (1e6, 1e6), (0.0, 1e6)])
    box = (500_000.0, -1.0, 500_010.0, 1.0)
    pieces = polylines.resampled_within(ring, np.zeros(4), polylines.ring_lengths(ring), 0.5, box)
    assert sum(len(piece.points) for piece in pieces) < 100


def test_normals_of_a_counter_clockwise_ring_point_inwards() -> None:
    ring = circle(5)
    normals = polylines.left_normals(ring, closed=True)
    assert normals == pytest.approx(-ring / 5, abs=1e-9)


@pytest.mark.parametrize("radius", [3.0, 10.0, 40.0])
def test_the_reach_inside_a_circle_is_its_radius(radius: float) -> None:
    """The medial axis of a disk is its centre."""
    ring = circle(radius)
    normals = polylines.left_normals(ring, closed=True)
    assert polylines.reaches(ring, ring, normals, 100.0) == pytest.approx(radius, rel=0.02)


def test_the_reach_between_two_walls_is_half_their_distance() -> None:
    x = np.linspace(0, 100, 201)
    walls = np.vstack([np.column_stack([x, 0 * x]), np.column_stack([x[::-1], 0 * x + 6])])
    normals = np.vstack([np.tile([0.0, 1.0], (201, 1)), np.tile([0.0, -1.0], (201, 1))])
    assert polylines.reaches(walls, walls, normals, 11.0) == pytest.approx(3.0, rel=0.02)


@given(st.integers(2, 9), st.floats(0, 0.45), st.floats(0, math.pi), st.floats(0.5, 6))
def test_a_line_moved_inwards_by_less_than_its_reach_stays_inside(
    lobes: int, depth: float, phase: float, furthest: float
) -> None:
    ring = circle(10, 3000)
    angles = np.arctan2(ring[:, 1], ring[:, 0])
    ring = ring * (1 + depth * np.cos(lobes * angles + phase))[:, None]
    normals = polylines.left_normals(ring, closed=True)
    reach = polylines.reaches(ring, ring, normals, furthest)
    moved = ring + normals * (0.85 * reach)[:, None]
    inside = Polygon(ring).buffer(1e-6)
    assert all(inside.contains(Point(p)) for p in moved[::11])


@given(st.integers(2, 200), st.floats(1, 6))
def test_a_strip_covers_its_line_at_its_width(count: int, width: float) -> None:
    x = np.linspace(0, 50, count)
    line = np.column_stack([x, 0 * x])
    pieces = polylines.strips(line, polylines.left_normals(line, closed=False), width)
    covered = unary_union([Polygon(piece) for piece in pieces])
    assert covered.area == pytest.approx(50 * width)
    assert covered.geom_type == "Polygon"


@given(st.integers(2, 100), st.floats(3, 200))
def test_dashes_have_one_length_and_begin_and_end_the_line(count: int, length: float) -> None:
    x = np.linspace(0, length, count)
    pieces = polylines.dashes(np.column_stack([x, 0 * x]), 4.0, on=8.0, off=5.0)
    spans = sorted((float(piece[:, 0].min()), float(piece[:, 0].max())) for piece in pieces)
    assert spans[0][0] == pytest.approx(0, abs=1e-9)
    assert spans[-1][1] == pytest.approx(length)
    dash = [b - a for a, b in spans]
    assert dash == pytest.approx([dash[0]] * len(dash))
    gaps = [b[0] - a[1] for a, b in pairwise(spans)]
    assert gaps == pytest.approx([5 / 8 * dash[0]] * len(gaps))


@given(st.lists(st.integers(0, 4), min_size=1, max_size=60), st.booleans())
def test_runs_cover_the_line_once_in_order(classes: list[int], closed: bool) -> None:
    numbers = np.array(classes)
    runs = polylines.class_runs(numbers, closed=closed)
    firsts = [int(i) for _, where in runs for i in where[: len(where) - 1]]
    last = runs[-1][1][-1]
    steps = len(classes) if closed else len(classes) - 1
    assert len(firsts) == steps
    assert len(set(firsts)) == steps
    for number, where in runs:
        assert all(numbers[i] == number for i in where[:-1])
    if closed:
        assert last == runs[0][1][0]
