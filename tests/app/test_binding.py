"""The binding must not lose references: some releases drop one to None at each call that returns nothing."""

from __future__ import annotations

import sys

import PySide6
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

CALLS = 200


def test_calls_that_return_nothing_leave_the_references_to_none_alone(qtbot: QtBot) -> None:
    thing = QObject()
    before = sys.getrefcount(None)
    for _ in range(CALLS):
        thing.setObjectName("x")
    lost = before - sys.getrefcount(None)
    # Python 3.12 makes None immortal; then nothing can be lost and nothing is.
    assert abs(lost) < CALLS // 10, f"PySide6 {PySide6.__version__} loses references to None"
