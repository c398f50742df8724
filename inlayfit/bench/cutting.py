"""Facts of the cut: passes, which way round a contour runs, spindle speed and feed.

Passes. A depth is cut in equal steps, as few as the depth per pass allows; a floor allowance is left by them
and taken by one pass of its own.

Which way round. A cutter that turns clockwise, seen from the spindle, moves its teeth backwards (against the
feed) on the right side of its path and forwards on the left.

    climb          the material that stays is on the right: a tooth meets it with its thickest chip and leaves
                   with none
    conventional   it is on the left: the chip starts at nothing and the tooth rubs first

So with climb the outside of a plug runs clockwise and the wall of a pocket counter-clockwise; an island in a
pocket is an outside, a hole in a plug is a wall. (Climb and conventional, or down and up milling, as cutter
makers' guides define them; the sides follow from the direction of rotation and are tested so.) On a machine
with play climb pulls the work in, conventional leaves fuzz in wood; cut both halves the same way, or their
errors add instead of cancelling (common practice).

Speed and feed are the plain formulas of the cutter makers' catalogues, and no advice: the limits of the
machine, its cutter and its manual come first.

    n = 1000·vc / (π·D)      f = n·z·fz
"""

from __future__ import annotations

import math
from enum import StrEnum

import numpy as np

from inlayfit.bench.milling import Milling
from inlayfit.errors import SpecError
from inlayfit.geometry.path import Points, frozen_array
from inlayfit.geometry.region import Region
from inlayfit.wording import Worded

MOST_PASSES = 1000
"""More passes than this are a typing mistake."""
_WHOLE_PASS = 1e-9  # share of a pass that counts as none


class Turn(StrEnum):
    """Which way round a closed contour runs, seen from the spindle, y up."""

    CLOCKWISE = "clockwise"
    COUNTER_CLOCKWISE = "counter-clockwise"


class Stays(StrEnum):
    """On which side of an outline the material that stays lies."""

    INSIDE = "inside"
    """The outside of a plug, or of an island in a pocket."""
    OUTSIDE = "outside"
    """The wall of a pocket, or of a hole in a plug."""


def contour_turn(milling: Milling, stays: Stays, *, clockwise_spindle: bool = True) -> Turn:
    """Which way round one closed contour is cut.

    Args:
        milling: climb or conventional.
        stays: where the material that stays lies.
        clockwise_spindle: False for a spindle and cutter that turn the other way.
    """
    on_the_right = (milling is Milling.CLIMB) == clockwise_spindle
    return Turn.CLOCKWISE if on_the_right == (stays is Stays.INSIDE) else Turn.COUNTER_CLOCKWISE


def turn_of(ring: Points) -> Turn:
    """Which way round a ring of (n, 2) points runs, by its signed area (the shoelace formula).

    Raises:
        SpecError: the ring has no area.
    """
    x, y = (ring - ring.mean(axis=0)).T
    area = float((x * (np.roll(y, -1) - np.roll(y, 1))).sum()) / 2
    if area == 0 or not math.isfinite(area):
        raise SpecError(Worded("A contour without area runs neither way round; remove it."))
    return Turn.COUNTER_CLOCKWISE if area > 0 else Turn.CLOCKWISE


def directed_rings(
    region: Region, milling: Milling, *, stays: Stays, clockwise_spindle: bool = True
) -> list[Points]:
    """The rings of a region, (n, 2) each, running the way they are cut; outer rings before their holes.

    A region keeps itself on the left of its rings, so either all of them are turned round or none.

    Args:
        region: a plug (`Stays.INSIDE`) or a pocket (`Stays.OUTSIDE`).
        milling: climb or conventional.
        stays: whether the material that stays is the region or what is round it.
        clockwise_spindle: False for a spindle and cutter that turn the other way.
    """
    outer = contour_turn(milling, stays, clockwise_spindle=clockwise_spindle)
    if outer is Turn.COUNTER_CLOCKWISE:
        return region.rings()
    return [frozen_array(ring[::-1], columns=2) for ring in region.rings()]


def passes_mm(depth_mm: float, *, per_pass_mm: float, floor_allowance_mm: float = 0.0) -> tuple[float, ...]:
    """Depths to which the passes go, shallowest first; the last is `depth_mm` exactly.

    Args:
        depth_mm: of the pocket, or through the plug's stock.
        per_pass_mm: most that one pass takes.
        floor_allowance_mm: stock the equal passes leave on the floor for a last one.

    Raises:
        SpecError: a length makes no sense, or there would be more than a thousand passes.
    """
    if not all(math.isfinite(v) for v in (depth_mm, per_pass_mm, floor_allowance_mm)):
        raise SpecError(Worded("A depth of cut is not a finite number; type a length such as 1 mm."))
    if depth_mm <= 0 or per_pass_mm <= 0:
        raise SpecError(Worded("A depth and a depth per pass are more than 0; give both."))
    if not 0 <= floor_allowance_mm < depth_mm:
        raise SpecError(Worded("A floor allowance is 0 or more and less than the depth; give 0 for none."))
    if floor_allowance_mm > per_pass_mm:
        raise SpecError(Worded("The floor allowance is more than one pass takes; make it smaller."))
    rough = depth_mm - floor_allowance_mm
    if rough / per_pass_mm > MOST_PASSES:
        raise SpecError(
            Worded("That depth takes more than {most} passes; check the depth per pass.", most=MOST_PASSES)
        )
    count = math.ceil(rough / per_pass_mm - _WHOLE_PASS) or 1
    depths = [rough * i / count for i in range(1, count + 1)]
    return (*depths, depth_mm) if floor_allowance_mm else (*depths[:-1], depth_mm)


def spindle_rpm(cutting_speed_m_min: float, *, cutter_mm: float) -> float:
    """Revolutions per minute for a cutting speed: n = 1000·vc / (π·D)."""
    _check_positive(cutting_speed_m_min, cutter_mm)
    return 1000 * cutting_speed_m_min / (math.pi * cutter_mm)


def feed_mm_min(rpm: float, *, teeth: int, chip_mm: float) -> float:
    """Feed for a chip per tooth: f = n·z·fz."""
    _check_positive(rpm, teeth, chip_mm)
    return rpm * teeth * chip_mm


def _check_positive(*values: float) -> None:
    if not all(math.isfinite(v) and v > 0 for v in values):
        raise SpecError(Worded("Cutting speed, diameter, teeth and chip are more than 0; check the numbers."))
