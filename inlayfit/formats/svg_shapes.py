"""Basic shapes as outlines, in the user units of their element (SVG 2, chapter 10)."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from inlayfit.formats.svg_document import Node
from inlayfit.formats.svg_outline import Outline
from inlayfit.formats.svg_path_data import parse_path_data
from inlayfit.formats.svg_units import NUMBER, Size, Viewport, parse_size
from inlayfit.wording import Worded

SHAPE_TAGS = frozenset({"path", "rect", "circle", "ellipse", "line", "polyline", "polygon"})
_QUARTER = math.tan(math.pi / 8)
_SAME_POINT = 1e-12  # relative: rounding where two rounded corners meet, not a side
_HALF_DIAGONAL = math.sqrt(0.5)


@dataclass(slots=True)
class Shape:
    """What a shape element draws.

    Attributes:
        outlines: its contours; empty if it draws nothing.
        flaw: what is wrong with it, to be put after its name; empty if nothing is.
        broken: whether the flaw is an error in the file rather than a size of zero.
    """

    outlines: list[Outline]
    flaw: str = ""
    broken: bool = False


def read_shape(node: Node, geometry: dict[str, str], viewport: Viewport) -> Shape:
    """The outlines of a shape element; `geometry` holds its attributes, overridden by style where given."""
    if node.tag == "path":
        return _path(geometry.get("d", ""))
    if node.tag in ("polyline", "polygon"):
        return _points(geometry.get("points", ""), closed=node.tag == "polygon")
    sizes: _Sizes = {}
    for name in _LENGTHS[node.tag]:
        text = geometry.get(name)
        sizes[name] = parse_size(text)
        if text is not None and sizes[name] is None and text.strip() not in ("", "auto"):
            return Shape(
                [], Worded("has a {name} that is no length, “{text}”", name=name, text=text[:20]), broken=True
            )
    return _MAKE[node.tag](sizes, viewport)


def _path(text: str) -> Shape:
    if text.strip() in ("", "none"):
        return Shape([], Worded("has no path data"))
    data = parse_path_data(text)
    if data.error_at is None:
        return Shape(data.outlines) if data.outlines else Shape([], Worded("only moves the pen"))
    near = " ".join(text[data.error_at : data.error_at + 12].split())
    flaw = Worded(
        "has broken path data at character {number}{near}; it is drawn up to there",
        number=str(data.error_at + 1),
        near=Worded(" (“{text}”)", text=near) if near else "",
    )
    return Shape(data.outlines, flaw, broken=True)


def _points(text: str, *, closed: bool) -> Shape:
    numbers = [float(number) for number in re.findall(NUMBER, text)]
    left_over = re.sub(rf"{NUMBER}|[\s,]", "", text)
    whole = len(numbers) // 2 * 2
    finite = all(map(math.isfinite, numbers))
    if whole == 0 or not finite:
        return Shape(
            [], Worded("has no points") if finite else Worded("has a point that is not a number"), not finite
        )
    points = list(zip(numbers[0:whole:2], numbers[1:whole:2], strict=True))
    broken = whole < len(numbers) or bool(left_over)
    flaw = Worded("has a broken list of points; the whole pairs in it are drawn") if broken else ""
    return Shape([Outline(points, closed=closed)], flaw, broken)


_Sizes = dict[str, Size | None]


def _line(sizes: _Sizes, viewport: Viewport) -> Shape:
    start = (viewport.across(sizes["x1"]), viewport.along(sizes["y1"]))
    end = (viewport.across(sizes["x2"]), viewport.along(sizes["y2"]))
    return Shape([Outline([start, end])])


def _rect(sizes: _Sizes, viewport: Viewport) -> Shape:
    x, y = viewport.across(sizes["x"]), viewport.along(sizes["y"])
    width, height = viewport.across(sizes["width"]), viewport.along(sizes["height"])
    if not (width > 0 and height > 0):
        return Shape([], _no_size(width, height))
    rx, ry = _corner_radii(sizes, viewport)
    rx, ry = min(rx, width / 2), min(ry, height / 2)
    outline = Outline([(x + rx, y)])
    corners = (
        ((x + width - rx, y), (x + width, y), (x + width, y + ry)),
        ((x + width, y + height - ry), (x + width, y + height), (x + width - rx, y + height)),
        ((x + rx, y + height), (x, y + height), (x, y + height - ry)),
        ((x, y + ry), (x, y), (x + rx, y)),
    )
    for before, corner, after in corners:
        if math.dist(before, outline.points[-1]) > _SAME_POINT * (abs(x) + abs(y) + width + height):
            outline.line_to(before)
        _round(outline, corner, after, rx, ry)
    outline.closed = True
    return Shape([outline])


def _round(
    outline: Outline, corner: tuple[float, float], after: tuple[float, float], rx: float, ry: float
) -> None:
    """A quarter of the corner's ellipse, if it has one."""
    if rx == 0 or ry == 0:
        return
    if rx == ry:
        outline.bulges[len(outline.points) - 1] = _QUARTER
        outline.points.append(after)
    else:
        outline.curve_to(corner, after, weights=(1.0, _HALF_DIAGONAL, 1.0))


def _corner_radii(sizes: _Sizes, viewport: Viewport) -> tuple[float, float]:
    """Both corner radii of a rectangle; a missing or negative one takes the other's value."""
    rx = None if sizes["rx"] is None else viewport.across(sizes["rx"])
    ry = None if sizes["ry"] is None else viewport.along(sizes["ry"])
    rx = None if rx is not None and rx < 0 else rx
    ry = None if ry is not None and ry < 0 else ry
    first = rx if rx is not None else (ry or 0.0)
    second = ry if ry is not None else (rx or 0.0)
    return (first, second) if first > 0 and second > 0 else (0.0, 0.0)


def _circle(sizes: _Sizes, viewport: Viewport) -> Shape:
    x, y, r = viewport.across(sizes["cx"]), viewport.along(sizes["cy"]), viewport.slanted(sizes["r"])
    if not r > 0:
        return Shape([], _no_size(r))
    return Shape([Outline([(x + r, y), (x - r, y), (x + r, y)], bulges={0: 1.0, 1: 1.0}, closed=True)])


def _ellipse(sizes: _Sizes, viewport: Viewport) -> Shape:
    x, y = viewport.across(sizes["cx"]), viewport.along(sizes["cy"])
    rx, ry = viewport.across(sizes["rx"]), viewport.along(sizes["ry"])
    rx = ry if sizes["rx"] is None else rx  # "auto" takes the other's value (SVG 2, section 10.4)
    ry = rx if sizes["ry"] is None else ry
    if not (rx > 0 and ry > 0):
        return Shape([], _no_size(rx, ry))
    if rx == ry:
        outline = Outline([(x + rx, y), (x - rx, y), (x + rx, y)], bulges={0: 1.0, 1: 1.0})
    else:
        outline = Outline([(x + rx, y)])
        _round(outline, (x + rx, y + ry), (x, y + ry), rx, ry)
        _round(outline, (x - rx, y + ry), (x - rx, y), rx, ry)
        _round(outline, (x - rx, y - ry), (x, y - ry), rx, ry)
        _round(outline, (x + rx, y - ry), (x + rx, y), rx, ry)
    outline.closed = True
    return Shape([outline])


def _no_size(*sizes: float) -> Worded:
    return Worded("has a negative size") if min(sizes) < 0 else Worded("has a size of zero")


_LENGTHS = {
    "line": ("x1", "y1", "x2", "y2"),
    "rect": ("x", "y", "width", "height", "rx", "ry"),
    "circle": ("cx", "cy", "r"),
    "ellipse": ("cx", "cy", "rx", "ry"),
}
_MAKE = {"line": _line, "rect": _rect, "circle": _circle, "ellipse": _ellipse}
