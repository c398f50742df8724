"""The stack: a section through the fitting whose faces can be dragged, and boxes for the same numbers."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from inlayfit.app import theme
from inlayfit.app.core_words import core
from inlayfit.app.icons import IconButton, IconName
from inlayfit.app.panels.coating_box import CoatingBox, coating_words, left_words
from inlayfit.app.panels.elided import ElidedLabel
from inlayfit.app.session import Change, Session
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.lettering import muted_label, title_label
from inlayfit.app.widgets.paint_stack import StackPart, StackSection
from inlayfit.app.widgets.stack_view import StackView
from inlayfit.bench.stack import BARE
from inlayfit.document.edits import set_stack
from inlayfit.document.state import Fitting, StackNumbers
from inlayfit.errors import InlayfitError

_VIEW_PX, _TIGHT_VIEW_PX = 180, 158


class StackPanel(QWidget):
    """The section with its boxes.

    Signals:
        bed_asked(): the thickness of tape or glue is to be typed; its box is in the fit sentence.
        opened(): the boxes are to be seen.
    """

    bed_asked = Signal()
    opened = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._is_tight = False
        self.opener = self._opener()
        self.coating_box = CoatingBox(session)
        head = QHBoxLayout()
        head.setSpacing(8)
        head.addWidget(title_label(self.tr("Stack")))
        head.addWidget(self.opener)
        head.addStretch(1)
        head.addWidget(self.coating_box)
        self.view = StackView()
        self.view.setFixedHeight(_VIEW_PX)
        self.depth_box = self._length(self.tr("Pocket depth"))
        self.thickness_box = self._length(self.tr("Plug thickness"))
        self.spread_box = self._length(self.tr("Readings vary by ±"))
        self.left_note = ElidedLabel()
        self.left_note.setFont(theme.font(theme.CAPTION))
        self.left_note.setProperty("muted", True)
        self.numbers = QWidget()
        grid = QGridLayout(self.numbers)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(8)
        grid.setVerticalSpacing(2)
        boxes = (
            (self.tr("Depth"), self.depth_box),
            (self.tr("Thickness"), self.thickness_box),
            (self.tr("Varies by ±"), self.spread_box),
        )
        for column, (words, box) in enumerate(boxes):
            label = muted_label(words)
            label.setBuddy(box)
            grid.addWidget(label, 0, column)
            grid.addWidget(box, 1, column)
        column_layout = QVBoxLayout(self)
        column_layout.setContentsMargins(0, 0, 0, 0)
        column_layout.setSpacing(0)
        column_layout.addLayout(head)
        column_layout.addWidget(self.view)
        column_layout.addWidget(self.numbers)
        column_layout.addWidget(self.left_note)
        self.view.height_dragging.connect(self._on_view_height_dragging)
        self.view.height_released.connect(self._on_view_height_released)
        self.view.part_activated.connect(self._on_view_part_activated)
        session.state_changed.connect(self._on_session_state_changed)
        self._show()

    def _opener(self) -> IconButton:
        """The button that the boxes wait behind in a low window."""
        opener = IconButton(IconName.MORE, self.tr("Numbers"))
        opener.setObjectName("quiet")
        name = self.tr("Numbers of the stack")
        opener.setAccessibleName(name)
        why = self.tr("Boxes to type depth and thickness, and how much their readings vary.")
        opener.setToolTip(f"<b>{name}</b><br>{why}")
        opener.setCheckable(True)
        opener.toggled.connect(self._on_opener_toggled)
        opener.hide()
        return opener

    # --- in a low window

    def set_tight(self, tight: bool) -> None:
        """Lower the picture and let the boxes wait behind a button, or show all."""
        if tight is self._is_tight:
            return
        self._is_tight = tight
        self.opener.setVisible(tight)
        self._make_room()

    def _make_room(self) -> None:
        """The picture is lower only where the loupe's stands above it."""
        is_open = not self._is_tight or self.opener.isChecked()
        self.view.setFixedHeight(_VIEW_PX if is_open else _TIGHT_VIEW_PX)
        self.numbers.setVisible(is_open)

    def full_height(self) -> int:
        """What it takes with everything to be seen."""
        missing = _VIEW_PX - self.view.height()
        if self.numbers.isHidden():
            missing += self.numbers.minimumSizeHint().height()
        return self.minimumSizeHint().height() + missing

    @Slot(bool)
    def _on_opener_toggled(self, is_open: bool) -> None:
        self.opener.set_icon(IconName.LESS if is_open else IconName.MORE)
        self._make_room()
        if is_open:
            self.opened.emit()

    def _length(self, name: str) -> LengthBox:
        box = LengthBox()
        box.setAccessibleName(name)
        box.set_limits_mm(0, 1000)
        box.set_step_mm(0.01)
        box.setMinimumWidth(100)
        box.length_edited.connect(self._on_box_length_edited)
        return box

    def _lead(self) -> Fitting | None:
        return self._session.state.lead

    def _with_height(self, part: StackPart, height_mm: float) -> StackNumbers | None:
        """The document's stack with one other height; None if that cannot be."""
        lead = self._lead()
        if lead is None:
            return None
        field = {StackPart.DEPTH: "depth_mm", StackPart.PLUG: "plug_mm", StackPart.BED: "glue_mm"}[part]
        try:
            return replace(lead.stack, **{field: height_mm})  # type: ignore[arg-type]  # all three are lengths
        except InlayfitError:
            return None

    @Slot(object, float)
    def _on_view_height_dragging(self, part: StackPart, height_mm: float) -> None:
        stack, lead = self._with_height(part, height_mm), self._lead()
        if stack is None or lead is None:
            return
        if stack == lead.stack:
            self._session.cancel_gesture()
        else:
            self._session.preview(set_stack(self._session.state, stack), initiator=self)

    @Slot(object, float)
    def _on_view_height_released(self, part: StackPart, height_mm: float) -> None:
        stack = self._with_height(part, height_mm)
        if stack is None:
            self._session.cancel_gesture()
        else:
            self._session.finish_gesture(set_stack(self._session.state, stack), initiator=self)

    @Slot(object)
    def _on_view_part_activated(self, part: StackPart) -> None:
        box = {StackPart.DEPTH: self.depth_box, StackPart.PLUG: self.thickness_box}.get(part)
        if box is None:
            self.bed_asked.emit()
        else:
            self.opener.setChecked(True)
            box.setFocus(Qt.FocusReason.OtherFocusReason)
            box.selectAll()

    def _on_box_length_edited(self, _mm: float) -> None:
        lead = self._lead()
        if lead is None:
            return
        heights = (self.depth_box.mm, self.thickness_box.mm, self.spread_box.mm)
        depth_mm, plug_mm, spread_mm = heights
        old = lead.stack
        self._session.do(
            lambda state: set_stack(
                state, replace(old, depth_mm=depth_mm, plug_mm=plug_mm, spread_mm=spread_mm)
            ),
            initiator=self,
        )
        self._show()

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        if change.is_of_clearance:
            self._show_left()
        else:
            self._show()

    def _show_left(self) -> None:
        """What coated walls leave of the clearance."""
        state = self._session.shown
        words = "" if state.lead is None else left_words(state.lead, state.unit)
        self.left_note.say(words)
        self.left_note.setVisible(bool(words))

    def _show(self) -> None:
        state = self._session.shown
        lead = state.lead
        self.setEnabled(lead is not None)
        fitting = lead if lead is not None else Fitting("")
        stack = fitting.stack
        self.view.set_unit(state.unit)
        self.view.set_section(
            StackSection(
                stack.heights,
                plug_word=core(fitting.plug.material or fitting.plug.name) or core("plug"),
                bed_word=core(stack.glue),
                host_word=core(fitting.pocket.material or fitting.pocket.name) or self.tr("host"),
                target_mm=stack.target_proud_mm,
                coating_words=coating_words(stack.coating, state.unit) if stack.coating != BARE else "",
            )
        )
        self._show_left()
        for box, value in (
            (self.depth_box, stack.depth_mm),
            (self.thickness_box, stack.plug_mm),
            (self.spread_box, stack.spread_mm),
        ):
            box.set_unit(state.unit)
            box.set_length(value)
