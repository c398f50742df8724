"""The points of many rings in one array, and going round each of them by number."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from inlayfit.geometry.path import Points

Flags = NDArray[np.bool_]
Numbers = NDArray[np.intp]


@dataclass(frozen=True, eq=False, slots=True)
class Rings:
    """Points of rings, one ring after the other.

    Attributes:
        points: all of them, (n, 2).
        starts: the number of each ring's first point, (k,).
        sizes: how many points each has, (k,).
    """

    points: Points
    starts: Numbers
    sizes: Numbers

    @classmethod
    def of(cls, rings: Sequence[Points]) -> Rings:
        """These rings, none without points."""
        sizes = np.array([len(ring) for ring in rings])
        return cls(np.vstack(rings), np.cumsum(sizes) - sizes, sizes)

    @property
    def edge_middles(self) -> Points:
        """The middle of the edge from each point to the next, (n, 2)."""
        middles: Points = (self.points + self.points[self.after(np.arange(len(self.points)))]) / 2
        return middles

    def owners(self, numbers: Numbers) -> Numbers:
        """The ring of each of these points."""
        rings: Numbers = np.searchsorted(self.starts, numbers, side="right") - 1
        return rings

    def after(self, numbers: Numbers, steps: int = 1) -> Numbers:
        """The numbers of the points so many steps on from these, round their rings."""
        ring = self.owners(numbers)
        further: Numbers = self.starts[ring] + (numbers - self.starts[ring] + steps) % self.sizes[ring]
        return further

    def along(self, first: int, last: int) -> Numbers:
        """The numbers from one point of a ring to another, round it."""
        if first <= last:
            return np.arange(first, last + 1)
        ring = int(self.owners(np.array(first)))
        start = int(self.starts[ring])
        return np.hstack([np.arange(first, start + int(self.sizes[ring])), np.arange(start, last + 1)])

    def runs(self, chosen: Flags) -> Numbers:
        """First and last number of each run of chosen points, (m, 2); without rings chosen whole."""
        following = np.roll(chosen, -1)
        following[self.starts + self.sizes - 1] = chosen[self.starts]
        firsts = np.sort(self.after(np.flatnonzero(~chosen & following)))
        lasts = np.flatnonzero(chosen & ~following)
        ring = self.owners(firsts)
        ends = np.append(lasts, len(chosen))[np.searchsorted(lasts, firsts)]
        goes_past = ends >= self.starts[ring] + self.sizes[ring]  # past the ring's first point
        ends[goes_past] = lasts[np.searchsorted(lasts, self.starts[ring[goes_past]])]
        return np.column_stack([firsts, ends])

    def whole(self, chosen: Flags) -> Numbers:
        """The first point of each ring all of whose points are chosen."""
        return self.starts[np.logical_and.reduceat(chosen, self.starts)]
