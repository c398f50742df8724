"""What the wheel means above a box: its value, or the page that the box stands on.

A box under a moving page would change by chance, and nobody would see it. So the wheel turns a value only
where the box has the keyboard and no page around it could be scrolled instead.
"""

from __future__ import annotations

from PySide6.QtWidgets import QScrollArea, QWidget


def turns_value(box: QWidget) -> bool:
    """Whether the wheel is for this box."""
    around = box.parentWidget()
    while around is not None:
        if isinstance(around, QScrollArea):
            return False
        around = None if around.isWindow() else around.parentWidget()
    return box.hasFocus()
