"""Lengths in SVG, exactly (CSS Values and Units Level 4, section 6.2, and SVG 2, section 8.9).

1 in = 2.54 cm = 96 px; 1 cm = 10 mm = 40 Q; 1 in = 72 pt = 6 pc; a number without a unit is px. Percentages
refer to the nearest viewport: to its width, its height, or √((w² + h²)/2) where neither is meant. em and
ex depend on a font; ex is taken as half an em, as CSS suggests where the font is unknown.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from inlayfit.units import Unit

MM_PER_PX = Fraction(254, 960)
_PX_PER: dict[str, Fraction] = {
    "": Fraction(1),
    "px": Fraction(1),
    "in": Fraction(96),
    "cm": Fraction(9600, 254),
    "mm": Fraction(960, 254),
    "q": Fraction(240, 254),
    "pt": Fraction(96, 72),
    "pc": Fraction(96, 6),
}
_PHYSICAL: dict[str, Unit] = {
    "mm": Unit.MM,
    "cm": Unit.MM,
    "q": Unit.MM,
    "in": Unit.INCH,
    "pt": Unit.INCH,
    "pc": Unit.INCH,
}
_FONT_SIZES = {"em": 1.0, "rem": 1.0, "ex": 0.5, "ch": 0.5}
NUMBER = r"[+-]?(?>[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?"
_LENGTH = re.compile(rf"\s*({NUMBER})\s*([a-zA-Z]*|%)\s*")


@dataclass(frozen=True, slots=True)
class Size:
    """A number with the unit it was written with, in lower case."""

    number: float
    unit: str

    @property
    def physical_unit(self) -> Unit | None:
        """Millimetres or inches if the unit is a real one; None for px, a percentage or a font's size."""
        return _PHYSICAL.get(self.unit)

    @property
    def depends_on_font(self) -> bool:
        """Whether its length is not known without the font."""
        return self.unit in _FONT_SIZES

    def px(self, whole: float, font_px: float) -> float:
        """CSS pixels; `whole` is what 100 % is."""
        if self.unit == "%":
            return self.number * whole / 100
        if self.unit in _FONT_SIZES:
            return self.number * font_px * _FONT_SIZES[self.unit]
        factor = _PX_PER[self.unit]
        return self.number * factor.numerator / factor.denominator


@lru_cache(maxsize=4096)
def parse_size(text: str | None) -> Size | None:
    """The length a text states, or None if it states none (missing, "auto", a broken number)."""
    if text is None:
        return None
    match = _LENGTH.fullmatch(text)
    if match is None:
        return None
    number, unit = float(match[1]), match[2].lower()
    known = unit == "%" or unit in _PX_PER or unit in _FONT_SIZES
    return Size(number, unit) if known and math.isfinite(number) else None


@dataclass(frozen=True, slots=True)
class Viewport:
    """What percentages refer to, in user units, and the size of the font around."""

    width: float
    height: float
    font_px: float = 16.0

    @property
    def diagonal(self) -> float:
        """What percentages of neither width nor height refer to."""
        return math.hypot(self.width, self.height) / math.sqrt(2)

    def across(self, size: Size | None, default: float = 0.0) -> float:
        """A length along x."""
        return default if size is None else size.px(self.width, self.font_px)

    def along(self, size: Size | None, default: float = 0.0) -> float:
        """A length along y."""
        return default if size is None else size.px(self.height, self.font_px)

    def slanted(self, size: Size | None, default: float = 0.0) -> float:
        """A length along neither: a radius, a stroke width."""
        return default if size is None else size.px(self.diagonal, self.font_px)
