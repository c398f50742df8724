"""Our own icons, drawn in one colour and tinted from the theme.

Each is a small SVG on a grid of 20 whose colour is `currentColor`. An icon is rendered for the common sizes
and screen ratios at once, so it is sharp wherever it is shown.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from functools import lru_cache

from PySide6.QtCore import QByteArray, QEvent, QRectF, QSize, Qt
from PySide6.QtGui import QAction, QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QToolButton, QWidget

from inlayfit.app import theme
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
    MORE = "more"
    LESS = "less"


OF_COMMANDS: dict[str, IconName] = {
    "open": IconName.OPEN,
    "export": IconName.EXPORT,
    "undo": IconName.UNDO,
    "redo": IconName.REDO,
    "fit_view": IconName.FIT_VIEW,
    "zoom_in": IconName.ZOOM_IN,
    "zoom_out": IconName.ZOOM_OUT,
    "next_spot": IconName.NEXT,
    "previous_spot": IconName.PREVIOUS,
    "use_pocket": IconName.POCKET,
    "use_plug": IconName.PLUG,
}
"""The icons of commands; where no picture says it better than the words there is none."""


class IconButton(QToolButton):
    """A button with an icon, beside its words if it has any, in the colours it lies among."""

    def __init__(self, name: IconName, words: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self.setText(words)
        if words:
            self.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
            self.setIconSize(QSize(20, 16))  # a little air before the words
        self._take_colours()

    def set_icon(self, name: IconName) -> None:
        """Show another icon."""
        self._name = name
        self._take_colours()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.StyleChange):
            self._take_colours()

    def _take_colours(self) -> None:
        self.setIcon(icon(self._name, theme.tokens_of(self)))


def dress(actions: Mapping[str, QAction], look: Tokens) -> None:
    """Give commands their icons in the colours of a theme."""
    for command, name in OF_COMMANDS.items():
        actions[command].setIcon(icon(name, look))


def icon(name: IconName, look: Tokens) -> QIcon:
    """An icon in the colour of a theme's text; muted where disabled."""
    return _tinted(name, look.text, look.muted)


@lru_cache(maxsize=128)
def _tinted(name: IconName, token: str, muted: str) -> QIcon:
    result = QIcon()
    for mode, colour in ((QIcon.Mode.Normal, token), (QIcon.Mode.Disabled, muted)):
        renderer = QSvgRenderer(QByteArray(_source(name).replace(b"currentColor", colour.encode())))
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


def _source(name: IconName) -> bytes:
    return (shipped_folder("resources") / "icons" / f"{name}.svg").read_bytes()
