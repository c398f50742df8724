"""A plain table of points as a drawing: the measured outline of a pocket that has no drawing.

    # unit: mm              or a header line such as   x mm, y mm
    0, 0
    40.5, 0
    40.5, 12

A line holds one point: two numbers apart by a comma, a semicolon, a tab or spaces; a third number is left
out. With semicolons or tabs a comma is the decimal mark. An empty line starts another contour. Contours
close themselves. Lines that start with # are remarks; one that says `unit:` states the unit.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, field
from pathlib import Path as FilePath

import numpy as np

from inlayfit.drawing import Drawing, Figure
from inlayfit.errors import HostileFileError, NoOutlineError, NotADrawingError
from inlayfit.finding import Finding, Severity
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.geometry.path import Path
from inlayfit.units import Unit
from inlayfit.wording import Worded

MOST_LINES = 500_000
_DEFAULT = ReadOptions()
_UNITS = {
    "mm": Unit.MM, "millimetre": Unit.MM, "millimetres": Unit.MM, "millimeter": Unit.MM,
    "millimeters": Unit.MM, "cm": Unit.CM, "m": Unit.M, "in": Unit.INCH, "inch": Unit.INCH,
    "inches": Unit.INCH, '"': Unit.INCH, "thou": Unit.THOU, "mil": Unit.THOU, "ft": Unit.FOOT,
    "µm": Unit.MICROMETRE, "um": Unit.MICROMETRE,
}  # fmt: skip
_NUMBER = r"[+\-−]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?"
_POINT = re.compile(rf"\s*{_NUMBER}\s*[,;\t ]\s*{_NUMBER}")
_HEADER = re.compile(r"\s*[\"']?x(?![a-z])", re.IGNORECASE)
_STATED = re.compile(r"unit\w*\s*[:=]\s*([a-zµ\"]+)", re.IGNORECASE)
_WORD = re.compile(r"[a-zµ\"]+", re.IGNORECASE)


def looks_like_points(data: bytes) -> bool:
    """Whether the first lines that are no remarks hold a header or a point."""
    text = data[:65_536].decode("utf-8", "replace").lstrip("\ufeff")
    if "\0" in text:
        return False
    content = [line for line in text.splitlines() if line.strip() and not line.lstrip().startswith("#")][:2]
    return (
        bool(content)
        and any(_POINT.match(line) for line in content)
        and (bool(_POINT.match(content[0])) or bool(_HEADER.match(content[0])))
    )


@dataclass(slots=True)
class _Table:
    contours: list[list[tuple[float, float]]] = field(default_factory=lambda: [[]])
    unit: Unit | None = None
    bad_lines: list[int] = field(default_factory=list)


def read_points_text(data: bytes | str, path: FilePath, options: ReadOptions = _DEFAULT) -> ReadResult:
    """Read a table of points from its text.

    Raises:
        NotADrawingError: it holds no points.
        HostileFileError: it holds more lines than are read.
        NoOutlineError: no contour has three points.
    """
    text = data if isinstance(data, str) else data.decode("utf-8", "replace")
    lines = text.lstrip("\ufeff").splitlines()
    if len(lines) > MOST_LINES:
        raise HostileFileError(
            Worded(
                "“{name}” holds {lines} lines, more than the {most} points that are read; "
                "measure fewer points.",
                name=path.name,
                lines=len(lines),
                most=MOST_LINES,
            ),
            path=path,
        )
    table = _Table()
    for number, line in enumerate(lines, 1):
        _take(table, number, line)
    points = sum(len(contour) for contour in table.contours)
    if points == 0:
        raise NotADrawingError(
            Worded("“{name}” holds no points; give one point a line, such as 12.5, 40.", name=path.name),
            path=path,
        )
    unit = options.unit or table.unit or Unit.MM
    figures, findings = _figures(table, float(unit.mm))
    if not figures:
        message = Worded(
            "“{name}” holds {points} points but no contour of three; add the missing points.",
            name=path.name,
            points=points,
        )
        raise NoOutlineError(message, path=path)
    if table.unit is None and options.unit is None:
        findings.append(_unit_missing(figures))
    return ReadResult(Drawing(tuple(figures)), path, table.unit, unit, tuple(findings), points)


def _take(table: _Table, number: int, line: str) -> None:
    text = line.strip().strip('"')
    if not text.strip(";, \t"):
        if table.contours[-1]:
            table.contours.append([])
        return
    if text.startswith("#"):
        table.unit = _stated_unit(text) or table.unit
        return
    point = _point(text)
    if point is not None:
        table.contours[-1].append(point)
    elif _HEADER.match(text) or _STATED.search(text):
        table.unit = _header_unit(text) or table.unit
    else:
        table.bad_lines.append(number)


def _point(text: str) -> tuple[float, float] | None:
    """The first two numbers of a line."""
    text = text.replace("−", "-")
    if ";" in text or "\t" in text:
        cells = [cell.strip().strip('"').replace(",", ".") for cell in re.split(r"[;\t]", text)]
    elif "," in text and re.search(r",\s|\.|^[^\s]+,[^\s]+$", text):
        cells = [cell.strip().strip('"') for cell in text.split(",")]
    else:
        cells = text.replace(",", ".").split()
    try:
        x, y = float(cells[0]), float(cells[1])
    except (ValueError, IndexError):
        return None
    return (x, y) if math.isfinite(x) and math.isfinite(y) else None


def _stated_unit(text: str) -> Unit | None:
    match = _STATED.search(text)
    return _UNITS.get(match.group(1).lower()) if match else _header_unit(text.lstrip("# "))


def _header_unit(text: str) -> Unit | None:
    """The unit in a header such as `x mm, y mm` or `x [in]; y [in]`."""
    stated = _STATED.search(text)
    words = [stated.group(1)] if stated else _WORD.findall(text) if _HEADER.match(text) else []
    return next((_UNITS[word.lower()] for word in words if word.lower() in _UNITS), None)


def _figures(table: _Table, scale: float) -> tuple[list[Figure], list[Finding]]:
    figures: list[Figure] = []
    findings: list[Finding] = []
    short = 0
    for contour in table.contours:
        points = np.array(contour, dtype=float).reshape(-1, 2) * scale
        points = points[(points != np.roll(points, 1, axis=0)).any(axis=1)] if len(points) > 1 else points
        if len(points) >= 3:
            figures.append(Figure((Path.polyline(points),), layer="points"))
        elif contour:
            short += 1
    if short:
        message = (
            Worded("1 contour has fewer than three points.")
            if short == 1
            else Worded("{count} contours have fewer than three points.", count=short)
        )
        findings.append(Finding("contour-short", Severity.WARN, message, Worded("Add the missing points.")))
    if table.bad_lines:
        count, shown = len(table.bad_lines), ", ".join(str(n) for n in table.bad_lines[:5])
        message = (
            Worded("{count} lines hold no point: line {shown} and more.", count=count, shown=shown)
            if count > 5
            else Worded("{count} lines hold no point: line {shown}.", count=count, shown=shown)
        )
        findings.append(
            Finding(
                "line-unreadable",
                Severity.WARN,
                message,
                Worded("Give two numbers a line, such as 12.5, 40."),
            )
        )
    return figures, findings


def _unit_missing(figures: list[Figure]) -> Finding:
    boxes = np.array([path.bounds() for figure in figures for path in figure.contours])
    wide, high = boxes[:, 2].max() - boxes[:, 0].min(), boxes[:, 3].max() - boxes[:, 1].min()
    message = Worded(
        "The table states no unit: {mm} (as it is shown now) if it was measured in millimetres, "
        "{inches} = {inches_in_mm} if in inches.",
        mm=f"{wide:.4g} × {high:.4g} mm",
        inches=f"{wide:.4g} × {high:.4g} in",
        inches_in_mm=f"{wide * 25.4:.4g} × {high * 25.4:.4g} mm",
    )
    return Finding(
        "unit-missing",
        Severity.WARN,
        message,
        Worded("Choose the unit, or write `# unit: mm` in the first line."),
    )
