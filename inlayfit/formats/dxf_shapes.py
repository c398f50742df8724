"""One DXF entity as a path: true arcs stay arcs, ellipses and splines become Béziers, without error.

A *shape* is a path in the plane of its entity. The plane is given by its normal (the extrusion vector) and
its height along it, by the arbitrary axis algorithm of the DXF reference; LINE, SPLINE and ELLIPSE are in
world coordinates already. A shape's `width` tells a line with a width from a thin one.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from ezdxf.math import Vec3

from inlayfit.formats.dxf_spline import even_knots, spline_path
from inlayfit.geometry.path import Path, Points
from inlayfit.geometry.transform import Transform

UP = Vec3(0, 0, 1)
_FULL_TURN = 2 * math.pi
_ROUNDED_TURN = 2e-4  # radians: four decimals
_SAME_END = 1e-9  # relative to the size of a shape: its ends coincide
_SPLINE_FRAME = 16
_SPLINE_FIT = 8
_CLOSED = 1


class NoShapeError(ValueError):
    """The entity has no size, or numbers that describe nothing."""


@dataclass(frozen=True, slots=True)
class Shape:
    """A path in the plane of its entity.

    Attributes:
        path: the path.
        normal: of its plane.
        height: of its plane along the normal.
        is_flat: whether all its points have that height.
        is_wide: whether the line has a width of its own.
        dropped: pieces without length that were left out.
    """

    path: Path
    normal: Vec3 = UP
    height: float = 0.0
    is_flat: bool = True
    is_wide: bool = False
    dropped: int = 0


def shape_of(entity: Any) -> Shape:
    """The shape of a drawing entity of a kind in `MAKERS`.

    Raises:
        NoShapeError: it has none.
    """
    return MAKERS[entity.dxftype()](entity)


def arc_path(centre: Sequence[float], radius: float, start_rad: float, sweep_rad: float) -> Path:
    """An arc, counter-clockwise for a positive sweep; a full turn is closed, more than half is two arcs."""
    if not radius > 0 or not math.isfinite(radius):
        raise NoShapeError("a circle without radius")
    if abs(sweep_rad) >= _FULL_TURN * (1 - 1e-12):
        circle = Path.circle(centre, radius)
        return circle if sweep_rad > 0 else circle.reversed()
    if sweep_rad == 0:
        raise NoShapeError("an arc without length")
    pieces = 2 if abs(sweep_rad) > math.pi else 1
    angles = start_rad + sweep_rad * np.arange(pieces + 1) / pieces
    points = np.asarray(centre)[:2] + radius * np.column_stack([np.cos(angles), np.sin(angles)])
    return Path(points, np.full(pieces, math.tan(sweep_rad / pieces / 4)), closed=False)


def ellipse_path(
    centre: Sequence[float], major: Sequence[float], minor: Sequence[float], start: float, sweep: float
) -> Path:
    """An ellipse arc from half axes, by parameters; closed if it is whole."""
    if not all(math.hypot(v[0], v[1]) > 0 for v in (major, minor)):
        raise NoShapeError("an ellipse without width")
    affine = Transform(major[0], major[1], minor[0], minor[1], centre[0], centre[1])
    return affine.path(arc_path((0.0, 0.0), 1.0, start, sweep))


def vertices_path(points: Points, bulges: Points, *, closed: bool) -> tuple[Path, int]:
    """A path through vertices with bulges, and how many pieces without length were left out."""
    if not (np.isfinite(points).all() and np.isfinite(bulges).all()):
        raise NoShapeError("a vertex that is not finite")
    following = np.roll(points, -1, axis=0)
    moves = (points != following).any(axis=1)
    if not closed and len(points):
        moves[-1] = True
    kept, kept_bulges = points[moves], bulges[moves]
    dropped = int(len(points) - len(kept))
    if len(kept) < 2:
        raise NoShapeError("a polyline without length")
    return Path(kept, kept_bulges if closed else kept_bulges[:-1], closed), dropped


def _circle(entity: Any) -> Shape:
    dxf = entity.dxf
    path = arc_path(dxf.center.vec2, dxf.radius, 0.0, _FULL_TURN)
    return Shape(path, Vec3(dxf.extrusion), dxf.center.z)


def _arc(entity: Any) -> Shape:
    dxf = entity.dxf
    start, end = float(dxf.start_angle), float(dxf.end_angle)
    path = arc_path(dxf.center.vec2, dxf.radius, math.radians(start), turn_between(start, end))
    return Shape(path, Vec3(dxf.extrusion), dxf.center.z)


def turn_between(start_deg: float, end_deg: float) -> float:
    """The counter-clockwise sweep in radians; a whole turn if the angles differ by one."""
    return sweep_between(math.radians(start_deg), math.radians(end_deg))


def sweep_between(start_rad: float, end_rad: float) -> float:
    """The counter-clockwise sweep from one angle to another.

    Writers round: 6.2832 is meant as a whole turn, not as a turn and a bit, which would be the bit alone.
    """
    if not (math.isfinite(start_rad) and math.isfinite(end_rad)) or start_rad == end_rad:
        raise NoShapeError("an arc without length")
    if abs(abs(end_rad - start_rad) - _FULL_TURN) <= _ROUNDED_TURN:
        return _FULL_TURN
    return (end_rad - start_rad) % _FULL_TURN or _FULL_TURN


def _ellipse(entity: Any) -> Shape:
    dxf = entity.dxf
    major, centre = Vec3(dxf.major_axis), Vec3(dxf.center)
    normal = Vec3(dxf.extrusion).normalize()
    minor = normal.cross(major) * dxf.ratio
    sweep = sweep_between(float(dxf.start_param), float(dxf.end_param))
    path = ellipse_path(centre.xyz, major.xyz, minor.xyz, dxf.start_param, sweep)
    flat = abs(major.z) + abs(minor.z) <= 1e-9 * major.magnitude
    return Shape(path, UP, centre.z, is_flat=flat)


def _spline(entity: Any) -> Shape:
    control = np.array([(p[0], p[1], p[2]) for p in entity.control_points], dtype=float).reshape(-1, 3)
    if len(control):
        degree = int(entity.dxf.degree)
        knots = [float(k) for k in entity.knots] or even_knots(len(control), degree)
        weights = [float(w) for w in entity.weights] or None
    elif len(entity.fit_points) >= 2:
        fitted = entity.construction_tool()
        control = np.array([p.xyz for p in fitted.control_points])
        degree, knots, weights = fitted.degree, list(fitted.knots()), None
    else:
        raise NoShapeError("a spline without points")
    path = spline_path(control[:, :2], degree, knots, weights)
    flat = bool(np.ptp(control[:, 2]) <= 1e-9 * (1 + np.abs(control).max()))
    return Shape(_closed_if_it_returns(path), UP, float(control[0, 2]), is_flat=flat)


def _closed_if_it_returns(path: Path) -> Path:
    x0, y0, x1, y1 = path.bounds()
    size = max(x1 - x0, y1 - y0)
    if not size > 0:
        raise NoShapeError("a spline without length")
    if path.segment_count < 2 or math.dist(path.start, path.end) > _SAME_END * size:
        return path
    last = path.segment_count - 1
    curves = dict(path.curves)
    if last in curves:
        control = np.array(curves[last].control)
        control[-1] = path.start
        curves[last] = type(curves[last])(control, curves[last].weights)
    return Path(path.vertices[:-1], path.bulges, True, curves)


def _lwpolyline(entity: Any) -> Shape:
    rows = np.array(entity.lwpoints.values, dtype=float).reshape(-1, 5)  # x, y, two widths, bulge
    path, dropped = vertices_path(rows[:, :2], rows[:, 4], closed=bool(entity.closed))
    wide = bool(rows[:, 2:4].any()) or bool(entity.dxf.get("const_width", 0.0))
    return Shape(path, Vec3(entity.dxf.extrusion), entity.dxf.elevation, is_wide=wide, dropped=dropped)


def _polyline(entity: Any) -> Shape:
    if entity.is_polygon_mesh or entity.is_poly_face_mesh:
        raise TypeError("a mesh")
    vertices = list(entity.vertices)
    if any(v.dxf.flags & _SPLINE_FIT for v in vertices):
        vertices = [v for v in vertices if not v.dxf.flags & _SPLINE_FRAME]
    points = np.array([v.dxf.location.xyz for v in vertices], dtype=float).reshape(-1, 3)
    bulges = np.array([v.dxf.get("bulge", 0.0) for v in vertices], dtype=float)
    if len(points) == 0:
        raise NoShapeError("a polyline without vertices")
    closed = bool(entity.dxf.flags & _CLOSED)
    if entity.is_3d_polyline:
        path, dropped = vertices_path(points[:, :2], np.zeros(len(points)), closed=closed)
        flat = bool(np.ptp(points[:, 2]) <= 1e-9 * (1 + np.abs(points).max()))
        return Shape(path, UP, float(points[0, 2]), is_flat=flat, dropped=dropped)
    path, dropped = vertices_path(points[:, :2], bulges, closed=closed)
    height = Vec3(entity.dxf.get("elevation", (0, 0, 0))).z or float(points[0, 2])
    return Shape(
        path, Vec3(entity.dxf.extrusion), height, is_wide=_has_width(entity, vertices), dropped=dropped
    )


def _has_width(entity: Any, vertices: list[Any]) -> bool:
    own = entity.dxf.get("default_start_width", 0) or entity.dxf.get("default_end_width", 0)
    return bool(own) or any(v.dxf.get("start_width", 0) or v.dxf.get("end_width", 0) for v in vertices)


def solid_shape(entity: Any) -> Shape:
    """The filled area of a SOLID or TRACE: its third and fourth corner are crossed over (DXF reference)."""
    dxf = entity.dxf
    corners = [dxf.vtx0, dxf.vtx1, dxf.get("vtx3", dxf.vtx2), dxf.vtx2]
    points = np.array([Vec3(p).xyz for p in corners])
    path, _ = vertices_path(points[:, :2], np.zeros(4), closed=True)
    return Shape(path, Vec3(dxf.extrusion), float(points[0, 2]))


MAKERS: dict[str, Callable[[Any], Shape]] = {
    "CIRCLE": _circle,
    "ARC": _arc,
    "ELLIPSE": _ellipse,
    "SPLINE": _spline,
    "LWPOLYLINE": _lwpolyline,
    "POLYLINE": _polyline,
}
"""How the path of each kind of entity is made; lines are so many that the reader takes them itself."""
