"""Fixes: for a finding that an edit can mend, the edit.

A fix is offered only if it acts on a half that may move; it says in one short line what it will do.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from inlayfit.document.edits import Edit, set_clearance, set_cutter, set_relief
from inlayfit.document.made_edits import set_edge_break, set_seating
from inlayfit.document.state import Fitting, State
from inlayfit.finding import Finding
from inlayfit.fit.feel import SEED_ZONES, Feel
from inlayfit.fit.spec import Half, Relief, Seating
from inlayfit.measures import Measure
from inlayfit.wording import Worded, values_of


@dataclass(frozen=True, slots=True)
class Fix:
    """An edit that mends a finding.

    Attributes:
        label: what a button says.
        apply: the edit.
        takes_choice: the edit takes a choice that only a person can make, to which the window leads;
            `apply` then changes nothing.
    """

    label: Worded
    apply: Callable[[State], Edit]
    takes_choice: bool = False


BOTH_CUT_CODE = "both-cut"
"""Code of the finding for two halves that are both made, of which only one is drawn."""
STOPPED_CODE = "seat-not-searched"
"""Code of the finding for a made plug whose seat is not known."""


def fix_for(finding: Finding, fitting: Fitting) -> Fix | None:
    """The fix for a finding of a fitting, if there is one."""
    maker = _MAKERS.get(finding.code)
    return None if finding.fixed or maker is None else maker(finding, fitting)


def _relieve(_finding: Finding, fitting: Fitting) -> Fix | None:
    """Relieve the half that is left for hand work, else one that is rounded."""
    movable = [half for half in (Half.PLUG, Half.POCKET) if fitting.half(half).may_move]
    for relief in (Relief.BY_HAND, Relief.ROUNDED):
        for half in movable:
            if fitting.half(half).relief is relief:
                return _relief_fix(half)
    return None


def _relief_fix(half: Half) -> Fix:
    label = Worded("Relieve the plug") if half is Half.PLUG else Worded("Relieve the pocket")
    return Fix(label, lambda state: set_relief(state, half, Relief.DOG_BONE))


def _less_clearance(_finding: Finding, fitting: Fitting) -> Fix | None:
    snug = SEED_ZONES.middle_mm(Feel.SNUG)
    if fitting.spec.clearance_mm <= snug:
        return None
    return Fix(Worded("Use a snug clearance"), lambda state: set_clearance(state, snug))


def _sharp(finding: Finding, _fitting: Fitting) -> Fix | None:
    half = Half.POCKET if values_of(finding.message).get("half") is Half.POCKET else Half.PLUG
    return Fix(Worded("Its corners are sharp"), lambda state: set_cutter(state, half, 0.0))


def _choose_plug(_finding: Finding, _fitting: Fitting) -> Fix | None:
    label = Worded("Choose the plug")
    return Fix(label, lambda state: Edit(state, label), takes_choice=True)


def _lay_as_drawn(_finding: Finding, _fitting: Fitting) -> Fix | None:
    return Fix(Worded("Leave it as drawn"), lambda state: set_seating(state, Seating.AS_DRAWN))


def _let_turn(_finding: Finding, fitting: Fitting) -> Fix | None:
    if fitting.made is None or fitting.made.seating is Seating.TURN:
        return None
    return Fix(Worded("Turn it to its seat"), lambda state: set_seating(state, Seating.TURN))


def _break_edge(finding: Finding, fitting: Fitting) -> Fix | None:
    """Break the plug's lower edge as wide as the finding asks for, if the plug may still be cut."""
    needed = values_of(finding.remedy).get("needed")
    if not isinstance(needed, Measure) or not fitting.spec.plug.may_move:
        return None
    width_mm = needed.numbers[0]
    return Fix(
        Worded("Break the plug's lower edge"), lambda state: set_edge_break(state, Half.PLUG, width_mm)
    )


_MAKERS: dict[str, Callable[[Finding, Fitting], Fix | None]] = {
    "bites": _relieve,
    "hand-work": _relieve,
    "cutters-conflict": _relieve,
    "clearance-eats-plug": _less_clearance,
    "clearance-eats-piece": _less_clearance,
    "plug-in-pieces": _less_clearance,
    "sharper-than-cutter": _sharp,
    BOTH_CUT_CODE: _choose_plug,
    STOPPED_CODE: _lay_as_drawn,
    "held-up": _break_edge,
    "plug-turned": _let_turn,
}
