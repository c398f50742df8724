"""Plunges: straight moves of a round cutter towards corners it cannot reach, many at once.

A plunge moves the cutter from a place it can reach in a straight line and back. The cutter sweeps a stadium:
all points within its radius of the line. It covers a point z if, seen along the plunge, z lies at most
√(r² − p²) beyond the line's end, p being z's distance off the line. So the plunge that just covers all of a
shape has the length max over z of a − √(r² − p²), a being z's distance along it. A stadium is convex: when
it covers a polygon's vertices it covers the polygon.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely

from inlayfit.geometry.groups import Numbers, members, starts_of
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.stadiums import Edges, Stadiums

_BARELY_MISSED_MM = 0.0005  # a wall parallel to the plunge lies exactly one radius off it


@dataclass(frozen=True, slots=True)
class Targets:
    """Sets of points, each to be covered by one plunge.

    Attributes:
        vertices: all points (v, 2), set after set.
        counts: how many each set has, (n,); none is 0.
    """

    vertices: Points
    counts: Numbers

    @classmethod
    def hulls(cls, regions: Sequence[Region]) -> Targets:
        """What to cover of each region so that all of it is covered: a stadium is convex."""
        points, owner = shapely.get_coordinates(
            shapely.convex_hull([region.shape for region in regions]), return_index=True
        )
        return cls(points, np.bincount(owner, minlength=len(regions)))

    @property
    def firsts(self) -> Numbers:
        """Where each set begins."""
        return starts_of(self.counts)

    def chosen(self, which: Numbers) -> tuple[Targets, Numbers]:
        """The sets with these numbers, in that order and as often; for each vertex its place in `which`."""
        counts = self.counts[which]
        place, within = members(counts)
        return Targets(self.vertices[self.firsts[which][place] + within], counts), place


@dataclass(frozen=True, slots=True)
class Ways:
    """Ways to plunge.

    Attributes:
        target: the number of the set each is for, (m,).
        origins: where each begins, (m, 2).
        units: its direction, of length 1, (m, 2).
    """

    target: Numbers
    origins: Points
    units: Points

    @classmethod
    def towards(cls, target: Numbers, origins: Points, aims: Points) -> Ways:
        """The ways from the origins to the aims; where the two coincide there is none."""
        spans = aims - origins
        lengths = np.hypot(spans[:, 0], spans[:, 1])
        some = lengths > 0
        return cls(target[some], origins[some], spans[some] / lengths[some, None])

    def joined(self, other: Ways) -> Ways:
        """These and the others."""
        return Ways(
            np.concatenate([self.target, other.target]),
            np.vstack([self.origins, other.origins]),
            np.vstack([self.units, other.units]),
        )

    def turned(self, angle: float) -> Ways:
        """The same, every direction turned counter-clockwise by an angle in radians."""
        cos, sin = np.cos(angle), np.sin(angle)
        x, y = self.units.T
        return Ways(self.target, self.origins, np.column_stack([cos * x - sin * y, sin * x + cos * y]))

    def chosen(self, which: Numbers) -> Ways:
        """Some of them."""
        return Ways(self.target[which], self.origins[which], self.units[which])

    def ends(self, lengths: Points) -> Points:
        """Where plunges of these lengths end, (m, 2)."""
        return self.origins + lengths[:, None] * self.units


def plunge_lengths(ways: Ways, targets: Targets, radius: float) -> Points:
    """Length (m,) of the shortest plunge each way that covers its target; nan where none does."""
    if len(ways.target) == 0:
        return np.empty(0)
    own, way = targets.chosen(ways.target)
    firsts, units = own.firsts, ways.units[way]
    offsets = own.vertices - ways.origins[way]
    along = np.einsum("ij,ij->i", offsets, units)
    off = np.abs(offsets[:, 0] * units[:, 1] - offsets[:, 1] * units[:, 0])
    reach = along - np.sqrt(np.maximum(0.0, radius**2 - off**2))
    misses = np.maximum.reduceat(off, firsts) > radius + _BARELY_MISSED_MM
    behind = np.where(along < 0, np.hypot(along, off), 0.0)  # what lies behind, only the first disk covers
    misses |= np.maximum.reduceat(behind, firsts) > radius + _BARELY_MISSED_MM
    lengths: Points = np.where(misses, np.nan, np.maximum(0.0, np.maximum.reduceat(reach, firsts)))
    return lengths


def areas_taken(ways: Ways, targets: Targets, near: Edges, radius: float) -> Points:
    """Area (m,) that the shortest plunge each way takes; infinite where none covers its target.

    Args:
        ways: candidates.
        targets: what they have to cover.
        near: the walls of the part of what should be spared that any way of a target can touch, one a target.
        radius: the cutter's.
    """
    lengths = plunge_lengths(ways, targets, radius)
    areas = np.full(len(lengths), np.inf)
    covering = np.flatnonzero(~np.isnan(lengths))
    if len(covering):
        some = ways.chosen(covering)
        stadiums = Stadiums(some.origins, some.units, lengths[covering], radius)
        areas[covering] = stadiums.areas_inside(near, some.target)
    return areas


def least_of_each(ways: Ways, areas: Points) -> Numbers:
    """Numbers (k,) of the ways that take the least area, the first of equals; none for what no way covers."""
    covering: Numbers = np.flatnonzero(np.isfinite(areas))
    order = covering[np.lexsort((covering, areas[covering], ways.target[covering]))]
    least: Numbers = order[np.unique(ways.target[order], return_index=True)[1]]
    return least
