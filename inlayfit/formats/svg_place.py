"""Where and how an element of an SVG document is drawn, and small questions about it."""

from __future__ import annotations

from dataclasses import dataclass

from inlayfit.drawing import Figure
from inlayfit.formats.svg_clip import Clip
from inlayfit.formats.svg_document import Node
from inlayfit.formats.svg_outline import Outline
from inlayfit.formats.svg_style import Style
from inlayfit.formats.svg_units import Viewport, parse_size
from inlayfit.geometry.transform import Transform


@dataclass(frozen=True, slots=True)
class Place:
    """Where and how an element is drawn.

    Attributes:
        transform: its user units to millimetres.
        style: what it inherits, or, once it is visited, its own.
        viewport: what percentages refer to.
        sink: where figures go.
        layer: the group around it.
        name: of the `use` that draws it, for shapes without an id.
        clips: what hides the rest.
        using: the targets of references that led here.
        depth: elements and references around it.
        geometry_only: whether only bare geometry is wanted, for a clip path or a bounding box.
    """

    transform: Transform
    style: Style
    viewport: Viewport
    sink: list[Figure]
    layer: str = "0"
    name: str = ""
    clips: tuple[Clip, ...] = ()
    using: tuple[Node, ...] = ()
    depth: int = 0
    geometry_only: bool = False


def conditions_hold(node: Node) -> bool:
    """Whether the conditional attributes allow the element; the language is taken as English."""
    attributes = node.attributes
    if attributes.get("requiredExtensions") is not None:
        return False
    languages = attributes.get("systemLanguage")
    if languages is None:
        return True
    return any(lang.strip().lower().partition("-")[0] == "en" for lang in languages.split(","))


def is_inside(node: Node, other: Node) -> bool:
    """Whether the element is the other one or lies inside it."""
    step: Node | None = node
    while step is not None:
        if step is other:
            return True
        step = step.parent
    return False


def first_point(outlines: list[Outline], place: Place) -> tuple[float, float] | None:
    """Where an element's line starts, in millimetres; None if it has none."""
    return _mapped(outlines[0].points[0], place) if outlines else None


def spot(node: Node, place: Place) -> tuple[float, float]:
    """Where an element is, near enough to lead there: its x and y, its centre, or its origin."""
    own = {} if node.tag == "use" else node.attributes  # the place of a `use` holds its x and y already
    x = place.viewport.across(parse_size(own.get("x", own.get("cx", own.get("x1")))))
    y = place.viewport.along(parse_size(own.get("y", own.get("cy", own.get("y1")))))
    return _mapped((x, y), place)


def _mapped(point: tuple[float, float], place: Place) -> tuple[float, float]:
    t = place.transform
    return t.a * point[0] + t.c * point[1] + t.e, t.b * point[0] + t.d * point[1] + t.f
