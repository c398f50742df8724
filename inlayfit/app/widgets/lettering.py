"""Plain lettering, the same wherever it stands: titles, fainter notes, and the lines between parts."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFormLayout, QFrame, QLabel

from inlayfit.app import theme


def title_label(words: str = "") -> QLabel:
    """The title of a part of a panel."""
    label = QLabel(words)
    label.setFont(theme.font(theme.TITLE))
    return label


def muted_label(words: str = "", *, wraps: bool = False) -> QLabel:
    """A note, or the name of a value: what is read second."""
    label = QLabel(words)
    label.setProperty("muted", True)
    label.setWordWrap(wraps)
    return label


def thin_rule() -> QFrame:
    """A thin line between two parts."""
    line = QFrame()
    line.setObjectName("rule")
    line.setFixedHeight(1)
    return line


def centre_labels(form: QFormLayout) -> None:
    """Set the label of each row in the middle of its box; a form would set it a little higher."""
    for row in range(form.rowCount()):
        label = form.itemAt(row, QFormLayout.ItemRole.LabelRole)
        box = form.itemAt(row, QFormLayout.ItemRole.FieldRole)
        words = None if label is None else label.widget()
        if isinstance(words, QLabel) and box is not None:
            stand_beside(words, box.sizeHint().height())


def stand_beside(label: QLabel, box_height_px: int) -> None:
    """Set a label's words in the middle of a box at its side, whatever stands below that box."""
    label.setAlignment(Qt.AlignmentFlag.AlignTop)
    label.setContentsMargins(0, max(0, (box_height_px - label.fontMetrics().height()) // 2), 0, 0)
