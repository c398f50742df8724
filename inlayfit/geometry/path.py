"""A path: one connected line of straight pieces, true arcs and true curves, open or closed.

Terms
    vertex: a point where two segments meet. A closed path does not repeat its first vertex.
    segment i: runs from vertex i to vertex i+1 (of a closed path, the last one returns to vertex 0).
    bulge: tan(sweep/4) of an arc segment; 0 is straight, positive turns left (counter-clockwise), 1 is
        half a circle. (DXF reference, VERTEX group 42.)
    curve: a segment that is neither straight nor an arc: a Bézier of any degree, rational if it has
        weights. Ellipse arcs are rational Béziers of degree two, splines are split into Béziers; both
        without error.

Vertices and bulges are arrays, curves the exception, so a polyline of 100,000 points stays cheap. A path
is a value: its arrays are read-only and no operation changes it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any, TypeAlias

import numpy as np
from numpy.typing import ArrayLike, NDArray

Points: TypeAlias = NDArray[np.float64]
"""An (n, 2) array of points, or an (n,) array of numbers, as the name says."""

_CURVE_STEPS = np.linspace(0, 1, 257)
_NO_CURVES: Mapping[int, Bezier] = MappingProxyType({})


def frozen_array(values: ArrayLike, *, columns: int | None = None) -> Points:
    """A read-only float array; (n, columns) if `columns` is given, else (n,)."""
    array = np.array(values, dtype=float)
    array = array.reshape(-1) if columns is None else array.reshape(-1, columns)
    array.flags.writeable = False
    return array


def _same(one: Points, other: Points) -> bool:
    """Whether two arrays are equal; equal bytes, the usual case, are found ten times faster."""
    return one.tobytes() == other.tobytes() or np.array_equal(one, other)


@dataclass(frozen=True, eq=False, slots=True)
class Bezier:
    """A Bézier segment with its two end points; rational if `weights` is not None.

    Attributes:
        control: (d+1, 2) control points, d the degree.
        weights: (d+1,) positive weights, or None.
    """

    control: Points
    weights: Points | None = None

    def __post_init__(self) -> None:
        object.__setattr__(self, "control", frozen_array(self.control, columns=2))
        if self.weights is not None:
            object.__setattr__(self, "weights", frozen_array(self.weights))

    @property
    def degree(self) -> int:
        """One less than the number of control points."""
        return len(self.control) - 1

    def reversed(self) -> Bezier:
        """The same curve, run through from its end."""
        return Bezier(self.control[::-1], None if self.weights is None else self.weights[::-1])

    def at(self, parameters: Points) -> Points:
        """Points at parameters in [0, 1], shape (n, 2), by de Casteljau's scheme (stable for any degree)."""
        t = np.asarray(parameters, dtype=float)[:, None, None]
        weights = np.ones(len(self.control)) if self.weights is None else self.weights
        rows = np.column_stack([self.control * weights[:, None], weights])[None, :, :]
        rows = np.repeat(rows, len(t), axis=0)
        for _ in range(self.degree):
            rows = rows[:, :-1] * (1 - t) + rows[:, 1:] * t
        homogeneous: Points = rows[:, 0, :]
        return homogeneous[:, :2] / homogeneous[:, 2:]

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Bezier):
            return NotImplemented
        if (self.weights is None) != (other.weights is None):
            return False
        if self.weights is not None and other.weights is not None:
            return _same(self.weights, other.weights) and _same(self.control, other.control)
        return _same(self.control, other.control)

    def __hash__(self) -> int:
        return hash(self.control.tobytes())


@dataclass(frozen=True, eq=False, slots=True)
class Path:
    """One connected line. See the module docstring for the terms.

    Attributes:
        vertices: (n, 2) array.
        bulges: one number a segment: n of a closed path, n - 1 of an open one. 0 where a curve stands.
        closed: whether the last vertex is joined to the first.
        curves: the segments that are Béziers, by segment number; their ends equal the vertices.
    """

    vertices: Points
    bulges: Points
    closed: bool = True
    curves: Mapping[int, Bezier] = field(default_factory=lambda: _NO_CURVES)

    def __post_init__(self) -> None:
        object.__setattr__(self, "vertices", frozen_array(self.vertices, columns=2))
        object.__setattr__(self, "bulges", frozen_array(self.bulges))
        object.__setattr__(self, "curves", MappingProxyType(dict(self.curves)) if self.curves else _NO_CURVES)
        expected = len(self.vertices) if self.closed else len(self.vertices) - 1
        if len(self.vertices) < 1 or len(self.bulges) != expected:
            raise ValueError(f"{len(self.vertices)} vertices need {expected} bulges, not {len(self.bulges)}")

    @classmethod
    def polyline(cls, points: ArrayLike, *, closed: bool = True) -> Path:
        """Straight pieces through (n, 2) points."""
        array = frozen_array(points, columns=2)
        return cls(array, np.zeros(len(array) if closed else len(array) - 1), closed=closed)

    @classmethod
    def circle(cls, centre: Sequence[float], radius: float) -> Path:
        """A full circle, counter-clockwise, as two half-circle arcs from its rightmost point."""
        x, y = centre
        return cls(np.array([[x + radius, y], [x - radius, y]]), np.ones(2))

    @classmethod
    def of_segments(
        cls, start: Sequence[float] | Points, segments: Iterable[Segment], *, closed: bool
    ) -> Path:
        """Build from a start point and segments in order; a closed path must end where it started."""
        vertices: list[Any] = [tuple(start)]
        bulges: list[float] = []
        curves: dict[int, Bezier] = {}
        for number, (end, shape) in enumerate(segments):
            vertices.append(tuple(end))
            if isinstance(shape, Bezier):
                curves[number] = shape
                bulges.append(0.0)
            else:
                bulges.append(shape)
        if closed:
            vertices.pop()
        return cls(np.array(vertices, dtype=float), np.array(bulges, dtype=float), closed, curves)

    @property
    def segment_count(self) -> int:
        """How many segments the path has."""
        return len(self.bulges)

    @property
    def start(self) -> Points:
        """The first point, shape (2,)."""
        first: Points = self.vertices[0]
        return first

    @property
    def end(self) -> Points:
        """The last point, shape (2,); of a closed path the first again."""
        last: Points = self.vertices[0 if self.closed else -1]
        return last

    def segment_ends(self) -> tuple[Points, Points]:
        """Start and end points of all segments, each (m, 2)."""
        if self.closed:
            return self.vertices, np.roll(self.vertices, -1, axis=0)
        return self.vertices[:-1], self.vertices[1:]

    def reversed(self) -> Path:
        """The same line, run through the other way; a closed path keeps its first vertex."""
        count = self.segment_count
        if self.closed:
            vertices = np.roll(self.vertices[::-1], 1, axis=0)
            curves = {count - 1 - i: c.reversed() for i, c in self.curves.items()}
            return Path(vertices, -self.bulges[::-1], True, curves)
        curves = {count - 1 - i: c.reversed() for i, c in self.curves.items()}
        return Path(self.vertices[::-1], -self.bulges[::-1], False, curves)

    def joined_closed(self) -> Path:
        """An open path closed: its end becomes its start if they coincide, else a line joins them."""
        if self.closed:
            return self
        if len(self.vertices) > 1 and np.array_equal(self.vertices[0], self.vertices[-1]):
            return Path(self.vertices[:-1], self.bulges, True, self.curves)
        return Path(self.vertices, np.append(self.bulges, 0.0), True, self.curves)

    def bounds(self) -> tuple[float, float, float, float]:
        """The box round the path; exact for lines and arcs, within a hundred-thousandth of a curve's size."""
        points = [self.vertices]
        arcs = np.flatnonzero(self.bulges)
        if len(arcs):
            starts, ends = self.segment_ends()
            points.append(_arc_extremes(starts[arcs], ends[arcs], self.bulges[arcs]))
        stacked = np.vstack(points)
        low, high = stacked.min(axis=0), stacked.max(axis=0)
        reaching = [curve.at(_CURVE_STEPS) for curve in self._curves_beyond(low, high)]
        if reaching:
            curved = np.vstack(reaching)
            low, high = np.minimum(low, curved.min(axis=0)), np.maximum(high, curved.max(axis=0))
        return float(low[0]), float(low[1]), float(high[0]), float(high[1])

    def _curves_beyond(self, low: Points, high: Points) -> list[Bezier]:
        """The curves that may leave a box: those with a control point outside (or one that is no number)."""
        if not self.curves:
            return []
        curves = list(self.curves.values())
        starts = np.cumsum([0, *(len(curve.control) for curve in curves[:-1])])
        control = np.vstack([curve.control for curve in curves])
        lowest, highest = np.minimum.reduceat(control, starts), np.maximum.reduceat(control, starts)
        inside = ((lowest >= low) & (highest <= high)).all(axis=1)
        return [curves[number] for number in np.flatnonzero(~inside)]

    def is_finite(self) -> bool:
        """Whether every number of the path is finite."""
        return bool(
            np.isfinite(self.vertices).all()
            and np.isfinite(self.bulges).all()
            and all(np.isfinite(c.control).all() for c in self.curves.values())
        )

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Path):
            return NotImplemented
        return (
            self.closed == other.closed
            and _same(self.vertices, other.vertices)
            and _same(self.bulges, other.bulges)
            and dict(self.curves) == dict(other.curves)
        )

    def __hash__(self) -> int:
        return hash((self.closed, self.vertices.tobytes(), self.bulges.tobytes()))


Segment: TypeAlias = tuple["Sequence[float] | Points", "float | Bezier"]
"""Where a segment ends, and its bulge or its Bézier."""


def arc_centres(starts: Points, ends: Points, bulges: Points) -> tuple[Points, Points]:
    """Centres (n, 2) and radii (n,) of arc segments.

    radius = chord·(1 + b²)/(4·|b|); the centre lies off the chord's middle by chord·(1 − b²)/(4·b), to its
    left for a positive value. Plane geometry of bulge = tan(sweep/4).
    """
    chords = ends - starts
    lengths = np.hypot(chords[:, 0], chords[:, 1])
    left = np.column_stack([-chords[:, 1], chords[:, 0]])
    offsets = (1 - bulges**2) / (4 * bulges)
    centres = (starts + ends) / 2 + left * offsets[:, None]
    radii = lengths * (1 + bulges**2) / (4 * np.abs(bulges))
    return centres, radii


def _arc_extremes(starts: Points, ends: Points, bulges: Points) -> Points:
    """The rightmost, highest, leftmost and lowest points of the arcs' circles that lie on the arcs."""
    centres, radii = arc_centres(starts, ends, bulges)
    first = np.arctan2(starts[:, 1] - centres[:, 1], starts[:, 0] - centres[:, 0])
    sweeps = 4 * np.arctan(bulges)
    found = [np.empty((0, 2))]
    for quarter, direction in enumerate(((1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0))):
        onward = (quarter * math.pi / 2 - first) * np.sign(sweeps) % (2 * math.pi)
        on_arc = onward <= np.abs(sweeps)
        found.append(centres[on_arc] + radii[on_arc, None] * np.array(direction))
    return np.vstack(found)


def bulge_of_sweep(sweep_rad: float) -> float:
    """tan(sweep/4), signed; a sweep of a whole turn has no bulge and must be split first."""
    return math.tan(sweep_rad / 4)
