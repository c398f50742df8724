"""Exact distances from many points to a region's boundary, quickly.

GEOS keeps a tree of the boundary's pieces once the boundary is *prepared*, and walks it branch by branch,
nearest box first, so that it looks at a handful of segments a point (IndexedFacetDistance).
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from inlayfit.geometry.groups import Flags, members
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

_SMALLEST_STEP = 1e-9


class BoundaryIndex:
    """The boundary of a region, ready for many questions.

    Not for two threads at once: GEOS builds the tree at the first question.
    """

    def __init__(self, region: Region) -> None:
        if region.is_empty:
            raise ValueError("an empty region has no boundary")
        self.region = region
        self._boundary = shapely.boundary(region.shape)
        shapely.prepare(self._boundary)

    def nearest(self, points: Points) -> tuple[Points, Points]:
        """Distances (n,) and nearest boundary points (n, 2)."""
        lines = shapely.shortest_line(self._boundary, shapely.points(points))
        partners: Points = shapely.get_coordinates(lines)[::2]
        gaps = points - partners
        return np.hypot(gaps[:, 0], gaps[:, 1]), partners

    def comes_near(self, rings: Sequence[Points], distance: float) -> Flags:
        """Whether each ring comes as near to the boundary as that, anywhere along it."""
        lines = np.array([shapely.LinearRing(ring) for ring in rings], dtype=object)
        near: Flags = np.asarray(shapely.dwithin(self._boundary, lines, distance))
        return near

    def signed(self, points: Points) -> tuple[Points, Points]:
        """Distances with a sign, positive inside the region, and nearest boundary points."""
        distances, partners = self.nearest(points)
        shapely.prepare(self.region.shape)
        inside = shapely.contains_xy(self.region.shape, points[:, 0], points[:, 1])
        return np.where(inside, distances, -distances), partners


def edge_lengths(region: Region, points: Points) -> Points:
    """Length of the straight piece of boundary nearest to each point, (n,)."""
    rings = region.rings()
    starts = np.vstack(rings)
    ends = np.vstack([np.roll(ring, -1, axis=0) for ring in rings])
    edges = np.asarray(shapely.linestrings(np.stack([starts, ends], axis=1)))
    nearest = shapely.STRtree(edges).nearest(shapely.points(points))
    lengths: Points = shapely.length(edges[nearest])
    return lengths


def with_samples(ring: Points, step: float) -> Points:
    """The ring's vertices, and points between them no farther apart than `step`."""
    return sampled(ring, step)[0]


def sampled(ring: Points, step: float) -> tuple[Points, Flags]:
    """The same, and which of the points are vertices."""
    spans = np.roll(ring, -1, axis=0) - ring
    lengths = np.hypot(spans[:, 0], spans[:, 1])
    pieces = np.maximum(1, np.ceil(lengths / max(step, _SMALLEST_STEP))).astype(np.intp)
    owner, number = members(pieces)
    return ring[owner] + spans[owner] * (number / pieces[owner])[:, None], number == 0
