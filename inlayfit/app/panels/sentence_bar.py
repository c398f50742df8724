"""The fit sentence as the window shows it: every place of it is a control.

The sentence comes from one pattern (`inlayfit.document.sentence`), so a translation may put the places in
another order; the boxes are set where the pattern has them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import ceil

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import (
    QCheckBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from inlayfit.app import theme
from inlayfit.app.core_words import core
from inlayfit.app.pace import Pace
from inlayfit.app.panels.flow import FlowLayout
from inlayfit.app.panels.sentence_box import SENTENCE_PX, ChoiceBox, FormBox, SentenceBox
from inlayfit.app.panels.sentence_preview import MARGINS_PX
from inlayfit.app.session import Change, Session
from inlayfit.app.widgets.feel_words import feel_test, feel_word
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.lettering import muted_label
from inlayfit.app.widgets.readout import Readout
from inlayfit.document import edits
from inlayfit.document.edits import FACING_WORDS, STATE_WORDS, Edit, corner_words
from inlayfit.document.new_work import template_fitting
from inlayfit.document.sentence import PATTERN, overall_words, parts, sentence, words
from inlayfit.document.state import Facing, Fitting, HalfName, StackNumbers, State
from inlayfit.fit.feel import SEED_ZONES, Feel
from inlayfit.fit.spec import LARGEST_CLEARANCE_MM, Half, HalfState, Relief
from inlayfit.units import Unit, format_length

_USUAL_MM = 0.25
"""A clearance with as many figures as any on the ruler, in every unit."""
_ROUND_LENGTH_PX = 27
"""Beside the text of a box for a length: its margins and its arrows."""
_CORNERS: tuple[tuple[Relief, Relief, str], ...] = (
    (Relief.ROUNDED, Relief.ROUNDED, "Both halves get corners that both cutters can reach."),
    (
        Relief.ROUNDED,
        Relief.DOG_BONE,
        "The plug's notches are cut deeper, along the corner's middle.",
    ),
    (Relief.ROUNDED, Relief.T_BONE, "The plug's notches are cut deeper, along one wall."),
    (Relief.DOG_BONE, Relief.ROUNDED, "The pocket's corners are cut deeper; the plug stays sharp."),
    (
        Relief.T_BONE,
        Relief.ROUNDED,
        "The pocket's corners are cut deeper, along one wall.",
    ),
    (
        Relief.BY_HAND,
        Relief.ROUNDED,
        "The pocket's corners are pared with a chisel.",
    ),
    (Relief.ROUNDED, Relief.BY_HAND, "The plug's notches are filed."),
)


_LONGEST_MM = 1000


def named_length(name: str, *, low_mm: float = 0) -> LengthBox:
    """A length box with a name for screen readers, which refuses what cannot be."""
    box = LengthBox()
    box.setAccessibleName(name)
    box.set_limits_mm(low_mm, _LONGEST_MM)
    return box


class SentenceBar(QWidget):
    """The sentence and, beside it, how many checks are open.

    Signals:
        checks_asked(): the list of checks is wanted.
    """

    checks_asked = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("sentence")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._session = session
        self._reading = Pace(self._show_clearance, parent=self)
        self._boxes: dict[str, QWidget] = {}
        self._overall = Readout()
        self._make_boxes()
        self._flow = FlowLayout()
        self.body = body = QWidget()
        """The sentence without what stands beside it."""
        body.setLayout(self._flow)
        self._prefix = QLabel()
        self._prefix.setObjectName("glue")
        self._prefix.setFont(theme.font(theme.TypeSize(SENTENCE_PX, theme.SENTENCE.weight)))
        self._flow.add(self._prefix)
        self._set_words(core(PATTERN))
        self.checks_button = QPushButton()
        self.checks_button.setToolTip(
            self.tr("<b>Checks</b><br>What to look at before cutting, the heaviest first.")
        )
        self.checks_button.clicked.connect(self.checks_asked)
        self._hint = muted_label()
        self._hint.setAlignment(Qt.AlignmentFlag.AlignRight)
        side = QVBoxLayout()
        side.setSpacing(2)
        side.addWidget(self.checks_button, 0, Qt.AlignmentFlag.AlignRight)
        side.addWidget(self._hint, 0, Qt.AlignmentFlag.AlignRight)
        side.addStretch(1)
        row = QHBoxLayout(self)
        row.setContentsMargins(*MARGINS_PX)
        row.setSpacing(20)
        row.addWidget(body, 1)
        row.addLayout(side)
        for box in self._boxes.values():
            if isinstance(box, FormBox):
                box.left_refused.connect(session.refused)
        session.state_changed.connect(self._on_session_state_changed)
        session.stale_changed.connect(lambda _stale: self._show(session.shown))
        self._show(session.shown)

    # --- making the boxes

    def _make_boxes(self) -> None:
        for half in (Half.PLUG, Half.POCKET):
            self._boxes[half.value] = self._name_box(half)
            self._boxes[f"{half.value}_state"] = self._state_box(half)
            self._boxes[f"{half.value}_cutter"] = self._cutter_box(half)
        self._boxes["feel"] = self._feel_box()
        self._boxes["clearance"] = self._clearance_box()
        self._boxes["overall"] = self._overall
        self._boxes["corners"] = self._corners_box()
        self._boxes["allowance"] = self._allowance_box()
        self._boxes["seat"] = self._seat_box()
        self._boxes["glue"] = self._glue_box()
        self._boxes["facing"] = self._facing_box()

    def _name_box(self, half: Half) -> FormBox:
        title = self.tr("Plug") if half is Half.PLUG else self.tr("Pocket")

        def make(form: QFormLayout) -> Callable[[], None]:
            name, material = QLineEdit(), QLineEdit()
            name.setAccessibleName(self.tr("Name of the {0}").format(core(half.value)))
            material.setAccessibleName(self.tr("Material of the {0}").format(core(half.value)))
            form.addRow(self.tr("&Name"), name)
            form.addRow(self.tr("&Material"), material)

            def fill() -> None:
                lead = self._session.state.lead
                called = lead.name(half) if lead is not None else HalfName()
                name.setText(called.name)
                material.setText(called.material)

            def keep() -> None:
                called = HalfName(name.text().strip(), material.text().strip())
                self._do(lambda s: edits.name_half(s, half, called))

            name.editingFinished.connect(keep)
            material.editingFinished.connect(keep)
            return fill

        return FormBox(title, self.tr("What it is called and made of, as the sentence says it."), make)

    def _state_box(self, half: Half) -> ChoiceBox:
        title = self.tr("State of the {0}").format(core(half.value))
        why = {
            HalfState.TO_CUT: self.tr("Not cut yet: it may be shaped to match."),
            HalfState.ALREADY_CUT: self.tr("It is what it is and never changes; the other half gives way."),
            HalfState.FINISHED: self.tr("Finished or coated: not even bench work is possible."),
        }
        choices = [(state, core(word), why[state]) for state, word in STATE_WORDS.items()]
        box = ChoiceBox(title, self.tr("Only a half that is to cut may change."), choices)
        box.picked.connect(lambda to: self._do(lambda s: edits.set_half_state(s, half, to)))
        return box

    def _cutter_box(self, half: Half) -> FormBox:
        title = self.tr("Cutter of the {0}").format(core(half.value))

        def make(form: QFormLayout) -> Callable[[], None]:
            length = named_length(self.tr("Cutter diameter"))
            kerf = QCheckBox(self.tr("It is the &kerf of a beam or blade"))
            form.addRow(self.tr("&Diameter"), length)
            form.addRow(kerf)

            def fill() -> None:
                lead = self._session.state.lead
                if lead is None:
                    return
                spec = lead.half(half)
                length.set_unit(self._session.state.unit)
                length.set_length(spec.cutter_mm or spec.kerf_mm)
                kerf.setChecked(spec.cutter_mm == 0 and spec.kerf_mm > 0)

            def keep() -> None:
                change = edits.set_kerf if kerf.isChecked() else edits.set_cutter
                self._do(lambda s: change(s, half, length.mm))

            length.length_edited.connect(lambda _mm: keep())
            kerf.clicked.connect(keep)
            return fill

        return FormBox(
            title, self.tr("Its measured diameter: an error here costs its full amount per side."), make
        )

    def _feel_box(self) -> ChoiceBox:
        choices = [(feel, feel_word(feel), feel_test(feel)) for feel in Feel]
        box = ChoiceBox(
            self.tr("Feel"), self.tr("How it goes together; picking a word sets the clearance."), choices
        )
        box.picked.connect(lambda feel: self._do(lambda s: edits.set_feel(s, feel)))
        return box

    def _clearance_box(self) -> LengthBox:
        box = named_length(self.tr("Clearance per side"))
        box.setFont(theme.font(theme.TypeSize(SENTENCE_PX, theme.INPUT.weight)))
        box.set_tip(
            self.tr(
                "Clearance per side: the gap at one wall; negative is interference.\n"
                "Type 0.05, 2 thou, 1/64 in …"
            )
        )
        box.set_limits_mm(-LARGEST_CLEARANCE_MM, LARGEST_CLEARANCE_MM)
        box.length_edited.connect(lambda mm: self._do(lambda s: edits.set_clearance(s, mm)))
        self._overall.setFont(theme.font(theme.TypeSize(SENTENCE_PX, theme.SENTENCE.weight)))
        return box

    def _corners_box(self) -> ChoiceBox:
        choices = [
            ((pocket, plug), core(corner_words(pocket=pocket, plug=plug)), core(why))
            for pocket, plug, why in _CORNERS
        ]
        box = ChoiceBox(self.tr("Corners"), self.tr("What is done where a round cutter cannot go."), choices)
        box.picked.connect(
            lambda pair: self._do(lambda s: edits.set_corners(s, pocket=pair[0], plug=pair[1]))
        )
        return box

    def _allowance_box(self) -> FormBox:
        def make(form: QFormLayout) -> Callable[[], None]:
            length = named_length(self.tr("Finishing allowance"))
            form.addRow(self.tr("&Leave on the wall"), length)

            def fill() -> None:
                lead = self._session.state.lead
                if lead is not None:
                    length.set_unit(self._session.state.unit)
                    length.set_length(lead.spec.plug.finishing_allowance_mm)

            length.length_edited.connect(lambda mm: self._do(lambda s: edits.set_finishing_allowance(s, mm)))
            return fill

        return FormBox(
            self.tr("Finishing allowance"),
            self.tr("Stock that roughing leaves on both walls for the finishing pass; 0 for none."),
            make,
        )

    def _seat_box(self) -> FormBox:
        def make(form: QFormLayout) -> Callable[[], None]:
            length = named_length(self.tr("Above the host face"), low_mm=-_LONGEST_MM)
            form.addRow(self.tr("&Above the host face"), length)

            def fill() -> None:
                length.set_unit(self._session.state.unit)
                length.set_length(self._stack().target_proud_mm)

            length.length_edited.connect(
                lambda mm: self._do_stack(lambda stack: replace(stack, target_proud_mm=mm))
            )
            return fill

        return FormBox(
            self.tr("Seat"),
            self.tr("How far above the host face the plug shall end; negative is below."),
            make,
        )

    def _glue_box(self) -> FormBox:
        def make(form: QFormLayout) -> Callable[[], None]:
            what = QLineEdit()
            what.setAccessibleName(self.tr("Tape or glue"))
            length = named_length(self.tr("Thickness of tape or glue"))
            form.addRow(self.tr("&Tape or glue"), what)
            form.addRow(self.tr("Th&ickness"), length)

            def fill() -> None:
                what.setText(self._stack().glue)
                length.set_unit(self._session.state.unit)
                length.set_length(self._stack().glue_mm)

            def keep() -> None:
                named = what.text().strip() or "no glue"
                self._do_stack(lambda stack: replace(stack, glue=named, glue_mm=length.mm))

            what.editingFinished.connect(keep)
            length.length_edited.connect(lambda _mm: keep())
            return fill

        return FormBox(
            self.tr("Under the plug"), self.tr("Tape or glue under it, as thick as it ends up."), make
        )

    def _facing_box(self) -> ChoiceBox:
        why = {
            Facing.UP: self.tr("The side that shows faces the cutter: cut as drawn."),
            Facing.DOWN: self.tr("The side that shows lies on the bed: the outline is cut mirrored."),
        }
        choices = [(facing, core(word), why[facing]) for facing, word in FACING_WORDS.items()]
        box = ChoiceBox(self.tr("Facing"), self.tr("Which side of the plug faces the cutter."), choices)
        box.picked.connect(lambda facing: self._do(lambda s: edits.set_facing(s, facing)))
        return box

    # --- setting them as a sentence

    def _set_words(self, pattern: str) -> None:
        for part in parts(pattern):
            if part.is_place:
                self._flow.add(self._boxes[part.text], clings=part.text == "overall")
                continue
            for word in part.text.replace("(", " ( ").split():
                self._flow.add(self._glue_label(word), clings=word[0] in ",.;:)")

    def _glue_label(self, word: str) -> QLabel:
        label = QLabel(word)
        label.setObjectName("glue")
        label.setFont(theme.font(theme.TypeSize(SENTENCE_PX, theme.SENTENCE.weight)))
        label.setAccessibleName(word)
        return label

    def box(self, place: str) -> QWidget:
        """The control in a place."""
        return self._boxes[place]

    def ask_for_glue(self) -> None:
        """Open the form of tape and glue at its thickness."""
        box = self._boxes["glue"]
        assert isinstance(box, FormBox)
        box.ask_for_length()

    @property
    def clearance_box(self) -> LengthBox:
        """The box of the clearance."""
        box = self._boxes["clearance"]
        assert isinstance(box, LengthBox)
        return box

    # --- showing the session

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        if change.is_preview and change.before.lead is not None and change.after.lead is not None:
            self._reading.ask()
        else:
            self._show(change.after)

    def _show_clearance(self) -> None:
        """What a gesture on the clearance changes, and no more: this follows the hand."""
        state = self._session.shown
        lead = state.lead
        if lead is None or not self._session.is_in_gesture:
            return
        feel = self._boxes["feel"]
        assert isinstance(feel, SentenceBox)
        feel.say(feel_word(SEED_ZONES.feel_at(lead.spec.clearance_mm)))
        self._overall.say(overall_words(lead.spec.clearance_mm, state.unit))
        self._overall.setEnabled(False)
        self.clearance_box.set_length(lead.spec.clearance_mm)
        self._widen_clearance(state.unit)

    def _widen_clearance(self, unit: Unit) -> None:
        """As wide as the unit's usual figures, so that no drag moves the words behind; more if need be."""
        box = self.clearance_box
        metrics = QFontMetricsF(box.font())
        usual = format_length(-_USUAL_MM, unit, decimals=unit.entry_decimals)
        widest = max(metrics.horizontalAdvance(text) for text in (usual, box.shown_text()))
        box.setFixedWidth(ceil(widest) + _ROUND_LENGTH_PX)

    def _show(self, state: State) -> None:
        lead = state.lead or template_fitting(self._session.settings, Half.POCKET)
        said = words(lead, state.unit, core)
        for place, box in self._boxes.items():
            box.setEnabled(state.lead is not None)
            if isinstance(box, SentenceBox):
                box.say(said[place])
        self._overall.say(said["overall"])
        self._overall.setEnabled(state.lead is not None and not self._session.is_stale)
        self.clearance_box.set_unit(state.unit)
        self.clearance_box.set_length(lead.spec.clearance_mm)
        self._widen_clearance(state.unit)
        self._mark_choices(lead)
        if state.lead is not None:
            self._offer_corners(lead)
        self._mark_halves(lead)
        count = len(state.chosen)
        self._prefix.setVisible(count > 1)
        alike = all(f.spec == lead.spec for f in state.chosen_fittings)
        several = self.tr("{0} fittings, each:") if alike else self.tr("{0} fittings, the first:")
        self._prefix.setText(several.format(count))
        self.setAccessibleName(self.tr("Fit sentence"))
        self.setAccessibleDescription(sentence(lead, state.unit, core))
        self._flow.invalidate()

    def _mark_choices(self, lead: Fitting) -> None:
        held = {
            "plug_state": lead.spec.plug.state,
            "pocket_state": lead.spec.pocket.state,
            "feel": SEED_ZONES.feel_at(lead.spec.clearance_mm),
            "corners": (lead.spec.pocket.relief, lead.spec.plug.relief),
            "facing": lead.facing,
        }
        for place, value in held.items():
            box = self._boxes[place]
            assert isinstance(box, ChoiceBox)
            box.mark(value)

    def _offer_corners(self, lead: Fitting) -> None:
        """Only a half that may move can be relieved or pared."""
        box = self._boxes["corners"]
        assert isinstance(box, ChoiceBox)
        for pocket, plug, why in _CORNERS:
            stays = (pocket is not Relief.ROUNDED and not lead.spec.pocket.may_move) or (
                plug is not Relief.ROUNDED and not lead.spec.plug.may_move
            )
            action = box.action_for((pocket, plug))
            action.setEnabled(not stays)
            action.setToolTip(
                self.tr("That half is made already and stays as it is.") if stays else core(why)
            )

    def _mark_halves(self, lead: Fitting) -> None:
        for half in (Half.PLUG, Half.POCKET):
            box = self._boxes[half.value]
            assert isinstance(box, SentenceBox)
            may_move = lead.half(half).may_move
            box.sign = "hollow" if may_move else "solid"
            box.is_plain = not may_move
            box.updateGeometry()
            box.update()

    def show_open_checks(self, words_on_button: str, hint: str) -> None:
        """How many checks are open."""
        self.checks_button.setText(words_on_button)
        self._hint.setText(hint)

    # --- sending edits

    def _do(self, make: Callable[[State], Edit]) -> None:
        self._session.do(make, initiator=self)
        self._show(self._session.shown)

    def _do_stack(self, change: Callable[[StackNumbers], StackNumbers]) -> None:
        stack = self._stack()
        self._do(lambda s: edits.set_stack(s, change(stack)))

    def _stack(self) -> StackNumbers:
        lead = self._session.state.lead
        return lead.stack if lead is not None else StackNumbers()
