"""Shared ways: one plunge for residues that lie beside each other.

Where the cutter cannot quite go through a passage it leaves residues at both walls, and going through it once
clears them all. Worked out each for itself they would be gone through from either end, and by directions that
suit one wall only: both ends take about the same, so that the last digits of the coordinates would decide,
and each way takes something that the other one does not.

So the residues are gone through in turn. Each may take the way of an earlier one, made as long as it needs
itself, and does so where that takes no more than its own way of what is not taken already.
"""

from __future__ import annotations

import numpy as np
import shapely
from numpy.typing import NDArray

from inlayfit.fit.plunges import Targets, Ways, plunge_lengths
from inlayfit.geometry.clipping import Shapes, clipped
from inlayfit.geometry.flatten import quad_segments
from inlayfit.geometry.groups import Numbers
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance

_NO_MORE_MM2 = 5e-4  # as little as nobody sees; two ways that are the same but for rounding are shared


def stadiums_along(ways: Ways, lengths: Points, radius: float, tolerance: Tolerance) -> Shapes:
    """What a cutter sweeps on each way, (m,)."""
    lines = shapely.linestrings(np.stack([ways.origins, ways.ends(lengths)], axis=1))
    steps = quad_segments(radius, tolerance.arc_mm)
    return np.asarray(shapely.buffer(lines, radius, quad_segs=steps))


def with_shared_ways(
    ways: Ways, targets: Targets, half: Region, radius: float, tolerance: Tolerance
) -> tuple[Ways, NDArray[np.bool_]]:
    """The ways, some exchanged for that of an earlier target; and which are shared, (m,).

    Args:
        ways: each covers its target; in the order of the targets, no two with the same.
        targets: what they cover.
        half: what they should take least of.
        radius: the cutter's.
        tolerance: for the arcs of what is swept.
    """
    lengths = plunge_lengths(ways, targets, radius)
    beside = _beside(ways, lengths, 2 * radius)
    rivals = Ways(ways.target[beside[:, 0]], ways.origins[beside[:, 1]], ways.units[beside[:, 1]])
    reaches = plunge_lengths(rivals, targets, radius)
    covering = np.flatnonzero(~np.isnan(reaches))
    own = np.arange(len(ways.target))
    if len(covering) == 0:
        return ways, np.zeros(len(own), dtype=bool)
    instead = stadiums_along(rivals.chosen(covering), reaches[covering], radius, tolerance)
    swept = stadiums_along(ways, lengths, radius, tolerance)
    whose = own.copy()
    for one in np.unique(beside[covering, 0]).tolist():
        mine = beside[covering, 0] == one
        tried = np.array([swept[one], *instead[mine]], dtype=object)
        least = _least_beyond(tried, swept[beside[beside[:, 0] == one, 1]], half)
        if least > 0:
            whose[one], swept[one] = beside[covering, 1][mine][least - 1], tried[least]
    shared = Ways(ways.target, ways.origins[whose], ways.units[whose])
    return shared, (whose != own) | np.isin(own, whose[whose != own])


def _beside(ways: Ways, lengths: Points, apart: float) -> Numbers:
    """Pairs (p, 2) of ways nearer to each other than that, the later one first."""
    lines = np.asarray(shapely.linestrings(np.stack([ways.origins, ways.ends(lengths)], axis=1)))
    pairs: Numbers = shapely.STRtree(lines).query(lines, predicate="dwithin", distance=apart).T
    return pairs[pairs[:, 1] < pairs[:, 0]]


def _least_beyond(tried: Shapes, earlier: Shapes, half: Region) -> int:
    """Which of the shapes takes least of the half beyond what the earlier ones take; rather not the first."""
    beyond = shapely.difference(tried, shapely.union_all(earlier))
    near = clipped(half, np.array([shapely.total_bounds(tried)]))
    areas = shapely.area(shapely.intersection(beyond, near))
    areas[0] += _NO_MORE_MM2
    return int(areas.argmin())
