from __future__ import annotations

from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from inlayfit.app.pace import Pace


def test_many_askings_become_one_at_once_and_one_at_the_end(qtbot: QtBot) -> None:
    owner, asked, done = QObject(), [0], list[int]()
    pace = Pace(lambda: done.append(asked[0]), every_ms=50, parent=owner)
    for number in range(1, 21):
        asked[0] = number
        pace.ask()
    assert done == [1]
    qtbot.waitUntil(lambda: len(done) == 2)
    assert done == [1, 20], "what was asked last is never lost"
    qtbot.wait(120)
    assert len(done) == 2


def test_now_takes_the_place_of_what_waits(qtbot: QtBot) -> None:
    owner, done = QObject(), list[int]()
    pace = Pace(lambda: done.append(1), every_ms=30, parent=owner)
    pace.ask()
    pace.ask()
    pace.now()
    assert len(done) == 2
    qtbot.wait(80)
    assert len(done) == 2
