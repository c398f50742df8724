"""Edits: pure functions from one state to the next, with what was done in a person's words.

Every edit of a fit acts on all chosen outlines. An edit that changes nothing answers with the very state
it was given, so a caller can tell by `is`. The words come as a pattern and values, so that they can be
said in another language.
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

if TYPE_CHECKING:  # readers and geometry are heavy; a window must not wait for them
    from inlayfit.document.imports import Imported
    from inlayfit.document.outlines import Outline

STATE_WORDS = {
    HalfState.TO_CUT: "to cut",
    HalfState.ALREADY_CUT: "already cut",
    HalfState.FINISHED: "finished",
}
RELIEF_WORDS = {
    Relief.ROUNDED: "rounded",
    Relief.DOG_BONE: "dog-bone",
    Relief.T_BONE: "T-bone",
    Relief.BY_HAND: "left for hand work",
}
HALF_WORDS = {Half.POCKET: "pocket", Half.PLUG: "plug"}
FACING_WORDS = {Facing.UP: "cut face up", Facing.DOWN: "cut face down"}


@dataclass(frozen=True, slots=True)
class Edit:
    """What an edit answers.

    Attributes:
        state: the next state; the given one itself if nothing changed.
        pattern: what was done, with numbered places for the values ("Set clearance to {0}").
        values: what stands in those places.
    """

    state: State
    pattern: str
    values: tuple[str, ...] = ()

    @property
    def text(self) -> str:
        """What was done, in English."""
        return self.pattern.format(*self.values)


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
    return Edit(opened, "Open {0}", (name,))


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
    return Edit(added, "Add {0} outlines", (str(len(outlines)),))


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
    return Edit(left if gone else state, "Remove {0} outlines", (str(len(gone)),))


def choose(state: State, outline_ids: Iterable[str]) -> Edit:
    """Work upon these outlines; unknown ids are left out, the first one leads."""
    known = {outline.id for outline in state.outlines}
    chosen = tuple(dict.fromkeys(i for i in outline_ids if i in known))
    if chosen == state.chosen:
        return Edit(state, "Choose outlines")
    names = [state.outline(i).name or i for i in chosen]
    after = replace(state, chosen=chosen)
    if not names:
        return Edit(after, "Choose nothing")
    if len(names) == 1:
        return Edit(after, "Choose {0}", (names[0],))
    return Edit(after, "Choose {0} outlines", (str(len(names)),))


def rename_outline(state: State, outline_id: str, name: str) -> Edit:
    """Give an outline another name."""
    outlines = tuple(replace(o, name=name) if o.id == outline_id else o for o in state.outlines)
    after = replace(state, outlines=outlines) if outlines != state.outlines else state
    return Edit(after, "Name an outline {0}", (name,))


def set_clearance(state: State, clearance_mm: float) -> Edit:
    """Ask for another clearance per side."""
    after = _each_spec(state, lambda spec: spec.with_clearance(clearance_mm))
    return Edit(after, "Set clearance to {0} per side", (format_length(clearance_mm, state.unit),))


def set_feel(state: State, feel: Feel) -> Edit:
    """Ask for a feel: the middle of its zone, unless the clearance lies in it already."""

    def moved(spec: FitSpec) -> FitSpec:
        has_it = SEED_ZONES.feel_at(spec.clearance_mm) is feel
        return spec if has_it else spec.with_clearance(SEED_ZONES.middle_mm(feel))

    return Edit(_each_spec(state, moved), "Ask for a {0} fit", (feel.value,))


def set_cutter(state: State, half: Half, cutter_mm: float) -> Edit:
    """Give the measured diameter of a half's cutter."""
    after = _each_half(state, half, lambda spec: replace(spec, cutter_mm=cutter_mm, kerf_mm=0.0))
    return Edit(after, f"Set {HALF_WORDS[half]} cutter to {{0}}", (format_entry(cutter_mm, state.unit),))


def set_kerf(state: State, half: Half, kerf_mm: float) -> Edit:
    """Cut a half with a beam or blade of this width instead of a round cutter."""
    after = _each_half(state, half, lambda spec: replace(spec, cutter_mm=0.0, kerf_mm=kerf_mm))
    return Edit(after, f"Set {HALF_WORDS[half]} kerf to {{0}}", (format_entry(kerf_mm, state.unit),))


def set_finishing_allowance(state: State, allowance_mm: float) -> Edit:
    """Leave so much stock on the walls of both halves for the finishing pass."""

    def changed(spec: FitSpec) -> FitSpec:
        return replace(
            spec,
            pocket=replace(spec.pocket, finishing_allowance_mm=allowance_mm),
            plug=replace(spec.plug, finishing_allowance_mm=allowance_mm),
        )

    after = _each_spec(state, changed)
    return Edit(after, "Set finishing allowance to {0}", (format_entry(allowance_mm, state.unit),))


def set_half_state(state: State, half: Half, half_state: HalfState) -> Edit:
    """Say whether a half may still change."""
    after = _each_half(state, half, lambda spec: replace(spec, state=half_state))
    return Edit(after, f"Mark {HALF_WORDS[half]} as {{0}}", (STATE_WORDS[half_state],))


def set_relief(state: State, half: Half, relief: Relief) -> Edit:
    """Choose what happens in a half's corners that its cutter cannot reach."""
    after = _each_half(state, half, lambda spec: replace(spec, relief=relief))
    return Edit(after, f"Set {HALF_WORDS[half]} corners to {{0}}", (RELIEF_WORDS[relief],))


def set_corners(state: State, *, pocket: Relief, plug: Relief) -> Edit:
    """Choose what happens in the corners of both halves at once."""

    def changed(spec: FitSpec) -> FitSpec:
        return replace(spec, pocket=replace(spec.pocket, relief=pocket), plug=replace(spec.plug, relief=plug))

    words = corner_words(pocket=pocket, plug=plug)
    return Edit(_each_spec(state, changed), "Set corners to {0}", (words,))


def corner_words(*, pocket: Relief, plug: Relief) -> str:
    """How the corners of both halves are spoken of in one breath."""
    if pocket is plug:
        return {
            Relief.ROUNDED: "rounded to match",
            Relief.BY_HAND: "left for hand work",
        }.get(pocket, f"{RELIEF_WORDS[pocket]} in both")
    if pocket is Relief.ROUNDED:
        return f"{RELIEF_WORDS[plug]} in the plug"
    if plug is Relief.ROUNDED:
        return f"{RELIEF_WORDS[pocket]} in the pocket"
    return f"{RELIEF_WORDS[pocket]} in the pocket, {RELIEF_WORDS[plug]} in the plug"


def use_as(state: State, half: Half) -> Edit:
    """Say which half the drawing shows: a drawn plug is made already and its pocket is still to cut."""
    plug = HalfState.ALREADY_CUT if half is Half.PLUG else HalfState.TO_CUT

    def changed(spec: FitSpec) -> FitSpec:
        pocket = HalfState.TO_CUT if half is Half.PLUG else spec.pocket.state
        return replace(spec, plug=replace(spec.plug, state=plug), pocket=replace(spec.pocket, state=pocket))

    return Edit(_each_spec(state, changed), f"Use as {HALF_WORDS[half]}")


def name_half(state: State, half: Half, name: HalfName) -> Edit:
    """Call a half something else."""

    def renamed(fitting: Fitting) -> Fitting:
        return replace(fitting, plug=name) if half is Half.PLUG else replace(fitting, pocket=name)

    words = " ".join(word for word in (name.material, name.name) if word)
    return Edit(_each_fitting(state, renamed), f"Call the {HALF_WORDS[half]} {{0}}", (words or "nothing",))


def set_stack(state: State, stack: StackNumbers) -> Edit:
    """Give depth, thickness, glue and where the plug should end."""
    after = _each_fitting(state, lambda fitting: replace(fitting, stack=stack))
    return Edit(after, "Change the stack")


def set_facing(state: State, facing: Facing) -> Edit:
    """Choose which side of the plug faces the cutter."""
    after = _each_fitting(state, lambda fitting: replace(fitting, facing=facing))
    return Edit(after, FACING_WORDS[facing].capitalize())


def set_unit(state: State, unit: Unit) -> Edit:
    """Show lengths in another unit; nothing else changes."""
    after = state if unit is state.unit else replace(state, unit=unit)
    return Edit(after, "Show lengths in {0}", (unit.symbol,))


def replace_outlines(state: State, imported: Imported, *, template: Fitting) -> Edit:
    """Put outlines of the drawing read anew in the place of the old; ids that stay keep their fit."""
    old = {fitting.outline_id: fitting for fitting in state.fittings}
    outlines = with_distinct_ids(imported.outlines, taken=())
    ids = [outline.id for outline in outlines]
    after = replace(
        state,
        outlines=outlines,
        fittings=_with_plugs_of(outlines, [old.get(i, replace(template, outline_id=i)) for i in ids]),
        chosen=tuple(i for i in state.chosen if i in ids) or tuple(ids),
        findings=imported.findings,
    )
    return Edit(after, "Read the drawing in {0}", (imported.unit.symbol,))


def read_anew(state: State, imported: Imported, *, how: SettingsUsed, template: Fitting) -> Edit:
    """Read the drawing anew in another way; ids that stay keep their fit."""
    edit = replace_outlines(state, imported, template=template)
    after = replace(edit.state, settings=how)
    if how.unit is not state.settings.unit:
        return Edit(after, edit.pattern, edit.values)
    return Edit(after, "Change how the drawing is read")


def record_trial(state: State, trial: Trial) -> Edit:
    """Note an attempt."""
    after = replace(state, trials=(*state.trials, trial))
    return Edit(after, "Record a {0} trial", (trial.feel,))


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
