from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given

from inlayfit.document.sentence import PATTERN, PLACES, parts, sentence
from inlayfit.document.state import Fitting, State
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState
from inlayfit.units import Unit
from tests.document.states import documents
from tests.strategies import examples


@given(documents(least=1))
@examples(20, 200)
def test_a_state_refuses_to_contradict_itself(state: State) -> None:
    with pytest.raises(ValueError, match="exactly one fitting"):
        replace(state, fittings=state.fittings[:-1])
    with pytest.raises(ValueError, match="only existing"):
        replace(state, chosen=("nobody",))
    with pytest.raises(ValueError, match="one id"):
        replace(state, outlines=(*state.outlines, state.outlines[0]))


def test_the_drawing_shows_the_plug_only_if_the_plug_alone_is_made() -> None:
    made = HalfSpec(3.0, HalfState.ALREADY_CUT)
    free = HalfSpec(3.0)
    assert Fitting("a", FitSpec(0.1, free, made)).drawn is Half.PLUG
    assert Fitting("a", FitSpec(0.1, free, free)).drawn is Half.POCKET
    assert Fitting("a", FitSpec(0.1, made, free)).drawn is Half.POCKET
    assert Fitting("a", FitSpec(0.1, made, made)).drawn is Half.POCKET


@given(documents(least=1))
@examples(20, 200)
def test_the_sentence_says_every_place_and_the_pair_agrees(state: State) -> None:
    lead = state.lead
    assert lead is not None
    text = sentence(lead, state.unit)
    assert text.endswith(".")
    assert "per side (" in text
    assert {part.text for part in parts(PATTERN) if part.is_place} == set(PLACES)


def test_overall_is_twice_what_is_shown_per_side() -> None:
    # 0.0305 shows as 0.031 (a half rounds away from zero), so overall must read 0.062, not 0.061.
    fitting = Fitting("a", FitSpec(0.0305))
    assert "0.031 mm per side (0.062 overall)" in sentence(fitting, Unit.MM)


def test_a_pattern_that_loses_a_place_is_refused() -> None:
    with pytest.raises(ValueError, match="each place exactly once"):
        parts(PATTERN.replace("{glue}", "glue"))
