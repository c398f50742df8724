"""The stack as a section one can take hold of: host face, plug, tape or glue, floor.

Widths mean nothing and heights are exaggerated: the picture says so. The step between the plug's top and
the host face, and the gauge beside it, share one scale, so dragging a face by a finger's breadth changes its
height by hundredths of a millimetre.

    drag the plug's top   changes its thickness        drag the floor   changes the depth
    drag the tape's top     changes the tape
    Left, Right             take hold of another face
    Up, Down                move it that way by 0.01 mm, with Shift by 0.1 mm: the floor up is less depth
    Enter, double click     ask for its box, to type the number
    Esc                     takes a drag back

The view knows no session: a drag only says what it would be; whoever owns the numbers passes them in again.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from inlayfit.app import theme
from inlayfit.app.canvas.reading_text import signed
from inlayfit.app.widgets.paint_stack import (
    StackPart,
    StackSection,
    face_lines,
    gauge_scale,
    height_title,
    is_off_target,
    paint_section,
    picture_part,
    section_shape,
)
from inlayfit.units import Unit, format_length

_STEP_MM, _LARGE_STEP_MM = 0.01, 0.1
_SMALLEST_MM = 0.001
_DECIMALS = 3


class StackView(QWidget):
    """Shows a `StackSection`."""

    height_dragging = Signal(object, float)
    """A `StackPart` and its height in mm, while it is dragged."""
    height_released = Signal(object, float)
    """The same, once at the end of a gesture that changed it."""
    part_activated = Signal(object)
    """A `StackPart` whose number is to be typed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._section = StackSection()
        self._unit = Unit.MM
        self._stale = False
        self._held = StackPart.PLUG
        self._hovered: StackPart | None = None
        self._drag: tuple[float, float, float] | None = None
        self._dragged_mm: float | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumSize(300, 190)
        self.setAccessibleName(self.tr("Stack: section through the fitting, not to scale"))
        self._describe()

    # --- what is shown ---

    @property
    def section(self) -> StackSection:
        """What is shown."""
        return self._section

    @property
    def held_part(self) -> StackPart:
        """The face that the arrow keys move."""
        return self._held

    def set_section(self, section: StackSection) -> None:
        """Show other heights."""
        if section == self._section:
            return
        self._section = section
        self._describe()
        self.update()

    def set_unit(self, unit: Unit) -> None:
        """Show lengths in another unit."""
        if unit is self._unit:
            return
        self._unit = unit
        self._describe()
        self.update()

    def set_stale(self, stale: bool) -> None:
        """Dim the numbers while they are a preview."""
        self._stale = stale
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(360, 212)

    def _describe(self) -> None:
        section, proud = self._section, self._section.stack.proud
        heights = ", ".join(
            f"{section.word(part)} {format_length(section.height_mm(part), self._unit)}" for part in StackPart
        )
        if section.coating_words:
            heights = f"{heights}, {section.coating_words}"
        low, middle, high = (signed(v, self._unit) for v in (proud.low_mm, proud.middle_mm, proud.high_mm))
        if is_off_target(section):
            middle = self.tr("{0}, {1} wanted").format(middle, signed(section.target_mm, self._unit))
        said = self.tr("{0}, {1}, between {2} and {3}. {4}. Arrow keys move the {5}.")
        held = section.word(self._held)
        self.setAccessibleDescription(said.format(height_title(section), middle, low, high, heights, held))

    # --- gestures ---

    def part_at(self, at: QPointF) -> StackPart | None:
        """The face that a press would take hold of: the nearest within reach."""
        shape = section_shape(QRectF(self.rect()), self._section)
        reach = theme.SMALLEST_TARGET_PX / 2
        near = [
            (abs(line.y1() - at.y()), part)
            for part, line in face_lines(shape, self._section).items()
            if line.x1() - 4 <= at.x() <= line.x2() + 4 and abs(line.y1() - at.y()) <= reach
        ]
        return min(near, key=lambda pair: pair[0])[1] if near else None

    def mousePressEvent(self, event: QMouseEvent) -> None:
        part = self.part_at(event.position())
        if part is None or event.button() != Qt.MouseButton.LeftButton:
            event.ignore()
            return
        self._hold(part)
        scale = gauge_scale(self._section)
        self._drag = event.position().y(), self._section.height_mm(part), scale
        self._dragged_mm = None

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._drag is None:
            self._hover(self.part_at(event.position()))
            return
        start_y, start_mm, scale = self._drag
        up = (start_y - event.position().y()) / scale
        self._say_dragging(start_mm + self._grown_by(up))

    def _grown_by(self, up: float) -> float:
        """How much the held height grows when its face moves up."""
        return -up if self._held is StackPart.DEPTH else up

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._end_gesture()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        part = self.part_at(event.position())
        if part is not None:
            self.part_activated.emit(part)

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self._hover(None)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        large = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        step = _LARGE_STEP_MM if large else _STEP_MM
        parts = list(StackPart)
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            by = 1 if key == Qt.Key.Key_Right else -1
            self._hold(parts[(parts.index(self._held) + by) % len(parts)])
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            up = step if key == Qt.Key.Key_Up else -step
            self._say_dragging(self._section.height_mm(self._held) + self._grown_by(up))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.part_activated.emit(self._held)
        elif key == Qt.Key.Key_Escape and self._drag is not None:
            self._say_dragging(self._drag[1])
            self._drag = self._dragged_mm = None
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        super().keyReleaseEvent(event)
        if not event.isAutoRepeat() and event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self._end_gesture()

    def _say_dragging(self, height_mm: float) -> None:
        lowest = 0.0 if self._held is StackPart.BED else _SMALLEST_MM
        self._dragged_mm = round(max(lowest, height_mm), _DECIMALS)
        self.height_dragging.emit(self._held, self._dragged_mm)

    def _end_gesture(self) -> None:
        dragged, start = self._dragged_mm, None if self._drag is None else self._drag[1]
        self._drag = self._dragged_mm = None
        if dragged is not None and dragged != start:
            self.height_released.emit(self._held, dragged)

    def _hold(self, part: StackPart) -> None:
        self._held = part
        self._describe()
        self.update()

    def _hover(self, part: StackPart | None) -> None:
        if part is not self._hovered:
            self._hovered = part
            self.setCursor(Qt.CursorShape.SizeVerCursor if part is not None else Qt.CursorShape.ArrowCursor)
            self.setToolTip("" if part is None else self._section.tip(part, self._unit))
            self.update()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.StyleChange):
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        held = self._held if self.hasFocus() else self._hovered
        look = theme.tokens_of(self)
        paint_section(
            painter, QRectF(self.rect()), self._section, look, self._unit, held=held, dimmed=self._stale
        )
        if self.hasFocus():
            painter.setPen(QPen(theme.colour(look.focus), theme.FOCUS_RING_PX))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            ring = picture_part(QRectF(self.rect())).adjusted(1, 1, -1, -1)
            painter.drawRoundedRect(ring, theme.RADIUS_PX, theme.RADIUS_PX)
        painter.end()
