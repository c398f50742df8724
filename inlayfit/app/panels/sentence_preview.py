"""The fit sentence before there is any work: what the settings make of it, in plain words.

It stands where the boxes of the sentence will be, and is as high as two lines of them, so that nothing moves
when they come.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from inlayfit.app import theme
from inlayfit.app.panels.flow import LINE_HEIGHT_PX
from inlayfit.app.widgets.lettering import muted_label

MARGINS_PX = 24, 10, 24, 10
"""Left, above, right and below of the sentence, with boxes or without."""


class SentencePreview(QWidget):
    """A sentence that says what will stand there."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("sentence")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("Fit sentence"))
        self.setMinimumHeight(2 * LINE_HEIGHT_PX + MARGINS_PX[1] + MARGINS_PX[3])
        self._words = muted_label(wraps=True)
        self._words.setFont(theme.font(theme.SENTENCE))
        column = QVBoxLayout(self)
        column.setContentsMargins(*MARGINS_PX)
        column.addWidget(self._words)

    def say(self, sentence: str) -> None:
        """Show another sentence."""
        self._words.setText(sentence)
        self.setAccessibleDescription(sentence)
