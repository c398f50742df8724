"""Read-back comparison: it passes what is the same and stops what is not, by distance."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path as FilePath

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.drawing import Drawing, Figure
from inlayfit.errors import NotADrawingError, ReadBackError
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.dxf_read import read_dxf
from inlayfit.formats.dxf_write import DxfVersion, write_dxf
from inlayfit.formats.svg_read import read_svg
from inlayfit.formats.svg_write import page_of, write_svg
from inlayfit.formats.verify import check_written, compare, on_page, path_distance
from inlayfit.geometry.arcs import region_paths
from inlayfit.geometry.morphology import opened
from inlayfit.geometry.path import Bezier, Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform, arcs_as_curves
from inlayfit.units import Unit


def slot(x: float = 0.0) -> Path:
    corners = np.array([[x, -3], [x + 20, -3], [x + 20, 3], [x, 3]])
    return Path(corners, np.array([0.0, 1.0, 0.0, 1.0]))


def one(*contours: Path, layer: str = "POCKET") -> Drawing:
    return Drawing((Figure(contours, layer=layer),))


def answering(drawing: Drawing, unit: Unit | None = Unit.MM) -> ReadResult:
    return ReadResult(drawing, FilePath("x.dxf"), unit, unit or Unit.MM)


@st.composite
def rounded_regions(draw: st.DrawFn) -> Region:
    count = draw(st.integers(3, 8))
    radii = np.array(draw(st.lists(st.floats(8.0, 30.0), min_size=count, max_size=count)))
    angles = np.arange(count) * 2 * np.pi / count
    star = radii[:, None] * np.column_stack([np.cos(angles), np.sin(angles)])
    return opened(Region.of_ring(star), draw(st.floats(0.3, 1.5)), EXACT)


@given(rounded_regions(), st.floats(-300, 300), st.booleans())
def test_read_after_write_is_the_same_drawing(
    tmp_path_factory: pytest.TempPathFactory, region: Region, x: float, old: bool
) -> None:
    folder = tmp_path_factory.mktemp("written")
    paths = region_paths(region.moved(Transform.shift(x, -x / 3))).paths
    drawing = Drawing((Figure(paths, layer="PLUG", name="a1"), Figure(paths[:1], layer="PLUG_ROUGH")))
    version = DxfVersion.R12 if old else DxfVersion.R2000
    write_dxf(drawing, folder / "plug.dxf", version=version)
    assert check_written(folder / "plug.dxf", drawing, read_dxf, states_unit=not old) < 1e-9
    write_svg(drawing, folder / "plug.svg")
    meant = on_page(drawing, page_of(drawing))
    assert check_written(folder / "plug.svg", meant, read_svg) < 0.0001


@given(st.floats(-0.02, 0.02), st.floats(-0.02, 0.02))
def test_a_moved_line_is_found_by_how_far_it_moved(dx: float, dy: float) -> None:
    moved = one(Transform.shift(dx, dy).path(slot()))
    problem, deviation = compare(one(slot()), moved)
    assert bool(problem) == (deviation > 0.001)
    assert deviation <= max(np.hypot(dx, dy), 1e-12) + 1e-4
    assert deviation >= max(abs(dx), abs(dy)) * 0.7 - 1e-4


def test_another_start_another_direction_and_other_pieces_are_the_same_line() -> None:
    line = slot()
    turned = Path(np.roll(line.vertices, -1, axis=0), np.roll(line.bulges, -1))
    for other in (turned, line.reversed(), arcs_as_curves(line)):
        assert path_distance(line, other) < 0.0002
    assert compare(one(slot(), slot(50)), one(slot(50), slot()))[0] == ""


def test_a_long_thin_spike_is_found_though_it_has_no_area() -> None:
    spike = Path.polyline([(0, 0), (20, 0), (20, 5), (20, 30), (20, 5), (20, 10), (0, 10)])
    plain = Path.polyline([(0, 0), (20, 0), (20, 10), (0, 10)])
    problem, deviation = compare(one(plain), one(spike))
    assert "off by" in problem
    assert deviation == pytest.approx(20, abs=1e-6)


@pytest.mark.parametrize(
    ("read", "words"),
    [
        (one(slot(), layer="PLUG"), "layers differ"),
        (one(slot(), slot(40)), "holds 2 contours instead of 1"),
        (one(Path.polyline([(0, 0), (1, 0), (1, 1)], closed=False)), "is open in it"),
        (one(Transform.scale(1.001).path(slot())), "off by"),
        (Drawing(), "layers differ"),
    ],
)
def test_each_difference_is_named_and_the_file_is_removed(
    read: Drawing, words: str, tmp_path: FilePath
) -> None:
    path = tmp_path / "pocket.dxf"
    path.write_text("x")
    with pytest.raises(ReadBackError, match=words) as caught:
        check_written(path, one(slot()), lambda _path, _options: answering(read))
    assert caught.value.path == path
    assert not path.exists()


def test_a_file_that_cannot_be_read_or_states_no_unit_is_removed(tmp_path: FilePath) -> None:
    def broken(path: FilePath, _options: ReadOptions) -> ReadResult:
        raise NotADrawingError("it is empty.", path=path)

    def without_unit(_path: FilePath, _options: ReadOptions) -> ReadResult:
        return answering(one(slot()), None)

    for reader, words in ((broken, "cannot be read back"), (without_unit, "unit is the millimetre")):
        path = tmp_path / "pocket.dxf"
        path.write_text("x")
        with pytest.raises(ReadBackError, match=words):
            check_written(path, one(slot()), reader)
        assert not path.exists()


def test_a_line_written_half_is_found(tmp_path: FilePath) -> None:
    """The writer is honest, the disk is not: a vertex is lost from the file."""
    path = tmp_path / "pocket.svg"
    write_svg(one(slot()), path)
    path.write_text(path.read_text().replace("L20 3", "L20 3.01").replace("L20 -3", "L20 -2.99"))
    with pytest.raises(ReadBackError):
        check_written(path, on_page(one(slot()), page_of(one(slot()))), read_svg)


def test_curves_are_compared_as_curves() -> None:
    curve = Bezier(np.array([[0.0, 0], [15, 25], [30, -25], [40, 0]]))
    line = Path(curve.control[[0, -1]], np.zeros(1), False, {0: curve})
    lifted = curve.control + np.array([[0, 0], [0, 0.1], [0, 0], [0, 0]])
    other = replace(line, curves={0: Bezier(lifted)})
    assert path_distance(line, line) < 1e-4
    # A control point of a cubic moves the curve by at most 4/9 of its own move (Bernstein polynomial b1).
    assert path_distance(line, other) == pytest.approx(0.1 * 4 / 9, rel=0.35)
