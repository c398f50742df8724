"""What the README promises is so: the commands as printed, the options, the files it points to."""

from __future__ import annotations

import re
import shlex
import shutil
from pathlib import Path

import pytest

from inlayfit.cli import main

ROOT = Path(__file__).resolve().parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")
DEMO = "python3 -m venv .venv && .venv/bin/python -m pip install -q . && .venv/bin/inlayfit demo --out demo"
TEST = (
    "python3 -m venv .venv && .venv/bin/python -m pip install -q -e '.[test]' && .venv/bin/python -m pytest"
)


def code_lines() -> list[str]:
    """Indented lines, continued ones joined."""
    joined = re.sub(r" \\\n +", " ", README)
    return [line.strip() for line in joined.splitlines() if line.startswith("    ")]


def test_the_two_commands_stand_there_each_on_one_line() -> None:
    assert DEMO in code_lines()
    assert TEST in code_lines()


def test_the_job_stands_on_top_in_one_paragraph() -> None:
    title, job = README.split("\n\n")[:2]
    assert title == "# Inlayfit"
    assert "pocket" in job
    assert "plug" in job


EXAMPLES = [line for line in code_lines() if re.match(r"inlayfit (inspect|fit) ", line)]


def makes_what_is_read(earlier: str, line: str) -> bool:
    """Whether an example writes into the folder that another one reads from."""
    folder = re.search(r"--out (\S+)", earlier)
    return folder is not None and f" {folder[1]}/" in line


@pytest.mark.parametrize("line", EXAMPLES)
def test_every_example_runs_as_printed(
    line: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    shutil.copytree(ROOT / "sample_shapes", tmp_path / "sample_shapes")
    monkeypatch.chdir(tmp_path)
    for earlier in EXAMPLES[: EXAMPLES.index(line)]:
        if makes_what_is_read(earlier, line):
            assert main(shlex.split(earlier)[1:]) == 0
            capsys.readouterr()
    assert main(shlex.split(line)[1:]) == 0
    captured = capsys.readouterr()
    assert captured.out
    assert captured.err == ""


def test_there_are_examples() -> None:
    assert len(EXAMPLES) >= 3


@pytest.mark.parametrize("command", ["demo", "inspect", "fit"])
def test_every_option_is_told_in_the_readme_and_by_help(
    command: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([command, "--help"]) == 0
    options = set(re.findall(r"--[a-z][a-z-]+", capsys.readouterr().out)) - {"--help"}
    assert options <= set(re.findall(r"--[a-z][a-z-]+", README))


def test_every_option_in_the_readme_exists(capsys: pytest.CaptureFixture[str]) -> None:
    known = {"--out", "--version"}
    for command in ("demo", "inspect", "fit"):
        main([command, "--help"])
        known |= set(re.findall(r"--[a-z][a-z-]+", capsys.readouterr().out))
    commands = README.split("## The commands")[1].split("## Cautions")[0]
    assert set(re.findall(r"--[a-z][a-z-]+", commands)) <= known


@pytest.mark.parametrize("target", re.findall(r"\]\(([^)#:]+)\)", README))
def test_every_file_the_readme_points_to_is_there(target: str) -> None:
    assert (ROOT / target).is_file()


@pytest.mark.parametrize(
    "caution",
    ["eye", "hearing", "dust", "Small parts", "PVC", "Press fits", "local codes", "manuals", "licensed"],
)
def test_the_cautions_are_there(caution: str) -> None:
    assert caution.lower() in README.split("## Cautions")[1].lower()
