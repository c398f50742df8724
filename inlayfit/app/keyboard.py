"""Moving the keyboard from one part of the window to the next."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QToolButton, QWidget

_SAME_ROW_PX = 24


def move_on(stations: Sequence[QWidget], step: int) -> None:
    """Give the keyboard to the next part (or, with −1, the one before) that can take it."""
    focus = QApplication.focusWidget()
    inside = [n for n, s in enumerate(stations) if focus is not None and _holds(s, focus)]
    here = inside[0] if inside else (-1 if step > 0 else 0)
    for k in range(1, len(stations) + 1):
        target = _first_focus(stations[(here + step * k) % len(stations)])
        if target is not None:
            target.setFocus(Qt.FocusReason.TabFocusReason)
            return


def _holds(part: QWidget, focus: QWidget) -> bool:
    return part is focus or part.isAncestorOf(focus)


def _first_focus(part: QWidget) -> QWidget | None:
    """The first widget in a part that takes the keyboard."""
    if not part.isVisible() or not part.isEnabled():
        return None
    if part.focusPolicy() & Qt.FocusPolicy.TabFocus:
        return part
    takers = [child for child in part.findChildren(QWidget) if _takes_keyboard(child, part)]
    return min(takers, key=lambda child: _reading_place(child, part), default=None)


def _takes_keyboard(child: QWidget, part: QWidget) -> bool:
    takes = bool(child.focusPolicy() & Qt.FocusPolicy.TabFocus)
    return takes and child.isVisibleTo(part) and child.isEnabled() and child.window() is part.window()


def _reading_place(child: QWidget, part: QWidget) -> tuple[int, int]:
    """Rows from the top, then along the reading direction."""
    at = child.mapTo(part, QPoint(0, 0))
    backwards = part.layoutDirection() is Qt.LayoutDirection.RightToLeft
    return at.y() // _SAME_ROW_PX, -at.x() if backwards else at.x()


def press(widget: QWidget | None) -> bool:
    """Press a button as the space bar would, for Enter; False if it is no button that can be pressed."""
    if not isinstance(widget, QAbstractButton) or not widget.isEnabled():
        return False
    if isinstance(widget, QToolButton) and widget.popupMode() is QToolButton.ToolButtonPopupMode.InstantPopup:
        widget.showMenu()
    else:
        widget.click()
    return True
