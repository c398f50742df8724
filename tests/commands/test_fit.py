"""`inlayfit fit` and all its options: what each reaches, and one sentence where an answer makes no sense."""

from __future__ import annotations

import io
import json
import re
from pathlib import Path
from typing import Any

import pytest

from inlayfit.cli import main
from inlayfit.commands.asking import with_values_attached
from inlayfit.commands.fit_options import VALUE_OPTIONS, fit_parser

Captured = pytest.CaptureFixture[str]
FIT = ("--clearance", "0.05", "--pocket-cutter", "3", "--plug-cutter", "3")
MADE = ("--pocket-state", "already-cut", "--plug-state", "already-cut")
ELL = "M10 10H40V22H24V30H10Z"


def svg(*paths: str, height: int = 60) -> str:
    body = "".join(f'<path d="{path}"/>' for path in paths)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="{height}mm" '
        f'viewBox="0 0 200 {height}">{body}</svg>'
    )


@pytest.fixture
def pocket(tmp_path: Path) -> Path:
    path = tmp_path / "pocket-drawn.svg"
    path.write_text(svg(ELL), encoding="utf-8")
    return path


def fitted(capsys: Captured, drawing: Path, *options: str, code: int = 0) -> dict[str, Any]:
    answer = main(["fit", str(drawing), *options, "--out", str(drawing.parent / "out"), "--json"])
    captured = capsys.readouterr()
    assert captured.err == ""
    assert answer == code
    (fitting,) = json.loads(captured.out)["fittings"]
    assert isinstance(fitting, dict)
    kept = json.loads((drawing.parent / "out" / "fit.json").read_text(encoding="utf-8"))
    assert kept["fittings"] == [fitting]
    return fitting


def codes(fitting: dict[str, Any]) -> set[str]:
    return {finding["code"] for finding in fitting["findings"]}


def layers(folder: Path, half: str) -> set[str]:
    text = (folder / f"{half}.svg").read_text(encoding="utf-8")
    return set(re.findall(r'<g [^>]*id="([A-Z_]+)"', text))


# --- each half its own -------------------------------------------------------------------------------


def test_each_half_has_its_own_corners_edges_and_allowance(pocket: Path, capsys: Captured) -> None:
    fitting = fitted(
        capsys, pocket, "--clearance", "0.05", "--pocket-cutter", "6", "--plug-cutter", "2",
        "--relief", "dog-bone", "--plug-relief", "t-bone", "--t-bone-wall", "short",
        "--pocket-corner-cutter", "1", "--pocket-edge-break", "0.2", "--plug-edge-break", "10 thou",
        "--finishing-allowance", "0.2", "--plug-allowance", "0", "--thin", "0",
    )  # fmt: skip
    assert fitting["pocket"]["relief"] == "dog-bone"
    assert fitting["plug"]["relief"] == "t-bone"
    assert fitting["plug"]["t_bone_wall"] == "short"
    assert fitting["pocket"]["corner_cutter_mm"] == 1
    assert (fitting["pocket"]["edge_break_mm"], fitting["plug"]["edge_break_mm"]) == (0.2, 0.254)
    assert fitting["pocket"]["finishing_allowance_mm"] == 0.2
    assert fitting["plug"]["finishing_allowance_mm"] == 0
    out = pocket.parent / "out"
    assert layers(out, "pocket") == {"POCKET", "POCKET_ROUGH", "POCKET_REST", "POCKET_EDGE_BREAK"}
    assert layers(out, "plug") == {"PLUG", "PLUG_EDGE_BREAK"}


def test_hand_work_is_listed_and_marked(pocket: Path, capsys: Captured) -> None:
    fitting = fitted(capsys, pocket, *FIT, "--pocket-relief", "by-hand", "--plug-relief", "by-hand")
    halves = [each["half"] for each in fitting["hand_work"]]
    assert (halves.count("pocket"), halves.count("plug")) == (5, 1)
    assert "MARKS" in layers(pocket.parent / "out", "pocket")


def test_a_thin_wall_is_what_the_person_says_it_is(tmp_path: Path, capsys: Captured) -> None:
    drawing = tmp_path / "tenon.svg"
    drawing.write_text(svg("M10 10H30V19H45V21H30V30H10Z"), encoding="utf-8")
    options = ("--clearance", "0.05", "--pocket-cutter", "0", "--plug-cutter", "0")
    assert "thin-plug" not in codes(fitted(capsys, drawing, *options))
    assert "thin-plug" in codes(fitted(capsys, drawing, *options, "--thin", "2.5"))


# --- cutting -----------------------------------------------------------------------------------------


def test_passes_and_direction_are_in_the_answer(pocket: Path, capsys: Captured) -> None:
    fitting = fitted(
        capsys, pocket, *FIT, "--depth", "2", "--depth-per-pass", "0.6", "--floor-allowance", "0.2",
        "--cut", "climb",
    )  # fmt: skip
    assert fitting["passes"] == {"count": 4, "depths_mm": [0.6, 1.2, 1.8, 2.0]}
    turns = {contour["layer"]: contour["turn"] for contour in fitting["contours"]}
    assert turns == {"POCKET": "counter-clockwise", "PLUG": "clockwise"}


def test_a_floor_fillet_asks_for_an_edge_break(pocket: Path, capsys: Captured) -> None:
    held = fitted(capsys, pocket, *FIT, "--floor-fillet", "0.4")
    assert "held-up" in codes(held)
    needed = held["floor"]["edge_break_needed_mm"]
    assert needed == pytest.approx(0.35, abs=0.002)
    let_down = fitted(capsys, pocket, *FIT, "--floor-fillet", "0.4", "--plug-edge-break", "0.36")
    assert "held-up" not in codes(let_down)
    assert let_down["floor"]["hold_up_mm"] == 0


def test_a_kerf_measured_on_the_bed_side_is_wider_by_its_taper_on_the_show_side(
    pocket: Path, capsys: Captured
) -> None:
    beam = ("--clearance", "0.05", "--pocket-cutter", "3", "--plug-cutter", "0", "--kerf", "0.2")
    fitting = fitted(capsys, pocket, *beam, "--kerf-taper", "0.06", "--kerf-face", "bed")
    assert fitting["plug"]["kerf_mm"] == pytest.approx(0.26)
    assert fitting["faces"]["bed_mm"] == pytest.approx(fitting["faces"]["show_mm"] - 0.03)
    assert fitting["faces"]["governs"] == "bed side"
    bites = fitted(capsys, pocket, *beam, "--kerf-taper", "0.14", code=1)
    assert "taper-bites" in codes(bites)


# --- errors ------------------------------------------------------------------------------------------


def test_errors_are_added_up_in_three_ways(pocket: Path, capsys: Captured) -> None:
    fitting = fitted(
        capsys, pocket, *FIT, "--cutter-varies", "0.01", "--repeatability", "0.02", "--runout", "0.004",
        "--temperature-varies", "10", "--expansion-difference", "-70e-6", "--cutter-nominal", "3.01",
    )  # fmt: skip
    told = fitting["tolerance"]
    assert told["mean_mm"] == pytest.approx(0.05 - 0.01 + 0.002)
    low, high = told["worst_mm"]
    warmth = 70e-6 * 29.9 / 2 * 10
    assert (high - low) / 2 == pytest.approx(0.01 + 0.02 + 0.002 + warmth, abs=2e-6)
    near, far = told["root_sum_square_mm"]
    assert far - near < high - low
    shares = told["shares"]
    assert shares["wanted"] + shares["too_tight"] + shares["too_loose"] == pytest.approx(1)
    assert told["feel"] == "snug"
    assert told["stop"] is True
    assert "cutter-not-nominal" in codes(fitting)


def test_a_person_reads_the_passes_the_parts_and_the_advice(pocket: Path, capsys: Captured) -> None:
    options = ("--depth", "1", "--depth-per-pass", "0.5", "--repeatability", "0.02")
    assert main(["fit", str(pocket), *FIT, *options, "--out", str(pocket.parent / "out")]) == 0
    text = capsys.readouterr().out
    assert "  passes  2, to 0.500 and 1.000 mm" in text
    assert "per side 0.030 to 0.070 mm at worst" in text
    assert "Stop adjusting: you are inside your machine's repeatability." in text
    assert "  turned  goes in one way only" in text


# --- lookalikes --------------------------------------------------------------------------------------


def test_lookalikes_are_told_apart_from_what_needs_a_mark(tmp_path: Path, capsys: Captured) -> None:
    ways = {}
    for name, path in {"square": "M5 5H25V25H5Z", "nearly": "M5 5H25.2V25H5Z", "ell": ELL}.items():
        drawing = tmp_path / f"{name}.svg"
        drawing.write_text(svg(path), encoding="utf-8")
        fitting = fitted(capsys, drawing, *FIT[2:], "--clearance", "0.02")
        ways[name] = (fitting["orientations"], "mark-it" in codes(fitting))
    assert ways["square"][0]["mark"] is ways["square"][1] is False
    assert len(ways["square"][0]["lookalikes"]) == 7
    assert ways["nearly"][0]["mark"] is ways["nearly"][1] is True
    assert {w["goes_in"] for w in ways["nearly"][0]["lookalikes"]} == {True, False}
    assert ways["ell"][0]["lookalikes"] == []


# --- two halves that are made ------------------------------------------------------------------------


def test_a_made_plug_is_seated_and_judged(pocket: Path, capsys: Captured) -> None:
    """The plug is 0.1 smaller per side, drawn 120 mm away, and has a burr of 0.06 on one wall."""
    plug = pocket.parent / "plug-drawn.svg"
    burr = "M130.1 10.1H145V10.04H148V10.1H159.9V21.9H143.9V29.9H130.1Z"
    plug.write_text(svg(burr), encoding="utf-8")
    fitting = fitted(
        capsys, pocket, "--clearance", "0.1", "--pocket-cutter", "0", "--plug-cutter", "0", *MADE,
        "--plug-drawing", str(plug),
    )  # fmt: skip
    assert fitting["seating"]["shift_mm"][0] == pytest.approx(-120, abs=0.05)
    assert fitting["bench"]["goes_in"] is True
    assert "tighter than wanted" in fitting["bench"]["verdict"]
    assert {"plug-seated", "ease-here"} <= codes(fitting)
    # The seat shares the room above and below: 0.04 and 0.1 become 0.07 each.
    assert fitting["bench"]["spots"][0]["gap_mm"] == pytest.approx(0.07, abs=0.001)
    assert fitting["plug"]["changed"] is fitting["pocket"]["changed"] is False
    as_drawn = fitted(
        capsys, pocket, "--clearance", "0.1", "--pocket-cutter", "0", "--plug-cutter", "0", *MADE,
        "--plug-drawing", str(plug), "--seat", "as-drawn", code=1,
    )  # fmt: skip
    assert "seating" not in as_drawn
    assert "bites" in codes(as_drawn)


def test_made_halves_are_paired_by_name_or_by_shape_and_none_is_lost(
    tmp_path: Path, capsys: Captured
) -> None:
    pockets, plugs = tmp_path / "pockets.svg", tmp_path / "plugs.svg"
    pockets.write_text(svg("M5 5H25V25H5Z", "M40 5H70V25H40Z"), encoding="utf-8")
    plugs.write_text(svg("M5 5.1H34.8V24.9H5Z", "M50 5.1H69.8V24.9H50Z", "M90 5H99V9H90Z"), encoding="utf-8")
    common = ["fit", str(pockets), "--clearance", "0.1", "--pocket-cutter", "0", "--plug-cutter", "0", *MADE,
              "--plug-drawing", str(plugs), "--out", str(tmp_path / "out"), "--json"]  # fmt: skip
    assert main([*common, "--outline", "o1", "o2", "--plug-outline", "o2", "o1"]) == 0
    answer = json.loads(capsys.readouterr().out)
    assert answer["findings"] == []
    assert [f["seating"]["plug_outline"] for f in answer["fittings"]] == ["o2", "o1"]
    assert all(f["bench"]["goes_in"] for f in answer["fittings"])
    assert main(common) == 0
    by_shape = json.loads(capsys.readouterr().out)
    assert [f["code"] for f in by_shape["findings"]] == ["left-unpaired"]
    assert "plug o3" in by_shape["findings"][0]["message"]
    assert by_shape["fittings"] == answer["fittings"]


def test_the_drawing_of_the_plug_is_never_overwritten(tmp_path: Path, capsys: Captured) -> None:
    pocket, plug = tmp_path / "drawn.svg", tmp_path / "plug.svg"
    pocket.write_text(svg(ELL), encoding="utf-8")
    plug.write_text(svg(ELL), encoding="utf-8")
    command = ["fit", str(pocket), *FIT, *MADE, "--plug-drawing", str(plug), "--out", str(tmp_path)]
    assert main(command) == 2
    assert "will not be overwritten" in capsys.readouterr().err
    assert plug.read_text(encoding="utf-8") == svg(ELL)


# --- a measured pocket -------------------------------------------------------------------------------

READINGS = ("--measured", "X 30=30.06", "--measured", "x 14 = 14.06", "--measured", "Y 20=19.98",
            "--measured", "y: 12mm=11.98mm")  # fmt: skip


def test_readings_move_the_walls_and_their_residuals_are_told(pocket: Path, capsys: Captured) -> None:
    fitting = fitted(capsys, pocket, *FIT, "--pocket-state", "already-cut", *READINGS)
    x0, y0, x1, y1 = fitting["pocket"]["bounds_mm"]
    assert (x1 - x0, y1 - y0) == pytest.approx((30.06, 19.98), abs=0.002)
    assert fitting["gap"]["min_mm"] == pytest.approx(0.05, abs=0.001)
    assert fitting["measured"]["x"]["offset_mm"] == pytest.approx(0.06)
    assert [r["axis"] for r in fitting["measured"]["residuals"]] == ["X", "X", "Y", "Y"]
    assert fitting["pocket"]["cutter_mm"] == 3
    main(
        ["fit", str(pocket), *FIT, "--pocket-state", "finished", *READINGS, "--out", str(pocket.parent / "o")]
    )
    text = capsys.readouterr().out
    assert "X: 0.030 mm per side (0.060 mm overall) larger at every length, ±" in text
    assert "residuals in mm: X 30: +0.000" in text


def test_readings_come_as_a_table_too(pocket: Path, capsys: Captured) -> None:
    table = pocket.parent / "readings.csv"
    table.write_text("axis;drawn mm;read mm\nX;30;30,06\nX;14;14,06\nY;20;19,98\nY;12;11,98\n", "utf-8")
    common = (*FIT, "--pocket-state", "already-cut")
    by_table = fitted(capsys, pocket, *common, "--readings", str(table))
    assert by_table == fitted(capsys, pocket, *common, *READINGS)
    table.write_text("X;30;30,06\nY;2O;19,98\n", "utf-8")
    assert (
        main(["fit", str(pocket), *common, "--readings", str(table), "--out", str(pocket.parent / "o")]) == 2
    )
    assert "--readings, line 2 of “readings.csv”" in capsys.readouterr().err


# --- one sentence ------------------------------------------------------------------------------------

WRONG = [
    ((*MADE,), "name the drawing of the plug with --plug-drawing"),
    (("--plug-drawing", "F"), "for two halves that are both made"),
    (("--plug-outline", "o1"), "name that drawing too"),
    ((*MADE, "--plug-drawing", "missing.dxf"), "no file “missing.dxf”"),
    ((*MADE, "--plug-drawing", "F", "--plug-outline", "o9"), "no outline “o9”"),
    (("--measured", "X 40"), "is not a reading"),
    (("--readings", "missing.csv"), "no file “missing.csv”"),
    (("--readings", "F"), "is not a reading"),
    (("--measured", "Z 40=41"), "is not a reading"),
    (("--measured", "X 4O=41"), "--measured:"),
    (("--measured", "X 40=40.01"), "X has 1 reading"),
    (READINGS, "set the pocket's state to already cut"),
    (("--measured", "X 30=30", "--measured", "X 29=29", "--measured", "Y 9=9", "--measured", "Y 20=20"),
     "know the offset only to"),
    (("--pocket-corner-cutter", "5"), "must be smaller than the main cutter"),
    (("--plug-edge-break", "-1"), "edge break cannot be negative"),
    (("--kerf-taper", "0.1"), "needs the kerf too"),
    (("--depth-per-pass", "1"), "needs the depth"),
    (("--depth", "-1"), "depth is 0 or more"),
    (("--floor-allowance", "0.1"), "needs the depth and the depth per pass"),
    (("--cut", "sideways"), "sideways"),
    (("--cutter-nominal", "12"), "cannot be the one"),
    (("--temperature-varies", "warm", "--expansion-difference", "1e-6"), "not a plain number"),
    (("--temperature-varies", "5"), "give both"),
    (("--runout", "-0.1"), "runout is 0 or more"),
    (("--reading-repeats", "0", *READINGS), "repeatability is more than 0"),
]  # fmt: skip


@pytest.mark.parametrize(("options", "says"), WRONG, ids=[" ".join(o)[:40] for o, _ in WRONG])
def test_what_makes_no_sense_is_one_sentence_and_exit_2(
    options: tuple[str, ...], says: str, pocket: Path, capsys: Captured, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(pocket.parent)
    named = [pocket.name if option == "F" else option for option in options]
    assert main(["fit", pocket.name, *FIT, "--out", "out", *named]) == 2
    captured = capsys.readouterr()
    assert captured.out == ""
    assert captured.err.startswith("inlayfit: ")
    assert captured.err.count("\n") == 1
    assert captured.err.rstrip().endswith(".")
    assert says in captured.err
    assert not (pocket.parent / "out").exists()


def test_help_is_readable_on_a_terminal_of_few_characters(monkeypatch: pytest.MonkeyPatch) -> None:
    stream = io.TextIOWrapper(io.BytesIO(), encoding="ascii")
    monkeypatch.setattr("sys.stdout", stream)
    assert main(["fit", "--help"]) == 0
    stream.seek(0)
    assert "+/- with which one reading comes out again" in " ".join(stream.read().split())


LENGTH_HELP = {"C", "D", "T", "W", "A", "R", "K", "E", "N"}


def test_every_length_may_be_negative_without_being_taken_for_an_option() -> None:
    asking = fit_parser(file_first=True)
    lengths = {
        flag
        for action in asking._actions
        for flag in action.option_strings
        if action.nargs is None and action.metavar in LENGTH_HELP
    }
    assert len(lengths) > 20
    assert lengths <= VALUE_OPTIONS
    for flag in sorted(lengths):
        assert with_values_attached([flag, "-2thou", "x"], VALUE_OPTIONS) == [f"{flag}=-2thou", "x"]
