"""A number is shown with a decimal point in every language, and a comma is taken for one."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from inlayfit.app.widgets.number_box import NumberBox


@pytest.fixture
def german() -> Iterator[None]:
    before = QLocale()
    QLocale.setDefault(QLocale("de_DE"))
    yield
    QLocale.setDefault(before)


def test_a_decimal_point_is_shown_where_the_locale_writes_a_comma(german: None, qtbot: QtBot) -> None:
    box = NumberBox(-100, 100, " K")
    qtbot.addWidget(box)
    box.setValue(12.5)
    assert box.text() == "12.5 K"


@pytest.mark.parametrize("typed", ["7,5", "7.5"])
def test_a_comma_is_taken_for_the_point(german: None, qtbot: QtBot, typed: str) -> None:
    box = NumberBox(-100, 100, " K")
    qtbot.addWidget(box)
    box.selectAll()
    QTest.keyClicks(box, typed)
    QTest.keyClick(box, Qt.Key.Key_Return)
    assert box.value() == 7.5
    assert box.text() == "7.5 K"


def test_a_zero_that_means_none_is_said_in_words_without_a_unit(qtbot: QtBot) -> None:
    box = NumberBox(-100, 100, " K")
    qtbot.addWidget(box)
    box.setToolTip("<b>Warmth</b>")
    box.set_zero_words("not given", "Not given: warmth does not count.")
    assert box.text() == "not given"
    assert "Not given: warmth does not count." in box.toolTip()
    assert "Not given: warmth does not count." in box.accessibleDescription()
    for typed, value, shown in (
        ("7,5", 7.5, "7.5 K"),
        ("", 0, "not given"),
        ("-3", -3, "-3.0 K"),
        ("0", 0, "not given"),
    ):
        box.selectAll()
        QTest.keyClick(box, Qt.Key.Key_Backspace)
        QTest.keyClicks(box, typed)
        QTest.keyClick(box, Qt.Key.Key_Return)
        assert (box.value(), box.text()) == (value, shown)
        assert ("color:" in box.lineEdit().styleSheet()) is (shown == "not given")
    box.stepBy(1)
    assert box.text() == "1.0 K"
    box.setValue(0)
    assert box.text() == "not given"
