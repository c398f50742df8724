"""Arrays of points as painter paths, without touching a point in Python.

Qt reads a painter path from a data stream: the number of elements, then each element's kind and
coordinates, then where the last figure starts and the fill rule, all big-endian (Qt documentation,
"Serializing Qt Data Types"). NumPy writes exactly those bytes.
"""

from __future__ import annotations

import struct
from collections.abc import Callable, Iterable, Sequence

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QByteArray, QDataStream, QLineF, Qt
from PySide6.QtGui import QPainterPath, QPolygonF

from inlayfit.geometry.path import Points

_ELEMENT = np.dtype([("kind", ">i4"), ("x", ">f8"), ("y", ">f8")])
_MOVE, _LINE = 0, 1
_HEAD, _TAIL = struct.Struct(">i"), struct.Struct(">ii")
_ODD_EVEN, _WINDING = Qt.FillRule.OddEvenFill.value, Qt.FillRule.WindingFill.value
_FURTHEST_PX = 1e7
"""The raster engine clips beyond this by itself; further out its arithmetic would overflow."""


def lines_path(
    lines: Iterable[Points], *, closed: bool, place: Callable[[Points], Points] | None = None
) -> QPainterPath:
    """One path with a figure per line, each (n, 2).

    Args:
        lines: the figures.
        closed: whether each ends where it began.
        place: moves all points at once, such as from millimetres to pixels.
    """
    parts = [line for line in lines if len(line) > 1]
    if not parts:
        return QPainterPath()
    if closed:
        parts = [piece for part in parts for piece in (part, part[:1])]
    stacked = np.concatenate(parts)
    elements = _elements(stacked if place is None else place(stacked), _LINE)
    lengths = [len(part) for part in parts]
    starts = np.cumsum([0, *lengths[:-1]])[:: 2 if closed else 1]
    elements["kind"][starts] = _MOVE
    stream = QDataStream(
        QByteArray(_HEAD.pack(len(elements)) + elements.tobytes() + _TAIL.pack(int(starts[-1]), _ODD_EVEN))
    )
    path = QPainterPath()
    stream >> path
    return path


def polygon_paths(
    polygons: Sequence[Points], *, place: Callable[[Points], Points] | None = None
) -> tuple[QPainterPath, ...]:
    """One path for each polygon, (n, 2). Small paths are filled many times faster than one large one."""
    if not polygons:
        return ()
    stacked = np.concatenate(polygons)
    elements = _elements(stacked if place is None else place(stacked), _LINE)
    parts, start = [], 0
    for polygon in polygons:
        end = start + len(polygon)
        elements["kind"][start] = _MOVE
        parts += [_HEAD.pack(len(polygon)), elements[start:end].tobytes(), _TAIL.pack(0, _WINDING)]
        start = end
    stream = QDataStream(QByteArray(b"".join(parts)))
    paths = tuple(QPainterPath() for _ in polygons)
    for path in paths:
        stream >> path
    return paths


def points_polygon(points: Points) -> QPolygonF:
    """Points for `drawPoints`."""
    pairs = np.ascontiguousarray(points, dtype=">f8")
    stream = QDataStream(QByteArray(_HEAD.pack(len(pairs)) + pairs.tobytes()))
    polygon = QPolygonF()
    stream >> polygon
    return polygon


def line_list(starts: Points, ends: Points) -> list[QLineF]:
    """Lines for `drawLines`."""
    return list(map(QLineF, *starts.T.tolist(), *ends.T.tolist()))


def _elements(points: Points, kind: int) -> NDArray[np.void]:
    elements = np.empty(len(points), _ELEMENT)
    clipped = np.clip(points, -_FURTHEST_PX, _FURTHEST_PX)
    elements["kind"], elements["x"], elements["y"] = kind, clipped[:, 0], clipped[:, 1]
    return elements
