"""The length box: reads what makers type, refuses in a sentence, and loses nothing."""

from __future__ import annotations

from fractions import Fraction

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.theme import Theme
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.units import Unit

Key = Qt.Key


@pytest.fixture
def box(qtbot: QtBot, qapp: QApplication) -> LengthBox:
    theme.apply(qapp, Theme.LIGHT)
    window = QWidget()
    layout = QVBoxLayout(window)
    widget = LengthBox()
    layout.addWidget(widget)
    layout.addStretch()
    qtbot.addWidget(window)
    window.resize(420, 200)
    window.show()
    widget.setFocus()
    widget.set_length(0.03)
    widget.window_kept = window  # type: ignore[attr-defined] # keeps the parent alive
    return widget


def type_into(box: LengthBox, text: str) -> None:
    box.selectAll()
    QTest.keyClicks(box, text)
    QTest.keyClick(box, Key.Key_Return)


@pytest.mark.parametrize(
    ("typed", "mm"),
    [
        ("0.05", Fraction(5, 100)),
        ("2 thou", Fraction(508, 10_000)),
        ("1/8 in", Fraction(3175, 1000)),
        ("0,05 mm", Fraction(5, 100)),
        ("3 mm - 8 thou", Fraction(3) - Fraction(2032, 10_000)),
        ("-0.02", Fraction(-2, 100)),
    ],
)
def test_it_takes_what_makers_type_exactly(box: LengthBox, typed: str, mm: Fraction) -> None:
    edits: list[float] = []
    box.length_edited.connect(edits.append)
    type_into(box, typed)
    assert box.length.mm == mm
    assert edits == [float(mm)]
    assert not box.refusal


@pytest.mark.parametrize("typed", ["5 mil", "1,250", "3 3/2 in", "abc", "", "1/0", "nan"])
def test_it_refuses_in_one_sentence_and_keeps_both_value_and_text(box: LengthBox, typed: str) -> None:
    edits: list[float] = []
    refusals: list[str] = []
    box.length_edited.connect(edits.append)
    box.refused.connect(refusals.append)
    box.selectAll()
    QTest.keyClick(box, Key.Key_Delete)
    type_into(box, typed)
    assert box.length.mm == Fraction(3, 100)
    assert not edits
    assert refusals == [box.refusal]
    assert box.refusal.endswith(".")
    assert box.lineEdit().text() == typed
    assert box.refusal in box.accessibleDescription()
    assert box._note.isVisible()
    assert box._note.text() == box.refusal


def test_escape_takes_the_typing_back(box: LengthBox) -> None:
    type_into(box, "5 mil")
    QTest.keyClick(box, Key.Key_Escape)
    assert not box.refusal
    assert box.lineEdit().text() == "0.030 mm"
    assert not box._note.isVisible()


def test_limits_are_named_when_passed(box: LengthBox) -> None:
    box.set_limits_mm(0, 20)
    type_into(box, "-1")
    assert "outside 0 mm to 20 mm" in box.refusal
    assert box.mm == 0.03


def test_arrows_step_by_exact_fractions(box: LengthBox) -> None:
    for _ in range(1000):
        box.stepBy(1)
    for _ in range(1000):
        box.stepBy(-1)
    assert box.length.mm == Fraction(3, 100)
    QTest.keyClick(box, Key.Key_Up)
    assert box.length.mm == Fraction(31, 1000)
    QTest.keyClick(box, Key.Key_PageUp)
    assert box.length.mm == Fraction(41, 1000)


def test_switching_units_never_drifts(box: LengthBox) -> None:
    box.set_length(Fraction(1, 3))
    for number in range(1000):
        box.set_unit((Unit.THOU, Unit.INCH, Unit.MM)[number % 3])
    assert box.length.mm == Fraction(1, 3)


def test_confirming_what_is_shown_changes_nothing(box: LengthBox) -> None:
    """The value may be finer than its text; Enter must not round it."""
    edits: list[float] = []
    box.length_edited.connect(edits.append)
    box.set_length(Fraction(1, 3))
    QTest.keyClick(box, Key.Key_Return)
    box.clearFocus()
    assert box.length.mm == Fraction(1, 3)
    assert not edits


def test_a_short_value_is_not_shown_rounder_than_it_is(box: LengthBox) -> None:
    box.set_unit(Unit.THOU)
    box.set_length(Fraction(1, 1000))
    assert box.lineEdit().text() == "0.04 thou"


def test_the_tip_says_it_in_both_units(box: LengthBox) -> None:
    box.set_tip("Gap at one wall.")
    type_into(box, "1/8 in")
    assert box.toolTip() == "Gap at one wall.\n3.175 mm = 0.125 in"


def test_while_typing_it_says_how_it_is_understood(box: LengthBox) -> None:
    box.selectAll()
    QTest.keyClicks(box, "2 thou")
    assert box._note.isVisible()
    assert box._note.text() == "0.051 mm = 0.002 in"


def test_a_length_off_the_micrometre_keeps_its_decimals(qtbot: QtBot) -> None:
    box = LengthBox()
    qtbot.addWidget(box)
    box.set_length(59.9999998)
    assert box.shown_text() == "60.000 mm"


def _lettering(box: LengthBox) -> tuple[str, str]:
    """Font and colour of what stands in the box."""
    style = box.lineEdit().styleSheet()
    return box.font().toString(), style[style.find("color:") :] if "color:" in style else ""


def test_a_zero_that_means_none_is_said_in_words(box: LengthBox) -> None:
    edits: list[float] = []
    box.length_edited.connect(edits.append)
    number = _lettering(box)
    box.set_tip("Runout")
    box.set_zero_words("not given", "Not given: it counts as running true.")
    assert box.text() == box.shown_text() == "0.030 mm"
    assert _lettering(box) == number
    box.set_length(0.0)
    assert box.text() == "not given"
    assert box.toolTip() == "Runout\nNot given: it counts as running true."
    assert box.accessibleDescription() == "Not given: it counts as running true."
    words = _lettering(box)
    assert words[0] != number[0]
    assert theme.LIGHT.muted in words[1]
    type_into(box, "0.02")
    assert (box.text(), box.mm) == ("0.020 mm", 0.02)
    assert _lettering(box) == number
    assert box.toolTip().startswith("Runout\n0.02 mm")
    type_into(box, "0")
    assert box.text() == "not given"
    assert edits == [0.02, 0.0]
    box.set_unit(Unit.INCH)
    assert box.text() == "not given"


@pytest.mark.parametrize("typed", ["", "not given", " Not given "])
def test_whoever_empties_such_a_box_means_none(box: LengthBox, typed: str) -> None:
    box.set_zero_words("not given", "Not given: it counts as running true.")
    box.selectAll()
    QTest.keyClick(box, Key.Key_Backspace)
    QTest.keyClicks(box, typed)
    QTest.keyClick(box, Key.Key_Return)
    assert (box.mm, box.text(), box.refusal) == (0.0, "not given", "")


def test_arrows_go_from_words_to_the_first_step_and_back(box: LengthBox) -> None:
    box.set_zero_words("not given", "Not given: it counts as running true.")
    box.set_limits_mm(0, 1)
    box.set_step_mm(0.01)
    box.set_length(0.0)
    box.stepBy(1)
    assert box.text() == "0.010 mm"
    box.stepBy(-1)
    assert box.text() == "not given"
    box.stepBy(-1)
    assert box.mm == 0.0


def test_words_and_numbers_are_lettered_anew_with_the_theme(box: LengthBox, qapp: QApplication) -> None:
    box.set_zero_words("not given", "Not given: it counts as running true.")
    box.set_length(0.0)
    theme.apply(qapp, Theme.DARK)
    QApplication.processEvents()
    assert theme.DARK.muted in _lettering(box)[1]


def test_an_empty_box_without_such_words_is_still_refused(box: LengthBox) -> None:
    box.selectAll()
    QTest.keyClick(box, Key.Key_Backspace)
    QTest.keyClick(box, Key.Key_Return)
    assert box.refusal
    assert box.mm == 0.03
