"""One row of a form: a label, its control, and why one would change it, wired for screen readers at once."""

from __future__ import annotations

from PySide6.QtWidgets import QFormLayout, QLabel, QVBoxLayout, QWidget

from inlayfit.app.widgets.lettering import muted_label, stand_beside

LABEL_PX = 160


def add_row(form: QFormLayout, label: str, control: QWidget, why: str) -> None:
    """Add a labelled control; its name, description and tooltip come from the words."""
    plain = label.replace("&", "")
    control.setAccessibleName(plain)
    control.setAccessibleDescription(why)
    control.setToolTip(f"<b>{plain}</b><br>{why}")
    words = QLabel(label)
    words.setBuddy(control)
    words.setMinimumWidth(LABEL_PX)
    stand_beside(words, control.sizeHint().height())
    note = muted_label(why, wraps=True)
    column = QVBoxLayout()
    column.setSpacing(2)
    column.addWidget(control)
    column.addWidget(note)
    form.addRow(words, column)


def fit_height(page: QWidget, width_px: int) -> None:
    """Make a page as high as its words need at this width, wrapped lines and all."""
    layout = page.layout()
    if layout is not None:
        layout.activate()
        wraps = layout.hasHeightForWidth()
        page.resize(width_px, layout.heightForWidth(width_px) if wraps else layout.sizeHint().height())
