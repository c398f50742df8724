"""Units and lengths: millimetres inside, typed lengths read and shown only here."""

from __future__ import annotations

from enum import Enum
from fractions import Fraction


class Unit(Enum):
    """A unit of length; its value is how many millimetres it has, exactly."""

    MM = Fraction(1)
    CM = Fraction(10)
    M = Fraction(1000)
    INCH = Fraction(254, 10)
    THOU = Fraction(254, 10_000)
    FOOT = Fraction(3048, 10)

    @property
    def mm(self) -> Fraction:
        """Millimetres in one of this unit, exactly."""
        return self.value
