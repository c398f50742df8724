"""Laws of typed and shown lengths.

The exact pairs are those of NIST SP 811 (2008), appendix B.8, which prints exact factors in bold:
inch 2.54 E-02 m, foot 3.048 E-01 m, mil (0.001 in) 2.54 E-02 mm, micron 1.0 E-06 m (values quoted from
memory). A second opinion comes from the unit table of ezdxf, which follows the DXF reference.
"""

from __future__ import annotations

import math
from fractions import Fraction

import ezdxf.units
import pytest
from ezdxf.enums import InsertUnits
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.typed_length import parse_length, parse_unit
from inlayfit.units import Length, Unit, format_entry, format_in_both, format_length, format_per_side

IN = Fraction(254, 10)


def test_exact_factors_are_those_of_nist_sp_811() -> None:
    metre = Unit.M.mm
    assert Unit.INCH.mm / metre == Fraction("0.0254")
    assert Unit.FOOT.mm / metre == Fraction("0.3048")
    assert Unit.THOU.mm == Fraction("0.0254")
    assert Unit.MICROMETRE.mm / metre == Fraction(1, 10**6)
    assert Unit.FOOT.mm == 12 * Unit.INCH.mm
    assert Unit.TENTH.mm * 10 == Unit.THOU.mm


@pytest.mark.parametrize(
    ("unit", "insunits"),
    [(Unit.INCH, 1), (Unit.FOOT, 2), (Unit.CM, 5), (Unit.M, 6)],
)
def test_factors_agree_with_the_unit_table_of_a_dxf_library(unit: Unit, insunits: int) -> None:
    assert math.isclose(
        ezdxf.units.conversion_factor(InsertUnits(insunits), InsertUnits.Millimeters),
        float(unit.mm),
        rel_tol=1e-9,
    )


@given(st.integers(min_value=-(10**8), max_value=10**8), st.lists(st.sampled_from(list(Unit)), max_size=20))
def test_showing_a_length_in_other_units_never_changes_it(nanometres: int, units: list[Unit]) -> None:
    start = Length(Fraction(nanometres, 10**6))
    length = start
    for unit in units:
        length = Length.of(length.in_unit(unit), unit)
    assert length == start


@pytest.mark.parametrize("typed", ["3.175 mm", "1/3 in", "0.0305 mm", "-2 tenths", "7 thou"])
def test_a_thousand_unit_toggles_do_not_drift(typed: str) -> None:
    start = parse_length(typed, default=Unit.MM)
    units = list(Unit)
    length = start
    for turn in range(1000):
        length = Length.of(length.in_unit(units[turn % len(units)]), units[turn % len(units)])
    assert length == start


@pytest.mark.parametrize("micrometres", [1, -1, 30, 305, 3175, 25_400, 99_999, 240_000])
def test_a_thousand_toggles_through_the_text_of_a_box_keep_every_whole_micrometre(micrometres: int) -> None:
    start = Fraction(micrometres, 1000)
    length = Length(start)
    units = list(Unit)
    for turn in range(1000):
        unit = units[turn % len(units)]
        length = parse_length(format_entry(length, unit), default=unit)
    assert abs(length.mm - start) < Fraction(1, 2000)
    assert format_length(length, Unit.MM) == format_length(start, Unit.MM)


@given(st.integers(min_value=-(10**9), max_value=10**9), st.sampled_from(list(Unit)))
def test_what_a_box_shows_reads_back_within_half_a_micrometre(micrometres: int, unit: Unit) -> None:
    mm = Fraction(micrometres, 1000)
    text = format_entry(mm, unit)
    assert abs(parse_length(text, default=Unit.MM).mm - mm) <= Fraction(1, 2000)


def test_clearance_is_shown_per_side_and_overall() -> None:
    assert format_per_side(0.03, Unit.MM) == "0.030 per side (0.060 overall)"
    assert format_per_side(-0.02, Unit.MM) == "−0.020 per side (−0.040 overall)"
    assert format_per_side(0.0508, Unit.THOU, with_unit=True) == "2.0 thou per side (4.0 thou overall)"
    assert format_per_side(float("nan"), Unit.MM) == "–"


@given(st.floats(min_value=-20, max_value=20), st.sampled_from(list(Unit)))
def test_overall_is_exactly_twice_what_is_shown_per_side(clearance_mm: float, unit: Unit) -> None:
    side, overall = (
        part.split(" ")[0].replace("−", "-") for part in format_per_side(clearance_mm, unit).split("(")
    )
    assert Fraction(overall) == 2 * Fraction(side)


def test_halves_round_away_from_zero_on_both_sides() -> None:
    assert format_length(0.0305, Unit.MM) == "0.031 mm"
    assert format_length(-0.0305, Unit.MM) == "−0.031 mm"
    assert format_per_side(0.0305, Unit.MM) == "0.031 per side (0.062 overall)"


def test_a_shown_zero_has_no_sign() -> None:
    assert format_length(-0.0002, Unit.MM) == "0.000 mm"
    assert format_length(-0.0, Unit.MICROMETRE) == "0 µm"


def test_a_length_is_echoed_in_both_systems() -> None:
    assert format_in_both(parse_length("1/8 in", default=Unit.MM), Unit.INCH) == "0.125 in = 3.175 mm"
    assert format_in_both(3.175, Unit.MM) == "3.175 mm = 0.125 in"


def test_every_symbol_names_its_own_unit() -> None:
    assert all(parse_unit(unit.symbol) is unit for unit in Unit)


@given(st.integers(min_value=-(10**9), max_value=10**9))
def test_a_length_as_a_float_is_the_nearest_one(nanometres: int) -> None:
    assert float(Length(Fraction(nanometres, 10**6))) == nanometres / 10**6
