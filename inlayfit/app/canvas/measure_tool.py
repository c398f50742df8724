"""Measuring between two points: where the crosshair is, what was placed, and how it is drawn."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen

from inlayfit.app import theme
from inlayfit.app.canvas.pointing import Measurement, Snap
from inlayfit.app.canvas.view_transform import ViewTransform
from inlayfit.app.theme import Tokens, colour
from inlayfit.units import Unit, format_length

SNAP_PX = 12.0
_ARM_FROM_PX, _ARM_TO_PX = 4.0, 14.0
"""Each arm of the crosshair, which the keyboard moves and so must be found at a glance."""


@dataclass(frozen=True, slots=True)
class MeasureTool:
    """A measurement in the making.

    Attributes:
        cursor: where the crosshair is, snapped, or None before it was shown.
        start: the first point, or None.
        done: the finished measurement, or None.
    """

    cursor: Snap | None = None
    start: Snap | None = None
    done: Measurement | None = None

    def moved(self, cursor: Snap) -> MeasureTool:
        """The crosshair elsewhere."""
        return MeasureTool(cursor, self.start, self.done)

    def placed(self) -> MeasureTool:
        """A point set at the crosshair: the first one, or the second, which ends the measurement."""
        if self.cursor is None:
            return self
        if self.start is None:
            return MeasureTool(self.cursor, self.cursor)
        return MeasureTool(self.cursor, None, Measurement(self.start.place_mm, self.cursor.place_mm))

    @property
    def shown(self) -> Measurement | None:
        """What to draw: the measurement made, or the one being made."""
        if self.start is not None and self.cursor is not None:
            return Measurement(self.start.place_mm, self.cursor.place_mm)
        return self.done


def paint_measure(
    painter: QPainter, area: QRectF, tool: MeasureTool, view: ViewTransform, look: Tokens, unit: Unit
) -> None:
    """Paint the line, its length, and the crosshair with what it snapped to."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    shown = tool.shown
    if shown is not None:
        _paint_line(painter, area, shown, view, look, unit)
    if tool.cursor is not None:
        _paint_cursor(painter, QPointF(*view.to_px(*tool.cursor.place_mm)), tool.cursor, look)


def measurement_text(shown: Measurement, unit: Unit) -> str:
    """The straight distance and both parts of it: "12.500 mm   x 7.500   y 10.000"."""
    across = format_length(abs(shown.across_mm), unit, with_unit=False)
    up = format_length(abs(shown.up_mm), unit, with_unit=False)
    return f"{format_length(shown.distance_mm, unit)}   x {across}   y {up}"


def _paint_line(
    painter: QPainter, area: QRectF, shown: Measurement, view: ViewTransform, look: Tokens, unit: Unit
) -> None:
    start, end = QPointF(*view.to_px(*shown.start_mm)), QPointF(*view.to_px(*shown.end_mm))
    painter.setPen(QPen(colour(look.focus), 1))
    painter.drawLine(start, end)
    painter.setBrush(colour(look.focus))
    for point in (start, end):
        painter.drawEllipse(point, 3, 3)
    text, font = measurement_text(shown, unit), theme.font(theme.TITLE)
    width = QFontMetricsF(font).horizontalAdvance(text) + 20
    box = QRectF((start + end) / 2, (start + end) / 2).adjusted(-width / 2, -40, width / 2, -14)
    box.moveLeft(min(max(box.left(), area.left() + 8), area.right() - width - 8))
    box.moveTop(min(max(box.top(), area.top() + 8), area.bottom() - 34))
    painter.setPen(QPen(colour(look.focus), 1))
    painter.setBrush(colour(look.field))
    painter.drawRoundedRect(box, theme.RADIUS_PX, theme.RADIUS_PX)
    painter.setPen(colour(look.text))
    painter.setFont(font)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


def _paint_cursor(painter: QPainter, at: QPointF, snap: Snap, look: Tokens) -> None:
    at = QPointF(round(at.x()), round(at.y()))  # whole pixels, or its lines are half as dark
    painter.setPen(QPen(colour(look.focus), theme.FOCUS_RING_PX, c=Qt.PenCapStyle.FlatCap))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
        painter.drawLine(at + QPointF(dx, dy) * _ARM_FROM_PX, at + QPointF(dx, dy) * _ARM_TO_PX)
    if snap.to == "corner":
        painter.drawRect(QRectF(at.x() - 5, at.y() - 5, 10, 10))
    elif snap.to == "wall":
        painter.drawEllipse(at, 5, 5)
