"""The top layer of the map: flags, numbered spots, lettering of the halves, scale bar, and cards.

It is painted afresh each time, a dozen small things, over the layer that is kept.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QPainter, QPen

from inlayfit.app import theme
from inlayfit.app.canvas.class_look import ClassLook, look_of
from inlayfit.app.canvas.picture import Picture
from inlayfit.app.canvas.placing import Placing, leader
from inlayfit.app.canvas.reading_text import signed, signed_overall
from inlayfit.app.canvas.scale_bar import scale_bar
from inlayfit.app.canvas.scene import FittingScene, HalfLabel
from inlayfit.app.theme import Tokens, colour
from inlayfit.fit.classes import GapClass
from inlayfit.fit.result import Spot
from inlayfit.units import Unit

SPOT_PX = 18.0
RING_PX = 15.0
_BADGE_PX = 24.0
_FLAG_HEIGHT = 44.0
_EDGE_PX = 12.0
_DIMMED = 0.5


@dataclass(frozen=True, slots=True)
class Notes:
    """What the top layer says.

    Attributes:
        fitting: the chosen fitting, or None.
        chosen_spot: number of the chosen spot, from 0, or None.
        unit: lengths are shown in.
        stale: whether the numbers are of a preview or an older fit.
        places: where labels stood last time, so that they stay put while the drawing moves; it is updated.
        marked_mm: a place that a check names; it is looked at instead of the chosen spot.
    """

    fitting: FittingScene | None
    chosen_spot: int | None
    unit: Unit
    stale: bool
    places: dict[str, int] = field(default_factory=dict)
    marked_mm: tuple[float, float] | None = None


def paint_annotations(
    painter: QPainter, area: QRectF, picture: Picture, look: Tokens, notes: Notes, *, keep_off: list[QRectF]
) -> None:
    """Paint flags, spots and lettering over a picture; `keep_off` are cards that already stand there."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    placing = Placing(area.adjusted(8, 8, -8, -8), picture.crowd, notes.places)
    bar = _paint_scale_bar(painter, area, picture.view.scale, look, notes.unit)
    placing.take([*keep_off, bar])
    fitting = notes.fitting
    if fitting is None:
        return
    _paint_mark(painter, picture, look, notes, placing)
    _paint_flags(painter, picture, look, notes, placing)
    _paint_spots(painter, picture, look, notes, placing)
    for label, token in ((fitting.pocket_label, look.host_line), (fitting.plug_label, look.muted)):
        if label is not None:
            _paint_label(painter, picture, label, token, placing)


def paint_badge(painter: QPainter, box: QRectF, class_look: ClassLook, look: Tokens) -> None:
    """The letter of a class on its colour."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(class_look.colour(look)))
    painter.drawRoundedRect(box, 3, 3)
    painter.setPen(colour(class_look.lettering(look)))
    painter.setFont(theme.font(theme.TypeSize(round(box.height() * 0.54), theme.TITLE.weight)))
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, class_look.gap_class.letter)


def paint_card(
    painter: QPainter, at: QPointF, title: str, text: str, look: Tokens, *, below: Sequence[QRectF] = ()
) -> QRectF:
    """A small card with a title and a line below; returns where it stands: below what is in its way."""
    bold, plain = theme.font(theme.TITLE), theme.font(theme.CAPTION)
    width = max(theme.text_width(title, theme.TITLE), theme.text_width(text, theme.CAPTION))
    box = QRectF(at, QSizeF(width + 28, 48 if text else 30))
    for other in below:
        if box.adjusted(-8, 0, 8, 0).intersects(other):
            box.moveTop(other.bottom() + 8)
    painter.setPen(QPen(colour(look.hairline), 1))
    painter.setBrush(colour(look.panel))
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), theme.RADIUS_PX, theme.RADIUS_PX)
    painter.setFont(bold)
    painter.setPen(colour(look.text))
    painter.drawText(QPointF(box.left() + 12, box.top() + 20), title)
    painter.setFont(plain)
    painter.setPen(colour(look.muted))
    painter.drawText(QPointF(box.left() + 12, box.top() + 38), text)
    return box


def spot_place(spot: Spot, picture: Picture) -> QPointF:
    """Where a spot is on the screen: halfway between the two walls."""
    x, y = picture.view.to_px(*spot.place_mm)
    return QPointF(x, y)


def _paint_flags(painter: QPainter, picture: Picture, look: Tokens, notes: Notes, placing: Placing) -> None:
    fitting = notes.fitting
    assert fitting is not None
    flagged: list[tuple[Spot, str, bool]] = []
    chosen = notes.chosen_spot if notes.marked_mm is None else None
    if fitting.spots:
        flagged.append((fitting.spots[0], _words_of_tightest(fitting), chosen == 0))
    if chosen is not None and 0 < chosen < len(fitting.spots):
        flagged.append(
            (fitting.spots[chosen], _tr("spot {0} of {1}").format(chosen + 1, len(fitting.spots)), True)
        )
    if fitting.loosest is not None and not fitting.is_even:
        flagged.append((fitting.loosest, _tr("loosest"), False))
    for spot, words, is_chosen in flagged:
        at = spot_place(spot, picture)
        if not placing.view.contains(at):
            continue
        if is_chosen:
            _paint_ring(painter, at, look)
        _paint_flag(painter, at, spot, words, look, notes, placing, chosen=is_chosen)


def _words_of_tightest(fitting: FittingScene) -> str:
    if len(fitting.spots) > 1:
        return _tr("tightest, spot 1")
    return _tr("even all round") if fitting.is_even else _tr("tightest")


def _paint_mark(painter: QPainter, picture: Picture, look: Tokens, notes: Notes, placing: Placing) -> None:
    """A ring round the place a check names, with a word beside it."""
    if notes.marked_mm is None:
        return
    at = QPointF(*picture.view.to_px(*notes.marked_mm))
    _paint_ring(painter, at, look)
    words, font = _tr("check"), theme.font(theme.TITLE)
    size = QSizeF(theme.text_width(words, theme.TITLE) + 16, 24)
    box = placing.place("check", at, size, (22, 40, 70), must=True)
    assert box is not None
    start, end = leader(box, at)
    painter.setPen(QPen(colour(look.focus), 1))
    painter.drawLine(start, _short_of(start, end, RING_PX))
    painter.setPen(QPen(colour(look.focus), 2))
    painter.setBrush(colour(look.field))
    painter.drawRoundedRect(box, theme.RADIUS_PX, theme.RADIUS_PX)
    painter.setFont(font)
    painter.setPen(colour(look.text))
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, words)


def _paint_ring(painter: QPainter, at: QPointF, look: Tokens) -> None:
    painter.setPen(QPen(colour(look.focus), 2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawEllipse(at, RING_PX, RING_PX)


def _paint_flag(
    painter: QPainter,
    at: QPointF,
    spot: Spot,
    words: str,
    look: Tokens,
    notes: Notes,
    placing: Placing,
    *,
    chosen: bool,
) -> None:
    value, overall = signed(spot.gap_mm, notes.unit), signed_overall(spot.gap_mm, notes.unit)
    value_font, caption = theme.font(theme.VERDICT), theme.font(theme.CAPTION)
    value_width = theme.text_width(value, theme.VERDICT)
    text_width = max(
        value_width + 6 + theme.text_width(overall, theme.CAPTION), theme.text_width(words, theme.CAPTION)
    )
    size = QSizeF(_BADGE_PX + 20 + text_width + 12, _FLAG_HEIGHT)
    box = placing.place(words, at, size, (34, 60, 96, 150), must=True)
    assert box is not None
    edge = look.focus if chosen else look.text
    start, end = leader(box, at)
    painter.setPen(QPen(colour(edge), 1))
    painter.drawLine(start, _short_of(start, end, RING_PX if chosen else 5.0))
    painter.setPen(QPen(colour(look.focus if chosen else look.edge), 2 if chosen else 1))
    painter.setBrush(colour(look.field))
    painter.drawRoundedRect(box, theme.RADIUS_PX, theme.RADIUS_PX)
    assert notes.fitting is not None
    painter.setOpacity(_DIMMED if notes.stale else 1.0)
    class_look = look_of(spot.gap_mm, notes.fitting.clearance_mm)
    badge = QRectF(box.left() + 10, box.center().y() - _BADGE_PX / 2, _BADGE_PX, _BADGE_PX)
    paint_badge(painter, badge, class_look, look)
    left = badge.right() + 9
    painter.setFont(value_font)
    painter.setPen(colour(look.text))
    painter.drawText(QPointF(left, box.top() + 19), value)
    painter.setFont(caption)
    painter.setPen(colour(look.muted))
    painter.drawText(QPointF(left + value_width + 6, box.top() + 19), overall)
    painter.drawText(QPointF(left, box.top() + 36), words)
    painter.setOpacity(1.0)


def _short_of(start: QPointF, end: QPointF, gap: float) -> QPointF:
    """The end of a line, drawn back by `gap`."""
    step = end - start
    length = (step.x() ** 2 + step.y() ** 2) ** 0.5
    return start if length <= gap else start + step * ((length - gap) / length)


def _paint_spots(painter: QPainter, picture: Picture, look: Tokens, notes: Notes, placing: Placing) -> None:
    fitting = notes.fitting
    assert fitting is not None
    painter.setFont(theme.font(theme.TypeSize(11, theme.TITLE.weight)))
    for number, spot in enumerate(fitting.spots):
        at = spot_place(spot, picture)
        if number in (0, notes.chosen_spot) or not placing.view.contains(at):
            continue
        if look_of(spot.gap_mm, fitting.clearance_mm).gap_class >= GapClass.ON:
            continue  # as meant: a number there would only distract
        box = placing.place(f"spot-{number}", at, QSizeF(SPOT_PX, SPOT_PX), (14, 24))
        if box is None:
            continue
        line = leader(box, at)
        painter.setPen(QPen(colour(look.text), 1))
        painter.drawLine(line[0], _short_of(line[0], line[1], 6))
        painter.setBrush(colour(look.field))
        painter.drawEllipse(box)
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, str(number + 1))


def _paint_label(painter: QPainter, picture: Picture, label: HalfLabel, token: str, placing: Placing) -> None:
    size = theme.TypeSize(12, theme.INPUT.weight)
    medium, plain = theme.font(size), theme.font(theme.CAPTION)
    width = max(theme.text_width(line, size) for line in label.lines) + 4
    height = 16.0 * len(label.lines)
    if max(width, height) / 2 > label.room_mm * picture.view.scale:
        return  # it would not fit between the walls
    x, y = picture.view.to_px(*label.place_mm)
    box = QRectF(x - width / 2, y - height / 2, width, height)
    if not placing.is_free(box):
        return
    painter.setPen(colour(token))
    for row, line in enumerate(label.lines):
        painter.setFont(medium if row == 0 else plain)
        painter.drawText(
            QRectF(box.left(), box.top() + 16 * row, width, 16), Qt.AlignmentFlag.AlignCenter, line
        )


def _paint_scale_bar(painter: QPainter, area: QRectF, scale: float, look: Tokens, unit: Unit) -> QRectF:
    bar = scale_bar(scale, unit)
    right, y = area.right() - 24, area.bottom() - 16
    left = right - bar.length_px
    _paint_plate(painter, QRectF(left - 10, y - 24, bar.length_px + 20, 34), look)
    painter.setPen(QPen(colour(look.text), 1))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.drawLine(QPointF(left, y), QPointF(right, y))
    for x, half in ((left, 4), ((left + right) / 2, 2), (right, 4)):
        painter.drawLine(QPointF(x, y - half), QPointF(x, y + half))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(theme.font(theme.CAPTION))
    box = QRectF(left - 30, y - 22, bar.length_px + 60, 16)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, bar.text)
    return box.adjusted(0, -2, 0, 10)


def _paint_plate(painter: QPainter, box: QRectF, look: Tokens) -> None:
    """A plate that walls show through only faintly, so that what stands on it can be read."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(look.panel, 0.8))
    painter.drawRoundedRect(box, theme.RADIUS_PX, theme.RADIUS_PX)


def _tr(text: str) -> str:
    return QCoreApplication.translate("map", text)
