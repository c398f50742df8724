"""The program is killed while a person edits and saves: no file breaks, and at most two seconds are lost.

A real process with a real window works as fast as a hand cannot (`work_until_killed.py`), and is ended by
SIGKILL, which no program can catch, at moments drawn by lot. The figures are printed (`pytest -s`).

The two seconds are the program's promise and not its speed: its clock for copies runs for at most half of
them (`test_autosave.py`), and the rest is what a slow machine may take.
"""

from __future__ import annotations

import os
import random
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

import pytest

from inlayfit.document import edits
from inlayfit.document.imports import import_drawing
from inlayfit.document.journal import LONGEST_DELAY_S, left_behind
from inlayfit.document.project_file import load_project, save_project
from inlayfit.document.state import Fitting, Source, State
from tests.app.conftest import LEAF
from tests.app.work_until_killed import STEP_MM

KILLS = 50 if os.environ.get("HYPOTHESIS_PROFILE") == "ci" else 2
_LONGEST_WORK_S = 6.0 if KILLS > 10 else 3.0
_PROGRAM = Path(__file__).with_name("work_until_killed.py")
_ROOT = Path(__file__).parents[2]


@dataclass(frozen=True)
class Loss:
    """What one kill cost: seconds of work, and whether the copy or the project was the newer one."""

    seconds: float
    copy_was_newer: bool


def _step(state: State) -> int:
    return round(state.fittings[0].spec.clearance_mm / STEP_MM)


def _project(tmp_path: Path) -> Path:
    drawing = tmp_path / "leaf.svg"
    shutil.copy(LEAF, drawing)
    opened = edits.open_drawing(
        State(), import_drawing(drawing), source=Source(str(drawing)), template=Fitting("")
    )
    project = tmp_path / "tray.inlayfit"
    save_project(edits.set_clearance(opened.state, STEP_MM).state, project)
    return project


def _killed_after(project: Path, seconds: float, folder: Path) -> tuple[dict[int, float], int, float]:
    """Work, then kill: when each step was done, the last saved step, when it was killed."""
    names = {f"XDG_{name}_HOME": str(folder / name.lower()) for name in ("CONFIG", "STATE", "DATA", "CACHE")}
    child = subprocess.Popen(
        [sys.executable, str(_PROGRAM), str(project)],
        stdout=subprocess.PIPE,
        text=True,
        cwd=_ROOT,
        env={**os.environ, **names, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(_ROOT)},
    )
    assert child.stdout is not None
    first = child.stdout.readline()
    time.sleep(seconds)
    assert child.poll() is None, f"the window ended by itself after: {first}"
    child.send_signal(signal.SIGKILL)
    killed = time.monotonic()
    lines = [line.split() for line in (first + child.stdout.read()).splitlines()]
    child.stdout.close()
    child.wait()
    whole = [line for line in lines if len(line) == 3]
    done = {int(step): float(when) for what, step, when in whole if what == "edit"}
    saved = max((int(step) for what, step, _ in whole if what == "save"), default=0)
    return done, saved, killed


def _loss(done: Mapping[int, float], kept: int, killed: float) -> float:
    """Age of the oldest step that is gone."""
    gone = [when for step, when in done.items() if step > kept]
    return killed - min(gone) if gone else 0.0


@pytest.mark.skipif(sys.platform == "win32", reason="needs SIGKILL")
def test_a_kill_while_editing_and_saving_breaks_no_file_and_costs_two_seconds(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    project = _project(tmp_path)
    drawing = (tmp_path / "leaf.svg").read_bytes()
    outlines = load_project(project).outlines
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    rng = random.Random(11)
    losses: list[Loss] = []
    for _ in range(KILLS):
        done, saved, killed = _killed_after(project, rng.uniform(0.0, _LONGEST_WORK_S), tmp_path)
        state = load_project(project)
        assert state.outlines == outlines
        assert _step(state) >= saved
        copies = left_behind()
        assert len(copies) <= 1
        kept = max([_step(state), *(_step(copy.state()) for copy in copies)])
        losses.append(Loss(_loss(done, kept, killed), kept > _step(state)))
        for copy in copies:
            assert copy.project == project
            assert copy.state().outlines == outlines
            copy.discard()
        assert (tmp_path / "leaf.svg").read_bytes() == drawing
        seen = sorted(p.name for p in tmp_path.iterdir() if p.is_file() and not p.name.endswith(".part"))
        assert seen == ["leaf.svg", "tray.inlayfit"]
        assert list((tmp_path / "state" / "inlayfit" / "recovery").iterdir()) == []
    most = max(loss.seconds for loss in losses)
    newer = sum(loss.copy_was_newer for loss in losses)
    sys.stdout.write(
        f"{KILLS} kills: most work lost {most:.2f} s; the copy held more than the project {newer} times; "
        f"{len(list(tmp_path.glob('.*.part')))} saves cut short\n"
    )
    assert most <= LONGEST_DELAY_S
