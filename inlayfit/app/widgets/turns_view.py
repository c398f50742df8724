"""The plug as it may be held: small pictures of every turn and flip that looks alike.

Each shows the outline with a dot where the drawn plug has its match mark, so the eye sees how it was turned,
and below it the motion and whether it goes in: a tick, or an M where a mark is compulsory.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import shapely
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPaintEvent, QPen, QPolygonF, QTransform
from PySide6.QtWidgets import QSizePolicy, QWidget

from inlayfit.app import theme
from inlayfit.geometry.region import Region

_PICTURE_PX = 40.0
_CELL_PX = 68.0
_HEIGHT_PX = 82
MOST_WAYS = 4
"""So many lookalikes are drawn; the sentence beside them counts the rest."""


@dataclass(frozen=True, slots=True)
class Way:
    """One way to hold the plug.

    Attributes:
        turn_rad: counter-clockwise.
        is_flipped: mirrored left and right before it is turned.
        goes_in: whether it goes in like that.
        words: what is done, short.
    """

    turn_rad: float
    is_flipped: bool
    goes_in: bool
    words: str


class TurnsView(QWidget):
    """The pictures, the plug as drawn first."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._path = QPainterPath()
        self._mark = QPointF()
        self._ways: tuple[Way, ...] = ()
        self.setAccessibleName(self.tr("Ways to hold the plug that look alike"))
        self.setFixedHeight(_HEIGHT_PX)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(round(_CELL_PX * (1 + len(self._ways))), _HEIGHT_PX)

    def show_ways(self, plug: Region, ways: tuple[Way, ...], said: str) -> None:
        """Show a plug and its lookalikes; `said` is the same for a screen reader."""
        self._path, self._mark = _picture(plug)
        self._ways = ways[:MOST_WAYS]
        self.setAccessibleDescription(said)
        self.setToolTip(said)
        self.updateGeometry()
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        look = theme.tokens_of(self)
        ways = (Way(0.0, False, True, self.tr("as drawn")), *self._ways)
        room = min(_CELL_PX, self.width() / len(ways))
        for number, way in enumerate(ways):
            cell = QRectF(number * room, 0, room, _HEIGHT_PX)
            self._paint_way(painter, look, cell, way, is_drawn=number == 0)
        painter.end()

    def _paint_way(
        self, painter: QPainter, look: theme.Tokens, cell: QRectF, way: Way, *, is_drawn: bool
    ) -> None:
        painter.save()
        painter.translate(cell.center().x(), _PICTURE_PX / 2 + 2)
        turned = QTransform().rotate(-math.degrees(way.turn_rad)).scale(-1 if way.is_flipped else 1, 1)
        painter.setPen(QPen(theme.colour(look.text if is_drawn else look.muted), 1.2))
        painter.setBrush(theme.colour(look.plug_tint))
        painter.drawPath(turned.map(self._path))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.colour(look.text))
        painter.drawEllipse(turned.map(self._mark), 3, 3)
        painter.restore()
        if not is_drawn:
            at = QPointF(cell.center().x() + _PICTURE_PX / 2 + 4, 10)
            _paint_sign(painter, look, at, goes_in=way.goes_in)
        painter.setFont(theme.font(theme.CAPTION))
        painter.setPen(theme.colour(look.text if is_drawn else look.muted))
        words = QRectF(cell.left(), _PICTURE_PX + 7, cell.width(), 32)
        centred = Qt.AlignmentFlag.AlignHCenter | Qt.TextFlag.TextWordWrap
        painter.drawText(words, int(centred), way.words)


def _paint_sign(painter: QPainter, look: theme.Tokens, at: QPointF, *, goes_in: bool) -> None:
    """A tick, or an M in a square."""
    if goes_in:
        painter.setPen(QPen(theme.colour(look.on), 2, c=Qt.PenCapStyle.RoundCap))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        corners = ((-5, 0), (-1, 4), (5, -4))
        painter.drawPolyline(QPolygonF([QPointF(at.x() + x, at.y() + y) for x, y in corners]))
        return
    square = QRectF(at.x() - 8, at.y() - 8, 16, 16)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.colour(look.text))
    painter.drawRoundedRect(square, 3, 3)
    painter.setPen(theme.colour(look.panel))
    painter.setFont(theme.font(theme.CAPTION))
    painter.drawText(square, Qt.AlignmentFlag.AlignCenter, "M")


def _picture(plug: Region) -> tuple[QPainterPath, QPointF]:
    """The plug about its centroid, y down, fitting whatever way it is turned; and a place for its mark."""
    path = QPainterPath()
    if plug.is_empty:
        return path, QPointF()
    centre = np.array([plug.shape.centroid.x, plug.shape.centroid.y])
    reach = float(np.hypot(*(shapely.get_coordinates(plug.shape) - centre).T).max())
    scale = _PICTURE_PX / 2 / max(reach, 1e-9)
    for ring in shapely.get_rings(shapely.get_parts(shapely.simplify(plug.shape, 0.4 / scale))):
        points = (shapely.get_coordinates(ring) - centre) * (scale, -scale)
        path.addPolygon(QPolygonF([QPointF(x, y) for x, y in points.tolist()]))
    return path, _mark_place(plug, centre, scale)


def _mark_place(plug: Region, centre: np.ndarray[tuple[int], np.dtype[np.float64]], scale: float) -> QPointF:
    """Inside the plug and off its middle, towards the upper right, so that a turn shows."""
    x0, y0, x1, y1 = plug.bounds
    inside = shapely.buffer(plug.shape, -0.08 * min(x1 - x0, y1 - y0))
    inner = plug.shape if inside.is_empty else inside
    corner = shapely.Point(x1, y1)
    nearest = shapely.get_coordinates(shapely.shortest_line(inner, corner))[0]
    x, y = ((nearest - centre) * (scale, -scale)).tolist()
    return QPointF(x, y)
