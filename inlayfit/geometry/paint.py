"""Painted area: what closed lines enclose by a fill rule, and what a line of some width covers.

Terms
    winding number of a point: how often a closed line runs around it, counter-clockwise counted positive.
    nonzero: a point is inside if the winding numbers of all rings add up to anything but zero.
    even-odd: a point is inside if that sum is odd.
    (SVG 2, section 13.4.2, and every printing model since.)

Rings that do not cross themselves or each other only need their nesting. For all others the lines are cut at
every crossing, the faces between them are found, and one point of each is asked for its winding number; the
painted area is the union of the faces that answer "inside".
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any, Literal

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.flatten import quad_segments
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform

_Numbers = NDArray[np.int64]
_Shapes = NDArray[Any]
Cap = Literal["butt", "round", "square"]
Join = Literal["miter", "round", "bevel"]

_SMOOTH_TURN_RAD = 0.02
"""A corner that turns less is part of a curve; the tip its mitre would add is below width/40,000."""
_MOST_DASHES = 100_000
_CLEAR_TURN = 1e-12


def painted(contours: Sequence[Points], *, evenodd: bool) -> Region:
    """The area that rings enclose by a fill rule.

    Args:
        contours: rings as (n, 2) points, the first not repeated; they may cross themselves and each other.
            Rings with fewer than three points or with a number that is not finite enclose nothing.
        evenodd: the even-odd rule, else nonzero.
    """
    rings = _usable_rings(contours)
    if len(rings) == 0:
        return Region.empty()
    if _cross_nowhere(rings):
        return Region.of(_nested(rings, evenodd=evenodd))
    return Region.of(_faces_inside(rings, evenodd=evenodd))


def _usable_rings(contours: Sequence[Points]) -> _Shapes:
    good = [c for c in contours if len(c) > 2 and np.isfinite(c).all() and _spreads(c)]
    if not good:
        return np.array([], dtype=object)
    owners = np.repeat(np.arange(len(good)), [len(ring) for ring in good])
    return np.asarray(shapely.linearrings(np.vstack(good), indices=owners))


def _spreads(ring: Points) -> bool:
    """Whether the ring has three points that are not on top of each other."""
    return bool((ring != ring[0]).any()) and len(np.unique(ring, axis=0)) > 2 if len(ring) < 9 else True


def _cross_nowhere(rings: _Shapes) -> bool:
    if not shapely.is_simple(rings).all():
        return False
    if len(rings) == 1:
        return True
    first, second = shapely.STRtree(rings).query(rings, predicate="intersects")
    return bool((first == second).all())


def _nested(rings: _Shapes, *, evenodd: bool) -> shapely.MultiPolygon:
    """Rings that nest: each divides what is just inside it from what is just outside."""
    discs = np.asarray(shapely.polygons(rings))
    turns = np.where(shapely.is_ccw(rings), 1, -1)
    inner, outer = shapely.STRtree(discs).query(discs, predicate="covered_by")
    other = inner != outer
    inner, outer = inner[other], outer[other]
    around = np.zeros(len(rings), dtype=np.int64)
    np.add.at(around, inner, turns[outer])
    within = _is_inside(around + turns, evenodd=evenodd)
    without = _is_inside(around, evenodd=evenodd)
    holes_of = _smallest_around(np.asarray(shapely.area(discs)), inner, outer, walls=within & ~without)
    holes = np.flatnonzero(without & ~within)
    polygons = []
    for wall in np.flatnonzero(within & ~without):
        own = holes[holes_of[holes] == wall]
        polygons.append(shapely.Polygon(rings[wall], list(rings[own])))
    return shapely.MultiPolygon(polygons)


def _smallest_around(
    areas: Points, inner: _Numbers, outer: _Numbers, *, walls: NDArray[np.bool_]
) -> _Numbers:
    """For each ring the smallest outer wall around it, -1 if there is none."""
    result = np.full(len(areas), -1, dtype=np.int64)
    keep = walls[outer]
    inner, outer = inner[keep], outer[keep]
    order = np.argsort(-areas[outer], kind="stable")  # the smallest is written last and stays
    result[inner[order]] = outer[order]
    return result


def _is_inside(winding: _Numbers, *, evenodd: bool) -> NDArray[np.bool_]:
    return np.asarray(winding % 2 == 1 if evenodd else winding != 0)


def _faces_inside(rings: _Shapes, *, evenodd: bool) -> Any:
    lines = shapely.union_all(rings)  # cuts at every crossing, and keeps each piece once
    faces = np.asarray(shapely.get_parts(shapely.polygonize([lines])))
    if len(faces) == 0:
        return shapely.MultiPolygon()
    points = shapely.get_coordinates(shapely.point_on_surface(faces))
    inside = faces[_is_inside(winding_numbers(points, rings), evenodd=evenodd)]
    try:
        joined = shapely.coverage_union_all(inside)  # quick, but takes neighbours that match exactly only
    except shapely.errors.GEOSException:
        return shapely.union_all(inside)
    return joined if shapely.is_valid(joined) else shapely.union_all(inside)


def winding_numbers(points: Points, rings: _Shapes) -> _Numbers:
    """Winding number of each of (n, 2) points in all rings together.

    A ray runs from each point to the right; a segment that crosses it upwards counts one, downwards minus
    one (half-open in y, so a vertex on the ray counts once). Only segments whose box the ray meets are asked.
    """
    coordinates, owners = shapely.get_coordinates(rings, return_index=True)
    joined = owners[1:] == owners[:-1]
    starts, ends = coordinates[:-1][joined], coordinates[1:][joined]
    level = starts[:, 1] == ends[:, 1]
    starts, ends = starts[~level], ends[~level]
    winding = np.zeros(len(points), dtype=np.int64)
    if len(starts) == 0:
        return winding
    low, high = np.minimum(starts, ends), np.maximum(starts, ends)
    tree = shapely.STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    right = high[:, 0].max()
    rays = np.stack([points, np.column_stack([np.maximum(right, points[:, 0]) + 1, points[:, 1]])], axis=1)
    asked, segment = tree.query(shapely.linestrings(rays))
    (x, y), start, end = points[asked].T, starts[segment], ends[segment]
    reaches = (np.minimum(start[:, 1], end[:, 1]) <= y) & (y < np.maximum(start[:, 1], end[:, 1]))
    rise = end - start
    side = rise[:, 0] * (y - start[:, 1]) - (x - start[:, 0]) * rise[:, 1]
    upwards = rise[:, 1] > 0
    counts = reaches & np.where(upwards, side > 0, side < 0)
    np.add.at(winding, asked[counts], np.where(upwards, 1, -1)[counts])
    return winding


def stroked(
    points: Points,
    width: float,
    *,
    closed: bool,
    arc_tolerance: float,
    cap: Cap = "butt",
    join: Join = "miter",
    miter_limit: float = 4.0,
    dashes: Sequence[float] = (),
    dash_offset: float = 0.0,
    pen: Transform | None = None,
) -> Region:
    """The area that a line of some width covers (SVG 2, section 13.5).

    Args:
        points: the line, (n, 2); of a closed one the first point is not repeated.
        width: of the line.
        closed: whether the last point is joined to the first; then there are no ends.
        arc_tolerance: largest distance between a round end or corner and its chords.
        cap: what the ends look like.
        join: what the corners look like.
        miter_limit: a mitred corner whose tip would lie further than this many half widths from its vertex is
            bevelled instead.
        dashes: lengths of dash, gap, dash, gap and so on; empty for an unbroken line.
        dash_offset: where in that pattern the line starts.
        pen: the map that made an ellipse of the round pen, of area factor 1; None for a round one. Width and
            dashes are lengths before that map.
    """
    if not (width > 0 and math.isfinite(width)) or not np.isfinite(points).all() or len(points) == 0:
        return Region.empty()
    if pen is not None and not pen.is_identity:
        points = _inverse(pen).points(points)
        arc_tolerance /= max(abs(pen.a) + abs(pen.c), abs(pen.b) + abs(pen.d))
    lines = dashed(points, dashes, dash_offset, closed=closed) if dashes else [points]
    closed = closed and not dashes
    areas = [_one_stroke(line, width, closed, arc_tolerance, cap, join, miter_limit) for line in lines]
    region = Region.of(areas[0] if len(areas) == 1 else shapely.union_all(areas))
    return region if pen is None or pen.is_identity else region.moved(pen)


def _one_stroke(
    points: Points,
    width: float,
    closed: bool,
    arc_tolerance: float,
    cap: Cap,
    join: Join,
    miter_limit: float,
) -> BaseGeometry:
    """The area of an unbroken line of a round pen."""
    line = _without_repeats(points, closed=closed)
    if len(line) == 1:
        return _dot(line[0], width, cap, arc_tolerance)
    if closed and len(line) == 2:  # there and back: both ends are corners
        closed, cap = False, "round" if join == "round" else "butt"
    flat_or_round: Literal["flat", "round", "square"] = "flat" if cap == "butt" else cap
    shape: BaseGeometry = shapely.LinearRing(line) if closed else _open_line(line)
    area: BaseGeometry = shapely.buffer(
        shape,
        width / 2,
        quad_segs=quad_segments(width / 2, arc_tolerance),
        cap_style=flat_or_round,
        join_style="round" if join == "round" else "bevel",
    )
    if join == "miter":
        tips = _miter_tips(line, width / 2, miter_limit, closed=closed)
        area = shapely.union_all([area, *tips]) if len(tips) else area
    return area


def _without_repeats(points: Points, *, closed: bool) -> Points:
    keep = np.ones(len(points), dtype=bool)
    keep[1:] = (points[1:] != points[:-1]).any(axis=1)
    line = points[keep]
    return line[:-1] if closed and len(line) > 1 and (line[0] == line[-1]).all() else line


def _open_line(line: Points) -> BaseGeometry:
    """The line for GEOS, which takes a line that ends where it starts for a ring.

    Such a line is cut in the middle of its longest segment, where neither ends nor corners are.
    """
    if len(line) < 3 or (line[0] != line[-1]).any():
        return shapely.LineString(line)
    longest = int(np.hypot(*np.diff(line, axis=0).T).argmax())
    middle = line[longest : longest + 2].mean(axis=0)[None]
    first = np.vstack([line[: longest + 1], middle])
    return shapely.MultiLineString([first, np.vstack([middle, line[longest + 1 :]])])


def _dot(point: Points, width: float, cap: str, arc_tolerance: float) -> BaseGeometry:
    """A line without length: its caps only (SVG 2, section 13.5.4)."""
    if cap == "butt":
        return shapely.Polygon()
    half = width / 2
    if cap == "square":
        x, y = point.tolist()
        square: BaseGeometry = shapely.box(x - half, y - half, x + half, y + half)
        return square
    disc: BaseGeometry = shapely.buffer(
        shapely.Point(point), half, quad_segs=quad_segments(half, arc_tolerance)
    )
    return disc


def _miter_tips(line: Points, half: float, limit: float, *, closed: bool) -> _Shapes:
    """The pieces that a mitre adds to bevelled corners, as polygons.

    At a corner that turns by the angle a, the tip lies half/cos(a/2) from the vertex on the outer side; it is
    drawn only while 1/cos(a/2) is within the limit.
    """
    around = np.vstack([line[-1:], line, line[:1]]) if closed else line
    along = np.diff(around, axis=0)
    along /= np.hypot(along[:, 0], along[:, 1])[:, None]
    before, after, corner = along[:-1], along[1:], around[1:-1]
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    turn = np.arctan2(cross, (before * after).sum(axis=1))
    cos_half = np.cos(turn / 2)
    drawn = (np.abs(turn) > _SMOOTH_TURN_RAD) & (cos_half * limit >= 1) & (cos_half > _CLEAR_TURN)
    before, after, corner, turn = before[drawn], after[drawn], corner[drawn], turn[drawn]
    side = -np.sign(turn)[:, None]  # a left turn has its outer side on the right
    first = corner + half * side * np.column_stack([-before[:, 1], before[:, 0]])
    second = corner + half * side * np.column_stack([-after[:, 1], after[:, 0]])
    middle = (first + second) / 2 - corner
    tip = corner + middle / (cos_half[drawn] ** 2)[:, None]
    return np.asarray(shapely.polygons(np.stack([corner, first, tip, second], axis=1)))


def _inverse(pen: Transform) -> Transform:
    scale = pen.determinant
    return Transform(pen.d / scale, -pen.b / scale, -pen.c / scale, pen.a / scale)


def dashed(points: Points, lengths: Sequence[float], offset: float, *, closed: bool) -> list[Points]:
    """A line cut into its dashes, each an open line (SVG 2, section 13.5.6).

    Args:
        points: the line, (n, 2).
        lengths: dash, gap, dash, gap and so on.
        offset: where in the pattern the line starts.
        closed: whether the last point is joined to the first.
    """
    line = np.vstack([points, points[:1]]) if closed else points
    steps = np.hypot(*np.diff(line, axis=0).T)
    reached = np.concatenate([[0.0], np.cumsum(steps)])
    total, period = float(reached[-1]), float(sum(lengths))
    if not (period > 0 and total > 0 and math.isfinite(total + period + offset)):
        return [line]
    if total / period * len(lengths) > _MOST_DASHES:
        return [line]
    offset = math.fmod(offset, period)
    edges = np.concatenate([[0.0], np.cumsum(lengths)])
    first_period = math.floor(offset / period)
    periods = first_period + np.arange(math.ceil(total / period) + 2)
    begins = (periods[:, None] * period + edges[None, :-1:2] - offset).ravel()
    ends = (periods[:, None] * period + edges[None, 1::2] - offset).ravel()
    pieces = []
    for begin, end in zip(np.maximum(begins, 0.0), np.minimum(ends, total), strict=True):
        if begin < end or (begin == end and 0 < begin < total):
            inner = (reached > begin) & (reached < end)
            cuts = np.column_stack([np.interp((begin, end), reached, line[:, k]) for k in (0, 1)])
            pieces.append(np.vstack([cuts[:1], line[inner], cuts[1:]]))
    return pieces
