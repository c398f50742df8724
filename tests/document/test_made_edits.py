"""Edits for two halves that are made: who is whose plug, how it may move, what is known of the workshop."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path as FilePath

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document import edits, made_edits
from inlayfit.document.imports import Imported
from inlayfit.document.made_plug import MadePlug
from inlayfit.document.state import Fitting, State
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.drawing import Drawing
from inlayfit.errors import SpecError
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.spec import Half, HalfState, Seating
from inlayfit.formats.contract import ReadResult
from inlayfit.units import Unit
from tests.document.states import documents, outline, workshops
from tests.strategies import examples


@given(documents(least=2), workshops(), st.sampled_from(Seating))
@examples(30, 200)
def test_undo_is_the_state_before(state: State, numbers: WorkshopNumbers, seating: Seating) -> None:
    """States are swapped whole, so it is enough that an edit leaves the one it was given alone."""
    before = replace(state)
    other = state.chosen[1]
    one = made_edits.give_plug(state, other).state
    two = made_edits.set_seating(one, seating).state
    made_edits.set_workshop(two, numbers)
    assert state == before


@given(documents(least=2))
@examples(30, 200)
def test_a_given_plug_makes_both_halves_and_is_worked_upon_no_more(state: State) -> None:
    lead, other = state.chosen[0], state.chosen[1]
    after = made_edits.give_plug(state, other).state
    fitting = after.fitting(lead)
    assert fitting.both_made
    assert after.made_plug(fitting) is after.outline(other)
    assert other not in after.chosen
    assert after.chosen[0] == lead
    assert made_edits.give_plug(after, other).state is after
    finished = fitting.spec.pocket.state is HalfState.FINISHED
    assert finished == (state.fitting(lead).spec.pocket.state is HalfState.FINISHED)


@given(documents(least=2))
@examples(20, 100)
def test_a_plug_that_is_removed_is_nobodys_plug(state: State) -> None:
    given_ = made_edits.give_plug(state, state.chosen[1]).state
    alone = edits.choose(given_, [state.chosen[1]]).state
    left = edits.remove_chosen(alone).state
    assert left.fitting(state.chosen[0]).made is None


def test_reading_the_drawing_anew_keeps_the_plug_whether_it_is_in_it_or_in_another() -> None:
    two = _two()
    elsewhere = replace(two.outlines[1], id="o1-2", drawn_as="o1", drawing="plug.dxf")
    three = replace(two, outlines=(*two.outlines, elsewhere), fittings=(*two.fittings, Fitting("o1-2")))
    file = FilePath("a.dxf")
    read = ReadResult(Drawing(), file, None, Unit.INCH)
    imported = Imported(file, read, two.outlines, (), Unit.INCH)
    for plug in ("o1", "o1-2"):
        given_ = made_edits.give_plug(three, plug).state
        after = edits.replace_outlines(given_, imported, template=Fitting("")).state
        assert after.outlines == three.outlines
        assert after.fittings == given_.fittings
        assert after.chosen == given_.chosen


def test_a_half_that_may_move_needs_no_plug_of_its_own() -> None:
    state = made_edits.give_plug(_two(), "o1").state
    freed = edits.set_half_state(state, Half.PLUG, HalfState.TO_CUT).state
    assert freed.made_plug(freed.fittings[0]) is None
    assert freed.fittings[0].made == MadePlug("o1"), "kept for when both are made again"


@pytest.mark.parametrize("wanted", ["o0", "nobody"])
def test_what_cannot_be_the_plug_is_refused_with_what_to_do(wanted: str) -> None:
    with pytest.raises(SpecError, match="; choose another one"):
        made_edits.give_plug(_two(), wanted)
    with pytest.raises(SpecError, match="choose the pocket before"):
        made_edits.give_plug(edits.choose(_two(), []).state, "o1")


def test_numbers_that_contradict_the_depth_are_refused() -> None:
    with pytest.raises(SpecError):
        made_edits.set_workshop(_two(), WorkshopNumbers(depth_per_pass_mm=1.0, floor_allowance_mm=50.0))
    after = made_edits.set_workshop(_two(), WorkshopNumbers(MachineErrors(runout_mm=0.02))).state
    assert after.workshop.errors.runout_mm == 0.02
    assert made_edits.set_workshop(after, after.workshop).state is after


def test_a_taper_belongs_to_halves_cut_by_a_beam() -> None:
    state = edits.set_kerf(_two(), Half.PLUG, 0.2).state
    spec = made_edits.set_kerf_taper(state, 0.05).state.fittings[0].spec
    assert (spec.plug.kerf_taper_mm, spec.pocket.kerf_taper_mm) == (0.05, 0.0)


def test_an_outline_remembers_what_it_was_drawn_as() -> None:
    names = edits.with_distinct_ids([_two().outlines[0]] * 2, taken=("o0",), drawing="plug.dxf")
    assert [one.id for one in names] == ["o0-2", "o0-3"]
    assert {one.id_there for one in names} == {"o0"}
    assert {one.drawing for one in names} == {"plug.dxf"}
    assert edits.with_distinct_ids(_two().outlines, taken=()) == _two().outlines


def _two() -> State:
    from inlayfit.geometry.path import Path

    outlines = tuple(outline(n, (Path.circle((30.0 * n, 0.0), 12.0),)) for n in range(2))
    return State(outlines=outlines, fittings=tuple(Fitting(o.id) for o in outlines), chosen=("o0", "o1"))
