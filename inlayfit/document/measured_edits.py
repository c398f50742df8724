"""Edits for the pocket that was measured: typed by its size, or drawn and corrected by readings."""

from __future__ import annotations

from dataclasses import replace

from inlayfit.document.edits import Edit
from inlayfit.document.outlines import Outline
from inlayfit.document.state import Fitting, State
from inlayfit.errors import SpecError
from inlayfit.fit.measured import PocketModel
from inlayfit.fit.readings import as_measured, fitted_as_it_stands
from inlayfit.fit.spec import Half, HalfState
from inlayfit.geometry.path import Path
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


def apply_readings(state: State, model: PocketModel) -> Edit:
    """Put the pocket that the readings show in the place of the chosen one, which is already cut then.

    Its corners are as they were cut, so no cutter stands behind it any more.

    Raises:
        SpecError: not exactly one pocket is chosen, or nothing of it would be left.
    """
    lead = state.lead
    if lead is None or len(state.chosen) != 1 or lead.drawn is Half.PLUG:
        raise SpecError(Worded("Readings belong to one pocket; choose the outline of that pocket alone."))
    cut = replace(lead.spec, pocket=replace(lead.spec.pocket, state=HalfState.ALREADY_CUT))
    outline = state.outline(lead.outline_id)
    region, findings = as_measured(outline.region, cut, model)
    contours = tuple(Path.polyline(ring) for ring in region.rings())
    measured = replace(outline, region=region, contours=contours)
    fitting = replace(lead, spec=fitted_as_it_stands(cut))
    after = replace(
        state,
        outlines=tuple(measured if o.id == outline.id else o for o in state.outlines),
        fittings=tuple(fitting if f.outline_id == outline.id else f for f in state.fittings),
        findings=(*state.findings, *findings),
    )
    return Edit(after, Worded("Fit the pocket as measured"))
