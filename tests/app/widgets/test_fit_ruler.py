"""The fit ruler: whole micrometres, one release a gesture, and a suggestion that moves nothing."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QEvent, QObject, QPoint, QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.theme import Theme
from inlayfit.app.widgets.fit_ruler import FitRuler
from inlayfit.app.widgets.paint_ruler import RulerPainter, um_at, x_of
from inlayfit.app.widgets.ruler_marks import Bracket, TrialFlag, TrialMark
from inlayfit.fit.feel import FeelZones
from inlayfit.units import Unit

Key = Qt.Key
SHIFT = Qt.KeyboardModifier.ShiftModifier
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def ruler(qtbot: QtBot, qapp: QApplication) -> FitRuler:
    theme.apply(qapp, Theme.LIGHT)
    widget = FitRuler()
    qtbot.addWidget(widget)
    widget.resize(900, 110)
    widget.set_clearance_mm(0.03)
    widget.show()
    return widget


def heard(signal: object) -> list[float]:
    """Collects what a signal says."""
    values: list[float] = []
    connect: Callable[[Callable[[float], None]], object] = signal.connect  # type: ignore[attr-defined]
    connect(values.append)
    return values


@pytest.mark.parametrize(
    ("key", "modifier", "step_um"),
    [
        (Key.Key_Right, Qt.KeyboardModifier.NoModifier, 1),
        (Key.Key_Left, Qt.KeyboardModifier.NoModifier, -1),
        (Key.Key_Up, SHIFT, 10),
        (Key.Key_Down, SHIFT, -10),
        (Key.Key_PageUp, Qt.KeyboardModifier.NoModifier, 50),
        (Key.Key_PageDown, Qt.KeyboardModifier.NoModifier, -50),
    ],
)
def test_keys_step_by_whole_micrometres(
    ruler: FitRuler, key: Key, modifier: Qt.KeyboardModifier, step_um: int
) -> None:
    released = heard(ruler.value_released)
    QTest.keyClick(ruler, key, modifier)
    assert ruler.value() == 30 + step_um
    assert released == [(30 + step_um) / 1000]


def test_a_drag_is_one_gesture(ruler: FitRuler) -> None:
    dragging, released = heard(ruler.value_dragging), heard(ruler.value_released)
    start = ruler.handle_rect().center().toPoint()
    QTest.mousePress(ruler, LEFT, pos=start)
    for step in range(1, 6):
        QTest.mouseMove(ruler, start + QPoint(8 * step, 0))
    assert ruler.is_dragging
    assert not released
    QTest.mouseRelease(ruler, LEFT, pos=start + QPoint(40, 0))
    assert 1 <= len(dragging) <= 5, "as often as a screen shows it, not as often as the mouse reports"
    assert dragging[-1] == ruler.clearance_mm
    assert released == [ruler.clearance_mm]
    assert all(abs(mm * 1000 - round(mm * 1000)) < 1e-9 for mm in dragging)


def test_escape_takes_a_drag_back(ruler: FitRuler) -> None:
    released = heard(ruler.value_released)
    start = ruler.handle_rect().center().toPoint()
    QTest.mousePress(ruler, LEFT, pos=start)
    QTest.mouseMove(ruler, start + QPoint(60, 0))
    assert ruler.value() != 30
    QTest.keyClick(ruler, Key.Key_Escape)
    assert ruler.value() == 30
    QTest.mouseRelease(ruler, LEFT, pos=start + QPoint(60, 0))
    assert not released


def test_shift_drags_finer(ruler: FitRuler) -> None:
    start = ruler.handle_rect().center().toPoint()
    QTest.mousePress(ruler, LEFT, pos=start)
    QTest.mouseMove(ruler, start + QPoint(100, 0))
    coarse = ruler.value() - 30
    QTest.keyClick(ruler, Key.Key_Escape)
    QTest.mouseRelease(ruler, LEFT, pos=start)
    assert coarse > 15


def test_setting_the_value_says_nothing(ruler: FitRuler) -> None:
    dragging, released = heard(ruler.value_dragging), heard(ruler.value_released)
    ruler.set_clearance_mm(0.1234)
    assert ruler.value() == 123
    assert not dragging
    assert not released


def test_a_suggestion_never_moves_the_value(ruler: FitRuler) -> None:
    dragging = heard(ruler.value_dragging)
    for suggestion in (0.038, -0.05, None, 0.16):
        ruler.set_suggestion_mm(suggestion)
        ruler.grab()
    assert ruler.value() == 30
    assert not dragging


@given(st.integers(-900, 900))
def test_the_scale_grows_to_hold_any_value(value_um: int) -> None:
    ruler = FitRuler()
    ruler.set_clearance_mm(value_um / 1000)
    assert ruler.value() == value_um
    assert ruler.minimum() <= value_um <= ruler.maximum()
    assert ruler.minimum() <= -70
    assert ruler.maximum() >= 170


@given(st.floats(-70, 170))
def test_pixels_and_micrometres_are_inverse(um: float) -> None:
    ruler = FitRuler()
    ruler.resize(900, 110)
    look = ruler._look()
    assert um_at(look, x_of(look, um)) == pytest.approx(um, abs=1e-9)


def test_the_feel_word_follows_the_value_and_the_zones(ruler: FitRuler) -> None:
    words = []
    for mm in (-0.06, -0.03, -0.01, 0.02, 0.1, 0.16):
        ruler.set_clearance_mm(mm)
        words.append(ruler.feel_word)
    assert words == ["won't start", "press", "tap-in", "snug", "slip", "rattles"]
    ruler.set_clearance_mm(0.02)
    ruler.set_zones(FeelZones((-0.1, -0.05, 0.03, 0.06, 0.1)))
    assert ruler.feel_word == "tap-in"


def test_a_screen_reader_hears_both_numbers_and_the_word(ruler: FitRuler) -> None:
    ruler.set_suggestion_mm(0.038)
    text = ruler.accessibleDescription()
    assert "0.030 mm per side (0.060 mm overall), snug" in text
    assert "0.038 per side" in text
    ruler.set_unit(Unit.THOU)
    assert "1.2 thou per side (2.4 thou overall)" in ruler.accessibleDescription()


def test_the_handle_can_be_caught_beside_its_drawing(ruler: FitRuler) -> None:
    """WCAG 2.2, 2.5.8: at least 24 by 24."""
    caught = ruler.handle_rect()
    assert caught.width() >= 24
    assert caught.height() >= 24
    QTest.mousePress(ruler, LEFT, pos=caught.center().toPoint() + QPoint(11, 0))
    assert ruler.value() == 30
    QTest.mouseRelease(ruler, LEFT, pos=caught.center().toPoint() + QPoint(11, 0))


def ink(image: QImage, token: str) -> int:
    """Pixels of exactly one colour."""
    wanted = theme.colour(token).rgb()
    return sum(image.pixel(x, y) == wanted for x in range(image.width()) for y in range(image.height()))


def test_trials_of_each_outcome_have_their_own_shape(ruler: FitRuler) -> None:
    """Shape, not only colour, tells the outcome: the same ink colour, three different amounts."""
    amounts = []
    for mark in TrialMark:
        ruler.set_trials((TrialFlag("", 0.1, mark, ""),))
        image = ruler.grab().toImage()
        x = round(x_of(ruler._look(), 100))
        amounts.append(ink(image.copy(x - 10, 3, 20, 20), theme.LIGHT.text))
    assert len(set(amounts)) == 3
    assert min(amounts) > 50


def test_an_earlier_job_is_drawn_hollow(ruler: FitRuler) -> None:
    amounts = {}
    for this_job in (True, False):
        flag = TrialFlag("", 0.1, TrialMark.TOO_LOOSE, "", this_job=this_job)
        ruler.set_trials((flag,), bracket=Bracket(0.01, 0.1))
        x = round(x_of(ruler._look(), 100))
        amounts[this_job] = ink(ruler.grab().toImage().copy(x - 10, 3, 20, 20), theme.LIGHT.text)
    assert amounts[True] > 2 * amounts[False]


def test_the_wheel_moves_it_only_with_the_keyboard(ruler: FitRuler, qtbot: QtBot) -> None:
    from PySide6.QtCore import QPointF
    from PySide6.QtGui import QWheelEvent

    def turn() -> None:
        event = QWheelEvent(
            QPointF(450, 50),
            QPointF(450, 50),
            QPoint(),
            QPoint(0, 120),
            Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier,
            Qt.ScrollPhase.NoScrollPhase,
            False,
        )
        QApplication.sendEvent(ruler, event)

    ruler.clearFocus()
    turn()
    assert ruler.value() == 30
    ruler.activateWindow()
    ruler.setFocus()
    qtbot.waitUntil(ruler.hasFocus)
    turn()
    assert ruler.value() == 31


def test_the_pointer_over_the_ruler_paints_nothing(ruler: FitRuler, qtbot: QtBot) -> None:
    ruler.show()
    qtbot.wait(30)
    painted: list[int] = []

    class Paints(QObject):
        def eventFilter(self, _part: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
            painted.extend([1] if event.type() == QEvent.Type.Paint else [])
            return False

    watch = Paints()
    ruler.installEventFilter(watch)
    for x in range(20, 260, 10):
        QTest.mouseMove(ruler, QPoint(x, 48))
        qtbot.wait(1)
    qtbot.wait(30)
    assert not painted


@pytest.mark.parametrize("width", [701, 703, 706, 707])
@pytest.mark.parametrize("ratio", [1.25, 1.5])
def test_at_any_scale_of_the_screen_the_ground_reaches_the_last_pixel(
    ruler: FitRuler, width: int, ratio: float
) -> None:
    look = replace(ruler._look(), area=QRectF(0, 0, width, 83))
    tokens = theme.tokens_of(ruler)
    image = QImage(math.ceil(width * ratio), math.ceil(83 * ratio), QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.red)
    image.setDevicePixelRatio(ratio)
    painter = QPainter(image)
    RulerPainter().paint(painter, look, tokens)
    painter.end()
    edge = {image.pixelColor(image.width() - 1, y).name() for y in range(image.height())}
    assert edge == {theme.colour(tokens.panel).name()}
