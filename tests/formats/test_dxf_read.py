from __future__ import annotations

import math
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from ezdxf.math import Vec2

from inlayfit.drawing import Figure, FillRule, Role
from inlayfit.errors import NoOutlineError
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.dxf_read import read_dxf
from inlayfit.geometry.flatten import flatten
from inlayfit.units import Unit
from tests.formats.dxf_files import END, ENTITIES, HEADER, RECTANGLE, WHOLE, drawn, written

SQUARE = [(0, 0), (10, 0), (10, 10), (0, 10)]


def contours(result: ReadResult) -> list[Any]:
    return [path for figure in result.drawing for path in figure.contours]


def codes(result: ReadResult) -> list[str]:
    return [finding.code for finding in result.findings]


def area(figure: Figure) -> float:
    x, y = flatten(figure.contours[0], 1e-5).T
    return abs(float(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1)))) / 2


@pytest.mark.parametrize("version", ["R12", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018"])
@pytest.mark.parametrize("binary", [False, True])
def test_every_release_gives_the_same_drawing(tmp_path: Path, version: str, binary: bool) -> None:
    def draw(space: Any, _: Any) -> None:
        space.add_line((0, 0), (10, 0))
        space.add_arc((10, 2), 2, 270, 90)
        space.add_circle((3, 3), 1)
        space.add_polyline2d([(0, 0), (4, 0), (4, 4)], close=True)

    result = read_dxf(drawn(tmp_path, draw, version=version, binary=binary), ReadOptions(Unit.MM))
    # Two open lines as one figure and two closed figures; the arc's bulge is tan(180°/4) = 1.
    assert [len(f.contours) for f in result.drawing] == [2, 1, 1]
    assert contours(result)[1].bulges.tolist() == pytest.approx([1.0])
    assert result.element_count == 4


@pytest.mark.parametrize(
    ("code", "mm", "stated"),
    [(4, 1, Unit.MM), (1, 25.4, Unit.INCH), (5, 10, Unit.CM), (6, 1000, Unit.M), (2, 304.8, Unit.FOOT),
     (9, 0.0254, Unit.THOU), (13, 0.001, Unit.MICROMETRE), (8, 2.54e-5, Unit.MM), (10, 914.4, Unit.MM),
     (14, 100, Unit.MM), (21, 304.800609601, Unit.MM)],
)  # fmt: skip
def test_insunits_codes_scale_to_millimetres(tmp_path: Path, code: int, mm: float, stated: Unit) -> None:
    """Codes of `$INSUNITS` in the DXF reference; the US survey foot is 1200/3937 m (NIST SP 811)."""
    path = drawn(tmp_path, lambda s, _: s.add_circle((0, 0), 0.1), units=code)
    result = read_dxf(path)
    x0, _, x1, _ = contours(result)[0].bounds()
    assert x1 - x0 == pytest.approx(0.2 * mm, rel=1e-9)
    assert result.file_unit is stated
    assert "unit-missing" not in codes(result)


@pytest.mark.parametrize("code", [0, 3, 7, 18, 20, 24, 99])
def test_a_unit_that_is_missing_or_unusable_is_asked_for_with_both_sizes(tmp_path: Path, code: int) -> None:
    text = (
        HEADER.replace("0\nENDSEC\n", f"9\n$INSUNITS\n70\n{code}\n0\nENDSEC\n") + ENTITIES + RECTANGLE + END
    )
    result = read_dxf(written(tmp_path, text))
    assert (result.file_unit, result.assumed_unit) == (None, Unit.MM)
    (missing,) = [f for f in result.findings if f.code == "unit-missing"]
    assert not missing.fixed
    assert "10 × 5 mm" in missing.message
    assert "254 × 127 mm" in missing.message
    assert ("unit-unusable" in codes(result)) == (code != 0)


def test_a_file_without_insunits_states_no_unit_and_a_chosen_one_settles_it(tmp_path: Path) -> None:
    path = written(tmp_path, WHOLE)
    assert read_dxf(path).file_unit is None
    chosen = read_dxf(path, ReadOptions(Unit.INCH))
    assert chosen.assumed_unit is Unit.INCH
    assert codes(chosen) == []
    assert contours(chosen)[0].bounds() == pytest.approx((0, 0, 254, 127))


def test_bulges_stay_arcs_and_enclose_their_area(tmp_path: Path) -> None:
    """Bulge 1 is half a circle, −0.25 an arc of radius 10.625 over a chord of 10 (facts: DXF reference)."""
    path = drawn(tmp_path, lambda s, _: s.add_lwpolyline(
        [(0, 0, 1), (10, 0, 0), (10, 10, -0.25), (0, 10, 0)], format="xyb", close=True))  # fmt: skip
    (figure,) = read_dxf(path).drawing
    assert figure.contours[0].bulges.tolist() == [1, 0, -0.25, 0]
    angle = math.radians(56.144974)
    segment = 10.625**2 * (angle - math.sin(angle)) / 2
    assert area(figure) == pytest.approx(100 + math.pi * 12.5 - segment, rel=1e-6)


@pytest.mark.parametrize("ratio", [0.2, 1.0])
def test_an_ellipse_is_exact(tmp_path: Path, ratio: float) -> None:
    path = drawn(tmp_path, lambda s, _: s.add_ellipse((3, 4), (4, 3), ratio))
    (figure,) = read_dxf(path).drawing
    assert area(figure) == pytest.approx(math.pi * 25 * ratio, rel=1e-5)  # π·a·b


def test_a_spline_through_fit_points_alone_passes_through_them(tmp_path: Path) -> None:
    points = [(0, 0), (4, 6), (9, 3), (12, 8)]
    path = drawn(tmp_path, lambda s, _: s.add_spline(points))
    (contour,) = contours(read_dxf(path))
    line = flatten(contour, 1e-4)
    for point in points:
        assert np.hypot(*(line - point).T).min() < 0.02


def test_old_polylines_with_a_spline_frame_use_the_curve_not_the_frame(tmp_path: Path) -> None:
    def draw(space: Any, _: Any) -> None:
        polyline = space.add_polyline2d([(0, 0), (5, 9), (10, 0)], dxfattribs={"flags": 4})
        for vertex in polyline.vertices:
            vertex.dxf.flags = 16
        polyline.append_vertices([(0, 0), (5, 4.5), (10, 0)], dxfattribs={"flags": 8})

    (contour,) = contours(read_dxf(drawn(tmp_path, draw)))
    assert contour.vertices.tolist() == [[0, 0], [5, 4.5], [10, 0]]


def test_extrusion_minus_one_mirrors(tmp_path: Path) -> None:
    """The arbitrary axis algorithm gives Ax = (−1, 0, 0) for the normal (0, 0, −1) (DXF reference)."""
    path = drawn(tmp_path, lambda s, _: s.add_lwpolyline(
        [(0, 0, 1), (10, 0, 0), (10, 5, 0)], format="xyb", close=True,
        dxfattribs={"extrusion": (0, 0, -1)}))  # fmt: skip
    (contour,) = contours(read_dxf(path))
    assert contour.vertices == pytest.approx(np.array([(0, 0), (-10, 0), (-10, 5)]))
    assert contour.bulges.tolist() == [-1, 0, 0]


@pytest.mark.parametrize(
    "attributes",
    [
        {"xscale": -1, "rotation": 30},
        {"xscale": 2, "yscale": 0.5, "rotation": -70},
        {"yscale": -3, "extrusion": (0, 0, -1)},
        {"xscale": 2, "yscale": 2, "row_count": 2, "column_count": 3, "row_spacing": 40, "column_spacing": 60,
         "rotation": 10},
    ],
)  # fmt: skip
def test_blocks_lie_where_an_independent_expansion_puts_them(
    tmp_path: Path, attributes: dict[str, Any]
) -> None:
    """Against ezdxf's own expansion of block references (`virtual_entities`, `multi_insert`)."""
    expected: list[Vec2] = []

    def draw(space: Any, document: Any) -> None:
        block = document.blocks.new("foot", base_point=(1, 2))
        block.add_lwpolyline([(0, 0), (7, 0), (5, 3)], close=True)
        insert = space.add_blockref("foot", (20, 30), dxfattribs=attributes)
        for one in insert.multi_insert() if insert.mcount > 1 else [insert]:
            for entity in one.virtual_entities():
                expected.extend(Vec2(v).round(6) for v in entity.vertices_in_wcs())

    result = read_dxf(drawn(tmp_path, draw))
    found = [Vec2(v).round(6) for path in contours(result) for v in path.vertices]
    assert np.array(sorted(map(tuple, found))) == pytest.approx(
        np.array(sorted(map(tuple, expected))), abs=2e-6
    )
    assert {figure.name for figure in result.drawing} == {"foot"}


def test_blocks_in_blocks_keep_circles_round_unless_squeezed(tmp_path: Path) -> None:
    def draw(space: Any, document: Any) -> None:
        document.blocks.new("in").add_circle((5, 2), 1)
        outer = document.blocks.new("out")
        outer.add_blockref("in", (1, 1), dxfattribs={"xscale": -1, "rotation": 20})
        outer.add_blockref("in", (30, 1), dxfattribs={"yscale": 3})
        space.add_blockref("out", (0, 0), dxfattribs={"rotation": 45, "xscale": 2, "yscale": 2})

    round_one, long_one = read_dxf(drawn(tmp_path, draw)).drawing
    assert round_one.contours[0].bulges.all()
    assert area(round_one) == pytest.approx(4 * math.pi, rel=1e-4)
    assert long_one.contours[0].curves
    assert area(long_one) == pytest.approx(12 * math.pi, rel=1e-4)


def test_layer_zero_in_a_block_is_the_layer_of_its_reference(tmp_path: Path) -> None:
    def draw(space: Any, document: Any) -> None:
        block = document.blocks.new("b")
        block.add_circle((0, 0), 1)
        block.add_circle((5, 0), 1, dxfattribs={"layer": "own"})
        space.add_blockref("b", (0, 0), dxfattribs={"layer": "recess"})

    assert [f.layer for f in read_dxf(drawn(tmp_path, draw)).drawing] == ["recess", "own"]


def test_a_hatch_counts_only_where_its_edge_is_not_drawn(tmp_path: Path) -> None:
    def draw(space: Any, _: Any) -> None:
        space.add_lwpolyline(SQUARE, close=True)
        space.add_hatch().paths.add_polyline_path(SQUARE)
        edges = space.add_hatch().paths.add_edge_path()
        edges.add_line((20, 0), (30, 0))
        edges.add_arc((30, 5), 5, -90, 90)
        edges.add_line((30, 10), (20, 10))
        edges.add_arc((20, 5), 5, -90, 90, ccw=False)

    result = read_dxf(drawn(tmp_path, draw))
    assert [f.fill for f in result.drawing] == [None, FillRule.EVENODD]
    assert area(list(result.drawing)[1]) == pytest.approx(100, rel=1e-6)  # one half disc added, one taken
    assert "fill-on-lines" in codes(result)


def test_a_filled_quadrilateral_crosses_its_last_corners_over(tmp_path: Path) -> None:
    path = drawn(tmp_path, lambda s, _: s.add_solid([(0, 0), (10, 0), (0, 5), (10, 5)]))
    (figure,) = read_dxf(path).drawing
    assert figure.fill is FillRule.EVENODD
    assert area(figure) == 50


def test_lines_for_the_reader_are_marks_with_a_finding(tmp_path: Path) -> None:
    def draw(space: Any, document: Any) -> None:
        document.layers.add("away").off()
        document.layers.add("cold").freeze()
        document.layers.add("axes of holes", linetype="CENTER")
        space.add_circle((0, 0), 9)
        for layer in (
            "Defpoints",
            "DIM-1",
            "construction lines",
            "axes of holes",
            "away",
            "cold",
            "Mittellinie",
        ):
            space.add_circle((0, 0), 1, dxfattribs={"layer": layer})
        space.add_circle((0, 0), 2, dxfattribs={"linetype": "HIDDEN2"})
        space.add_circle((0, 0), 3, dxfattribs={"layer": "dimmer plate"})

    result = read_dxf(drawn(tmp_path, draw))
    outlines = [f for f in result.drawing if f.role is Role.OUTLINE]
    assert [f.layer for f in outlines] == ["0", "dimmer plate"]
    counts = {f.code: f.message.split()[0] for f in result.findings}
    assert counts == {"construction-skipped": "6", "hidden-skipped": "2"}


def test_what_cannot_be_an_outline_is_one_finding_a_kind_with_count_and_place(tmp_path: Path) -> None:
    def draw(space: Any, _: Any) -> None:
        space.add_circle((0, 0), 9)
        for x in (3, 4, 5):
            space.add_text("A", dxfattribs={"insert": (x, 7)})
        space.add_mtext("B", dxfattribs={"insert": (1, 1)})
        space.add_point((2, 2))
        space.add_3dface([(0, 0, 0), (1, 0, 0), (1, 1, 1)])
        space.add_polymesh((3, 3))
        space.add_linear_dim((0, 3), (0, 0), (5, 0)).render()
        space.add_xline((0, 0), (1, 1))

    result = read_dxf(drawn(tmp_path, draw))
    found = {f.code: f for f in result.findings}
    assert set(found) == {
        "text-skipped", "point-skipped", "solid-3d-skipped", "dimension-skipped", "endless-line-skipped",
    }  # fmt: skip
    assert found["text-skipped"].message.startswith("4 ")
    assert found["text-skipped"].place_mm == pytest.approx((3, 7))
    assert all(f.remedy for f in result.findings)


def test_degenerate_entities_are_findings_not_crashes(tmp_path: Path) -> None:
    def draw(space: Any, _: Any) -> None:
        space.add_circle((0, 0), 9)
        space.add_circle((1, 1), 0)
        space.add_line((1, 1), (1, 1))
        space.add_arc((0, 0), 0, 0, 1)
        space.add_arc((0, 0), 1, 30, 30)
        space.add_lwpolyline([(0, 0)])
        space.add_ellipse((0, 0), (1, 0), 0.5, 1, 1)
        space.add_lwpolyline([(0, 0), (4, 0), (4, 0), (4, 4)], close=True)
        space.add_line((1e308, 0), (0, 1e308))
        space.add_circle((1e200, 0), 1e300)

    result = read_dxf(drawn(tmp_path, draw))
    counts = {f.code: f.message.split()[0] for f in result.findings}
    assert counts == {"entity-degenerate": "5", "zero-length": "2", "coordinate-huge": "2"}
    assert sorted(len(path.vertices) for path in contours(result)) == [2, 3]


def test_a_line_with_a_width_is_noted(tmp_path: Path) -> None:
    path = drawn(tmp_path, lambda s, _: s.add_lwpolyline(SQUARE, close=True, dxfattribs={"const_width": 1}))
    assert codes(read_dxf(path)) == ["line-width"]


def test_a_file_that_draws_nothing_says_so(tmp_path: Path) -> None:
    with pytest.raises(NoOutlineError, match="empty"):
        read_dxf(drawn(tmp_path, lambda s, _: None))
    with pytest.raises(NoOutlineError, match="1 text"):
        read_dxf(drawn(tmp_path, lambda s, _: s.add_text("only words")))
