"""The session: owns the open document, its history and the latest answer; announces what changed.

Panels get the session in their constructor, show `shown`, and send edits. No panel talks to another.

A *gesture* (dragging the slider) shows previews and becomes one undo step when it is finished; cancelling
it leaves no trace. During a gesture `shown` runs ahead of `state`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from inlayfit.app.answers.seats import Seats
from inlayfit.app.answers.solution import SEATING, Solution, Solved, stopped
from inlayfit.app.core_words import core_error
from inlayfit.app.garbage import Hold
from inlayfit.app.tasks import LatestTask
from inlayfit.document.edits import Edit
from inlayfit.document.history import History, Step
from inlayfit.document.settings import Settings
from inlayfit.document.state import State
from inlayfit.errors import InlayfitError
from inlayfit.progress import Progress

if TYPE_CHECKING:
    from inlayfit.app.answers.examining import Look, Looks
    from inlayfit.fit.result import FitResult


@dataclass(frozen=True, slots=True)
class Change:
    """What `state_changed` carries.

    Attributes:
        before, after: what was shown and what is shown now.
        is_preview: whether a gesture is going on.
        initiator: who asked, so that it can ignore its own echo; None for undo and redo.
    """

    before: State
    after: State
    is_preview: bool = False
    initiator: object | None = None

    @property
    def is_of_numbers(self) -> bool:
        """Whether it is a preview of other numbers alone, of the same chosen outlines."""
        before, after = self.before, self.after
        return self.is_preview and before.outlines is after.outlines and before.chosen == after.chosen

    @property
    def is_of_clearance(self) -> bool:
        """Whether it is a preview of other clearances alone: parts that show none can pass it over."""
        one, other = self.before.lead, self.after.lead
        if not self.is_of_numbers or one is None or other is None:
            return False
        return (
            self.before.unit is self.after.unit
            and self.before.workshop is self.after.workshop
            and one.stack is other.stack
            and one.spec.pocket is other.spec.pocket
            and one.spec.plug is other.spec.plug
        )


class Session(QObject):
    """One open document. See the module docstring.

    Signals:
        state_changed(Change): what is shown is another state now.
        solved(Solution): an answer for what is shown, coarse during a gesture.
        solve_failed(text): the program could not solve, for a reason that is not the fit's.
        settled(): what is shown or its answer is another, and not for a gesture alone: for parts that need
            not follow the hand.
        stale_changed(stale): whether the numbers shown lag behind what is asked.
        examined(): exact answers were looked at with what is known of the workshop; see `looks`.
        search_progressed(fraction): a made plug is moved to its seat; 1 when that has ended.
        spot_chosen(number): which of the tightest spots is looked at, from 0.
        project_changed(): the project file or the saved mark is another.
        settings_changed(Settings): a setting was changed.
        refused(text): numbers that cannot be were asked for; one sentence that says what to do.
        announced(text): something worth saying to a screen reader and the status line.
    """

    state_changed = Signal(object)
    solved = Signal(object)
    solve_failed = Signal(str)
    settled = Signal()
    stale_changed = Signal(bool)
    examined = Signal()
    search_progressed = Signal(float)
    spot_chosen = Signal(int)
    project_changed = Signal()
    settings_changed = Signal(object)
    refused = Signal(str)
    announced = Signal(str)

    def __init__(self, settings: Settings | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._state = State()
        self._shown = self._state
        self._settings = settings or Settings()
        self._known: Mapping[str, Solved] = MappingProxyType({})
        self._solution = Solution(self._state)
        self._is_stale = False
        self._spot = 0
        self._project: Path | None = None
        self._title = ""
        self._in_gesture = False
        self._gesture_hold = Hold()
        self.destroyed.connect(self._gesture_hold.end)
        self._previews_passes = False
        self._history = History()
        self._looks: Looks = MappingProxyType({})
        self.seats = Seats()
        self.solver = LatestTask(self)
        self.solver.progressed.connect(self._on_solver_progressed)
        self.solver.busy_changed.connect(self._on_solver_busy_changed)
        self.examiner = LatestTask(self)
        self.examiner.finished.connect(self._on_examiner_finished)
        self.examiner.failed.connect(self._on_solver_failed)
        self.solver.finished.connect(self._on_solver_finished)
        self.solver.failed.connect(self._on_solver_failed)

    @property
    def state(self) -> State:
        """The document: what would be saved."""
        return self._state

    @property
    def shown(self) -> State:
        """What the window shows: the document, or a preview of it during a gesture."""
        return self._shown

    @property
    def solution(self) -> Solution:
        """The latest answer; `is_stale` says whether it lags behind."""
        return self._solution

    @property
    def results(self) -> dict[str, FitResult]:
        """Results of the chosen by outline: of an older fit only while a gesture waits for its own.

        Where the workshop's view of a result is known, its findings are among those of the result.
        """
        state, solved = self._shown, self._solution.solved
        found: dict[str, FitResult] = {}
        for fitting in state.chosen_fittings:
            answer = solved.get(fitting.outline_id)
            if answer is None or answer.result is None:
                continue
            if self._in_gesture or answer.answers(state, fitting):
                look = self.look(fitting.outline_id)
                found[fitting.outline_id] = answer.result if look is None else look.result
        return found

    def look(self, outline_id: str) -> Look | None:
        """The workshop's view of what is shown of a fitting; None as long as it is not known."""
        state, look = self._shown, self._looks.get(outline_id)
        result = self._solution.result(outline_id)
        if look is None or result is None:
            return None
        depth_mm = state.fitting(outline_id).stack.depth_mm
        return look if look.is_of(result, state.workshop, depth_mm) else None

    @property
    def is_stale(self) -> bool:
        """Whether the numbers shown lag behind what is asked, or are coarse."""
        return self._is_stale

    @property
    def settings(self) -> Settings:
        """The person's settings."""
        return self._settings

    @property
    def project(self) -> Path | None:
        """The project file, if the document has one."""
        return self._project

    @property
    def title(self) -> str:
        """What the document is called."""
        return self._project.stem if self._project is not None else self._title

    @property
    def is_modified(self) -> bool:
        """Whether there is work that no project file holds."""
        return not self._history.is_saved

    @property
    def history(self) -> History:
        """What was done and taken back."""
        return self._history

    @property
    def spot(self) -> int:
        """Which of the tightest spots is looked at, from 0."""
        return self._spot

    # --- editing

    def perform(self, edit: Edit, *, initiator: object | None = None) -> None:
        """Do an edit: one undo step."""
        self.cancel_gesture()
        if edit.state is not self._state:
            step = Step(self._state, edit.state, edit.text)
            self._go(self._history.with_step(step), edit.state, initiator)

    def undo(self) -> Step | None:
        """Take the last step back; answers with it, or None if there is none."""
        self.cancel_gesture()
        step = self._history.to_undo
        if step is not None:
            self._go(self._history.after_undo(), step.before)
        return step

    def redo(self) -> Step | None:
        """Do the step again that was taken back last; answers with it, or None if there is none."""
        self.cancel_gesture()
        step = self._history.to_redo
        if step is not None:
            self._go(self._history.after_redo(), step.after)
        return step

    def do(self, make: Callable[[State], Edit], *, initiator: object | None = None) -> bool:
        """Make an edit of the document and do it; numbers that contradict each other are refused aloud."""
        try:
            edit = make(self._state)
        except InlayfitError as error:
            self.refused.emit(core_error(error))
            return False
        self.perform(edit, initiator=initiator)
        return True

    def preview(self, edit: Edit, *, initiator: object | None = None) -> None:
        """Show what an edit would do, without doing it; the gesture goes on until finished or cancelled."""
        self._set_gesture(True)
        self._show(edit.state, is_preview=True, initiator=initiator)

    def finish_gesture(self, edit: Edit, *, initiator: object | None = None) -> None:
        """End a gesture by doing its edit, as one undo step; no step if nothing changed."""
        self._set_gesture(False)
        if edit.state == self._state:
            self._show(self._state, initiator=initiator)
        else:
            self.perform(edit, initiator=initiator)

    def cancel_gesture(self) -> None:
        """End a gesture as if it had not been."""
        if self._in_gesture:
            self._set_gesture(False)
            self._show(self._state)

    @property
    def is_in_gesture(self) -> bool:
        """Whether a gesture goes on."""
        return self._in_gesture

    def start(
        self, state: State, *, project: Path | None = None, title: str = "", modified: bool = False
    ) -> None:
        """Open another document in the place of this one; its undo starts empty."""
        self._set_gesture(False)
        self._project, self._title = project, title
        self._known = MappingProxyType({})
        self._history = History(saved=None if modified else 0)
        self._state = state
        self._show(state)
        self.project_changed.emit()

    def mark_saved(self, project: Path) -> None:
        """The document was written to this project file."""
        self._project = project
        self._history = self._history.marked_saved()
        self.project_changed.emit()

    def choose_spot(self, number: int) -> None:
        """Look at one of the tightest spots, also if it is the one looked at before."""
        count = self.spot_count
        self._spot = number % count if count else 0
        self.spot_chosen.emit(self._spot)

    @property
    def spot_count(self) -> int:
        """How many spots of the lead fitting are worth looking at."""
        state = self._solution.state
        lead = self._solution.solved.get(state.chosen[0]) if state.chosen else None
        return 0 if lead is None or lead.scene is None else len(lead.scene.spots)

    @Slot(bool)
    def preview_passes(self, wanted: bool) -> None:
        """Whether previews need the roughing pass, because it is looked at."""
        self._previews_passes = wanted

    def change_settings(self, settings: Settings) -> None:
        """Use other settings from now on."""
        if settings != self._settings:
            self._settings = settings
            self.settings_changed.emit(settings)

    def close(self) -> None:
        """Stop work and wait for it."""
        self._set_gesture(False)
        self.solver.close()
        self.examiner.close()

    def stop_search(self) -> None:
        """Stop looking for a seat; the document is as it was, and a check says what is not known."""
        if self.solver.is_busy and not self._in_gesture:
            self.solver.cancel()
            self._take(stopped(self._shown, Solution(self._shown, self._known)))

    def solve_again(self) -> None:
        """Ask for the answers anew that are not known."""
        self._solve(self._shown, is_preview=False)

    # --- inside

    def _set_gesture(self, on: bool) -> None:
        self._in_gesture = on
        (self._gesture_hold.begin if on else self._gesture_hold.end)()

    def _go(self, history: History, state: State, initiator: object | None = None) -> None:
        """Make a state the document: the one door for edits, undo and redo."""
        was_modified = self.is_modified
        self._history, self._state = history, state
        self._show(state, initiator=initiator)
        if self.is_modified is not was_modified:
            self.project_changed.emit()

    def _show(self, state: State, *, is_preview: bool = False, initiator: object | None = None) -> None:
        before, self._shown = self._shown, state
        change = Change(before, state, is_preview=is_preview, initiator=initiator)
        if before is not state or not is_preview:
            self.state_changed.emit(change)
        if not is_preview:
            self.settled.emit()
        self._solve(state, is_preview=is_preview)

    def _solve(self, state: State, *, is_preview: bool) -> None:
        answers = self._answers_for(state)
        if answers is not None:
            self.solver.cancel()
            self._take(Solution(state, answers))
            return
        known, passes, seats = self._known, self._previews_passes, self.seats

        def work(progress: Progress) -> Solution:
            from inlayfit.app.answers.solving import solve_chosen  # heavy; not before it is needed

            return solve_chosen(
                state, known, is_preview=is_preview, progress=progress, with_passes=passes, seats=seats
            )

        self._set_stale(True)
        self.solver.submit(work, patient=is_preview)

    def _answers_for(self, state: State) -> Mapping[str, Solved] | None:
        """Exact answers for every chosen fitting, if all are known."""
        answers: dict[str, Solved] = {}
        for fitting in state.chosen_fittings:
            known = self._known.get(fitting.outline_id)
            if known is None or not known.answers(state, fitting):
                return None
            answers[fitting.outline_id] = known
        return MappingProxyType(answers)

    def _take(self, solution: Solution) -> None:
        self._solution = solution
        if not solution.is_preview:
            there = {outline.id for outline in solution.state.outlines}
            kept = {i: answer for i, answer in self._known.items() if i in there}
            new = {i: answer for i, answer in solution.solved.items() if not answer.is_stopped}
            self._known = MappingProxyType({**kept, **new})
        self._set_stale(solution.is_preview)
        if self._spot >= max(1, self.spot_count):
            self._spot = 0
            self.spot_chosen.emit(0)
        self.solved.emit(solution)
        if not solution.is_preview:
            self.settled.emit()
        self._examine(solution)

    def _examine(self, solution: Solution) -> None:
        """Look at an exact answer closely, when the hand is off the slider."""
        if solution.is_preview or self._in_gesture:
            self.examiner.cancel()
            return
        known = self._looks

        def work(progress: Progress) -> Looks:
            from inlayfit.app.answers.examining import look_at  # heavy; not before it is needed

            return look_at(solution, known, progress)

        if any(self.look(i) is None for i in solution.state.chosen if solution.result(i) is not None):
            self.examiner.submit(work)

    def _set_stale(self, stale: bool) -> None:
        if stale != self._is_stale:
            self._is_stale = stale
            self.stale_changed.emit(stale)

    @Slot(int, object)
    def _on_solver_finished(self, _number: int, solution: Solution) -> None:
        if solution.is_preview and not self._in_gesture:
            return
        self._take(solution)

    @Slot(int, object)
    def _on_examiner_finished(self, _number: int, looks: Looks) -> None:
        self._looks = looks
        self.examined.emit()

    @Slot(int, float, str)
    def _on_solver_progressed(self, _number: int, fraction: float, note: str) -> None:
        if note == SEATING:
            self.search_progressed.emit(min(fraction, 0.99))

    @Slot(bool)
    def _on_solver_busy_changed(self, busy: bool) -> None:
        if not busy:
            self.search_progressed.emit(1.0)

    @Slot(int, object)
    def _on_solver_failed(self, _number: int, error: Exception) -> None:
        self.solve_failed.emit(core_error(error))
