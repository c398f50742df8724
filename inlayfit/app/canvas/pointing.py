"""What lies under the pointer: the gap there, what to snap to, the distance between two points."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from inlayfit.app.canvas.scene import FittingScene, GapScene, Shape
from inlayfit.geometry.path import Points


@dataclass(frozen=True, slots=True)
class PointerReading:
    """Where the pointer is.

    Attributes:
        x_mm, y_mm: on the drawing.
        gap_mm: signed gap at the nearest wall, or None away from it.
        fitting_key: the fitting whose wall that is.
        wall_mm, partner_mm: the nearest sample of the plug's wall and its nearest point on the pocket's.
        following: whether the space bar is held: the loupe follows.
    """

    x_mm: float
    y_mm: float
    gap_mm: float | None = None
    fitting_key: str | None = None
    wall_mm: tuple[float, float] | None = None
    partner_mm: tuple[float, float] | None = None
    following: bool = False


@dataclass(frozen=True, slots=True)
class Measurement:
    """The distance between two points of the drawing."""

    start_mm: tuple[float, float]
    end_mm: tuple[float, float]

    @property
    def across_mm(self) -> float:
        """Along x."""
        return self.end_mm[0] - self.start_mm[0]

    @property
    def up_mm(self) -> float:
        """Along y."""
        return self.end_mm[1] - self.start_mm[1]

    @property
    def distance_mm(self) -> float:
        """Straight."""
        return math.hypot(self.across_mm, self.up_mm)


@dataclass(frozen=True, slots=True)
class Snap:
    """A point to measure from: on the drawing, and what it snapped to ("corner", "wall" or "")."""

    place_mm: tuple[float, float]
    to: str = ""


def reading_at(
    scene: GapScene, x_mm: float, y_mm: float, reach_mm: float, *, following: bool = False
) -> PointerReading:
    """The gap at the wall within `reach_mm` of a point; the nearest one however far, when following."""
    nearest: tuple[float, PointerReading] = (math.inf, PointerReading(x_mm, y_mm, following=following))
    for fitting in scene.fittings:
        for wall in fitting.walls:
            apart = np.hypot(wall.points[:, 0] - x_mm, wall.points[:, 1] - y_mm)
            k = int(apart.argmin())
            near_enough = following or apart[k] <= reach_mm
            if near_enough and apart[k] < nearest[0]:
                place, partner = wall.points[k].tolist(), wall.partners[k].tolist()
                found = PointerReading(
                    x_mm, y_mm, float(wall.gaps[k]), fitting.key, tuple(place), tuple(partner), following
                )
                nearest = (float(apart[k]), found)
    return nearest[1]


def snapped(scene: GapScene, x_mm: float, y_mm: float, reach_mm: float) -> Snap:
    """The nearest corner within reach, else the nearest point on a wall within reach, else the point."""
    point = np.array([x_mm, y_mm])
    corners = _nearest(_corner_points(scene), point, reach_mm)
    if corners is not None:
        return Snap(corners, "corner")
    on_wall = _nearest_on_rings(scene, point, reach_mm)
    return Snap((x_mm, y_mm)) if on_wall is None else Snap(on_wall, "wall")


def _shapes(scene: GapScene) -> list[Shape]:
    halves = [half for f in scene.fittings for half in (f.pocket, f.plug)]
    return halves + [o.shape for o in scene.outlines]


def _corner_points(scene: GapScene) -> Points:
    """Vertices where the line turns by more than a few degrees: corners, not chords of an arc."""
    rings = [ring for shape in _shapes(scene) for ring in shape.rings]
    corners = [ring[_turns(ring) > math.radians(8)] for ring in rings if len(ring) > 2]
    return np.vstack(corners) if corners else np.zeros((0, 2))


def _turns(ring: Points) -> Points:
    before, after = ring - np.roll(ring, 1, axis=0), np.roll(ring, -1, axis=0) - ring
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    turns: Points = np.abs(np.arctan2(cross, np.einsum("ij,ij->i", before, after)))
    return turns


def _nearest(points: Points, point: Points, reach: float) -> tuple[float, float] | None:
    if not len(points):
        return None
    apart = np.hypot(*(points - point).T)
    k = int(apart.argmin())
    return (float(points[k, 0]), float(points[k, 1])) if apart[k] <= reach else None


def _nearest_on_rings(scene: GapScene, point: Points, reach: float) -> tuple[float, float] | None:
    """The nearest point on any segment, by projection."""
    feet = [_foot(ring, point) for shape in _shapes(scene) for ring in shape.rings]
    return _nearest(np.array(feet), point, reach) if feet else None


def _foot(ring: Points, point: Points) -> Points:
    along = np.roll(ring, -1, axis=0) - ring
    squared = np.einsum("ij,ij->i", along, along)
    squared[squared == 0] = 1.0
    share = np.clip(np.einsum("ij,ij->i", point - ring, along) / squared, 0, 1)
    feet = ring + along * share[:, None]
    nearest: Points = feet[int(np.hypot(*(feet - point).T).argmin())]
    return nearest


def fitting_at(scene: GapScene, x_mm: float, y_mm: float) -> FittingScene | None:
    """The smallest fitting that holds a point: a nested one rather than the one it sits in."""
    holding = [f for f in scene.fittings if f.holds(x_mm, y_mm)]
    return min(holding, key=lambda f: f.pocket.region.area, default=None)


def outline_at(scene: GapScene, x_mm: float, y_mm: float, reach_mm: float) -> str | None:
    """The key of the smallest outline that holds a point, or whose line is within reach."""
    point = np.array([x_mm, y_mm])
    near = [
        outline
        for outline in scene.outlines
        if outline.shape.holds(x_mm, y_mm)
        or any(np.hypot(*(_foot(ring, point) - point)) <= reach_mm for ring in outline.shape.rings)
    ]
    smallest = min(near, key=lambda o: o.shape.region.area, default=None)
    return None if smallest is None else smallest.key
