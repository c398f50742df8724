"""The settings page tells the desktop about project files, and says in one sentence how that went."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from inlayfit.app.pages.desktop_row import DesktopRow
from inlayfit.app.pages.settings_page import SettingsPage
from inlayfit.document import desktop_entry
from inlayfit.document.desktop_entry import ENTRY, Told
from inlayfit.document.settings import Settings
from inlayfit.units import Unit


@pytest.fixture
def row(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[DesktopRow]:
    monkeypatch.setattr(desktop_entry, "is_supported", lambda: True)
    made = DesktopRow()
    qtbot.addWidget(made)
    yield made
    made.close_work()


def _press(row: DesktopRow, qtbot: QtBot) -> str:
    row.button.click()
    qtbot.waitUntil(row.button.isEnabled, timeout=20_000)
    return row.note.text()


def test_one_press_tells_the_desktop_and_the_next_takes_it_away(
    row: DesktopRow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(desktop_entry, "_tell", lambda _: Told())
    assert "does not know" in row.note.text()
    assert _press(row, qtbot) == "A double click on a .inlayfit file opens this program."
    assert (tmp_path / "data" / ENTRY).is_file()
    assert row.button.text().startswith("No longer")
    assert _press(row, qtbot).startswith("Taken away")
    assert not (tmp_path / "data" / ENTRY).exists()
    assert row.button.text().startswith("Open")


@pytest.mark.parametrize(
    ("told", "words"),
    [
        (Told(missing=("update-mime-database",)), "install shared-mime-info"),
        (Told(failed=("update-desktop-database",)), "update-desktop-database failed"),
    ],
)
def test_a_desktop_that_could_not_be_told_is_said(
    row: DesktopRow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, told: Told, words: str
) -> None:
    monkeypatch.setattr(desktop_entry, "_tell", lambda _: told)
    assert words in _press(row, qtbot)
    assert row.button.text().startswith("Open")


def test_a_folder_that_cannot_be_written_is_said(row: DesktopRow, qtbot: QtBot, tmp_path: Path) -> None:
    (tmp_path / "data").write_text("a file where the folder shall be")
    assert "was not made" in _press(row, qtbot)
    assert row.button.text().startswith("Open")


def test_another_system_is_told_by_hand(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(desktop_entry, "is_supported", lambda: False)
    row = DesktopRow()
    qtbot.addWidget(row)
    assert not row.button.isEnabled()
    assert "Open with" in row.note.text()


def test_the_page_waits_for_what_is_being_written(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Closing the page right after the press neither crashes nor loses the entry."""
    monkeypatch.setattr(desktop_entry, "is_supported", lambda: True)
    page = SettingsPage(Settings(), lambda _: None, unit=Unit.MM, file=tmp_path / "settings.json")
    qtbot.addWidget(page)
    page.show()
    page.desktop.button.click()
    QTest.qWait(1)
    page.reject()
    assert (tmp_path / "data" / ENTRY).is_file()
