"""How long the window stands still while a large drawing is opened, looked at, changed and given up.

Run with `pytest tests/benchmarks/test_large_drawing.py --benchmark-enable`; it prints a table. What is aimed
at with 100,000 vertices: never longer than 0.1 s, and Cancel within 0.2 s. Times are never asserted, they
depend on the machine; without --benchmark-enable a small drawing goes the same way.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QEventLoop, QPoint, QPointF, Qt, QTimer
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from inlayfit.app.window import MainWindow
from inlayfit.document.edits import choose, set_clearance
from tests.benchmarks.lobes import lobed

_TICK_S = 0.005
_STEPS, _STEP_S = 25, 0.016


def drawing(folder: Path, vertices: int) -> Path:
    """Two lobed disks beside each other."""
    (ring,) = lobed(vertices).outlines[0].region.rings()
    paths = []
    for middle in (60.0, 160.0):
        pairs = " ".join(f"{x:.5f} {y:.5f}" for x, y in (ring + np.array([middle, 60.0])).tolist())
        paths.append(f'<path d="M{pairs}Z"/>')
    file = folder / "lobes.svg"
    size = 'width="220mm" height="120mm" viewBox="0 0 220 120"'
    file.write_text(f'<svg xmlns="http://www.w3.org/2000/svg" {size}>{"".join(paths)}</svg>')
    return file


class Stalls:
    """Turns the event loop and notes how late its clock ticks, step by step."""

    def __init__(self, window: MainWindow) -> None:
        self.session = window.session
        self.lines: list[str] = []
        self._ticks: list[float] = []
        self._clock = QTimer(window)
        self._clock.setTimerType(Qt.TimerType.PreciseTimer)
        self._clock.timeout.connect(lambda: self._ticks.append(time.perf_counter()))
        self._clock.start(round(1000 * _TICK_S))

    def is_settled(self) -> bool:
        return not self.session.is_stale and not self.session.solver.is_busy

    def step(self, name: str, work: Callable[[], object], done: Callable[[], bool] | None = None) -> None:
        """Do something, turn the loop until it is done, and note the longest stall."""
        ended = done or self.is_settled
        begin = time.perf_counter()
        self._ticks[:] = [begin]
        work()
        while not ended():
            self._turn()
            assert time.perf_counter() - begin < 120, f"{name} does not end"
        self._turn()
        self._note(name, begin)

    def repeated(self, name: str, work: Callable[[int], object]) -> None:
        """Do something sixty times a second for a while."""
        begin = time.perf_counter()
        self._ticks[:] = [begin]
        for number in range(_STEPS):
            work(number)
            while time.perf_counter() < begin + (number + 1) * _STEP_S:
                self._turn()
        self._note(name, begin)

    def _note(self, name: str, begin: float) -> None:
        end = time.perf_counter()
        stall = float(np.diff([*self._ticks, end]).max()) - _TICK_S
        self.lines.append(f"  {name:22} {end - begin:6.2f} s, longest stall {1000 * max(0.0, stall):4.0f} ms")

    @staticmethod
    def _turn() -> None:
        QApplication.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 5)


def _wheel(window: MainWindow, at: QPoint, notches: int) -> None:
    view, none = window.work.map, Qt.MouseButton.NoButton
    turned = QPoint(0, notches)
    event = QWheelEvent(
        QPointF(at), QPointF(view.mapToGlobal(at)), QPoint(), turned, none,
        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(view, event)


@pytest.mark.parametrize("vertices", [1_000, 100_000])
def test_a_large_drawing_from_opening_to_cancelling(
    vertices: int,
    window: MainWindow,
    request: pytest.FixtureRequest,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    in_earnest = bool(request.config.getoption("benchmark_enable"))
    if vertices > 1_000 and not in_earnest:
        pytest.skip("only measured")
    session, view, file = window.session, window.work.map, drawing(tmp_path, vertices)
    stalls = Stalls(window)

    def is_open() -> bool:
        return not session.state.is_empty and stalls.is_settled()

    stalls.step("open", lambda: window.documents.open_files([file]), is_open)
    names = [outline.id for outline in session.state.outlines]
    assert len(names) == 2
    stalls.step("look closely", lambda: None, lambda: not session.examiner.is_busy)
    stalls.repeated("zoom in", lambda n: _wheel(window, QPoint(300 + 5 * n, 200), 60))
    stalls.repeated("pan", lambda n: view.set_view(view.view.panned(12, 3)))
    stalls.repeated("zoom out", lambda n: _wheel(window, QPoint(300, 200), -60))
    view.fit_to_view()
    stalls.repeated("point", lambda n: QTest.mouseMove(view, QPoint(200 + 12 * n, 150 + 8 * n)))
    stalls.step("choose one", lambda: session.do(lambda state: choose(state, names[1:])))
    assert [fitting.key for fitting in view.scene.fittings] == names[1:]
    stalls.step("choose both", lambda: session.do(lambda state: choose(state, names)))
    stalls.step("set the clearance", lambda: session.do(lambda state: set_clearance(state, 0.045)))
    stalls.step("undo", session.undo)
    assert all(fitting.spec.clearance_mm != 0.045 for fitting in session.state.fittings)
    session.do(lambda state: set_clearance(state, 0.055))
    assert session.solver.is_busy
    stalls.step("cancel", session.solver.cancel, lambda: not session.solver.is_busy)
    assert session.is_stale, "what was given up is not said to be known"
    if in_earnest:
        with capsys.disabled():
            print("", f"two outlines of {vertices} vertices", *stalls.lines, sep="\n")  # noqa: T201 - the report
