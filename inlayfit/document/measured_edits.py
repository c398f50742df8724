"""Edits for the pocket that was measured: typed by its size, or drawn and corrected by readings."""

from __future__ import annotations

from dataclasses import replace

from inlayfit.document.edits import Edit
from inlayfit.document.outlines import Outline
from inlayfit.document.pocket_readings import PocketReadings
from inlayfit.document.state import Fitting, State
from inlayfit.errors import SpecError
from inlayfit.fit.readings import as_measured
from inlayfit.fit.spec import Half, HalfState
from inlayfit.wording import Worded


def type_pocket(state: State, outline: Outline, *, template: Fitting) -> Edit:
    """Add a pocket that was typed by its size; it alone is chosen then."""
    taken = {each.id for each in state.outlines}
    number = next(n for n in range(1, len(taken) + 2) if f"o{n}" not in taken)
    new = replace(outline, id=f"o{number}")
    after = replace(
        state,
        outlines=(*state.outlines, new),
        fittings=(*state.fittings, replace(template, outline_id=new.id)),
        chosen=(new.id,),
    )
    return Edit(after, Worded("Add a {shape} by its size", shape=Worded.again(outline.name, {})))


def apply_readings(state: State, readings: PocketReadings) -> Edit:
    """Fit the chosen pocket as its readings say that it stands; it is already cut then, if it was not.

    Its outline stays as drawn: what the readings make of it follows from them.

    Raises:
        SpecError: not exactly one pocket is chosen, or nothing of it would be left.
    """
    lead = _one_pocket(state)
    pocket = lead.spec.pocket
    if pocket.may_move:
        pocket = replace(pocket, state=HalfState.ALREADY_CUT)
    fitting = replace(lead, spec=replace(lead.spec, pocket=pocket), readings=readings)
    as_measured(state.outline(lead.outline_id).region, fitting.spec, readings.model)  # refused now if ever
    after = state if fitting == lead else state.with_fittings((fitting,))
    return Edit(after, Worded("Fit the pocket as measured"))


def leave_readings_out(state: State) -> Edit:
    """Fit the chosen pocket as it is drawn again; what was read in it is gone.

    Raises:
        SpecError: not exactly one pocket is chosen.
    """
    lead = _one_pocket(state)
    after = state if lead.readings is None else state.with_fittings((replace(lead, readings=None),))
    return Edit(after, Worded("Fit the pocket as drawn"))


def _one_pocket(state: State) -> Fitting:
    lead = state.lead
    if lead is None or len(state.chosen) != 1 or lead.drawn is Half.PLUG:
        raise SpecError(Worded("Readings belong to one pocket; choose the outline of that pocket alone."))
    return lead
