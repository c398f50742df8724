"""The area of a HATCH, and whether the same edge is also drawn as lines.

Drawing programs fill an outline by a hatch that repeats its edge. Where that edge exists as lines, these
are the drawing and the hatch would count the area twice; where it does not, the hatch is all there is.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np
import shapely
from ezdxf.entities.boundary_paths import ArcEdge, EllipseEdge, LineEdge, PolylinePath, SplineEdge
from ezdxf.math import BSpline, Vec3, fit_points_to_cad_cv

from inlayfit.drawing import Figure
from inlayfit.formats.dxf_shapes import (
    NoShapeError,
    Shape,
    arc_path,
    ellipse_path,
    sweep_between,
    turn_between,
    vertices_path,
)
from inlayfit.formats.dxf_spline import even_knots, spline_path
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path, Points, Segment

_SAME_EDGE = 1e-3  # of the hatch's size: how near its edge must lie to lines to be the same
_MOSTLY = 0.9
_TEXT_BOX = 8
_PROBES = 64


def hatch_shapes(entity: Any) -> list[Shape]:
    """The closed paths that bound a hatch, in its plane.

    Raises:
        NoShapeError: it has no boundary.
    """
    paths = [_boundary(boundary) for boundary in entity.paths if not boundary.path_type_flags & _TEXT_BOX]
    if not paths:
        raise NoShapeError("a hatch without edge")
    normal, height = Vec3(entity.dxf.extrusion), Vec3(entity.dxf.elevation).z
    return [Shape(path, normal, height) for path in paths]


def _boundary(boundary: Any) -> Path:
    if isinstance(boundary, PolylinePath):
        rows = np.array([(v[0], v[1], v[2]) for v in boundary.vertices], dtype=float).reshape(-1, 3)
        return vertices_path(rows[:, :2], rows[:, 2], closed=True)[0]
    edges = [_edge(edge) for edge in boundary.edges]
    if not edges:
        raise NoShapeError("a hatch without edge")
    if len(edges) == 1:
        return edges[0].joined_closed()
    return _joined(edges)


def _joined(edges: Sequence[Path]) -> Path:
    """Edges in order as one closed path; each end is taken for the next start, gaps become lines."""
    first = edges[0].start
    segments: list[Segment] = []
    here = first
    for edge in edges:
        if math.dist(edge.start, here) > 0:
            segments.append((edge.start, 0.0))
        _, ends = edge.segment_ends()
        shapes = [edge.curves.get(i, float(b)) for i, b in enumerate(edge.bulges)]
        segments += list(zip(ends, shapes, strict=True))
        here = edge.end
    return Path.of_segments(first, segments, closed=False).joined_closed()


def _edge(edge: Any) -> Path:
    if isinstance(edge, LineEdge):
        return Path.polyline([tuple(edge.start)[:2], tuple(edge.end)[:2]], closed=False)
    if isinstance(edge, ArcEdge):
        sweep = turn_between(edge.start_angle, edge.end_angle)
        path = arc_path(tuple(edge.center)[:2], edge.radius, math.radians(edge.start_angle), sweep)
        return path if edge.ccw else path.reversed()
    if isinstance(edge, EllipseEdge):
        major = Vec3(edge.major_axis)
        minor = Vec3(-major.y, major.x, 0) * edge.ratio
        sweep = sweep_between(edge.start_param, edge.end_param)
        path = ellipse_path(Vec3(edge.center).xyz, major.xyz, minor.xyz, edge.start_param, sweep)
        return path if edge.ccw else path.reversed()
    if isinstance(edge, SplineEdge):
        return _spline_edge(edge)
    raise NoShapeError("an edge of an unknown kind")


def _spline_edge(edge: SplineEdge) -> Path:
    if edge.control_points:
        control = [tuple(p)[:2] for p in edge.control_points]
        knots = list(edge.knot_values) or even_knots(len(control), edge.degree)
        return spline_path(control, edge.degree, knots, edge.weights or None)
    if len(edge.fit_points) < 2:
        raise NoShapeError("a spline without points")
    fitted: BSpline = fit_points_to_cad_cv(edge.fit_points)
    return spline_path([p.xyz[:2] for p in fitted.control_points], fitted.degree, list(fitted.knots()))


class DrawnLines:
    """The linework of a drawing, to be asked whether an edge is among it."""

    def __init__(self, figures: Sequence[Figure]) -> None:
        self._lines: list[Points] = []
        for figure in figures:
            for path in figure.contours:
                if path.is_finite() and path.segment_count:
                    points = flatten(path, _coarse(path))
                    self._lines.append(np.vstack([points, points[:1]]) if path.closed else points)
        self._tree: shapely.STRtree | None = None

    def hold(self, edge: Path) -> bool:
        """Whether nearly all of an edge lies on lines."""
        if not self._lines:
            return False
        if self._tree is None:
            self._tree = shapely.STRtree([shapely.LineString(line) for line in self._lines])
        x0, y0, x1, y1 = edge.bounds()
        near = max(x1 - x0, y1 - y0) * _SAME_EDGE
        ring = shapely.LineString(flatten(edge.joined_closed(), max(near / 4, 1e-9)))
        probes = shapely.line_interpolate_point(ring, (np.arange(_PROBES) + 0.37) / _PROBES, normalized=True)
        hits = self._tree.query(probes, predicate="dwithin", distance=near)
        return len(np.unique(hits[0])) >= _MOSTLY * _PROBES


def _coarse(path: Path) -> float:
    x0, y0, x1, y1 = path.bounds()
    return max(max(x1 - x0, y1 - y0) * _SAME_EDGE / 8, 1e-9)
