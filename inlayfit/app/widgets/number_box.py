"""A box for a number that is no length, such as a temperature, looking like the box for lengths."""

from __future__ import annotations

from PySide6.QtCore import QLocale, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QValidator, QWheelEvent
from PySide6.QtWidgets import QDoubleSpinBox, QWidget

from inlayfit.app import theme
from inlayfit.app.widgets.wheel import turns_value
from inlayfit.app.widgets.window_keys import leave_keys_to_window

_HEIGHT_PX = 34


class NumberBox(QDoubleSpinBox):
    """An editable number with its unit behind it; arrow keys step it."""

    def __init__(self, low: float, high: float, unit: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
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
        self.lineEdit().setStyleSheet("border: none; background: transparent; padding: 0 2px;")
        self.lineEdit().setTextMargins(6, 0, 0, 0)
        leave_keys_to_window(self)

    def validate(self, text: str, position: int) -> tuple[QValidator.State, str, int]:
        """Take a decimal comma for the point it stands for."""
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
