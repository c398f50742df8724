"""The walk through an SVG document: from elements to figures.

Each element is visited at a `Place`: the map to millimetres, the style and the viewport it inherits, the
clips that apply, the layer. `use` visits its target again at another place, so the walk counts its visits
and its vertices and stops at a cap; a `use` that leads back to itself is left out with a finding. (SVG 2,
chapters 5, 7 and 8; CSS Masking Level 1 for clip paths.)

The same walk with `Place.geometry_only` collects bare geometry for clip paths and bounding boxes.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path as FilePath
from typing import ClassVar, NoReturn

from inlayfit.drawing import Figure, FillRule
from inlayfit.errors import HostileFileError
from inlayfit.formats import svg_style
from inlayfit.formats.svg_appearance import Appearance
from inlayfit.formats.svg_clip import Clip, applying, box_clip, merged_clip, tight_bounds
from inlayfit.formats.svg_css import StyleSheet
from inlayfit.formats.svg_document import MOST_ELEMENTS, Node
from inlayfit.formats.svg_expansion import NOT_DRAWN, expanded_size
from inlayfit.formats.svg_notes import Notes
from inlayfit.formats.svg_outline import Outline
from inlayfit.formats.svg_page import Page
from inlayfit.formats.svg_place import Place, conditions_hold, first_point, is_inside, spot
from inlayfit.formats.svg_shapes import SHAPE_TAGS, read_shape
from inlayfit.formats.svg_style import INITIAL, Style
from inlayfit.formats.svg_transform import parse_transform, parse_view_box, view_box_transform
from inlayfit.formats.svg_units import Viewport, parse_size
from inlayfit.geometry.path import Path
from inlayfit.geometry.transform import Transform
from inlayfit.wording import Worded

LARGEST_COORDINATE_MM = 1e6
MOST_VERTICES = 2_000_000
MOST_CURVES = 400_000
DEEPEST_PLACE = 160
_LABEL = "{http://www.inkscape.org/namespaces/inkscape}label"
_SKIPPED = {
    "text": ("text-skipped", Worded("is text, which has no outline of its own; it was left out")),
    "flowRoot": ("text-skipped", Worded("is text, which has no outline of its own; it was left out")),
    "image": ("image-skipped", Worded("is a picture; it was left out")),
    "foreignObject": ("foreign-skipped", Worded("holds content that is not SVG; it was left out")),
}
_ANIMATIONS = frozenset({"animate", "animateMotion", "animateTransform", "animateColor", "set"})


class Walker:
    """Walks one document.

    Attributes:
        visits: elements drawn, those drawn again by `use` counted again.
        hidden: elements that are not shown or painted with nothing.
    """

    def __init__(self, root: Node, source: FilePath, notes: Notes) -> None:
        self.root, self.source, self.notes = root, source, notes
        self.visits = 0
        self.hidden = 0
        self._vertices = self._curves = 0
        self._sheet = StyleSheet()
        self._ids: dict[str, Node] = {}
        self._look = Appearance(self._ids, notes)
        self._declared: dict[Node, dict[str, str]] = {}
        self._clip_cache: dict[tuple[Node, Transform, Viewport], Clip] = {}
        self._index()

    def _index(self) -> None:
        """Ids, style sheets, and what is never run."""
        for node in self.root.walk():
            if node.id:
                self._ids.setdefault(node.id, node)
            if node.tag == "style" and node.attributes.get("type", "text/css").strip() in ("", "text/css"):
                self._sheet.add(node.text)
            elif node.tag == "script":
                self.notes.add("script-ignored", Worded("{label} was not run.", label=node.label))
            elif node.tag in _ANIMATIONS:
                self.notes.add("animation-ignored", Worded("{label} was not played.", label=node.label))
        for selector in self._sheet.left_out:
            self.notes.add(
                "style-skipped",
                Worded("The style rule “{selector}” is not understood here.", selector=selector[:60]),
            )

    def declared(self, node: Node) -> dict[str, str]:
        """What an element states of its style, worked out once."""
        if node not in self._declared:
            self._declared[node] = svg_style.declared(node, self._sheet)
        return self._declared[node]

    # Elements

    def draw_root(self, page: Page, place: Place) -> None:
        """Draw the whole document on its page."""
        if expanded_size(self.root, self._ids) > MOST_ELEMENTS:
            self._refuse_expansion()
        self._look = replace(self._look, px_mm=page.px_mm)
        self._count_visit(place)
        own = self.declared(self.root)
        style = svg_style.computed(place.style, own)
        if style["display"].lower() == "none" or svg_style.fraction(style["opacity"]) <= 0:
            self.hidden += 1
            return
        place = self._clipped(self.root, replace(place, style=style, depth=1), own)
        self._look.note_effects(self.root, place)
        self.children(self.root, place)

    def visit(self, node: Node, place: Place) -> None:
        """Draw one element at its place."""
        if node.tag in NOT_DRAWN:
            return
        self._count_visit(place)
        own = self.declared(node)
        style = svg_style.computed(place.style, own)
        invisible = svg_style.fraction(style["opacity"]) <= 0 and not place.geometry_only
        if style["display"].lower() == "none" or invisible:
            self.hidden += 1
            return
        if not conditions_hold(node):
            self.notes.add(
                "alternative-skipped",
                Worded("{label} asks for what this reader does not offer.", label=node.label),
            )
            return
        transform = self._own_transform(node, style, place)
        if transform is None:
            return
        viewport = place.viewport
        if style["font-size"] != place.style["font-size"]:
            viewport = replace(viewport, font_px=svg_style.font_px(style["font-size"], viewport.font_px))
        if node.tag == "use":  # its x and y are the last part of its own transform (SVG 2, section 5.5)
            x, y = viewport.across(parse_size(own.get("x"))), viewport.along(parse_size(own.get("y")))
            transform = transform.after(Transform.shift(x, y))
        here = replace(place, transform=transform, style=style, viewport=viewport, depth=place.depth + 1)
        here = self._clipped(node, here, own)
        self._look.note_effects(node, here)
        draw = self._DRAW.get(node.tag)
        if draw is not None:
            draw(self, node, here)
        elif node.tag in SHAPE_TAGS:
            self._shape(node, here, own)
        else:
            code, why = _SKIPPED.get(
                node.tag, ("element-unknown", Worded("is not an element of SVG; it was left out"))
            )
            self.notes.add(code, Worded("{label} {why}.", label=node.label, why=why), spot(node, here))

    def children(self, node: Node, place: Place) -> None:
        """Draw everything inside."""
        for child in node.children:
            self.visit(child, place)

    def _group(self, node: Node, place: Place) -> None:
        layer = node.attributes.get(_LABEL, "").strip() or node.id or place.layer
        self.children(node, replace(place, layer=layer))

    def _switch(self, node: Node, place: Place) -> None:
        for child in node.children:
            if child.tag not in NOT_DRAWN and conditions_hold(child):
                self.visit(child, place)
                return

    def _use(self, node: Node, place: Place) -> None:
        target = self._target(node, node.href, place)
        if target is None:
            return
        if target in place.using or is_inside(node, target):
            self.notes.add(
                "reference-loops",
                Worded("{label} leads back to itself; it was left out.", label=node.label),
                spot(node, place),
            )
            return
        own = self.declared(node)
        moved = replace(place, name=node.id or place.name, using=(*place.using, target))
        if target.tag == "symbol":
            self._symbol(target, moved, own)
        elif target.tag == "svg":
            self._inner_svg(target, moved, own)
        else:
            self.visit(target, moved)

    def _symbol(self, node: Node, place: Place, sizes: dict[str, str]) -> None:
        """A symbol has no place of its own: `use` gives it a viewport."""
        own = self.declared(node)
        style = svg_style.computed(place.style, own)
        if style["display"].lower() == "none":
            self.hidden += 1
            return
        transform = self._own_transform(node, style, place)
        if transform is not None:
            here = replace(place, style=style, transform=transform, depth=place.depth + 1)
            self._in_viewport(node, self._clipped(node, here, own), {**own, **_sides_of(sizes)})

    def _inner_svg(self, node: Node, place: Place, sizes: dict[str, str] | None = None) -> None:
        """An `svg` inside another, or one that a `use` refers to and gives a size."""
        own = self.declared(node)
        if sizes is not None:
            place = replace(place, style=svg_style.computed(place.style, own), depth=place.depth + 1)
            self._count_visit(place)
        self._in_viewport(node, place, {**own, **_sides_of(sizes or {})})

    def _in_viewport(self, node: Node, place: Place, sizes: dict[str, str]) -> None:
        """Draw the children of `svg` or `symbol` in a viewport of its own (SVG 2, section 8.2)."""
        outer = place.viewport
        whole = parse_size("100%")
        x, y = outer.across(parse_size(sizes.get("x"))), outer.along(parse_size(sizes.get("y")))
        width = outer.across(parse_size(sizes.get("width")) or whole)
        height = outer.along(parse_size(sizes.get("height")) or whole)
        if not (width > 0 and height > 0):
            self.notes.add(
                "shape-empty",
                Worded("{label} has a size of zero; nothing in it shows.", label=node.label),
                spot(node, place),
            )
            return
        to_parent = Transform.shift(x, y)
        clips = place.clips
        if place.style["overflow"].lower() not in ("visible", "auto"):
            clips = (*clips, box_clip((x, y, width, height), place.transform))
        view_box = parse_view_box(node.attributes.get("viewBox"))
        if view_box is not None:
            aspect = node.attributes.get("preserveAspectRatio")
            to_parent = to_parent.after(view_box_transform(view_box, width, height, aspect))
            width, height = view_box[2:]
        viewport = replace(outer, width=width, height=height)
        transform = place.transform.after(to_parent)
        self.children(node, replace(place, transform=transform, viewport=viewport, clips=clips))

    # Shapes

    def _shape(self, node: Node, place: Place, own: dict[str, str]) -> None:
        if place.style["visibility"].lower() in ("hidden", "collapse"):
            self.hidden += 1
            return
        shape = read_shape(node, {**node.attributes, **own}, place.viewport)
        if shape.flaw:
            code = "path-broken" if shape.broken else "shape-empty"
            start = first_point(shape.outlines, place) or spot(node, place)
            self.notes.add(code, Worded("{label} {flaw}.", label=node.label, flaw=shape.flaw), start)
        if not shape.outlines:
            return
        if place.geometry_only:
            rule = svg_style.fill_rule(place.style["clip-rule"])
            self._emit(node, shape.outlines, place, rule, None)
            return
        filled = node.tag != "line" and self._look.paints(node, "fill", place)
        width = self._look.stroke_width(node, place)
        if not filled and width is None:
            self.hidden += 1
            return
        if width is not None and not any(_can_enclose(outline) for outline in shape.outlines):
            filled = False
        rule = svg_style.fill_rule(place.style["fill-rule"])
        self._emit(node, shape.outlines, place, rule if filled else None, width)

    def _emit(
        self, node: Node, outlines: list[Outline], place: Place, fill: FillRule | None, width: float | None
    ) -> None:
        self._count_size(outlines)
        paths = tuple(outline.placed(place.transform) for outline in outlines)
        if not all(_is_sane(path) for path in paths):
            message = Worded(
                "{label} reaches further than {most} m; it was left out.",
                label=node.label,
                most=round(LARGEST_COORDINATE_MM / 1000),
            )
            self.notes.add("coordinate-huge", message)
            return
        figure = Figure(paths, place.layer, node.id or place.name, fill=fill)
        if width is not None:
            figure = self._look.with_line(figure, width, place)
        clips = applying(place.clips, figure) if place.clips else ()
        place.sink.append(replace(figure, clip=clips) if clips else figure)

    # Clip paths

    def _clipped(self, node: Node, place: Place, own: dict[str, str]) -> Place:
        """The place with the element's own clip path added."""
        if own.get("clip-path", "none") == "none":
            return place
        clips = self._named_clips(place.style["clip-path"], node, node, place)
        return replace(place, clips=(*place.clips, *clips)) if clips else place

    def _named_clips(self, value: str, owner: Node, node: Node, place: Place) -> tuple[Clip, ...]:
        """The clips that a `clip-path` of `owner` asks for, to be applied to `node` at its place.

        A clip path may be clipped itself: by a clip path in the user units of the same element.
        """
        if value.lower() == "none":
            return ()
        refers = svg_style.reference(value)
        target = None if refers is None else self._ids.get(refers[0].removeprefix("#"))
        if target is None or target.tag != "clipPath":
            why = Worded("which is not in the file") if refers else Worded("in a form that is not read here")
            self.notes.add(
                "clip-ignored",
                Worded("{label} has a clip path {why}.", label=owner.label, why=why),
                spot(node, place),
            )
            return ()
        if target in place.using:
            self.notes.add(
                "reference-loops", Worded("{label} clips itself; it was left out.", label=target.label)
            )
            return ()
        within = replace(place, using=(*place.using, target))
        outer = self._named_clips(self.declared(target).get("clip-path", "none"), target, node, within)
        return (self._clip(target, node, within), *outer)

    def _clip(self, clip_path: Node, node: Node, place: Place) -> Clip:
        by_box = clip_path.attributes.get("clipPathUnits", "").strip() == "objectBoundingBox"
        transform = place.transform
        if by_box:
            x0, y0, x1, y1 = self._bounding_box(node, place)
            transform = transform.after(Transform(a=x1 - x0, d=y1 - y0, e=x0, f=y0))
        key = (clip_path, transform, place.viewport)
        if key not in self._clip_cache:
            self._clip_cache[key] = self._new_clip(clip_path, replace(place, transform=transform))
        return self._clip_cache[key]

    def _new_clip(self, clip_path: Node, place: Place) -> Clip:
        style = self._style_in_document(clip_path)
        transform = self._own_transform(clip_path, style, place)
        collected: list[Figure] = []
        if transform is None:
            return merged_clip(collected)
        inside = replace(
            place,
            transform=transform,
            style=style,
            sink=collected,
            clips=(),
            depth=place.depth + 1,
            geometry_only=True,
        )
        for child in clip_path.children:
            if child.tag in SHAPE_TAGS or child.tag in ("use", "text"):
                self.visit(child, inside)
        return merged_clip(collected)

    def _style_in_document(self, node: Node) -> Style:
        """The style of an element where it stands, not where it is used."""
        chain: list[Node] = []
        step: Node | None = node
        while step is not None:
            chain.append(step)
            step = step.parent
        style = INITIAL
        for ancestor in reversed(chain):
            style = svg_style.computed(style, self.declared(ancestor))
        return style

    def _bounding_box(self, node: Node, place: Place) -> tuple[float, float, float, float]:
        """The box around an element's bare geometry, in its own user units."""
        collected: list[Figure] = []
        bare = replace(place, transform=Transform(), sink=collected, clips=(), geometry_only=True)
        draw = self._DRAW.get(node.tag)
        if draw is not None:
            draw(self, node, bare)
        elif node.tag in SHAPE_TAGS:
            self._shape(node, bare, self.declared(node))
        return tight_bounds(collected)

    # Small parts

    def _own_transform(self, node: Node, style: Style, place: Place) -> Transform | None:
        """The map of an element's user units, or None where it flattens everything."""
        text = style["transform"]
        if not text:
            return place.transform
        own = parse_transform(text)
        if own is None:
            self.notes.add(
                "transform-broken",
                Worded("{label} has a broken transform “{text}”.", label=node.label, text=text[:40]),
                spot(node, place),
            )
            return place.transform
        result = place.transform.after(own)
        if result.determinant == 0 or not math.isfinite(result.determinant):
            self.notes.add(
                "shape-empty",
                Worded("{label} is flattened to nothing by its transform.", label=node.label),
                spot(node, place),
            )
            return None
        return result

    def _target(self, node: Node, href: str | None, place: Place) -> Node | None:
        if href is None or not href.startswith("#"):
            code = "reference-missing" if not href else "reference-outside"
            why = (
                Worded("refers to “{href}” outside of this file", href=href[:60])
                if href
                else Worded("refers to nothing")
            )
            self.notes.add(
                code, Worded("{label} {why}; it was left out.", label=node.label, why=why), spot(node, place)
            )
            return None
        target = self._ids.get(href[1:])
        if target is None:
            message = Worded(
                "{label} refers to “{href}”, which is not in the file; it was left out.",
                label=node.label,
                href=href[:60],
            )
            self.notes.add("reference-missing", message, spot(node, place))
        return target

    def _count_visit(self, place: Place) -> None:
        self.visits += 1
        if self.visits > MOST_ELEMENTS:
            self._refuse_expansion()
        if place.depth > DEEPEST_PLACE:
            self._refuse(Worded("nests elements and references more than {most} deep", most=DEEPEST_PLACE))

    def _count_size(self, outlines: list[Outline]) -> None:
        self._vertices += sum(len(outline.points) for outline in outlines)
        self._curves += sum(len(outline.curves) for outline in outlines)
        if self._vertices > MOST_VERTICES or self._curves > MOST_CURVES:
            self._refuse(
                Worded(
                    "has more than {vertices} vertices or {curves} curves",
                    vertices=MOST_VERTICES,
                    curves=MOST_CURVES,
                )
            )

    def _refuse_expansion(self) -> NoReturn:
        self._refuse(
            Worded("draws more than {most} elements once its references are followed", most=MOST_ELEMENTS)
        )

    def _refuse(self, why: Worded) -> NoReturn:
        message = Worded("“{name}” {why}; save only the outlines you need.", name=self.source.name, why=why)
        raise HostileFileError(message, path=self.source)

    _DRAW: ClassVar[dict[str, Callable[[Walker, Node, Place], None]]] = {
        "g": _group,
        "a": _group,
        "switch": _switch,
        "use": _use,
        "svg": _inner_svg,
    }


def _sides_of(sizes: dict[str, str]) -> dict[str, str]:
    """Width and height where a `use` states them; its place was applied already."""
    return {name: sizes[name] for name in ("width", "height") if sizes.get(name, "auto") != "auto"}


def _can_enclose(outline: Outline) -> bool:
    return len(outline.points) > 2 or bool(outline.curves) or bool(outline.bulges)


def _is_sane(path: Path) -> bool:
    """Whether the path stays within bounds; a number that is not finite does not."""
    return all(abs(value) <= LARGEST_COORDINATE_MM for value in path.bounds())
