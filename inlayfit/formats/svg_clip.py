"""Clips: what hides the rest of a figure, kept as figures beside it.

A drawing program wraps nearly everything into a rectangular clip as large as the page. A rectangle that
holds a figure whole changes nothing, so it is left away, and the figure keeps its true curves.

Several shapes in one clip path show what any of them covers. Where they lie apart, their contours go into
one figure as they are; where they meet, their union is worked out, with chords.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely

from inlayfit.drawing import Cap, Figure, FillRule, Join
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.paint import painted
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform

Bounds = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Clip:
    """A clip and, if it is an upright rectangle, its bounds."""

    figure: Figure
    box: Bounds | None = None

    def holds(self, bounds: Bounds) -> bool:
        """Whether the clip is a rectangle around these bounds; a rounding error outside does not count."""
        if self.box is None:
            return False
        x0, y0, x1, y1 = self.box
        slack = 1e-9 * max(map(abs, self.box))
        inside_x = x0 - slack <= bounds[0] and bounds[2] <= x1 + slack
        return inside_x and y0 - slack <= bounds[1] and bounds[3] <= y1 + slack


def applying(clips: Sequence[Clip], figure: Figure) -> tuple[Figure, ...]:
    """The clips that may hide a part of the figure."""
    bounds = figure_bounds([figure])
    width = figure.stroke_width_mm or 0.0
    reach = width / 2 * 1.5 if figure.line.cap is Cap.SQUARE else width / 2
    if width and figure.line.join is Join.MITER:
        reach = max(reach, width / 2 * figure.line.miter_limit)
    pen = figure.line.pen
    reach *= max(1.0, abs(pen.a) + abs(pen.c), abs(pen.b) + abs(pen.d))
    grown = (bounds[0] - reach, bounds[1] - reach, bounds[2] + reach, bounds[3] + reach)
    return tuple(dict.fromkeys(clip.figure for clip in clips if not clip.holds(grown)))


def box_clip(box: Bounds, transform: Transform) -> Clip:
    """A clip to x, y, width, height in user units."""
    x, y, width, height = box
    corners = np.array([[x, y], [x + width, y], [x + width, y + height], [x, y + height]])
    return _clip_of(Figure((transform.path(Path.polyline(corners)),), fill=FillRule.NONZERO))


def merged_clip(figures: Sequence[Figure]) -> Clip:
    """A clip to what any of the figures covers; without figures it hides everything."""
    if not figures:
        return Clip(Figure((), fill=FillRule.NONZERO))
    if len(figures) == 1:
        return _clip_of(replace(figures[0], name="", layer="0"))
    one_rule = len({figure.fill for figure in figures}) == 1
    if one_rule and not any(figure.clip for figure in figures) and _lie_apart(figures):
        contours = tuple(path for figure in figures for path in figure.contours)
        return Clip(Figure(contours, fill=figures[0].fill))
    union = shapely.union_all([_area(figure).shape for figure in figures])
    rings = tuple(Path.polyline(ring) for ring in Region.of(union).rings())
    return Clip(Figure(rings, fill=FillRule.NONZERO))


def _lie_apart(figures: Sequence[Figure]) -> bool:
    boxes = shapely.box(*np.array([figure_bounds([figure]) for figure in figures]).T)
    first, second = shapely.STRtree(boxes).query(boxes, predicate="intersects")
    return bool((first == second).all())


def _area(figure: Figure) -> Region:
    """What a clip figure covers, its own clips applied."""
    rings = [flatten(path, EXACT.arc_mm) for path in figure.contours]
    region = painted(rings, evenodd=figure.fill is FillRule.EVENODD)
    for clip in figure.clip:
        region = region.common(_area(clip))
    return region


def _clip_of(figure: Figure) -> Clip:
    """The clip, with its box if it is an upright rectangle of straight sides."""
    if len(figure.contours) != 1 or figure.clip:
        return Clip(figure)
    path = figure.contours[0]
    sides = np.abs(np.diff(np.vstack([path.vertices, path.vertices[:1]]), axis=0))
    straight = not path.curves and not path.bulges.any()
    if len(path.vertices) != 4 or not straight:
        return Clip(figure)
    upright = (sides.min(axis=1) <= 1e-9 * sides.max()).all()
    turns = (sides[0].argmax() != sides[1].argmax()) and (sides[0].argmax() == sides[2].argmax())
    return Clip(figure, path.bounds() if upright and turns else None)


def figure_bounds(figures: Sequence[Figure]) -> Bounds:
    """A box around the contours, never too small; all zero without figures."""
    boxes = np.array([path.bounds() for figure in figures for path in figure.contours] or [(0.0,) * 4])
    x0, y0 = boxes[:, :2].min(axis=0)
    x1, y1 = boxes[:, 2:].max(axis=0)
    return float(x0), float(y0), float(x1), float(y1)


def tight_bounds(figures: Sequence[Figure]) -> Bounds:
    """The box around the contours to a hundred-thousandth of its size."""
    x0, y0, x1, y1 = figure_bounds(figures)
    tolerance = 1e-5 * max(x1 - x0, y1 - y0)
    if tolerance == 0:
        return x0, y0, x1, y1
    points = np.vstack([flatten(path, tolerance) for figure in figures for path in figure.contours])
    (x0, y0), (x1, y1) = points.min(axis=0).tolist(), points.max(axis=0).tolist()
    return x0, y0, x1, y1
