"""Our own icons, drawn in one colour and tinted from the theme.

Each is a small SVG on a grid of 20 whose colour is `currentColor`. An icon is rendered for the common sizes
and screen ratios at once, so it is sharp wherever it is shown.
"""

from __future__ import annotations

from enum import StrEnum
from functools import lru_cache

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from inlayfit.app.theme import Tokens
from inlayfit.shipped import shipped_folder

_SIZES_PX = (16, 20, 24, 32)
_RATIOS = (1, 2)


class IconName(StrEnum):
    """Every icon, by the name of its file."""

    OPEN = "open"
    EXPORT = "export"
    UNDO = "undo"
    REDO = "redo"
    FIT_VIEW = "fit-view"
    ZOOM_IN = "zoom-in"
    ZOOM_OUT = "zoom-out"
    MEASURE = "measure"
    NEXT = "next"
    PREVIOUS = "previous"
    POCKET = "pocket"
    PLUG = "plug"
    CUTTER = "cutter"
    ROUGH = "rough"
    LEFT_OVER = "left-over"
    RELIEF = "relief"
    BLOCK = "block"
    WARN = "warn"
    NOTE = "note"
    SHEET = "sheet"
    TRIAL = "trial"
    MIRROR = "mirror"


def icon(name: IconName, look: Tokens, *, token: str | None = None) -> QIcon:
    """An icon in a theme: in the colour of its text, or of another token; muted where disabled."""
    return _tinted(name, token or look.text, look.muted)


def painted(name: IconName, painter: QPainter, box: QRectF, token: str) -> None:
    """Draw an icon into a box of a self-painted widget."""
    QSvgRenderer(QByteArray(_svg(name, token))).render(painter, box)


@lru_cache(maxsize=256)
def _tinted(name: IconName, token: str, muted: str) -> QIcon:
    result = QIcon()
    for mode, colour in ((QIcon.Mode.Normal, token), (QIcon.Mode.Disabled, muted)):
        renderer = QSvgRenderer(QByteArray(_svg(name, colour)))
        for size in _SIZES_PX:
            for ratio in _RATIOS:
                result.addPixmap(_pixmap(renderer, size, ratio), mode)
    return result


def _pixmap(renderer: QSvgRenderer, size: int, ratio: int) -> QPixmap:
    pixmap = QPixmap(size * ratio, size * ratio)
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    renderer.render(painter, QRectF(0, 0, size, size))
    painter.end()
    return pixmap


def _svg(name: IconName, token: str) -> bytes:
    return _source(name).replace(b"currentColor", token.encode())


@lru_cache(maxsize=64)
def _source(name: IconName) -> bytes:
    return (shipped_folder("resources") / "icons" / f"{name}.svg").read_bytes()
