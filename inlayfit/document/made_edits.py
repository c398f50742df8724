"""Edits for two halves that are both made, and for what is known of the workshop."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from inlayfit.document.edits import Edit, add_outlines
from inlayfit.document.made_plug import MadePlug
from inlayfit.document.state import Fitting, State
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.errors import SpecError
from inlayfit.finding import Finding
from inlayfit.fit.spec import Half, HalfSpec, HalfState, Seating
from inlayfit.units import format_entry
from inlayfit.wording import Worded

if TYPE_CHECKING:  # the readers are heavy; a window must not wait for them
    from inlayfit.document.imports import Imported

SEATING_WORDS = {
    Seating.SHIFT: Worded("to its seat, not turned"),
    Seating.TURN: Worded("to its seat, turned if need be"),
    Seating.AS_DRAWN: Worded("as it is drawn"),
}


def give_plug(state: State, outline_id: str) -> Edit:
    """Say which outline is the made plug of the lead pocket.

    Both halves count as made from then on, and the plug is no longer worked upon as a pocket of its own.

    Raises:
        SpecError: nothing leads, or the outline cannot be its plug.
    """
    lead = state.lead
    if lead is None:
        raise SpecError(Worded("Nothing is chosen; choose the pocket before its plug."))
    if outline_id == lead.outline_id:
        raise SpecError(Worded("An outline cannot be the plug of itself; choose another one."))
    if outline_id not in {outline.id for outline in state.outlines}:
        raise SpecError(Worded("There is no such outline any more; choose another one."))
    seating = lead.made.seating if lead.made is not None else Seating.SHIFT
    fitting = replace(_both_made(lead), made=MadePlug(outline_id, seating))
    after = state.with_fittings((fitting,))
    after = replace(after, chosen=tuple(i for i in after.chosen if i != outline_id))
    name = state.outline(outline_id).name or outline_id
    return Edit(state if after == state else after, Worded("Take {name} for the plug", name=name))


def lacking_plugs(state: State) -> tuple[str, ...]:
    """Chosen pockets whose plug comes from another drawing: made, like their plugs, which are not known.

    The lead alone if none lacks its plug, for then another plug is wanted.
    """
    lacking = tuple(f.outline_id for f in state.chosen_fittings if f.both_made and f.made is None)
    return lacking or state.chosen[:1]


def add_plugs(
    state: State,
    imported: Imported,
    pairs: Sequence[tuple[str, str]],
    findings: Sequence[Finding],
    *,
    drawing: str,
    template: Fitting,
) -> Edit:
    """Take made plugs from another drawing.

    All outlines that were read join the work, so that another of them can be taken instead.

    Args:
        state: the document.
        imported: what was read.
        pairs: ids of a pocket of the document and of its plug in the drawing.
        findings: what to know about the pairs.
        drawing: path of the drawing.
        template: the fit of outlines that are nobody's plug.

    Raises:
        SpecError: as `give_plug`.
    """
    grown = add_outlines(state, imported, template=template, drawing=drawing).state
    ids = dict(zip((outline.id for outline in imported.outlines), grown.chosen, strict=True))
    after = replace(grown, findings=(*grown.findings, *findings))
    for pocket, plug in pairs:
        after = give_plug(replace(after, chosen=(pocket,)), ids[plug]).state
    taken = {ids[plug] for _, plug in pairs}
    after = replace(after, chosen=tuple(i for i in state.chosen if i not in taken))
    name = Path(drawing).name or Worded("pasted outlines")
    return Edit(after, Worded("Take the plug from {name}", name=name))


def set_seating(state: State, seating: Seating) -> Edit:
    """Choose how made plugs of all chosen pockets may move to where they sit best."""
    changed = tuple(
        replace(f, made=replace(f.made, seating=seating)) if f.made is not None else f
        for f in state.chosen_fittings
    )
    after = state if changed == state.chosen_fittings else state.with_fittings(changed)
    return Edit(after, Worded("Lay the plug {seating}", seating=SEATING_WORDS[seating]))


def set_workshop(state: State, numbers: WorkshopNumbers) -> Edit:
    """Say what the machine gets wrong, and how it cuts.

    Raises:
        SpecError: the numbers contradict each other, or the depth of a chosen pocket.
    """
    for fitting in state.chosen_fittings:
        numbers.at_depth(fitting.stack.depth_mm)
    after = state if numbers == state.workshop else replace(state, workshop=numbers)
    return Edit(after, Worded("Change the workshop's numbers"))


def set_kerf_taper(state: State, taper_mm: float) -> Edit:
    """Say how much wider the kerf is on the show side than on the bed side, for halves cut by a beam."""

    def tapered(half: HalfSpec) -> HalfSpec:
        return replace(half, kerf_taper_mm=taper_mm) if half.kerf_mm else half

    changed = tuple(
        replace(f, spec=replace(f.spec, pocket=tapered(f.spec.pocket), plug=tapered(f.spec.plug)))
        for f in state.chosen_fittings
    )
    after = state if changed == state.chosen_fittings else state.with_fittings(changed)
    taper = format_entry(taper_mm, state.unit)
    return Edit(after, Worded("Set the kerf's taper to {taper}", taper=taper))


def set_edge_break(state: State, half: Half, width_mm: float) -> Edit:
    """Break the plug's lower edge or the pocket's rim by a chamfer of this width."""

    def broken(fitting: Fitting) -> Fitting:
        spec = replace(fitting.half(half), edge_break_mm=width_mm)
        asked = fitting.spec
        whole = replace(asked, plug=spec) if half is Half.PLUG else replace(asked, pocket=spec)
        return replace(fitting, spec=whole)

    changed = tuple(broken(fitting) for fitting in state.chosen_fittings)
    after = state if changed == state.chosen_fittings else state.with_fittings(changed)
    width = format_entry(width_mm, state.unit)
    if half is Half.PLUG:
        return Edit(after, Worded("Break the plug's lower edge by {width}", width=width))
    return Edit(after, Worded("Break the pocket's rim by {width}", width=width))


def _both_made(fitting: Fitting) -> Fitting:
    """The fitting with halves that are still to cut called already cut."""
    spec = fitting.spec

    def made(half: HalfSpec) -> HalfSpec:
        return replace(half, state=HalfState.ALREADY_CUT) if half.may_move else half

    return replace(fitting, spec=replace(spec, pocket=made(spec.pocket), plug=made(spec.plug)))
