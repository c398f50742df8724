"""What a screen reader is told besides what it finds by itself."""

from __future__ import annotations

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent, QAccessibleEvent
from PySide6.QtWidgets import QWidget


def announce(window: QWidget, text: str) -> None:
    """Let it say something when it has nothing better to say."""
    if QAccessible.isActive():
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(window, text))


def alert(part: QWidget) -> None:
    """Let it say at once what a part says, by its name."""
    if QAccessible.isActive():
        QAccessible.updateAccessibility(QAccessibleEvent(part, QAccessible.Event.Alert))
