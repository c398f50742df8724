"""Lines that meet in threes, or cross: cut at every meeting and sorted into the faces between them.

Which faces are inside? A ring drawn whole says so itself: a face inside an odd number of whole rings is
inside, in an even number it is a hole. A face outside all whole rings exists only because loose lines
enclose it, so it is inside. Faces stay apart where a line parts them: each is an outline of its own.

A line that only runs across rings, both ends free, encloses nothing (a centre mark); it is left out and
reported. Rings that touch nothing never come here and keep their true curves.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components
from shapely import LinearRing, LineString, Polygon

from inlayfit.geometry.crossings import cross_too_often, pairs_that_meet
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.loops import Chained, Gap, chain_loops
from inlayfit.geometry.overlaps import clear_overlaps, single_segments
from inlayfit.geometry.path import Path, Points
from inlayfit.geometry.tolerance import Tolerance

_Place = tuple[float, float]
_Lines = NDArray[np.object_]
_DEEPEST = 2
_MOST_PAIRS = 400_000


@dataclass(frozen=True, slots=True)
class Meeting:
    """A group of lines that met or crossed, and the faces they were cut into.

    Attributes:
        faces: polygons side by side.
        places: where lines meet in threes or cross.
    """

    faces: tuple[Polygon, ...]
    places: tuple[_Place, ...]


@dataclass(slots=True)
class Untangled:
    """What linework comes to.

    Attributes:
        rings: closed paths that meet nothing else; one may still cross itself.
        meetings: groups of lines that met or crossed.
        chains: open paths that are left.
        crossing: open paths that ran across rings and were left out.
        gaps: gaps bridged.
        scribbles: a path of each group whose lines cross too often to be cut apart.
        doubled_rings: rings exactly on top of another, removed.
        doubled_pieces: pieces that lay on others, removed, and where the first was.
    """

    rings: list[Path] = field(default_factory=list)
    meetings: list[Meeting] = field(default_factory=list)
    chains: list[Path] = field(default_factory=list)
    crossing: list[Path] = field(default_factory=list)
    gaps: list[Gap] = field(default_factory=list)
    doubled_rings: list[Path] = field(default_factory=list)
    scribbles: list[Path] = field(default_factory=list)
    doubled_pieces: int = 0
    doubled_place: _Place | None = None


def untangle(paths: Sequence[Path], *, gap: float, tolerance: Tolerance) -> Untangled:
    """Sort linework into rings, faces between lines that meet, and open rest.

    Args:
        paths: open and closed paths, finite, in any order and direction.
        gap: loose ends up to this far from each other, or from a line, are joined.
        tolerance: see `Tolerance`.
    """
    result = Untangled()
    chained = chain_loops([p for p in paths if not p.closed], gap=gap, tolerance=tolerance)
    rings = [p for p in paths if p.closed]
    _collect(rings, chained, gap, tolerance, result, depth=0)
    return result


def _collect(
    rings: Sequence[Path],
    chained: Chained,
    gap: float,
    tolerance: Tolerance,
    result: Untangled,
    *,
    depth: int,
) -> None:
    result.gaps += chained.gaps
    things = _Things([*rings, *chained.loops], chained.chains, chained.tangles, tolerance)
    if len(things.lines) == 0:
        return
    found = things.groups(gap)
    if found is None:
        result.scribbles.append(things.paths[0][0])
        return
    groups, crossing = found
    result.crossing += [things.paths[i][0] for i in crossing]
    for group in groups:
        if len(group) == 1 and things.stands_alone(group[0]):
            path = things.paths[group[0]][0]
            (result.rings if path.closed else result.chains).append(path)
        else:
            members = [path for i in group for path in things.paths[i]]
            _resolve(members, gap, tolerance, result, depth=depth)


class _Things:
    """Rings, chains and tangles as lines that can be asked what they touch."""

    def __init__(
        self,
        rings: Sequence[Path],
        chains: Sequence[Path],
        tangles: Sequence[Sequence[Path]],
        tolerance: Tolerance,
    ) -> None:
        self.paths: list[Sequence[Path]] = [*([r] for r in rings), *([c] for c in chains), *tangles]
        self.ring_count, self.chain_count = len(rings), len(chains)
        self.lines: _Lines = np.array([_line(members, tolerance) for members in self.paths], dtype=object)

    def is_ring(self, i: int) -> bool:
        return i < self.ring_count

    def is_chain(self, i: int) -> bool:
        return self.ring_count <= i < self.ring_count + self.chain_count

    def stands_alone(self, i: int) -> bool:
        """Whether a thing that touches no other is a plain ring or chain."""
        return self.is_ring(i) or (self.is_chain(i) and bool(shapely.is_simple(self.lines[i])))

    def groups(self, gap: float) -> tuple[list[list[int]], list[int]] | None:
        """Numbers of things that touch, together; and chains that only run across rings; None if too many."""
        met = pairs_that_meet(self.lines, most=_MOST_PAIRS)
        if met is None:
            return None
        first, second = met
        held_by, holds = self._end_contacts(gap)
        crossing = self._crossing(first, second, held_by)
        first, second = np.append(first, held_by), np.append(second, holds)
        keep = ~(np.isin(first, crossing) | np.isin(second, crossing))
        links = coo_array((np.ones(keep.sum()), (first[keep], second[keep])), shape=(len(self.lines),) * 2)
        _, label = connected_components(links, directed=False)
        groups: dict[int, list[int]] = {}
        for i, number in enumerate(label.tolist()):
            if i not in crossing:
                groups.setdefault(number, []).append(i)
        return list(groups.values()), sorted(crossing)

    def _end_contacts(self, gap: float) -> tuple[Any, Any]:
        """Pairs (chain, thing) where an end of the chain lies on or near the thing."""
        chains = range(self.ring_count, self.ring_count + self.chain_count)
        if not chains:
            return np.array([], dtype=np.int64), np.array([], dtype=np.int64)
        ends = np.vstack([self.paths[i][0].vertices[[0, -1]] for i in chains])
        tree = shapely.STRtree(self.lines)
        end, thing = tree.query(shapely.points(ends), predicate="dwithin", distance=gap)
        chain = self.ring_count + end // 2
        apart = chain != thing
        return chain[apart], thing[apart]

    def _crossing(self, first: Any, second: Any, held: Any) -> list[int]:
        """Chains that touch others but are not held by an end, in a cluster that holds a ring."""
        chains = np.arange(self.ring_count, self.ring_count + self.chain_count)
        floating = np.setdiff1d(np.intersect1d(chains, first), held)
        if len(floating) == 0:
            return []
        rings = np.arange(self.ring_count)
        touches_rings = np.isin(first, floating) & np.isin(second, np.concatenate([rings, floating]))
        stray = np.setdiff1d(first[np.isin(first, floating) & ~touches_rings], rings)
        links = coo_array((np.ones(len(first)), (first, second)), shape=(len(self.lines),) * 2)
        _, label = connected_components(links, directed=False)
        with_ring = np.unique(label[rings])
        spoiled = np.unique(label[stray])
        return [i for i in floating.tolist() if label[i] in with_ring and label[i] not in spoiled]


def _line(members: Sequence[Path], tolerance: Tolerance) -> Any:
    if len(members) == 1:
        points = flatten(members[0], tolerance.arc_mm)
        if members[0].closed and len(points) > 2:
            return LinearRing(points)
        return LineString(np.vstack([points, points[:1]]) if members[0].closed else points)
    return shapely.MultiLineString([_line([path], tolerance) for path in members])


def _resolve(
    members: Sequence[Path], gap: float, tolerance: Tolerance, result: Untangled, *, depth: int
) -> None:
    rings, doubled = _without_doubles([p for p in members if p.closed], tolerance)
    result.doubled_rings += doubled
    loose = [p for p in members if not p.closed]
    if len(rings) == 1 and not loose:
        result.rings += rings
        return
    if loose and depth < _DEEPEST:
        segments = [s for path in [*rings, *loose] for s in single_segments(path)]
        cleared = clear_overlaps(segments, tolerance=tolerance.settle_mm)
        if cleared.removed:
            result.doubled_pieces += cleared.removed
            result.doubled_place = result.doubled_place or cleared.place
            again = chain_loops(cleared.segments, gap=gap, tolerance=tolerance)
            _collect([], again, gap, tolerance, result, depth=depth + 1)
            return
    if cross_too_often([_line([path], tolerance) for path in [*rings, *loose]]):
        result.scribbles.append(members[0])
        return
    meeting, rest, gaps = _faces(rings, loose, gap, tolerance)
    result.gaps += gaps
    result.chains += rest
    if meeting.faces:
        result.meetings.append(meeting)


def _without_doubles(rings: Sequence[Path], tolerance: Tolerance) -> tuple[list[Path], list[Path]]:
    """Rings, and those of them that were exactly on top of an earlier one."""
    kept: dict[tuple[int, ...], list[tuple[Path, Any]]] = {}
    unique: list[Path] = []
    doubled: list[Path] = []
    for path in rings:
        line = _line([path], tolerance)
        key = tuple(round(v / (100 * tolerance.settle_mm)) for v in line.bounds)
        same = [other for other, there in kept.get(key, []) if _same_line(line, there, tolerance)]
        (doubled if same else unique).append(path)
        kept.setdefault(key, []).append((path, line))
    return unique, doubled


def _same_line(one: Any, other: Any, tolerance: Tolerance) -> bool:
    if abs(one.length - other.length) > 1e-3 * one.length:
        return False
    return bool(shapely.hausdorff_distance(one, other) <= tolerance.settle_mm)


def _faces(
    rings: Sequence[Path], loose: Sequence[Path], gap: float, tolerance: Tolerance
) -> tuple[Meeting, list[Path], list[Gap]]:
    """The faces between lines, the lines that bound none, and gaps closed between ends and lines."""
    lines = [_line([path], tolerance) for path in [*rings, *loose]]
    bridged, gaps = _ends_on_lines(lines, len(rings), gap, tolerance)
    noded = shapely.union_all(np.array(bridged, dtype=object))
    parts = shapely.get_parts(noded)
    faces, _, dangles, _ = shapely.polygonize_full(list(parts))
    inside = [face for face in shapely.get_parts(faces) if 2 * face.area > tolerance.settle_mm * face.length]
    inside = _by_rings(
        inside, [shapely.get_parts(shapely.make_valid(Polygon(line))) for line in lines[: len(rings)]]
    )
    rest = [Path.polyline(np.asarray(line.coords)[:, :2], closed=False) for line in _merged(dangles)]
    return Meeting(tuple(inside), _meeting_places(parts)), rest, gaps


def _merged(dangles: Any) -> list[LineString]:
    if dangles.is_empty:
        return []
    return list(
        shapely.get_parts(shapely.line_merge(shapely.MultiLineString(list(shapely.get_parts(dangles)))))
    )


def _by_rings(faces: list[Polygon], rings: list[Any]) -> list[Polygon]:
    """Faces in an odd number of whole rings, or in none."""
    if not faces or not rings:
        return faces
    points = shapely.point_on_surface(np.array(faces, dtype=object))
    tree = shapely.STRtree(points)
    count = np.zeros(len(faces), dtype=np.int64)
    for parts in rings:
        hit = tree.query(parts, predicate="contains")[1]
        count[np.unique(hit)] += 1
    return [face for face, n in zip(faces, count.tolist(), strict=True) if n == 0 or n % 2 == 1]


def _meeting_places(parts: Any) -> tuple[_Place, ...]:
    ends = np.vstack([np.asarray(part.coords)[[0, -1], :2] for part in parts] or [np.empty((0, 2))])
    places, counts = np.unique(ends, axis=0, return_counts=True)
    return tuple((float(x), float(y)) for x, y in places[counts > 2])


def _ends_on_lines(
    lines: list[Any], ring_count: int, gap: float, tolerance: Tolerance
) -> tuple[list[Any], list[Gap]]:
    """Lines with a vertex wherever an end of another lies on or near them.

    An end within `settle_mm` of a line becomes a vertex of it (the line bends by less than that); one
    further away, but within the gap, is joined to the nearest point by a piece of its own.
    """
    tree = shapely.STRtree(lines)
    inserts: dict[int, list[tuple[float, Points]]] = {}
    bridges: list[Any] = []
    gaps: list[Gap] = []
    ends = np.vstack(
        [np.asarray(line.coords)[[0, -1], :2] for line in lines[ring_count:]] or [np.empty((0, 2))]
    )
    found, where = tree.query(
        shapely.points(ends), predicate="dwithin", distance=max(gap, tolerance.settle_mm)
    )
    met = _met_ends(ends, tolerance)
    for end, i in zip(found.tolist(), where.tolist(), strict=True):
        if i == ring_count + end // 2:
            continue
        point, line = shapely.Point(ends[end]), lines[i]
        distance = float(line.distance(point))
        if distance > tolerance.settle_mm and met[end]:
            continue
        along = float(line.project(point))
        target = ends[end]
        if distance > tolerance.settle_mm:
            target = np.asarray(line.interpolate(along).coords[0])[:2]
            bridges.append(LineString([ends[end], target]))
            x, y = ((ends[end] + target) / 2).tolist()
            gaps.append(Gap((x, y), distance))
        inserts.setdefault(i, []).append((along, target))
    return [_with_vertices(line, inserts.get(i, [])) for i, line in enumerate(lines)] + bridges, gaps


def _met_ends(ends: Points, tolerance: Tolerance) -> NDArray[np.bool_]:
    """Ends that meet another end already."""
    if len(ends) == 0:
        return np.zeros(0, dtype=bool)
    points = np.asarray(shapely.points(ends), dtype=object)
    one, _ = shapely.STRtree(points).query(points, predicate="dwithin", distance=tolerance.settle_mm)
    return np.bincount(one, minlength=len(ends)) > 1


def _with_vertices(line: Any, inserts: list[tuple[float, Points]]) -> Any:
    if not inserts:
        return line
    points = np.asarray(line.coords)[:, :2]
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(points, axis=0).T))])
    places = [(float(a), i, p) for i, (a, p) in enumerate(zip(along, points, strict=True))]
    extra = [(a, len(points) + k, p) for k, (a, p) in enumerate(inserts)]
    ordered = [p for _, _, p in sorted([*places, *extra], key=lambda row: row[:2])]
    return LineString(np.array(ordered))
