"""Keys that a box for numbers leaves to the window.

On some desktops Ctrl+E moves to the end of a line, and a box would keep it to itself. In a box a few digits
wide the End key does that; Ctrl+E writes the outlines, wherever the keyboard is.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent

_KEYS = (Qt.Key.Key_E,)
"""Held with Ctrl."""


def is_for_window(event: QEvent) -> bool:
    """Whether a box is asked for a key that is a command of the window."""
    if event.type() is not QEvent.Type.ShortcutOverride or not isinstance(event, QKeyEvent):
        return False
    return event.modifiers() == Qt.KeyboardModifier.ControlModifier and event.key() in _KEYS
