"""The box above the stack that says what is coated, and its form: a thickness and the faces of each half."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, QSize, Qt, Slot
from PySide6.QtWidgets import QCheckBox, QFormLayout, QHBoxLayout, QSizePolicy, QWidget

from inlayfit.app import theme
from inlayfit.app.panels.sentence_box import FormBox
from inlayfit.app.session import Change, Session
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.lettering import muted_label
from inlayfit.bench.stack import BARE, BuildUp
from inlayfit.document.coating import (
    FACES,
    Face,
    build_up_mm,
    left_mm,
    set_coating,
    thickness_mm,
    with_face,
    with_thickness,
)
from inlayfit.document.sentence import overall_words
from inlayfit.document.state import Fitting
from inlayfit.fit.spec import Half
from inlayfit.units import Unit, format_length

_HEIGHT_PX, _NARROWEST_PX = 26, 110
_WIDTH_PX = 356
_NOTE_LINES = 3
"""Room for what walls leave, so that the form does not grow while it is open."""
_THICKEST_MM = 10.0
_STEP_MM = 0.005


class CoatingBox(FormBox):
    """Says what is coated; its form changes it."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(
            _tr("Coating"),
            _tr(
                "What paint, lacquer or anodising adds to each face, after depth and thickness were measured."
            ),
            self._make_form,
            parent,
        )
        self._session = session
        self.lengths: dict[Half, LengthBox] = {}
        self.faces: dict[Face, QCheckBox] = {}
        self.setFont(theme.font(theme.BASE))
        self.setFixedHeight(_HEIGHT_PX)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self.left_refused.connect(session.refused)
        session.state_changed.connect(self._on_session_state_changed)
        self._show()

    def minimumSizeHint(self) -> QSize:
        return QSize(min(_NARROWEST_PX, super().minimumSizeHint().width()), _HEIGHT_PX)

    def _coating(self) -> BuildUp:
        lead = self._session.state.lead
        return BARE if lead is None else lead.stack.coating

    # --- the form

    def _make_form(self, form: QFormLayout) -> Callable[[], None]:
        self.note = muted_label(wraps=True)
        self.note.setFixedWidth(_WIDTH_PX)
        self.note.setMinimumHeight(_NOTE_LINES * self.note.fontMetrics().lineSpacing())
        self.note.setAlignment(Qt.AlignmentFlag.AlignTop)
        for half, words in ((Half.POCKET, _tr("&Host")), (Half.PLUG, _tr("&Plug"))):
            self.lengths[half] = self._length(half, words.replace("&", ""))
            form.addRow(words, self.lengths[half])
            form.addRow("", self._faces(half, words.replace("&", "")))
        form.addRow(self.note)
        return self._show_form

    def _length(self, half: Half, name: str) -> LengthBox:
        box = LengthBox()
        box.setAccessibleName(_tr("Coating of the {0}").format(name))
        box.set_limits_mm(0, _THICKEST_MM)
        box.set_step_mm(_STEP_MM)
        box.set_zero_words(_tr("not coated"), _tr("Bare, or measured as coated."))
        box.lineEdit().textEdited.connect(lambda _text: self._open_faces(half))
        box.length_edited.connect(lambda mm: self._do(with_thickness(self._coating(), half, mm)))
        return box

    def _open_faces(self, half: Half) -> None:
        """Let the keyboard go on to the faces of a half whose thickness is being typed."""
        for face in FACES[half]:
            self.faces[face].setEnabled(True)

    def _faces(self, half: Half, name: str) -> QWidget:
        row = QWidget()
        column = QHBoxLayout(row)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(14)
        words = {
            Face.RIM: _tr("&face"),
            Face.FLOOR: _tr("fl&oor"),
            Face.POCKET_WALL: _tr("&walls"),
            Face.TOP: _tr("&upper face"),
            Face.BOTTOM: _tr("&lower face"),
            Face.PLUG_WALL: _tr("w&alls"),
        }
        for face in FACES[half]:
            check = QCheckBox(words[face])
            check.setAccessibleName(f"{name}: {words[face].replace('&', '')}")
            check.clicked.connect(lambda on, face=face: self._do(with_face(self._coating(), face, coated=on)))
            column.addWidget(check)
            self.faces[face] = check
        column.addStretch(1)
        return row

    def _show_form(self) -> None:
        coating, lead = self._coating(), self._session.state.lead
        for half, box in self.lengths.items():
            thickness = thickness_mm(coating, half)
            box.set_unit(self._session.state.unit)
            box.set_length(thickness)
            for face in FACES[half]:
                self.faces[face].setEnabled(thickness > 0)
                self.faces[face].setChecked(build_up_mm(coating, face) > 0)
        what = _tr("By how much each coated face grows. Depth, thickness and clearance are those before it.")
        left = "" if lead is None else left_words(lead, self._session.state.unit)
        self.note.setText(f"{what}\n{left}".strip())

    def _do(self, coating: BuildUp) -> None:
        self._session.do(lambda state: set_coating(state, coating), initiator=self)
        self._show_form()

    # --- showing

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        if not change.is_of_clearance:
            self._show()

    def _show(self) -> None:
        state = self._session.shown
        self.setEnabled(state.lead is not None)
        coating = BARE if state.lead is None else state.lead.stack.coating
        self.short = short_words(coating, state.unit)
        self.say(coating_words(coating, state.unit))
        self.updateGeometry()
        if self.lengths and self.popup.isVisible():
            self._show_form()


def coating_words(coating: BuildUp, unit: Unit) -> str:
    """Which half is coated, and by how much a coated face of it grows."""
    host, plug = (format_length(thickness_mm(coating, half), unit, with_unit=False) for half in Half)
    if not thickness_mm(coating, Half.PLUG):
        is_bare = not thickness_mm(coating, Half.POCKET)
        return _tr("nothing coated") if is_bare else _tr("host coated {0}").format(host)
    if not thickness_mm(coating, Half.POCKET):
        return _tr("plug coated {0}").format(plug)
    return _tr("coated: host {0}, plug {1}").format(host, plug)


def short_words(coating: BuildUp, unit: Unit) -> str:
    """The same where there is little room: only by how much, the host before the plug."""
    grown = [mm for mm in (thickness_mm(coating, half) for half in (Half.POCKET, Half.PLUG)) if mm]
    numbers = ", ".join(format_length(mm, unit, with_unit=False) for mm in grown)
    return _tr("coated {0}").format(numbers) if grown else _tr("bare")


def left_words(fitting: Fitting, unit: Unit) -> str:
    """What coated walls leave of the clearance; "" if they take nothing."""
    coating = fitting.stack.coating
    if not coating.clearance_change_mm:
        return ""
    left = left_mm(fitting.spec.clearance_mm, coating)
    pattern = (
        _tr("Coated: {0} per side ({1} overall) left at the walls.")
        if left >= 0
        else _tr("Coated: bites by {0} per side ({1} overall).")
    )
    side = format_length(abs(left), unit, with_unit=False)
    return pattern.format(side, overall_words(abs(left), unit))


def _tr(text: str) -> str:
    return QCoreApplication.translate("coating", text)
