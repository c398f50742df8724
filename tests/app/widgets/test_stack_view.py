"""The stack view: faces are taken hold of by mouse or keys, and the step is drawn at the gauge's scale."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray
from PySide6.QtCore import QPoint, QRectF, Qt, QTranslator
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.theme import LIGHT, Theme
from inlayfit.app.widgets.paint_stack import (
    StackPart,
    StackSection,
    dot_px,
    expected_words,
    face_lines,
    gauge_factor,
    gauge_scale,
    paint_section,
    picture_part,
    section_shape,
)
from inlayfit.app.widgets.stack_view import StackView
from inlayfit.bench.stack import Spread, Stack
from inlayfit.shipped import shipped_folder
from inlayfit.units import Unit

LEFT = Qt.MouseButton.LeftButton
FORMAT = QImage.Format.Format_RGB32
AREA = QRectF(0, 0, 360, 212)


def section(plug: float, depth: float, bed: float = 0.0, spread: float = 0.0) -> StackSection:
    stack = Stack(Spread.plus_minus(plug, spread), Spread.exact(depth), Spread.exact(bed))
    return StackSection(stack, plug_word="copper", bed_word="thin CA", host_word="cherry")


@pytest.fixture(autouse=True, scope="module")
def lettering(qapp: QApplication) -> None:
    """The layout leaves room for words, which nothing can measure before there is an application."""


@pytest.fixture
def view(qtbot: QtBot, qapp: QApplication) -> StackView:
    theme.apply(qapp, Theme.LIGHT)
    widget = StackView()
    qtbot.addWidget(widget)
    widget.resize(360, 212)
    widget.set_section(section(2.98, 2.995, 0.02, 0.03))
    widget.show()
    return widget


def heard(signal: Any) -> list[tuple[StackPart, float]]:
    values: list[tuple[StackPart, float]] = []
    signal.connect(lambda part, mm: values.append((part, mm)))
    return values


def face(view: StackView, part: StackPart) -> QPoint:
    shape = section_shape(QRectF(view.rect()), view.section)
    return face_lines(shape, view.section)[part].center().toPoint()


@given(st.floats(2.9, 3.1), st.floats(0.0, 0.05))
def test_the_step_is_drawn_at_the_scale_of_the_gauge(plug: float, spread: float) -> None:
    shown = section(plug, 3.0, spread=spread)
    shape = section_shape(AREA, shown)
    step = shape.face_y - shape.plug.top()
    assert step == pytest.approx((plug - 3.0) * gauge_scale(shown), abs=0.5)
    assert gauge_factor(shown) in (10, 20, 50, 100, 200, 400)


@given(st.floats(0.1, 30), st.floats(0.1, 30), st.floats(0, 3))
def test_whatever_the_heights_the_plug_stays_in_the_picture(plug: float, depth: float, bed: float) -> None:
    shape = section_shape(AREA, section(plug, depth, bed))
    assert AREA.top() <= shape.plug.top() < shape.plug.bottom() <= shape.floor_y


@pytest.mark.parametrize(("part", "down"), [(StackPart.PLUG, -1), (StackPart.BED, -1), (StackPart.DEPTH, 1)])
def test_dragging_a_face_says_its_new_height_once_at_the_end(
    view: StackView, part: StackPart, down: int
) -> None:
    dragging, released = heard(view.height_dragging), heard(view.height_released)
    before, scale = view.section.height_mm(part), gauge_scale(view.section)
    start = face(view, part)
    QTest.mousePress(view, LEFT, pos=start)
    QTest.mouseMove(view, start + QPoint(0, -6))
    QTest.mouseMove(view, start + QPoint(0, -12))
    assert not released
    QTest.mouseRelease(view, LEFT, pos=start + QPoint(0, -12))
    assert released == [dragging[-1]]
    assert released[0][0] is part
    assert released[0][1] == pytest.approx(max(0, before - down * 12 / scale), abs=0.0006)


def test_escape_takes_a_drag_back(view: StackView) -> None:
    dragging, released = heard(view.height_dragging), heard(view.height_released)
    start = face(view, StackPart.PLUG)
    QTest.mousePress(view, LEFT, pos=start)
    QTest.mouseMove(view, start + QPoint(0, -10))
    QTest.keyClick(view, Qt.Key.Key_Escape)
    QTest.mouseRelease(view, LEFT, pos=start)
    assert dragging[-1] == (StackPart.PLUG, 2.98)
    assert not released


def test_every_face_is_reached_and_moved_by_keys(view: StackView) -> None:
    released = heard(view.height_released)
    seen = set()
    for _ in range(3):
        QTest.keyClick(view, Qt.Key.Key_Right)
        seen.add(view.held_part)
        QTest.keyClick(view, Qt.Key.Key_Up)
    assert seen == set(StackPart)
    moved_up = {StackPart.DEPTH: 2.985, StackPart.BED: 0.03, StackPart.PLUG: 2.99}
    assert dict(released) == pytest.approx(moved_up), "a floor that goes up leaves less depth, as in a drag"
    QTest.keyClick(view, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    assert released[-1][0] is StackPart.PLUG
    assert released[-1][1] == pytest.approx(2.88)


@pytest.mark.parametrize("bed", [0.0, 0.02])
def test_the_face_that_the_arrows_move_is_drawn_as_held(qtbot: QtBot, bed: float) -> None:
    """Also where no tape lies yet: it would lie on the floor."""
    shown = section(2.98, 2.995, bed)
    for part in StackPart:
        assert ink(shown, LIGHT.focus, held=part) > ink(shown, LIGHT.focus) + 100, part


@pytest.mark.parametrize("unit", [Unit.MM, Unit.INCH])
@pytest.mark.parametrize("language", ["en", "de"])
def test_the_ring_round_the_picture_touches_no_lettering(
    view: StackView, unit: Unit, language: str, qapp: QApplication
) -> None:
    def written(of: StackView) -> NDArray[np.bool_]:
        image = of.grab().toImage().convertToFormat(FORMAT)  # must outlive the view of its bits
        bits = np.frombuffer(image.constBits(), np.uint8)
        pixels = bits.reshape(of.height(), -1, 4)[:, :, :3].astype(int)
        return np.asarray(pixels.max(axis=2) < 110)

    translator = QTranslator()
    if language == "de":
        assert translator.load(str(shipped_folder("resources") / "translations" / "inlayfit_de.qm"))
    qapp.installTranslator(translator)
    view.set_unit(unit)
    view.set_section(section(3.10, 2.995, 0.02, 0.03))
    view.clearFocus()
    lettering = written(view)
    qapp.removeTranslator(translator)
    ring = picture_part(QRectF(view.rect()))
    edges = (
        lettering[: round(ring.bottom()), -4:],
        lettering[round(ring.bottom()) - 3 : round(ring.bottom()), :],
    )
    assert not any(edge.any() for edge in edges)


def test_it_says_what_was_wanted_where_that_is_not_expected(view: StackView) -> None:
    at_target = section(3.0, 3.0)
    off = replace(at_target, target_mm=0.2)
    assert expected_words(at_target, Unit.MM) == "0.000 expected"
    assert expected_words(off, Unit.MM) == "0.000 expected, +0.200 wanted"
    view.set_section(off)
    assert "+0.200 wanted" in view.accessibleDescription()


@given(st.floats(1.01, 60))
def test_best_and_worst_are_never_one_blot(apart_px: float) -> None:
    """The dot of the expected height covers at most half of the way between the two, unless it is a speck."""
    assert 2 * dot_px(apart_px) <= max(3.0, apart_px / 2)


def test_heights_never_become_negative(view: StackView) -> None:
    released = heard(view.height_released)
    while view.held_part is not StackPart.BED:
        QTest.keyClick(view, Qt.Key.Key_Right)
    QTest.keyClick(view, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    assert released == [(StackPart.BED, 0.0)]


def test_enter_and_double_click_ask_for_the_box(view: StackView) -> None:
    asked: list[StackPart] = []
    view.part_activated.connect(asked.append)
    QTest.keyClick(view, Qt.Key.Key_Return)
    QTest.mouseDClick(view, LEFT, pos=face(view, StackPart.DEPTH))
    assert asked == [StackPart.PLUG, StackPart.DEPTH]


def test_a_screen_reader_hears_the_answer_and_the_heights(view: StackView) -> None:
    text = view.accessibleDescription()
    minus = "\N{MINUS SIGN}"
    assert text.startswith(f"Flush, +0.005, between {minus}0.025 and +0.035.")
    assert "thin CA 0.020 mm" in text
    view.set_unit(Unit.THOU)
    assert "thou" in view.accessibleDescription()


def ink(shown: StackSection, token: str, *, dimmed: bool = False, held: StackPart | None = None) -> int:
    image = QImage(360, 212, QImage.Format.Format_RGB32)
    image.fill(theme.colour(LIGHT.panel))
    painter = QPainter(image)
    paint_section(painter, AREA, shown, LIGHT, Unit.MM, held=held, dimmed=dimmed)
    painter.end()
    pixels = np.frombuffer(image.constBits(), np.uint32) & 0xFFFFFF
    return int(np.count_nonzero(pixels == theme.colour(token).rgb() & 0xFFFFFF))


def test_a_thicker_plug_leaves_more_ink_of_its_own(qtbot: QtBot) -> None:
    assert ink(section(3.05, 3.0), LIGHT.plug_tint) > ink(section(2.95, 3.0), LIGHT.plug_tint) + 500


def test_a_preview_is_dimmed(qtbot: QtBot) -> None:
    assert ink(section(3, 3), LIGHT.text, dimmed=True) < ink(section(3, 3), LIGHT.text)


def test_it_paints_at_extremes(view: StackView) -> None:
    for shown in (section(30, 0.1), section(0.1, 30, 2.0), section(3, 3, 0.0, 0.5), section(3.0, 3.0)):
        view.set_section(shown)
        view.grab()
