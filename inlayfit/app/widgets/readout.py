"""A label for a number that changes under the hand."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QRect, Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QLabel, QWidget

_AMPLE = QRect(0, 0, 2000, 2000)


class Readout(QLabel):
    """One line, as large as its words need, and laid out anew only when they need another size.

    A plain label asks the whole window for a new layout whenever its text changes. One of a fixed size does
    not, and figures of equal width rarely need another.
    """

    def __init__(self, words: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.say(words)

    def say(self, words: str) -> None:
        """Show other words."""
        if words != self.text():
            self.setText(words)
            self._fit()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._fit()

    def _fit(self) -> None:
        # A label's own size hint is never below its smallest size, so a fixed one would never shrink.
        align = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        needed = self.fontMetrics().boundingRect(_AMPLE, align, self.text()).size()
        if needed != self.maximumSize():
            self.setFixedSize(needed)
