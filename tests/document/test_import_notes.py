"""What reading came to: every change counted, every layer named, the unit remembered for a folder."""

from __future__ import annotations

import json
from pathlib import Path

import ezdxf.filemanagement
import pytest

from inlayfit.document.folder_units import remember_unit, unit_for
from inlayfit.document.import_notes import changes, changes_words, layer_notes, layers_words, look_at
from inlayfit.document.imports import import_drawing
from inlayfit.document.reading import marks_of, read_as
from inlayfit.document.state import SettingsUsed
from inlayfit.units import Unit


@pytest.fixture(autouse=True)
def own_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Choices are remembered in the folder of the test."""
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "config"))
    monkeypatch.setenv("LOCALAPPDATA", str(tmp_path / "config"))


def squares(folder: Path, count: int, *, gap: float, version: str = "R12") -> Path:
    """Squares of 4 with a gap in one corner each, on CUT; a centre line; one doubled line."""
    drawing = ezdxf.filemanagement.new(version)
    space = drawing.modelspace()
    for number in range(count):
        x = 10.0 * number
        points = [(x, 0.0), (x + 4, 0.0), (x + 4, 4.0), (x, 4.0), (x, gap)]
        for i in range(4):
            space.add_line(points[i], points[i + 1], dxfattribs={"layer": "CUT"})
    space.add_line((0, 0), (4, 0), dxfattribs={"layer": "CUT"})
    space.add_line((-1, 2), (5, 2), dxfattribs={"layer": "CENTER"})
    path = folder / "squares.dxf"
    drawing.saveas(path)
    return path


@pytest.mark.parametrize("count", [1, 3, 30])
def test_every_closed_gap_is_counted_even_where_findings_are_summed_up(tmp_path: Path, count: int) -> None:
    counted = changes(import_drawing(squares(tmp_path, count, gap=0.04), gap_mm=0.05))
    assert counted.gaps_closed == count
    assert counted.widest_gap_mm == pytest.approx(0.04)
    assert counted.doubled == 1
    words = "1 gap closed" if count == 1 else f"{count} gaps closed"
    assert changes_words(counted).startswith(f"{words}, widest 0.04 mm; 1 doubled line counted once")


def test_nothing_changed_is_said_to_be_nothing(tmp_path: Path) -> None:
    path = tmp_path / "square.csv"
    path.write_text("# unit: mm\n0 0\n4 0\n4 4\n0 4\n", encoding="utf-8")
    assert changes_words(changes(import_drawing(path))) == "nothing"


def test_layers_say_what_is_no_outline(tmp_path: Path) -> None:
    read = import_drawing(squares(tmp_path, 2, gap=0.0)).read
    notes = layer_notes(read.drawing)
    assert {note.name: note.is_for_the_reader for note in notes} == {"CUT": False, "CENTER": True}
    assert "CENTER (1 line, not outlines)" in layers_words(notes)
    assert len(marks_of(import_drawing(squares(tmp_path, 2, gap=0.0)), SettingsUsed())) == 1


def test_a_look_gives_the_size_under_each_unit(tmp_path: Path) -> None:
    look = look_at(squares(tmp_path, 1, gap=0.0))
    assert look.file_unit is None
    assert look.size_mm(Unit.MM) == pytest.approx((6.0, 4.0))
    assert look.size_mm(Unit.INCH) == pytest.approx((6 * 25.4, 4 * 25.4))


def test_a_remembered_unit_holds_for_its_folder_and_only_where_none_is_stated(tmp_path: Path) -> None:
    mine = tmp_path / "mine"
    mine.mkdir()
    path = squares(mine, 1, gap=0.0)
    remember_unit(path, Unit.INCH)
    imported, how = read_as(path, SettingsUsed())
    assert (how.unit, imported.unit) == (Unit.INCH, Unit.INCH)
    assert "unit-remembered" in {f.code for f in imported.findings}
    assert "unit-missing" not in {f.code for f in imported.findings}
    asked, _ = read_as(path, SettingsUsed(unit=Unit.CM))
    assert asked.unit is Unit.CM
    stated = squares(mine, 1, gap=0.0, version="R2000")
    drawing = ezdxf.filemanagement.readfile(stated)
    drawing.units = 4
    drawing.saveas(stated)
    assert read_as(stated, SettingsUsed())[0].unit is Unit.MM
    assert unit_for(tmp_path / "elsewhere.dxf") is None


@pytest.mark.parametrize("content", ["", "[]", "{", '{"x": 3}', '{"x": "FURLONG"}'])
def test_choices_that_cannot_be_read_are_forgotten(tmp_path: Path, content: str) -> None:
    file = tmp_path / "units.json"
    file.write_text(content.replace('"x"', json.dumps(str(tmp_path.resolve()))), encoding="utf-8")
    assert unit_for(tmp_path / "a.dxf", file) is None
    remember_unit(tmp_path / "a.dxf", Unit.INCH, file)
    assert unit_for(tmp_path / "a.dxf", file) is Unit.INCH
