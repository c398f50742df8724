"""Give true arcs back to a ring of chords: thousands of points become the few arcs they stand for.

Terms
    ring: the vertices of a closed boundary, as GEOS and the flattening of curves leave it.
    run: consecutive edges that one straight piece or one arc replaces. Its two ends stay where they are
        ("pinned"), so neighbouring runs meet exactly.
    deviation: the largest distance from the run's edges, *not only their vertices*, to what replaces it. A
        vertex tells how far the arc misses the curve; the point of an edge that comes nearest to the
        centre, at or near its middle, adds the sagitta of the chord, so one bound holds both. A real
        polygon keeps its corners for that reason: the middles of a coarse 36-gon lie too far inside the
        circle through its corners.
    joint: a vertex where two runs meet. A *corner* is a joint that no arc within tolerance could pass.

How: corners are found for all vertices at once. Between corners the longest run is looked for by
doubling its length while it fits and by bisection after that. A smooth ring has no corner to start from;
it starts where a first run from anywhere ended, so that no arc is split. At last each free joint is moved
to where the worse of its two runs is best. A ring that is one circle becomes two half circles.

An arc with pinned ends has one unknown. In the frame of its chord (half length a, middle at the origin)
the circle through both ends with its centre at (0, h) is u² + v² − 2·h·v − a² = 0, which is linear in h:
least squares give h = Σ v·(u² + v² − a²) / (2·Σ v²). (Algebraic circle fit; with the radius common to all
points its residual is the distance to the circle times 2·R, so it is the geometric fit to first order.)
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple, TypeAlias

import numpy as np
from numpy.typing import ArrayLike, NDArray

from inlayfit.geometry.flatten import flatten_bezier
from inlayfit.geometry.path import Path, Points, Segment
from inlayfit.geometry.region import Region

Indices: TypeAlias = NDArray[np.intp]

RECOVERY_TOLERANCE = 0.001
"""1 µm: below what any small machine repeats, and four times the error of the flattening before it."""
_SHORTEST_ARC = 3  # edges; two edges always lie on a circle, which proves nothing
_FEWEST_ON_CIRCLE = 8  # vertices of a ring that may be called a circle
_WORTH_BALANCING = 10  # edges of two runs together; with fewer there is no room for a better joint
_LARGEST_SWEEP = math.radians(330)  # pinned ends that nearly meet leave the centre undetermined
_CORNER_SLACK = 2.0  # how much sharper than an arc within tolerance a vertex must turn to be a corner
_NOISE = 0.25  # share of the tolerance below which an edge's turn is rounding, not shape
_STRAIGHT = 0.1  # share of the tolerance within which a run is straight, whatever arc fits better


@dataclass(frozen=True, slots=True)
class Tally:
    """What recovering arcs did, in numbers.

    Attributes:
        points_in: vertices before.
        segments_out: straight pieces and arcs after.
        arcs_out: how many of these are arcs.
        worst_mm: largest distance of any point of an edge from what replaced it.
    """

    points_in: int = 0
    segments_out: int = 0
    arcs_out: int = 0
    worst_mm: float = 0.0

    def __add__(self, other: Tally) -> Tally:
        return Tally(
            self.points_in + other.points_in,
            self.segments_out + other.segments_out,
            self.arcs_out + other.arcs_out,
            max(self.worst_mm, other.worst_mm),
        )


@dataclass(frozen=True, slots=True)
class Recovery:
    """A ring as straight pieces and true arcs, and the numbers that go with it."""

    path: Path
    tally: Tally


@dataclass(frozen=True, slots=True)
class RegionRecovery:
    """A region as paths: of each polygon its outer ring and then its holes."""

    polygons: tuple[tuple[Path, ...], ...]
    tally: Tally

    @property
    def paths(self) -> tuple[Path, ...]:
        """All rings in order."""
        return tuple(path for polygon in self.polygons for path in polygon)


def recover_arcs(ring: ArrayLike, *, tolerance: float = RECOVERY_TOLERANCE) -> Recovery:
    """Replace the chords of a closed ring by straight pieces and true arcs.

    Args:
        ring: (n, 2) vertices, the first not repeated at the end.
        tolerance: largest deviation, of vertices and of sagittas together.
    """
    points = _without_repeats(np.asarray(ring, dtype=float).reshape(-1, 2))
    count = len(points)
    if count < 3:
        return Recovery(Path.polyline(points), Tally(count, count))
    corners = _corners(points, tolerance)
    if len(corners) == count:
        return Recovery(Path.polyline(points), Tally(count, count))
    circle = _circle(points, tolerance) if len(corners) == 0 else None
    if circle is not None:
        return circle
    chain = _Chain.of(np.vstack([points, points, points[:1]]), tolerance)
    joints = _free_ring_joints(chain, count) if len(corners) == 0 else _joints(chain, corners, count)
    return _ring_path(chain, _balanced(chain, joints, set(corners.tolist()), count), count)


def region_paths(region: Region, *, tolerance: float = RECOVERY_TOLERANCE) -> RegionRecovery:
    """Every ring of a region as straight pieces and true arcs, grouped by polygon."""
    polygons = []
    tally = Tally()
    for piece in region.pieces:
        recovered = [recover_arcs(ring, tolerance=tolerance) for ring in piece.rings()]
        polygons.append(tuple(r.path for r in recovered))
        tally = sum((r.tally for r in recovered), tally)
    return RegionRecovery(tuple(polygons), tally)


def curves_as_arcs(path: Path, *, tolerance: float = RECOVERY_TOLERANCE) -> Path:
    """The same path with every Bézier replaced by straight pieces and arcs within `tolerance`."""
    if not path.curves:
        return path
    _, ends = path.segment_ends()
    segments: list[Segment] = []
    for i, bulge in enumerate(path.bulges.tolist()):
        curve = path.curves.get(i)
        if curve is None:
            segments.append((ends[i], bulge))
            continue
        points = np.vstack([curve.control[:1], flatten_bezier(curve, tolerance / 4)])
        segments += _open_segments(_without_repeats(points, closed=False), tolerance * 3 / 4)
    return Path.of_segments(path.start, segments, closed=path.closed)


def _without_repeats(points: Points, *, closed: bool = True) -> Points:
    following = np.roll(points, -1, axis=0)
    keep = (points != following).any(axis=1)
    if not closed:
        keep[-1] = True
    return points[keep] if keep.any() else points[:1]


def _open_segments(points: Points, tolerance: float) -> list[Segment]:
    if len(points) < 2:
        return []
    chain = _Chain.of(points, tolerance)
    last = len(points) - 1
    joints = [0, *_run_ends(chain, 0, last)]
    for k in range(1, len(joints) - 1):
        joints[k] = _best_joint(chain, joints[k - 1], joints[k], joints[k + 1])
    return [(points[j], _fit(chain, i, j).bulge) for i, j in pairwise(joints)]


def _corners(points: Points, tolerance: float) -> Indices:
    """Indices of the vertices that no arc within tolerance can pass.

    An arc's chords l1, l2 turn by (l1 + l2)/(2R), and a sagitta l²/(8R) within tolerance asks for
    R ≥ l²/(8·tolerance); a vertex that turns more is a corner, or the place where a line meets an arc.
    """
    near = np.roll(points, -1, axis=0) - points
    far_enough = np.flatnonzero(np.hypot(near[:, 0], near[:, 1]) > _NOISE * tolerance)
    if len(far_enough) < 3:
        return np.zeros(0, dtype=np.intp)
    kept = points[far_enough]
    after = np.roll(kept, -1, axis=0) - kept
    before = np.roll(after, 1, axis=0)
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    turns = np.abs(np.arctan2(cross, (before * after).sum(axis=1)))
    lengths = np.hypot(after[:, 0], after[:, 1])
    earlier = np.roll(lengths, 1)
    longer, shorter = np.maximum(lengths, earlier), np.minimum(lengths, earlier)
    allowed = _CORNER_SLACK * 4 * tolerance * (lengths + earlier) / longer**2
    sharp = (turns > allowed) & (turns * shorter > _NOISE * tolerance)
    corners: Indices = far_enough[sharp]
    return corners


@dataclass(frozen=True, eq=False, slots=True)
class _Chain:
    """Vertices with their edges' middles between them, ready for many fits.

    Attributes:
        qx, qy: vertex i at 2·i, the middle of edge i at 2·i + 1.
        ex, ey: edge vectors.
        tolerance: largest deviation of a run.
    """

    qx: Points
    qy: Points
    ex: Points
    ey: Points
    tolerance: float

    @classmethod
    def of(cls, points: Points, tolerance: float) -> _Chain:
        woven = np.empty((2 * len(points) - 1, 2))
        woven[::2] = points
        woven[1::2] = (points[:-1] + points[1:]) / 2
        edges = np.diff(points, axis=0)
        columns = [np.ascontiguousarray(c) for c in (*woven.T, *edges.T)]
        return cls(columns[0], columns[1], columns[2], columns[3], tolerance)

    def vertex(self, i: int) -> tuple[float, float]:
        return float(self.qx[2 * i]), float(self.qy[2 * i])


class _Fit(NamedTuple):
    deviation: float
    bulge: float


_NO_FIT = _Fit(math.inf, 0.0)


def _fit(chain: _Chain, i: int, j: int) -> _Fit:
    """What replaces the edges from vertex i to vertex j: the straight piece or the arc that is nearer."""
    if j - i == 1:
        return _Fit(0.0, 0.0)
    (x0, y0), (x1, y1) = chain.vertex(i), chain.vertex(j)
    chord = math.hypot(x1 - x0, y1 - y0)
    if chord <= chain.tolerance:
        return _NO_FIT
    cos, sin = (x1 - x0) / chord, (y1 - y0) / chord
    dx = chain.qx[2 * i + 1 : 2 * j] - (x0 + x1) / 2
    dy = chain.qy[2 * i + 1 : 2 * j] - (y0 + y1) / 2
    u = dx * cos + dy * sin
    v = dy * cos - dx * sin
    edge_x, edge_y = chain.ex[i:j], chain.ey[i:j]
    along = edge_x * cos + edge_y * sin
    straight = _NO_FIT
    if along.min() >= -chain.tolerance:
        straight = _Fit(float(np.abs(v).max()), 0.0)
        if straight.deviation <= _STRAIGHT * chain.tolerance:
            return straight
    if j - i < _SHORTEST_ARC:
        return straight
    across = edge_y * cos - edge_x * sin
    return min(straight, _arc_fit(u, v, along, across, chord / 2, chain.tolerance))


def _arc_fit(u: Points, v: Points, along: Points, across: Points, a: float, tolerance: float) -> _Fit:
    """The pinned arc nearest to the vertices (u, v)[1::2]; middles of edges are at [0::2].

    No fit if an edge runs against the arc, or if the arc would go round by another turn than the edges.
    """
    power = u * u + v * v - a * a
    inner, inner_power = v[1::2], power[1::2]
    weight = float(inner @ inner)
    if weight == 0.0:
        return _NO_FIT
    h = float(inner @ inner_power) / (2 * weight)
    radius = math.hypot(a, h)
    if not a * a / 2 > _STRAIGHT * tolerance * radius:
        return _NO_FIT  # flatter than a straight piece may be, or a centre beyond all numbers
    deviation = float((np.abs(power - 2 * h * v) / (np.hypot(u, v - h) + radius)).max())
    if not deviation <= tolerance:
        return _NO_FIT
    deviation = max(deviation, _off_edges(u[0::2], v[0::2] - h, along, across, radius))
    left = float(inner.sum()) < 0  # an arc that turns left lies to the right of its chord
    bulge = _bulge(a, h if left else -h, radius)
    swept = (u[0::2] * across - (v[0::2] - h) * along) / radius
    if not left:
        bulge, swept = -bulge, -swept
    sweep = 4 * math.atan(abs(bulge))
    agrees = abs(float(swept.sum()) / radius - sweep) < 0.1 * sweep
    if deviation > tolerance or sweep > _LARGEST_SWEEP or swept.min() < -tolerance or not agrees:
        return _NO_FIT
    return _Fit(deviation, bulge)


def _off_edges(x: Points, y: Points, edge_x: Points, edge_y: Points, radius: float) -> float:
    """How far the points of edges that come nearest to the centre are from the circle, at most.

    (x, y) are the edges' middles seen from the centre. An edge comes nearest where the centre's
    perpendicular meets it, which is its middle only if both its ends are equally far.
    """
    squared = edge_x**2 + edge_y**2
    towards = (x * edge_x + y * edge_y) ** 2 / squared
    nearest = np.sqrt(np.maximum(x * x + y * y - towards, 0.0))
    return float(np.where(towards < squared / 4, np.abs(nearest - radius), 0.0).max())


def _bulge(a: float, h: float, radius: float) -> float:
    """Bulge of the arc that turns left over a chord of half length a, its centre at distance h to the left.

    (R − h)/a, the apex' distance over half the chord; written so that a flat arc loses no digits.
    """
    return a / (radius + h) if h > 0 else (radius - h) / a


def _fits(chain: _Chain, i: int, j: int) -> bool:
    return _fit(chain, i, j).deviation <= chain.tolerance


def _longest(chain: _Chain, start: int, end: int) -> int:
    """The vertex where the longest run from `start` ends, at most `end`: doubling, then bisection."""
    reach = end - start
    good, length = 1, min(_SHORTEST_ARC, reach)
    bad = reach + 1
    while length > good:
        if not _fits(chain, start, start + length):
            bad = length
            break
        good, length = length, min(2 * length, reach)
    while bad - good > 1 and good < reach:
        middle = (good + bad) // 2
        if _fits(chain, start, start + middle):
            good = middle
        else:
            bad = middle
    return start + good


def _run_ends(chain: _Chain, start: int, end: int) -> list[int]:
    ends = []
    while start < end:
        start = start + 1 if end - start == 1 else _longest(chain, start, end)
        ends.append(start)
    return ends


def _joints(chain: _Chain, corners: Indices, count: int) -> list[int]:
    """Joints of a ring with corners, from its first corner to just before that corner again."""
    starts = corners.tolist()
    joints = []
    for start, end in zip(starts, [*starts[1:], starts[0] + count], strict=True):
        joints += [start, *_run_ends(chain, start, end)[:-1]]
    return joints


def _free_ring_joints(chain: _Chain, count: int) -> list[int]:
    """Joints of a smooth ring. It starts where a first run from anywhere ends, so that no arc is split."""
    start = _longest(chain, 0, count - 1) % count
    return [start, *_run_ends(chain, start, start + count)[:-1]]


def _best_joint(chain: _Chain, i: int, k: int, j: int) -> int:
    """Where between i and j two runs meet best; `k` if nothing is better.

    Shortening a run makes it better and its neighbour worse, so the worse of both is least where they
    change places: bisection.
    """

    def worse(m: int) -> float:
        return max(_fit(chain, i, m).deviation, _fit(chain, m, j).deviation)

    low, high = i + 1, j - 1
    while high - low > 1:
        middle = (low + high) // 2
        if _fit(chain, i, middle).deviation > _fit(chain, middle, j).deviation:
            high = middle
        else:
            low = middle
    return min((k, low, high), key=lambda m: (worse(m), m != k))


def _balanced(chain: _Chain, joints: list[int], corners: set[int], count: int) -> list[int]:
    """The joints, each free one moved to its best place between its neighbours (once round)."""
    moved = list(joints)
    if len(moved) < 2:
        return moved
    for index, k in enumerate(moved):
        if k % count in corners:
            continue
        before = moved[index - 1] - (count if index == 0 else 0)
        after = moved[(index + 1) % len(moved)] + (count if index == len(moved) - 1 else 0)
        lift = count if before < 0 else 0
        if after - before >= _WORTH_BALANCING and after + lift <= 2 * count:
            moved[index] = _best_joint(chain, before + lift, k + lift, after + lift) - lift
    return moved


def _ring_path(chain: _Chain, joints: list[int], count: int) -> Recovery:
    starts = [joint % count for joint in joints]
    ends = [*joints[1:], joints[0] + count]
    lengths = [end - joint for joint, end in zip(joints, ends, strict=True)]
    fits = [_fit(chain, i, i + length) for i, length in zip(starts, lengths, strict=True)]
    vertices = np.array([chain.vertex(i) for i in starts])
    bulges = np.array([fit.bulge for fit in fits])
    worst = max(fit.deviation for fit in fits)
    tally = Tally(count, len(fits), int(np.count_nonzero(bulges)), worst)
    return Recovery(Path(vertices, bulges), tally)


def _circle(points: Points, tolerance: float) -> Recovery | None:
    """The ring as one circle, if all of it lies on one: two exact half circles.

    Least squares of x² + y² = 2·x·cx + 2·y·cy + k about the mean point.
    """
    if len(points) < _FEWEST_ON_CIRCLE:
        return None
    mean = points.mean(axis=0)
    centred = points - mean
    system = np.column_stack([2 * centred, np.ones(len(points))])
    (cx, cy, k), *_ = np.linalg.lstsq(system, (centred**2).sum(axis=1), rcond=None)
    radius = math.sqrt(max(0.0, k + cx * cx + cy * cy))
    spokes = centred - (cx, cy)
    following = np.roll(spokes, -1, axis=0)
    middles, edges = (spokes + following) / 2, following - spokes
    sagitta = _off_edges(middles[:, 0], middles[:, 1], edges[:, 0], edges[:, 1], radius)
    deviation = max(_off_circle(spokes, radius), sagitta)
    steps = spokes[:, 0] * following[:, 1] - spokes[:, 1] * following[:, 0]
    turns = float(np.arctan2(steps, (spokes * following).sum(axis=1)).sum()) / (2 * math.pi)
    if deviation > tolerance or radius <= 2 * tolerance or round(abs(turns)) != 1:
        return None
    path = Path.circle((float(mean[0] + cx), float(mean[1] + cy)), radius)
    return Recovery(path if turns > 0 else path.reversed(), Tally(len(points), 2, 2, deviation))


def _off_circle(spokes: Points, radius: float) -> float:
    return float(np.abs(np.hypot(spokes[:, 0], spokes[:, 1]) - radius).max())


def total(recoveries: Iterable[RegionRecovery]) -> Tally:
    """The tally of several regions together."""
    return sum((recovery.tally for recovery in recoveries), Tally())
