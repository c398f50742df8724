"""The command line: what it answers, and that what it cannot do is one sentence and never a traceback."""

from __future__ import annotations

import io
import json
import math
import os
import signal
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from inlayfit import __version__
from inlayfit.cli import main

ROOT = Path(__file__).resolve().parent.parent
SAMPLES = ROOT / "sample_shapes"
FIT = ("--clearance", "0.05", "--pocket-cutter", "3", "--plug-cutter", "2")


def svg(body: str, *, width: float = 60, height: float = 40) -> str:
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" '
        f'viewBox="0 0 {width} {height}">{body}</svg>'
    )


@pytest.fixture
def rectangle(tmp_path: Path) -> Path:
    """A pocket of 30 by 20 mm."""
    path = tmp_path / "rectangle.svg"
    path.write_text(svg('<rect id="lid" x="10" y="10" width="30" height="20"/>'), encoding="utf-8")
    return path


def run(*arguments: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "inlayfit", *arguments], cwd=ROOT, capture_output=True, text=True, check=False
    )


def fit_json(capsys: pytest.CaptureFixture[str], drawing: Path, *arguments: str) -> dict[str, Any]:
    code = main(["fit", str(drawing), *arguments, "--out", str(drawing.parent / "out"), "--json"])
    captured = capsys.readouterr()
    assert captured.err == ""
    assert code == 0
    answer: dict[str, Any] = json.loads(captured.out)
    return answer


def one_sentence(text: str) -> str:
    assert text.startswith("inlayfit: ")
    assert text.count("\n") == 1
    assert text.rstrip().endswith(".")
    assert "Traceback" not in text
    return text


# --- start-up ----------------------------------------------------------------------------------------


def test_version_is_the_packages() -> None:
    done = run("--version")
    assert (done.returncode, done.stdout, done.stderr) == (0, f"inlayfit {__version__}\n", "")


def modules_after(program: str) -> set[str]:
    """What is loaded once a program is through."""
    done = subprocess.run(
        [sys.executable, "-c", f"import sys; {program}; print(*sys.modules)"],
        cwd=ROOT, capture_output=True, text=True, check=True,
    )  # fmt: skip
    return set(done.stdout.split())


def test_version_loads_nothing_but_a_few_files_of_its_own() -> None:
    """So it takes little more than Python's own start; `tests/benchmarks/test_start.py` prints how much."""
    loaded = modules_after("from inlayfit.cli import main; main(['--version'])") - modules_after("pass")
    ours = {name for name in loaded if name.partition(".")[0] == "inlayfit"}
    assert loaded - ours == {"__future__", __version__}  # the version is what the command itself writes
    assert len(ours) <= 5


@pytest.mark.parametrize("command", [[], ["demo"], ["inspect"], ["fit"]])
def test_every_command_explains_itself(command: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert main([*command, "--help"]) == 0
    captured = capsys.readouterr()
    assert captured.out.startswith("usage: inlayfit")
    assert captured.err == ""


# --- inspect -----------------------------------------------------------------------------------------


def test_inspect_answers_one_json_object_in_mm(rectangle: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["inspect", str(rectangle), "--json"]) == 0
    captured = capsys.readouterr()
    answer = json.loads(captured.out)
    assert captured.err == ""
    assert answer["unit"] == "mm"
    assert answer["findings"] == []
    (outline,) = answer["outlines"]
    assert outline["area_mm2"] == pytest.approx(600, abs=1e-6)
    assert outline["perimeter_mm"] == pytest.approx(100, abs=1e-6)
    assert outline["holes"] == 0
    assert outline["bounds_mm"] == pytest.approx([10, 10, 40, 30], abs=1e-6)
    assert {"id", "layer"} <= outline.keys()


def test_inspect_tells_a_person_the_same(rectangle: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["inspect", str(rectangle)]) == 0
    text = capsys.readouterr().out
    assert "1 outline" in text
    assert "30.000 × 20.000 mm" in text
    assert "600.00 mm²" in text


def test_unit_overrides_what_the_file_says(rectangle: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["inspect", str(rectangle), "--unit", "in", "--json"]) == 0
    (outline,) = json.loads(capsys.readouterr().out)["outlines"]
    assert outline["area_mm2"] == pytest.approx(600 * 25.4**2, rel=1e-9)


# --- fit ---------------------------------------------------------------------------------------------


def test_fit_answers_the_closed_form_of_a_rectangle(
    rectangle: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A w × h rectangle cut by a cutter of radius r keeps w·h − (4 − π)·r²; its corners shrink with it."""
    answer = fit_json(capsys, rectangle, *FIT)
    (fitting,) = answer["fittings"]
    assert fitting["clearance_mm"] == 0.05
    assert fitting["pocket"]["area_mm2"] == pytest.approx(600 - (4 - math.pi) * 1.5**2, abs=0.01)
    assert fitting["plug"]["area_mm2"] == pytest.approx(29.9 * 19.9 - (4 - math.pi) * 1.45**2, abs=0.01)
    assert fitting["gap"]["min_mm"] == pytest.approx(0.05, abs=0.001)
    assert fitting["gap"]["max_mm"] == pytest.approx(0.05, abs=0.001)
    assert fitting["overlap_mm2"] == 0


def test_fit_writes_the_promised_files_and_lists_them(
    rectangle: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    answer = fit_json(capsys, rectangle, *FIT)
    promised = {"pocket.dxf", "plug.dxf", "pocket.svg", "plug.svg", "gap.svg", "fit.json"}
    folder = rectangle.parent / "out"
    assert {path.name for path in folder.iterdir()} == promised
    assert {Path(file) for file in answer["files"]} == {folder / name for name in promised}
    kept = json.loads((folder / "fit.json").read_text(encoding="utf-8"))
    assert set(kept.pop("files")) == promised
    assert kept == {key: value for key, value in answer.items() if key != "files"}


@pytest.mark.parametrize(
    ("typed", "mm"),
    [
        (["--clearance", "0.05"], 0.05),
        (["--clearance", "0,05 mm"], 0.05),
        (["--clearance", "2 thou"], 0.0508),
        (["--clearance", "-0.02"], -0.02),
        (["--clearance=-0.02"], -0.02),
        (["--clearance", "-.02"], -0.02),
        (["--clearance", "-2 thou"], -0.0508),
        (["--clearance", "-2thou"], -0.0508),
        (["--clearance", "−0.02mm"], -0.02),
        (["--clearance", "0.1mm - 2 thou"], 0.0492),
    ],
)
def test_a_clearance_is_read_in_every_spelling(
    typed: list[str], mm: float, rectangle: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    answer = fit_json(capsys, rectangle, *typed, "--pocket-cutter", "1/8in", "--plug-cutter", "2mm")
    (fitting,) = answer["fittings"]
    assert fitting["clearance_mm"] == pytest.approx(mm, abs=1e-12)
    assert fitting["gap"]["min_mm"] == pytest.approx(mm, abs=0.001)
    assert fitting["pocket"]["cutter_mm"] == 3.175


def test_fit_shows_clearance_per_side_and_overall(
    rectangle: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["fit", str(rectangle), *FIT, "--out", str(rectangle.parent / "out")]) == 0
    text = capsys.readouterr().out
    assert "asked for 0.050 mm per side (0.100 mm overall)" in text
    assert "tightest 0.050 mm per side (0.100 mm overall)" in text
    assert "plug.dxf" in text


def test_only_the_outlines_asked_for_are_fitted(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    drawing = tmp_path / "three.svg"
    rects = "".join(f'<rect x="{x}" y="5" width="12" height="12"/>' for x in (2, 20, 40))
    drawing.write_text(svg(rects), encoding="utf-8")
    main(["inspect", str(drawing), "--json"])
    first, _, last = (o["id"] for o in json.loads(capsys.readouterr().out)["outlines"])
    for asked in (("--outline", last, "--outline", first), ("--outline", last, first)):
        answer = fit_json(capsys, drawing, *FIT, *asked)
        assert [fitting["id"] for fitting in answer["fittings"]] == [last, first]
    assert main(["fit", "--outline", first, str(drawing), *FIT, "--out", str(tmp_path / "one")]) == 0
    assert f"{first}: asked for" in capsys.readouterr().out


def test_an_allowance_makes_roughing_outlines_of_both_halves(
    rectangle: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    answer = fit_json(capsys, rectangle, *FIT, "--finishing-allowance", "0.2")
    (fitting,) = answer["fittings"]
    assert fitting["plug"]["finishing_allowance_mm"] == fitting["pocket"]["finishing_allowance_mm"] == 0.2
    text = (rectangle.parent / "out" / "plug.dxf").read_text(encoding="utf-8")
    assert "PLUG_ROUGH" in text


@pytest.mark.parametrize(
    ("pocket", "plug", "kerfs"),
    [("3", "0", (0, 0.2)), ("0", "3", (0.2, 0)), ("0", "0", (0.2, 0.2)), ("3", "3", (0, 0.2))],
)
def test_a_kerf_belongs_to_the_half_without_a_cutter_or_else_to_the_plug(
    pocket: str,
    plug: str,
    kerfs: tuple[float, float],
    rectangle: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    cutters = ("--pocket-cutter", pocket, "--plug-cutter", plug)
    (fitting,) = fit_json(capsys, rectangle, "--clearance", "0", *cutters, "--kerf", "0.2")["fittings"]
    assert (fitting["pocket"]["kerf_mm"], fitting["plug"]["kerf_mm"]) == kerfs


def test_a_kerf_shifts_the_line_to_the_side_of_the_waste(
    rectangle: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    beam = ("--clearance", "0", "--pocket-cutter", "0", "--plug-cutter", "0", "--kerf", "0.2")
    fit_json(capsys, rectangle, *beam)
    for half, width in (("plug", 30.2), ("pocket", 29.8)):
        main(["inspect", str(rectangle.parent / "out" / f"{half}.svg"), "--json"])
        (line,) = json.loads(capsys.readouterr().out)["outlines"]
        x0, _, x1, _ = line["bounds_mm"]
        assert x1 - x0 == pytest.approx(width, abs=0.001)


def test_a_pocket_already_cut_is_answered_unchanged(
    rectangle: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    answer = fit_json(
        capsys, rectangle, "--clearance", "0.1", "--pocket-cutter", "0.5", "--plug-cutter", "4",
        "--pocket-state", "already-cut", "--relief", "dog-bone",
    )  # fmt: skip
    (fitting,) = answer["fittings"]
    assert fitting["pocket"]["area_mm2"] == pytest.approx(600, abs=1e-6)
    assert fitting["pocket"]["changed"] is False
    assert fitting["gap"]["min_mm"] >= 0.1 - 0.001


# --- wrong usage and bad input -----------------------------------------------------------------------

WRONG = [
    (["fit"], "required"),
    (["fit", "F", "--clearance", "0.05", "--pocket-cutter", "3", "--out", "O"], "--plug-cutter"),
    (["fit", "F", *FIT], "--out"),
    (["fit", "F", *FIT, "--out", "O", "--relief", "butterfly"], "butterfly"),
    (["fit", "F", *FIT, "--out", "O", "--kerf", "2 mil"], "--kerf: “mil”"),
    (["fit", "F", *FIT, "--out", "O", "--kerf", "-1"], "kerf cannot be negative"),
    (["fit", "F", *FIT, "--out", "O", "--finishing-allowance", "-1"], "allowance cannot be negative"),
    (["fit", "F", *FIT, "--out", "O", "--clearance", "nan"], "--clearance: “nan” is not a finite number"),
    (["fit", "F", *FIT, "--out", "O", "--clearance", "99 in"], "check its unit"),
    (["fit", "F", *FIT, "--out", "O", "--clearance"], "--clearance: expected one argument"),
    (["fit", "F", *FIT, "--out", "O", "--pocket-cutter", "0.001"], "too small"),
    (["fit", "F", *FIT, "--out", "O", "--unit", "furlong"], "--unit: “furlong”"),
    (["fit", "F", *FIT, "--out", "O", "--outline", "nobody"], "no outline “nobody”"),
    (
        ["fit", "F", *FIT, "--out", "O", "--plug-state", "already-cut", "--pocket-state", "finished"],
        "already cut",
    ),
    (["fit", "F", *FIT, "--out", "F"], "not a folder"),
    (["inspect", "missing.dxf"], "There is no file “missing.dxf”"),
    (["inspect", "."], "is a folder"),
    (["inspect", "F", "--colour"], "--colour"),
    (["inspect"], "FILE"),
    (["demo"], "--out"),
    (["missing.svg"], "There is no file “missing.svg”"),
    (["--verbose"], "--verbose"),
]


@pytest.mark.parametrize(("arguments", "says"), WRONG, ids=[" ".join(a)[-40:] for a, _ in WRONG])
def test_wrong_usage_is_one_sentence_and_exit_2(
    arguments: list[str],
    says: str,
    rectangle: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.chdir(rectangle.parent)
    before = sorted(path.name for path in rectangle.parent.iterdir())
    code = main([{"F": rectangle.name, "O": "out"}.get(a, a) for a in arguments])
    captured = capsys.readouterr()
    assert code == 2
    assert captured.out == ""
    assert says in one_sentence(captured.err)
    assert sorted(path.name for path in rectangle.parent.iterdir()) == before


BOMB = """<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>
<svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm"><text>&b;</text></svg>"""
OUTSIDE = """<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>
<svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm"><text>&x;</text></svg>"""
UNREADABLE = {
    "empty.svg": "",
    "empty.dxf": "",
    "letter.txt": "Dear pocket, please fit.",
    "letter.dxf": "Dear pocket, please fit.",
    "half.svg": '<svg xmlns="http://www.w3.org/2000/svg" width="10mm"><path d="M0',
    "binary.dxf": "\x00\x01\x02\x03" * 100,
    "bomb.svg": BOMB,
    "outside.svg": OUTSIDE,
    "words.svg": svg('<text x="5" y="20">snug</text>'),
    "line.svg": svg('<line x1="0" y1="0" x2="10" y2="10" stroke="black"/>'),
    "nothing.svg": svg(""),
    "dot.svg": svg('<rect x="5" y="5" width="0" height="0"/>'),
    "nan.svg": svg('<path d="M0 0 L NaN 10 L 10 10 Z"/>'),
}


@pytest.mark.parametrize("name", UNREADABLE)
def test_a_file_that_cannot_be_read_is_one_sentence_and_exit_2(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / name
    path.write_text(UNREADABLE[name], encoding="utf-8")
    for command in (["inspect", str(path)], ["fit", str(path), *FIT, "--out", str(tmp_path / "out")]):
        assert main(command) == 2
        captured = capsys.readouterr()
        assert captured.out == ""
        one_sentence(captured.err)
    assert [path.name for path in tmp_path.iterdir()] == [name]


@pytest.mark.parametrize(
    ("options", "code"),
    [
        (("--clearance", "0.05", "--pocket-cutter", "25", "--plug-cutter", "2"), "cutter-too-large"),
        (("--clearance", "10.5", "--pocket-cutter", "3", "--plug-cutter", "2"), ""),
    ],
)
def test_a_blocking_problem_is_written_down_and_exit_1(
    options: tuple[str, ...], code: str, rectangle: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = rectangle.parent / "out"
    assert main(["fit", str(rectangle), *options, "--out", str(out), "--json"]) == 1
    captured = capsys.readouterr()
    answer = json.loads(captured.out)
    blocks = [f for f in answer["fittings"][0]["findings"] if f["severity"] == "block"]
    assert blocks
    assert code in {"", *(block["code"] for block in blocks)}
    assert all(block["message"].endswith(".") and block["remedy"].endswith(".") for block in blocks)


def test_the_drawing_that_was_opened_is_never_overwritten(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    drawing = tmp_path / "plug.svg"
    text = svg('<rect x="10" y="10" width="30" height="20"/>')
    drawing.write_text(text, encoding="utf-8")
    assert main(["fit", str(drawing), *FIT, "--out", str(tmp_path)]) == 2
    assert "will not be overwritten" in one_sentence(capsys.readouterr().err)
    assert drawing.read_text(encoding="utf-8") == text
    assert list(tmp_path.iterdir()) == [drawing]


def test_without_a_screen_the_window_is_refused_in_one_sentence(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(sys, "platform", "linux")
    assert main([]) == 2
    assert "no screen" in one_sentence(capsys.readouterr().err)


# --- the last line of defence ------------------------------------------------------------------------


def test_a_fault_of_the_program_is_one_sentence_too(
    rectangle: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def broken(*_: object, **__: object) -> None:
        raise ZeroDivisionError("a fault")

    monkeypatch.setattr("inlayfit.fit.solve.solve", broken)
    monkeypatch.delenv("INLAYFIT_TRACEBACK", raising=False)
    assert main(["fit", str(rectangle), *FIT, "--out", str(rectangle.parent / "out")]) == 2
    assert "ZeroDivisionError: a fault" in one_sentence(capsys.readouterr().err)


def test_a_terminal_without_our_characters_gets_plain_ones(
    rectangle: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    stream = io.TextIOWrapper(io.BytesIO(), encoding="ascii")
    monkeypatch.setattr(sys, "stdout", stream)
    assert main(["inspect", str(rectangle)]) == 0
    stream.seek(0)
    assert "30.000 x 20.000 mm" in stream.read()


@pytest.mark.skipif(os.name != "posix", reason="POSIX signals and pipes")
def test_a_pipe_that_nobody_reads_is_no_error() -> None:
    read_end, write_end = os.pipe()
    os.close(read_end)
    command = [sys.executable, "-m", "inlayfit", "inspect", "sample_shapes/mats.svg", "--json"]
    try:
        done = subprocess.run(command, cwd=ROOT, stdout=write_end, stderr=subprocess.PIPE, check=False)
    finally:
        os.close(write_end)
    assert (done.returncode, done.stderr) == (0, b"")


@pytest.mark.skipif(os.name != "posix", reason="POSIX signals and pipes")
def test_stopping_from_the_keyboard_is_one_sentence_and_leaves_no_file(tmp_path: Path) -> None:
    out = tmp_path / "demo"
    # The signal is sent from inside, so that it certainly arrives while the work runs.
    program = (
        "import os, signal, sys\n"
        "import inlayfit.document.demo as demo\n"
        "signal.signal(signal.SIGINT, signal.default_int_handler)\n"
        "demo.solve = lambda *a, **k: os.kill(os.getpid(), signal.SIGINT)\n"
        "from inlayfit.cli import main\n"
        f"sys.exit(main(['demo', '--out', {str(out)!r}]))\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 128 + signal.SIGINT
    assert "Stopped" in one_sentence(done.stderr)
    assert not out.exists()
