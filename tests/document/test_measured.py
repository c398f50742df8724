from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document.measured import circle, rectangle, slot
from inlayfit.errors import SpecError

lengths = st.floats(0.5, 500)


@given(lengths)
def test_a_circle_has_the_area_of_its_diameter(diameter: float) -> None:
    outline = circle(diameter)
    assert outline.region.area == pytest.approx(math.pi * diameter**2 / 4, abs=0.0003 * math.pi * diameter)
    assert outline.contours[0].bulges.tolist() == [1, 1]


@given(lengths, lengths, st.floats(0, 1))
def test_a_rounded_rectangle_lacks_what_its_corners_take(width: float, height: float, share: float) -> None:
    radius = share * min(width, height) / 2
    outline = rectangle(width, height, corner_radius_mm=radius)
    expected = width * height - (4 - math.pi) * radius**2
    assert outline.region.area == pytest.approx(expected, abs=0.0003 * math.pi * (radius * 2 + 1))
    assert outline.region.bounds == pytest.approx((-width / 2, -height / 2, width / 2, height / 2), abs=1e-3)


@given(lengths, st.floats(0.1, 1))
def test_a_slot_is_a_rectangle_and_two_half_discs(length: float, share: float) -> None:
    width = length * share
    expected = (length - width) * width + math.pi * width**2 / 4
    assert slot(length, width).region.area == pytest.approx(expected, abs=0.0003 * math.pi * width)


@pytest.mark.parametrize("size", [0.0, -1.0, math.inf, math.nan])
def test_a_size_that_is_none_is_refused(size: float) -> None:
    for make in (circle, lambda s: rectangle(s, 5), lambda s: rectangle(5, s), lambda s: slot(5, s)):
        with pytest.raises(SpecError, match="more than 0"):
            make(size)


def test_sizes_that_contradict_each_other_are_refused() -> None:
    with pytest.raises(SpecError, match="corner radius"):
        rectangle(10, 4, corner_radius_mm=2.5)
    with pytest.raises(SpecError, match="swap the two"):
        slot(4, 10)
