"""The points of many rings in one array, and going round each of them by number."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from inlayfit.geometry.distance import sampled, with_samples
from inlayfit.geometry.groups import Flags, Numbers, members, starts_of
from inlayfit.geometry.path import Points


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
        return cls(np.vstack(rings), starts_of(sizes), sizes)

    @property
    def edge_middles(self) -> Points:
        """The middle of the edge from each point to the next, (n, 2)."""
        middles: Points = (self.points + self.points[self.after(np.arange(len(self.points)))]) / 2
        return middles

    def with_samples(self, step: float) -> Rings:
        """The same rings with more points, none farther apart than a step."""
        return Rings.of([with_samples(ring, step) for ring in self._rings()])

    def samples(self, step: float) -> tuple[Points, Numbers]:
        """Their points, and the number of the edge on which each lies."""
        points, are_vertices = zip(*(sampled(ring, step) for ring in self._rings()), strict=True)
        return np.vstack(points), np.cumsum(np.hstack(are_vertices)) - 1

    def _rings(self) -> list[Points]:
        return np.split(self.points, self.starts[1:])

    def owners(self, numbers: Numbers) -> Numbers:
        """The ring of each of these points."""
        rings: Numbers = np.searchsorted(self.starts, numbers, side="right") - 1
        return rings

    def after(self, numbers: Numbers, steps: int = 1) -> Numbers:
        """The numbers of the points so many steps on from these, round their rings."""
        ring = self.owners(numbers)
        further: Numbers = self.starts[ring] + (numbers - self.starts[ring] + steps) % self.sizes[ring]
        return further

    def between(self, firsts: Numbers, lasts: Numbers) -> Numbers:
        """How many steps it is from each of some points to another of its ring."""
        ring = self.owners(firsts)
        steps: Numbers = (lasts - firsts) % self.sizes[ring]
        return steps

    def stretches(self, firsts: Numbers, counts: Numbers, step: int = 1) -> tuple[Numbers, Numbers]:
        """The numbers of so many points from each of some, on or back; and whose each is."""
        own, within = members(counts)
        ring = self.owners(firsts)[own]
        start = self.starts[ring]
        numbers: Numbers = start + (firsts[own] - start + step * within) % self.sizes[ring]
        return numbers, own

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

    def ring_at(self, start: int) -> Points:
        """The points of the ring that begins with that number."""
        size = int(self.sizes[int(np.searchsorted(self.starts, start))])
        return self.points[start : start + size]

    def whole(self, chosen: Flags) -> Numbers:
        """The first point of each ring all of whose points are chosen."""
        return self.starts[np.logical_and.reduceat(chosen, self.starts)]
