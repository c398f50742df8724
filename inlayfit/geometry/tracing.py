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
from shapely import Polygon

from inlayfit.geometry.clipping import Shapes
from inlayfit.geometry.groups import Flags, Numbers
from inlayfit.geometry.mouths import Apart, mouths_between
from inlayfit.geometry.outlines import Outlines, Piece, outlines_of
from inlayfit.geometry.region import Region


@dataclass(frozen=True, eq=False, slots=True)
class Left:
    """What departs and is along no piece.

    Attributes:
        of_wall: which vertices of the walls, (n,).
        of_arcs: which edges of the arcs, (m,).
    """

    of_wall: Flags
    of_arcs: Flags

    @property
    def is_nothing(self) -> bool:
        """Whether pieces account for all that departs."""
        return not (self.of_wall.any() or self.of_arcs.any())

    def beside(self, apart: Apart, outlines: Outlines, runs: Numbers, is_sound: Flags) -> Left:
        """What of this is left beside the pieces that are sound; `runs` are the edges of all their mouths."""
        of_wall, of_arcs = self.of_wall.copy(), self.of_arcs.copy()
        of_wall[outlines.wall[is_sound[outlines.wall_owner]]] = False
        firsts, lasts = runs[is_sound[outlines.mouth_owner]].T
        of_arcs[apart.arcs.stretches(firsts, apart.arcs.between(firsts, lasts) + 1)[0]] = False
        return Left(of_wall, of_arcs)


@dataclass(frozen=True, eq=False, slots=True)
class Tracing:
    """What following both walls has told: pieces, the films at their tips cut short, and what is left."""

    pieces: tuple[Piece, ...]
    left: Left


def traced(apart: Apart, *, wall_is_outside: bool) -> Tracing:
    """The pieces whose stretches tell them, and which stretches are left.

    Args:
        apart: both walls.
        wall_is_outside: whether the walls go round the arcs, or the arcs round the walls.
    """
    departs = Left(*(one > 2 * apart.distance for one in (apart.away, apart.aside)))
    if not (departs.of_wall.any() or apart.is_aside.any()):
        return Tracing((), departs)
    edges = apart.arcs.runs(apart.is_aside)
    mouths = mouths_between(edges, apart)
    if mouths is None:
        return Tracing((), departs)
    turns = mouths.turns()
    outlines = outlines_of(mouths, turns, wall_is_outside)
    polygons, is_sound = outlines.polygons()
    runs = edges[turns[:, 1]]
    left = departs.beside(apart, outlines, runs, is_sound)
    unsound = _with_left_ones_inside(polygons, apart, left)
    if len(unsound):
        is_sound[unsound] = False
        left = departs.beside(apart, outlines, runs, is_sound)
    pieces = outlines.pieces(apart, polygons, is_sound)
    for vertices, piece in _lone_pieces(apart, polygons, wall_is_outside):
        left.of_wall[vertices] = False
        pieces.append(piece)
    return Tracing(tuple(pieces), left)


def _with_left_ones_inside(polygons: Shapes, apart: Apart, left: Left) -> Numbers:
    """Which polygons have something in them that departs and is along none: a hole that was not seen."""
    points = np.vstack([apart.walls.points[left.of_wall], apart.arcs.edge_middles[left.of_arcs]])
    if len(points) == 0:
        return np.empty(0, dtype=np.intp)
    numbers: Numbers = shapely.STRtree(polygons).query(shapely.points(points), predicate="within")[1]
    return numbers


def _lone_pieces(apart: Apart, traced_too: Shapes, wall_is_outside: bool) -> list[tuple[Numbers, Piece]]:
    """Pieces that are all within a ring of wall, and that ring's vertices: none of it was reached.

    Not those with a ring in them, or in another piece: a ring tells nothing of holes. A ring may depart at
    all its vertices and be touched between them, as a circle of chords is.
    """
    starts = apart.walls.whole(apart.is_away).tolist()
    rings = [apart.walls.ring_at(start) for start in starts]
    is_lone = ~apart.other.comes_near(rings, apart.distance)
    probes = np.vstack([*(ring[:1] for ring in rings), apart.arcs.points[apart.arcs.whole(apart.is_aside)]])
    found = []
    for number in np.flatnonzero(is_lone).tolist():
        ring, vertices = rings[number], starts[number] + np.arange(len(rings[number]))
        polygon = Polygon(ring if wall_is_outside else ring[::-1])
        has_hole = shapely.intersects_xy(polygon, *np.delete(probes, number, axis=0).T).any()
        is_in_another = shapely.intersects_xy(traced_too, *probes[number]).any()
        if not (has_hole or is_in_another) and polygon.exterior.is_ccw and polygon.is_valid:
            deepest = vertices[apart.away[vertices].argmax()]
            x, y = apart.walls.points[deepest].tolist()
            depth = float(apart.away[deepest])
            found.append((vertices, Piece(Region.of(polygon), (), depth, (x, y), is_apart=True)))
    return found
