"""Looking at exact answers with what is known of the workshop: slow work, done after the exact answer.

It follows an answer on a thread of its own, never a slider; an answer that was looked at is not looked at
again while neither it nor the workshop's numbers change.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import TYPE_CHECKING

from inlayfit.app.answers.solution import Solution, Solved
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.errors import Cancelled, InlayfitError
from inlayfit.finding import Finding, Severity, heaviest_first
from inlayfit.fit.result import FitResult
from inlayfit.progress import Progress
from inlayfit.wording import Worded

if TYPE_CHECKING:
    from inlayfit.fit.workshop import Examined


@dataclass(frozen=True, eq=False, slots=True)
class Look:
    """One answer, looked at.

    Attributes:
        solved: the answer as it was solved.
        numbers: what was known of the workshop.
        depth_mm: of the fitting.
        examined: what came of it; None if the numbers contradict each other.
        problem: that contradiction.
        held: how a made plug has to be held to go in, if not as it may move.
    """

    solved: FitResult
    numbers: WorkshopNumbers
    depth_mm: float
    examined: Examined | None
    problem: InlayfitError | None = None
    held: tuple[Finding, ...] = ()

    def is_of(self, solved: FitResult, numbers: WorkshopNumbers, depth_mm: float) -> bool:
        """Whether this is the look at that answer with those numbers."""
        return self.solved is solved and self.numbers == numbers and self.depth_mm == depth_mm

    @property
    def result(self) -> FitResult:
        """The answer with all that was found."""
        if self.examined is not None:
            seen = self.examined.result
            return replace(seen, findings=heaviest_first([*seen.findings, *self.held])) if self.held else seen
        finding = _contradiction(self.problem)
        return replace(self.solved, findings=heaviest_first([*self.solved.findings, finding]))

    @property
    def whole(self) -> Examined:
        """What came of it; the contradiction raised if there is one."""
        if self.examined is None:
            assert self.problem is not None
            raise self.problem
        return self.examined


Looks = Mapping[str, Look]
"""By outline id."""


def look_at(solution: Solution, known: Looks, progress: Progress) -> Looks:
    """Look at every answer of a solution that was not looked at yet; raises Cancelled if stopped."""
    from inlayfit.fit.workshop import examined  # heavy; not before it is needed

    state, looks = solution.state, {}
    for fitting in state.chosen_fittings:
        progress.raise_if_cancelled()
        name, depth_mm = fitting.outline_id, fitting.stack.depth_mm
        result = solution.result(name)
        if result is None:
            continue
        old = known.get(name)
        if old is not None and old.is_of(result, state.workshop, depth_mm):
            looks[name] = old
            continue
        try:
            fit = examined(result, state.workshop.at_depth(depth_mm), progress=progress)
            looks[name] = Look(result, state.workshop, depth_mm, fit, held=_held(solution.solved[name]))
        except Cancelled:
            raise
        except InlayfitError as error:
            looks[name] = Look(result, state.workshop, depth_mm, None, error)
    progress.raise_if_cancelled()
    return MappingProxyType(looks)


def _held(solved: Solved) -> tuple[Finding, ...]:
    """Whether a made plug would go in only turned further than it may be, or flipped over."""
    if solved.plug is None or solved.seating is None:
        return ()
    from inlayfit.document.pairing import paired  # heavy; not before it is needed

    plug = replace(solved.plug, id=solved.plug.id_there)
    _, findings = paired(
        [solved.outline], [plug], clearance_mm=solved.spec.clearance_mm, seating=solved.seating, chosen=True
    )
    return findings


def _contradiction(problem: InlayfitError | None) -> Finding:
    """The finding for numbers that cannot all be; the refusal itself says what to do."""
    assert problem is not None
    remedy = Worded("Nothing is said of many parts until then.")
    return Finding("workshop-numbers", Severity.WARN, problem.message, remedy)
