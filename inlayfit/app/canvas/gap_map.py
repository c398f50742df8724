"""The gap map: both halves of a fitting, the gap along the wall in five classes, and its tightest places.

Keys, while the map has the keyboard (the rest is in `moving_canvas`):
    N, Shift+N   next and previous tight spot
    O, Shift+O   next and previous fitting or outline
    M            measure; then arrows move the crosshair, Enter places a point, Esc ends
    Space        held: the loupe follows the pointer

The map knows no session: it takes a `GapScene` and says in past-tense signals what was done to it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QToolTip, QWidget

from inlayfit.app import theme
from inlayfit.app.canvas.annotations import Notes, paint_annotations, paint_card
from inlayfit.app.canvas.drop_halves import (
    DropOffer,
    DropReader,
    DropUse,
    answer,
    any_file_or_text,
    dropped,
    paint_drop_halves,
    use_at,
)
from inlayfit.app.canvas.layer_cache import LayerCache
from inlayfit.app.canvas.measure_tool import SNAP_PX, MeasureTool, paint_measure
from inlayfit.app.canvas.moving_canvas import MovingCanvas
from inlayfit.app.canvas.paint_layers import Layers
from inlayfit.app.canvas.pointing import PointerReading, fitting_at, outline_at, reading_at, snapped
from inlayfit.app.canvas.reading_text import spoken
from inlayfit.app.canvas.scene import FittingScene, GapScene
from inlayfit.app.canvas.view_transform import Box
from inlayfit.app.theme import Tokens, colour
from inlayfit.units import Unit

_HIT_PX = theme.SMALLEST_TARGET_PX / 2
_GAP_REACH_PX = 24.0
_CARD_ROOM_PX = 36.0
_CROSSHAIR_STEP_PX, _CROSSHAIR_LARGE_STEP_PX = 2.0, 20.0


class GapMapView(MovingCanvas):
    """Shows a `GapScene`."""

    spot_chosen = Signal(int)
    """Number of the tight spot, from 0."""
    fitting_chosen = Signal(str)
    """Key of the fitting."""
    outline_chosen = Signal(str, bool)
    """Key of an outline, and whether it was added to those already chosen."""
    pointer_moved = Signal(object)
    """A `PointerReading`."""
    pointer_left = Signal()
    measured = Signal(object)
    """A finished `Measurement`."""
    measuring_changed = Signal(bool)
    drawing_dropped = Signal(object)
    """A `Dropped`."""
    drop_refused = Signal(str)
    """What hovered here and cannot be used is gone again; one sentence."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._scene = GapScene()
        self._layers = Layers()
        self._unit = Unit.MM
        self._chosen_spot: int | None = None
        self._marked_mm: tuple[float, float] | None = None
        self._tool: MeasureTool | None = None
        self._cache = LayerCache()
        self._cutter_at_pointer = False
        self._pointer: QPointF | None = None
        self._drop_reader: DropReader = any_file_or_text
        self._drop_offer: DropOffer | None = None
        self._drop_use: DropUse | None = None
        self._sentence = ""
        self._label_places: dict[str, int] = {}
        self.setAcceptDrops(True)
        self.setAccessibleName(self.tr("Gap map"))
        self.setMinimumSize(240, 180)

    # --- what is shown ---

    @property
    def scene(self) -> GapScene:
        """What is shown."""
        return self._scene

    def set_scene(self, scene: GapScene) -> None:
        """Show another scene; the view stays unless other things are to be seen."""
        others = [f.key for f in scene.fittings], [o.key for o in scene.outlines]
        mine = [f.key for f in self._scene.fittings], [o.key for o in self._scene.outlines]
        self._scene = scene
        self._marked_mm = None
        if self._layers.chosen_fitting not in others[0]:
            self._show(replace(self._layers, chosen_fitting=others[0][0] if others[0] else None))
            self._chosen_spot = None
        self._keep_spot_valid()
        if sorted(others[0] + others[1]) != sorted(mine[0] + mine[1]):
            self.fit_to_view()
        self._tell_screen_reader()
        self._say_pointer()
        self.update()

    def set_stale(self, stale: bool) -> None:
        """Mark picture and numbers as a preview: tinted and dimmed until the exact answer comes."""
        self._show(replace(self._layers, stale=stale))

    def set_unit(self, unit: Unit) -> None:
        """Show lengths in another unit."""
        self._unit = unit
        self._say_pointer()
        self.update()

    def set_overlays(
        self, *, rough: bool = False, left_over: bool = True, relieved: bool = True, cutter: bool = False
    ) -> None:
        """Choose overlays: roughing outlines, stock left in corners, relief, the cutter at the pointer."""
        self._cutter_at_pointer = cutter
        self._show(replace(self._layers, rough=rough, left_over=left_over, relieved=relieved))

    def set_chosen_fitting(self, key: str | None) -> None:
        """Choose a fitting, without a signal."""
        if key != self._layers.chosen_fitting:
            self._chosen_spot = None
            self._show(replace(self._layers, chosen_fitting=key))
            self._tell_screen_reader()

    def set_chosen_outlines(self, keys: Sequence[str]) -> None:
        """Choose outlines, without a signal."""
        self._show(replace(self._layers, chosen_outlines=frozenset(keys)))

    def set_chosen_spot(self, number: int | None, *, into_view: bool = True) -> None:
        """Choose a tight spot, without a signal; it is moved into view unless that is not wanted."""
        self._chosen_spot = number
        self._marked_mm = None
        self._keep_spot_valid()
        fitting = self.chosen_fitting
        if into_view and fitting is not None and self._chosen_spot is not None:
            self.centre_on(*fitting.spots[self._chosen_spot].place_mm)
        self._tell_screen_reader()
        self.update()

    def set_marked_place(self, place_mm: tuple[float, float]) -> None:
        """Mark a place that a check names, until a spot is chosen or the scene is another."""
        self._marked_mm = place_mm
        self.update()

    def set_summary(self, sentence: str) -> None:
        """What a screen reader says before the tightest spot: the fit sentence."""
        self._sentence = sentence
        self._tell_screen_reader()

    def set_drop_reader(self, reader: DropReader) -> None:
        """Say by content what may be dropped and what it is."""
        self._drop_reader = reader

    @property
    def chosen_fitting(self) -> FittingScene | None:
        """The fitting whose spots are numbered."""
        return self._scene.fitting(self._layers.chosen_fitting)

    @property
    def chosen_spot(self) -> int | None:
        """Number of the chosen spot, from 0."""
        return self._chosen_spot

    @property
    def marked_place(self) -> tuple[float, float] | None:
        """The place that a check names, while it is marked."""
        return self._marked_mm

    def content_bounds(self) -> Box:
        return self._scene.bounds

    def room_above(self) -> float:
        return _CARD_ROOM_PX

    def sizeHint(self) -> QSize:
        return QSize(900, 500)

    def _show(self, layers: Layers) -> None:
        self._layers = layers
        self.update()

    def _keep_spot_valid(self) -> None:
        fitting = self.chosen_fitting
        count = len(fitting.spots) if fitting is not None else 0
        if self._chosen_spot is not None:
            self._chosen_spot = min(self._chosen_spot, count - 1) if count else None

    def _tell_screen_reader(self) -> None:
        parts = [self._sentence] if self._sentence else []
        fitting = self.chosen_fitting
        if fitting is not None and fitting.spots:
            number = self._chosen_spot or 0
            gap = spoken(fitting.spots[number].gap_mm, self._unit)
            if len(fitting.spots) > 1:
                said = self.tr("Spot {0} of {1}, tightest first: {2}.")
                parts.append(said.format(number + 1, len(fitting.spots), gap))
            else:
                said = self.tr("Even all round: {0}.") if fitting.is_even else self.tr("Tightest: {0}.")
                parts.append(said.format(gap))
        text = " ".join(parts)
        if text != self.accessibleDescription():
            self.setAccessibleDescription(text)
            if QAccessible.isActive():
                event = QAccessibleEvent(self, QAccessible.Event.DescriptionChanged)
                QAccessible.updateAccessibility(event)

    # --- walking and choosing ---

    def _walk_spots(self, step: int) -> None:
        """Choose the next tight spot, or the one before; after the last the tightest again."""
        fitting = self.chosen_fitting
        if fitting is None or not fitting.spots:
            return
        start = self._chosen_spot if self._chosen_spot is not None else (-1 if step > 0 else 0)
        self.set_chosen_spot((start + step) % len(fitting.spots))
        self.spot_chosen.emit(self._chosen_spot)

    def _walk_shapes(self, step: int) -> None:
        fittings = [("fitting", f.key) for f in self._scene.fittings]
        shapes = fittings + [("outline", o.key) for o in self._scene.outlines]
        if not shapes:
            return
        outline = next(iter(self._layers.chosen_outlines), None)
        current = ("outline", outline) if outline is not None else ("fitting", self._layers.chosen_fitting)
        at = shapes.index((current[0], str(current[1]))) if current in shapes else -1 if step > 0 else 0
        kind, key = shapes[(at + step) % len(shapes)]
        self._choose(kind, key, added=False)

    def _choose(self, kind: str, key: str, *, added: bool) -> None:
        if kind == "fitting":
            self.set_chosen_outlines(())
            self.set_chosen_fitting(key)
            self.fitting_chosen.emit(key)
            return
        kept = self._layers.chosen_outlines if added else frozenset()
        self.set_chosen_outlines([*(kept ^ {key})] if added else [key])
        self.outline_chosen.emit(key, added)

    def clicked_at(self, at: QPointF, modifiers: Qt.KeyboardModifier) -> None:
        if self._tool is not None:
            self._move_crosshair(at)
            self._place_point()
            return
        spot = self._spot_at(at)
        x_mm, y_mm = self.view.to_mm(at.x(), at.y())
        added = bool(modifiers & (Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier))
        outline = outline_at(self._scene, x_mm, y_mm, _HIT_PX / self.view.scale)
        fitting = fitting_at(self._scene, x_mm, y_mm)
        if spot is not None:
            self.set_chosen_spot(spot)
            self.spot_chosen.emit(spot)
        elif outline is not None:
            self._choose("outline", outline, added=added)
        elif fitting is not None:
            self._choose("fitting", fitting.key, added=False)

    def _spot_at(self, at: QPointF) -> int | None:
        fitting = self.chosen_fitting
        for number, spot in enumerate(fitting.spots if fitting is not None else ()):
            x, y = self.view.to_px(*spot.place_mm)
            if abs(x - at.x()) <= _HIT_PX and abs(y - at.y()) <= _HIT_PX:
                return number
        return None

    # --- measuring ---

    @property
    def is_measuring(self) -> bool:
        """Whether clicks place points to measure between."""
        return self._tool is not None

    def set_measuring(self, on: bool) -> None:
        """Start or end measuring."""
        if on == self.is_measuring:
            return
        self._tool = MeasureTool() if on else None
        if on:
            self._move_crosshair(self._pointer or QPointF(self.rect().center()))
        self.measuring_changed.emit(on)
        self.update()

    def _move_crosshair(self, at: QPointF) -> None:
        assert self._tool is not None
        snap = snapped(self._scene, *self.view.to_mm(at.x(), at.y()), SNAP_PX / self.view.scale)
        self._tool = self._tool.moved(snap)
        self._pointer = at
        self.update()

    def _place_point(self) -> None:
        assert self._tool is not None
        self._tool = self._tool.placed()
        if self._tool.done is not None and self._tool.start is None:
            self.measured.emit(self._tool.done)
        self.update()

    def key_moved(self, dx: int, dy: int, *, large: bool) -> bool:
        if self._tool is None:
            return False
        step = _CROSSHAIR_LARGE_STEP_PX if large else _CROSSHAIR_STEP_PX
        at = (self._pointer or QPointF(self.rect().center())) + QPointF(dx * step, dy * step)
        self._move_crosshair(at)
        return True

    # --- events ---

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._use_keyboard(True)
        backwards = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        key = event.key()
        if key == Qt.Key.Key_N:
            self._walk_spots(-1 if backwards else 1)
        elif key == Qt.Key.Key_O:
            self._walk_shapes(-1 if backwards else 1)
        elif key == Qt.Key.Key_M:
            self.set_measuring(not self.is_measuring)
        elif key == Qt.Key.Key_Escape and self.is_measuring:
            self.set_measuring(False)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.is_measuring:
            self._place_point()
        else:
            super().keyPressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        super().mouseMoveEvent(event)
        self._pointer = event.position()
        if self._tool is not None and not self.is_panning:
            self._move_crosshair(self._pointer)
        if self._cutter_at_pointer:
            self.update()
        self._say_pointer()

    def _say_pointer(self) -> None:
        """Say what lies under the pointer, which changes with the scene even where the pointer rests."""
        if self._pointer is not None:
            self.pointer_moved.emit(self.reading(self._pointer))

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent):
            text = self.words_at(QPointF(event.pos()))
            QToolTip.showText(event.globalPos(), text, self)
            return True
        return super().event(event)

    def words_at(self, at: QPointF) -> str:
        """What lies at a place of the widget, for a tooltip; "" for nothing."""
        fitting, spot = self.chosen_fitting, self._spot_at(at)
        if fitting is not None and spot is not None:
            gap = spoken(fitting.spots[spot].gap_mm, self._unit)
            if len(fitting.spots) == 1:
                return self.tr("Tightest: {0}. Click to see it in the loupe.").format(gap)
            said = self.tr("Spot {0} of {1}: {2}. Click to see it in the loupe.")
            return said.format(spot + 1, len(fitting.spots), gap)
        x_mm, y_mm = self.view.to_mm(at.x(), at.y())
        outline = outline_at(self._scene, x_mm, y_mm, _HIT_PX / self.view.scale)
        for shown in self._scene.outlines:
            if shown.key == outline:
                return self.tr("{0}. Click to choose it, with Ctrl to add it.").format(shown.name)
        return ""

    def reading(self, at: QPointF) -> PointerReading:
        """What lies at a place of the widget."""
        x_mm, y_mm = self.view.to_mm(at.x(), at.y())
        reach = _GAP_REACH_PX / self.view.scale
        return reading_at(self._scene, x_mm, y_mm, reach, following=self.space_held)

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self._pointer = None
        self.pointer_left.emit()
        self.update()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self.update()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        self._drop_offer = self._drop_reader(event.mimeData())
        self._follow_drag(event)

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        self._follow_drag(event)

    def _follow_drag(self, event: QDropEvent) -> None:
        if self._drop_offer is not None:
            self._drop_use = use_at(QRectF(self.rect()), event.position())
            answer(event, self._drop_offer)
            self.update()

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        self._end_drop()

    def dropEvent(self, event: QDropEvent) -> None:
        offer, use = self._drop_offer, use_at(QRectF(self.rect()), event.position())
        content = dropped(event.mimeData(), use)
        answer(event, offer or DropOffer())
        self._end_drop()
        if offer is None or not offer.is_refused:
            self.drawing_dropped.emit(content)

    def _end_drop(self) -> None:
        offer, self._drop_offer, self._drop_use = self._drop_offer, None, None
        if offer is not None and offer.is_refused:
            self.drop_refused.emit(offer.sentence)
        self.update()

    # --- painting ---

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        look = theme.tokens_of(self)
        area = QRectF(self.rect())
        self._paint_scene(painter, area, look)
        if self._cutter_at_pointer and self._pointer is not None:
            self._paint_cutter(painter, self._pointer, look)
        if self._tool is not None:
            paint_measure(painter, area, self._tool, self.view, look, self._unit)
        if self._drop_offer is not None:
            paint_drop_halves(painter, area, look, over=self._drop_use, offer=self._drop_offer)
        if self.shows_focus:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
            painter.setPen(QPen(colour(look.focus), theme.FOCUS_RING_PX))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(area.adjusted(1, 1, -1, -1))
        painter.end()

    def _paint_scene(self, painter: QPainter, area: QRectF, look: Tokens) -> None:
        self._cache.picture(self._scene, self.view, self.size(), self._layers)
        self._cache.paint(painter, self.view, self.devicePixelRatioF(), look, self._layers)
        fitting = self.chosen_fitting
        if fitting is None:
            return
        picture = self._cache.at_view(self.view)
        words = self.tr("True scale.") if picture.true_scale else self.tr("Band width is not to scale.")
        title = self.tr("Gap map, preview") if self._layers.stale else self.tr("Gap map")
        covered = self._covered()
        card = paint_card(painter, QPointF(20, 12), title, words, look, below=covered)
        notes = Notes(
            fitting, self._chosen_spot, self._unit, self._layers.stale, self._label_places, self._marked_mm
        )
        paint_annotations(painter, area, picture, look, notes, keep_off=[card, *covered])

    def _covered(self) -> list[QRectF]:
        """Where other widgets lie over the map."""
        over = self.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)
        return [QRectF(child.geometry()) for child in over if child.isVisible()]

    def _paint_cutter(self, painter: QPainter, at: QPointF, look: Tokens) -> None:
        fitting = self.chosen_fitting
        if fitting is None:
            return
        x_mm, y_mm = self.view.to_mm(at.x(), at.y())
        inside = fitting.pocket.holds(x_mm, y_mm)
        diameter = fitting.pocket_cutter_mm if inside else fitting.plug_cutter_mm
        radius = diameter / 2 * self.view.scale
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(colour(look.focus), 1))
        painter.setBrush(colour(look.focus, 0.12))
        painter.drawEllipse(at, radius, radius)
