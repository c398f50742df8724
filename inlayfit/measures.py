"""Lengths, places, sizes and areas inside of a sentence, which a person who works in inches sees in inches.

A `Measure` keeps the numbers behind its text. It is worded where it is found, in millimetres, with as many
figures as make sense there; in another unit it has the figures that unit is shown with.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from fractions import Fraction

from inlayfit.units import MINUS, Unit, format_entry, format_length
from inlayfit.wording import Worded

_MM2_IN_AN_INCH2 = 25.4**2
_NO_BREAK = "\N{NO-BREAK SPACE}"


class Kind(StrEnum):
    """What a measure measures, and so how it is written."""

    LENGTH = "length"
    OVERALL = "overall"
    """Twice a gap at one wall; the gap is rounded first, so that the two always agree."""
    PLACE = "place"
    POINT = "point"
    SIZE = "size"
    AREA = "area"


@dataclass(frozen=True, slots=True)
class Measure:
    """One measure.

    Attributes:
        text: as it stands in a sentence.
        kind: what it measures.
        numbers: one number, or two for a place or a size; in mm, of an area in mm².
    """

    text: str
    kind: Kind
    numbers: tuple[float, ...]

    def __str__(self) -> str:
        return self.text

    def in_unit(self, unit: Unit) -> Measure:
        """The same as it is shown in a unit; itself in millimetres."""
        return self if unit is Unit.MM else replace(self, text=_text(self.kind, self.numbers, unit))

    def unbroken(self) -> Measure:
        """The same for words that run over lines: one ends after a comma of it, and nowhere else."""
        parts = (part.replace(" ", _NO_BREAK) for part in self.text.split(", "))
        return replace(self, text=", ".join(parts))


def _text(kind: Kind, numbers: Sequence[float], unit: Unit) -> str:
    plain = [format_length(number, unit, with_unit=False) for number in numbers]
    match kind:
        case Kind.LENGTH:
            return f"{plain[0]} {unit.symbol}"
        case Kind.OVERALL:
            return _overall(numbers[0], unit)
        case Kind.PLACE:
            return f"x {plain[0]}, y {plain[1]}"
        case Kind.POINT:
            return f"({plain[0]}, {plain[1]}) {unit.symbol}"
        case Kind.SIZE:
            return f"{plain[0]} × {plain[1]} {unit.symbol}"
        case Kind.AREA:
            return f"{numbers[0] / _MM2_IN_AN_INCH2:.4f} in²"


def _overall(gap_mm: float, unit: Unit, *, with_unit: bool = True) -> str:
    side = Fraction(format_length(gap_mm, unit, with_unit=False).replace(MINUS, "-"))
    return format_length(2 * side * unit.mm, unit, with_unit=with_unit)


def length(mm: float, form: str = "") -> Measure:
    """A length, such as "0.050 mm"; `form` is a format of its number other than whole micrometres."""
    text = f"{_number(mm, form)} mm" if form else format_length(mm, Unit.MM)
    return Measure(text, Kind.LENGTH, (float(mm),))


def entry(mm: float, unit: Unit = Unit.MM) -> Measure:
    """A length with as many figures as a box to edit shows, such as "3.175 mm"."""
    return Measure(format_entry(mm, unit), Kind.LENGTH, (float(mm),))


def per_side(gap_mm: float, unit: Unit = Unit.MM, *, unit_twice: bool = True) -> Worded:
    """A gap as always shown: at one wall, and overall beside it, with its unit at both or at the first."""
    overall = Measure(_overall(gap_mm, unit, with_unit=unit_twice), Kind.OVERALL, (float(gap_mm),))
    side = length(gap_mm).in_unit(unit)
    return Worded("{side} per side ({overall} overall)", side=side, overall=overall)


def at(place_mm: Sequence[float]) -> Measure:
    """A place, such as "x 12.50, y −3.00"."""
    x, y = (_number(value, ".2f") for value in place_mm)
    return Measure(f"x {x}, y {y}", Kind.PLACE, (float(place_mm[0]), float(place_mm[1])))


def point(place_mm: Sequence[float], form: str = ".2f") -> Measure:
    """A place in a drawing, such as "(12.50, -3.00) mm"."""
    x, y = (_formed(value, form) for value in place_mm)
    return Measure(f"({x}, {y}) mm", Kind.POINT, (float(place_mm[0]), float(place_mm[1])))


def size(wide_mm: float, high_mm: float, form: str) -> Measure:
    """A size, such as "40 × 30 mm"."""
    text = f"{wide_mm:{form}} × {high_mm:{form}} mm"
    return Measure(text, Kind.SIZE, (float(wide_mm), float(high_mm)))


def area(mm2: float) -> Measure:
    """An area, such as "0.14 mm²"."""
    return Measure(f"{_number(mm2, '.2f')} mm²", Kind.AREA, (float(mm2),))


def _formed(value: float, form: str) -> str:
    """A number in a format, never −0."""
    number = format(float(value), form)
    return number if number.strip("-0.,") else number.removeprefix("-")


def _number(value: float, form: str) -> str:
    number = _formed(value, form)
    return f"{MINUS}{number[1:]}" if number.startswith("-") else number
