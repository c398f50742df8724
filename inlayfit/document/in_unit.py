"""Sentences of findings in another unit.

A finding is worded where it is found, in millimetres. Shown to a person who works in inches, its lengths,
places and areas are put into inches; the rest of the sentence stays. The numbers were rounded when they
were worded, so a length is good to the last figure it had in millimetres.
"""

from __future__ import annotations

import re
from dataclasses import replace

from inlayfit.finding import Finding
from inlayfit.units import MINUS, Unit, format_length, format_per_side

_NUMBER = rf"([{MINUS}-]?\d[\d,]*(?:\.\d+)?)"
_PER_SIDE = re.compile(rf"{_NUMBER} mm per side \({_NUMBER}(?: mm)? overall\)")
_AREA = re.compile(rf"{_NUMBER} mm²")
_SIZE = re.compile(rf"{_NUMBER} × {_NUMBER} mm\b")
_PLACE = re.compile(rf"x {_NUMBER}, y {_NUMBER}")
_LENGTH = re.compile(rf"{_NUMBER} mm\b")
_MM2_IN_AN_INCH2 = 25.4**2


def finding_in_unit(finding: Finding, unit: Unit) -> Finding:
    """The finding as it is shown in a unit; itself in millimetres."""
    if unit is Unit.MM:
        return finding
    return replace(
        finding, message=text_in_unit(finding.message, unit), remedy=text_in_unit(finding.remedy, unit)
    )


def text_in_unit(text: str, unit: Unit) -> str:
    """A sentence with its millimetres put into another unit."""
    if unit is Unit.MM:
        return text

    def plain(number: str) -> str:
        return format_length(_value(number), unit, with_unit=False)

    text = _PER_SIDE.sub(lambda m: format_per_side(_value(m[1]), unit, with_unit=True), text)
    text = _AREA.sub(lambda m: f"{_value(m[1]) / _MM2_IN_AN_INCH2:.4f} in²", text)
    text = _SIZE.sub(lambda m: f"{plain(m[1])} × {plain(m[2])} {unit.symbol}", text)
    text = _PLACE.sub(lambda m: f"x {plain(m[1])}, y {plain(m[2])}", text)
    return _LENGTH.sub(lambda m: format_length(_value(m[1]), unit), text)


def _value(number: str) -> float:
    return float(number.replace(MINUS, "-").replace(",", ""))
