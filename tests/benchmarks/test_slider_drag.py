"""One step of dragging the slider, end to end: solve a preview, build its scene, paint the whole window.

Run with `pytest tests/benchmarks/test_slider_drag.py --benchmark-enable`. The window is offscreen and waits
for each answer, so a step is the sum of both threads; in use they run side by side and the slower one sets
the pace. `extra_info` says how much processor time each thread took a step, in milliseconds.
"""

from __future__ import annotations

import time

import pytest
from PySide6.QtCore import QEventLoop
from PySide6.QtWidgets import QApplication
from pytest_benchmark.fixture import BenchmarkFixture
from pytestqt.qtbot import QtBot

from inlayfit.app.window import MainWindow
from inlayfit.document.edits import set_clearance
from inlayfit.document.sample import sample_state
from inlayfit.document.state import State
from tests.benchmarks.lobes import lobed

STEPS = 20


@pytest.mark.parametrize("what", ["sample", "2000", "10000"])
def test_a_step_of_the_slider(
    what: str, window: MainWindow, qtbot: QtBot, qapp: QApplication, benchmark: BenchmarkFixture
) -> None:
    session = window.session
    session.start(sample_state(State()) if what == "sample" else lobed(int(what)))
    qtbot.waitUntil(lambda: not session.is_stale, timeout=60_000)
    answers: list[object] = []
    session.solved.connect(answers.append)
    asked = 0

    def step() -> None:
        nonlocal asked
        asked += 1
        before = len(answers)
        session.preview(set_clearance(session.state, 0.03 + 0.001 * (asked % 40)))
        while len(answers) == before:
            qapp.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)
        qapp.processEvents()

    whole, own = time.process_time(), time.thread_time()
    benchmark.pedantic(step, rounds=STEPS, warmup_rounds=2)  # type: ignore[no-untyped-call]  # it has no types
    whole, own = time.process_time() - whole, time.thread_time() - own
    benchmark.extra_info["window_ms"] = round(1000 * own / asked, 1)
    benchmark.extra_info["solver_ms"] = round(1000 * (whole - own) / asked, 1)
    assert session.solution.is_preview
    assert len(answers) == asked
    session.cancel_gesture()
