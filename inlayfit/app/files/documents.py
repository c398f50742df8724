"""What happens to documents: opened, added to, saved, recovered, remembered; written by the exporter.

The window asks; the answers come back as signals of the session and as passing messages. Questions go
through `inlayfit.app.pages.prompts` only.
"""

from __future__ import annotations

import time
from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QMimeData, QObject, Signal, Slot
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

from inlayfit.app.answers.solution import Solution
from inlayfit.app.core_words import core_error
from inlayfit.app.files.exporter import Exporter
from inlayfit.app.files.opening import Opener, ReadDrawing, ReadProject, is_project, source_of
from inlayfit.app.files.plug_pairing import PlugPairing
from inlayfit.app.files.recent import RecentWork, read_recent, recent_file, with_work, write_recent
from inlayfit.app.files.recent_pictures import small_picture
from inlayfit.app.pages import prompts
from inlayfit.app.pages.prompts import Rescue, Unsaved
from inlayfit.app.session import Session
from inlayfit.app.words import counted, when_words
from inlayfit.document import edits
from inlayfit.document.folder_units import remember_unit
from inlayfit.document.journal import Recovery
from inlayfit.document.new_work import in_unit, settings_used, template_fitting
from inlayfit.document.project_file import save_project
from inlayfit.document.project_kind import SUFFIX
from inlayfit.document.state import SettingsUsed, State
from inlayfit.document.verdict import checks, verdict
from inlayfit.errors import InlayfitError
from inlayfit.fit.spec import Half
from inlayfit.shipped import is_shipped
from inlayfit.units import Unit

if TYPE_CHECKING:
    pass


@dataclass(frozen=True, slots=True)
class _Wish:
    """What a file that is being read is for."""

    adds: bool = False
    rereads: bool = False
    is_plug: bool = False


class Documents(QObject):
    """Opens, saves and remembers for a window.

    Attributes:
        opener: reads what is opened.
        exporter: writes what is to be cut.
        recent: the list of recent work.

    Signals:
        said(text): something that went well, for the status line.
        complained(text): something that did not; one sentence that says what to do.
        turned_down(text): a file, or what was pasted or dropped, could not be used; likewise.
        opened(): all that was asked for last is open.
        progressed(fraction, note): long work; busy_changed(busy) brackets it.
        recovered(Recovery): a recovery copy is open now.
        recent_changed(works): the list of recent work is another.
    """

    said = Signal(str)
    complained = Signal(str)
    turned_down = Signal(str)
    opened = Signal()
    progressed = Signal(float, str)
    busy_changed = Signal(bool)
    recovered = Signal(object)
    recent_changed = Signal(object)

    def __init__(self, session: Session, parent: QWidget, *, recent: Path | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._window = parent
        self._recent_file = recent or recent_file()
        self.recent: tuple[RecentWork, ...] = read_recent(self._recent_file)
        self._wish = _Wish()
        self._tried: Path | None = None
        self._queue: list[Path] = []
        self._is_turned_down = False
        self.turned_down.connect(self._on_self_turned_down)
        self._used_as = Half.POCKET
        self.opener = Opener(self)
        self.opener.drawing_read.connect(self._on_opener_drawing_read)
        self.opener.project_read.connect(self._on_opener_project_read)
        self.opener.failed.connect(self._on_opener_failed)
        self.opener.progressed.connect(self.progressed)
        self.opener.busy_changed.connect(self.busy_changed)
        self.exporter = Exporter(session, parent, self._start_folder)
        self.exporter.said.connect(self.said)
        self.exporter.complained.connect(self.complained)
        self.exporter.progressed.connect(self.progressed)
        self.exporter.busy_changed.connect(self.busy_changed)
        self._pairing = PlugPairing(session, self)
        self._pairing.failed.connect(self.turned_down)
        self._pairing.paired.connect(self._tell_opened)
        self._pairing.busy_changed.connect(self.busy_changed)
        session.solved.connect(self._on_session_solved)
        session.examined.connect(self._on_session_examined)

    # --- opening

    def open_with_prompt(self, *, adds: bool = False) -> None:
        """Ask for files and open them."""
        files = prompts.open_files(self._window, self._start_folder())
        if files:
            self.open_files(files, adds=adds)

    def open_files(self, files: Sequence[Path], *, used_as: Half = Half.POCKET, adds: bool = False) -> None:
        """Open the first file in the place of what is open, or add to it; add the outlines of the others."""
        if not files or (not adds and not self._may_leave()):
            return
        self._ask_for(files[1:])
        self._used_as = used_as
        self._wish = _Wish(adds=adds and not self._session.state.is_empty, is_plug=self._lacks(used_as))
        self._tried = files[0]
        how = self._how_plug_is_read() if self._wish.is_plug else self._how()
        self.opener.open(files[0], used_as=used_as, how=how)

    def open_plug_with_prompt(self) -> None:
        """Ask for the drawing of the made plug of the leading pocket, and take the plug from it."""
        title = self.tr("Outline of the plug")
        files = prompts.open_files(self._window, self._start_folder(), title)
        if files:
            self._ask_for()
            self._wish = _Wish(adds=True, is_plug=True)
            self.opener.open(files[0], used_as=Half.PLUG, how=self._how_plug_is_read())

    def _how_plug_is_read(self) -> SettingsUsed:
        """As the drawing of its pocket, in the same unit; its layers have names of their own."""
        return replace(self.how_read(), layers=None)

    def _ask_for(self, others: Sequence[Path] = ()) -> None:
        """Something is to be opened now, and other files after it."""
        self._queue = list(others)
        self._is_turned_down = False

    @Slot()
    def _on_self_turned_down(self) -> None:
        self._is_turned_down = True

    @Slot()
    def _tell_opened(self) -> None:
        """What was complained of before is of the past, unless it is part of what was asked for."""
        if not self._is_turned_down:
            self.opened.emit()

    def _lacks(self, half: Half) -> bool:
        """Whether both halves of the leading pocket are made and its plug, which comes now, is not known."""
        lead = self._session.state.lead
        return half is Half.PLUG and lead is not None and lead.both_made and lead.made is None

    def paste(self) -> None:
        """Read the clipboard: files, or SVG or DXF text."""
        data: QMimeData | None = QGuiApplication.clipboard().mimeData()
        if data is None:  # while the owner of the clipboard is gone
            data = QMimeData()
        files = [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
        if files:
            self.open_files(files, adds=True)
        elif data.hasText() or data.hasFormat("image/svg+xml"):
            text = data.text() or bytes(data.data("image/svg+xml").data()).decode("utf-8", "replace")
            self.read_text(text)
        else:
            self.turned_down.emit(
                self.tr("The clipboard holds no outline; copy an SVG or DXF, or a file of that kind.")
            )

    def read_text(self, text: str, *, used_as: Half = Half.POCKET) -> None:
        """Read pasted or dropped text."""
        self._wish = _Wish(adds=not self._session.state.is_empty, is_plug=self._lacks(used_as))
        self._ask_for()
        self.opener.paste(text, used_as=used_as, how=self._how())

    def read_again(self, unit: Unit) -> None:
        """Read the drawing anew with another unit."""
        source = Path(self._session.state.source.path)
        if not self._session.state.source.path or not source.exists():
            self.turned_down.emit(
                self.tr("The drawing is not there any more; open it again to read it in another unit.")
            )
            return
        self.read_as(source, replace(self._session.state.settings, unit=unit))

    def readable_source(self) -> Path | None:
        """The drawing that can be read anew: the open one, or the one that could not be opened."""
        path = self._session.state.source.path
        source = Path(path) if path else self._tried if self._session.state.is_empty else None
        return source if source is not None and source.is_file() and not is_project(source) else None

    def how_read(self) -> SettingsUsed:
        """How the open drawing was read, or the next one will be."""
        return self._how() if self._session.state.is_empty else self._session.state.settings

    def read_as(self, path: Path, how: SettingsUsed) -> None:
        """Read a drawing in another way: the open one anew, or one that could not be opened."""
        self._wish = _Wish(rereads=not self._session.state.is_empty)
        self._ask_for()
        self.opener.open(path, how=how)

    def open_sample(self) -> None:
        """Open the sample, finished but for one check."""
        if not self._may_leave():
            return
        self._ask_for()
        from inlayfit.document.sample import sample_state  # heavy; not before it is needed

        try:
            state = sample_state(in_unit(State(), self._session.settings))
        except InlayfitError as error:
            self.turned_down.emit(core_error(error))
            return
        self._session.start(state, title=self.tr("Sample"))
        self._tell_opened()

    def _how(self) -> SettingsUsed:
        return settings_used(self._session.settings)

    def _start_folder(self) -> Path:
        for work in self.recent:
            if work.path.parent.is_dir():
                return work.path.parent
        return Path.home()

    def _may_leave(self) -> bool:
        """Whether the open work may go: it is saved, or the person lets it go."""
        if not self._session.is_modified:
            return True
        answer = prompts.unsaved_work(self._window, self._session.title or self.tr("this work"))
        if answer is Unsaved.SAVE:
            return self.save()
        return answer is Unsaved.DROP

    def may_close(self) -> bool:
        """Whether the window may close."""
        return self._may_leave()

    @Slot(object)
    def _on_opener_drawing_read(self, read: ReadDrawing) -> None:
        session, wish = self._session, self._wish
        template = template_fitting(session.settings, read.used_as)
        if wish.rereads:
            session.do(lambda s: edits.read_anew(s, read.imported, how=read.how, template=template))
        elif wish.adds and wish.is_plug:
            self._pairing.pair(read, template)
        elif wish.adds:
            path = read.source.path
            session.do(lambda s: edits.add_outlines(s, read.imported, template=template, drawing=path))
        else:
            start = in_unit(State(settings=read.how), session.settings)
            opened = edits.open_drawing(start, read.imported, source=read.source, template=template)
            name = Path(read.source.path).stem or self.tr("Pasted outlines")
            session.start(opened.state, title=name)
        if not (wish.adds and wish.is_plug):  # else it is still to be paired
            self._tell_opened()
        count = len(read.imported.outlines)
        name = Path(read.source.path).name or self.tr("the clipboard")
        what = counted(count, self.tr("1 outline"), self.tr("{0} outlines"))
        self.said.emit(self.tr("Read {0} from {1}").format(what, name))
        self._remember_unit(read)
        self._open_rest()

    def _remember_unit(self, read: ReadDrawing) -> None:
        """Remember a unit that was chosen for a drawing that states none, for its folder."""
        if read.how.unit is None or not read.source.path or read.imported.read.file_unit is not None:
            return
        try:
            remember_unit(Path(read.source.path), read.how.unit)
        except (OSError, InlayfitError):
            self.complained.emit(self.tr("The unit could not be remembered; you will be asked again."))

    @Slot(object)
    def _on_opener_project_read(self, read: ReadProject) -> None:
        if self._wish.adds:
            self.turned_down.emit(self.tr("A project cannot be added to other work; open it by itself."))
            return
        self._session.start(read.state, project=read.path)
        self._tell_opened()
        self.said.emit(self.tr("Opened {0}").format(read.path.name))
        self._check_source(read.state)
        self._open_rest()

    def _check_source(self, state: State) -> None:
        """Say if the drawing behind a project is another now; the project's outlines hold."""
        source = Path(state.source.path)
        if not state.source.path or not source.is_file():
            return
        if source_of(source) != state.source:
            words = self.tr("{0} was changed since; this work keeps the outlines as they were.")
            self.turned_down.emit(words.format(source.name))

    @Slot(str)
    def _on_opener_failed(self, text: str) -> None:
        self.turned_down.emit(text)
        self._open_rest()

    def _open_rest(self) -> None:
        if self._queue:
            first = self._queue.pop(0)
            self._wish = _Wish(adds=not self._session.state.is_empty)
            self.opener.open(first, used_as=self._used_as, how=self._how())

    # --- saving

    def save(self) -> bool:
        """Save to the project file, or ask where; False if nothing was saved."""
        if self._session.project is None:
            return self.save_as()
        return self._save_to(self._session.project)

    def save_as(self) -> bool:
        """Ask where, and save there."""
        start = self._start_folder() / f"{self._session.title or 'fit'}{SUFFIX}"
        path = prompts.save_project_as(self._window, start)
        return path is not None and self._save_to(path)

    def _save_to(self, path: Path) -> bool:
        try:
            save_project(self._session.state, path)
        except InlayfitError as error:
            self.complained.emit(core_error(error))
            return False
        self._session.mark_saved(path)
        self._remember(self._session.solution)
        self.said.emit(self.tr("Saved {0}").format(path.name))
        return True

    # --- recent work and recovery

    @Slot(object)
    def _on_session_solved(self, solution: Solution) -> None:
        if not solution.is_preview:
            self._remember(solution)

    @Slot()
    def _on_session_examined(self) -> None:
        """The workshop's findings are known now: the list says what the verdict says."""
        if not self._session.is_in_gesture:
            self._remember(self._session.solution)

    def _remember(self, solution: Solution) -> None:
        """Put the open work at the head of the recent list, once it is solved.

        The sample's drawing is nobody's work, and its folder no place to keep any.
        """
        state = self._session.state
        path = self._session.project or (Path(state.source.path) if state.source.path else None)
        if path is None or state.is_empty or solution.state is not state or is_shipped(path):
            return
        results = self._session.results
        problems = {i: a.problem for i, a in solution.solved.items() if a.problem}
        said = verdict(state, results, checks(state, results, problems))
        work = RecentWork(path.resolve(), said.headline, time.time(), small_picture(state))
        self.recent = with_work(self.recent, work)
        write_recent(self.recent, self._recent_file)
        self.recent_changed.emit(self.recent)

    def forget_recent(self) -> None:
        """Empty the list of recent work."""
        self._list_recent(())

    def restore_recent(self, works: Sequence[RecentWork]) -> None:
        """Take back works that were forgotten, behind what was opened since."""
        opened = {work.path for work in self.recent}
        self._list_recent((*self.recent, *(work for work in works if work.path not in opened)))

    def _list_recent(self, works: tuple[RecentWork, ...]) -> None:
        self.recent = works
        write_recent(works, self._recent_file)
        self.recent_changed.emit(works)

    def locate(self, missing: Path) -> None:
        """Ask where a missing file went, and open it."""
        files = prompts.open_files(self._window, self._start_folder())
        if files:
            self.recent = tuple(work for work in self.recent if work.path != missing)
            self.open_files(files[:1])

    def offer_recovery(self, found: Sequence[Recovery]) -> list[tuple[State, Recovery]]:
        """Ask about each recovery copy; answers the documents that windows of their own shall show."""
        others: list[tuple[State, Recovery]] = []
        for recovery in found:
            when = when_words(recovery.written_at)
            title, project = recovery.title or self.tr("untitled work"), recovery.project
            has_project = project is not None and project.exists()
            answer = prompts.recovery(self._window, title, when, has_project=has_project)
            if answer is Rescue.DISCARD:
                recovery.discard()
                continue
            if answer is Rescue.LATER:
                continue
            try:
                state = recovery.state()
            except InlayfitError as error:
                self.turned_down.emit(core_error(error))
                continue
            if answer is Rescue.SHOW_BOTH:
                others.append((state, recovery))
            else:
                self.recover(state, recovery)
        return others

    def recover(self, state: State, recovery: Recovery) -> None:
        """Open a recovered document as unsaved work of its project.

        The old copy goes only when this window has written its own; until then both would be needed.
        """
        title = recovery.title or self.tr("Recovered work")
        self._session.start(state, project=recovery.project, title=title, modified=True)
        self.recovered.emit(recovery)
        self.said.emit(self.tr("Recovered {0}; it is not saved yet").format(title))

    def cancel(self) -> None:
        """Stop long work."""
        self._queue = []
        self.opener.cancel()
        self._pairing.cancel()
        self.exporter.cancel()

    def close(self) -> None:
        """Stop for good."""
        for task in (self.opener, self._pairing, self.exporter):
            task.close()
