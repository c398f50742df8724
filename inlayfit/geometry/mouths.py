"""How far two walls are apart, and the mouths: where the arcs of a disk depart from a wall and come back.

One of the walls is what a disk was to follow, the other what it left: parts of that wall, and arcs. Wherever
the disk leaves something its arc departs, and an arc has short edges: so the middles of edges tell the
mouths.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.groups import Flags, Numbers, first_and_last, largest_of_each
from inlayfit.geometry.path import Points
from inlayfit.geometry.rings import Rings

_CHORDS_APART = 1.5  # chords of one arc, cut anew, lie a little apart; a piece twice as thick departs more
_SAME_PLACE_MM = 1e-6
_NEIGHBOURS = 8  # of the points nearest to a place on the wall, one is an end of the edge it lies on


@dataclass(frozen=True, eq=False, slots=True)
class Apart:
    """How far two walls are from each other, all along both.

    Attributes:
        walls: what a disk was to follow.
        away: how far each of its vertices is from the arcs, (n,).
        arcs: what is left of the walls, and the disk's arcs.
        aside: how far the middle of each of its edges is from the walls, (m,).
        wall, other: the same two, for more questions.
        distance: what is nearer than this coincides; a piece not twice as thick may be missing.
        step: long edges of the wall are looked at as often as this.
    """

    walls: Rings
    away: Points
    arcs: Rings
    aside: Points
    wall: BoundaryIndex
    other: BoundaryIndex
    distance: float
    step: float

    @classmethod
    def between(cls, wall: BoundaryIndex, other: BoundaryIndex, distance: float, step: float) -> Apart:
        """Measured from each to the other, which is made of what is left of the wall and of arcs.

        Where a disk leaves the wall, there is an arc with short edges; a piece without one has vertices.
        """
        walls, arcs = Rings.of(wall.region.rings()), Rings.of(other.region.rings())
        away, aside = other.nearest(walls.points)[0], wall.nearest(arcs.edge_middles)[0]
        return cls(walls, away, arcs, aside, wall, other, distance, step)

    @property
    def is_away(self) -> Flags:
        """Which vertices of the walls depart, (n,)."""
        return self.away > self.distance

    @property
    def is_aside(self) -> Flags:
        """Which edges of the arcs depart, (m,)."""
        return self.aside > _CHORDS_APART * self.distance


@dataclass(frozen=True, eq=False, slots=True)
class Mouths:
    """All mouths, and where on the wall they begin and end.

    Attributes:
        apart: both walls.
        ends: the vertices of the arcs where each mouth begins and ends, (m, 2).
        is_off: whether those depart from the wall, so that they are corners of the piece, (m, 2).
        feet: where on the wall they do, (m, 2, 2).
        edges: the number of the wall's edge that is, (m, 2).
        shares: how far along it, from 0 to 1, (m, 2).
        depths: how far the arc goes from the wall, (m,).
    """

    apart: Apart
    ends: Numbers
    is_off: Flags
    feet: Points
    edges: Numbers
    shares: Points
    depths: Points

    def turns(self) -> Numbers:
        """Once round each piece: the mouth begun at, the one ended at, and the number of the piece; (t, 3).

        Only those mouths count by which one comes back to where one began.
        """
        return _turns(self._next_ends())

    def _next_ends(self) -> Numbers:
        """For each mouth the one that ends where the wall leads to from its beginning; −1 if none."""
        count = len(self.ends)
        edge, share = self.edges.T.ravel(), self.shares.T.ravel()
        is_end = np.arange(2 * count) >= count
        # At one place, what ends there ends before the next begins.
        order = np.lexsort((~is_end, share, edge))
        starts, lasts = first_and_last(self.apart.walls.owners(edge[order]))
        following = np.arange(1, 2 * count + 1)
        following[lasts] = starts
        here, there = order, order[following]
        found = np.full(count, -1)
        turns = ~is_end[here] & is_end[there]
        found[here[turns]] = there[turns] - count
        return found

    def walls_between(self, begun: Numbers, ended: Numbers) -> tuple[Numbers, Numbers]:
        """The vertices of the wall from where mouths begin to where others end; and whose each is."""
        first, last = self.edges[begun, 0], self.edges[ended, 1]
        counts = self.apart.walls.between(first, last)
        goes_round = (first == last) & (self.shares[begun, 0] > self.shares[ended, 1])
        counts[goes_round] = self.apart.walls.sizes[self.apart.walls.owners(first[goes_round])]
        return self.apart.walls.stretches(self.apart.walls.after(first), counts)


def _turns(next_ends: Numbers) -> Numbers:
    """`Mouths.turns` from the mouth that ends the wall after each one's beginning."""
    following = next_ends.tolist()
    is_left = [True] * len(following)
    turns: list[tuple[int, int, int]] = []
    count = 0
    for first in range(len(following)):
        begun, mouth = len(turns), first
        while mouth >= 0 and is_left[mouth]:
            is_left[mouth] = False
            turns.append((mouth, following[mouth], count))
            mouth = following[mouth]
        if mouth == first and len(turns) > begun:
            count += 1
        else:
            del turns[begun:]
    return np.array(turns, dtype=np.intp).reshape(-1, 3)


def mouths_between(edges: Numbers, apart: Apart) -> Mouths | None:
    """The mouths whose edges depart, as far as where they meet the wall; None if one is not found on it.

    The vertex before an edge that departs may itself depart a little; then it is the one before that.
    """
    arcs, (first, last) = apart.arcs, edges.T
    # By end (the mouth's beginning, its end), then by try (the nearer vertex, the next), then by mouth.
    tried = np.array([[first, arcs.after(first, -1)], [arcs.after(last), arcs.after(last, 2)]])
    off, feet = apart.wall.nearest(arcs.points[tried.ravel()])
    off, feet = off.reshape(tried.shape), feet.reshape(*tried.shape, 2)
    further = (off[:, 0] > apart.distance).astype(np.intp)[:, None]
    ends, off = (np.take_along_axis(one, further, axis=1)[:, 0].T for one in (tried, off))
    feet = np.take_along_axis(feet, further[..., None], axis=1)[:, 0].swapaxes(0, 1)
    edge, share, gap = _places_on(apart.walls, apart.step, feet.reshape(-1, 2))
    if gap.max(initial=0.0) > _SAME_PLACE_MM:
        return None
    along, own = arcs.stretches(first, arcs.between(first, last) + 1)
    deepest = along[largest_of_each(own, apart.aside[along])]
    return Mouths(
        apart,
        ends,
        off > apart.distance,
        feet,
        edge.reshape(-1, 2),
        share.reshape(-1, 2),
        apart.aside[deepest],
    )


def _places_on(walls: Rings, step: float, feet: Points) -> tuple[Numbers, Points, Points]:
    """For points on the walls the number of their edge, how far along it they lie, and how far off it."""
    samples, edge_of = walls.samples(step)
    _, near = cKDTree(samples).query(feet, k=min(_NEIGHBOURS, len(samples)))
    edges = edge_of[np.asarray(near)]
    edges = np.hstack([edges, walls.after(edges, -1)])
    starts = walls.points[edges]
    spans = walls.points[walls.after(edges)] - starts
    offsets = feet[:, None] - starts
    squares = np.maximum(np.einsum("ijk,ijk->ij", spans, spans), 1e-300)
    shares = np.clip(np.einsum("ijk,ijk->ij", offsets, spans) / squares, 0.0, 1.0)
    gaps = np.linalg.norm(offsets - shares[..., None] * spans, axis=-1)
    best = gaps.argmin(axis=1)[:, None]
    edge, share, gap = (np.take_along_axis(one, best, axis=1)[:, 0] for one in (edges, shares, gaps))
    is_at_end = share == 1.0
    return np.where(is_at_end, walls.after(edge), edge), np.where(is_at_end, 0.0, share), gap
