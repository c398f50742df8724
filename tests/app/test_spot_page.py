"""The page of the tightest spot: nothing to scroll in a window of 1280 by 800, and nothing lost for it."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QCoreApplication, QPoint, QRect, Qt, QTranslator
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app.canvas.loupe import READING_ONLY_PX
from inlayfit.app.session import Session
from inlayfit.app.widgets.paint_stack import StackPart
from inlayfit.app.window import MainWindow
from inlayfit.bench.stack import BARE, BuildUp
from inlayfit.document.coating import set_coating
from inlayfit.document.edits import set_unit
from inlayfit.shipped import shipped_folder
from inlayfit.units import Unit

Settled = Callable[[Session], None]
COATED = BuildUp.host(0.025).with_coat(BuildUp.plug(0.01))


@pytest.fixture(params=["en", "de"])
def language(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[str]:
    """Before the window: its words are chosen when it is made."""
    translator = QTranslator()
    folder = shipped_folder("resources") / "translations"
    if request.param == "de":
        assert translator.load(str(folder / "inlayfit_de.qm"))
        QCoreApplication.installTranslator(translator)
    yield request.param
    QCoreApplication.removeTranslator(translator)


def _low(window: MainWindow, settled: Settled, coating: BuildUp = BARE) -> MainWindow:
    """The sample in a window of 1280 by 800."""
    window.resize(1280, 800)
    window.documents.open_sample()
    settled(window.session)
    window.session.do(lambda s: set_coating(s, coating))
    QApplication.processEvents()
    return window


def _is_in_sight(window: MainWindow, part: QWidget) -> bool:
    """Whether all of a part lies in the page's viewport."""
    view = window.work.spot.viewport()
    there = QRect(part.mapTo(view, QPoint(0, 0)), part.size())
    return part.isVisible() and view.rect().contains(there)


def _wait_for(window: MainWindow, qtbot: QtBot, part: QWidget) -> None:
    qtbot.waitUntil(lambda: _is_in_sight(window, part), timeout=5_000)


def leaves_ink(part: QWidget) -> bool:
    """Whether anything is painted: more than one colour."""
    image = part.grab().toImage()
    colours = {image.pixel(x, y) for x in range(0, image.width(), 2) for y in range(0, image.height(), 2)}
    return len(colours) > 2


@pytest.mark.parametrize("coating", [BARE, COATED], ids=["bare", "coated"])
def test_nothing_is_scrolled_at_1280_by_800(
    language: str, window: MainWindow, settled: Settled, qtbot: QtBot, coating: BuildUp
) -> None:
    spot = _low(window, settled, coating).work.spot
    qtbot.waitUntil(lambda: spot.verticalScrollBar().maximum() == 0, timeout=5_000)
    for part in (spot.loupe, spot.next, spot.stack.view, spot.stack.coating_box, spot.stack.opener):
        _wait_for(window, qtbot, part)
    assert spot.stack.left_note.isVisible() is (coating is COATED)
    qtbot.waitUntil(lambda: spot.loupe.height() >= 140, timeout=5_000)
    assert spot.loupe.width() <= spot.viewport().width()


def test_the_boxes_wait_behind_a_button_that_leads_to_them(
    window: MainWindow, settled: Settled, qtbot: QtBot
) -> None:
    spot = _low(window, settled).work.spot
    stack = spot.stack
    assert not stack.depth_box.isVisible()
    assert stack.opener.accessibleName() == "Numbers of the stack"
    QTest.mouseClick(stack.opener, Qt.MouseButton.LeftButton)
    QApplication.processEvents()
    assert stack.opener.isChecked()
    for part in (stack.depth_box, stack.spread_box, stack.view, stack.opener, spot.loupe):
        _wait_for(window, qtbot, part)
    qtbot.waitUntil(lambda: spot.verticalScrollBar().maximum() == 0, timeout=5_000)
    assert spot.loupe.height() == READING_ONLY_PX
    assert leaves_ink(spot.loupe)
    QTest.mouseClick(stack.opener, Qt.MouseButton.LeftButton)
    QApplication.processEvents()
    assert not stack.depth_box.isVisible()
    qtbot.waitUntil(lambda: spot.loupe.height() >= 140, timeout=5_000)
    qtbot.waitUntil(lambda: spot.verticalScrollBar().maximum() == 0, timeout=5_000)


def test_a_face_that_is_to_be_typed_opens_the_boxes(
    window: MainWindow, settled: Settled, qtbot: QtBot
) -> None:
    stack = _low(window, settled).work.spot.stack
    stack.view.part_activated.emit(StackPart.DEPTH)
    QApplication.processEvents()
    assert stack.depth_box.hasFocus()
    _wait_for(window, qtbot, stack.depth_box)
    QTest.keyClicks(stack.depth_box.lineEdit(), "2.9")
    QTest.keyClick(stack.depth_box.lineEdit(), Qt.Key.Key_Return)
    assert window.session.state.fittings[0].stack.depth_mm == 2.9


def test_coated_boxes_are_not_scrolled_either(
    language: str, window: MainWindow, settled: Settled, qtbot: QtBot
) -> None:
    spot = _low(window, settled, COATED).work.spot
    spot.stack.opener.click()
    for part in (spot.next, spot.stack.depth_box, spot.stack.left_note):
        _wait_for(window, qtbot, part)
    qtbot.waitUntil(lambda: spot.verticalScrollBar().maximum() == 0, timeout=5_000)


def test_where_there_is_room_the_boxes_stand_open(window: MainWindow, settled: Settled, qtbot: QtBot) -> None:
    stack = _low(window, settled).work.spot.stack
    window.resize(1440, 900)
    qtbot.waitUntil(stack.depth_box.isVisible, timeout=5_000)
    assert not stack.opener.isVisible()
    qtbot.waitUntil(lambda: window.work.spot.verticalScrollBar().maximum() == 0, timeout=5_000)
    window.resize(1280, 800)
    qtbot.waitUntil(lambda: not stack.depth_box.isVisible(), timeout=5_000)
    assert stack.opener.isVisible()


@pytest.mark.parametrize("unit", Unit)
def test_nothing_is_cut_off_in_the_narrowest_side(
    language: str, window: MainWindow, settled: Settled, unit: Unit
) -> None:
    work = _low(window, settled, COATED).work
    work.split.setSizes([1280, 1])
    window.session.do(lambda s: set_unit(s, unit))
    QApplication.processEvents()
    assert work.spot.stack.view.width() <= work.spot.viewport().width()
    window.resize(1280, 900)
    QApplication.processEvents()
    assert work.spot.stack.view.width() <= work.spot.viewport().width()
