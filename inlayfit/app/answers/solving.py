"""Solving the chosen fittings: pure work for a thread.

Fittings that did not change keep their result, so turning one number on one of twenty solves one.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import TYPE_CHECKING

from inlayfit.app.answers.seats import Seats
from inlayfit.app.answers.solution import SEATING, Solution, Solved, unsolved
from inlayfit.app.answers.standing import standing_of
from inlayfit.app.canvas.scene import FittingScene
from inlayfit.app.core_words import core
from inlayfit.document.edits import STATE_WORDS
from inlayfit.document.outlines import Outline
from inlayfit.document.sentence import half_words
from inlayfit.document.state import Fitting, State
from inlayfit.errors import InlayfitError
from inlayfit.finding import Finding
from inlayfit.fit.result import FitResult
from inlayfit.fit.spec import FitSpec, Half
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, PREVIEW
from inlayfit.progress import Progress

if TYPE_CHECKING:  # seats are searched for only where both halves are made
    from inlayfit.fit.seating import Seat


def solve_chosen(
    state: State,
    known: Mapping[str, Solved],
    *,
    is_preview: bool,
    progress: Progress,
    with_passes: bool = True,
    seats: Seats | None = None,
) -> Solution:
    """Solve every chosen fitting that has no answer yet; raises Cancelled if stopped.

    A preview may go without its roughing pass, a quarter of the work, while nobody looks at that.
    """
    how = _How(is_preview, with_passes or not is_preview, progress, seats or Seats())
    answers: dict[str, Solved] = {}
    fittings = state.chosen_fittings
    for number, fitting in enumerate(fittings):
        progress.report(number / len(fittings), fitting.outline_id)
        old = known.get(fitting.outline_id)
        if old is None or not old.answers(state, fitting):
            old = _answer(unsolved(state, fitting), fitting, old, how)
        answers[fitting.outline_id] = old
    return Solution(state, MappingProxyType(answers), is_preview)


@dataclass(frozen=True, slots=True)
class _How:
    is_preview: bool
    with_passes: bool
    progress: Progress
    seats: Seats


def _answer(asked: Solved, fitting: Fitting, old: Solved | None, how: _How) -> Solved:
    """Answer what is asked; raises Cancelled if stopped."""
    from inlayfit.fit.solve import solve  # heavy; the window is shown before it is needed

    spec = asked.spec if how.with_passes else _without_passes(asked.spec)
    try:
        standing = standing_of(asked.outline, fitting, None if old is None else old.standing)
        seat = _seat(standing.pocket, asked, how)
        solved = solve(
            standing.pocket.region,
            standing.asked(spec),
            plug_drawn=_lying(asked.plug, seat),
            tolerance=PREVIEW if how.is_preview else EXACT,
            progress=_Stages(how.progress),
        )
    except InlayfitError as error:
        how.progress.raise_if_cancelled()
        return replace(asked, problem=error.message)
    how.progress.raise_if_cancelled()
    result = standing.told(solved, spec, *_seated(seat))
    before = old.scene if old is not None and how.is_preview else None
    scene = picture_of(asked.outline, fitting, result, before=before)
    return replace(asked, result=result, scene=scene, seat=seat, standing=standing)


def _without_passes(spec: FitSpec) -> FitSpec:
    pocket, plug = (replace(half, finishing_allowance_mm=0.0) for half in (spec.pocket, spec.plug))
    return replace(spec, pocket=pocket, plug=plug)


def _seat(pocket: Outline, asked: Solved, how: _How) -> Seat | None:
    """Where the made plug sits in the pocket; None if there is none, or it stays as it is drawn."""
    if asked.plug is None or asked.seating is None:
        return None
    return how.seats.seat(pocket, asked.plug, asked.seating, _Stages(how.progress, SEATING))


def _lying(plug: Outline | None, seat: Seat | None) -> Region | None:
    """The outline of the made plug, if there is one, where it lies in the pocket."""
    if plug is None:
        return None
    return plug.region.moved(seat.motion) if seat is not None and seat.is_moved else plug.region


def _seated(seat: Seat | None) -> tuple[Finding, ...]:
    """The note that a made plug was moved, if it was."""
    if seat is None:
        return ()
    from inlayfit.fit.seating import seated_finding  # heavy; not before it is needed

    note = seated_finding(seat)
    return () if note is None else (note,)


def picture_of(
    outline: Outline, fitting: Fitting, result: FitResult, *, before: FittingScene | None = None
) -> FittingScene:
    """What the gap map shows of an answer; `before` is a scene of the same fitting that differs little."""
    return FittingScene.of_result(
        outline.id,
        outline.name or outline.id,
        result,
        pocket_words=half_lines(fitting, Half.POCKET),
        plug_words=half_lines(fitting, Half.PLUG),
        before=before,
    )


def half_lines(fitting: Fitting, half: Half) -> tuple[str, ...]:
    """The lettering of a half on the map: what it is, and whether it may move."""
    name = half_words(fitting.name(half), half.value, core)
    spec = fitting.half(half)
    if not spec.may_move:
        return name, core("{0}, stays").format(core(STATE_WORDS[spec.state]))
    return name, core(STATE_WORDS[spec.state])


class _Stages(Progress):
    """Passes a cancellation on, and keeps the stages of one fitting to itself unless they have a name."""

    def __init__(self, whole: Progress, name: str = "") -> None:
        super().__init__((lambda part, _note: whole.report(part, name)) if name else None)
        self._whole = whole

    @property
    def cancelled(self) -> bool:
        return self._whole.cancelled

    def raise_if_cancelled(self) -> None:
        self._whole.raise_if_cancelled()
