"""The gap map: how far apart the two walls are, everywhere, with a sign.

At a point of the plug's wall the gap is the distance to the pocket's wall, positive inside the pocket; at a
point of the pocket's wall the distance to the plug's, positive outside the plug. Where both are positive
everywhere the plug goes in.

The smallest distance between two polygon boundaries that do not cross is taken at a vertex of one of them
(a linear function on a segment has its extremes at the ends), so the vertices of both walls give the
minimum exactly. Where the plug bites, the deepest place may lie inside a segment: there a long segment is
sampled, and each minimum is narrowed down between its neighbours.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from inlayfit.fit.result import GapMap, Spot, WallGap
from inlayfit.geometry.distance import BoundaryIndex, with_samples
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

_SAMPLES = 2000
_MOST_SPOTS = 12
_SPOTS_APART = 0.01  # of the plug's perimeter: nearer minima are one spot
_NARROWING_PLACES = 4  # each round shortens the bracket to two fifths: 10 make 1 mm 0.1 µm
_NARROWING_ROUNDS = 10
_DUST_MM = 1e-6  # overlap thinner than this along the whole wall is rounding, not metal


def gap_map(pocket: Region, plug: Region, *, samples: int = _SAMPLES) -> GapMap:
    """The gap along both walls.

    Args:
        pocket: the pocket's finished outline.
        plug: the plug's finished outline, as it sits in the pocket.
        samples: about how many places along each wall are looked at besides its vertices.
    """
    if pocket.is_empty or plug.is_empty:
        return GapMap((), (), (), None, *(float("nan"),) * 3, overlap_mm2=plug.area)
    pocket_index, plug_index = BoundaryIndex(pocket), BoundaryIndex(plug)
    plug_walls = _walls(plug, pocket_index, samples, inside=True)
    pocket_walls = _walls(pocket, plug_index, samples, inside=False)
    spots = _tightest_spots(plug_walls, pocket_walls, pocket_index, plug_index)
    means, weights = zip(*(_mean_along(wall) for wall in plug_walls), strict=True)
    loosest = max((_loosest_spot(wall) for wall in plug_walls), key=lambda spot: spot.gap_mm)
    smallest = min(float(wall.gaps.min()) for wall in (*plug_walls, *pocket_walls))
    return GapMap(
        plug_walls,
        pocket_walls,
        spots,
        loosest,
        min_mm=min([smallest, *(spot.gap_mm for spot in spots)]),
        mean_mm=float(np.average(means, weights=weights)),
        max_mm=loosest.gap_mm,
        overlap_mm2=_overlap(pocket, plug, smallest),
    )


def _overlap(pocket: Region, plug: Region, smallest_gap: float) -> float:
    if smallest_gap > _DUST_MM:
        return 0.0
    area = float(plug.shape.difference(pocket.shape).area)
    return 0.0 if area < _DUST_MM * plug.perimeter else area


def _walls(region: Region, other: BoundaryIndex, samples: int, *, inside: bool) -> tuple[WallGap, ...]:
    step = region.perimeter / samples
    rings = [with_samples(ring, step) for ring in region.rings()]
    gaps, partners = other.signed(np.vstack(rings))
    gaps = gaps if inside else -gaps
    edges = np.cumsum([len(ring) for ring in rings])[:-1]
    split = zip(rings, np.split(gaps, edges), np.split(partners, edges), strict=True)
    return tuple(WallGap(ring, ring_gaps, ring_partners) for ring, ring_gaps, ring_partners in split)


def _mean_along(wall: WallGap) -> tuple[float, float]:
    """Mean gap by length of wall (trapezoid rule), and that length."""
    spans = np.roll(wall.points, -1, axis=0) - wall.points
    lengths = np.hypot(spans[:, 0], spans[:, 1])
    middles = (wall.gaps + np.roll(wall.gaps, -1)) / 2
    total = float(lengths.sum())
    return float((middles * lengths).sum() / total), total


def _loosest_spot(wall: WallGap) -> Spot:
    return _spot_of(wall, int(wall.gaps.argmax()))


def _spot_of(wall: WallGap, i: int) -> Spot:
    return _spot(wall.points[i], wall.partners[i], float(wall.gaps[i]))


def _spot(place: Points, partner: Points, gap: float) -> Spot:
    x, y = place.tolist()
    px, py = partner.tolist()
    return Spot((x, y), (px, py), gap)


def _tightest_spots(
    plug_walls: Sequence[WallGap],
    pocket_walls: Sequence[WallGap],
    pocket_index: BoundaryIndex,
    plug_index: BoundaryIndex,
) -> tuple[Spot, ...]:
    """Local minima of both walls, narrowed down where the plug bites, tightest first, told apart by place."""
    found = [*_minima(plug_walls), *_narrowed(plug_walls, pocket_index, inside=True)]
    seen_from_pocket = [*_minima(pocket_walls), *_narrowed(pocket_walls, plug_index, inside=False)]
    found += [Spot(spot.partner_mm, spot.place_mm, spot.gap_mm) for spot in seen_from_pocket]
    found.sort(key=lambda spot: spot.gap_mm)
    apart = sum(_length(wall) for wall in plug_walls) * _SPOTS_APART
    chosen: list[Spot] = []
    for spot in found:
        if all(math.dist(spot.place_mm, other.place_mm) > apart for other in chosen):
            chosen.append(spot)
        if len(chosen) == _MOST_SPOTS:
            break
    return tuple(chosen)


def _minima(walls: Sequence[WallGap]) -> list[Spot]:
    return [_spot_of(wall, i) for wall in walls for i in _local_minima(wall.gaps)]


def _length(wall: WallGap) -> float:
    spans = np.roll(wall.points, -1, axis=0) - wall.points
    return float(np.hypot(spans[:, 0], spans[:, 1]).sum())


def _local_minima(gaps: Points) -> list[int]:
    """The lowest few samples that are no higher than both neighbours; always the lowest of all."""
    low = (gaps <= np.roll(gaps, 1)) & (gaps <= np.roll(gaps, -1))
    candidates = np.flatnonzero(low)
    lowest = candidates[np.argsort(gaps[candidates], kind="stable")[: 4 * _MOST_SPOTS]]
    return [int(gaps.argmin()), *lowest.tolist()]


def _narrowed(walls: Sequence[WallGap], index: BoundaryIndex, *, inside: bool) -> list[Spot]:
    """The deepest bites, each searched between its lowest sample and that sample's neighbours.

    `inside` as in `_walls`: whether the wall is free inside the other region, or outside it.
    """
    bites = [(float(w.gaps[i]), w, i) for w in walls for i in _local_minima(w.gaps) if w.gaps[i] < 0]
    bites.sort(key=lambda bite: bite[0])
    if not bites:
        return []
    deepest = bites[:_MOST_SPOTS]
    starts = np.array([wall.points[i] for _, wall, i in deepest for _ in range(2)])
    ends = np.array([wall.points[(i + s) % len(wall.points)] for _, wall, i in deepest for s in (-1, 1)])
    sign = 1.0 if inside else -1.0
    places = _lowest_between(starts, ends - starts, index, sign)
    gaps, partners = index.signed(places)
    return [_spot(*spot) for spot in zip(places, partners, (sign * gaps).tolist(), strict=True)]


def _lowest_between(starts: Points, spans: Points, index: BoundaryIndex, sign: float) -> Points:
    """The place of the lowest gap on each piece start + t·span, 0 ≤ t ≤ 1.

    Each round looks at a few places at once and goes on between the neighbours of the lowest.
    """
    low, width = np.zeros(len(starts)), np.ones(len(starts))
    steps = np.arange(1, _NARROWING_PLACES + 1) / (_NARROWING_PLACES + 1)
    for _ in range(_NARROWING_ROUNDS):
        shares = low[:, None] + width[:, None] * steps
        places = starts[:, None] + shares[..., None] * spans[:, None]
        gaps = sign * index.signed(places.reshape(-1, 2))[0].reshape(shares.shape)
        low += width * (steps[gaps.argmin(axis=1)] - steps[0])
        width *= 2 * steps[0]
    found: Points = starts + (low + width / 2)[:, None] * spans
    return found
