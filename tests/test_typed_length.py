"""Laws of typed lengths: every form that is read, every text that is refused."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from inlayfit.errors import LengthError
from inlayfit.typed_length import parse_length, parse_unit
from inlayfit.units import LARGEST_LENGTH_MM, Length, Unit

IN = Fraction(254, 10)

ACCEPTED: list[tuple[str, Unit, Fraction]] = [
    ("1/8 in", Unit.MM, IN / 8),
    ("1/8in", Unit.MM, IN / 8),
    ("1 / 8 in", Unit.MM, IN / 8),
    ('1 3/8"', Unit.MM, IN * 11 / 8),
    ("1-1/2 in", Unit.MM, IN * 3 / 2),
    ("-1-1/2 in", Unit.MM, -IN * 3 / 2),
    ("1-½ in", Unit.MM, IN * 3 / 2),
    ("½ in", Unit.MM, IN / 2),
    ("1½″", Unit.MM, IN * 3 / 2),
    ("1 ⅜ in.", Unit.MM, IN * 11 / 8),
    ("3/2 in", Unit.MM, IN * 3 / 2),
    ("3⁄16 in", Unit.MM, IN * 3 / 16),
    ("35 thou", Unit.MM, IN * 35 / 1000),
    ('.035"', Unit.MM, IN * 35 / 1000),
    ("0.035''", Unit.MM, IN * 35 / 1000),
    ("2 tenths", Unit.MM, IN * 2 / 10_000),
    ("0.2mm", Unit.INCH, Fraction(1, 5)),
    ("0,2 mm", Unit.INCH, Fraction(1, 5)),
    (",5 mm", Unit.INCH, Fraction(1, 2)),
    ("0,250 mm", Unit.INCH, Fraction(1, 4)),
    ("12,5 mm", Unit.INCH, Fraction(25, 2)),
    ("1.250 mm", Unit.INCH, Fraction(5, 4)),
    ("3 mm - 8 thou", Unit.MM, 3 - IN * 8 / 1000),
    ("3 - 8 thou", Unit.THOU, -IN * 5 / 1000),
    ("1 in + 1/8 in + 2 thou", Unit.MM, IN * 1127 / 1000),
    ("12 µm", Unit.MM, Fraction(12, 1000)),
    ("12 μm", Unit.MM, Fraction(12, 1000)),
    ("12um", Unit.MM, Fraction(12, 1000)),
    ("5 cm", Unit.MM, Fraction(50)),
    ("0.24 m", Unit.MM, Fraction(240)),
    ("1 ft", Unit.MM, Fraction(3048, 10)),
    ("1' + 3\"", Unit.MM, Fraction(3048, 10) + 3 * IN),
    ("0.05", Unit.MM, Fraction(1, 20)),
    ("0.05", Unit.INCH, IN / 20),
    ("-0.02", Unit.MM, Fraction(-1, 50)),
    ("−0.02 mm", Unit.MM, Fraction(-1, 50)),
    ("- 2 thou", Unit.MM, -IN * 2 / 1000),
    ("+3 MM", Unit.INCH, Fraction(3)),
    ("3\u00a0mm", Unit.INCH, Fraction(3)),
    ("2.5e-2 mm", Unit.INCH, Fraction(1, 40)),
    ("0", Unit.MM, Fraction(0)),
]

REFUSED: list[tuple[str, str]] = [
    ("2 mil", "write thou or mm"),
    ("mils", "write thou or mm"),
    ("1,250", "write 1.250 or 1250"),
    ("12,500 mm", "write 12.500 or 12500"),
    ("1,250.5", "more than one decimal mark"),
    ("1,250,000", "more than one decimal mark"),
    ("1.2.3 mm", "more than one decimal mark"),
    ("3 3/2 in", "not less than one"),
    ("1 8/8 in", "not less than one"),
    ("1.5 1/2 in", "not whole"),
    ("1.5/2 in", "not whole"),
    ("1 - 1/2 in", "give every number its unit"),
    ("1 -1/2 in", "sum or as a mixed number"),
    ("3 - 8 thou", "give every number its unit"),
    ("", "No length was given"),
    ("   ", "No length was given"),
    ("3 mm 8 thou", "put + or - between"),
    ("5' 3\"", "put + or - between"),
    ("1 250 mm", "two numbers side by side"),
    ("½½ in", "two lengths side by side"),
    ("3 mm in", "two units"),
    ("1/0 in", "divides by zero"),
    ("0/0", "divides by zero"),
    ("1/ in", "behind the fraction bar"),
    ("/8 in", "in front of the fraction bar"),
    ("3 mm / 2", "divides a length"),
    ("NaN", "not a finite number"),
    ("inf", "not a finite number"),
    ("-Infinity mm", "not a finite number"),
    ("1e999", "exponent"),
    ("1e-999999999 mm", "exponent"),
    ("999999 m", "longer than a kilometre"),
    ("3 furlongs", "“furlongs” is not a unit known here"),
    ("furlongs", "“furlongs” is not a unit known here"),
    ("mm", "type the number in front"),
    ("3 mm -", "ends with + or -"),
    ("-", "ends with + or -"),
    ("--3", "two signs in a row"),
    ("3 mm + - 2 mm", "two signs in a row"),
    ("3*2", "“*”"),
    ("٣ mm", "no meaning in a length"),
    ("3\x00mm", "an invisible character"),
    ("9" * 5000, "too long"),
]


@pytest.mark.parametrize(("text", "default", "mm"), ACCEPTED)
def test_every_accepted_form_is_read_exactly(text: str, default: Unit, mm: Fraction) -> None:
    assert parse_length(text, default=default).mm == mm


@pytest.mark.parametrize(("text", "says"), REFUSED)
def test_what_could_mean_two_lengths_is_refused_in_one_sentence(text: str, says: str) -> None:
    with pytest.raises(LengthError) as caught:
        parse_length(text, default=Unit.MM)
    message = str(caught.value)
    assert says in message
    assert message.endswith(".")
    assert "\n" not in message
    assert len(message) < 200
    assert caught.value.text == text


def read_or_refused(text: str) -> Length | None:
    try:
        return parse_length(text, default=Unit.INCH)
    except LengthError:
        return None


@given(st.text(max_size=100) | st.text(alphabet="0123456789.,/+-−½⅞ e\"'minthoucf", max_size=16))
def test_any_text_is_a_sane_length_or_refused_and_never_anything_else(text: str) -> None:
    length = read_or_refused(text)
    assert length is None or abs(length.mm) <= LARGEST_LENGTH_MM


@given(
    st.integers(min_value=0, max_value=40),
    st.integers(min_value=1, max_value=63),
    st.sampled_from([2, 4, 8, 16, 32, 64]),
)
def test_mixed_numbers_in_every_spelling_are_the_same_length(whole: int, above: int, below: int) -> None:
    assume(above < below)
    expected = (whole + Fraction(above, below)) * IN
    for spelling in (
        f"{whole} {above}/{below} in",
        f'{whole}-{above}/{below}"',
        f"{whole} in + {above}/{below} in",
    ):
        assert parse_length(spelling, default=Unit.MM).mm == expected


@pytest.mark.parametrize(
    ("name", "unit"),
    [
        ("mm", Unit.MM),
        ("Inches", Unit.INCH),
        (" in. ", Unit.INCH),
        ("µm", Unit.MICROMETRE),
        ("ft", Unit.FOOT),
    ],
)
def test_units_are_known_by_their_usual_names(name: str, unit: Unit) -> None:
    assert parse_unit(name) is unit
