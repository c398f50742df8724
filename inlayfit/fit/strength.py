"""Thin places: where the plug, or the host between pockets, may be too thin to survive the cutting."""

from __future__ import annotations

import shapely

from inlayfit.finding import Finding, Severity
from inlayfit.fit.result import HalfResult
from inlayfit.fit.spec import FitSpec
from inlayfit.geometry.region import Region
from inlayfit.geometry.width import Passage, passages
from inlayfit.measures import at, length
from inlayfit.wording import Worded

_MOST_NAMED = 5
_STRENGTHEN = Worded(
    "Widen the outline there, hold it with tape over the whole face, or take lighter passes."
)


def thin_places(pocket: HalfResult, plug: HalfResult, spec: FitSpec) -> list[Finding]:
    """Findings for necks and tenons of the plug, and for walls of the host, thinner than `spec.thin_mm`."""
    if spec.thin_mm <= 0:
        return []
    necks = passages(plug.outline, below=spec.thin_mm)
    walls = passages(host_around(pocket.outline, 2 * spec.thin_mm), below=spec.thin_mm)
    return [
        *(_thin_plug(passage, spec) for passage in necks[:_MOST_NAMED]),
        *(_thin_wall(passage, spec) for passage in walls[:_MOST_NAMED]),
    ]


def host_around(pocket: Region, margin: float) -> Region:
    """What is left standing between and inside the walls of a pocket, and a margin around it."""
    if pocket.is_empty:
        return Region.empty()
    x0, y0, x1, y1 = pocket.bounds
    frame = shapely.box(x0 - margin, y0 - margin, x1 + margin, y1 + margin)
    return Region.of(frame).minus(pocket)


def _thin_plug(passage: Passage, spec: FitSpec) -> Finding:
    message = Worded(
        "The plug has a neck or tenon only {width} thick at {place}; less than {thin} may not survive.",
        width=length(passage.width, ".2f"),
        place=at(passage.place),
        thin=length(spec.thin_mm, ".2f"),
    )
    return Finding("thin-plug", Severity.WARN, message, _STRENGTHEN, passage.place)


def _thin_wall(passage: Passage, spec: FitSpec) -> Finding:
    message = Worded(
        "The host has a wall only {width} thick at {place}; less than {thin} may not survive.",
        width=length(passage.width, ".2f"),
        place=at(passage.place),
        thin=length(spec.thin_mm, ".2f"),
    )
    return Finding("thin-wall", Severity.WARN, message, _STRENGTHEN, passage.place)
