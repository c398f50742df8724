from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.errors import HostileFileError, NoOutlineError, NotADrawingError
from inlayfit.formats import points_read
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.points_read import looks_like_points, read_points_text
from inlayfit.formats.registry import read_drawing
from inlayfit.units import Unit

SOURCE = Path("points.csv")
numbers = st.floats(-1e4, 1e4).map(lambda v: round(v, 4))


def read(text: str, unit: Unit | None = None) -> ReadResult:
    return read_points_text(text, SOURCE, ReadOptions(unit))


def points(result: ReadResult) -> list[list[list[float]]]:
    return [figure.contours[0].vertices.tolist() for figure in result.drawing]


@given(st.lists(st.tuples(numbers, numbers), min_size=3, max_size=9, unique=True), st.sampled_from(",; \t"))
def test_a_table_reads_back_what_was_written(rows: list[tuple[float, float]], mark: str) -> None:
    decimal = "," if mark in ";\t" else "."
    lines = [f"{x}{mark}{y}".replace(".", decimal) if mark != "," else f"{x}, {y}" for x, y in rows]
    text = "# unit: mm\n" + "\n".join(lines)
    assert looks_like_points(text.encode())
    assert np.array(points(read(text))[0]) == pytest.approx(np.array(rows))


@pytest.mark.parametrize(
    ("head", "unit"),
    [("x mm, y mm", Unit.MM), ("x [in]; y [in]", Unit.INCH), ("X,Y", None), ("# unit: in", Unit.INCH),
     ("# unit = thou", Unit.THOU), ("x_cm,y_cm", Unit.CM), ("x (cm) y (cm)", Unit.CM),
     ("# measured on the tray", None)],
)  # fmt: skip
def test_the_header_states_the_unit(head: str, unit: Unit | None) -> None:
    result = read(f"{head}\n0 0\n2 0\n2 1\n")
    assert result.file_unit is unit
    scale = 1.0 if unit is None else float(unit.mm)
    assert points(result) == [pytest.approx(np.array([[0, 0], [2, 0], [2, 1]]) * scale)]
    assert ("unit-missing" in [f.code for f in result.findings]) == (unit is None)


def test_an_empty_line_starts_another_contour_and_the_end_may_repeat_the_start() -> None:
    result = read("# unit: mm\n0,0\n9,0\n9,9\n0,0\n\n\n20,0\n21,0\n21,1\n")
    assert [len(contour) for contour in points(result)] == [3, 3]


def test_a_third_number_is_left_out_and_a_true_minus_is_a_minus() -> None:
    assert points(read("−1.5 2 7\n3 4 7\n0 9 7\n", Unit.MM))[0][0] == [-1.5, 2.0]


def test_lines_that_hold_no_point_are_named_by_number() -> None:
    result = read("# unit: mm\n0,0\n1,nothing\n4,0\n4,4\nnan,2\n")
    (finding,) = result.findings
    assert "line 3, 6" in finding.message


def test_what_cannot_be_an_outline_is_said_in_a_sentence(monkeypatch: pytest.MonkeyPatch) -> None:
    with pytest.raises(NotADrawingError, match="holds no points"):
        read("x, y\n")
    with pytest.raises(NoOutlineError, match="no contour of three"):
        read("1,2\n3,4\n")
    monkeypatch.setattr(points_read, "MOST_LINES", 2)
    with pytest.raises(HostileFileError, match="3 lines"):
        read("1,2\n3,4\n5,6\n")


def test_the_registry_takes_a_table_whatever_its_name(tmp_path: Path) -> None:
    path = tmp_path / "measured.dxf"
    path.write_text("x mm;y mm\n0,5;0\n10,5;0\n10,5;4\n", "utf-8")
    assert points(read_drawing(path)) == [[[0.5, 0], [10.5, 0], [10.5, 4]]]
