"""Finds out which plug of a drawing belongs to which made pocket, away from the window's thread."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal, Slot

from inlayfit.app.core_words import core_error
from inlayfit.app.files.opening import ReadDrawing
from inlayfit.app.session import Session
from inlayfit.app.tasks import LatestTask
from inlayfit.document.edits import Edit
from inlayfit.document.made_edits import add_plugs, lacking_plugs
from inlayfit.document.state import Fitting, State
from inlayfit.errors import SpecError
from inlayfit.fit.spec import Seating
from inlayfit.progress import Progress
from inlayfit.wording import Worded

HELD_CODES = frozenset({"plug-turned", "plug-mirrored"})
"""Findings that follow from how a plug may move, which can change; they are made anew with each answer."""


class PlugPairing(QObject):
    """Pairs the plugs of a drawing with pockets and puts them into the document.

    Signals:
        paired(): they are in the document; failed(text): they belong to no pocket; one sentence.
        busy_changed(busy): as long as it looks.
    """

    paired = Signal()
    failed = Signal(str)
    busy_changed = Signal(bool)

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._task = LatestTask(self)
        self._task.finished.connect(self._on_task_finished)
        self._task.failed.connect(lambda _number, error: self.failed.emit(core_error(error)))
        self._task.busy_changed.connect(self.busy_changed)

    def pair(self, read: ReadDrawing, template: Fitting) -> None:
        """Find the plugs of the chosen pockets that lack theirs."""
        state = self._session.state
        self._asked = state, read, template

        def work(_progress: Progress) -> Edit:
            return _paired(state, read, template)

        self._task.submit(work)

    def cancel(self) -> None:
        """Stop; nothing changes."""
        self._task.cancel()

    def close(self) -> None:
        """Stop for good."""
        self._task.close()

    @Slot(int, object)
    def _on_task_finished(self, _number: int, edit: Edit) -> None:
        state, read, template = self._asked
        if state is self._session.state:
            self._session.perform(edit)
            self.paired.emit()
        else:  # the document went on meanwhile
            self.pair(read, template)


def _paired(state: State, read: ReadDrawing, template: Fitting) -> Edit:
    from inlayfit.document.pairing import paired  # heavy; not before it is needed

    pockets = [state.outline(name) for name in lacking_plugs(state)]
    if not pockets:
        raise SpecError(Worded("Nothing is chosen; choose the pocket before its plug."))
    lead = state.fitting(pockets[0].id)
    pairs, findings = paired(
        pockets,
        read.imported.outlines,
        clearance_mm=lead.spec.clearance_mm,
        seating=Seating.SHIFT if lead.made is None else lead.made.seating,
        chosen=False,
    )
    ids = [(pocket.id, plug.id) for pocket, plug in pairs]
    kept = [finding for finding in findings if finding.code not in HELD_CODES]
    return add_plugs(state, read.imported, ids, kept, drawing=read.source.path, template=template)
