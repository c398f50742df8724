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
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.morphology import thick_parts
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance

_SHARED_EDGE_MM = 1e-6
_SMALL_RADII = 0.1
_NARROWS_BELOW = 0.62  # area over mouth × depth: 0.5 for a wedge, 1 for a channel, less what arcs take


class ResidueKind(StrEnum):
    """See the module docstring."""

    CORNER = "corner"
    DEAD_END = "dead end"
    NECK = "neck"
    LOST_PIECE = "lost piece"


@dataclass(frozen=True, slots=True)
class Residue:
    """One connected piece that the cutter leaves.

    Attributes:
        region: the piece.
        kind: its shape.
        place: a point in it, far from its edges.
        depth: how far its farthest point is from the reached area; 0 for a lost piece.
    """

    region: Region
    kind: ResidueKind
    place: tuple[float, float]
    depth: float

    @property
    def area(self) -> float:
        """Square millimetres."""
        return self.region.area


def residues(wanted: Region, reached: Region, radius: float, tolerance: Tolerance) -> tuple[Residue, ...]:
    """All pieces of `wanted` outside `reached` that are thicker than numerical dust, largest first.

    For a cutter that runs inside what is wanted (a pocket). `radius` is the cutter's; a piece much smaller
    than it can only be the corner of two chords.
    """
    return _all_judged(wanted.minus(reached), reached, radius, tolerance)


def residues_outside(
    wanted: Region, left: Region, radius: float, tolerance: Tolerance
) -> tuple[Residue, ...]:
    """The same for a cutter that runs outside (of a plug), which leaves `left` of what is `wanted`.

    What it reaches is all outside `left`; a hole of which it reaches nothing is a lost piece.
    """
    extra = left.minus(wanted)
    if extra.is_empty:
        return ()
    x0, y0, x1, y1 = left.bounds
    frame = shapely.box(x0 - 2 * radius, y0 - 2 * radius, x1 + 2 * radius, y1 + 2 * radius)
    return _all_judged(extra, Region.of(frame).minus(left), radius, tolerance)


def _all_judged(left: Region, reached: Region, radius: float, tolerance: Tolerance) -> tuple[Residue, ...]:
    thick = thick_parts(left, tolerance.settle_mm)
    found = [_judged(piece, reached, radius, tolerance) for piece in thick.pieces]
    return tuple(sorted(found, key=lambda residue: -residue.area))


def outer_vertices(region: Region) -> Points:
    """All vertices of all rings, (n, 2)."""
    return np.vstack(region.rings())


def _judged(piece: Region, reached: Region, radius: float, tolerance: Tolerance) -> Residue:
    x0, y0, x1, y1 = piece.bounds
    near = reached.within(x0 - radius, y0 - radius, x1 + radius, y1 + radius).shape
    place = _inner_point(piece.polygons[0])
    if near.is_empty or shapely.distance(piece.shape, near) > tolerance.settle_mm:
        return Residue(piece, ResidueKind.LOST_PIECE, place, 0.0)
    depth = float(shapely.distance(near, shapely.points(outer_vertices(piece))).max())
    if max(x1 - x0, y1 - y0) < _SMALL_RADII * radius:
        return Residue(piece, ResidueKind.CORNER, place, depth)
    mouths = _mouths(piece.polygons[0], near, tolerance)
    if len(mouths) > 1:
        return Residue(piece, ResidueKind.NECK, place, depth)
    width = _span(mouths[0]) if mouths else 0.0
    narrows = not mouths or depth < width / 4 or piece.area <= _NARROWS_BELOW * width * depth
    return Residue(piece, ResidueKind.CORNER if narrows else ResidueKind.DEAD_END, place, depth)


def _inner_point(polygon: Polygon) -> tuple[float, float]:
    point = polygon.representative_point()
    return float(point.x), float(point.y)


def _mouths(polygon: Polygon, reached: BaseGeometry, tolerance: Tolerance) -> list[BaseGeometry]:
    """Where the piece's boundary lies against the reached area: one strip per mouth.

    The piece is a difference, so it shares its mouth with the reached area to the last digits; a wider
    strip would also take in the wall next to a corner's tips, which meets the mouth at a tangent. Rounding
    can leave films along those walls; they are left out.
    """
    near = shapely.buffer(polygon, tolerance.settle_mm, quad_segs=2)
    edge = shapely.intersection(shapely.boundary(reached), near)
    strip = shapely.buffer(edge, _SHARED_EDGE_MM, quad_segs=2)
    thick = shapely.buffer(shapely.buffer(polygon, -tolerance.settle_mm / 2), 2 * tolerance.settle_mm)
    shared = shapely.intersection(polygon.boundary, shapely.intersection(strip, thick))
    lines = shapely.get_parts(shared)
    strips = shapely.get_parts(shapely.union_all(shapely.buffer(lines, tolerance.settle_mm, quad_segs=2)))
    return [mouth for mouth in strips if _span(mouth) > 10 * tolerance.settle_mm]


def _span(mouth: BaseGeometry) -> float:
    x0, y0, x1, y1 = mouth.bounds
    return math.hypot(x1 - x0, y1 - y0)
