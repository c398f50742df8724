"""A choice shows its words whole, as wide as its widest."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from inlayfit.app.widgets.listed_box import ListedBox

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support")


def test_there_is_room_for_the_widest_choice(qtbot: QtBot) -> None:
    for words in (("X", "Y"), ("on", "slot with round ends")):
        box = ListedBox()
        qtbot.addWidget(box)
        box.addItems(words)
        arrow_and_margin = 34
        assert box.sizeHint().width() >= box.fontMetrics().horizontalAdvance(words[-1]) + arrow_and_margin


def test_where_nothing_is_chosen_the_first_row_is_seen_to_have_the_keyboard(qtbot: QtBot) -> None:
    box = ListedBox()
    qtbot.addWidget(box)
    box.addItems(["the plug", "From another drawing…"])
    box.setCurrentIndex(-1)
    box.show()
    box.showPopup()
    assert [index.row() for index in box.view().selectedIndexes()] == [0]
    assert box.currentIndex() == -1
    box.hidePopup()
