"""A drawing read as a document asks: by its settings, and by the unit remembered for its folder."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np

from inlayfit.document.folder_units import unit_for
from inlayfit.document.imports import Imported, import_drawing
from inlayfit.document.state import SettingsUsed
from inlayfit.drawing import Role
from inlayfit.finding import Finding, Severity
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Points
from inlayfit.progress import Progress
from inlayfit.units import Unit
from inlayfit.wording import Worded

_MARK_TOLERANCE_MM = 0.01
_MOST_MARKS = 20_000


def read_as(
    path: Path, how: SettingsUsed, *, progress: Progress | None = None
) -> tuple[Imported, SettingsUsed]:
    """Read a drawing, and say how it was read.

    If it states no unit and nobody chose one, the unit chosen before for its folder holds, with a note.

    Raises:
        ReadError, Cancelled: as `import_drawing`.
    """

    def read(unit: Unit | None) -> Imported:
        return import_drawing(
            path,
            unit=unit,
            gap_mm=how.gap_mm,
            strokes_as_areas=how.strokes_as_areas,
            layers=how.layers,
            progress=progress,
        )

    imported = read(how.unit)
    remembered = unit_for(path) if how.unit is None and imported.read.file_unit is None else None
    if remembered is None:
        return imported, how
    again = read(remembered)
    note = Finding(
        "unit-remembered",
        Severity.NOTE,
        Worded(
            "The drawing states no unit; {symbol} was chosen for its folder before.", symbol=remembered.symbol
        ),
        Worded("Choose the unit again if its size is wrong."),
    )
    return replace(again, findings=(*again.findings, note)), replace(how, unit=remembered)


def marks_of(imported: Imported, how: SettingsUsed) -> tuple[Points, ...]:
    """The lines of a drawing that are no outlines: hidden, construction and dimension lines."""
    figures = [
        f for f in imported.read.drawing.figures if f.role is Role.MARK and f.layer not in (how.layers or ())
    ]
    lines = [line for figure in figures for line in figure.contours][:_MOST_MARKS]
    drawn = [(flatten(line, _MARK_TOLERANCE_MM), line.closed) for line in lines]
    return tuple(np.vstack([points, points[:1]]) if closed else points for points, closed in drawn)
