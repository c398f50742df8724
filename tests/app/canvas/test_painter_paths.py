"""Painter paths from arrays are the paths Qt itself would build point by point."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainterPath

from inlayfit.app.canvas.painter_paths import line_list, lines_path, points_polygon, polygon_paths
from inlayfit.geometry.path import Points

numbers = st.floats(-1e5, 1e5)
lines = st.lists(
    st.integers(2, 12).flatmap(lambda n: arrays(np.float64, (n, 2), elements=numbers, unique=True)),
    min_size=1,
    max_size=5,
)


def point_by_point(parts: list[Points], *, closed: bool) -> QPainterPath:
    path = QPainterPath()
    for part in parts:
        path.moveTo(QPointF(*part[0].tolist()))
        for point in [*part[1:], *([part[0]] if closed else [])]:
            path.lineTo(QPointF(*point.tolist()))
    return path


def elements(path: QPainterPath) -> list[tuple[QPainterPath.ElementType, float, float]]:
    parts = [path.elementAt(i) for i in range(path.elementCount())]
    return [(part.type, part.x, part.y) for part in parts]


@given(lines, st.booleans())
def test_lines_are_the_ones_qt_builds(parts: list[Points], closed: bool) -> None:
    ours = lines_path(parts, closed=closed)
    theirs = point_by_point(parts, closed=closed)
    assert elements(ours) == elements(theirs)
    assert ours.fillRule() == Qt.FillRule.OddEvenFill


@given(lines)
def test_polygons_come_one_path_each(parts: list[Points]) -> None:
    paths = polygon_paths(parts)
    assert len(paths) == len(parts)
    for path, part in zip(paths, parts, strict=True):
        assert [(x, y) for _, x, y in elements(path)] == [tuple(p) for p in part.tolist()]
        assert path.elementAt(0).isMoveTo()
        assert path.fillRule() == Qt.FillRule.WindingFill


@given(arrays(np.float64, (7, 2), elements=numbers))
def test_points_and_lines_keep_their_coordinates(points: Points) -> None:
    polygon = points_polygon(points)
    kept = [polygon.at(k).toTuple() for k in range(polygon.size())]
    assert kept == [tuple(p) for p in points.tolist()]
    drawn = line_list(points[:-1], points[1:])
    assert [(line.x1(), line.y2()) for line in drawn] == list(
        zip(points[:-1, 0].tolist(), points[1:, 1].tolist(), strict=True)
    )


def test_nothing_gives_an_empty_path() -> None:
    assert lines_path([], closed=True).isEmpty()
    assert lines_path([np.zeros((1, 2))], closed=False).isEmpty()
    assert polygon_paths([]) == ()


def test_far_away_points_are_held_within_the_raster_engines_reach() -> None:
    path = lines_path([np.array([[0.0, 0.0], [1e300, -1e300]])], closed=False)
    assert abs(path.elementAt(1).x) <= 1e7
