"""What may be asked of a fit; what may not is refused in one sentence that says what to do."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import FrozenInstanceError

import pytest

from inlayfit.errors import SpecError
from inlayfit.fit.spec import LARGEST_CLEARANCE_MM, SMALLEST_CUTTER_MM, FitSpec, HalfSpec, HalfState, Relief

NOT_NUMBERS = [math.nan, math.inf, -math.inf]


def refusal(call: Callable[[], object]) -> str:
    with pytest.raises(SpecError) as caught:
        call()
    text = str(caught.value)
    assert text.endswith(".")
    assert text.count(". ") == 0, "one sentence"
    assert ";" in text or "," in text, "what is wrong, and what to do"
    return text


@pytest.mark.parametrize("value", NOT_NUMBERS)
def test_a_half_takes_only_numbers(value: float) -> None:
    for half in (
        lambda: HalfSpec(value),
        lambda: HalfSpec(3.0, finishing_allowance_mm=value),
        lambda: HalfSpec(0.0, kerf_mm=value),
    ):
        assert "not a finite number" in refusal(half)


@pytest.mark.parametrize("value", NOT_NUMBERS)
def test_a_clearance_is_a_number(value: float) -> None:
    assert "clearance" in refusal(lambda: FitSpec(value))


@pytest.mark.parametrize("value", [-3.0, -0.001, 0.009, 1e-9])
def test_a_cutter_has_a_size(value: float) -> None:
    assert "too small" in refusal(lambda: HalfSpec(value))


def test_an_allowance_and_a_kerf_are_not_negative() -> None:
    assert "allowance" in refusal(lambda: HalfSpec(3, finishing_allowance_mm=-0.1))
    assert "kerf" in refusal(lambda: HalfSpec(0, kerf_mm=-0.1))


@pytest.mark.parametrize("value", [20.001, -20.001, 500.0])
def test_a_clearance_of_another_unit_is_noticed(value: float) -> None:
    assert "check its unit" in refusal(lambda: FitSpec(value))


@pytest.mark.parametrize("value", [0.0, LARGEST_CLEARANCE_MM, -LARGEST_CLEARANCE_MM])
def test_the_largest_clearances_are_allowed(value: float) -> None:
    assert FitSpec(value).clearance_mm == value


def test_the_smallest_cutter_is_allowed_and_none_is_a_beam() -> None:
    assert HalfSpec(SMALLEST_CUTTER_MM).radius_mm == SMALLEST_CUTTER_MM / 2
    assert HalfSpec(0.0, kerf_mm=0.2).radius_mm == 0.1
    assert HalfSpec(0.0).radius_mm == 0


def test_only_a_half_to_cut_may_move() -> None:
    assert [HalfSpec(3, state).may_move for state in HalfState] == [True, False, False]


def test_the_words_of_states_and_reliefs_are_those_of_the_command_line() -> None:
    assert [state.value for state in HalfState] == ["to-cut", "already-cut", "finished"]
    assert [relief.value for relief in Relief] == ["rounded", "dog-bone", "t-bone", "by-hand"]


def test_a_spec_is_a_value() -> None:
    spec = FitSpec(0.05, HalfSpec(3), HalfSpec(2))
    assert spec == FitSpec(0.05, HalfSpec(3), HalfSpec(2))
    assert hash(spec) == hash(FitSpec(0.05, HalfSpec(3), HalfSpec(2)))
    assert spec.with_clearance(0.1) == FitSpec(0.1, HalfSpec(3), HalfSpec(2))
    assert spec.clearance_mm == 0.05
    with pytest.raises(FrozenInstanceError):
        spec.clearance_mm = 1.0  # type: ignore[misc]
