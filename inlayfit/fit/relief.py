"""Corner relief: cutting away a little more where a round cutter cannot go.

The residue Z is what the cutter cannot remove although it must go. A *straight plunge* moves the cutter
from a place it can reach, C0, in a straight line towards Z and back. The cutter sweeps a stadium: all
points within its radius of the line. It covers a point z if, seen along the plunge, z lies at most
√(r² − p²) beyond the line's end, p being z's distance off the line. So the plunge that just covers all
of Z has the length max over z of a − √(r² − p²), a being z's distance along it. A stadium is convex: when
it covers Z's vertices it covers Z.

    dog-bone: the plunge along the bisector of the corner, chosen from a fan of directions as the one that
        takes least beyond Z.
    T-bone: the plunge parallel to one wall of the corner, so that the bite lies in the other wall.

Where no straight plunge covers Z (a bent channel, a pocket of a residue wider than the cutter), the cutter
is led over Z itself, and everything within its radius goes. All of this holds for both halves: of a plug
the cutter runs outside, of a pocket inside.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import shapely
from shapely import LineString

from inlayfit.fit.residue import Residue, ResidueKind, outer_vertices
from inlayfit.fit.spec import HalfSpec, Relief, WallChoice
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.flatten import quad_segments
from inlayfit.geometry.morphology import dilate, thick_parts
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance

_FAN_RAD = np.radians([0.0, -12.0, 12.0, -6.0, 6.0, -3.0, 3.0, -1.5, 1.5])
_BARELY_MISSED_MM = 0.0005  # a wall parallel to the plunge lies exactly one radius off it


@dataclass(frozen=True, slots=True)
class Sweep:
    """Where the cutter goes to relieve one residue.

    Attributes:
        swept: all that the cutter removes there, the residue included.
        start, end: centre of the cutter before and at the end of the plunge.
        straight: False where the cutter had to be led over the residue.
        corner: the residue's farthest point.
    """

    swept: Region
    start: tuple[float, float]
    end: tuple[float, float]
    straight: bool
    corner: tuple[float, float]


def sweeps_for(
    left: tuple[Residue, ...],
    centres: Region,
    half: Region,
    cutter: HalfSpec,
    tolerance: Tolerance,
) -> tuple[Sweep, ...]:
    """One sweep a residue.

    Args:
        left: what has to go.
        centres: a region whose boundary bounds the cutter's centres while it stays off the wall.
        half: what a sweep should take least of beyond the residue (the plug, or the pocket's host).
        cutter: its radius, and which relief is wanted: T-bone, or else dog-bone.
        tolerance: for the sweep's arcs.
    """
    index = None if centres.is_empty else BoundaryIndex(centres)
    return tuple(
        _plunged_upon(residue, cutter.radius_mm, tolerance)
        if index is None or residue.kind is ResidueKind.LOST_PIECE
        else _sweep(residue, index, half, cutter, tolerance)
        for residue in left
    )


def _sweep(
    residue: Residue,
    centres: BoundaryIndex,
    half: Region,
    cutter: HalfSpec,
    tolerance: Tolerance,
) -> Sweep:
    radius = cutter.radius_mm
    vertices = outer_vertices(residue.region)
    distances, feet = centres.nearest(vertices)
    deepest = int(distances.argmax())
    corner, start = vertices[deepest], feet[deepest]
    along_walls: list[tuple[Points, Points]] = []
    if cutter.relief is Relief.T_BONE:
        along_walls = _along_walls(residue.region.rings()[0], corner, start, half, cutter.t_bone_wall)
    for candidates in (along_walls, _along_bisector(vertices, corner, start, centres)):
        stadium = _least_stadium(residue, candidates, half, radius, tolerance)
        if stadium is not None:
            swept, (begin, end) = stadium
            return Sweep(swept, _pair(begin), _pair(end), True, _pair(corner))
    return _led_over(residue, start, corner, radius, tolerance)


def _least_stadium(
    residue: Residue,
    candidates: list[tuple[Points, Points]],
    half: Region,
    radius: float,
    tolerance: Tolerance,
) -> tuple[Region, tuple[Points, Points]] | None:
    """The plunge among the candidates that covers the residue and takes least of the half, or None."""
    vertices = outer_vertices(residue.region)
    plunges = [p for origin, aim in candidates if (p := _plunge(origin, aim, vertices, radius)) is not None]
    if not plunges:
        return None
    near = _near(half, plunges, radius)
    best = plunges[int(np.argmin([_taken(one, near, radius) for one in plunges]))]
    steps = quad_segments(radius, tolerance.arc_mm)
    stadium = Region.of(shapely.buffer(LineString(best), radius, quad_segs=steps))
    missed = thick_parts(residue.region.minus(stadium), tolerance.settle_mm)
    return (stadium, best) if missed.is_empty else None


def _near(half: Region, plunges: list[tuple[Points, Points]], radius: float) -> Region:
    """The part of the half that any of the plunges can touch."""
    points = np.vstack([point for plunge in plunges for point in plunge])
    (x0, y0), (x1, y1) = points.min(axis=0) - radius, points.max(axis=0) + radius
    return half.within(x0, y0, x1, y1)


def _taken(plunge: tuple[Points, Points], half: Region, radius: float) -> float:
    """Area of the half that a plunge removes, by a coarse stadium: only compared, never reported."""
    stadium = shapely.buffer(LineString(plunge), radius, quad_segs=16)
    return float(shapely.intersection(half.shape, stadium).area)


def _pair(point: Points) -> tuple[float, float]:
    x, y = point.tolist()
    return x, y


def _along_bisector(
    vertices: Points, corner: Points, start: Points, centres: BoundaryIndex
) -> list[tuple[Points, Points]]:
    """Places to plunge from and unit directions: towards the corner and the middle, and a fan about each."""
    middle = vertices.mean(axis=0)
    _, foot = centres.nearest(middle[None])
    found = []
    for origin, aim in ((start, corner), (foot[0], middle), (start, middle)):
        straight = _unit(aim - origin)
        if straight is not None:
            found += [(origin, _turned(straight, angle)) for angle in _FAN_RAD]
    return found


def _along_walls(
    ring: Points, corner: Points, start: Points, half: Region, bitten: WallChoice
) -> list[tuple[Points, Points]]:
    """The same, parallel to the walls where they leave the reached area; the bite lies in the other wall."""
    axis = corner - start
    offsets = ring - start
    side = axis[0] * offsets[:, 1] - axis[1] * offsets[:, 0]
    far = np.hypot(offsets[:, 0], offsets[:, 1])
    plunges, walls = [], []
    for end in (int(side.argmax()), int(side.argmin())):
        # The mouth's arc stays one radius from the start; the wall leads away from it.
        neighbour = max((end - 1, (end + 1) % len(ring)), key=lambda i: far[i])
        direction = _unit(ring[neighbour] - ring[end])
        if direction is not None:
            plunges.append((start, direction))
            walls.append((ring[neighbour] + ring[end]) / 2)
    if bitten is WallChoice.LEAST or len(plunges) < 2:
        return plunges
    lengths = BoundaryIndex(half).edge_lengths(np.array(walls))
    along = int(lengths.argmin() if bitten is WallChoice.LONG else lengths.argmax())
    return [plunges[along]]


def _unit(vector: Points) -> Points | None:
    length = math.hypot(*vector)
    return vector / length if length > 0 else None


def _turned(direction: Points, angle: float) -> Points:
    cos, sin = math.cos(angle), math.sin(angle)
    return np.array([cos * direction[0] - sin * direction[1], sin * direction[0] + cos * direction[1]])


def _plunge(
    origin: Points, direction: Points, vertices: Points, radius: float
) -> tuple[Points, Points] | None:
    """Start and end of the shortest plunge this way that covers all vertices; None if none does."""
    offsets = vertices - origin
    along = offsets @ direction
    off = np.abs(offsets[:, 0] * direction[1] - offsets[:, 1] * direction[0])
    if off.max() > radius + _BARELY_MISSED_MM:
        return None
    reach = along - np.sqrt(np.maximum(0.0, radius**2 - off**2))
    if (along < -radius).any():
        return None
    length = max(0.0, float(reach.max()))
    return origin, origin + length * direction


def _led_over(residue: Residue, start: Points, corner: Points, radius: float, tolerance: Tolerance) -> Sweep:
    way = LineString([start, corner])
    steps = quad_segments(radius, tolerance.arc_mm)
    swept = dilate(residue.region, radius, tolerance)
    swept = swept.union(Region.of(shapely.buffer(way, radius, quad_segs=steps)))
    return Sweep(swept, _pair(start), _pair(corner), False, _pair(corner))


def _plunged_upon(residue: Residue, radius: float, tolerance: Tolerance) -> Sweep:
    """A piece without a mouth: the cutter comes down on it from above, and is led over it if it is larger."""
    circle = shapely.minimum_bounding_circle(residue.region.shape)
    centre = shapely.centroid(circle)
    place = (float(centre.x), float(centre.y))
    if shapely.minimum_bounding_radius(residue.region.shape) <= radius:
        steps = quad_segments(radius, tolerance.arc_mm)
        disk = Region.of(shapely.buffer(centre, radius, quad_segs=steps))
        return Sweep(disk, place, place, True, place)
    return Sweep(dilate(residue.region, radius, tolerance), place, place, False, place)
