"""`gap.svg`: a picture of the gap map, to look at, print and pin to the wall. Not for cutting.

The host is tinted and hatched, the pocket is light, the plug lies in it; both walls are thin lines at true
scale. Just inside the plug's wall a band of constant width says how the gap compares with what was meant,
by colour, by stroke and by letter, so that it reads in grey too. Flags stand at the tightest and the
loosest place. All is in millimetres of paper; a scale bar gives those of the part.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from xml.etree.ElementTree import Element, SubElement, indent, tostring

import numpy as np
import shapely

from inlayfit.document.gap_bands import Run, band_runs, class_lengths
from inlayfit.document.ink import (
    CANVAS,
    FONT,
    HATCH,
    HOST,
    INK,
    PLUG,
    SOFT,
    STYLES,
    halo,
    line_data,
    number,
    rectangle,
    stroke_as,
    text_at,
)
from inlayfit.fit.classes import GapClass, class_edges, classify, is_even
from inlayfit.fit.result import FitResult, Spot
from inlayfit.fit.spec import Half
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.units import Unit, format_length, format_per_side

Results = Sequence[tuple[str, FitResult]]

_PAGE_WIDTH = 280.0
_MARGIN = 12.0
_GUTTER = 45.0  # beside the map, for flags
_TOP = 33.0  # of the panel; above it stand the title and the sentences
_PANEL_PADDING = 11.0
_TALLEST_MAP = 190.0
_SMALLEST_MAP = 40.0
_BAND = 1.6
_STEP = 0.35
_SHORTEST_RUN = 0.7
_LEGEND_HEIGHT = 21.0
_FLAG_WIDTH, _FLAG_HEIGHT = 37.0, 9.6
_MOST_FLAGGED = 4  # fittings; with more, only the tightest and the loosest of all are flagged
_LETTER_RUN = 9.0  # of band that is long enough to carry a letter


@dataclass(frozen=True, slots=True)
class _Map:
    """Where the drawing lies on the paper: scale, and the paper's place of the drawing's lower left."""

    scale: float
    left: float
    bottom: float
    x0: float
    y0: float
    panel_height: float

    def points(self, points: Points) -> Points:
        """Drawing to paper, y down."""
        x = self.left + (points[:, 0] - self.x0) * self.scale
        y = self.bottom - (points[:, 1] - self.y0) * self.scale
        return np.column_stack([x, y])

    def point(self, place: tuple[float, float]) -> tuple[float, float]:
        x, y = self.points(np.array([place]))[0].tolist()
        return x, y


def gap_picture(results: Results) -> str:
    """The picture as the text of an SVG file.

    Args:
        results: outline id and answer of each fitting; at least one.
    """
    layout = _layout(results)
    height = _TOP + layout.panel_height + _LEGEND_HEIGHT + _MARGIN
    svg = Element("svg", xmlns="http://www.w3.org/2000/svg", version="1.1")
    svg.set("width", f"{_PAGE_WIDTH:g}mm")
    svg.set("height", f"{number(height)}mm")
    svg.set("viewBox", f"0 0 {_PAGE_WIDTH:g} {number(height)}")
    svg.set("font-family", FONT)
    sentence = _found_sentence(results)
    SubElement(svg, "title").text = _title(results)
    SubElement(svg, "desc").text = sentence
    _hatch(svg)
    SubElement(svg, "rect", width="100%", height="100%", fill=CANVAS)
    text_at(svg, _MARGIN, 16.0, _title(results), size=6.2, weight="600")
    text_at(svg, _MARGIN, 22.6, sentence, size=3.7, colour=INK)
    text_at(svg, _MARGIN, 28.2, _NOTE, size=2.9, colour=SOFT)
    _draw_parts(svg, results, layout)
    _draw_bands(svg, results, layout)
    _draw_flags(svg, results, layout)
    _draw_scale_bar(svg, layout)
    _draw_legend(svg, results, _TOP + layout.panel_height + 8.0)
    indent(svg, " ")
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + tostring(svg, encoding="unicode") + "\n"


_NOTE = (
    "Walls are to scale; the coloured band has one width everywhere and lies just inside the plug's wall. "
    "Numbers are per side (overall) in mm."
)


def _title(results: Results) -> str:
    names = [name for name, _ in results]
    if len(names) == 1:
        return f"Gap round {names[0]}"
    shown = ", ".join(names[:3])
    return f"Gap round {len(names)} plugs: {shown}{', …' if len(names) > 3 else ''}"


def _found_sentence(results: Results) -> str:
    """What was meant and what was found, in two sentences."""
    targets = sorted({result.spec.clearance_mm for _, result in results})
    meant = format_per_side(targets[0], Unit.MM) if len(targets) == 1 else "several clearances"
    maps = [result.gap for _, result in results if not result.gap.is_empty]
    if not maps:
        return f"Meant: {meant}. Found: no plug is left, so there is no gap to measure."
    low, high = min(gap.min_mm for gap in maps), max(gap.max_mm for gap in maps)
    overlap = sum(gap.overlap_mm2 for gap in maps)
    bites = "nothing overlaps" if overlap <= 0 else f"{overlap:.3g} mm² overlap"
    return f"Meant: {meant}. Found: {_mm(low)} to {_mm(high)} mm per side; {bites}."


def _mm(value: float) -> str:
    return format_length(value, Unit.MM, with_unit=False)


def _layout(results: Results) -> _Map:
    shapes = [half.outline for _, r in results for half in (r.pocket, r.plug) if not half.outline.is_empty]
    boxes = np.array([shape.bounds for shape in shapes]) if shapes else np.array([[0.0, 0.0, 1.0, 1.0]])
    (x0, y0), (x1, y1) = boxes[:, :2].min(axis=0).tolist(), boxes[:, 2:].max(axis=0).tolist()
    room = _PAGE_WIDTH - 2 * (_MARGIN + _GUTTER)
    width, height = max(x1 - x0, 1e-6), max(y1 - y0, 1e-6)
    scale = min(room / width, _TALLEST_MAP / height)
    map_height = max(height * scale, _SMALLEST_MAP)
    left = (_PAGE_WIDTH - width * scale) / 2
    bottom = _TOP + _PANEL_PADDING + (map_height + height * scale) / 2
    return _Map(scale, left, bottom, x0, y0, map_height + 2 * _PANEL_PADDING + 7.0)


def _hatch(svg: Element) -> None:
    definitions = SubElement(svg, "defs")
    pattern = SubElement(definitions, "pattern", id="host", width="2.6", height="2.6")
    pattern.set("patternUnits", "userSpaceOnUse")
    pattern.set("patternTransform", "rotate(45)")
    line = SubElement(pattern, "path", d="M1.3 -1V4", stroke=HATCH)
    line.set("stroke-width", "0.3")


def _draw_parts(svg: Element, results: Results, layout: _Map) -> None:
    """Host, pockets and plugs, with their walls at true scale."""
    panel = (_MARGIN, _TOP, _PAGE_WIDTH - 2 * _MARGIN, layout.panel_height)
    rectangle(svg, panel, fill=HOST, radius=2.5)
    rectangle(svg, panel, fill="url(#host)", radius=2.5)
    for half, fill, colour, width in ((Half.POCKET, CANVAS, INK, 0.22), (Half.PLUG, PLUG, SOFT, 0.16)):
        group = SubElement(svg, "g", id=f"{half.value}s", fill=fill, stroke=colour)
        group.set("stroke-width", f"{width:g}")
        group.set("stroke-linejoin", "round")
        for name, result in results:
            answer = result.pocket if half is Half.POCKET else result.plug
            if not answer.outline.is_empty:
                path = SubElement(group, "path", d=_region_data(answer.outline, layout))
                path.set("fill-rule", "evenodd")
                SubElement(path, "title").text = f"{half.value} of {name}"


def _draw_bands(svg: Element, results: Results, layout: _Map) -> None:
    """One path a class, so that a reader of the file finds the classes by name; bites above all others."""
    runs: list[Run] = []
    for _, result in results:
        runs += band_runs(result, half_band_mm=_BAND / 2 / layout.scale, step_mm=_STEP / layout.scale)
    shown = [run for run in runs if run.gap_class is GapClass.BITES or _paper(run, layout) >= _SHORTEST_RUN]
    group = SubElement(svg, "g", id="gap", fill="none")
    group.set("stroke-linejoin", "round")
    for kind in reversed(GapClass):
        mine = [run for run in shown if run.gap_class is kind]
        if mine:
            data = "".join(line_data(layout.points(run.points), closed=run.closed) for run in mine)
            path = SubElement(group, "path", id=f"gap-{kind.word}", d=data)
            stroke_as(path, STYLES[kind])
            SubElement(path, "title").text = kind.word
    biting = [run for run in shown if run.gap_class is GapClass.BITES]
    if biting:
        data = "".join(_ticks(layout.points(run.points)) for run in biting)
        ticks = SubElement(group, "path", id="gap-bites-ticks", d=data, stroke=STYLES[GapClass.BITES].colour)
        ticks.set("stroke-width", "0.45")
    _draw_letters(svg, shown, layout)


def _paper(run: Run, layout: _Map) -> float:
    return run.length_mm * layout.scale


def _draw_letters(svg: Element, runs: Sequence[Run], layout: _Map) -> None:
    """A letter beside the longest bands of each class, inside the plug."""
    group = SubElement(svg, "g", id="letters")
    group.set("text-anchor", "middle")
    placed: list[tuple[float, float]] = []
    for run in sorted(runs, key=lambda run: (run.gap_class, -run.length_mm)):
        if _paper(run, layout) < _LETTER_RUN:
            continue
        points = layout.points(run.points)
        middle = len(points) // 2
        (x, y), (nx, ny) = points[middle].tolist(), _inward(points, middle)
        inset = 4.6 if run.gap_class is GapClass.BITES else 3.2
        place = (x + inset * nx, y + inset * ny)
        if all(math.dist(place, other) > 16 for other in placed):
            placed.append(place)
            letter = text_at(group, place[0], place[1] + 1.15, run.gap_class.letter, size=3.2, weight="600")
            letter.set("fill", STYLES[run.gap_class].colour)
            halo(letter, PLUG)


def _inward(points: Points, i: int) -> tuple[float, float]:
    """Unit vector into the plug: on paper, where y points down, to the left is (dy, -dx)."""
    dx, dy = (points[min(i + 2, len(points) - 1)] - points[max(i - 2, 0)]).tolist()
    length = math.hypot(dx, dy) or 1.0
    return dy / length, -dx / length


def _ticks(points: Points) -> str:
    apart = max(1, round(1.6 / _STEP))
    parts = []
    for i in range(apart // 2, len(points), apart):
        (x, y), (nx, ny) = points[i].tolist(), _inward(points, i)
        parts.append(f"M{number(x)} {number(y)}L{number(x + 2.4 * nx)} {number(y + 2.4 * ny)}")
    return "".join(parts)


@dataclass(frozen=True, slots=True)
class _Flag:
    word: str
    value: str
    x: float
    y: float
    kind: GapClass


def _flags(results: Results, layout: _Map) -> list[_Flag]:
    """The tightest and the loosest place; where the gap is even, one place that says so."""
    tight = [(result, result.gap.tightest[0]) for _, result in results if result.gap.tightest]
    loose = [(result, spot) for _, result in results if (spot := result.gap.loosest) is not None]
    if len(results) > _MOST_FLAGGED:
        tight = sorted(tight, key=lambda pair: pair[1].gap_mm)[:1]
        loose = sorted(loose, key=lambda pair: -pair[1].gap_mm)[:1]
        even = list(results) if all(_has_even_gap(result) for _, result in results) else []
    else:
        even = [named for named in results if _has_even_gap(named[1])]
    kept = {id(result) for _, result in even}
    flags = [
        _flag("even all round" if id(result) in kept else "tightest", result, spot, layout)
        for result, spot in tight
    ]
    uneven = [(result, spot) for result, spot in loose if id(result) not in kept]
    return flags + [_flag("loosest", result, spot, layout) for result, spot in uneven]


def _has_even_gap(result: FitResult) -> bool:
    gap = result.gap
    return not gap.is_empty and is_even(gap.min_mm, gap.max_mm, result.spec.clearance_mm)


def _flag(word: str, result: FitResult, spot: Spot, layout: _Map) -> _Flag:
    kind = GapClass(int(classify([spot.gap_mm], result.spec.clearance_mm)[0]))
    value = format_per_side(spot.gap_mm, Unit.MM).replace(" per side", "").replace(" overall", "")
    return _Flag(word, value, *layout.point(spot.place_mm), kind)


def _draw_flags(svg: Element, results: Results, layout: _Map) -> None:
    """Labels in the gutters, each on the nearer side, a thin line from its place."""
    group = SubElement(svg, "g", id="flags")
    flags = _flags(results, layout)
    middle = _PAGE_WIDTH / 2
    top, bottom = _TOP + 7.0, _TOP + layout.panel_height - 13.0
    for side in (-1, 1):
        mine = sorted((f for f in flags if (f.x >= middle) == (side > 0)), key=lambda f: f.y)
        for flag, y in zip(mine, _spread([f.y for f in mine], top, bottom, 12.0), strict=True):
            _draw_flag(group, flag, side, y)


def _spread(wanted: list[float], top: float, bottom: float, apart: float) -> list[float]:
    """Heights near those wanted, in order, `apart` from each other, between top and bottom if they fit."""
    places: list[float] = []
    for y in wanted:
        places.append(max(y, top, places[-1] + apart if places else top))
    limit = bottom
    for i in reversed(range(len(places))):
        places[i] = min(places[i], limit)
        limit = places[i] - apart
    return places


def _draw_flag(group: Element, flag: _Flag, side: int, y: float) -> None:
    x = _MARGIN + 4.0 if side < 0 else _PAGE_WIDTH - _MARGIN - 4.0 - _FLAG_WIDTH
    colour = STYLES[flag.kind].colour
    end = x + _FLAG_WIDTH if side < 0 else x
    line = SubElement(
        group, "path", d=f"M{number(end)} {number(y)}L{number(flag.x)} {number(flag.y)}", fill="none"
    )
    box = rectangle(group, (x, y - _FLAG_HEIGHT / 2, _FLAG_WIDTH, _FLAG_HEIGHT), fill=CANVAS, radius=1.4)
    for element in (line, box):
        element.set("stroke", colour)
        element.set("stroke-width", "0.28")
    text_at(group, x + 2.4, y - 0.9, f"{flag.word} · {flag.kind.letter}", size=2.7, colour=SOFT)
    text_at(group, x + 2.4, y + 3.2, flag.value, size=3.4, weight="600", colour=colour)
    dot = SubElement(
        group, "circle", cx=number(flag.x), cy=number(flag.y), r="1.15", fill=CANVAS, stroke=colour
    )
    dot.set("stroke-width", "0.55")


def _draw_scale_bar(svg: Element, layout: _Map) -> None:
    length = _round_length(36.0 / layout.scale)
    x, y = _MARGIN + 5.0, _TOP + layout.panel_height - 4.5
    end = x + length * layout.scale
    bar = SubElement(svg, "path", id="scale", fill="none", stroke=INK)
    bar.set("d", f"M{number(x)} {number(y - 1.3)}V{number(y)}H{number(end)}V{number(y - 1.3)}")
    bar.set("stroke-width", "0.35")
    label = text_at(svg, end + 1.8, y, f"{length:g} mm", size=3.0)
    halo(label, HOST)


def _round_length(most: float) -> float:
    """The largest of 1, 2, 5 times a power of ten that is not more than `most`."""
    power = 10.0 ** math.floor(math.log10(most))
    return max(step * power for step in (1, 2, 5) if step * power <= most * (1 + 1e-9))


def _draw_legend(svg: Element, results: Results, y: float) -> None:
    """Five columns: stroke, letter and word, range, and how much of the wall is so."""
    group = SubElement(svg, "g", id="legend")
    lengths = dict.fromkeys(GapClass, 0.0)
    for _, result in results:
        for kind, length in class_lengths(result.gap, result.spec.clearance_mm).items():
            lengths[kind] += length
    total = sum(lengths.values()) or 1.0
    column = (_PAGE_WIDTH - 2 * _MARGIN) / len(GapClass)
    for kind in GapClass:
        x = _MARGIN + column * kind
        sample = SubElement(group, "path", d=f"M{number(x + 0.8)} {number(y)}h16", fill="none")
        stroke_as(sample, STYLES[kind])
        if kind is GapClass.BITES:
            data = _ticks(_sample_points(x + 0.8, y, 16.0))
            ticks = SubElement(group, "path", d=data, stroke=STYLES[kind].colour)
            ticks.set("stroke-width", "0.45")
        text_at(group, x + 19.5, y + 1.3, f"{kind.letter}  {kind.word}", size=3.7, weight="600")
        text_at(group, x, y + 7.6, _range_words(results, kind), size=2.9, colour=SOFT)
        share = f"{lengths[kind]:.1f} mm of wall, {_percent(lengths[kind] / total)}"
        text_at(group, x, y + 12.2, share if lengths[kind] else "none", size=2.9, colour=SOFT)


def _percent(share: float) -> str:
    """Whole percents; a little is not nothing, and almost all is not all."""
    if 0 < share < 0.005:
        return "under 1 %"
    return "over 99 %" if 0.995 <= share < 1 else f"{100 * share:.0f} %"


def _sample_points(x: float, y: float, length: float) -> Points:
    """A stretch of band drawn from right to left, so that its ticks point up."""
    along = np.arange(x, x + length, _STEP)[::-1]
    return np.column_stack([along, np.full(len(along), y)])


def _range_words(results: Results, kind: GapClass) -> str:
    """The gaps of a class in words; relative to what was meant if the fittings differ in that."""
    targets = {result.spec.clearance_mm for _, result in results}
    if len(targets) > 1:
        return ("in the way", "less than meant", "as meant", "more than meant", "much more")[kind]
    edges = [_mm(edge) for edge in class_edges(targets.pop())]
    if kind is GapClass.BITES:
        return f"below {edges[0]}"
    if kind is GapClass.LOOSE:
        return f"above {edges[-1]}"
    return f"{edges[kind - 1]} to {edges[kind]} per side"


def _region_data(region: Region, layout: _Map) -> str:
    """The region's rings as path data, without points that a hundredth of a millimetre of paper hides."""
    coarse = shapely.simplify(region.shape, 0.01 / layout.scale, preserve_topology=True)
    rings = Region.of(coarse).rings()
    return "".join(line_data(layout.points(ring), closed=True) for ring in rings)
