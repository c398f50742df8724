"""The gap map as bands: pieces of line along the plug's wall, one class of gap each.

Gaps are far too small to be seen at true scale, so their colour is laid on a band of constant width just
inside the plug's wall, where it hides neither wall. The band's middle line is the wall, shrunk by half the
band; each point of it takes the gap of the nearest point of the wall. Where the plug is too thin for a
band, or ends in a sharp tip, the wall itself carries the colour.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import cKDTree

from inlayfit.fit.classes import Classes, GapClass, classify
from inlayfit.fit.result import FitResult, GapMap, WallGap
from inlayfit.geometry.groups import members
from inlayfit.geometry.morphology import erode
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import PREVIEW

_FAR = 2.5  # half bands from the wall at which its nearest band no longer speaks for it
_COARSE = 0.02  # of a half band: what the wall may be simplified by before it is shrunk
_MOST_SAMPLES = 20_000


@dataclass(frozen=True, eq=False, slots=True)
class Run:
    """A piece of band of one class.

    Attributes:
        points: (n, 2), in the ring's direction, with the plug to the left.
        gap_class: its class.
        closed: whether it is a whole ring.
    """

    points: Points
    gap_class: GapClass
    closed: bool

    @property
    def length_mm(self) -> float:
        """Its length."""
        spans = np.diff(self.points, axis=0)
        ends = self.points[0] - self.points[-1] if self.closed else np.zeros(2)
        return float(np.hypot(spans[:, 0], spans[:, 1]).sum() + math.hypot(*ends.tolist()))


def band_runs(result: FitResult, *, half_band_mm: float, step_mm: float) -> tuple[Run, ...]:
    """All bands of a fit, in the wall's own coordinates.

    Args:
        result: the fit.
        half_band_mm: distance of the band's middle from the wall, in the drawing's millimetres.
        step_mm: largest distance between two points of a band.
    """
    gap = result.gap
    if gap.is_empty:
        return ()
    walls = [_with_steps(wall.points, wall.gaps, step_mm) for wall in gap.plug_walls]
    points = np.vstack([wall[0] for wall in walls])
    classes = classify(np.concatenate([wall[1] for wall in walls]), result.spec.clearance_mm)
    wall_tree = cKDTree(points)
    inner = [_with_steps(ring, None, step_mm)[0] for ring in _inner_rings(result, half_band_mm)]
    runs: list[Run] = []
    for ring in inner:
        runs += _runs(ring, classes[np.asarray(wall_tree.query(ring)[1])])
    reach = cKDTree(np.vstack(inner)) if inner else None
    for wall_points, wall_gaps in walls:
        far = _is_far(wall_points, reach, _FAR * half_band_mm)
        wall_classes = classify(wall_gaps, result.spec.clearance_mm)
        runs += [run for run in _runs(wall_points, wall_classes, shown=far) if len(run.points) > 1]
    return tuple(runs)


def class_lengths(gap: GapMap, clearance_mm: float) -> dict[GapClass, float]:
    """Length of the plug's wall in each class, in mm; each sample speaks for half of both its edges."""
    lengths = np.zeros(len(GapClass))
    for wall in gap.plug_walls:
        np.add.at(lengths, classify(wall.gaps, clearance_mm), _shares(wall))
    return {kind: float(lengths[kind]) for kind in GapClass}


def _shares(wall: WallGap) -> Points:
    spans = np.roll(wall.points, -1, axis=0) - wall.points
    edges = np.hypot(spans[:, 0], spans[:, 1])
    shares: Points = (edges + np.roll(edges, 1)) / 2
    return shares


def _inner_rings(result: FitResult, half_band_mm: float) -> list[Points]:
    coarse = shapely.simplify(result.plug.outline.shape, half_band_mm * _COARSE, preserve_topology=True)
    return erode(Region.of(coarse), half_band_mm, PREVIEW).rings()


def _is_far(points: Points, tree: cKDTree | None, distance: float) -> NDArray[np.bool_]:
    if tree is None:
        return np.ones(len(points), dtype=bool)
    far: NDArray[np.bool_] = np.asarray(tree.query(points)[0]) > distance
    return far


def _with_steps(points: Points, values: Points | None, step: float) -> tuple[Points, Points]:
    """A ring, and the values along it, with points between so that none are farther apart than `step`."""
    numbers = np.zeros(len(points)) if values is None else values
    rows = np.column_stack([points, numbers])
    spans = np.roll(rows, -1, axis=0) - rows
    lengths = np.hypot(spans[:, 0], spans[:, 1])
    step = max(step, float(lengths.sum()) / _MOST_SAMPLES)
    pieces = np.maximum(1, np.ceil(lengths / step)).astype(np.intp)
    owner, number = members(pieces)
    fine = rows[owner] + spans[owner] * (number / pieces[owner])[:, None]
    return fine[:, :2], fine[:, 2]


def _runs(ring: Points, classes: Classes, *, shown: NDArray[np.bool_] | None = None) -> Iterator[Run]:
    """Stretches of a ring with one class; each but a whole ring ends where the next one starts."""
    keys = classes if shown is None else np.where(shown, classes, -1)
    changes = np.flatnonzero(keys != np.roll(keys, 1))
    if len(changes) == 0:
        if keys[0] >= 0:
            yield Run(ring, GapClass(int(keys[0])), closed=True)
        return
    count = len(ring)
    for start, end in zip(changes, np.roll(changes, -1), strict=True):
        if keys[start] < 0:
            continue
        length = (end - start) % count or count
        indices = (start + np.arange(length + 1)) % count
        yield Run(ring[indices], GapClass(int(keys[start])), closed=False)
