"""The window that is measured: 1440 by 852, offscreen, sharing the interpreter as the program does."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from inlayfit.app.main import SWITCH_S
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path) -> Iterator[MainWindow]:
    before = sys.getswitchinterval()
    sys.setswitchinterval(SWITCH_S)
    made = MainWindow(Session(), recent=tmp_path / "recent.json", settings_file=tmp_path / "settings.json")
    made.session.setParent(made)
    made.resize(1440, 852)
    made.show()
    yield made
    made.documents.close()
    made.session.close()
    made.hide()
    sys.setswitchinterval(before)
