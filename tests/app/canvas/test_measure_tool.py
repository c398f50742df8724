"""The crosshair of a measurement is seen wherever the arrow keys take it."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from inlayfit.app.canvas.measure_tool import MeasureTool, paint_measure
from inlayfit.app.canvas.pointing import Snap
from inlayfit.app.canvas.view_transform import ViewTransform
from inlayfit.app.theme import Theme, colour, tokens
from inlayfit.units import Unit

SIZE = 80


def luminance(image: QImage) -> np.ndarray:
    """Relative luminance (WCAG 2.2, definition of relative luminance)."""
    bits = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1, 4)[:, :, 2::-1] / 255
    linear = np.where(bits <= 0.04045, bits / 12.92, ((bits + 0.055) / 1.055) ** 2.4)
    return np.asarray(linear @ np.array([0.2126, 0.7152, 0.0722]))


@pytest.mark.parametrize("which", list(Theme))
@pytest.mark.parametrize("part", [0.0, 0.25, 0.5, 0.75])
@pytest.mark.parametrize("to", ["", "corner", "wall"])
def test_the_crosshair_stands_out_at_any_part_of_a_pixel(
    qapp: QApplication, which: Theme, part: float, to: str
) -> None:
    """WCAG 2.2, 1.4.11: at least 3 to 1, here by all four arms of it."""
    look, at_px = tokens(which), SIZE / 2 + part
    image = QImage(SIZE, SIZE, QImage.Format.Format_RGB32)
    image.fill(colour(look.canvas))
    empty = luminance(image)
    view = ViewTransform(scale=1.0, left_mm=0.0, top_mm=0.0)
    painter = QPainter(image)
    paint_measure(
        painter, QRectF(0, 0, SIZE, SIZE), MeasureTool(Snap((at_px, -at_px), to)), view, look, Unit.MM
    )
    painter.end()
    drawn = luminance(image)
    ratio = (np.maximum(drawn, empty) + 0.05) / (np.minimum(drawn, empty) + 0.05)
    seen = ratio >= 3
    middle = SIZE // 2
    beside = slice(middle - 3, middle + 4)
    before, after = slice(0, middle - 6), slice(middle + 8, SIZE)
    for rows, columns in ((beside, before), (beside, after), (before, beside), (after, beside)):
        assert seen[rows, columns].sum() >= 8
