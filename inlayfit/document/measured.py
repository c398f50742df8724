"""Outlines typed in by size, for the pocket that has no drawing: circle, rectangle, slot.

Each lies with its middle at the origin; arcs are true arcs.
"""

from __future__ import annotations

import math

import numpy as np

from inlayfit.document.outlines import Outline, region_of_contours
from inlayfit.errors import SpecError
from inlayfit.geometry.path import Path
from inlayfit.measures import length, size
from inlayfit.wording import Worded

_LAYER = "measured"
_QUARTER = math.tan(math.pi / 8)


def circle(diameter_mm: float) -> Outline:
    """A circle.

    Raises:
        SpecError: the diameter is not a positive length.
    """
    _check(Worded("diameter"), diameter_mm)
    return _outline("circle", Path.circle((0.0, 0.0), diameter_mm / 2))


def rectangle(width_mm: float, height_mm: float, *, corner_radius_mm: float = 0.0) -> Outline:
    """A rectangle, its corners rounded if a radius is given.

    Raises:
        SpecError: a size is not positive, or the radius is more than half the shorter side.
    """
    _check(Worded("width"), width_mm)
    _check(Worded("height"), height_mm)
    x, y, r = width_mm / 2, height_mm / 2, corner_radius_mm
    if not 0 <= r <= min(x, y):
        raise SpecError(
            Worded(
                "A corner radius of {radius} does not fit a rectangle of {size}; give at most {most}.",
                radius=length(r, "g"),
                size=size(width_mm, height_mm, "g"),
                most=length(min(x, y), "g"),
            )
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
    _check(Worded("length"), length_mm)
    _check(Worded("width"), width_mm)
    if length_mm < width_mm:
        raise SpecError(
            Worded(
                "A slot {long} long over all cannot be {wide} wide; swap the two.",
                long=length(length_mm, "g"),
                wide=length(width_mm, "g"),
            )
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


def _check(what: Worded, value_mm: float) -> None:
    if not (math.isfinite(value_mm) and value_mm > 0):
        raise SpecError(Worded("The {what} must be more than 0; type a length such as 12 mm.", what=what))
