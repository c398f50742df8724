"""The legend under the gap map: each class with its stroke, letter, range and how much wall it takes."""

from __future__ import annotations

import math

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from inlayfit.app import theme
from inlayfit.app.canvas.class_look import LOOKS, ClassLook
from inlayfit.app.canvas.scene import FittingScene
from inlayfit.app.core_words import core
from inlayfit.document.class_styles import Stroke
from inlayfit.fit.classes import class_edges, classify
from inlayfit.units import Unit, format_length

_SAMPLE_PX = 28
_GAP_PX = 22
_FINE_MM = 0.05
"""Lengths of wall are said with no digit that is worth less: nobody uses them finer."""


def lengths_by_class(fitting: FittingScene) -> tuple[float, ...]:
    """Millimetres of the plug's wall in each class, from bites to loose."""
    totals = np.zeros(len(LOOKS))
    for wall in fitting.walls:
        steps = np.diff(wall.lengths)
        shares = (steps + np.roll(steps, 1)) / 2
        totals += np.bincount(classify(wall.gaps, fitting.clearance_mm), weights=shares, minlength=len(LOOKS))
    return tuple(totals.tolist())


class Legend(QWidget):
    """Says what the strokes of the band mean; drops ranges first, then lengths, when it is narrow."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("legend")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFixedHeight(36)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._entries: tuple[tuple[ClassLook, str, str], ...] = ()
        self._is_stale = False
        self.setAccessibleName(self.tr("Legend of the gap map"))

    def show_fitting(self, fitting: FittingScene | None, unit: Unit, *, is_stale: bool) -> None:
        """Say the classes of another fitting."""
        if fitting is None:
            self._entries = ()
        else:
            ranges = _ranges(fitting.clearance_mm, unit)
            lengths = lengths_by_class(fitting)
            decimals = max(0, math.floor(math.log10(float(unit.mm) / _FINE_MM)))
            self._entries = tuple(
                (look, span, format_length(length, unit, decimals=decimals))
                for look, span, length in zip(LOOKS, ranges, lengths, strict=True)
            )
        self._is_stale = is_stale
        self.setAccessibleDescription(
            ", ".join(f"{core(look.gap_class.word)} {span}: {length}" for look, span, length in self._entries)
        )
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        look = theme.tokens_of(self)
        painter = QPainter(self)
        painter.fillRect(self.rect(), theme.colour(look.panel))
        painter.fillRect(0, 0, self.width(), 1, theme.colour(look.hairline))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setOpacity(0.5 if self._is_stale else 1.0)
        detail = next((d for d in (2, 1, 0) if self._width(painter, d) <= self.width() - 48), 0)
        x = 24.0
        for entry in self._entries:
            x = self._paint_entry(painter, look, entry, x, detail) + _GAP_PX

    def _width(self, painter: QPainter, detail: int) -> float:
        return sum(
            _SAMPLE_PX + 8 + sum(w for _, w in self._texts(painter, entry, detail)) + _GAP_PX
            for entry in self._entries
        )

    @staticmethod
    def _texts(
        painter: QPainter, entry: tuple[ClassLook, str, str], detail: int
    ) -> list[tuple[tuple[str, theme.TypeSize, bool], float]]:
        look, span, length = entry
        texts = [
            (look.gap_class.letter, theme.TITLE, False),
            (core(look.gap_class.word), theme.CAPTION, False),
        ]
        texts += [(span, theme.CAPTION, True)] if detail == 2 else []
        texts += [(length, theme.TypeSize(12, theme.TITLE.weight), False)] if detail >= 1 else []
        measured = []
        for text in texts:
            painter.setFont(theme.font(text[1]))
            measured.append((text, painter.fontMetrics().horizontalAdvance(text[0]) + 6.0))
        return measured

    def _paint_entry(
        self,
        painter: QPainter,
        look: theme.Tokens,
        entry: tuple[ClassLook, str, str],
        x: float,
        detail: int,
    ) -> float:
        y = self.height() / 2
        paint_stroke(painter, entry[0], look, QPointF(x, y), _SAMPLE_PX)
        x += _SAMPLE_PX + 8
        for (text, size, muted), width in self._texts(painter, entry, detail):
            painter.setFont(theme.font(size))
            painter.setPen(theme.colour(look.muted if muted else look.text))
            painter.drawText(QRectF(x, 0, width, self.height()), int(Qt.AlignmentFlag.AlignVCenter), text)
            x += width
        return x


def paint_stroke(painter: QPainter, of: ClassLook, look: theme.Tokens, at: QPointF, length: float) -> None:
    """A short piece of a class's stroke."""
    pen = QPen(theme.colour(of.colour(look)), of.width_px, c=Qt.PenCapStyle.FlatCap)
    if of.stroke is Stroke.DASHED:
        pen.setDashPattern([2.2, 1.2])
    elif of.stroke is Stroke.DOTTED:
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        pen.setDashPattern([0.01, 1.6])
    painter.setPen(pen)
    painter.drawLine(QLineF(at.x(), at.y(), at.x() + length, at.y()))
    if of.stroke is Stroke.TICKED:
        painter.setPen(QPen(theme.colour(of.colour(look)), 2))
        for x in range(3, int(length), 6):
            painter.drawLine(QLineF(at.x() + x, at.y(), at.x() + x, at.y() + 6))


def _ranges(clearance_mm: float, unit: Unit) -> tuple[str, ...]:
    """Where each class begins and ends, in words."""
    below, on, above, far = (format_length(e, unit, with_unit=False) for e in class_edges(clearance_mm))
    upto = core("to {0}")
    return (
        core("under {0}").format(below),
        upto.format(on),
        upto.format(above),
        upto.format(far),
        core("over {0}").format(far),
    )
