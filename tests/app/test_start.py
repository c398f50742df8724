"""The start: a window before anything heavy is loaded, and nothing lost that is asked of it until then."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app import loading
from inlayfit.app.panels.sentence_box import FormPopup
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document.edits import set_unit
from inlayfit.document.settings import Settings
from inlayfit.document.state import State
from inlayfit.fit.spec import Half
from inlayfit.units import Unit
from tests.app.conftest import LEAF, discs, end

ROOT = Path(__file__).resolve().parents[2]
HEAVY = {"numpy", "shapely", "scipy", "ezdxf", "svgwrite", "defusedxml"}
Settled = Callable[[Session], None]


def loaded_by(program: str) -> set[str]:
    """The modules that a program has loaded when it ends."""
    command = [sys.executable, "-c", f"import sys\n{program}\nprint(*sys.modules)"]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True)
    return set(done.stdout.split())


def test_the_first_picture_of_the_window_needs_nothing_heavy() -> None:
    loaded = loaded_by(
        "from inlayfit.app.main import Program\n"
        "from inlayfit.document.settings import Settings\n"
        "program = Program(['inlayfit'])\n"
        "window = program.open_window(Settings())\n"
        "window.grab()"
    )
    assert "inlayfit.app.window" in loaded
    assert not loaded & HEAVY
    assert not loaded & {*loading.FIRST, *loading.PARTS, *loading.LATER}


def test_what_loads_on_a_thread_of_its_own_knows_no_qt() -> None:
    modules = (*loading.FIRST, *loading.LATER)
    loaded = loaded_by("\n".join(f"import {module}" for module in modules))
    assert loaded >= HEAVY - {"svgwrite"}
    assert not {name for name in loaded if name.startswith("PySide6")}


@pytest.fixture
def bare(qtbot: QtBot, tmp_path: Path) -> Iterator[MainWindow]:
    """A window that was not painted yet, and so has no bench."""
    window = MainWindow(
        Session(Settings()), recent=tmp_path / "recent.json", settings_file=tmp_path / "settings.json"
    )
    window.resize(1440, 900)
    yield window
    end(window)


def has_bench(window: MainWindow) -> bool:
    return window._bench is not None


def test_forms_are_made_when_they_are_opened(bare: MainWindow) -> None:
    bare.show()
    QApplication.processEvents()
    assert not bare.findChildren(FormPopup)


def test_a_window_that_is_looked_at_gets_its_bench_by_itself(bare: MainWindow, qtbot: QtBot) -> None:
    assert not has_bench(bare)
    bare.show()
    qtbot.waitUntil(lambda: has_bench(bare), timeout=20_000)
    assert bare.session.state.is_empty
    assert bare.empty.isVisible()


def test_nothing_moves_when_the_bench_is_put_in(
    bare: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(loading.Loading, "start", lambda _self: None)
    bare.show()
    bare.activateWindow()
    qtbot.waitUntil(lambda: bare.isActiveWindow() and bare.empty.open_button.hasFocus())
    QApplication.processEvents()
    before = bare.grab().toImage()
    assert not has_bench(bare)
    assert bare.documents.recent == ()
    assert has_bench(bare)
    QApplication.processEvents()
    assert bare.grab().toImage() == before


def test_the_sentence_stands_in_plain_words_until_its_boxes_take_the_same_place(
    bare: MainWindow, settled: Settled
) -> None:
    bare.show()
    QApplication.processEvents()
    preview = bare.preview
    place = preview.geometry()
    assert preview.accessibleDescription().startswith("Plug, to cut with a 3 mm cutter, into pocket")
    bare.session.do(lambda state: set_unit(state, Unit.INCH))
    assert " in per side" in preview.accessibleDescription()
    bare.session.start(discs(1))
    QApplication.processEvents()
    assert preview.isHidden()
    assert bare.sentence.isVisible()
    assert bare.sentence.geometry() == place
    settled(bare.session)
    bare.session.start(State())
    assert preview.isVisible()
    assert bare.sentence.isHidden()


def test_the_page_of_the_workshop_is_made_when_its_tab_is_first_pressed(
    bare: MainWindow, settled: Settled
) -> None:
    bare.show()
    work = bare.work
    bare.session.start(discs(1))
    settled(bare.session)
    assert not work.workshop_page.findChildren(QWidget)
    QTest.mouseClick(work.workshop_tab, Qt.MouseButton.LeftButton)
    assert work.workshop.boxes["depth_mm"].isVisible()


def test_a_press_before_the_bench_is_there_is_answered(
    bare: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    bare.show()
    QTest.mouseClick(bare.empty.sample_button, Qt.MouseButton.LeftButton)
    assert not has_bench(bare)
    qtbot.waitUntil(lambda: not bare.session.state.is_empty, timeout=20_000)
    settled(bare.session)
    assert bare.pages.currentWidget() is bare.work


def test_a_drop_before_the_bench_is_there_is_read_as_the_half_it_fell_on(
    bare: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    bare.show()
    QApplication.processEvents()
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(LEAF))])
    how = (Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier)
    at = bare.empty.halves.mapTo(bare, QPoint(bare.empty.halves.width() - 30, 60))
    QApplication.sendEvent(bare, QDragEnterEvent(at, *how))
    QApplication.sendEvent(bare, QDropEvent(QPointF(at), *how))
    assert not has_bench(bare)
    qtbot.waitUntil(lambda: not bare.session.state.is_empty, timeout=20_000)
    assert bare.session.state.fittings[0].drawn is Half.PLUG
    settled(bare.session)


def test_wishes_are_granted_in_the_order_they_were_made(bare: MainWindow, qtbot: QtBot) -> None:
    granted: list[int] = []

    def wish(number: int) -> None:
        bare.when_ready(lambda _bench: granted.append(number))

    for number in range(5):
        wish(number)
    assert granted == []
    bare.show()
    qtbot.waitUntil(lambda: has_bench(bare), timeout=20_000)
    assert granted == [0, 1, 2, 3, 4]


def test_a_window_closed_while_it_loads_leaves_nothing_running(bare: MainWindow) -> None:
    bare.show()
    QApplication.processEvents()
    bare.actions_by_name["quit"].trigger()
    assert not bare.isVisible()
    assert not has_bench(bare)


def test_a_window_that_awaits_a_drawing_invites_nobody_until_it_cannot_be_opened(
    bare: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    bare.await_work("gone.svg")
    bare.when_ready(lambda bench: bench.documents.open_files([tmp_path / "gone.svg"]))
    bare.show()
    assert not bare.empty.isVisible()
    assert bare.strip.message == "Opening gone.svg"
    qtbot.waitUntil(lambda: "gone.svg" in bare.notice.text, timeout=20_000)
    qtbot.waitUntil(bare.empty.isVisible)


def test_a_program_that_is_not_complete_says_so(
    bare: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(loading, "FIRST", ("inlayfit.no_such_module",))
    bare.show()
    qtbot.waitUntil(lambda: bare.notice.text != "", timeout=20_000)
    assert "no_such_module" in bare.notice.text
    assert bare.notice.text.endswith("install it again.")
