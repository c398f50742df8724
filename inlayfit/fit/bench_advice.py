"""Two halves that are both made: will they go together, where do they bind, and what can the bench do.

Nothing moves here any more, so the answer is a list of places. At each the gap is measured and compared with
the clearance that was wanted; the difference is what has to come off one of the two walls there, *per side*.
A half that is *already cut* may still be filed, scraped or pared; a *finished* one may not. Where neither
may be worked, or where the gap is too wide, other ways are left: a shim, another partner, or a new half.

The places come from the gap map, whose minima are exact; the length of wall to work on is counted along its
samples.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from inlayfit.finding import Finding, Severity, heaviest_first
from inlayfit.fit.result import PROMISED_MM, FitResult, Spot, WallGap
from inlayfit.fit.spec import FitSpec, Half, HalfState
from inlayfit.geometry.path import Points
from inlayfit.measures import Measure, at, length, per_side
from inlayfit.units import Unit, format_per_side
from inlayfit.wording import Worded

_FELT_MM = 0.005  # less than this is neither felt nor filed; common practice, no source
_MOST_AT_THE_BENCH_MM = 0.5  # more is remade, not filed; common practice, no source
_MOST_NAMED = 5
_TOO_MUCH = Worded("That is too much for a file: remake one half, or choose another partner.")


@dataclass(frozen=True, slots=True)
class BenchWork:
    """One place where two made halves are too tight.

    Attributes:
        place_mm: on the plug's wall, where it is tightest.
        gap_mm: the gap there; negative where the plug bites.
        take_off_mm: what has to come off, per side, for the clearance wanted.
        length_mm: along how much wall; 0 at a single point.
        halves: which of the two may still be worked.
    """

    place_mm: tuple[float, float]
    gap_mm: float
    take_off_mm: float
    length_mm: float
    halves: tuple[Half, ...]


def bench_work(result: FitResult) -> tuple[BenchWork, ...]:
    """Every place tighter than wanted, tightest first; none unless both halves are made."""
    spec = result.spec
    if spec.pocket.may_move or spec.plug.may_move or result.gap.is_empty:
        return ()
    limit = spec.clearance_mm - _FELT_MM
    stretches = [stretch for wall in result.gap.plug_walls for stretch in _stretches(wall, limit)]
    tightest = [(stretch.tightest, stretch.length_mm) for stretch in stretches]
    for spot in result.gap.tightest:
        number = _stretch_of(spot, stretches)
        if number is None:  # between two samples, as where a corner of the pocket reaches in
            tightest.append((spot, 0.0))
        elif spot.gap_mm < tightest[number][0].gap_mm:
            tightest[number] = (spot, stretches[number].length_mm)
    halves, wanted = _workable(spec), spec.clearance_mm
    works = [
        BenchWork(spot.place_mm, spot.gap_mm, wanted - spot.gap_mm, length, halves)
        for spot, length in tightest
        if spot.gap_mm < limit
    ]
    return tuple(sorted(works, key=lambda work: work.gap_mm))


def advised(result: FitResult, works: Sequence[BenchWork]) -> FitResult:
    """The answer with bench advice in its findings, if both halves are made; else as it is."""
    spec = result.spec
    if spec.pocket.may_move or spec.plug.may_move or result.gap.is_empty:
        return result
    findings = [_with_bench_remedy(finding, result) for finding in result.findings]
    findings += [_ease(work) for work in works[:_MOST_NAMED]]
    if len(works) > _MOST_NAMED:
        findings.append(_more(works))
    if result.gap.min_mm > spec.clearance_mm + _FELT_MM:
        findings.append(_loose(result))
    return replace(result, findings=heaviest_first(findings))


def goes_in(result: FitResult) -> bool:
    """Whether the plug bites nowhere more than was asked for."""
    return bool(result.gap.min_mm >= min(0.0, result.spec.clearance_mm) - PROMISED_MM)


class Meeting(StrEnum):
    """How two made halves go together."""

    BINDS = "binds"
    TIGHTER = "tighter than wanted"
    LOOSER = "looser than wanted"
    AS_WANTED = "as wanted"


def meeting(result: FitResult) -> Meeting:
    """How two made halves go together, by their smallest gap."""
    gap_mm, wanted_mm = result.gap.min_mm, result.spec.clearance_mm
    if not goes_in(result):
        return Meeting.BINDS
    if gap_mm < wanted_mm - _FELT_MM:
        return Meeting.TIGHTER
    return Meeting.LOOSER if gap_mm > wanted_mm + _FELT_MM else Meeting.AS_WANTED


def verdict_sentence(result: FitResult) -> str:
    """Whether two made halves go together, in one sentence."""
    gap_mm, how = result.gap.min_mm, meeting(result)
    tightest = format_per_side(gap_mm, Unit.MM, with_unit=True)
    if how is Meeting.BINDS:
        return f"Will not go in as it is: it binds by {format_per_side(-gap_mm, Unit.MM, with_unit=True)}."
    if how in {Meeting.TIGHTER, Meeting.LOOSER}:
        return f"Goes in, but {how.value}: {tightest} at the tightest spot."
    return f"Goes in as wanted: {tightest} at the tightest spot."


@dataclass(frozen=True, slots=True)
class _Stretch:
    points: Points
    length_mm: float
    tightest: Spot


def _stretches(wall: WallGap, limit: float) -> list[_Stretch]:
    """The unbroken stretches of one ring that are too tight."""
    tight = wall.gaps < limit
    lengths = np.hypot(*(np.roll(wall.points, -1, axis=0) - wall.points).T)
    if tight.all():
        return [_Stretch(wall.points, float(lengths.sum()), _lowest(wall, np.arange(len(tight))))]
    if not tight.any():
        return []
    start = int(np.flatnonzero(~tight)[0])  # begin where it is clear, so that no stretch runs over the seam
    order = np.roll(np.arange(len(tight)), -start)
    edges = np.flatnonzero(np.diff(tight[order].astype(np.int8))) + 1
    pieces = [piece for piece in np.split(order, edges) if tight[piece[0]]]
    return [
        _Stretch(wall.points[piece], float(lengths[piece[:-1]].sum()), _lowest(wall, piece))
        for piece in pieces
    ]


def _lowest(wall: WallGap, numbers: NDArray[np.intp]) -> Spot:
    i = int(numbers[wall.gaps[numbers].argmin()])
    (x, y), (px, py) = wall.points[i].tolist(), wall.partners[i].tolist()
    return Spot((x, y), (px, py), float(wall.gaps[i]))


def _stretch_of(spot: Spot, stretches: Sequence[_Stretch]) -> int | None:
    """The stretch a spot lies on; None if it lies between samples of its own."""
    best, number = np.inf, None
    for i, stretch in enumerate(stretches):
        away = float(np.hypot(*(stretch.points - np.array(spot.place_mm)).T).min())
        if away < best:
            best, number = away, i
    if number is None:
        return None
    reach = max(2 * stretches[number].length_mm / max(len(stretches[number].points) - 1, 1), 0.05)
    return number if best <= reach else None


def _workable(spec: FitSpec) -> tuple[Half, ...]:
    states = ((Half.PLUG, spec.plug.state), (Half.POCKET, spec.pocket.state))
    return tuple(half for half, state in states if state is HalfState.ALREADY_CUT)


def _with_bench_remedy(finding: Finding, result: FitResult) -> Finding:
    if finding.code != "bites":
        return finding
    if result.spec.clearance_mm - result.gap.min_mm > _MOST_AT_THE_BENCH_MM:
        return replace(finding, remedy=_TOO_MUCH)
    if _workable(result.spec):
        remedy = Worded("Work the spots listed, try it, and measure again; do not force it.")
        return replace(finding, remedy=remedy)
    return replace(finding, remedy=Worded("Both are finished: remake one, or choose another partner."))


def _ease(work: BenchWork) -> Finding:
    is_stretch = work.length_mm >= 0.05
    off = length(work.take_off_mm)
    return Finding(
        "ease-here",
        Severity.WARN,
        Worded(
            "At {place} the gap is {gap}, {off} per side less than wanted{along}.",
            place=at(work.place_mm),
            gap=per_side(work.gap_mm),
            off=off,
            along=Worded(" along {stretch} of wall", stretch=length(work.length_mm, ".1f"))
            if is_stretch
            else "",
        ),
        _remedy(work, off),
        work.place_mm,
    )


def _remedy(work: BenchWork, off: Measure) -> Worded:
    if work.take_off_mm > _MOST_AT_THE_BENCH_MM:
        return _TOO_MUCH
    if not work.halves:
        return Worded("Neither half may be worked there: remake one, or choose another partner.")
    half = work.halves[0]
    if len(work.halves) == 1:
        return Worded("File, scrape or pare {off} per side off the {half} there.", off=off, half=half)
    return Worded(
        "File, scrape or pare {off} per side off the {half} there, or off the pocket.", off=off, half=half
    )


def _more(works: Sequence[BenchWork]) -> Finding:
    rest = len(works) - _MOST_NAMED
    return Finding(
        "ease-more",
        Severity.NOTE,
        Worded("1 more spot is tighter than wanted, none as tight as these.")
        if rest == 1
        else Worded("{rest} more spots are tighter than wanted, none as tight as these.", rest=rest),
        Worded("Work the named spots first, then measure again; fit.json lists all."),
        works[_MOST_NAMED].place_mm,
    )


def _loose(result: FitResult) -> Finding:
    spare = result.gap.min_mm - result.spec.clearance_mm
    return Finding(
        "looser-than-wanted",
        Severity.WARN,
        Worded("Even at its tightest spot the fit is {spare} looser than wanted.", spare=per_side(spare)),
        Worded("Shim each wall by {spare}, remake the plug, or choose another partner.", spare=length(spare)),
        result.gap.tightest[0].place_mm if result.gap.tightest else None,
    )
