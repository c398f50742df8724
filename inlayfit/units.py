"""Units and lengths: millimetres inside, other units only where a person reads them.

A length is kept as an exact fraction of millimetres, since an inch is exactly 25.4 mm (international yard
and pound agreement, 1959; NIST SP 811, appendix B), so showing it in another unit and going back changes
nothing. `typed_length` reads what a person types.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from functools import lru_cache

LARGEST_LENGTH_MM = 1_000_000
"""A kilometre: above this a length is a mistake."""
_KEPT_NUMBERS = 4096
MINUS = "\N{MINUS SIGN}"


class Unit(Enum):
    """A unit of length; its value is how many millimetres it has, exactly."""

    MM = Fraction(1)
    CM = Fraction(10)
    M = Fraction(1000)
    INCH = Fraction(254, 10)
    THOU = Fraction(254, 10_000)
    FOOT = Fraction(3048, 10)
    MICROMETRE = Fraction(1, 1000)
    TENTH = Fraction(254, 100_000)
    PIXEL = Fraction(254, 960)
    """The CSS pixel, 1/96 in: what a user unit of an SVG file is when nothing else is said."""

    @property
    def mm(self) -> Fraction:
        """Millimetres in one of this unit, exactly."""
        return self.value

    @property
    def symbol(self) -> str:
        """What stands behind a number: "mm", "in", "thou"."""
        return _SHOWN[self][0]

    @property
    def readout_decimals(self) -> int:
        """Decimals of a shown clearance: whole micrometres in mm, tenths in thou and inches."""
        return _SHOWN[self][1]

    @property
    def entry_decimals(self) -> int:
        """Decimals that carry every whole micrometre there and back."""
        return _SHOWN[self][2]


_SHOWN: dict[Unit, tuple[str, int, int]] = {
    Unit.MM: ("mm", 3, 3),
    Unit.CM: ("cm", 4, 4),
    Unit.M: ("m", 6, 6),
    Unit.INCH: ("in", 4, 5),
    Unit.THOU: ("thou", 1, 2),
    Unit.FOOT: ("ft", 5, 6),
    Unit.MICROMETRE: ("µm", 0, 0),
    Unit.TENTH: ("tenths", 0, 1),
    Unit.PIXEL: ("px", 3, 3),
}


@dataclass(frozen=True, slots=True, order=True)
class Length:
    """A length as an exact number of millimetres."""

    mm: Fraction

    @classmethod
    def of(cls, value: Fraction | int, unit: Unit) -> Length:
        """So many of a unit."""
        return cls(value * unit.mm)

    def in_unit(self, unit: Unit) -> Fraction:
        """How many of a unit it is, exactly."""
        return self.mm / unit.mm

    def __float__(self) -> float:
        return float(self.mm)


def format_length(
    mm: float | Fraction | Length, unit: Unit, *, decimals: int | None = None, with_unit: bool = True
) -> str:
    """A length as shown: rounded to `decimals` (the unit's readout if None), a true minus, never −0.

    A half rounds away from zero, and a float counts as the shortest decimal that means it, so 0.0305 shows
    as 0.031. A number that is not finite shows as a dash.
    """
    places = unit.readout_decimals if decimals is None else decimals
    number = _number(mm, unit, places)
    return "–" if number is None else f"{number} {unit.symbol}" if with_unit else number


@lru_cache(maxsize=_KEPT_NUMBERS, typed=True)
def _number(mm: float | Fraction | Length, unit: Unit, places: int) -> str | None:
    """The number alone, None if it is not finite. Kept: scales and labels say the same at every repaint."""
    exact = _exact_mm(mm)
    return None if exact is None else _fixed(_rounded(exact / unit.mm, places), places)


def format_entry(mm: float | Fraction | Length, unit: Unit) -> str:
    """A length for a box to edit: enough decimals for whole micrometres, no needless zeros."""
    number = format_length(mm, unit, decimals=unit.entry_decimals, with_unit=False)
    if "." in number:
        number = number.rstrip("0").removesuffix(".")
    return f"{number} {unit.symbol}"


@lru_cache(maxsize=_KEPT_NUMBERS, typed=True)
def format_per_side(clearance_mm: float | Fraction | Length, unit: Unit, *, with_unit: bool = False) -> str:
    """A clearance as always shown: "0.030 per side (0.060 overall)".

    The gap at one wall is rounded first and then doubled, so the two numbers always agree.
    """
    exact = _exact_mm(clearance_mm)
    if exact is None:
        return "–"
    places = unit.readout_decimals
    side = _rounded(exact / unit.mm, places)
    symbol = f" {unit.symbol}" if with_unit else ""
    return f"{_fixed(side, places)}{symbol} per side ({_fixed(2 * side, places)}{symbol} overall)"


def format_in_both(mm: float | Fraction | Length, unit: Unit) -> str:
    """What a box echoes: the length in its unit, and in the other system ("3.175 mm = 0.125 in")."""
    metric = unit in (Unit.MM, Unit.CM, Unit.M, Unit.MICROMETRE)
    other = Unit.INCH if metric else Unit.MM
    return f"{format_entry(mm, unit)} = {format_entry(mm, other)}"


def _exact_mm(value: float | Fraction | Length) -> Fraction | None:
    if isinstance(value, Length):
        return value.mm
    if isinstance(value, float):
        return Fraction(repr(float(value))) if math.isfinite(value) else None
    return Fraction(value)


def _rounded(value: Fraction, places: int) -> Fraction:
    """To so many decimals, halves away from zero."""
    scale: int = 10**places
    steps = math.floor(abs(value) * scale + Fraction(1, 2))
    return Fraction(steps if value > 0 else -steps, scale)


def _fixed(value: Fraction, places: int) -> str:
    """A decimal with exactly so many places; `value` has no more."""
    digits = f"{abs(value.numerator) * 10**places // value.denominator:0{places + 1}d}"
    number = f"{digits[:-places]}.{digits[-places:]}" if places else digits
    return f"{MINUS}{number}" if value < 0 else number
