"""Painting a picture: the layer that is kept while the drawing is moved about.

From below: host, marks, pockets, plugs that are fixed, stock left in corners, roughing outlines, walls,
bands. The fixed half is solid, the half that may move is hollow. Only one-pixel pens and fills are used here.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen

from inlayfit.app.canvas.class_look import LOOKS
from inlayfit.app.canvas.picture import TICK_WIDTH_PX, FittingPicture, Picture
from inlayfit.app.theme import Tokens, colour

_STALE_STRENGTH = 0.45
_UNCHOSEN_STRENGTH = 0.55
_DOT_PX, _SMALLEST_AREA_PX = 2.0, 6.0


@dataclass(frozen=True, slots=True)
class Layers:
    """What to show.

    Attributes:
        chosen_fitting: its key, or None.
        chosen_outlines: keys.
        rough: roughing outlines.
        left_over: stock left in corners.
        relieved: what was cut away for relief.
        stale: whether the picture is a preview.
        smooth: antialiasing.
    """

    chosen_fitting: str | None = None
    chosen_outlines: frozenset[str] = frozenset()
    rough: bool = False
    left_over: bool = True
    relieved: bool = True
    stale: bool = False
    smooth: bool = True


def paint_layers(painter: QPainter, area: QRectF, picture: Picture, look: Tokens, layers: Layers) -> None:
    """Paint a picture into an area of a painter whose origin is the view's."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, layers.smooth)
    _paint_ground(painter, area, picture, look)
    _paint_marks(painter, picture, look)
    for shown in picture.fittings:
        _paint_halves(painter, shown, look)
        _paint_overlays(painter, shown, picture, look, layers)
    for key, path in picture.outlines:
        _paint_outline(painter, path, look, chosen=key in layers.chosen_outlines)
    for shown in picture.fittings:
        _paint_walls(painter, shown, look)
        _paint_bands(painter, shown, look, layers)


def paint_bands(painter: QPainter, shown: FittingPicture, look: Tokens, *, strength: float = 1.0) -> None:
    """Paint the bands of the five classes; a `strength` below 1 mixes them with the canvas.

    Mixed, not seen through: the pieces of a band overlap.
    """
    for class_look, band in zip(LOOKS, shown.bands, strict=True):
        ink = _mixed(class_look.colour(look), look.canvas, strength)
        for piece in band.pieces:
            painter.fillPath(piece, ink)
        if band.dots is not None:
            painter.setPen(QPen(ink, class_look.width_px, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
            painter.drawPoints(band.dots)
        if band.ticks:
            painter.setPen(QPen(ink, TICK_WIDTH_PX, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
            painter.drawLines(band.ticks)


def _mixed(token: str, ground: str, strength: float) -> QColor:
    ink, under = QColor(token), QColor(ground)
    parts = ((ink.red(), under.red()), (ink.green(), under.green()), (ink.blue(), under.blue()))
    return QColor(*(round(a * strength + b * (1 - strength)) for a, b in parts))


def _paint_ground(painter: QPainter, area: QRectF, picture: Picture, look: Tokens) -> None:
    host_everywhere = picture.host.isEmpty() and bool(picture.fittings)
    if picture.host.isEmpty():
        painter.fillRect(area, colour(look.host_tint if host_everywhere else look.canvas))
        return
    painter.fillRect(area, colour(look.window))
    _figure(painter, picture.host, look.host_line, QBrush(colour(look.host_tint)))


def _paint_marks(painter: QPainter, picture: Picture, look: Tokens) -> None:
    """Construction and dimension lines, faint and dashed, below everything that is cut."""
    if not picture.marks.isEmpty():
        pen = QPen(colour(look.muted, 0.6), 0, Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(picture.marks)


def _paint_halves(painter: QPainter, shown: FittingPicture, look: Tokens) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.fillPath(shown.pocket, colour(look.canvas))
    if shown.fitting.plug_fixed:
        painter.fillPath(shown.plug, colour(look.plug_tint))


def _paint_overlays(
    painter: QPainter, shown: FittingPicture, picture: Picture, look: Tokens, layers: Layers
) -> None:
    if layers.left_over:
        painter.setPen(_pen(look.host_line))
        painter.setBrush(colour(look.host_line, 0.35))
        for piece in shown.left_over:
            painter.drawPath(piece)
    if layers.rough and not shown.rough.isEmpty():
        _figure(painter, shown.rough, look.muted, QBrush(Qt.BrushStyle.NoBrush), dash=(6, 4))
    if layers.relieved:
        _paint_reliefs(painter, shown, picture, look)


def _paint_reliefs(painter: QPainter, shown: FittingPicture, picture: Picture, look: Tokens) -> None:
    """What was cut away for relief; where that is too small to be seen, a dot at its corner."""
    painter.setPen(_pen(look.accent))
    painter.setBrush(QBrush(colour(look.accent, 0.45)))
    for piece in shown.relieved:
        painter.drawPath(piece)
    painter.setBrush(colour(look.accent))
    smallest = (_SMALLEST_AREA_PX / picture.view.scale) ** 2
    small = [cut.place_mm for cut in shown.fitting.relieved if cut.area_mm2 < smallest]
    for x, y in _apart([picture.view.to_px(*place) for place in small]):
        painter.drawEllipse(QPointF(x, y), _DOT_PX, _DOT_PX)


def _apart(places: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """Places with no two in the same small square, so that marks of one corner do not pile up."""
    size = 4 * _DOT_PX
    return list({(round(x / size), round(y / size)): (x, y) for x, y in places}.values())


def _paint_outline(painter: QPainter, path: QPainterPath, look: Tokens, *, chosen: bool) -> None:
    fill = QBrush(colour(look.focus, 0.14)) if chosen else QBrush(Qt.BrushStyle.NoBrush)
    _figure(painter, path, look.focus if chosen else look.text, fill)


def _paint_walls(painter: QPainter, shown: FittingPicture, look: Tokens) -> None:
    _figure(painter, shown.pocket, look.host_line, QBrush(Qt.BrushStyle.NoBrush))
    _figure(painter, shown.plug, look.text, QBrush(Qt.BrushStyle.NoBrush))


def _paint_bands(painter: QPainter, shown: FittingPicture, look: Tokens, layers: Layers) -> None:
    strength = _STALE_STRENGTH if layers.stale else 1.0
    if layers.chosen_fitting is not None and shown.fitting.key != layers.chosen_fitting:
        strength *= _UNCHOSEN_STRENGTH
    paint_bands(painter, shown, look, strength=strength)


def _figure(
    painter: QPainter, path: QPainterPath, line: str, fill: QBrush, *, dash: tuple[float, float] | None = None
) -> None:
    pen = _pen(line)
    if dash is not None:
        pen.setDashPattern(dash)
    painter.setPen(pen)
    painter.setBrush(fill)
    painter.drawPath(path)


def _pen(token: str) -> QPen:
    """A hairline that is exactly one device pixel wide, the fast case of the raster engine."""
    pen = QPen(QColor(token))
    pen.setWidth(0)
    return pen
