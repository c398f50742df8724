"""A box for a length as a maker types it: `0.05`, `2 thou`, `1/8 in`, `0,05 mm`.

The value is an exact fraction of millimetres. What is typed is read on Enter or when the box loses the
keyboard; until then a note under the box says how it is understood, in both units, or why it is not. A text
that is refused stays as it was typed, and the value stays what it was. Esc takes the typing back.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QFontMetricsF,
    QHideEvent,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QValidator,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractSpinBox, QLabel, QWidget

from inlayfit.app import theme
from inlayfit.app.core_words import core_error
from inlayfit.app.theme import colour
from inlayfit.app.widgets.wheel import turns_value
from inlayfit.app.widgets.window_keys import leave_keys_to_window
from inlayfit.app.widgets.zero_words import BARE, ZeroWords, dress
from inlayfit.errors import LengthError
from inlayfit.typed_length import parse_length
from inlayfit.units import Length, Unit, format_entry, format_in_both, format_length

_HEIGHT_PX = 34
_NOTE_WIDTH_PX = 320
_ARROW_PX = 3
"""From the text's room to the middle of an arrow."""
_WIDEST_MM = Fraction(1_000_000)


class LengthBox(QAbstractSpinBox):
    """An editable length."""

    length_edited = Signal(float)
    """New value in mm, after a person changed it."""
    refused = Signal(str)
    """A sentence: why what was typed is not taken."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._mm = Fraction(0)
        self._unit = Unit.MM
        self._step_mm = Fraction(1, 1000)
        self._low_mm, self._high_mm = -_WIDEST_MM, _WIDEST_MM
        self._decimals: int | None = None
        self._zero = ZeroWords()
        self._tip = ""
        self._shown = ""
        self._refusal = ""
        self._note = _Note(self)
        self.setFont(theme.font(theme.INPUT))
        self.setFrame(False)
        self.setKeyboardTracking(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumHeight(_HEIGHT_PX)
        self.lineEdit().setStyleSheet(BARE)
        self.lineEdit().setTextMargins(6, 0, 0, 0)
        leave_keys_to_window(self)
        self.lineEdit().textEdited.connect(self._on_text_edited)
        self.editingFinished.connect(self._on_editing_finished)
        self._show_value()

    # --- what is shown ---

    @property
    def length(self) -> Length:
        """The exact value."""
        return Length(self._mm)

    @property
    def mm(self) -> float:
        """The value in millimetres."""
        return float(self._mm)

    @property
    def refusal(self) -> str:
        """Why the text in the box is not taken; "" if it is."""
        return self._refusal

    def set_length(self, length: Length | Fraction | float) -> None:
        """Set the value without a signal; a float counts as the shortest decimal that means it."""
        if isinstance(length, Length):
            value = length.mm
        else:
            value = Fraction(repr(float(length))) if isinstance(length, float) else Fraction(length)
        if value != self._mm or self._is_touched():
            self._mm = value
            self._show_value()

    def _is_touched(self) -> bool:
        """Whether the text is not what the box last showed."""
        return bool(self._refusal) or self.lineEdit().text() != self._shown

    def set_unit(self, unit: Unit) -> None:
        """Show in another unit, and take it for a bare number. The value is untouched."""
        if unit is not self._unit:
            self._unit = unit
            self._show_value()

    def set_limits_mm(self, low_mm: float | Fraction, high_mm: float | Fraction) -> None:
        """Refuse what is outside."""
        self._low_mm, self._high_mm = Fraction(str(low_mm)), Fraction(str(high_mm))

    def set_step_mm(self, step_mm: float | Fraction) -> None:
        """How far an arrow moves the value; Page Up and Down move ten times as far."""
        self._step_mm = Fraction(str(step_mm))

    def set_zero_words(self, words: str, instead: str) -> None:
        """Say 0 in words, such as "not given"; `instead` is a sentence: what is used then."""
        self._zero = ZeroWords(words, instead)
        self._show_value()

    def set_note_room(self, make_room: Callable[[int], None]) -> None:
        """Ask a small window to make room for the note: it is called with the note's bottom, or 0."""
        self._note.make_room = make_room

    def set_tip(self, tip: str) -> None:
        """What the box is and why it matters; the value in both units is added."""
        self._tip = tip
        self._update_tip()

    def shown_text(self) -> str:
        """The value as the box shows it: never rounder than it is; words for a 0 that means none."""
        if self._zero.words and self._mm == 0:
            return self._zero.words
        places = self._unit.readout_decimals if self._decimals is None else self._decimals
        is_exact = (self._mm / self._unit.mm * 10**places).denominator == 1
        usual = format_length(self._mm, self._unit, decimals=places)
        return usual if is_exact else max(usual, format_entry(self._mm, self._unit), key=len)

    def _show_value(self) -> None:
        self._shown = self.shown_text()
        self.lineEdit().setText(self._shown)
        self._dress()
        self._set_refusal("")
        self._note.hide()

    def _dress(self) -> None:
        if self._zero.words:
            dress(self, as_words=self._zero.stand_in(self.lineEdit().text()))

    def _echo(self, mm: Fraction) -> str:
        """A length in both units; what is used instead where 0 means none."""
        return self._zero.instead if self._zero.words and mm == 0 else format_in_both(mm, self._unit)

    def _update_tip(self) -> None:
        echo = self._echo(self._mm)
        self.setToolTip(f"{self._tip}\n{echo}" if self._tip else echo)
        self.setAccessibleDescription(self._refusal or echo)

    def _set_refusal(self, sentence: str) -> None:
        changed, self._refusal = sentence != self._refusal, sentence
        self._update_tip()
        self.update()
        if changed and sentence:
            self.refused.emit(sentence)

    # --- reading ---

    def _read(self, text: str) -> Fraction:
        """The length a text means.

        Raises:
            LengthError: it is not one clear length, or outside the limits.
        """
        value = Fraction(0) if self._zero.mean(text) else parse_length(text, default=self._unit).mm
        if not self._low_mm <= value <= self._high_mm:
            low, high = (format_entry(mm, self._unit) for mm in (self._low_mm, self._high_mm))
            said = self.tr("{0} is outside {1} to {2}; type a length in between.")
            raise LengthError(said.format(format_entry(value, self._unit), low, high), text=text)
        return value

    def _on_text_edited(self, text: str) -> None:
        self._dress()
        try:
            value = self._read(text)
        except LengthError as error:
            self._note.say(core_error(error), refused=bool(text.strip()))
            return
        self._note.say(self._echo(value), refused=False)
        self._set_refusal("")

    def _on_editing_finished(self) -> None:
        text = self.lineEdit().text()
        if text == self._shown:
            self._note.hide()
            return
        try:
            value = self._read(text)
        except LengthError as error:
            self._note.say(core_error(error), refused=True)
            self._set_refusal(core_error(error))
            return
        self._take(value)

    def _take(self, value: Fraction) -> None:
        changed, self._mm = value != self._mm, value
        self._show_value()
        if changed:
            self.length_edited.emit(float(value))

    # --- Qt's spin box ---

    def stepBy(self, steps: int) -> None:
        try:
            start = self._read(self.lineEdit().text())
        except LengthError:
            start = self._mm
        value = min(max(start + steps * self._step_mm, self._low_mm), self._high_mm)
        self._take(value)
        self.selectAll()

    def stepEnabled(self) -> QAbstractSpinBox.StepEnabledFlag:
        flags = QAbstractSpinBox.StepEnabledFlag.StepNone
        if self._mm < self._high_mm:
            flags |= QAbstractSpinBox.StepEnabledFlag.StepUpEnabled
        if self._mm > self._low_mm:
            flags |= QAbstractSpinBox.StepEnabledFlag.StepDownEnabled
        return flags

    def validate(self, text: str, position: int) -> tuple[QValidator.State, str, int]:
        """Let anything be typed; it is read when the typing is done."""
        return QValidator.State.Acceptable, text, position

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.lineEdit().text() != self._shown:
            self._show_value()
            self.selectAll()
            return
        super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        if turns_value(self):
            super().wheelEvent(event)
        else:
            event.ignore()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if not self._refusal:
            self._note.hide()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self._note.hide()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.ApplicationFontChange):
            self._dress()
            self.update()

    def sizeHint(self) -> QSize:
        widest = max(len(self.shown_text()), 9)
        width = QFontMetricsF(self.font()).horizontalAdvance("0" * widest)
        return QSize(round(width) + 44, _HEIGHT_PX)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    # --- painting ---

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme.tokens_of(self)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect())
        if self._refusal:
            pen = QPen(colour(look.blocks), 2)
        elif self.hasFocus():
            pen = QPen(colour(look.focus), theme.FOCUS_RING_PX)
        else:
            pen = QPen(colour(look.edge), 1)
        inset = pen.widthF() / 2
        painter.setPen(pen)
        painter.setBrush(colour(look.field if self.isEnabled() else look.panel))
        painter.drawRoundedRect(box.adjusted(inset, inset, -inset, -inset), theme.RADIUS_PX, theme.RADIUS_PX)
        self._paint_arrows(painter)
        painter.end()

    def _paint_arrows(self, painter: QPainter) -> None:
        look = theme.tokens_of(self)
        enabled = self.stepEnabled()
        arrows = (
            (0.25, -1, QAbstractSpinBox.StepEnabledFlag.StepUpEnabled),
            (0.75, 1, QAbstractSpinBox.StepEnabledFlag.StepDownEnabled),
        )
        middle = self.lineEdit().geometry().right() + 1 + _ARROW_PX
        for part, down, flag in arrows:
            centre = QPointF(middle, part * self.height() - 0.5 * down)
            usable = self.isEnabled() and bool(enabled & flag)
            painter.setPen(QPen(colour(look.text if usable else look.grid), 1.4))
            for side in (-3.5, 3.5):
                painter.drawLine(centre + QPointF(side, -1.75 * down), centre + QPointF(0, 1.75 * down))


class _Note(QLabel):
    """A sentence that floats under a box."""

    def __init__(self, box: LengthBox) -> None:
        super().__init__(box)
        self._box = box
        self.make_room: Callable[[int], None] = lambda _bottom: None
        self.setWordWrap(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFont(theme.font(theme.CAPTION))
        self.hide()

    def say(self, sentence: str, *, refused: bool) -> None:
        """Show a sentence under the box, inside its window."""
        look = theme.tokens_of(self._box)
        line, ink = (look.blocks, look.text) if refused else (look.hairline, look.muted)
        self.setStyleSheet(
            f"background: {look.field}; color: {ink}; border: 1px solid {line};"
            f"border-left: {3 if refused else 1}px solid {line}; padding: 4px 8px; border-radius: 4px;"
        )
        window = self._box.window()
        if self.parentWidget() is not window:
            self.setParent(window)
        self.setText(sentence)
        width = min(_NOTE_WIDTH_PX, window.width() - 16)
        needed = round(QFontMetricsF(self.font()).horizontalAdvance(sentence)) + 28
        self.setFixedWidth(min(width, needed))
        self.adjustSize()
        corner = self._box.mapTo(window, QPoint(0, self._box.height() + 3))
        self.make_room(corner.y() + self.height())
        left = max(8, min(corner.x(), window.width() - self.width() - 8))
        above = self._box.mapTo(window, QPoint(0, 0)).y() - self.height() - 3
        fits_below = corner.y() + self.height() <= window.height()
        self.move(left, corner.y() if fits_below else max(0, above))
        self.show()
        self.raise_()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.make_room(0)
