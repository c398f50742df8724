"""The gap map as a person uses it: real mouse, wheel and key events; assertions on what it says and shows."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDropEvent, QFocusEvent, QImage, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.canvas.drop_halves import DropOffer, Dropped, DropUse
from inlayfit.app.canvas.gap_map import GapMapView
from inlayfit.app.canvas.picture import FINE, FOLLOWING
from inlayfit.app.canvas.pointing import Measurement, PointerReading
from inlayfit.app.canvas.scene import GapScene, OutlineScene
from inlayfit.app.theme import Theme
from inlayfit.units import Unit
from tests.app.canvas.known_fits import far_disk, shifted_fitting, shifted_scene

Key = Qt.Key
SHIFT = Qt.KeyboardModifier.ShiftModifier
CTRL = Qt.KeyboardModifier.ControlModifier
PLAIN = Qt.KeyboardModifier.NoModifier
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def view(qtbot: QtBot, qapp: QApplication) -> GapMapView:
    theme.apply(qapp, Theme.LIGHT)
    widget = GapMapView()
    qtbot.addWidget(widget)
    widget.resize(500, 400)
    widget.show()
    widget.set_scene(shifted_scene())
    return widget


def heard(signal: Any) -> list[Any]:
    values: list[Any] = []
    collect: Callable[..., None] = lambda *told: values.append(told[0] if len(told) == 1 else told)  # noqa: E731
    signal.connect(collect)
    return values


def levels(image: QImage) -> NDArray[np.int16]:
    """(height, width, 4) colour levels."""
    shown = image.convertToFormat(QImage.Format.Format_RGB32)
    return np.frombuffer(shown.constBits(), np.uint8).reshape(shown.height(), -1, 4).astype(np.int16)


def pixel(view: GapMapView, x_mm: float, y_mm: float) -> QPoint:
    return QPointF(*view.view.to_px(x_mm, y_mm)).toPoint()


def turn_wheel(
    view: GapMapView,
    *,
    notches: float = 0.0,
    pixels: QPoint | None = None,
    modifiers: Qt.KeyboardModifier = PLAIN,
    at: QPointF | None = None,
) -> None:
    place = at or QPointF(120, 90)
    phase = Qt.ScrollPhase.NoScrollPhase if pixels is None else Qt.ScrollPhase.ScrollUpdate
    event = QWheelEvent(
        place,
        place,
        pixels or QPoint(),
        QPoint(0, round(120 * notches)) if pixels is None else pixels * 8,
        Qt.MouseButton.NoButton,
        modifiers,
        phase,
        False,
    )
    QApplication.sendEvent(view, event)


def test_a_new_scene_is_shown_whole(view: GapMapView) -> None:
    left, top = view.view.to_px(-10, 10)
    right, bottom = view.view.to_px(10, -10)
    assert min(left, top) >= 0
    assert right <= 500
    assert bottom <= 400


def test_a_better_answer_for_the_same_fitting_leaves_the_view_alone(view: GapMapView) -> None:
    view.zoom_in()
    kept = view.view
    view.set_scene(shifted_scene(0.02))
    assert view.view == kept


def test_the_wheel_zooms_about_the_pointer(view: GapMapView) -> None:
    at = QPointF(120, 90)
    place, scale = view.view.to_mm(120, 90), view.view.scale
    turn_wheel(view, notches=2, at=at)
    assert view.view.scale > scale
    assert view.view.to_px(*place) == pytest.approx((120, 90))
    turn_wheel(view, notches=-2, at=at)
    assert view.view.scale == pytest.approx(scale)


def test_two_fingers_pan_and_ctrl_zooms(view: GapMapView) -> None:
    before = view.view
    turn_wheel(view, pixels=QPoint(12, -7))
    assert view.view == before.panned(12, -7)
    turn_wheel(view, pixels=QPoint(0, 15), modifiers=CTRL)
    assert view.view.scale > before.scale


def test_the_wheel_can_be_set_to_scroll(view: GapMapView) -> None:
    view.set_wheel_scrolls(True)
    scale = view.view.scale
    turn_wheel(view, notches=1)
    assert view.view.scale == scale
    turn_wheel(view, notches=1, modifiers=CTRL)
    assert view.view.scale > scale


@pytest.mark.parametrize("way", ["middle", "space", "left"])
def test_three_ways_to_drag_the_drawing(view: GapMapView, way: str) -> None:
    view.setFocus()
    button = Qt.MouseButton.MiddleButton if way == "middle" else LEFT
    if way == "space":
        QTest.keyPress(view, Key.Key_Space)
    before, chosen = view.view, heard(view.fitting_chosen)
    QTest.mousePress(view, button, pos=QPoint(250, 200))
    QTest.mouseMove(view, QPoint(270, 210))
    QTest.mouseMove(view, QPoint(310, 230))
    QTest.mouseRelease(view, button, pos=QPoint(310, 230))
    if way == "space":
        QTest.keyRelease(view, Key.Key_Space)
    if way != "left":
        assert view.view.to_px(0, 0) == pytest.approx(before.panned(60, 30).to_px(0, 0))
    assert view.view.scale == before.scale
    assert view.view.left_mm < before.left_mm
    assert not chosen
    assert not view.is_panning


@pytest.mark.parametrize(
    ("key", "dx", "dy"),
    [(Key.Key_Left, 40, 0), (Key.Key_Right, -40, 0), (Key.Key_Up, 0, 40), (Key.Key_Down, 0, -40)],
)
def test_arrows_pan(view: GapMapView, key: Key, dx: int, dy: int) -> None:
    before = view.view
    QTest.keyClick(view, key)
    assert view.view == before.panned(dx, dy)


def test_plus_minus_and_home(view: GapMapView) -> None:
    fitted = view.view
    zooms = heard(view.view_changed)
    QTest.keyClick(view, Key.Key_Plus)
    assert view.view.scale > fitted.scale
    QTest.keyClick(view, Key.Key_Minus)
    QTest.keyClick(view, Key.Key_Minus)
    assert view.view.scale < fitted.scale
    QTest.keyClick(view, Key.Key_Home)
    assert view.view == fitted
    assert len(zooms) == 4
    assert zooms[-1] == pytest.approx(view.zoom_percent)


def test_a_resized_map_still_shows_everything_unless_it_was_moved(view: GapMapView) -> None:
    view.resize(800, 300)
    assert view.view.to_px(0, 0)[0] == pytest.approx(400, abs=2)
    assert 0 < view.view.to_px(0, 10)[1] < view.view.to_px(0, -10)[1] < 300
    view.zoom_in()
    kept = view.view
    view.resize(500, 400)
    assert view.view == kept


def test_n_walks_the_tight_spots_round(view: GapMapView) -> None:
    fitting = view.chosen_fitting
    assert fitting is not None
    count = len(fitting.spots)
    assert count >= 1
    told = heard(view.spot_chosen)
    for _ in range(count + 1):
        QTest.keyClick(view, Key.Key_N)
    QTest.keyClick(view, Key.Key_N, SHIFT)
    assert told == [*range(count), 0, count - 1]
    assert view.chosen_spot == count - 1


def test_a_spot_chosen_from_outside_is_moved_into_view_without_a_signal(view: GapMapView) -> None:
    told = heard(view.spot_chosen)
    fitting = view.chosen_fitting
    assert fitting is not None
    view.set_view(view.view.panned(3000, 0))
    view.set_chosen_spot(0)
    x, y = view.view.to_px(*fitting.spots[0].place_mm)
    assert 0 < x < view.width()
    assert 0 < y < view.height()
    assert not told


def test_clicking_a_spot_chooses_it(view: GapMapView) -> None:
    fitting = view.chosen_fitting
    assert fitting is not None
    told = heard(view.spot_chosen)
    at = pixel(view, *fitting.spots[0].place_mm)
    QTest.mouseClick(view, LEFT, pos=at + QPoint(9, 0))
    assert told == [0]


def test_the_tightest_spot_is_where_the_plug_was_pushed(view: GapMapView) -> None:
    fitting = view.chosen_fitting
    assert fitting is not None
    assert fitting.spots[0].gap_mm == pytest.approx(-0.01, abs=0.001)
    assert fitting.spots[0].place_mm[0] > 9.9


def two_fittings_and_outlines() -> GapScene:
    outlines = (OutlineScene("o1", "outline 1", far_disk(40)), OutlineScene("o2", "outline 2", far_disk(60)))
    return GapScene.of((shifted_fitting(key="a"), shifted_fitting(key="b")), outlines=outlines)


def test_outlines_are_chosen_by_click_and_added_with_ctrl(view: GapMapView) -> None:
    view.set_scene(two_fittings_and_outlines())
    told = heard(view.outline_chosen)
    QTest.mouseClick(view, LEFT, pos=pixel(view, 40, 0))
    QTest.mouseClick(view, LEFT, CTRL, pos=pixel(view, 60, 0))
    assert told == [("o1", False), ("o2", True)]


def test_o_walks_fittings_and_outlines_by_keyboard(view: GapMapView) -> None:
    view.set_scene(two_fittings_and_outlines())
    fittings, outlines = heard(view.fitting_chosen), heard(view.outline_chosen)
    for _ in range(4):
        QTest.keyClick(view, Key.Key_O)
    QTest.keyClick(view, Key.Key_O, SHIFT)
    assert fittings == ["b", "a"]
    assert [key for key, _ in outlines] == ["o1", "o2", "o2"]


def test_the_pointer_reads_position_and_gap(view: GapMapView) -> None:
    told = heard(view.pointer_moved)
    QTest.mouseMove(view, pixel(view, 9.95, 0))
    QTest.mouseMove(view, pixel(view, 0, 0))
    near, far = told[-2:]
    assert isinstance(near, PointerReading)
    assert near.gap_mm == pytest.approx(-0.01, abs=0.002)
    assert near.fitting_key == "foot"
    assert far.gap_mm is None
    assert (far.x_mm, far.y_mm) == pytest.approx((0, 0), abs=0.1)


def test_a_pointer_at_rest_reads_anew_when_the_scene_changes(view: GapMapView) -> None:
    told = heard(view.pointer_moved)
    QTest.mouseMove(view, pixel(view, 9.95, 0))
    assert told[-1].gap_mm is not None
    view.set_scene(replace(view.scene, fittings=()))
    assert told[-1].gap_mm is None


def test_with_space_held_the_reading_follows_from_anywhere(view: GapMapView) -> None:
    view.setFocus()
    told = heard(view.pointer_moved)
    QTest.keyPress(view, Key.Key_Space)
    QTest.mouseMove(view, pixel(view, -5, 0))
    QTest.keyRelease(view, Key.Key_Space)
    assert told[-1].following
    assert told[-1].gap_mm == pytest.approx(0.11, abs=0.002)


def test_measuring_with_the_mouse_snaps_to_the_wall(view: GapMapView) -> None:
    view.set_measuring(True)
    told = heard(view.measured)
    for x in (-10.0, 10.0):
        QTest.mouseClick(view, LEFT, pos=pixel(view, x, 0) + QPoint(2, 0))
    assert isinstance(told[0], Measurement)
    assert told[0].distance_mm == pytest.approx(20, abs=0.12)
    radii = [np.hypot(*told[0].start_mm), np.hypot(*told[0].end_mm)]
    assert radii == pytest.approx([10, 10], abs=0.12)


def test_measuring_by_keyboard_alone(view: GapMapView) -> None:
    changes, told = heard(view.measuring_changed), heard(view.measured)
    QTest.keyClick(view, Key.Key_M)
    before = view.view
    QTest.keyClick(view, Key.Key_Return)
    for _ in range(4):
        QTest.keyClick(view, Key.Key_Right, SHIFT)
    QTest.keyClick(view, Key.Key_Return)
    assert view.view == before
    assert told[0].across_mm == pytest.approx(80 / view.view.scale)
    assert told[0].up_mm == 0
    QTest.keyClick(view, Key.Key_Escape)
    assert changes == [True, False]
    assert not view.is_measuring


def drag_in(view: GapMapView, data: QMimeData, at: QPoint) -> QDragEnterEvent:
    event = QDragEnterEvent(at, Qt.DropAction.CopyAction, data, LEFT, PLAIN)
    QApplication.sendEvent(view, event)
    return event


@pytest.mark.parametrize(("x", "use"), [(100, DropUse.POCKET), (400, DropUse.PLUG)])
def test_a_drop_says_what_for_by_its_half(view: GapMapView, x: int, use: DropUse) -> None:
    told = heard(view.drawing_dropped)
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile("/tmp/pocket.dxf")])
    assert drag_in(view, data, QPoint(x, 100)).isAccepted()
    shown = view.grab().toImage()
    event = QDropEvent(QPointF(x, 100), Qt.DropAction.CopyAction, data, LEFT, PLAIN)
    QApplication.sendEvent(view, event)
    assert told == [Dropped(use, ("/tmp/pocket.dxf",))]
    assert view.grab().toImage() != shown


def test_content_that_is_no_drawing_is_refused_by_the_reader(view: GapMapView) -> None:
    view.set_drop_reader(lambda data: DropOffer("Drawing") if "SECTION" in data.text() else None)
    data = QMimeData()
    data.setText("a shopping list")
    assert not drag_in(view, data, QPoint(100, 100)).isAccepted()
    data.setText("0\nSECTION")
    assert drag_in(view, data, QPoint(100, 100)).isAccepted()
    QApplication.sendEvent(view, QDragLeaveEvent())


def test_a_screen_reader_hears_the_sentence_and_the_spot(view: GapMapView) -> None:
    view.set_summary("Acetal foot into tray.")
    text = view.accessibleDescription()
    assert text.startswith("Acetal foot into tray. Tightest: ")
    assert "\N{MINUS SIGN}0.010 per side (\N{MINUS SIGN}0.020 overall)" in text
    assert view.accessibleName() == "Gap map"


def test_tab_leaves_the_map(view: GapMapView) -> None:
    """No keyboard trap (WCAG 2.2, 2.1.2)."""
    event_taken = view.focusPolicy() & Qt.FocusPolicy.TabFocus
    assert event_taken
    QTest.keyClick(view, Key.Key_Tab)
    assert view.chosen_spot is None


@pytest.mark.parametrize("unit", [Unit.MM, Unit.INCH, Unit.THOU])
def test_it_paints_in_every_state(view: GapMapView, unit: Unit) -> None:
    view.set_unit(unit)
    view.set_overlays(rough=True, left_over=True, relieved=True, cutter=True)
    view.set_stale(True)
    view.set_measuring(True)
    QTest.mouseMove(view, QPoint(200, 200))
    stale = view.grab().toImage()
    view.set_stale(False)
    assert view.grab().toImage() != stale
    view.set_scene(GapScene())
    view.grab()


def test_moving_the_drawing_reuses_the_painted_layer(view: GapMapView) -> None:
    view.grab()
    kept = view._cache.picture(view.scene, view.view, view.size(), view._layers)
    view.set_view(view.view.panned(30, -20))
    assert view._cache.picture(view.scene, view.view, view.size(), view._layers) is kept
    view.set_view(view.view.panned(300, 0))
    assert view._cache.picture(view.scene, view.view, view.size(), view._layers) is not kept


def test_a_moved_layer_shows_what_a_fresh_one_would(view: GapMapView) -> None:
    view.clearFocus()
    view.grab()
    view.set_view(view.view.panned(24, 16))
    moved = view.grab().toImage()
    fresh = GapMapView()
    fresh.resize(view.size())
    fresh.set_scene(view.scene)
    fresh.set_view(view.view)
    fresh._label_places = dict(view._label_places)
    differences = np.abs(levels(fresh.grab().toImage()) - levels(moved))
    assert np.count_nonzero(differences > 12) < 0.0005 * differences.size


def test_a_tip_says_what_is_under_the_pointer(view: GapMapView) -> None:
    fitting = view.chosen_fitting
    assert fitting is not None
    at = QPointF(*view.view.to_px(*fitting.spots[0].place_mm))
    assert "(\N{MINUS SIGN}0.020 overall)" in view.words_at(at)
    assert view.words_at(QPointF(3, 3)) == ""
    view.set_scene(two_fittings_and_outlines())
    assert view.words_at(QPointF(*view.view.to_px(40, 0))).startswith("outline 1.")


def test_the_focus_ring_shows_while_the_keyboard_is_used(view: GapMapView, qtbot: QtBot) -> None:
    """WCAG 2.2, 2.4.7."""
    view.activateWindow()
    view.clearFocus()
    view.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.waitUntil(view.hasFocus)
    seen = [view.shows_focus]
    QTest.mouseClick(view, LEFT, pos=QPoint(5, 5))
    seen.append(view.shows_focus)
    QTest.keyClick(view, Key.Key_N)
    seen.append(view.shows_focus)
    assert seen == [True, False, True]


def test_a_preview_is_painted_coarsely_once_and_never_kept_for_the_rest(view: GapMapView) -> None:
    view.grab()
    view.set_stale(True)
    rested = view._cache.picture(view.scene, view.view, view.size(), view._layers)
    assert view._cache._grain == FINE, "what is drawn well already is only dimmed"
    view.set_scene(shifted_scene(0.05))
    direct, was_kept = view.grab().toImage(), view._cache._painted_as is not None
    assert view._cache._grain == FOLLOWING
    assert not was_kept, "seen once, it is not kept"
    kept, was_kept = view.grab().toImage(), view._cache._painted_as is not None
    assert was_kept, "asked for again, it is"
    assert np.count_nonzero(np.abs(levels(direct) - levels(kept)) > 12) < 0.0005 * levels(kept).size
    view.set_stale(False)
    assert view._cache.picture(view.scene, view.view, view.size(), view._layers) is not rested
    assert view._cache._grain == FINE


def test_zooming_out_ends_while_there_is_still_something_to_see(view: GapMapView) -> None:
    for _ in range(200):
        turn_wheel(view, notches=-1)
    left, _ = view.view.to_px(-10, 0)
    right, _ = view.view.to_px(10, 0)
    assert 12 <= right - left <= 24
    turn_wheel(view, notches=1)
    assert view.view.to_px(10, 0)[0] - view.view.to_px(-10, 0)[0] > right - left


def _ring(view: GapMapView) -> bool:
    return view.shows_focus


def test_the_ring_shows_until_the_mouse_is_used_and_survives_another_window(view: GapMapView) -> None:
    view.setFocus(Qt.FocusReason.OtherFocusReason)
    assert _ring(view)
    for reason in (Qt.FocusReason.ActiveWindowFocusReason, Qt.FocusReason.PopupFocusReason):
        QApplication.sendEvent(view, QFocusEvent(QFocusEvent.Type.FocusIn, reason))
        assert _ring(view)
    QTest.mouseClick(view, LEFT, pos=QPoint(5, 5))
    view.setFocus(Qt.FocusReason.MouseFocusReason)
    QApplication.sendEvent(view, QFocusEvent(QFocusEvent.Type.FocusIn, Qt.FocusReason.MouseFocusReason))
    assert not _ring(view)
    QApplication.sendEvent(
        view, QFocusEvent(QFocusEvent.Type.FocusIn, Qt.FocusReason.ActiveWindowFocusReason)
    )
    assert not _ring(view)
