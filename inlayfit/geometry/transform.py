"""Affine maps of the plane, and what they do to paths.

A `Transform` is the 2 × 3 matrix [[a, c, e], [b, d, f]]: x' = a·x + c·y + e, y' = b·x + d·y + f (the order
of the six numbers in SVG's `matrix()`). A map that keeps angles keeps arcs arcs; any other turns them into
ellipse arcs, exactly, as rational Béziers.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from inlayfit.geometry.path import Bezier, Path, Points, Segment, arc_centres

_SAME_ANGLE = 1e-12  # relative: how far a map may be from keeping angles and still keep arcs arcs


@dataclass(frozen=True, slots=True)
class Transform:
    """An affine map; see the module docstring for its numbers."""

    a: float = 1.0
    b: float = 0.0
    c: float = 0.0
    d: float = 1.0
    e: float = 0.0
    f: float = 0.0

    @classmethod
    def shift(cls, dx: float, dy: float) -> Transform:
        """Move by (dx, dy)."""
        return cls(e=dx, f=dy)

    @classmethod
    def scale(cls, sx: float, sy: float | None = None) -> Transform:
        """Scale about the origin."""
        return cls(a=sx, d=sx if sy is None else sy)

    @classmethod
    def turn(cls, angle_rad: float) -> Transform:
        """Turn about the origin, counter-clockwise for a positive angle."""
        cos, sin = math.cos(angle_rad), math.sin(angle_rad)
        return cls(cos, sin, -sin, cos)

    @classmethod
    def mirror_x(cls) -> Transform:
        """Mirror left and right: x becomes -x."""
        return cls(a=-1.0)

    def after(self, first: Transform) -> Transform:
        """The map that does `first` and then this one."""
        return Transform(
            self.a * first.a + self.c * first.b,
            self.b * first.a + self.d * first.b,
            self.a * first.c + self.c * first.d,
            self.b * first.c + self.d * first.d,
            self.a * first.e + self.c * first.f + self.e,
            self.b * first.e + self.d * first.f + self.f,
        )

    @property
    def determinant(self) -> float:
        """Signed factor by which areas grow; negative for a mirror image."""
        return self.a * self.d - self.b * self.c

    @property
    def keeps_angles(self) -> bool:
        """Whether circles stay circles (turning, mirroring, even scaling, moving)."""
        size = max(abs(self.a), abs(self.b), abs(self.c), abs(self.d))
        direct = max(abs(self.a - self.d), abs(self.b + self.c))
        mirrored = max(abs(self.a + self.d), abs(self.b - self.c))
        return min(direct, mirrored) <= _SAME_ANGLE * size

    @property
    def is_identity(self) -> bool:
        """Whether nothing moves."""
        return self == Transform()

    def points(self, points: Points) -> Points:
        """Map (n, 2) points."""
        matrix = np.array([[self.a, self.b], [self.c, self.d]])
        mapped: Points = points @ matrix + np.array([self.e, self.f])
        return mapped

    def bezier(self, curve: Bezier) -> Bezier:
        """Map a Bézier (affine maps act on control points)."""
        return Bezier(self.points(curve.control), curve.weights)

    def path(self, path: Path) -> Path:
        """Map a path; its direction follows the map, so a mirror image runs the other way round."""
        if self.is_identity:
            return path
        if not self.keeps_angles and path.bulges.any():
            path = arcs_as_curves(path)
        bulges = path.bulges if self.determinant > 0 else -path.bulges
        curves = {i: self.bezier(c) for i, c in path.curves.items()}
        return Path(self.points(path.vertices), bulges, path.closed, curves)


def arc_as_beziers(start: Points, end: Points, bulge: float) -> list[Bezier]:
    """An arc as rational quadratics of at most a quarter turn each, without error.

    The middle control point is where the end tangents meet, its weight cos(half the sweep).
    (The standard rational Bézier form of a conic.)
    """
    sweep = 4 * math.atan(bulge)
    centres, radii = arc_centres(start[None], end[None], np.array([bulge]))
    pieces = max(1, math.ceil(abs(sweep) / (math.pi / 2) - 1e-9))
    first = math.atan2(start[1] - centres[0, 1], start[0] - centres[0, 0])
    half = sweep / pieces / 2
    middles = first + half * (2 * np.arange(pieces) + 1)
    knots = first + half * 2 * np.arange(pieces + 1)
    on_circle = centres[0] + radii[0] * np.column_stack([np.cos(knots), np.sin(knots)])
    on_circle[0], on_circle[-1] = start, end
    shoulders = centres[0] + radii[0] / math.cos(half) * np.column_stack([np.cos(middles), np.sin(middles)])
    weights = np.array([1.0, math.cos(half), 1.0])
    return [Bezier(np.array([on_circle[i], shoulders[i], on_circle[i + 1]]), weights) for i in range(pieces)]


def arcs_as_curves(path: Path) -> Path:
    """The same path with every arc written as rational Béziers."""
    starts, ends = path.segment_ends()
    segments: list[Segment] = []
    for i, bulge in enumerate(path.bulges):
        if bulge:
            pieces = arc_as_beziers(starts[i], ends[i], float(bulge))
            segments += [(piece.control[-1], piece) for piece in pieces]
        else:
            segments.append((ends[i], path.curves.get(i, 0.0)))
    return Path.of_segments(path.start, segments, closed=path.closed)
