from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.measures import Kind, Measure, area, at, entry, length, per_side, point, size
from inlayfit.units import Unit, format_per_side

millimetres = st.floats(-1000, 1000)


@pytest.mark.parametrize(
    ("measure", "text"),
    [
        (length(0.05), "0.050 mm"),
        (length(-0.004, ".2f"), "0.00 mm"),
        (length(-0.006, ".2f"), "−0.01 mm"),
        (at((-0.001, -0.0)), "x 0.00, y 0.00"),
        (point((-0.001, 2.0)), "(0.00, 2.00) mm"),
        (length(3.0, "g"), "3 mm"),
        (entry(3.1750), "3.175 mm"),
        (at((12.5, -3.0)), "x 12.50, y −3.00"),
        (point((12.5, -3.0)), "(12.50, -3.00) mm"),
        (size(12000.0, 30.0, ",.0f"), "12,000 × 30 mm"),
        (area(0.1449), "0.14 mm²"),
    ],
)
def test_a_measure_is_worded_in_millimetres(measure: Measure, text: str) -> None:
    assert str(measure) == text
    assert measure.in_unit(Unit.MM) is measure


@given(millimetres, st.sampled_from([Unit.MM, Unit.INCH, Unit.THOU]))
def test_a_gap_is_worded_as_the_readouts_word_it(gap_mm: float, unit: Unit) -> None:
    assert per_side(gap_mm, unit) == format_per_side(gap_mm, unit, with_unit=True)


@given(st.sampled_from(Kind), millimetres, millimetres)
def test_going_to_inches_and_back_changes_no_number(kind: Kind, x: float, y: float) -> None:
    measure = Measure("", kind, (x, y))
    assert measure.in_unit(Unit.INCH).in_unit(Unit.THOU) == measure.in_unit(Unit.THOU)
