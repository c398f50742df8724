from __future__ import annotations

import os
import random
import signal
import sys
import time
from pathlib import Path

import pytest

from inlayfit.document import edits
from inlayfit.document.imports import Outline
from inlayfit.document.journal import Journal, left_behind
from inlayfit.document.outlines import region_of_contours
from inlayfit.document.project_file import load_project, save_project
from inlayfit.document.state import Fitting, State
from inlayfit.errors import ProjectError
from inlayfit.geometry.path import Path as Line

KILLS = 50 if os.environ.get("HYPOTHESIS_PROFILE") == "ci" else 12


def _document() -> State:
    circle = (Line.circle((0.0, 0.0), 10.0),)
    outline = Outline("o", "disc", "0", region_of_contours(circle), circle)
    return State(outlines=(outline,), fittings=(Fitting("o"),), chosen=("o",))


def test_a_living_owner_keeps_its_copy_to_itself(tmp_path: Path) -> None:
    journal = Journal(tmp_path)
    journal.write(_document(), project=None, title="disc")
    assert left_behind(tmp_path) == ()
    journal.close()
    assert list(tmp_path.iterdir()) == []


def test_what_a_dead_owner_left_is_found_with_its_project(tmp_path: Path) -> None:
    journal = Journal(tmp_path)
    journal.write(_document(), project=tmp_path / "tray.inlayfit", title="tray")
    journal._lock.close()  # what the operating system does when a process dies
    (found,) = left_behind(tmp_path)
    assert found.state() == _document()
    assert found.project == tmp_path / "tray.inlayfit"
    assert found.title == "tray"
    assert abs(found.written_at - time.time()) < 60
    found.discard()
    assert left_behind(tmp_path) == ()
    assert list(tmp_path.iterdir()) == []


def test_a_copy_that_makes_no_sense_is_left_out_and_a_damaged_one_says_so(tmp_path: Path) -> None:
    (tmp_path / "a.recovery").write_bytes(b"nonsense")
    assert left_behind(tmp_path) == ()
    (tmp_path / "b.recovery").write_bytes(b'{"project": null, "title": "x", "time": 1}\n{"format"')
    (found,) = left_behind(tmp_path)
    with pytest.raises(ProjectError):
        found.state()


def test_what_a_dead_owner_left_beside_its_copy_is_swept_and_a_living_one_keeps_its_own(
    tmp_path: Path,
) -> None:
    alive, dead, without_copy = Journal(tmp_path), Journal(tmp_path), Journal(tmp_path)
    for journal in (alive, dead):
        journal.write(_document(), project=None, title="disc")
        journal.copy.with_name(f".{journal.copy.name}.x.part").write_bytes(b"half")
    dead._lock.close()
    without_copy._lock.close()
    (found,) = left_behind(tmp_path)
    assert found.copy == dead.copy
    kept = {alive.copy.stem, dead.copy.stem}
    assert {file.name.lstrip(".").split(".")[0] for file in tmp_path.iterdir()} == kept
    assert [file.name for file in tmp_path.glob(".*.part")] == [f".{alive.copy.name}.x.part"]
    found.discard()
    alive.close()


def test_a_lock_that_was_swept_before_it_was_held_is_no_lock(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Two programs start at once: the second sweeps the file that the first has opened and not locked."""
    fcntl = pytest.importorskip("fcntl")
    swept: list[Path] = []
    real = fcntl.flock

    def sweep_first(handle: int, how: int) -> None:
        if not swept:
            swept.extend(tmp_path.glob("*.lock"))
            swept[0].unlink()
        real(handle, how)

    monkeypatch.setattr(fcntl, "flock", sweep_first)
    journal = Journal(tmp_path)
    assert journal.copy.with_suffix(".lock") != swept[0]
    assert journal.copy.with_suffix(".lock").exists()
    journal.close()


def test_a_missing_folder_holds_nothing(tmp_path: Path) -> None:
    assert left_behind(tmp_path / "none") == ()


@pytest.mark.skipif(sys.platform == "win32", reason="needs fork and SIGKILL")
@pytest.mark.filterwarnings("ignore:.*fork.*:DeprecationWarning")
def test_a_kill_at_any_moment_breaks_no_file(tmp_path: Path) -> None:
    """The child edits, writes its copy and saves as fast as it can; it is killed at random moments.

    Each time the project opens, and the copy, if there is one, is at most one edit behind what the child
    said it had done (the window adds its delay of at most two seconds, see tests/app/files/test_autosave.py).
    """
    rng = random.Random(5)
    project = tmp_path / "tray.inlayfit"
    save_project(_document(), project)
    copies = tmp_path / "copies"
    for _ in range(KILLS):
        reader, writer = os.pipe()
        child = os.fork()
        if child == 0:
            _edit_for_ever(copies, project, writer)
        os.close(writer)
        os.read(reader, 1)
        time.sleep(rng.uniform(0.0, 0.03))
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        done = 1 + len(os.read(reader, 1_000_000))
        os.close(reader)
        assert load_project(project).outlines == _document().outlines
        for found in left_behind(copies):
            steps = round(found.state().fittings[0].spec.clearance_mm * 1000)
            assert done - 1 <= steps <= done + 1
            found.discard()


def _edit_for_ever(copies: Path, project: Path, writer: int) -> None:
    try:
        journal = Journal(copies)
        state = _document()
        for step in range(1, 10_000):
            state = edits.set_clearance(state, step / 1000).state
            journal.write(state, project=project, title="tray")
            os.write(writer, b".")
            save_project(state, project)
    finally:
        os._exit(0)
