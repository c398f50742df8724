"""Edits: pure functions from one state to the next, with what was done in a person's words.

Every edit of a fit acts on all chosen outlines. An edit that changes nothing answers with the very state
it was given, so a caller can tell by `is`. The words are `Worded`, so that they can be said in another
language.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path as FilePath
from typing import TYPE_CHECKING

from inlayfit.document.state import (
    Facing,
    Fitting,
    HalfName,
    SettingsUsed,
    Source,
    StackNumbers,
    State,
    Trial,
)
from inlayfit.fit.feel import SEED_ZONES, Feel
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState, Relief
from inlayfit.units import Unit, format_entry, format_length
from inlayfit.wording import Worded

if TYPE_CHECKING:  # readers and geometry are heavy; a window must not wait for them
    from inlayfit.document.imports import Imported
    from inlayfit.document.outlines import Outline

STATE_WORDS = {
    HalfState.TO_CUT: Worded("to cut"),
    HalfState.ALREADY_CUT: Worded("already cut"),
    HalfState.FINISHED: Worded("finished"),
}
RELIEF_WORDS = {
    Relief.ROUNDED: Worded("rounded"),
    Relief.DOG_BONE: Worded("dog-bone"),
    Relief.T_BONE: Worded("T-bone"),
    Relief.BY_HAND: Worded("left for hand work"),
}
FACING_WORDS = {Facing.UP: Worded("cut face up"), Facing.DOWN: Worded("cut face down")}


@dataclass(frozen=True, slots=True)
class Edit:
    """What an edit answers.

    Attributes:
        state: the next state; the given one itself if nothing changed.
        text: what was done ("Set clearance to 0.050 mm per side").
    """

    state: State
    text: Worded


def open_drawing(state: State, imported: Imported, *, source: Source, template: Fitting) -> Edit:
    """Start from a drawing that was read; each outline gets the fit of `template`."""
    outlines = with_distinct_ids(imported.outlines, taken=())
    fittings = tuple(replace(template, outline_id=outline.id) for outline in outlines)
    opened = State(
        source=source,
        outlines=outlines,
        fittings=fittings,
        chosen=tuple(outline.id for outline in outlines),
        unit=state.unit,
        findings=imported.findings,
        settings=state.settings,
        workshop=state.workshop,
    )
    name = FilePath(source.path).name or "pasted outlines"
    return Edit(opened, Worded("Open {name}", name=name))


def add_outlines(state: State, imported: Imported, *, template: Fitting, drawing: str = "") -> Edit:
    """Add outlines that were read to those already open; only the new ones are chosen then.

    Args:
        state: the document.
        imported: what was read.
        template: the fit of each new outline.
        drawing: path of the drawing they are in; "" for none.
    """
    outlines = with_distinct_ids(
        imported.outlines, taken=tuple(outline.id for outline in state.outlines), drawing=drawing
    )
    added = replace(
        state,
        outlines=state.outlines + outlines,
        fittings=state.fittings + tuple(replace(template, outline_id=o.id) for o in outlines),
        chosen=tuple(o.id for o in outlines),
        findings=state.findings + imported.findings,
    )
    count = len(outlines)
    text = Worded("Add 1 outline") if count == 1 else Worded("Add {count} outlines", count=count)
    return Edit(added, text)


def remove_chosen(state: State) -> Edit:
    """Take the chosen outlines out of the work; the drawing file keeps them."""
    gone = set(state.chosen)
    outlines = tuple(o for o in state.outlines if o.id not in gone)
    left = replace(
        state,
        outlines=outlines,
        fittings=_with_plugs_of(outlines, [f for f in state.fittings if f.outline_id not in gone]),
        chosen=(),
    )
    count = len(gone)
    text = Worded("Remove 1 outline") if count == 1 else Worded("Remove {count} outlines", count=count)
    return Edit(left if gone else state, text)


def choose(state: State, outline_ids: Iterable[str]) -> Edit:
    """Work upon these outlines; unknown ids are left out, the first one leads."""
    known = {outline.id for outline in state.outlines}
    chosen = tuple(dict.fromkeys(i for i in outline_ids if i in known))
    if chosen == state.chosen:
        return Edit(state, Worded("Choose outlines"))
    names = [state.outline(i).name or i for i in chosen]
    after = replace(state, chosen=chosen)
    if not names:
        return Edit(after, Worded("Choose nothing"))
    if len(names) == 1:
        return Edit(after, Worded("Choose {name}", name=names[0]))
    return Edit(after, Worded("Choose {count} outlines", count=len(names)))


def rename_outline(state: State, outline_id: str, name: str) -> Edit:
    """Give an outline another name."""
    outlines = tuple(replace(o, name=name) if o.id == outline_id else o for o in state.outlines)
    after = replace(state, outlines=outlines) if outlines != state.outlines else state
    return Edit(after, Worded("Name an outline {name}", name=name))


def set_clearance(state: State, clearance_mm: float) -> Edit:
    """Ask for another clearance per side."""
    after = _each_spec(state, lambda spec: spec.with_clearance(clearance_mm))
    clearance = format_length(clearance_mm, state.unit)
    return Edit(after, Worded("Set clearance to {clearance} per side", clearance=clearance))


def set_feel(state: State, feel: Feel) -> Edit:
    """Ask for a feel: the middle of its zone, unless the clearance lies in it already."""

    def moved(spec: FitSpec) -> FitSpec:
        has_it = SEED_ZONES.feel_at(spec.clearance_mm) is feel
        return spec if has_it else spec.with_clearance(SEED_ZONES.middle_mm(feel))

    return Edit(_each_spec(state, moved), Worded("Ask for a {feel} fit", feel=feel))


def set_cutter(state: State, half: Half, cutter_mm: float) -> Edit:
    """Give the measured diameter of a half's cutter."""
    after = _each_half(state, half, lambda spec: replace(spec, cutter_mm=cutter_mm, kerf_mm=0.0))
    cutter = format_entry(cutter_mm, state.unit)
    return Edit(after, Worded("Set {half} cutter to {cutter}", half=half, cutter=cutter))


def set_kerf(state: State, half: Half, kerf_mm: float) -> Edit:
    """Cut a half with a beam or blade of this width instead of a round cutter."""
    after = _each_half(state, half, lambda spec: replace(spec, cutter_mm=0.0, kerf_mm=kerf_mm))
    kerf = format_entry(kerf_mm, state.unit)
    return Edit(after, Worded("Set {half} kerf to {kerf}", half=half, kerf=kerf))


def set_finishing_allowance(state: State, allowance_mm: float) -> Edit:
    """Leave so much stock on the walls of both halves for the finishing pass."""

    def changed(spec: FitSpec) -> FitSpec:
        return replace(
            spec,
            pocket=replace(spec.pocket, finishing_allowance_mm=allowance_mm),
            plug=replace(spec.plug, finishing_allowance_mm=allowance_mm),
        )

    after = _each_spec(state, changed)
    allowance = format_entry(allowance_mm, state.unit)
    return Edit(after, Worded("Set finishing allowance to {allowance}", allowance=allowance))


def set_half_state(state: State, half: Half, half_state: HalfState) -> Edit:
    """Say whether a half may still change."""
    after = _each_half(state, half, lambda spec: replace(spec, state=half_state))
    return Edit(after, Worded("Mark {half} as {state}", half=half, state=STATE_WORDS[half_state]))


def set_relief(state: State, half: Half, relief: Relief) -> Edit:
    """Choose what happens in a half's corners that its cutter cannot reach."""
    after = _each_half(state, half, lambda spec: replace(spec, relief=relief))
    return Edit(after, Worded("Set {half} corners to {relief}", half=half, relief=RELIEF_WORDS[relief]))


def set_corners(state: State, *, pocket: Relief, plug: Relief) -> Edit:
    """Choose what happens in the corners of both halves at once."""

    def changed(spec: FitSpec) -> FitSpec:
        return replace(spec, pocket=replace(spec.pocket, relief=pocket), plug=replace(spec.plug, relief=plug))

    words = corner_words(pocket=pocket, plug=plug)
    return Edit(_each_spec(state, changed), Worded("Set corners to {corners}", corners=words))


def corner_words(*, pocket: Relief, plug: Relief) -> Worded:
    """How the corners of both halves are spoken of in one breath."""
    words = RELIEF_WORDS[plug]
    if pocket is plug:
        same = {Relief.ROUNDED: Worded("rounded to match"), Relief.BY_HAND: words}
        return same.get(plug, Worded("{relief} in both", relief=words))
    if pocket is Relief.ROUNDED:
        return Worded("{relief} in the plug", relief=words)
    if plug is Relief.ROUNDED:
        return Worded("{relief} in the pocket", relief=RELIEF_WORDS[pocket])
    return Worded("{first} in the pocket, {second} in the plug", first=RELIEF_WORDS[pocket], second=words)


def use_as(state: State, half: Half) -> Edit:
    """Say which half the drawing shows: a drawn plug is made already and its pocket is still to cut."""
    plug = HalfState.ALREADY_CUT if half is Half.PLUG else HalfState.TO_CUT

    def changed(spec: FitSpec) -> FitSpec:
        pocket = HalfState.TO_CUT if half is Half.PLUG else spec.pocket.state
        return replace(spec, plug=replace(spec.plug, state=plug), pocket=replace(spec.pocket, state=pocket))

    return Edit(_each_spec(state, changed), Worded("Use as {half}", half=half))


def name_half(state: State, half: Half, name: HalfName) -> Edit:
    """Call a half something else."""

    def renamed(fitting: Fitting) -> Fitting:
        return replace(fitting, plug=name) if half is Half.PLUG else replace(fitting, pocket=name)

    words = " ".join(word for word in (name.material, name.name) if word)
    text = Worded("Call the {half} {name}", half=half, name=words or Worded("nothing"))
    return Edit(_each_fitting(state, renamed), text)


def set_stack(state: State, stack: StackNumbers) -> Edit:
    """Give depth, thickness, glue and where the plug should end."""
    after = _each_fitting(state, lambda fitting: replace(fitting, stack=stack))
    return Edit(after, Worded("Change the stack"))


def set_facing(state: State, facing: Facing) -> Edit:
    """Choose which side of the plug faces the cutter."""
    after = _each_fitting(state, lambda fitting: replace(fitting, facing=facing))
    return Edit(after, Worded("Cut face up") if facing is Facing.UP else Worded("Cut face down"))


_SHOWN_IN = {
    Unit.MM: Worded("Show lengths in millimetres"),
    Unit.INCH: Worded("Show lengths in inches"),
    Unit.THOU: Worded("Show lengths in thou"),
}


def set_unit(state: State, unit: Unit) -> Edit:
    """Show lengths in another unit; nothing else changes."""
    after = state if unit is state.unit else replace(state, unit=unit)
    return Edit(after, _SHOWN_IN.get(unit, Worded("Show lengths in {unit}", unit=unit.symbol)))


def replace_outlines(state: State, imported: Imported, *, template: Fitting) -> Edit:
    """Put outlines of the drawing read anew in the place of the old; ids that stay keep their fit.

    Outlines that came from other drawings, such as made plugs, were not read anew and stay as they are.
    """
    old = {fitting.outline_id: fitting for fitting in state.fittings}
    others = tuple(outline for outline in state.outlines if outline.drawing)
    read = with_distinct_ids(imported.outlines, taken=tuple(outline.id for outline in others))
    outlines = (*read, *others)
    ids = [outline.id for outline in outlines]
    fittings = _with_plugs_of(outlines, [old.get(i, replace(template, outline_id=i)) for i in ids])
    after = replace(
        state,
        outlines=outlines,
        fittings=fittings,
        chosen=tuple(i for i in state.chosen if i in ids) or tuple(outline.id for outline in read),
        findings=imported.findings,
    )
    return Edit(after, Worded("Read the drawing in {unit}", unit=imported.unit.symbol))


def read_anew(state: State, imported: Imported, *, how: SettingsUsed, template: Fitting) -> Edit:
    """Read the drawing anew in another way; ids that stay keep their fit."""
    edit = replace_outlines(state, imported, template=template)
    after = replace(edit.state, settings=how)
    if how.unit is not state.settings.unit:
        return Edit(after, edit.text)
    return Edit(after, Worded("Change how the drawing is read"))


def record_trial(state: State, trial: Trial) -> Edit:
    """Note an attempt."""
    after = replace(state, trials=(*state.trials, trial))
    return Edit(after, Worded("Record a {feel} trial", feel=Worded.again(trial.feel, {})))


def _each_fitting(state: State, change: Callable[[Fitting], Fitting]) -> State:
    changed = tuple(change(fitting) for fitting in state.chosen_fittings)
    return state if changed == state.chosen_fittings else state.with_fittings(changed)


def _each_spec(state: State, change: Callable[[FitSpec], FitSpec]) -> State:
    return _each_fitting(state, lambda fitting: replace(fitting, spec=change(fitting.spec)))


def _each_half(state: State, half: Half, change: Callable[[HalfSpec], HalfSpec]) -> State:
    def changed(spec: FitSpec) -> FitSpec:
        if half is Half.PLUG:
            return replace(spec, plug=change(spec.plug))
        return replace(spec, pocket=change(spec.pocket))

    return _each_spec(state, changed)


def _with_plugs_of(outlines: Sequence[Outline], fittings: Sequence[Fitting]) -> tuple[Fitting, ...]:
    """The fittings without made plugs that are gone; a check then asks for the plug again."""
    there = {outline.id for outline in outlines}
    return tuple(
        replace(f, made=None) if f.made is not None and f.made.outline_id not in there else f
        for f in fittings
    )


def with_distinct_ids(
    outlines: Sequence[Outline], *, taken: tuple[str, ...], drawing: str = ""
) -> tuple[Outline, ...]:
    """The outlines with ids changed where they would stand twice; each remembers what it was drawn as."""
    used = set(taken)
    kept: list[Outline] = []
    for outline in outlines:
        name, number = outline.id, 2
        while name in used:
            name, number = f"{outline.id}-{number}", number + 1
        used.add(name)
        drawn_as = outline.drawn_as if name == outline.id else outline.id_there
        changed = (name, drawn_as, drawing) != (outline.id, outline.drawn_as, outline.drawing)
        kept.append(replace(outline, id=name, drawn_as=drawn_as, drawing=drawing) if changed else outline)
    return tuple(kept)
