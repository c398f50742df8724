"""A box for one of several, looking like the box for lengths; its choices open as a list below it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF, QWheelEvent
from PySide6.QtWidgets import QComboBox, QStyledItemDelegate, QWidget

from inlayfit.app import theme

_HEIGHT_PX = 34
_ARROW_PX = 26
_MARGIN_PX = 8


class ListedBox(QComboBox):
    """A choice."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("listed")
        self.setFont(theme.font(theme.BASE))
        self.setMinimumHeight(_HEIGHT_PX)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setItemDelegate(QStyledItemDelegate(self))

    def sizeHint(self) -> QSize:
        asked = super().sizeHint().width()
        if self.sizeAdjustPolicy() is QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon:
            return QSize(asked, _HEIGHT_PX)
        words = [self.fontMetrics().horizontalAdvance(self.itemText(n)) for n in range(self.count())]
        return QSize(max(asked, max(words, default=0) + _MARGIN_PX + _ARROW_PX), _HEIGHT_PX)

    def minimumSizeHint(self) -> QSize:
        return QSize(min(super().minimumSizeHint().width(), self.sizeHint().width()), _HEIGHT_PX)

    def showPopup(self) -> None:
        """Open the list; where nothing is chosen yet, its first row is lit, from which the arrows go on."""
        super().showPopup()
        if self.currentIndex() < 0:
            self.view().setCurrentIndex(self.model().index(0, self.modelColumn()))

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()  # it scrolls the page; a choice is never changed by chance

    def paintEvent(self, _event: QPaintEvent) -> None:
        look = theme.tokens_of(self)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width = theme.FOCUS_RING_PX if self.hasFocus() else 1
        ring = QRectF(self.rect()).adjusted(width / 2, width / 2, -width / 2, -width / 2)
        painter.setPen(QPen(theme.colour(look.focus if self.hasFocus() else look.edge), width))
        painter.setBrush(theme.colour(look.field if self.isEnabled() else look.panel))
        painter.drawRoundedRect(ring, theme.RADIUS_PX, theme.RADIUS_PX)
        ink = look.text if self.isEnabled() and self.currentIndex() >= 0 else look.muted
        self._paint_words(painter, ink)
        self._paint_arrow(painter, look)
        painter.end()

    def _paint_words(self, painter: QPainter, ink: str) -> None:
        left = _MARGIN_PX
        icon = self.itemIcon(self.currentIndex())
        if not icon.isNull():
            size = self.iconSize()
            icon.paint(painter, left, (self.height() - size.height()) // 2, size.width(), size.height())
            left += size.width() + 6
        words = self.currentText() if self.currentIndex() >= 0 else self.placeholderText()
        room = self.width() - left - _ARROW_PX
        painter.setPen(theme.colour(ink))
        short = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, room)
        area = QRectF(left, 0, room, self.height())
        painter.drawText(area, int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft), short)

    def _paint_arrow(self, painter: QPainter, look: theme.Tokens) -> None:
        x, y = self.width() - _ARROW_PX / 2 - 1, self.height() / 2
        painter.setPen(
            QPen(theme.colour(look.text if self.isEnabled() else look.edge), 1.6, c=Qt.PenCapStyle.RoundCap)
        )
        painter.drawPolyline(QPolygonF([QPointF(x - 4, y - 2), QPointF(x, y + 2), QPointF(x + 4, y - 2)]))
