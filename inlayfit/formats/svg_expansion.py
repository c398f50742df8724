"""How large a document grows once its references are followed, worked out without following them.

A `use` of a group of ten `use` of a group of ten, twenty levels deep, is a small file that draws 10^20
elements. Its size is a sum over the elements of the file, each worked out once, so it is known before the
first element is drawn.
"""

from __future__ import annotations

from collections.abc import Mapping

from inlayfit.formats.svg_document import Node

NOT_DRAWN = frozenset(
    {
        "defs",
        "symbol",
        "clipPath",
        "mask",
        "marker",
        "pattern",
        "linearGradient",
        "radialGradient",
        "meshgradient",
        "hatch",
        "solidcolor",
        "filter",
        "style",
        "title",
        "desc",
        "metadata",
        "script",
        "animate",
        "animateMotion",
        "animateTransform",
        "animateColor",
        "set",
        "discard",
        "mpath",
        "view",
        "cursor",
        "font",
        "font-face",
        "glyph",
        "missing-glyph",
        "color-profile",
        "stop",
    }
)
"""Elements that show only where something refers to them, or never."""


def expanded_size(root: Node, ids: Mapping[str, Node]) -> int:
    """How many elements are drawn; a reference that leads back to itself counts nothing."""
    sizes: dict[Node, int] = {}
    begun: set[Node] = set()
    waiting = [(root, False)]
    while waiting:
        node, inside_done = waiting.pop()
        if inside_done:
            sizes[node] = 1 + sum(sizes.get(inner, 0) for inner in _drawn_inside(node, ids))
        elif node not in begun:
            begun.add(node)
            waiting.append((node, True))
            waiting.extend((inner, False) for inner in _drawn_inside(node, ids))
    return sizes[root]


def _drawn_inside(node: Node, ids: Mapping[str, Node]) -> list[Node]:
    inside = [child for child in node.children if child.tag not in NOT_DRAWN]
    if node.tag == "use" and node.href is not None:
        target = ids.get(node.href.removeprefix("#"))
        if target is not None:
            inside.append(target)
    return inside
