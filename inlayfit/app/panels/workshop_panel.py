"""The workshop: what the machine gets wrong, how it cuts, and what that does to many parts.

The numbers are kept in the project: checks and exports follow from them, so a project that is opened
elsewhere gives the answers it was saved with. The depth is the one of the stack.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QSignalBlocker, Qt, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from inlayfit.app.answers.examining import Look
from inlayfit.app.panels.parts_view import PartsView
from inlayfit.app.panels.spoken_form import SpokenForm
from inlayfit.app.session import Change, Session
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.lettering import muted_label, thin_rule, title_label
from inlayfit.app.widgets.listed_box import ListedBox
from inlayfit.app.widgets.number_box import NumberBox
from inlayfit.bench.milling import Milling
from inlayfit.document.edits import Edit, set_stack
from inlayfit.document.made_edits import set_edge_break, set_kerf_taper, set_workshop
from inlayfit.document.state import Fitting, State
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.spec import Half
from inlayfit.units import Unit, format_length

_BOX_PX, _CHOICE_PX = 116, 132
_LOW_PX = 420
_MICRO = 1e-6
_LARGEST_MM = 1000.0


class WorkshopPanel(QWidget):
    """Errors, cutting and their answer, which stays in sight while numbers are typed."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._half_warmth: tuple[float, float] = (0.0, 0.0)
        self._answered = ""
        self.boxes: dict[str, LengthBox] = {}
        self.parts = PartsView()
        self.warmth_note = muted_label(wraps=True)
        self.cut_note = muted_label(wraps=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.parts)
        column.addWidget(thin_rule())
        column.addWidget(self._scrolled(), 1)
        session.state_changed.connect(self._on_session_state_changed)
        session.solved.connect(lambda _solution: self._show_answer())
        session.examined.connect(self._show_answer)
        self._show()

    def _scrolled(self) -> QScrollArea:
        """What is typed, and the details of the answer."""
        self._body = QWidget()
        column = QVBoxLayout(self._body)
        column.setContentsMargins(0, 0, 8, 0)
        column.setSpacing(8)
        parts: tuple[QWidget, ...] = (
            self.parts.details,
            title_label(self.tr("What the machine gets wrong")),
            self._errors(),
            self.warmth_note,
            thin_rule(),
            title_label(self.tr("How it is cut")),
            self._cutting(),
            self.cut_note,
        )
        for part in parts:
            column.addWidget(part)
        column.addStretch(1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(self._body)
        return area

    # --- making the rows

    def _errors(self) -> SpokenForm:
        rows = (
            ("cutter_varies_mm", self.tr("Cutter known to ±"), self.tr(
                "How well its diameter is measured. An error here moves the clearance per side by its full "
                "amount, if one cutter cuts both halves."
            ), self.tr("Not given: its diameter counts as exact.")),
            ("runout_mm", self.tr("Runout"), self.tr(
                "Total reading of a dial gauge on the turning cutter. It cuts wider than it measures."
            ), self.tr("Not given: it counts as running true.")),
            ("cutter_nominal_mm", self.tr("Diameter on the label"), self.tr(
                "What the machine's program reckons with, if that is not the measured diameter."
            ), self.tr("Not given: the program counts as reckoning with the measured diameter.")),
            ("repeatability_mm", self.tr("A width repeats to ±"), self.tr(
                "How closely the width of one half comes out again. Below it, adjusting is guesswork."
            ), self.tr("Not given: each width counts as coming out alike.")),
            ("thickness_varies_mm", self.tr("Thickness varies by ±"), self.tr(
                "That of the stock. It counts where a tapered kerf makes the walls lean."
            ), self.tr("Not given: the stock counts as equally thick everywhere.")),
        )  # fmt: skip
        for name, words, why, instead in rows:
            self._add_length(name, words, why, self._keep_workshop, instead)
        self.kelvin = self._number_box(0, 200, " K")
        self.expansion = self._number_box(-1000, 1000, " ×10⁻⁶/K")
        why = self.tr("How far the temperature may be from the one at which the halves were measured.")
        _name(self.kelvin, self.tr("Temperature varies by ±"), why)
        why = self.tr("Expansion of the plug less that of the host, in millionths per kelvin.")
        _name(self.expansion, self.tr("Expansion of the plug less the host"), why)
        for box in (self.kelvin, self.expansion):
            box.set_zero_words(self.tr("not given"), self.tr("Not given: warmth does not count."))
        pattern = self.tr(
            "The cutter is known to ± {cutter} and runs out by {runout}; its label says {label}. "
            "A width comes out again to ± {repeats}, the stock's thickness to ± {thickness}. "
            "It gets warmer or colder by ± {kelvin}, and the plug grows by {expansion} more than the host."
        )
        boxes = self.boxes
        return SpokenForm(
            pattern,
            {
                "cutter": boxes["cutter_varies_mm"],
                "runout": boxes["runout_mm"],
                "label": boxes["cutter_nominal_mm"],
                "repeats": boxes["repeatability_mm"],
                "thickness": boxes["thickness_varies_mm"],
                "kelvin": self.kelvin,
                "expansion": self.expansion,
            },
        )

    def _cutting(self) -> SpokenForm:
        why = self.tr("Depth of the pocket: the same number as in the stack.")
        self._add_length("depth_mm", self.tr("Depth of the pocket"), why, self._keep_depth)
        rows = (
            ("depth_per_pass_mm", self.tr("Depth per pass"), self.tr("Most that one pass takes."), self.tr(
                "Not given: the depth is not parted into passes."
            )),
            ("floor_allowance_mm", self.tr("Left on the floor"), self.tr(
                "Stock that the passes leave on the floor, for a last pass of its own."
            ), ""),
            ("floor_fillet_mm", self.tr("Floor fillet"), self.tr(
                "Radius that a worn cutter leaves between wall and floor. A sharp edge of the plug "
                "rides up on it."
            ), self.tr("Not given: the cutter counts as sharp, and nothing holds the plug up.")),
        )  # fmt: skip
        for name, words, why, instead in rows:
            self._add_length(name, words, why, self._keep_workshop, instead)
        why = self.tr("Width of the chamfer that lets the plug down over a floor fillet.")
        self._add_length("edge_break_mm", self.tr("Break of the plug's lower edge"), why, self._keep_edge)
        why = self.tr("How much wider the cut of a beam is on the show side than on the bed side.")
        instead = self.tr("Not given: the walls count as upright.")
        self._add_length("kerf_taper_mm", self.tr("Taper of the kerf"), why, self._keep_taper, instead)
        self._add_milling()
        pattern = self.tr(
            "The pocket is {depth} deep, at most {pass} a pass, with {floor} left for the floor, "
            "and the direction is {milling}. A worn cutter leaves a floor fillet of {fillet}; the plug's "
            "lower edge is broken by {edge}. The kerf is wider on the show side by {taper}."
        )
        boxes = self.boxes
        return SpokenForm(
            pattern,
            {
                "depth": boxes["depth_mm"],
                "pass": boxes["depth_per_pass_mm"],
                "floor": boxes["floor_allowance_mm"],
                "milling": self.milling,
                "fillet": boxes["floor_fillet_mm"],
                "edge": boxes["edge_break_mm"],
                "taper": boxes["kerf_taper_mm"],
            },
        )

    def _add_milling(self) -> None:
        self.milling = ListedBox()
        self.milling.setFixedWidth(_CHOICE_PX)
        for value, words in (
            (None, self.tr("left open")),
            (Milling.CLIMB, self.tr("climb")),
            (Milling.CONVENTIONAL, self.tr("conventional")),
        ):
            self.milling.addItem(words, value)
        why = self.tr("Which way the written contours run. Cut both halves alike, or their errors add up.")
        _name(self.milling, self.tr("Direction of cut"), why)
        self.milling.activated.connect(lambda _number: self._keep_workshop())

    def _add_length(
        self, name: str, words: str, why: str, keep: Callable[[], None], instead: str = ""
    ) -> None:
        """A box for a length; `instead` says what is used where it is not given, if 0 means that."""
        box = LengthBox()
        box.set_limits_mm(0, _LARGEST_MM)
        box.set_step_mm(0.01)
        box.length_edited.connect(lambda _mm: keep())
        box.setFixedWidth(_BOX_PX)
        _name(box, words, why)
        box.set_tip(f"{words}\n{why}")
        if instead:
            box.set_zero_words(self.tr("not given"), instead)
        self.boxes[name] = box

    def _number_box(self, low: float, high: float, unit: str) -> NumberBox:
        box = NumberBox(low, high, unit)
        box.setFixedWidth(_BOX_PX)
        box.valueChanged.connect(lambda _value: self._keep_workshop())
        return box

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.parts.set_compact(self.height() < _LOW_PX)

    # --- showing

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        """A gesture changes none of these numbers but the depth, which the stack shows meanwhile."""
        if change.is_preview:
            self.parts.setEnabled(False)
        else:
            self._show()

    def _show(self) -> None:
        state = self._session.shown
        lead = state.lead
        self._body.setEnabled(lead is not None)
        fitting = lead if lead is not None else Fitting("")
        for name, mm in self._lengths(state, fitting).items():
            box = self.boxes[name]
            box.set_unit(state.unit)
            box.set_length(mm)
        errors = state.workshop.errors
        if errors.temperature_varies_k:
            self._half_warmth = (0.0, 0.0)
        warmth = (errors.temperature_varies_k, errors.expansion_difference_per_k / _MICRO)
        if any(self._half_warmth):
            warmth = self._half_warmth
        for spin, value in zip((self.kelvin, self.expansion), warmth, strict=True):
            with QSignalBlocker(spin):
                spin.setValue(value)
        self.warmth_note.setText(
            self.tr("Warmth counts once both numbers are there.") if any(self._half_warmth) else ""
        )
        self.warmth_note.setVisible(any(self._half_warmth))
        self.milling.setCurrentIndex(self.milling.findData(state.workshop.milling))
        has_kerf = any(fitting.half(half).kerf_mm for half in Half)
        self.boxes["kerf_taper_mm"].setEnabled(has_kerf)
        self.boxes["edge_break_mm"].setEnabled(fitting.spec.plug.may_move)
        self._show_answer()

    @staticmethod
    def _lengths(state: State, fitting: Fitting) -> dict[str, float]:
        """What each box shows."""
        numbers, spec = state.workshop, fitting.spec
        of_errors = ("cutter_varies_mm", "cutter_nominal_mm", "runout_mm", "repeatability_mm")
        return {
            **{name: getattr(numbers.errors, name) for name in (*of_errors, "thickness_varies_mm")},
            "depth_mm": fitting.stack.depth_mm,
            "depth_per_pass_mm": numbers.depth_per_pass_mm,
            "floor_allowance_mm": numbers.floor_allowance_mm,
            "floor_fillet_mm": numbers.floor_fillet_mm,
            "edge_break_mm": spec.plug.edge_break_mm,
            "kerf_taper_mm": max(spec.pocket.kerf_taper_mm, spec.plug.kerf_taper_mm),
        }

    @Slot()
    def _show_answer(self) -> None:
        """The answer; one that is being worked out anew stays, dimmed, so that nothing jumps."""
        session, state = self._session, self._session.shown
        lead = state.lead
        look = None if lead is None else session.look(lead.outline_id)
        is_waiting = (
            lead is not None and look is None and session.solution.result(lead.outline_id) is not None
        )
        has_answer = lead is not None and self._answered == lead.outline_id and state.workshop.errors.scatters
        if session.is_in_gesture or (is_waiting and has_answer):
            self.parts.setEnabled(False)
            return
        fit = None if look is None else look.examined
        scatter = None if fit is None or fit.both_made else fit.scatter
        self._answered = lead.outline_id if lead is not None and scatter is not None else ""
        self.parts.setEnabled(True)
        self.parts.show_scatter(scatter, state.unit, self._otherwise(state, look))
        self.cut_note.setText("" if fit is None else self._passes(fit.passes_mm, state.unit))
        self.cut_note.setVisible(bool(self.cut_note.text()))

    def _otherwise(self, state: State, look: Look | None) -> str:
        """What is said where nothing can be said of many parts."""
        if not state.workshop.errors.scatters:
            return self.tr(
                "Type what the machine gets wrong, and this says how many parts come out as wanted."
            )
        if look is None:
            return self.tr("Working it out.")
        if look.examined is not None and look.examined.both_made:
            return self.tr("Both halves are made: what they are, they are. No error is left to come.")
        return self.tr("Nothing can be said of many parts yet; see the checks.")

    def _passes(self, depths_mm: tuple[float, ...], unit: Unit) -> str:
        """How deep each pass goes; many are cut short."""
        if not depths_mm:
            return ""
        shown = [format_length(depth, unit, with_unit=False) for depth in depths_mm]
        if len(shown) > 8:
            shown = [*shown[:3], "…", shown[-1]]
        if len(depths_mm) == 1:
            return self.tr("One pass, to {0} {1}.").format(shown[0], unit.symbol)
        return self.tr("{0} passes, to {1} {2}.").format(len(depths_mm), ", ".join(shown), unit.symbol)

    # --- sending edits

    def _do(self, make: Callable[[State], Edit]) -> None:
        self._session.do(make, initiator=self)
        self._show()

    def _keep_workshop(self) -> None:
        warmth = self.kelvin.value(), self.expansion.value()
        is_whole = bool(warmth[0]) == bool(warmth[1])
        self._half_warmth = (0.0, 0.0) if is_whole else warmth
        kelvin, expansion = warmth if is_whole else (0.0, 0.0)
        mm = {name: box.mm for name, box in self.boxes.items()}
        milling = self.milling.currentData()

        def edit(state: State) -> Edit:
            errors = MachineErrors(
                mm["cutter_nominal_mm"],
                mm["cutter_varies_mm"],
                mm["runout_mm"],
                mm["repeatability_mm"],
                mm["thickness_varies_mm"],
                kelvin,
                round(expansion * _MICRO, 10),
            )
            numbers = WorkshopNumbers(
                errors,
                mm["depth_per_pass_mm"],
                mm["floor_allowance_mm"],
                None if milling is None else Milling(milling),
                mm["floor_fillet_mm"],
            )
            return set_workshop(state, numbers)

        self._do(edit)

    def _keep_depth(self) -> None:
        lead = self._session.state.lead
        if lead is not None:
            stack, depth_mm = lead.stack, self.boxes["depth_mm"].mm
            self._do(lambda state: set_stack(state, replace(stack, depth_mm=depth_mm)))

    def _keep_edge(self) -> None:
        width_mm = self.boxes["edge_break_mm"].mm
        self._do(lambda state: set_edge_break(state, Half.PLUG, width_mm))

    def _keep_taper(self) -> None:
        taper_mm = self.boxes["kerf_taper_mm"].mm
        self._do(lambda state: set_kerf_taper(state, taper_mm))


def _name(box: QWidget, words: str, why: str) -> None:
    """What a screen reader and the pointer are told of a box."""
    box.setAccessibleName(words)
    box.setAccessibleDescription(why)
    box.setToolTip(f"<b>{words}</b><br>{why}")
