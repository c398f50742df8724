"""What a figure covers: its fill, on request its line, and nothing outside its clips.

This is where a drawing's true curves meet the chords of a region, by the tolerance passed in.
"""

from __future__ import annotations

from collections.abc import Iterable

import shapely

from inlayfit.drawing import Figure, FillRule
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.paint import painted, stroked
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance


def figure_region(figure: Figure, tolerance: Tolerance, *, strokes_as_areas: bool) -> Region:
    """The area a figure covers.

    Args:
        figure: what to look at; without fill only its line counts, if asked for.
        tolerance: `arc_mm` bounds the distance between curves and chords.
        strokes_as_areas: whether a painted line covers its width; else only fills count.
    """
    parts: list[Region] = []
    if figure.fill is not None:
        rings = [flatten(path, tolerance.arc_mm) for path in figure.contours]
        parts.append(painted(rings, evenodd=figure.fill is FillRule.EVENODD))
    if strokes_as_areas and figure.stroke_width_mm:
        parts += [_line_region(path, figure, tolerance) for path in figure.contours]
    region = united(parts)
    for clip in figure.clip:
        region = region if region.is_empty else region.common(clip_region(clip, tolerance))
    return region


def clip_region(clip: Figure, tolerance: Tolerance) -> Region:
    """What a clip leaves visible: its painted area, by its own clips too."""
    return figure_region(clip, tolerance, strokes_as_areas=False)


def united(regions: Iterable[Region]) -> Region:
    """What any of the regions covers."""
    shown = [region for region in regions if not region.is_empty]
    if len(shown) < 2:
        return shown[0] if shown else Region.empty()
    return Region.of(shapely.union_all([region.shape for region in shown]))


def _line_region(path: Path, figure: Figure, tolerance: Tolerance) -> Region:
    line = figure.line
    return stroked(
        flatten(path, tolerance.arc_mm),
        figure.stroke_width_mm or 0.0,
        closed=path.closed,
        arc_tolerance=tolerance.arc_mm,
        cap=line.cap.value,
        join=line.join.value,
        miter_limit=line.miter_limit,
        dashes=line.dashes_mm,
        dash_offset=line.dash_offset_mm,
        pen=line.pen,
    )
