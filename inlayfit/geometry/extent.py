"""The exact box round paths: where a drawing begins and ends on each axis.

An arc reaches beyond its ends where it passes the rightmost, top, left or bottom point of its circle. A
Bézier is flattened first; its box may be too small by the tolerance.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

import numpy as np

from inlayfit.geometry.flatten import flatten_bezier
from inlayfit.geometry.path import Path, Points, arc_centres

Box = tuple[float, float, float, float]
"""x0, y0, x1, y1."""

_QUARTER_TURNS = np.arange(4) * (math.pi / 2)
_COMPASS = np.array([[1.0, 0.0], [0.0, 1.0], [-1.0, 0.0], [0.0, -1.0]])


def extent(paths: Iterable[Path], *, tolerance: float = 1e-4) -> Box | None:
    """The box round all paths, or None if there is none.

    Args:
        paths: open or closed.
        tolerance: by how much a Bézier may reach out of the box.
    """
    points = [part for path in paths for part in _extreme_points(path, tolerance)]
    if not points:
        return None
    stacked = np.vstack(points)
    (x0, y0), (x1, y1) = stacked.min(axis=0).tolist(), stacked.max(axis=0).tolist()
    return x0, y0, x1, y1


def _extreme_points(path: Path, tolerance: float) -> list[Points]:
    parts = [path.vertices, *(flatten_bezier(curve, tolerance) for curve in path.curves.values())]
    arcs = np.flatnonzero(path.bulges)
    if len(arcs):
        starts, ends = path.segment_ends()
        parts.append(_arc_extremes(starts[arcs], ends[arcs], path.bulges[arcs]))
    return parts


def _arc_extremes(starts: Points, ends: Points, bulges: Points) -> Points:
    """Those of the circles' four outermost points that the arcs pass."""
    centres, radii = arc_centres(starts, ends, bulges)
    spokes = starts - centres
    first = np.arctan2(spokes[:, 1], spokes[:, 0])
    sweep = 4 * np.arctan(bulges)
    forward = (_QUARTER_TURNS[None, :] - first[:, None]) * np.sign(bulges)[:, None]
    passed = np.mod(forward, 2 * math.pi) <= np.abs(sweep)[:, None]
    outermost = centres[:, None, :] + radii[:, None, None] * _COMPASS[None, :, :]
    extremes: Points = outermost[passed]
    return extremes
