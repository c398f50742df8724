"""Moving the keyboard about the window: from part to part, and along the lines as one reads.

Parts come and go (a notice, the rows of the checks), so the order is looked up when a key is pressed and not
kept: part by part, in each from the top, along the reading direction.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSpinBox,
    QApplication,
    QButtonGroup,
    QScrollArea,
    QToolButton,
    QWidget,
)


def move_on(stations: Sequence[QWidget], step: int) -> None:
    """Give the keyboard to the next part (or, with −1, the one before) that can take it."""
    focus = QApplication.focusWidget()
    inside = [n for n, s in enumerate(stations) if focus is not None and _holds(s, focus)]
    here = inside[0] if inside else (-1 if step > 0 else 0)
    for k in range(1, len(stations) + 1):
        there = takers(stations[(here + step * k) % len(stations)])
        if there:
            _give(there[0], Qt.FocusReason.TabFocusReason)
            return


def land_in(part: QWidget) -> None:
    """Give the keyboard to a part that was turned to: where it was there last, or where the part begins."""
    order = takers(part)
    if not order:
        return
    here, last = _place_of_focus(order), part.focusWidget()
    taker = order[here] if here is not None else last if last in order else order[0]
    _give(taker, Qt.FocusReason.TabFocusReason)
    if isinstance(taker, QAbstractSpinBox):
        taker.selectAll()  # as Tab does: what is typed takes the place of what stands there


def move_along(stations: Sequence[QWidget], step: int) -> bool:
    """Give the keyboard to the next widget in reading order, as Tab does; False if there is none."""
    order = [taker for station in stations for taker in takers(station)]
    if not order:
        return False
    here = _place_of_focus(order)
    if here is None:
        here = -1 if step > 0 else 0
    reason = Qt.FocusReason.TabFocusReason if step > 0 else Qt.FocusReason.BacktabFocusReason
    _give(order[(here + step) % len(order)], reason)
    return True


def takers(part: QWidget) -> list[QWidget]:
    """What takes the keyboard in a part, in reading order; the part itself first if it does."""
    if not part.isVisible() or not part.isEnabled():
        return []
    found = [child for child in part.findChildren(QWidget) if _takes_keyboard(child, part)]
    itself = [part] if part.focusPolicy() & Qt.FocusPolicy.TabFocus else []
    outer = [child for child in found if not any(o is not child and o.isAncestorOf(child) for o in found)]
    return [*itself, *(taker for child in _as_read(outer, part) for taker in _with_inner(child))]


def _with_inner(taker: QWidget) -> list[QWidget]:
    """A widget and what takes the keyboard inside of it, such as a list with buttons in its rows."""
    inner = takers(taker)
    return inner if taker in inner else [taker, *inner]


@contextmanager
def kept_focus(part: QWidget) -> Iterator[None]:
    """Keep the keyboard in a part whose widgets are made anew: at the same place, or the last."""
    focus = QApplication.focusWidget()
    here = _place_of_focus(takers(part))
    yield
    if here is not None and QApplication.focusWidget() is not focus:
        after = takers(part)
        if after:
            _give(after[min(here, len(after) - 1)], Qt.FocusReason.OtherFocusReason)


def _give(widget: QWidget, reason: Qt.FocusReason) -> None:
    """Give the keyboard to a widget and bring it into sight, wherever its page was scrolled to."""
    widget.setFocus(reason)
    around = widget.parentWidget()
    while around is not None:
        if isinstance(around, QScrollArea):
            around.ensureWidgetVisible(widget)
        around = around.parentWidget()


def _place_of_focus(order: Sequence[QWidget]) -> int | None:
    """Which of these has the keyboard, the innermost one; None if none has."""
    focus = QApplication.focusWidget()
    inside = [n for n, taker in enumerate(order) if focus is not None and _holds(taker, focus)]
    return inside[-1] if inside else None


def _holds(part: QWidget, focus: QWidget) -> bool:
    return part is focus or part.isAncestorOf(focus)


def _takes_keyboard(child: QWidget, part: QWidget) -> bool:
    is_here = child.isVisibleTo(part) and child.isEnabled() and child.window() is part.window()
    if not is_here or child.focusProxy() is not None:
        return False
    if isinstance(child, QAbstractButton) and _is_one_of_several(child):
        return child.isChecked()
    return bool(child.focusPolicy() & Qt.FocusPolicy.TabFocus)


def _is_one_of_several(button: QAbstractButton) -> bool:
    """Whether it is one of buttons that exclude each other: Tab stops at the one that is on, arrows go on."""
    group: QButtonGroup | None = button.group()
    return group is not None and group.exclusive() and group.checkedButton() is not None


def _as_read(children: Sequence[QWidget], part: QWidget) -> list[QWidget]:
    """Rows from the top, then along the reading direction. A row holds what lies beside its first widget."""
    placed = [(QRect(_place_unscrolled(child, part), child.size()), child) for child in children]
    placed.sort(key=lambda pair: pair[0].center().y())
    backwards = part.layoutDirection() is Qt.LayoutDirection.RightToLeft
    rows: list[list[tuple[QRect, QWidget]]] = []
    for rect, child in placed:
        if rows and rect.center().y() <= rows[-1][0][0].bottom():
            rows[-1].append((rect, child))
        else:
            rows.append([(rect, child)])
    sign = -1 if backwards else 1
    return [child for row in rows for _, child in sorted(row, key=lambda pair: sign * pair[0].x())]


def _place_unscrolled(child: QWidget, part: QWidget) -> QPoint:
    """Where a widget stands in a part while nothing is scrolled: reading goes on wherever a page stands."""
    place, around = child.mapTo(part, QPoint(0, 0)), child.parentWidget()
    while around is not None and around is not part:
        if isinstance(around, QScrollArea):
            place += QPoint(around.horizontalScrollBar().value(), around.verticalScrollBar().value())
        around = around.parentWidget()
    return place


def press(widget: QWidget | None) -> bool:
    """Press a button as the space bar would, for Enter; False if it is no button that can be pressed."""
    if not isinstance(widget, QAbstractButton) or not widget.isEnabled():
        return False
    if isinstance(widget, QToolButton) and widget.menu() is not None:
        open_menu(widget)
    else:
        widget.click()
    return True


def open_menu(button: QToolButton) -> None:
    """Open the menu of a button and come back at once.

    `showMenu` comes back when the menu is closed, and until then no other thread could run Python: drawings
    would not be read, nothing solved, and no recovery copy written.
    """
    menu = button.menu()
    if menu.isVisible():
        return
    button.setDown(True)
    menu.aboutToHide.connect(lambda: button.setDown(False), Qt.ConnectionType.SingleShotConnection)
    menu.popup(button.mapToGlobal(QPoint(0, button.height())))
