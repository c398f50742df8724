"""Feel words: every clearance has one, in order. The first edges are common practice, from memory."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.errors import SpecError
from inlayfit.fit.feel import SEED_ZONES, Feel, FeelZones

edges = st.lists(st.integers(-500, 500), min_size=5, max_size=5, unique=True).map(
    lambda um: FeelZones(*[tuple(sorted(v / 1000 for v in um))])  # type: ignore[arg-type] # five of them
)


@given(edges, st.floats(-1, 1), st.floats(0, 1))
def test_more_clearance_never_feels_tighter(zones: FeelZones, clearance: float, more: float) -> None:
    order = list(Feel)
    assert order.index(zones.feel_at(clearance)) <= order.index(zones.feel_at(clearance + more))


@given(edges, st.floats(-1, 1))
def test_a_clearance_lies_in_the_span_of_its_word(zones: FeelZones, clearance: float) -> None:
    low, high = zones.span_mm(zones.feel_at(clearance))
    assert low < clearance <= high


@given(edges, st.sampled_from(Feel))
def test_the_middle_of_a_word_has_that_feel(zones: FeelZones, feel: Feel) -> None:
    assert zones.feel_at(zones.middle_mm(feel)) is feel


@given(edges)
def test_the_words_cover_everything_without_overlap(zones: FeelZones) -> None:
    spans = [zones.span_mm(feel) for feel in Feel]
    assert spans[0][0] == -math.inf
    assert spans[-1][1] == math.inf
    assert [high for _, high in spans[:-1]] == [low for low, _ in spans[1:]]


def test_edges_that_do_not_rise_are_refused() -> None:
    with pytest.raises(SpecError, match="rise"):
        FeelZones((0.0, 0.0, 0.1, 0.2, 0.3))


def test_the_first_edges_put_a_small_gap_at_snug_and_a_small_bite_at_tap_in() -> None:
    assert SEED_ZONES.feel_at(0.03) is Feel.SNUG
    assert SEED_ZONES.feel_at(-0.01) is Feel.TAP_IN
    assert all(feel.test for feel in Feel)
