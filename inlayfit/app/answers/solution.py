"""The answer to what is asked of the chosen fittings. It knows nothing of how it was found (`solving`)."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import TYPE_CHECKING

from inlayfit.document.made_plug import STOPPED
from inlayfit.document.pocket_readings import PocketReadings
from inlayfit.document.state import Fitting, State
from inlayfit.fit.spec import FitSpec, Seating

if TYPE_CHECKING:  # results are heavy; a window without any need not wait for them
    from inlayfit.app.answers.standing import Standing
    from inlayfit.app.canvas.scene import FittingScene
    from inlayfit.document.outlines import Outline
    from inlayfit.fit.result import FitResult
    from inlayfit.fit.seating import Seat


SEATING = "seating"
"""Note of the progress while a seat is searched for, which can take seconds."""


@dataclass(frozen=True, slots=True)
class Solved:
    """The answer for one fitting: a result and its picture, or one sentence why there is none.

    Attributes:
        outline, spec: what was solved.
        result: the answer.
        problem: why there is none.
        scene: what the gap map shows of it.
        plug: the made plug's outline, where both halves are made.
        seating: how that plug could move.
        seat: how it was moved; None where it lies as drawn.
        readings: what was read in the pocket, where it was measured.
        standing: that pocket as it stands, if that is known.
    """

    outline: Outline
    spec: FitSpec
    result: FitResult | None
    problem: str = ""
    scene: FittingScene | None = None
    plug: Outline | None = None
    seating: Seating | None = None
    seat: Seat | None = None
    readings: PocketReadings | None = None
    standing: Standing | None = None

    def answers(self, state: State, fitting: Fitting) -> bool:
        """Whether this is the answer for that fitting."""
        plug = state.made_plug(fitting)
        return (
            self.outline is state.outline(fitting.outline_id)
            and self.spec == fitting.spec
            and self.plug is plug
            and self.seating is seating_of(fitting, plug)
            and self.readings == fitting.readings_used
        )

    @property
    def is_stopped(self) -> bool:
        """Whether there is no answer because the search for a seat was stopped."""
        return self.problem == STOPPED


@dataclass(frozen=True, slots=True)
class Solution:
    """The answers for all chosen fittings.

    Attributes:
        state: what was solved.
        solved: by outline id.
        is_preview: coarse, to follow a slider; never to be cut.
    """

    state: State
    solved: Mapping[str, Solved] = field(default_factory=lambda: MappingProxyType({}))
    is_preview: bool = False

    def result(self, outline_id: str) -> FitResult | None:
        """The result for an outline, if there is one."""
        answer = self.solved.get(outline_id)
        return None if answer is None else answer.result

    @property
    def lead(self) -> FitResult | None:
        """The result of the fitting that is read out."""
        return self.result(self.state.chosen[0]) if self.state.chosen else None


def unsolved(state: State, fitting: Fitting, problem: str = "") -> Solved:
    """What a fitting asks, with no answer."""
    plug = state.made_plug(fitting)
    return Solved(
        state.outline(fitting.outline_id),
        fitting.spec,
        None,
        problem,
        plug=plug,
        seating=seating_of(fitting, plug),
        readings=fitting.readings_used,
    )


def stopped(state: State, solution: Solution) -> Solution:
    """What is known after the search for seats was stopped; nothing is said of what was not found."""
    answers: dict[str, Solved] = {}
    for fitting in state.chosen_fittings:
        known = solution.solved.get(fitting.outline_id)
        if known is None or not known.answers(state, fitting):
            known = unsolved(state, fitting, STOPPED)
        answers[fitting.outline_id] = known
    return Solution(state, MappingProxyType(answers))


def seating_of(fitting: Fitting, plug: Outline | None) -> Seating | None:
    """How the made plug of a fitting may move; None if it has none."""
    return None if plug is None or fitting.made is None else fitting.made.seating
