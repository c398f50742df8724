"""Where flags and numbers stand on the map: beside their spot, off the walls, off each other, in view.

The rule: try eight directions at a few distances; a place that leaves the view or covers another label is
out; of the rest, the one that covers the least wall wins, and a near one beats a far one.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSizeF

from inlayfit.geometry.path import Points

_DIRECTIONS = tuple(
    (math.cos(turn * math.pi / 4), math.sin(turn * math.pi / 4)) for turn in (1, 3, 5, 7, 2, 6, 0, 4)
)
_FAR_COST = 0.12


@dataclass(slots=True)
class Placing:
    """What already stands on the map.

    Attributes:
        view: what is visible.
        crowd: (n, 2) pixels where walls run.
        taken: rectangles of labels placed so far.
    """

    view: QRectF
    crowd: Points
    taken: list[QRectF] = field(default_factory=list)

    def take(self, rectangles: Iterable[QRectF]) -> None:
        """Keep these free of further labels."""
        self.taken.extend(rectangles)

    def place(
        self, at: QPointF, size: QSizeF, distances: Sequence[float], *, must: bool = False
    ) -> QRectF | None:
        """Find a place for a label beside a point and take it.

        Args:
            at: the point.
            size: of the label.
            distances: from the point to the label's nearest edge or corner, nearest first.
            must: place it even where it covers something.
        """
        best, lowest = None, math.inf
        for distance in distances:
            for dx, dy in _DIRECTIONS:
                box = _beside(at, size, dx, dy, distance)
                cost = self._cost(box, must=must) + _FAR_COST * distance
                if cost < lowest:
                    best, lowest = box, cost
        if best is None or (not must and lowest == math.inf):
            return None
        self.taken.append(best)
        return best

    def _cost(self, box: QRectF, *, must: bool) -> float:
        blocked = not self.view.contains(box) or any(box.intersects(other) for other in self.taken)
        if blocked and not must:
            return math.inf
        crowd = self.crowd
        inside = (
            (crowd[:, 0] > box.left() - 3)
            & (crowd[:, 0] < box.right() + 3)
            & (crowd[:, 1] > box.top() - 3)
            & (crowd[:, 1] < box.bottom() + 3)
        )
        return float(np.count_nonzero(inside)) + (1000.0 if blocked else 0.0)


def _beside(at: QPointF, size: QSizeF, dx: float, dy: float, distance: float) -> QRectF:
    """The label's box so that its edge, seen from the point in this direction, is `distance` away."""
    x = at.x() + dx * (distance + size.width() / 2)
    y = at.y() + dy * (distance + size.height() / 2)
    return QRectF(x - size.width() / 2, y - size.height() / 2, size.width(), size.height())


def leader(box: QRectF, at: QPointF) -> tuple[QPointF, QPointF]:
    """A line from the label's nearest edge to the point."""
    x = min(max(at.x(), box.left() + 8), box.right() - 8) if box.width() > 16 else box.center().x()
    y = min(max(at.y(), box.top()), box.bottom())
    if box.left() <= at.x() <= box.right() or not box.top() <= at.y() <= box.bottom():
        y = box.top() if at.y() < box.top() else box.bottom()
    else:
        x = box.left() if at.x() < box.left() else box.right()
    return QPointF(x, y), at
