"""How long a person waits for the window and for `--version`, beside what stands below both.

    pytest tests/benchmarks/test_start.py --benchmark-enable -s
    QT_QPA_PLATFORM=xcb pytest …            the same on the screen that DISPLAY names

prints medians of runs that take turns, in milliseconds of the clock and of the processor, and their ratios:
this says more on a shared machine than seconds do. Without `--benchmark-enable` each is started once.

    bare window    QApplication and an empty QMainWindow, from the start of the process to its first picture
    our window     `inlayfit`, from the start of the process to its first picture, with all that is on it
    python         `python -c pass`
    --version      what the installed command does; and `python -m inlayfit --version`

Compiled modules are kept in a folder of the test's own, so that an installed program is measured, whatever
the environment says.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import threading
import time
from collections.abc import Iterator, Mapping
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
RUNS = 15
PATIENCE_S = 60
BARE_WINDOW = """
import os
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMainWindow

class Window(QMainWindow):
    def paintEvent(self, event):
        super().paintEvent(event)
        QTimer.singleShot(0, lambda: os._exit(0))

program = QApplication(["bare"])
window = Window()
window.resize(1440, 900)
window.show()
program.exec()
"""
OUR_WINDOW = """
import os
import sys
sys.argv = ["inlayfit"]
from inlayfit.cli import main
import inlayfit.commands.window
import gc
gc.disable()  # as the command does before it loads the window
from inlayfit.app.window import MainWindow

def leave(window, event, paint=MainWindow.paintEvent):
    window.first_painted.disconnect()  # what follows the first picture is waited for by nobody
    window.first_painted.connect(lambda: os._exit(0))
    paint(window, event)

MainWindow.paintEvent = leave
main()
"""
WINDOWS = {"bare window": ["-c", BARE_WINDOW], "our window": ["-c", OUR_WINDOW]}
VERSIONS = {
    "python": ["-c", "pass"],
    "--version": ["-c", "from inlayfit.cli import main; main(['--version'])"],
    "-m --version": ["-m", "inlayfit", "--version"],
}

Took = dict[str, list[tuple[float, float]]]
"""Seconds of the clock and of the processor, by what was started."""


@pytest.fixture
def environment(tmp_path: Path) -> Mapping[str, str]:
    """A person's folders of the test's own, and compiled modules as an installed program has them."""
    own = {f"XDG_{name}_HOME": str(tmp_path / name) for name in ("CONFIG", "STATE", "DATA", "CACHE")}
    kept = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
    compiled = {"PYTHONPYCACHEPREFIX": str(tmp_path / "compiled"), "PYTHONPATH": str(ROOT)}
    return {**kept, **own, **compiled, "LOCALAPPDATA": str(tmp_path / "local")}


def processor_s() -> float:
    """Seconds of the processor that ended processes took so far."""
    if sys.platform == "win32":
        return 0.0
    import resource

    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def started(arguments: list[str], environment: Mapping[str, str]) -> tuple[float, float]:
    """Seconds of the clock and of the processor of one start.

    Patience has a clock of its own: a wait with a timeout looks every 50 ms only whether the program ended.
    """
    before, start = processor_s(), time.perf_counter()
    program = subprocess.Popen(
        [sys.executable, *arguments],
        cwd=ROOT,
        env=dict(environment),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    patience = threading.Timer(PATIENCE_S, program.kill)
    patience.start()
    code, took_s = program.wait(), time.perf_counter() - start
    patience.cancel()
    assert code == 0
    return took_s, processor_s() - before


def taking_turns(programs: Mapping[str, list[str]], environment: Mapping[str, str], runs: int) -> Took:
    """Start each in turn, after a first time that counts for nothing."""
    took: Took = {name: [] for name in programs}
    for arguments in programs.values():
        started(arguments, environment)
    for _ in range(runs):
        for name, arguments in programs.items():
            took[name].append(started(arguments, environment))
    return took


def rows(took: Took) -> Iterator[str]:
    """A row each: medians in milliseconds, and ratios to the first of the same turn."""
    first = next(iter(took.values()))
    yield f"{'':14}{'clock ms':>10}{'cpu ms':>10}{'clock ×':>10}{'cpu ×':>10}"
    for name, all_runs in took.items():
        clock, cpu = (1000 * statistics.median(run[k] for run in all_runs) for k in (0, 1))
        ratios = [
            statistics.median(run[k] / max(base[k], 1e-9) for run, base in zip(all_runs, first, strict=True))
            for k in (0, 1)
        ]
        yield f"{name:14}{clock:10.1f}{cpu:10.1f}{ratios[0]:10.2f}{ratios[1]:10.2f}"


@pytest.mark.parametrize("programs", [WINDOWS, VERSIONS], ids=["window", "version"])
def test_the_start_beside_what_stands_below_it(
    programs: Mapping[str, list[str]], environment: Mapping[str, str], request: pytest.FixtureRequest
) -> None:
    timed = bool(request.config.getoption("benchmark_enable"))
    took = taking_turns(programs, environment, RUNS if timed else 1)
    assert all(clock > 0 for runs in took.values() for clock, _ in runs)
    if timed:
        print("", *rows(took), sep="\n")  # noqa: T201
