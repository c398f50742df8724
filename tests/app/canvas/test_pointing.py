"""What lies under the pointer, checked against shapely."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Point

from inlayfit.app.canvas.pointing import Measurement, fitting_at, outline_at, reading_at, snapped
from inlayfit.app.canvas.scene import FittingScene, GapScene, OutlineScene, Shape
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.result import FitResult, HalfResult
from inlayfit.fit.spec import FitSpec, HalfSpec
from inlayfit.geometry.region import Region
from tests.app.canvas.known_fits import far_disk, shifted_fitting, shifted_scene

places = st.floats(-14, 14)
SQUARE = Region.of_ring([(0, 0), (10, 0), (10, 10), (0, 10)])


@given(places, places)
def test_the_gap_is_read_at_the_nearest_place_of_the_wall(x: float, y: float) -> None:
    scene = shifted_scene()
    reading = reading_at(scene, x, y, 1e9)
    points = scene.fittings[0].walls[0].points
    nearest = np.hypot(*(points - (x, y)).T).min()
    assert reading.wall_mm is not None
    assert np.hypot(reading.wall_mm[0] - x, reading.wall_mm[1] - y) == pytest.approx(nearest)


@cache
def square_scene() -> GapScene:
    plug = Region.of_ring([(0.1, 0.1), (9.9, 0.1), (9.9, 9.9), (0.1, 9.9)])
    result = FitResult(
        FitSpec(0.1, HalfSpec(0.1), HalfSpec(0.1)),
        HalfResult(SQUARE),
        HalfResult(plug),
        gap_map(SQUARE, plug),
    )
    return GapScene.of((FittingScene.of_result("s", "Square", result),))


@given(st.floats(-0.3, 0.3), st.floats(-0.3, 0.3))
def test_a_corner_wins_over_a_wall(dx: float, dy: float) -> None:
    snap = snapped(square_scene(), 10 + dx, 10 + dy, 0.5)
    assert snap.to == "corner"
    assert snap.place_mm in ((10.0, 10.0), (9.9, 9.9))


@given(st.floats(2, 8), st.floats(-0.4, 0.0))
def test_away_from_corners_it_snaps_to_the_nearest_point_of_a_wall(x: float, y: float) -> None:
    snap = snapped(square_scene(), x, y, 0.5)
    assert snap.to == "wall"
    assert snap.place_mm == pytest.approx((x, 0.0))
    assert Point(x, y).distance(SQUARE.shape.boundary) == pytest.approx(
        np.hypot(snap.place_mm[0] - x, snap.place_mm[1] - y)
    )


def test_far_from_everything_it_stays_where_it_is() -> None:
    snap = snapped(square_scene(), 5.0, 5.0, 0.5)
    assert snap.to == ""
    assert snap.place_mm == (5.0, 5.0)


def test_chords_of_an_arc_are_no_corners() -> None:
    snap = snapped(shifted_scene(), 10.1, 0.0, 0.5)
    assert snap.to == "wall"


def test_the_nested_one_is_under_the_pointer_not_the_one_it_sits_in() -> None:
    small = FittingScene(
        **{
            **{name: getattr(shifted_fitting(), name) for name in FittingScene.__slots__},
            "key": "inner",
            "pocket": far_disk(0),
            "plug": far_disk(0),
        }
    )
    scene = GapScene.of((shifted_fitting(key="outer"), small))
    inner, outer, none = fitting_at(scene, 0, 0), fitting_at(scene, 8, 0), fitting_at(scene, 30, 0)
    assert inner is not None
    assert inner.key == "inner"
    assert outer is not None
    assert outer.key == "outer"
    assert none is None


def test_an_outline_is_hit_inside_and_just_beside_its_line() -> None:
    scene = GapScene.of((), outlines=(OutlineScene("o", "o", Shape.of(SQUARE)),))
    assert outline_at(scene, 5, 5, 0.2) == "o"
    assert outline_at(scene, 10.15, 5, 0.2) == "o"
    assert outline_at(scene, 10.5, 5, 0.2) is None


@given(places, places, places, places)
def test_a_distance_is_pythagoras(x0: float, y0: float, x1: float, y1: float) -> None:
    measured = Measurement((x0, y0), (x1, y1))
    assert measured.distance_mm**2 == pytest.approx(measured.across_mm**2 + measured.up_mm**2, abs=1e-9)
