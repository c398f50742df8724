"""Path data: the text of a `d` attribute, read by the grammar of SVG 2, section 9.3.9.

An error ends the path there: what came before it is drawn (SVG 2, section 9.5.4), and the reader says so.
Numbers may touch each other where that is unambiguous ("1.5.5-2" is three), the two flags of an arc need no
separator at all ("a1 1 0 01.5.5").
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from inlayfit.errors import HostileFileError
from inlayfit.formats.svg_outline import Outline, Point
from inlayfit.formats.svg_units import NUMBER
from inlayfit.wording import Worded

MOST_SEGMENTS = 1_000_000
_COMMAND = re.compile(r"\s*([MmZzLlHhVvCcSsQqTtAa])")
_SEPARATOR = r"(?>\s*,?\s*)"
# Atomic groups: a long list that ends in an error is not tried again in shorter bites.
_STEP = re.compile(rf"\s*([MmLlHhVvCcSsQqTt])\s*(?>{NUMBER})(?>{_SEPARATOR}(?>{NUMBER}))*+\s*")
_ONE_NUMBER = re.compile(NUMBER)
_ARC = re.compile(
    rf"\s*,?\s*(?P<rx>{NUMBER}){_SEPARATOR}(?P<ry>{NUMBER}){_SEPARATOR}(?P<turn>{NUMBER}){_SEPARATOR}"
    rf"(?P<large>[01]){_SEPARATOR}(?P<left>[01]){_SEPARATOR}(?P<x>{NUMBER}){_SEPARATOR}(?P<y>{NUMBER})\s*"
)


@dataclass(slots=True)
class PathData:
    """What was read.

    Attributes:
        outlines: its contours.
        error_at: character number of the first error, or None.
    """

    outlines: list[Outline] = field(default_factory=list)
    error_at: int | None = None


class _Pen:
    """Where the pen is, and what it drew."""

    def __init__(self) -> None:
        self.outlines: list[Outline] = []
        self.x = self.y = 0.0
        self.start: Point = (0.0, 0.0)
        self.current: Outline | None = None
        self.last_control: Point | None = None
        self.last_kind = ""
        self._segments = 0

    def count(self, segments: int) -> None:
        """Count what is drawn, before it takes memory."""
        self._segments += segments
        self.check(self._segments)

    def check(self, segments: int) -> None:
        """Refuse a path of more segments than a drawing can need; a curve counts as several."""
        if segments > MOST_SEGMENTS:
            raise HostileFileError(
                Worded(
                    "One path of the drawing has more than {most} pieces (a curve counts as "
                    "three); simplify it in the drawing program and save it again.",
                    most=MOST_SEGMENTS,
                )
            )

    def outline(self) -> Outline:
        """The contour under the pen; a new one after a closing or a move."""
        if self.current is None:
            self.current = Outline([(self.x, self.y)])
            self.outlines.append(self.current)
        return self.current

    def move(self, x: float, y: float) -> None:
        self.x, self.y = x, y
        self.start = (x, y)
        self.current = None

    def close(self) -> None:
        self.outline().closed = True
        self.x, self.y = self.start
        self.current = None

    def lines(self, points: Sequence[Point]) -> None:
        self.outline().points.extend(points)
        self.x, self.y = points[-1]

    def curve(self, *rest: Point) -> None:
        self.outline().curve_to(*rest)
        self.last_control = rest[-2]
        self.x, self.y = rest[-1]

    def mirrored_control(self, kinds: str) -> Point:
        """The last control point mirrored at the pen, or the pen if the last command was of another kind."""
        if self.last_control is None or self.last_kind not in kinds:
            return (self.x, self.y)
        return (2 * self.x - self.last_control[0], 2 * self.y - self.last_control[1])


def _pairs(pen: _Pen, values: list[float], relative: bool) -> list[Point]:
    """Points from x y x y; relative ones each count from the one before."""
    xs, ys = values[::2], values[1::2]
    if not relative:
        return list(zip(xs, ys, strict=True))
    x, y = pen.x, pen.y
    points: list[Point] = []
    for dx, dy in zip(xs, ys, strict=True):
        x += dx
        y += dy
        points.append((x, y))
    return points


def _move(pen: _Pen, values: list[float], relative: bool) -> None:
    points = _pairs(pen, values, relative)
    pen.move(*points[0])
    if len(points) > 1:
        pen.lines(points[1:])


def _line(pen: _Pen, values: list[float], relative: bool) -> None:
    pen.lines(_pairs(pen, values, relative))


def _horizontal(pen: _Pen, values: list[float], relative: bool) -> None:
    for value in values:
        pen.lines([(pen.x + value if relative else value, pen.y)])


def _vertical(pen: _Pen, values: list[float], relative: bool) -> None:
    for value in values:
        pen.lines([(pen.x, pen.y + value if relative else value)])


def _cubic(pen: _Pen, values: list[float], relative: bool) -> None:
    for i in range(0, len(values), 6):
        x, y = (pen.x, pen.y) if relative else (0.0, 0.0)
        a, b, c, d, e, f = values[i : i + 6]
        pen.curve((x + a, y + b), (x + c, y + d), (x + e, y + f))


def _smooth_cubic(pen: _Pen, values: list[float], relative: bool) -> None:
    for i in range(0, len(values), 4):
        x, y = (pen.x, pen.y) if relative else (0.0, 0.0)
        first = pen.mirrored_control("CS")
        a, b, c, d = values[i : i + 4]
        pen.curve(first, (x + a, y + b), (x + c, y + d))
        pen.last_kind = "S"


def _quadratic(pen: _Pen, values: list[float], relative: bool) -> None:
    for i in range(0, len(values), 4):
        x, y = (pen.x, pen.y) if relative else (0.0, 0.0)
        a, b, c, d = values[i : i + 4]
        pen.curve((x + a, y + b), (x + c, y + d))


def _smooth_quadratic(pen: _Pen, values: list[float], relative: bool) -> None:
    for i in range(0, len(values), 2):
        x, y = (pen.x, pen.y) if relative else (0.0, 0.0)
        pen.curve(pen.mirrored_control("QT"), (x + values[i], y + values[i + 1]))
        pen.last_kind = "T"


_Draw = Callable[[_Pen, list[float], bool], None]
_DRAW: dict[str, tuple[int, _Draw]] = {
    "M": (2, _move),
    "L": (2, _line),
    "H": (1, _horizontal),
    "V": (1, _vertical),
    "C": (6, _cubic),
    "S": (4, _smooth_cubic),
    "Q": (4, _quadratic),
    "T": (2, _smooth_quadratic),
}


_LETTERS = "MmLlHhVvCcSsQqTtAa"
_WEIGHT = {"M": 1, "L": 1, "H": 1, "V": 1, "C": 3, "S": 3, "Q": 3, "T": 3, "A": 3}


def parse_path_data(text: str) -> PathData:
    """Read path data up to its end or its first error.

    Raises:
        HostileFileError: it has more segments than a drawing can need.
    """
    pen = _Pen()
    pen.check(sum(map(text.count, _LETTERS)))  # before it takes time
    position, error = 0, None
    while error is None:
        step = _STEP.match(text, position)
        if step is not None and (pen.last_kind or step[1] in "Mm"):
            error = _draw_numbers(pen, step, text)
            position = step.end()
            continue
        command = _COMMAND.match(text, position)
        if command is None:
            rest = text[position:].lstrip()
            error = len(text) - len(rest) if rest else None
            break
        if pen.last_kind == "" or command[1] not in "ZzAa":
            error = command.start(1)
        elif command[1] in "Zz":
            pen.close()
            position = command.end()
        else:
            position, error = _arcs(pen, text, command.end(), command[1] == "a")
        pen.last_kind = command[1].upper()
    return PathData(pen.outlines, error)


def _draw_numbers(pen: _Pen, step: re.Match[str], text: str) -> int | None:
    """Draw one command with all its arguments; where it broke, if it did."""
    letter = step[1]
    kind = letter.upper()
    found = _ONE_NUMBER.findall(text, step.end(1), step.end())
    arity, draw = _DRAW[kind]
    pen.count(len(found) // arity * _WEIGHT[kind])
    values = list(map(float, found))
    if not math.isfinite(sum(values)) and not all(map(math.isfinite, values)):
        numbers = _ONE_NUMBER.finditer(text, step.end(1), step.end())
        return next(number.start() for number in numbers if not math.isfinite(float(number[0])))
    count = len(values) // arity
    whole = count * arity
    if whole:
        draw(pen, values[:whole] if whole < len(values) else values, letter != kind)
        pen.last_kind = kind
    return step.end() if whole < len(values) else None


def _arcs(pen: _Pen, text: str, position: int, relative: bool) -> tuple[int, int | None]:
    drawn = False
    while arc := _ARC.match(text, position):
        rx, ry, turn, x, y = map(float, arc.group("rx", "ry", "turn", "x", "y"))
        if not all(map(math.isfinite, (rx, ry, turn, x, y))):
            return position, position
        end = (pen.x + x, pen.y + y) if relative else (x, y)
        pen.count(_WEIGHT["A"])
        pen.outline().arc_to(end, (rx, ry), turn, large=arc["large"] == "1", left=arc["left"] == "1")
        pen.x, pen.y = end
        position, drawn = arc.end(), True
    at_end = position >= len(text) or _COMMAND.match(text, position) is not None
    return position, None if drawn and at_end else position
