"""Pieces between a wall and what a disk leaves of it, by following both.

Where a disk cannot go into a corner, its arc departs from the wall and comes back to it: a stretch of arc,
the *mouth*, and the stretch of wall behind it have the same two ends. In a passage that is too narrow the
stretches take turns: wall, mouth, wall, mouth. So a piece is found by going along the wall from where one
mouth begins to where the next one ends, back along that one, on along the wall from where it begins, until
one is where one began. This costs hardly more than finding the mouths, and it tells which they are.

Where the ends do not take turns (walls that nearly touch within a piece; rings that depart as a whole)
nothing is guessed: those stretches are handed back, and there the difference has to be taken.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from scipy.spatial import cKDTree
from shapely import Polygon

from inlayfit.geometry.distance import BoundaryIndex, sampled
from inlayfit.geometry.path import Points
from inlayfit.geometry.rings import Flags, Numbers, Rings

_CHORDS_APART = 1.5  # chords of one arc, cut anew, lie a little apart; a piece twice as thick departs more
_SAME_PLACE_MM = 1e-6
_NEIGHBOURS = 8  # of the points nearest to a place on the wall, one is an end of the edge it lies on
_FILM_POINTS = 4  # so many points of a short stretch of wall may lie in the films at its ends


@dataclass(frozen=True, eq=False, slots=True)
class Apart:
    """How far two walls are from each other, all along both.

    Attributes:
        walls: what a disk was to follow, with samples on long edges.
        is_vertex: which of its points are no samples, (n,).
        away: how far each is from the arcs, (n,).
        arcs: what is left of the walls, and the disk's arcs.
        aside: how far the middle of each of its edges is from the walls, (m,).
        wall: for more questions about the walls.
        distance: what is nearer than this coincides; a piece not twice as thick may be missing.
    """

    walls: Rings
    is_vertex: Flags
    away: Points
    arcs: Rings
    aside: Points
    wall: BoundaryIndex
    distance: float

    @classmethod
    def between(cls, wall: BoundaryIndex, other: BoundaryIndex, distance: float, step: float) -> Apart:
        """Measured from each to the other, of the walls at least once a step."""
        rings, are_vertices = zip(*(sampled(ring, step) for ring in wall.region.rings()), strict=True)
        walls, arcs = Rings.of(rings), Rings.of(other.region.rings())
        away, aside = other.nearest(walls.points)[0], wall.nearest(arcs.edge_middles)[0]
        return cls(walls, np.hstack(are_vertices), away, arcs, aside, wall, distance)

    @property
    def is_away(self) -> Flags:
        """Which points of the walls depart, (n,)."""
        return self.away > self.distance

    @property
    def is_aside(self) -> Flags:
        """Which edges of the arcs depart, (m,)."""
        return self.aside > _CHORDS_APART * self.distance


@dataclass(frozen=True, eq=False, slots=True)
class Traced:
    """A piece without holes.

    Attributes:
        polygon: itself, its outer ring counter-clockwise.
        mouths: the vertices of each stretch of arc along it.
        depth: how far its farthest vertex of wall is from the arcs.
        tip: that point.
    """

    polygon: Polygon
    mouths: tuple[Points, ...]
    depth: float
    tip: tuple[float, float]


@dataclass(frozen=True, eq=False, slots=True)
class Tracing:
    """What following both walls has told.

    Attributes:
        pieces: those found, the films at their tips cut short.
        is_wall_left: which points of the walls depart and are along none of them, (n,).
        is_arc_left: which edges of the arcs do, (m,).
    """

    pieces: tuple[Traced, ...]
    is_wall_left: Flags
    is_arc_left: Flags


def traced(apart: Apart, *, wall_is_outside: bool) -> Tracing:
    """The pieces whose stretches tell them, and which stretches are left.

    Args:
        apart: both walls.
        wall_is_outside: whether the walls go round the arcs, or the arcs round the walls.
    """
    is_wall_left, is_arc_left = (one > 2 * apart.distance for one in (apart.away, apart.aside))
    edges = apart.arcs.runs(apart.is_aside)
    mouths = _mouths(edges, apart) if len(edges) else None
    if mouths is None:
        return Tracing((), is_wall_left, is_arc_left)
    outlines = [mouths.outline(cycle) for cycle in _cycles(mouths.next_ends())]
    found = _without_lone_rings(_sound(outlines, apart, wall_is_outside), apart)
    for outline, _ in found:
        is_wall_left[outline.wall] = False
        for mouth in outline.mouths:
            is_arc_left[apart.arcs.along(*edges[mouth].tolist())] = False
    thick = [one for one in found if mouths.depth(one[0]) > 2 * apart.distance]
    pieces = [mouths.piece(outline, polygon) for outline, polygon in thick]
    return Tracing(tuple(pieces), is_wall_left, is_arc_left)


@dataclass(frozen=True, eq=False, slots=True)
class _Outline:
    """A piece that was gone round: its ring, the numbers of the wall's points along it, and its mouths."""

    ring: Points
    wall: Numbers
    mouths: list[int]


@dataclass(frozen=True, eq=False, slots=True)
class _Mouths:
    """All mouths, and where on the wall they begin and end.

    Attributes:
        apart: both walls.
        ends: the vertices of the arcs where each mouth begins and ends, (m, 2).
        is_off: whether those lie off the wall, so that they are corners of the piece, (m, 2).
        feet: where on the wall they do, (m, 2, 2).
        edges: the number of the wall's edge that is, (m, 2).
        shares: how far along it, from 0 to 1, (m, 2).
    """

    apart: Apart
    ends: Numbers
    is_off: Flags
    feet: Points
    edges: Numbers
    shares: Points

    def next_ends(self) -> Numbers:
        """For each mouth the one that ends where the wall leads to from its beginning; −1 if none."""
        count = len(self.ends)
        edge, share = self.edges.T.ravel(), self.shares.T.ravel()
        is_end = np.arange(2 * count) >= count
        order = np.lexsort(
            (~is_end, share, edge)
        )  # at one place, what ends there ends before the next begins
        starts = np.flatnonzero(np.diff(self.apart.walls.owners(edge[order]), prepend=-1))
        following = np.arange(1, 2 * count + 1)
        following[np.append(starts[1:], 2 * count) - 1] = starts  # round each ring
        here, there = order, order[following]
        found = np.full(count, -1)
        turns = ~is_end[here] & is_end[there]
        found[here[turns]] = there[turns] - count
        return found

    def outline(self, cycle: list[tuple[int, int]]) -> _Outline:
        """Once round a piece: along the wall to where a mouth ends, back along that, and so on."""
        lines, walls = [], []
        for begun, ended in cycle:
            wall = self._wall_between(begun, ended)
            vertices = wall[self.apart.is_vertex[wall]]
            line = self.line(ended)
            inner = line[0 if self.is_off[ended, 0] else 1 : None if self.is_off[ended, 1] else -1]
            lines += [
                self.feet[begun, :1],
                self.apart.walls.points[vertices],
                self.feet[ended, 1:],
                inner[::-1],
            ]
            walls.append(wall)
        ring = np.vstack(lines)
        ring = ring[(ring != np.roll(ring, 1, axis=0)).any(axis=1)]
        return _Outline(ring, np.hstack(walls), [ended for _, ended in cycle])

    def _wall_between(self, begun: int, ended: int) -> Numbers:
        """The numbers of the wall's points from where a mouth begins to where one ends."""
        first, last = int(self.edges[begun, 0]), int(self.edges[ended, 1])
        if first == last and self.shares[begun, 0] <= self.shares[ended, 1]:
            return np.empty(0, dtype=np.intp)
        return self.apart.walls.along(int(self.apart.walls.after(np.array(first))), last)

    def line(self, mouth: int) -> Points:
        """The vertices of a mouth, both ends included."""
        line: Points = self.apart.arcs.points[self.apart.arcs.along(*self.ends[mouth].tolist())]
        return line

    def depth(self, outline: _Outline) -> float:
        """The largest distance of a piece's wall from the arcs; in the middle of a long edge, of its arcs."""
        if len(outline.wall):
            return float(self.apart.away[outline.wall].max())
        arcs = self.apart.arcs
        return max(
            float(self.apart.aside[arcs.along(*self.ends[one].tolist())].max()) for one in outline.mouths
        )

    def piece(self, outline: _Outline, polygon: Polygon) -> Traced:
        """What is told of a piece."""
        wall = outline.wall
        vertices = wall[self.apart.is_vertex[wall]]
        counted = vertices if len(vertices) else wall
        mouths = tuple(self.line(mouth) for mouth in outline.mouths)
        if len(counted) == 0:
            x, y = self.feet[outline.mouths[0]].mean(axis=0).tolist()
            return Traced(polygon, mouths, self.depth(outline), (x, y))
        deepest = counted[self.apart.away[counted].argmax()]
        x, y = self.apart.walls.points[deepest].tolist()
        return Traced(polygon, mouths, float(self.apart.away[deepest]), (x, y))


def _mouths(edges: Numbers, apart: Apart) -> _Mouths | None:
    """The mouths whose edges depart, as far as where they meet the wall; None if one is not found on it.

    The vertex before an edge that departs may itself depart a little; then it is the one before that.
    """
    arcs, (first, last) = apart.arcs, edges.T
    tried = np.array([[first, arcs.after(first, -1)], [arcs.after(last), arcs.after(last, 2)]])
    off, feet = apart.wall.nearest(arcs.points[tried.ravel()])
    off, feet = off.reshape(tried.shape), feet.reshape(*tried.shape, 2)
    further = (off[:, 0] > apart.distance).astype(np.intp)[:, None]
    ends, off = (np.take_along_axis(one, further, axis=1)[:, 0].T for one in (tried, off))
    feet = np.take_along_axis(feet, further[..., None], axis=1)[:, 0].swapaxes(0, 1)
    edge, share, gap = _places_on(apart.walls, feet.reshape(-1, 2))
    if gap.max() > _SAME_PLACE_MM:
        return None
    return _Mouths(apart, ends, off > _SAME_PLACE_MM, feet, edge.reshape(-1, 2), share.reshape(-1, 2))


def _places_on(walls: Rings, feet: Points) -> tuple[Numbers, Points, Points]:
    """For points on the walls the number of their edge, how far along it they lie, and how far off it."""
    _, near = cKDTree(walls.points).query(feet, k=min(_NEIGHBOURS, len(walls.points)))
    near = np.asarray(near)
    edges = np.hstack([near, walls.after(near, -1)])
    starts = walls.points[edges]
    spans = walls.points[walls.after(edges)] - starts
    offsets = feet[:, None] - starts
    shares = np.einsum("ijk,ijk->ij", offsets, spans) / np.maximum(
        np.einsum("ijk,ijk->ij", spans, spans), 1e-300
    )
    shares = np.clip(shares, 0.0, 1.0)
    gaps = np.linalg.norm(offsets - shares[..., None] * spans, axis=-1)
    best = gaps.argmin(axis=1)[:, None]
    edge, share, gap = (np.take_along_axis(one, best, axis=1)[:, 0] for one in (edges, shares, gaps))
    is_at_end = share == 1.0
    return np.where(is_at_end, walls.after(edge), edge), np.where(is_at_end, 0.0, share), gap


def _cycles(next_ends: Numbers) -> list[list[tuple[int, int]]]:
    """Mouths by which one comes back to where one began, each with the one that ends its stretch of wall."""
    following, cycles = next_ends.tolist(), []
    is_left = [True] * len(following)
    for first in range(len(following)):
        cycle, mouth = [], first
        while mouth >= 0 and is_left[mouth]:
            is_left[mouth] = False
            cycle.append((mouth, following[mouth]))
            mouth = following[mouth]
        if cycle and mouth == first:
            cycles.append(cycle)
    return cycles


def _sound(outlines: list[_Outline], apart: Apart, wall_is_outside: bool) -> list[tuple[_Outline, Polygon]]:
    """Those that are polygons the right way round, most of whose wall departs; with the polygon."""
    likely = [one for one in outlines if len(one.ring) > 2 and _departs(one, apart)]
    if not likely:
        return []
    rings = [one.ring if wall_is_outside else one.ring[::-1] for one in likely]
    owner = np.repeat(np.arange(len(rings)), [len(ring) for ring in rings])
    lines = shapely.linearrings(np.vstack(rings), indices=owner)
    polygons = np.asarray(shapely.polygons(lines))
    sound = np.flatnonzero(shapely.is_ccw(lines) & shapely.is_valid(polygons)).tolist()
    return [(likely[i], polygons[i]) for i in sound]


def _departs(outline: _Outline, apart: Apart) -> bool:
    near = np.count_nonzero(apart.away[outline.wall] <= apart.distance)
    return bool(near <= len(outline.wall) / 2 + _FILM_POINTS)


def _without_lone_rings(
    found: list[tuple[_Outline, Polygon]], apart: Apart
) -> list[tuple[_Outline, Polygon]]:
    """Without those that go round a ring that departs as a whole: they have a hole that was not seen."""
    lone = np.vstack(
        [
            apart.walls.points[apart.walls.whole(apart.is_away)],
            apart.arcs.points[apart.arcs.whole(apart.is_aside)],
        ]
    )
    if not found or len(lone) == 0:
        return found
    polygons = np.array([polygon for _, polygon in found], dtype=object)
    goes_round = np.asarray(shapely.intersects_xy(polygons[:, None], *lone.T)).any(axis=1)
    return [found[i] for i in np.flatnonzero(~goes_round).tolist()]
