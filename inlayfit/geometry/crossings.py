"""How often lines cross, counted no further than it matters.

Twenty thousand lines can cross two hundred million times; cutting them apart would never end. So the
crossings are counted first, in portions, and counting stops at a limit.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray

MOST_CROSSINGS = 100_000
"""More than this is a scribble, not a drawing."""
_PORTION = 48


def pairs_that_meet(lines: NDArray[np.object_], *, most: int) -> tuple[Any, Any] | None:
    """Numbers (i, j), i ≠ j, of lines that intersect, each pair both ways; None if more than `most`."""
    tree = shapely.STRtree(lines)
    if len(lines) <= _PORTION:
        one, other = tree.query(lines, predicate="intersects")
        return one[one != other], other[one != other]
    found: list[tuple[Any, Any]] = []
    total = 0
    for first in range(0, len(lines), _PORTION):
        one, other = tree.query(lines[first : first + _PORTION], predicate="intersects")
        one = one + first
        apart = one != other
        found.append((one[apart], other[apart]))
        total += int(apart.sum())
        if total > most:
            return None
    return np.concatenate([one for one, _ in found]), np.concatenate([other for _, other in found])


def cross_too_often(lines: Iterable[Any], *, most: int = MOST_CROSSINGS) -> bool:
    """Whether the segments of lines meet more than `most` times beyond following each other."""
    segments = [_segments(np.asarray(line.coords)[:, :2]) for line in lines]
    if not segments:
        return False
    ends = np.vstack(segments)
    pairs = pairs_that_meet(
        np.asarray(shapely.linestrings(ends), dtype=object), most=2 * most + 2 * len(ends)
    )
    return pairs is None


def _segments(points: NDArray[np.float64]) -> NDArray[np.float64]:
    return np.stack([points[:-1], points[1:]], axis=1)
