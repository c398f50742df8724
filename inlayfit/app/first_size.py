"""The size of a window at its first start."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

_WIDTH, _HEIGHT = 1440, 900
_FRAME = 48
"""Room for a title bar and frame, of which nothing is known before the window is shown."""


def take_room(window: QWidget, *, of_screen: bool = True) -> None:
    """The usual size, or the whole screen if frame and title would not fit around it.

    Args:
        window: not shown yet.
        of_screen: whether the screen counts; not for a window whose size somebody else decides.
    """
    room = window.screen().availableSize()
    if not of_screen or (room.width() >= _WIDTH and room.height() >= _HEIGHT + _FRAME):
        window.resize(_WIDTH, _HEIGHT)
        return
    window.resize(min(_WIDTH, room.width()), min(_HEIGHT, room.height() - _FRAME))
    window.setWindowState(window.windowState() | Qt.WindowState.WindowMaximized)
