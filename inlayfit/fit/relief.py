"""Corner relief: cutting away a little more where a round cutter cannot go.

The residue Z is what the cutter cannot remove although it must go.

    dog-bone: the plunge (see `fit.plunges`) along the bisector of the corner, turned this way and that until
        it takes least beyond Z.
    T-bone: the plunge parallel to one wall of the corner, so that the bite lies in the other wall.

Where no straight plunge covers Z (a bent channel, a pocket of a residue wider than the cutter), the cutter
is led over Z itself, and everything within its radius goes. All of this holds for both halves: of a plug
the cutter runs outside, of a pocket inside. All corners of a half are worked out together, since each alone
is too small a piece of work for calls of its own.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace

import numpy as np
import shapely
from shapely import LineString

from inlayfit.fit.channels import ways_into_channels, ways_past_cusps
from inlayfit.fit.plunges import Targets, Ways, areas_taken, least_of_each, plunge_lengths
from inlayfit.fit.residue import Residue, ResidueKind
from inlayfit.fit.shared_ways import stadiums_along, with_shared_ways
from inlayfit.fit.spec import HalfSpec, Relief, WallChoice
from inlayfit.geometry.clipping import Shapes, clipped, polygonal
from inlayfit.geometry.distance import BoundaryIndex, edge_lengths
from inlayfit.geometry.flatten import quad_segments
from inlayfit.geometry.groups import Flags, Numbers, starts_of
from inlayfit.geometry.morphology import dilate
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.stadiums import Edges
from inlayfit.geometry.tolerance import Tolerance

_FAN_RAD = np.radians([3.0, 6.0, 12.0]).tolist()
_FILM_END_MM = 0.02
_SAME_LENGTH_MM = 0.01
_STRAIGHT = 0.01  # tangent of the largest angle between walls that are one
_TURNS_RAD = np.radians([6.0, 2.5, 1.0]).tolist()


@dataclass(frozen=True, slots=True)
class Sweep:
    """Where the cutter goes to relieve one residue.

    Attributes:
        swept: all that the cutter removes there, the residue included.
        start, end: centre of the cutter before and at the end of the plunge.
        straight: False where the cutter had to be led over the residue.
        corner: the residue's farthest point.
        taken: what that is of the half.
    """

    swept: Region
    start: tuple[float, float]
    end: tuple[float, float]
    straight: bool
    corner: tuple[float, float]
    taken: Region = field(default_factory=Region.empty)


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
    if not left:
        return ()
    mouthed = [i for i, residue in enumerate(left) if residue.kind is not ResidueKind.LOST_PIECE]
    found: dict[int, Sweep] = {}
    near: Shapes = np.full(len(left), half.shape, dtype=object)
    if mouthed and not centres.is_empty:
        corners = _corners([left[i] for i in mouthed], BoundaryIndex(centres), half, cutter.radius_mm)
        relieved, near[mouthed] = _relieved(corners, half, cutter, tolerance)
        found = dict(zip(mouthed, relieved, strict=True))
    sweeps = [
        found[i] if i in found else _plunged_upon(residue, cutter.radius_mm, tolerance)
        for i, residue in enumerate(left)
    ]
    swept = np.array([sweep.swept.shape for sweep in sweeps], dtype=object)
    taken = Region.each(polygonal(np.asarray(shapely.intersection(near, swept))))
    return tuple(replace(sweep, taken=part) for sweep, part in zip(sweeps, taken, strict=True))


def removed_by(sweeps: tuple[Sweep, ...]) -> tuple[Region, ...]:
    """What each sweep takes of its half, counting what two share for the earlier one."""
    if not sweeps:
        return ()
    whole: Shapes = np.array([sweep.taken.shape for sweep in sweeps], dtype=object)
    earlier: dict[int, list[int]] = {}
    for i, j in shapely.STRtree(whole).query(whole, predicate="intersects").T.tolist():
        if j < i:
            earlier.setdefault(i, []).append(j)
    taken = [sweep.taken for sweep in sweeps]
    for i, others in earlier.items():
        taken[i] = Region.of(shapely.difference(whole[i], shapely.union_all(whole[others])))
    return tuple(taken)


@dataclass(frozen=True, eq=False, slots=True)
class _Corners:
    """Residues that have a mouth, and what a plunge into each needs; everything by residue.

    Attributes:
        residues: themselves.
        targets: the vertices of their hulls.
        corners: the vertex farthest from what the cutter reaches, and so from its centres.
        starts: the cutter's centre nearest to that.
        middles: the mean of the vertices.
        feet: the cutter's centre nearest to that.
        channels: ways along the middle of those that are channels, and past those that are cusps.
        boxes: round all that a plunge from these places can touch.
        near: the part of the half in them, and its walls.
    """

    residues: list[Residue]
    targets: Targets
    corners: Points
    starts: Points
    middles: Points
    feet: Points
    channels: Ways
    boxes: Points
    near: Shapes
    walls: Edges


def _corners(residues: list[Residue], centres: BoundaryIndex, half: Region, radius: float) -> _Corners:
    rims = Edges.of(np.array([residue.region.shape for residue in residues], dtype=object))
    middles = np.add.reduceat(rims.starts, starts_of(rims.counts), axis=0) / rims.counts[:, None]
    corners = np.array([residue.tip for residue in residues])
    nearest = centres.nearest(np.vstack([corners, middles]))[1]
    starts, feet = nearest[: len(residues)], nearest[len(residues) :]
    targets = Targets.hulls([residue.region for residue in residues])
    channels = ways_into_channels(residues, centres, radius).joined(ways_past_cusps(residues, centres))
    own = np.arange(len(residues))
    which, origins = np.hstack([own, own, channels.target]), np.vstack([starts, feet, channels.origins])
    boxes = _boxes(targets, which, origins, radius)
    near = clipped(half, boxes)
    walls = Edges.of(near)
    return _Corners(residues, targets, corners, starts, middles, feet, channels, boxes, near, walls)


def _boxes(targets: Targets, which: Numbers, origins: Points, radius: float) -> Points:
    """Boxes round each target and all plunges to it: none is longer than its farthest vertex.

    Args:
        targets: what is plunged to.
        which: the number of the target of each plunge, every target among them.
        origins: where each plunge begins.
        radius: the cutter's.
    """
    order = np.argsort(which, kind="stable")
    which, origins = which[order], origins[order]
    own, plunge = targets.chosen(which)
    offsets = own.vertices - origins[plunge]
    far = np.maximum.reduceat(np.hypot(offsets[:, 0], offsets[:, 1]), own.firsts)[:, None] + radius
    firsts = np.searchsorted(which, np.arange(len(targets.counts)))
    low = np.minimum.reduceat(origins - far, firsts, axis=0)
    high = np.maximum.reduceat(origins + far, firsts, axis=0)
    return np.hstack([low, high])


def _relieved(
    corners: _Corners, half: Region, cutter: HalfSpec, tolerance: Tolerance
) -> tuple[list[Sweep], Shapes]:
    """The wanted plunge of each corner; else one along its bisector; else the cutter is led over it.

    Also the part of the half that each of the plunges can touch.
    """
    every = np.arange(len(corners.residues))
    ways, radius = corners.channels.chosen(every[:0]), cutter.radius_mm
    if cutter.relief is Relief.T_BONE:
        ways = _along_walls(corners, half, cutter.t_bone_wall)
        ways, _ = _best(ways, _areas(ways, corners, radius))
    rest = np.setdiff1d(every, ways.target)
    ways = ways.joined(_along_bisectors(corners, rest, half, radius, tolerance))
    found = _plunged(ways, corners, radius, tolerance)
    sweeps = [found[i] if i in found else _led_over(corners, i, radius, tolerance) for i in every.tolist()]
    return sweeps, _touched(corners, found, half)


def _touched(corners: _Corners, found: dict[int, Sweep], half: Region) -> Shapes:
    """The part of the half near each corner, clipped anew where a shared way leaves the box."""
    near, which = corners.near.copy(), np.array(list(found), dtype=np.intp)
    bounds = shapely.bounds([sweep.swept.shape for sweep in found.values()]).reshape(-1, 4)
    low, high = corners.boxes[which, :2], corners.boxes[which, 2:]
    outside = ((bounds[:, :2] < low) | (bounds[:, 2:] > high)).any(axis=1)
    near[which[outside]] = clipped(half, bounds[outside])
    return near


def _plunged(ways: Ways, corners: _Corners, radius: float, tolerance: Tolerance) -> dict[int, Sweep]:
    """The sweep of the way for each corner that has one.

    A plunge may miss a vertex by half a micrometre and its chords by another quarter: less than counts. What
    shares a way is cleared by one plunge, as long as the longest of them.
    """
    lines = np.unique(np.hstack([ways.origins, ways.units]), axis=0, return_inverse=True)[1]
    longest = np.zeros(len(lines))
    np.maximum.at(longest, lines, plunge_lengths(ways, corners.targets, radius))
    lengths = longest[lines]
    stadiums = Region.each(stadiums_along(ways, lengths, radius, tolerance))
    return {
        i: Sweep(stadium, _pair(start), _pair(end), True, _pair(corners.corners[i]))
        for i, stadium, start, end in zip(
            ways.target.tolist(), stadiums, ways.origins, ways.ends(lengths), strict=True
        )
    }


def _along_bisectors(
    corners: _Corners, which: Numbers, half: Region, radius: float, tolerance: Tolerance
) -> Ways:
    """The best way into each of these corners: towards the corner or its middle, then turned bit by bit.

    A channel is also entered along its middle. A corner that none of the straight ways covers gets a fan of
    them. A way that several share is not turned: what is good for one would not be for the others.
    """
    starts, feet = corners.starts[which], corners.feet[which]
    aims, middles = corners.corners[which], corners.middles[which]
    straight = Ways.towards(
        np.tile(which, 3), np.vstack([starts, feet, starts]), np.vstack([aims, middles, middles])
    ).joined(corners.channels.chosen(np.flatnonzero(np.isin(corners.channels.target, which))))
    best, least = _best(straight, _areas(straight, corners, radius))
    missed = straight.chosen(np.flatnonzero(~np.isin(straight.target, best.target)))
    if len(missed.target):
        fan = _turned(missed, *_FAN_RAD)
        best, least = _best(best.joined(fan), np.hstack([least, _areas(fan, corners, radius)]))
    best, are_shared = with_shared_ways(best, corners.targets, half, radius, tolerance)
    shared, alone = best.chosen(np.flatnonzero(are_shared)), np.flatnonzero(~are_shared)
    best, least = best.chosen(alone), least[alone]
    for turn in _TURNS_RAD if tolerance.is_for_cutting else []:
        fan = _turned(best, turn)
        best, least = _best(best.joined(fan), np.hstack([least, _areas(fan, corners, radius)]))
    return best.joined(shared)


def _turned(ways: Ways, *angles: float) -> Ways:
    """Each of the ways turned both ways by every angle."""
    fan = ways.chosen(np.arange(0))
    for angle in angles:
        fan = fan.joined(ways.turned(angle)).joined(ways.turned(-angle))
    return fan


def _areas(ways: Ways, corners: _Corners, radius: float) -> Points:
    return areas_taken(ways, corners.targets, corners.walls, radius)


def _best(ways: Ways, areas: Points) -> tuple[Ways, Points]:
    """The way that takes least for each corner, and how much that is."""
    which = least_of_each(ways, areas)
    return ways.chosen(which), areas[which]


def _along_walls(corners: _Corners, half: Region, bitten: WallChoice) -> Ways:
    """Ways parallel to the walls where they leave the reached area; the bite lies in the other wall."""
    spans, middles = np.empty((len(corners.residues), 2, 2)), np.empty((len(corners.residues), 2, 2))
    for i, residue in enumerate(corners.residues):
        ring = residue.region.rings()[0]
        left, right = _wall_ends(residue, ring, corners.starts[i], corners.corners[i])
        # The ring runs counter-clockwise: up the right wall to the corner, and down the left one.
        for k, wall in enumerate((np.roll(ring[::-1], left + 1, axis=0), np.roll(ring, -right, axis=0))):
            spans[i, k] = _first_stretch(wall, corners.corners[i])
            middles[i, k] = wall[0] + spans[i, k] / 2
    targets = np.repeat(np.arange(len(spans)), 2)
    starts = np.repeat(corners.starts, 2, axis=0)
    wanted: Flags = np.hypot(spans[..., 0], spans[..., 1]) > 0
    wanted &= ~_run_on_into_each_other(spans)[:, None]
    if bitten is not WallChoice.LEAST:
        lengths = edge_lengths(half, middles.reshape(-1, 2)).reshape(-1, 2)
        shorter = lengths[:, 1] < lengths[:, 0] - _SAME_LENGTH_MM  # of two as long, the left one is taken
        along = np.column_stack([~shorter, shorter] if bitten is WallChoice.LONG else [shorter, ~shorter])
        wanted &= along | ~np.all(wanted, axis=1, keepdims=True)
    every = np.flatnonzero(wanted.ravel())
    return Ways.towards(targets[every], starts[every], (starts + spans.reshape(-1, 2))[every])


def _wall_ends(residue: Residue, ring: Points, start: Points, corner: Points) -> tuple[int, int]:
    """The vertices of a residue's ring at which its left and its right wall begin, seen from the cutter.

    They are those beside its mouth; of several mouths, and of one without arc, the outermost ones.
    """
    if len(residue.mouths) == 1 and len(residue.mouths[0]) > 2:
        first, last = (int(np.abs(ring - point).sum(axis=1).argmin()) for point in residue.mouths[0][[1, -2]])
        return (first - 1) % len(ring), (last + 1) % len(ring)
    axis, offsets = corner - start, ring - start
    side = axis[0] * offsets[:, 1] - axis[1] * offsets[:, 0]
    return int(side.argmax()), int(side.argmin())


def _run_on_into_each_other(spans: Points) -> Flags:
    """Whether both walls of each residue are one: a straight wall beside a passage has no corner to bite."""
    one, other = spans[:, 0], spans[:, 1]
    across = one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0]
    along = (one * other).sum(axis=1)
    straight: Flags = (along < 0) & (np.abs(across) < _STRAIGHT * -along)
    return straight


def _first_stretch(wall: Points, corner: Points) -> Points:
    """From a wall's first point to where it first shows its direction, or to the corner; (2,).

    A residue's wall may begin with a cut across its film, as short as dust and at any angle.
    """
    spans = wall - wall[0]
    far = np.hypot(spans[:, 0], spans[:, 1]) > _FILM_END_MM
    at_corner = np.abs(wall - corner).sum(axis=1) == 0
    stretch: Points = spans[int(np.argmax(far | at_corner))]
    return stretch


def _pair(point: Points) -> tuple[float, float]:
    x, y = point.tolist()
    return x, y


def _led_over(corners: _Corners, i: int, radius: float, tolerance: Tolerance) -> Sweep:
    residue, start, corner = corners.residues[i], corners.starts[i], corners.corners[i]
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
