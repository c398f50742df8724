"""What a figure covers: fill, line and clips together. Areas by plane geometry."""

import math

import numpy as np
import pytest

from inlayfit.document.painted import figure_region, united
from inlayfit.drawing import Cap, Figure, FillRule, Join, LineStyle
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance
from inlayfit.geometry.transform import Transform

FINE = Tolerance(arc_mm=1e-5)


def square(side: float, x: float = 0.0, y: float = 0.0) -> Path:
    return Path.polyline(np.array([[0, 0], [side, 0], [side, side], [0, side]]) + np.array([x, y]))


def area(figure: Figure, *, lines: bool = True) -> float:
    return figure_region(figure, FINE, strokes_as_areas=lines).area


def test_fill_rule_decides_about_holes() -> None:
    both = (square(10), square(4, 3, 3))
    assert area(Figure(both, fill=FillRule.NONZERO)) == pytest.approx(100)
    assert area(Figure(both, fill=FillRule.EVENODD)) == pytest.approx(84)


def test_bare_line_covers_its_width_only_on_request() -> None:
    figure = Figure((Path.circle((0, 0), 10),), stroke_width_mm=2)
    assert area(figure, lines=False) == 0
    assert area(figure) == pytest.approx(math.pi * (11**2 - 9**2), rel=1e-5)


def test_filled_shape_grows_by_half_its_line() -> None:
    figure = Figure((Path.circle((0, 0), 10),), fill=FillRule.NONZERO, stroke_width_mm=2)
    assert area(figure, lines=False) == pytest.approx(math.pi * 100, rel=1e-5)
    assert area(figure) == pytest.approx(math.pi * 121, rel=1e-5)


def test_every_clip_applies_and_clips_have_clips() -> None:
    inner = Figure((square(4),), fill=FillRule.NONZERO)
    clip = Figure((square(8),), fill=FillRule.NONZERO, clip=(inner,))
    other = Figure((square(8, 2, 0),), fill=FillRule.NONZERO)
    whole = Figure((square(10),), fill=FillRule.NONZERO)
    assert area(Figure(whole.contours, fill=whole.fill, clip=(clip,))) == pytest.approx(16)
    assert area(Figure(whole.contours, fill=whole.fill, clip=(clip, other))) == pytest.approx(8)
    nothing = Figure((), fill=FillRule.NONZERO)
    assert area(Figure(whole.contours, fill=whole.fill, clip=(nothing,))) == 0


def test_line_style_reaches_the_area() -> None:
    line = Path.polyline([[0, 0], [20, 0]], closed=False)
    for style, covered in (
        (LineStyle(cap=Cap.BUTT), 40),
        (LineStyle(cap=Cap.SQUARE), 44),
        (LineStyle(cap=Cap.ROUND), 40 + math.pi),
        (LineStyle(dashes_mm=(3, 2)), 24),
        (LineStyle(dashes_mm=(3, 2), dash_offset_mm=1), 24),
        (LineStyle(dashes_mm=(3, 3), cap=Cap.SQUARE), 11 * 2 + 4 * 4),
    ):
        assert area(Figure((line,), stroke_width_mm=2, line=style)) == pytest.approx(covered, rel=1e-4)


def test_stretching_a_line_after_painting_stretches_its_area() -> None:
    path = Path.polyline([[0, 0], [9, 2], [4, 8]], closed=False)
    style = LineStyle(cap=Cap.ROUND, join=Join.ROUND, dashes_mm=(2.0, 1.5))
    figure = Figure((path, Path.circle((3, 3), 2)), stroke_width_mm=0.5, line=style)
    for transform in (
        Transform(3, 0, 0, 0.5),
        Transform.turn(0.7).after(Transform.scale(2)),
        Transform(1, 0.4, -0.9, -1.3, 5, 6),
    ):
        moved = figure.moved(transform).moved(Transform.turn(0.3))
        assert area(moved) == pytest.approx(area(figure) * abs(transform.determinant), rel=2e-4)


def test_union_of_nothing_is_nothing() -> None:
    assert united([]).is_empty
    assert united([Region.empty(), Region.empty()]).is_empty
