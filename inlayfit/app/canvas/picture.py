"""A scene at one view, as painter paths: what is filled and stroked, in logical pixels.

A gap of 0.03 mm is a third of a pixel when a whole part is in view, so the band between the two walls has a
constant width on the screen and the plug's line is drawn inwards by as much; the picture says so. Zoomed in
until the wanted clearance itself is that wide, everything stands at its true place.

Every path comes from samples about two pixels apart, so its cost depends on the length of wall in view and
not on the number of vertices. A band is filled, never stroked: a pen wider than one pixel costs many times
more in the raster engine. In a passage narrower than the bands, they move together, by the *reach* of the
wall, and never cross.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from PySide6.QtCore import QLineF
from PySide6.QtGui import QPainterPath, QPolygonF

from inlayfit.app.canvas.class_look import LOOKS, ClassLook
from inlayfit.app.canvas.painter_paths import line_list, lines_path, points_polygon, polygon_paths
from inlayfit.app.canvas.polylines import (
    Samples,
    class_runs,
    dashes,
    even_places,
    left_normals,
    reaches,
    resampled,
    resampled_within,
    strips,
    thinned,
)
from inlayfit.app.canvas.scene import FittingScene, GapScene, Pieces, Shape, Wall
from inlayfit.app.canvas.view_transform import Box, ViewTransform
from inlayfit.document.class_styles import Stroke
from inlayfit.fit.classes import classify
from inlayfit.geometry.path import Points

BAND_ROOM_PX = 11.0
"""Between the wall's line and the plug's line, when the true gap is too small to see."""
_MARGIN_PX = 64.0
_REACH_FOR_BAND, _REACH_FOR_LINE = 0.5, 0.85
_MOST_SAMPLES = 6000
TICK_WIDTH_PX = 1.6
_TICK_PX, _TICK_SPACING_PX = 7.0, 6.0
_DASH_PX, _DASH_GAP_PX, _DOT_SPACING_PX = 8.0, 5.0, 8.5
_CROWD_EVERY = 3
_FEW, _SMALLEST_PIECE_PX = 64, 1.5

_UP = np.array([1.0, -1.0])


@dataclass(frozen=True, slots=True)
class Grain:
    """How closely walls are looked at.

    Attributes:
        sample_px: distance of the samples that bands are made of.
        line_px: distance of points on a line.
        reach_every: at every which sample the reach of the wall is worked out.
        corners_only: whether of the wall's vertices only sharp ones stay among the samples.
    """

    sample_px: float = 2.0
    line_px: float = 0.75
    reach_every: int = 2
    corners_only: bool = False


FINE = Grain()
FOLLOWING = Grain(line_px=1.5, corners_only=True)
"""For a picture that follows a hand: half the samples, and no line leaves its place by a quarter pixel."""


@dataclass(frozen=True, eq=False, slots=True)
class BandPicture:
    """The wall of one class, in its own stroke.

    Attributes:
        pieces: to fill.
        dots: to draw as round points as wide as the band, or None.
        ticks: short lines inwards.
    """

    pieces: tuple[QPainterPath, ...] = ()
    dots: QPolygonF | None = None
    ticks: tuple[QLineF, ...] = ()


@dataclass(frozen=True, eq=False, slots=True)
class FittingPicture:
    """One fitting.

    Attributes:
        fitting: what it shows.
        pocket, plug: lines of both walls; the plug's is moved inwards.
        bands: one for each class, in the order of `LOOKS`.
        rough: lines of the roughing outlines.
        left_over: stock left in corners, to fill, one path a piece.
        relieved: what was cut away for relief, likewise.
    """

    fitting: FittingScene
    pocket: QPainterPath
    plug: QPainterPath
    bands: tuple[BandPicture, ...]
    rough: QPainterPath
    left_over: tuple[QPainterPath, ...]
    relieved: tuple[QPainterPath, ...] = ()


@dataclass(frozen=True, eq=False, slots=True)
class Picture:
    """A scene at one view.

    Attributes:
        view: where the drawing stands.
        box_mm: what the picture covers; beyond it nothing is promised.
        host: outline of the host, empty if the whole canvas is host.
        fittings: the fittings.
        outlines: lines of the outlines in no fitting, with their keys.
        crowd: (n, 2) pixels where bands run, for lettering to keep off.
        true_scale: whether both walls stand at their true places.
        marks: lines that are only looked at.
    """

    view: ViewTransform
    box_mm: Box
    host: QPainterPath
    fittings: tuple[FittingPicture, ...]
    outlines: tuple[tuple[str, QPainterPath], ...]
    crowd: Points
    true_scale: bool
    marks: QPainterPath = field(default_factory=QPainterPath)


@dataclass(frozen=True, eq=False, slots=True)
class _Band:
    """A sampled wall on its way to the screen: pixels with y up."""

    samples: Samples
    points: Points
    normals: Points
    reach: Points


class _Strokes:
    """Collects the runs of one class, with y up."""

    def __init__(self) -> None:
        self._pieces: list[Points] = []
        self._dots: list[Points] = []
        self._ticks: list[tuple[Points, Points]] = []

    def add(self, look: ClassLook, middle: Points, inwards: Points) -> None:
        """One run."""
        if look.stroke is Stroke.DOTTED:
            self._dots.append(even_places(middle, inwards, _DOT_SPACING_PX)[0])
        elif look.stroke is Stroke.DASHED:
            self._pieces += dashes(middle, look.width_px, on=_DASH_PX, off=_DASH_GAP_PX)
        else:
            self._pieces += strips(middle, left_normals(middle, closed=False), look.width_px)
        if look.stroke is Stroke.TICKED:
            self._ticks.append(even_places(middle, inwards, _TICK_SPACING_PX))

    def picture(self) -> BandPicture:
        """On the screen."""
        dots = points_polygon(np.vstack(self._dots) * _UP) if self._dots else None
        pieces = polygon_paths(self._pieces, place=lambda points: points * _UP)
        return BandPicture(pieces, dots, tuple(self._tick_lines()))

    def _tick_lines(self) -> list[QLineF]:
        if not self._ticks:
            return []
        places = np.vstack([place for place, _ in self._ticks])
        inwards = np.vstack([direction for _, direction in self._ticks])
        return line_list(places * _UP, (places + inwards * _TICK_PX) * _UP)


def build_picture(
    scene: GapScene,
    view: ViewTransform,
    width: float,
    height: float,
    *,
    margin: float = _MARGIN_PX,
    grain: Grain = FINE,
) -> Picture:
    """Make the paths of a scene for a view of this size and `margin` pixels about it."""
    box = view.box_mm(width, height, margin=margin)
    crowds: list[Points] = []
    fittings = tuple(_fitting_picture(f, view, box, crowds, grain) for f in scene.fittings)
    outlines = tuple((o.key, _outline(o.shape, view, box, grain)) for o in scene.outlines)
    host = QPainterPath() if scene.host is None else _outline(scene.host, view, box, grain)
    crowd = np.vstack(crowds) if crowds else np.zeros((0, 2))
    rooms = [shown_room_px(f, view) for f in scene.fittings]
    marks = lines_path(scene.marks, closed=False, place=view.points_px)
    return Picture(view, box, host, fittings, outlines, crowd, bool(rooms) and max(rooms) == 0, marks)


def shown_room_px(fitting: FittingScene, view: ViewTransform) -> float:
    """How far inwards of its true place the plug's line is drawn."""
    return max(0.0, BAND_ROOM_PX - abs(fitting.clearance_mm) * view.scale)


def _outline(shape: Shape, view: ViewTransform, box: Box, grain: Grain) -> QPainterPath:
    step = grain.line_px / view.scale
    rings = [thinned(ring, step) if len(ring) > _FEW else ring for ring in shape.within(box)]
    return lines_path(rings, closed=True, place=view.points_px)


def _joined_outlines(shapes: tuple[Shape, ...], view: ViewTransform, box: Box, grain: Grain) -> QPainterPath:
    joined = QPainterPath()
    for shape in shapes:
        joined.addPath(_outline(shape, view, box, grain))
    return joined


def _pieces(pieces: Pieces, view: ViewTransform, box: Box) -> tuple[QPainterPath, ...]:
    """A path for each piece that is large enough to be seen; small paths are filled much faster."""
    seen = pieces.within(box, smallest_mm=_SMALLEST_PIECE_PX / view.scale)
    return tuple(lines_path(rings, closed=True, place=view.points_px) for rings in seen)


def _fitting_picture(
    fitting: FittingScene, view: ViewTransform, box: Box, crowds: list[Points], grain: Grain
) -> FittingPicture:
    room = shown_room_px(fitting, view)
    bands = _sampled_bands(fitting.walls, view, box, room, grain)
    plug = QPainterPath()
    strokes = tuple(_Strokes() for _ in LOOKS)
    for band in bands:
        line = band.points + band.normals * np.minimum(room, _REACH_FOR_LINE * band.reach)[:, None]
        plug.addPath(lines_path([line * _UP], closed=band.samples.closed))
        middle = _band_middle(band, room, view.scale)
        _add_band(strokes, band, middle, fitting.clearance_mm)
        crowds.append(middle[::_CROWD_EVERY] * _UP)
    return FittingPicture(
        fitting=fitting,
        pocket=_outline(fitting.pocket, view, box, grain),
        plug=plug if bands or not fitting.walls else QPainterPath(),
        bands=tuple(stroke.picture() for stroke in strokes),
        rough=_joined_outlines(fitting.rough, view, box, grain),
        left_over=_pieces(fitting.left_over, view, box),
        relieved=_pieces(fitting.relieved_areas, view, box),
    )


def _sampled_bands(
    walls: tuple[Wall, ...], view: ViewTransform, box: Box, room: float, grain: Grain
) -> list[_Band]:
    step = grain.sample_px / view.scale
    pieces = [piece for wall in walls for piece in _samples_of(wall, step, box, grain)]
    if not pieces:
        return []
    points = [view.points_px(piece.points) * _UP for piece in pieces]
    normals = [left_normals(p, closed=s.closed) for p, s in zip(points, pieces, strict=True)]
    split = _reaches_along(points, normals, 1.5 * max(room, BAND_ROOM_PX), grain.reach_every)
    return [_Band(*parts) for parts in zip(pieces, points, normals, split, strict=True)]


def _reaches_along(points: list[Points], normals: list[Points], furthest: float, every: int) -> list[Points]:
    """The reach of all walls together, worked out at some samples and drawn between."""
    asked = [p[::every] for p in points], [n[::every] for n in normals]
    found = np.split(
        reaches(np.vstack(points), np.vstack(asked[0]), np.vstack(asked[1]), furthest),
        np.cumsum([len(part) for part in asked[0]])[:-1],
    )
    return [
        np.interp(np.arange(len(p)), np.arange(0, len(p), every), part)
        for p, part in zip(points, found, strict=True)
    ]


def _samples_of(wall: Wall, step: float, box: Box, grain: Grain) -> list[Samples]:
    x0, y0, x1, y1 = wall.bounds
    if x1 < box[0] or x0 > box[2] or y1 < box[1] or y0 > box[3]:
        return []
    if x0 >= box[0] and y0 >= box[1] and x1 <= box[2] and y1 <= box[3]:
        even = max(step, wall.lengths[-1] / _MOST_SAMPLES)
        corners_only = grain.corners_only
        return [resampled(wall.points, wall.gaps, wall.lengths, even, corners_only=corners_only)]
    return resampled_within(wall.points, wall.gaps, wall.lengths, step, box)


def _band_middle(band: _Band, room: float, scale: float) -> Points:
    """Halfway between the wall's line and the plug's, near the plug where the gap is wide."""
    gap = np.clip(band.samples.values * scale, -3 * BAND_ROOM_PX, 2 * BAND_ROOM_PX)
    shift = np.minimum((room - gap) / 2, _REACH_FOR_BAND * band.reach)
    middle: Points = band.points + band.normals * shift[:, None]
    return middle


def _add_band(strokes: tuple[_Strokes, ...], band: _Band, middle: Points, clearance_mm: float) -> None:
    numbers = classify(band.samples.values, clearance_mm)
    for number, where in class_runs(numbers, closed=band.samples.closed):
        if len(where) > 1:
            strokes[number].add(LOOKS[number], middle[where], band.normals[where])
