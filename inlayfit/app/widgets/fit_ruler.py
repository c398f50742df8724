"""The fit ruler: clearance per side in whole micrometres, with feel words as zones and trials as flags.

Keys: arrows 1 µm, Shift+arrows 10 µm, Page Up and Down 50 µm, Home and End the ends. Dragging with Shift held
moves a tenth as far; Esc during a drag takes it back. The suggestion is a hollow caret that nothing moves but
its owner.

The handle follows a drag as often as a screen shows it, however often the mouse reports.

A drag, or a key held down, is one gesture: `value_dragging` on the way, and once at its end `value_released`,
or `taken_back` if it ended where it began.
"""

from __future__ import annotations

import math

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QSlider, QToolTip, QWidget

from inlayfit.app import theme
from inlayfit.app.pace import FRAME_MS, Pace
from inlayfit.app.widgets.feel_words import feel_test, feel_word
from inlayfit.app.widgets.paint_ruler import RulerLook, RulerPainter, band_rect, um_at, x_of
from inlayfit.app.widgets.ruler_marks import Bracket, TrialFlag
from inlayfit.fit.feel import SEED_ZONES, FeelZones
from inlayfit.units import Unit, format_per_side

LOWEST_UM, HIGHEST_UM = -70, 170
_STEP_UM, _LARGE_STEP_UM, _PAGE_UM = 1, 10, 50
_SNAP_PX = 5.0
_FINE = 0.1
_NOTCH = 120
_HOVERING = (QEvent.Type.HoverEnter, QEvent.Type.HoverMove, QEvent.Type.HoverLeave)
"""A slider paints itself anew at each of these; this one looks the same under the pointer."""


class FitRuler(QSlider):
    """A slider over clearance per side."""

    value_dragging = Signal(float)
    """Clearance in mm, while the gesture lasts."""
    value_released = Signal(float)
    """Clearance in mm, once at the end of a gesture that changed it."""
    taken_back = Signal()
    """A gesture ended as if it had not been: by Esc, or where it began."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._zones = SEED_ZONES
        self._trials: tuple[TrialFlag, ...] = ()
        self._bracket: Bracket | None = None
        self._suggestion_mm: float | None = None
        self._unit = Unit.MM
        self._stale = False
        self._gesture_start: int | None = None
        self._drag_from: tuple[float, float] | None = None
        self._painter = RulerPainter()
        self._following = Pace(self._follow, every_ms=FRAME_MS, parent=self)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setRange(LOWEST_UM, HIGHEST_UM)
        self.setSingleStep(_STEP_UM)
        self.setPageStep(_PAGE_UM)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(280, 100)
        self.setAccessibleName(self.tr("Clearance per side, micrometres"))
        self.valueChanged.connect(self._on_value_changed)
        self._describe()

    # --- what is shown ---

    @property
    def clearance_mm(self) -> float:
        """The value."""
        return self.value() / 1000

    def set_clearance_mm(self, clearance_mm: float) -> None:
        """Set the value, to the nearest micrometre, without a signal; the scale grows if it must."""
        value = round(clearance_mm * 1000)
        self.blockSignals(True)
        low, high = min(LOWEST_UM, _grown(value)), max(HIGHEST_UM, _grown(value))
        self.setRange(low, high)
        self.setValue(value)
        self.blockSignals(False)
        self._describe()
        self.update()

    def set_zones(self, zones: FeelZones) -> None:
        """Show feel words between these edges."""
        self._zones = zones
        self._describe()
        self.update()

    def set_trials(self, trials: tuple[TrialFlag, ...], *, bracket: Bracket | None = None) -> None:
        """Pin trials, and shade what lies between the too tight and the too loose."""
        self._trials, self._bracket = trials, bracket
        self._describe()
        self.update()

    def set_suggestion_mm(self, suggestion_mm: float | None) -> None:
        """Show the suggested clearance as a hollow caret. The value stays."""
        self._suggestion_mm = suggestion_mm
        self._describe()
        self.update()

    def set_unit(self, unit: Unit) -> None:
        """Letter the scale in another unit; the value stays in whole micrometres."""
        self._unit = unit
        self._describe()
        self.update()

    @property
    def feel_word(self) -> str:
        """The feel word at the value."""
        return self._zones.feel_at(self.clearance_mm).value

    def sizeHint(self) -> QSize:
        return QSize(900, 104)

    def minimumSizeHint(self) -> QSize:
        return QSize(280, 100)

    def _describe(self) -> None:
        value = format_per_side(self.clearance_mm, self._unit, with_unit=True)
        parts = [f"{value}, {feel_word(self._zones.feel_at(self.clearance_mm))}."]
        at = self.tr("{0} {1} at {2}.")
        parts += [at.format(t.key, t.word, format_per_side(t.clearance_mm, self._unit)) for t in self._trials]
        if self._suggestion_mm is not None:
            suggested = self.tr("Suggested: {0}.")
            parts.append(suggested.format(format_per_side(self._suggestion_mm, self._unit)))
        self.setAccessibleDescription(" ".join(parts))

    # --- gestures ---

    def _on_value_changed(self, value: int) -> None:
        self._describe()
        self.value_dragging.emit(value / 1000)
        if self._gesture_start is None:
            self.value_released.emit(value / 1000)

    def _begin_gesture(self) -> None:
        if self._gesture_start is None:
            self._gesture_start = self.value()

    def _end_gesture(self) -> None:
        self._follow()
        start, self._gesture_start = self._gesture_start, None
        self._drag_from = None
        self.setSliderDown(False)
        if start is not None and start != self.value():
            self.value_released.emit(self.clearance_mm)
        elif start is not None:
            self.taken_back.emit()

    def _cancel_gesture(self) -> None:
        start, self._gesture_start = self._gesture_start, None
        self._drag_from = None
        self.setSliderDown(False)
        if start is not None:
            self.set_clearance_mm(start / 1000)
            self.taken_back.emit()

    @property
    def is_dragging(self) -> bool:
        """Whether a gesture is under way."""
        return self._gesture_start is not None

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton:
            event.ignore()
            return
        self._begin_gesture()
        self.setSliderDown(True)
        x = event.position().x()
        handle = x_of(self._look(), self.value())
        if abs(x - handle) > theme.SMALLEST_TARGET_PX / 2:
            self.setValue(self._snapped_um(x))
        self._drag_from = (x, float(self.value()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._drag_from is None:
            return
        x, um = self._drag_from
        fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        here = event.position().x()
        moved = um + (um_at(self._look(), here) - um_at(self._look(), x)) * (_FINE if fine else 1.0)
        self._drag_from = (here, min(max(moved, float(self.minimum())), float(self.maximum())))
        self._following.ask()

    def _follow(self) -> None:
        """Bring the handle to where it was dragged."""
        if self._drag_from is not None:
            self.setValue(round(self._drag_from[1]))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton and self._drag_from is not None:
            self._end_gesture()

    def _snapped_um(self, x: float) -> int:
        """The value at a pixel, or a trial or suggestion close to it."""
        marks = [t.clearance_mm for t in self._trials]
        marks += [] if self._suggestion_mm is None else [self._suggestion_mm]
        look = self._look()
        near = [mm for mm in marks if abs(x_of(look, mm * 1000) - x) <= _SNAP_PX]
        nearest = min(near, key=lambda mm: abs(x_of(look, mm * 1000) - x), default=None)
        return round(um_at(look, x) if nearest is None else nearest * 1000)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.is_dragging:
            self._cancel_gesture()
            return
        steps = {
            Qt.Key.Key_Left: -1,
            Qt.Key.Key_Down: -1,
            Qt.Key.Key_Right: 1,
            Qt.Key.Key_Up: 1,
        }
        key = Qt.Key(event.key())
        large = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key in steps:
            self._begin_gesture()
            self.setValue(self.value() + steps[key] * (_LARGE_STEP_UM if large else _STEP_UM))
        elif key in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown, Qt.Key.Key_Home, Qt.Key.Key_End):
            self._begin_gesture()
            super().keyPressEvent(event)
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        super().keyReleaseEvent(event)
        if not event.isAutoRepeat() and self._drag_from is None:
            self._end_gesture()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """The wheel moves the value only where the ruler has the keyboard, so scrolling past is safe."""
        notches = event.angleDelta().y() or event.angleDelta().x()
        if not self.hasFocus() or not notches:
            event.ignore()
            return
        large = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        step = _LARGE_STEP_UM if large else _STEP_UM
        self.setValue(self.value() + round(notches / _NOTCH * step))
        event.accept()

    def event(self, event: QEvent) -> bool:
        if event.type() in _HOVERING:
            return True
        if event.type() == QEvent.Type.ToolTip:
            self._show_tool_tip(event)
            return True
        if event.type() == QEvent.Type.FocusOut and self.is_dragging:
            self._end_gesture()
        return super().event(event)

    def _show_tool_tip(self, event: QEvent) -> None:
        position = self.mapFromGlobal(self.cursor().pos())
        um = um_at(self._look(), position.x())
        feel = self._zones.feel_at(um / 1000)
        per_side = format_per_side(round(um) / 1000, self._unit, with_unit=True)
        text = f"{feel_word(feel)}: {feel_test(feel)}.\n{per_side}.\n" + self.tr(
            "How much room the plug has at each wall; overall is twice that."
        )
        QToolTip.showText(self.cursor().pos(), text, self)

    # --- painting ---

    def _look(self) -> RulerLook:
        return RulerLook(
            area=QRectF(self.rect()),
            low_um=self.minimum(),
            high_um=self.maximum(),
            value_um=self.value(),
            zones=self._zones,
            trials=self._trials,
            bracket=self._bracket,
            suggestion_um=None if self._suggestion_mm is None else self._suggestion_mm * 1000,
            unit=self._unit,
            focused=self.hasFocus(),
            pressed=self.isSliderDown(),
        )

    def handle_rect(self) -> QRectF:
        """Where the handle can be caught."""
        look = self._look()
        centre = QPointF(x_of(look, self.value()), band_rect(look).center().y())
        size = theme.SMALLEST_TARGET_PX
        return QRectF(centre.x() - size / 2, centre.y() - 22, size, 44)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        self._painter.paint(painter, self._look(), theme.tokens_of(self))
        painter.end()

    def changeEvent(self, event: QEvent) -> None:
        self._painter.forget()
        super().changeEvent(event)


def _grown(value_um: int) -> int:
    """An end of the scale a quarter beyond a value, a whole 50 µm; within the usual scale, the value."""
    if LOWEST_UM <= value_um <= HIGHEST_UM:
        return value_um
    return int(math.copysign(math.ceil(abs(value_um) * 1.25 / 50) * 50, value_um))
