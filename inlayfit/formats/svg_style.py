"""The style of an element: what it says itself, what rules say of it, and what it inherits.

Only properties that decide what is painted are kept. The result is a frozen dictionary of texts; `Paint`
and the functions below read them.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping

from inlayfit.drawing import Cap, FillRule, Join
from inlayfit.formats.svg_css import StyleSheet, parse_declarations
from inlayfit.formats.svg_document import Node
from inlayfit.formats.svg_units import NUMBER, Size, parse_size

Style = Mapping[str, str]

_INHERITED = {
    "clip-rule": "nonzero",
    "color": "black",
    "fill": "black",
    "fill-opacity": "1",
    "fill-rule": "nonzero",
    "font-size": "16px",
    "marker-end": "none",
    "marker-mid": "none",
    "marker-start": "none",
    "stroke": "none",
    "stroke-dasharray": "none",
    "stroke-dashoffset": "0",
    "stroke-linecap": "butt",
    "stroke-linejoin": "miter",
    "stroke-miterlimit": "4",
    "stroke-opacity": "1",
    "stroke-width": "1",
    "visibility": "visible",
}
_OWN = {
    "clip-path": "none",
    "display": "inline",
    "filter": "none",
    "mask": "none",
    "opacity": "1",
    "overflow": "",
    "transform": "",
    "vector-effect": "none",
}
_GEOMETRY = ("x", "y", "width", "height", "cx", "cy", "r", "rx", "ry")
_KNOWN = frozenset({*_INHERITED, *_OWN, *_GEOMETRY})
_VARIABLE = re.compile(r"var\(\s*--[\w-]+\s*(?:,\s*([^()]*(?:\([^()]*\))?[^()]*))?\)")
INITIAL: Style = {**_INHERITED, **_OWN}


def declared(node: Node, sheet: StyleSheet) -> dict[str, str]:
    """The properties an element states or is told by rules, the strongest of each."""
    found = {name: value.strip() for name, value in node.attributes.items() if name in _KNOWN}
    found = {name: value for name, value in found.items() if value}
    rules = sheet.matching(node)
    inline, pressing = parse_declarations(node.attributes.get("style", ""))
    for rule in rules:
        found.update(rule.plain)
    found.update(inline)
    for rule in rules:
        found.update(rule.important)
    found.update(pressing)
    if "marker" in found:
        found = {**dict.fromkeys(("marker-start", "marker-mid", "marker-end"), found["marker"]), **found}
    return found


def computed(parent: Style, own: Mapping[str, str]) -> Style:
    """The style of an element: declared values where usable, else inherited or initial ones."""
    if not own and all(parent[name] == value for name, value in _OWN.items()):
        return parent
    style = {name: parent[name] for name in _INHERITED} | _OWN
    for name, value in own.items():
        if name not in style:
            continue
        value = _VARIABLE.sub(lambda match: match[1] or "", value).strip() if "var(" in value else value
        word = value.lower()
        if word in ("inherit", "unset", "initial"):
            from_parent = word == "inherit" or (word == "unset" and name in _INHERITED)
            style[name] = parent[name] if from_parent else INITIAL[name]
        elif _usable(name, value):
            style[name] = value
    if "em" in style["font-size"] or "%" in style["font-size"]:
        style["font-size"] = f"{font_px(style['font-size'], font_px(parent['font-size'], 16.0))}px"
    return style


def _usable(name: str, value: str) -> bool:
    """Whether a value can be read; one that cannot is as if it were not there."""
    if name in ("fill", "stroke"):
        return bool(_PAINT.fullmatch(value))
    if name == "stroke-width":
        size = parse_size(value)
        return size is not None and size.number >= 0
    return bool(value)


def font_px(text: str, around: float) -> float:
    """The font size in px; the keywords of CSS are taken as its default."""
    size = parse_size(text)
    return 16.0 if size is None else size.px(around, around)


_PAINT = re.compile(
    r"[a-zA-Z-]+|\#(?:[0-9a-fA-F]{3,4}|[0-9a-fA-F]{6}|[0-9a-fA-F]{8})"
    r"|(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color|icc-color)\([^()]*\)(?:\s+icc-color\([^()]*\))?"
    r"|url\([^()]*\)\s*.*",
    re.DOTALL,
)
_REFERENCE = re.compile(r"url\(\s*[\"']?([^\"')]*)[\"']?\s*\)\s*(.*)", re.DOTALL)
_ALPHA = re.compile(rf"(?:/|(?:,[^,]*,[^,]*,))\s*({NUMBER}%?)\s*\)")


def is_clear(colour: str, current: str) -> bool:
    """Whether a colour paints nothing: none, transparent, or an alpha of zero."""
    word = colour.lower()
    if word == "currentcolor":
        return current.lower() != "currentcolor" and is_clear(current, "black")
    if word in ("none", "transparent"):
        return True
    if word.startswith("#"):
        return (len(word) == 5 and word[4] == "0") or (len(word) == 9 and word[7:] == "00")
    alpha = _ALPHA.search(word)
    return alpha is not None and float(alpha[1].rstrip("%")) <= 0


def reference(value: str) -> tuple[str, str] | None:
    """Target and fallback of `url(#target) fallback`, or None if the value is no reference."""
    match = _REFERENCE.fullmatch(value)
    return None if match is None else (match[1].strip(), match[2].strip())


def fraction(text: str, default: float = 1.0) -> float:
    """An opacity: a number or a percentage."""
    size = parse_size(text)
    if size is None or size.unit not in ("", "%"):
        return default
    return size.number / 100 if size.unit == "%" else size.number


def fill_rule(text: str) -> FillRule:
    """The rule, "nonzero" unless it says "evenodd"."""
    return FillRule.EVENODD if text.lower() == "evenodd" else FillRule.NONZERO


def cap(text: str) -> Cap:
    """The ends of a line."""
    word = text.lower()
    return Cap(word) if word in set(Cap) else Cap.BUTT


def join(text: str) -> Join:
    """The corners of a line; SVG 2's other kinds are optional and taken as their fallback, miter."""
    word = text.lower()
    return Join(word) if word in set(Join) else Join.MITER


def miter_limit(text: str) -> float:
    """At least 1, else SVG's initial 4."""
    size = parse_size(text)
    return size.number if size is not None and size.unit == "" and size.number >= 1 else 4.0


def dash_sizes(text: str) -> tuple[Size, ...]:
    """The dash pattern, an odd number of lengths doubled; empty if unbroken or not usable."""
    if text.lower() == "none":
        return ()
    sizes = [parse_size(piece) for piece in re.split(r"[\s,]+", text.strip())]
    good = [size for size in sizes if size is not None and math.isfinite(size.number) and size.number >= 0]
    if len(good) != len(sizes) or not any(size.number for size in good):
        return ()
    return tuple(good * 2 if len(good) % 2 else good)
