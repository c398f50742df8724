"""Affine maps: their algebra, and that they carry paths along without error."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path
from inlayfit.geometry.transform import Transform, arc_as_beziers, arcs_as_curves
from tests.strategies import arc_paths, examples, rigid_motions

numbers = st.floats(-3, 3).map(lambda value: round(value, 3))
maps = st.builds(Transform, *[numbers] * 6)
points = st.lists(st.tuples(numbers, numbers), min_size=1, max_size=6).map(np.array)
paths = st.one_of(arc_paths(), arc_paths(closed=False))


@examples(50, 300)
@given(first=maps, then=maps, some=points)
def test_one_after_the_other(first: Transform, then: Transform, some: np.ndarray) -> None:
    both = then.after(first)
    assert np.abs(both.points(some) - then.points(first.points(some))).max() <= 1e-9
    assert both.determinant == pytest.approx(then.determinant * first.determinant, abs=1e-9)


@examples(30, 200)
@given(one=maps, two=maps, three=maps)
def test_order_of_joining_does_not_matter(one: Transform, two: Transform, three: Transform) -> None:
    left, right = one.after(two).after(three), one.after(two.after(three))
    square = np.array([(0, 0), (1, 0), (0, 1)])
    assert np.abs(left.points(square) - right.points(square)).max() <= 1e-9


@examples(30, 200)
@given(motion=rigid_motions(), some=points)
def test_a_rigid_motion_keeps_distances(motion: Transform, some: np.ndarray) -> None:
    assert abs(motion.determinant) == pytest.approx(1)
    assert motion.keeps_angles
    moved = motion.points(some)
    assert np.hypot(*(moved - moved[0]).T) == pytest.approx(np.hypot(*(some - some[0]).T), abs=1e-9)


def test_the_six_numbers_stand_as_in_svg() -> None:
    """SVG 2, section 8.5: matrix(a, b, c, d, e, f) maps (x, y) to (a·x + c·y + e, b·x + d·y + f)."""
    assert Transform(1, 2, 3, 4, 5, 6).points(np.array([(10.0, 100.0)])).tolist() == [[315, 426]]


def test_the_plain_maps() -> None:
    point = np.array([(2.0, 1.0)])
    assert Transform.shift(3, -1).points(point).tolist() == [[5, 0]]
    assert Transform.scale(2).points(point).tolist() == [[4, 2]]
    assert Transform.scale(2, 3).points(point).tolist() == [[4, 3]]
    assert Transform.turn(math.pi / 2).points(point)[0] == pytest.approx((-1, 2))
    assert Transform.mirror_x().points(point).tolist() == [[-2, 1]]
    assert Transform().is_identity
    assert not Transform.scale(2, 3).keeps_angles
    assert Transform.scale(-2).keeps_angles


@examples(30, 300)
@given(path=paths, motion=rigid_motions(), size=st.floats(0.1, 20))
def test_arcs_stay_arcs_where_angles_are_kept(path: Path, motion: Transform, size: float) -> None:
    similar = motion.after(Transform.scale(size))
    moved = similar.path(path)
    assert not moved.curves
    expected = similar.points(flatten(path, 0.01 / size))
    line = shapely.LineString(np.vstack([expected, expected[:1]]) if path.closed else expected)
    shapely.prepare(line)
    assert shapely.distance(line, shapely.points(flatten(moved, 0.01))).max() <= 0.0101


@examples(25, 200)
@given(path=paths, stretch=maps)
def test_any_map_carries_a_path_to_the_image_of_its_points(path: Path, stretch: Transform) -> None:
    """Arcs that a map bends out of round become rational Béziers without error."""
    moved = stretch.path(path)
    assert moved.closed == path.closed
    image = stretch.points(flatten(path, 1e-4))
    if len(image) < 2 or np.ptp(image, axis=0).max() < 1e-6:
        return
    line = shapely.LineString(np.vstack([image, image[:1]]) if path.closed else image)
    shapely.prepare(line)
    # The chords of both are within their tolerance of the curve; the map stretches one of them.
    size = max(abs(v) for v in (stretch.a, stretch.b, stretch.c, stretch.d, 1))
    assert shapely.distance(line, shapely.points(flatten(moved, 1e-3))).max() <= 3e-4 * size + 1e-9


@examples(40, 400)
@given(bulge=st.one_of(st.floats(0.01, 30), st.floats(-30, -0.01)), size=st.floats(0.01, 500))
def test_an_arc_is_the_same_as_rational_beziers(bulge: float, size: float) -> None:
    """Every point of the conic form lies on the circle (the standard rational form of an arc)."""
    start, end = np.array([1.0, 2.0]), np.array([1.0 + size, 2.0 - size / 3])
    pieces = arc_as_beziers(start, end, bulge)
    assert (pieces[0].control[0] == start).all()
    assert (pieces[-1].control[-1] == end).all()
    chord = math.hypot(size, size / 3)
    radius = chord * (1 + bulge**2) / (4 * abs(bulge))
    middle = (start + end) / 2
    left = np.array([-(end - start)[1], (end - start)[0]]) / chord
    centre = middle + left * chord * (1 - bulge**2) / (4 * bulge)
    for piece in pieces:
        on_curve = piece.at(np.linspace(0, 1, 17))
        assert np.hypot(*(on_curve - centre).T) == pytest.approx(radius, rel=1e-7)


@examples(20, 150)
@given(path=paths)
def test_writing_arcs_as_curves_moves_nothing(path: Path) -> None:
    written = arcs_as_curves(path)
    assert not written.bulges.any()
    points = flatten(path, 1e-3)
    line = shapely.LineString(np.vstack([points, points[:1]]) if path.closed else points)
    shapely.prepare(line)
    assert shapely.distance(line, shapely.points(flatten(written, 1e-3))).max() <= 1.01e-3


def test_doing_nothing_gives_the_very_same_path() -> None:
    path = Path.circle((0, 0), 1)
    assert Transform().path(path) is path


def test_a_mirror_image_runs_the_other_way_round() -> None:
    image = Transform.mirror_x().path(Path.circle((3, 0), 1))
    assert image.bulges.tolist() == [-1, -1]
    assert shapely.Polygon(flatten(image, 0.001)).exterior.is_ccw is False
