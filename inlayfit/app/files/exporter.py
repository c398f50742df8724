"""Writes the outlines to be cut: asks how and where, waits for the exact answer, says what came of it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from inlayfit.app.answers.solution import Solution
from inlayfit.app.core_words import core, core_error
from inlayfit.app.files.export_words import export_options, files_of, has_kerf, written_words
from inlayfit.app.pages import prompts
from inlayfit.app.session import Session
from inlayfit.app.tasks import LatestTask
from inlayfit.app.words import counted
from inlayfit.errors import InlayfitError
from inlayfit.finding import Severity
from inlayfit.progress import Progress

if TYPE_CHECKING:
    from inlayfit.document.exports import ExportOptions, ExportReport


class Exporter(QObject):
    """Exports for a window.

    Signals:
        said(text): what was written, for the status line.
        complained(text): why nothing was, or what is wrong with it; one sentence.
        progressed(fraction, note): while it writes; busy_changed(busy) brackets it.
    """

    said = Signal(str)
    complained = Signal(str)
    progressed = Signal(float, str)
    busy_changed = Signal(bool)

    def __init__(self, session: Session, window: QWidget, start_folder: Callable[[], Path]) -> None:
        """Make one.

        Args:
            session: what is written.
            window: the parent of questions.
            start_folder: where a person is likely to want the files.
        """
        super().__init__(window)
        self._session = session
        self._window = window
        self._start_folder = start_folder
        self._wish: tuple[Path, ExportOptions | None] | None = None
        self._task = LatestTask(self)
        self._task.finished.connect(self._on_task_finished)
        self._task.failed.connect(self._on_task_failed)
        self._task.progressed.connect(lambda _number, part, note: self.progressed.emit(part, note))
        self._task.busy_changed.connect(self.busy_changed)
        session.solved.connect(self._on_session_solved)

    def ask(self) -> None:
        """Ask for a folder and write the outlines into it, once they are exact."""
        if self._session.state.lead is None:
            self.complained.emit(self.tr("Nothing is chosen; choose an outline to write."))
            return
        state = self._session.state
        start = export_options(state)
        wish = prompts.export_wish(self._window, start, self._start_folder(), has_kerf=has_kerf(state))
        if wish is None:
            return
        folder, options = wish.folder, wish.options or start
        names = [*files_of(options, state.chosen), "gap.svg", "fit.json"]
        there = [name for name in names if (folder / name).exists()]
        if not there or prompts.replace_files(self._window, folder, there):
            self.write(folder, options)

    def write(self, folder: Path, options: ExportOptions | None = None) -> None:
        """Write the outlines of all chosen fittings; waits for the exact answer."""
        if self._session.is_stale:
            self._wish = folder, options
            return
        solution, state = self._session.solution, self._session.state
        looks = {i: look for i in state.chosen if (look := self._session.look(i)) is not None}
        if not any(solution.result(i) is not None for i in state.chosen):
            self.complained.emit(self.tr("There is nothing to cut yet; mend what the checks say first."))
            return
        source = Path(state.source.path) if state.source.path else None

        def work(progress: Progress) -> ExportReport:
            from inlayfit.app.files.exporting import write  # heavy; not before it is needed

            how = options or export_options(state)
            return write(solution, looks, folder, how, source=source, progress=progress)

        self._task.submit(work)

    def cancel(self) -> None:
        """Stop writing; files that are there stay as they were."""
        self._task.cancel()

    def close(self) -> None:
        """Stop for good."""
        self._task.close()

    @Slot(object)
    def _on_session_solved(self, solution: Solution) -> None:
        if self._wish is not None and not solution.is_preview:
            wish, self._wish = self._wish, None
            self.write(*wish)

    @Slot(int, object)
    def _on_task_finished(self, _number: int, written: ExportReport) -> None:
        folder = written.files[0].path.parent.name if written.files else ""
        what = counted(len(written.files), self.tr("1 file"), self.tr("{0} files"))
        self.said.emit(self.tr("Wrote {0} into {1}").format(what, folder) + written_words(written))
        blocks = [f.message for f in written.findings if f.severity is Severity.BLOCK and not f.fixed]
        if blocks:
            self.complained.emit(core(blocks[0]))

    @Slot(int, object)
    def _on_task_failed(self, _number: int, error: Exception) -> None:
        if isinstance(error, InlayfitError):
            self.complained.emit(core_error(error))
        else:
            words = self.tr("Writing failed ({0}); nothing was changed.")
            self.complained.emit(words.format(type(error).__name__))
