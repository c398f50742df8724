"""The program and its windows, in a process of its own: there can be one application only."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from tests.app.conftest import LEAF

ROOT = Path(__file__).resolve().parents[2]
TWO_WINDOWS = """
import gc
import sys
from pathlib import Path
from PySide6.QtCore import QEventLoop, QTimer
from shiboken6 import isValid
from inlayfit.app.main import Program
from inlayfit.document.settings import Settings

def wait_a_moment():
    loop = QEventLoop()
    QTimer.singleShot(50, loop.quit)
    loop.exec()

program = Program(["inlayfit"])
first, second = (program.open_window(Settings()) for _ in range(2))
for window in (first, second):
    window.documents.cancel()  # asking for them gives the window its bench at once
first.close()
wait_a_moment()
gc.collect()
assert not isValid(first)
assert program.windows == [second]
program.take_files([Path(sys.argv[1])])
for _ in range(400):
    wait_a_moment()
    if not second.session.is_stale and second.session.solution.lead is not None:
        print("solved", len(second.session.state.outlines))
        break
second.close()
wait_a_moment()
assert program.windows == []
print("left")
"""


def test_files_of_a_later_start_go_to_a_window_that_is_open_and_closed_ones_are_gone() -> None:
    command = [sys.executable, "-X", "faulthandler", "-c", TWO_WINDOWS, str(LEAF)]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    assert done.stdout == "solved 1\nleft\n"
    assert "Error" not in done.stderr
