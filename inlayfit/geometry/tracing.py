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
from inlayfit.geometry.mouths import Apart, Mouths, mouths_between
from inlayfit.geometry.outlines import Piece, outlines_of
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region


@dataclass(frozen=True, eq=False, slots=True)
class Tracing:
    """What following both walls has told.

    Attributes:
        pieces: those found, the films at their tips cut short.
        is_wall_left: which vertices of the walls depart and are along none of them, (n,).
        is_arc_left: which edges of the arcs do, (m,).
    """

    pieces: tuple[Piece, ...]
    is_wall_left: Flags
    is_arc_left: Flags


def traced(apart: Apart, *, wall_is_outside: bool) -> Tracing:
    """The pieces whose stretches tell them, and which stretches are left.

    Args:
        apart: both walls.
        wall_is_outside: whether the walls go round the arcs, or the arcs round the walls.
    """
    is_wall_left, is_arc_left = (one > 2 * apart.distance for one in (apart.away, apart.aside))
    if not (is_wall_left.any() or apart.is_aside.any()):
        return Tracing((), is_wall_left, is_arc_left)
    edges = apart.arcs.runs(apart.is_aside)
    mouths = mouths_between(edges, apart)
    if mouths is None:
        return Tracing((), is_wall_left, is_arc_left)
    lone, probes = _lone_rings(apart, mouths)
    turns = mouths.turns()
    outlines = outlines_of(mouths, turns, wall_is_outside)
    polygons, is_sound = outlines.polygons(probes)
    is_wall_left[outlines.wall[is_sound[outlines.wall_owner]]] = False
    firsts, lasts = edges[turns[is_sound[turns[:, 2]], 1]].T
    is_arc_left[apart.arcs.stretches(firsts, apart.arcs.between(firsts, lasts) + 1)[0]] = False
    pieces = outlines.pieces(apart, polygons, is_sound)
    for vertices, piece in _lone_pieces(apart, lone, probes, polygons, wall_is_outside):
        is_wall_left[vertices] = False
        pieces.append(piece)
    return Tracing(tuple(pieces), is_wall_left, is_arc_left)


def _lone_rings(apart: Apart, mouths: Mouths) -> tuple[Numbers, Points]:
    """The first vertex of each ring of wall that departs as a whole; and a point of these and such arcs.

    A ring may depart at all its vertices and be touched between them: then mouths begin and end on it.
    """
    touched = apart.walls.starts[apart.walls.owners(mouths.edges.ravel())]
    lone = np.setdiff1d(apart.walls.whole(apart.is_away), touched)
    arcs = apart.arcs.whole(apart.is_aside)
    return lone, np.vstack([apart.walls.points[lone], apart.arcs.points[arcs]])


def _lone_pieces(
    apart: Apart, lone: Numbers, probes: Points, traced_too: Shapes, wall_is_outside: bool
) -> list[tuple[Numbers, Piece]]:
    """Pieces that are all within a ring of wall, and that ring's vertices: none of it was reached.

    Not those with a ring in them, or in another piece: a ring tells nothing of holes.
    """
    found = []
    for number, (start, size) in enumerate(
        zip(lone, apart.walls.sizes[apart.walls.owners(lone)], strict=True)
    ):
        vertices = start + np.arange(size)
        ring = apart.walls.points[vertices]
        polygon = Polygon(ring if wall_is_outside else ring[::-1])
        has_hole = shapely.intersects_xy(polygon, *np.delete(probes, number, axis=0).T).any()
        is_in_another = shapely.intersects_xy(traced_too, *probes[number]).any()
        if not (has_hole or is_in_another) and polygon.exterior.is_ccw and polygon.is_valid:
            deepest = vertices[apart.away[vertices].argmax()]
            x, y = apart.walls.points[deepest].tolist()
            depth = float(apart.away[deepest])
            found.append((vertices, Piece(Region.of(polygon), (), depth, (x, y), is_apart=True)))
    return found
