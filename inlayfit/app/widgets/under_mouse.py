"""Whether the mouse is above a widget, asked anew: Qt does not tell when it left while a menu was open."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QCursor
from PySide6.QtWidgets import QWidget


def look_for_mouse(widget: QWidget) -> None:
    """Light the widget, or no longer, by where the mouse is now."""
    over = widget.rect().contains(widget.mapFromGlobal(QCursor.pos()))
    widget.setAttribute(Qt.WidgetAttribute.WA_UnderMouse, over)
    widget.update()
