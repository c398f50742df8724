"""The outlines as a list: the same choice as on the canvas, for the keyboard and the screen reader."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QItemSelectionModel, QSignalBlocker, Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from inlayfit.app.panels.outline_row import DETAIL_ROLE, LEADS_ROLE, PICTURE_ROLE, OutlineRow, outline_picture
from inlayfit.app.session import Change, Session
from inlayfit.app.widgets.lettering import muted_label
from inlayfit.app.words import counted, size_words
from inlayfit.document.edits import choose, rename_outline
from inlayfit.document.outlines import Outline
from inlayfit.document.state import State

_ID = Qt.ItemDataRole.UserRole
_CHOOSING_KEYS = (Qt.Key.Key_Space, Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End)


class OutlineList(QListWidget):
    """A list in which Space, or an arrow that cannot go on, chooses the one row where the keyboard is."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        here = self.currentIndex()
        super().keyPressEvent(event)
        is_plain = event.modifiers() in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.KeypadModifier)
        if is_plain and event.key() in _CHOOSING_KEYS and here.isValid() and self.currentIndex() == here:
            self.selectionModel().select(here, QItemSelectionModel.SelectionFlag.ClearAndSelect)


class OutlinesPanel(QWidget):
    """The list of outlines. Several can be chosen with Shift and Ctrl; F2 gives another name."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._drawn: tuple[Outline, ...] = ()
        hint = muted_label(
            self.tr("What is chosen here is fitted and written. The first one leads."), wraps=True
        )
        self.list = OutlineList()
        self.list.setAccessibleName(self.tr("Outlines of the drawing"))
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.list.setEditTriggers(
            QAbstractItemView.EditTrigger.EditKeyPressed | QAbstractItemView.EditTrigger.DoubleClicked
        )
        self.list.setItemDelegate(OutlineRow(self.list))
        self.list.setMouseTracking(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(hint)
        column.addWidget(self.list, 1)
        self.list.itemSelectionChanged.connect(self._on_list_selection_changed)
        self.list.itemChanged.connect(self._on_list_item_changed)
        session.state_changed.connect(self._on_session_state_changed)
        self._fill(session.shown)

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        after = change.after
        if change.initiator is self:
            self._drawn = after.outlines
            self._mark(after)
            return
        is_anew = after.outlines is not self._drawn or change.before.unit is not after.unit
        if is_anew or change.before.plug_ids != after.plug_ids:
            self._fill(after)
        elif change.before.chosen != after.chosen:
            self._mark(after)

    def _fill(self, state: State) -> None:
        self._drawn = state.outlines
        with QSignalBlocker(self.list):
            self.list.clear()
            for outline in state.outlines:
                item = QListWidgetItem(outline.name or outline.id)
                item.setData(_ID, outline.id)
                detail = _description(outline, state)
                if outline.id in state.plug_ids:
                    detail = self.tr("made plug, {0}").format(detail)
                item.setData(DETAIL_ROLE, detail)
                item.setData(PICTURE_ROLE, outline_picture(outline))
                item.setToolTip(detail)
                item.setData(Qt.ItemDataRole.AccessibleDescriptionRole, detail)
                item.setFlags(item.flags() | Qt.ItemFlag.ItemIsEditable)
                self.list.addItem(item)
        self._mark(state)

    def _mark(self, state: State) -> None:
        with QSignalBlocker(self.list):
            for row in range(self.list.count()):
                item = self.list.item(row)
                item.setSelected(item.data(_ID) in state.chosen)
                item.setData(LEADS_ROLE, len(state.chosen) > 1 and item.data(_ID) == state.chosen[0])

    def _on_list_selection_changed(self) -> None:
        marked = {item.data(_ID) for item in self.list.selectedItems()}
        kept = [i for i in self._session.state.chosen if i in marked]
        added = [o.id for o in self._session.state.outlines if o.id in marked and o.id not in kept]
        self._session.do(lambda state: choose(state, [*kept, *added]), initiator=self)

    def _on_list_item_changed(self, item: QListWidgetItem) -> None:
        outline_id, name = item.data(_ID), item.text().strip()
        self._session.do(lambda state: rename_outline(state, outline_id, name or outline_id), initiator=self)


def _description(outline: Outline, state: State) -> str:
    x0, y0, x1, y1 = outline.region.bounds
    size = size_words(x1 - x0, y1 - y0, state.unit)
    holes = counted(outline.region.hole_count, _tr("1 hole"), _tr("{0} holes"))
    words = [size, holes if outline.region.hole_count else "", _tr("layer {0}").format(outline.layer)]
    return ", ".join(word for word in words if word)


def _tr(text: str) -> str:
    return QCoreApplication.translate("outlines", text)
