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
_FAR_COST = 0.06
_STAYING = 6.0
_BLOCKED = 1000.0


@dataclass(slots=True)
class Placing:
    """What already stands on the map.

    Attributes:
        view: what is visible.
        crowd: (n, 2) pixels where walls run.
        before: number of the place that each label had last time, by its name; it is updated.
        taken: rectangles of labels placed so far.
    """

    view: QRectF
    crowd: Points
    before: dict[str, int]
    taken: list[QRectF] = field(default_factory=list)

    def take(self, rectangles: Iterable[QRectF]) -> None:
        """Keep these free of further labels."""
        self.taken.extend(rectangles)

    def is_free(self, box: QRectF) -> bool:
        """Whether a label here would cover nothing and be in view."""
        corners = np.array([[box.left(), box.top(), box.right(), box.bottom()]])
        return bool(self._costs(corners)[0] == 0)

    def place(
        self, name: str, at: QPointF, size: QSizeF, distances: Sequence[float], *, must: bool = False
    ) -> QRectF | None:
        """Find a place for a label beside a point and take it.

        Args:
            name: of the label; it rather stays where it was than wander for little gain.
            at: the point.
            size: of the label.
            distances: from the point to the label's nearest edge or corner, nearest first.
            must: place it even where it covers something.
        """
        boxes = _candidates(at, size, distances)
        costs = self._costs(boxes) + _FAR_COST * np.repeat(distances, len(_DIRECTIONS))
        last = self.before.get(name)
        if last is not None and last < len(costs):
            costs[last] -= _STAYING
        best = int(costs.argmin())
        self.before[name] = best
        if costs[best] >= _BLOCKED and not must:
            return None
        x0, y0, x1, y1 = boxes[best].tolist()
        box = QRectF(x0, y0, x1 - x0, y1 - y0)
        self.taken.append(box)
        return box

    def _costs(self, boxes: Points) -> Points:
        """Places of a wall that each box (x0, y0, x1, y1) covers; far more if it must not stand there."""
        x0, y0, x1, y1 = (boxes[:, k : k + 1] for k in range(4))
        x, y = self.crowd[:, 0], self.crowd[:, 1]
        covered = (x > x0 - 3) & (x < x1 + 3) & (y > y0 - 3) & (y < y1 + 3)
        view = self.view
        out = (x0 < view.left()) | (y0 < view.top()) | (x1 > view.right()) | (y1 > view.bottom())
        taken = np.array([(b.left(), b.top(), b.right(), b.bottom()) for b in self.taken]).reshape(-1, 4)
        hits = (taken[:, 0] < x1) & (taken[:, 2] > x0) & (taken[:, 1] < y1) & (taken[:, 3] > y0)
        costs: Points = covered.sum(axis=1) + _BLOCKED * (out[:, 0] | hits.any(axis=1))
        return costs


def _candidates(at: QPointF, size: QSizeF, distances: Sequence[float]) -> Points:
    """Boxes (x0, y0, x1, y1) so that the edge, seen from the point, is one of the distances away."""
    half = np.array([size.width() / 2, size.height() / 2])
    steps = np.array(distances)[:, None, None] + half
    middles = (np.array(_DIRECTIONS)[None] * steps).reshape(-1, 2) + np.array([at.x(), at.y()])
    return np.hstack([middles - half, middles + half])


def leader(box: QRectF, at: QPointF) -> tuple[QPointF, QPointF]:
    """A line from the label's nearest edge to the point."""
    x = min(max(at.x(), box.left() + 8), box.right() - 8) if box.width() > 16 else box.center().x()
    y = min(max(at.y(), box.top()), box.bottom())
    if box.left() <= at.x() <= box.right() or not box.top() <= at.y() <= box.bottom():
        y = box.top() if at.y() < box.top() else box.bottom()
    else:
        x = box.left() if at.x() < box.left() else box.right()
    return QPointF(x, y), at
