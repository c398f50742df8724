from __future__ import annotations

import pytest

from inlayfit.document import edits
from inlayfit.document.outlines import Outline, region_of_contours
from inlayfit.document.remedies import fix_for
from inlayfit.document.state import Fitting, State
from inlayfit.document.verdict import Answer, Check, checks, verdict
from inlayfit.finding import Finding, Severity
from inlayfit.fit.result import FitResult
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState, Relief
from inlayfit.geometry.path import Path

L_SHAPE = [(0, 0), (30, 0), (30, 12), (12, 12), (12, 30), (0, 30)]


def _document(spec: FitSpec) -> State:
    paths = (Path.polyline(L_SHAPE),)
    outline = Outline("o1", "bracket", "0", region_of_contours(paths), paths)
    return State(outlines=(outline,), fittings=(Fitting("o1", spec),), chosen=("o1",))


def _judged(state: State) -> tuple[Answer, tuple[Check, ...], FitResult]:
    result = solve(state.outline("o1").region, state.fitting("o1").spec)
    found = checks(state, {"o1": result}, {})
    return verdict(state, {"o1": result}, found).answer, found, result


def test_a_matched_pair_goes_in_and_says_the_tightest_per_side_and_overall() -> None:
    state = _document(FitSpec(0.05))
    answer, found, result = _judged(state)
    assert answer is Answer.GOES_IN
    said = verdict(state, {"o1": result}, found).explanation
    assert "Tightest 0.050 mm per side (0.100 overall)" in said


def test_interference_has_to_be_pressed() -> None:
    answer, _, _ = _judged(_document(FitSpec(-0.02)))
    assert answer is Answer.PRESS


def test_hand_work_is_to_be_looked_at_and_its_fix_relieves_that_half() -> None:
    half = HalfSpec(3.0, relief=Relief.BY_HAND)
    for spec, which in (
        (FitSpec(0.05, half, HalfSpec(3.0)), Half.POCKET),
        (FitSpec(0.05, HalfSpec(3.0), half), Half.PLUG),
    ):
        state = _document(spec)
        answer, found, _ = _judged(state)
        assert answer is Answer.LOOK
        fix = next(c.fix for c in found if c.finding.code == "hand-work")
        assert fix is not None
        mended = fix.apply(state).state
        assert mended.fitting("o1").half(which).relief is Relief.DOG_BONE
        _, after, _ = _judged(mended)
        assert not any(c.finding.code == "hand-work" for c in after)


def test_a_clearance_that_eats_the_plug_blocks_and_its_fix_leaves_a_plug() -> None:
    state = _document(FitSpec(9.0))
    answer, found, _ = _judged(state)
    assert answer is Answer.BLOCKED
    fix = found[0].fix
    assert fix is not None
    answer, _, result = _judged(fix.apply(state).state)
    assert answer is Answer.GOES_IN
    assert result.plug.outline.area > 0


def test_corners_sharper_than_the_cutter_can_be_declared_sharp() -> None:
    state = _document(FitSpec(0.05, HalfSpec(3.0, HalfState.ALREADY_CUT), HalfSpec(3.0)))
    _, found, _ = _judged(state)
    check = next(c for c in found if c.finding.code == "sharper-than-cutter")
    assert check.fix is not None
    _, after, _ = _judged(check.fix.apply(state).state)
    assert not any(c.finding.code == "sharper-than-cutter" for c in after)


def test_two_halves_that_are_made_block_with_the_way_out() -> None:
    made = HalfSpec(3.0, HalfState.ALREADY_CUT)
    state = _document(FitSpec(0.05, made, made))
    found = checks(state, {}, {"o1": "Both halves are already cut; set one of them to cut."})
    said = verdict(state, {}, found)
    assert said.answer is Answer.BLOCKED
    assert found[0].finding.message == "Both halves are already cut."
    assert found[0].finding.remedy == "Set one of them to cut."
    assert found[0].fix is not None
    assert found[0].fix.label == "Choose the plug"
    assert found[0].fix.takes_choice
    assert found[0].fix.apply(state).state is state


def test_checks_are_ordered_by_weight_and_notes_of_the_drawing_never_decide() -> None:
    state = _document(FitSpec(0.05))
    note = Finding("doubled", Severity.BLOCK, "A line lies twice.", "Remove one.", (0.0, 0.0))
    late = edits.set_clearance(state, 0.05).state
    found = checks(
        State(outlines=late.outlines, fittings=late.fittings, chosen=late.chosen, findings=(note,)),
        {"o1": solve(state.outline("o1").region, FitSpec(0.05))},
        {},
    )
    assert found[0].finding == note
    assert [c.finding.severity.rank for c in found] == sorted(c.finding.severity.rank for c in found)
    assert verdict(state, {}, found).answer is not Answer.BLOCKED


def test_nothing_chosen_says_what_to_do() -> None:
    assert verdict(State(), {}, ()).explanation.startswith("Open")
    nothing = edits.choose(_document(FitSpec(0.05)), []).state
    assert verdict(nothing, {}, ()).explanation.startswith("Click an outline")


@pytest.mark.parametrize("code", ["neck", "dead-end", "relieved", "unheard-of"])
def test_what_no_edit_can_mend_has_no_fix(code: str) -> None:
    finding = Finding(code, Severity.WARN, "Something.", "Look.")
    assert fix_for(finding, Fitting("o1")) is None


def test_a_fix_never_touches_a_half_that_may_not_move() -> None:
    made = HalfSpec(3.0, HalfState.FINISHED)
    bites = Finding("bites", Severity.BLOCK, "It bites.", "Relieve.")
    assert fix_for(bites, Fitting("o1", FitSpec(0.05, made, made))) is None
    fix = fix_for(bites, Fitting("o1", FitSpec(0.05, HalfSpec(3.0), made)))
    assert fix is not None
    assert fix.label == "Relieve the pocket"


def test_nothing_goes_in_before_it_is_solved() -> None:
    state = _document(FitSpec(0.05))
    assert state.chosen
    assert verdict(state, {}, checks(state, {}, {})).answer is Answer.WAITING
