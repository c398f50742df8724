"""The laws of the five classes of gap."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.fit.classes import GapClass, class_edges, classify

clearances = st.floats(-0.5, 0.5)
gaps = st.lists(st.floats(-2, 2), min_size=1, max_size=20)


@given(clearances, gaps)
def test_a_larger_gap_never_has_a_tighter_class(clearance: float, values: list[float]) -> None:
    classes = classify(np.sort(values), clearance)
    assert (np.diff(classes) >= 0).all()


@given(clearances)
def test_what_was_meant_is_on(clearance: float) -> None:
    near = [clearance, clearance + 0.0019, clearance - 0.0019]
    assert classify(near, clearance).tolist() == [GapClass.ON] * 3


@given(clearances)
def test_edges_rise_and_on_lies_evenly_about_the_target(clearance: float) -> None:
    bites, low, high, slack = class_edges(clearance)
    assert bites <= low < high < slack
    assert clearance - low == pytest.approx(high - clearance)


@given(st.floats(0.0021, 0.5), st.floats(0.00101, 1))
def test_with_a_clearance_what_is_below_zero_bites_and_nothing_else(clearance: float, depth: float) -> None:
    assert classify([-depth, 0.0], clearance).tolist()[0] == GapClass.BITES
    assert classify([0.0], clearance)[0] > GapClass.BITES


@given(st.floats(0.0021, 0.5), st.floats(0, 0.00099))
def test_walls_that_touch_within_what_a_fit_promises_do_not_bite(clearance: float, noise: float) -> None:
    assert classify([-noise], clearance)[0] == GapClass.TIGHT


@given(st.floats(-0.5, -0.0001))
def test_an_intended_interference_does_not_bite(clearance: float) -> None:
    bites, _, _, slack = class_edges(clearance)
    assert classify([clearance], clearance)[0] == GapClass.ON
    assert clearance - bites == pytest.approx(slack - clearance)
    assert classify([bites - 1e-6], clearance)[0] == GapClass.BITES


def test_the_numbers_of_a_common_fit() -> None:
    """0.05 mm per side: on within 10 %, slack to 50 %, in mm."""
    assert class_edges(0.05) == pytest.approx((-0.001, 0.045, 0.055, 0.075))
    values = [-0.0011, 0.0, 0.044, 0.045, 0.055, 0.0551, 0.075, 0.0751]
    words = [GapClass(int(k)).word for k in classify(values, 0.05)]
    assert words == ["bites", "tight", "tight", "on", "on", "slack", "slack", "loose"]


def test_letters_are_those_of_the_words() -> None:
    assert "".join(kind.letter for kind in GapClass) == "BTOSL"
