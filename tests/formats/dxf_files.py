"""DXF files for tests, written by ezdxf (an independent library) or as plain text."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import ezdxf.document
from ezdxf.filemanagement import new

HEADER = "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n0\nENDSEC\n"
ENTITIES = "0\nSECTION\n2\nENTITIES\n"
END = "0\nENDSEC\n0\nEOF\n"
RECTANGLE = (
    "0\nLWPOLYLINE\n5\n2F\n100\nAcDbEntity\n8\n0\n100\nAcDbPolyline\n90\n4\n70\n1\n"
    "10\n0\n20\n0\n10\n10\n20\n0\n10\n10\n20\n5\n10\n0\n20\n5\n"
)
"""10 × 5, closed, on layer 0."""
WHOLE = HEADER + ENTITIES + RECTANGLE + END


def drawn(
    folder: Path,
    draw: Callable[[Any, ezdxf.document.Drawing], object],
    *,
    version: str = "R2000",
    units: int = 4,
    binary: bool = False,
) -> Path:
    """A file in which `draw(modelspace, document)` drew."""
    document = new(version, setup=True)
    document.units = units
    draw(document.modelspace(), document)
    path = folder / "drawn.dxf"
    document.saveas(path, fmt="bin" if binary else "asc")
    return path


def written(folder: Path, text: str | bytes, name: str = "written.dxf") -> Path:
    """A file with this content."""
    path = folder / name
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return path
