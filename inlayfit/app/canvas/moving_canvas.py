"""A canvas that can be moved about: zoom and pan by wheel, touchpad, pinch, drag and keys.

What each does:
    wheel                    zooms about the pointer, or scrolls, as set; Ctrl+wheel always zooms
    two fingers on a touchpad  pan (they send pixel distances)
    pinch                    zooms about the fingers
    middle drag, Space+drag, drag on nothing   pan
    arrows                   pan a step, with Shift a large one;   + and − zoom;   Home shows everything

Pinch gestures arrive as such only on some systems; elsewhere as Ctrl+wheel, which does the same.
"""

from __future__ import annotations

import math

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QNativeGestureEvent, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QApplication, QWidget

from inlayfit.app.canvas.view_transform import Box, ViewTransform

_ZOOM_STEP = 1.25
_NOTCH = 120.0
_PAN_STEP_PX, _LARGE_PAN_STEP_PX = 40.0, 200.0
_MM_PER_INCH = 25.4
_EDGE_PX, _MARGIN_PX = 20.0, 36.0
_TINY_PX = 24.0
_COMING_BACK = (Qt.FocusReason.ActiveWindowFocusReason, Qt.FocusReason.PopupFocusReason)
"""The keyboard was here before: whether it was used is known."""
_KEYBOARD_REASONS = (
    Qt.FocusReason.TabFocusReason,
    Qt.FocusReason.BacktabFocusReason,
    Qt.FocusReason.ShortcutFocusReason,
    Qt.FocusReason.OtherFocusReason,
)
_PANS = {
    Qt.Key.Key_Left: (1, 0),
    Qt.Key.Key_Right: (-1, 0),
    Qt.Key.Key_Up: (0, 1),
    Qt.Key.Key_Down: (0, -1),
}


class MovingCanvas(QWidget):
    """A widget with a view on a drawing. Subclasses say what there is to see and what a click means."""

    view_changed = Signal(float)
    """Zoom in per cent of true size on this screen."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._view = ViewTransform()
        self._fitted = True
        self._wheel_scrolls = False
        self._space_held = False
        self._pressed_at: QPointF | None = None
        self._panned_from: QPointF | None = None
        self._panning_button = Qt.MouseButton.NoButton
        self._by_keyboard = True

    def content_bounds(self) -> Box:
        """A box round everything there is to see, in mm; nan if nothing."""
        return (math.nan,) * 4

    def room_above(self) -> float:
        """Pixels at the top that lie under something else when everything is shown."""
        return 0.0

    def clicked_at(self, at: QPointF, modifiers: Qt.KeyboardModifier) -> None:
        """A click that was not a drag."""

    def key_moved(self, dx: int, dy: int, *, large: bool) -> bool:
        """An arrow key, one unit of screen direction; True if it was used, so that the view stays."""
        return False

    @property
    def view(self) -> ViewTransform:
        """Where the drawing stands."""
        return self._view

    @property
    def zoom_percent(self) -> float:
        """100 where a millimetre on the screen is a millimetre of the drawing."""
        return 100 * self._view.scale * _MM_PER_INCH / max(1, self.logicalDpiX())

    @property
    def space_held(self) -> bool:
        """Whether the space bar is down."""
        return self._space_held

    @property
    def shows_focus(self) -> bool:
        """Whether to draw the focus ring: the canvas has the keyboard, and the keyboard is being used."""
        return self.hasFocus() and self._by_keyboard

    def set_view(self, view: ViewTransform) -> None:
        """Show the drawing at another place or scale."""
        self._fitted = False
        self._take_view(view)

    def set_wheel_scrolls(self, scrolls: bool) -> None:
        """Let the wheel scroll instead of zoom; Ctrl+wheel zooms either way."""
        self._wheel_scrolls = scrolls

    def fit_to_view(self) -> None:
        """Show everything, and keep doing so when the widget is resized."""
        self._fitted = True
        fitted = ViewTransform.fitted(
            self.content_bounds(), self.width(), self.height(), margin=_MARGIN_PX, above=self.room_above()
        )
        self._take_view(fitted)

    def zoom_in(self) -> None:
        """One step larger, about the middle."""
        self._zoom_about(_ZOOM_STEP, QPointF(self.rect().center()))

    def zoom_out(self) -> None:
        """One step smaller, about the middle."""
        self._zoom_about(1 / _ZOOM_STEP, QPointF(self.rect().center()))

    def centre_on(self, x_mm: float, y_mm: float) -> None:
        """Show a point: leave the view alone if it is in sight, else put it in the middle."""
        x, y = self._view.to_px(x_mm, y_mm)
        edge = _EDGE_PX
        if edge <= x <= self.width() - edge and edge <= y <= self.height() - edge:
            return
        self.set_view(self._view.centred_on(x_mm, y_mm, self.width(), self.height()))

    def _take_view(self, view: ViewTransform) -> None:
        if view != self._view:
            self._view = view
            self.view_changed.emit(self.zoom_percent)
            self.update()

    def _zoom_about(self, factor: float, at: QPointF) -> None:
        if factor > 1 or not self._is_tiny():
            self.set_view(self._view.zoomed(factor, at.x(), at.y()))

    def _is_tiny(self) -> bool:
        """Whether the whole drawing is but a spot on the screen, so that less of it would be nothing."""
        x0, y0, x1, y1 = self.content_bounds()
        return max(x1 - x0, y1 - y0) * self._view.scale < _TINY_PX

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._fitted:
            self.fit_to_view()

    def wheelEvent(self, event: QWheelEvent) -> None:
        pixels, notches = event.pixelDelta(), event.angleDelta()
        zooms = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        fingers = not pixels.isNull() and event.phase() != Qt.ScrollPhase.NoScrollPhase
        if fingers and not zooms:
            self._pan_by(pixels)
        elif self._wheel_scrolls and not zooms:
            self._pan_by(notches / 2)
        elif notches.y():
            self._zoom_about(_ZOOM_STEP ** (notches.y() / _NOTCH), event.position())
        event.accept()

    def _pan_by(self, step: QPoint) -> None:
        self.set_view(self._view.panned(step.x(), step.y()))

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QNativeGestureEvent) and self._native_gesture(event):
            return True
        return super().event(event)

    def _native_gesture(self, event: QNativeGestureEvent) -> bool:
        if event.gestureType() == Qt.NativeGestureType.ZoomNativeGesture:
            self._zoom_about(max(0.2, 1 + event.value()), event.position())
            return True
        if event.gestureType() == Qt.NativeGestureType.SmartZoomNativeGesture:
            self.fit_to_view()
            return True
        return False

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._use_keyboard(False)
        at = event.position()
        if event.button() == Qt.MouseButton.MiddleButton or (
            event.button() == Qt.MouseButton.LeftButton and self._space_held
        ):
            self._start_panning(at, event.button())
        elif event.button() == Qt.MouseButton.LeftButton:
            self._pressed_at = at

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if self._pressed_at is not None and self._panned_from is None:
            far = (at - self._pressed_at).manhattanLength() > QApplication.startDragDistance()
            if far:
                self._start_panning(self._pressed_at, Qt.MouseButton.LeftButton)
        if self._panned_from is not None:
            step = at - self._panned_from
            self._panned_from = at
            self.set_view(self._view.panned(step.x(), step.y()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._panned_from is not None and event.button() == self._panning_button:
            self._panned_from = self._pressed_at = None
            self.unsetCursor()
        elif self._pressed_at is not None and event.button() == Qt.MouseButton.LeftButton:
            self._pressed_at = None
            self.clicked_at(event.position(), event.modifiers())

    def _start_panning(self, at: QPointF, button: Qt.MouseButton) -> None:
        self._panned_from, self._panning_button = at, button
        self._pressed_at = None
        self.setCursor(Qt.CursorShape.ClosedHandCursor)

    @property
    def is_panning(self) -> bool:
        """Whether the drawing is being dragged."""
        return self._panned_from is not None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._use_keyboard(True)
        key = Qt.Key(event.key())
        large = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key in _PANS:
            dx, dy = _PANS[key]
            if not self.key_moved(-dx, -dy, large=large):
                step = _LARGE_PAN_STEP_PX if large else _PAN_STEP_PX
                self.set_view(self._view.panned(dx * step, dy * step))
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom_in()
        elif key == Qt.Key.Key_Minus:
            self.zoom_out()
        elif key == Qt.Key.Key_Home:
            self.fit_to_view()
        elif key == Qt.Key.Key_Space:
            self._set_space(True, repeat=event.isAutoRepeat())
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Space:
            self._set_space(False, repeat=event.isAutoRepeat())
        else:
            super().keyReleaseEvent(event)

    def _set_space(self, held: bool, *, repeat: bool = False) -> None:
        if repeat or held == self._space_held:
            return
        self._space_held = held
        if held:
            self.setCursor(Qt.CursorShape.OpenHandCursor)
        elif not self.is_panning:
            self.unsetCursor()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() not in _COMING_BACK:
            self._use_keyboard(event.reason() in _KEYBOARD_REASONS)

    def _use_keyboard(self, used: bool) -> None:
        self._by_keyboard = used
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._set_space(False)
        self.update()
