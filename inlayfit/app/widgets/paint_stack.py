"""How the stack is drawn: the section, its faces with their grips, the gauge, and the answer below."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF

from inlayfit.app import theme
from inlayfit.app.canvas.reading_text import signed
from inlayfit.app.theme import Tokens, colour
from inlayfit.app.widgets.paint_coating import bare_body, film_px, paint_host_film, paint_plug_film
from inlayfit.bench.stack import Height, Spread, Stack, height_word
from inlayfit.units import Unit, format_length

_SCREEN_PX_PER_MM = 96 / 25.4
_GAUGE_REACH_PX = 26.0
_SMALLEST_REACH_MM = 0.02
_GAUGE_STEPS = (10, 20, 50, 100, 200, 400)
_ANSWER_PX, _FACE_PX, _BELOW_FLOOR_PX = 44.0, 40.0, 24.0
_GAUGE_WIDTH_PX = 122.0
_GAUGE_LINE_PX = 14.0
_SIDE_GAP_PX, _BED_PX, _EDGE_BREAK_PX, _FILLET_PX = 5.0, 8.0, 8.0, 8.0
_LINE_PX, _LOW_LINE_PX, _GROWN_GAP_PX = 17.0, 13.0, 5.0
_DIMMED = 0.5
_RING_ROOM_PX = 6.0
"""Between lettering and the ring round the picture."""
_DOT_PX, _SMALLEST_DOT_PX = 4.0, 1.5


class StackPart(StrEnum):
    """A height that can be changed."""

    DEPTH = "depth"
    BED = "bed"
    PLUG = "plug"


_GRIP_AT = {StackPart.PLUG: 0.5, StackPart.BED: 0.8, StackPart.DEPTH: 0.16}
"""Where along its face a grip stands, as a share, so that no two are taken for one."""


@dataclass(frozen=True, slots=True)
class StackSection:
    """What the section shows.

    Attributes:
        stack: the heights, with the spread of their readings.
        plug_word, bed_word, host_word: what the parts are called.
        flush_mm: a step of up to this much counts as flush.
        target_mm: how far above the host face the plug is meant to end.
        coating_words: what is coated and by how much; "" if nothing is.
    """

    stack: Stack = field(default_factory=lambda: Stack(Spread.exact(3.0), Spread.exact(3.0)))
    plug_word: str = "plug"
    bed_word: str = "no glue"
    host_word: str = "host"
    flush_mm: float = 0.01
    target_mm: float = 0.0
    coating_words: str = ""

    def height_mm(self, part: StackPart) -> float:
        """The expected height of a part."""
        heights = {
            StackPart.DEPTH: self.stack.depth,
            StackPart.BED: self.stack.bed,
            StackPart.PLUG: self.stack.plug,
        }
        return heights[part].middle_mm

    def word(self, part: StackPart) -> str:
        """What a part is called."""
        words = {
            StackPart.DEPTH: _tr("depth"),
            StackPart.BED: self.bed_word,
            StackPart.PLUG: self.plug_word,
        }
        return words[part]

    def tip(self, part: StackPart, unit: Unit) -> str:
        """A tooltip: what the face is and what moving it does."""
        what = {
            StackPart.DEPTH: _tr("Depth of the pocket below the host face. Deeper lets the plug sit lower."),
            StackPart.BED: _tr("Tape or glue under the plug, pressed. More of it lifts the plug."),
            StackPart.PLUG: _tr("Thickness of the plug. Measure it in several places."),
        }
        how = _tr("{0}. Drag, or double-click to type.").format(format_length(self.height_mm(part), unit))
        return f"{what[part]}\n{how}"


@dataclass(frozen=True, slots=True)
class SectionShape:
    """Where things stand, in pixels.

    Attributes:
        face_y: the host face, as coated.
        bare_y, floor_y: the host's face and the pocket's floor, bare.
        left, right: the pocket's walls.
        end: the right end of the host.
        plug: the plug's box, as coated; its top is off the face by the step.
        bed_y: the top of the tape or glue.
    """

    face_y: float
    bare_y: float
    floor_y: float
    left: float
    right: float
    end: float
    plug: QRectF
    bed_y: float


def gauge_factor(section: StackSection) -> int:
    """How many times the gauge is larger than life."""
    proud = section.stack.proud
    reach = max(_SMALLEST_REACH_MM, abs(proud.low_mm), abs(proud.high_mm))
    fitting = [step for step in _GAUGE_STEPS if reach * step * _SCREEN_PX_PER_MM <= _GAUGE_REACH_PX]
    return fitting[-1] if fitting else _GAUGE_STEPS[0]


def gauge_scale(section: StackSection) -> float:
    """Pixels per millimetre of the gauge and of the step."""
    return gauge_factor(section) * _SCREEN_PX_PER_MM


def section_shape(area: QRectF, section: StackSection) -> SectionShape:
    """Lay the section out in an area."""
    end = area.right() - _gauge_width()
    face, floor = area.top() + _FACE_PX, area.bottom() - _ANSWER_PX - _BELOW_FLOOR_PX
    left, right = area.left() + 0.30 * (end - area.left()), area.left() + 0.86 * (end - area.left())
    coating = section.stack.build_up
    bed_y = floor - film_px(coating.floor_mm) - (_BED_PX if section.stack.rest.middle_mm > 0 else 0.0)
    step = section.stack.proud.middle_mm * gauge_scale(section)
    top = face - min(_GAUGE_REACH_PX + 6, max(-_GAUGE_REACH_PX - 6, step))
    inset = film_px(coating.pocket_wall_mm) + _SIDE_GAP_PX
    plug = QRectF(left + inset, top, right - left - 2 * inset, bed_y - top)
    return SectionShape(face, face + film_px(coating.rim_mm), floor, left, right, end, plug, bed_y)


def _gauge_width() -> float:
    """Room for the gauge and its lettering, which is longer in some languages."""
    metrics = QFontMetricsF(theme.font(theme.CAPTION))
    words = (_tr("{0} proud"), _tr("{0} below"), _tr("{0} flush"))
    widest = max(metrics.horizontalAdvance(word.format("+0.0000")) for word in words)
    return max(_GAUGE_WIDTH_PX, _GAUGE_LINE_PX + 10 + widest + _RING_ROOM_PX)


def picture_part(area: QRectF) -> QRectF:
    """The part of an area above the answer, which is only to be read."""
    return area.adjusted(0, 0, 0, 2 - _ANSWER_PX)


def face_lines(shape: SectionShape, section: StackSection) -> dict[StackPart, QLineF]:
    """The faces that can be taken hold of."""
    inset = _EDGE_BREAK_PX + 6
    lines = {
        StackPart.PLUG: QLineF(shape.plug.left(), shape.plug.top(), shape.plug.right(), shape.plug.top()),
        StackPart.DEPTH: QLineF(shape.left, shape.floor_y, shape.right, shape.floor_y),
    }
    if section.stack.bed.middle_mm > 0:
        lines[StackPart.BED] = QLineF(shape.left + inset, shape.bed_y, shape.right - inset, shape.bed_y)
    return lines


def paint_section(
    painter: QPainter,
    area: QRectF,
    section: StackSection,
    look: Tokens,
    unit: Unit,
    *,
    held: StackPart | None,
    dimmed: bool,
) -> None:
    """Paint everything; `held` is the face that is taken hold of."""
    shape = section_shape(area, section)
    _paint_host(painter, area, shape, section, look)
    _paint_bed(painter, shape, section, look)
    _paint_plug(painter, shape, section, look)
    _paint_grips(painter, shape, section, look, held)
    painter.setOpacity(_DIMMED if dimmed else 1.0)
    _paint_words(painter, area, shape, section, look, unit)
    _paint_gauge(painter, area, shape, section, look, unit)
    _paint_answer(painter, area, section, look, unit)
    painter.setOpacity(1.0)


def height_title(section: StackSection) -> str:
    """Proud, flush or below, as the answer begins."""
    words = {Height.PROUD: _tr("Proud"), Height.FLUSH: _tr("Flush"), Height.BELOW: _tr("Below")}
    return words[height_word(section.stack.proud.middle_mm, section.flush_mm)]


def _paint_host(
    painter: QPainter, area: QRectF, shape: SectionShape, section: StackSection, look: Tokens
) -> None:
    """The host with its pocket; the worn cutter's fillet in the floor's corners."""
    wall = [
        QPointF(area.left(), shape.bare_y),
        QPointF(shape.left, shape.bare_y),
        QPointF(shape.left, shape.floor_y - _FILLET_PX),
        QPointF(shape.left + _FILLET_PX * 0.3, shape.floor_y - _FILLET_PX * 0.3),
        QPointF(shape.left + _FILLET_PX, shape.floor_y),
        QPointF(shape.right - _FILLET_PX, shape.floor_y),
        QPointF(shape.right - _FILLET_PX * 0.3, shape.floor_y - _FILLET_PX * 0.3),
        QPointF(shape.right, shape.floor_y - _FILLET_PX),
        QPointF(shape.right, shape.bare_y),
        QPointF(shape.end, shape.bare_y),
    ]
    bottom = shape.floor_y + _BELOW_FLOOR_PX
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(look.host_tint))
    painter.drawPolygon(QPolygonF([*wall, QPointF(shape.end, bottom), QPointF(area.left(), bottom)]))
    painter.setPen(QPen(colour(look.host_line), 1.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolyline(QPolygonF(wall))
    paint_host_film(painter, wall, section.stack.build_up, look)


def _paint_bed(painter: QPainter, shape: SectionShape, section: StackSection, look: Tokens) -> None:
    if section.stack.bed.middle_mm <= 0:
        return
    bed = QRectF(shape.left + _FILLET_PX, shape.bed_y, shape.right - shape.left - 2 * _FILLET_PX, _BED_PX)
    painter.fillRect(bed, colour(look.accent, 0.6))


def _paint_plug(painter: QPainter, shape: SectionShape, section: StackSection, look: Tokens) -> None:
    coating, chamfer = section.stack.build_up, _EDGE_BREAK_PX
    body = bare_body(shape.plug, coating)
    outline = [
        body.topLeft(),
        body.topRight(),
        body.bottomRight() - QPointF(0, chamfer),
        body.bottomRight() - QPointF(chamfer, 0),
        body.bottomLeft() + QPointF(chamfer, 0),
        body.bottomLeft() - QPointF(0, chamfer),
    ]
    painter.setPen(QPen(colour(look.text), 1.4))
    painter.setBrush(colour(look.plug_tint))
    painter.drawPolygon(QPolygonF(outline))
    paint_plug_film(painter, outline, coating, look)


def _paint_grips(
    painter: QPainter, shape: SectionShape, section: StackSection, look: Tokens, held: StackPart | None
) -> None:
    """Two short bars on each face that can be dragged; the held one is drawn along its length."""
    lines = face_lines(shape, section)
    if held is StackPart.BED and held not in lines:  # nothing lies there yet: it would lie on the floor
        lines[held] = lines[StackPart.DEPTH]
    for part, line in lines.items():
        middle = line.pointAt(_GRIP_AT[part]).x()
        if part is held:
            painter.setPen(QPen(colour(look.focus), 3))
            painter.drawLine(line)
        painter.setPen(QPen(colour(look.focus if part is held else look.muted), 1.4))
        above = -1 if part is StackPart.BED else 1
        for row in (4, 7):
            y = line.y1() + above * row
            painter.drawLine(QLineF(middle - 9, y, middle + 9, y))


def _paint_words(
    painter: QPainter, area: QRectF, shape: SectionShape, section: StackSection, look: Tokens, unit: Unit
) -> None:
    body = bare_body(shape.plug, section.stack.build_up).adjusted(4, 3, -4, 0)
    growth = section.stack.build_up
    thickness_mm, depth_mm = section.stack.plug.middle_mm, section.stack.depth.middle_mm
    _lines(painter, body, section.plug_word, thickness_mm, growth.thickness_change_mm, look, unit)
    dimension_x = shape.left - 12
    painter.setPen(QPen(colour(look.host_line), 1))
    painter.drawLine(QLineF(dimension_x, shape.bare_y, dimension_x, shape.floor_y))
    for y in (shape.bare_y, shape.floor_y):
        painter.drawLine(QLineF(dimension_x - 4, y, dimension_x + 4, y))
    depth = QRectF(area.left(), shape.bare_y, dimension_x - 6 - area.left(), shape.floor_y - shape.bare_y)
    depth.adjust(0, -_BELOW_FLOOR_PX / 2, 0, _BELOW_FLOOR_PX / 2)  # words may reach below the floor here
    _lines(painter, depth, _tr("depth"), depth_mm, growth.depth_change_mm, look, unit)
    painter.setFont(theme.font(theme.CAPTION))
    painter.setPen(colour(look.host_line))
    floor = QRectF(shape.left - 60, shape.floor_y + 4, shape.right - shape.left + 120, 18)
    words = painter.fontMetrics().elidedText(
        _tr("{0} floor").format(section.host_word), Qt.TextElideMode.ElideRight, round(floor.width())
    )
    painter.drawText(floor, Qt.AlignmentFlag.AlignCenter, words)
    if section.stack.bed.middle_mm > 0:
        _paint_bed_words(painter, area, shape, section, look, unit)


def _paint_bed_words(
    painter: QPainter, area: QRectF, shape: SectionShape, section: StackSection, look: Tokens, unit: Unit
) -> None:
    y = shape.bed_y + _BED_PX / 2
    start, end = shape.right - _FILLET_PX - 6, shape.end + 8
    painter.setPen(QPen(colour(look.text), 1))
    painter.drawLine(QLineF(start, y, end, y))
    painter.setBrush(colour(look.text))
    painter.drawEllipse(QPointF(start, y), 2, 2)
    painter.setFont(theme.font(theme.CAPTION))
    number = format_length(section.stack.bed.middle_mm, unit, with_unit=False)
    room = area.right() - end - 4 - _RING_ROOM_PX
    bold = theme.font(theme.TypeSize(12, theme.TITLE.weight))
    number_width = QFontMetricsF(bold).horizontalAdvance(number)
    word = painter.fontMetrics().elidedText(
        section.bed_word, Qt.TextElideMode.ElideRight, round(room - number_width - 8)
    )
    painter.drawText(QPointF(end + 4, y + 4), word)
    left = end + 8 + painter.fontMetrics().horizontalAdvance(word)
    painter.setFont(bold)
    painter.drawText(QPointF(left, y + 4), number)


def _lines(
    painter: QPainter, box: QRectF, word: str, height_mm: float, grown_mm: float, look: Tokens, unit: Unit
) -> None:
    """A word, its height, and what a coating adds to it: beside it, or below where it is narrow."""
    caption, title = theme.font(theme.CAPTION), theme.font(theme.TITLE)
    number = format_length(height_mm, unit, with_unit=False)
    grown = signed(grown_mm, unit) if grown_mm else ""
    wide = QFontMetricsF(title).horizontalAdvance(number)
    beside = QFontMetricsF(caption).horizontalAdvance(grown) + _GROWN_GAP_PX if grown else 0.0
    is_beside = wide + beside <= box.width()
    if not is_beside and box.height() < 3 * _LOW_LINE_PX:  # no room; the box above the picture says it
        grown, beside, is_beside = "", 0.0, True
    rows = 2 if is_beside else 3
    pitch = min(_LINE_PX, max(_LOW_LINE_PX, box.height() / rows))
    line = QRectF(box.left(), box.center().y() - rows * pitch / 2, box.width(), pitch)
    painter.setPen(colour(look.text))
    painter.setFont(caption)
    shown = painter.fontMetrics().elidedText(word, Qt.TextElideMode.ElideRight, round(box.width()))
    centre = Qt.AlignmentFlag.AlignCenter
    painter.drawText(line, centre, shown)
    line.translate(0, pitch)
    if is_beside:
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        row = line.adjusted((line.width() - wide - beside) / 2, 0, -(line.width() - wide - beside) / 2, 0)
        painter.drawText(row, right, grown)
        painter.setFont(title)
        painter.drawText(row, Qt.AlignmentFlag.AlignVCenter, number)
        return
    painter.drawText(line.translated(0, pitch), centre, grown)
    painter.setFont(title)
    painter.drawText(line, centre, number)


def _paint_gauge(
    painter: QPainter, area: QRectF, shape: SectionShape, section: StackSection, look: Tokens, unit: Unit
) -> None:
    """Worst and best as a whisker about the host face, at the scale of the step."""
    proud, scale, x = section.stack.proud, gauge_scale(section), shape.end + _GAUGE_LINE_PX
    painter.setPen(QPen(colour(look.host_line), 1.2, Qt.PenStyle.DashLine))
    painter.drawLine(QLineF(shape.end, shape.face_y, area.right(), shape.face_y))
    room = _GAUGE_REACH_PX + 8

    def height(mm: float) -> float:
        return shape.face_y - min(room, max(-room, mm * scale))

    high, low, middle = (height(mm) for mm in (proud.high_mm, proud.low_mm, proud.middle_mm))
    painter.setPen(QPen(colour(look.text), 1.6))
    painter.drawLine(QLineF(x, high, x, low))
    for y in (high, low):
        painter.drawLine(QLineF(x - 5, y, x + 5, y))
    painter.setBrush(colour(look.text))
    dot = dot_px(low - high)
    painter.drawEllipse(QPointF(x, middle), dot, dot)
    painter.setFont(theme.font(theme.CAPTION))
    for words, top in _gauge_words(proud, high, low, shape.face_y, unit):
        box = QRectF(x + 10, top, area.right() - x - 10, 16)
        painter.drawText(box, Qt.AlignmentFlag.AlignVCenter, words)
    painter.setPen(colour(look.muted))
    note = QRectF(shape.end, shape.floor_y + 4, area.right() - shape.end - _RING_ROOM_PX, 18)
    painter.drawText(note, Qt.AlignmentFlag.AlignRight, _tr("gauge ×{0}").format(gauge_factor(section)))


def dot_px(apart_px: float) -> float:
    """Radius of the expected height's dot between ends that far apart: they stay three marks."""
    return min(_DOT_PX, max(_SMALLEST_DOT_PX, apart_px / 4)) if apart_px > 1 else _DOT_PX


def _gauge_words(
    proud: Spread, high_y: float, low_y: float, face_y: float, unit: Unit
) -> list[tuple[str, float]]:
    """The gauge's lettering and its top: at each end, or once where both ends say the same."""

    def words(mm: float) -> str:
        side = _tr("{0} proud") if mm > 0 else _tr("{0} below") if mm < 0 else _tr("{0} flush")
        return side.format(signed(mm, unit))

    if words(proud.high_mm) == words(proud.low_mm):
        middle = (high_y + low_y) / 2 - 8
        return [(words(proud.middle_mm), middle if abs(middle + 8 - face_y) > 9 else face_y - 17)]
    if proud.low_mm < 0 < proud.high_mm:
        return [
            (words(proud.high_mm), min(high_y - 8, face_y - 17)),
            (words(proud.low_mm), max(low_y - 8, face_y + 2)),
        ]
    if proud.low_mm >= 0:
        low_top = min(low_y - 8, face_y - 17)
        return [(words(proud.high_mm), min(high_y - 8, low_top - 15)), (words(proud.low_mm), low_top)]
    high_top = max(high_y - 8, face_y + 2)
    return [(words(proud.high_mm), high_top), (words(proud.low_mm), max(low_y - 8, high_top + 15))]


def is_off_target(section: StackSection) -> bool:
    """Whether the plug is expected to end elsewhere than it is meant to."""
    return abs(section.stack.proud.middle_mm - section.target_mm) > section.flush_mm


def expected_words(section: StackSection, unit: Unit) -> str:
    """Where the plug is expected to end, and where it is meant to if that is elsewhere."""
    expected = signed(section.stack.proud.middle_mm, unit)
    if not is_off_target(section):
        return _tr("{0} expected").format(expected)
    return _tr("{0} expected, {1} wanted").format(expected, signed(section.target_mm, unit))


def _paint_answer(painter: QPainter, area: QRectF, section: StackSection, look: Tokens, unit: Unit) -> None:
    proud = section.stack.proud
    word = height_title(section)
    font = theme.font(theme.TypeSize(19, theme.TITLE.weight))
    painter.setFont(font)
    painter.setPen(colour(look.text))
    bottom = area.bottom() - 10
    painter.drawText(QPointF(area.left(), bottom - 4), word)
    left = area.left() + QFontMetricsF(font).horizontalAdvance(word) + 12
    painter.setFont(theme.font(theme.CAPTION))
    painter.setPen(colour(look.muted))
    painter.drawText(QPointF(left, bottom - 14), expected_words(section, unit))
    low, high = signed(proud.low_mm, unit), signed(proud.high_mm, unit)
    spread = _tr("between {0} and {1}") if low != high else _tr("one reading of each, no spread")
    between = spread.format(low, high)
    painter.drawText(QPointF(left, bottom + 1), between)


def _tr(text: str) -> str:
    return QCoreApplication.translate("stack", text)
