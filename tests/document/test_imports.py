from __future__ import annotations

import math
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from inlayfit.document.imports import Imported, import_drawing, import_text
from inlayfit.errors import Cancelled, NoOutlineError, NotADrawingError
from inlayfit.finding import Severity
from inlayfit.progress import Progress
from inlayfit.units import Unit
from tests.formats.dxf_files import WHOLE, drawn, written

RECTANGLE = [(0.0, 0.0), (10.0, 0.0), (10.0, 5.0), (0.0, 5.0)]


def imported(folder: Path, draw: Callable[[Any], object], **asked: Any) -> Imported:
    return import_drawing(drawn(folder, lambda space, _: draw(space)), **asked)


def lines(space: Any, points: list[tuple[float, float]], **attributes: Any) -> None:
    for start, end in zip(points, [*points[1:], points[0]], strict=True):
        space.add_line(start, end, dxfattribs=attributes)


def total(found: Imported) -> float:
    return sum(outline.region.area for outline in found.outlines)


def codes(found: Imported) -> list[str]:
    return [finding.code for finding in found.findings]


def svg(body: str) -> str:
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">'
        f"{body}</svg>"
    )


def test_lines_and_arcs_become_one_outline_with_its_true_arcs(tmp_path: Path) -> None:
    def stadium(space: Any) -> None:
        space.add_line((0, 0), (10, 0))
        space.add_arc((10, 2), 2, 270, 90)
        space.add_line((10, 4), (0, 4))
        space.add_arc((0, 2), 2, 90, 270)

    found = imported(tmp_path, stadium)
    (outline,) = found.outlines
    assert outline.region.area == pytest.approx(40 + 4 * math.pi, rel=1e-4)
    assert sorted(outline.contours[0].bulges) == pytest.approx([0, 0, 1, 1])
    assert found.unit is Unit.MM
    assert found.findings == ()


def test_holes_and_islands_nest(tmp_path: Path) -> None:
    found = imported(tmp_path, lambda s: [s.add_circle((0, 0), r) for r in (5, 3, 1)])
    assert [o.region.hole_count for o in found.outlines] == [1, 0]
    assert [len(o.contours) for o in found.outlines] == [2, 1]
    assert total(found) == pytest.approx(math.pi * (25 - 9 + 1), rel=1e-4)


def test_layers_do_not_cut_holes_into_each_other_and_can_be_chosen(tmp_path: Path) -> None:
    def draw(space: Any) -> None:
        space.add_circle((0, 0), 5, dxfattribs={"layer": "tray"})
        space.add_circle((0, 0), 3, dxfattribs={"layer": "disc"})

    both = imported(tmp_path, draw)
    assert [(o.layer, o.name, o.region.hole_count) for o in both.outlines] == [
        ("tray", "tray", 0),
        ("disc", "disc", 0),
    ]
    one = imported(tmp_path, draw, layers=["disc"])
    assert [o.layer for o in one.outlines] == ["disc"]
    with pytest.raises(NoOutlineError, match="tray, disc"):
        imported(tmp_path, draw, layers=["lid"])


def test_ids_follow_the_page_not_the_file(tmp_path: Path) -> None:
    middles = [(0.0, 0.0), (30.0, 41.0), (0.0, 40.0), (60.0, 39.0), (30.0, 0.0)]

    def draw(order: list[tuple[float, float]]) -> Callable[[Any], object]:
        return lambda space: [space.add_circle(middle, 4) for middle in order]

    there = [(o.id, o.region.bounds) for o in imported(tmp_path, draw(middles)).outlines]
    assert there == [(o.id, o.region.bounds) for o in imported(tmp_path, draw(middles[::-1])).outlines]
    lefts = [round(bounds[0]) for _, bounds in there]
    assert [name for name, _ in there] == ["o1", "o2", "o3", "o4", "o5"]
    assert lefts == [-4, 26, 56, -4, 26]  # the upper row from the left, then the lower


def test_a_closed_gap_is_a_fixed_finding_and_a_wide_one_an_error_with_its_place(tmp_path: Path) -> None:
    def draw(space: Any) -> None:
        space.add_lwpolyline([(0, 0), (10, 0), (10, 5), (0, 5), (0, 0.5)])

    with pytest.raises(
        NoOutlineError, match=r"1 open line: a line is open at \(0\.00, 0\.\d0\) mm.*0\.500 mm"
    ):
        imported(tmp_path, draw)
    found = imported(tmp_path, draw, gap_mm=0.6)
    (finding,) = found.findings
    assert (finding.code, finding.fixed) == ("gap-closed", True)
    assert finding.place_mm == pytest.approx((0, 0.25))
    assert total(found) == pytest.approx(50)


def test_many_gaps_are_summed_up_with_the_widest(tmp_path: Path) -> None:
    def draw(space: Any) -> None:
        for k in range(30):
            space.add_lwpolyline([(20 * k, 0), (20 * k + 9, 0), (20 * k, 9), (20 * k, 0.001 + k * 0.0002)])

    (finding,) = imported(tmp_path, draw).findings
    assert finding.message.startswith("30 gaps were closed, the widest 0.0068 mm")


def test_an_open_line_beside_an_outline_is_an_open_finding(tmp_path: Path) -> None:
    def draw(space: Any) -> None:
        lines(space, RECTANGLE)
        space.add_line((20, 0), (30, 0))

    found = imported(tmp_path, draw)
    (finding,) = found.findings
    assert (finding.code, finding.severity, finding.fixed) == ("outline-open", Severity.WARN, False)
    assert "10.000 mm" in finding.message


def test_outlines_on_top_of_each_other_count_once_even_across_layers(tmp_path: Path) -> None:
    def draw(space: Any) -> None:
        space.add_lwpolyline(RECTANGLE, close=True, dxfattribs={"layer": "a"})
        space.add_lwpolyline(RECTANGLE[2:] + RECTANGLE[:2], close=True, dxfattribs={"layer": "b"})
        lines(space, RECTANGLE, layer="a")

    found = imported(tmp_path, draw)
    assert len(found.outlines) == 1
    assert total(found) == pytest.approx(50)
    assert codes(found) == ["outline-doubled", "outline-doubled"]
    assert all(finding.fixed for finding in found.findings)


def test_construction_counts_only_if_there_is_nothing_else(tmp_path: Path) -> None:
    def draw(space: Any, *, outline: bool) -> None:
        space.add_circle((0, 0), 2, dxfattribs={"layer": "construction"})
        if outline:
            space.add_circle((0, 0), 5)

    assert len(imported(tmp_path, lambda s: draw(s, outline=True)).outlines) == 1
    alone = imported(tmp_path, lambda s: draw(s, outline=False))
    assert total(alone) == pytest.approx(4 * math.pi, rel=1e-3)
    assert "marks-used" in codes(alone)
    chosen = imported(tmp_path, lambda s: draw(s, outline=True), layers=["construction"])
    assert total(chosen) == pytest.approx(4 * math.pi, rel=1e-3)


def test_a_drawing_larger_than_ten_metres_is_suspected(tmp_path: Path) -> None:
    path = written(tmp_path, WHOLE)
    assert "size-absurd" not in codes(import_drawing(path, unit=Unit.M))  # 10 × 5 m, just not larger
    assert "size-absurd" in codes(imported(tmp_path, lambda s: s.add_circle((0, 0), 5_001)))


def test_a_figure_eight_is_mended_and_said(tmp_path: Path) -> None:
    found = imported(tmp_path, lambda s: s.add_lwpolyline([(0, 0), (10, 10), (10, 0), (0, 10)], close=True))
    assert total(found) == pytest.approx(50)
    assert codes(found) == ["outline-self-crossing"]


def test_a_painted_shape_inside_another_is_hidden() -> None:
    found = import_text(
        svg('<rect id="lid" x="10" y="10" width="40" height="40"/><circle id="leaf" cx="30" cy="30" r="5"/>')
    )
    assert total(found) == pytest.approx(1600)
    (finding,) = found.findings
    assert finding.code == "shape-hidden"
    assert "leaf" in finding.message
    assert "lid" in finding.message
    assert finding.place_mm == pytest.approx((30, 70), abs=1)


def test_painted_shapes_that_overlap_are_one_outline_and_keep_names() -> None:
    found = import_text(
        svg('<rect id="a" width="20" height="20"/><rect id="b" x="10" width="20" height="20"/>')
    )
    (outline,) = found.outlines
    assert outline.region.area == pytest.approx(600)
    assert outline.name in ("a", "b")


def test_svg_lines_are_centre_lines_unless_asked_for_as_areas() -> None:
    body = '<circle cx="50" cy="50" r="20" fill="none" stroke="black" stroke-width="2"/>'
    assert total(import_text(svg(body))) == pytest.approx(math.pi * 400, rel=1e-4)
    ring = import_text(svg(body), strokes_as_areas=True)
    assert total(ring) == pytest.approx(math.pi * (21**2 - 19**2), rel=1e-4)
    assert ring.outlines[0].region.hole_count == 1


def test_pasted_text_may_be_a_table_of_points_or_nothing_at_all() -> None:
    assert total(import_text("x mm, y mm\n0,0\n4,0\n4,3\n")) == pytest.approx(6)
    with pytest.raises(NotADrawingError, match="neither DXF nor SVG"):
        import_text("a shopping list")
    with pytest.raises(NotADrawingError, match="neither DXF nor SVG"):
        import_text("")


def test_importing_can_be_stopped(tmp_path: Path) -> None:
    progress = Progress()
    progress.cancel()
    with pytest.raises(Cancelled):
        imported(tmp_path, lambda s: s.add_circle((0, 0), 5), progress=progress)


def test_progress_only_grows(tmp_path: Path) -> None:
    seen: list[float] = []
    imported(
        tmp_path, lambda s: s.add_circle((0, 0), 5), progress=Progress(lambda share, _: seen.append(share))
    )
    assert seen == sorted(seen)
    assert len(seen) >= 3
