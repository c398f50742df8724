"""What a drag holds, by content: said before it is dropped. Nothing is read whole for it."""

from __future__ import annotations

import zlib
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QMimeData

from inlayfit.app.canvas.drop_halves import DropOffer
from inlayfit.app.core_words import core
from inlayfit.document.project_kind import looks_like_project
from inlayfit.formats.other_kinds import why_no_drawing

_FIRST_BYTES = 2048
_GZIP = b"\x1f\x8b"


def offer_for(data: QMimeData) -> DropOffer | None:
    """What dropping would bring, or why it would bring nothing; None if it is nothing to speak of."""
    urls = data.urls()
    if urls:
        files = [Path(url.toLocalFile()) for url in urls if url.isLocalFile()]
        if len(files) < len(urls):
            words = _tr("“{0}” lies on another computer; save it on this one first.")
            return _refused(words.format(urls[0].fileName() or urls[0].host()))
        return _offer_of_files(files)
    if data.hasText():
        kind = kind_of(data.text()[:_FIRST_BYTES].encode())
        return (
            DropOffer(kind)
            if kind
            else _refused(_tr("This text is no drawing; drop the text of an SVG or DXF."))
        )
    return None


def _offer_of_files(files: Sequence[Path]) -> DropOffer:
    for file in files:
        refusal = refusal_of(file)
        if refusal:
            return _refused(refusal)
    projects = [file for file in files if kind_of_file(file) == _tr("a project")]
    if projects and len(files) > 1:
        return _refused(_tr("“{0}” is a project; drop it alone.").format(projects[0].name))
    if projects:
        return DropOffer(projects[0].name, heading=_tr("Open the project"))
    if len(files) > 1:
        return DropOffer(_tr("{0} drawings").format(len(files)))
    return DropOffer(_tr("{0}: {1}").format(files[0].name, kind_of_file(files[0])))


def _refused(sentence: str) -> DropOffer:
    return DropOffer(sentence, heading=_tr("This cannot be used"), is_refused=True)


def refusal_of(file: Path) -> str:
    """Why a file cannot be used, in one sentence; "" if it can."""
    if file.is_dir():
        return _tr("“{0}” is a folder; drop the drawings in it.").format(file.name)
    try:
        start = _start_of(file)
    except OSError:
        return _tr("“{0}” cannot be read; look whether it is there and yours to read.").format(file.name)
    if not start:
        return _tr("“{0}” is empty; save the drawing again.").format(file.name)
    return "" if kind_of(start) else core(why_no_drawing(start, file.name))


def kind_of_file(file: Path) -> str:
    """The kind of a file by its first bytes; "" if it is none of ours."""
    try:
        return kind_of(_start_of(file))
    except OSError:
        return ""


def _start_of(file: Path) -> bytes:
    """The first bytes, unpacked if the file is packed."""
    with file.open("rb") as stream:
        start = stream.read(_FIRST_BYTES)
    if not start.startswith(_GZIP):
        return start
    unpacking = zlib.decompressobj(wbits=zlib.MAX_WBITS | 16)
    try:
        return unpacking.decompress(start, _FIRST_BYTES)
    except zlib.error:
        return start


def kind_of(start: bytes) -> str:
    """The kind of content by its first bytes; "" if it is none of ours."""
    if looks_like_project(start):
        return _tr("a project")
    if start.startswith(b"AutoCAD Binary DXF"):
        return _tr("a DXF drawing")
    text = start.decode("utf-16" if start[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8", "replace")
    text = text.lstrip("\ufeff \t\r\n")
    if text.startswith("<") and ("<svg" in text or "<?xml" in text or "<!" in text):
        return _tr("an SVG drawing")
    lines = [line.strip() for line in text.splitlines()[:2]]
    if len(lines) == 2 and lines[0] in ("0", "999"):
        return _tr("a DXF drawing")
    return _tr("a table of points") if _looks_like_points(start) else ""


def _looks_like_points(start: bytes) -> bool:
    from inlayfit.formats.points_read import looks_like_points  # heavy; not before it is needed

    return looks_like_points(start)


def _tr(text: str) -> str:
    return QCoreApplication.translate("content", text)
