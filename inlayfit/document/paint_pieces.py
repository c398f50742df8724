"""From painted shapes to pieces: all paint of a layer together, as the eye sees it.

A shape wholly inside another of its layer adds nothing to see. Whether it was meant as a hole or an inlay
cannot be known, so it is a finding. Contours keep their true curves where paint did not merge.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from inlayfit.document.linework import Piece, called, summarised
from inlayfit.document.painted import figure_region, united
from inlayfit.drawing import Figure
from inlayfit.finding import Finding, Severity
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path, Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance
from inlayfit.measures import point
from inlayfit.wording import Worded

_Key = tuple[int, int, int, int]


def painted_pieces(
    figures: Sequence[Figure], layer: str, *, tolerance: Tolerance, strokes_as_areas: bool
) -> tuple[list[Piece], list[Finding]]:
    """Pieces of the painted figures of one layer, and findings."""
    regions = [figure_region(figure, tolerance, strokes_as_areas=strokes_as_areas) for figure in figures]
    whole = united(regions)
    findings = [*_empty(figures, regions, layer), *_hidden(figures, regions, layer)]
    names = _Names(figures, regions)
    contours = _TrueContours(figures, tolerance)
    pieces = []
    for region in whole.pieces:
        polygon = region.polygons[0]
        if 2 * polygon.area <= tolerance.settle_mm * polygon.length:
            continue
        pieces.append(Piece(region, contours.of(region), names.of(region), layer))
    return pieces, summarised(findings)


def _empty(figures: Sequence[Figure], regions: Sequence[Region], layer: str) -> list[Finding]:
    findings = []
    for figure, region in zip(figures, regions, strict=True):
        if region.is_empty and figure.contours:
            x, y = figure.contours[0].start.tolist()
            place = (x, y) if np.isfinite((x, y)).all() else None
            message = Worded("{name} covers no area; it was left out.", name=called(figure.name, layer))
            remedy = Worded("Delete it, or draw it again if something is missing.")
            findings.append(Finding("outline-without-area", Severity.WARN, message, remedy, place))
    return findings


def _hidden(figures: Sequence[Figure], regions: Sequence[Region], layer: str) -> list[Finding]:
    """Findings for shapes inside the paint of another one."""
    shown = [i for i, region in enumerate(regions) if not region.is_empty]
    if len(shown) < 2:
        return []
    shapes = np.array([regions[i].shape for i in shown], dtype=object)
    shapely.prepare(shapes)
    points = shapely.point_on_surface(shapes)
    outer, inner = shapely.STRtree(points).query(shapes, predicate="contains")
    hidden: dict[int, int] = {}
    for big, small in zip(outer.tolist(), inner.tolist(), strict=True):
        if big == small or small in hidden or shapes[small].area > shapes[big].area:
            continue
        if shapes[small].area == shapes[big].area and big > small:
            continue
        if shapely.covers(shapes[big], shapes[small]):
            hidden[small] = big
    findings = []
    for small, big in hidden.items():
        x, y = points[small].x, points[small].y
        message = Worded(
            "{name} at {place} lies wholly inside {other} and cannot be seen.",
            name=called(figures[shown[small]].name, layer),
            place=point((x, y)),
            other=_other(figures[shown[big]]),
        )
        remedy = Worded(
            "Subtract it in the drawing program if it is a hole, or put it on its own layer if it is a part."
        )
        findings.append(Finding("shape-hidden", Severity.WARN, message, remedy, (x, y)))
    return findings


def _other(figure: Figure) -> str:
    return Worded("“{name}”", name=figure.name[:60]) if figure.name else Worded("another filled shape")


class _Names:
    """Which figure a piece is named after: the one that covers a point of it, the last painted."""

    def __init__(self, figures: Sequence[Figure], regions: Sequence[Region]) -> None:
        self._names = [figure.name for figure in figures]
        self._tree = shapely.STRtree([region.shape for region in regions])

    def of(self, region: Region) -> str:
        hits = self._tree.query(region.polygons[0].point_on_surface(), predicate="intersects")
        names = [self._names[i] for i in sorted(hits.tolist()) if self._names[i]]
        return names[0] if names else ""


class _TrueContours:
    """Finds the drawn contour behind a ring of a region."""

    def __init__(self, figures: Sequence[Figure], tolerance: Tolerance) -> None:
        self._cell = 10 * tolerance.settle_mm
        self._settle = tolerance.settle_mm
        self._known: dict[_Key, tuple[Path, Points]] = {}
        for figure in figures:
            for path in figure.contours:
                points = flatten(path, tolerance.arc_mm)
                if len(points) > 2 and np.isfinite(points).all():
                    self._known.setdefault(self._key(points), (path.joined_closed(), points))

    def of(self, region: Region) -> tuple[Path, ...]:
        """A path for each ring: the drawn one if it became this ring unchanged, else its chords."""
        return tuple(self._one(ring) for ring in region.rings())

    def _one(self, ring: Points) -> Path:
        known = self._known.get(self._key(ring))
        if known is not None and self._same(known[1], ring):
            return known[0]
        return Path.polyline(ring)

    def _same(self, drawn: Points, ring: Points) -> bool:
        """Whether no point of either lies off the other; both hold the same vertices but for the start."""
        if abs(len(drawn) - len(ring)) > 1:
            return False
        if any(_nearly_equal(drawn, one, self._settle) for one in (ring, ring[::-1])):
            return True
        lines = shapely.LinearRing(drawn), shapely.LinearRing(ring)
        return bool(shapely.hausdorff_distance(*lines) <= self._settle)

    def _key(self, points: Points) -> _Key:
        (x0, y0), (x1, y1) = points.min(axis=0), points.max(axis=0)
        return (
            round(x0 / self._cell),
            round(y0 / self._cell),
            round(x1 / self._cell),
            round(y1 / self._cell),
        )


def _nearly_equal(one: Points, other: Points, settle: float) -> bool:
    """Whether two rings have the same points in the same order, wherever they start."""
    if len(one) != len(other):
        return False
    start = int(np.abs(other - one[0]).sum(axis=1).argmin())
    return bool(np.abs(np.roll(other, -start, axis=0) - one).max() <= settle / 2)
