"""What is asked of a fit: the two halves, what may move, with what cutter, and the clearance wanted."""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from enum import StrEnum

from inlayfit.errors import SpecError
from inlayfit.measures import length
from inlayfit.wording import Worded

SMALLEST_CUTTER_MM = 0.01
"""Below this a cutter is a typing mistake; the finest engraving tips have 0.1 mm (common practice)."""
LARGEST_CLEARANCE_MM = 20.0
"""Above this a clearance is a typing mistake or another unit."""


class Half(StrEnum):
    """Which of the two."""

    POCKET = "pocket"
    PLUG = "plug"


class HalfState(StrEnum):
    """Whether a half may still change."""

    TO_CUT = "to-cut"
    """Not cut yet: the program may shape it."""
    ALREADY_CUT = "already-cut"
    """Cut: its outline is what exists and never changes; bench work on it is still possible."""
    FINISHED = "finished"
    """Cut and finished or coated: not even bench work."""


class Seating(StrEnum):
    """How a made plug may move to where it sits best."""

    SHIFT = "shift"
    """Pushed, but not turned: a drawing normally knows its way up."""
    TURN = "turn"
    """Pushed and turned."""
    AS_DRAWN = "as-drawn"
    """Left where the drawing has it."""


class Relief(StrEnum):
    """What is done where a round cutter cannot go."""

    ROUNDED = "rounded"
    DOG_BONE = "dog-bone"
    T_BONE = "t-bone"
    BY_HAND = "by-hand"


class WallChoice(StrEnum):
    """Which wall of a corner a T-bone bites into."""

    LEAST = "least"
    """The one where less is removed."""
    LONG = "long"
    SHORT = "short"


@dataclass(frozen=True, slots=True)
class HalfSpec:
    """One half of a fitting.

    Attributes:
        cutter_mm: measured diameter of the cutter. 0 for a beam or blade, whose width is `kerf_mm`.
        state: whether the half may still change.
        relief: what to do in corners that the cutter cannot reach.
        finishing_allowance_mm: stock that the roughing pass leaves on the wall, per side.
        kerf_mm: width of the cut of a beam or blade on the show side; the outline is the finished edge, the
            export can shift the line by half of it.
        kerf_taper_mm: how much wider the kerf is on the show side than on the bed side.
        corner_cutter_mm: measured diameter of a smaller cutter that takes what the main one leaves in
            corners; 0 for none.
        t_bone_wall: which wall a T-bone bites into.
        edge_break_mm: width of the chamfer on the plug's lower edge or the pocket's rim; 0 for none.
    """

    cutter_mm: float
    state: HalfState = HalfState.TO_CUT
    relief: Relief = Relief.ROUNDED
    finishing_allowance_mm: float = 0.0
    kerf_mm: float = 0.0
    kerf_taper_mm: float = 0.0
    corner_cutter_mm: float = 0.0
    t_bone_wall: WallChoice = WallChoice.LONG
    edge_break_mm: float = 0.0

    def __post_init__(self) -> None:
        _check_number(Worded("cutter diameter"), self.cutter_mm)
        _check_number(Worded("finishing allowance"), self.finishing_allowance_mm)
        _check_number(Worded("kerf"), self.kerf_mm)
        _check_number(Worded("kerf's taper"), self.kerf_taper_mm)
        _check_number(Worded("corner cutter's diameter"), self.corner_cutter_mm)
        _check_number(Worded("edge break"), self.edge_break_mm)
        if self.edge_break_mm < 0:
            raise SpecError(Worded("An edge break cannot be negative; give 0 for none."))
        if self.corner_cutter_mm < 0 or (self.corner_cutter_mm and self.corner_cutter_mm >= self.cutter_mm):
            raise SpecError(
                Worded(
                    "A corner cutter of {corner} must be smaller than the main cutter of {main}; "
                    "give 0 for none.",
                    corner=length(self.corner_cutter_mm, "g"),
                    main=length(self.cutter_mm, "g"),
                )
            )
        if self.cutter_mm != 0 and self.cutter_mm < SMALLEST_CUTTER_MM:
            raise SpecError(
                Worded(
                    "A cutter of {cutter} is too small; give its measured diameter in mm, "
                    "or add a unit such as 1/8in.",
                    cutter=length(self.cutter_mm, "g"),
                )
            )
        if self.finishing_allowance_mm < 0:
            raise SpecError(Worded("A finishing allowance cannot be negative; give 0 for none."))
        if self.kerf_mm < 0:
            raise SpecError(Worded("A kerf cannot be negative; give the full width of the cut."))

    @property
    def radius_mm(self) -> float:
        """Smallest radius the finished wall can have: that of the last cutter along it.

        For a beam half its kerf, since a round beam rounds corners too.
        """
        return (self.corner_cutter_mm or self.cutter_mm or self.kerf_mm) / 2

    @property
    def main_radius_mm(self) -> float:
        """Half the main cutter's diameter, or half the kerf."""
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
        thin_mm: a wall or neck thinner than this may not survive. Common practice, no source: depends on
            the stock; change it to what yours stands.
    """

    clearance_mm: float
    pocket: HalfSpec = field(default_factory=lambda: HalfSpec(3.0))
    plug: HalfSpec = field(default_factory=lambda: HalfSpec(3.0))
    thin_mm: float = 0.8

    def __post_init__(self) -> None:
        _check_number(Worded("clearance"), self.clearance_mm)
        _check_number(Worded("thinnest wall"), self.thin_mm)
        if abs(self.clearance_mm) > LARGEST_CLEARANCE_MM:
            raise SpecError(
                Worded(
                    "A clearance of {clearance} per side is more than {most}; check its unit.",
                    clearance=length(self.clearance_mm, "g"),
                    most=length(LARGEST_CLEARANCE_MM, "g"),
                )
            )

    def with_clearance(self, clearance_mm: float) -> FitSpec:
        """The same fit at another clearance."""
        return replace(self, clearance_mm=clearance_mm)


def _check_number(name: Worded, value: float) -> None:
    if not math.isfinite(value):
        raise SpecError(
            Worded("The {name} is not a finite number; type a length such as 0.05 mm.", name=name)
        )
