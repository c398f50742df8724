"""A table of readings: widths of a recess as drawn and as measured, such as a spreadsheet writes it.

    # unit: mm              or a header line such as   axis, drawn mm, read mm
    X, 40, 40.052
    Y, 12, 12.048

A line holds one reading: the axis, the drawn width and the width read, apart by a semicolon, tab or comma.
With semicolons or tabs a comma is the decimal mark. A width may carry its own unit; without one it has the
unit that the table states, or none. Empty lines and lines that start with # are left out. A line that holds
no reading refuses the whole table: a reading that is silently missing would make a wrong part.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

from inlayfit.errors import HostileFileError, ReadError
from inlayfit.formats.dxf_open import read_file_bytes
from inlayfit.wording import Worded

MOST_BYTES = 1 << 20
"""A megabyte holds ten thousand readings and more; nobody measures so many."""
_AXIS = re.compile(r"[xXyY]")
_UNIT = r"mm|cm|inch(?:es)?|in|thou|µm|um"
_STATED = re.compile(rf"unit\w*\s*[:=]\s*({_UNIT})\b", re.IGNORECASE)
_IN_HEADER = re.compile(rf"(?<![a-z])({_UNIT})(?![a-z])", re.IGNORECASE)
_BARE = re.compile(r"[\d.,+\-−\s]+(?:[eE][+-]?\d+)?")


@dataclass(frozen=True, slots=True)
class WrittenReading:
    """One line of the table, its lengths still as they are written.

    Attributes:
        line: its number in the file, from 1.
        axis: "X" or "Y".
        drawn: the width that the drawing says, with a unit if one is known.
        read: the width that was read, the same.
    """

    line: int
    axis: str
    drawn: str
    read: str


def read_readings(path: Path) -> tuple[WrittenReading, ...]:
    """Read a table of readings.

    Raises:
        ReadError: the file cannot be read, holds no reading, or a line of it is none.
        HostileFileError: it is larger than any table of readings.
    """
    data = read_file_bytes(path)
    if len(data) > MOST_BYTES:
        message = Worded("“{name}” is too large for a table of readings; check the file.", name=path.name)
        raise HostileFileError(message, path=path)
    unit = ""
    found: list[WrittenReading] = []
    for number, line in enumerate(data.decode("utf-8-sig", "replace").splitlines(), 1):
        text = line.strip()
        if text.startswith("#"):
            unit = _stated(_STATED, text) or unit
        elif not text.strip(';,\t" '):
            continue
        elif not found and not re.search(r"\d", text):
            unit = _stated(_IN_HEADER, text) or unit
        else:
            found.append(_reading(number, text, unit, path))
    if not found:
        raise ReadError(
            Worded("“{name}” holds no readings; give one a line, such as X, 40, 40.052.", name=path.name),
            path=path,
        )
    return tuple(found)


def _stated(pattern: re.Pattern[str], text: str) -> str:
    match = pattern.search(text)
    return match.group(1).lower() if match else ""


def _reading(number: int, text: str, unit: str, path: Path) -> WrittenReading:
    marks = ";\t" if ";" in text or "\t" in text else ","
    cells = [cell.strip().strip('"').strip() for cell in re.split(f"[{marks}]", text)]
    if marks != ",":
        cells = [cell.replace(",", ".") for cell in cells]
    if len(cells) != 3 or not _AXIS.fullmatch(cells[0]) or not all(cells):
        raise ReadError(
            Worded(
                "Line {line} of “{name}” is not a reading; give axis, drawn width and width read, "
                "such as X, 40, 40.052.",
                line=number,
                name=path.name,
            ),
            path=path,
        )
    drawn, read = (f"{cell} {unit}".strip() if _BARE.fullmatch(cell) else cell for cell in cells[1:])
    return WrittenReading(number, cells[0].upper(), drawn, read)
