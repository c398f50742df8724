"""ISO 286 against rows published elsewhere; the source stands beside each."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.bench.limits import fit_limits, grade_mm, hole_zone, shaft_zone
from inlayfit.errors import SpecError

# size, fit, EI, ES, ei, es, least and greatest clearance (µm), kind.
# A: Aeronautical Engineer's Data Book, table 12.6 (BS 4500). B: ANSI B4.2, 10 mm, widths of its shaft-basis
# rows. C: Shigley, Mechanical Engineering Design, 9th ed., example 7-7. D: its solutions, 3-64 and 3-66.
# E: an encyclopaedia's worked example. F: ANSI B4.2, footnote: H7/p6 is a transition fit up to 3 mm.
# P: package pressfit 0.1.0, which agrees with an independent transcription.
ROWS = [
    (6, "H7/g6", 0, 12, -12, -4, 4, 24, "clearance"),  # P
    (6, "H7/h6", 0, 12, -8, 0, 0, 20, "clearance"),  # P
    (10, "H7/k6", 0, 15, 1, 10, -10, 14, "transition"),  # A, B
    (10, "H7/n6", 0, 15, 10, 19, -19, 5, "transition"),  # A, B
    (10, "H7/p6", 0, 15, 15, 24, -24, 0, "interference"),  # A, B
    (10, "H7/s6", 0, 15, 23, 32, -32, -8, "interference"),  # A, B
    (10, "H7/u6", 0, 15, 28, 37, -37, -13, "interference"),  # B
    (25, "H7/g6", 0, 21, -20, -7, 7, 41, "clearance"),  # A
    (25, "H7/h6", 0, 21, -13, 0, 0, 34, "clearance"),  # A
    (25, "H7/js6", 0, 21, -6.5, 6.5, -6.5, 27.5, "transition"),  # P
    (25, "H7/k6", 0, 21, 2, 15, -15, 19, "transition"),  # A
    (25, "H7/n6", 0, 21, 15, 28, -28, 6, "transition"),  # A
    (25, "H7/p6", 0, 21, 22, 35, -35, -1, "interference"),  # A
    (25, "H7/s6", 0, 21, 35, 48, -48, -14, "interference"),  # A
    (25, "H8/f7", 0, 33, -41, -20, 20, 74, "clearance"),  # A
    (25, "H9/d9", 0, 52, -117, -65, 65, 169, "clearance"),  # P
    (25, "H11/c11", 0, 130, -240, -110, 110, 370, "clearance"),  # A
    (34, "H11/c11", 0, 160, -280, -120, 120, 440, "clearance"),  # C
    (40, "H7/s6", 0, 25, 43, 59, -59, -18, "interference"),  # A, D
    (40, "H7/u6", 0, 25, 60, 76, -76, -35, "interference"),  # D
    (50, "H8/f7", 0, 39, -50, -25, 25, 89, "clearance"),  # E
    (3, "H7/p6", 0, 10, 6, 12, -12, 4, "transition"),  # F
    (60, "H7/s6", 0, 30, 53, 72, -72, -23, "interference"),  # P
    (70, "H7/s6", 0, 30, 59, 78, -78, -29, "interference"),  # P
    (120, "H9/d9", 0, 87, -207, -120, 120, 294, "clearance"),  # P
    (500, "H7/p6", 0, 63, 68, 108, -108, -5, "interference"),  # P
]


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row[0]} {row[1]}")
def test_a_fit_is_as_published(row: tuple[float, str, float, float, float, float, float, float, str]) -> None:
    size, name, *numbers, kind = row
    fit = fit_limits(size, name)
    got = (
        fit.hole.lower_mm, fit.hole.upper_mm, fit.shaft.lower_mm, fit.shaft.upper_mm, *fit.overall_mm,
    )  # fmt: skip
    assert [1000 * v for v in got] == pytest.approx(numbers, abs=1e-9)
    assert fit.per_side_mm == pytest.approx([v / 2000 for v in numbers[4:]], abs=1e-12)
    assert fit.kind == kind


@pytest.mark.parametrize(
    ("grade", "size", "micrometres"),
    [(14, 10, 360), (14, 100, 870), (7, 18, 18), (7, 18.001, 21), (11, 50, 160), (11, 315, 320), (9, 6, 30)],
)
def test_a_band_ends_with_its_upper_size(grade: int, size: float, micrometres: float) -> None:
    # ISO 286-1 table 1 as an encyclopaedia copies it; the last three are places where other copies are wrong.
    assert grade_mm(size, grade) * 1000 == pytest.approx(micrometres)


@given(
    st.floats(3.001, 500), st.sampled_from([(5, 7), (6, 10), (7, 16), (8, 25), (9, 40), (10, 64), (11, 100)])
)
def test_the_table_follows_the_tolerance_unit(size: float, grade_and_units: tuple[int, float]) -> None:
    # ISO 286-1:1988: i = 0.45·∛D + 0.001·D in µm, D the geometric mean of the band; a sanity check only,
    # since the table is rounded (worst 9 % in the band of 3 to 6 mm).
    grade, units = grade_and_units
    bands = (3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500)
    upper = next(b for b in bands if size <= b)
    mean = math.sqrt(upper * bands[bands.index(upper) - 1])
    formula = units * (0.45 * mean ** (1 / 3) + 0.001 * mean)
    assert grade_mm(size, grade) * 1000 == pytest.approx(formula, rel=0.10)


@given(st.floats(0.5, 500), st.integers(5, 14))
def test_looser_letters_lie_lower_and_every_zone_is_its_grade_wide(size: float, grade: int) -> None:
    letters = ["c", "d", "e", "f", "g", "h", "js", "k", "m", "n", "p", "s", "u"]
    zones = [shaft_zone(size, f"{letter}{grade}") for letter in letters]
    assert all(a.middle_mm <= b.middle_mm + 1e-12 for a, b in pairwise(zones))
    for zone in (*zones, hole_zone(size, f"H{grade}"), hole_zone(size, f"JS{grade}")):
        assert 2 * zone.half_width_mm == pytest.approx(grade_mm(size, grade))


@pytest.mark.parametrize("size", [0, -3, 500.1, math.nan, math.inf])
def test_a_size_outside_the_table_is_refused(size: float) -> None:
    with pytest.raises(SpecError, match="outside the table"):
        fit_limits(size, "H7/g6")


@pytest.mark.parametrize(
    "text",
    ["H7", "", "/", "H7/", "G7/h6", "H4/g6", "H7/G6", "h7/g6", "H7/g99", "H7/g6/g6", "H\u0667/g6", "é7/g6"],
)
def test_an_unknown_fit_is_refused_in_one_sentence(text: str) -> None:
    with pytest.raises(SpecError) as refusal:
        fit_limits(25, text)
    assert str(refusal.value).count(". ") == 0
