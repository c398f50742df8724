"""A form that reads as sentences: plain words with boxes in their places, as in the fit sentence.

The words come from one pattern with named places, so a translation can put them in another order.
"""

from __future__ import annotations

from collections.abc import Mapping
from string import Formatter

from PySide6.QtWidgets import QLabel, QWidget

from inlayfit.app import theme
from inlayfit.app.panels.flow import FlowLayout

_CLOSING = ",.;:)"
_SIGN = "±"
_SIGN_GAP_PX = 4


class SpokenForm(QWidget):
    """Sentences with boxes."""

    def __init__(self, pattern: str, boxes: Mapping[str, QWidget], parent: QWidget | None = None) -> None:
        """Set the boxes into the pattern; ValueError if a place has none or a box has no place."""
        super().__init__(parent)
        flow = FlowLayout(line_height_px=40)
        self.setLayout(flow)
        placed: list[str] = []
        for literal, name, _, _ in Formatter().parse(pattern):
            words = literal.split()
            for number, word in enumerate(words):
                is_first = number == 0 and bool(placed)
                label = QLabel(word)
                label.setObjectName("glue")
                label.setFont(theme.font(theme.BASE))
                label.setContentsMargins(0, 0, _SIGN_GAP_PX if word == _SIGN else 0, 0)
                flow.add(label, clings=is_first and word[0] in _CLOSING)
            if name is not None:
                flow.add(boxes[name], clings=bool(words) and words[-1] == _SIGN)
                placed.append(name)
        if sorted(placed) != sorted(boxes):
            raise ValueError("a pattern needs each box exactly once")
