from __future__ import annotations

import re

import pytest

from inlayfit.document.in_unit import finding_in_unit, text_in_unit
from inlayfit.finding import Finding, Severity
from inlayfit.units import Unit


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("it bites 0.254 mm per side (0.508 overall) at x 25.40, y −12.70.",
         "it bites 0.0100 in per side (0.0200 in overall) at x 1.0000, y −0.5000."),
        ("The 6.35 mm cutter cannot pass; 645.16 mm² removed.",
         "The 0.2500 in cutter cannot pass; 1.0000 in² removed."),
        ("It is 50.8 × 25.4 mm in millimetres.", "It is 2.0000 × 1.0000 in in millimetres."),
        ("Nothing to turn, 12 corners and mmm.", "Nothing to turn, 12 corners and mmm."),
    ],
)  # fmt: skip
def test_lengths_are_put_into_inches(text: str, inches: str) -> None:
    # An inch is exactly 25.4 mm (international yard and pound agreement, 1959; NIST SP 811, appendix B).
    assert text_in_unit(text, Unit.INCH) == inches
    assert text_in_unit(text, Unit.MM) == text


def test_no_millimetre_is_left_in_thou() -> None:
    finding = Finding("x", Severity.NOTE, "A gap of 0.004 mm at x 1.00, y 2.00.", "Join within 0.01 mm.")
    shown = finding_in_unit(finding, Unit.THOU)
    assert not re.search(r"\bmm\b", shown.message + shown.remedy)
    assert shown.message == "A gap of 0.2 thou at x 39.4, y 78.7."
    assert finding_in_unit(finding, Unit.MM) is finding
