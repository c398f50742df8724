"""Whether the plug ends where it is meant to: the one check of heights beside those of outlines.

The expected height has a spread, that of the readings of depth and thickness. Only where the whole of it lies
above the wanted height, or the whole of it below, is something to be changed before cutting: otherwise the
readings themselves cannot tell.
"""

from __future__ import annotations

from dataclasses import replace

from inlayfit.document.edits import set_stack
from inlayfit.document.remedies import Fix
from inlayfit.document.state import Fitting
from inlayfit.finding import Finding, Severity
from inlayfit.measures import length
from inlayfit.wording import Worded

HEIGHT_CODE = "height-missed"
"""Code of the finding for a plug that ends higher or lower than it is meant to."""
_UNFELT_MM = 0.01
"""A step of 10 µm at the face is not felt by a finger (common practice)."""


def off_by_mm(fitting: Fitting) -> float:
    """How much higher than wanted the plug is expected to end, negative for lower; 0 where that is unsure."""
    stack = fitting.stack
    proud, target = stack.heights.proud, stack.target_proud_mm
    is_sure = proud.low_mm > target + _UNFELT_MM or proud.high_mm < target - _UNFELT_MM
    return proud.middle_mm - target if is_sure else 0.0


def height_finding(fitting: Fitting) -> Finding | None:
    """What is wrong with the height of a fitting, if anything is."""
    off_mm = off_by_mm(fitting)
    if off_mm == 0:
        return None
    off = length(abs(off_mm))
    message = (
        Worded("The plug ends {off} higher than wanted.", off=off)
        if off_mm > 0
        else Worded("The plug ends {off} lower than wanted.", off=off)
    )
    return Finding(HEIGHT_CODE, Severity.WARN, message, _remedy(fitting, off_mm))


def height_fix(fitting: Fitting) -> Fix | None:
    """Another depth for a pocket that is still to be cut."""
    depth_mm = _depth_needed_mm(fitting)
    if off_by_mm(fitting) == 0 or depth_mm is None:
        return None
    stack = replace(fitting.stack, depth_mm=depth_mm)
    return Fix(Worded("Cut it to that depth"), lambda state: set_stack(state, stack))


def _depth_needed_mm(fitting: Fitting) -> float | None:
    """The depth at which it ends as wanted; None if the pocket is made, or would have none."""
    depth_mm = round(fitting.stack.depth_mm + off_by_mm(fitting), 6)  # to a picometre: sums of decimals
    return depth_mm if fitting.spec.pocket.may_move and depth_mm > 0 else None


def _remedy(fitting: Fitting, off_mm: float) -> Worded:
    depth_mm = _depth_needed_mm(fitting)
    is_high = off_mm > 0
    if depth_mm is None:
        return (
            Worded("Take thinner tape or a thinner plug, or change the height in the fit sentence.")
            if is_high
            else Worded("Take thicker tape or a thicker plug, or change the height in the fit sentence.")
        )
    depth = length(depth_mm)
    return (
        Worded("Cut the pocket {depth} deep, or take thinner tape or a thinner plug.", depth=depth)
        if is_high
        else Worded("Cut the pocket {depth} deep, or take thicker tape or a thicker plug.", depth=depth)
    )
