"""The loupe: a true-scale magnifier locked to the chosen spot, with its own scale bar, grid and zoom.

Keys and wheel: + and − or the wheel change its scale, Home goes back to the one that suits the gap, Left and
Right (or N and Shift+N) step through the spots.
"""

from __future__ import annotations

import math

import numpy as np
from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QBrush, QColor, QKeyEvent, QPainter, QPainterPath, QPaintEvent, QPen, QWheelEvent
from PySide6.QtWidgets import QWidget

from inlayfit.app import theme
from inlayfit.app.canvas.annotations import paint_badge
from inlayfit.app.canvas.class_look import look_of
from inlayfit.app.canvas.loupe_view import (
    LARGEST_SCALE,
    SMALLEST_SCALE,
    LoupeSpot,
    LoupeView,
    build_loupe,
    fitting_scale,
)
from inlayfit.app.canvas.painter_paths import lines_path
from inlayfit.app.canvas.reading_text import signed, signed_overall, spoken
from inlayfit.app.canvas.scale_bar import scale_bar
from inlayfit.app.canvas.scene import FittingScene
from inlayfit.app.theme import Tokens, colour
from inlayfit.fit.result import Spot
from inlayfit.geometry.path import Points
from inlayfit.units import Unit, format_length

_FOOTER_PX, _READING_PX = 26.0, 46.0
READING_ONLY_PX = 38
"""Height at which only the number is shown."""
_ZOOM_STEP = 1.25
_NOTCH = 120
_DIMMED = 0.5


class Loupe(QWidget):
    """Shows one spot of a fitting."""

    stepped = Signal(int)
    """+1 for the next spot, −1 for the one before."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._fitting: FittingScene | None = None
        self._spot: LoupeSpot | None = None
        self._unit = Unit.MM
        self._stale = False
        self._zoom = 1.0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(220, 140)
        self.setAccessibleName(self.tr("Loupe"))

    def set_spot(self, fitting: FittingScene | None, spot: Spot | None) -> None:
        """Look at a spot; None looks at nothing."""
        chosen = None if spot is None else LoupeSpot(spot.place_mm, spot.partner_mm, spot.gap_mm)
        self.look_at(fitting, chosen)

    def look_at(self, fitting: FittingScene | None, spot: LoupeSpot | None) -> None:
        """Look at any place of the wall, such as the one under the pointer."""
        self._fitting, self._spot = fitting, spot
        told = "" if spot is None else spoken(spot.gap_mm, self._unit)
        self.setAccessibleDescription(told)
        self.update()

    def set_unit(self, unit: Unit) -> None:
        """Show lengths in another unit."""
        self._unit = unit
        self.update()

    def set_stale(self, stale: bool) -> None:
        """Dim the numbers while they are a preview."""
        self._stale = stale
        self.update()

    @property
    def scale(self) -> float:
        """Pixels per millimetre now."""
        if self._fitting is None or self._spot is None:
            return SMALLEST_SCALE
        suited = fitting_scale(self._spot.gap_mm, self._fitting.clearance_mm)
        return min(LARGEST_SCALE, max(SMALLEST_SCALE, suited * self._zoom))

    def zoom_by(self, factor: float) -> None:
        """Magnify more or less."""
        before = self.scale
        self._zoom *= factor
        if self.scale == before:
            self._zoom /= factor
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(360, 236)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        backwards = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom_by(_ZOOM_STEP)
        elif key == Qt.Key.Key_Minus:
            self.zoom_by(1 / _ZOOM_STEP)
        elif key == Qt.Key.Key_Home:
            self._zoom = 1.0
            self.update()
        elif key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self.stepped.emit(1 if key == Qt.Key.Key_Right else -1)
        elif key == Qt.Key.Key_N:
            self.stepped.emit(-1 if backwards else 1)
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        self.zoom_by(_ZOOM_STEP ** (event.angleDelta().y() / _NOTCH))
        event.accept()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.StyleChange):
            self.update()

    # --- painting ---

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        look = theme.tokens_of(self)
        if self.height() <= READING_ONLY_PX:
            self._paint_reading_only(painter, look)
            return
        frame = QRectF(self.rect()).adjusted(1, 1, -1, -1 - _READING_PX)
        picture = frame.adjusted(0, 0, 0, -_FOOTER_PX)
        painter.fillRect(frame, colour(look.canvas))
        if self._fitting is not None and self._spot is not None:
            view = build_loupe(
                self._fitting, self._spot, self.scale, picture.width(), picture.height(), unit=self._unit
            )
            painter.save()
            painter.setClipRect(picture)
            painter.translate(picture.topLeft())
            self._paint_picture(painter, view, QRectF(0, 0, picture.width(), picture.height()), look)
            painter.restore()
            self._paint_footer(painter, frame, view, look)
            self._paint_reading(painter, frame.bottom(), look)
        self._paint_ring(painter, frame, look)
        painter.end()

    def _paint_reading_only(self, painter: QPainter, look: Tokens) -> None:
        if self._fitting is not None and self._spot is not None:
            self._paint_reading(painter, -7.0, look)
        if self.hasFocus():
            self._paint_ring(painter, QRectF(self.rect()), look)
        painter.end()

    def _paint_ring(self, painter: QPainter, frame: QRectF, look: Tokens) -> None:
        """The line round the picture, or the ring of what has the keyboard."""
        focused = self.hasFocus()
        width = theme.FOCUS_RING_PX if focused else 1
        painter.setPen(QPen(colour(look.focus if focused else look.hairline), width))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        inset = 1 if focused else 0  # whole pixels, so that the ring is seen beside a line of any colour
        painter.drawRoundedRect(frame.adjusted(inset, inset, -inset, -inset), 4, 4)

    def _paint_picture(self, painter: QPainter, view: LoupeView, area: QRectF, look: Tokens) -> None:
        assert self._fitting is not None
        assert self._spot is not None
        pocket, plug, overlap = (_path(rings, view) for rings in (view.pocket, view.plug, view.overlap))
        painter.fillRect(area, colour(look.host_tint))
        painter.fillPath(pocket, colour(look.canvas))
        painter.fillPath(plug, colour(look.plug_tint, 1.0 if self._fitting.plug_fixed else 0.35))
        _paint_grid(painter, view, area, look)
        painter.fillPath(_path(view.pared, view), QBrush(colour(look.host_line), Qt.BrushStyle.Dense6Pattern))
        painter.fillPath(overlap, QBrush(colour(look.bites, 0.75), Qt.BrushStyle.BDiagPattern))
        for path, token, width in ((pocket, look.host_line, 2.0), (plug, look.text, 1.4)):
            painter.setPen(QPen(colour(token), width))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPath(path)
        self._paint_cutter(painter, view, area, look)
        _paint_gap_line(painter, view, self._spot, look)
        self._paint_labels(painter, view, area, look)

    def _paint_cutter(self, painter: QPainter, view: LoupeView, area: QRectF, look: Tokens) -> None:
        arc = view.cutter
        if arc is None:
            return
        x, y = view.view.to_px(*arc.centre_mm)
        radius = arc.radius_mm * view.view.scale
        pen = QPen(colour(look.accent), 1)
        pen.setDashPattern([5, 4])
        painter.setPen(pen)
        painter.drawPath(lines_path([_arc_in_sight(x, y, radius, area)], closed=False))
        diameter, leaves = (brief_length(mm, self._unit) for mm in (2 * arc.radius_mm, arc.radius_mm))
        words = self.tr("cutter {0} leaves r {1}").format(diameter, leaves)
        _paint_tag(painter, area, words, look.muted, look, right=True)

    def _paint_labels(self, painter: QPainter, view: LoupeView, area: QRectF, look: Tokens) -> None:
        """Name each half in a corner of the picture that lies well inside it."""
        assert self._fitting is not None
        fitting = self._fitting
        halves = (
            (fitting.plug_label, self.tr("plug"), look.text, fitting.plug.holds),
            (
                fitting.pocket_label,
                self.tr("host"),
                look.host_line,
                lambda x, y: not fitting.pocket.holds(x, y),
            ),
        )
        taken = {"top right"} if view.cutter is not None else set()
        if view.pared:
            _paint_tag(painter, area, self.tr("dotted: pare by hand"), look.muted, look, bottom=True)
            taken.add("bottom left")
        for label, plain, token, holds in halves:
            words = label.lines[0] if label is not None else plain
            for name, x, y in _corners(area):
                if name not in taken and holds(*view.view.to_mm(x, y)):
                    _paint_tag(
                        painter, area, words, token, look, right="right" in name, bottom="bottom" in name
                    )
                    taken.add(name)
                    break

    def _paint_footer(self, painter: QPainter, frame: QRectF, view: LoupeView, look: Tokens) -> None:
        strip = QRectF(frame.left(), frame.bottom() - _FOOTER_PX, frame.width(), _FOOTER_PX)
        painter.fillRect(strip, colour(look.panel))
        bar = scale_bar(view.view.scale, self._unit, widest_px=90)
        left, y = strip.left() + 12, strip.center().y()
        painter.setPen(QPen(colour(look.text), 1))
        painter.drawLine(QPointF(left, y), QPointF(left + bar.length_px, y))
        for x in (left, left + bar.length_px):
            painter.drawLine(QPointF(x, y - 4), QPointF(x, y + 4))
        painter.setFont(theme.font(theme.CAPTION))
        middle = Qt.AlignmentFlag.AlignVCenter
        text = strip.adjusted(12 + bar.length_px + 8, 0, -10, 0)
        bar_words = self.tr("{0}, true scale").format(bar.text)
        painter.drawText(text, middle | Qt.AlignmentFlag.AlignLeft, bar_words)
        square = format_length(view.square_mm, self._unit, decimals=_places(view.square_mm, self._unit))
        square_words = self.tr("1 square = {0}").format(square)
        needed = bar.length_px + 8 + theme.text_width(bar_words + square_words, theme.CAPTION)
        if needed + 40 < strip.width():
            painter.setPen(colour(look.muted))
            painter.drawText(text, middle | Qt.AlignmentFlag.AlignRight, square_words)

    def _paint_reading(self, painter: QPainter, top: float, look: Tokens) -> None:
        assert self._spot is not None
        assert self._fitting is not None
        painter.setOpacity(_DIMMED if self._stale else 1.0)
        gap = self._spot.gap_mm
        badge = QRectF(1, top + 12, 28, 28)
        paint_badge(painter, badge, look_of(gap, self._fitting.clearance_mm), look)
        painter.setFont(theme.font(theme.READING))
        painter.setPen(colour(look.text))
        value = signed(gap, self._unit)
        painter.drawText(QPointF(badge.right() + 10, badge.bottom() - 5), value)
        left = badge.right() + 10 + theme.text_width(value, theme.READING) + 10
        painter.setFont(theme.font(theme.CAPTION))
        painter.setPen(colour(look.muted))
        painter.drawText(QPointF(left, badge.top() + 11), self.tr("per side, {0}").format(self._unit.symbol))
        overall = signed_overall(gap, self._unit).removesuffix(")")
        painter.drawText(QPointF(left, badge.top() + 26), self.tr("{0} overall)").format(overall))
        painter.setOpacity(1.0)


def _path(rings: tuple[Points, ...], view: LoupeView) -> QPainterPath:
    return lines_path(rings, closed=True, place=view.view.points_px)


def _paint_grid(painter: QPainter, view: LoupeView, area: QRectF, look: Tokens) -> None:
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(QPen(colour(look.grid), 1))
    x0, y0, x1, y1 = view.view.box_mm(area.width(), area.height())
    lines = []
    for number in range(math.ceil(x0 / view.square_mm), math.floor(x1 / view.square_mm) + 1):
        x, _ = view.view.to_px(number * view.square_mm, 0)
        lines.append(QLineF(x, 0, x, area.height()))
    for number in range(math.ceil(y0 / view.square_mm), math.floor(y1 / view.square_mm) + 1):
        _, y = view.view.to_px(0, number * view.square_mm)
        lines.append(QLineF(0, y, area.width(), y))
    painter.drawLines(lines)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)


def _paint_gap_line(painter: QPainter, view: LoupeView, spot: LoupeSpot, look: Tokens) -> None:
    """From wall to wall, continued a little so that it can be seen where the gap is small."""
    start, end = QPointF(*view.view.to_px(*spot.place_mm)), QPointF(*view.view.to_px(*spot.partner_mm))
    step = end - start
    length = math.hypot(step.x(), step.y())
    beyond = step * (18 / length) if length > 0.5 else QPointF(0, 0)
    painter.setPen(QPen(colour(look.focus), 2))
    painter.drawLine(start - beyond, end + beyond)
    painter.setBrush(colour(look.focus))
    painter.setPen(Qt.PenStyle.NoPen)
    for point in (start, end):
        painter.drawEllipse(point, 3.5, 3.5)


def _arc_in_sight(x: float, y: float, radius: float, area: QRectF) -> Points:
    """The part of a circle that faces the picture's middle, fine enough for any radius."""
    middle = area.center()
    towards = math.atan2(middle.y() - y, middle.x() - x)
    reach = min(math.pi, 1.5 * math.hypot(area.width(), area.height()) / max(radius, 1e-6))
    angles = towards + np.linspace(-reach, reach, 181)
    return np.column_stack([x + radius * np.cos(angles), y + radius * np.sin(angles)])


def _corners(area: QRectF) -> tuple[tuple[str, float, float], ...]:
    left, right, top, bottom = 40.0, area.width() - 40, 18.0, area.height() - 18
    return (
        ("top left", left, top),
        ("bottom left", left, bottom),
        ("bottom right", right, bottom),
        ("top right", right, top),
    )


def _paint_tag(
    painter: QPainter,
    area: QRectF,
    words: str,
    token: str,
    look: Tokens,
    *,
    right: bool = False,
    bottom: bool = False,
) -> None:
    """Words in a corner on a plate, so that no line runs through them."""
    width = theme.text_width(words, theme.CAPTION) + 12
    left = area.right() - width - 6 if right else area.left() + 6
    box = QRectF(left, area.bottom() - 26 if bottom else area.top() + 6, width, 20)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(_veil(look))
    painter.drawRoundedRect(box, 4, 4)
    painter.setFont(theme.font(theme.CAPTION))
    painter.setPen(colour(token))
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, words)


def _veil(look: Tokens) -> QColor:
    return colour(look.canvas, 0.85)


def _places(length_mm: float, unit: Unit) -> int:
    return max(0, -math.floor(math.log10(length_mm / float(unit.mm)) + 1e-9))


def brief_length(mm: float, unit: Unit) -> str:
    """A diameter or radius as one speaks of it: a digit fewer than a reading."""
    return format_length(mm, unit, decimals=max(1, unit.readout_decimals - 1), with_unit=False)
