"""A complaint about a file goes when something else is open; one about something else stays."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtGui import QGuiApplication
from pytestqt.qtbot import QtBot

from inlayfit.app.window import MainWindow
from inlayfit.document.project_file import save_project
from tests.app.conftest import FEET, LEAF, discs

Open = Callable[[MainWindow, Path], None]


def _drawing(window: MainWindow, _folder: Path) -> None:
    window.documents.open_files([LEAF])


def _project(window: MainWindow, folder: Path) -> None:
    save_project(discs(), folder / "discs.inlayfit")
    window.documents.open_files([folder / "discs.inlayfit"])


def _pasted(window: MainWindow, _folder: Path) -> None:
    window.documents.read_text(LEAF.read_text(encoding="utf-8"))


def _sample(window: MainWindow, _folder: Path) -> None:
    window.documents.open_sample()


WAYS = {"drawing": _drawing, "project": _project, "pasted": _pasted, "sample": _sample}


@pytest.fixture
def bad(tmp_path: Path) -> Path:
    path = tmp_path / "bad.dxf"
    path.write_bytes(b"not a drawing")
    return path


def _complained(window: MainWindow, qtbot: QtBot, bad: Path) -> str:
    """Open what cannot be read; what the window says of it."""
    window.documents.open_files([bad], adds=True)
    qtbot.waitUntil(lambda: "bad.dxf" in window.notice.text, timeout=20_000)
    return window.notice.text


@pytest.mark.parametrize("way", WAYS.values(), ids=WAYS)
def test_a_complaint_about_a_file_goes_when_something_else_is_open(
    window: MainWindow, qtbot: QtBot, bad: Path, tmp_path: Path, way: Open
) -> None:
    _complained(window, qtbot, bad)
    way(window, tmp_path)
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    assert window.notice.text == ""


def test_it_goes_when_outlines_are_added(open_discs: MainWindow, qtbot: QtBot, bad: Path) -> None:
    _complained(open_discs, qtbot, bad)
    open_discs.documents.open_files([FEET], adds=True)
    qtbot.waitUntil(lambda: len(open_discs.session.state.outlines) > 2, timeout=20_000)
    assert open_discs.notice.text == ""


def test_it_stays_until_what_comes_next_is_really_open(
    window: MainWindow, qtbot: QtBot, bad: Path, tmp_path: Path
) -> None:
    _complained(window, qtbot, bad)
    window.documents.open_files([LEAF])
    assert "bad.dxf" in window.notice.text
    window.documents.cancel()
    assert "bad.dxf" in window.notice.text
    window.documents.open_files([tmp_path / "gone.svg"])
    qtbot.waitUntil(lambda: "gone.svg" in window.notice.text, timeout=20_000)


def test_of_several_files_opened_at_once_the_broken_one_is_still_complained_of(
    window: MainWindow, qtbot: QtBot, bad: Path
) -> None:
    window.documents.open_files([bad, LEAF])
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    assert "bad.dxf" in window.notice.text
    window.documents.open_files([FEET], adds=True)
    qtbot.waitUntil(lambda: len(window.session.state.outlines) > 1, timeout=20_000)
    assert window.notice.text == ""


def test_a_paste_that_holds_nothing_is_forgotten_with_the_next_drawing(
    window: MainWindow, qtbot: QtBot
) -> None:
    QGuiApplication.clipboard().clear()
    window.documents.paste()
    assert window.notice.text != ""
    window.documents.open_files([LEAF])
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    assert window.notice.text == ""


def test_a_complaint_about_something_else_stays(window: MainWindow, qtbot: QtBot) -> None:
    window.notice.complain("The settings cannot be read.")
    window.documents.open_files([LEAF])
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    assert window.notice.text == "The settings cannot be read."


def test_a_project_says_that_its_drawing_was_changed_even_after_a_complaint(
    window: MainWindow, qtbot: QtBot, bad: Path, tmp_path: Path
) -> None:
    drawing, project = tmp_path / "leaf.svg", tmp_path / "leaf.inlayfit"
    drawing.write_bytes(LEAF.read_bytes())
    window.documents.open_files([drawing])
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    save_project(window.session.state, project)
    window.session.mark_saved(project)
    drawing.write_bytes(LEAF.read_bytes() + b"\n")
    _complained(window, qtbot, bad)
    window.documents.open_files([project])
    qtbot.waitUntil(lambda: "was changed since" in window.notice.text, timeout=20_000)
    window.documents.open_files([FEET])
    qtbot.waitUntil(lambda: window.session.title == "feet", timeout=20_000)
    assert window.notice.text == ""
