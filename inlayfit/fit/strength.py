"""Thin places: where the plug, or the host between pockets, may be too thin to survive the cutting."""

from __future__ import annotations

import shapely

from inlayfit.finding import Finding, Severity
from inlayfit.fit.result import HalfResult
from inlayfit.fit.spec import FitSpec
from inlayfit.geometry.region import Region
from inlayfit.geometry.width import Passage, passages
from inlayfit.units import MINUS

_MOST_NAMED = 5


def thin_places(pocket: HalfResult, plug: HalfResult, spec: FitSpec) -> list[Finding]:
    """Findings for necks and tenons of the plug, and for walls of the host, thinner than `spec.thin_mm`."""
    if spec.thin_mm <= 0:
        return []
    necks = passages(plug.outline, below=spec.thin_mm)
    walls = passages(host_around(pocket.outline, 2 * spec.thin_mm), below=spec.thin_mm)
    return [
        *(_finding("plug", "neck or tenon", passage, spec) for passage in necks[:_MOST_NAMED]),
        *(_finding("host", "wall", passage, spec) for passage in walls[:_MOST_NAMED]),
    ]


def host_around(pocket: Region, margin: float) -> Region:
    """What is left standing between and inside the walls of a pocket, and a margin around it."""
    if pocket.is_empty:
        return Region.empty()
    x0, y0, x1, y1 = pocket.bounds
    frame = shapely.box(x0 - margin, y0 - margin, x1 + margin, y1 + margin)
    return Region.of(frame).minus(pocket)


def _finding(whose: str, what: str, passage: Passage, spec: FitSpec) -> Finding:
    x, y = (f"{value:.2f}".replace("-", MINUS) for value in passage.place)
    return Finding(
        "thin-plug" if whose == "plug" else "thin-wall",
        Severity.WARN,
        f"The {whose} has a {what} only {passage.width:.2f} mm thick at x {x}, y {y}; less than "
        f"{spec.thin_mm:.2f} mm may not survive.",
        "Widen the outline there, hold it with tape over the whole face, or take lighter passes.",
        passage.place,
    )
