"""Files of other kinds, named by their first bytes, so that a person knows what to export instead."""

from __future__ import annotations

from inlayfit.wording import Worded

_OTHERS: tuple[tuple[bytes, Worded], ...] = (
    (b"AC10", Worded("a DWG drawing")),
    (b"%PDF", Worded("a PDF")),
    (b"%!PS", Worded("a PostScript file")),
    (b"\x89PNG", Worded("a picture (PNG)")),
    (b"\xff\xd8\xff", Worded("a picture (JPEG)")),
    (b"GIF8", Worded("a picture (GIF)")),
    (b"BM", Worded("a picture (BMP)")),
    (b"ISO-10303-21", Worded("a STEP model")),
    (b"solid ", Worded("a three-dimensional model (STL)")),
    (b"PK\x03\x04", Worded("a packed folder (ZIP)")),
    (b"<!DOCTYPE html", Worded("a web page")),
    (b"<html", Worded("a web page")),
)

_PROJECT = b'"format": "inlayfit project"'


def why_no_drawing(data: bytes, name: str) -> Worded:
    """One sentence about a file that is no drawing: what it is, as far as known, and what to do."""
    start = data.lstrip(b"\xef\xbb\xbf \t\r\n")
    if _PROJECT in start[:80]:
        return Worded(
            "“{name}” is a project of this program; open it in the window, or name the drawing it holds.",
            name=name,
        )
    for mark, what in _OTHERS:
        if start[: len(mark)].lower() == mark.lower():
            return Worded("“{name}” is {what}; save the drawing as DXF or SVG.", name=name, what=what)
    return Worded(
        "“{name}” is neither DXF nor SVG nor a table of points; save the drawing as DXF or SVG.", name=name
    )
