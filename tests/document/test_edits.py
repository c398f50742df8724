from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document import edits
from inlayfit.document.edits import Edit
from inlayfit.document.imports import Outline
from inlayfit.document.outlines import region_of_contours
from inlayfit.document.state import Fitting, State
from inlayfit.fit.feel import Feel
from inlayfit.fit.spec import FitSpec, Half, HalfState, Relief
from inlayfit.geometry.path import Path
from inlayfit.units import Unit
from tests.document.states import documents, edits_of
from tests.strategies import examples


def _two_circles() -> State:
    outlines = []
    for i in range(2):
        circle = (Path.circle((30.0 * i, 0.0), 10.0),)
        outlines.append(Outline(f"o{i}", f"disc {i}", "0", region_of_contours(circle), circle))
    fittings = tuple(Fitting(o.id) for o in outlines)
    return State(outlines=tuple(outlines), fittings=fittings, chosen=("o0",))


@given(documents(), edits_of())
@examples(60, 400)
def test_an_edit_done_twice_changes_nothing_the_second_time(state: State, edit: object) -> None:
    once = edit(state)  # type: ignore[operator]  # a strategy's value
    assert edit(once.state).state is once.state  # type: ignore[operator]
    assert once.text


@given(documents(), st.lists(edits_of(), max_size=8))
@examples(30, 300)
def test_edits_keep_what_they_do_not_speak_of(state: State, several: list[object]) -> None:
    after = state
    for edit in several:
        after = edit(after).state  # type: ignore[operator]
    assert [o.contours for o in after.outlines] == [o.contours for o in state.outlines]
    assert after.trials == state.trials
    assert after.source == state.source


def test_an_edit_acts_on_what_is_chosen_and_on_nothing_else() -> None:
    state = _two_circles()
    after = edits.set_clearance(state, 0.1).state
    assert after.fitting("o0").spec.clearance_mm == 0.1
    assert after.fitting("o1") is state.fitting("o1")


def test_the_words_are_the_persons_and_in_their_unit() -> None:
    state = _two_circles()
    assert edits.set_clearance(state, 0.15).text == "Set clearance to 0.150 mm per side"
    inches = edits.set_unit(state, Unit.INCH).state
    assert edits.set_cutter(inches, Half.PLUG, 3.175).text == "Set plug cutter to 0.125 in"
    assert (
        edits.set_half_state(state, Half.POCKET, HalfState.ALREADY_CUT).text == "Mark pocket as already cut"
    )


def test_a_name_with_braces_is_said_as_it_is() -> None:
    assert edits.rename_outline(_two_circles(), "o0", "{0} {x}").text == "Name an outline {0} {x}"


def test_using_a_drawing_as_plug_makes_it_the_half_that_exists() -> None:
    after = edits.use_as(_two_circles(), Half.PLUG).state
    spec = after.fitting("o0").spec
    assert spec.plug.state is HalfState.ALREADY_CUT
    assert spec.pocket.state is HalfState.TO_CUT
    assert after.fitting("o0").drawn is Half.PLUG
    assert edits.use_as(after, Half.POCKET).state.fitting("o0").drawn is Half.POCKET


def test_a_feel_keeps_a_clearance_that_has_it_already() -> None:
    state = edits.set_clearance(_two_circles(), 0.012).state
    assert edits.set_feel(state, Feel.SNUG).state is state
    moved = edits.set_feel(state, Feel.SLIP).state.fitting("o0").spec
    assert moved == FitSpec(0.1)


def test_removing_outlines_removes_their_fits() -> None:
    after = edits.remove_chosen(_two_circles()).state
    assert [o.id for o in after.outlines] == ["o1"]
    assert [f.outline_id for f in after.fittings] == ["o1"]
    assert after.chosen == ()
    assert edits.remove_chosen(after).state is after


def test_outlines_added_twice_get_ids_of_their_own() -> None:
    state = _two_circles()

    class Imported:
        outlines = state.outlines
        findings = ()
        unit = Unit.MM

    after = edits.add_outlines(state, Imported, template=Fitting("")).state  # type: ignore[arg-type]  # a stand-in
    assert [o.id for o in after.outlines] == ["o0", "o1", "o0-2", "o1-2"]
    assert after.chosen == ("o0-2", "o1-2")


@pytest.mark.parametrize(
    ("pocket", "plug", "words"),
    [
        (Relief.ROUNDED, Relief.ROUNDED, "rounded to match"),
        (Relief.ROUNDED, Relief.DOG_BONE, "dog-bone in the plug"),
        (Relief.T_BONE, Relief.ROUNDED, "T-bone in the pocket"),
        (Relief.BY_HAND, Relief.BY_HAND, "left for hand work"),
        (Relief.DOG_BONE, Relief.DOG_BONE, "dog-bone in both"),
        (Relief.BY_HAND, Relief.DOG_BONE, "left for hand work in the pocket, dog-bone in the plug"),
    ],
)
def test_corners_of_both_halves_are_said_in_one_breath(pocket: Relief, plug: Relief, words: str) -> None:
    edit: Edit = edits.set_corners(_two_circles(), pocket=pocket, plug=plug)
    assert edits.corner_words(pocket=pocket, plug=plug) == words
    assert edit.text == f"Set corners to {words}"


def test_an_edit_of_the_unit_is_said_in_a_word() -> None:
    """Beside a word, the sign of inches reads like a slip: “in in”."""
    edit = edits.set_unit(State(), Unit.INCH)
    assert str(edit.text) == "Show lengths in inches"
