"""A drawing as SVG: one user unit is one millimetre, one group a layer, arcs as true arcs.

The page is a box of the drawing. SVG has y down, so a point (x, y) is written as (x, -y) and the view
box starts at (left, -top): whoever reads the numbers finds the drawing's own coordinates, and on the page
the lower left corner of the box is the origin. Lines are hairlines without fill, so nothing of a
boundary's position depends on a stroke.

Arcs are given to SVG by their ends, their radius and two flags (SVG 2, 9.3.8), from which a reader
recomputes the centre. That is delicate near half a circle, where the centre's distance from the chord is
the root of a small difference. So an exact half circle is written with a radius rounded down: a reader
must then enlarge it to half the chord (SVG 2, 9.5.1), which is exact. Arcs from 154° to that are written
as two halves.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from pathlib import Path as FilePath
from typing import Any

import numpy as np
import svgwrite

from inlayfit.drawing import Drawing, Figure, draw
from inlayfit.geometry.arcs import RECOVERY_TOLERANCE, curves_as_arcs
from inlayfit.geometry.path import Bezier, Path

Page = tuple[float, float, float, float]
"""x0, y0, x1, y1 in mm, y up."""

_DECIMALS = 6
_STEP = 10.0**-_DECIMALS
_HAIRLINE_MM = 0.05
_HALF_TURN_SLACK = 1e-7  # |bulge| this near to 1 is half a circle: its centre moves by 1e-7 radii
_DELICATE_BULGE = 0.8  # 154.6°: from here on, the centre's error is more than 5 times that of the radius
_SMALLEST_PAGE_MM = 1e-3
_XML_NAME = re.compile(r"[A-Za-z_][A-Za-z0-9_.-]*")
_COLOURS = {
    "POCKET": "#1f3f7a",
    "POCKET_ROUGH": "#6f8fc4",
    "PLUG": "#a14a12",
    "PLUG_ROUGH": "#d59a63",
    "MARKS": "#555555",
    "TABS": "#3d7a3d",
    "STOCK": "#999999",
}
_PLAIN_COLOUR = "#222222"
_NAMELESS_LAYER = "0"


class _PathDataSink:
    """Draws contours as SVG path data."""

    def __init__(self, *, tolerance: float) -> None:
        self._tolerance = tolerance
        self._parts: list[str] = []
        self._at = (0.0, 0.0)

    @property
    def data(self) -> str:
        """All contours drawn so far."""
        return "".join(self._parts)

    def begin_figure(self, figure: Figure) -> None:
        self._parts = []

    def move_to(self, x: float, y: float) -> None:
        self._put("M", (x, y))

    def line_to(self, x: float, y: float) -> None:
        self._put("L", (x, y))

    def arc_to(self, x: float, y: float, bulge: float) -> None:
        size = abs(bulge)
        half_turn = abs(size - 1) <= _HALF_TURN_SLACK
        if size >= _DELICATE_BULGE and not half_turn:
            first = _middle_of_arc(self._at, (x, y), bulge)
            quarter = math.tan(math.atan(bulge) / 2)
            self.arc_to(*first, quarter)
            self.arc_to(x, y, quarter)
            return
        chord = math.dist(_rounded(self._at), _rounded((x, y)))
        radius = math.floor(chord / 2 / _STEP) * _STEP if half_turn else chord * (1 + bulge**2) / (4 * size)
        flags = f" 0 {int(size > 1 and not half_turn)} {int(bulge < 0)} "
        self._put(f"A{_number(radius)} {_number(radius)}{flags}", (x, y))

    def curve_to(self, curve: Bezier) -> None:
        if curve.weights is None and curve.degree in (2, 3):
            self._put("Q" if curve.degree == 2 else "C", *(tuple(p) for p in curve.control[1:].tolist()))
            return
        path = Path(curve.control[[0, -1]], np.zeros(1), False, {0: curve})
        arcs = curves_as_arcs(path, tolerance=self._tolerance)
        for (x, y), bulge in zip(arcs.vertices[1:].tolist(), arcs.bulges.tolist(), strict=True):
            if bulge:
                self.arc_to(x, y, bulge)
            else:
                self.line_to(x, y)

    def end_contour(self, *, closed: bool) -> None:
        if closed:
            self._parts.append("Z")

    def end_figure(self) -> None:
        """Nothing to finish."""

    def _put(self, command: str, *points: tuple[float, float]) -> None:
        numbers = " ".join(f"{_number(x)} {_number(-y)}" for x, y in points)
        self._parts.append(f"{command}{numbers}")
        self._at = points[-1]


def page_of(drawing: Drawing) -> Page:
    """The box of everything drawn, as the page of an SVG."""
    boxes = np.array([path.bounds() for figure in drawing for path in figure.contours])
    if not len(boxes):
        return 0.0, 0.0, 1.0, 1.0
    (x0, y0), (x1, y1) = boxes[:, :2].min(axis=0).tolist(), boxes[:, 2:].max(axis=0).tolist()
    return x0, y0, max(x1, x0 + _SMALLEST_PAGE_MM), max(y1, y0 + _SMALLEST_PAGE_MM)


def svg_text(drawing: Drawing, *, page: Page | None = None, tolerance: float = RECOVERY_TOLERANCE) -> str:
    """The drawing as the text of an SVG file.

    Args:
        drawing: millimetres, y up.
        page: the box that becomes the page; None takes the drawing's own.
        tolerance: largest distance, in mm, between a curve that SVG does not know (a rational Bézier, or
            one of a higher degree) and the arcs written for it.
    """
    x0, y0, x1, y1 = page_of(drawing) if page is None else page
    size = (_number(x1 - x0), _number(y1 - y0))
    svg = svgwrite.Drawing(
        size=(f"{size[0]}mm", f"{size[1]}mm"),
        viewBox=f"{_number(x0)} {_number(-y1)} {size[0]} {size[1]}",
        debug=False,
    )
    used: set[str] = set()
    for layer in drawing.layers:
        group = _layer_group(svg, layer, used)
        for figure in drawing.on_layer(layer):
            group.add(_figure_path(svg, figure, used, tolerance))
        svg.add(group)
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + str(svg.tostring()) + "\n"


def write_svg(
    drawing: Drawing,
    path: FilePath,
    *,
    page: Page | None = None,
    tolerance: float = RECOVERY_TOLERANCE,
) -> None:
    """Write the drawing to `path`, replacing what is there; `document.exports` stages and checks.

    Raises:
        OSError: the file cannot be written.
    """
    path.write_text(svg_text(drawing, page=page, tolerance=tolerance), encoding="utf-8", newline="\n")


def _layer_group(svg: Any, layer: str, used: set[str]) -> Any:
    """A group for a layer; the nameless layer "0" needs no id."""
    group = svg.g(fill="none", stroke=_COLOURS.get(layer, _PLAIN_COLOUR))
    group["stroke-width"] = _HAIRLINE_MM
    if layer != _NAMELESS_LAYER:
        group["id"] = _free_id(layer, used)
        if group["id"] != layer:
            group.set_desc(title=layer)
    return group


def _figure_path(svg: Any, figure: Figure, used: set[str], tolerance: float) -> Any:
    sink = _PathDataSink(tolerance=tolerance)
    draw([figure], sink)
    path = svg.path(d=sink.data)
    if figure.name:
        path["id"] = _free_id(figure.name, used, figure.layer)
        if path["id"] != figure.name:
            path.set_desc(title=figure.name)
    return path


def _free_id(name: str, used: set[str], layer: str = "") -> str:
    """The name as an XML id that no other element of the file has."""
    plain = name if _XML_NAME.fullmatch(name) else "_" + re.sub(r"[^A-Za-z0-9_.-]", "_", name)
    for candidate in _candidates(plain, layer):
        if candidate not in used:
            used.add(candidate)
            return candidate
    raise AssertionError("there is always a next number")


def _candidates(plain: str, layer: str) -> Iterable[str]:
    yield plain
    stem = f"{plain}-{layer.lower()}" if _XML_NAME.fullmatch(layer) else plain
    yield stem
    number = 2
    while True:
        yield f"{stem}-{number}"
        number += 1


def _middle_of_arc(start: tuple[float, float], end: tuple[float, float], bulge: float) -> tuple[float, float]:
    """The arc's apex: half the chord times the bulge to the right of the chord's middle."""
    dx, dy = end[0] - start[0], end[1] - start[1]
    return (start[0] + end[0]) / 2 + dy * bulge / 2, (start[1] + end[1]) / 2 - dx * bulge / 2


def _rounded(point: tuple[float, float]) -> tuple[float, float]:
    return round(point[0], _DECIMALS), round(point[1], _DECIMALS)


def _number(value: float) -> str:
    text = f"{value:.{_DECIMALS}f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
