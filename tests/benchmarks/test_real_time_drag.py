"""Dragging the slider in real time: frames and answers a second, input lag, stalls, and the share of stages.

Run with `pytest tests/benchmarks/test_real_time_drag.py --benchmark-enable -k 2000`; it prints a table. The
window is offscreen, 1440 by 852, at a ratio of 1. What is aimed at: 60 frames and answers a second at 2,000
vertices and 30 at 10,000, and with 100,000 a handle that follows within 100 ms. Times are never asserted,
they depend on the machine; without --benchmark-enable a short drag shows that what is counted is true.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QCoreApplication
from pytestqt.qtbot import QtBot

from inlayfit.app.window import MainWindow
from inlayfit.document.sample import sample_state
from inlayfit.document.state import State
from tests.benchmarks.lobes import lobed
from tests.benchmarks.real_time import HAND_HZ, Account, Hand, Stages, drag, staged, swept

SECONDS = 3


Turn = Callable[[Callable[[], bool]], None]


def _dragged(window: MainWindow, moves: int, stages: Stages, turn: Turn) -> tuple[Hand, Account]:
    ruler = window.work.ruler.ruler
    hand = Hand(ruler, swept(moves, ruler.value()))
    return hand, drag(window, hand, stages, turn)


@pytest.mark.parametrize("what", ["sample", "2000", "10000", "100000"])
def test_a_drag_in_real_time(
    what: str,
    window: MainWindow,
    qtbot: QtBot,
    request: pytest.FixtureRequest,
    capsys: pytest.CaptureFixture[str],
) -> None:
    in_earnest = bool(request.config.getoption("benchmark_enable"))
    if what in ("10000", "100000") and not in_earnest:
        pytest.skip("only measured")
    session = window.session
    session.start(sample_state(State()) if what == "sample" else lobed(int(what)))
    qtbot.waitUntil(lambda: not session.is_stale and not session.examiner.is_busy, timeout=120_000)

    def turn(done: Callable[[], bool]) -> None:
        qtbot.waitUntil(done, timeout=120_000)

    before = session.state
    stages = Stages()
    with staged(stages):
        hand, account = _dragged(window, 20, stages, turn)
        if in_earnest:
            stages.clear()
            hand, account = _dragged(window, SECONDS * HAND_HZ, stages, turn)
    QCoreApplication.processEvents()
    assert session.state is before, "a drag that is not ended changes no document"
    assert session.solution.is_preview
    assert account.answers <= account.map_frames <= account.frames
    assert len(account.lags) == len(account.follows) == len(hand.moves)
    assert (account.lags >= account.follows - 1e-9).all(), "the handle never lags behind the map"
    hand.release()
    qtbot.waitUntil(lambda: not session.is_stale, timeout=120_000)
    assert session.state.lead is not None
    assert session.state.lead.spec.clearance_mm == hand.moves[-1][1] / 1000
    assert len(session.history.done) == 1
    if in_earnest:
        with capsys.disabled():
            print("", *account.lines(f"drag, {what}"), sep="\n")  # noqa: T201 - this is the report
