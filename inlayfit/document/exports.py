"""The outlines of solved fittings as files: DXF and SVG for the machine, a picture and numbers for you.

Into one folder go `pocket.dxf`, `plug.dxf`, `pocket.svg`, `plug.svg`, `gap.svg` (a picture of the gap map)
and `fit.json`. Several fittings share the files; each figure carries its outline's id. On the person's
wish each fitting gets files of its own (`pocket-<id>.dxf`).

On the way out chords become true arcs (`geometry.arcs`), every outline is read back by our own reader and
compared, and all files appear together or none does (`staging`). The drawing that was opened is never
overwritten. A half with nothing left of it gets no file, and a file of that name from an earlier export is
taken away, so that nobody cuts yesterday's plug.

The line is the finished edge. A beam or blade that follows a line takes half its kerf on each side of it,
so the line of a half that is to cut can be shifted for it: outwards round a plug, inwards in a pocket. A
round cutter is offset for by the machine's own program.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from enum import StrEnum
from pathlib import Path
from typing import Any

import shapely

from inlayfit.bench.milling import Milling
from inlayfit.document.directions import ContourNote, directed
from inlayfit.document.pictures import gap_picture
from inlayfit.document.report import fit_json, json_text
from inlayfit.document.staging import Staging
from inlayfit.drawing import Drawing, Figure, Role
from inlayfit.errors import WriteError
from inlayfit.finding import Finding, Severity
from inlayfit.fit.hand_work import hand_work
from inlayfit.fit.result import FitResult, HalfResult
from inlayfit.fit.spec import Half, HalfSpec
from inlayfit.formats.dxf_read import read_dxf
from inlayfit.formats.dxf_write import DxfVersion, write_dxf
from inlayfit.formats.svg_read import read_svg
from inlayfit.formats.svg_write import Page, page_of, write_svg
from inlayfit.formats.verify import check_written, on_page
from inlayfit.geometry.arcs import RECOVERY_TOLERANCE, Tally, region_paths
from inlayfit.geometry.morphology import dilate
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from inlayfit.progress import Progress, unwatched
from inlayfit.wording import Worded

Results = Sequence[tuple[str, FitResult]]
"""Outline id and answer of each fitting."""

_LONGEST_NAME = 60


class Passes(StrEnum):
    """Which outlines are written."""

    FINISH = "finish"
    ROUGH = "rough"
    BOTH = "both"


class Line(StrEnum):
    """Where the written line lies."""

    EDGE = "edge"
    """On the finished edge."""
    KERF = "kerf"
    """Half a kerf off it, on the side of the waste."""


class Origin(StrEnum):
    """Where the written coordinates start."""

    AS_DRAWN = "as-drawn"
    LOWER_LEFT = "lower-left"
    CENTRE = "centre"


class Split(StrEnum):
    """How fittings are spread over files."""

    ONE_FILE = "one-file"
    PER_PIECE = "per-piece"


@dataclass(frozen=True, slots=True)
class ExportOptions:
    """What is written, and how.

    Attributes:
        halves: which of pocket and plug.
        passes: finishing outlines, roughing outlines or both. A half without a finishing allowance has no
            roughing outline.
        line: on the edge, or shifted for the kerf.
        mirrored: halves that are cut face down and so written as a mirror image, about their own middle.
        origin: where (0, 0) is: as drawn, or the lower left corner or the centre of all that is in the file.
        split: all fittings in one file, or a file for each.
        dxf_version: R2000, or R12, which cannot state a unit.
        tolerance_mm: how far a recovered arc may be from the chords it stands for.
        milling: climb or conventional: the way each contour of a half that is cut with a cutter runs in the
            file; None leaves outer contours counter-clockwise.
    """

    halves: tuple[Half, ...] = (Half.POCKET, Half.PLUG)
    passes: Passes = Passes.BOTH
    line: Line = Line.EDGE
    mirrored: frozenset[Half] = frozenset()
    origin: Origin = Origin.AS_DRAWN
    split: Split = Split.ONE_FILE
    dxf_version: DxfVersion = DxfVersion.R2000
    tolerance_mm: float = RECOVERY_TOLERANCE
    milling: Milling | None = None


@dataclass(frozen=True, slots=True)
class WrittenFile:
    """One file of an export.

    Attributes:
        path: where it is.
        tally: what arc recovery did to the outlines in it; None for a file without outlines.
        deviation_mm: largest distance between what was meant and what our reader found in the file.
    """

    path: Path
    tally: Tally | None = None
    deviation_mm: float = 0.0

    @property
    def sentence(self) -> str:
        """For a person: "plug.dxf: 3,635 points became 4 arcs, off by 0.2 µm at most."."""
        if self.tally is None:
            return f"{self.path.name}."
        return f"{self.path.name}: {tally_words(self.tally)}."

    def to_json(self) -> dict[str, Any]:
        """The numbers, for `fit.json`."""
        tally = self.tally or Tally()
        return {
            "name": self.path.name,
            "points_in": tally.points_in,
            "segments_out": tally.segments_out,
            "arcs_out": tally.arcs_out,
            "deviation_mm": round(tally.worst_mm, 7),
        }


@dataclass(frozen=True, slots=True)
class ExportReport:
    """What an export wrote.

    Attributes:
        files: in the order they were written.
        findings: what to know before cutting from these files.
        answer: what `fit.json` holds, but with the files' whole paths.
    """

    files: tuple[WrittenFile, ...]
    findings: tuple[Finding, ...] = ()
    answer: dict[str, Any] = field(default_factory=dict)

    @property
    def paths(self) -> tuple[Path, ...]:
        """Where the files are."""
        return tuple(file.path for file in self.files)


def tally_words(tally: Tally) -> str:
    """In words: "3,635 points became 4 arcs and 2 lines, off by 0.2 µm at most"."""
    lines = tally.segments_out - tally.arcs_out
    kinds = [_count(tally.arcs_out, "arc"), _count(lines, "line")]
    became = " and ".join(kind for kind in kinds if kind) or "nothing"
    return (
        f"{_count(tally.points_in, 'point')} became {became}, off by {tally.worst_mm * 1000:.1f} µm at most"
    )


def _count(number: int, noun: str) -> str:
    return f"{number:,} {noun}{'s' if number != 1 else ''}" if number else ""


def write_fit(
    results: Results,
    out_dir: Path,
    options: ExportOptions | None = None,
    *,
    source: Path | None = None,
    other_sources: Sequence[Path] = (),
    drawing_findings: Sequence[Finding] = (),
    details: Mapping[str, Mapping[str, Any]] | None = None,
    progress: Progress | None = None,
) -> ExportReport:
    """Write everything about solved fittings into a folder, which is made if it is missing.

    Args:
        results: outline id and answer of each fitting.
        out_dir: the folder.
        options: what to write; None for both halves as drawn.
        source: the drawing that was opened; it is never overwritten.
        other_sources: further drawings that were opened, safe in the same way.
        drawing_findings: those of the drawing, kept in `fit.json` before those of the export.
        details: more keys for a fitting in `fit.json`, by its outline id.
        progress: asked between files whether to stop.

    Raises:
        WriteError: nothing was written, or would have overwritten `source`.
        ReadBackError: a file did not read back as what was meant; nothing was written.
        Cancelled: the work was stopped; nothing was written.
    """
    if not results:
        raise WriteError(Worded("There is no fitting to write; choose at least one outline."), path=out_dir)
    wanted = options or ExportOptions()
    watched = progress or unwatched()
    with Staging(out_dir, protected=source, also_protected=other_sources) as staging:
        files: list[WrittenFile] = []
        findings = [*drawing_findings, *_general_findings(results, wanted)]
        sheets = _sheets(results, wanted)
        for number, sheet in enumerate(sheets):
            watched.report(0.9 * number / len(sheets), sheet.name)
            findings += sheet.findings
            files += _write_sheet(sheet, wanted, staging)
        watched.report(0.9, "gap.svg")
        staging.path("gap.svg").write_text(gap_picture(results), encoding="utf-8", newline="\n")
        files.append(WrittenFile(staging.target("gap.svg")))
        told = _told(results, sheets, details or {})
        answer = _write_answer(results, files, findings, told, staging)
        files.append(WrittenFile(staging.target("fit.json")))
        watched.report(1.0, "done")
        staging.commit()
    return ExportReport(tuple(files), tuple(findings), answer)


def _told(
    results: Results, sheets: Sequence[_Sheet], details: Mapping[str, Mapping[str, Any]]
) -> dict[str, dict[str, Any]]:
    """The details of each fitting, with the direction of each of its contours."""
    told: dict[str, dict[str, Any]] = {name: dict(details.get(name, {})) for name, _ in results}
    for note in (note for sheet in sheets for note in sheet.contours):
        told[note.fitting].setdefault("contours", []).append(note.to_json())
    return told


def _write_answer(
    results: Results,
    files: Sequence[WrittenFile],
    findings: Sequence[Finding],
    details: Mapping[str, Mapping[str, Any]],
    staging: Staging,
) -> dict[str, Any]:
    path = staging.path("fit.json")
    names = [*(file.path.name for file in files), path.name]
    written = [file.to_json() for file in files if file.tally is not None]
    answer = fit_json(results, files=names, written=written, findings=findings, details=details)
    path.write_text(json_text(answer), encoding="utf-8", newline="\n")
    return {**answer, "files": [str(staging.target(name)) for name in names]}


@dataclass(frozen=True, slots=True)
class _Sheet:
    """What goes into one DXF and one SVG of the same name."""

    name: str
    drawing: Drawing
    page: Page
    tally: Tally
    findings: tuple[Finding, ...] = ()
    contours: tuple[ContourNote, ...] = ()


def _write_sheet(sheet: _Sheet, options: ExportOptions, staging: Staging) -> list[WrittenFile]:
    dxf, svg = f"{sheet.name}.dxf", f"{sheet.name}.svg"
    if not sheet.drawing.figures:
        staging.remove(dxf)
        staging.remove(svg)
        return []
    write_dxf(sheet.drawing, staging.path(dxf), version=options.dxf_version, tolerance=options.tolerance_mm)
    states_unit = options.dxf_version is not DxfVersion.R12
    off_dxf = check_written(staging.path(dxf), sheet.drawing, read_dxf, states_unit=states_unit)
    write_svg(sheet.drawing, staging.path(svg), page=sheet.page, tolerance=options.tolerance_mm)
    off_svg = check_written(staging.path(svg), on_page(sheet.drawing, sheet.page), read_svg)
    return [
        WrittenFile(staging.target(dxf), sheet.tally, off_dxf),
        WrittenFile(staging.target(svg), sheet.tally, off_svg),
    ]


def _sheets(results: Results, options: ExportOptions) -> list[_Sheet]:
    """The files to write. Pockets and plugs as drawn share one page, so their SVGs lie upon each other."""
    groups: list[tuple[str, Results]] = [("", results)]
    if options.split is Split.PER_PIECE:
        suffixes = _file_suffixes([name for name, _ in results])
        groups = [(suffix, [result]) for suffix, result in zip(suffixes, results, strict=True)]
    sheets: list[_Sheet] = []
    for suffix, group in groups:
        made = [_half_sheet(half, suffix, group, options) for half in options.halves]
        shared = page_of(sum((sheet.drawing for sheet in made), Drawing()))
        as_drawn = options.origin is Origin.AS_DRAWN
        for sheet in made:
            page = shared if as_drawn else page_of(sheet.drawing)
            sheets.append(replace(sheet, page=page))
    return sheets


def _half_sheet(half: Half, suffix: str, results: Results, options: ExportOptions) -> _Sheet:
    figures: list[Figure] = []
    findings: list[Finding] = []
    tally = Tally()
    for name, result in results:
        for layer, role, region in _outlines(half, result, options):
            is_wall = role is not Role.MARK and not layer.endswith("_REST")
            line = _shifted(region, half, _spec_of(half, result), options) if is_wall else region
            if line.is_empty:
                findings.append(_nothing_left(half, name, layer))
                continue
            recovery = region_paths(line, tolerance=options.tolerance_mm)
            tally += recovery.tally
            figures.append(Figure(recovery.paths, layer=layer, name=name, role=role))
    drawing = _placed(Drawing(tuple(figures)), mirrored=half in options.mirrored, origin=options.origin)
    cut = [name for name, result in results if _is_milled(_spec_of(half, result))]
    drawing, contours = directed(drawing, half, options.milling, cut=cut)
    return _Sheet(half.value + suffix, drawing, page_of(drawing), tally, tuple(findings), contours)


def _is_milled(spec: HalfSpec) -> bool:
    return spec.may_move and spec.cutter_mm > 0


def _outlines(half: Half, result: FitResult, options: ExportOptions) -> list[tuple[str, Role, Region]]:
    """Layer, role and region of each line that is wanted of a half.

    Beside the finished wall stand, where there are such passes, what a smaller cutter still has to clear
    (`…_REST`) and the far edge of a chamfer (`…_EDGE_BREAK`); what is left to the hand is marked (`MARKS`).
    """
    answer: HalfResult = result.pocket if half is Half.POCKET else result.plug
    layer = half.value.upper()
    wanted = []
    if options.passes is not Passes.ROUGH:
        wanted.append((layer, Role.POCKET if half is Half.POCKET else Role.PLUG, answer.outline))
        if not answer.rest.is_empty:
            wanted.append((f"{layer}_REST", Role.ROUGH, answer.rest))
        if answer.edge_break is not None:
            wanted.append((f"{layer}_EDGE_BREAK", Role.MARK, answer.edge_break))
        by_hand = hand_work(answer, _spec_of(half, result))
        if by_hand:
            wanted.append(("MARKS", Role.MARK, Region.of(shapely.union_all([r.shape for r in by_hand]))))
    if options.passes is not Passes.FINISH and answer.rough is not None:
        wanted.append((f"{layer}_ROUGH", Role.ROUGH, answer.rough))
    return wanted


def _spec_of(half: Half, result: FitResult) -> HalfSpec:
    return result.spec.pocket if half is Half.POCKET else result.spec.plug


def _shifted(region: Region, half: Half, spec: HalfSpec, options: ExportOptions) -> Region:
    if options.line is Line.EDGE or not spec.may_move:
        return region
    outwards = spec.kerf_mm / 2 if half is Half.PLUG else -spec.kerf_mm / 2
    return dilate(region, outwards, EXACT)


def _placed(drawing: Drawing, *, mirrored: bool, origin: Origin) -> Drawing:
    if not drawing.figures:
        return drawing
    if mirrored:
        x0, _, x1, _ = page_of(drawing)
        drawing = _run_forwards(drawing.moved(Transform.shift(x0 + x1, 0.0).after(Transform.mirror_x())))
    x0, y0, x1, y1 = page_of(drawing)
    if origin is Origin.LOWER_LEFT:
        return drawing.moved(Transform.shift(-x0, -y0))
    if origin is Origin.CENTRE:
        return drawing.moved(Transform.shift(-(x0 + x1) / 2, -(y0 + y1) / 2))
    return drawing


def _run_forwards(drawing: Drawing) -> Drawing:
    """A mirror image with its outer rings counter-clockwise again."""
    return Drawing(
        tuple(
            Figure(tuple(path.reversed() for path in f.contours), layer=f.layer, name=f.name, role=f.role)
            for f in drawing
        )
    )


def _file_suffixes(names: Sequence[str]) -> list[str]:
    """A part of a file name for each outline id, all different even where capitals do not count."""
    suffixes: list[str] = []
    taken: set[str] = set()
    for name in names:
        plain = re.sub(r"[^A-Za-z0-9_.-]+", "_", name)[:_LONGEST_NAME].strip(".") or "outline"
        suffix, number = plain, 2
        while suffix.lower() in taken:
            suffix, number = f"{plain}-{number}", number + 1
        taken.add(suffix.lower())
        suffixes.append(f"-{suffix}")
    return suffixes


def file_names(options: ExportOptions, outline_ids: Sequence[str]) -> list[str]:
    """The names of the outline files that an export of these outlines writes."""
    suffixes = _file_suffixes(outline_ids) if options.split is Split.PER_PIECE else [""]
    return [f"{half.value}{s}.{kind}" for s in suffixes for half in options.halves for kind in ("dxf", "svg")]


def _general_findings(results: Results, options: ExportOptions) -> list[Finding]:
    findings = []
    if options.dxf_version is DxfVersion.R12:
        findings.append(
            Finding(
                "export-no-unit",
                Severity.WARN,
                Worded("DXF R12 cannot say what its unit is; these files are in millimetres."),
                Worded("Choose millimetres where the file is opened, or export as R2000."),
            )
        )
    for half in options.halves:
        no_kerf = [name for name, result in results if _lacks_kerf(_spec_of(half, result))]
        if options.line is Line.KERF and no_kerf:
            findings.append(
                Finding(
                    "export-no-kerf",
                    Severity.WARN,
                    Worded(
                        "The {half} is cut by a beam or blade of unknown kerf ({outlines}), "
                        "so its line lies on the edge.",
                        half=half,
                        outlines=", ".join(no_kerf),
                    ),
                    Worded("Give the measured width of the cut."),
                )
            )
        if half in options.mirrored:
            findings.append(
                Finding(
                    "export-mirrored",
                    Severity.NOTE,
                    Worded("The {half} is written as a mirror image, for cutting face down.", half=half),
                    Worded("Turn the stock face down, or export it without mirroring."),
                )
            )
    return findings


def _lacks_kerf(spec: HalfSpec) -> bool:
    """Whether a half is to be cut with neither a cutter, which the machine offsets for, nor a known kerf."""
    return spec.may_move and spec.kerf_mm == 0 and spec.cutter_mm == 0


def _nothing_left(half: Half, name: str, layer: str) -> Finding:
    return Finding(
        "export-nothing-left",
        Severity.BLOCK,
        Worded(
            "Nothing is left of the {half} of {name} for layer {layer}, so it is in no file.",
            half=half,
            name=name,
            layer=layer,
        ),
        Worded("Use a smaller cutter, allowance, kerf or clearance."),
    )
