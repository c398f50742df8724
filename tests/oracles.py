"""Independent answers to compare with: another offsetting library, a raster, and textbook formulas.

Nothing here calls `inlayfit.geometry.morphology` or `inlayfit.fit`; only the value types are shared.

Sources: clipper2-py (the Clipper2 polygon library), scipy.ndimage's exact Euclidean distance transform
(Maurer, Qi, Raghavan 2003), Steiner's formula for parallel bodies (Steiner 1840; Schneider, Convex Bodies,
chapter 4), and plane geometry, named at each check.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import Any

import clipper2
import numpy as np
import shapely
from numpy.typing import NDArray
from scipy import ndimage
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.region import Region

Array = NDArray[np.float64]

MICROMETRE = 0.001
CLIPPER_SCALE = 1e6  # units of a millionth of a millimetre: ten metres still fit with room to spare


# --- distances between outlines ------------------------------------------------------------------------


def boundary_segments(geometry: BaseGeometry) -> NDArray[Any]:
    """Every straight piece of the rings, as line strings."""
    pairs = []
    for line in shapely.get_parts(shapely.boundary(geometry)):
        points = shapely.get_coordinates(line)
        pairs.append(np.stack([points[:-1], points[1:]], axis=1))
    return np.asarray(shapely.linestrings(np.concatenate(pairs)))


def boundary_samples(geometry: BaseGeometry, step: float) -> Array:
    """Points of the boundary, vertices among them, no farther apart than `step`."""
    return np.asarray(shapely.get_coordinates(shapely.segmentize(shapely.boundary(geometry), step)))


def distances_to_boundary(points: Array, geometry: BaseGeometry) -> Array:
    """Exact distance of each point to the boundary, by an R-tree over the segments."""
    tree = shapely.STRtree(boundary_segments(geometry))
    (asked, _), distances = tree.query_nearest(
        shapely.points(points), return_distance=True, all_matches=False
    )
    found = np.empty(len(points))
    found[asked] = distances
    return found


def spread(one: Region, other: Region, *, step: float | None = None) -> float:
    """Hausdorff distance of two boundaries by dense sampling; inf if only one of them is empty."""
    if one.is_empty or other.is_empty:
        return 0.0 if one.is_empty and other.is_empty else math.inf
    apart = step or max(one.perimeter, other.perimeter) / 4000
    there = distances_to_boundary(boundary_samples(one.shape, apart), other.shape).max()
    back = distances_to_boundary(boundary_samples(other.shape, apart), one.shape).max()
    return float(max(there, back))


def stands_out(larger: Region, smaller: Region, *, step: float | None = None) -> float:
    """How far the farthest point of `larger` lies outside `smaller`; 0 if it lies inside."""
    if larger.is_empty:
        return 0.0
    if smaller.is_empty:
        return math.inf
    points = boundary_samples(larger.shape, step or larger.perimeter / 4000)
    inside = shapely.covers(smaller.shape, shapely.points(points))
    if inside.all():
        return 0.0
    return float(distances_to_boundary(points[~inside], smaller.shape).max())


def bulges_out(larger: Region, smaller: Region, *, film: float = MICROMETRE) -> float:
    """The same of what is thicker than a film.

    Two walls that meet in a sharp tip cross elsewhere if either moves a little: by as much, over the sine of
    the angle between them (plane geometry). So where two cuts barely reach each other, chords within a third
    of a micrometre of the arcs move the tips by ten micrometres and more, along a film that nobody can cut.
    """
    beyond = shapely.buffer(larger.shape.difference(smaller.shape), -film / 2, quad_segs=4)
    return stands_out(Region.of(shapely.buffer(beyond, film / 2, quad_segs=4)), smaller)


def dense_minimum(pocket: Region, plug: Region, *, near: Iterable[Array] = (), fine: float = 0.0005) -> float:
    """Smallest signed gap of the two walls by brute force.

    Both walls are sampled at an even coarse step; then, about the lowest samples and the places given, every
    half micrometre. Sign by point in polygon, distance by the R-tree: nothing shared with the gap map.
    """
    lowest = math.inf
    for wall, other, inside_is_free in ((plug, pocket, True), (pocket, plug, False)):
        coarse = boundary_samples(wall.shape, max(wall.perimeter / 3000, fine))
        gaps = _signed(coarse, other, inside_is_free)
        lowest = min(lowest, float(gaps.min()))
        spots = [coarse[i] for i in np.argsort(gaps)[:6]] + [np.asarray(place) for place in near]
        reach = max(wall.perimeter / 3000, 20 * fine)
        windows = [shapely.box(x - reach, y - reach, x + reach, y + reach) for x, y in spots]
        lines = shapely.intersection(shapely.boundary(wall.shape), shapely.union_all(windows))
        points = shapely.get_coordinates(shapely.segmentize(lines, fine))
        if len(points):
            lowest = min(lowest, float(_signed(points, other, inside_is_free).min()))
    return lowest


def _signed(points: Array, region: Region, inside_is_free: bool) -> Array:
    distances = distances_to_boundary(points, region.shape)
    shapely.prepare(region.shape)
    free = shapely.contains_xy(region.shape, points[:, 0], points[:, 1]) == inside_is_free
    return np.where(free, distances, -distances)


# --- the same pipeline through another library ---------------------------------------------------------


def clipper_offset(region: Region, distance: float, *, arc_mm: float = 0.0001) -> Region:
    """Grow (or shrink, if negative) through Clipper2."""
    if distance == 0 or region.is_empty:
        return region
    offset = clipper2.ClipperOffset(2.0, arc_mm * CLIPPER_SCALE)
    rings = [np.rint(ring * CLIPPER_SCALE).astype(np.int64) for ring in region.rings()]
    offset.add_paths(rings, clipper2.JoinType.ROUND, clipper2.EndType.POLYGON)
    return _from_clipper(offset.execute(distance * CLIPPER_SCALE))


def _from_clipper(paths: Iterable[Any]) -> Region:
    """Nested rings as a region: what lies in an odd number of them."""
    shape: BaseGeometry = shapely.MultiPolygon()
    for path in paths:
        points = np.asarray(path, dtype=float)[:, :2] / CLIPPER_SCALE
        if len(points) >= 3:
            shape = shapely.symmetric_difference(shape, shapely.make_valid(shapely.Polygon(points)))
    return Region.of(shape)


def clipper_opened(region: Region, radius: float, *, arc_mm: float = 0.0001) -> Region:
    """Opening by a disk through Clipper2."""
    return clipper_offset(clipper_offset(region, -radius, arc_mm=arc_mm), radius, arc_mm=arc_mm)


def clipper_closed(region: Region, radius: float, *, arc_mm: float = 0.0001) -> Region:
    """Closing by a disk through Clipper2."""
    return clipper_offset(clipper_offset(region, radius, arc_mm=arc_mm), -radius, arc_mm=arc_mm)


def clipper_matched_halves(
    drawn: Region, clearance: float, pocket_radius: float, plug_radius: float
) -> tuple[Region, Region]:
    """Both halves to cut, rounded to match: one opening, one closing, one offset (design, step 4)."""
    form = clipper_closed(clipper_opened(drawn, pocket_radius), max(0.0, plug_radius - clearance))
    return form, clipper_offset(form, -clearance)


# --- a raster ------------------------------------------------------------------------------------------


class Raster:
    """A region on square pixels, and disk operations by the exact Euclidean distance transform."""

    def __init__(self, region: Region, pixel: float, margin: float) -> None:
        x0, y0, x1, y1 = region.bounds
        self.pixel = pixel
        self._xs = np.arange(x0 - margin, x1 + margin, pixel)
        self._ys = np.arange(y0 - margin, y1 + margin, pixel)
        self.filled: NDArray[np.bool_] = self.sampled(region)

    def sampled(self, region: Region) -> NDArray[np.bool_]:
        """Which pixel centres lie in a region."""
        columns, rows = np.meshgrid(self._xs, self._ys)
        shapely.prepare(region.shape)
        return np.asarray(shapely.contains_xy(region.shape, columns, rows))

    def touched(self, region: Region) -> NDArray[np.bool_]:
        """Which pixels a region may touch, so that no sharp tip is lost between their centres."""
        columns, rows = np.meshgrid(self._xs, self._ys)
        shapely.prepare(region.shape)
        centres = shapely.points(columns, rows)
        return np.asarray(shapely.dwithin(region.shape, centres, self.pixel * math.sqrt(0.5)))

    def distance_inside(self, filled: NDArray[np.bool_]) -> Array:
        """Of each filled pixel, the distance to the nearest empty one."""
        return np.asarray(ndimage.distance_transform_edt(filled)) * self.pixel

    def grown(self, filled: NDArray[np.bool_], distance: float) -> NDArray[np.bool_]:
        """Dilated by a disk; eroded if negative."""
        if not filled.any():
            return filled
        if distance < 0:
            return ~self.grown(~filled, -distance)
        return (self.distance_inside(~filled) <= distance) | filled

    def beyond(self, one: NDArray[np.bool_], other: NDArray[np.bool_]) -> float:
        """How far the farthest pixel of one lies outside the other, in pixels; 0 if it lies inside."""
        out = one & ~other
        return float(np.asarray(ndimage.distance_transform_edt(~other))[out].max()) if out.any() else 0.0


# --- textbook formulas ---------------------------------------------------------------------------------


def steiner_area(area: float, perimeter: float, distance: float, *, euler: int = 1) -> float:
    """Area of the parallel body: A + P·d + χ·π·d².

    Steiner's formula for convex bodies; it holds for any smooth boundary, and for negative d, as long as no
    two parts of the moved wall meet (χ = pieces − holes).
    """
    return area + perimeter * distance + euler * math.pi * distance**2


def steiner_perimeter(perimeter: float, distance: float, *, euler: int = 1) -> float:
    """Perimeter of the parallel body: P + χ·2·π·d."""
    return perimeter + euler * 2 * math.pi * distance


def fillet_area(angle: float, radius: float) -> float:
    """Between a corner of interior angle `angle` and the circle that touches both walls.

    Two right triangles r × r·cot(angle/2) less the circle's sector of π − angle: plane geometry.
    """
    return radius**2 * (1 / math.tan(angle / 2) - (math.pi - angle) / 2)


def fillet_shortening(angle: float, radius: float) -> float:
    """How much shorter the wall is when that circle replaces the corner."""
    return radius * (2 / math.tan(angle / 2) - (math.pi - angle))


def dog_bone_bite(angle: float, radius: float) -> float:
    """Area that a plunge along the bisector takes beyond the walls of a corner of interior angle `angle`.

    Plane geometry. The corner is the origin, the bisector the x axis, the walls y = ±x·tan(β), β = angle/2.
    The plunge ends where the circle passes through the corner: its centre is (r, 0).
    Beyond one wall lies, for β ≥ 45°, the circle's segment cut by the wall, of half angle π/2 − β:
    r²·(π/2 − β − sin β·cos β). For β < 45° the stadium's flank y = r also crosses the wall, at x = r·cot β,
    and the area is ∫ (y·cot β − r + √(r² − y²)) dy over 0..r = r²·(cot β/2 − 1 + π/4).
    """
    half = angle / 2
    if half >= math.pi / 4:
        one_side = math.pi / 2 - half - math.sin(half) * math.cos(half)
    else:
        one_side = 1 / math.tan(half) / 2 - 1 + math.pi / 4
    return 2 * radius**2 * one_side
