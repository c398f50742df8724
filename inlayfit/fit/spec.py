"""What is asked of a fit: the two halves, what may move, with what cutter, and the clearance wanted."""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from enum import StrEnum

from inlayfit.errors import SpecError

SMALLEST_CUTTER_MM = 0.01
"""Below this a cutter is a typing mistake; the finest engraving tips have 0.1 mm (common practice)."""
LARGEST_CLEARANCE_MM = 20.0
"""Above this a clearance is a typing mistake or another unit."""


class HalfState(StrEnum):
    """Whether a half may still change."""

    TO_CUT = "to-cut"
    """Not cut yet: the program may shape it."""
    ALREADY_CUT = "already-cut"
    """Cut: its outline is what exists and never changes; bench work on it is still possible."""
    FINISHED = "finished"
    """Cut and finished or coated: not even bench work."""


class Relief(StrEnum):
    """What is done where a round cutter cannot go."""

    ROUNDED = "rounded"
    DOG_BONE = "dog-bone"
    T_BONE = "t-bone"
    BY_HAND = "by-hand"


@dataclass(frozen=True, slots=True)
class HalfSpec:
    """One half of a fitting.

    Attributes:
        cutter_mm: measured diameter of the cutter. 0 for a beam or blade, whose width is `kerf_mm`.
        state: whether the half may still change.
        relief: what to do in corners that the cutter cannot reach.
        finishing_allowance_mm: stock that the roughing pass leaves on the wall, per side.
        kerf_mm: width of the cut of a beam or blade; the outline is the finished edge, the export can
            shift the line by half of it.
    """

    cutter_mm: float
    state: HalfState = HalfState.TO_CUT
    relief: Relief = Relief.ROUNDED
    finishing_allowance_mm: float = 0.0
    kerf_mm: float = 0.0

    def __post_init__(self) -> None:
        _check_number("cutter diameter", self.cutter_mm)
        _check_number("finishing allowance", self.finishing_allowance_mm)
        _check_number("kerf", self.kerf_mm)
        if self.cutter_mm != 0 and self.cutter_mm < SMALLEST_CUTTER_MM:
            raise SpecError(
                f"A cutter of {self.cutter_mm:g} mm is too small; give its measured diameter in mm, "
                "or add a unit such as 1/8in."
            )
        if self.finishing_allowance_mm < 0:
            raise SpecError("A finishing allowance cannot be negative; give 0 for none.")
        if self.kerf_mm < 0:
            raise SpecError("A kerf cannot be negative; give the full width of the cut.")

    @property
    def radius_mm(self) -> float:
        """Half the cutter's diameter; for a beam half its kerf, since a round beam rounds corners too."""
        return (self.cutter_mm or self.kerf_mm) / 2

    @property
    def may_move(self) -> bool:
        """Whether the program may shape this half."""
        return self.state is HalfState.TO_CUT


@dataclass(frozen=True, slots=True)
class FitSpec:
    """What is asked of a fit.

    Attributes:
        clearance_mm: gap wanted at one wall ("per side"); negative is interference.
        pocket: the recess.
        plug: what fills it.
    """

    clearance_mm: float
    pocket: HalfSpec = field(default_factory=lambda: HalfSpec(3.0))
    plug: HalfSpec = field(default_factory=lambda: HalfSpec(3.0))

    def __post_init__(self) -> None:
        _check_number("clearance", self.clearance_mm)
        if abs(self.clearance_mm) > LARGEST_CLEARANCE_MM:
            raise SpecError(
                f"A clearance of {self.clearance_mm:g} mm per side is more than {LARGEST_CLEARANCE_MM:g} mm; "
                "check its unit."
            )

    def with_clearance(self, clearance_mm: float) -> FitSpec:
        """The same fit at another clearance."""
        return replace(self, clearance_mm=clearance_mm)


def _check_number(name: str, value: float) -> None:
    if not math.isfinite(value):
        raise SpecError(f"The {name} is not a finite number; type a length such as 0.05 mm.")
