"""Reading, typed sizes and writing from the command line: what each option reaches."""

from __future__ import annotations

import json
import math
import re
from pathlib import Path
from typing import Any

import ezdxf.filemanagement
import pytest
from ezdxf.entities.lwpolyline import LWPolyline

from inlayfit.cli import main

Captured = pytest.CaptureFixture[str]
FIT = ("--clearance", "0.05", "--pocket-cutter", "3", "--plug-cutter", "3")


@pytest.fixture
def loose(tmp_path: Path) -> Path:
    """A square of 40 mm with an open corner of 0.04 mm, and a square of construction lines inside."""
    drawing = ezdxf.filemanagement.new("R2000", units=4)
    space = drawing.modelspace()
    corners = [(0, 0), (40, 0), (40, 40), (0, 40)]
    for i, start in enumerate(corners):
        end = corners[(i + 1) % 4] if i < 3 else (0, 0.04)
        space.add_line(start, end, dxfattribs={"layer": "CUT"})
    inside = [(10, 10), (20, 10), (20, 20), (10, 20)]
    space.add_lwpolyline(inside, close=True, dxfattribs={"layer": "CONSTRUCTION"})
    path = tmp_path / "loose.dxf"
    drawing.saveas(path)
    return path


def inspected(capsys: Captured, *arguments: str, code: int = 0) -> dict[str, Any]:
    assert main(["inspect", *arguments, "--json"]) == code
    captured = capsys.readouterr()
    assert captured.err == ""
    answer: dict[str, Any] = json.loads(captured.out)
    return answer


def refused(capsys: Captured, *arguments: str) -> str:
    assert main(list(arguments)) == 2
    err = capsys.readouterr().err
    assert err.startswith("inlayfit: ")
    assert err.count("\n") == 1
    return err


# --- reading -----------------------------------------------------------------------------------------


def test_a_gap_is_closed_only_up_to_what_is_allowed_and_is_counted(loose: Path, capsys: Captured) -> None:
    assert "0.04" in refused(capsys, "inspect", str(loose), "--layer", "CUT")
    answer = inspected(capsys, str(loose), "--gap", "0.05")
    assert answer["changes"]["gaps_closed"] == 1
    assert answer["changes"]["widest_gap_mm"] == pytest.approx(0.04)
    assert answer["tolerances"]["gap_mm"] == 0.05
    assert main(["inspect", str(loose), "--gap", "0.05"]) == 0
    text = capsys.readouterr().out
    assert "1 gap closed, widest 0.04 mm" in text
    assert "closed up to 0.05 mm" in text


def test_layers_are_told_and_marks_count_only_when_asked_for(loose: Path, capsys: Captured) -> None:
    answer = inspected(capsys, str(loose), "--gap", "0.05")
    assert answer["layers"] == [
        {"name": "CUT", "lines": 1, "marks": 0},
        {"name": "CONSTRUCTION", "lines": 1, "marks": 1},
    ]
    assert [o["layer"] for o in answer["outlines"]] == ["CUT"]
    asked = inspected(capsys, str(loose), "--layer", "CONSTRUCTION")
    assert [o["area_mm2"] for o in asked["outlines"]] == [pytest.approx(100)]
    both = inspected(capsys, str(loose), "--gap", "0.05", "--layer", "CONSTRUCTION", "--layer", "CUT")
    assert len(both["outlines"]) == 2


def test_a_layer_that_is_not_there_is_named(loose: Path, capsys: Captured) -> None:
    answer = inspected(capsys, str(loose), "--layer", "CONSTRUCTION", "--layer", "CUTS")
    (missing,) = [f for f in answer["findings"] if f["code"] == "layer-missing"]
    assert "CUTS" in missing["message"]


def test_a_stroke_covers_its_width_only_when_asked(tmp_path: Path, capsys: Captured) -> None:
    path = tmp_path / "line.svg"
    path.write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">'
        '<rect x="10" y="10" width="30" height="20" fill="none" stroke="black" stroke-width="2"/></svg>',
        encoding="utf-8",
    )
    (middle,) = inspected(capsys, str(path))["outlines"]
    assert middle["area_mm2"] == pytest.approx(600)
    (band,) = inspected(capsys, str(path), "--strokes-as-areas")["outlines"]
    assert band["area_mm2"] == pytest.approx(32 * 22 - 28 * 18, abs=1e-6)


def test_simplifying_moves_walls_by_no_more_and_counts_the_points(tmp_path: Path, capsys: Captured) -> None:
    path = tmp_path / "disc.svg"
    path.write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">'
        '<circle cx="30" cy="30" r="20"/></svg>',
        encoding="utf-8",
    )
    fine, coarse = inspected(capsys, str(path)), inspected(capsys, str(path), "--simplify", "0.02")
    left_out = [answer["changes"]["points_left_out"] for answer in (fine, coarse)]
    assert left_out[1] > left_out[0]
    (disc,) = coarse["outlines"]
    assert abs(disc["area_mm2"] - math.pi * 400) <= 0.021 * 2 * math.pi * 20


@pytest.mark.parametrize("option", ["--gap", "--simplify"])
@pytest.mark.parametrize("value", ["-1", "50", "wide"])
def test_a_tolerance_that_is_none_is_refused(option: str, value: str, loose: Path, capsys: Captured) -> None:
    assert option in refused(capsys, "inspect", str(loose), option, value)


def test_a_table_of_points_is_a_pocket(tmp_path: Path, capsys: Captured) -> None:
    path = tmp_path / "measured.csv"
    path.write_text("x in, y in\n0, 0\n2, 0\n2, 1\n0, 1\n", encoding="utf-8")
    answer = inspected(capsys, str(path))
    assert answer["unit"] == "in"
    assert answer["outlines"][0]["area_mm2"] == pytest.approx(2 * 25.4**2)
    assert main(["fit", str(path), *FIT, "--out", str(tmp_path / "out")]) == 0


# --- typed by size -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("typed", "area"),
    [
        (["--circle", "25mm"], math.pi * 12.5**2),
        (["--circle", "1", "--unit", "in"], math.pi * 12.7**2),
        (["--rectangle", "40 x 20 r 3"], 800 - (4 - math.pi) * 9),
        (["--rectangle", "40mm × 20mm r3mm"], 800 - (4 - math.pi) * 9),
        (["--rectangle", "1-1/2 in by 3/4 in r 1/8 in"], (1.5 * 0.75 - (4 - math.pi) / 64) * 25.4**2),
        (["--slot", "30 x 8"], 22 * 8 + math.pi * 16),
    ],
)
def test_a_size_is_its_closed_form(typed: list[str], area: float, tmp_path: Path, capsys: Captured) -> None:
    cutters = ("--clearance", "0.05", "--pocket-cutter", "1", "--plug-cutter", "1")
    assert main(["fit", *typed, *cutters, "--out", str(tmp_path / "out"), "--json"]) == 0
    (fitting,) = json.loads(capsys.readouterr().out)["fittings"]
    assert fitting["pocket"]["area_mm2"] == pytest.approx(area, abs=0.03)  # chords within 0.25 µm


@pytest.mark.parametrize(
    ("typed", "word"),
    [
        (["--slot", "2 x 1 in"], "each"),
        (["--slot", "30"], "30 x 8"),
        (["--slot", "8 x 30"], "swap"),
        (["--slot", "30 x 8 r 2"], "30 x 8"),
        (["--rectangle", "40 x 20 r 11"], "at most 10 mm"),
        (["--circle", "-3"], "more than 0"),
        (["--circle", "round"], "--circle"),
        (["--circle", "3", "--outline", "o1"], "--outline"),
        ([], "--circle"),
    ],
)
def test_a_size_that_makes_no_sense_is_refused(
    typed: list[str], word: str, tmp_path: Path, capsys: Captured
) -> None:
    assert word in refused(capsys, "fit", *typed, *FIT, "--out", str(tmp_path / "out"))
    assert not (tmp_path / "out").exists()


def test_a_size_and_a_file_exclude_each_other(loose: Path, tmp_path: Path, capsys: Captured) -> None:
    told = refused(capsys, "fit", str(loose), "--circle", "9", *FIT, "--out", str(tmp_path / "out"))
    assert "--circle" in told


# --- writing -----------------------------------------------------------------------------------------


def written(tmp_path: Path, *options: str) -> Path:
    folder = tmp_path / "out"
    assert main(["fit", "--rectangle", "40 x 20 r 3", *FIT, "--out", str(folder), *options]) == 0
    return folder


def xs(file: Path) -> list[float]:
    """The x of each vertex of the one polyline in a file, as ezdxf reads it."""
    (line,) = ezdxf.filemanagement.readfile(file).modelspace()
    assert isinstance(line, LWPolyline)
    return [float(point[0]) for point in line.get_points()]


def test_only_the_half_that_is_asked_for_is_written(tmp_path: Path) -> None:
    folder = written(tmp_path, "--half", "plug", "--one-file-per-piece")
    assert {p.name for p in folder.iterdir()} == {"plug-o1.dxf", "plug-o1.svg", "gap.svg", "fit.json"}


def test_each_file_says_its_arcs_and_how_far_off_they_are(tmp_path: Path, capsys: Captured) -> None:
    written(tmp_path)
    said = capsys.readouterr().out
    for name in ("pocket.dxf", "plug.dxf", "pocket.svg", "plug.svg"):
        assert re.search(rf"{name}: [\d,]+ points became 4 arcs and 4 lines, off by 0\.\d µm at most\.", said)


def test_r12_is_written_and_its_missing_unit_is_told(tmp_path: Path, capsys: Captured) -> None:
    folder = written(tmp_path, "--dxf", "R12")
    assert ezdxf.filemanagement.readfile(folder / "plug.dxf").dxfversion == "AC1009"
    assert "R12" in capsys.readouterr().out


@pytest.mark.parametrize(("origin", "low"), [("as-drawn", -19.95), ("lower-left", 0.0), ("centre", -19.95)])
def test_the_origin_is_where_it_is_asked_for(origin: str, low: float, tmp_path: Path) -> None:
    folder = written(tmp_path, "--origin", origin)
    assert min(xs(folder / "plug.dxf")) == pytest.approx(low, abs=0.001)


def test_the_line_lies_on_the_edge_or_half_a_kerf_off_it(tmp_path: Path) -> None:
    def widest(*options: str) -> float:
        return max(xs(written(tmp_path, "--kerf", "0.2", *options) / "plug.dxf"))

    assert widest("--line", "edge") == pytest.approx(19.95, abs=0.001)
    assert widest("--line", "kerf") == widest() == pytest.approx(20.05, abs=0.001)


def test_rough_or_finished_outlines_alone(tmp_path: Path) -> None:
    for passes, names in (("rough", {"PLUG_ROUGH"}), ("finish", {"PLUG"}), ("both", {"PLUG", "PLUG_ROUGH"})):
        folder = written(tmp_path, "--finishing-allowance", "0.2", "--passes", passes)
        space = ezdxf.filemanagement.readfile(folder / "plug.dxf").modelspace()
        assert {entity.dxf.layer for entity in space} == names


def test_a_mirrored_half_is_told(tmp_path: Path, capsys: Captured) -> None:
    written(tmp_path, "--mirrored", "plug")
    said = capsys.readouterr().out
    assert "The plug is written as a mirror image" in said
    assert "The pocket is written as a mirror image" not in said
