"""What is marked on the fit ruler besides its value: trials, the bracket they make, a suggestion."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPolygonF


class TrialMark(Enum):
    """How a trial turned out against the feel that was wanted; each has its own shape."""

    TOO_TIGHT = "triangle"
    AS_WANTED = "diamond"
    TOO_LOOSE = "circle"


@dataclass(frozen=True, slots=True)
class TrialFlag:
    """A trial pinned on the ruler.

    Attributes:
        key: its short name, "T2".
        clearance_mm: achieved per side.
        mark: how it turned out.
        word: its feel word.
        this_job: filled if so; open for an earlier job.
    """

    key: str
    clearance_mm: float
    mark: TrialMark
    word: str
    this_job: bool = True


@dataclass(frozen=True, slots=True)
class Bracket:
    """The tightest clearance that was too loose, and the loosest that was too tight."""

    low_mm: float
    high_mm: float


def paint_trial_shape(painter: QPainter, at: QPointF, mark: TrialMark, size: float) -> None:
    """The shape of a trial about a point, with the painter's pen and brush."""
    half = size / 2
    if mark is TrialMark.TOO_LOOSE:
        painter.drawEllipse(QRectF(at.x() - half, at.y() - half, size, size))
        return
    if mark is TrialMark.TOO_TIGHT:
        corners = [(0.0, -half), (half, half), (-half, half)]
    else:
        corners = [(0.0, -half - 1), (half + 1, 0.0), (0.0, half + 1), (-half - 1, 0.0)]
    painter.drawPolygon(QPolygonF([QPointF(at.x() + x, at.y() + y) for x, y in corners]))
