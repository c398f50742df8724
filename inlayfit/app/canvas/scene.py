"""What the gap map shows, as one frozen value built away from the GUI thread.

A scene holds drawing millimetres only; it knows neither the view nor a colour. Building it from a
`FitResult` copies no outline point by point: rings are taken as arrays, lengths along them are summed once,
and places for the lettering are found on simplified outlines.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import MultiPolygon, Polygon

from inlayfit.app.canvas.polylines import ring_lengths
from inlayfit.app.canvas.view_transform import Box
from inlayfit.fit.classes import GapClass, classify, is_even
from inlayfit.fit.result import FitResult, GapMap, HalfResult, ReliefCut, Spot, WallGap
from inlayfit.fit.spec import HalfSpec, Relief
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

MOST_SPOTS = 24
"""Tight spots that are numbered and walked through; further ones say nothing new."""
_LABEL_SHARE = 0.01


@dataclass(frozen=True, eq=False, slots=True)
class Shape:
    """A region ready to draw.

    Attributes:
        region: the polygons themselves, for hit tests and clipping.
        rings: every ring, (n, 2).
        bounds: x0, y0, x1, y1; nan if empty.
    """

    region: Region
    rings: tuple[Points, ...]
    bounds: Box

    @classmethod
    def of(cls, region: Region) -> Shape:
        """A shape of a region."""
        return cls(region, tuple(region.rings()), region.bounds)

    @classmethod
    def empty(cls) -> Shape:
        """Nothing to draw."""
        return cls.of(Region.empty())

    @property
    def is_empty(self) -> bool:
        """Whether there is nothing to draw."""
        return not self.rings

    def within(self, box: Box) -> tuple[Points, ...]:
        """The rings, cut to a box where the shape reaches far out of it."""
        x0, y0, x1, y1 = self.bounds
        if self.is_empty or (x0 >= box[0] and y0 >= box[1] and x1 <= box[2] and y1 <= box[3]):
            return self.rings
        return tuple(self.region.within(*box).rings())

    def holds(self, x_mm: float, y_mm: float) -> bool:
        """Whether a point lies inside."""
        x0, y0, x1, y1 = self.bounds
        in_box = not self.is_empty and x0 <= x_mm <= x1 and y0 <= y_mm <= y1
        return in_box and bool(shapely.contains_xy(self.region.shape, x_mm, y_mm))


@dataclass(frozen=True, eq=False, slots=True)
class Pieces:
    """Many small areas, most of which are never drawn: their rings are taken when they are asked for.

    Attributes:
        polygons: (n,) of shapely.
        boxes: (n, 4) x0, y0, x1, y1 of each.
    """

    polygons: NDArray[np.object_]
    boxes: Points

    @classmethod
    def of(cls, regions: Iterable[Region]) -> Pieces:
        """The connected pieces of all regions."""
        polygons = shapely.get_parts([region.shape for region in regions])
        return cls(polygons, shapely.bounds(polygons).reshape(-1, 4))

    def within(self, box: Box, *, smallest_mm: float = 0.0) -> list[list[Points]]:
        """The rings of each piece that reaches into a box and is not smaller than that either way."""
        x0, y0, x1, y1 = self.boxes.T
        inside = (x1 >= box[0]) & (x0 <= box[2]) & (y1 >= box[1]) & (y0 <= box[3])
        seen = inside & (np.maximum(x1 - x0, y1 - y0) >= smallest_mm)
        return [
            [shapely.get_coordinates(ring)[:-1] for ring in shapely.get_rings(polygon)]
            for polygon in self.polygons[seen]
        ]


@dataclass(frozen=True, eq=False, slots=True)
class Wall:
    """The gap along one ring of the plug's wall, and how long the ring is up to each of its points.

    Attributes:
        points: (n, 2).
        gaps: (n,) signed.
        partners: (n, 2) nearest points of the other wall.
        lengths: (n + 1,) along the ring; the last is all round.
        bounds: x0, y0, x1, y1.
    """

    points: Points
    gaps: Points
    partners: Points
    lengths: Points
    bounds: Box

    @classmethod
    def of(cls, gap: WallGap) -> Wall:
        """From one ring of a gap map."""
        x, y = gap.points[:, 0], gap.points[:, 1]
        bounds = float(x.min()), float(y.min()), float(x.max()), float(y.max())
        return cls(gap.points, gap.gaps, gap.partners, ring_lengths(gap.points), bounds)


@dataclass(frozen=True, slots=True)
class HalfLabel:
    """Lettering that says which half is which, and where it may stand.

    Attributes:
        lines: a few short lines; the first is set bolder.
        place_mm: the middle of a free disk inside the half.
        room_mm: radius of that disk.
    """

    lines: tuple[str, ...]
    place_mm: tuple[float, float]
    room_mm: float


def _pared(half: HalfSpec, cut: HalfResult) -> Region:
    by_hand = half.may_move and half.relief is Relief.BY_HAND
    return cut.left_over if by_hand else Region.empty()


def worth_walking(gap: GapMap, clearance_mm: float) -> tuple[Spot, ...]:
    """The spots that say something: all that are tighter than meant, or else the tightest alone.

    Of a gap that is as meant all round, a dozen equal places would only be counted, not looked at.
    """
    classes = classify([spot.gap_mm for spot in gap.tightest], clearance_mm)
    tighter = int((classes < GapClass.ON).sum())
    return gap.tightest[: max(1, min(tighter, MOST_SPOTS))]


@dataclass(frozen=True, eq=False, slots=True)
class FittingScene:
    """One pocket with its plug.

    Attributes:
        key: names the fitting in signals.
        name: what a person calls it.
        pocket, plug: the finished walls.
        pocket_fixed, plug_fixed: whether that half may no longer change.
        clearance_mm: wanted per side; the classes are relative to it.
        walls: the gap along the plug's wall.
        spots: those worth looking at, tightest first.
        loosest: the widest gap, or None.
        min_mm, max_mm: smallest and largest gap; nan without a plug.
        rough: roughing outlines of both halves, where there are any.
        left_over: stock left in corners of both halves.
        pocket_pared, plug_pared: stock that a hand takes away before the halves meet; the gap is without it.
        relieved: the cuts made for relief, with their places.
        relieved_areas: what they removed.
        pocket_cutter_mm, plug_cutter_mm: diameters.
        pocket_label, plug_label: lettering, or None.
    """

    key: str
    name: str
    pocket: Shape
    plug: Shape
    pocket_fixed: bool
    plug_fixed: bool
    clearance_mm: float
    walls: tuple[Wall, ...]
    spots: tuple[Spot, ...]
    loosest: Spot | None
    min_mm: float = math.nan
    max_mm: float = math.nan
    rough: tuple[Shape, ...] = ()
    left_over: Pieces = field(default_factory=lambda: Pieces.of(()))
    pocket_pared: Region = field(default_factory=Region.empty)
    plug_pared: Region = field(default_factory=Region.empty)
    relieved: tuple[ReliefCut, ...] = ()
    relieved_areas: Pieces = field(default_factory=lambda: Pieces.of(()))
    pocket_cutter_mm: float = 0.0
    plug_cutter_mm: float = 0.0
    pocket_label: HalfLabel | None = None
    plug_label: HalfLabel | None = None

    @classmethod
    def of_result(
        cls,
        key: str,
        name: str,
        result: FitResult,
        *,
        pocket_words: tuple[str, ...] = (),
        plug_words: tuple[str, ...] = (),
        before: FittingScene | None = None,
    ) -> FittingScene:
        """From an answer of the fit. Call it where the fit was solved, not on the GUI thread.

        Args:
            key: names the fitting in signals.
            name: what a person calls it.
            result: the answer.
            pocket_words: lettering for the host, such as ("cherry pocket", "already cut, stays").
            plug_words: lettering for the plug.
            before: a scene of the same fitting that differs little; its lettering stays where it is.
        """
        spec, gap = result.spec, result.gap
        pocket, plug = Shape.of(result.pocket.outline), Shape.of(result.plug.outline)
        halves = (result.pocket, result.plug)
        return cls(
            key=key,
            name=name,
            pocket=pocket,
            plug=plug,
            pocket_fixed=not spec.pocket.may_move,
            plug_fixed=not spec.plug.may_move,
            clearance_mm=spec.clearance_mm,
            walls=tuple(Wall.of(wall) for wall in gap.plug_walls if len(wall.points) > 2),
            spots=worth_walking(gap, spec.clearance_mm),
            loosest=gap.loosest,
            min_mm=gap.min_mm,
            max_mm=gap.max_mm,
            rough=tuple(Shape.of(half.rough) for half in halves if half.rough is not None),
            left_over=Pieces.of(half.left_over for half in halves),
            pocket_pared=_pared(spec.pocket, result.pocket),
            plug_pared=_pared(spec.plug, result.plug),
            relieved=result.reliefs,
            relieved_areas=Pieces.of(cut.removed for cut in result.reliefs),
            pocket_cutter_mm=_cutter(spec.pocket),
            plug_cutter_mm=_cutter(spec.plug),
            pocket_label=_outside_label(pocket, pocket_words) if before is None else before.pocket_label,
            plug_label=_inside_label(plug, plug_words) if before is None else before.plug_label,
        )

    @property
    def bounds(self) -> Box:
        """A box round both halves."""
        return united((self.pocket.bounds, self.plug.bounds))

    @property
    def is_even(self) -> bool:
        """Whether the gap is the same all round, or as meant all round: no place stands out."""
        return is_even(self.min_mm, self.max_mm, self.clearance_mm)

    def holds(self, x_mm: float, y_mm: float) -> bool:
        """Whether a point lies in either half."""
        return self.pocket.holds(x_mm, y_mm) or self.plug.holds(x_mm, y_mm)


@dataclass(frozen=True, eq=False, slots=True)
class OutlineScene:
    """An outline of the drawing that is in no fitting yet; it can be chosen.

    Attributes:
        key: names it in signals.
        name: what a person calls it ("outline 3, 42.00 × 18.50 mm").
        shape: what it encloses.
    """

    key: str
    name: str
    shape: Shape


@dataclass(frozen=True, eq=False, slots=True)
class GapScene:
    """All that the map shows.

    Attributes:
        fittings: the fittings, in their order.
        outlines: outlines that are in no fitting.
        host: outline of the host part; None tints the whole canvas.
        bounds: a box round fittings and outlines.
        marks: construction and dimension lines, (n, 2) each; they are only looked at.
    """

    fittings: tuple[FittingScene, ...] = ()
    outlines: tuple[OutlineScene, ...] = ()
    host: Shape | None = None
    bounds: Box = field(default=(math.nan,) * 4)
    marks: tuple[Points, ...] = ()

    @classmethod
    def of(
        cls,
        fittings: tuple[FittingScene, ...],
        *,
        outlines: tuple[OutlineScene, ...] = (),
        host: Shape | None = None,
        marks: tuple[Points, ...] = (),
    ) -> GapScene:
        """A scene with its box."""
        boxes = [f.bounds for f in fittings] + [o.shape.bounds for o in outlines]
        return cls(fittings, outlines, host, united(boxes), marks)

    @property
    def is_empty(self) -> bool:
        """Whether there is nothing to look at."""
        return not self.fittings and not self.outlines

    def fitting(self, key: str | None) -> FittingScene | None:
        """The fitting of that key, else None."""
        return next((f for f in self.fittings if f.key == key), None)


def united(boxes: list[Box] | tuple[Box, ...]) -> Box:
    """The smallest box round the boxes that are not empty; nan if all are."""
    known = np.array([box for box in boxes if all(map(math.isfinite, box))])
    if not len(known):
        return (math.nan,) * 4
    (x0, y0), (x1, y1) = known[:, :2].min(axis=0), known[:, 2:].max(axis=0)
    return float(x0), float(y0), float(x1), float(y1)


def _cutter(half: HalfSpec) -> float:
    return 2 * half.radius_mm


def _inside_label(shape: Shape, words: tuple[str, ...]) -> HalfLabel | None:
    """Lettering in the widest free place of the half, found on a coarse outline."""
    if not words or shape.is_empty:
        return None
    largest = max(shape.region.shape.geoms, key=lambda polygon: polygon.area)
    size = math.sqrt(largest.area)
    simple = largest.simplify(_LABEL_SHARE * size, preserve_topology=False)
    coarse = simple if isinstance(simple, Polygon) and simple.is_valid and not simple.is_empty else largest
    radius_line = shapely.maximum_inscribed_circle(coarse, tolerance=_LABEL_SHARE * size)
    (x, y), _ = radius_line.coords
    return HalfLabel(words, (x, y), float(radius_line.length))


def _outside_label(shape: Shape, words: tuple[str, ...]) -> HalfLabel | None:
    """Lettering beside the pocket, in the free place of its box's corners that is widest."""
    if not words or shape.is_empty:
        return None
    x0, y0, x1, y1 = shape.bounds
    size = math.hypot(x1 - x0, y1 - y0)
    corners = MultiPolygon([shapely.box(x0, y0, x1, y1)]).difference(shape.region.shape.convex_hull)
    inside = _inside_label(Shape.of(Region.of(corners)), words)
    above = HalfLabel(words, ((x0 + x1) / 2, y1 + 0.08 * size), 0.07 * size)
    return inside if inside is not None and inside.room_mm > above.room_mm else above
