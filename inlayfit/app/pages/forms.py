"""What forms are made of: rows, and the buttons at the foot.

A row is a label, its control, and why one would change it, wired for screen readers at once.
"""

from __future__ import annotations

from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

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
    height_px = max(control.sizeHint().height(), control.minimumHeight())
    stand_beside(words, min(height_px, 2 * words.fontMetrics().height()))  # of a list, its first line
    note = muted_label(why, wraps=True)
    column = QVBoxLayout()
    column.setSpacing(2)
    column.addWidget(control)
    column.addWidget(note)
    form.addRow(words, column)


def decision(page: QDialog, do_it: str, go_back: str) -> tuple[QDialogButtonBox, QPushButton]:
    """The two buttons at the foot of a page, and the one of them that is the next step, also for Return."""
    buttons = QDialogButtonBox()
    step = buttons.addButton(do_it, QDialogButtonBox.ButtonRole.AcceptRole)
    step.setProperty("step", "next")
    step.setDefault(True)
    buttons.addButton(go_back, QDialogButtonBox.ButtonRole.RejectRole)
    buttons.accepted.connect(page.accept)
    buttons.rejected.connect(page.reject)
    return buttons, step


def fit_height(page: QWidget, width_px: int) -> None:
    """Make a page as high as its words need at this width, wrapped lines and all."""
    layout = page.layout()
    if layout is not None:
        layout.activate()
        wraps = layout.hasHeightForWidth()
        page.resize(width_px, layout.heightForWidth(width_px) if wraps else layout.sizeHint().height())
