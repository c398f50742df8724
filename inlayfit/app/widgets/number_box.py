"""A box for a number that is no length, such as a temperature, looking like the box for lengths."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QLocale, QRectF, QSize, Qt, Slot
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QValidator, QWheelEvent
from PySide6.QtWidgets import QDoubleSpinBox, QWidget

from inlayfit.app import theme
from inlayfit.app.widgets.wheel import turns_value
from inlayfit.app.widgets.window_keys import leave_keys_to_window
from inlayfit.app.widgets.zero_words import BARE, ZeroWords, dress

_HEIGHT_PX = 34


class NumberBox(QDoubleSpinBox):
    """An editable number with its unit behind it; arrow keys step it."""

    def __init__(self, low: float, high: float, unit: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._unit = unit
        self._zero = ZeroWords()
        self.setRange(low, high)
        self.setDecimals(1)
        self.setSuffix(unit)
        self.setLocale(QLocale.c())  # a decimal point in every language, as in the boxes for lengths
        self.setButtonSymbols(QDoubleSpinBox.ButtonSymbols.NoButtons)
        self.setKeyboardTracking(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFrame(False)
        self.setFont(theme.font(theme.INPUT))
        self.setMinimumHeight(_HEIGHT_PX)
        self.lineEdit().setStyleSheet(BARE)
        self.lineEdit().setTextMargins(6, 0, 0, 0)
        leave_keys_to_window(self)
        self.lineEdit().textEdited.connect(self._dress)
        self.valueChanged.connect(self._show_unit)

    def set_zero_words(self, words: str, instead: str) -> None:
        """Say 0 in words, such as "not given"; `instead` is a sentence: what is used then."""
        self._zero = ZeroWords(words, instead)
        self.setToolTip(f"{self.toolTip()}<br>{instead}" if self.toolTip() else instead)
        self.setAccessibleDescription(f"{self.accessibleDescription()} {instead}".strip())
        self.setValue(self.value())

    def setValue(self, value: float) -> None:
        super().setValue(value)
        self._show_unit()

    @Slot()
    def _show_unit(self) -> None:
        """The unit stands behind a number, not behind words."""
        self.setSuffix("" if self._zero.words and self.value() == 0 else self._unit)
        self._dress()

    @Slot()
    def _dress(self) -> None:
        if self._zero.words:
            dress(self, as_words=self._zero.stand_in(self.lineEdit().text()))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.ApplicationFontChange):
            self._dress()

    def _means_none(self, text: str) -> bool:
        return self._zero.mean(text.removesuffix(self.suffix()))

    def textFromValue(self, value: float) -> str:
        return self._zero.words if self._zero.words and value == 0 else super().textFromValue(value)

    def valueFromText(self, text: str) -> float:
        return 0.0 if self._means_none(text) else super().valueFromText(text)

    def validate(self, text: str, position: int) -> tuple[QValidator.State, str, int]:
        """Take a decimal comma for the point it stands for, and no number where words may stand for 0."""
        if self._means_none(text):
            return QValidator.State.Acceptable, text, position
        state, fixed, place = super().validate(text.replace(",", "."), position)
        return state, fixed, place

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), _HEIGHT_PX)

    def wheelEvent(self, event: QWheelEvent) -> None:
        if turns_value(self):
            super().wheelEvent(event)
        else:
            event.ignore()

    def paintEvent(self, _event: QPaintEvent) -> None:
        look = theme.tokens_of(self)
        has_focus = self.hasFocus()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width = theme.FOCUS_RING_PX if has_focus else 1
        ring = QRectF(self.rect()).adjusted(width / 2, width / 2, -width / 2, -width / 2)
        painter.setPen(QPen(theme.colour(look.focus if has_focus else look.edge), width))
        painter.setBrush(theme.colour(look.field))
        painter.drawRoundedRect(ring, theme.RADIUS_PX, theme.RADIUS_PX)
        painter.end()
