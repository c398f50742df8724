"""Many parts in one picture: how far the gap scatters, and how many parts have the wanted feel.

Above, a line of clearances per side: the zone of the wanted feel as a band, the worst case as a thin span
with ends, the root sum square as a thick one inside it, a tick where the gap was asked for. Below, a bar cut
into shares: too tight (T, hatched), as wanted (O, plain), too loose (L, dotted). Every share has its letter
and its percentage, so colour is never the only cue (WCAG 2.2, 1.4.1).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from inlayfit.app import theme
from inlayfit.units import Unit, format_length

_HEIGHT_PX, _COMPACT_PX = 132, 50
_AXIS_Y, _BAR_Y, _BAR_PX = 38.0, 82.0, 20.0
_LETTER_PX = 16.0
_ROOM = 0.12
_STALE = 0.45


@dataclass(frozen=True, slots=True)
class ScatterPicture:
    """What is drawn.

    Attributes:
        worst_mm, likely_mm: tightest and loosest gap per side, at worst and by root sum square.
        asked_mm: the clearance that was asked for.
        zone_mm: limits of the wanted feel; infinite where it has none.
        feel: its word.
        shares: too tight, as wanted, too loose; they add up to 1.
        words: "too tight" and "too loose", as they are called here.
    """

    worst_mm: tuple[float, float]
    likely_mm: tuple[float, float]
    asked_mm: float
    zone_mm: tuple[float, float]
    feel: str
    shares: tuple[float, float, float]
    words: tuple[str, str]

    @property
    def span_mm(self) -> tuple[float, float]:
        """The clearances between which the line is drawn."""
        ends = [*self.worst_mm, self.asked_mm, *(end for end in self.zone_mm if math.isfinite(end))]
        low, high = min(ends), max(ends)
        room = _ROOM * max(high - low, 1e-3)
        return low - room, high + room


class ScatterView(QWidget):
    """The picture; the same facts stand beside it in words."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._picture: ScatterPicture | None = None
        self._unit = Unit.MM
        self._is_compact = False
        self.setAccessibleName(self.tr("Spread of many parts"))
        self.setFixedHeight(_HEIGHT_PX)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(300, self.height())

    def set_compact(self, compact: bool) -> None:
        """Draw the shares alone."""
        self._is_compact = compact
        self.setFixedHeight(_COMPACT_PX if compact else _HEIGHT_PX)
        self.update()

    def show_picture(self, picture: ScatterPicture | None, unit: Unit, said: str) -> None:
        """Draw another picture; `said` is the same for a screen reader."""
        self._picture, self._unit = picture, unit
        self.setAccessibleDescription(said)
        self.setToolTip(said)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._picture is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setOpacity(1.0 if self.isEnabled() else _STALE)
        look = theme.tokens_of(self)
        if self._is_compact:
            painter.translate(0, _COMPACT_PX - _HEIGHT_PX)
        else:
            self._paint_line(painter, look, self._picture)
        self._paint_shares(painter, look, self._picture)
        painter.end()

    # --- the line of clearances

    def _x(self, mm: float) -> float:
        assert self._picture is not None
        low, high = self._picture.span_mm
        inside = min(max(mm, low), high)
        return 1.0 + (self.width() - 2.0) * (inside - low) / (high - low)

    def _paint_line(self, painter: QPainter, look: theme.Tokens, picture: ScatterPicture) -> None:
        zone = [self._x(limit) for limit in picture.zone_mm]
        band = QRectF(zone[0], _AXIS_Y - 18, zone[1] - zone[0], 36)
        painter.fillRect(band, theme.colour(look.zone))
        painter.setPen(QPen(theme.colour(look.edge), 1))
        for x, limit in zip(zone, picture.zone_mm, strict=True):
            if math.isfinite(limit):
                painter.drawLine(QPointF(x, band.top()), QPointF(x, band.bottom()))
        painter.setFont(theme.font(theme.CAPTION))
        painter.setPen(theme.colour(look.muted))
        metrics = QFontMetricsF(painter.font())
        word = metrics.elidedText(picture.feel, Qt.TextElideMode.ElideRight, max(band.width() - 6, 0))
        painter.drawText(QRectF(band.left(), 1, band.width(), 16), Qt.AlignmentFlag.AlignCenter, word)
        painter.setPen(QPen(theme.colour(look.edge), 1))
        painter.drawLine(QPointF(0, _AXIS_Y), QPointF(self.width(), _AXIS_Y))
        low, high = picture.span_mm
        if low < 0 < high:
            painter.setPen(QPen(theme.colour(look.muted), 1, Qt.PenStyle.DotLine))
            painter.drawLine(QPointF(self._x(0), band.top()), QPointF(self._x(0), band.bottom()))
        self._paint_spans(painter, look, picture)
        self._paint_numbers(painter, look, picture)

    def _paint_spans(self, painter: QPainter, look: theme.Tokens, picture: ScatterPicture) -> None:
        ink = theme.colour(look.text)
        worst, likely = ([self._x(v) for v in pair] for pair in (picture.worst_mm, picture.likely_mm))
        painter.setPen(QPen(ink, 1.5))
        painter.drawLine(QPointF(worst[0], _AXIS_Y), QPointF(worst[1], _AXIS_Y))
        for x in worst:
            painter.drawLine(QPointF(x, _AXIS_Y - 7), QPointF(x, _AXIS_Y + 7))
        painter.fillRect(QRectF(likely[0], _AXIS_Y - 4, max(likely[1] - likely[0], 1.0), 8), ink)
        asked = self._x(picture.asked_mm)
        painter.setPen(QPen(theme.colour(look.panel), 4))
        painter.drawLine(QPointF(asked, _AXIS_Y - 10), QPointF(asked, _AXIS_Y + 10))
        painter.setPen(QPen(theme.colour(look.accent), 2))
        painter.drawLine(QPointF(asked, _AXIS_Y - 12), QPointF(asked, _AXIS_Y + 12))

    def _paint_numbers(self, painter: QPainter, look: theme.Tokens, picture: ScatterPicture) -> None:
        """The ends of the worst case below the line, each where it does not touch the other."""
        painter.setFont(theme.font(theme.CAPTION))
        painter.setPen(theme.colour(look.text))
        metrics = QFontMetricsF(painter.font())
        texts = [format_length(value, self._unit, with_unit=False) for value in picture.worst_mm]
        widths = [metrics.horizontalAdvance(text) for text in texts]
        lefts = [self._x(v) - w / 2 for v, w in zip(picture.worst_mm, widths, strict=True)]
        lefts[0] = min(max(lefts[0], 0.0), self.width() - widths[0] - widths[1] - 10)
        lefts[1] = min(max(lefts[1], lefts[0] + widths[0] + 10), self.width() - widths[1])
        for left, text in zip(lefts, texts, strict=True):
            painter.drawText(QPointF(left, _AXIS_Y + 31), text)

    # --- the bar of shares

    def _paint_shares(self, painter: QPainter, look: theme.Tokens, picture: ScatterPicture) -> None:
        fills = (
            (look.tight, Qt.BrushStyle.BDiagPattern, "T", picture.words[0]),
            (look.on, Qt.BrushStyle.SolidPattern, "O", picture.feel),
            (look.loose, Qt.BrushStyle.Dense5Pattern, "L", picture.words[1]),
        )
        left, width = 0.0, float(self.width())
        for share, (ink, pattern, letter, _) in zip(picture.shares, fills, strict=True):
            piece = QRectF(left, _BAR_Y, width * share, _BAR_PX)
            left += piece.width()
            if piece.width() < 0.5:
                continue
            painter.fillRect(piece, theme.colour(look.field))
            painter.fillRect(piece, QBrush(theme.colour(ink), pattern))
            painter.setPen(QPen(theme.colour(ink), 1.5))
            painter.drawRect(piece.adjusted(0.75, 0.75, -0.75, -0.75))
            if piece.width() >= _LETTER_PX:
                self._paint_letter(painter, look, piece, letter)
        self._paint_percentages(painter, look, picture)

    @staticmethod
    def _paint_letter(painter: QPainter, look: theme.Tokens, piece: QRectF, letter: str) -> None:
        square = QRectF(piece.center().x() - 7, piece.center().y() - 7, 14, 14)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.colour(look.field))
        painter.drawRoundedRect(square, 3, 3)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(theme.colour(look.text))
        painter.setFont(theme.font(theme.CAPTION))
        painter.drawText(square, Qt.AlignmentFlag.AlignCenter, letter)

    def _paint_percentages(self, painter: QPainter, look: theme.Tokens, picture: ScatterPicture) -> None:
        """Letter, percentage and word of each share, at the left, the middle and the right."""
        painter.setFont(theme.font(theme.CAPTION))
        painter.setPen(theme.colour(look.text))
        area = QRectF(0, _BAR_Y + _BAR_PX + 4, self.width(), 18)
        sides = (Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignHCenter, Qt.AlignmentFlag.AlignRight)
        words = (picture.words[0], picture.feel, picture.words[1])
        for letter, share, word, side in zip("TOL", picture.shares, words, sides, strict=True):
            painter.drawText(area, int(side), f"{letter} {100 * share:.1f} % {word}")
