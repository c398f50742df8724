"""What can be wrong with a ring, and the door where it is mended or turned away.

crossing itself   the two loops of a figure eight both count as inside (even-odd); mended, reported
no area           there and back on one line: nothing is enclosed; turned away
not finite        a number that is none; turned away
absurd size       above ten metres the unit is more likely wrong than the part large
tiny              below a tenth of a millimetre nobody cuts a pocket on purpose
"""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
import shapely
from shapely import Polygon

from inlayfit.finding import Finding, Severity
from inlayfit.geometry.crossings import MOST_CROSSINGS, cross_too_often
from inlayfit.geometry.paint import painted
from inlayfit.geometry.path import Points
from inlayfit.geometry.tolerance import Tolerance
from inlayfit.measures import point, size
from inlayfit.wording import Worded

LARGEST_PART_MM = 10_000.0
"""Above this the unit is suspected."""
SMALLEST_PART_MM = 0.1
"""Below this an outline is suspected to be a leftover."""
_NUMBERS = re.compile(r"\[(\S+) (\S+)\]")


@dataclass(frozen=True, slots=True)
class Checked:
    """A ring that passed the door.

    Attributes:
        areas: valid polygons, none if nothing is enclosed.
        findings: what was wrong.
    """

    areas: tuple[Polygon, ...]
    findings: tuple[Finding, ...] = ()


def check_ring(points: Points, tolerance: Tolerance, *, name: str) -> Checked:
    """Check one closed ring and mend it.

    Args:
        points: (n, 2), the first not repeated.
        tolerance: `settle_mm` tells a thin shape from dust.
        name: what to call it in a sentence ("The outline").
    """
    if not np.isfinite(points).all():
        return Checked(
            (),
            (
                _finding(
                    "outline-not-finite", Worded("{name} has a point that is not a number", name=name), points
                ),
            ),
        )
    if len(points) < 3 or _is_flat(points, tolerance):
        return Checked(
            (), (_finding("outline-without-area", Worded("{name} encloses nothing", name=name), points),)
        )
    polygon = Polygon(points)
    if shapely.is_valid(polygon):
        return Checked((polygon,))
    return _mended(polygon, tolerance, name)


def _is_flat(points: Points, tolerance: Tolerance) -> bool:
    spans = np.roll(points, -1, axis=0) - points
    area = abs(float((points[:, 0] * spans[:, 1] - points[:, 1] * spans[:, 0]).sum())) / 2
    if area > tolerance.settle_mm * float(np.hypot(spans[:, 0], spans[:, 1]).sum()):
        return False  # the hull is no smaller than the ring's area, and no longer than the ring
    ring = shapely.LinearRing(points)
    hull = shapely.convex_hull(ring)
    return bool(hull.area <= tolerance.settle_mm * max(hull.length, tolerance.settle_mm) / 2)


def _mended(polygon: Polygon, tolerance: Tolerance, name: str) -> Checked:
    place = crossing_place(polygon)
    if cross_too_often([polygon.exterior]):
        return Checked((), (scribble_finding(place, name),))
    parts = painted([np.asarray(polygon.exterior.coords)[:-1, :2]], evenodd=True).polygons
    kept = tuple(part for part in parts if 2 * part.area > tolerance.settle_mm * part.length)
    where = _where(place)
    if not kept:
        finding = Finding(
            "outline-self-crossing", Severity.BLOCK, Worded("{name} crosses itself{where} "
"and encloses nothing.", name=name, where=where),
            Worded("Draw it again without the crossing."), place,
        )  # fmt: skip
        return Checked((), (finding,))
    areas = Worded("1 area") if len(kept) == 1 else Worded("{count} areas", count=len(kept))
    finding = Finding(
        "outline-self-crossing", Severity.WARN,
        Worded("{name} crosses itself{where}; it was taken as {areas} by the even-odd rule.",
               name=name, where=where, areas=areas),
        Worded("Check the shape, or draw it again without the crossing."), place, fixed=True,
    )  # fmt: skip
    return Checked(kept, (finding,))


def _where(place: tuple[float, float] | None) -> str:
    return "" if place is None else Worded(" at {place}", place=point(place))


def scribble_finding(place: tuple[float, float] | None, name: str) -> Finding:
    """A finding for lines that cross so often that nothing can be meant by them."""
    return Finding(
        "lines-cross-too-often", Severity.BLOCK,
        Worded("{name} crosses itself or others more than {most} times; it was left "
"out.", name=name, most=MOST_CROSSINGS),
        Worded("Save only the outline as a file of its own."), place,
    )  # fmt: skip


def crossing_place(polygon: Polygon) -> tuple[float, float] | None:
    """Where a ring first crosses itself, as the geometry library reports it."""
    match = _NUMBERS.search(shapely.is_valid_reason(polygon))
    return None if match is None else (float(match.group(1)), float(match.group(2)))


def _finding(code: str, what: str, points: Points) -> Finding:
    good = points[np.isfinite(points).all(axis=1)]
    place = None if len(good) == 0 else (float(good[0, 0]), float(good[0, 1]))
    where = _where(place)
    return Finding(
        code, Severity.WARN, Worded("{what}{where}; it was left out.", what=what, where=where),
        Worded("Delete it, or draw it again if something is missing."), place,
    )  # fmt: skip


def size_findings(bounds: tuple[float, float, float, float], *, count: int) -> list[Finding]:
    """Suspicions from the size of all outlines together.

    Args:
        bounds: x0, y0, x1, y1 of everything.
        count: how many outlines there are.
    """
    x0, y0, x1, y1 = bounds
    wide, high = x1 - x0, y1 - y0
    place = ((x0 + x1) / 2, (y0 + y1) / 2)
    if max(wide, high) > LARGEST_PART_MM:
        message = Worded("The drawing is {size}, larger than ten metres.", size=size(wide, high, ",.0f"))
        return [Finding("size-absurd", Severity.WARN, message, Worded("Check its unit."), place)]
    if count and max(wide, high) < SMALLEST_PART_MM:
        message = Worded("The drawing is only {size}.", size=size(wide, high, ".2g"))
        return [Finding("size-tiny", Severity.WARN, message, Worded("Check its unit."), place)]
    return []


def tiny_finding(polygon: Polygon, name: str) -> Finding | None:
    """A finding for an outline too small to be meant."""
    x0, y0, x1, y1 = polygon.bounds
    if max(x1 - x0, y1 - y0) >= SMALLEST_PART_MM:
        return None
    message = Worded(
        "{name} is only {size}, at {place}.",
        name=name,
        size=size(x1 - x0, y1 - y0, ".3g"),
        place=point((x0, y0)),
    )
    remedy = Worded("Leave it out, or delete it, if it is a leftover.")
    return Finding("outline-tiny", Severity.WARN, message, remedy, (x0, y0))
