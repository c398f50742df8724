"""Read a DXF file into a drawing: true arcs and curves, in mm, y up, as seen from above.

The way of a file
    dxf_open     bytes to a document, safely, mended where it must be
    dxf_units    what a drawing unit is
    dxf_layers   what is hidden, and what is for the drawing's reader only
    dxf_walk     model space, blocks in blocks, each entity in its place
    dxf_shapes, dxf_spline, dxf_hatch   one entity as a path
    dxf_notes    what was skipped or changed

Linework has no inside yet, so its figures have no fill. What lies on hidden layers, and what is drawn for
construction, dimensions and centres, is kept with the role of a mark.
"""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path as FilePath
from typing import TYPE_CHECKING

import numpy as np

from inlayfit.drawing import Drawing, Figure, Role
from inlayfit.errors import HostileFileError, NoOutlineError
from inlayfit.finding import Finding, Severity
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.dxf_notes import Notes
from inlayfit.formats.dxf_open import open_document, read_file_bytes, undisturbed
from inlayfit.formats.dxf_units import UnitReading, read_unit_code
from inlayfit.formats.dxf_walk import Walker
from inlayfit.units import Unit
from inlayfit.wording import Worded

if TYPE_CHECKING:
    # A part of the library must not be the first of it that is loaded: two threads that load the whole and
    # a part at once wait for each other, and one of them gets half a module. `dxf_open` loads the whole.
    from ezdxf.document import Drawing as DxfDocument

MOST_VERTICES = 500_000
"""So many points chain, nest and check within seconds and a few hundred megabytes."""
_DEFAULT = ReadOptions()


def read_dxf(path: FilePath, options: ReadOptions = _DEFAULT) -> ReadResult:
    """Read a DXF file, text or binary, of any release since R12.

    Raises:
        NotADrawingError: it is no readable DXF file.
        HostileFileError: it was refused for safety.
        NoOutlineError: it draws nothing that can be shown.
    """
    return read_dxf_bytes(read_file_bytes(path), path, options)


def read_dxf_bytes(data: bytes, path: FilePath, options: ReadOptions = _DEFAULT) -> ReadResult:
    """Read the bytes of a DXF file; `path` names it. Raises as `read_dxf`."""
    with undisturbed():
        return _read(data, path, options)


def _read(data: bytes, path: FilePath, options: ReadOptions) -> ReadResult:
    document, findings = open_document(data, path)
    stated = read_unit_code(_unit_code(document, data))
    scale = float(stated.mm if options.unit is None else options.unit.mm)
    notes = Notes()
    walker = Walker(document, notes, path)
    with np.errstate(all="ignore"):  # a number too large is found where it lands, as one that is not finite
        figures = walker.figures(scale)
    findings += notes.findings()
    _check_size(figures, path)
    if not figures:
        raise NoOutlineError(_nothing_left(path, findings), path=path)
    findings += _unit_findings(stated, options.unit, figures, scale)
    assumed = options.unit or stated.stated or Unit.MM
    drawing = Drawing(tuple(figures))
    return ReadResult(drawing, path, stated.stated, assumed, tuple(findings), walker.visits)


def _check_size(figures: Iterable[Figure], path: FilePath) -> None:
    count = sum(len(contour.vertices) for figure in figures for contour in figure.contours)
    if count > MOST_VERTICES:
        raise HostileFileError(
            Worded(
                "“{name}” holds {count} points, more than the {most} that are read; save the "
                "outline with fewer points.",
                name=path.name,
                count=count,
                most=MOST_VERTICES,
            ),
            path=path,
        )


def _unit_code(document: DxfDocument, data: bytes) -> int:
    if b"$INSUNITS" not in data:  # the library assumes metres where a file says nothing
        return 0
    try:
        return int(document.header.get("$INSUNITS", 0))
    except (ValueError, TypeError):
        return 0


def _nothing_left(path: FilePath, findings: list[Finding]) -> str:
    if not findings:
        return Worded(
            "“{name}” is empty: it draws nothing; save the drawing again with its shapes.", name=path.name
        )
    worst = min(findings, key=lambda f: f.severity.rank)
    return Worded(
        "“{name}” holds no outline: {message} {remedy}",
        name=path.name,
        message=worst.message,
        remedy=worst.remedy,
    )


def _unit_findings(
    stated: UnitReading, chosen: Unit | None, figures: Iterable[Figure], scale: float
) -> list[Finding]:
    if chosen is not None:
        return []
    found = [stated.finding] if stated.finding is not None else []
    if stated.stated is None:
        message = Worded("The drawing states no unit: {sizes}.", sizes=_sizes_to_choose_from(figures, scale))
        remedy = Worded("Choose the unit that gives the size it should have.")
        found.append(Finding("unit-missing", Severity.WARN, message, remedy))
    return found


def _sizes_to_choose_from(figures: Iterable[Figure], scale: float) -> Worded:
    everything = list(figures)
    shown = [f for f in everything if f.role is Role.OUTLINE] or everything
    boxes = np.array([path.bounds() for figure in shown for path in figure.contours])
    wide = float(boxes[:, 2].max() - boxes[:, 0].min()) / scale
    high = float(boxes[:, 3].max() - boxes[:, 1].min()) / scale
    return Worded(
        "{mm} (as it is shown now) if it was drawn in millimetres, {inches} = {inches_in_mm} if in inches",
        mm=f"{wide:,.4g} × {high:,.4g} mm",
        inches=f"{wide:,.4g} × {high:,.4g} in",
        inches_in_mm=f"{wide * 25.4:,.4g} × {high * 25.4:,.4g} mm",
    )
