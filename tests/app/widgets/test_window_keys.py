"""What a box for numbers leaves to the window."""

from __future__ import annotations

import threading
import time

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QPoint, Qt, QTimer
from PySide6.QtGui import QContextMenuEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractSpinBox, QApplication
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
    QCoreApplication.sendEvent(box, event)
    assert not event.isAccepted()


@pytest.mark.qt_log_ignore("This plugin does not support")
@pytest.mark.parametrize("kind", ["length", "number"])
def test_work_goes_on_while_the_menu_of_a_right_click_is_open(qtbot: QtBot, kind: str) -> None:
    """Qt waits in the box for the menu's end; were that within Python, no other thread could run it."""
    box: QAbstractSpinBox = LengthBox() if kind == "length" else NumberBox(0, 10, " K")
    qtbot.addWidget(box)
    box.show()
    place = QPoint(5, 5)
    asked = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, place, box.mapToGlobal(place))
    QCoreApplication.postEvent(box, asked)
    worked: list[bool] = []

    def work() -> None:
        for _ in range(50):
            time.sleep(0.01)
            worked.append(True)

    steps: list[int] = []

    def close() -> None:
        steps.append(len(worked))
        menu = QApplication.activePopupWidget()
        assert menu is not None
        menu.close()

    threading.Thread(target=work).start()
    QTimer.singleShot(300, close)
    qtbot.waitUntil(lambda: bool(steps))
    assert steps[0] > 3


def test_a_letter_that_is_typed_and_choosing_all_stay_with_the_box() -> None:
    assert not is_for_window(_asked(Qt.Key.Key_E, BARE, "e"))
    assert not is_for_window(_asked(Qt.Key.Key_A, CTRL, "\x01"))
    assert not is_for_window(QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_E, CTRL, "\x05"))
