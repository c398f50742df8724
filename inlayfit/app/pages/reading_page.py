"""The page that says how a drawing is read: its unit, the gaps that are closed, painted lines, layers."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from inlayfit.app import theme
from inlayfit.app.pages.forms import add_row, decision, fit_height
from inlayfit.app.pages.reading_fixes import Part
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.listed_box import ListedBox
from inlayfit.app.words import counted, size_words
from inlayfit.document.state import SettingsUsed
from inlayfit.units import Unit

if TYPE_CHECKING:  # the readers are heavy; a window must not wait for them
    from inlayfit.document.import_notes import DrawingLook, LayerNote

_NAME = Qt.ItemDataRole.UserRole
_WIDEST_GAP_MM = 1.0
_WIDTH_PX = 700
_UNITS = (Unit.MM, Unit.INCH, Unit.CM, Unit.THOU, Unit.PIXEL)


class ReadingPage(QDialog):
    """Asks how a drawing is read.

    Signals:
        chosen(SettingsUsed): read it so.
    """

    chosen = Signal(object)

    def __init__(
        self, look: DrawingLook, how: SettingsUsed, *, unit: Unit, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._look = look
        self._how = how
        self.setWindowTitle(self.tr("Read the drawing anew"))
        title = QLabel(look.path.name)
        title.setFont(theme.font(theme.VERDICT))
        title.setTextFormat(Qt.TextFormat.PlainText)
        self.unit = self._unit_choice()
        self.gap = LengthBox()
        self.gap.set_unit(unit)
        self.gap.set_limits_mm(0.0, _WIDEST_GAP_MM)
        self.gap.set_length(how.gap_mm)
        self.strokes = QCheckBox(self.tr("&Painted lines cover their width"))
        self.strokes.setChecked(how.strokes_as_areas)
        self.layers = self._layer_list()
        self.refusal = QLabel()
        self.refusal.setWordWrap(True)
        form = QFormLayout()
        form.setHorizontalSpacing(16)
        form.setVerticalSpacing(12)
        add_row(form, self.tr("One drawing &unit is"), self.unit, self._why_unit())
        why = self.tr("Loose ends this close become one. 0.01 mm is less than a cutter shows.")
        add_row(form, self.tr("&Close gaps up to"), self.gap, why)
        why = self.tr("Without this the middle of a painted line is the outline.")
        add_row(form, self.tr("Lines"), self.strokes, why)
        why = self.tr("Hidden, construction and dimension lines are no outlines unless you tick them.")
        add_row(form, self.tr("&Layers"), self.layers, why)
        column = QVBoxLayout(self)
        column.setSpacing(12)
        column.addWidget(title)
        column.addLayout(form)
        column.addWidget(self.refusal)
        column.addWidget(self._buttons())
        self.refusal.hide()
        fit_height(self, _WIDTH_PX)

    def lead_to(self, part: Part, *, gap_mm: float | None = None) -> None:
        """Put the keyboard on one part, a gap to be closed already typed."""
        control = {
            Part.UNIT: self.unit,
            Part.GAP: self.gap,
            Part.STROKES: self.strokes,
            Part.LAYERS: self.layers,
        }[part]
        if gap_mm is not None:
            self.gap.set_length(max(gap_mm, self._how.gap_mm))
        control.setFocus(Qt.FocusReason.OtherFocusReason)

    # --- parts

    def _unit_choice(self) -> ListedBox:
        """What the file says, unless it says nothing and a unit was chosen already; and each unit."""
        combo = ListedBox()
        stated, chosen = self._look.file_unit, self._how.unit
        if stated is not None or chosen is None:
            first = self.tr("what the file says") if stated is not None else self.tr("not stated")
            assumed = stated or self._look.assumed_unit
            combo.addItem(self._sized(f"{first}, {_unit_words(assumed)}", assumed), None)
        for unit in dict.fromkeys((*_UNITS, *([chosen] if chosen is not None else []))):
            combo.addItem(self._sized(_unit_words(unit), unit), unit.name)
        combo.setCurrentIndex(0 if chosen is None else combo.findData(chosen.name))
        return combo

    def _sized(self, words: str, unit: Unit) -> str:
        """The words with the size that everything has then, in mm and in inches."""
        size_mm = self._look.size_mm(unit)
        return f"{words}: {size_words(*size_mm, Unit.MM)} = {size_words(*size_mm, Unit.INCH)}"

    def _why_unit(self) -> str:
        if self._look.file_unit is None:
            return self.tr("The file states none. Your choice is remembered for its folder.")
        return self.tr("Everything is this size then. The file itself is never changed.")

    def _layer_list(self) -> QListWidget:
        shown = QListWidget()
        for note in self._look.layers:
            item = QListWidgetItem(self._layer_words(note))
            item.setData(_NAME, note.name)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            asked = self._how.layers
            ticked = note.name in asked if asked is not None else not note.is_for_the_reader
            item.setCheckState(Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
            shown.addItem(item)
        shown.setCurrentRow(0)
        shown.setFixedHeight(120)
        shown.setSpacing(2)
        return shown

    def _layer_words(self, note: LayerNote) -> str:
        lines = counted(note.lines, self.tr("1 line"), self.tr("{0} lines"))
        words = f"{note.name}, {lines}"
        return self.tr("{0}, for the reader only").format(words) if note.is_for_the_reader else words

    def _buttons(self) -> QDialogButtonBox:
        buttons, self.read_button = decision(self, self.tr("&Read anew"), self.tr("&Go back"))
        return buttons

    # --- answering

    def accept(self) -> None:
        """Read it so, unless something is left to say."""
        self.read_button.setFocus(Qt.FocusReason.OtherFocusReason)  # ends the typing in the box
        refusal = self.gap.refusal
        layers = self._chosen_layers()
        if layers == ():
            refusal = self.tr("No layer is ticked; tick one at least.")
        self.refusal.setText(refusal)
        self.refusal.setVisible(bool(refusal))
        if refusal:
            return
        name = self.unit.currentData()
        unit = None if name is None else Unit[name]
        gap_mm, areas = self.gap.mm, self.strokes.isChecked()
        self.chosen.emit(replace(self._how, gap_mm=gap_mm, strokes_as_areas=areas, unit=unit, layers=layers))
        super().accept()

    def _chosen_layers(self) -> tuple[str, ...] | None:
        """The ticked layers; None if these are the ones that are read anyway."""
        items = [self.layers.item(row) for row in range(self.layers.count())]
        ticked = tuple(i.data(_NAME) for i in items if i.checkState() is Qt.CheckState.Checked)
        usual = tuple(note.name for note in self._look.layers if not note.is_for_the_reader)
        return None if ticked == usual and ticked else ticked


def _unit_words(unit: Unit) -> str:
    words = {
        Unit.MM: _tr("millimetre"),
        Unit.INCH: _tr("inch"),
        Unit.CM: _tr("centimetre"),
        Unit.THOU: _tr("thousandth of an inch"),
        Unit.PIXEL: _tr("pixel, 96 to an inch"),
        Unit.M: _tr("metre"),
        Unit.FOOT: _tr("foot"),
        Unit.MICROMETRE: _tr("micrometre"),
    }
    return words.get(unit, unit.symbol)


def _tr(text: str) -> str:
    return QCoreApplication.translate("reading", text)
