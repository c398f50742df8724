"""From linework to pieces: chain, cut where lines meet, check, nest.

A *piece* is a connected area with its contours; a drawing's layer gives any number of them.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

import numpy as np
import shapely
from scipy.spatial import cKDTree
from shapely import Polygon

from inlayfit.drawing import Figure
from inlayfit.finding import Finding, Severity
from inlayfit.geometry.containment import nest
from inlayfit.geometry.faults import check_ring, scribble_finding
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.loops import Gap
from inlayfit.geometry.path import Path, Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tangles import Untangled, untangle
from inlayfit.geometry.tolerance import Tolerance
from inlayfit.measures import Measure, length, point
from inlayfit.wording import Worded

SHOWN_ONE_BY_ONE = 20
"""More findings of a kind than this become one that counts them."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A connected area and where it came from."""

    region: Region
    contours: tuple[Path, ...]
    name: str
    layer: str


@dataclass(slots=True)
class Areas:
    """Closed areas on the way to nesting, side by side in four lists."""

    polygons: list[Polygon] = field(default_factory=list)
    units: list[int] = field(default_factory=list)
    paths: list[Path | None] = field(default_factory=list)
    names: list[str] = field(default_factory=list)

    def add(self, unit: int, polygons: Sequence[Polygon], path: Path | None, name: str) -> None:
        """Add the areas of one ring or one meeting."""
        for polygon in polygons:
            self.polygons.append(polygon)
            self.units.append(unit)
            self.paths.append(path if len(polygons) == 1 else None)
            self.names.append(name)


def linework_pieces(
    figures: Sequence[Figure], layer: str, *, gap_mm: float, tolerance: Tolerance
) -> tuple[list[Piece], list[Finding], list[Path]]:
    """Pieces of the unfilled figures of one layer, findings, and the paths that stayed open."""
    names = {id(path): figure.name for figure in figures for path in figure.contours if path.closed}
    usable = _usable([path for figure in figures for path in figure.contours])
    common = _common_name(figures)
    sorted_out = untangle(usable, gap=gap_mm, tolerance=tolerance)
    areas = Areas()
    findings: list[Finding] = []
    for number, path in enumerate(sorted_out.rings):
        name = names.get(id(path), common)
        checked = check_ring(flatten(path, tolerance.arc_mm), tolerance, name=called(name, layer))
        findings += checked.findings
        areas.add(number, checked.areas, None if checked.findings else path, name)
    for number, meeting in enumerate(sorted_out.meetings, len(sorted_out.rings)):
        areas.add(number, meeting.faces, None, common)
    pieces = [_piece(areas, outer, holes, polygon, layer) for polygon, outer, holes in _nested(areas)]
    return pieces, findings + _findings(sorted_out, layer), sorted_out.chains


def _usable(paths: list[Path]) -> list[Path]:
    """Paths that have a segment and only finite numbers; asked of all at once, since nearly all have."""
    if not paths:
        return []
    plain = np.isfinite(np.concatenate([path.vertices for path in paths])).all()
    return [
        path
        for path in paths
        if len(path.bulges) and ((plain and not path.curves and len(path.bulges) == 1) or path.is_finite())
    ]


def called(name: str, layer: str) -> Worded:
    """How a sentence names an outline."""
    if name:
        return Worded("The outline “{name}”", name=name[:60])
    if layer not in ("", "0"):
        return Worded("An outline on layer “{layer}”", layer=layer[:60])
    return Worded("An outline")


def _common_name(figures: Iterable[Figure]) -> str:
    names = {figure.name for figure in figures}
    return names.pop() if len(names) == 1 else ""


def _nested(areas: Areas) -> list[tuple[Polygon, int, tuple[int, ...]]]:
    return [(n.polygon, n.outer, n.holes) for n in nest(areas.polygons, areas.units)]


def _piece(areas: Areas, outer: int, holes: Sequence[int], polygon: Polygon, layer: str) -> Piece:
    region = Region.of(polygon)
    paths = [areas.paths[i] for i in (outer, *holes)]
    true = [path for path in paths if path is not None]
    whole = len(true) == len(paths) == 1 + len(polygon.interiors)
    contours = tuple(true) if whole else chords(region)
    return Piece(region, contours, areas.names[outer], layer)


def chords(region: Region) -> tuple[Path, ...]:
    """A region's rings as straight contours."""
    return tuple(Path.polyline(ring) for ring in region.rings())


def _findings(found: Untangled, layer: str) -> list[Finding]:
    return [*_gap_findings(found.gaps), *_meeting_findings(found, layer), *_double_findings(found)]


def _place(path: Path) -> tuple[float, float]:
    x, y = path.start.tolist()
    return x, y


def _gap_findings(gaps: Sequence[Gap]) -> list[Finding]:
    if not gaps:
        return []
    remedy = Worded("Nothing to do, unless the shape changed: then close it in the drawing program.")
    if len(gaps) <= SHOWN_ONE_BY_ONE:
        return [
            Finding(
                "gap-closed", Severity.NOTE,
                Worded("A gap of {gap} at {place} was closed.",
                       gap=_short(gap.width), place=point(gap.place)),
                remedy, gap.place, fixed=True,
            )
            for gap in gaps
        ]  # fmt: skip
    widest = max(gaps, key=lambda gap: gap.width)
    message = Worded(
        "{count} gaps were closed, the widest {gap} at {place}.",
        count=len(gaps),
        gap=_short(widest.width),
        place=point(widest.place),
    )
    return [Finding("gap-closed", Severity.NOTE, message, remedy, widest.place, fixed=True)]


def _short(width: float) -> Measure:
    return length(width, ".4f" if width >= 0.0001 else ".1e")


def _meeting_findings(found: Untangled, layer: str) -> list[Finding]:
    findings = []
    for meeting in found.meetings:
        places, areas = len(meeting.places), len(meeting.faces)
        where = Worded(", first at {place}", place=point(meeting.places[0])) if places else ""
        message = Worded(
            "Lines{on_layer} meet in threes or cross at {places}{where}; they were cut there into {areas}.",
            on_layer=_on(layer),
            places=Worded("1 place") if places == 1 else Worded("{count} places", count=places),
            where=where,
            areas=Worded("1 area") if areas == 1 else Worded("{count} areas", count=areas),
        )
        remedy = Worded("Check that each area is one you want; leave the others out.")
        place = meeting.places[0] if places else None
        findings.append(Finding("lines-cross", Severity.WARN, message, remedy, place))
    findings += [
        Finding(
            "line-crosses-outline", Severity.WARN,
            Worded("A line{on_layer} runs across an outline with both ends free; it was left out.",
                   on_layer=_on(layer)),
            Worded("Delete it, or end it on the outline if it should part it."), _place(path),
        )
        for path in found.crossing
    ]  # fmt: skip
    findings += [
        scribble_finding(_place(path), Worded("The linework{on_layer}", on_layer=_on(layer)))
        for path in found.scribbles
    ]
    return summarised(findings)


def _on(layer: str) -> str:
    return Worded(" on layer “{layer}”", layer=layer[:60]) if layer not in ("", "0") else ""


def _double_findings(found: Untangled) -> list[Finding]:
    findings = []
    if found.doubled_rings:
        count = len(found.doubled_rings)
        message = (
            Worded("1 outline lies exactly on others and counted once.")
            if count == 1
            else Worded("{count} outlines lie exactly on others and counted once.", count=count)
        )
        place = _place(found.doubled_rings[0])
        findings.append(
            Finding("outline-doubled", Severity.NOTE, message, Worded("Nothing to do."), place, fixed=True)
        )
    if found.doubled_pieces:
        count = found.doubled_pieces
        message = (
            Worded("1 line that lay on others counted once.")
            if count == 1
            else Worded("{count} lines that lay on others counted once.", count=count)
        )
        findings.append(
            Finding(
                "line-doubled",
                Severity.NOTE,
                message,
                Worded("Nothing to do."),
                found.doubled_place,
                fixed=True,
            )
        )
    return findings


def open_findings(chains: Sequence[Path]) -> list[Finding]:
    """One finding for each path that stayed open: by how much, and where."""
    if not chains:
        return []
    ends = np.array([[path.start, path.end] for path in chains]).reshape(-1, 2)
    distances: Points = np.asarray(cKDTree(ends).query(ends, k=2)[0])
    findings = []
    for i in range(len(chains)):
        gaps = distances[2 * i : 2 * i + 2, 1]
        worst = 2 * i + int(np.argmax(gaps))
        x, y = ends[worst].tolist()
        message = Worded(
            "A line is open at {place}: the nearest loose end is {away} away.",
            place=point((x, y)),
            away=length(float(gaps.max()), ".3f"),
        )
        remedy = Worded("Close it in the drawing program, or allow a wider gap if its ends belong together.")
        findings.append(Finding("outline-open", Severity.WARN, message, remedy, (x, y)))
    return summarised(findings)


def summarised(findings: list[Finding]) -> list[Finding]:
    """At most so many findings of a code; the rest are counted in one more."""
    result: list[Finding] = []
    seen: dict[str, int] = {}
    for finding in findings:
        seen[finding.code] = seen.get(finding.code, 0) + 1
        if seen[finding.code] <= SHOWN_ONE_BY_ONE:
            result.append(finding)
    for code, count in seen.items():
        if count > SHOWN_ONE_BY_ONE:
            first = next(f for f in findings if f.code == code)
            more = count - SHOWN_ONE_BY_ONE
            message = (
                Worded("The same again at 1 more place.")
                if more == 1
                else Worded("The same again at {more} more places.", more=more)
            )
            result.append(Finding(code, first.severity, message, first.remedy, None, first.fixed))
    return result


def same_area(one: Polygon, other: Polygon, settle_mm: float) -> bool:
    """Whether two areas lie exactly on each other."""
    if abs(one.area - other.area) > settle_mm * (one.length + other.length):
        return False
    return bool(shapely.hausdorff_distance(one.boundary, other.boundary) <= 2 * settle_mm)
