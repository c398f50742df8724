"""The length of a scale bar: a round number of the shown unit that fills about a given width."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from inlayfit.units import Unit, format_length

_STEPS = (1, 2, 5, 10)
_INCH_FRACTIONS = tuple(Fraction(1, d) for d in (2, 4, 8, 16, 32, 64))


@dataclass(frozen=True, slots=True)
class ScaleBar:
    """A bar: how long it is, on the drawing and on the screen, and what to write beside it."""

    length_mm: float
    length_px: float
    text: str


def scale_bar(scale: float, unit: Unit, *, widest_px: float = 150.0) -> ScaleBar:
    """The longest round bar that is not wider than `widest_px` at `scale` pixels per millimetre."""
    widest = widest_px / scale / float(unit.mm)
    if unit is Unit.INCH and _INCH_FRACTIONS[-1] <= widest < 1:
        fraction = next(f for f in _INCH_FRACTIONS if f <= widest)
        length = float(fraction * unit.mm)
        return ScaleBar(length, length * scale, f"{fraction} in")
    value = round_below(widest)
    length = value * float(unit.mm)
    decimals = max(0, -math.floor(math.log10(value) + 1e-9))
    return ScaleBar(length, length * scale, format_length(length, unit, decimals=decimals))


def round_below(value: float) -> float:
    """The largest of 1, 2, 5 times a power of ten that is not above a positive value."""
    power: float = 10.0 ** math.floor(math.log10(value))
    best: float = max(step for step in _STEPS if step * power <= value * (1 + 1e-9))
    return float(best * power)
