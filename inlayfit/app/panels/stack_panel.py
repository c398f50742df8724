"""The stack: a section through the fitting, and the numbers that make it proud, flush or below.

The picture's heights are exaggerated and labelled so; widths mean nothing. The gauge beside it shows the
range that the spread of the readings allows.
"""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt, Slot
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from inlayfit.app import theme
from inlayfit.app.canvas.reading_text import signed
from inlayfit.app.session import Change, Session
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.document.edits import set_stack
from inlayfit.document.state import StackNumbers
from inlayfit.units import Unit, format_length

FLUSH_MM = 0.01
"""Within this of the host face a finger does not feel a step (common practice, from memory)."""


def seat_word(proud_mm: float) -> str:
    """Proud, flush or below."""
    if abs(proud_mm) <= FLUSH_MM:
        return "Flush"
    return "Proud" if proud_mm > 0 else "Below"


class StackPicture(QWidget):
    """The section."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._stack = StackNumbers()
        self._unit = Unit.MM
        self._names = ("plug", "pocket")
        self.setFixedHeight(112)
        self.setAccessibleName(self.tr("Section through the fitting"))

    def show_stack(self, stack: StackNumbers, unit: Unit, *, plug: str, host: str) -> None:
        """Draw other numbers."""
        self._stack, self._unit, self._names = stack, unit, (plug, host)
        low, high = stack.range_mm
        self.setAccessibleDescription(
            f"{plug} {format_length(stack.insert_mm, unit)}, {stack.glue} "
            f"{format_length(stack.glue_mm, unit)}, depth {format_length(stack.depth_mm, unit)}: "
            f"{seat_word(stack.proud_mm)}, {signed(low, unit)} to {signed(high, unit)}"
        )
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(320, 140)

    def paintEvent(self, _event: QPaintEvent) -> None:
        look = theme.tokens_of(self)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width, face, depth_px = self.width() - 96.0, 28.0, 58.0
        left, right = 0.22 * width, 0.80 * width
        floor = face + depth_px
        host = QPolygonF(
            [QPointF(x, y) for x, y in (
                (0, face), (left, face), (left, floor), (right, floor), (right, face), (width, face),
                (width, floor + 22), (0, floor + 22),
            )]
        )  # fmt: skip
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.colour(look.host_tint))
        painter.drawPolygon(host)
        painter.setPen(QPen(theme.colour(look.host_line), 1.5))
        painter.drawPolyline(QPolygonF([host.at(i) for i in range(6)]))
        self._paint_plug(painter, look, QRectF(left + 5, face, right - left - 10, depth_px), floor)
        self._paint_gauge(painter, look, face, width)

    def _paint_plug(self, painter: QPainter, look: theme.Tokens, room: QRectF, floor: float) -> None:
        glue_px = 7.0 if self._stack.glue_mm > 0 else 0.0
        proud_px = max(-18.0, min(22.0, self._stack.proud_mm / self._gauge_mm() * 20.0))
        body = QRectF(
            room.left(), room.top() - proud_px, room.width(), floor - glue_px - room.top() + proud_px
        )
        if glue_px:
            painter.fillRect(
                QRectF(room.left() + 4, floor - glue_px, room.width() - 8, glue_px),
                theme.colour(look.accent, 0.55),
            )
        painter.setPen(QPen(theme.colour(look.text), 1.2))
        painter.setBrush(theme.colour(look.plug_tint))
        chamfer = 7.0
        painter.drawPolygon(
            QPolygonF(
                [
                    body.topLeft(),
                    body.topRight(),
                    body.bottomRight() - QPointF(0, chamfer),
                    body.bottomRight() - QPointF(chamfer, 0),
                    body.bottomLeft() + QPointF(chamfer, 0),
                    body.bottomLeft() - QPointF(0, chamfer),
                ]
            )
        )
        painter.setFont(theme.font(theme.CAPTION))
        painter.setPen(theme.colour(look.text))
        words = painter.fontMetrics().elidedText(
            self._names[0], Qt.TextElideMode.ElideRight, int(body.width() - 12)
        )
        painter.drawText(body, int(Qt.AlignmentFlag.AlignCenter), words)
        painter.setPen(theme.colour(look.host_line))
        below = QRectF(room.left(), floor + 3, room.width(), 18)
        painter.drawText(below, int(Qt.AlignmentFlag.AlignCenter), self.tr("floor"))

    def _gauge_mm(self) -> float:
        """What 20 px of the gauge mean."""
        low, high = self._stack.range_mm
        return max(0.02, abs(low), abs(high))

    def _paint_gauge(self, painter: QPainter, look: theme.Tokens, face: float, left: float) -> None:
        low, high = self._stack.range_mm
        scale = 20.0 / self._gauge_mm()
        x = left + 18
        pen = QPen(theme.colour(look.host_line), 1.2, Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.drawLine(QLineF(left, face, self.width(), face))
        painter.setPen(QPen(theme.colour(look.text), 1.6))
        top, bottom = face - high * scale, face - low * scale
        painter.drawLine(QLineF(x, top, x, bottom))
        for y in (top, bottom):
            painter.drawLine(QLineF(x - 5, y, x + 5, y))
        painter.setBrush(theme.colour(look.text))
        painter.drawEllipse(QPointF(x, face - self._stack.proud_mm * scale), 3.5, 3.5)
        painter.setFont(theme.font(theme.CAPTION))
        painter.drawText(QPointF(x + 10, top + 4 if bottom - top > 16 else top - 3), signed(high, self._unit))
        painter.drawText(
            QPointF(x + 10, bottom + 5 if bottom - top > 16 else bottom + 13), signed(low, self._unit)
        )
        painter.setPen(theme.colour(look.muted))
        painter.drawText(QPointF(left + 8, self.height() - 8), self.tr("not to scale"))


class StackPanel(QWidget):
    """The section with its boxes."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        title = QLabel(self.tr("Stack"))
        title.setFont(theme.font(theme.TITLE))
        self.picture = StackPicture()
        self._word = QLabel()
        self._word.setFont(theme.font(theme.VERDICT))
        self._range = QLabel()
        self._range.setProperty("muted", True)
        self.depth_box = self._length(self.tr("Pocket depth"))
        self.insert_box = self._length(self.tr("Plug thickness"))
        self.spread_box = self._length(self.tr("Readings vary by ±"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(8)
        grid.setVerticalSpacing(2)
        boxes = (
            (self.tr("Depth"), self.depth_box),
            (self.tr("Thickness"), self.insert_box),
            (self.tr("Varies by ±"), self.spread_box),
        )
        for column, (words, box) in enumerate(boxes):
            label = QLabel(words)
            label.setProperty("muted", True)
            label.setBuddy(box)
            grid.addWidget(label, 0, column)
            grid.addWidget(box, 1, column)
        said = QHBoxLayout()
        said.setSpacing(10)
        said.addWidget(title)
        said.addWidget(self._word)
        said.addWidget(self._range, 1)
        column_layout = QVBoxLayout(self)
        column_layout.setContentsMargins(0, 0, 0, 0)
        column_layout.setSpacing(6)
        column_layout.addLayout(said)
        column_layout.addWidget(self.picture)
        column_layout.addLayout(grid)
        session.state_changed.connect(self._on_session_state_changed)
        self._show()

    def _length(self, name: str) -> LengthBox:
        box = LengthBox()
        box.setAccessibleName(name)
        box.set_limits_mm(0, 1000)
        box.set_step_mm(0.01)
        box.setMinimumWidth(100)
        box.length_edited.connect(self._on_box_length_edited)
        return box

    def _on_box_length_edited(self, _mm: float) -> None:
        lead = self._session.state.lead
        if lead is None:
            return
        stack = replace(
            lead.stack,
            depth_mm=self.depth_box.mm,
            insert_mm=self.insert_box.mm,
            spread_mm=self.spread_box.mm,
        )
        self._session.do(lambda state: set_stack(state, stack), initiator=self)

    @Slot(object)
    def _on_session_state_changed(self, _change: Change) -> None:
        self._show()

    def _show(self) -> None:
        state = self._session.shown
        lead = state.lead
        self.setEnabled(lead is not None)
        stack = lead.stack if lead is not None else StackNumbers()
        plug = lead.plug.material or lead.plug.name or "plug" if lead is not None else "plug"
        host = lead.pocket.material or lead.pocket.name or "host" if lead is not None else "host"
        self.picture.show_stack(stack, state.unit, plug=plug, host=host)
        for box, value in (
            (self.depth_box, stack.depth_mm),
            (self.insert_box, stack.insert_mm),
            (self.spread_box, stack.spread_mm),
        ):
            box.set_unit(state.unit)
            box.set_length(value)
        low, high = stack.range_mm
        self._word.setText(self.tr(seat_word(stack.proud_mm)))
        expected = signed(stack.proud_mm, state.unit)
        between = self.tr("{0}, between {1} and {2}")
        self._range.setText(between.format(expected, signed(low, state.unit), signed(high, state.unit)))
