"""Drawings: what a sink is told, layers, and moving everything together."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given

from inlayfit.drawing import Drawing, Figure, FillRule, LineStyle, Recorder, Role, draw, draw_path
from inlayfit.geometry.path import Bezier, Path
from inlayfit.geometry.transform import Transform
from tests.strategies import arc_paths, examples, rigid_motions

CURVE = Bezier(np.array([(4.0, 0.0), (6.0, 2.0), (4.0, 4.0)]))
MIXED = Path.of_segments((0, 0), [((4, 0), 0.0), ((4, 4), CURVE), ((0, 4), 0.5), ((0, 0), 0.0)], closed=True)


def recorded(drawing: Drawing) -> list[tuple[object, ...]]:
    recorder = Recorder()
    draw(drawing, recorder)
    return recorder.calls


def test_a_sink_is_told_every_piece_in_order() -> None:
    figure = Figure((MIXED,), layer="POCKET", role=Role.POCKET, fill=FillRule.EVENODD)
    assert recorded(Drawing((figure,))) == [
        ("begin_figure", "POCKET", Role.POCKET, FillRule.EVENODD),
        ("move_to", 0, 0),
        ("line_to", 4, 0),
        ("curve_to", CURVE),
        ("arc_to", 0, 4, 0.5),
        ("line_to", 0, 0),
        ("end_contour", True),
        ("end_figure",),
    ]


def test_an_open_contour_does_not_return() -> None:
    recorder = Recorder()
    draw_path(Path.polyline([(0, 0), (4, 0)], closed=False), recorder)
    assert recorder.calls == [("move_to", 0, 0), ("line_to", 4, 0), ("end_contour", False)]


@examples(30, 200)
@given(path=arc_paths())
def test_what_is_drawn_can_be_drawn_again(path: Path) -> None:
    """A path rebuilt from what a sink was told is the same path."""
    recorder = Recorder()
    draw_path(path, recorder)
    (_, *start), *pieces, _ = recorder.calls
    segments = [((call[1], call[2]), call[3] if call[0] == "arc_to" else 0.0) for call in pieces]
    assert Path.of_segments(start, segments, closed=True) == path


def test_layers_come_in_the_order_of_their_first_figure() -> None:
    figures = [Figure((MIXED,), layer=layer) for layer in ("PLUG", "POCKET", "PLUG", "MARKS")]
    drawing = Drawing(tuple(figures))
    assert drawing.layers == ("PLUG", "POCKET", "MARKS")
    assert list(drawing.on_layer("PLUG")) == [figures[0], figures[2]]
    assert list(drawing.on_layer("TABS")) == []
    assert list(drawing + Drawing((figures[1],))) == [*figures, figures[1]]


@examples(20, 150)
@given(path=arc_paths(), motion=rigid_motions())
def test_moving_a_drawing_moves_every_path(path: Path, motion: Transform) -> None:
    clip = Figure((path,))
    drawing = Drawing((Figure((path, MIXED), clip=(clip,)), Figure((MIXED,))))
    moved = drawing.moved(motion)
    assert [figure.contours for figure in moved] == [
        (motion.path(path), motion.path(MIXED)),
        (motion.path(MIXED),),
    ]
    assert moved.figures[0].clip[0].contours == (motion.path(path),)


def test_not_moving_gives_the_very_same_drawing() -> None:
    drawing = Drawing((Figure((MIXED,)),))
    assert drawing.moved(Transform()) is drawing


@pytest.mark.parametrize(
    ("scale", "factor"), [(Transform.scale(2), 2.0), (Transform.scale(-3), 3.0), (Transform.scale(4, 9), 6.0)]
)
def test_a_painted_line_grows_with_the_root_of_the_area(scale: Transform, factor: float) -> None:
    line = LineStyle(dashes_mm=(1.0, 0.5), dash_offset_mm=0.25)
    moved = Figure((MIXED,), stroke_width_mm=0.4, line=line).moved(scale)
    assert moved.stroke_width_mm == pytest.approx(0.4 * factor)
    assert moved.line.dashes_mm == pytest.approx((factor, 0.5 * factor))
    assert moved.line.dash_offset_mm == pytest.approx(0.25 * factor)
    assert moved.line.pen.is_identity == scale.keeps_angles
    assert abs(moved.line.pen.determinant) == pytest.approx(1)


def test_a_bare_line_stays_bare() -> None:
    moved = Figure((MIXED,)).moved(Transform.scale(2))
    assert moved.stroke_width_mm is None
    assert moved.fill is None
