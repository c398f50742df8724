"""The sign of a severity, the same wherever something is said to be wrong."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from inlayfit.app import theme
from inlayfit.finding import Severity


class SeveritySign(QWidget):
    """Block, warn or note as a shape: an octagon, a triangle, a ring; a tick when all is well."""

    def __init__(self, severity: Severity | None = None, *, size: int = 20) -> None:
        super().__init__()
        self._severity = severity
        self._size = size
        self.setFixedSize(size, size)

    def show_severity(self, severity: Severity | None) -> None:
        """Another shape; None is the tick."""
        if severity is not self._severity:
            self._severity = severity
            self.update()

    def sizeHint(self) -> QSize:
        return QSize(self._size, self._size)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_severity(painter, self._severity, self._size, theme.tokens_of(self))


def paint_severity(painter: QPainter, severity: Severity | None, size: float, look: theme.Tokens) -> None:
    """Paint a severity's sign into a square of that size at the origin."""
    unit = size / 20
    painter.save()
    painter.scale(unit, unit)
    if severity is Severity.BLOCK:
        points = [(6.3, 1), (13.7, 1), (19, 6.3), (19, 13.7), (13.7, 19), (6.3, 19), (1, 13.7), (1, 6.3)]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.colour(look.blocks))
        painter.drawPolygon(_polygon(points))
        painter.fillRect(5, 9, 10, 2, theme.colour(look.on_blocks))
    elif severity is Severity.WARN:
        painter.setPen(QPen(theme.colour(look.warns), 1.7, j=Qt.PenJoinStyle.RoundJoin))
        painter.drawPolygon(_polygon([(10, 2), (18.5, 17.5), (1.5, 17.5)]))
        painter.fillRect(9, 7, 2, 6, theme.colour(look.warns))
        painter.fillRect(9, 14, 2, 2, theme.colour(look.warns))
    elif severity is Severity.NOTE:
        painter.setPen(QPen(theme.colour(look.text), 1.7))
        painter.drawEllipse(2, 2, 16, 16)
        painter.fillRect(9, 5, 2, 2, theme.colour(look.text))
        painter.fillRect(9, 9, 2, 6, theme.colour(look.text))
    else:
        painter.setPen(QPen(theme.colour(look.on), 2.4, c=Qt.PenCapStyle.RoundCap))
        painter.drawPolyline(_polygon([(3.5, 10.5), (8, 15), (16.5, 5.5)]))
    painter.restore()


def _polygon(points: list[tuple[float, float]]) -> QPolygonF:
    return QPolygonF([QPointF(x, y) for x, y in points])
