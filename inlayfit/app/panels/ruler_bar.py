"""The fit ruler with the box beside it: one number, dragged or typed."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from inlayfit.app.core_words import core
from inlayfit.app.pace import FRAME_MS, Pace
from inlayfit.app.session import Change, Session
from inlayfit.app.widgets.fit_ruler import FitRuler
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.lettering import muted_label, title_label
from inlayfit.app.widgets.readout import Readout
from inlayfit.document.edits import set_clearance
from inlayfit.document.sentence import overall_words
from inlayfit.document.state import State
from inlayfit.fit.spec import LARGEST_CLEARANCE_MM


class RulerBar(QWidget):
    """Shows and sets the clearance of what is chosen. A drag is one gesture: one undo step."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("ruler")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._session = session
        self._reading = Pace(self._show_number, every_ms=2 * FRAME_MS, parent=self)
        title = title_label(self.tr("Fit ruler"))
        self._what = muted_label()
        self.note = muted_label(self.tr("Zones are a place to start, not a promise."), wraps=True)
        self.note.setFixedWidth(170)
        self.ruler = FitRuler()
        self.box = LengthBox()
        self.box.setAccessibleName(self.tr("Clearance per side beside the ruler"))
        self.box.set_limits_mm(-LARGEST_CLEARANCE_MM, LARGEST_CLEARANCE_MM)
        self.box.set_tip(self.tr("Clearance per side: the gap at one wall; overall is twice that."))
        self._pair = Readout()
        self._pair.setProperty("muted", True)
        left, right = QVBoxLayout(), QVBoxLayout()
        for widget in (title, self._what, self.note):
            left.addWidget(widget)
        left.addStretch(1)
        right.addStretch(1)
        right.addWidget(self.box)
        right.addWidget(self._pair)
        right.addStretch(1)
        row = QHBoxLayout(self)
        row.setContentsMargins(24, 10, 24, 6)
        row.setSpacing(16)
        row.addLayout(left)
        row.addWidget(self.ruler, 1)
        row.addLayout(right)
        self.setFixedHeight(124)
        self.ruler.value_dragging.connect(self._on_ruler_value_dragging)
        self.ruler.value_released.connect(self._on_ruler_value_released)
        self.ruler.taken_back.connect(session.cancel_gesture)
        self.box.length_edited.connect(self._on_box_length_edited)
        session.state_changed.connect(self._on_session_state_changed)
        self._show(session.shown)

    def set_compact(self, compact: bool) -> None:
        """Leave out the note, for a small window."""
        self.note.setVisible(not compact)
        self.setFixedHeight(108 if compact else 124)

    @Slot(float)
    def _on_ruler_value_dragging(self, clearance_mm: float) -> None:
        if self._session.state.lead is None:
            return
        if self.ruler.is_dragging:
            self._session.preview(set_clearance(self._session.state, clearance_mm), initiator=self)

    @Slot(float)
    def _on_ruler_value_released(self, clearance_mm: float) -> None:
        edit = set_clearance(self._session.state, clearance_mm)
        self._session.finish_gesture(edit, initiator=self)

    @Slot(float)
    def _on_box_length_edited(self, clearance_mm: float) -> None:
        self._session.do(lambda state: set_clearance(state, clearance_mm), initiator=self)
        self._show(self._session.shown)

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        if change.initiator is self and change.is_preview:
            self._reading.ask()
        else:
            self._show(change.after)

    def _show(self, state: State) -> None:
        self.setEnabled(state.lead is not None)
        self._what.setText(self.tr("clearance per side, {0}").format(state.unit.symbol))
        self.ruler.set_unit(state.unit)
        self.ruler.set_clearance_mm(self._clearance_mm(state))
        self.box.set_unit(state.unit)
        self._show_number()

    def _show_number(self) -> None:
        """The number beside the handle."""
        state = self._session.shown
        clearance_mm = self._clearance_mm(state)
        self.box.set_length(clearance_mm)
        self._pair.say(core("per side ({0} overall)").format(overall_words(clearance_mm, state.unit)))

    def _clearance_mm(self, state: State) -> float:
        usual_mm = self._session.settings.number("clearance_mm")
        return usual_mm if state.lead is None else state.lead.spec.clearance_mm
