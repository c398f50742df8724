"""The small pictures of the list of recent work."""

from __future__ import annotations

import shapely

from inlayfit.document.state import State

_SIDE = 100.0


def small_picture(state: State) -> tuple[tuple[float, ...], ...]:
    """The outlines, coarse, in a square of 100."""
    shapes = [outline.region.shape for outline in state.outlines[:40]]
    if not shapes:
        return ()
    x0, y0, x1, y1 = shapely.total_bounds(shapes)
    scale = _SIDE / max(x1 - x0, y1 - y0, 1e-9)
    rings: list[tuple[float, ...]] = []
    for shape in shapes:
        for polygon in shapely.get_parts(shapely.simplify(shape, 0.6 / scale)):
            for ring in (polygon.exterior, *polygon.interiors):
                points = shapely.get_coordinates(ring)[:-1]
                flat = ((points - (x0, y0)) * scale).round(1).ravel().tolist()
                if len(flat) >= 6:
                    rings.append(tuple(flat))
    return tuple(rings)
