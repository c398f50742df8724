"""Coatings in the section of the stack: a band on each face that grows, as thick as a line can show.

    host    its face on both sides of the pocket, the pocket's walls, its floor
    plug    upper face, walls, lower face

Corners between two coated faces are coated too; one between a coated and a masked face is masked.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from inlayfit.app.theme import Tokens, colour
from inlayfit.bench.stack import BuildUp

FILM_PX = 4.0
"""Thickness of a band."""


def film_px(build_up_mm: float) -> float:
    """Room that a face's coating takes in the picture."""
    return FILM_PX if build_up_mm > 0 else 0.0


def paint_host_film(painter: QPainter, wall: Sequence[QPointF], coating: BuildUp, look: Tokens) -> None:
    """Band on the host: `wall` goes along its face, down the pocket, and up again to the other end.

    It has ten points: face, wall, two of the fillet, floor, and the same backwards.
    """
    rim, side, floor = (mm > 0 for mm in (coating.rim_mm, coating.pocket_wall_mm, coating.floor_mm))
    down = [rim, side, side and floor, side and floor]
    _paint_bands(painter, wall, [*down, floor, *reversed(down)], look)


def paint_plug_film(painter: QPainter, outline: Sequence[QPointF], coating: BuildUp, look: Tokens) -> None:
    """Band on the plug: `outline` has its six corners with its edge break, from the upper left rightwards."""
    top, side, bottom = (mm > 0 for mm in (coating.top_mm, coating.plug_wall_mm, coating.bottom_mm))
    edge = side and bottom
    middle = (outline[0] + outline[1]) / 2  # so that no band ends at a corner
    line = [middle, *outline[1:], outline[0], middle]
    _paint_bands(painter, line, [top, side, edge, bottom, edge, side, top], look)


def _paint_bands(painter: QPainter, line: Sequence[QPointF], coated: Sequence[bool], look: Tokens) -> None:
    """Bands on the left of a line, as it is seen going along it, where its pieces are coated."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    pen = QPen(colour(look.edge), FILM_PX)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    run: list[QPointF] = []
    for (start, end), is_coated in zip(pairwise(line), coated, strict=True):
        if is_coated:
            run = run or [start]
            run.append(end)
        elif run:
            painter.drawPolyline(QPolygonF(_aside(run)))
            run = []
    if run:
        painter.drawPolyline(QPolygonF(_aside(run)))


def _aside(run: Sequence[QPointF]) -> list[QPointF]:
    """A line moved to its left by half a band; its corners lie where the moved pieces meet."""
    normals = [_left(a, b) for a, b in pairwise(run)]
    bisectors = [normals[0], *(_between(a, b) for a, b in pairwise(normals)), normals[-1]]
    return [point + bisector * (FILM_PX / 2) for point, bisector in zip(run, bisectors, strict=True)]


def _left(start: QPointF, end: QPointF) -> QPointF:
    """Unit vector to the left of a piece, on a screen whose y points down."""
    along = end - start
    size = (along.x() ** 2 + along.y() ** 2) ** 0.5
    return QPointF(along.y() / size, -along.x() / size)


def _between(first: QPointF, second: QPointF) -> QPointF:
    """The vector by which a corner moves when both its pieces move by their normals."""
    dot = first.x() * second.x() + first.y() * second.y()
    return (first + second) / (1 + dot)


def bare_body(plug: QRectF, coating: BuildUp) -> QRectF:
    """The plug without its coating, inside of the plug as coated."""
    side, top, bottom = (film_px(mm) for mm in (coating.plug_wall_mm, coating.top_mm, coating.bottom_mm))
    return plug.adjusted(side, top, -side, -bottom)
