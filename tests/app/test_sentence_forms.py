"""A form of the sentence takes what is typed, and never drops in silence what it cannot take."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QCursor, QFontMetricsF
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from inlayfit.app.panels.sentence_box import FormBox, SentenceBox
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.window import MainWindow
from inlayfit.document import edits

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support")


def _opened(window: MainWindow, place: str) -> tuple[FormBox, LengthBox]:
    box = window.sentence.box(place)
    assert isinstance(box, FormBox)
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Space)
    length = box.popup.findChild(LengthBox)
    assert isinstance(length, LengthBox)
    return box, length


def test_typing_into_a_form_replaces_what_was_there(open_discs: MainWindow) -> None:
    box, length = _opened(open_discs, "allowance")
    QTest.keyClicks(length.lineEdit(), "0.3")
    QTest.keyClick(length, Qt.Key.Key_Return)
    assert open_discs.session.state.fitting("o0").spec.plug.finishing_allowance_mm == 0.3
    assert not box.popup.isVisible()


def test_a_refused_length_keeps_its_form_open_at_return_and_is_said_when_it_closes(
    open_discs: MainWindow,
) -> None:
    before = open_discs.session.state
    box, length = _opened(open_discs, "allowance")
    QTest.keyClicks(length.lineEdit(), "3 mil")
    QTest.keyClick(length, Qt.Key.Key_Return)
    assert box.popup.isVisible()
    assert open_discs.notice.text == ""
    refusal = length.refusal
    assert refusal
    box.popup.close()
    assert open_discs.notice.text == refusal
    assert open_discs.session.state is before
    _, length = _opened(open_discs, "allowance")
    assert length.refusal == ""
    box.popup.close()


def test_a_box_is_not_lit_after_its_menu_when_the_mouse_went_elsewhere(open_discs: MainWindow) -> None:
    QCursor.setPos(open_discs.mapToGlobal(QPoint(5, open_discs.height() - 5)))
    for place in ("plug_state", "allowance"):
        box = open_discs.sentence.box(place)
        assert isinstance(box, SentenceBox)
        box.setAttribute(Qt.WidgetAttribute.WA_UnderMouse)  # Qt leaves it so while a popup holds the mouse
        if isinstance(box, FormBox):
            box.click()
            box.popup.close()
        else:
            box.menu().aboutToHide.emit()
        assert not box.underMouse()


def test_the_unit_is_not_lit_after_its_menu_when_the_mouse_went_elsewhere(open_discs: MainWindow) -> None:
    QCursor.setPos(open_discs.mapToGlobal(QPoint(5, 5)))
    button = open_discs.strip.unit_button
    button.setAttribute(Qt.WidgetAttribute.WA_UnderMouse)
    button.menu().aboutToHide.emit()
    assert not button.underMouse()


@pytest.mark.parametrize("place", ["allowance", "plug_cutter", "seat"])
def test_the_label_of_a_row_stands_in_the_middle_of_its_box(open_discs: MainWindow, place: str) -> None:
    box, length = _opened(open_discs, place)
    label = box.popup.form.labelForField(length)
    assert isinstance(label, QLabel)
    words = label.fontMetrics().boundingRect(label.contentsRect(), int(label.alignment()), label.text())
    middle = label.mapTo(box.popup, words.center()).y()
    assert abs(middle - length.geometry().center().y()) <= 2
    box.popup.close()


def test_a_form_is_as_high_as_its_rows_and_makes_room_for_what_a_length_means(
    open_discs: MainWindow,
) -> None:
    box, length = _opened(open_discs, "allowance")
    popup = box.popup
    usual = popup.height()
    lowest = max(length.mapTo(popup, length.rect().bottomLeft()).y(), 0)
    assert usual - lowest <= 16
    QTest.keyClicks(length.lineEdit(), "0.3")
    note = next(label for label in popup.findChildren(QLabel) if "0.3" in label.text())
    assert note.isVisible()
    assert length.geometry().bottom() < note.geometry().top()
    assert note.geometry().bottom() <= popup.height() - 8
    QTest.keyClick(length, Qt.Key.Key_Escape)
    assert popup.height() == usual
    popup.close()


@pytest.mark.parametrize("unit", ["unit_mm", "unit_inch", "unit_thou"])
@pytest.mark.parametrize("mm", [-0.017, -0.0381, 4.999])
def test_the_clearance_in_the_sentence_is_never_clipped(
    open_discs: MainWindow, qtbot: QtBot, unit: str, mm: float
) -> None:
    open_discs.actions_by_name[unit].trigger()
    open_discs.session.do(lambda state: edits.set_clearance(state, mm))
    field = open_discs.sentence.clearance_box.lineEdit()
    words = QFontMetricsF(field.font()).horizontalAdvance(field.text())
    qtbot.waitUntil(lambda: field.width() >= words + field.textMargins().left(), timeout=2_000)
