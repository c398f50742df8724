"""Outlines of pieces between two walls: along the wall from mouth to mouth, and back along each mouth."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely

from inlayfit.geometry.clipping import Shapes
from inlayfit.geometry.groups import Flags, Numbers, first_and_last, largest_of_each, starts_of
from inlayfit.geometry.mouths import Apart, Mouths
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region


@dataclass(frozen=True, eq=False, slots=True)
class Piece:
    """One connected piece between a wall and what a disk leaves of it.

    Attributes:
        region: itself.
        mouths: the points of each stretch along the disk's side, in the order of its boundary.
        depth: how far its farthest vertex is from that side; if it has none that departs, its arcs from the
            wall.
        tip: that vertex, or the middle of the wall.
        is_apart: whether it touches the disk's side nowhere.
    """

    region: Region
    mouths: tuple[Points, ...]
    depth: float
    tip: tuple[float, float]
    is_apart: bool = False


@dataclass(frozen=True, eq=False, slots=True)
class Outlines:
    """All pieces that were gone round.

    Attributes:
        points: their rings, (p, 2), none repeating its first point.
        owner: the piece of each of those, (p,).
        wall: the vertices of the wall along them, (w,).
        wall_owner: the piece of each of those.
        mouths: the vertices of each mouth, in the order of the ring.
        mouth_owner: the piece of each mouth.
        depths: how far the arcs of each piece go from the wall.
        middles: the middle of the longest of its stretches of wall, were they straight.
        comes_back: whether its wall comes back to the arcs on its way; then it is more pieces than one.
    """

    points: Points
    owner: Numbers
    wall: Numbers
    wall_owner: Numbers
    mouths: list[Points]
    mouth_owner: Numbers
    depths: Points
    middles: Points
    comes_back: Flags

    def polygons(self) -> tuple[Shapes, Flags]:
        """Each as a polygon, or None, and whether that is sound: one piece, and the right way round."""
        count = len(self.depths)
        is_ring = np.bincount(self.owner, minlength=count) > 2
        whose = (np.cumsum(is_ring) - 1)[self.owner]
        polygons = np.full(count, None, dtype=object)
        of_ring = is_ring[self.owner]
        lines = shapely.linearrings(self.points[of_ring], indices=whose[of_ring])
        polygons[is_ring] = shapely.polygons(lines)
        is_right_way_round = shapely.is_ccw(shapely.get_exterior_ring(polygons))
        is_sound: Flags = ~self.comes_back & is_right_way_round & shapely.is_valid(polygons)
        return polygons, is_sound

    def pieces(self, apart: Apart, polygons: Shapes, is_sound: Flags) -> list[Piece]:
        """What is told of those that are sound and thick."""
        departing = np.flatnonzero(apart.is_away[self.wall])
        away, owner = apart.away[self.wall[departing]], self.wall_owner[departing]
        deepest = largest_of_each(owner, away)
        depths, tips = self.depths.copy(), self.middles.copy()
        depths[owner[deepest]] = away[deepest]
        tips[owner[deepest]] = apart.walls.points[self.wall[departing[deepest]]]
        mouths: list[list[Points]] = [[] for _ in polygons]
        for piece, mouth in zip(self.mouth_owner.tolist(), self.mouths, strict=True):
            mouths[piece].append(mouth)
        found = np.flatnonzero(is_sound)
        is_thick = np.maximum(depths, self.depths)[found] > 2 * apart.distance
        is_thick[~is_thick] = _are_thick(polygons[found[~is_thick]], apart.distance)
        thick = found[is_thick]
        told = zip(
            thick, Region.each(polygons[thick]), depths[thick].tolist(), tips[thick].tolist(), strict=True
        )
        return [Piece(region, tuple(mouths[i]), depth, (x, y)) for i, region, depth, (x, y) in told]


def _are_thick(polygons: Shapes, radius: float) -> Flags:
    """Whether a disk of that radius fits into each.

    It does where the area is more than the radius times the length: if none did, all of the piece would be
    within a strip of that width along its boundary.
    """
    thick: Flags = shapely.area(polygons) > radius * shapely.length(polygons)
    doubtful = np.flatnonzero(~thick)
    thick[doubtful] = ~shapely.is_empty(shapely.buffer(polygons[doubtful], -radius, quad_segs=2))
    return thick


def outlines_of(mouths: Mouths, turns: Numbers, wall_is_outside: bool) -> Outlines:
    """Along the wall to where a mouth ends, back along that, and so on, for all pieces at once."""
    begun, ended, piece = turns.T
    apart, arcs = mouths.apart, mouths.apart.arcs
    walls = _Walls.along(mouths, begun, ended)
    first, last = mouths.ends[ended].T
    line, of_line = arcs.stretches(last, arcs.between(first, last) + 1, -1)
    vertices = np.split(arcs.points[line], np.flatnonzero(np.diff(of_line)) + 1)[: len(turns)]
    is_corner = np.ones(len(line), dtype=bool)
    for side, at in zip((1, 0), first_and_last(of_line), strict=True):
        is_corner[at] = mouths.is_off[ended, side]
    parts = [*walls.lines(apart), (arcs.points[line[is_corner]], of_line[is_corner])]
    turn = np.hstack([own for _, own in parts])
    part = np.repeat(np.arange(len(parts)), [len(own) for _, own in parts])
    order = np.lexsort((part, turn))  # within a part the order stays
    points, owner = np.vstack([one for one, _ in parts])[order], piece[turn[order]]
    if not wall_is_outside:
        back = np.lexsort((-np.arange(len(owner)), owner))
        points, vertices = points[back], [one[::-1] for one in vertices]
    starts, lasts = first_and_last(owner)
    before = np.arange(-1, len(owner) - 1)
    before[starts] = lasts
    is_new = (points != points[before]).any(axis=1)
    deepest = largest_of_each(piece, mouths.depths[ended])
    longest = largest_of_each(piece, np.hypot(*(walls.feet[:, 1] - walls.feet[:, 0]).T))
    return Outlines(
        points[is_new],
        owner[is_new],
        walls.numbers,
        piece[walls.turn],
        vertices,
        piece,
        mouths.depths[ended[deepest]],
        walls.feet[longest].mean(axis=1),
        np.bincount(piece, walls.comes_back(apart)) > 0,
    )


@dataclass(frozen=True, eq=False, slots=True)
class _Walls:
    """The wall along each turn, from where one mouth begins to where another ends.

    Attributes:
        numbers: its vertices, turn after turn, (w,).
        turn: the turn of each.
        first, last: the places in that list of the first and the last that departs, by turn; where none does,
            those of the ends of the longest edge, the later one first.
        feet: where the mouths begin and end on it, (t, 2, 2).
    """

    numbers: Numbers
    turn: Numbers
    first: Numbers
    last: Numbers
    feet: Points

    @classmethod
    def along(cls, mouths: Mouths, begun: Numbers, ended: Numbers) -> _Walls:
        """The walls from where mouths begin to where others end."""
        numbers, turn = mouths.walls_between(begun, ended)
        ends = np.cumsum(np.bincount(turn, minlength=len(begun)))
        first, last = ends.copy(), np.append(0, ends[:-1]) - 1
        departing = np.flatnonzero(mouths.apart.is_away[numbers])
        np.minimum.at(first, turn[departing], departing)
        np.maximum.at(last, turn[departing], departing)
        feet = np.stack([mouths.feet[begun, 0], mouths.feet[ended, 1]], axis=1)
        starts = np.append(0, ends[:-1])
        for one in np.flatnonzero((last < starts) & (ends - starts > 1)).tolist():
            # An edge departs in its middle: the longest one.
            vertices = mouths.apart.walls.points[numbers[starts[one] : ends[one]]]
            spans = np.diff(np.vstack([feet[one, :1], vertices, feet[one, 1:]]), axis=0)
            last[one] += int(np.hypot(*spans.T).argmax())
            first[one] = last[one] + 1
        return cls(numbers, turn, first, last, feet)

    def lines(self, apart: Apart) -> list[tuple[Points, Numbers]]:
        """The points of each turn, in three parts, and whose each is.

        In the films at its ends either wall may be the outer one. So of each film only the vertex beside
        those that depart is kept; where there is none, the foot of the mouth.
        """
        places = np.arange(len(self.numbers))
        kept = (places >= self.first[self.turn] - 1) & (places <= self.last[self.turn] + 1)
        counts = np.bincount(self.turn, minlength=len(self.first))
        starts = starts_of(counts)
        is_short = (self.first > self.last) & (counts < 2)
        begins = np.flatnonzero((self.first == starts) | is_short)
        ends = np.flatnonzero((self.last == starts + counts - 1) | is_short)
        return [
            (self.feet[begins, 0], begins),
            (apart.walls.points[self.numbers[kept]], self.turn[kept]),
            (self.feet[ends, 1], ends),
        ]

    def comes_back(self, apart: Apart) -> Flags:
        """Whether the wall of each turn comes back to the arcs on its way; only the films at its ends may."""
        places, points = np.arange(len(self.numbers)), apart.walls.points[self.numbers]
        is_near = np.hypot(*np.moveaxis(self.feet[self.turn] - points[:, None], -1, 0)) < apart.step
        at_begin = is_near[:, 0] & (places < self.first[self.turn])
        at_end = is_near[:, 1] & (places > self.last[self.turn])
        back = ~apart.is_away[self.numbers] & ~at_begin & ~at_end
        found: Flags = np.bincount(self.turn, back, len(self.first)) > 0
        return found
