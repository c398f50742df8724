"""What a drag holds, by content: said before it is dropped. Nothing is read whole for it."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication, QMimeData

from inlayfit.app.canvas.drop_halves import DropOffer
from inlayfit.document.project_file import looks_like_project

_FIRST_BYTES = 2048


def offer_for(data: QMimeData) -> DropOffer | None:
    """What dropping would bring, or None if nothing of it can be an outline."""
    files = [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
    if files:
        kinds = [kind_of_file(file) for file in files]
        if not all(kinds):
            return None
        if len(files) == 1:
            return DropOffer(_tr("{0}: {1}").format(files[0].name, kinds[0]))
        return DropOffer(_tr("{0} drawings").format(len(files)))
    if data.hasText():
        kind = kind_of(data.text()[:_FIRST_BYTES].encode())
        return DropOffer(kind) if kind else None
    return None


def kind_of_file(file: Path) -> str:
    """The kind of a file by its first bytes; "" if it is none of ours."""
    try:
        with file.open("rb") as stream:
            return kind_of(stream.read(_FIRST_BYTES))
    except OSError:
        return ""


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
    return ""


def _tr(text: str) -> str:
    return QCoreApplication.translate("content", text)
