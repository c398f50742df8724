"""A drawing: figures made of paths, each with a layer and a role, and the one way to look at them.

Readers make drawings, the fit's result becomes one, and every sink (screen, DXF, SVG, paper, the tests'
recorder) draws from one. A sink is anything with the five verbs of `PathSink`; `draw` walks a drawing
into it. y points up; a sink with y down flips for itself.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from enum import StrEnum
from typing import Any, Protocol

from inlayfit.geometry.path import Bezier, Path
from inlayfit.geometry.transform import Transform

_ROUND_PEN = Transform()


class FillRule(StrEnum):
    """How overlapping contours of one figure decide what is inside (SVG's `fill-rule`)."""

    NONZERO = "nonzero"
    EVENODD = "evenodd"


class Role(StrEnum):
    """What a figure is for; a sink may style by it."""

    OUTLINE = "outline"
    POCKET = "pocket"
    PLUG = "plug"
    ROUGH = "rough"
    MARK = "mark"
    TAB = "tab"
    STOCK = "stock"


class Cap(StrEnum):
    """How a painted line ends (SVG's `stroke-linecap`)."""

    BUTT = "butt"
    ROUND = "round"
    SQUARE = "square"


class Join(StrEnum):
    """How a painted line turns a corner (SVG's `stroke-linejoin`)."""

    MITER = "miter"
    ROUND = "round"
    BEVEL = "bevel"


@dataclass(frozen=True, slots=True)
class LineStyle:
    """How a painted line looks besides its width; matters only where lines are taken as areas.

    Attributes:
        cap: its ends.
        join: its corners.
        miter_limit: a corner whose tip would reach further than this many half widths is bevelled.
        dashes_mm: lengths of dash, gap, dash, gap and so on, repeated; empty for an unbroken line.
        dash_offset_mm: where in that pattern the line starts.
        pen: the map a round pen of this width went through, of area factor 1; not the identity where a
            drawing was stretched more one way than the other after its line was painted.
    """

    cap: Cap = Cap.BUTT
    join: Join = Join.MITER
    miter_limit: float = 4.0
    dashes_mm: tuple[float, ...] = ()
    dash_offset_mm: float = 0.0
    pen: Transform = _ROUND_PEN

    def moved(self, transform: Transform) -> LineStyle:
        """The style of the line's image; lengths follow the square root of the area factor."""
        size = abs(transform.determinant) ** 0.5
        pen = self.pen
        if size > 0 and not (transform.keeps_angles and pen.is_identity):
            a, b, c, d = (v / size for v in (transform.a, transform.b, transform.c, transform.d))
            pen = Transform(a, b, c, d).after(pen)
        dashes = tuple(length * size for length in self.dashes_mm)
        return replace(self, dashes_mm=dashes, dash_offset_mm=self.dash_offset_mm * size, pen=pen)


PLAIN_LINE = LineStyle()
"""SVG's initial values."""


@dataclass(frozen=True, slots=True)
class Figure:
    """One thing drawn: contours that belong together.

    Attributes:
        contours: its paths, open ones included.
        layer: name of the layer it lies on.
        name: what the file calls it (an SVG id, a block name); may be empty.
        role: what it is for.
        fill: None for bare linework (a line has no inside until loops are nested); else the contours,
            closed, enclose painted area by this rule.
        stroke_width_mm: width of the painted line, or None if there is none or it does not matter.
        clip: figures outside of whose painted area nothing of this one shows; all of them apply.
        line: how the painted line looks besides its width.
    """

    contours: tuple[Path, ...]
    layer: str = "0"
    name: str = ""
    role: Role = Role.OUTLINE
    fill: FillRule | None = None
    stroke_width_mm: float | None = None
    clip: tuple[Figure, ...] = ()
    line: LineStyle = PLAIN_LINE

    def moved(self, transform: Transform) -> Figure:
        """The figure's image under an affine map; stroke width follows the square root of its area factor."""
        width = self.stroke_width_mm
        if width is not None:
            width *= abs(transform.determinant) ** 0.5
        contours = tuple(transform.path(path) for path in self.contours)
        clip = tuple(figure.moved(transform) for figure in self.clip)
        line = self.line.moved(transform)
        return replace(self, contours=contours, stroke_width_mm=width, clip=clip, line=line)


@dataclass(frozen=True, slots=True)
class Drawing:
    """Figures in the order they are painted."""

    figures: tuple[Figure, ...] = field(default=())

    @property
    def layers(self) -> tuple[str, ...]:
        """Layer names in the order of their first figure."""
        return tuple(dict.fromkeys(figure.layer for figure in self.figures))

    def on_layer(self, layer: str) -> Drawing:
        """Only the figures of one layer."""
        return Drawing(tuple(f for f in self.figures if f.layer == layer))

    def moved(self, transform: Transform) -> Drawing:
        """The whole drawing under an affine map."""
        return self if transform.is_identity else Drawing(tuple(f.moved(transform) for f in self.figures))

    def __add__(self, other: Drawing) -> Drawing:
        return Drawing(self.figures + other.figures)

    def __iter__(self) -> Iterator[Figure]:
        return iter(self.figures)


class PathSink(Protocol):
    """What a drawing can be drawn into."""

    def begin_figure(self, figure: Figure) -> None:
        """A figure starts: its layer, name, role and fill are known now."""

    def move_to(self, x: float, y: float) -> None:
        """A contour starts here."""

    def line_to(self, x: float, y: float) -> None:
        """A straight piece to here."""

    def arc_to(self, x: float, y: float, bulge: float) -> None:
        """An arc to here; bulge = tan(sweep/4), positive turns left."""

    def curve_to(self, curve: Bezier) -> None:
        """A Bézier that starts where the last piece ended."""

    def end_contour(self, *, closed: bool) -> None:
        """The contour ends; a closed one has returned to its start."""

    def end_figure(self) -> None:
        """The figure ends."""


def draw_path(path: Path, sink: PathSink) -> None:
    """Draw one path into a sink."""
    sink.move_to(*path.start.tolist())
    _, ends = path.segment_ends()
    for i, ((x, y), bulge) in enumerate(zip(ends.tolist(), path.bulges.tolist(), strict=True)):
        curve = path.curves.get(i)
        if curve is not None:
            sink.curve_to(curve)
        elif bulge:
            sink.arc_to(x, y, bulge)
        else:
            sink.line_to(x, y)
    sink.end_contour(closed=path.closed)


def draw(figures: Iterable[Figure], sink: PathSink) -> None:
    """Draw figures into a sink, in order."""
    for figure in figures:
        sink.begin_figure(figure)
        for path in figure.contours:
            draw_path(path, sink)
        sink.end_figure()


class Recorder:
    """A sink that keeps what it was told as tuples; what the tests of every other sink compare with."""

    def __init__(self) -> None:
        self.calls: list[tuple[Any, ...]] = []

    def begin_figure(self, figure: Figure) -> None:
        """Keep layer, role and fill."""
        self.calls.append(("begin_figure", figure.layer, figure.role, figure.fill))

    def move_to(self, x: float, y: float) -> None:
        """Keep the point."""
        self.calls.append(("move_to", x, y))

    def line_to(self, x: float, y: float) -> None:
        """Keep the point."""
        self.calls.append(("line_to", x, y))

    def arc_to(self, x: float, y: float, bulge: float) -> None:
        """Keep the point and the bulge."""
        self.calls.append(("arc_to", x, y, bulge))

    def curve_to(self, curve: Bezier) -> None:
        """Keep the curve."""
        self.calls.append(("curve_to", curve))

    def end_contour(self, *, closed: bool) -> None:
        """Keep whether it closed."""
        self.calls.append(("end_contour", closed))

    def end_figure(self) -> None:
        """Keep that it ended."""
        self.calls.append(("end_figure",))
