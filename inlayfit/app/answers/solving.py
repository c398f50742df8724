"""Solving the chosen fittings: pure work for a thread.

Fittings that did not change keep their result, so turning one number on one of twenty solves one.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

from inlayfit.app.answers.seats import Seats
from inlayfit.app.answers.solution import SEATING, Solution, Solved, seating_of
from inlayfit.app.answers.standing import Standing, standing_of
from inlayfit.app.canvas.scene import FittingScene
from inlayfit.app.core_words import core
from inlayfit.document.edits import STATE_WORDS
from inlayfit.document.outlines import Outline
from inlayfit.document.sentence import half_words
from inlayfit.document.state import Fitting, State
from inlayfit.errors import InlayfitError
from inlayfit.fit.result import FitResult
from inlayfit.fit.spec import FitSpec, Half
from inlayfit.geometry.tolerance import EXACT, PREVIEW
from inlayfit.progress import Progress


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
    answers: dict[str, Solved] = {}
    fittings = state.chosen_fittings
    for number, fitting in enumerate(fittings):
        progress.report(number / len(fittings), fitting.outline_id)
        outline = state.outline(fitting.outline_id)
        old = known.get(fitting.outline_id)
        if old is not None and old.answers(state, fitting):
            answers[fitting.outline_id] = old
            continue
        plug = state.made_plug(fitting)
        if plug is not None:
            answers[fitting.outline_id] = _seat_one(
                outline, plug, fitting, old, is_preview, progress, seats or Seats()
            )
            continue
        spec = fitting.spec if with_passes or not is_preview else _without_passes(fitting.spec)
        answers[fitting.outline_id] = _solve_one(outline, fitting, spec, old, is_preview, progress)
    return Solution(state, MappingProxyType(answers), is_preview)


def _without_passes(spec: FitSpec) -> FitSpec:
    pocket, plug = (replace(half, finishing_allowance_mm=0.0) for half in (spec.pocket, spec.plug))
    return replace(spec, pocket=pocket, plug=plug)


def _solve_one(
    outline: Outline,
    fitting: Fitting,
    spec: FitSpec,
    old: Solved | None,
    is_preview: bool,
    progress: Progress,
) -> Solved:
    from inlayfit.fit.solve import solve  # heavy; the window is shown before it is needed

    watched, tolerance = _Stages(progress), PREVIEW if is_preview else EXACT
    blank = Solved(outline, fitting.spec, None, readings=fitting.readings_used)
    try:
        standing = standing_of(outline, fitting, _known_standing(old))
        solved = solve(standing.pocket.region, standing.asked(spec), tolerance=tolerance, progress=watched)
    except InlayfitError as error:
        progress.raise_if_cancelled()
        return replace(blank, problem=error.message)
    progress.raise_if_cancelled()
    result = standing.told(solved, spec)
    before = old.scene if old is not None and is_preview else None
    scene = picture_of(outline, fitting, result, before=before)
    return replace(blank, result=result, scene=scene, standing=standing)


def _known_standing(old: Solved | None) -> Standing | None:
    return None if old is None else old.standing


def _seat_one(
    drawn: Outline,
    plug: Outline,
    fitting: Fitting,
    old: Solved | None,
    is_preview: bool,
    progress: Progress,
    seats: Seats,
) -> Solved:
    """The answer for two halves that are made, the plug lying at its seat."""
    from inlayfit.fit.seating import seated_finding  # heavy; not before it is needed
    from inlayfit.fit.solve import solve

    seating, spec = seating_of(fitting, plug), fitting.spec
    assert seating is not None
    watched, tolerance = _Stages(progress, SEATING), PREVIEW if is_preview else EXACT
    blank = Solved(drawn, spec, None, plug=plug, seating=seating, readings=fitting.readings_used)
    try:
        standing = standing_of(drawn, fitting, _known_standing(old))
        pocket = standing.pocket
        seat = seats.seat(pocket, plug, seating, watched)
        lying = plug.region.moved(seat.motion) if seat is not None and seat.is_moved else plug.region
        solved = solve(
            pocket.region,
            standing.asked(spec),
            plug_drawn=lying,
            tolerance=tolerance,
            progress=_Stages(progress),
        )
    except InlayfitError as error:
        progress.raise_if_cancelled()
        return replace(blank, problem=error.message)
    progress.raise_if_cancelled()
    note = seated_finding(seat) if seat is not None else None
    result = standing.told(solved, spec, *([note] if note is not None else []))
    scene = picture_of(drawn, fitting, result)
    return replace(blank, result=result, scene=scene, seat=seat, standing=standing)


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
