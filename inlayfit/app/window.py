"""The window: its frame, its menus, and the page that stands there before anything is open.

The work has a page of its own (`inlayfit.app.work_page`). This module carries the few things that are not
document state: which page, what hovers over it, where the window stands on the screen.

A window shows itself before anything heavy is loaded, so neither this module nor what it imports may stand on
numpy, shapely or the like (a test). The bench, through which all of that comes, is the one late import:
`_furnish` makes it, step by step, when it is loaded. What is asked for until then waits with `when_ready`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QEvent, QPointF, QSettings, Qt, QTimer, Signal, Slot
from PySide6.QtGui import (
    QCloseEvent,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QGuiApplication,
    QKeyEvent,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QApplication, QHBoxLayout, QMainWindow, QStackedWidget, QVBoxLayout, QWidget

from inlayfit.app import theme
from inlayfit.app.actions import TABLE, make_actions
from inlayfit.app.command_states import show_commands
from inlayfit.app.core_words import core
from inlayfit.app.files.recent import RecentWork, read_recent, recent_file
from inlayfit.app.first_size import take_room
from inlayfit.app.keyboard import move_along, move_on, press
from inlayfit.app.loading import Loading
from inlayfit.app.looks import system_theme, window_sheet
from inlayfit.app.menus import fill_menu_bar
from inlayfit.app.panels.empty_page import EmptyPage, RecentPanel
from inlayfit.app.panels.notice import Notice, Until
from inlayfit.app.panels.sentence_preview import SentencePreview
from inlayfit.app.panels.status_strip import StatusStrip
from inlayfit.app.session import Change, Session
from inlayfit.app.words import when_words
from inlayfit.document.edits import set_unit
from inlayfit.document.new_work import template_fitting
from inlayfit.document.sentence import sentence
from inlayfit.document.settings import Settings
from inlayfit.fit.spec import Half

if TYPE_CHECKING:
    from inlayfit.app.bench import Bench
    from inlayfit.app.canvas.drop_halves import DropOffer
    from inlayfit.app.files.documents import Documents
    from inlayfit.app.panels.sentence_bar import SentenceBar
    from inlayfit.app.work_page import WorkPage

_LOW_PX, _NARROW_PX = 760, 1200
_RECENT_WIDTH_PX = 408


class MainWindow(QMainWindow):
    """The window on one session.

    Signals:
        first_painted(): the first picture of it is on the screen.
    """

    first_painted = Signal()

    def __init__(
        self,
        session: Session,
        *,
        keep: QSettings | None = None,
        recent: Path | None = None,
        settings_file: Path | None = None,
    ) -> None:
        super().__init__()
        self.session = session
        self._keep = keep
        self._settings_file = settings_file
        self._recent_file = recent or recent_file()
        self._recent = read_recent(self._recent_file)
        self._bench: Bench | None = None
        self._furnishing = self._furnish()
        self._handlers: Mapping[str, Callable[[], object]] = {}
        self._wishes: list[Callable[[Bench], object]] = []
        self._loading: Loading | None = None
        self._awaits_work = False
        self._was_open: bool | None = None
        self._dragged: DropOffer | None = None
        self._take_theme()
        self._lay_out()
        does = {command.name: self._does(command.name) for command in TABLE}
        self.actions_by_name = make_actions(self, does | {"quit": self.close})
        self.recent_menu = fill_menu_bar(self.menuBar(), self.actions_by_name)
        self.recent_menu.aboutToShow.connect(self._fill_recent_menu)
        self._connect()
        self.setMinimumSize(1000, 640)
        self._restore_placement()
        self._show_recent(self._recent)
        self._show_all()

    # --- building

    def _lay_out(self) -> None:
        self.preview = SentencePreview()
        self.notice = Notice()
        self.empty = EmptyPage()
        self.recent_panel = RecentPanel()
        self.recent_panel.setFixedWidth(_RECENT_WIDTH_PX)
        self.strip = StatusStrip()
        self._start = QWidget()
        row = QHBoxLayout(self._start)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.empty, 1)
        row.addWidget(self.recent_panel)
        self._waiting = QWidget()
        self.pages = QStackedWidget()
        self.pages.addWidget(self._start)
        self.pages.addWidget(self._waiting)
        body = QWidget()
        self._parts = outer = QVBoxLayout(body)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self.preview)
        outer.addWidget(self.notice)
        outer.addWidget(self.pages, 1)
        outer.addWidget(self.strip)
        self.setCentralWidget(body)
        self.setAcceptDrops(True)

    def _connect(self) -> None:
        session = self.session
        session.state_changed.connect(self._on_session_state_changed)
        session.project_changed.connect(self._show_title)
        session.settings_changed.connect(self._on_session_settings_changed)
        for refused in (session.refused, session.solve_failed):
            refused.connect(lambda text: self.notice.complain(text, Until.DONE))
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._take_theme)
        self.strip.unit_asked.connect(lambda unit: session.do(lambda state: set_unit(state, unit)))
        self.empty.open_asked.connect(self.actions_by_name["open"].trigger)
        self.empty.sample_asked.connect(self.actions_by_name["sample"].trigger)
        self.empty.size_asked.connect(self.actions_by_name["type_size"].trigger)
        self.recent_panel.work_asked.connect(self._open)
        self.recent_panel.missing_asked.connect(self._on_recent_panel_missing_asked)
        self.recent_panel.clear_asked.connect(self._on_recent_panel_clear_asked)

    # --- the bench

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self._bench is None and self._loading is None:
            self._loading = Loading(self._furnishing, self)
            self._loading.failed.connect(self._on_loading_failed)
            self.first_painted.connect(self._loading.start)
            QTimer.singleShot(0, self.first_painted.emit)

    @property
    def bench(self) -> Bench:
        """What the window does its work with; made at once if it is asked for before it is loaded."""
        if self._bench is None:
            for _step in self._furnishing:
                pass
        assert self._bench is not None
        return self._bench

    @property
    def documents(self) -> Documents:
        """How documents come and go."""
        return self.bench.documents

    @property
    def sentence(self) -> SentenceBar:
        """The fit sentence with its boxes."""
        return self.bench.sentence

    @property
    def work(self) -> WorkPage:
        """The page with the work."""
        return self.bench.work

    def when_ready(self, do: Callable[[Bench], object]) -> None:
        """Do something with the bench: now, or as soon as it is there."""
        if self._bench is not None:
            do(self._bench)
        else:
            self._wishes.append(do)

    def _wish(self, do: Callable[[Bench], object]) -> None:
        """A person wants something of the bench: nothing is lost, and a wait that is felt is shown."""
        if self._bench is None:
            self.strip.show_progress_soon(0.0)
        self.when_ready(do)

    def await_work(self, name: str) -> None:
        """A drawing is on its way: until it is there, or cannot be opened, nobody is invited to drop one."""
        self._awaits_work = True
        self.strip.say(self.tr("Opening {0}").format(name))
        self._show_all()

    def _furnish(self) -> Iterator[None]:
        """Make the bench and put it in its place, in steps too short to be felt.

        The one import that comes late, because it is heavy.
        """
        from inlayfit.app.bench import Bench
        from inlayfit.app.panels.sentence_bar import SentenceBar
        from inlayfit.app.panels.spot_panel import SpotPanel

        sentence_bar = SentenceBar(self.session)
        yield
        spot = SpotPanel(self.session)
        yield
        bench = Bench(
            self,
            self.session,
            sentence=sentence_bar,
            spot=spot,
            strip=self.strip,
            notice=self.notice,
            next_panel=self.next_panel,
            settings_file=self._settings_file,
            recent_file=self._recent_file,
        )
        yield
        self._put_in(bench)

    def _put_in(self, bench: Bench) -> None:
        """From now on the window has its bench."""
        from inlayfit.app.commands import handlers

        self._bench = bench
        self._handlers = handlers(bench)
        self._connect_documents(bench.documents)
        bench.sentence.hide()
        self._parts.insertWidget(0, bench.sentence)
        self.pages.addWidget(bench.work)
        split = None if self._keep is None else self._keep.value("split")
        if isinstance(split, QByteArray):
            bench.work.split.restoreState(split)
        self._take_compactness()
        bench.show_icons(self.actions_by_name)
        self._show_all()
        self._grant_wishes(bench)

    def _grant_wishes(self, bench: Bench) -> None:
        if self._wishes:
            self.strip.show_progress(None)
        while self._wishes:
            self._wishes.pop(0)(bench)

    def _connect_documents(self, documents: Documents) -> None:
        documents.said.connect(self._on_documents_said)
        documents.complained.connect(lambda text: self.notice.complain(text, Until.DONE))
        documents.turned_down.connect(lambda text: self.notice.complain(text, Until.OPENED))
        documents.opened.connect(lambda: self.notice.settle(Until.DONE, Until.OPENED))
        documents.progressed.connect(self.strip.show_progress_soon)
        documents.busy_changed.connect(self._on_documents_busy_changed)
        documents.recent_changed.connect(self._show_recent)
        self.strip.cancel_asked.connect(documents.cancel)

    @Slot(object)
    def _on_loading_failed(self, error: Exception) -> None:
        self.strip.show_progress(None)
        words = self.tr("The program is not complete ({0}); install it again.")
        self.notice.complain(words.format(error))

    def _does(self, name: str) -> Callable[[], None]:
        """The handler of a command."""
        return lambda: self._wish(lambda _bench: self._handlers[name]())

    def _open(self, path: Path) -> None:
        self._wish(lambda bench: bench.documents.open_files([path]))

    @Slot(object)
    def _on_recent_panel_missing_asked(self, path: Path) -> None:
        self._wish(lambda bench: bench.documents.locate(path))

    @Slot()
    def _on_recent_panel_clear_asked(self) -> None:
        self._wish(self._forget_recent)

    def _forget_recent(self, bench: Bench) -> None:
        """Empty the list, with a way back: Enter on its button may have been meant for a row."""
        documents, works = bench.documents, bench.documents.recent
        documents.forget_recent()
        words = self.tr("The list of recent work is empty now. No file was deleted.")
        self.notice.offer(words, lambda: self._restore_recent(works))
        self.notice.offer_button.setFocus()

    def _restore_recent(self, works: tuple[RecentWork, ...]) -> None:
        self.documents.restore_recent(works)
        self.recent_panel.rows[0].setFocus()

    # --- showing

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        if not change.is_of_numbers:
            self._show_all()

    def _show_all(self) -> None:
        state = self.session.shown
        is_open = not self.session.state.is_empty
        self._awaits_work = self._awaits_work and not is_open
        closed = self._waiting if self._awaits_work else self._start
        self.pages.setCurrentWidget(self.work if is_open else closed)
        self._show_sentence(is_open=is_open)
        self._show_title()
        show_commands(self.actions_by_name, self.session, state)
        self.strip.show_unit(state.unit)
        if is_open != self._was_open:
            self._was_open = is_open
            focus = self.work.map if is_open else self.empty.open_button
            focus.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_sentence(self, *, is_open: bool) -> None:
        """The sentence with its boxes once there is work; until then what it will say."""
        if not is_open:
            session = self.session
            lead = template_fitting(session.settings, Half.POCKET)
            self.preview.say(sentence(lead, session.shown.unit, core))
        self.preview.setVisible(not is_open)
        if self._bench is not None:
            self._bench.sentence.setVisible(is_open)

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

    @Slot(object)
    def _show_recent(self, works: tuple[RecentWork, ...]) -> None:
        self._recent = works
        self.recent_panel.show_works(works, when=[when_words(work.opened_at) for work in works])

    def _fill_recent_menu(self) -> None:
        self.recent_menu.clear()
        for work in self._recent:
            action = self.recent_menu.addAction(work.path.name)
            action.setToolTip(str(work.path))
            action.setEnabled(work.path.exists())
            action.triggered.connect(lambda _=False, p=work.path: self._open(p))
        if not self._recent:
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
        if self._bench is not None:
            self._bench.show_icons(self.actions_by_name)

    @Slot(object)
    def _on_session_settings_changed(self, _settings: Settings) -> None:
        self._take_theme()
        self._show_all()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.LanguageChange:
            self._show_all()

    # --- leading about

    def next_panel(self, step: int = 1) -> None:
        """Move the keyboard to the next part of the window that can take it."""
        head = [] if self.session.state.is_empty else [self.sentence]
        move_on([*head, self.notice, *self._between()], step)

    def focusNextPrevChild(self, forwards: bool) -> bool:
        """Tab: along the lines as one reads, whenever the parts were made."""
        is_empty = self.session.state.is_empty
        head = [] if is_empty else [self.sentence.body, self.sentence.checks_button]
        went = move_along([*head, self.notice, *self._between()], 1 if forwards else -1)
        return went or super().focusNextPrevChild(forwards)

    def _between(self) -> list[QWidget]:
        """The parts from below the notice to the bottom."""
        is_empty = self.session.state.is_empty
        return [*([self.empty, self.recent_panel] if is_empty else self.work.stations), self.strip]

    # --- documents speak

    @Slot(str)
    def _on_documents_said(self, text: str) -> None:
        self.notice.settle(Until.DONE)
        self.strip.say(text)

    @Slot(bool)
    def _on_documents_busy_changed(self, busy: bool) -> None:
        if not busy:
            self.strip.show_progress(None)
            if self._awaits_work:
                self._awaits_work = False
                self._show_all()

    # --- drops outside the map

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        from inlayfit.app.files.content import offer_for  # not before something is dragged

        self._dragged = offer_for(event.mimeData())
        self.dragMoveEvent(event)

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        from inlayfit.app.canvas.drop_halves import answer  # not before something is dragged

        if self._dragged is not None:
            self.empty.halves.hover(self._half_under(event.position()), self._dragged)
            answer(event, self._dragged)

    def dragLeaveEvent(self, _event: QDragLeaveEvent) -> None:
        self._end_drag()

    def dropEvent(self, event: QDropEvent) -> None:
        from inlayfit.app.canvas.drop_halves import DropOffer, answer  # not before something is dropped

        half, offer = self._half_under(event.position()) or Half.POCKET, self._dragged
        self._end_drag()
        data = event.mimeData()
        files = [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
        text = "" if files else data.text()
        answer(event, offer or DropOffer())
        if offer is None or not offer.is_refused:
            self._wish(lambda bench: bench.work.map_link.take_drop(files, text, half))

    def _end_drag(self) -> None:
        offer, self._dragged = self._dragged, None
        self.empty.halves.hover(None)
        if offer is not None and offer.is_refused:
            self.notice.complain(offer.sentence, Until.OPENED)

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

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._take_compactness()

    def _take_compactness(self) -> None:
        if self._bench is not None:
            is_small = self.height() < _LOW_PX or self.width() < _NARROW_PX
            self._bench.work.ruler.set_compact(is_small)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.session.is_in_gesture:
            self.session.cancel_gesture()
        elif event.key() == Qt.Key.Key_Escape and self.notice.text:
            self.notice.dismiss()
        elif not (event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and press(self.focusWidget())):
            super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:
        if self._bench is not None and not self._bench.documents.may_close():
            event.ignore()
            return
        if self._keep is not None:
            self._keep.setValue("geometry", self.saveGeometry())
            if self._bench is not None:
                self._keep.setValue("split", self._bench.work.split.saveState())
        if self._loading is not None:
            self._loading.close()
        if self._bench is not None:
            self._bench.close()
        self.session.close()
        event.accept()
