"""The boxes of the fit sentence: words that can be changed where they stand.

A box is a button that opens either a menu of words or a small form. It looks like underlined text in a
field; a half that may not move has the line only.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property
from typing import TypeAlias

from PySide6.QtCore import QPoint, QSize, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QAction, QActionGroup, QHideEvent, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QFormLayout,
    QFrame,
    QLineEdit,
    QMenu,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from inlayfit.app import theme
from inlayfit.app.keyboard import press
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.lettering import centre_labels
from inlayfit.app.widgets.under_mouse import look_for_mouse

SENTENCE_PX = 18
"""Lettering of the sentence; with it the sample fits two lines of a window 1440 wide."""
_HEIGHT = 30
_PAD = 8
_ARROW = 14
_SIGN = 17
_MARGIN = 12
"""Round a form, and below the note that says how a typed length is understood."""

MakeForm: TypeAlias = Callable[[QFormLayout], Callable[[], None]]
"""Makes the rows of a form; answers what fills them in before the form is shown."""


_OPENING_KEYS = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Down, Qt.Key.Key_Space)


class SentenceBox(QToolButton):
    """One box. Pressing it, Space, Return or Alt+Down opens what it offers."""

    def __init__(self, name: str, tip: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setToolTip(f"<b>{name}</b><br>{tip}")
        self.setStatusTip(tip)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.setFont(theme.font(theme.TypeSize(SENTENCE_PX, theme.INPUT.weight)))
        self.sign: str = ""
        """"hollow" or "solid": the sign of a half that may or may not move, the same as in the map."""
        self.is_plain = False
        """Whether only the lower edge is drawn: the half may not move."""
        self.short = ""
        """Words to show where the others have no room; "" if there are none."""

    def say(self, words: str) -> None:
        """Show other words."""
        if words != self.text():
            self.setText(words)
            self.setAccessibleDescription(words)
            self.updateGeometry()

    def sizeHint(self) -> QSize:
        return self._size_for(self.text())

    def _size_for(self, words: str) -> QSize:
        width = self.fontMetrics().horizontalAdvance(words) + 2 * _PAD + _ARROW
        return QSize(max(48, width + (_SIGN if self.sign else 0)), _HEIGHT)

    def minimumSizeHint(self) -> QSize:
        return self._size_for(self.short or self.text())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in _OPENING_KEYS:
            press(self)  # opens the menu or form
            return
        super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() not in _OPENING_KEYS:  # what it opened stays open
            super().keyReleaseEvent(event)

    def look_for_mouse(self) -> None:
        """See anew whether the mouse is above, after a menu."""
        look_for_mouse(self)

    def paintEvent(self, _event: QPaintEvent) -> None:
        look = theme.tokens_of(self)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        frame = self.rect().toRectF().adjusted(0.5, 0.5, -0.5, -1.5)
        if not self.is_plain or self.underMouse() or self.isDown():
            fill = look.accent_soft if self.isDown() else look.hover if self.underMouse() else look.field
            is_open = self.isEnabled()
            line = Qt.PenStyle.SolidLine if is_open else Qt.PenStyle.DashLine
            painter.setPen(QPen(theme.colour(look.hairline if is_open else look.edge), 1, line))
            painter.setBrush(theme.colour(fill) if is_open else Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(frame, theme.RADIUS_PX, theme.RADIUS_PX)
        if self.isEnabled():
            painter.setPen(QPen(theme.colour(look.edge), 2))
            y = int(self.height() - 1.5)
            painter.drawLine(3, y, self.width() - 4, y)
        if self.hasFocus():
            painter.setPen(QPen(theme.colour(look.focus), theme.FOCUS_RING_PX))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(
                self.rect().toRectF().adjusted(1, 1, -1, -1), theme.RADIUS_PX, theme.RADIUS_PX
            )
        self._paint_words(painter, look)

    def _paint_words(self, painter: QPainter, look: theme.Tokens) -> None:
        left = _PAD
        ink = theme.colour(look.text if self.isEnabled() else look.muted)
        painter.setPen(QPen(ink, 1.6))
        if self.sign:
            square = self.rect().toRectF()
            square.setRect(left, (self.height() - 11) / 2, 11, 11)
            painter.setBrush(ink if self.sign == "solid" else Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(square, 2.5, 2.5)
            left += _SIGN
        painter.setFont(self.font())
        words = self.rect().adjusted(left, -1, -_PAD - _ARROW, -1)
        fits = self.fontMetrics().horizontalAdvance(self.text()) <= words.width()
        shown = self.text()
        if self.short and not fits:
            shown = self.fontMetrics().elidedText(self.short, Qt.TextElideMode.ElideRight, words.width())
        painter.drawText(words, int(Qt.AlignmentFlag.AlignVCenter), shown)
        if not self.isEnabled():
            return
        x, y = self.width() - _PAD - 8, self.height() / 2
        painter.setPen(QPen(theme.colour(look.muted), 1.6))
        painter.drawPolyline([QPoint(x, int(y - 2)), QPoint(x + 4, int(y + 2)), QPoint(x + 8, int(y - 2))])


class ChoiceBox(SentenceBox):
    """A box with a menu of words, of which one holds."""

    picked = Signal(object)

    def __init__(
        self,
        name: str,
        tip: str,
        choices: Sequence[tuple[object, str, str]],
        parent: QWidget | None = None,
    ) -> None:
        """`choices` are (value, words, why)."""
        super().__init__(name, tip, parent)
        self._choices = choices
        self._held: object = None
        menu = QMenu(self)
        menu.setToolTipsVisible(True)
        menu.aboutToShow.connect(self._on_menu_about_to_show)
        menu.aboutToHide.connect(self.look_for_mouse)
        self.setMenu(menu)

    @Slot()
    def _on_menu_about_to_show(self) -> None:
        """Light the entry that holds once the menu stands: arrows set out from it."""
        held = self._actions.get(self._held)
        if held is not None:
            QTimer.singleShot(0, self, lambda: self.menu().setActiveAction(held))

    @cached_property
    def _actions(self) -> dict[object, QAction]:
        """The entries by value. They are made when they are first wanted: a window shows itself sooner."""
        menu, group = self.menu(), QActionGroup(self)
        actions: dict[object, QAction] = {}
        for value, words, why in self._choices:
            action = QAction(words, menu)
            action.setCheckable(True)
            action.setChecked(value == self._held)
            action.setToolTip(why)
            action.setStatusTip(why)
            action.triggered.connect(lambda _=False, v=value: self.picked.emit(v))
            group.addAction(action)
            menu.addAction(action)
            actions[value] = action
        return actions

    def action_for(self, value: object) -> QAction:
        """The menu's entry for a value."""
        return self._actions[value]

    def mark(self, value: object) -> None:
        """Check the entry that holds."""
        self._held = value
        if "_actions" in self.__dict__:
            for each, action in self._actions.items():
                action.setChecked(each == value)


class FormPopup(QFrame):
    """A small form that a box opens below itself; Esc, Return or a click beside it closes it.

    A length that is refused keeps it open at Return, and is said aloud if it closes nevertheless.
    """

    left_refused = Signal(str)
    """It closed with a length that was not taken; one sentence."""
    closed = Signal()
    """It closed."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent, Qt.WindowType.Popup)
        self.setObjectName("popup")
        self.form = QFormLayout()
        self.form.setHorizontalSpacing(12)
        self.form.setVerticalSpacing(8)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(_MARGIN, _MARGIN, _MARGIN, _MARGIN)
        self.setMinimumWidth(300)
        outer.addLayout(self.form)
        outer.addStretch(1)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            refused = self._refused()
            if refused is None:
                self.close()
            else:
                refused.setFocus(Qt.FocusReason.OtherFocusReason)
        elif event.key() == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)

    def open_at(self, corner: QPoint, field: QWidget | None = None) -> None:
        """Show it at a point of the screen, the keyboard in a field of it or in the first."""
        for box in self.findChildren(LengthBox):
            box.set_note_room(self._make_room)
        self._make_room(0)
        room = self.screen().availableGeometry()
        furthest = room.right() - self.width()
        self.move(max(room.left(), min(corner.x(), furthest)), corner.y())
        self.show()
        first = self.form.itemAt(0, QFormLayout.ItemRole.FieldRole)
        field = field or (None if first is None else first.widget())
        if field is not None:
            field.setFocus(Qt.FocusReason.PopupFocusReason)
        if isinstance(field, QLineEdit | QAbstractSpinBox):
            field.selectAll()

    def _make_room(self, bottom: int) -> None:
        """Reach below a note that ends there; 0 if there is none."""
        rows = self.sizeHint()
        width = max(rows.width(), self.minimumWidth())
        self.resize(width, max(rows.height(), bottom + _MARGIN if bottom else 0))

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.closed.emit()
        refused = self._refused()
        if refused is not None:
            self.left_refused.emit(refused.refusal)

    def _refused(self) -> LengthBox | None:
        return next((box for box in self.findChildren(LengthBox) if box.refusal), None)


class FormBox(SentenceBox):
    """A box that opens a form."""

    left_refused = Signal(str)
    """The form closed with a length that was not taken; one sentence."""

    def __init__(self, name: str, tip: str, make: MakeForm, parent: QWidget | None = None) -> None:
        super().__init__(name, tip, parent)
        self._make = make
        self._fill: Callable[[], None] = lambda: None
        self.clicked.connect(self._on_self_clicked)

    @cached_property
    def popup(self) -> FormPopup:
        """The form. It is made when it is first wanted: a window shows itself sooner."""
        popup = FormPopup(self)
        popup.setAccessibleName(self.accessibleName())
        popup.left_refused.connect(self.left_refused)
        popup.closed.connect(self.look_for_mouse)
        self._fill = self._make(popup.form)
        centre_labels(popup.form)
        return popup

    def ask_for_length(self) -> None:
        """Open the form with the keyboard in its box for a length; where it was before it returns to."""
        self._open(self.popup.findChild(LengthBox))

    def _on_self_clicked(self) -> None:
        self._open()

    def _open(self, field: QWidget | None = None) -> None:
        popup = self.popup
        self._fill()
        popup.open_at(self.mapToGlobal(QPoint(0, self.height() + 2)), field)
