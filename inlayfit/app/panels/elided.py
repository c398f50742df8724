"""A line of text that shortens itself with an ellipsis and tells the whole in its tooltip."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget


class ElidedLabel(QLabel):
    """One line, as wide as there is room."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)

    def say(self, text: str) -> None:
        """Another text; screen readers get all of it."""
        self.setText(text)
        self.setToolTip(text if self._is_too_long(text) else "")

    def minimumSizeHint(self) -> QSize:
        return QSize(40, super().minimumSizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._is_too_long(self.text()):
            super().paintEvent(event)
            return
        painter = QPainter(self)
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, self.width())
        group = self.palette().currentColorGroup()
        painter.setPen(self.palette().color(group, self.foregroundRole()))
        painter.drawText(self.rect(), int(Qt.AlignmentFlag.AlignVCenter), text)

    def _is_too_long(self, text: str) -> bool:
        return self.fontMetrics().horizontalAdvance(text) > self.width()
