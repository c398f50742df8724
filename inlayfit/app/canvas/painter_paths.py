"""Arrays of points as painter paths, without touching a point in Python.

Qt reads a painter path from a data stream: the number of elements, then each element's kind and
coordinates, then where the last figure starts and the fill rule, all big-endian (Qt documentation,
"Serializing Qt Data Types"). NumPy writes exactly those bytes.
"""

from __future__ import annotations

import struct
from collections.abc import Iterable, Sequence

import numpy as np
from PySide6.QtCore import QByteArray, QDataStream, Qt
from PySide6.QtGui import QPainterPath

from inlayfit.geometry.path import Points

_ELEMENT = np.dtype([("kind", ">i4"), ("x", ">f8"), ("y", ">f8")])
_MOVE, _LINE = 0, 1
_FURTHEST_PX = 1e7
"""The raster engine clips beyond this by itself; further out its arithmetic would overflow."""


def lines_path(lines: Iterable[Points], *, closed: bool) -> QPainterPath:
    """One path with a figure per line, each (n, 2)."""
    parts = [line for line in lines if len(line) > 1]
    if not parts:
        return QPainterPath()
    if closed:
        parts = [np.vstack([part, part[:1]]) for part in parts]
    lengths = np.array([len(part) for part in parts])
    kinds = np.full(int(lengths.sum()), _LINE)
    kinds[np.concatenate([[0], np.cumsum(lengths)[:-1]])] = _MOVE
    return _path(np.vstack(parts), kinds, Qt.FillRule.OddEvenFill)


def polygons_path(polygons: Sequence[Points] | Points) -> QPainterPath:
    """One path of polygons of equally many corners, (n, k, 2), filled as their union."""
    stacked = polygons if isinstance(polygons, np.ndarray) else _joined(polygons)
    if not len(stacked):
        return QPainterPath()
    corners = stacked.shape[1]
    kinds = np.tile([_MOVE] + [_LINE] * (corners - 1), len(stacked))
    return _path(stacked.reshape(-1, 2), kinds, Qt.FillRule.WindingFill)


def _joined(parts: Sequence[Points]) -> Points:
    return np.concatenate(parts) if parts else np.zeros((0, 4, 2))


def _path(points: Points, kinds: Points, rule: Qt.FillRule) -> QPainterPath:
    elements = np.empty(len(points), _ELEMENT)
    elements["kind"] = kinds
    clipped = np.clip(points, -_FURTHEST_PX, _FURTHEST_PX)
    elements["x"], elements["y"] = clipped[:, 0], clipped[:, 1]
    start = int(np.flatnonzero(kinds == _MOVE)[-1])
    head, tail = struct.pack(">i", len(points)), struct.pack(">ii", start, rule.value)
    stream = QDataStream(QByteArray(head + elements.tobytes() + tail))
    path = QPainterPath()
    stream >> path
    return path
