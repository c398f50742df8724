"""The wheel above a box: it turns a value only where a person means the value."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QScrollArea, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.listed_box import ListedBox
from inlayfit.app.widgets.number_box import NumberBox

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support")


def _turn(box: QWidget) -> bool:
    """Turn the wheel one notch above a box; whether the box took it."""
    at = QPointF(8, 8)
    no = Qt.MouseButton.NoButton
    plain, phase = Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase
    event = QWheelEvent(
        at, QPointF(box.mapToGlobal(at.toPoint())), QPoint(), QPoint(0, 120), no, plain, phase, False
    )
    QApplication.sendEvent(box, event)
    return event.isAccepted()


def _boxes() -> tuple[LengthBox, NumberBox, ListedBox]:
    length, number, listed = LengthBox(), NumberBox(-10, 10, " K"), ListedBox()
    listed.addItems(["one", "two"])
    listed.setCurrentIndex(1)
    return length, number, listed


def _values(length: LengthBox, number: NumberBox, listed: ListedBox) -> tuple[float, float, int]:
    return length.mm, number.value(), listed.currentIndex()


def test_passing_over_boxes_changes_none_of_them(qtbot: QtBot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    boxes = _boxes()
    column = QVBoxLayout(page)
    for box in boxes:
        column.addWidget(box)
    page.show()
    page.setFocus()
    before = _values(*boxes)
    assert [_turn(box) for box in boxes] == [False] * 3
    assert _values(*boxes) == before
    assert not any(box.hasFocus() for box in boxes)


def test_a_box_that_has_the_keyboard_is_turned_by_the_wheel(qtbot: QtBot) -> None:
    length, number, _ = _boxes()
    for box in (length, number):
        qtbot.addWidget(box)
        box.show()
        box.setFocus()
        qtbot.waitUntil(box.hasFocus)
        assert _turn(box)
    assert (length.mm, number.value()) == (0.001, 1.0)


def test_on_a_page_that_scrolls_the_wheel_is_for_the_page(qtbot: QtBot) -> None:
    area, body = QScrollArea(), QWidget()
    qtbot.addWidget(area)
    boxes = _boxes()
    column = QVBoxLayout(body)
    for box in boxes:
        column.addWidget(box)
    area.setWidget(body)
    area.show()
    before = _values(*boxes)
    for box in boxes:
        box.setFocus()
        qtbot.waitUntil(box.hasFocus)
        _turn(box)
    assert _values(*boxes) == before
