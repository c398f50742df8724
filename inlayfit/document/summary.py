"""What the command line says for a person: the outlines of a drawing, the answer of a fit.

Text only, in the units and words of the window: clearance per side with the overall value behind it, the
tightest place before the mean, findings heaviest first.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Any

from inlayfit.document.imports import Imported, Outline
from inlayfit.finding import Finding, heaviest_first
from inlayfit.fit.result import FitResult, GapMap, HalfResult
from inlayfit.fit.spec import HalfSpec, Relief
from inlayfit.measures import at
from inlayfit.units import Unit, format_length, format_per_side

_DIGITS = 6
_RELIEF_WORDS = {
    Relief.ROUNDED: "rounded",
    Relief.DOG_BONE: "dog-bone",
    Relief.T_BONE: "T-bone",
    Relief.BY_HAND: "hand",
}


def inspect_json(imported: Imported) -> dict[str, Any]:
    """What `inspect --json` prints: lengths in mm; `unit` is the drawing's own."""
    return {
        "unit": imported.unit.symbol,
        "outlines": [_outline_json(outline) for outline in imported.outlines],
        "findings": [finding.to_json() for finding in imported.findings],
    }


def _outline_json(outline: Outline) -> dict[str, Any]:
    region = outline.region
    return {
        "id": outline.id,
        "area_mm2": round(region.area, _DIGITS),
        "perimeter_mm": round(region.perimeter, _DIGITS),
        "holes": region.hole_count,
        "bounds_mm": [round(value, _DIGITS) for value in region.bounds],
        "layer": outline.layer,
        "name": outline.name,
    }


def inspect_text(imported: Imported) -> str:
    """What `inspect` prints for a person: a table of outlines, then the findings."""
    rows = [("outline", "layer", "size", "area", "wall", "holes")]
    for outline in imported.outlines:
        region = outline.region
        x0, y0, x1, y1 = region.bounds
        size = f"{x1 - x0:.3f} × {y1 - y0:.3f} mm"
        numbers = (size, f"{region.area:.2f} mm²", f"{region.perimeter:.2f} mm", str(region.hole_count))
        rows.append((outline.id, outline.layer, *numbers))
    head = f"{imported.source.name}: {counted(len(rows) - 1, 'outline')}, drawn in {imported.unit.symbol}"
    return "\n".join([head, *_table(rows), *finding_lines(imported.findings)])


def fit_text(name: str, result: FitResult, *, more: Sequence[str] = ()) -> str:
    """What `fit` prints about one fitting; `more` are lines between the numbers and the findings."""
    spec = result.spec
    return "\n".join(
        [
            f"{name}: asked for {format_per_side(spec.clearance_mm, Unit.MM, with_unit=True)}",
            f"  gap     {_gap(result.gap)}",
            f"  pocket  {_half(spec.pocket, result.pocket)}",
            f"  plug    {_half(spec.plug, result.plug)}",
            *more,
            *finding_lines(result.findings),
        ]
    )


def finding_lines(findings: Iterable[Finding]) -> list[str]:
    """One line a finding, heaviest first."""
    return [
        f"  {each.severity.value}{' (mended)' if each.fixed else ''}: {each.message} {each.remedy}"
        for each in heaviest_first(findings)
    ]


def counted(count: int, noun: str) -> str:
    """A number and its noun: "1 hole", "2 holes"."""
    return f"{count} {noun}" if count == 1 else f"{count} {noun}s"


def _gap(gap: GapMap) -> str:
    if gap.is_empty:
        return "none to measure"
    place = f" at {at(gap.tightest[0].place_mm)}" if gap.tightest else ""
    mean, widest = (format_length(value, Unit.MM) for value in (gap.mean_mm, gap.max_mm))
    overlap = f"; overlap {gap.overlap_mm2:.2f} mm²" if gap.overlap_mm2 > 0 else ""
    tightest = format_per_side(gap.min_mm, Unit.MM, with_unit=True)
    return f"tightest {tightest}{place}; mean {mean}, widest {widest}{overlap}"


def _half(spec: HalfSpec, half: HalfResult) -> str:
    tools = [("cutter", spec.cutter_mm), ("kerf", spec.kerf_mm)]
    tool = ", ".join(f"{name} {width:.3f} mm" for name, width in tools if width) or "no cutter"
    kinds = Counter(cut.kind for cut in half.reliefs)
    reliefs = [f", {counted(count, f'{_RELIEF_WORDS[kind]} relief')}" for kind, count in kinds.items()]
    rough = f", roughing leaves {spec.finishing_allowance_mm:.3f} mm" if half.rough is not None else ""
    state = spec.state.value.replace("-", " ")
    return f"{state}, {tool}, {half.outline.area:.2f} mm²{''.join(reliefs)}{rough}"


def _table(rows: Sequence[Sequence[str]]) -> list[str]:
    """Rows in columns: the first two to the left, numbers to the right."""
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    return [
        "  "
        + "  ".join(
            cell.ljust(width) if column < 2 else cell.rjust(width)
            for column, (cell, width) in enumerate(zip(row, widths, strict=True))
        )
        for row in rows
    ]
