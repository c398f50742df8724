"""Outlines typed in by size, for the pocket that has no drawing: circle, rectangle, slot.

Each lies with its middle at the origin; arcs are true arcs.
"""

from __future__ import annotations

import math

import numpy as np

from inlayfit.document.outlines import Outline, region_of_contours
from inlayfit.errors import SpecError
from inlayfit.geometry.path import Path

_LAYER = "measured"
_QUARTER = math.tan(math.pi / 8)


def circle(diameter_mm: float) -> Outline:
    """A circle.

    Raises:
        SpecError: the diameter is not a positive length.
    """
    _check("diameter", diameter_mm)
    return _outline("circle", Path.circle((0.0, 0.0), diameter_mm / 2))


def rectangle(width_mm: float, height_mm: float, *, corner_radius_mm: float = 0.0) -> Outline:
    """A rectangle, its corners rounded if a radius is given.

    Raises:
        SpecError: a size is not positive, or the radius is more than half the shorter side.
    """
    _check("width", width_mm)
    _check("height", height_mm)
    x, y, r = width_mm / 2, height_mm / 2, corner_radius_mm
    if not 0 <= r <= min(x, y):
        raise SpecError(
            f"A corner radius of {r:g} mm does not fit a rectangle of {width_mm:g} × {height_mm:g} mm; "
            f"give at most {min(x, y):g} mm."
        )
    if r == 0:
        return _outline("rectangle", Path.polyline([(-x, -y), (x, -y), (x, y), (-x, y)]))
    lower = [(-x, r - y), (r - x, -y), (x - r, -y), (x, r - y)]
    corners = [*lower, *((-a, -b) for a, b in lower)]
    path = Path(np.array(corners), np.array([_QUARTER, 0.0] * 4))
    return _outline("rectangle", _without_points(path))


def slot(length_mm: float, width_mm: float) -> Outline:
    """A slot with round ends; its length is measured over all.

    Raises:
        SpecError: a size is not positive, or the slot is wider than long.
    """
    _check("length", length_mm)
    _check("width", width_mm)
    if length_mm < width_mm:
        raise SpecError(
            f"A slot {length_mm:g} mm long over all cannot be {width_mm:g} mm wide; swap the two."
        )
    r = width_mm / 2
    half = length_mm / 2 - r
    path = Path(np.array([(-half, -r), (half, -r), (half, r), (-half, r)]), np.array([0.0, 1.0, 0.0, 1.0]))
    return _outline("slot", _without_points(path))


def _outline(name: str, path: Path) -> Outline:
    return Outline("o1", name, _LAYER, region_of_contours((path,)), (path,))


def _without_points(path: Path) -> Path:
    """Leave out straight pieces of no length, as where two corner arcs meet."""
    starts, ends = path.segment_ends()
    keep = (starts != ends).any(axis=1)
    return Path(path.vertices[keep], path.bulges[keep])


def _check(what: str, value_mm: float) -> None:
    if not (math.isfinite(value_mm) and value_mm > 0):
        raise SpecError(f"The {what} must be more than 0; type a length such as 12 mm.")
