"""What reading a drawing came to, in words and numbers: its layers, what was changed, by which tolerances.

For the command line and the window alike. Every change is counted; each single one is a finding of its own
with its place.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np

from inlayfit.document.imports import Imported
from inlayfit.drawing import Drawing, Role
from inlayfit.finding import Finding
from inlayfit.formats.registry import read_drawing
from inlayfit.geometry.tolerance import Tolerance
from inlayfit.units import Unit
from inlayfit.wording import values_of


@dataclass(frozen=True, slots=True)
class LayerNote:
    """One layer of a drawing.

    Attributes:
        name: as the file writes it.
        lines: how many closed or open lines lie on it.
        marks: how many of them are hidden, construction or dimension lines, so no outlines unless asked for.
    """

    name: str
    lines: int
    marks: int

    @property
    def is_for_the_reader(self) -> bool:
        """Whether nothing on it counts as an outline unless the layer is asked for."""
        return self.marks == self.lines


def layer_notes(drawing: Drawing) -> tuple[LayerNote, ...]:
    """The layers that hold anything, in the order of the drawing."""
    lines: Counter[str] = Counter()
    marks: Counter[str] = Counter()
    for figure in drawing.figures:
        lines[figure.layer] += len(figure.contours)
        marks[figure.layer] += len(figure.contours) if figure.role is Role.MARK else 0
    return tuple(LayerNote(name, count, marks[name]) for name, count in lines.items())


@dataclass(frozen=True, slots=True)
class DrawingLook:
    """What a person needs to see to say how a drawing shall be read.

    Attributes:
        path: the file.
        file_unit: the unit it states; None if it states none.
        assumed_unit: the unit it is read in if nobody says otherwise.
        wide, high: its size in its own units.
        layers: its layers.
    """

    path: Path
    file_unit: Unit | None
    assumed_unit: Unit
    wide: float
    high: float
    layers: tuple[LayerNote, ...]

    def size_mm(self, unit: Unit) -> tuple[float, float]:
        """The size it has if one drawing unit is one of these."""
        return self.wide * float(unit.mm), self.high * float(unit.mm)


def look_at(path: Path) -> DrawingLook:
    """Read a drawing only to see how it can be read; ReadError if nothing can be shown."""
    read = read_drawing(path)
    boxes = np.array([line.bounds() for figure in read.drawing.figures for line in figure.contours])
    low, high = boxes[:, :2].min(axis=0), boxes[:, 2:].max(axis=0)
    wide_mm, high_mm = (high - low).tolist()
    mm = float(read.assumed_unit.mm)
    notes = layer_notes(read.drawing)
    return DrawingLook(path, read.file_unit, read.assumed_unit, wide_mm / mm, high_mm / mm, notes)


@dataclass(frozen=True, slots=True)
class Changes:
    """What was changed while reading, counted.

    Attributes:
        gaps_closed: loose ends that were joined.
        widest_gap_mm: the widest of these gaps; 0 without one.
        doubled: lines and outlines that lay on others and count once.
        points_left_out: points of walls that said nothing within the tolerance.
    """

    gaps_closed: int = 0
    widest_gap_mm: float = 0.0
    doubled: int = 0
    points_left_out: int = 0


def changes(imported: Imported) -> Changes:
    """Count what was changed, from the findings that say so."""
    gaps = [f for f in imported.findings if f.code == "gap-closed"]
    widths = [
        float(str(values_of(f.message)["gap"]).removesuffix(" mm")) for f in gaps if values_of(f.message)
    ]
    doubled = [f for f in imported.findings if f.code in ("line-doubled", "outline-doubled")]
    return Changes(
        sum(_count_of(f) for f in gaps),
        max(widths, default=0.0),
        sum(_count_of(f) for f in doubled),
        imported.points_left_out,
    )


def _count_of(finding: Finding) -> int:
    """How many things one finding speaks of."""
    values = values_of(finding.message)
    count = values.get("count", values.get("more", 1))
    return count if isinstance(count, int) else 1


def changes_words(counted: Changes) -> str:
    """One line: "3 gaps closed, widest 0.04 mm; 2 doubled lines counted once"; "nothing" if so."""
    parts = []
    if counted.gaps_closed:
        parts.append(f"{_many(counted.gaps_closed, 'gap')} closed, widest {counted.widest_gap_mm:.4g} mm")
    if counted.doubled:
        parts.append(f"{_many(counted.doubled, 'doubled line')} counted once")
    if counted.points_left_out:
        parts.append(f"{_many(counted.points_left_out, 'point')} that say nothing left out")
    return "; ".join(parts) or "nothing"


def layers_words(notes: tuple[LayerNote, ...]) -> str:
    """One line: "CUT (4 lines), DIM (2 lines, not outlines)"."""
    return ", ".join(f"{note.name} ({_many(note.lines, 'line')}{_marked(note)})" for note in notes)


def _marked(note: LayerNote) -> str:
    if not note.marks:
        return ""
    return ", not outlines" if note.is_for_the_reader else f", {note.marks} of them not outlines"


def reading_lines(imported: Imported, *, gap_mm: float, tolerance: Tolerance) -> list[str]:
    """Layers, changes and tolerances, each tolerance with its reason, for the command line."""
    return [
        f"  layers      {layers_words(layer_notes(imported.read.drawing))}",
        f"  changed     {changes_words(changes(imported))}",
        f"  gaps        closed up to {gap_mm:g} mm (--gap): less than a cutter shows by default, more than "
        "programs round off",
        f"  curves      chords within {tolerance.arc_mm * 1000:g} µm: what is cut follows the curve itself",
        f"  simplified  walls moved by {tolerance.simplify_mm * 1000:g} µm at most (--simplify): below what "
        "any small machine repeats by default",
    ]


def reading_json(imported: Imported, *, gap_mm: float, tolerance: Tolerance) -> dict[str, Any]:
    """The same for `--json`: keys beside those of the outlines."""
    counted = changes(imported)
    return {
        "layers": [
            {"name": n.name, "lines": n.lines, "marks": n.marks} for n in layer_notes(imported.read.drawing)
        ],
        "changes": {
            "gaps_closed": counted.gaps_closed,
            "widest_gap_mm": counted.widest_gap_mm,
            "doubled": counted.doubled,
            "points_left_out": counted.points_left_out,
        },
        "tolerances": {
            "gap_mm": gap_mm,
            "arc_mm": tolerance.arc_mm,
            "simplify_mm": tolerance.simplify_mm,
        },
    }


def _many(count: int, noun: str) -> str:
    return f"{count:,} {noun}{'' if count == 1 else 's'}"
