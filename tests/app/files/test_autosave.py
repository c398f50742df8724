"""At most two seconds of work are lost, whatever ends the program."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMessageBox
from pytestqt.qtbot import QtBot

from inlayfit.app.files.autosave import DELAY_MS, Autosave
from inlayfit.app.pages import prompts
from inlayfit.app.pages.prompts import Rescue
from inlayfit.app.pages.prompts import recovery as asked
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document import edits
from inlayfit.document.journal import LONGEST_DELAY_S, Journal, Recovery, left_behind
from inlayfit.document.project_file import save_project
from tests.app.conftest import discs


@pytest.fixture
def autosave(session: Session, tmp_path: Path) -> Iterator[Autosave]:
    made = Autosave(session, Journal(tmp_path / "copies"))
    yield made
    made.close()


def _copies(tmp_path: Path) -> list[Path]:
    return list((tmp_path / "copies").glob("*.recovery"))


def test_the_clock_is_shorter_than_what_may_be_lost() -> None:
    assert DELAY_MS / 1000 <= LONGEST_DELAY_S / 2


def test_a_change_is_copied_while_further_changes_come(
    session: Session, autosave: Autosave, qtbot: QtBot, tmp_path: Path
) -> None:
    """Steady work does not put the copy off: a change every 50 ms, and the copy is there in time."""
    session.start(discs())
    step = 0
    while not _copies(tmp_path):
        step += 1
        session.perform(edits.set_clearance(session.state, step / 1000))
        qtbot.wait(50)
        assert step * 0.05 < LONGEST_DELAY_S + 3.0
    assert step > 5


def test_the_copy_holds_the_document_and_goes_when_it_is_saved(
    session: Session, autosave: Autosave, qtbot: QtBot, tmp_path: Path
) -> None:
    session.start(discs())
    session.do(lambda s: edits.set_clearance(s, 0.077))
    autosave.write_now()
    qtbot.waitUntil(lambda: bool(_copies(tmp_path)))
    recovery = Recovery(_copies(tmp_path)[0], None, "", 0.0)
    assert recovery.state() == session.state
    session.mark_saved(tmp_path / "tray.inlayfit")
    qtbot.waitUntil(lambda: not _copies(tmp_path))


def test_opening_a_file_leaves_no_copy(
    session: Session, autosave: Autosave, qtbot: QtBot, tmp_path: Path
) -> None:
    session.start(discs())
    autosave.write_now()
    qtbot.wait(50)
    assert _copies(tmp_path) == []


def _left(tmp_path: Path, clearance_mm: float, project: Path | None = None) -> Recovery:
    journal = Journal(tmp_path / "copies")
    state = edits.set_clearance(discs(), clearance_mm).state
    journal.write(state, project=project, title="tray")
    journal._lock.close()  # its process is gone
    (found,) = left_behind(tmp_path / "copies")
    return found


@pytest.mark.parametrize("answer", list(Rescue))
def test_recovery_does_what_was_answered(
    window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, answer: Rescue
) -> None:
    monkeypatch.setattr(prompts, "recovery", lambda *_, **__: answer)
    found = _left(tmp_path, 0.066)
    others = window.documents.offer_recovery([found])
    still_there = found.copy.exists()
    if answer is Rescue.RECOVER:
        assert window.session.state.fitting("o0").spec.clearance_mm == 0.066
        assert window.session.is_modified
        assert window.session.title == "tray"
    elif answer is Rescue.SHOW_BOTH:
        assert others[0][0].fitting("o0").spec.clearance_mm == 0.066
    else:
        assert window.session.state.is_empty
    assert still_there is (answer is not Rescue.DISCARD)


@pytest.mark.parametrize("saved", [True, False])
def test_both_are_offered_only_where_there_is_a_saved_project_to_show(
    window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, saved: bool
) -> None:
    monkeypatch.setattr(prompts, "recovery", asked)
    project = tmp_path / "tray.inlayfit"
    if saved:
        save_project(discs(), project)
    offered: list[str] = []

    def look() -> None:
        box = QApplication.activeModalWidget()
        assert isinstance(box, QMessageBox)
        offered.extend(button.text().replace("&", "") for button in box.buttons())
        offered.append(box.informativeText())
        box.reject()

    QTimer.singleShot(0, look)
    window.documents.offer_recovery([_left(tmp_path, 0.066, project if saved else None)])
    assert ("Show both" in offered) is saved
    assert ("No project file holds this work." in offered[-1]) is not saved


def test_the_old_copy_goes_only_when_there_is_a_new_one(
    session: Session, autosave: Autosave, qtbot: QtBot, tmp_path: Path
) -> None:
    old = _left(tmp_path / "old", 0.066)
    session.start(old.state(), title="tray", modified=True)
    autosave.take_over(old)
    assert old.copy.exists()
    qtbot.waitUntil(lambda: not old.copy.exists())
    assert len(_copies(tmp_path)) == 1


def test_a_damaged_copy_is_said_in_one_sentence(
    window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(prompts, "recovery", lambda *_, **__: Rescue.RECOVER)
    found = _left(tmp_path, 0.066)
    found.copy.write_bytes(found.copy.read_bytes()[:-50])
    window.documents.offer_recovery([found])
    assert "damaged: it ends in the middle" in window.notice.text
    assert window.session.state.is_empty


def test_the_saved_project_is_not_touched_by_recovery(
    window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    project = tmp_path / "tray.inlayfit"
    save_project(discs(), project)
    before = project.read_bytes()
    monkeypatch.setattr(prompts, "recovery", lambda *_, **__: Rescue.RECOVER)
    window.documents.offer_recovery([_left(tmp_path, 0.066, project)])
    assert window.session.project == project
    assert project.read_bytes() == before
