"""A window on an empty bench for each test: its own settings, recent list and recovery folder."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QEvent
from pytestqt.qtbot import QtBot
from shiboken6 import isValid

from inlayfit.app.pages import prompts
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document.imports import Outline
from inlayfit.document.outlines import region_of_contours
from inlayfit.document.settings import Settings
from inlayfit.document.state import Fitting, State
from inlayfit.fit.spec import FitSpec, HalfSpec
from inlayfit.geometry.path import Path as Line
from inlayfit.shipped import shipped_folder

QUESTIONS = (
    "open_files", "save_project_as", "export_folder", "unsaved_work", "replace_files", "recovery",
    "export_wish",
)  # fmt: skip
LEAF = shipped_folder("sample_shapes") / "leaf.svg"
FEET = shipped_folder("sample_shapes") / "feet.dxf"


def disc(number: int = 0, *, radius: float = 12.5) -> Outline:
    circle = (Line.circle((40.0 * number, 0.0), radius),)
    return Outline(f"o{number}", f"disc {number}", "0", region_of_contours(circle), circle)


def discs(count: int = 2) -> State:
    outlines = tuple(disc(n) for n in range(count))
    spec = FitSpec(0.03, HalfSpec(2.0), HalfSpec(3.0))
    fittings = tuple(Fitting(o.id, spec) for o in outlines)
    return State(outlines=outlines, fittings=fittings, chosen=("o0",) if count else ())


@pytest.fixture(autouse=True)
def folders_of_this_test(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Nothing a test does reaches the folders of the person who runs it."""
    for name in ("CONFIG", "STATE", "DATA", "CACHE"):
        monkeypatch.setenv(f"XDG_{name}_HOME", str(tmp_path / name.lower()))
    monkeypatch.setenv("LOCALAPPDATA", str(tmp_path / "local"))


@pytest.fixture(autouse=True)
def no_question_is_asked(monkeypatch: pytest.MonkeyPatch) -> None:
    """A dialog that a test did not expect fails it instead of waiting for ever."""

    def refuse(*_: object, **__: object) -> object:
        pytest.fail("a dialog was opened that this test does not answer")

    for name in QUESTIONS:
        monkeypatch.setattr(prompts, name, refuse)


@pytest.fixture
def session(qtbot: QtBot) -> Iterator[Session]:
    made = Session(Settings())
    yield made
    made.close()


@pytest.fixture
def make_window(qtbot: QtBot, tmp_path: Path) -> Iterator[Callable[[], MainWindow]]:
    made: list[MainWindow] = []

    def make() -> MainWindow:
        made.append(new_window(tmp_path))
        return made[-1]

    yield make
    for window in made:
        end(window)


def new_window(folder: Path) -> MainWindow:
    """A window on an empty bench, which keeps its lists in a folder; who asks for one ends it."""
    session = Session(Settings().with_value("theme", "light"))
    recent, settings = folder / "recent.json", folder / "settings.json"
    window = MainWindow(session, recent=recent, settings_file=settings)
    session.setParent(window)
    window.resize(1440, 900)
    window.show()
    window.documents.cancel()  # asking for them gives the window its bench at once
    return window


def end(window: MainWindow) -> None:
    """Close a window and let Qt delete it at once: none waits for an event loop of a later test."""
    if not isValid(window):
        return
    window.session.mark_saved(Path("ended.inlayfit"))  # so that nobody is asked
    window.documents.close()
    window.session.close()
    window.close()
    window.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.fixture
def window(make_window: Callable[[], MainWindow]) -> MainWindow:
    return make_window()


@pytest.fixture
def settled(qtbot: QtBot) -> Callable[[Session], None]:
    """Wait until the numbers shown are exact."""

    def wait(session: Session) -> None:
        qtbot.waitUntil(lambda: not session.is_stale and not session.solver.is_busy, timeout=20_000)

    return wait


@pytest.fixture
def open_discs(window: MainWindow, settled: Callable[[Session], None]) -> MainWindow:
    window.session.start(discs(2), title="discs")
    settled(window.session)
    return window
