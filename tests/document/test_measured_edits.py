"""A pocket typed by its size, and one corrected by readings that stay with it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from inlayfit.document import edits
from inlayfit.document.imports import import_drawing
from inlayfit.document.measured import circle
from inlayfit.document.measured_edits import apply_readings, leave_readings_out, type_pocket
from inlayfit.document.pocket_readings import PocketReadings
from inlayfit.document.state import Fitting, State
from inlayfit.errors import SpecError
from inlayfit.fit.measured import Axis, Reading
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState
from inlayfit.shipped import shipped_folder


def typed(*diameters: float) -> State:
    state = State()
    for diameter in diameters:
        template = Fitting("", FitSpec(0.03, HalfSpec(2.0), HalfSpec(3.0)))
        state = type_pocket(state, circle(diameter), template=template).state
    return state


def test_typed_pockets_have_ids_of_their_own_and_the_latest_is_chosen() -> None:
    state = typed(25, 30)
    assert [o.id for o in state.outlines] == ["o1", "o2"]
    assert state.chosen == ("o2",)


def read(offset_mm: float) -> PocketReadings:
    """A pocket whose widths are all larger by as much."""
    return PocketReadings(tuple(Reading(axis, n, n + offset_mm) for axis in Axis for n in (25.0, 8.0)), 0.01)


def test_readings_are_kept_with_the_pocket_as_drawn_which_is_cut_then() -> None:
    before = typed(25)
    after = apply_readings(before, read(0.1)).state
    assert after.outlines is before.outlines
    assert after.fittings[0].readings_used == read(0.1)
    assert read(0.1).model.offset_x_mm == pytest.approx(0.1)
    spec = after.fittings[0].spec
    assert spec == replace(before.fittings[0].spec, pocket=replace(spec.pocket, state=HalfState.ALREADY_CUT))
    assert apply_readings(after, read(0.1)).state is after


def test_a_finished_pocket_that_is_measured_stays_finished() -> None:
    finished = edits.set_half_state(typed(25), Half.POCKET, HalfState.FINISHED).state
    after = apply_readings(finished, read(0.1)).state
    assert after.fittings[0].spec == finished.fittings[0].spec


def test_readings_of_a_pocket_to_cut_wait_until_it_exists() -> None:
    measured = apply_readings(typed(25), read(0.1)).state
    to_cut = edits.set_half_state(measured, Half.POCKET, HalfState.TO_CUT).state
    assert to_cut.fittings[0].readings == read(0.1)
    assert to_cut.fittings[0].readings_used is None


def test_readings_left_out_are_gone_and_leaving_none_out_changes_nothing() -> None:
    before = edits.set_half_state(typed(25), Half.POCKET, HalfState.ALREADY_CUT).state
    assert leave_readings_out(before).state is before
    assert leave_readings_out(apply_readings(before, read(0.1)).state).state == before


def test_readings_of_a_larger_pocket_are_refused() -> None:
    small = edits.set_cutter(typed(23), Half.POCKET, 0.5).state
    with pytest.raises(SpecError, match="the pocket is only 23"):
        apply_readings(small, read(0.1))


def test_a_drawing_read_anew_keeps_the_readings_of_outlines_that_stay() -> None:
    measured = apply_readings(typed(25), read(0.1)).state
    read_again = import_drawing(shipped_folder("sample_shapes") / "leaf.svg")
    wider = replace(circle(26), id="o1")
    anew = edits.replace_outlines(
        measured, replace(read_again, outlines=(wider,)), template=Fitting("")
    ).state
    assert anew.outlines[0].region == wider.region
    assert anew.fittings[0].readings == read(0.1)


def test_more_readings_than_a_page_can_show_are_refused() -> None:
    many = tuple(Reading(Axis.X, 10.0 + n, 10.0 + n) for n in range(41))
    with pytest.raises(SpecError, match="has 41 readings; keep the 40"):
        PocketReadings(many, 0.01)


def test_readings_are_refused_for_several_pockets() -> None:
    state = typed(25, 30)
    both = State(outlines=state.outlines, fittings=state.fittings, chosen=("o1", "o2"))
    with pytest.raises(SpecError, match="one pocket"):
        apply_readings(both, read(0.1))
    with pytest.raises(SpecError, match="one pocket"):
        leave_readings_out(both)
