from __future__ import annotations

import datetime
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTranslator
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from inlayfit.app.files.recent import MOST, RecentWork, read_recent, with_work, write_recent
from inlayfit.app.files.recent_pictures import small_picture
from inlayfit.app.panels.empty_page import RecentRow
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.app.words import counted, when_words
from inlayfit.document import made_edits
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.shipped import shipped_folder
from tests.app.conftest import discs


def test_read_after_write_is_the_same_list(tmp_path: Path) -> None:
    works = with_work((), RecentWork(tmp_path / "a.svg", "Goes in.", 1.5, small_picture(discs())))
    works = with_work(works, RecentWork(tmp_path / "b.svg", "Nothing is chosen.", 2.5))
    write_recent(works, tmp_path / "deep" / "recent.json")
    assert read_recent(tmp_path / "deep" / "recent.json") == works


def test_the_newest_is_first_once_and_the_list_ends(tmp_path: Path) -> None:
    works: tuple[RecentWork, ...] = ()
    for n in range(MOST + 3):
        works = with_work(works, RecentWork(tmp_path / f"{n}.svg", "", float(n)))
    works = with_work(works, RecentWork(tmp_path / "5.svg", "", 99.0))
    assert works[0].path.name == "5.svg"
    assert len(works) == MOST
    assert len({work.path for work in works}) == MOST


@pytest.mark.parametrize(
    "content",
    [b"", b"{", b"{}", b'[{"path": 1}]', b'[{"path": "a", "summary": "", "opened_at": 0, "rings": [[1]]}]'],
)
def test_a_damaged_list_is_an_empty_one(tmp_path: Path, content: bytes) -> None:
    file = tmp_path / "recent.json"
    file.write_bytes(content)
    assert read_recent(file) == ()


def test_a_small_picture_fits_its_square() -> None:
    numbers = [v for ring in small_picture(discs(3)) for v in ring]
    assert min(numbers) >= -0.1
    assert max(numbers) <= 100.1


def test_moments_are_said_as_one_says_them() -> None:
    moment = datetime.datetime(2025, 11, 3, 14, 5)
    seconds = moment.timestamp()
    assert when_words(seconds, today=datetime.date(2025, 11, 3)) == "today at 14:05"
    assert when_words(seconds, today=datetime.date(2025, 11, 4)) == "yesterday"
    assert when_words(seconds, today=datetime.date(2025, 12, 1)) == "3 November"
    assert when_words(seconds, today=datetime.date(2026, 1, 1)) == "3 November 2025"
    assert (counted(1, "one", "{0} of them"), counted(3, "one", "{0} of them")) == ("one", "3 of them")


def test_enter_on_clear_list_has_a_way_back_by_enter(window: MainWindow, tmp_path: Path) -> None:
    works = (RecentWork(tmp_path / "a.svg", "Goes in.", 1.5), RecentWork(tmp_path / "b.svg", "Goes in.", 1.0))
    window.documents.restore_recent(works)
    clear = next(b for b in window.recent_panel.findChildren(QPushButton) if b.text() == "Clear list")
    clear.show()
    clear.setFocus()
    QTest.keyClick(clear, Qt.Key.Key_Return)
    assert read_recent(tmp_path / "recent.json") == ()
    assert window.notice.text == "The list of recent work is empty now. No file was deleted."
    assert QApplication.focusWidget() is window.notice.offer_button
    QTest.keyClick(window.notice.offer_button, Qt.Key.Key_Return)
    assert read_recent(tmp_path / "recent.json") == works
    assert window.notice.text == ""
    assert QApplication.focusWidget() is window.recent_panel.rows[0]


def test_a_complaint_after_an_offer_offers_nothing(window: MainWindow, tmp_path: Path) -> None:
    window.documents.restore_recent((RecentWork(tmp_path / "a.svg", "Goes in.", 1.5),))
    window.recent_panel.clear_asked.emit()
    assert window.notice.offer_button.isVisible()
    window.notice.complain("It cannot be read.")
    assert not window.notice.offer_button.isVisible()


def test_what_was_opened_since_stands_before_what_is_brought_back(window: MainWindow, tmp_path: Path) -> None:
    old = tuple(RecentWork(tmp_path / f"{name}.svg", "", 1.0) for name in "ab")
    window.documents.restore_recent((RecentWork(tmp_path / "b.svg", "newer", 2.0),))
    window.documents.restore_recent(old)
    assert [work.path.stem for work in window.documents.recent] == ["b", "a"]
    assert window.documents.recent[0].summary == "newer"


def test_the_list_says_what_the_verdict_says_of_the_workshop(
    window: MainWindow, qtbot: QtBot, settled: Callable[[Session], None], tmp_path: Path
) -> None:
    window.session.start(discs(1), project=tmp_path / "tray.inlayfit")
    settled(window.session)
    window.session.do(lambda s: made_edits.set_workshop(s, WorkshopNumbers(floor_fillet_mm=0.3)))
    settled(window.session)
    qtbot.waitUntil(
        lambda: any(check.finding.code == "held-up" for check in window.work.checks), timeout=20_000
    )
    assert window.work.verdict_bar.headline != "Goes in."
    assert window.documents.recent[0].summary == window.work.verdict_bar.headline


def test_a_row_says_its_summary_in_the_language_of_the_window(qtbot: QtBot, tmp_path: Path) -> None:
    german = QTranslator()
    assert german.load(str(shipped_folder("resources") / "translations" / "inlayfit_de.qm"))
    QApplication.installTranslator(german)
    try:
        row = RecentRow(RecentWork(tmp_path / "tray.inlayfit", "Look before cutting.", 1.0), "")
        qtbot.addWidget(row)
        assert "Look before" not in row.accessibleName()
    finally:
        QApplication.removeTranslator(german)


def test_a_row_is_said_with_one_full_stop_between_its_parts(qtbot: QtBot, tmp_path: Path) -> None:
    file = tmp_path / "tray.inlayfit"
    file.touch()
    for summary, name in (("Goes in.", "tray. Goes in. today"), ("", "tray. today")):
        row = RecentRow(RecentWork(file, summary, 1.0), "today")
        qtbot.addWidget(row)
        assert row.accessibleName() == name
