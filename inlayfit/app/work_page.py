"""The page with the work: verdict, gap map, loupe, checks, outlines and ruler in their places.

It shows what depends on the latest answer, and leads what one part says to where it matters. Its parts know
the session and not each other.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QSplitter, QVBoxLayout, QWidget

from inlayfit.app.answers.scene_source import SceneSource
from inlayfit.app.answers.solution import Solution
from inlayfit.app.canvas.gap_map import GapMapView
from inlayfit.app.canvas.reading_text import spoken
from inlayfit.app.core_words import core
from inlayfit.app.files.documents import Documents
from inlayfit.app.files.opening import ReadDrawing
from inlayfit.app.files.rereading import Rereading
from inlayfit.app.map_link import MapLink
from inlayfit.app.pace import FRAME_MS, Pace
from inlayfit.app.panels.checks_panel import ChecksPanel
from inlayfit.app.panels.late_page import LatePage
from inlayfit.app.panels.legend import Legend
from inlayfit.app.panels.map_overlays import OverlayButtons
from inlayfit.app.panels.outlines_panel import OutlinesPanel
from inlayfit.app.panels.ruler_bar import RulerBar
from inlayfit.app.panels.sentence_bar import SentenceBar
from inlayfit.app.panels.side_panel import SidePanel
from inlayfit.app.panels.spot_panel import SpotPanel
from inlayfit.app.panels.status_strip import StatusStrip
from inlayfit.app.panels.turns_panel import TurnsPanel
from inlayfit.app.panels.verdict_bar import VerdictBar
from inlayfit.app.panels.workshop_panel import WorkshopPanel
from inlayfit.app.session import Change, Session
from inlayfit.app.words import counted
from inlayfit.document.edits import choose
from inlayfit.document.sentence import sentence
from inlayfit.document.state import State
from inlayfit.document.verdict import Check, checks, verdict
from inlayfit.finding import Severity

SIDE_WIDTH_PX = 408
_NARROW_SIDE_WIDTH_PX = 380
_MAP_WIDTH_PX = 1000


class WorkPage(QWidget):
    """The page on one session."""

    def __init__(
        self,
        session: Session,
        documents: Documents,
        rereading: Rereading,
        *,
        sentence_bar: SentenceBar,
        spot: SpotPanel,
        strip: StatusStrip,
    ) -> None:
        super().__init__()
        self._session = session
        self._rereading = rereading
        self._sentence_bar = sentence_bar
        self.spot = spot
        self._strip = strip
        self._searches = False
        self._reading = Pace(self._show_words, parent=self)
        self._looking = Pace(self._show_spot, every_ms=2 * FRAME_MS, parent=self)
        self._scenes = SceneSource()
        self.checks: tuple[Check, ...] = ()
        self._make_parts()
        self.map_link = MapLink(self.map, session, documents, strip, self.spot)
        self._lay_out()
        self._connect(documents, strip)
        self._take_settings()
        self._show_all()

    # --- building

    def _make_parts(self) -> None:
        session = self._session
        self.verdict_bar = VerdictBar()
        self.map = GapMapView()
        self.overlays = OverlayButtons(self.map)
        self.legend = Legend()
        self.turns = TurnsPanel(session)
        self.checks_panel = ChecksPanel(foot=self.turns)
        self.outlines = OutlinesPanel(session)
        self.workshop_page = LatePage(lambda: WorkshopPanel(session))
        self.ruler = RulerBar(session)

    def _lay_out(self) -> None:
        self.side = SidePanel()
        self.spot_tab = self.side.add_page(self.tr("Spot"), self.spot)
        self.checks_tab = self.side.add_page(self.tr("Checks"), self.checks_panel)
        self.outlines_tab = self.side.add_page(self.tr("Outlines"), self.outlines)
        self.workshop_tab = self.side.add_page(self.tr("Workshop"), self.workshop_page)
        self.side.setMinimumWidth(_NARROW_SIDE_WIDTH_PX)
        canvas = QWidget()
        column = QVBoxLayout(canvas)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.map, 1)
        column.addWidget(self.legend)
        self.split = QSplitter(Qt.Orientation.Horizontal)
        self.split.setChildrenCollapsible(False)
        self.split.setHandleWidth(1)
        self.split.addWidget(canvas)
        self.split.addWidget(self.side)
        self.split.setStretchFactor(0, 1)
        self.split.setSizes([_MAP_WIDTH_PX, SIDE_WIDTH_PX])
        page = QVBoxLayout(self)
        page.setContentsMargins(0, 0, 0, 0)
        page.setSpacing(0)
        for part, stretch in ((self.verdict_bar, 0), (self.split, 1), (self.ruler, 0)):
            page.addWidget(part, stretch)

    def _connect(self, documents: Documents, strip: StatusStrip) -> None:
        session = self._session
        session.state_changed.connect(self._on_session_state_changed)
        session.solved.connect(self._on_session_solved)
        session.examined.connect(self._reading.now)
        session.stale_changed.connect(self._on_session_stale_changed)
        session.settings_changed.connect(lambda _settings: self._take_settings())
        session.search_progressed.connect(self._on_session_search_progressed)
        strip.cancel_asked.connect(session.stop_search)
        self.spot.seat.other_drawing_asked.connect(documents.open_plug_with_prompt)
        self.spot.stack.bed_asked.connect(self._sentence_bar.ask_for_glue)
        documents.opener.drawing_read.connect(self._on_opener_drawing_read)
        self.overlays.rough.toggled.connect(session.preview_passes)
        self._sentence_bar.checks_asked.connect(lambda: self.side.go_to_page(self.checks_panel))
        for part in (self.verdict_bar, self.checks_panel):
            part.show_asked.connect(self.show_check)
            part.fix_asked.connect(self.fix_check)

    @property
    def workshop(self) -> WorkshopPanel:
        """What is on the page of the workshop."""
        return self.workshop_page.content

    @property
    def stations(self) -> list[QWidget]:
        """Where the keyboard goes from part to part."""
        return [self.verdict_bar, self.map, self.side, self.ruler]

    def _take_settings(self) -> None:
        self.map.set_wheel_scrolls(self._session.settings.text("wheel") == "scroll")

    # --- showing

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        if not change.is_of_numbers:
            self._show_all()
        if _is_another_drawing(change.before, change.after):
            self.map.fit_to_view()

    @Slot(object)
    def _on_session_solved(self, solution: Solution) -> None:
        if solution.is_preview:
            self._show_results(self._session.shown)
        else:
            self._show_all()

    @Slot(object)
    def _on_opener_drawing_read(self, read: ReadDrawing) -> None:
        self._scenes.take_marks(read.source, read.marks)
        self._show_all()

    @Slot(float)
    def _on_session_search_progressed(self, fraction: float) -> None:
        """A made plug is on its way to its seat."""
        if fraction < 1:
            self._strip.show_progress_soon(fraction, self.tr("Looking for the seat of the plug"))
        elif self._searches:
            self._strip.show_progress(None)
        self._searches = fraction < 1

    def _show_all(self) -> None:
        state = self._session.shown
        self._show_results(state)
        self.map.set_unit(state.unit)

    def _show_results(self, state: State) -> None:
        """The latest answer: on the map at once, elsewhere no faster than it can be followed."""
        session, solution = self._session, self._session.solution
        scene = self._scenes.scene(state, solution)
        self.map.set_scene(scene)
        lead = state.chosen[0] if state.chosen else None
        self.map.set_chosen_fitting(lead)
        self.map.set_chosen_outlines([i for i in state.chosen if scene.fitting(i) is None])
        self.map.set_stale(session.is_stale)
        shown = scene.fitting(lead)
        if shown is not None and self.map.chosen_spot is None and shown.spots:
            self.map.set_chosen_spot(session.spot, into_view=False)
        for pace in (self._looking, self._reading):
            if solution.is_preview:
                pace.ask()
            else:
                pace.now()

    def _show_spot(self) -> None:
        self.spot.show_fitting(self.map.chosen_fitting)

    def _show_words(self) -> None:
        """What the latest answer means, in words and lengths."""
        session, state, solution = self._session, self._session.shown, self._session.solution
        self.legend.show_fitting(self.map.chosen_fitting, state.unit, is_stale=session.is_stale)
        results = session.results
        problems = {i: a.problem for i, a in solution.solved.items() if a.problem}
        self.checks = checks(state, results, problems, core)
        self.verdict_bar.show_verdict(verdict(state, results, self.checks, core), is_stale=session.is_stale)
        names = {o.id: o.name or o.id for o in state.outlines} if len(state.chosen) > 1 else {}
        if not solution.is_preview or self.checks_panel.isVisible():
            is_made = state.lead is not None and state.lead.both_made
            self.checks_panel.show_checks(self.checks, names, is_made=is_made)
        self._show_open_checks()
        if state.lead is not None:
            self.map.set_summary(sentence(state.lead, state.unit, core))

    def _show_open_checks(self) -> None:
        still = [check.finding for check in self.checks if not check.finding.fixed]
        counts = {severity: sum(f.severity is severity for f in still) for severity in Severity}
        words = counted(len(still), self.tr("1 check open"), self.tr("{0} checks open"))
        if not still:
            is_answered = any(i in self._session.solution.solved for i in self._session.state.chosen)
            words = self.tr("No checks open") if is_answered else self.tr("No checks yet")
        hint = [
            (Severity.BLOCK, self.tr("{0} in the way")),
            (Severity.WARN, self.tr("{0} to look at")),
            (Severity.NOTE, counted(counts[Severity.NOTE], self.tr("1 note"), self.tr("{0} notes"))),
        ]
        said = [words_of.format(counts[s]) for s, words_of in hint if counts[s]]
        self._sentence_bar.show_open_checks(words, ", ".join(said))
        tab = self.tr("Checks") + (f"  {len(still)}" if still else "")
        self.checks_tab.setText(tab)

    @Slot(bool)
    def _on_session_stale_changed(self, is_stale: bool) -> None:
        self.map.set_stale(is_stale)
        if not is_stale:
            self._announce()

    def _announce(self) -> None:
        """Say the result, politely, once it is exact."""
        state = self._session.state
        lead = self._session.solution.lead
        if lead is None or lead.gap.is_empty:
            return
        self._session.announced.emit(self.tr("Tightest {0}").format(spoken(lead.gap.min_mm, state.unit)))

    # --- leading about

    @Slot(object)
    def show_check(self, check: Check) -> None:
        """Lead to a check's place: the nearest tight spot, or the place itself."""
        place = check.finding.place_mm
        if place is None:
            return
        state = self._session.state
        if check.outline_id and (not state.chosen or state.chosen[0] != check.outline_id):
            others = [i for i in state.chosen if i != check.outline_id]
            self._session.do(lambda s: choose(s, [check.outline_id, *others]))
        self.map_link.show_place(place)
        self.side.show_page(self.spot)
        self.map.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(object)
    def fix_check(self, check: Check) -> None:
        """Do a check's fix, or lead to the choice it takes."""
        if check.fix is None:
            self._rereading.ask(check.finding)
        elif check.fix.takes_choice:
            self.side.show_page(self.spot)
            self.spot.ask_for_plug()
        else:
            self._session.do(check.fix.apply)


def _is_another_drawing(before: State, after: State) -> bool:
    """Whether an outline of the same id has another shape: drawings number their outlines alike."""
    known = {outline.id: outline.region for outline in before.outlines}
    return any(known.get(outline.id, outline.region) is not outline.region for outline in after.outlines)
