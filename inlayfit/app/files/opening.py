"""Opening: reads drawings, projects and pasted text away from the window's thread, by content.

What a file is, its first bytes say, never its name. Reading never changes the file.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from inlayfit.app.core_words import core_error
from inlayfit.app.tasks import LatestTask
from inlayfit.document.project_file import load_project
from inlayfit.document.project_kind import looks_like_project
from inlayfit.document.state import SettingsUsed, Source, State
from inlayfit.errors import InlayfitError, NotADrawingError
from inlayfit.fit.spec import Half
from inlayfit.geometry.path import Points
from inlayfit.progress import Progress
from inlayfit.wording import Worded

if TYPE_CHECKING:
    from inlayfit.document.imports import Imported

_FIRST_BYTES = 4096


@dataclass(frozen=True, slots=True)
class ReadDrawing:
    """A drawing that was read.

    Attributes:
        imported: what is in it.
        source: where it came from.
        used_as: which half it shows.
        how: how it was read.
        marks: lines that are for the drawing's reader only, (n, 2) each, to be shown faintly.
    """

    imported: Imported
    source: Source
    used_as: Half
    how: SettingsUsed
    marks: tuple[Points, ...] = ()


@dataclass(frozen=True, slots=True)
class ReadProject:
    """A project that was read."""

    state: State
    path: Path


def is_project(path: Path) -> bool:
    """Whether the first bytes of a file say that it is a project."""
    try:
        with path.open("rb") as file:
            return looks_like_project(file.read(_FIRST_BYTES))
    except OSError:
        return False


def source_of(path: Path) -> Source:
    """The fingerprint of a file; NotADrawingError if it cannot be read."""
    try:
        data = path.read_bytes()
    except OSError as error:
        message = Worded(
            "“{name}” could not be read; check its name, its folder and its permissions.", name=path.name
        )
        raise NotADrawingError(message, path=path) from error
    return Source(str(path), hashlib.sha256(data).hexdigest(), len(data))


class Opener(QObject):
    """Reads what a person opens.

    Signals:
        drawing_read(ReadDrawing): a drawing came in.
        project_read(ReadProject): a project came in.
        failed(text): nothing could be shown of it; one sentence.
        progressed(fraction, note), busy_changed(busy): as long as it reads.
    """

    drawing_read = Signal(object)
    project_read = Signal(object)
    failed = Signal(str)
    progressed = Signal(float, str)
    busy_changed = Signal(bool)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._task = LatestTask(self)
        self._task.finished.connect(self._on_task_finished)
        self._task.failed.connect(self._on_task_failed)
        self._task.progressed.connect(lambda _number, part, note: self.progressed.emit(part, note))
        self._task.busy_changed.connect(self.busy_changed)

    def open(self, path: Path, *, used_as: Half = Half.POCKET, how: SettingsUsed) -> None:
        """Read a file, whichever kind it is."""

        def work(progress: Progress) -> ReadDrawing | ReadProject:
            from inlayfit.document.reading import marks_of, read_as  # heavy; not before it is needed

            if is_project(path):
                return ReadProject(load_project(path), path)
            source = source_of(path)
            progress.report(0.05, path.name)
            imported, used = read_as(path, how, progress=progress)
            return ReadDrawing(imported, source, used_as, used, marks_of(imported, used))

        self._submit(work)

    def paste(self, text: str, *, used_as: Half = Half.POCKET, how: SettingsUsed) -> None:
        """Read pasted text."""

        def work(progress: Progress) -> ReadDrawing:
            from inlayfit.document.imports import import_text  # heavy; not before it is needed

            imported = import_text(
                text, gap_mm=how.gap_mm, strokes_as_areas=how.strokes_as_areas, progress=progress
            )
            return ReadDrawing(imported, Source(), used_as, how)

        self._submit(work)

    def cancel(self) -> None:
        """Stop reading; nothing changes."""
        self._task.cancel()

    def close(self) -> None:
        """Stop for good."""
        self._task.close()

    def _submit(self, work: Callable[[Progress], ReadDrawing | ReadProject]) -> None:
        self._task.submit(work)

    @Slot(int, object)
    def _on_task_finished(self, _number: int, answer: ReadDrawing | ReadProject) -> None:
        if isinstance(answer, ReadProject):
            self.project_read.emit(answer)
        else:
            self.drawing_read.emit(answer)

    @Slot(int, object)
    def _on_task_failed(self, _number: int, error: Exception) -> None:
        if isinstance(error, InlayfitError):
            self.failed.emit(core_error(error))
        else:
            words = self.tr("The file could not be read ({0}); please report it with the file.")
            self.failed.emit(words.format(type(error).__name__))
