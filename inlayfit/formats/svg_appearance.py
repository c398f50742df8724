"""How an element is painted: whether its fill and its line show, and what its line looks like.

What is seen but not applied (masks, filters, markers, the insides of patterns and gradients) is noted here.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace

from inlayfit.drawing import Figure, LineStyle
from inlayfit.formats import svg_style
from inlayfit.formats.svg_document import Node
from inlayfit.formats.svg_notes import Notes
from inlayfit.formats.svg_place import Place, spot
from inlayfit.formats.svg_units import parse_size
from inlayfit.geometry.transform import Transform
from inlayfit.wording import Worded


@dataclass(frozen=True, slots=True)
class Appearance:
    """Looks at the style of elements of one document.

    Attributes:
        ids: elements by id, for paint servers.
        px_mm: millimetres in one px of the file, for lines that do not scale.
    """

    ids: Mapping[str, Node]
    notes: Notes
    px_mm: float = 1.0

    def with_line(self, figure: Figure, width: float, place: Place) -> Figure:
        """The figure with its line, `width` in user units."""
        style, viewport = place.style, place.viewport
        line = LineStyle(
            svg_style.cap(style["stroke-linecap"]),
            svg_style.join(style["stroke-linejoin"]),
            svg_style.miter_limit(style["stroke-miterlimit"]),
            tuple(viewport.slanted(size) for size in svg_style.dash_sizes(style["stroke-dasharray"])),
            viewport.slanted(parse_size(style["stroke-dashoffset"])),
        )
        fixed = style["vector-effect"].lower() == "non-scaling-stroke"
        scale = Transform.scale(self.px_mm) if fixed else place.transform
        width *= abs(scale.determinant) ** 0.5
        return replace(figure, stroke_width_mm=width, line=line.moved(scale))

    def stroke_width(self, node: Node, place: Place) -> float | None:
        """Width in user units, or None where no line is painted."""
        width = place.viewport.slanted(parse_size(place.style["stroke-width"]), 1.0)
        if not (width > 0 and math.isfinite(width)) or not self.paints(node, "stroke", place):
            return None
        return width

    def paints(self, node: Node, what: str, place: Place) -> bool:
        """Whether fill or stroke paints anything; paint servers are looked up and noted."""
        style = place.style
        if svg_style.fraction(style[f"{what}-opacity"]) <= 0:
            return False
        refers = svg_style.reference(style[what])
        if refers is None:
            return not svg_style.is_clear(style[what], style["color"])
        target, fallback = refers
        server = self.ids.get(target.removeprefix("#"))
        if server is None or not target.startswith("#"):
            return bool(fallback) and not svg_style.is_clear(fallback, style["color"])
        if server.tag in ("linearGradient", "radialGradient"):
            self.notes.add(
                "gradient-as-fill",
                Worded("{label} is painted with a gradient.", label=node.label),
                spot(node, place),
            )
            return bool(server.href) or any(child.tag == "stop" for child in server.children)
        if server.tag == "pattern":
            self.notes.add(
                "pattern-as-fill",
                Worded("{label} is painted with a pattern.", label=node.label),
                spot(node, place),
            )
        return True

    def note_effects(self, node: Node, place: Place) -> None:
        """Masks, filters and markers: seen, not applied, said."""
        style = place.style
        if place.geometry_only:
            return
        for name in ("mask", "filter"):
            if style[name].lower() != "none":
                self.notes.add(
                    f"{name}-ignored",
                    Worded("{label} has a mask, which is not applied.", label=node.label)
                    if name == "mask"
                    else Worded("{label} has a filter, which is not applied.", label=node.label),
                    spot(node, place),
                )
        marked = any(style[f"marker-{end}"].lower() != "none" for end in ("start", "mid", "end"))
        if marked and node.tag in ("path", "line", "polyline", "polygon"):
            self.notes.add(
                "marker-ignored",
                Worded("{label} has markers, which are left out.", label=node.label),
                spot(node, place),
            )
