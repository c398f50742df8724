"""The window: sets the parts in their places and leads what one says to where it matters.

Parts show the session; this module shows what depends on the latest answer (map, loupe, verdict, checks)
and carries the few things that are not document state: which page, which overlay, where the pointer is.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QByteArray, QEvent, QPointF, QSettings, Qt, Slot
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QCloseEvent,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QGuiApplication,
    QKeyEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QMainWindow,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from inlayfit.app import theme
from inlayfit.app.actions import make_actions
from inlayfit.app.canvas.gap_map import GapMapView
from inlayfit.app.canvas.reading_text import spoken
from inlayfit.app.command_states import show_commands
from inlayfit.app.commands import Bench, handlers
from inlayfit.app.content import offer_for
from inlayfit.app.core_words import core
from inlayfit.app.documents import Documents
from inlayfit.app.first_size import take_room
from inlayfit.app.keyboard import move_on, press
from inlayfit.app.looks import system_theme, window_sheet
from inlayfit.app.map_link import MapLink
from inlayfit.app.menus import fill_menu_bar
from inlayfit.app.opening import ReadDrawing
from inlayfit.app.panels.checks_panel import ChecksPanel
from inlayfit.app.panels.empty_page import EmptyPage, RecentPanel
from inlayfit.app.panels.legend import Legend
from inlayfit.app.panels.map_overlays import OverlayButtons
from inlayfit.app.panels.notice import Notice
from inlayfit.app.panels.outlines_panel import OutlinesPanel
from inlayfit.app.panels.ruler_bar import RulerBar
from inlayfit.app.panels.sentence_bar import SentenceBar
from inlayfit.app.panels.side_panel import SidePanel
from inlayfit.app.panels.spot_panel import SpotPanel
from inlayfit.app.panels.status_strip import StatusStrip
from inlayfit.app.panels.verdict_bar import VerdictBar
from inlayfit.app.rereading import Rereading
from inlayfit.app.scene_source import SceneSource
from inlayfit.app.session import Change, Session
from inlayfit.app.words import counted, when_words
from inlayfit.document.edits import choose, set_unit
from inlayfit.document.sentence import sentence
from inlayfit.document.state import State
from inlayfit.document.verdict import Check, checks, verdict
from inlayfit.finding import Severity
from inlayfit.fit.result import Half

_LOW_PX, _NARROW_PX = 760, 1200
_SIDE_WIDTH = 408
_NARROW_SIDE_WIDTH = 320


class MainWindow(QMainWindow):
    """The bench window on one session."""

    def __init__(
        self,
        session: Session,
        *,
        keep: QSettings | None = None,
        recent: Path | None = None,
        settings_file: Path | None = None,
    ) -> None:
        super().__init__()
        self.settings_file = settings_file
        self.session = session
        self._keep = keep
        self._scenes = SceneSource()
        self.checks: tuple[Check, ...] = ()
        self._was_open: bool | None = None
        self._dragged = ""
        self.documents = Documents(session, self, recent=recent)
        self._take_theme()
        self._make_parts()
        self._lay_out()
        self.actions_by_name = make_actions(self, handlers(self._bench()))
        self.recent_menu = fill_menu_bar(self.menuBar(), self.actions_by_name)
        self.recent_menu.aboutToShow.connect(self._fill_recent_menu)
        self._connect()
        self.setMinimumSize(1000, 640)
        self._restore_placement()
        self._take_settings()
        self._show_recent()
        self._show_all()

    # --- building

    def _make_parts(self) -> None:
        session = self.session
        self.sentence = SentenceBar(session)
        self.verdict_bar = VerdictBar()
        self.map = GapMapView()
        self.overlays = OverlayButtons(self.map)
        self.legend = Legend()
        self.empty = EmptyPage()
        self.recent_panel = RecentPanel()
        self.spot = SpotPanel(session)
        self.checks_panel = ChecksPanel()
        self.outlines = OutlinesPanel(session)
        self.ruler = RulerBar(session)
        self.strip = StatusStrip()
        self.notice = Notice()
        self.rereading = Rereading(self, session, self.documents)
        self.map_link = MapLink(self.map, session, self.documents, self.strip, self.spot)

    def _bench(self) -> Bench:
        return Bench(
            window=self,
            session=self.session,
            documents=self.documents,
            view=self.map,
            side=self.side,
            spot=self.spot,
            checks=self.checks_panel,
            outlines=self.outlines,
            sentence=self.sentence,
            strip=self.strip,
            notice=self.notice,
            settings_file=self.settings_file,
            next_panel=self.next_panel,
            rereading=self.rereading,
        )

    def _lay_out(self) -> None:
        self.side = SidePanel()
        self.spot_tab = self.side.add_page(self.tr("Spot"), self.spot)
        self.checks_tab = self.side.add_page(self.tr("Checks"), self.checks_panel)
        self.outlines_tab = self.side.add_page(self.tr("Outlines"), self.outlines)
        canvas = QWidget()
        column = QVBoxLayout(canvas)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.map, 1)
        column.addWidget(self.legend)
        self._split = QSplitter(Qt.Orientation.Horizontal)
        self._split.setChildrenCollapsible(False)
        self._split.setHandleWidth(1)
        self._split.addWidget(canvas)
        self._split.addWidget(self.side)
        self._split.setStretchFactor(0, 1)
        self._split.setSizes([1000, _SIDE_WIDTH])
        work = QWidget()
        work_column = QVBoxLayout(work)
        work_column.setContentsMargins(0, 0, 0, 0)
        work_column.setSpacing(0)
        for part, stretch in ((self.verdict_bar, 0), (self._split, 1), (self.ruler, 0)):
            work_column.addWidget(part, stretch)
        start = QWidget()
        row = QHBoxLayout(start)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.empty, 1)
        self.recent_panel.setFixedWidth(_SIDE_WIDTH)
        row.addWidget(self.recent_panel)
        self.pages = QStackedWidget()
        self.pages.addWidget(start)
        self.pages.addWidget(work)
        self.side.setMinimumWidth(_NARROW_SIDE_WIDTH)
        body = QWidget()
        outer = QVBoxLayout(body)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self.sentence)
        outer.addWidget(self.notice)
        outer.addWidget(self.pages, 1)
        outer.addWidget(self.strip)
        self.setCentralWidget(body)
        self.setAcceptDrops(True)

    def _connect(self) -> None:
        session, documents = self.session, self.documents
        session.state_changed.connect(self._on_session_state_changed)
        session.solved.connect(lambda _solution: self._show_all())
        session.stale_changed.connect(self._on_session_stale_changed)
        session.project_changed.connect(self._show_title)
        session.undo_stack.indexChanged.connect(self._on_undo_stack_index_changed)
        session.settings_changed.connect(lambda _settings: self._take_settings())
        session.refused.connect(self.notice.complain)
        session.announced.connect(self._on_session_announced)
        session.solve_failed.connect(self.notice.complain)
        self.overlays.rough.toggled.connect(session.preview_passes)
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._take_theme)
        documents.said.connect(self._on_documents_said)
        documents.complained.connect(self.notice.complain)
        documents.progressed.connect(self._on_documents_progressed)
        documents.busy_changed.connect(self._on_documents_busy_changed)
        documents.recent_changed.connect(lambda _works: self._show_recent())
        self.strip.cancel_asked.connect(documents.cancel)
        self.strip.unit_asked.connect(lambda unit: session.do(lambda state: set_unit(state, unit)))
        self.sentence.checks_asked.connect(lambda: self._turn_to(self.checks_panel))
        for part in (self.verdict_bar, self.checks_panel):
            part.show_asked.connect(self.show_check)
            part.fix_asked.connect(self.fix_check)
        self.empty.open_asked.connect(documents.open_with_prompt)
        self.empty.sample_asked.connect(documents.open_sample)
        self.empty.size_asked.connect(self.actions_by_name["type_size"].trigger)
        documents.opener.drawing_read.connect(self._on_opener_drawing_read)
        self.recent_panel.work_asked.connect(lambda path: documents.open_files([path]))
        self.recent_panel.missing_asked.connect(documents.locate)
        self.recent_panel.clear_asked.connect(documents.forget_recent)

    # --- showing

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        before, after = change.before, change.after
        if before.outlines is not after.outlines or before.chosen != after.chosen or not change.is_preview:
            self._show_all()

    @Slot(int)
    def _on_undo_stack_index_changed(self, _index: int) -> None:
        """What can be undone is known only now: states are swapped before the stack counts the step."""
        self._show_commands(self.session.shown)

    @Slot(object)
    def _on_opener_drawing_read(self, read: ReadDrawing) -> None:
        self._scenes.take_marks(read.source, read.marks)
        self._show_all()

    def _show_all(self) -> None:
        state = self.session.shown
        is_open = not self.session.state.is_empty
        self.pages.setCurrentIndex(1 if is_open else 0)
        self.sentence.setEnabled(True)
        self._show_results(state)
        self._show_title()
        self._show_commands(state)
        self.strip.show_unit(state.unit)
        self.map.set_unit(state.unit)
        if is_open != self._was_open:
            self._was_open = is_open
            (self.map if is_open else self.empty.open_button).setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_results(self, state: State) -> None:
        session, solution = self.session, self.session.solution
        results = session.results
        problems = {i: a.problem for i, a in solution.solved.items() if a.problem}
        self.checks = checks(state, results, problems)
        scene = self._scenes.scene(state, solution)
        self.map.set_scene(scene)
        lead = state.chosen[0] if state.chosen else None
        self.map.set_chosen_fitting(lead)
        self.map.set_chosen_outlines([i for i in state.chosen if scene.fitting(i) is None])
        self.map.set_stale(session.is_stale)
        shown = scene.fitting(lead)
        if shown is not None and self.map.chosen_spot is None and shown.spots:
            self.map.set_chosen_spot(session.spot, into_view=False)
        self.spot.show_fitting(shown)
        self.legend.show_fitting(shown, state.unit, is_stale=session.is_stale)
        self.verdict_bar.show_verdict(verdict(state, results, self.checks, core), is_stale=session.is_stale)
        names = {o.id: o.name or o.id for o in state.outlines} if len(state.chosen) > 1 else {}
        if not solution.is_preview or self.checks_panel.isVisible():
            self.checks_panel.show_checks(self.checks, names)
        self._show_open_checks()
        if state.lead is not None:
            self.map.set_summary(sentence(state.lead, state.unit, core))

    def _show_open_checks(self) -> None:
        still = [check.finding for check in self.checks if not check.finding.fixed]
        counts = {severity: sum(f.severity is severity for f in still) for severity in Severity}
        words = counted(len(still), self.tr("1 check open"), self.tr("{0} checks open"))
        if not still:
            words = self.tr("No checks open")
        if self.session.state.is_empty:
            words = self.tr("No checks yet")
        hint = [
            (Severity.BLOCK, self.tr("{0} blocks")),
            (Severity.WARN, self.tr("{0} to look at")),
            (Severity.NOTE, counted(counts[Severity.NOTE], self.tr("1 note"), self.tr("{0} notes"))),
        ]
        said = [words_of.format(counts[s]) for s, words_of in hint if counts[s]]
        self.sentence.show_open_checks(words, ", ".join(said))
        tab = self.tr("Checks") + (f"  {len(still)}" if still else "")
        self.checks_tab.setText(tab)

    @Slot(bool)
    def _on_session_stale_changed(self, is_stale: bool) -> None:
        self.map.set_stale(is_stale)
        if not is_stale:
            self._announce()

    @Slot(str)
    def _on_session_announced(self, text: str) -> None:
        """Let a screen reader say it when it has nothing better to say."""
        if QAccessible.isActive():
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, text))

    def _announce(self) -> None:
        """Say the result, politely, once it is exact."""
        state = self.session.state
        lead = self.session.solution.lead
        if lead is None or lead.gap.is_empty:
            return
        self.session.announced.emit(self.tr("Tightest {0}").format(spoken(lead.gap.min_mm, state.unit)))

    def _show_title(self) -> None:
        session = self.session
        name = session.title or self.tr("New fit")
        self.setWindowTitle(f"{name}[*] · Inlayfit")
        self.setWindowModified(session.is_modified)
        if session.state.is_empty and not session.is_modified:
            self.strip.show_saved(self.tr("Nothing to save"))
        else:
            self.strip.show_saved(self.tr("Not saved") if session.is_modified else self._saved_words())

    def _saved_words(self) -> str:
        return self.tr("Saved") if self.session.project is not None else self.tr("Not changed")

    def _show_commands(self, state: State) -> None:
        show_commands(self.actions_by_name, self.session, state)

    def _show_recent(self) -> None:
        works = self.documents.recent
        self.recent_panel.show_works(works, when=[when_words(work.opened_at) for work in works])

    def _fill_recent_menu(self) -> None:
        self.recent_menu.clear()
        for work in self.documents.recent:
            action = self.recent_menu.addAction(work.path.name)
            action.setToolTip(str(work.path))
            action.setEnabled(work.path.exists())
            action.triggered.connect(lambda _=False, p=work.path: self.documents.open_files([p]))
        if not self.documents.recent:
            self.recent_menu.addAction(self.tr("Nothing yet")).setEnabled(False)

    @Slot()
    def _take_theme(self) -> None:
        """Colours as the settings or the system say."""
        wanted = self.session.settings.text("theme")
        of = theme.Theme(wanted) if wanted != "system" else system_theme()
        app = QApplication.instance()
        if isinstance(app, QApplication) and app.styleSheet() != theme.style_sheet(of):
            theme.apply(app, of)
        if self.styleSheet() != window_sheet(of):
            self.setStyleSheet(window_sheet(of))

    def _take_settings(self) -> None:
        """Everything that the settings say about the window."""
        self._take_theme()
        self._show_commands(self.session.shown)
        self.map.set_wheel_scrolls(self.session.settings.text("wheel") == "scroll")

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.LanguageChange:
            self._show_all()

    # --- leading about

    def _turn_to(self, page: QWidget) -> None:
        self.side.show_page(page)

    @Slot(object)
    def show_check(self, check: Check) -> None:
        """Lead to a check's place: the nearest tight spot, or the place itself."""
        place = check.finding.place_mm
        if place is None:
            return
        state = self.session.state
        if check.outline_id and (not state.chosen or state.chosen[0] != check.outline_id):
            others = [i for i in state.chosen if i != check.outline_id]
            self.session.do(lambda s: choose(s, [check.outline_id, *others]))
        self.map_link.show_place(place)
        self.side.show_page(self.spot)
        self.map.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(object)
    def fix_check(self, check: Check) -> None:
        """Do a check's fix."""
        if check.fix is not None:
            self.session.do(check.fix.apply)
        else:
            self.rereading.ask(check.finding)

    def next_panel(self, step: int = 1) -> None:
        """Move the keyboard to the next part of the window that can take it."""
        if self.session.state.is_empty:
            stations: list[QWidget] = [self.sentence, self.empty, self.recent_panel, self.strip]
        else:
            stations = [
                self.sentence, self.verdict_bar, self.map, self.side, self.ruler, self.strip,
            ]  # fmt: skip
        move_on(stations, step)

    # --- documents speak

    @Slot(str)
    def _on_documents_said(self, text: str) -> None:
        self.notice.dismiss()
        self.strip.say(text)

    @Slot(float, str)
    def _on_documents_progressed(self, fraction: float, note: str) -> None:
        self.strip.show_progress_soon(fraction, note)

    @Slot(bool)
    def _on_documents_busy_changed(self, busy: bool) -> None:
        if not busy:
            self.strip.show_progress(None)

    # --- drops outside the map

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        offer = offer_for(event.mimeData())
        if offer is not None:
            self._dragged = offer.sentence
            self.empty.halves.hover(self._half_under(event.position()), self._dragged)
            event.acceptProposedAction()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        self.empty.halves.hover(self._half_under(event.position()), self._dragged)

    def dragLeaveEvent(self, _event: QDragLeaveEvent) -> None:
        self.empty.halves.hover(None)

    def dropEvent(self, event: QDropEvent) -> None:
        half = self._half_under(event.position()) or Half.POCKET
        self.empty.halves.hover(None)
        data = event.mimeData()
        files = [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
        event.acceptProposedAction()
        self.map_link.take_drop(files, "" if files else data.text(), half)

    def _half_under(self, at: QPointF) -> Half | None:
        """The half of the empty page below the pointer; a drop beside it is a pocket."""
        if not self.empty.isVisible():
            return None
        inside = self.empty.halves.mapFrom(self, at.toPoint())
        return Half.PLUG if inside.x() > self.empty.halves.width() / 2 else Half.POCKET

    # --- placement

    def _restore_placement(self) -> None:
        geometry = None if self._keep is None else self._keep.value("geometry")
        if not (isinstance(geometry, QByteArray) and self.restoreGeometry(geometry)):
            take_room(self, of_screen=self._keep is not None)
        split = None if self._keep is None else self._keep.value("split")
        if isinstance(split, QByteArray):
            self._split.restoreState(split)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.ruler.set_compact(self.height() < _LOW_PX or self.width() < _NARROW_PX)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.session.is_in_gesture:
            self.session.cancel_gesture()
        elif not (event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and press(self.focusWidget())):
            super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:
        if not self.documents.may_close():
            event.ignore()
            return
        if self._keep is not None:
            self._keep.setValue("geometry", self.saveGeometry())
            self._keep.setValue("split", self._split.saveState())
        self.documents.close()
        self.session.close()
        event.accept()
