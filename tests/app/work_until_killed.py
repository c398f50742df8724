"""A person at work, for the tests that kill: edits and saves through a real window until the process dies.

    python work_until_killed.py PROJECT

Every edit is typed into the clearance box of the fit sentence: step n asks for n hundredths of a micrometre,
so a file tells by its clearance how much of the work it holds. One line goes out for each thing done:

    edit N T    step N was in the document at T, seconds of the clock that all processes share
    save N T    step N was in the project file at T

Undo and redo, drags of the ruler and other boxes go on between the edits, as they do at a bench.
"""

from __future__ import annotations

import random
import sys
import time
from pathlib import Path

from PySide6.QtCore import QPoint, Qt, QTimer
from PySide6.QtTest import QTest

from inlayfit.app.main import Program
from inlayfit.app.window import MainWindow
from inlayfit.document.settings import Settings

EDIT_MS = 25
LONGEST_UNSAVED_S = 4.0
STEP_MM = 1e-5
_LEFT, _NONE = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier


class Work:
    """What a busy hand does to a window."""

    def __init__(self, window: MainWindow, project: Path) -> None:
        self._window = window
        self._project = project
        self._step = round(window.session.state.fittings[0].spec.clearance_mm / STEP_MM)
        self._saved_at = time.monotonic()
        self._rng = random.Random(self._step)
        self._save_after_s = self._rng.uniform(0.05, LONGEST_UNSAVED_S)
        self._clock = QTimer(window)
        self._clock.timeout.connect(self._on_clock_timeout)
        self._clock.start(EDIT_MS)

    def _on_clock_timeout(self) -> None:
        self._type_next()
        if self._rng.random() < 0.1:
            self._take_back_and_do_again()
        if self._rng.random() < 0.05:
            self._drag_and_let_go()
        if time.monotonic() - self._saved_at > self._save_after_s:
            self._save()

    def _type_next(self) -> None:
        self._step += 1
        box = self._window.sentence.clearance_box
        box.setFocus()
        box.selectAll()
        QTest.keyClicks(box.lineEdit(), f"{self._step * STEP_MM:.5f}")
        QTest.keyClick(box, Qt.Key.Key_Return)
        held = self._window.session.state.fittings[0].spec.clearance_mm
        if round(held / STEP_MM) != self._step:
            raise SystemExit(f"typed step {self._step}, got {held}")
        _say("edit", self._step)

    def _take_back_and_do_again(self) -> None:
        self._window.actions_by_name["undo"].trigger()
        self._window.actions_by_name["redo"].trigger()

    def _drag_and_let_go(self) -> None:
        """A drag that ends where it began leaves no work behind, only previews."""
        ruler = self._window.work.ruler.ruler
        at = QPoint(ruler.width() // 2, ruler.height() // 2)
        QTest.mousePress(ruler, _LEFT, _NONE, at)
        QTest.mouseMove(ruler, at + QPoint(15, 0))
        QTest.keyClick(ruler, Qt.Key.Key_Escape)
        QTest.mouseRelease(ruler, _LEFT, _NONE, at)

    def _save(self) -> None:
        self._window.actions_by_name["save"].trigger()
        if self._window.session.is_modified or self._window.session.project != self._project:
            raise SystemExit(self._window.notice.text)
        _say("save", self._step)
        self._saved_at = time.monotonic()
        self._save_after_s = self._rng.uniform(0.05, LONGEST_UNSAVED_S)


def _say(what: str, step: int) -> None:
    sys.stdout.write(f"{what} {step} {time.monotonic()}\n")
    sys.stdout.flush()


def main() -> int:
    """Open the project and work on it for ever."""
    project = Path(sys.argv[1])
    program = Program(["inlayfit"])
    window = program.open_window(Settings())
    window.documents.open_files([project])
    start = QTimer(program)
    kept: list[Work] = []

    def begin() -> None:
        if not window.session.state.is_empty and not window.session.is_stale:
            start.stop()
            kept.append(Work(window, project))

    start.timeout.connect(begin)
    start.start(20)
    return program.exec()


if __name__ == "__main__":
    sys.exit(main())
