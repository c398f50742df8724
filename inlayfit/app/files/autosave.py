"""Autosave: writes the recovery copy soon after a change, away from the window's thread.

The first change starts the clock and further ones do not start it again, so in steady work a copy is
written every second and at most two seconds of work can be lost.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from inlayfit.app.core_words import core_error
from inlayfit.app.session import Session
from inlayfit.app.tasks import LatestTask
from inlayfit.document.journal import Journal, Recovery
from inlayfit.progress import Progress

DELAY_MS = 1000


class Autosave(QObject):
    """Keeps the recovery copy of a session.

    Signals:
        failed(text): the copy could not be written; one sentence.
    """

    failed = Signal(str)

    def __init__(self, session: Session, journal: Journal, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._journal = journal
        self._task = LatestTask(self)
        self._task.failed.connect(lambda _number, error: self.failed.emit(core_error(error)))
        self._task.finished.connect(self._on_task_finished)
        self._outlived: list[Recovery] = []
        self._clock = QTimer(self)
        self._clock.setSingleShot(True)
        self._clock.setInterval(DELAY_MS)
        self._clock.timeout.connect(self.write_now)
        session.state_changed.connect(self._on_session_state_changed)
        session.project_changed.connect(self._on_session_project_changed)

    @Slot(object)
    def _on_session_state_changed(self, _change: object) -> None:
        if not self._clock.isActive():
            self._clock.start()

    @Slot()
    def _on_session_project_changed(self) -> None:
        if not self._session.is_modified:
            self._journal.clear()

    @Slot()
    def write_now(self) -> None:
        """Write the copy of what is not saved yet."""
        session, journal = self._session, self._journal
        if not session.is_modified:
            journal.clear()
            return
        state, project, title = session.state, session.project, session.title

        def work(progress: Progress) -> Path:
            progress.raise_if_cancelled()
            journal.write(state, project=project, title=title)
            return journal.copy

        self._task.submit(work, patient=True)

    @Slot(object)
    def take_over(self, recovery: Recovery) -> None:
        """Write a copy of recovered work now; the old copy goes when that is done."""
        self._outlived.append(recovery)
        self.write_now()

    def _drop_outlived(self) -> None:
        for recovery in self._outlived:
            recovery.discard()
        self._outlived.clear()

    @Slot(int, object)
    def _on_task_finished(self, _number: int, _answer: object) -> None:
        """A copy that was still being written when the work was saved goes at once."""
        self._drop_outlived()
        if not self._session.is_modified:
            self._journal.clear()

    def close(self) -> None:
        """The window closes in good order: no copy is left."""
        self._clock.stop()
        self._task.close()
        self._drop_outlived()
        self._journal.close()
