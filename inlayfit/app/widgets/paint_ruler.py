"""How the fit ruler is drawn: a band of feel words, trials standing on it, the scale and caret below."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPixmap, QPolygonF

from inlayfit.app import theme
from inlayfit.app.canvas.scale_bar import round_below
from inlayfit.app.theme import Tokens, colour
from inlayfit.app.widgets.feel_words import feel_word
from inlayfit.app.widgets.ruler_marks import Bracket, TrialFlag, paint_trial_shape
from inlayfit.fit.feel import Feel, FeelZones
from inlayfit.units import Unit, format_length

_SIDE_PX = 14.0
_BAND_TOP, _BAND_HEIGHT = 34.0, 28.0
_WORD_ROOM = 10
_HANDLE_WIDTH, _HANDLE_HEIGHT, _HANDLE_ROOM = 16.0, 22.0, 12.0
_SHAPE_PX = 14.0
_NARROW_PX = 56.0
_LABEL_EVERY_PX = 110.0
_MINOR_PER_MAJOR = 5


@dataclass(frozen=True, slots=True)
class RulerLook:
    """Everything that is drawn, in micrometres."""

    area: QRectF
    low_um: int
    high_um: int
    value_um: int
    zones: FeelZones
    trials: tuple[TrialFlag, ...]
    bracket: Bracket | None
    suggestion_um: float | None
    unit: Unit
    focused: bool
    pressed: bool


def x_of(look: RulerLook, um: float) -> float:
    """The pixel of a value."""
    left, width = look.area.left() + _SIDE_PX, look.area.width() - 2 * _SIDE_PX
    return left + (um - look.low_um) / (look.high_um - look.low_um) * width


def um_at(look: RulerLook, x: float) -> float:
    """The value at a pixel."""
    left, width = look.area.left() + _SIDE_PX, look.area.width() - 2 * _SIDE_PX
    return look.low_um + (x - left) / max(1.0, width) * (look.high_um - look.low_um)


def band_rect(look: RulerLook) -> QRectF:
    """Where the zones are."""
    return QRectF(look.area.left() + _SIDE_PX, _BAND_TOP, look.area.width() - 2 * _SIDE_PX, _BAND_HEIGHT)


class RulerPainter:
    """Paints a ruler, and keeps what does not move with its handle."""

    def __init__(self) -> None:
        self._ground = QPixmap()
        self._painted_as: object = None

    def forget(self) -> None:
        """Paint all anew next time: the typeface or the language is another."""
        self._painted_as = None

    def paint(self, painter: QPainter, look: RulerLook, tokens: Tokens) -> None:
        """Paint the whole ruler, on the colour of the panel it stands on."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ratio = painter.device().devicePixelRatioF()
        at_rest = replace(look, value_um=0, pressed=False, focused=False)
        near = tuple(feel for feel, zone in _zones(look) if _has_handle(zone, look))
        left_of = tuple(t.clearance_mm * 1000 > look.value_um for t in look.trials)
        wanted = at_rest, _here(look), near, left_of, tokens, ratio
        if wanted != self._painted_as:
            self._repaint(look, tokens, ratio)
            self._painted_as = wanted
        painter.drawPixmap(QPointF(0, 0), self._ground)
        for feel, zone in _zones(look):
            if feel in near:
                _paint_word(painter, zone, feel, look, tokens)
        _paint_handle(painter, look, tokens)

    def _repaint(self, look: RulerLook, tokens: Tokens, ratio: float) -> None:
        wanted = look.area.size() * ratio
        self._ground = QPixmap(math.ceil(wanted.width()), math.ceil(wanted.height()))
        self._ground.fill(colour(tokens.panel))  # the last pixels too, which the area covers in part
        self._ground.setDevicePixelRatio(ratio)
        painter = QPainter(self._ground)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        _paint_zones(painter, look, tokens)
        _paint_scale(painter, look, tokens)
        _paint_bracket(painter, look, tokens)
        _paint_trials(painter, look, tokens)
        _paint_suggestion(painter, look, tokens)
        painter.end()


def _here(look: RulerLook) -> Feel:
    return look.zones.feel_at(look.value_um / 1000)


def _zones(look: RulerLook) -> Iterator[tuple[Feel, QRectF]]:
    """The zones that show."""
    band = band_rect(look)
    for feel in Feel:
        low, high = look.zones.span_mm(feel)
        left = max(band.left(), x_of(look, low * 1000) if math.isfinite(low) else band.left())
        right = min(band.right(), x_of(look, high * 1000) if math.isfinite(high) else band.right())
        if right - left >= 1:
            yield feel, QRectF(left, band.top(), right - left, band.height())


def _has_handle(zone: QRectF, look: RulerLook) -> bool:
    """Whether the handle keeps a word from standing anywhere in the zone."""
    handle = x_of(look, look.value_um)
    return zone.left() < handle + _HANDLE_ROOM and handle - _HANDLE_ROOM < zone.right()


def _paint_zones(painter: QPainter, look: RulerLook, tokens: Tokens) -> None:
    """The band, with the words of all zones but those the handle is in."""
    band, here = band_rect(look), _here(look)
    order = list(Feel)
    for feel, zone in _zones(look):
        even = order.index(feel) % 2 == 0
        fill = tokens.accent_soft if feel is here else (tokens.zone if even else tokens.panel)
        painter.fillRect(zone, colour(fill))
        if not _has_handle(zone, look):
            _paint_word(painter, zone, feel, look, tokens)
        painter.setPen(QPen(colour(tokens.edge), 1))
        painter.drawLine(QPointF(zone.left(), band.top()), QPointF(zone.left(), band.bottom()))
    painter.setPen(QPen(colour(tokens.edge), 1))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(band.adjusted(0.5, 0.5, -0.5, -0.5))


def _paint_word(painter: QPainter, zone: QRectF, feel: Feel, look: RulerLook, tokens: Tokens) -> None:
    chosen = feel is _here(look)
    size = theme.TITLE if chosen else theme.BASE
    painter.setPen(colour(tokens.text if chosen else tokens.muted))
    free = _widest_free_part(zone, look)
    word = feel_word(feel)
    two_lines = word.replace(" ", "\n")
    ways = ((word, size, _WORD_ROOM), (word, theme.CAPTION, 2), (two_lines, theme.CAPTION, 2))
    for words, lettering, room in ways:
        widest = max(theme.text_width(line, lettering) for line in words.splitlines())
        if widest + room <= free.width():
            painter.setFont(theme.font(lettering))
            painter.drawText(free, Qt.AlignmentFlag.AlignCenter, words)
            return


def _widest_free_part(zone: QRectF, look: RulerLook) -> QRectF:
    """The widest part of a zone with neither the handle nor a trial's pole in it."""
    handle = x_of(look, look.value_um)
    blocked = [(handle - _HANDLE_ROOM, handle + _HANDLE_ROOM)]
    blocked += [(x - 2, x + 2) for x in (x_of(look, t.clearance_mm * 1000) for t in look.trials)]
    left, parts = zone.left(), []
    for start, end in sorted(blocked):
        if zone.left() < end and start < zone.right():
            parts.append((left, start))
            left = max(left, end)
    parts.append((left, zone.right()))
    low, high = max(parts, key=lambda part: part[1] - part[0])
    return QRectF(low, zone.top(), max(0.0, high - low), zone.height())


def _paint_scale(painter: QPainter, look: RulerLook, tokens: Tokens) -> None:
    band = band_rect(look)
    per_um = band.width() / (look.high_um - look.low_um)
    unit_um = float(look.unit.mm) * 1000
    major = round_below(_LABEL_EVERY_PX / per_um / unit_um) * unit_um
    minor = major / _MINOR_PER_MAJOR
    decimals = max(0, -math.floor(math.log10(major / unit_um) + 1e-9))
    painter.setFont(theme.font(theme.CAPTION))
    for number in range(math.ceil(look.low_um / minor), math.floor(look.high_um / minor) + 1):
        x = x_of(look, number * minor)
        is_major = number % _MINOR_PER_MAJOR == 0
        painter.setPen(QPen(colour(tokens.edge if not is_major else tokens.text), 1))
        painter.drawLine(QPointF(x, band.bottom()), QPointF(x, band.bottom() + (7 if is_major else 4)))
        if is_major and not _near_suggestion(look, x):
            places = decimals if number else 0
            text = format_length(number * minor / 1000, look.unit, decimals=places, with_unit=False)
            sign = "+" if number > 0 else ""
            half = theme.text_width(sign + text, theme.CAPTION) / 2 + 2
            middle = min(max(x, look.area.left() + half), look.area.right() - half)
            box = QRectF(middle - half, band.bottom() + 8, 2 * half, 16)
            painter.setPen(colour(tokens.muted))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, sign + text)


def _near_suggestion(look: RulerLook, x: float) -> bool:
    if look.suggestion_um is None:
        return False
    caret = x_of(look, look.suggestion_um)
    return caret - 136 < x < caret + 24


def _paint_bracket(painter: QPainter, look: RulerLook, tokens: Tokens) -> None:
    if look.bracket is None:
        return
    low, high = x_of(look, look.bracket.low_mm * 1000), x_of(look, look.bracket.high_mm * 1000)
    band = band_rect(look)
    top = band.top() - 7
    painter.fillRect(QRectF(low, top, high - low, 7), colour(tokens.text, 0.14))
    painter.setPen(QPen(colour(tokens.text), 1.5))
    painter.drawLine(QPointF(low, top), QPointF(high, top))


def _paint_trials(painter: QPainter, look: RulerLook, tokens: Tokens) -> None:
    band = band_rect(look)
    taken: list[QRectF] = []
    shown = [t for t in look.trials if look.low_um <= t.clearance_mm * 1000 <= look.high_um]
    for trial in sorted(shown, key=lambda t: not t.this_job):
        x = x_of(look, trial.clearance_mm * 1000)
        at = QPointF(x, 13)
        painter.setPen(QPen(colour(tokens.text), 1.2))
        painter.drawLine(QPointF(x, 20), QPointF(x, band.bottom()))
        painter.setBrush(colour(tokens.text if trial.this_job else tokens.panel))
        paint_trial_shape(painter, at, trial.mark, _SHAPE_PX)
        taken.append(QRectF(x - 9, 4, 18, 18))
    for trial in shown:
        _paint_trial_text(painter, look, trial, tokens, taken)


def _paint_trial_text(
    painter: QPainter, look: RulerLook, trial: TrialFlag, tokens: Tokens, taken: list[QRectF]
) -> None:
    bold, plain = theme.font(theme.TITLE), theme.font(theme.BASE)
    reading = format_length(trial.clearance_mm, look.unit, with_unit=False)
    x = x_of(look, trial.clearance_mm * 1000)
    key_width = theme.text_width(trial.key, theme.TITLE)
    for rest in (" " + _tr("{0} at {1}").format(trial.word, reading), ""):
        width = key_width + theme.text_width(rest, theme.BASE)
        sides = [x - 12 - width, x + 12]
        if trial.clearance_mm * 1000 > look.value_um:
            sides.reverse()
        for left in sides:
            box = QRectF(left, 4, width, 18)
            inside = look.area.left() <= box.left() and box.right() <= look.area.right()
            if inside and not any(box.intersects(other) for other in taken):
                painter.setPen(colour(tokens.text))
                painter.setFont(bold)
                painter.drawText(QPointF(left, 18), trial.key)
                painter.setFont(plain)
                painter.drawText(QPointF(left + key_width, 18), rest)
                taken.append(box)
                return


def _paint_suggestion(painter: QPainter, look: RulerLook, tokens: Tokens) -> None:
    if look.suggestion_um is None or not look.low_um <= look.suggestion_um <= look.high_um:
        return
    x, top = x_of(look, look.suggestion_um), band_rect(look).bottom() + 2
    painter.setPen(QPen(colour(tokens.accent), 1.8))
    painter.setBrush(colour(tokens.panel))
    painter.drawPolygon(QPolygonF([QPointF(x, top), QPointF(x + 6, top + 10), QPointF(x - 6, top + 10)]))
    text = _tr("suggested {0}").format(format_length(look.suggestion_um / 1000, look.unit, with_unit=False))
    size = theme.TypeSize(12, theme.INPUT.weight)
    width = theme.text_width(text, size)
    left = x - 12 - width if x - 12 - width > look.area.left() else x + 12
    painter.setFont(theme.font(size))
    painter.setPen(colour(tokens.accent))
    painter.drawText(QPointF(left, top + 18), text)


def _paint_handle(painter: QPainter, look: RulerLook, tokens: Tokens) -> None:
    band = band_rect(look)
    x, y = x_of(look, look.value_um), band.center().y()
    painter.setPen(QPen(colour(tokens.accent), 2))
    painter.drawLine(QPointF(x, band.top() - 6), QPointF(x, band.bottom() + 6))
    grip = QRectF(x - _HANDLE_WIDTH / 2, y - _HANDLE_HEIGHT / 2, _HANDLE_WIDTH, _HANDLE_HEIGHT)
    if look.focused:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(colour(tokens.panel), 2))
        painter.drawRoundedRect(grip.adjusted(-1, -1, 1, 1), 5, 5)
        painter.setPen(QPen(colour(tokens.focus), theme.FOCUS_RING_PX))
        painter.drawRoundedRect(grip.adjusted(-4, -4, 4, 4), 7, 7)
    painter.setPen(QPen(colour(tokens.on_accent), 1))
    painter.setBrush(colour(tokens.text if look.pressed else tokens.accent))
    painter.drawRoundedRect(grip, 4, 4)
    painter.setPen(QPen(colour(tokens.on_accent), 1.6))
    for dx in (-2.5, 2.5):
        painter.drawLine(QPointF(x + dx, y - 5), QPointF(x + dx, y + 5))


def _tr(text: str) -> str:
    return QCoreApplication.translate("ruler", text)
