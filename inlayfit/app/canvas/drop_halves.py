"""What a drop on the canvas will do: *use as pocket* on its left half, *use as plug* on its right."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import TypeAlias

from PySide6.QtCore import QCoreApplication, QMimeData, QPointF, QRectF, Qt
from PySide6.QtGui import QDropEvent, QPainter, QPen

from inlayfit.app import theme
from inlayfit.app.theme import Tokens, colour


class DropUse(StrEnum):
    """What a dropped outline becomes."""

    POCKET = "pocket"
    PLUG = "plug"


@dataclass(frozen=True, slots=True)
class DropOffer:
    """What would be dropped.

    Attributes:
        sentence: about its content ("leaf.svg: an SVG drawing"), or why it cannot be used.
        heading: what a drop does wherever it falls, if the halves mean nothing for it; else "".
        is_refused: whether nothing of it can be used.
    """

    sentence: str = ""
    heading: str = ""
    is_refused: bool = False


@dataclass(frozen=True, slots=True)
class Dropped:
    """What was dropped.

    Attributes:
        use: which half of the canvas it fell on.
        files: local paths.
        text: dropped text, where there is no file.
    """

    use: DropUse
    files: tuple[str, ...]
    text: str = ""


DropReader: TypeAlias = Callable[[QMimeData], DropOffer | None]
"""Looks at the content and says what it is, or None to refuse it."""


def any_file_or_text(data: QMimeData) -> DropOffer | None:
    """Accept local files and text without looking inside."""
    local = any(url.isLocalFile() for url in data.urls())
    return DropOffer() if local or data.hasText() else None


def dropped(data: QMimeData, use: DropUse) -> Dropped:
    """The content as plain values."""
    files = tuple(url.toLocalFile() for url in data.urls() if url.isLocalFile())
    return Dropped(use, files, "" if files else data.text())


def use_at(area: QRectF, at: QPointF) -> DropUse:
    """Which half of the canvas a point is on."""
    return DropUse.POCKET if at.x() < area.center().x() else DropUse.PLUG


def paint_drop_halves(
    painter: QPainter, area: QRectF, look: Tokens, *, over: DropUse | None, offer: DropOffer
) -> None:
    """Paint both halves over the canvas, the one under the pointer stronger."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(area, colour(look.canvas))
    inner = area.adjusted(16, 16, -16, -16)
    if offer.heading:
        paint_whole(painter, inner, look, offer)
        return
    half = (inner.width() - 16) / 2
    boxes = {
        DropUse.POCKET: QRectF(inner.left(), inner.top(), half, inner.height()),
        DropUse.PLUG: QRectF(inner.right() - half, inner.top(), half, inner.height()),
    }
    words = {DropUse.POCKET: _tr("Use as pocket"), DropUse.PLUG: _tr("Use as plug")}
    for use, box in boxes.items():
        chosen = use is over
        painter.setBrush(colour(look.accent_soft if chosen else look.panel))
        pen = QPen(colour(look.focus if chosen else look.edge), 2 if chosen else 1)
        pen.setStyle(Qt.PenStyle.SolidLine if chosen else Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.drawRoundedRect(box, 8, 8)
        _paint_pictogram(painter, box, use, look)
        painter.setPen(colour(look.text))
        painter.setFont(theme.font(theme.TypeSize(19, theme.TITLE.weight)))
        painter.drawText(box.adjusted(0, box.height() / 2 + 26, 0, 0), _TOP, words[use])
        painter.setFont(theme.font(theme.BASE))
        painter.setPen(colour(look.muted))
        painter.drawText(box.adjusted(12, box.height() / 2 + 58, -12, 0), _TOP, offer.sentence)


def paint_whole(painter: QPainter, box: QRectF, look: Tokens, offer: DropOffer) -> None:
    """Paint one field for a drop that is the same everywhere, or that is refused."""
    line = look.blocks if offer.is_refused else look.focus
    painter.setBrush(colour(look.panel if offer.is_refused else look.accent_soft))
    painter.setPen(QPen(colour(line), 2))
    painter.drawRoundedRect(box, 8, 8)
    painter.setPen(colour(look.text))
    painter.setFont(theme.font(theme.TypeSize(19, theme.TITLE.weight)))
    painter.drawText(box.adjusted(16, box.height() / 2 - 34, -16, 0), _TOP, offer.heading)
    painter.setFont(theme.font(theme.BASE))
    painter.drawText(box.adjusted(24, box.height() / 2 + 2, -24, 0), _TOP, offer.sentence)


def answer(event: QDropEvent, offer: DropOffer) -> None:
    """Answer a drag or drop: copied, or followed so that it can be said why not (its pointer says no).

    Never moved, whatever the other program proposes: told that, it may delete its file.
    """
    event.setDropAction(Qt.DropAction.IgnoreAction if offer.is_refused else Qt.DropAction.CopyAction)
    event.accept()


_TOP = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap


def _paint_pictogram(painter: QPainter, box: QRectF, use: DropUse, look: Tokens) -> None:
    """A pocket is a hole in a plate, a plug a piece of it."""
    middle = QPointF(box.center().x(), box.center().y() - 30)
    plate = QRectF(middle.x() - 46, middle.y() - 32, 92, 64)
    piece = QRectF(middle.x() - 24, middle.y() - 15, 48, 30)
    painter.setPen(QPen(colour(look.host_line), 1.5))
    if use is DropUse.POCKET:
        painter.setBrush(colour(look.host_tint))
        painter.drawRoundedRect(plate, 4, 4)
        painter.setBrush(colour(look.canvas))
    else:
        painter.setPen(QPen(colour(look.text), 1.5))
        painter.setBrush(colour(look.plug_tint))
    painter.drawRoundedRect(piece, 12, 12)


def _tr(text: str) -> str:
    return QCoreApplication.translate("map", text)
