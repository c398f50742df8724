"""Which reader a file needs, by what is in it; its name proves nothing.

A file of another well-known kind is named in the sentence, so that the person knows what to export.
"""

from __future__ import annotations

from pathlib import Path

from inlayfit.errors import NotADrawingError
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.dxf_open import looks_like_dxf, read_file_bytes
from inlayfit.formats.dxf_read import read_dxf_bytes
from inlayfit.formats.other_kinds import why_no_drawing
from inlayfit.formats.points_read import looks_like_points, read_points_text
from inlayfit.formats.svg_read import read_svg_text

_DEFAULT = ReadOptions()
_LOOKED_AT = 1 << 20
_GZIP = b"\x1f\x8b"


def read_drawing(path: Path, options: ReadOptions = _DEFAULT) -> ReadResult:
    """Read a DXF, SVG or point file.

    Raises:
        NotADrawingError: it is none of them, is empty, or is no file.
        HostileFileError: it was refused for safety.
        NoOutlineError: it draws nothing.
        ReadError: it cannot be read just now.
    """
    return read_drawing_bytes(read_file_bytes(path), path, options)


def read_drawing_bytes(data: bytes, path: Path, options: ReadOptions = _DEFAULT) -> ReadResult:
    """The same for bytes that came from elsewhere; `path` names them."""
    if looks_like_dxf(data):
        return read_dxf_bytes(data, path, options)
    if looks_like_svg(data):
        return read_svg_text(data, source=path, options=options)
    if looks_like_points(data):
        return read_points_text(data, path, options)
    raise NotADrawingError(why_no_drawing(data, path.name), path=path)


def looks_like_svg(data: bytes) -> bool:
    """Whether the bytes are XML with an svg element, or packed."""
    if data.startswith(_GZIP):
        return True
    head = data[:_LOOKED_AT]
    if head.startswith((b"\xff\xfe", b"\xfe\xff")) or head[1:2] == b"\0":
        head = head.replace(b"\0", b"")
    start = head.lstrip(b"\xef\xbb\xbf\xff\xfe \t\r\n")
    return start.startswith(b"<") and (b"<svg" in head or b":svg" in head)
