"""A window that is closed goes, with all that hung on it."""

from __future__ import annotations

import gc
from collections.abc import Callable
from pathlib import Path
from weakref import ref

from pytestqt.qtbot import QtBot

from inlayfit.app.session import Session
from inlayfit.document.edits import set_clearance
from tests.app.conftest import discs, end, new_window


def test_a_window_goes_as_garbage_with_all_that_was_done_and_taken_back(
    qtbot: QtBot, tmp_path: Path, settled: Callable[[Session], None]
) -> None:
    """What a window is made of keeps each other, so that only a search ends it, in any order."""
    for _ in range(3):
        window = new_window(tmp_path)
        session = window.session
        session.start(discs(1))
        for micrometres in (40, 50, 60):
            session.perform(set_clearance(session.state, micrometres / 1000))
        session.undo()
        session.undo()
        session.redo()
        session.perform(set_clearance(session.state, 0.07))
        settled(session)
        end(window)
        kept = ref(session)
        del window, session
        gc.collect()
        assert kept() is None
