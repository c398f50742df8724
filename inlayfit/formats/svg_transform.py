"""Transform lists, view boxes and `preserveAspectRatio` (SVG 2, chapter 8; CSS Transforms Level 1)."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Sequence

from inlayfit.formats.svg_units import NUMBER
from inlayfit.geometry.transform import Transform

_CALL = re.compile(r"\s*,?\s*([a-zA-Z]+)\s*\(([^()]*)\)\s*")
_ARGUMENT = re.compile(rf"\s*,?\s*({NUMBER})\s*([a-zA-Z%]*)")
_DEGREES = {"": 1.0, "deg": 1.0, "rad": 180 / math.pi, "grad": 0.9, "turn": 360.0}
_LENGTHS = {"": 1.0, "px": 1.0, "mm": 960 / 254, "cm": 9600 / 254, "in": 96.0, "pt": 96 / 72, "pc": 16.0}
_NUMBERS = {"": 1.0}

Box = tuple[float, float, float, float]
"""x, y, width, height."""


def parse_transform(text: str) -> Transform | None:
    """The map a transform list stands for, or None if the list is broken.

    The last function in the list acts first. A number or angle that is not finite breaks the list.
    """
    result = Transform()
    position = 0
    text = text.strip()
    if text == "none":
        return result
    while position < len(text):
        call = _CALL.match(text, position)
        step = None if call is None else _one_function(call[1], call[2])
        if call is None or step is None:
            return None
        result = result.after(step)
        position = call.end()
    return result


def _one_function(name: str, inside: str) -> Transform | None:
    if name.lower() not in _FUNCTIONS:
        return None
    make, counts, units = _FUNCTIONS[name.lower()]
    values: list[float] = []
    position = 0
    inside = inside.strip()
    while position < len(inside):
        argument = _ARGUMENT.match(inside, position)
        scale = None if argument is None else units.get(argument[2].lower())
        if argument is None or scale is None:
            return None
        values.append(float(argument[1]) * scale)
        position = argument.end()
    if len(values) not in counts or not all(math.isfinite(v) for v in values):
        return None
    return make(values)


def _turn(values: Sequence[float]) -> Transform:
    turn = Transform.turn(math.radians(values[0]))
    if len(values) == 1:
        return turn
    x, y = values[1:]
    return Transform.shift(x, y).after(turn).after(Transform.shift(-x, -y))


def _shift(values: Sequence[float]) -> Transform:
    return Transform.shift(values[0], values[1] if len(values) > 1 else 0.0)


_Maker = Callable[[Sequence[float]], Transform]
_FUNCTIONS: dict[str, tuple[_Maker, tuple[int, ...], dict[str, float]]] = {
    "matrix": (lambda v: Transform(*v), (6,), _NUMBERS),
    "translate": (_shift, (1, 2), _LENGTHS),
    "translatex": (lambda v: Transform.shift(v[0], 0.0), (1,), _LENGTHS),
    "translatey": (lambda v: Transform.shift(0.0, v[0]), (1,), _LENGTHS),
    "scale": (lambda v: Transform.scale(*v), (1, 2), _NUMBERS),
    "scalex": (lambda v: Transform.scale(v[0], 1.0), (1,), _NUMBERS),
    "scaley": (lambda v: Transform.scale(1.0, v[0]), (1,), _NUMBERS),
    "rotate": (_turn, (1, 3), _DEGREES),
    "skewx": (lambda v: Transform(c=math.tan(math.radians(v[0]))), (1,), _DEGREES),
    "skewy": (lambda v: Transform(b=math.tan(math.radians(v[0]))), (1,), _DEGREES),
}


def parse_view_box(text: str | None) -> Box | None:
    """The view box, or None if there is none or it is broken or has no area."""
    if text is None:
        return None
    numbers = re.fullmatch(
        rf"\s*({NUMBER})(?:\s+,?\s*|\s*,\s*)({NUMBER})(?:\s+,?\s*|\s*,\s*)({NUMBER})"
        rf"(?:\s+,?\s*|\s*,\s*)({NUMBER})\s*",
        text,
    )
    if numbers is None:
        return None
    x, y, width, height = (float(value) for value in numbers.groups())
    usable = width > 0 and height > 0 and all(math.isfinite(v) for v in (x, y, width, height))
    return (x, y, width, height) if usable else None


_ALIGN = {"min": 0.0, "mid": 0.5, "max": 1.0}
_ALIGN_WORD = re.compile(r"x(min|mid|max)y(min|mid|max)")


def view_box_transform(view_box: Box, width: float, height: float, aspect: str | None) -> Transform:
    """The map from view box to a viewport of this width and height with its corner at (0, 0).

    Without a usable `preserveAspectRatio` it is "xMidYMid meet" (SVG 2, section 8.6).
    """
    x, y, box_width, box_height = view_box
    scale_x, scale_y = width / box_width, height / box_height
    words = (aspect or "").lower().split()
    words = words[1:] if words[:1] == ["defer"] else words
    if words[:1] == ["none"]:
        return Transform.scale(scale_x, scale_y).after(Transform.shift(-x, -y))
    align = _ALIGN_WORD.fullmatch(words[0]) if words else None
    slices = align is not None and words[1:2] == ["slice"]
    at_x, at_y = (_ALIGN[align[1]], _ALIGN[align[2]]) if align else (0.5, 0.5)
    scale = max(scale_x, scale_y) if slices else min(scale_x, scale_y)
    shift = Transform.shift((width - box_width * scale) * at_x, (height - box_height * scale) * at_y)
    return shift.after(Transform.scale(scale)).after(Transform.shift(-x, -y))
