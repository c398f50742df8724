"""Coatings in the document: their faces, what they leave of the clearance, and the project file.

A film of b on both walls takes 2 b of a width, so b of the clearance per side for each coated half; on the
host's face and the floor alike it leaves the depth as it was (plane geometry).
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.bench.stack import BARE, BuildUp
from inlayfit.document.coating import (
    COATING_CODE,
    FACES,
    Face,
    build_up_mm,
    coating_fix,
    left_mm,
    set_coating,
    thickness_mm,
    with_face,
    with_thickness,
)
from inlayfit.document.edits import choose, set_clearance, set_half_state
from inlayfit.document.project_json import state_from_json, state_to_json
from inlayfit.document.sample import sample_state
from inlayfit.document.state import Fitting, State
from inlayfit.document.verdict import Check, checks
from inlayfit.errors import ProjectError
from inlayfit.fit.spec import Half, HalfState
from inlayfit.geometry.path import Path
from inlayfit.units import Unit
from tests.document.states import outline

films = st.integers(0, 100).map(lambda um: um / 1000)
coatings = st.builds(BuildUp, films, films, films, films, films, films)
halves = st.sampled_from(Half)


def coated(coating: BuildUp, *, clearance_mm: float = 0.03) -> State:
    state = set_clearance(sample_state(State()), clearance_mm).state
    return set_coating(state, coating).state


def found(state: State) -> Check | None:
    return next((c for c in checks(state, {}, {}) if c.finding.code == COATING_CODE), None)


@given(films, halves)
def test_a_thickness_typed_for_a_bare_half_coats_it_all_over(mm: float, half: Half) -> None:
    whole = with_thickness(BARE, half, mm)
    assert whole == (BuildUp.host(mm) if half is Half.POCKET else BuildUp.plug(mm))
    assert thickness_mm(whole, half) == mm


@given(coatings, halves, st.integers(1, 100).map(lambda um: um / 1000))
def test_a_masked_face_stays_masked_when_the_thickness_changes(
    coating: BuildUp, half: Half, mm: float
) -> None:
    was = {face: build_up_mm(coating, face) > 0 for face in FACES[half]}
    after = with_thickness(coating, half, mm)
    for face in Face:
        if face not in FACES[half]:
            assert build_up_mm(after, face) == build_up_mm(coating, face)
        elif any(was.values()):
            assert build_up_mm(after, face) == (mm if was[face] else 0)


@given(coatings, st.sampled_from(Face), st.booleans())
def test_a_face_is_masked_or_coated_as_the_others_of_its_half(
    coating: BuildUp, face: Face, is_coated: bool
) -> None:
    half = next(half for half, faces in FACES.items() if face in faces)
    after = with_face(coating, face, coated=is_coated)
    assert build_up_mm(after, face) == (thickness_mm(coating, half) if is_coated else 0)
    others = [each for each in Face if each is not face]
    assert [build_up_mm(after, o) for o in others] == [build_up_mm(coating, o) for o in others]


def test_a_masked_floor_is_the_bench_s_own() -> None:
    host = with_thickness(BARE, Half.POCKET, 0.025)
    assert with_face(host, Face.FLOOR, coated=False) == BuildUp.host(0.025, floor_masked=True)


@given(coatings)
def test_the_stack_of_the_bench_has_the_coating_of_the_document(coating: BuildUp) -> None:
    bare = coated(BARE).fittings[0].stack
    stack = coated(coating).fittings[0].stack
    change = coating.top_mm + coating.bottom_mm + coating.floor_mm - coating.rim_mm
    assert stack.heights.build_up == coating
    assert stack.proud_mm == pytest.approx(bare.proud_mm + change, abs=1e-12)


def test_a_coating_is_set_on_each_chosen_fitting_and_leaves_its_heights() -> None:
    outlines = tuple(outline(n, (Path.circle((0.0, 0.0), 5.0),)) for n in range(3))
    state = State(outlines=outlines, fittings=tuple(Fitting(o.id) for o in outlines))
    state = choose(state, ["o0", "o2"]).state
    deep = replace(state.fittings[2], stack=replace(state.fittings[2].stack, depth_mm=4.0))
    state = state.with_fittings((deep,))
    after = set_coating(state, BuildUp.host(0.02)).state
    assert [f.stack.coating == BuildUp.host(0.02) for f in after.fittings] == [True, False, True]
    assert [f.stack.depth_mm for f in after.fittings] == [f.stack.depth_mm for f in state.fittings]
    assert set_coating(after, BuildUp.host(0.02)).state is after


@given(coatings)
def test_a_project_keeps_it(coating: BuildUp) -> None:
    state = coated(coating)
    record = state_to_json(state)
    assert state_from_json(record).fittings == state.fittings
    assert ("coating" in record["fittings"][0]["stack"]) is (coating != BARE)


@pytest.mark.parametrize(
    ("film", "said"),
    [(-0.01, "build-up"), ("thick", "fittings[0].stack.coating.floor_mm"), (None, "floor_mm")],
)
def test_a_project_with_a_coating_that_cannot_be_is_refused(film: object, said: str) -> None:
    record = state_to_json(coated(BuildUp.host(0.02)))
    record["fittings"][0]["stack"]["coating"]["floor_mm"] = film
    with pytest.raises(ProjectError, match=said.replace("[", r"\[").replace("]", r"\]")):
        state_from_json(record)


@given(coatings, st.integers(0, 150).map(lambda um: um / 1000))
def test_a_plug_that_bites_once_coated_is_told_and_its_fix_leaves_what_is_asked(
    coating: BuildUp, clearance: float
) -> None:
    state = coated(coating, clearance_mm=clearance)
    taken = coating.pocket_wall_mm + coating.plug_wall_mm
    assert left_mm(clearance, coating) == pytest.approx(clearance - taken, abs=1e-9)
    check = found(state)
    assert (check is not None) == (round(clearance - taken, 6) < 0)
    if check is not None:
        assert check.fix is not None
        after = check.fix.apply(state).state
        assert found(after) is None
        asked = after.fittings[0].spec.clearance_mm
        assert left_mm(asked, coating) == pytest.approx(clearance, abs=1e-9)


def test_what_is_taken_is_said_per_side_and_overall_in_the_unit_of_the_document() -> None:
    state = coated(BuildUp.host(0.025).with_coat(BuildUp.plug(0.015)))
    check = found(state)
    assert check is not None
    assert check.finding.message.replace("\N{NO-BREAK SPACE}", " ") == (
        "The coating takes 0.040 mm per side (0.080 mm overall) of the clearance; "
        "then the plug bites by 0.010 mm per side (0.020 mm overall)."
    )
    assert "0.070 mm per side (0.140 mm overall)" in check.finding.remedy.replace("\N{NO-BREAK SPACE}", " ")
    inches = found(replace(state, unit=Unit.INCH))
    assert inches is not None
    assert "mm" not in inches.finding.message + inches.finding.remedy


@pytest.mark.parametrize(("clearance", "is_told"), [(-0.03, False), (-0.045, True), (-0.06, False)])
def test_a_press_fit_is_told_only_where_it_will_not_start_any_more(clearance: float, is_told: bool) -> None:
    assert (found(coated(BuildUp.plug(0.01), clearance_mm=clearance)) is not None) is is_told


def test_faces_alone_take_no_clearance() -> None:
    assert found(coated(BuildUp(rim_mm=1, floor_mm=1, top_mm=1, bottom_mm=1), clearance_mm=0)) is None


def test_of_two_made_halves_the_gap_there_is_counts_and_nothing_is_offered() -> None:
    state = coated(BuildUp.host(0.05))
    for half in Half:
        state = set_half_state(state, half, HalfState.ALREADY_CUT).state
    assert found(state) is None, "no gap is known yet"
    assert coating_fix(state.fittings[0]) is None
