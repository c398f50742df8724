from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.widgets.readout import Readout


class LayoutsAsked(QObject):
    """Counts how often a widget is asked to lay out its children anew."""

    def __init__(self) -> None:
        super().__init__()
        self.count = 0

    def eventFilter(self, _part: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        self.count += event.type() == QEvent.Type.LayoutRequest
        return False


@pytest.mark.parametrize("words", ["0.030", "−0.020", "per side (0.060 overall)"])
def test_it_is_as_large_as_a_plain_label_whatever_it_said_before(qtbot: QtBot, words: str) -> None:
    plain, readout = QLabel(words), Readout("a long text that was said before")
    for label in (plain, readout):
        qtbot.addWidget(label)
        label.setFont(theme.font(theme.INPUT))
    readout.say(words)
    assert readout.text() == words
    assert readout.maximumSize() == readout.minimumSize()
    spare = readout.maximumSize() - plain.sizeHint()
    assert abs(spare.width()) <= 1
    assert abs(spare.height()) <= 1


def test_a_number_of_the_same_width_asks_for_no_layout(qtbot: QtBot, qapp: QObject) -> None:
    host, asked = QWidget(), LayoutsAsked()
    qtbot.addWidget(host)
    readout = Readout("0.030")
    readout.setFont(theme.font(theme.INPUT))
    row = QHBoxLayout(host)
    row.addWidget(readout)
    host.show()
    qtbot.wait(20)
    host.installEventFilter(asked)
    readout.say("0.148")
    qtbot.wait(20)
    assert asked.count == 0
    readout.say("−0.148")
    qtbot.waitUntil(lambda: asked.count > 0)
    assert readout.width() == readout.maximumWidth()
