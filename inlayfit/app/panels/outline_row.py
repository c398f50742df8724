"""How an outline stands in the list: its picture, its name, and its size, holes and layer below."""

from __future__ import annotations

import shapely
from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen, QPolygonF
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from inlayfit.app import theme
from inlayfit.document.outlines import Outline

PICTURE_ROLE = int(Qt.ItemDataRole.UserRole) + 1
DETAIL_ROLE = int(Qt.ItemDataRole.UserRole) + 2
LEADS_ROLE = int(Qt.ItemDataRole.UserRole) + 3
_ROW_PX = 52
_SIDE_PX = 40.0


def outline_picture(outline: Outline) -> QPainterPath:
    """The outline, coarse, about the origin in a square of 40 px, y down."""
    shape = outline.region.shape
    x0, y0, x1, y1 = shape.bounds
    scale = (_SIDE_PX - 4) / max(x1 - x0, y1 - y0, 1e-9)
    path = QPainterPath()
    for polygon in shapely.get_parts(shapely.simplify(shape, 0.5 / scale)):
        for ring in (polygon.exterior, *polygon.interiors):
            points = (shapely.get_coordinates(ring) - ((x0 + x1) / 2, (y0 + y1) / 2)) * (scale, -scale)
            path.addPolygon(QPolygonF([QPointF(x, y) for x, y in points.tolist()]))
    return path


class OutlineRow(QStyledItemDelegate):
    """Paints the rows of the list of outlines; a row is renamed by its editor as usual."""

    def sizeHint(self, _option: QStyleOptionViewItem, _index: QModelIndex | QPersistentModelIndex) -> QSize:
        return QSize(200, _ROW_PX)

    def updateEditorGeometry(
        self,
        editor: QWidget,
        option: QStyleOptionViewItem,
        _index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        area = option.rect
        editor.setGeometry(area.adjusted(54, 8, -8, -8))

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        widget = option.widget
        state = option.state
        area = QRectF(option.rect)
        look = theme.tokens_of(widget)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        is_chosen = bool(state & QStyle.StateFlag.State_Selected)
        frame = area.adjusted(1, 1, -1, -1)
        if is_chosen or state & QStyle.StateFlag.State_MouseOver:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(theme.colour(look.accent_soft if is_chosen else look.hover))
            painter.drawRoundedRect(frame, 4, 4)
        if state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(theme.colour(look.focus), theme.FOCUS_RING_PX))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(frame, 4, 4)
        self._paint_picture(painter, look, area, index, is_chosen=is_chosen)
        self._paint_words(painter, look, area, index)
        painter.restore()

    @staticmethod
    def _paint_picture(
        painter: QPainter,
        look: theme.Tokens,
        area: QRectF,
        index: QModelIndex | QPersistentModelIndex,
        *,
        is_chosen: bool,
    ) -> None:
        picture = index.data(PICTURE_ROLE)
        if not isinstance(picture, QPainterPath):
            return
        painter.save()
        painter.translate(area.left() + 28, area.center().y())
        painter.setPen(QPen(theme.colour(look.text if is_chosen else look.muted), 1.2))
        painter.setBrush(theme.colour(look.plug_tint) if is_chosen else Qt.BrushStyle.NoBrush)
        painter.drawPath(picture)
        painter.restore()

    def _paint_words(
        self,
        painter: QPainter,
        look: theme.Tokens,
        area: QRectF,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        room = area.adjusted(58, 8, -8, -6)
        if index.data(LEADS_ROLE):
            painter.setFont(theme.font(theme.CAPTION))
            painter.setPen(theme.colour(look.muted))
            painter.drawText(room, int(Qt.AlignmentFlag.AlignRight), self.tr("leads"))
            room.adjust(0, 0, -44, 0)
        for words, size, ink, top in (
            (str(index.data(Qt.ItemDataRole.DisplayRole)), theme.TITLE, look.text, 0.0),
            (str(index.data(DETAIL_ROLE)), theme.CAPTION, look.muted, 19.0),
        ):
            painter.setFont(theme.font(size))
            painter.setPen(theme.colour(ink))
            width = int(room.width() if top == 0 else area.width() - 66)
            short = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, width)
            painter.drawText(QPointF(room.left(), room.top() + 13 + top), short)
