"""The stack: floor, tape or glue, plug, host face; and whether the plug ends proud, flush or below.

All heights are millimetres along the spindle, measured from the pocket's floor upwards.

    proud = plug thickness + build-up on its two faces
            + what it rests on above the floor
            − (depth + build-up on the host's face − build-up on the floor)

*Proud* is the plug's top above the host's face; below it is negative. A *build-up* is what one coated
surface grows by (of a film that eats into the metal, only the part outside). Coat the host's face and the
floor alike and the depth stays what it was, while the width of the pocket shrinks by two build-ups, one for
each wall. With the floor masked the pocket gets deeper.

What the plug rests on is the higher of two things, not their sum: the tape or glue as compressed, and the
place where a worn cutter's *floor fillet* stops its lower edge.

Floor fillet and edge break. In the section across a straight wall, let the wall be x = 0 and the floor
y = 0. A cutter whose corner is worn to the radius r leaves below the wall the arc of a circle about (r, r):

    f(x) = r − √(r² − (r − x)²)   for 0 ≤ x ≤ r,   0 beyond            (height of the fillet at x)

The plug's side stands at x = c, the clearance per side, and its lower edge is broken at 45° over the
width w: from (c, h + w) to (c + w, h), h being how high it is held. The fillet is hollow and the plug's
section is convex, so they touch at corners of the plug only (f is convex, so on the chamfer f minus a
straight line is greatest at an end):

    h = max(0, f(c) − w, f(c + w))

A sharp edge is w = 0. The edge clears the fillet, h = 0, as soon as c + w ≥ r: clearance and edge break
together must reach the fillet's radius. An interference presses the side to the wall, so c < 0 counts as 0;
so does the tight side of a plug pushed to one side. (Plane geometry, derived here.)

Does not handle: an edge broken by a round or at another angle, a floor that is not level, tilted plugs.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, fields
from enum import StrEnum

from inlayfit.errors import SpecError
from inlayfit.units import Unit, format_length
from inlayfit.wording import Worded


@dataclass(frozen=True, slots=True)
class Spread:
    """A length that was read several times, or is known within limits.

    Attributes:
        low_mm: smallest.
        middle_mm: what to expect.
        high_mm: largest.
    """

    low_mm: float
    middle_mm: float
    high_mm: float

    def __post_init__(self) -> None:
        if not all(math.isfinite(v) for v in (self.low_mm, self.middle_mm, self.high_mm)):
            raise SpecError(
                Worded("A height of the stack is not a finite number; type a length such as 3.05 mm.")
            )
        if not self.low_mm <= self.middle_mm <= self.high_mm:
            raise SpecError(
                Worded("The readings of a height are out of order; give smallest, expected and largest so.")
            )

    @classmethod
    def exact(cls, value_mm: float) -> Spread:
        """One value, no spread."""
        return cls(value_mm, value_mm, value_mm)

    @classmethod
    def plus_minus(cls, middle_mm: float, half_width_mm: float) -> Spread:
        """A value with its ±."""
        return cls(middle_mm - half_width_mm, middle_mm, middle_mm + half_width_mm)

    @classmethod
    def of(cls, readings_mm: Iterable[float]) -> Spread:
        """Smallest, mean and largest of some readings.

        Raises:
            SpecError: there is no reading, or one is not a number.
        """
        readings = tuple(readings_mm)
        if not readings:
            raise SpecError(Worded("A height of the stack has no reading; measure it at one place or more."))
        low, high = min(readings), max(readings)
        return cls(low, min(max(math.fsum(readings) / len(readings), low), high), high)

    def shifted(self, by_mm: float) -> Spread:
        """All three moved by the same amount."""
        return Spread(self.low_mm + by_mm, self.middle_mm + by_mm, self.high_mm + by_mm)

    def at_least(self, floor_mm: float) -> Spread:
        """All three raised to a height where they are lower."""
        return Spread(*(max(v, floor_mm) for v in (self.low_mm, self.middle_mm, self.high_mm)))

    def plus(self, other: Spread) -> Spread:
        """Sum, extremes meeting extremes."""
        return Spread(
            self.low_mm + other.low_mm, self.middle_mm + other.middle_mm, self.high_mm + other.high_mm
        )

    def minus(self, other: Spread) -> Spread:
        """Difference, each extreme meeting the opposite one."""
        return Spread(
            self.low_mm - other.high_mm, self.middle_mm - other.middle_mm, self.high_mm - other.low_mm
        )


@dataclass(frozen=True, slots=True)
class BuildUp:
    """How much each surface grows by its coating, in millimetres per surface; 0 where masked or bare.

    Attributes:
        rim_mm: the host's face round the pocket.
        floor_mm: the pocket's floor.
        pocket_wall_mm: the pocket's walls.
        top_mm: the plug's upper face.
        bottom_mm: the plug's lower face.
        plug_wall_mm: the plug's walls.
    """

    rim_mm: float = 0.0
    floor_mm: float = 0.0
    pocket_wall_mm: float = 0.0
    top_mm: float = 0.0
    bottom_mm: float = 0.0
    plug_wall_mm: float = 0.0

    def __post_init__(self) -> None:
        for field in fields(self):
            value = getattr(self, field.name)
            if not math.isfinite(value) or value < 0:
                raise SpecError(
                    Worded("A build-up is a length of 0 or more; give what one coated surface grows by.")
                )

    @classmethod
    def host(cls, build_up_mm: float, *, floor_masked: bool = False) -> BuildUp:
        """The host coated all over, its floor masked or not."""
        floor = 0.0 if floor_masked else build_up_mm
        return cls(rim_mm=build_up_mm, floor_mm=floor, pocket_wall_mm=build_up_mm)

    @classmethod
    def plug(cls, build_up_mm: float) -> BuildUp:
        """The plug coated all over."""
        return cls(top_mm=build_up_mm, bottom_mm=build_up_mm, plug_wall_mm=build_up_mm)

    def with_coat(self, other: BuildUp) -> BuildUp:
        """Both, one over the other or on different parts."""
        return BuildUp(*(getattr(self, f.name) + getattr(other, f.name) for f in fields(self)))

    @property
    def depth_change_mm(self) -> float:
        """Growth of the depth: the host's face rises by its build-up, the floor by its own."""
        return self.rim_mm - self.floor_mm

    @property
    def thickness_change_mm(self) -> float:
        """Growth of the plug's thickness."""
        return self.top_mm + self.bottom_mm

    @property
    def pocket_width_change_mm(self) -> float:
        """Change of the pocket's width: both walls close in, so −2 build-ups."""
        return -2 * self.pocket_wall_mm

    @property
    def plug_width_change_mm(self) -> float:
        """Change of the plug's width: +2 build-ups."""
        return 2 * self.plug_wall_mm

    @property
    def clearance_change_mm(self) -> float:
        """Change of the clearance per side: −1 build-up of each half."""
        return -(self.pocket_wall_mm + self.plug_wall_mm)


BARE = BuildUp()
"""No coating anywhere."""


@dataclass(frozen=True, slots=True)
class Stack:
    """The heights at one pocket, each before coating.

    Attributes:
        plug: thickness.
        depth: of the pocket below the host's face.
        bed: tape or glue under the plug, as compressed; 0 for none.
        build_up: coatings.
        hold_up_mm: how high a floor fillet stops the plug's lower edge; see `hold_up_mm`.
    """

    plug: Spread
    depth: Spread
    bed: Spread = Spread(0.0, 0.0, 0.0)
    build_up: BuildUp = BARE
    hold_up_mm: float = 0.0

    def __post_init__(self) -> None:
        if self.plug.low_mm <= 0 or self.depth.low_mm <= 0:
            raise SpecError(
                Worded("A plug's thickness and a pocket's depth are more than 0; check the readings.")
            )
        if self.bed.low_mm < 0:
            raise SpecError(Worded("Tape or glue has no negative thickness; give 0 for none."))
        if not math.isfinite(self.hold_up_mm) or self.hold_up_mm < 0:
            raise SpecError(Worded("A floor fillet holds the plug up by 0 or more; check the number."))

    @property
    def rest(self) -> Spread:
        """Height of the plug's lower face above the coated floor."""
        return self.bed.at_least(self.hold_up_mm)

    @property
    def proud(self) -> Spread:
        """Plug above the host's face; lowest and highest if every reading conspires."""
        top = self.plug.plus(self.rest).shifted(self.build_up.thickness_change_mm)
        return top.minus(self.depth.shifted(self.build_up.depth_change_mm))

    @property
    def held_by_fillet(self) -> bool:
        """Whether the floor fillet, not the tape or the floor, decides the height."""
        return self.hold_up_mm > self.bed.middle_mm


class Height(StrEnum):
    """Where the plug's top is."""

    PROUD = "proud"
    FLUSH = "flush"
    BELOW = "below"


@dataclass(frozen=True, slots=True)
class Target:
    """The height that is wanted.

    Attributes:
        height: the word.
        by_mm: how far proud or below, 0 or more; 0 for flush.
        tolerance_mm: ± that still counts as met.
    """

    height: Height = Height.FLUSH
    by_mm: float = 0.0
    tolerance_mm: float = 0.05

    def __post_init__(self) -> None:
        if not (math.isfinite(self.by_mm) and math.isfinite(self.tolerance_mm)):
            raise SpecError(Worded("A target height is not a finite number; type a length such as 0.2 mm."))
        if self.by_mm < 0 or self.tolerance_mm < 0:
            raise SpecError(
                Worded("A target height and its tolerance are 0 or more; the word says proud or below.")
            )
        if (self.height is Height.FLUSH) != (self.by_mm == 0):
            raise SpecError(
                Worded("A target is flush by 0, or proud or below by more than 0; change one of the two.")
            )

    @property
    def aim_mm(self) -> float:
        """The height wanted, as a signed number."""
        return -self.by_mm if self.height is Height.BELOW else self.by_mm


class Met(StrEnum):
    """How surely a target is met."""

    SURE = "sure"
    """Whatever the spread of the readings does."""
    LIKELY = "likely"
    """As expected yes, but the spread reaches out of the tolerance."""
    MISSED = "missed"
    """The expected height is outside the tolerance."""


@dataclass(frozen=True, slots=True)
class StackVerdict:
    """How a stack stands to its target.

    Attributes:
        height: where the plug is expected, flush within the target's tolerance.
        met: how surely the target is met.
        off_mm: expected height above the wanted one; negative when too low.
        sentence: the answer, ending with what to do.
    """

    height: Height
    met: Met
    off_mm: float
    sentence: str


def height_word(proud_mm: float, tolerance_mm: float) -> Height:
    """The word for a height: flush within ± the tolerance."""
    if abs(proud_mm) <= tolerance_mm:
        return Height.FLUSH
    return Height.PROUD if proud_mm > 0 else Height.BELOW


def verdict(stack: Stack, target: Target, *, unit: Unit = Unit.MM) -> StackVerdict:
    """Compare a stack with its target.

    Args:
        stack: the heights.
        target: what is wanted.
        unit: of the lengths in the sentence.
    """
    proud = stack.proud
    off = proud.middle_mm - target.aim_mm
    reach = target.tolerance_mm + 1e-9  # a picometre, so that a height exactly at the limit is met
    if abs(off) > reach:
        met = Met.MISSED
    elif max(proud.high_mm - target.aim_mm, target.aim_mm - proud.low_mm) <= reach:
        met = Met.SURE
    else:
        met = Met.LIKELY
    height = height_word(proud.middle_mm, reach)
    return StackVerdict(height, met, off, _sentence(stack, target, met, unit))


def _sentence(stack: Stack, target: Target, met: Met, unit: Unit) -> str:
    proud = stack.proud
    low, high = (format_length(v, unit, with_unit=False) for v in (proud.low_mm, proud.high_mm))
    side = "below" if proud.middle_mm < 0 else "above"
    height = f"Plug {format_length(abs(proud.middle_mm), unit)} {side} the host face ({low} to {high})"
    if met is Met.SURE:
        return f"{height}: {target.height.value}, as wanted."
    if met is Met.LIKELY:
        return f"{height}: as wanted at the middle only; measure at more places, or sort the stock."
    off = proud.middle_mm - target.aim_mm
    amount = format_length(abs(off), unit)
    if off < 0:
        return f"{height}: {amount} too low; add a shim, thicker tape or thicker stock."
    if stack.held_by_fillet:
        return f"{height}: {amount} too high, held up by the floor fillet; break the plug's lower edge more."
    return f"{height}: {amount} too high; cut the floor deeper, or use thinner stock or tape."


def compressed_mm(thickness_mm: float, squeeze: float) -> float:
    """Thickness of tape or glue under pressure.

    Args:
        thickness_mm: as bought, without its liner.
        squeeze: share of it that pressing takes away, 0 to under 1.
    """
    if not math.isfinite(thickness_mm) or thickness_mm < 0:
        raise SpecError(Worded("Tape or glue has a thickness of 0 or more; give it without its liner."))
    if not 0 <= squeeze < 1:
        raise SpecError(Worded("Tape is squeezed by 0 to 99 % of its thickness; check the share."))
    return thickness_mm * (1 - squeeze)


def fillet_height_mm(x_mm: float, fillet_radius_mm: float) -> float:
    """Height of a floor fillet above the floor at a distance from the wall (f in the module docstring)."""
    inward = fillet_radius_mm - max(x_mm, 0.0)
    if inward <= 0:
        return 0.0
    return fillet_radius_mm - math.sqrt(fillet_radius_mm**2 - inward**2)


def hold_up_mm(fillet_radius_mm: float, *, edge_break_mm: float, clearance_mm: float) -> float:
    """How far a floor fillet holds a plug above the floor.

    Args:
        fillet_radius_mm: radius between wall and floor, as it is when coated.
        edge_break_mm: width of the 45° chamfer on the plug's lower edge; 0 for a sharp edge.
        clearance_mm: per side, at the tightest place; negative counts as 0.

    Raises:
        SpecError: a length is negative or not a number.
    """
    _check_edge(fillet_radius_mm, edge_break_mm, clearance_mm)
    side = max(clearance_mm, 0.0)
    on_the_side = fillet_height_mm(side, fillet_radius_mm) - edge_break_mm
    on_the_face = fillet_height_mm(side + edge_break_mm, fillet_radius_mm)
    return max(0.0, on_the_side, on_the_face)


def edge_break_needed_mm(fillet_radius_mm: float, *, clearance_mm: float) -> float:
    """The narrowest 45° chamfer that lets a plug down to the floor: fillet radius less clearance."""
    _check_edge(fillet_radius_mm, 0.0, clearance_mm)
    return max(0.0, fillet_radius_mm - max(clearance_mm, 0.0))


def _check_edge(fillet_radius_mm: float, edge_break_mm: float, clearance_mm: float) -> None:
    if not all(math.isfinite(v) for v in (fillet_radius_mm, edge_break_mm, clearance_mm)):
        raise SpecError(
            Worded("A fillet, an edge break or a clearance is not a finite number; type a length in mm.")
        )
    if fillet_radius_mm < 0 or edge_break_mm < 0:
        raise SpecError(Worded("A fillet radius and an edge break are 0 or more; give 0 for a sharp edge."))
