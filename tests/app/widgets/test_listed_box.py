"""A choice shows its words whole, as wide as its widest."""

from __future__ import annotations

from pytestqt.qtbot import QtBot

from inlayfit.app.widgets.listed_box import ListedBox


def test_there_is_room_for_the_widest_choice(qtbot: QtBot) -> None:
    for words in (("X", "Y"), ("on", "slot with round ends")):
        box = ListedBox()
        qtbot.addWidget(box)
        box.addItems(words)
        arrow_and_margin = 34
        assert box.sizeHint().width() >= box.fontMetrics().horizontalAdvance(words[-1]) + arrow_and_margin
