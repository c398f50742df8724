"""The keyboard goes where one reads, is seen wherever it is, and is never lost."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QItemSelectionModel, QPoint, Qt, QTimer
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton, QScrollArea, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app.keyboard import press, takers
from inlayfit.app.pages.settings_page import SettingsPage
from inlayfit.app.panels.sentence_box import ChoiceBox, FormBox
from inlayfit.app.session import Session
from inlayfit.app.widgets.fit_ruler import FitRuler
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.paint_stack import StackPart
from inlayfit.app.window import MainWindow
from inlayfit.document import edits
from inlayfit.document.sample import sample_state
from inlayfit.document.state import State
from inlayfit.fit.spec import Relief
from inlayfit.units import Unit

Settled = Callable[[Session], None]
TAB, ENTER, SPACE, ESC = Qt.Key.Key_Tab, Qt.Key.Key_Return, Qt.Key.Key_Space, Qt.Key.Key_Escape


@pytest.fixture
def with_checks(window: MainWindow, settled: Settled) -> MainWindow:
    """The sample, in the state in which its check is open."""
    window.session.start(sample_state(State()), title="Sample")
    settled(window.session)
    return window


def focused() -> QWidget:
    widget = QApplication.focusWidget()
    assert widget is not None, "the keyboard is nowhere"
    return widget


def name_of(widget: QWidget) -> str:
    text = widget.text() if isinstance(widget, QPushButton) else ""
    return (widget.accessibleName() or text).replace("&", "")


def round_trip(window: MainWindow, key: Qt.Key = TAB) -> list[QWidget]:
    """Every widget that the key reaches, from where the keyboard is until it is there again."""
    seen: list[QWidget] = []
    while focused() not in seen:
        seen.append(focused())
        QTest.keyClick(focused(), key)
        assert len(seen) < 200
    assert focused() is seen[0], " | ".join(name_of(w) for w in [*seen, focused()])
    return seen


def page(window: MainWindow, name: str) -> None:
    window.actions_by_name[name].trigger()


@pytest.mark.parametrize("side", ["show_spot", "show_checks", "show_outlines", "show_workshop"])
def test_tab_goes_round_the_whole_window_as_one_reads(with_checks: MainWindow, side: str) -> None:
    window = with_checks
    page(window, side)
    seen = round_trip(window)
    parts = [
        window.sentence,
        window.work.verdict_bar,
        window.work.map,
        window.work.side,
        window.work.ruler,
        window.strip,
    ]
    of_part = [next(n for n, part in enumerate(parts) if part is w or part.isAncestorOf(w)) for w in seen]
    start = of_part.index(0)
    assert of_part[start:] + of_part[:start] == sorted(of_part)
    assert set(of_part) == set(range(len(parts)))
    backwards = round_trip(window, Qt.Key.Key_Backtab)
    assert backwards == [seen[0], *reversed(seen[1:])]


@pytest.mark.parametrize("side", ["show_spot", "show_checks", "show_outlines", "show_workshop"])
def test_the_side_begins_with_its_tabs(with_checks: MainWindow, side: str) -> None:
    window = with_checks
    page(window, side)
    window.work.map.setFocus()
    inside = [w for w in round_trip(window) if window.work.side.isAncestorOf(w)]
    assert name_of(inside[0]) == side.removeprefix("show_").capitalize()


def test_a_mended_check_leaves_the_keyboard_where_it_was(with_checks: MainWindow, settled: Settled) -> None:
    """Its row goes; the keyboard stays among the checks, or on the side if there are none."""
    window = with_checks
    page(window, "show_checks")
    fix = window.work.checks_panel.findChildren(QPushButton)[-1]
    fix.setFocus()
    QTest.keyClick(fix, ENTER)
    settled(window.session)
    assert window.work.side.isAncestorOf(focused())


def test_the_verdicts_fix_leaves_the_keyboard_in_the_window(
    with_checks: MainWindow, settled: Settled
) -> None:
    window = with_checks
    fix = window.work.verdict_bar.fix_button
    fix.setFocus()
    QTest.keyClick(fix, ENTER)
    settled(window.session)
    assert focused().isVisible()


def test_a_dismissed_notice_gives_the_keyboard_back(open_discs: MainWindow) -> None:
    window = open_discs
    box = window.sentence.clearance_box
    box.setFocus()
    window.notice.complain("Something went wrong; mend it.")
    window.notice.close_button.setFocus()
    QTest.keyClick(window.notice.close_button, ENTER)
    assert focused() is box


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_escape_leaves_a_form_and_the_keyboard_is_at_its_box(open_discs: MainWindow) -> None:
    window = open_discs
    for box in window.sentence.findChildren(FormBox):
        box.setFocus()
        QTest.keyClick(box, SPACE)
        assert box.popup.isVisible()
        QTest.keyClick(QApplication.focusWidget() or box.popup, ESC)
        assert not box.popup.isVisible()
        assert focused() is box


def _picture(widget: QWidget) -> np.ndarray:
    """The widget and a few pixels round it, as the window shows them."""
    window = widget.window()
    box = widget.rect().translated(widget.mapTo(window, QPoint(0, 0))).adjusted(-3, -3, 3, 3)
    cut = window.grab(box).toImage().convertToFormat(QImage.Format.Format_RGB32)
    bits = np.frombuffer(cut.constBits(), np.uint8)
    return bits.reshape(cut.height(), -1, 4)[:, :, :3].astype(float)


def _luminance(pixels: np.ndarray) -> np.ndarray:
    """Relative luminance (WCAG 2.2, definition of relative luminance); pixels are blue, green, red."""
    part = pixels / 255
    linear = np.where(part <= 0.04045, part / 12.92, ((part + 0.055) / 1.055) ** 2.4)
    return np.asarray(linear @ np.array([0.0722, 0.7152, 0.2126]))


def contrast_of_focus(widget: QWidget) -> int:
    """How many pixels change by at least 3:1 when the widget gets the keyboard (WCAG 2.2, 2.4.13)."""
    with_it = _luminance(_picture(widget))
    other = QPushButton(widget.window())
    other.setGeometry(-50, -50, 10, 10)
    other.show()
    other.setFocus()
    without = _luminance(_picture(widget))
    widget.setFocus(Qt.FocusReason.TabFocusReason)
    other.hide()
    other.deleteLater()
    ratio = (np.maximum(with_it, without) + 0.05) / (np.minimum(with_it, without) + 0.05)
    return int((ratio >= 3).sum())


@pytest.mark.parametrize("theme", ["theme_light", "theme_dark", "theme_contrast", "theme_contrast_white"])
@pytest.mark.parametrize("side", ["show_spot", "show_checks", "show_outlines", "show_workshop"])
def test_the_keyboard_is_seen_wherever_it_is(with_checks: MainWindow, theme: str, side: str) -> None:
    """WCAG 2.2, 2.4.13, asks for the area of a line 2 px thick all round; a quarter of it is asked here."""
    window = with_checks
    window.actions_by_name[theme].trigger()
    page(window, side)
    hidden, seen = [], list[QWidget]()
    while focused() not in seen:
        widget = focused()
        seen.append(widget)
        ring = window.work.ruler.ruler.handle_rect() if isinstance(widget, FitRuler) else widget.rect()
        least = min(ring.width() + ring.height(), 400)
        changed = contrast_of_focus(widget)
        if changed < least:
            hidden.append(f"{name_of(widget)}: {changed} of {least}")
        QTest.keyClick(widget, TAB)
    assert not hidden, "; ".join(hidden)


def test_walking_says_which_place_it_is_and_where_the_gap_is_even_that_it_is(
    open_discs: MainWindow, settled: Settled
) -> None:
    window = open_discs
    QTest.keyClick(window.work.map, Qt.Key.Key_N)
    said = "The gap is even all round, +0.030 per side (+0.060 overall); no place is tighter."
    assert window.strip.message == said
    window.session.start(sample_state(State()), title="Sample")
    window.session.do(lambda s: edits.set_corners(s, pocket=Relief.ROUNDED, plug=Relief.ROUNDED))
    settled(window.session)
    QTest.keyClick(window.work.map, Qt.Key.Key_N)
    count = window.session.spot_count
    if count > 1:
        assert window.strip.message.startswith(f"Spot 2 of {count}: ")
    else:
        assert window.strip.message.startswith("No other place stands out; the tightest has ")


def test_escape_puts_a_complaint_away(open_discs: MainWindow) -> None:
    window = open_discs
    window.notice.complain("Something went wrong; mend it.")
    QTest.keyClick(window.work.map, ESC)
    assert window.notice.text == ""


def test_without_a_fitting_the_ruler_shows_what_a_new_fit_will_have(open_discs: MainWindow) -> None:
    window = open_discs
    page(window, "choose_none")
    assert window.work.ruler.box.mm == window.sentence.clearance_box.mm == 0.03


@pytest.mark.parametrize("theme", ["theme_light", "theme_dark", "theme_contrast", "theme_contrast_white"])
def test_the_keyboard_is_seen_on_the_settings_page(
    open_discs: MainWindow, qtbot: QtBot, tmp_path: Path, theme: str
) -> None:
    open_discs.actions_by_name[theme].trigger()
    settings = open_discs.session.settings
    dialog = SettingsPage(settings, lambda _: None, unit=Unit.MM, file=tmp_path / "s", parent=open_discs)
    qtbot.addWidget(dialog)
    dialog.open()
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    first = next(iter(dialog.controls.values()))
    first.setFocus(Qt.FocusReason.TabFocusReason)
    assert focused() is first
    hidden, seen = [], list[QWidget]()
    while focused() not in seen:
        widget = focused()
        seen.append(widget)
        changed, least = contrast_of_focus(widget), min(widget.width() + widget.height(), 60)
        if changed < least:
            hidden.append(f"{name_of(widget)}: {changed} of {least}")
        QTest.keyClick(widget, TAB)
    assert len(seen) > len(dialog.controls)
    assert not hidden, "; ".join(hidden)


def test_tab_brings_what_it_reaches_into_sight(open_discs: MainWindow, qtbot: QtBot) -> None:
    window = open_discs
    window.resize(1100, 700)
    page(window, "show_workshop")

    def scrolling() -> list[QScrollArea]:
        areas = window.work.side.findChildren(QScrollArea)
        return [a for a in areas if a.isVisible() and a.verticalScrollBar().maximum() > 0]

    qtbot.waitUntil(lambda: bool(scrolling()))
    area = scrolling()[0]
    tab = next(w for w in round_trip(window) if name_of(w) == "Workshop")
    area.verticalScrollBar().setValue(area.verticalScrollBar().maximum())
    tab.setFocus()
    QTest.keyClick(tab, TAB)
    reached = focused()
    assert area.isAncestorOf(reached)
    assert reached.visibleRegion().boundingRect().height() == reached.height()


def test_the_arrows_of_a_menu_of_words_set_out_from_the_word_that_holds(qtbot: QtBot) -> None:
    box = ChoiceBox(
        "Feel", "How it goes in.", [(n, word, word) for n, word in enumerate(("press", "snug", "slip"))]
    )
    qtbot.addWidget(box)
    box.show()
    box.mark(1)
    menu = box.menu()
    menu.aboutToShow.emit()
    qtbot.waitUntil(lambda: menu.activeAction() is box.action_for(1))
    box.mark(2)
    menu.aboutToShow.emit()
    qtbot.waitUntil(lambda: menu.activeAction() is box.action_for(2))


PAGES = {
    "show_spot": "spot",
    "show_checks": "checks_panel",
    "show_outlines": "outlines",
    "show_workshop": "workshop_page",
}


@pytest.mark.parametrize("start", ["map", "clearance", "depth", "checks", "outlines"])
@pytest.mark.parametrize("command", PAGES)
def test_a_page_that_is_asked_for_takes_the_keyboard(
    with_checks: MainWindow, command: str, start: str
) -> None:
    """Wherever it was: on the map, in the sentence, or on a page that is hidden now."""
    window = with_checks
    work = window.work
    where: dict[str, tuple[str, QWidget]] = {
        "map": ("show_spot", work.map),
        "clearance": ("show_spot", window.sentence.clearance_box),
        "depth": ("show_spot", work.spot.stack.depth_box),
        "checks": ("show_checks", work.checks_panel.rows[0].findChildren(QPushButton)[0]),
        "outlines": ("show_outlines", work.outlines.list),
    }
    side, widget = where[start]
    page(window, side)
    widget.setFocus()
    page(window, command)
    shown: QWidget = getattr(work, PAGES[command])
    assert shown.isAncestorOf(focused()) or focused() is shown
    assert focused().isVisible()


def test_a_page_gives_the_keyboard_back_where_it_was_on_it(with_checks: MainWindow) -> None:
    window = with_checks
    page(window, "show_spot")
    box = window.work.spot.stack.thickness_box
    box.setFocus()
    page(window, "show_workshop")
    first = focused()
    assert isinstance(first, LengthBox)
    assert first.lineEdit().selectedText() == first.lineEdit().text(), "typing replaces what stands there"
    page(window, "show_spot")
    assert focused() is box
    assert box.lineEdit().selectedText() == box.lineEdit().text()


def test_the_count_of_open_checks_leads_the_keyboard_to_them(with_checks: MainWindow) -> None:
    button = with_checks.sentence.checks_button
    button.setFocus()
    QTest.keyClick(button, ENTER)
    panel = with_checks.work.checks_panel
    assert focused() is panel or panel.isAncestorOf(focused())


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_enter_on_the_tape_of_the_stack_asks_for_its_thickness(with_checks: MainWindow) -> None:
    window = with_checks
    view = window.work.spot.stack.view
    view.setFocus()
    while view.held_part is not StackPart.BED:
        QTest.keyClick(view, Qt.Key.Key_Right)
    QTest.keyClick(view, ENTER)
    glue = window.sentence.box("glue")
    assert isinstance(glue, FormBox)
    length = glue.popup.findChild(LengthBox)
    assert isinstance(length, LengthBox)
    assert glue.popup.isVisible()
    assert QApplication.focusWidget() is length
    QTest.keyClicks(length.lineEdit(), "0.13")
    QTest.keyClick(length, ENTER)
    assert not glue.popup.isVisible()
    lead = window.session.state.lead
    assert lead is not None
    assert lead.stack.glue_mm == 0.13
    assert focused() is view


@pytest.mark.parametrize("key", [SPACE, Qt.Key.Key_Home, Qt.Key.Key_Up])
def test_of_all_outlines_one_is_chosen_by_one_key(open_discs: MainWindow, key: Qt.Key) -> None:
    window = open_discs
    page(window, "choose_all")
    page(window, "show_outlines")
    rows = window.work.outlines.list
    rows.setCurrentRow(0, QItemSelectionModel.SelectionFlag.NoUpdate)
    assert len(window.session.state.chosen) == 2
    QTest.keyClick(rows, key)
    assert list(window.session.state.chosen) == ["o0"]
    QTest.keyClick(rows, Qt.Key.Key_Down, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClick(rows, SPACE, Qt.KeyboardModifier.ControlModifier)
    assert list(window.session.state.chosen) == ["o0", "o1"]


def test_the_order_does_not_depend_on_how_far_a_page_is_scrolled(
    open_discs: MainWindow, qtbot: QtBot
) -> None:
    window = open_discs
    window.resize(1100, 700)
    page(window, "show_workshop")
    area = window.work.workshop.findChild(QScrollArea)
    assert isinstance(area, QScrollArea)
    bar = area.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    bar.setValue(0)
    order = takers(window.work.side)
    bar.setValue(bar.maximum())
    assert takers(window.work.side) == order
    assert name_of(order[0]) == "Workshop"


@pytest.mark.qt_log_ignore("This plugin does not support")
@pytest.mark.parametrize("key", [SPACE, ENTER, Qt.Key.Key_Down])
def test_work_goes_on_while_a_menu_is_open(open_discs: MainWindow, qtbot: QtBot, key: Qt.Key) -> None:
    """A call that came back with the menu's end would keep Python from all other threads until then."""
    box = next(box for box in open_discs.sentence.findChildren(ChoiceBox) if box.isEnabled())
    box.setFocus()
    QTimer.singleShot(300, box.menu().close)
    QTest.keyClick(box, key)
    assert box.menu().isVisible()
    assert box.isDown()
    worked = threading.Event()
    threading.Thread(target=worked.set).start()
    qtbot.waitUntil(worked.is_set)
    assert box.menu().isVisible()
    qtbot.waitUntil(lambda: not box.menu().isVisible())
    assert not box.isDown()


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_enter_presses_a_box_with_a_form_as_one_with_a_menu(open_discs: MainWindow) -> None:
    """Where Enter comes to the window, it goes to what has the keyboard."""
    box = next(box for box in open_discs.sentence.findChildren(FormBox) if box.isEnabled())
    pressed: list[bool] = []
    box.clicked.connect(lambda: pressed.append(True))
    assert press(box)
    assert pressed == [True]
