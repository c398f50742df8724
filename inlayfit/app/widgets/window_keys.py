"""Keys that a box for numbers leaves to the window.

On some desktops Ctrl+E moves to the end of a line, and a box would keep it to itself. In a box a few digits
wide the End key does that; Ctrl+E writes the outlines, wherever the keyboard is.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

_KEYS = (Qt.Key.Key_E,)
"""Held with Ctrl."""


def is_for_window(event: QEvent) -> bool:
    """Whether a box is asked for a key that is a command of the window."""
    if event.type() is not QEvent.Type.ShortcutOverride or not isinstance(event, QKeyEvent):
        return False
    return event.modifiers() == Qt.KeyboardModifier.ControlModifier and event.key() in _KEYS


def leave_keys_to_window(box: QWidget) -> None:
    """Let a box pass over the keys that are commands of the window."""
    box.installEventFilter(_Filter(box))


class _Filter(QObject):
    """Looks at events before the box does.

    An `event` of the box's own would still run while the menu of a right click is open, and until it is
    closed no other thread could run Python.
    """

    def eventFilter(self, _box: QObject, event: QEvent) -> bool:
        if is_for_window(event):
            event.ignore()
            return True
        return False
