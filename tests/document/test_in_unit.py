from __future__ import annotations

import re

import pytest

from inlayfit.document.in_unit import text_in_unit
from inlayfit.measures import area, at, length, per_side, point, size
from inlayfit.units import Unit
from inlayfit.wording import Worded


def spaced(shown: str) -> str:
    """With spaces that may end a line."""
    return shown.replace("\N{NO-BREAK SPACE}", " ")


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        (Worded("it bites {bite} at {place}.", bite=per_side(0.254), place=at((25.4, -12.7))),
         "it bites 0.0100 in per side (0.0200 in overall) at x 1.0000, y −0.5000."),
        (Worded("The {cutter} cutter cannot pass; {removed} "
"removed.", cutter=length(6.35), removed=area(645.16)),
         "The 0.2500 in cutter cannot pass; 1.0000 in² removed."),
        (Worded("It is {size}.", size=size(50.8, 25.4, "g")), "It is 2.0000 × 1.0000 in."),
        (Worded("A gap at {place}.", place=point((25.4, 0.0))), "A gap at (1.0000, 0.0000) in."),
        (Worded("Nothing to turn, {count} corners and "
"mmm.", count=12), "Nothing to turn, 12 corners and mmm."),
    ],
)  # fmt: skip
def test_lengths_are_put_into_inches(text: Worded, inches: str) -> None:
    # An inch is exactly 25.4 mm (international yard and pound agreement, 1959; NIST SP 811, appendix B).
    assert spaced(text_in_unit(text, Unit.INCH)) == inches
    assert spaced(text_in_unit(text, Unit.MM)) == text


def test_no_millimetre_is_left_inside_of_other_words() -> None:
    inner = Worded("a gap of {gap}", gap=length(0.00444, ".3f"))
    text = Worded("There is {inner}; join within {most}.", inner=inner, most=length(0.01, "g"))
    assert text == "There is a gap of 0.004 mm; join within 0.01 mm."
    shown = text_in_unit(text, Unit.THOU)
    assert not re.search(r"\bmm\b", shown)
    assert spaced(shown) == "There is a gap of 0.2 thou; join within 0.4 thou."


def test_a_text_that_remembers_nothing_stays() -> None:
    assert text_in_unit("It is 25.4 mm wide.", Unit.INCH) == "It is 25.4 mm wide."


@pytest.mark.parametrize("unit", list(Unit))
def test_no_line_ends_between_a_number_and_what_belongs_to_it(unit: Unit) -> None:
    text = Worded("{gap} off at {place}, {removed} of {size}.", gap=length(0.5), place=at((12.0, -3.0)),
                  removed=area(2.0), size=size(40, 30, "g"))  # fmt: skip
    words = text_in_unit(text, unit).split(" ")
    alone = [word for word in words if word in ("x", "y", "×", unit.symbol, "mm²", "in²")]
    assert not alone
    assert "at" in words, "elsewhere a line may end"
