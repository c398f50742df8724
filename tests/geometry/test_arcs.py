"""The laws of arc recovery: true arcs come back, real polygons stay, and nothing moves too far."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry import arcs
from inlayfit.geometry.arcs import curves_as_arcs, recover_arcs, region_paths, total
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.morphology import closed, erode, opened
from inlayfit.geometry.path import Bezier, Path, Points, arc_centres
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.strategies import examples, regions

TOLERANCE = 0.001
CHORD = EXACT.arc_mm
FINE = 1e-6


def regular(count: int, radius: float) -> Points:
    angles = np.arange(count) * 2 * math.pi / count
    return radius * np.column_stack([np.cos(angles), np.sin(angles)])


def largest_distance(ring: Points, path: Path) -> float:
    """Both ways, between the chords and the recovered line, by an engine that knows nothing of arcs."""
    line = flatten(path, FINE)
    return max(farthest(_dense(ring), _closed(line)), farthest(line, _closed(ring)))


def farthest(points: Points, line: Points) -> float:
    """Largest distance of the points from the chords through `line`."""
    segments: Any = shapely.linestrings(np.stack([line[:-1], line[1:]], axis=1))
    tree = shapely.STRtree(segments)
    _, distances = tree.query_nearest(shapely.points(points), return_distance=True, all_matches=False)
    return float(distances.max())


def _closed(ring: Points) -> Points:
    return np.vstack([ring, ring[:1]])


def _dense(ring: Points) -> Points:
    following = np.roll(ring, -1, axis=0)
    return np.vstack([ring + (following - ring) * part for part in (0.0, 0.25, 0.5, 0.75)])


@st.composite
def rounded_stars(draw: st.DrawFn) -> Region:
    """Star polygons about a centre, opened by a disk: straight pieces and arcs of one radius."""
    count = draw(st.integers(3, 9))
    radii = np.array(draw(st.lists(st.floats(8.0, 30.0), min_size=count, max_size=count)))
    angles = np.arange(count) * 2 * math.pi / count
    star = Region.of_ring(radii[:, None] * np.column_stack([np.cos(angles), np.sin(angles)]))
    return opened(star, draw(st.floats(0.3, 1.5)), EXACT)


@given(rounded_stars(), st.floats(0.0, 0.3))
def test_what_comes_back_stays_within_tolerance_of_every_chord(star: Region, inset: float) -> None:
    region = erode(star, inset, EXACT)
    for ring in region.rings():
        recovery = recover_arcs(ring, tolerance=TOLERANCE)
        assert recovery.tally.worst_mm <= TOLERANCE
        assert largest_distance(ring, recovery.path) <= TOLERANCE + FINE


@examples(25, 300)
@given(regions(), st.floats(0.05, 2.0), st.floats(-0.2, 0.3), st.floats(-300, 300))
def test_a_region_stays_valid_and_within_tolerance(
    drawn: Region, radius: float, inset: float, x: float
) -> None:
    region = erode(opened(drawn, radius, EXACT), inset, EXACT).moved(Transform.shift(x, -x))
    recovery = region_paths(region, tolerance=TOLERANCE)
    for rings, polygon in zip(recovery.polygons, region.polygons, strict=True):
        lines = [flatten(path, 1e-5) for path in rings]
        recovered = shapely.Polygon(lines[0], lines[1:])
        assert recovered.is_valid
        there = shapely.distance(shapely.points(shapely.get_coordinates(recovered)), polygon.boundary).max()
        back = shapely.distance(shapely.points(shapely.get_coordinates(polygon)), recovered.boundary).max()
        assert max(there, back) <= TOLERANCE + 1e-5


@given(rounded_stars())
def test_a_rounded_star_is_about_one_arc_a_corner(star: Region) -> None:
    tally = region_paths(star).tally
    corners = 18
    assert tally.segments_out <= 3 * corners
    assert tally.segments_out < tally.points_in / 2 or tally.points_in < 3 * corners


@pytest.mark.parametrize("count", [3, 4, 5, 6, 12, 36, 100])
def test_a_real_polygon_keeps_its_corners(count: int) -> None:
    ring = regular(count, 20.0)
    recovery = recover_arcs(ring)
    assert recovery.tally.arcs_out == 0
    assert np.array_equal(recovery.path.vertices, ring)


def test_a_polygon_whose_sagitta_is_just_too_large_stays_one() -> None:
    # sagitta = R·(1 − cos(π/n)): 36 corners give 1 µm at R = 0.2628 mm
    radius = TOLERANCE / (1 - math.cos(math.pi / 36))
    assert recover_arcs(regular(36, radius * 1.01)).tally.arcs_out == 0
    assert recover_arcs(regular(36, radius * 0.99)).tally.arcs_out == 2


@given(
    st.floats(-500, 500), st.floats(-500, 500), st.floats(0.05, 400), st.booleans(), st.integers(0, 10_000)
)
def test_a_full_circle_becomes_two_exact_half_circles(
    x: float, y: float, radius: float, clockwise: bool, first: int
) -> None:
    drawn = Path.circle((x, y), radius)
    ring = flatten(drawn.reversed() if clockwise else drawn, CHORD)
    path = recover_arcs(np.roll(ring, first, axis=0)).path
    assert path.bulges.tolist() == ([-1.0, -1.0] if clockwise else [1.0, 1.0])
    centres, radii = arc_centres(*path.segment_ends(), path.bulges)
    assert np.allclose(centres, (x, y), atol=1e-8 * max(1.0, radius) + 1e-9)
    assert np.allclose(radii, radius, atol=1e-8 * max(1.0, radius) + 1e-9)


@given(st.floats(0.5, 40), st.floats(1, 80), st.integers(0, 400))
def test_a_slot_is_two_lines_and_two_half_turns(radius: float, length: float, first: int) -> None:
    slot = Path(
        np.array([[0, -radius], [length, -radius], [length, radius], [0, radius]]), np.array([0.0, 1, 0, 1])
    )
    ring = np.roll(flatten(slot, CHORD), first, axis=0)
    path = recover_arcs(ring).path
    assert path.segment_count == 4
    assert sorted(np.round(path.bulges, 3)) == [0.0, 0.0, 1.0, 1.0]


def test_a_large_and_a_small_arc_that_run_into_each_other_are_told_apart() -> None:
    """An egg: three radii, tangent at every joint, so no corner says where an arc ends."""
    centre = (10 - 18.5, 0.0)  # any centre on the axis of the lower half keeps the joint tangent
    radius = 18.5
    angle = math.radians(35)
    top_right = (centre[0] + radius * math.cos(angle), radius * math.sin(angle))
    apex_centre_y = top_right[1] - top_right[0] * math.tan(angle)
    cap = math.tan((math.pi - 2 * angle) / 4)
    side = math.tan(angle / 4)
    egg = Path(
        np.array([[-10.0, 0.0], [10.0, 0.0], top_right, (-top_right[0], top_right[1])]),
        np.array([1.0, side, cap, side]),
    )
    path = recover_arcs(flatten(egg, CHORD)).path
    _, radii = arc_centres(*path.segment_ends(), path.bulges)
    cap_radius = math.hypot(top_right[0], top_right[1] - apex_centre_y)
    assert path.segment_count == 4
    assert sorted(radii) == pytest.approx(sorted([10.0, radius, radius, cap_radius]), abs=0.02)


def test_a_matched_fit_of_two_halves_has_no_more_pieces_than_corners_and_walls() -> None:
    drawn = Region.of_ring([(0, 0), (40, 0), (40, 10), (12, 10), (12, 30), (0, 30)])
    plug = closed(erode(opened(drawn, 1.5, EXACT), 0.05, EXACT), 1.0, EXACT)
    recovery = region_paths(plug)
    assert recovery.tally.points_in > 200
    assert recovery.tally.segments_out == 12
    assert recovery.tally.arcs_out == 6
    assert recovery.tally.worst_mm < 0.0005


def test_rings_are_grouped_by_polygon_outer_ring_first() -> None:
    hole = flatten(Path.circle((10, 10), 3), CHORD)[::-1]
    region = Region.of_ring([(0, 0), (20, 0), (20, 20), (0, 20)], [hole])
    region = region.union(Region.of_ring([(30, 0), (40, 0), (40, 10)]))
    recovery = region_paths(region)
    assert sorted(len(rings) for rings in recovery.polygons) == [1, 2]
    ring_with_hole = max(recovery.polygons, key=len)
    assert ring_with_hole[0].segment_count == 4
    assert ring_with_hole[1].bulges.tolist() == [-1.0, -1.0]
    assert len(recovery.paths) == 3
    assert total([recovery, recovery]).points_in == 2 * region.vertex_count


def test_repeated_and_nearly_repeated_points_change_nothing() -> None:
    ring = flatten(Path.circle((0, 0), 5), CHORD)
    doubled = np.repeat(ring, 2, axis=0)
    assert recover_arcs(doubled).path.segment_count == 2
    jittered = doubled.copy()
    jittered[1::2] += 1e-9
    assert recover_arcs(jittered).path.segment_count == 2


@pytest.mark.parametrize("points", [[], [(1, 1)], [(0, 0), (1, 0)], [(2, 2)] * 5])
def test_what_is_no_ring_is_left_alone(points: list[tuple[float, float]]) -> None:
    if not points:
        with pytest.raises(ValueError, match="bulges"):
            recover_arcs(points)
        return
    recovery = recover_arcs(points)
    assert recovery.tally.arcs_out == 0
    assert recovery.path.segment_count <= len(points)


def test_an_ellipse_becomes_arcs_within_tolerance() -> None:
    angles = np.arange(3600) * 2 * math.pi / 3600
    ring = np.column_stack([30 * np.cos(angles), 18 * np.sin(angles)])
    recovery = recover_arcs(ring)
    assert recovery.tally.segments_out < 50
    assert largest_distance(ring, recovery.path) <= TOLERANCE + FINE


@examples(20, 300)
@given(st.lists(st.floats(-20, 20), min_size=4, max_size=4))
def test_a_bezier_becomes_arcs_within_tolerance_and_keeps_its_ends(numbers: list[float]) -> None:
    a, b, c, d = numbers
    curve = Bezier(np.array([[0.0, 0.0], [a, b], [c, d], [30.0, 0.0]]))
    path = Path(curve.control[[0, -1]], np.zeros(1), False, {0: curve})
    arcs = curves_as_arcs(path, tolerance=TOLERANCE)
    assert not arcs.curves
    assert np.array_equal(arcs.start, path.start)
    assert np.array_equal(arcs.end, path.end)
    exact = curve.at(np.linspace(0, 1, 4001))
    assert farthest(flatten(arcs, 1e-5), exact) <= TOLERANCE + 0.0002  # the 4001 samples' own chords


def test_the_work_grows_with_the_number_of_points_not_its_square(monkeypatch: pytest.MonkeyPatch) -> None:
    """Work is counted in edges that a straight piece or an arc was laid through."""
    edges: list[int] = []
    fit = arcs._fit

    def counted(chain: arcs._Chain, i: int, j: int) -> arcs._Fit:
        edges.append(j - i)
        return fit(chain, i, j)

    monkeypatch.setattr(arcs, "_fit", counted)

    def work(count: int) -> int:
        angles = np.arange(count) * 2 * math.pi / count
        radii = 50 + 5 * np.sin(7 * angles) + np.sin(31 * angles)
        ring = radii[:, None] * np.column_stack([np.cos(angles), np.sin(angles)])
        edges.clear()
        recover_arcs(ring)
        return sum(edges)

    assert work(64_000) < 40 * work(4_000)  # sixteen times the points; its square would be 256
