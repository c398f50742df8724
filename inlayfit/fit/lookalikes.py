"""What to say about a plug that looks the same turned or flipped: a mark where it matters, else nothing."""

from __future__ import annotations

import math

from inlayfit.finding import Finding, Severity
from inlayfit.fit.orientation import Motion, Need, Orientation, Orientations, orientations
from inlayfit.fit.result import FitResult
from inlayfit.measures import length
from inlayfit.progress import Progress
from inlayfit.wording import Worded


def orientations_of(result: FitResult, *, progress: Progress | None = None) -> Orientations:
    """The lookalikes of a solved plug, judged by its smallest gap; raises Cancelled if stopped."""
    gap_mm = 0.0 if result.gap.is_empty else max(0.0, result.gap.min_mm)
    return orientations(result.plug.outline, clearance_mm=gap_mm, progress=progress)


def mark_finding(ways: Orientations) -> Finding | None:
    """A note if the piece can be tried wrongly and then does not go in; None if every lookalike goes in."""
    wrong = [way for way in ways.lookalikes if way.need is Need.MARK]
    if not wrong:
        return None
    least = min(wrong, key=lambda way: way.misfit_mm)
    return Finding(
        "mark-it",
        Severity.NOTE,
        Worded(
            "The plug looks the same {motion}{others} but does not go in like that: its wall "
            "is off by {misfit}.",
            motion=motion_words(least),
            others=_others(len(wrong) - 1),
            misfit=length(least.misfit_mm),
        ),
        Worded("Mark plug and pocket on the same side before taking the plug off the sheet; never force it."),
    )


def _others(count: int) -> str:
    if count > 1:
        return Worded(", and {count} other ways", count=count)
    return Worded(", and one other way") if count else ""


def motion_words(way: Orientation) -> Worded:
    """In words: turned by 180°, flipped, flipped and turned by 90°."""
    degrees = round(math.degrees(way.angle_rad)) % 360
    if way.motion is Motion.TURNED:
        return Worded("turned by {degrees}°", degrees=degrees)
    return Worded("flipped and turned by {degrees}°", degrees=degrees) if degrees else Worded("flipped")


def orientation_sentence(ways: Orientations) -> str:
    """One line for the summary."""
    if ways.is_round:
        return "round: any turn looks the same" + ("" if _needs_mark(ways) else " and goes in")
    if not ways.lookalikes:
        return "goes in one way only, and looks it"
    words = [motion_words(way) for way in sorted(ways.lookalikes, key=_reading_order)][:4]
    more = f" and {len(ways.lookalikes) - 4} more" if len(ways.lookalikes) > 4 else ""
    end = "some do not go in: mark it" if _needs_mark(ways) else "and goes in"
    return (
        f"looks the same {', '.join(words)}{more}; {end}"
        if _needs_mark(ways)
        else (f"looks the same {', '.join(words)}{more}, {end}")
    )


def _reading_order(way: Orientation) -> tuple[int, bool]:
    """By the angle as it is said, and turned before flipped: like plugs then read alike."""
    return round(math.degrees(way.angle_rad)) % 360, way.motion is not Motion.TURNED


def _needs_mark(ways: Orientations) -> bool:
    return ways.mark_is_compulsory
