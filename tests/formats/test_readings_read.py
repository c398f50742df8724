"""Tables of readings read back as they were written, and a line that is none is never left out."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.errors import HostileFileError, ReadError
from inlayfit.formats.readings_read import MOST_BYTES, read_readings
from tests.strategies import examples

widths = st.integers(1, 10**7).map(lambda tenths: f"{tenths / 1e4:.4f}")


def rows(folder: Path, text: str) -> list[tuple[str, str, str]]:
    path = folder / "readings.csv"
    path.write_text(text, "utf-8")
    return [(each.axis, each.drawn, each.read) for each in read_readings(path)]


@examples(20, 100)
@given(st.lists(st.tuples(st.sampled_from("XY"), widths, widths), min_size=1), st.sampled_from(",;\t"))
def test_a_table_reads_back_what_was_written(
    tmp_path_factory: pytest.TempPathFactory, table: list[tuple[str, str, str]], mark: str
) -> None:
    folder = tmp_path_factory.mktemp("readings")
    lines = [mark.join(row) if mark == "," else mark.join(row).replace(".", ",") for row in table]
    assert rows(folder, "axis" + mark + "drawn" + mark + "read\n" + "\n".join(lines)) == table


@pytest.mark.parametrize(
    ("text", "row"),
    [("# unit: in\nX,1,1.002", ("X", "1 in", "1.002 in")),
     ("axis,drawn mm,read mm\nx,4,5", ("X", "4 mm", "5 mm")),
     ("# unit: in\nY,1,25.4mm", ("Y", "1 in", "25.4mm")), ('\ufeff"X";"4,5";"4,6"\n\n', ("X", "4.5", "4.6"))],
)  # fmt: skip
def test_the_unit_is_the_tables_unless_a_width_has_its_own(
    tmp_path: Path, text: str, row: tuple[str, str, str]
) -> None:
    assert rows(tmp_path, text) == [row]


@pytest.mark.parametrize("line", ["Z,4,5", "X,4", "X,4,5,6", "X,,5", "4,5", "X 4 5"])
def test_a_line_that_is_no_reading_is_named(tmp_path: Path, line: str) -> None:
    with pytest.raises(ReadError, match=r"Line 2 of “readings\.csv” is not a reading"):
        rows(tmp_path, f"X,1,1\n{line}\n")


def test_nothing_and_far_too_much_are_one_sentence(tmp_path: Path) -> None:
    with pytest.raises(ReadError, match="holds no readings"):
        rows(tmp_path, "axis,drawn,read\n")
    with pytest.raises(HostileFileError, match="too large"):
        rows(tmp_path, "X,1,1\n" * (MOST_BYTES // 6 + 1))
