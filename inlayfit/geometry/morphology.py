"""What a disk can reach: erosion, dilation, opening and closing by a disk.

    erode(X, r):  centres of disks of radius r that lie inside X
    dilate(X, r): all that such disks cover when their centres run over X
    opened(X, r): erode, then dilate: the union of all disks of radius r inside X
    closed(X, r): dilate, then erode: the complement of the union of all disks of radius r outside X

(Standard mathematical morphology; see Serra, Image Analysis and Mathematical Morphology, 1982.)

GEOS computes the offsets; the number of chords per quarter turn comes from the arc tolerance, so each
result is within `Tolerance.arc_mm` of the true one for every radius.

A slot exactly one disk wide vanishes from a plain opening by one rounding error. So the erosion is also
done with a radius smaller by `Tolerance.cutter_slack_mm`; what only that one can reach is a *tight sweep*
and is added, with its slightly smaller disk. Everywhere else the full radius stands, so rounded corners
have the true radius. Closing is the mirror image.

Where two walls are exactly twice the distance apart, what is between them shrinks to a line without width,
and GEOS then loses what hangs on it, or makes rings that cross each other: of one in ten strokes as wide as
the disk, by the last digits. So each offset is a millionth of a micrometre more than asked.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import GeometryCollection, LinearRing, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.flatten import quad_segments
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance

_SHORTEST_SWEEP_SLACKS = 30.0  # a tight sweep shorter than so many slacks is the tip of a corner
_DROPPED_SHARE = 0.01  # of the distance: GEOS may drop the far end of a shorter piece of a concave wall
_LARGE_RADIUS = 7.5  # a larger disk needs more slack than a tolerance has: a ten-thousandth of it
_ROUNDED_CHORDS = 2.25  # GEOS rounds the number of chords of an arc: one may span 1.5 steps, 1.5² the sagitta
_FALSE_ARCS = 4.0  # a true hole or piece lies no nearer than this many arc tolerances less than the distance
_ASKED_VERTICES = 8
_TILT_MM = 2e-5  # small beside the arc tolerance
_NO_WIDTH_MM = 1e-6
_HAIR_MM = 1e-9  # more than asked, so that no walls lie exactly twice the distance apart
_NEAR_SLACKS = 4.0  # what lies within so many slacks of the plain result belongs to it


def dilate(region: Region, distance: float, tolerance: Tolerance) -> Region:
    """Grow by `distance`, corners rounded; a negative distance erodes."""
    if distance == 0 or region.is_empty:
        return region
    wall = _Wall(region, abs(distance))
    return wall.without_false_rings(wall.moved(distance, tolerance), distance, tolerance)


class _Wall:
    """The wall of a region that is not empty, ready to be moved by about the same distance more than once."""

    def __init__(self, region: Region, about: float) -> None:
        self._region = region
        self._guarded = _guarded(region.shape, 2 * _DROPPED_SHARE * about)
        self._edge: BaseGeometry | None = None

    def moved(self, distance: float, tolerance: Tolerance) -> Region:
        """Outwards, or inwards if negative; now and then with rings that GEOS made up."""
        steps = quad_segments(abs(distance), tolerance.arc_mm / _ROUNDED_CHORDS)
        more = distance + math.copysign(_HAIR_MM, distance)
        return Region.of(shapely.buffer(self._guarded, more, quad_segs=steps))

    def without_false_rings(self, moved: Region, distance: float, tolerance: Tolerance) -> Region:
        """Without holes in what was grown, or pieces of what was shrunk, that cannot be.

        Such a ring lies nearer to the wall than that was moved, or what is in it has no width at all. GEOS
        leaves one now and then where an offset curve crosses itself at short pieces of wall, or where two of
        them coincide. It depends on the last digits of the coordinates, so a shifted shape would give
        another answer.
        """
        near = (1 - _DROPPED_SHARE) * abs(distance) - _FALSE_ARCS * tolerance.arc_mm
        return self._without_holes(moved, near) if distance > 0 else self._without_pieces(moved, near)

    def _without_holes(self, grown: Region, near: float) -> Region:
        if grown.hole_count == 0:
            return grown
        holes = [Polygon(hole) for polygon in grown.polygons for hole in polygon.interiors]
        false = self._are_false(holes, near)
        return grown.union(Region.of(shapely.union_all(np.array(holes)[false]))) if false.any() else grown

    def _without_pieces(self, shrunk: Region, near: float) -> Region:
        polygons = shrunk.polygons
        if not polygons or (len(polygons) == 1 and not _has_no_width(polygons)[0]):
            return shrunk
        false = self._are_false([Polygon(polygon.exterior) for polygon in polygons], near)
        return Region(MultiPolygon(np.array(polygons)[~false].tolist())) if false.any() else shrunk

    def _are_false(self, pieces: list[Polygon], near: float) -> NDArray[np.bool_]:
        """Whether each is as thin as rounding, or comes nearer than that to the wall."""
        return _has_no_width(pieces) | self._reach_nearer([piece.exterior for piece in pieces], near)

    def _reach_nearer(self, rings: list[LinearRing], near: float) -> NDArray[np.bool_]:
        """Whether each ring comes nearer than that to the wall, asked of a few of its vertices.

        A ring that is false is so all round: it lies where two offset curves have crossed.
        """
        lines = [shapely.get_coordinates(ring) for ring in rings]
        asked = [line[:: -(-len(line) // _ASKED_VERTICES)] for line in lines]
        if self._edge is None:
            self._edge = shapely.boundary(self._region.shape)
            shapely.prepare(self._edge)
        nearer = shapely.dwithin(self._edge, shapely.points(np.vstack(asked)), near)
        firsts = np.cumsum([0, *(len(line) for line in asked[:-1])])
        found: NDArray[np.bool_] = np.logical_or.reduceat(nearer, firsts)
        return found


def _has_no_width(pieces: Sequence[Polygon]) -> NDArray[np.bool_]:
    thin: NDArray[np.bool_] = shapely.area(pieces) < _NO_WIDTH_MM * shapely.length(pieces) / 2
    return thin


def _guarded(shape: MultiPolygon, apart: float) -> MultiPolygon:
    """The same shape with a vertex on each long piece that follows a short one, `apart` from their corner.

    GEOS leaves out the corner between the two when that makes a concave wall shallower by less than its own
    tolerance; without a vertex nearby the whole long piece would tilt (BufferInputLineSimplifier). Its end
    would move by how far the short piece leads off its line; where that is next to nothing it needs no guard.
    """
    rings = shapely.get_rings(list(shape.geoms))
    points = shapely.get_coordinates(rings)
    spans = np.diff(points, axis=0)
    sizes = np.hypot(spans[:, 0], spans[:, 1])
    ends = np.cumsum(shapely.get_num_coordinates(rings))
    sizes[ends[:-1] - 1] = np.nan  # from one ring to the next
    off = np.abs(spans[:-1, 0] * spans[1:, 1] - spans[:-1, 1] * spans[1:, 0]) > _TILT_MM * sizes[1:]
    long = np.flatnonzero((sizes[:-1] < apart) & (sizes[1:] > 2 * apart) & off) + 1
    if not len(long):
        return shape
    guards = points[long] + spans[long] * (apart / sizes[long])[:, None]
    firsts = ends + np.searchsorted(long, ends)
    lines = iter(np.split(np.insert(points, long + 1, guards, axis=0), firsts[:-1]))
    return MultiPolygon([Polygon(next(lines), [next(lines) for _ in p.interiors]) for p in shape.geoms])


def erode(region: Region, distance: float, tolerance: Tolerance) -> Region:
    """Shrink by `distance`; a negative distance dilates."""
    return dilate(region, -distance, tolerance)


def opened(region: Region, radius: float, tolerance: Tolerance) -> Region:
    """All that a disk of this radius can sweep inside the region; convex corners come out rounded."""
    return region if radius <= 0 or region.is_empty else opened_with_room(region, radius, tolerance)[0]


def closed(region: Region, radius: float, tolerance: Tolerance) -> Region:
    """The region with everything filled that a disk outside cannot reach; concave corners rounded."""
    return region if radius <= 0 or region.is_empty else closed_with_bars(region, radius, tolerance)[0]


def opened_with_room(
    region: Region, radius: float, tolerance: Tolerance, *, allowance: float = 0.0
) -> tuple[Region, Region]:
    """The opening, and where the disk's centre can go for it, tight sweeps included.

    With an allowance the disk keeps that far away from the wall.
    """
    centres, tight = _centres_inside(region, radius + allowance, tolerance)
    swept = dilate(centres, radius, tolerance)
    if tight.is_empty:
        return swept, centres
    slack = _slack(radius + allowance, tolerance)
    return swept.union(dilate(tight, max(0.0, radius - slack), tolerance)), centres.union(tight)


def closed_with_bars(
    region: Region, radius: float, tolerance: Tolerance, *, allowance: float = 0.0
) -> tuple[Region, Region]:
    """The closing, and where the disk's centre cannot go outside; tight sweeps are no part of that.

    With an allowance the disk keeps that far away from the wall.
    """
    grown, tight = _centres_outside(region, radius + allowance, tolerance)
    filled = erode(grown, radius, tolerance)
    if tight.is_empty:
        return filled, grown
    slack = _slack(radius + allowance, tolerance)
    return filled.minus(dilate(tight, max(0.0, radius - slack), tolerance)), grown.minus(tight)


def room_inside(region: Region, radius: float, tolerance: Tolerance) -> Region:
    """Where the centre of a disk can go that stays inside the region, tight sweeps included."""
    centres, tight = _centres_inside(region, radius, tolerance)
    return centres if tight.is_empty else centres.union(tight)


def _centres_inside(region: Region, radius: float, tolerance: Tolerance) -> tuple[Region, Region]:
    """The centres of the disks inside, and those of slightly smaller disks that alone can sweep a place."""
    slack = _slack(radius, tolerance)
    centres, loose = _moved_twice(region, -radius, slack - radius, tolerance)
    if loose is None:
        return centres, Region.empty()
    return centres, _tight_sweeps(loose, dilate(centres, _NEAR_SLACKS * slack, tolerance), slack)


def _centres_outside(region: Region, radius: float, tolerance: Tolerance) -> tuple[Region, Region]:
    """The complement of the centres of the disks outside, and the centres of tight sweeps in it."""
    slack = _slack(radius, tolerance)
    grown, loose = _moved_twice(region, radius, radius - slack, tolerance)
    if loose is None:
        return grown, Region.empty()
    return grown, _tight_sweeps(erode(grown, _NEAR_SLACKS * slack, tolerance), loose, slack)


def _moved_twice(
    region: Region, distance: float, less: float, tolerance: Tolerance
) -> tuple[Region, Region | None]:
    """The region offset by a distance, and by a little less if that makes more than a strip of difference.

    Whether there are false rings in the second is asked only then: they would be a difference.
    """
    wall = _Wall(region, abs(distance))
    far = wall.without_false_rings(wall.moved(distance, tolerance), distance, tolerance)
    near = wall.moved(less, tolerance)
    if not _differ_more_than_an_offset(far, near, abs(distance - less)):
        return far, None
    near = wall.without_false_rings(near, less, tolerance)
    return far, near if _differ_more_than_an_offset(far, near, abs(distance - less)) else None


def _slack(radius: float, tolerance: Tolerance) -> float:
    """A large disk needs more: GEOS may drop every other of the chords shorter than 1 % of its radius."""
    return min(tolerance.cutter_slack_mm * max(1.0, radius / _LARGE_RADIUS), radius / 2)


def _differ_more_than_an_offset(one: Region, other: Region, offset: float) -> bool:
    """Whether one of two nested regions has more than the strip between parallel curves of the other.

    Between parallel curves the perimeter changes linearly, so the strip's area is the offset times the mean
    perimeter (Steiner's formula). A tight sweep adds its length to one perimeter and breaks that.
    """
    if len(one.polygons) != len(other.polygons) or one.hole_count != other.hole_count:
        return True
    strip = abs(one.area - other.area) - offset * (one.perimeter + other.perimeter) / 2
    shortest = _SHORTEST_SWEEP_SLACKS * offset
    return abs(strip) > 0.1 * offset * shortest or abs(one.perimeter - other.perimeter) > 2 * shortest


def _tight_sweeps(larger: Region, smaller: Region, slack: float) -> Region:
    """Pieces of the difference that are a sweep and not the tip of a corner.

    A sweep is long, or it stands alone, as in a bore exactly one disk wide: all its edge is of one region. A
    sliver is as long as half its perimeter, however it is turned.
    """
    edges = shapely.boundary([larger.shape, smaller.shape])
    shapely.prepare(edges)
    sweeps = []
    for polygon in larger.minus(smaller).polygons:
        if (
            polygon.length / 2 > _SHORTEST_SWEEP_SLACKS * slack
            or not shapely.dwithin(edges, polygon, slack).all()
        ):
            sweeps.append(polygon)
    return Region.of(MultiPolygon(sweeps))


def thick_parts(region: Region, thickness: float) -> Region:
    """Pieces of which some part is thicker than `thickness`; the rest is numerical dust.

    Films of dust that a piece drags along its walls are cut off, so thick parts that only a film joins come
    apart. A piece with less area than the disk that has to fit into it is dust, which sorts out most of it
    without an erosion.
    """
    polygons = np.array(region.polygons, dtype=object)
    polygons = polygons[shapely.area(polygons) > np.pi / 4 * thickness**2]
    cores = shapely.buffer(polygons, -thickness / 2, quad_segs=2)
    counts = shapely.get_num_geometries(cores) * ~shapely.is_empty(cores)
    single = counts == 1
    near = shapely.buffer(cores[single], 2 * thickness, quad_segs=4)
    kept: list[BaseGeometry] = list(shapely.intersection(polygons[single], near))
    for polygon, core in zip(polygons[counts > 1], cores[counts > 1], strict=True):
        kept += [polygon.intersection(shapely.buffer(part, 2 * thickness)) for part in core.geoms]
    return Region.of(GeometryCollection(kept))


def without_films(region: Region, thickness: float) -> Region:
    """The pieces that are thicker than that on average, whole: of a film, area over half the perimeter."""
    polygons = np.array(region.polygons, dtype=object)
    thick = shapely.area(polygons) > thickness * shapely.length(polygons) / 2
    return region if thick.all() else Region(MultiPolygon(polygons[thick].tolist()))


def simplified(region: Region, tolerance: Tolerance) -> Region:
    """Leave out points that move the wall by less than `simplify_mm`; unchanged if that breaks it."""
    return _with_fewer_points(region, tolerance.simplify_mm)


def thinned(region: Region, tolerance: Tolerance) -> Region:
    """Leave out points of a result that move the wall by less than `thin_mm`; unchanged if that breaks it."""
    return _with_fewer_points(region, tolerance.thin_mm)


def _with_fewer_points(region: Region, distance: float) -> Region:
    thinner = shapely.simplify(region.shape, distance, preserve_topology=False)
    if not shapely.is_valid(thinner) or thinner.is_empty:
        return region
    result = Region.of(thinner)
    same_topology = len(result.polygons) == len(region.polygons) and result.hole_count == region.hole_count
    return result if same_topology else region
