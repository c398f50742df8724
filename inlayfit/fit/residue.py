"""Residues: what a round cutter leaves of what was wanted, told apart by shape.

corner: a residue with one mouth towards the reached area, narrowing away from it. Every sharp corner
    leaves one.
dead end: a residue with one mouth that does not narrow: a channel the cutter cannot enter.
neck: a residue with two mouths or more: a passage between reached areas.
lost piece: a residue with no mouth: a piece none of which the cutter reaches.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
import shapely
from shapely import Polygon

from inlayfit.geometry.departures import departing_pieces
from inlayfit.geometry.outlines import Piece
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance

_SMALL_RADII = 0.1
_NARROWS_BELOW = 0.62  # area over mouth × depth: 0.5 for a wedge, 1 for a channel, less what arcs take


class ResidueKind(StrEnum):
    """See the module docstring."""

    CORNER = "corner"
    DEAD_END = "dead end"
    NECK = "neck"
    LOST_PIECE = "lost piece"


@dataclass(frozen=True, eq=False, slots=True)
class Residue:
    """One connected piece that the cutter leaves.

    Attributes:
        region: the piece.
        kind: its shape.
        place: a point in it, far from its edges.
        depth: how far its farthest point is from the reached area; 0 for a lost piece.
        tip: that point.
        mouths: the points of each stretch along the reached area, in the order of the piece's boundary.
    """

    region: Region
    kind: ResidueKind
    place: tuple[float, float]
    depth: float
    tip: tuple[float, float]
    mouths: tuple[Points, ...] = ()

    @property
    def area(self) -> float:
        """Square millimetres."""
        return self.region.area


def residues(wanted: Region, reached: Region, radius: float, tolerance: Tolerance) -> tuple[Residue, ...]:
    """All pieces of `wanted` outside `reached` that are thicker than numerical dust, largest first.

    For a cutter that runs inside what is wanted (a pocket). `radius` is the cutter's; a piece much smaller
    than it can only be the corner of two chords.
    """
    if radius <= 0 or wanted.is_empty:
        return ()
    if reached.is_empty:
        return tuple(_lost(piece) for piece in wanted.pieces)
    pieces = departing_pieces(
        wanted, reached, wall_is_outside=True, thickness=tolerance.settle_mm, reach=radius
    )
    return _judged(pieces, radius, tolerance)


def residues_outside(
    wanted: Region, left: Region, radius: float, tolerance: Tolerance
) -> tuple[Residue, ...]:
    """The same for a cutter that runs outside (of a plug), which leaves `left` of what is `wanted`.

    What it reaches is all outside `left`; a hole of which it reaches nothing is a lost piece.
    """
    if radius <= 0 or wanted.is_empty or left.is_empty:
        return ()
    pieces = departing_pieces(
        wanted, left, wall_is_outside=False, thickness=tolerance.settle_mm, reach=radius
    )
    return _judged(pieces, radius, tolerance)


def _lost(piece: Region) -> Residue:
    place = _inner_point(piece.polygons[0])
    return Residue(piece, ResidueKind.LOST_PIECE, place, 0.0, place)


def _judged(pieces: list[Piece], radius: float, tolerance: Tolerance) -> tuple[Residue, ...]:
    """All pieces between what is wanted and what the cutter leaves, told apart, largest first."""
    shapes = np.array([piece.region.shape for piece in pieces], dtype=object)
    measures = zip(
        pieces,
        shapely.get_coordinates(shapely.point_on_surface(shapes)).tolist(),
        shapely.area(shapes).tolist(),
        np.ptp(shapely.bounds(shapes).reshape(-1, 2, 2), axis=1).max(axis=1).tolist(),
        strict=True,
    )
    found: list[tuple[float, Residue]] = []
    for piece, (x, y), area, size in measures:
        depth = 0.0 if piece.is_apart else piece.depth
        if piece.is_apart:
            kind = ResidueKind.LOST_PIECE
        elif size < _SMALL_RADII * radius:
            kind = ResidueKind.CORNER
        else:
            kind = _kind(_widths(piece, tolerance), depth, area)
        found.append((area, Residue(piece.region, kind, (x, y), depth, piece.tip, piece.mouths)))
    return tuple(residue for _, residue in sorted(found, key=lambda one: -one[0]))


def _widths(piece: Piece, tolerance: Tolerance) -> list[float]:
    """How wide each of its mouths is, but for those as narrow as dust."""
    spans = [_span(mouth) for mouth in piece.mouths]
    return [span for span in spans if span > 10 * tolerance.settle_mm]


def _kind(mouths: list[float], depth: float, area: float) -> ResidueKind:
    """The kind of a piece that is large enough to have a form, by the widths of its mouths."""
    if len(mouths) > 1:
        return ResidueKind.NECK
    width = mouths[0] if mouths else 0.0
    narrows = not mouths or depth < width / 4 or area <= _NARROWS_BELOW * width * depth
    return ResidueKind.CORNER if narrows else ResidueKind.DEAD_END


def _inner_point(polygon: Polygon) -> tuple[float, float]:
    point = polygon.representative_point()
    return float(point.x), float(point.y)


def _span(points: Points) -> float:
    sizes = points.max(axis=0) - points.min(axis=0)
    return math.hypot(float(sizes[0]), float(sizes[1]))
