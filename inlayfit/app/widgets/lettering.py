"""Plain lettering, the same wherever it stands: titles, fainter notes, and the lines between parts."""

from __future__ import annotations

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
        if words is not None and box is not None:
            words.setMinimumHeight(box.sizeHint().height())
