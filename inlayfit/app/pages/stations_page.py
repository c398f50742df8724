"""The page for the readings of a pocket that is cut already: drawn width and width read, along X and Y.

Opened again it shows what was read before, with how far each reading is off the model.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from inlayfit.app import theme
from inlayfit.app.core_words import core, core_error
from inlayfit.app.pages.forms import decision
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.lettering import muted_label
from inlayfit.app.widgets.listed_box import ListedBox
from inlayfit.document.pocket_readings import MOST_READINGS, PocketReadings
from inlayfit.errors import SpecError
from inlayfit.fit.measured import REPEATABILITY_MM, Axis, Reading, describe
from inlayfit.units import LARGEST_LENGTH_MM, Unit, format_length


class StationRow:
    """One reading: its axis, the drawn width, the width read, and how far it is off the model."""

    def __init__(self, page: StationsPage, number: int, axis: Axis, drawn_mm: float, read_mm: float) -> None:
        self.axis = ListedBox()
        self.axis.addItems([each.value for each in Axis])
        self.axis.setCurrentText(axis.value)
        self.drawn, self.read = page.length_box(drawn_mm), page.length_box(read_mm)
        self.off = QLabel()
        self.off.setMinimumWidth(96)
        names = (page.tr("Axis of station {0}"), page.tr("Drawn width at station {0}"))
        self.axis.setAccessibleName(names[0].format(number))
        self.drawn.setAccessibleName(names[1].format(number))
        self.read.setAccessibleName(page.tr("Width read at station {0}").format(number))

    @property
    def widgets(self) -> tuple[QWidget, ...]:
        """Its cells from the left."""
        return self.axis, self.drawn, self.read, self.off

    @property
    def is_blank(self) -> bool:
        """Whether nothing was read here yet."""
        return self.read.mm == 0

    def reading(self) -> Reading:
        """What was read; SpecError if it cannot be."""
        return Reading(Axis(self.axis.currentText()), self.drawn.mm, self.read.mm)


def _first_rows(wide_mm: float, high_mm: float) -> list[tuple[Axis, float, float]]:
    """A long and a short station along each axis, not read yet."""
    drawn = ((Axis.X, wide_mm), (Axis.X, 0.0), (Axis.Y, high_mm), (Axis.Y, 0.0))
    return [(axis, round(mm, 4), 0.0) for axis, mm in drawn]


def _known_rows(known: PocketReadings) -> list[tuple[Axis, float, float]]:
    return [(each.axis, each.nominal_mm, each.measured_mm) for each in known.readings]


class StationsPage(QDialog):
    """Asks for the readings of a pocket.

    Signals:
        measured(PocketReadings): fit to this pocket.
        left_out(): fit to the pocket as drawn, without the readings it has.
    """

    measured = Signal(object)
    left_out = Signal()

    def __init__(
        self,
        *,
        wide_mm: float,
        high_mm: float,
        unit: Unit,
        known: PocketReadings | None = None,
        parent: QWidget | None = None,
    ) -> None:
        """Ask about a pocket.

        Args:
            wide_mm: its drawn width along X, for the first station.
            high_mm: the same along Y.
            unit: that lengths are shown in.
            known: what was read in it before.
            parent: the window.
        """
        super().__init__(parent)
        self.setWindowTitle(self.tr("Pocket as measured"))
        self._unit = unit
        self.readings: PocketReadings | None = None
        hint = QLabel(
            self.tr(
                "Measure the width of the pocket at two stations or more along X and along Y, "
                "a long and a short one each."
            )
        )
        hint.setWordWrap(True)
        self.more = QPushButton(self.tr("&Add a station"))
        self.more.setAutoDefault(False)
        self.more.clicked.connect(self._on_more_clicked)
        self.repeats = self.length_box(REPEATABILITY_MM if known is None else known.repeatability_mm)
        self.answer = QLabel()
        self.answer.setWordWrap(True)
        self.answer.setFont(theme.font(theme.BASE))
        self.answer.setMinimumHeight(56)
        self.answer.setAlignment(Qt.AlignmentFlag.AlignTop)
        table = self._table()
        self.rows: list[StationRow] = []
        for row in _first_rows(wide_mm, high_mm) if known is None else _known_rows(known):
            self._add_row(*row)
        column = QVBoxLayout(self)
        column.setSpacing(12)
        column.addWidget(hint)
        column.addWidget(table, 1)
        column.addLayout(self._line_below())
        column.addWidget(self.answer)
        column.addWidget(self._buttons(may_leave_out=known is not None))
        self._judge()
        self.resize(600, 460)

    # --- building

    def _table(self) -> QScrollArea:
        """The readings, under their headings; its rows are added later."""
        body = QWidget()
        body.setObjectName("plain")
        self._grid = QGridLayout(body)
        self._grid.setHorizontalSpacing(10)
        heads = (self.tr("Axis"), self.tr("Drawn"), self.tr("Read"), self.tr("Off the model"))
        for column, words in enumerate(heads):
            self._grid.addWidget(muted_label(words), 0, column)
        self._grid.setColumnStretch(3, 1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setWidget(body)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        return area

    def _line_below(self) -> QHBoxLayout:
        """One more reading, and how well one repeats."""
        label = QLabel(self.tr("One reading &repeats to ±"))
        label.setBuddy(self.repeats)
        self.repeats.setAccessibleName(self.tr("One reading repeats to"))
        row = QHBoxLayout()
        row.addWidget(self.more, 1)
        row.addWidget(label)
        row.addWidget(self.repeats)
        return row

    def length_box(self, mm: float) -> LengthBox:
        """A box for one length of this page."""
        box = LengthBox()
        box.set_unit(self._unit)
        box.set_limits_mm(0.0, LARGEST_LENGTH_MM)
        box.set_step_mm(0.01)
        box.set_length(mm)
        box.length_edited.connect(self._judge)
        box.refused.connect(self._judge)
        return box

    def _buttons(self, *, may_leave_out: bool) -> QDialogButtonBox:
        buttons, self.use_button = decision(self, self.tr("&Fit to this pocket"), self.tr("&Go back"))
        if may_leave_out:
            self.leave_out_button = buttons.addButton(
                self.tr("Fit to it as &drawn"), QDialogButtonBox.ButtonRole.ResetRole
            )
            self.leave_out_button.setToolTip(self.tr("Leaves the readings out, and forgets them."))
            self.leave_out_button.setAutoDefault(False)
            self.leave_out_button.clicked.connect(self._leave_out)
        return buttons

    def _add_row(self, axis: Axis, drawn_mm: float, read_mm: float) -> None:
        number = len(self.rows) + 1
        row = StationRow(self, number, axis, drawn_mm, read_mm)
        row.axis.currentIndexChanged.connect(self._judge)
        for column, widget in enumerate(row.widgets):
            self._grid.addWidget(widget, number, column)
        self._grid.setRowStretch(number, 0)
        self._grid.setRowStretch(number + 1, 1)
        self.rows.append(row)
        self.more.setEnabled(number < MOST_READINGS)

    @Slot()
    def _on_more_clicked(self) -> None:
        self._add_row(Axis.X, 0.0, 0.0)
        self.rows[-1].drawn.setFocus(Qt.FocusReason.OtherFocusReason)

    # --- judging and answering

    def _judge(self) -> None:
        """Say what the readings come to, or why they cannot tell."""
        taken = [row for row in self.rows if not row.is_blank]
        typed = [box for row in self.rows for box in (row.drawn, row.read)]
        refusal = next((box.refusal for box in (*typed, self.repeats) if box.refusal), "")
        self.readings, told = None, refusal
        if not refusal:
            try:
                self.readings = PocketReadings(tuple(row.reading() for row in taken), self.repeats.mm)
                told = "\n".join(map(core, describe(self.readings.model, unit=self._unit)))
            except SpecError as error:
                told = core_error(error)
        self._show_residuals(taken)
        self.answer.setText(told)
        self.use_button.setAccessibleDescription(told)

    def _show_residuals(self, taken: list[StationRow]) -> None:
        for row in self.rows:
            row.off.setText("")
        if self.readings is not None:
            for row, residual in zip(taken, self.readings.model.residuals, strict=True):
                row.off.setText(format_length(residual.off_mm, self._unit))

    def accept(self) -> None:
        """Take the readings, if they tell."""
        self.use_button.setFocus(Qt.FocusReason.OtherFocusReason)  # ends the typing in a box
        self._judge()
        if self.readings is not None:
            self.measured.emit(self.readings)
            super().accept()

    def _leave_out(self) -> None:
        self.left_out.emit()
        super().accept()
