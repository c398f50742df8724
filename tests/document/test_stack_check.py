"""The check of heights. proud = plug + tape − depth, as in the docstring of `inlayfit.bench.stack`."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document.sample import sample_state
from inlayfit.document.stack_check import HEIGHT_CODE, height_finding, height_fix, off_by_mm
from inlayfit.document.state import Fitting, StackNumbers, State
from inlayfit.document.verdict import checks
from inlayfit.fit.spec import HalfState
from inlayfit.units import Unit

UNFELT_MM = 0.01


def um(low: int, high: int) -> st.SearchStrategy[float]:
    return st.integers(low, high).map(lambda n: n / 1000)


stacks = st.builds(
    StackNumbers,
    depth_mm=um(500, 6000),
    plug_mm=um(500, 6000),
    glue_mm=um(0, 300),
    target_proud_mm=um(-400, 400),
    spread_mm=um(0, 80),
)


def sample(stack: StackNumbers | None = None, *, pocket: HalfState = HalfState.TO_CUT) -> State:
    state = sample_state(State())
    (fitting,) = state.fittings
    spec = replace(fitting.spec, pocket=replace(fitting.spec.pocket, state=pocket))
    return replace(state, fittings=(replace(fitting, spec=spec, stack=stack or fitting.stack),))


def only(state: State) -> Fitting:
    (fitting,) = state.fittings
    return fitting


@given(stacks)
def test_it_speaks_where_no_reading_could_meet_the_wanted_height(stack: StackNumbers) -> None:
    height = stack.plug_mm + stack.glue_mm - stack.depth_mm
    apart = abs(height - stack.target_proud_mm) - stack.spread_mm
    if abs(apart - UNFELT_MM) < 1e-6:
        return
    found = height_finding(only(sample(stack)))
    assert (found is not None) == (apart > UNFELT_MM)
    if found is not None:
        assert ("higher" in found.message) == (height > stack.target_proud_mm)


@given(stacks)
def test_its_fix_brings_the_plug_to_where_it_is_wanted(stack: StackNumbers) -> None:
    state = sample(stack)
    fix = height_fix(only(state))
    needed = stack.plug_mm + stack.glue_mm - stack.target_proud_mm
    if height_finding(only(state)) is None or needed <= 0:
        assert fix is None
        return
    assert fix is not None
    after = only(fix.apply(state).state)
    assert after.stack == replace(stack, depth_mm=after.stack.depth_mm)
    assert after.stack.proud_mm == pytest.approx(stack.target_proud_mm, abs=1e-6)
    assert height_finding(after) is None


@pytest.mark.parametrize("made", [HalfState.ALREADY_CUT, HalfState.FINISHED])
def test_a_made_pocket_is_not_cut_deeper(made: HalfState) -> None:
    fitting = only(sample(StackNumbers(glue_mm=0.13), pocket=made))
    found = height_finding(fitting)
    assert found is not None
    assert height_fix(fitting) is None
    assert "Cut the pocket" not in found.remedy
    assert off_by_mm(fitting) == pytest.approx(0.13)


def test_it_stands_among_the_checks_with_its_fix_and_in_their_unit() -> None:
    state = sample(StackNumbers(glue_mm=0.127))
    (check,) = checks(state, {}, {})
    assert check.finding.code == HEIGHT_CODE
    assert check.fix is not None
    assert checks(fixed := check.fix.apply(state).state, {}, {}) == ()
    assert only(fixed).stack.depth_mm == pytest.approx(3.127)
    (in_thou,) = checks(replace(state, unit=Unit.THOU), {}, {})
    assert "5.0\N{NO-BREAK SPACE}thou higher" in in_thou.finding.message  # 0.127 mm / 25.4 mm in an inch


def test_the_sample_is_flush_as_far_as_its_readings_tell() -> None:
    assert height_finding(only(sample_state(State()))) is None
