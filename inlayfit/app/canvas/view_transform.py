"""From drawing millimetres to logical pixels and back: y up on the drawing, y down on the screen."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np

from inlayfit.geometry.path import Points

SMALLEST_SCALE = 0.01
LARGEST_SCALE = 50_000.0
"""Pixels per millimetre: at the largest, a micrometre is 50 pixels wide."""

Box = tuple[float, float, float, float]
"""x0, y0, x1, y1."""


@dataclass(frozen=True, slots=True)
class ViewTransform:
    """Where the drawing stands in the widget.

    Attributes:
        scale: logical pixels per millimetre.
        left_mm, top_mm: the drawing's x and y at the widget's upper left corner.
    """

    scale: float = 4.0
    left_mm: float = 0.0
    top_mm: float = 0.0

    @classmethod
    def fitted(
        cls, bounds: Box, width: float, height: float, *, margin: float = 40.0, above: float = 0.0
    ) -> ViewTransform:
        """The view that shows the whole box, centred, with `margin` pixels about it where there is room.

        `above` more pixels stay free at the top, for what lies over the map there.
        """
        x0, y0, x1, y1 = bounds
        if not all(map(math.isfinite, bounds)) or width <= 0 or height <= 0:
            return cls()
        above = min(above, height / 4)
        margin = min(margin, width / 4, (height - above) / 4)
        wide, high = max(x1 - x0, 1e-6), max(y1 - y0, 1e-6)
        scale = _limited(min((width - 2 * margin) / wide, (height - above - 2 * margin) / high))
        left = (x0 + x1) / 2 - width / 2 / scale
        top = (y0 + y1) / 2 + (height + above) / 2 / scale
        return cls(scale, left, top)

    def points_px(self, points: Points) -> Points:
        """(n, 2) millimetres as (n, 2) pixels."""
        moved: Points = (np.asarray(points) - (self.left_mm, self.top_mm)) * (self.scale, -self.scale)
        return moved

    def to_px(self, x_mm: float, y_mm: float) -> tuple[float, float]:
        """One point in pixels."""
        return (x_mm - self.left_mm) * self.scale, (self.top_mm - y_mm) * self.scale

    def to_mm(self, x_px: float, y_px: float) -> tuple[float, float]:
        """One point in millimetres."""
        return self.left_mm + x_px / self.scale, self.top_mm - y_px / self.scale

    def box_mm(self, width: float, height: float, *, margin: float = 0.0) -> Box:
        """What a widget of this size shows, grown by `margin` pixels on each side."""
        x0, y1 = self.to_mm(-margin, -margin)
        x1, y0 = self.to_mm(width + margin, height + margin)
        return x0, y0, x1, y1

    def zoomed(self, factor: float, x_px: float, y_px: float) -> ViewTransform:
        """Larger by `factor`, with the drawing's point under (x_px, y_px) staying there."""
        scale = _limited(self.scale * factor)
        x_mm, y_mm = self.to_mm(x_px, y_px)
        return ViewTransform(scale, x_mm - x_px / scale, y_mm + y_px / scale)

    def panned(self, dx_px: float, dy_px: float) -> ViewTransform:
        """The drawing moved by so many pixels."""
        left, top = self.left_mm - dx_px / self.scale, self.top_mm + dy_px / self.scale
        return replace(self, left_mm=left, top_mm=top)

    def centred_on(self, x_mm: float, y_mm: float, width: float, height: float) -> ViewTransform:
        """The same scale, with this point in the middle."""
        left, top = x_mm - width / 2 / self.scale, y_mm + height / 2 / self.scale
        return replace(self, left_mm=left, top_mm=top)


def _limited(scale: float) -> float:
    return min(LARGEST_SCALE, max(SMALLEST_SCALE, scale))
