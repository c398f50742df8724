"""A place on the wall at true scale: what the loupe draws, as plain geometry, before any painting.

The loupe looks at one spot. Its scale is such that the gap there is well visible, and both directions have
the same scale, so angles and radii are what they are. Everything is cut to the visible box first: a
drawing of 100,000 vertices costs no more than the few that are in sight.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from inlayfit.app.canvas.scale_bar import round_below
from inlayfit.app.canvas.scene import FittingScene
from inlayfit.app.canvas.view_transform import Box, ViewTransform
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.units import Unit

SMALLEST_SCALE, LARGEST_SCALE = 10.0, 20_000.0
_GAP_PX = 30.0
_SMALLEST_GAP_MM = 0.01
_SQUARE_PX = 36.0
_SMALLEST_PIECE_PX2 = 40.0


@dataclass(frozen=True, slots=True)
class LoupeSpot:
    """What the loupe looks at.

    Attributes:
        place_mm: on the plug's wall.
        partner_mm: the nearest point of the pocket's wall.
        gap_mm: signed.
    """

    place_mm: tuple[float, float]
    partner_mm: tuple[float, float]
    gap_mm: float

    @property
    def middle_mm(self) -> tuple[float, float]:
        """Halfway between both walls."""
        return (self.place_mm[0] + self.partner_mm[0]) / 2, (self.place_mm[1] + self.partner_mm[1]) / 2


@dataclass(frozen=True, slots=True)
class CutterArc:
    """Where the cutter stands when it makes the wall at the spot."""

    centre_mm: tuple[float, float]
    radius_mm: float


@dataclass(frozen=True, eq=False, slots=True)
class LoupeView:
    """The geometry in sight.

    Attributes:
        view: from millimetres to pixels.
        pocket, plug, overlap: rings of the regions in sight, (n, 2) mm, as the halves meet; the overlap is
            where the plug bites.
        pared: rings of what a hand has to take away before.
        cutter: of the half to cut, or None.
        square_mm: side of a grid square.
    """

    view: ViewTransform
    pocket: tuple[Points, ...]
    plug: tuple[Points, ...]
    overlap: tuple[Points, ...]
    pared: tuple[Points, ...]
    cutter: CutterArc | None
    square_mm: float


def fitting_scale(gap_mm: float, clearance_mm: float) -> float:
    """Pixels per millimetre that show this gap well."""
    largest = max(abs(gap_mm), abs(clearance_mm), _SMALLEST_GAP_MM)
    return min(LARGEST_SCALE, max(SMALLEST_SCALE, _GAP_PX / largest))


def build_loupe(
    fitting: FittingScene, spot: LoupeSpot, scale: float, width: float, height: float, *, unit: Unit = Unit.MM
) -> LoupeView:
    """Cut both halves to what is in sight around a spot."""
    view = ViewTransform(scale).centred_on(*spot.middle_mm, width, height)
    box = view.box_mm(width, height, margin=8)
    from_pocket, from_plug = _cut(fitting.pocket_pared, box), _cut(fitting.plug_pared, box)
    pocket, plug = _cut(fitting.pocket.region, box), _cut(fitting.plug.region, box)
    pocket = pocket if from_pocket.is_empty else pocket.union(from_pocket)
    plug = plug if from_plug.is_empty else plug.minus(from_plug)
    overlap = plug.minus(pocket)
    square = round_below(_SQUARE_PX / scale / float(unit.mm)) * float(unit.mm)
    return LoupeView(
        view,
        tuple(pocket.rings()),
        tuple(plug.rings()),
        tuple(overlap.rings()),
        tuple(ring for part in (from_pocket, from_plug) for ring in _seen(part, scale)),
        _cutter_arc(fitting, spot),
        square,
    )


def _cut(region: Region, box: Box) -> Region:
    return region if region.is_empty else region.within(*box)


def _seen(region: Region, scale: float) -> list[Points]:
    """Rings of the pieces that are large enough to be seen."""
    smallest = _SMALLEST_PIECE_PX2 / scale**2
    return [ring for piece in region.pieces if piece.area >= smallest for ring in piece.rings()]


def _cutter_arc(fitting: FittingScene, spot: LoupeSpot) -> CutterArc | None:
    """The plug's cutter runs outside its wall, the pocket's inside; a half that is fixed has no cutter."""
    inwards = _plug_inwards(fitting, spot)
    if inwards is None:
        return None
    if not fitting.plug_fixed and fitting.plug_cutter_mm > 0:
        radius, at, side = fitting.plug_cutter_mm / 2, spot.place_mm, -1.0
    elif not fitting.pocket_fixed and fitting.pocket_cutter_mm > 0:
        radius, at, side = fitting.pocket_cutter_mm / 2, spot.partner_mm, 1.0
    else:
        return None
    centre = at[0] + side * radius * inwards[0], at[1] + side * radius * inwards[1]
    return CutterArc(centre, radius)


def _plug_inwards(fitting: FittingScene, spot: LoupeSpot) -> tuple[float, float] | None:
    """Unit direction into the plug at the spot, from the chord about the nearest sample of its wall."""
    best: tuple[float, tuple[float, float]] | None = None
    for wall in fitting.walls:
        apart = np.hypot(*(wall.points - np.array(spot.place_mm)).T)
        k = int(apart.argmin())
        if best is None or apart[k] < best[0]:
            after, before = wall.points[(k + 1) % len(wall.points)], wall.points[k - 1]
            dx, dy = (after - before).tolist()
            long = math.hypot(dx, dy) or 1.0
            best = float(apart[k]), (-dy / long, dx / long)
    return None if best is None else best[1]
