"""What a box for numbers leaves to the window."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractSpinBox
from pytestqt.qtbot import QtBot

from inlayfit.app.actions import BY_NAME
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.number_box import NumberBox
from inlayfit.app.widgets.window_keys import is_for_window

CTRL, BARE = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.NoModifier


def _asked(key: Qt.Key, held: Qt.KeyboardModifier, text: str) -> QKeyEvent:
    return QKeyEvent(QEvent.Type.ShortcutOverride, key, held, text)


@pytest.mark.parametrize("kind", ["length", "number"])
def test_a_box_leaves_the_key_that_writes_outlines_to_the_window(qtbot: QtBot, kind: str) -> None:
    box: QAbstractSpinBox = LengthBox() if kind == "length" else NumberBox(0, 10, " K")
    qtbot.addWidget(box)
    assert BY_NAME["export"].keys == ("Ctrl+E",)
    event = _asked(Qt.Key.Key_E, CTRL, "\x05")
    event.accept()
    assert not box.event(event)
    assert not event.isAccepted()


def test_a_letter_that_is_typed_and_choosing_all_stay_with_the_box() -> None:
    assert not is_for_window(_asked(Qt.Key.Key_E, BARE, "e"))
    assert not is_for_window(_asked(Qt.Key.Key_A, CTRL, "\x01"))
    assert not is_for_window(QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_E, CTRL, "\x05"))
