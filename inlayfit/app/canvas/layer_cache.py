"""Keeps the painted layer of the map, so that moving the drawing only copies it.

The kept layer is larger than the widget by a margin. It is painted anew when the scale, the scene, the
theme, the overlays or the screen's pixel ratio change, or when the view has moved past the margin.

A preview is seen once: it is painted straight to the screen, at a coarser grain, and kept only if it is
asked for again.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF
from PySide6.QtGui import QPainter, QPixmap

from inlayfit.app.canvas.paint_layers import Layers, paint_layers
from inlayfit.app.canvas.picture import FINE, FOLLOWING, Grain, Picture, build_picture
from inlayfit.app.canvas.scene import GapScene
from inlayfit.app.canvas.view_transform import ViewTransform
from inlayfit.app.theme import Tokens

MARGIN_PX = 96


class LayerCache:
    """The last picture, and how it was painted."""

    def __init__(self) -> None:
        self._scene: GapScene | None = None
        self._size = QSize()
        self._grain: Grain = FINE
        self._picture: Picture | None = None
        self._pixmap = QPixmap()
        self._painted_as: tuple[float, Tokens, Layers] | None = None
        self._is_new = False

    def picture(self, scene: GapScene, view: ViewTransform, size: QSize, layers: Layers) -> Picture:
        """The picture of a scene for this view, built only when the kept one does not serve."""
        kept = self._picture
        self._is_new = scene is not self._scene
        if kept is None or not self._is_of(scene, size, layers) or not _serves(kept, view):
            grain = FOLLOWING if layers.stale else FINE
            kept = build_picture(scene, view, size.width(), size.height(), margin=MARGIN_PX, grain=grain)
            self._scene, self._size, self._grain, self._picture = scene, size, grain, kept
            self._painted_as = None
        return kept

    def _is_of(self, scene: GapScene, size: QSize, layers: Layers) -> bool:
        is_fine_enough = layers.stale or self._grain is FINE
        return scene is self._scene and size == self._size and is_fine_enough

    def paint(
        self, painter: QPainter, view: ViewTransform, ratio: float, look: Tokens, layers: Layers
    ) -> None:
        """Paint the kept picture as it stands in this view."""
        assert self._picture is not None
        offset = _offset(self._picture.view, view)
        if layers.stale and self._is_new:
            painter.save()
            painter.translate(offset)
            area = QRectF(-offset, QSizeF(self._size))
            paint_layers(painter, area, self._picture, look, layers)
            painter.restore()
            return
        if self._painted_as != (ratio, look, layers):
            self._repaint(ratio, look, layers)
        painter.drawPixmap(QPointF(offset.x() - MARGIN_PX, offset.y() - MARGIN_PX), self._pixmap)

    def at_view(self, view: ViewTransform) -> Picture:
        """The kept picture's places moved to this view, for what is painted on top."""
        kept = self._picture
        assert kept is not None
        if kept.view == view:
            return kept
        offset = _offset(kept.view, view)
        return replace(kept, view=view, crowd=kept.crowd + np.array([offset.x(), offset.y()]))

    def _repaint(self, ratio: float, look: Tokens, layers: Layers) -> None:
        assert self._picture is not None
        wanted = QSize(self._size.width() + 2 * MARGIN_PX, self._size.height() + 2 * MARGIN_PX)
        if self._pixmap.size() != wanted * ratio:
            self._pixmap = QPixmap(wanted * ratio)
        self._pixmap.setDevicePixelRatio(ratio)
        painter = QPainter(self._pixmap)
        painter.translate(MARGIN_PX, MARGIN_PX)
        area = QRectF(-MARGIN_PX, -MARGIN_PX, wanted.width(), wanted.height())
        paint_layers(painter, area, self._picture, look, layers)
        painter.end()
        self._painted_as = (ratio, look, layers)


def _offset(old: ViewTransform, new: ViewTransform) -> QPointF:
    return QPointF((old.left_mm - new.left_mm) * new.scale, (new.top_mm - old.top_mm) * new.scale)


def _serves(kept: Picture, view: ViewTransform) -> bool:
    offset = _offset(kept.view, view)
    near = max(abs(offset.x()), abs(offset.y())) <= MARGIN_PX
    return near and abs(kept.view.scale / view.scale - 1) < 1e-12
