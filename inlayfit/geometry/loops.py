"""Chain loose lines into loops: what belongs together end to end.

Terms
    node: where ends of lines meet, within `Tolerance.join_mm`.
    gap: two loose ends nearer than the caller's gap tolerance; a straight piece bridges it (ends nearer
        than `Tolerance.settle_mm` are simply taken for one point).
    loop: lines that meet two by two and return to their start.
    chain: lines that meet two by two between two loose ends.
    tangle: connected lines of which three or more meet in some node; `tangles` cuts them into faces.

True arcs and curves stay what they are. The time is that of sorting the ends (a k-d tree); no pair of
lines is compared that does not meet.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components
from scipy.spatial import cKDTree

from inlayfit.geometry.path import Bezier, Path, Points
from inlayfit.geometry.tolerance import Tolerance

Indices = NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class Gap:
    """A gap that was bridged.

    Attributes:
        place: its middle.
        width: how far the two ends were apart.
    """

    place: tuple[float, float]
    width: float


@dataclass(frozen=True, slots=True)
class Chained:
    """What lines became; see the module docstring for the words."""

    loops: tuple[Path, ...] = ()
    chains: tuple[Path, ...] = ()
    tangles: tuple[tuple[Path, ...], ...] = ()
    gaps: tuple[Gap, ...] = field(default=())


def chain_loops(paths: Sequence[Path], *, gap: float, tolerance: Tolerance) -> Chained:
    """Chain open paths end to end.

    Args:
        paths: open paths with at least one segment; finite.
        gap: loose ends up to this far apart are joined.
        tolerance: `join_mm` says when ends are the same, `settle_mm` when a gap needs no piece of its own.
    """
    if not paths:
        return Chained()
    ends = np.vstack([path.vertices[[0, -1]] for path in paths]) if len(paths) < 64 else _all_ends(paths)
    nodes = _nodes(ends, tolerance.join_mm)
    pieces = list(paths)
    gaps: list[Gap] = []
    bridges = _bridged(pieces, ends, nodes, gap, tolerance)
    for one, other, width in bridges:
        start, end = ends[one], ends[other]
        middle = (start + end) / 2
        gaps.append(Gap((float(middle[0]), float(middle[1])), width))
        if width <= tolerance.settle_mm:
            nodes[nodes == nodes[other]] = nodes[one]
        else:
            pieces.append(Path(np.array([start, end]), np.zeros(1), closed=False))
            nodes = np.append(nodes, [nodes[one], nodes[other]])
    loops, chains, tangles = _sorted_out(pieces, nodes)
    return Chained(tuple(loops), tuple(chains), tuple(tangles), tuple(gaps))


def _all_ends(paths: Sequence[Path]) -> Points:
    ends = np.empty((2 * len(paths), 2))
    for i, path in enumerate(paths):
        vertices = path.vertices
        ends[2 * i] = vertices[0]
        ends[2 * i + 1] = vertices[-1]
    return ends


def _nodes(ends: Points, join: float) -> Indices:
    """A node number for each end."""
    unique, same = np.unique(ends, axis=0, return_inverse=True)
    same = np.asarray(same, dtype=np.int64).reshape(-1)
    pairs = cKDTree(unique).query_pairs(join, output_type="ndarray")
    if len(pairs) == 0:
        return same
    links = coo_array((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(len(unique), len(unique)))
    _, labels = connected_components(links, directed=False)
    return np.asarray(labels, dtype=np.int64)[same]


def _bridged(
    pieces: Sequence[Path], ends: Points, nodes: Indices, gap: float, tolerance: Tolerance
) -> list[tuple[int, int, float]]:
    """Pairs of loose ends to join, nearest first, each end at most once."""
    counts = np.bincount(nodes)
    loose = np.flatnonzero(counts[nodes] == 1)
    if len(loose) < 2 or gap <= tolerance.join_mm:
        return []
    pairs = loose[cKDTree(ends[loose]).query_pairs(gap, output_type="ndarray")]
    widths = np.hypot(*(ends[pairs[:, 0]] - ends[pairs[:, 1]]).T)
    taken: set[int] = set()
    chosen = []
    for k in np.argsort(widths, kind="stable").tolist():
        one, other = pairs[k].tolist()
        if one in taken or other in taken or _is_speck(pieces, one, other, gap):
            continue
        taken |= {one, other}
        chosen.append((one, other, float(widths[k])))
    return chosen


def _is_speck(pieces: Sequence[Path], one: int, other: int, gap: float) -> bool:
    """Whether both ends belong to one piece that is itself no larger than a gap."""
    if one // 2 != other // 2:
        return False
    x0, y0, x1, y1 = pieces[one // 2].bounds()
    return max(x1 - x0, y1 - y0) <= 2 * gap


def _sorted_out(
    pieces: Sequence[Path], nodes: Indices
) -> tuple[list[Path], list[Path], list[tuple[Path, ...]]]:
    """Loops, chains and tangles of pieces whose ends have node numbers."""
    count = int(nodes.max()) + 1
    degree = np.bincount(nodes, minlength=count)
    links = coo_array((np.ones(len(pieces)), (nodes[0::2], nodes[1::2])), shape=(count, count))
    _, component = connected_components(links, directed=False)
    is_tangled = np.zeros(int(component.max()) + 1, dtype=bool)
    is_tangled[component[degree > 2]] = True
    owner = component[nodes[0::2]]
    tangled_pieces = np.flatnonzero(is_tangled[owner])
    tangles: dict[int, list[Path]] = {}
    for i in tangled_pieces.tolist():
        tangles.setdefault(int(owner[i]), []).append(pieces[i])
    partner = _partners(nodes, degree)
    used = is_tangled[owner].tolist()
    chains: list[Path] = []
    loops: list[Path] = []
    loose_half = np.flatnonzero((degree[nodes] == 1) & ~is_tangled[owner[np.arange(len(nodes)) // 2]])
    for half in loose_half.tolist():
        if not used[half // 2]:
            chains.append(_joined(pieces, _walk(half, partner, used), closed=False))
    for i in range(len(pieces)):
        if not used[i]:
            loops.append(_joined(pieces, _walk(2 * i, partner, used), closed=True))
    return loops, chains, [tuple(members) for members in tangles.values()]


def _partners(nodes: Indices, degree: Indices) -> list[int]:
    """For each end the other one at its node; -1 if there is none or more than one."""
    partner = np.full(len(nodes), -1, dtype=np.int64)
    order = np.argsort(nodes, kind="stable")
    paired = order[degree[nodes[order]] == 2]
    partner[paired[0::2]] = paired[1::2]
    partner[paired[1::2]] = paired[0::2]
    result: list[int] = partner.tolist()
    return result


def _walk(half: int, partner: list[int], used: list[bool]) -> list[int]:
    """Ends through which a walk enters its pieces, from a first one until it stops or returns."""
    entered = []
    while half >= 0 and not used[half // 2]:
        used[half // 2] = True
        entered.append(half)
        half = partner[half ^ 1]
    return entered


def _joined(pieces: Sequence[Path], entered: list[int], *, closed: bool) -> Path:
    """One path of pieces in order; each end is taken for the next start."""
    vertices: list[Points] = []
    bulges: list[Points] = []
    curves: dict[int, Bezier] = {}
    done = 0
    for half in entered:
        piece = pieces[half >> 1]
        count = len(piece.bulges)
        backward = half & 1
        if piece.curves:
            for i, curve in piece.curves.items():
                at, turned = (count - 1 - i, curve.reversed()) if backward else (i, curve)
                curves[done + at] = turned
        vertices.append(piece.vertices[:0:-1] if backward else piece.vertices[:-1])
        bulges.append(-piece.bulges[::-1] if backward else piece.bulges)
        done += count
    if not closed:
        last = pieces[entered[-1] >> 1].vertices
        vertices.append(last[:1] if entered[-1] & 1 else last[-1:])
    points = np.concatenate(vertices)
    fitted = {i: _fitted(curve, points[i], points[(i + 1) % len(points)]) for i, curve in curves.items()}
    return Path(points, np.concatenate(bulges), closed, fitted)


def _fitted(curve: Bezier, start: Points, end: Points) -> Bezier:
    """A curve whose ends are exactly the vertices; they were the same point before, within tolerance."""
    if np.array_equal(curve.control[0], start) and np.array_equal(curve.control[-1], end):
        return curve
    control: Any = np.array(curve.control)
    control[0], control[-1] = start, end
    return Bezier(control, curve.weights)
