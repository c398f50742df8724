"""From a file to outlines: read, chain, nest, check, simplify once, and say everything that was changed.

Painted shapes (those with a fill) count as the eye sees them: all paint of a layer together. Linework has
no inside until it is chained into loops; loops nest by the even-odd rule, layer by layer. Marks (hidden
layers, construction) count only if their layer is asked for, or if there is nothing else.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path as FilePath

import numpy as np
import shapely

from inlayfit.document.linework import Piece, called, linework_pieces, open_findings, same_area, summarised
from inlayfit.document.outlines import Outline, in_reading_order
from inlayfit.document.paint_pieces import painted_pieces
from inlayfit.drawing import Figure, Role
from inlayfit.errors import NoOutlineError
from inlayfit.finding import Finding, Severity, heaviest_first
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.registry import read_drawing, read_drawing_bytes
from inlayfit.geometry.faults import size_findings, tiny_finding
from inlayfit.geometry.morphology import simplified
from inlayfit.geometry.path import Path
from inlayfit.geometry.tolerance import EXACT, Tolerance
from inlayfit.measures import point
from inlayfit.progress import Progress, unwatched
from inlayfit.units import Unit
from inlayfit.wording import Worded, values_of

__all__ = ["Imported", "Outline", "import_drawing", "import_text"]

PASTED = FilePath("pasted")
"""The source of a drawing that was pasted as text."""
DEFAULT_GAP_MM = 0.01
"""Ends nearer than this belong together: less than a cutter can show, more than programs round off."""


@dataclass(frozen=True, slots=True)
class Imported:
    """What a file came to.

    Attributes:
        source: the file.
        read: what the reader found.
        outlines: the closed shapes, in reading order.
        findings: everything that was wrong, skipped or changed, heaviest first.
        unit: the unit the drawing was taken to be in.
        points_left_out: points of walls that were left out because they said nothing.
    """

    source: FilePath
    read: ReadResult
    outlines: tuple[Outline, ...]
    findings: tuple[Finding, ...]
    unit: Unit
    points_left_out: int = 0


@dataclass(frozen=True, slots=True)
class _Asked:
    gap_mm: float
    strokes_as_areas: bool
    layers: frozenset[str] | None
    tolerance: Tolerance
    progress: Progress


def import_drawing(
    source: FilePath,
    *,
    unit: Unit | None = None,
    gap_mm: float = DEFAULT_GAP_MM,
    strokes_as_areas: bool = False,
    layers: Sequence[str] | None = None,
    tolerance: Tolerance = EXACT,
    progress: Progress | None = None,
) -> Imported:
    """Read a file and find its outlines.

    Args:
        source: a DXF or SVG file, or a table of points.
        unit: what one drawing unit is; None believes the file.
        gap_mm: loose ends up to this far apart are joined, each reported.
        strokes_as_areas: whether a painted line covers its width; else its middle is the outline.
        layers: only these layers, whatever they look like; None for all that hold outlines.
        tolerance: how near chords keep to curves, and how much may be simplified.
        progress: told how far the work is; can stop it.

    Raises:
        ReadError: nothing of the file can be used; the message says why and what to do.
        Cancelled: it was stopped.
    """
    return _import(
        lambda: read_drawing(FilePath(source), ReadOptions(unit)),
        _asked(gap_mm, strokes_as_areas, layers, tolerance, progress),
    )


def import_text(
    text: str,
    *,
    unit: Unit | None = None,
    gap_mm: float = DEFAULT_GAP_MM,
    strokes_as_areas: bool = False,
    layers: Sequence[str] | None = None,
    tolerance: Tolerance = EXACT,
    progress: Progress | None = None,
) -> Imported:
    """The same for pasted text: SVG, DXF or a table of points. Arguments and errors as `import_drawing`."""
    data = text.encode("utf-8", "replace")
    return _import(
        lambda: read_drawing_bytes(data, PASTED, ReadOptions(unit)),
        _asked(gap_mm, strokes_as_areas, layers, tolerance, progress),
    )


def _asked(
    gap_mm: float,
    strokes_as_areas: bool,
    layers: Sequence[str] | None,
    tolerance: Tolerance,
    progress: Progress | None,
) -> _Asked:
    chosen = None if layers is None else frozenset(layers)
    return _Asked(gap_mm, strokes_as_areas, chosen, tolerance, progress or unwatched())


def _import(read_it: Callable[[], ReadResult], asked: _Asked) -> Imported:
    asked.progress.report(0.0, Worded("Reading the file"))
    read = read_it()
    asked.progress.report(0.6, Worded("Finding the outlines"))
    found = _Found(*_chosen_figures(read, asked))
    found.findings += _layers_missing(read, asked)
    _find(found, asked)
    if not found.pieces and found.marks:
        found = _Found(found.marks, [])
        found.findings.append(_marks_used())
        _find(found, asked)
    if not found.pieces:
        raise NoOutlineError(_why_none(read, found), path=read.source)
    asked.progress.report(0.9, Worded("Checking the outlines"))
    outlines, findings, left_out = _outlines(found.pieces, asked.tolerance)
    findings = [*read.findings, *found.findings, *summarised(open_findings(found.open)), *findings]
    return Imported(read.source, read, outlines, heaviest_first(findings), read.assumed_unit, left_out)


class _Found:
    """What is being found in one drawing."""

    def __init__(self, figures: list[Figure], marks: list[Figure]) -> None:
        self.figures = figures
        self.marks = marks
        self.pieces: list[Piece] = []
        self.findings: list[Finding] = []
        self.open: list[Path] = []


def _chosen_figures(read: ReadResult, asked: _Asked) -> tuple[list[Figure], list[Figure]]:
    """Figures that count, and marks that would if there were nothing else."""
    figures = list(read.drawing.figures)
    if asked.layers is not None:
        return [figure for figure in figures if figure.layer in asked.layers], []
    return [f for f in figures if f.role is not Role.MARK], [f for f in figures if f.role is Role.MARK]


def _layers_missing(read: ReadResult, asked: _Asked) -> list[Finding]:
    missing = sorted((asked.layers or frozenset()) - set(read.drawing.layers))
    remedy = Worded("Choose among {layers}.", layers=", ".join(read.drawing.layers[:5]))
    return [
        Finding(
            "layer-missing",
            Severity.WARN,
            Worded("There is no layer “{name}” in it.", name=name[:60]),
            remedy,
        )
        for name in missing
    ]


def _find(found: _Found, asked: _Asked) -> None:
    layers: dict[str, list[Figure]] = {}
    for figure in found.figures:
        layers.setdefault(figure.layer, []).append(figure)
    for layer, figures in layers.items():
        asked.progress.raise_if_cancelled()
        painted = [f for f in figures if f.fill is not None or (asked.strokes_as_areas and f.stroke_width_mm)]
        if painted:
            pieces, findings = painted_pieces(
                painted, layer, tolerance=asked.tolerance, strokes_as_areas=asked.strokes_as_areas
            )
            found.pieces += pieces
            found.findings += findings
        lines = [f for f in figures if f.fill is None and f not in painted] if painted else figures
        if lines:
            pieces, findings, rest = linework_pieces(
                lines, layer, gap_mm=asked.gap_mm, tolerance=asked.tolerance
            )
            found.pieces += pieces
            found.findings += findings
            found.open += rest


def _marks_used() -> Finding:
    message = Worded(
        "Every outline lies on a layer that is hidden or looks like construction; these were used."
    )
    return Finding(
        "marks-used", Severity.WARN, message, Worded("Check that these are the lines you want to cut.")
    )


def _why_none(read: ReadResult, found: _Found) -> str:
    name = read.source.name
    if found.open:
        opened = open_findings(found.open)[0]
        count = len(found.open)
        return Worded(
            "“{name}” holds no closed outline, only {lines}: {first} {remedy}",
            name=name,
            lines=Worded("1 open line") if count == 1 else Worded("{count} open lines", count=count),
            first=Worded(
                "a line is open at {place}: the nearest loose end is {away} away.",
                **values_of(opened.message),
            ),
            remedy=opened.remedy,
        )
    if not found.figures:
        layers = ", ".join(read.drawing.layers[:5])
        return Worded(
            "“{name}” holds nothing on the chosen layers; choose among {layers}.", name=name, layers=layers
        )
    findings = heaviest_first([*found.findings, *read.findings])
    if findings:
        return Worded(
            "“{name}” holds no closed outline: {message} {remedy}",
            name=name,
            message=findings[0].message,
            remedy=findings[0].remedy,
        )
    return Worded(
        "“{name}” holds no closed outline; draw the edge of the pocket as a closed line.", name=name
    )


def _outlines(
    pieces: Sequence[Piece], tolerance: Tolerance
) -> tuple[tuple[Outline, ...], list[Finding], int]:
    kept, findings = _without_doubles(pieces, tolerance)
    outlines = []
    left_out = 0
    for piece in kept:
        region = simplified(piece.region, tolerance)
        left_out += int(shapely.get_num_coordinates(piece.region.shape))
        left_out -= int(shapely.get_num_coordinates(region.shape))
        name = piece.name or (piece.layer if piece.layer not in ("", "0") else "")
        outlines.append(Outline("", name, piece.layer, region, piece.contours))
        tiny = tiny_finding(region.polygons[0], called(piece.name, piece.layer))
        findings += [tiny] if tiny is not None else []
    findings = summarised(findings)
    boxes = np.array([outline.region.bounds for outline in outlines])
    low, high = boxes[:, :2].min(axis=0), boxes[:, 2:].max(axis=0)
    findings += size_findings((*low.tolist(), *high.tolist()), count=len(outlines))
    return in_reading_order(outlines), findings, left_out


def _without_doubles(pieces: Sequence[Piece], tolerance: Tolerance) -> tuple[list[Piece], list[Finding]]:
    """Pieces, those exactly on top of an earlier one left out with a finding."""
    polygons = np.array([piece.region.polygons[0] for piece in pieces], dtype=object)
    boxes = shapely.bounds(polygons)
    middles = np.asarray(shapely.points((boxes[:, :2] + boxes[:, 2:]) / 2), dtype=object)
    one, other = shapely.STRtree(middles).query(
        middles, predicate="dwithin", distance=4 * tolerance.settle_mm
    )
    doubled: dict[int, int] = {}
    for i, j in zip(one.tolist(), other.tolist(), strict=True):
        if j < i and j not in doubled and same_area(polygons[i], polygons[j], tolerance.settle_mm):
            doubled[i] = j
    findings = []
    for i in doubled:
        x, y = boxes[i, :2].tolist()
        message = Worded(
            "{name} lies exactly on another at {place}; the two count once.",
            name=called(pieces[i].name, pieces[i].layer),
            place=point((x, y)),
        )
        findings.append(
            Finding("outline-doubled", Severity.NOTE, message, Worded("Nothing to do."), (x, y), fixed=True)
        )
    return [piece for i, piece in enumerate(pieces) if i not in doubled], findings
