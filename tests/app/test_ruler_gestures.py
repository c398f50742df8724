"""A gesture on the ruler that comes to nothing leaves nothing: not even a rounded number."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document import edits

Settled = Callable[[Session], None]
LEFT = Qt.MouseButton.LeftButton


def _goes_on(session: Session) -> bool:
    return session.is_in_gesture


@pytest.mark.parametrize("by_escape", [True, False], ids=["by Esc", "by going back"])
@pytest.mark.parametrize("clearance_mm", [0.03, 0.01899], ids=["whole µm", "between two"])
def test_a_drag_that_comes_to_nothing_leaves_the_document_and_the_boxes(
    open_discs: MainWindow, settled: Settled, by_escape: bool, clearance_mm: float
) -> None:
    window, ruler = open_discs, open_discs.work.ruler.ruler
    session = window.session
    session.do(lambda state: edits.set_clearance(state, clearance_mm))
    start, steps = session.state, len(session.history.done)
    handle = ruler.handle_rect().center().toPoint()
    QTest.mousePress(ruler, LEFT, pos=handle)
    QTest.mouseMove(ruler, handle + QPoint(60, 0))
    assert _goes_on(session)
    if by_escape:
        QTest.keyClick(ruler, Qt.Key.Key_Escape)
    else:
        QTest.mouseMove(ruler, handle)
    QTest.mouseRelease(ruler, LEFT, pos=handle)
    assert not _goes_on(session)
    assert session.shown is session.state is start
    assert len(session.history.done) == steps
    assert window.sentence.clearance_box.mm == window.work.ruler.box.mm == clearance_mm
    settled(session)
    assert not session.solution.is_preview


def test_what_is_read_beside_a_drag_ends_at_what_was_dragged_to(
    open_discs: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    window, session = open_discs, open_discs.session
    bar, before = window.work.ruler, window.sentence.clearance_box.mm
    for um in range(31, 61):
        session.preview(edits.set_clearance(session.state, um / 1000), initiator=bar)
    qtbot.waitUntil(lambda: window.sentence.clearance_box.mm == 0.06)
    qtbot.waitUntil(lambda: bar.box.mm == 0.06)
    session.cancel_gesture()
    for wait_ms in (0, 150):
        qtbot.wait(wait_ms)
        assert window.sentence.clearance_box.mm == bar.box.mm == before
