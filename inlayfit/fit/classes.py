"""How a gap compares with the clearance that was meant, in five words.

    bites    B   the plug is in the wall's way
    tight    T   less than meant
    on       O   as meant
    slack    S   more than meant
    loose    L   much more than meant

The edges lie about the *target* clearance c, not about zero, so an intended press fit reads "on". On both
sides alike, with a = max(2 µm, |c|/10) and b = max(10 µm, |c|/2):

    on     |gap − c| ≤ a
    tight  down to where it bites, slack up to c + b; loose beyond
    bites  for a clearance fit (c ≥ 0) below −1 µm, but never inside the "on" band, so for c < a − 1 µm below
           c − a; for an interference fit (c < 0) below c − b

A solved fit is promised within 1 µm: two walls that touch do not bite, and a is at least twice as much, so
noise has no colour. b is common practice: a wall that is half as far off again as what was meant is felt at
the bench.
"""

from __future__ import annotations

from enum import IntEnum
from typing import TypeAlias

import numpy as np
from numpy.typing import ArrayLike, NDArray

from inlayfit.fit.result import PROMISED_MM

Classes: TypeAlias = NDArray[np.intp]

SMALLEST_ON_MM = 0.002
EVEN_MM = 0.002
"""Gaps that differ by less are the same: twice what a solved fit is accurate to."""
SMALLEST_SLACK_MM = 0.010
ON_SHARE = 0.1
SLACK_SHARE = 0.5


class GapClass(IntEnum):
    """The five classes, tightest first."""

    BITES = 0
    TIGHT = 1
    ON = 2
    SLACK = 3
    LOOSE = 4

    @property
    def word(self) -> str:
        """As it is spoken: "bites"."""
        return self.name.lower()

    @property
    def letter(self) -> str:
        """Its letter on pictures and in print: "B"."""
        return self.name[0]


def class_edges(clearance_mm: float) -> tuple[float, float, float, float]:
    """Gaps in mm at which bites ends, on begins, on ends and slack ends."""
    on = max(SMALLEST_ON_MM, ON_SHARE * abs(clearance_mm))
    slack = max(SMALLEST_SLACK_MM, SLACK_SHARE * abs(clearance_mm))
    bites = min(-PROMISED_MM, clearance_mm - on) if clearance_mm >= 0 else clearance_mm - slack
    return bites, clearance_mm - on, clearance_mm + on, clearance_mm + slack


def is_even(low_mm: float, high_mm: float, clearance_mm: float) -> bool:
    """Whether gaps from the lowest to the highest are the same all round, or all as meant."""
    if high_mm - low_mm < EVEN_MM:
        return True
    return bool((classify([low_mm, high_mm], clearance_mm) == GapClass.ON).all())


def classify(gaps: ArrayLike, clearance_mm: float) -> Classes:
    """The class of each gap as its number in `GapClass`; both edges of "on" are on.

    Args:
        gaps: (n,) signed gaps in mm.
        clearance_mm: the target, per side.
    """
    values = np.asarray(gaps, dtype=float)
    bites, low, high, slack = class_edges(clearance_mm)
    classes: Classes = (
        (values >= bites).astype(np.intp) + (values >= low) + (values > high) + (values > slack)
    )
    return classes
