"""The page for a pocket that has no drawing: a circle, a rectangle or a slot, typed by its size."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QFormLayout, QLabel, QVBoxLayout, QWidget

from inlayfit.app.core_words import core_error
from inlayfit.app.pages.forms import add_row, decision, fit_height
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.listed_box import ListedBox
from inlayfit.document.measured import circle, rectangle, slot
from inlayfit.document.outlines import Outline
from inlayfit.errors import SpecError
from inlayfit.units import Unit

_LARGEST_MM = 10_000.0
_WIDTH_PX = 480


class SizePage(QDialog):
    """Asks for the size of a pocket.

    Signals:
        typed(Outline): the pocket.
    """

    typed = Signal(object)

    def __init__(self, *, unit: Unit, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Type a pocket by size"))
        self.form = QFormLayout()
        self.form.setHorizontalSpacing(16)
        self.form.setVerticalSpacing(12)
        self.shape = ListedBox()
        for name, words in (
            ("circle", self.tr("circle")),
            ("rectangle", self.tr("rectangle")),
            ("slot", self.tr("slot with round ends")),
        ):
            self.shape.addItem(words, name)
        add_row(self.form, self.tr("&Shape"), self.shape, self.tr("Its middle lies at 0, 0."))
        self._unit = unit
        self.boxes: dict[str, LengthBox] = {}
        self._add("diameter", self.tr("&Diameter"), 25, self.tr("Across the middle, as measured."))
        self._add("width", self.tr("&Width"), 40, self.tr("Along X, from wall to wall."))
        self._add("height", self.tr("&Height"), 20, self.tr("Along Y, from wall to wall."))
        self._add("radius", self.tr("Corner &radius"), 0, self.tr("0 for sharp corners."))
        self._add("length", self.tr("&Length"), 30, self.tr("Over its round ends."))
        self._add("across", self.tr("&Width"), 8, self.tr("Between its straight walls."))
        self.refusal = QLabel()
        self.refusal.setWordWrap(True)
        buttons, self.use_button = decision(self, self.tr("&Use this pocket"), self.tr("&Go back"))
        column = QVBoxLayout(self)
        column.setSpacing(12)
        column.addLayout(self.form)
        column.addWidget(self.refusal)
        column.addStretch(1)
        column.addWidget(buttons)
        self.shape.currentIndexChanged.connect(self._show_shape)
        self._show_shape()

    def _add(self, name: str, label: str, mm: float, why: str) -> None:
        box = LengthBox()
        box.set_unit(self._unit)
        box.set_limits_mm(0.0, _LARGEST_MM)
        box.set_step_mm(1.0)
        box.set_length(float(mm))
        box.length_edited.connect(self._show_refusal)
        box.refused.connect(self._show_refusal)
        self.boxes[name] = box
        add_row(self.form, label, box, why)

    def _show_shape(self) -> None:
        rows = {
            "circle": ("diameter",),
            "rectangle": ("width", "height", "radius"),
            "slot": ("length", "across"),
        }[self.shape.currentData()]
        for row, name in enumerate(self.boxes, 1):
            self.form.setRowVisible(row, name in rows)
        self._show_refusal()

    def _outline(self) -> Outline:
        """The outline; SpecError if the sizes make no shape."""
        mm = {name: box.mm for name, box in self.boxes.items()}
        shape = self.shape.currentData()
        if shape == "circle":
            return circle(mm["diameter"])
        if shape == "rectangle":
            return rectangle(mm["width"], mm["height"], corner_radius_mm=mm["radius"])
        return slot(mm["length"], mm["across"])

    def _show_refusal(self) -> None:
        shown = [box for box in self.boxes.values() if not box.isHidden()]
        refusal = next((box.refusal for box in shown if box.refusal), "")
        if not refusal:
            try:
                self._outline()
            except SpecError as error:
                refusal = core_error(error)
        self.refusal.setText(refusal)
        self.refusal.setVisible(bool(refusal))
        self.use_button.setAccessibleDescription(refusal)
        fit_height(self, _WIDTH_PX)

    def accept(self) -> None:
        """Take the pocket, if it is one."""
        self.use_button.setFocus(Qt.FocusReason.OtherFocusReason)  # ends the typing in a box
        self._show_refusal()
        if not self.refusal.text():
            self.typed.emit(self._outline())
            super().accept()
