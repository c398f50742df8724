"""The picture of a scene: bands where the closed form says, at a constant width, whatever the zoom."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter, QPainterPath
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.canvas.class_look import LOOKS, look_of
from inlayfit.app.canvas.paint_layers import Layers, paint_layers
from inlayfit.app.canvas.picture import BAND_ROOM_PX, FOLLOWING, Picture, build_picture, shown_room_px
from inlayfit.app.canvas.scene import FittingScene, GapScene, Shape
from inlayfit.app.canvas.view_transform import ViewTransform
from inlayfit.app.theme import DARK, LIGHT, Tokens
from inlayfit.fit.classes import GapClass, class_edges
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.result import FitResult, HalfResult
from inlayfit.fit.spec import FitSpec, HalfSpec
from inlayfit.geometry.region import Region
from tests.app.canvas.known_fits import CLEARANCE_MM, RADIUS_MM, disk, shifted_fitting, shifted_scene

WIDTH, HEIGHT = 400, 400
VIEW = ViewTransform.fitted((-10, -10, 10, 10), WIDTH, HEIGHT)


def drawn(picture: Picture, look: Tokens = LIGHT, *, layers: Layers | None = None) -> QImage:
    """The picture without antialiasing, at ratio 1."""
    image = QImage(WIDTH, HEIGHT, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    paint_layers(painter, QRectF(0, 0, WIDTH, HEIGHT), picture, look, layers or Layers(smooth=False))
    painter.end()
    return image


def ink(image: QImage, token: str) -> int:
    pixels = np.frombuffer(image.constBits(), np.uint32).reshape(image.height(), -1)
    return int(np.count_nonzero((pixels & 0xFFFFFF) == (theme.colour(token).rgb() & 0xFFFFFF)))


def colour_at(image: QImage, x: float, y: float) -> str:
    return image.pixelColor(round(x), round(y)).name()


def wall_length_of(gap_class: GapClass, shift_mm: float) -> float:
    """Millimetres of wall in a class, from R − r − e·cos θ."""
    bites, low, high, slack = class_edges(CLEARANCE_MM)
    lows = (-math.inf, bites, low, high, slack)
    highs = (bites, low, high, slack, math.inf)

    def angle_below(gap: float) -> float:
        """Share of the circle with a smaller gap."""
        cosine = (CLEARANCE_MM - gap) / shift_mm
        return 2 * math.acos(min(1.0, max(-1.0, cosine)))

    # cos falls with the angle, so the gap grows with it from the tight side.
    return (angle_below(highs[gap_class]) - angle_below(lows[gap_class])) * RADIUS_MM


def pieces_length(paths: tuple[QPainterPath, ...], width: float) -> float:
    return sum(abs(_area(path)) for path in paths) / width


def _area(path: QPainterPath) -> float:
    points = np.array([(path.elementAt(i).x, path.elementAt(i).y) for i in range(path.elementCount())])
    x, y = points[:, 0], points[:, 1]
    return float(np.dot(x, np.roll(y, -1)) - np.dot(np.roll(x, -1), y)) / 2


@pytest.mark.parametrize("gap_class", [GapClass.BITES, GapClass.TIGHT, GapClass.ON])
def test_each_solid_class_has_the_length_of_the_closed_form(gap_class: GapClass) -> None:
    picture = build_picture(shifted_scene(0.06), VIEW, WIDTH, HEIGHT)
    band = picture.fittings[0].bands[gap_class]
    width = LOOKS[gap_class].width_px
    wanted = wall_length_of(gap_class, 0.06) * VIEW.scale
    overlaps = 2.0 * (len(band.pieces) + 4)
    assert pieces_length(band.pieces, width) == pytest.approx(wanted, abs=overlaps + 0.06 * wanted)


def test_dots_stand_evenly_on_the_loose_wall() -> None:
    picture = build_picture(shifted_scene(0.06), VIEW, WIDTH, HEIGHT)
    dots = picture.fittings[0].bands[GapClass.LOOSE].dots
    assert dots is not None
    wanted = wall_length_of(GapClass.LOOSE, 0.06) * VIEW.scale / 8.5
    assert dots.size() == pytest.approx(wanted, abs=2)
    assert all(dots.at(k).x() < WIDTH / 2 for k in range(dots.size()))


def test_ticks_point_into_the_plug() -> None:
    picture = build_picture(shifted_scene(0.06), VIEW, WIDTH, HEIGHT)
    ticks = picture.fittings[0].bands[GapClass.BITES].ticks
    assert len(ticks) > 5
    middle = np.array([WIDTH / 2, HEIGHT / 2])
    for tick in ticks:
        start, end = np.array([tick.x1(), tick.y1()]), np.array([tick.x2(), tick.y2()])
        assert np.hypot(*(end - middle)) < np.hypot(*(start - middle))
        assert tick.x1() > WIDTH / 2


@given(st.floats(0.1, 8))
def test_the_band_room_is_constant_on_the_screen_until_true_scale(zoom: float) -> None:
    fitting = shifted_fitting(0.06)
    view = VIEW.zoomed(zoom, 200, 200)
    assert shown_room_px(fitting, view) == pytest.approx(max(0, BAND_ROOM_PX - 0.05 * view.scale))
    near = ViewTransform(BAND_ROOM_PX / CLEARANCE_MM + 1)
    assert shown_room_px(fitting, near) == 0


@pytest.mark.parametrize("look", [LIGHT, DARK], ids=["light", "dark"])
def test_the_fixed_half_is_solid_and_the_other_hollow(look: Tokens) -> None:
    pocket_fixed = drawn(build_picture(shifted_scene(fixed="pocket"), VIEW, WIDTH, HEIGHT), look)
    assert colour_at(pocket_fixed, 3, 3) == look.host_tint.lower()
    assert colour_at(pocket_fixed, 200, 200) == look.canvas.lower()
    plug_fixed = drawn(build_picture(shifted_scene(fixed="plug"), VIEW, WIDTH, HEIGHT), look)
    assert colour_at(plug_fixed, 200, 200) == look.plug_tint.lower()


def test_every_class_leaves_ink_in_its_own_colour() -> None:
    image = drawn(build_picture(shifted_scene(0.06), VIEW, WIDTH, HEIGHT))
    for look in LOOKS:
        assert ink(image, look.colour(LIGHT)) > 20, look.gap_class


def test_a_bite_is_on_the_side_the_plug_was_pushed_to() -> None:
    image = drawn(build_picture(shifted_scene(0.06), VIEW, WIDTH, HEIGHT))
    right, left = image.copy(300, 0, 100, HEIGHT), image.copy(0, 0, 100, HEIGHT)
    assert ink(right, LIGHT.bites) > 100
    assert ink(left, LIGHT.bites) == 0
    assert ink(left, LIGHT.loose) > 100
    assert ink(right, LIGHT.loose) == 0


def test_a_preview_is_fainter_and_shows_no_full_colour() -> None:
    picture = build_picture(shifted_scene(0.06), VIEW, WIDTH, HEIGHT)
    stale = drawn(picture, layers=Layers(stale=True, smooth=False))
    assert all(ink(stale, look.colour(LIGHT)) == 0 for look in LOOKS)


def test_zoomed_far_in_only_what_is_in_sight_is_built() -> None:
    scene = shifted_scene(0.06)
    view = ViewTransform(20_000.0).centred_on(9.98, 0.0, WIDTH, HEIGHT)
    picture = build_picture(scene, view, WIDTH, HEIGHT)
    assert picture.true_scale
    assert picture.fittings[0].pocket.elementCount() < 50
    assert len(picture.crowd) < 1000


def test_the_number_of_vertices_hardly_changes_the_picture() -> None:
    """Cost follows the wall in view, not the vertices."""
    fine = disk(RADIUS_MM, tolerance=1e-6)
    assert fine.vertex_count > 3000
    picture = build_picture(GapScene.of((shifted_fitting(),), host=Shape.of(fine)), VIEW, WIDTH, HEIGHT)
    assert picture.host.elementCount() < 1.3 * VIEW.scale * 2 * math.pi * RADIUS_MM / 0.75


def test_in_a_slot_narrower_than_the_bands_both_sides_keep_apart() -> None:
    slot = Region.of_ring([(0, 0), (40, 0), (40, 0.6), (0, 0.6)])
    view = ViewTransform.fitted((0, 0, 40, 0.6), WIDTH, HEIGHT)
    plug = Region.of_ring([(0.05, 0.05), (39.95, 0.05), (39.95, 0.55), (0.05, 0.55)])
    result = FitResult(
        FitSpec(0.05, HalfSpec(0.2), HalfSpec(0.2)), HalfResult(slot), HalfResult(plug), gap_map(slot, plug)
    )
    picture = build_picture(
        GapScene.of((FittingScene.of_result("slot", "Slot", result),)), view, WIDTH, HEIGHT
    )
    middle_y = view.to_px(20, 0.3)[1]
    inner = picture.crowd[(picture.crowd[:, 0] > 60) & (picture.crowd[:, 0] < 340)]
    low, high = inner[inner[:, 1] > middle_y], inner[inner[:, 1] < middle_y]
    assert len(low) > 20
    assert len(high) > 20
    assert low[:, 1].min() - high[:, 1].max() > 1.0


def test_the_look_of_a_gap_is_that_of_its_class() -> None:
    assert [look_of(gap, 0.05).gap_class for gap in (-0.01, 0.02, 0.05, 0.06, 0.2)] == list(GapClass)


def test_painting_needs_no_window(qtbot: QtBot) -> None:
    """The same paint routine serves paper and tests."""
    assert drawn(build_picture(GapScene(), VIEW, WIDTH, HEIGHT)).size().width() == WIDTH


def test_an_even_gap_is_known_as_such() -> None:
    assert shifted_fitting(0.0).is_even
    assert not shifted_fitting(0.06).is_even


@pytest.mark.parametrize("scene", [shifted_scene(0.06), shifted_scene(0.0)], ids=["shifted", "even"])
def test_a_picture_that_follows_the_hand_hardly_differs_from_one_at_rest(scene: GapScene) -> None:
    fine = build_picture(scene, VIEW, WIDTH, HEIGHT)
    coarse = build_picture(scene, VIEW, WIDTH, HEIGHT, grain=FOLLOWING)
    assert coarse.fittings[0].plug.elementCount() <= fine.fittings[0].plug.elementCount()
    for one, other in ((fine, coarse), (coarse, fine)):
        line, path = one.fittings[0].plug, other.fittings[0].plug
        points = np.array([(line.elementAt(i).x, line.elementAt(i).y) for i in range(line.elementCount())])
        ring = shapely.linestrings(
            [(path.elementAt(i).x, path.elementAt(i).y) for i in range(path.elementCount())]
        )
        assert shapely.distance(shapely.points(points), ring).max() < 0.25
