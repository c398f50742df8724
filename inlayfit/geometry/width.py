"""How wide a region is between walls that face each other: its passages, necks and tenons.

The largest disk inside a region that touches its wall at p touches it again at some q; its diameter is the
width there. It is found by the shrinking ball: start with a large disk tangent at p, let the wall point
nearest to its centre pull it smaller, until nothing lies inside. (Ma, Bae, Choi: 3D medial axis point
approximation using nearest neighbors and the normal field, The Visual Computer 28, 2012; here in the
plane.)

A *passage* is a place where that width is smallest in its neighbourhood and the two walls face each other.
Two ways of not being one are sorted out: near a sharp corner the disk shrinks to nothing, but the wall from
p to q is short; along a taper it keeps shrinking, so no place is smallest. A tenon that ends blind counts:
its width is the same for a stretch longer than the width itself.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.spatial import cKDTree

from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.groups import members
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

_SAMPLES = 2000
_MOST_ROUNDS = 40
_FACING_COS = math.cos(math.radians(135))  # radii to p and q at least so far apart
_SHORTEST_WAY_WIDTHS = 2.0  # along the wall from p to q, in widths: less is the end of a tenon or a corner
_LEVEL = 1.05  # a stretch is level while no width in it is smaller by more than this
_REFINED = 24  # candidates measured exactly
_SHORTEST_WAY_STEPS = 4.0  # a disk whose touches are so near along the wall is smaller than the samples tell


@dataclass(frozen=True, slots=True)
class Passage:
    """A narrow place.

    Attributes:
        width: diameter of the disk that just passes.
        place: its centre.
        ends: where it touches the two walls.
    """

    width: float
    place: tuple[float, float]
    ends: tuple[tuple[float, float], tuple[float, float]]


def passages(region: Region, *, below: float, samples: int = _SAMPLES) -> tuple[Passage, ...]:
    """All passages narrower than `below`, narrowest first.

    Exact to 0.01 mm, and far better where walls are smooth: candidates are found on sampled walls and the
    narrowest of them measured on the true ones.
    """
    if region.is_empty:
        return ()
    wall = _SampledWall(region, region.perimeter / samples)
    partners, radii = _largest_disks(wall, below)
    candidates = _level_minima(wall, partners, radii, below)
    if not candidates:
        return ()
    index = BoundaryIndex(region)
    found = [_measured(wall, i, index, float(radii[i])) for i in candidates[:_REFINED]]
    return _apart(sorted(found, key=lambda passage: passage.width))


class _SampledWall:
    """Samples in the middles of short pieces of all rings, with inward normals."""

    def __init__(self, region: Region, step: float) -> None:
        points, normals, ways, rings, lengths = [], [], [], [], []
        for number, ring in enumerate(region.rings()):
            spans = np.roll(ring, -1, axis=0) - ring
            sizes = np.hypot(spans[:, 0], spans[:, 1])
            pieces = np.maximum(1, np.ceil(sizes / step)).astype(np.intp)
            owner, part = members(pieces)
            fraction = (part + 0.5) / pieces[owner]
            points.append(ring[owner] + spans[owner] * fraction[:, None])
            unit = spans / np.maximum(sizes, 1e-300)[:, None]
            normals.append(np.column_stack([-unit[:, 1], unit[:, 0]])[owner])
            ways.append((np.cumsum(sizes) - sizes)[owner] + sizes[owner] * fraction)
            rings.append(np.full(len(owner), number))
            lengths.append(float(sizes.sum()))
        self.step = step
        self.points: Points = np.vstack(points)
        self.normals: Points = np.vstack(normals)
        self.way: Points = np.concatenate(ways)
        self.ring: NDArray[np.intp] = np.concatenate(rings)
        self.ring_length: Points = np.array(lengths)
        self.tree = cKDTree(self.points)

    def way_between(self, one: NDArray[np.intp], other: NDArray[np.intp]) -> Points:
        """Length of wall between samples, the shorter way round; infinite between two rings."""
        direct = np.abs(self.way[one] - self.way[other])
        around = self.ring_length[self.ring[one]] - direct
        result: Points = np.where(self.ring[one] == self.ring[other], np.minimum(direct, around), np.inf)
        return result


def _largest_disks(wall: _SampledWall, below: float) -> tuple[NDArray[np.intp], Points]:
    """For each sample the disk tangent there that holds no other sample: its second touch and radius."""
    count = len(wall.points)
    radii = np.full(count, 0.55 * below)
    partners = np.arange(count)
    open_ = np.arange(count)
    for _ in range(_MOST_ROUNDS):
        centres = wall.points[open_] + radii[open_, None] * wall.normals[open_]
        distances, found = wall.tree.query(centres)
        nearest = np.asarray(found)
        offsets = wall.points[nearest] - wall.points[open_]
        ahead = np.einsum("ij,ij->i", offsets, wall.normals[open_])
        squared = np.einsum("ij,ij->i", offsets, offsets)
        pulls = (distances < radii[open_] * (1 - 1e-9)) & (ahead > 1e-12) & (nearest != open_)
        smaller = np.where(pulls, squared / np.maximum(2 * ahead, 1e-300), radii[open_])
        pulls &= smaller < radii[open_] * (1 - 1e-9)
        open_, nearest, smaller = open_[pulls], nearest[pulls], smaller[pulls]
        radii[open_] = smaller
        partners[open_] = nearest
        if not len(open_):
            break
    return partners, radii


def _level_minima(wall: _SampledWall, partners: NDArray[np.intp], radii: Points, below: float) -> list[int]:
    """Samples whose width is smallest within a stretch of wall as long as the width, narrowest first.

    Of a level stretch only its middle is kept.
    """
    widths = 2 * radii
    centres = wall.points + radii[:, None] * wall.normals
    to_p = wall.points - centres
    to_q = wall.points[partners] - centres
    facing = np.einsum("ij,ij->i", to_p, to_q) < _FACING_COS * radii**2
    shortest = np.maximum(_SHORTEST_WAY_WIDTHS * widths, _SHORTEST_WAY_STEPS * wall.step)
    long_way = wall.way_between(np.arange(len(radii)), partners) > shortest
    candidates = np.flatnonzero(facing & long_way & (widths < below))
    level = [i for i in candidates.tolist() if _is_level(wall, widths, i)]
    middles = [run[len(run) // 2] for run in _runs(level, widths)]
    return sorted(middles, key=lambda i: float(widths[i]))


def _runs(samples: list[int], widths: Points) -> list[list[int]]:
    """Neighbouring samples of the same width together, each run without what is clearly wider in it."""
    runs: list[list[int]] = []
    for i in samples:
        if runs and i - runs[-1][-1] <= 2:
            runs[-1].append(i)
        else:
            runs.append([i])
    lowest = [min(float(widths[i]) for i in run) for run in runs]
    return [[i for i in run if widths[i] <= low * (1 + 1e-3)] for run, low in zip(runs, lowest, strict=True)]


def _is_level(wall: _SampledWall, widths: Points, i: int) -> bool:
    """Whether no width nearby on the same ring, within one width of wall, is clearly smaller."""
    reach = max(1, math.ceil(widths[i] / wall.step))
    near = np.array(wall.tree.query_ball_point(wall.points[i], reach * wall.step), dtype=np.intp)
    near = near[wall.ring[near] == wall.ring[i]]
    near = near[wall.way_between(np.full(len(near), i), near) <= reach * wall.step]
    return bool(widths[near].min() * _LEVEL >= widths[i])


def _measured(wall: _SampledWall, i: int, index: BoundaryIndex, radius: float) -> Passage:
    """The same disk on the true wall: shrunk until the nearest wall point is no longer inside."""
    point, normal = wall.points[i], wall.normals[i]
    radius *= 1 + wall.step / max(radius, wall.step)
    partner = point
    for _ in range(_MOST_ROUNDS):
        centre = point + radius * normal
        distance, feet = index.nearest(centre[None])
        offset = feet[0] - point
        ahead = float(offset @ normal)
        if distance[0] >= radius * (1 - 1e-7) or ahead <= 1e-12:
            break
        radius, partner = min(radius, float(offset @ offset) / (2 * ahead)), feet[0]
    centre = point + radius * normal
    return Passage(2 * radius, _pair(centre), (_pair(point), _pair(partner)))


def _pair(point: Points) -> tuple[float, float]:
    x, y = point.tolist()
    return x, y


def _apart(found: list[Passage]) -> tuple[Passage, ...]:
    """One passage a place: the two sides of a level stretch each report it."""
    kept: list[Passage] = []
    for passage in found:
        if all(math.dist(passage.place, other.place) > 4 * other.width for other in kept):
            kept.append(passage)
    return tuple(kept)
