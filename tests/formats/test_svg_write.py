"""SVG as written: painted by resvg, which is not ours, read as plain XML, and read by our own reader."""

from __future__ import annotations

import math
import re
from pathlib import Path as FilePath
from xml.etree.ElementTree import Element, fromstring

import numpy as np
import pytest
import resvg_py
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QImage

from inlayfit.drawing import Drawing, Figure
from inlayfit.formats.svg_read import read_svg, read_svg_text
from inlayfit.formats.svg_write import page_of, svg_text, write_svg
from inlayfit.formats.verify import compare, on_page
from inlayfit.geometry.path import Bezier, Path
from inlayfit.units import Unit

SVG = "{http://www.w3.org/2000/svg}"
PX_PER_MM = 20


def painted_mm2(svg: str) -> float:
    """Area that resvg paints with every path filled, in mm²."""
    filled = svg.replace('fill="none"', 'fill="black" fill-rule="evenodd"')
    filled = re.sub(r'stroke="#[0-9a-f]{6}"', 'stroke="none"', filled)
    # CSS Values 3, "Absolute lengths": 25.4 mm are 96 px.
    data = bytes(resvg_py.svg_to_bytes(svg_string=filled, dpi=96, zoom=PX_PER_MM * 25.4 / 96))
    image = QImage.fromData(data).convertToFormat(QImage.Format.Format_Alpha8)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return float(rows[:, : image.width()].sum(dtype=np.int64)) / 255 / PX_PER_MM**2


def paths_of(svg: str) -> list[Element]:
    return list(fromstring(svg.encode()).iter(f"{SVG}path"))


def slot(length: float = 20.0, radius: float = 3.0) -> Path:
    corners = np.array([[0.0, -radius], [length, -radius], [length, radius], [0, radius]])
    return Path(corners, np.array([0.0, 1.0, 0.0, 1.0]))


def test_resvg_paints_the_area_that_was_meant() -> None:
    foot = Figure((slot(), Path.circle((5, 0), 2.0).reversed()), layer="POCKET", name="foot")
    drawing = Drawing((foot, Figure((Path.circle((-15, 7), 8.25),), layer="PLUG")))
    exact = 20 * 6 + math.pi * 9 - math.pi * 4 + math.pi * 8.25**2
    assert painted_mm2(svg_text(drawing)) == pytest.approx(exact, rel=5e-4)


@given(st.floats(0.02, 6.2), st.floats(0.05, 300), st.floats(-400, 400), st.booleans())
def test_any_arc_comes_back_where_it_was(sweep: float, radius: float, x: float, clockwise: bool) -> None:
    """From a degree to almost a whole turn, half circles and what is next to them among them."""
    for angle in (sweep, math.pi, math.pi - 1e-5, math.pi + 1e-5, math.pi - 1e-9):
        turn = -angle if clockwise else angle
        ends = np.array([[x + radius, 0.0], [x + radius * math.cos(turn), radius * math.sin(turn)]])
        drawing = Drawing((Figure((Path(ends, np.array([math.tan(turn / 4)]), closed=False),)),))
        page = page_of(drawing)
        read = read_svg_text(svg_text(drawing, page=page)).drawing
        problem, deviation = compare(on_page(drawing, page), read)
        assert not problem
        assert deviation < 0.00006  # of which 0.00005 are the comparison's own chords


def test_a_full_circle_is_two_arcs() -> None:
    (path,) = paths_of(svg_text(Drawing((Figure((Path.circle((10, 10), 5),)),))))
    assert path.get("d", "").count("A") == 2
    assert path.get("d", "").endswith("Z")


def test_size_and_view_box_are_millimetres_and_layers_are_groups() -> None:
    drawing = Drawing((Figure((slot(),), layer="POCKET"), Figure((slot(),), layer="POCKET_ROUGH")))
    root = fromstring(svg_text(drawing).encode())
    assert (root.get("width"), root.get("height")) == ("26mm", "6mm")
    assert root.get("viewBox") == "-3 -3 26 6"
    assert [group.get("id") for group in root.iter(f"{SVG}g")] == ["POCKET", "POCKET_ROUGH"]
    for group in root.iter(f"{SVG}g"):
        assert group.get("fill") == "none"


def test_coordinates_are_the_drawings_own_with_y_turned_over() -> None:
    square = Path.polyline([(100, 50), (110, 50), (110, 70), (100, 70)])
    (path,) = paths_of(svg_text(Drawing((Figure((square,)),))))
    assert path.get("d") == "M100 -50L110 -50L110 -70L100 -70L100 -50Z"


def test_names_become_ids_and_no_id_comes_twice() -> None:
    names = ["foot", "foot", "2 feet", "POCKET", ""]
    figures = [Figure((slot(),), layer="POCKET", name=name) for name in names]
    figures.append(Figure((slot(),), layer="POCKET_ROUGH", name="foot"))
    svg = svg_text(Drawing(tuple(figures)))
    ids = re.findall(r' id="([^"]*)"', svg)
    assert len(ids) == len(set(ids))
    assert {"POCKET", "POCKET_ROUGH", "foot", "foot-pocket", "foot-pocket_rough"} <= set(ids)
    assert all(re.fullmatch(r"[A-Za-z_][\w.-]*", name) for name in ids)
    assert "<title>2 feet</title>" in svg


def test_beziers_are_written_as_such_or_as_arcs(tmp_path: FilePath) -> None:
    cubic = Bezier(np.array([[0.0, 0], [15, 25], [30, -25], [40, 0]]))
    conic = Bezier(np.array([[40.0, 0], [40, -30], [10, -30]]), np.array([1, math.sqrt(0.5), 1]))
    quadratic = Bezier(np.array([[10.0, -30], [-10, -20], [0, 0]]))
    path = Path(
        np.array([[0.0, 0], [40, 0], [10, -30]]), np.zeros(3), True, {0: cubic, 1: conic, 2: quadratic}
    )
    drawing = Drawing((Figure((path,), layer="PLUG"),))
    write_svg(drawing, tmp_path / "plug.svg")
    commands = re.sub(r"[^A-Z]", "", paths_of((tmp_path / "plug.svg").read_text())[0].get("d", ""))
    assert commands == "MCAQZ"
    result = read_svg(tmp_path / "plug.svg")
    assert result.file_unit is Unit.MM
    problem, deviation = compare(on_page(drawing, page_of(drawing)), result.drawing)
    assert (problem, deviation < 0.001) == ("", True)


@given(
    st.lists(st.tuples(st.floats(-1000, 1000), st.floats(-1000, 1000)), min_size=3, max_size=30, unique=True)
)
def test_numbers_keep_a_thousandth_of_a_micrometre(points: list[tuple[float, float]]) -> None:
    drawing = Drawing((Figure((Path.polyline(points),)),))
    data = paths_of(svg_text(drawing))[0].get("d", "")
    numbers = np.array([float(v) for v in re.findall(r"-?\d+(?:\.\d+)?", data)]).reshape(-1, 2)
    assert np.abs(numbers[: len(points)] * (1, -1) - points).max() <= 0.5e-6 + 1e-12


def test_the_same_drawing_gives_the_same_text() -> None:
    drawing = Drawing((Figure((slot(),), layer="PLUG", name="a"),))
    assert svg_text(drawing) == svg_text(drawing)


def test_an_empty_drawing_still_has_a_page() -> None:
    assert fromstring(svg_text(Drawing()).encode()).get("viewBox") == "0 -1 1 1"
