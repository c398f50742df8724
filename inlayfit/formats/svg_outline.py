"""Contours while they are read: plain lists in the user units of their element, made into paths once.

An SVG element is drawn in its own coordinates and mapped by every transform above it. Arcs stay arcs until
that map is known: an even one keeps them arcs, any other turns them into rational Béziers, exactly.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import pairwise

import numpy as np

from inlayfit.geometry.path import Bezier, Path
from inlayfit.geometry.transform import Transform

Point = tuple[float, float]
_LEVEL = 1e12  # tangent of a half sweep so near a quarter turn that the chord runs through the centre
_SAME_POINT = 1e-12  # relative to the largest coordinate: rounding of relative coordinates, not a gap


@dataclass(slots=True)
class Outline:
    """One contour being read.

    Attributes:
        points: its vertices, the start first; a closed one may repeat its start at its end.
        bulges: arcs, by segment number.
        curves: control points of Béziers by segment number, both ends included.
        weights: weights of those curves that are rational.
    """

    points: list[Point]
    bulges: dict[int, float] = field(default_factory=dict)
    curves: dict[int, Sequence[Point]] = field(default_factory=dict)
    weights: dict[int, Sequence[float]] = field(default_factory=dict)
    closed: bool = False

    def line_to(self, end: Point) -> None:
        """A straight piece."""
        self.points.append(end)

    def curve_to(self, *rest: Point, weights: Sequence[float] | None = None) -> None:
        """A Bézier through the control points after the current one."""
        number = len(self.points) - 1
        self.curves[number] = (self.points[-1], *rest)
        if weights is not None:
            self.weights[number] = weights
        self.points.append(rest[-1])

    def arc_to(self, end: Point, radii: Point, turn_deg: float, *, large: bool, left: bool) -> None:
        """An elliptical arc by its end points.

        Radii too small are enlarged, a zero radius means a line (SVG 2, sections 9.5.1 and B.2.5).
        `left` is SVG's sweep flag: towards growing angles in SVG's own coordinates.
        """
        start = self.points[-1]
        rx, ry = abs(radii[0]), abs(radii[1])
        if start == end:
            return
        if rx == 0 or ry == 0:
            self.line_to(end)
            return
        # In coordinates where the ellipse is the unit circle, the arc is a circular one.
        turn = math.radians(turn_deg % 360) if rx != ry else 0.0
        cos, sin = math.cos(turn), math.sin(turn)
        dx, dy = end[0] - start[0], end[1] - start[1]
        u, v = (dx * cos + dy * sin) / rx, (dy * cos - dx * sin) / ry
        half_sweep = math.asin(min(1.0, math.hypot(u, v) / 2))  # half chord = sin(sweep / 2)
        half_sweep = math.pi - half_sweep if large else half_sweep
        half_sweep = half_sweep if left else -half_sweep
        if half_sweep == 0:  # radii beyond all measure: no bend is left
            self.line_to(end)
        elif rx == ry:
            self._circle_arc(start, end, math.tan(half_sweep / 2))
        else:
            from_circle = Transform(cos * rx, sin * rx, -sin * ry, cos * ry, start[0], start[1])
            self._ellipse_arc((u, v), half_sweep, from_circle, end)

    def _circle_arc(self, start: Point, end: Point, bulge: float) -> None:
        """One arc, or two where it turns further than half a circle."""
        if abs(bulge) <= 1:
            self.bulges[len(self.points) - 1] = bulge
            self.points.append(end)
            return
        # The arc's middle lies off the chord's middle by bulge · half chord, to the right of a left turn.
        (x0, y0), (x1, y1) = start, end
        middle = ((x0 + x1) / 2 + bulge * (y1 - y0) / 2, (y0 + y1) / 2 - bulge * (x1 - x0) / 2)
        half = math.tan(math.atan(bulge) / 2)
        for point in (middle, end):
            self.bulges[len(self.points) - 1] = half
            self.points.append(point)

    def _ellipse_arc(self, chord: Point, half_sweep: float, from_circle: Transform, end: Point) -> None:
        """A circular arc from the origin along `chord`, mapped, as rational quadratics.

        Each piece turns a quarter at most; its middle control point is where its end tangents meet, with the
        weight cos(half its sweep).
        """
        u, v = chord
        offset = 1 / math.tan(half_sweep) / 2 if abs(math.tan(half_sweep)) < _LEVEL else 0.0
        centre_u, centre_v = u / 2 - v * offset, v / 2 + u * offset
        radius = math.hypot(centre_u, centre_v)
        first = math.atan2(-centre_v, -centre_u)
        pieces = max(1, math.ceil(abs(half_sweep) / (math.pi / 4) - 1e-9))
        step = half_sweep / pieces  # half of one piece's sweep
        weights = (1.0, math.cos(step), 1.0)
        for piece in range(pieces):
            middle, last = first + (2 * piece + 1) * step, first + (2 * piece + 2) * step
            reach = radius / weights[1]
            tip = (centre_u + reach * math.cos(middle), centre_v + reach * math.sin(middle))
            stop = (centre_u + radius * math.cos(last), centre_v + radius * math.sin(last))
            after = end if piece == pieces - 1 else _mapped(from_circle, stop)
            self.curve_to(_mapped(from_circle, tip), after, weights=weights)

    def placed(self, transform: Transform) -> Path:
        """The path, mapped; a closed one does not repeat its first vertex, and no straight piece is empty."""
        with np.errstate(all="ignore"):
            self._leave_out_empty_pieces()
            keeps_arcs = not self.bulges or transform.keeps_angles
            path = self._path(transform if keeps_arcs else Transform())
            return path if keeps_arcs else transform.path(path)

    def _path(self, transform: Transform) -> Path:
        vertices = transform.points(np.array(self.points, dtype=float))
        closed = self.closed and len(vertices) > 2
        bulges = np.zeros(len(vertices) - 1)
        if self.bulges:
            sign = 1.0 if transform.determinant > 0 else -1.0
            bulges[list(self.bulges)] = [sign * bulge for bulge in self.bulges.values()]
        if closed:
            vertices = vertices[:-1]
        return Path(vertices, bulges, closed, self._mapped_curves(transform))

    def _mapped_curves(self, transform: Transform) -> dict[int, Bezier]:
        """All curves at once: one product for all control points."""
        if not self.curves:
            return {}
        flat = [point for control in self.curves.values() for point in control]
        mapped = transform.points(np.array(flat, dtype=float))
        curves: dict[int, Bezier] = {}
        first = 0
        for number, control in self.curves.items():
            weights = self.weights.get(number)
            piece = mapped[first : first + len(control)]
            curves[number] = Bezier(piece, None if weights is None else np.array(weights))
            first += len(control)
        return curves

    def _leave_out_empty_pieces(self) -> None:
        """End a closed contour exactly at its start, and drop straight pieces without length."""
        points = self.points
        if self.closed:
            (x0, y0), (x1, y1) = points[0], points[-1]
            slack = _SAME_POINT * max(abs(x0), abs(y0), abs(x1), abs(y1))
            if max(abs(x1 - x0), abs(y1 - y0)) > slack or len(points) == 1:
                points.append(points[0])
            else:
                points[-1] = points[0]
        if len(points) == 2:
            return
        pairs = enumerate(pairwise(points))
        empty = {number for number, (before, after) in pairs if before == after} - self.curves.keys()
        if not empty:
            return
        kept = [number for number in range(len(points) - 1) if number not in empty]
        renumbered = {number: place for place, number in enumerate(kept)}
        self.points = [points[0], *(points[number + 1] for number in kept)]
        self.bulges = {renumbered[n]: b for n, b in self.bulges.items() if n in renumbered}
        self.curves = {renumbered[n]: c for n, c in self.curves.items()}
        self.weights = {renumbered[n]: w for n, w in self.weights.items()}


def _mapped(t: Transform, point: Point) -> Point:
    x, y = point
    return t.a * x + t.c * y + t.e, t.b * x + t.d * y + t.f
