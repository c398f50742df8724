"""Exact distances from many points to a region's boundary, quickly.

The boundary is sampled so densely that no point of it is farther than half a step from a sample. The
samples sit in a k-d tree; a query takes the nearest few, and the exact distance to the segments they lie
on. If the nearest sample is at d, the true nearest point has a sample within d + step/2: as long as the
last of the few is farther than that, none was missed, and the answer is exact. Where it is not, the
query is asked again with more.
"""

from __future__ import annotations

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import cKDTree

from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

_FIRST_NEIGHBOURS = 6
_SAMPLES_PER_BOUNDARY = 4000
_SMALLEST_STEP = 1e-9


class BoundaryIndex:
    """The boundary of a region, ready for many questions."""

    def __init__(self, region: Region) -> None:
        if region.is_empty:
            raise ValueError("an empty region has no boundary")
        self._region = region
        rings = region.rings()
        self._starts = np.vstack(rings)
        self._ends = np.vstack([np.roll(ring, -1, axis=0) for ring in rings])
        spans = self._ends - self._starts
        lengths = np.hypot(spans[:, 0], spans[:, 1])
        self._step = max(float(lengths.sum()) / max(_SAMPLES_PER_BOUNDARY, 2 * len(lengths)), _SMALLEST_STEP)
        pieces = np.maximum(1, np.ceil(lengths / self._step)).astype(np.intp)
        self._owner: NDArray[np.intp] = np.repeat(np.arange(len(pieces)), pieces)
        first = np.repeat(np.cumsum(pieces) - pieces, pieces)
        fraction = (np.arange(len(self._owner)) - first) / np.repeat(pieces, pieces)
        samples = self._starts[self._owner] + spans[self._owner] * fraction[:, None]
        # A sample stands at the start of its piece; the piece's far end is the next sample, so a point of the
        # boundary is at most half a step from one of the two.
        self._tree = cKDTree(samples, balanced_tree=False, compact_nodes=False)
        self._before = np.concatenate([np.roll(numbers, 1) for numbers in _ring_ranges(rings)])

    def nearest(self, points: Points) -> tuple[Points, Points]:
        """Distances (n,) and nearest boundary points (n, 2)."""
        distances = np.empty(len(points))
        partners = np.empty((len(points), 2))
        open_ = np.arange(len(points))
        neighbours = min(_FIRST_NEIGHBOURS, self._tree.n)
        while len(open_):
            answer = self._tree.query(points[open_], k=neighbours)
            found = np.asarray(answer[0]).reshape(len(open_), -1)
            nearest_samples = np.asarray(answer[1]).reshape(len(open_), -1)
            d, p = self._exact(points[open_], nearest_samples)
            distances[open_], partners[open_] = d, p
            if neighbours == self._tree.n:
                break
            missed = found[:, -1] < np.minimum(d, found[:, 0]) + self._step / 2
            open_ = open_[missed]
            neighbours = min(4 * neighbours, self._tree.n)
        return distances, partners

    def edge_lengths(self, points: Points) -> Points:
        """Length of the straight piece of boundary nearest to each point, (n,)."""
        _, nearest_samples = self._tree.query(points)
        owners = self._owner[nearest_samples]
        spans = self._ends[owners] - self._starts[owners]
        lengths: Points = np.hypot(spans[:, 0], spans[:, 1])
        return lengths

    def signed(self, points: Points) -> tuple[Points, Points]:
        """Distances with a sign, positive inside the region, and nearest boundary points."""
        distances, partners = self.nearest(points)
        shapely.prepare(self._region.shape)
        inside = shapely.contains_xy(self._region.shape, points[:, 0], points[:, 1])
        return np.where(inside, distances, -distances), partners

    def _exact(self, points: Points, samples: NDArray[np.intp]) -> tuple[Points, Points]:
        """Distance to the segments the samples lie on, and to those that end where they begin."""
        owners = self._owner[samples]
        segments = np.concatenate([owners, self._before[owners]], axis=1)
        starts = self._starts[segments]
        spans = self._ends[segments] - starts
        offsets = points[:, None, :] - starts
        squared = np.maximum(np.einsum("nks,nks->nk", spans, spans), 1e-300)
        along = np.clip(np.einsum("nks,nks->nk", offsets, spans) / squared, 0, 1)
        feet = starts + spans * along[..., None]
        gaps = points[:, None, :] - feet
        distances = np.hypot(gaps[..., 0], gaps[..., 1])
        best = distances.argmin(axis=1)
        rows = np.arange(len(points))
        return distances[rows, best], feet[rows, best]


def _ring_ranges(rings: list[Points]) -> list[NDArray[np.intp]]:
    first = 0
    ranges = []
    for ring in rings:
        ranges.append(np.arange(first, first + len(ring)))
        first += len(ring)
    return ranges


def with_samples(ring: Points, step: float) -> Points:
    """The ring's vertices, and points between them no farther apart than `step`."""
    spans = np.roll(ring, -1, axis=0) - ring
    lengths = np.hypot(spans[:, 0], spans[:, 1])
    pieces = np.maximum(1, np.ceil(lengths / max(step, _SMALLEST_STEP))).astype(np.intp)
    owner = np.repeat(np.arange(len(ring)), pieces)
    first = np.repeat(np.cumsum(pieces) - pieces, pieces)
    fraction = (np.arange(len(owner)) - first) / pieces[owner]
    points: Points = ring[owner] + spans[owner] * fraction[:, None]
    return points
