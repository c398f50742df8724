"""The window driven as a person would: clicks and keys, and the document looked at afterwards."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable
from dataclasses import replace
from html import unescape as html_unescaped
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDropEvent, QGuiApplication, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app.actions import TABLE
from inlayfit.app.canvas import scene
from inlayfit.app.pages import help_pages, prompts
from inlayfit.app.pages.prompts import Unsaved
from inlayfit.app.panels.sentence_box import ChoiceBox, FormBox
from inlayfit.app.session import Session
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.window import MainWindow
from inlayfit.document import edits
from inlayfit.document.project_file import load_project
from inlayfit.fit.spec import Half, HalfState, Relief
from inlayfit.units import Unit
from tests.app.conftest import FEET, LEAF, discs

Settled = Callable[[Session], None]


def _spec(window: MainWindow) -> object:
    lead = window.session.state.lead
    assert lead is not None
    return lead.spec


def test_a_file_opens_solves_and_shows_without_a_dialog(
    window: MainWindow, qtbot: QtBot, settled: Settled, tmp_path: Path
) -> None:
    mine = Path(shutil.copy(LEAF, tmp_path))
    window.documents.open_files([mine])
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    settled(window.session)
    assert window.session.solution.lead is not None
    assert window.pages.currentWidget() is window.work
    assert window.work.map.scene.fittings
    assert not window.session.is_modified
    assert window.documents.recent[0].path == mine.resolve()


def test_the_open_button_asks_for_a_file(
    window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(prompts, "open_files", lambda *_: [FEET])
    QTest.mouseClick(window.empty.open_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    assert len(window.session.state.outlines) == len(window.session.state.chosen)


def test_the_sample_opens_with_one_check_whose_fix_mends_it(
    window: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    QTest.mouseClick(window.empty.sample_button, Qt.MouseButton.LeftButton)
    settled(window.session)
    assert window.work.verdict_bar.fix_button.isVisible()
    open_before = [c for c in window.work.checks if c.outline_id and c.fix is not None]
    assert len(open_before) == 1
    QTest.mouseClick(window.work.verdict_bar.fix_button, Qt.MouseButton.LeftButton)
    settled(window.session)
    assert not any(c.finding.code == open_before[0].finding.code for c in window.work.checks)
    window.actions_by_name["undo"].trigger()
    settled(window.session)
    assert [c.finding.code for c in window.work.checks if c.fix] == [open_before[0].finding.code]


def test_typing_a_clearance_sets_it_in_any_unit(open_discs: MainWindow, qtbot: QtBot) -> None:
    window = open_discs
    window.actions_by_name["edit_clearance"].trigger()
    box = window.sentence.clearance_box
    focus = QApplication.focusWidget()
    assert focus is not None
    assert box is focus or box.isAncestorOf(focus)
    QTest.keyClicks(box.lineEdit(), "2 thou")
    QTest.keyClick(box.lineEdit(), Qt.Key.Key_Return)
    assert window.session.state.fitting("o0").spec.clearance_mm == pytest.approx(0.0508, abs=1e-12)
    assert window.work.ruler.box.mm == pytest.approx(0.0508)
    assert window.work.ruler.ruler.value() == 51


def test_a_refused_length_changes_nothing(open_discs: MainWindow, qtbot: QtBot) -> None:
    before = open_discs.session.state
    box = open_discs.sentence.clearance_box
    box.selectAll()
    QTest.keyClicks(box.lineEdit(), "5 mil")
    QTest.keyClick(box.lineEdit(), Qt.Key.Key_Return)
    assert open_discs.session.state is before
    assert box.refusal


def test_dragging_the_ruler_previews_and_is_one_undo_step(
    open_discs: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    window, ruler = open_discs, open_discs.work.ruler.ruler
    start = window.session.state
    handle = ruler.handle_rect().center().toPoint()
    QTest.mousePress(ruler, Qt.MouseButton.LeftButton, pos=handle)
    for dx in (20, 45, 80):
        QTest.mouseMove(ruler, handle + QPoint(dx, 0))
    assert window.session.is_in_gesture
    assert window.session.state is start
    assert window.session.shown != start
    QTest.mouseRelease(ruler, Qt.MouseButton.LeftButton, pos=handle + QPoint(80, 0))
    settled(window.session)
    assert len(window.session.history.done) == 1
    after = window.session.state.fitting("o0").spec.clearance_mm
    assert after > start.fitting("o0").spec.clearance_mm
    assert window.sentence.clearance_box.mm == pytest.approx(after)
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.session.state == start


def test_escape_takes_a_drag_back(open_discs: MainWindow, qtbot: QtBot, settled: Settled) -> None:
    window, ruler = open_discs, open_discs.work.ruler.ruler
    start = window.session.state
    handle = ruler.handle_rect().center().toPoint()
    QTest.mousePress(ruler, Qt.MouseButton.LeftButton, pos=handle)
    QTest.mouseMove(ruler, handle + QPoint(60, 0))
    QTest.keyClick(ruler, Qt.Key.Key_Escape)
    QTest.mouseRelease(ruler, Qt.MouseButton.LeftButton, pos=handle + QPoint(60, 0))
    settled(window.session)
    assert window.session.state is start
    assert window.session.shown is start
    assert len(window.session.history.done) == 0


@pytest.mark.parametrize(
    ("key", "modifier", "um"),
    [
        (Qt.Key.Key_Right, Qt.KeyboardModifier.NoModifier, 31),
        (Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier, 20),
        (Qt.Key.Key_PageUp, Qt.KeyboardModifier.NoModifier, 80),
    ],
)
def test_keys_move_the_ruler_by_whole_micrometres(
    open_discs: MainWindow, qtbot: QtBot, key: Qt.Key, modifier: Qt.KeyboardModifier, um: int
) -> None:
    QTest.keyClick(open_discs.work.ruler.ruler, key, modifier)
    assert open_discs.session.state.fitting("o0").spec.clearance_mm == um / 1000
    assert len(open_discs.session.history.done) == 1


def test_a_word_of_the_sentence_is_chosen_by_its_menu(open_discs: MainWindow) -> None:
    box = open_discs.sentence.box("pocket_state")
    assert isinstance(box, ChoiceBox)
    box.action_for(HalfState.ALREADY_CUT).trigger()
    assert open_discs.session.state.fitting("o0").spec.pocket.state is HalfState.ALREADY_CUT
    assert box.text() == "already cut"
    corners = open_discs.sentence.box("corners")
    assert isinstance(corners, ChoiceBox)
    corners.action_for((Relief.ROUNDED, Relief.DOG_BONE)).trigger()
    assert open_discs.session.state.fitting("o0").spec.plug.relief is Relief.DOG_BONE


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_a_form_of_the_sentence_opens_by_key_and_keeps_what_is_typed(
    open_discs: MainWindow, qtbot: QtBot
) -> None:
    box = open_discs.sentence.box("plug_cutter")
    assert isinstance(box, FormBox)
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Return)
    qtbot.waitUntil(box.popup.isVisible)
    length = box.popup.findChild(LengthBox)
    assert isinstance(length, LengthBox)
    length.selectAll()
    QTest.keyClicks(length.lineEdit(), "1/8 in")
    QTest.keyClick(length.lineEdit(), Qt.Key.Key_Return)
    assert open_discs.session.state.fitting("o0").spec.plug.cutter_mm == 3.175
    box.popup.close()


def test_a_click_on_the_map_chooses_an_outline_and_ctrl_adds_it(
    open_discs: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    window = open_discs

    def at(x_mm: float) -> QPoint:
        x, y = window.work.map.view.to_px(x_mm, 0.0)
        return QPoint(round(x), round(y))

    QTest.mouseClick(window.work.map, Qt.MouseButton.LeftButton, pos=at(40.0))
    assert window.session.state.chosen == ("o1",)
    settled(window.session)
    QTest.mouseClick(window.work.map, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ControlModifier, at(0.0))
    assert set(window.session.state.chosen) == {"o0", "o1"}
    settled(window.session)
    assert {f.key for f in window.work.map.scene.fittings} == {"o0", "o1"}


def test_choosing_keeps_the_view(open_discs: MainWindow, settled: Settled) -> None:
    view = open_discs.work.map.view
    open_discs.session.do(lambda s: edits.choose(s, ["o1"]))
    settled(open_discs.session)
    assert open_discs.work.map.view == view


def test_the_list_and_the_map_have_one_choice(open_discs: MainWindow, settled: Settled) -> None:
    outlines = open_discs.work.outlines.list
    assert [i.text() for i in outlines.selectedItems()] == ["disc 0"]
    outlines.item(1).setSelected(True)
    assert open_discs.session.state.chosen == ("o0", "o1")
    open_discs.session.undo()
    assert [i.text() for i in outlines.selectedItems()] == ["disc 0"]
    settled(open_discs.session)


def test_renaming_in_the_list_is_an_edit(open_discs: MainWindow) -> None:
    open_discs.work.outlines.list.item(0).setText("glide foot")
    assert open_discs.session.state.outline("o0").name == "glide foot"
    open_discs.session.undo()
    assert open_discs.work.outlines.list.item(0).text() == "disc 0"


def test_units_change_everywhere_at_once_and_nothing_else(open_discs: MainWindow) -> None:
    before = open_discs.session.state
    open_discs.actions_by_name["unit_thou"].trigger()
    assert open_discs.session.state.unit is Unit.THOU
    assert open_discs.session.state.fittings == before.fittings
    assert "thou" in open_discs.sentence.clearance_box.lineEdit().text()
    assert "thou" in open_discs.work.ruler.box.lineEdit().text()
    assert "thou" in open_discs.sentence.accessibleDescription()
    assert "thou" in open_discs.strip.unit_button.text()
    open_discs.session.undo()
    assert open_discs.session.state == before


def test_a_project_is_saved_reopened_and_equal(
    open_discs: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    path = tmp_path / "tray.inlayfit"
    monkeypatch.setattr(prompts, "save_project_as", lambda *_: path)
    open_discs.session.do(lambda s: edits.set_clearance(s, 0.05))
    assert "[*]" in open_discs.windowTitle()
    assert open_discs.isWindowModified()
    open_discs.actions_by_name["save"].trigger()
    assert not open_discs.isWindowModified()
    saved = open_discs.session.state
    assert load_project(path) == saved
    open_discs.session.do(lambda s: edits.set_clearance(s, 0.1))
    open_discs.actions_by_name["save"].trigger()
    open_discs.documents.open_files([path])
    qtbot.waitUntil(lambda: "Opened" in open_discs.strip.message)
    assert open_discs.session.state == load_project(path)
    assert open_discs.session.title == "tray"


def test_leaving_unsaved_work_asks_and_can_be_called_off(
    open_discs: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    open_discs.session.do(lambda s: edits.set_clearance(s, 0.05))
    before = open_discs.session.state
    monkeypatch.setattr(prompts, "unsaved_work", lambda *_: Unsaved.CANCEL)
    open_discs.documents.open_files([FEET])
    assert open_discs.session.state is before
    assert not open_discs.close()
    monkeypatch.setattr(prompts, "unsaved_work", lambda *_: Unsaved.DROP)
    assert open_discs.close()


def _drop(window: MainWindow, target: QWidget, at: QPointF, data: QMimeData) -> None:
    how = (Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier)
    entering = QDragEnterEvent(at.toPoint(), *how)
    QApplication.sendEvent(target, entering)
    assert entering.isAccepted()
    QApplication.sendEvent(target, QDropEvent(at, *how))


def _files(*paths: Path) -> QMimeData:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    return data


def test_a_drop_on_the_right_half_is_a_plug_and_a_second_drop_adds(
    window: MainWindow, qtbot: QtBot, settled: Settled, tmp_path: Path
) -> None:
    renamed = tmp_path / "outline.txt"  # content decides, not the name
    shutil.copy(LEAF, renamed)
    right = QPointF(window.empty.halves.mapTo(window, QPoint(window.empty.halves.width() - 30, 60)))
    _drop(window, window, right, _files(renamed))
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    count = len(window.session.state.outlines)
    assert window.session.state.fittings[0].drawn is Half.PLUG
    settled(window.session)
    _drop(window, window.work.map, QPointF(40, window.work.map.height() / 2), _files(FEET))
    qtbot.waitUntil(lambda: len(window.session.state.outlines) > count, timeout=20_000)
    assert window.session.state.fittings[-1].drawn is Half.POCKET
    window.session.undo()
    assert len(window.session.state.outlines) == count
    settled(window.session)


def test_hovering_says_what_a_drop_will_do(window: MainWindow) -> None:
    halves = window.empty.halves
    data = _files(LEAF)
    for x, half in ((20, Half.POCKET), (halves.width() - 20, Half.PLUG)):
        at = halves.mapTo(window, QPoint(x, 60))
        entering = QDragEnterEvent(
            at, Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
        )
        QApplication.sendEvent(window, entering)
        assert entering.isAccepted()
        assert halves.hovered == (half, "leaf.svg: an SVG drawing")
    QApplication.sendEvent(window, QDragLeaveEvent())
    assert halves.hovered == (None, "")


def test_the_result_is_announced_once_it_is_exact(
    open_discs: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    heard: list[str] = []
    open_discs.session.announced.connect(heard.append)
    open_discs.session.preview(edits.set_clearance(open_discs.session.state, 0.08))
    qtbot.waitUntil(lambda: open_discs.session.solution.is_preview, timeout=20_000)
    assert heard == []
    open_discs.session.finish_gesture(edits.set_clearance(open_discs.session.state, 0.08))
    settled(open_discs.session)
    assert heard == ["Tightest +0.080 per side (+0.160 overall)"]


def test_pasting_svg_text_opens_it(window: MainWindow, qtbot: QtBot, settled: Settled) -> None:
    svg = (
        '<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="30mm" viewBox="0 0 40 30">'
        '<rect x="5" y="5" width="30" height="20"/></svg>'
    )
    QGuiApplication.clipboard().setText(svg)
    QTest.keyClick(window, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    assert window.session.state.outlines[0].region.area == pytest.approx(600.0, abs=1e-6)
    settled(window.session)


@pytest.mark.parametrize("content", [b"", b"not a drawing", b"\x00\x01\x02", b"<svg"])
def test_a_bad_file_is_one_sentence_in_the_window(
    window: MainWindow, qtbot: QtBot, tmp_path: Path, content: bytes
) -> None:
    bad = tmp_path / "bad.dxf"
    bad.write_bytes(content)
    window.documents.open_files([bad])
    qtbot.waitUntil(lambda: window.notice.text != "", timeout=20_000)
    assert window.notice.text.endswith(".")
    assert "Traceback" not in window.notice.text
    assert window.session.state.is_empty
    QTest.mouseClick(window.notice.close_button, Qt.MouseButton.LeftButton)
    assert window.notice.text == ""


def test_a_missing_file_says_so(window: MainWindow, qtbot: QtBot, tmp_path: Path) -> None:
    window.documents.open_files([tmp_path / "gone.svg"])
    qtbot.waitUntil(lambda: "gone.svg" in window.notice.text, timeout=20_000)


def test_spots_are_walked_by_the_loupes_arrows_and_by_keys(
    window: MainWindow, qtbot: QtBot, settled: Settled, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(scene, "worth_walking", lambda gap, _clearance_mm: gap.tightest[:5])
    window.documents.open_files([LEAF])
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    settled(window.session)
    assert window.session.spot_count > 2
    QTest.mouseClick(window.work.spot.next, Qt.MouseButton.LeftButton)
    assert window.session.spot == 1
    assert window.work.map.chosen_spot == 1
    window.work.map.setFocus()
    QTest.keyClick(window.work.map, Qt.Key.Key_N)
    assert window.session.spot == 2
    QTest.keyClick(window.work.map, Qt.Key.Key_N, Qt.KeyboardModifier.ShiftModifier)
    QTest.mouseClick(window.work.spot.previous, Qt.MouseButton.LeftButton)
    assert window.session.spot == 0


def test_f6_goes_round_every_part_of_the_window(open_discs: MainWindow, qtbot: QtBot) -> None:
    window = open_discs
    window.activateWindow()
    window.work.map.setFocus()
    parts: list[QWidget] = [window.work.side, window.work.ruler, window.strip, window.sentence]
    for part in parts:
        window.next_panel(1)
        focus = QApplication.focusWidget()
        assert focus is not None
        assert part is focus or part.isAncestorOf(focus), (part.objectName(), focus)
    window.next_panel(-1)
    focus = QApplication.focusWidget()
    assert focus is not None
    assert window.strip.isAncestorOf(focus)


def test_settings_take_effect_at_once_and_are_kept(open_discs: MainWindow, tmp_path: Path) -> None:
    open_discs.actions_by_name["theme_dark"].trigger()
    assert open_discs.session.settings["theme"] == "dark"
    assert "dark" in (tmp_path / "settings.json").read_text()
    open_discs.actions_by_name["theme_light"].trigger()


def test_the_stack_says_where_the_plug_ends(open_discs: MainWindow, qtbot: QtBot) -> None:
    box = open_discs.work.spot.stack.thickness_box
    box.selectAll()
    QTest.keyClicks(box.lineEdit(), "3.2")
    QTest.keyClick(box.lineEdit(), Qt.Key.Key_Return)
    assert open_discs.session.state.fitting("o0").stack.proud_mm == pytest.approx(0.2)


def test_a_face_of_the_stack_is_moved_by_keys_as_one_step(open_discs: MainWindow) -> None:
    window, view = open_discs, open_discs.work.spot.stack.view
    start = window.session.state
    view.setFocus()
    for _ in range(3):
        QTest.keyPress(view, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
        assert window.session.is_in_gesture
    QTest.keyRelease(view, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    assert window.session.state.fitting("o0").stack != start.fitting("o0").stack
    assert len(window.session.history.done) == 1
    assert not window.session.is_stale  # the outlines did not change, so there is nothing to solve
    window.session.undo()
    assert window.session.state == start


def test_a_small_window_keeps_every_part_and_scrolls_the_side(open_discs: MainWindow, qtbot: QtBot) -> None:
    open_discs.resize(1100, 700)
    qtbot.waitUntil(lambda: open_discs.width() == 1100)
    for part in (
        open_discs.sentence,
        open_discs.work.verdict_bar,
        open_discs.work.map,
        open_discs.work.ruler.ruler,
    ):
        assert part.isVisible()
        assert part.height() > 20
    assert not open_discs.work.ruler.note.isVisible()
    assert open_discs.work.map.height() >= 180


def test_the_guide_shows_its_pictures(window: MainWindow) -> None:
    html = help_pages.guide_html()
    assert html.count("<img") == 4
    page = help_pages.TextPage("Guide", html, window)
    for name in re.findall("picture:[a-z-]+", html):
        picture = page.text.loadResource(2, QUrl(name))
        assert isinstance(picture, QImage)
        spots = [(x, y) for x in range(0, picture.width(), 7) for y in range(0, picture.height(), 7)]
        assert len({picture.pixel(x, y) for x, y in spots}) > 3, name
    for command in TABLE:
        if command.keys:
            assert command.text.replace("&", "").rstrip("…") in html_unescaped(help_pages.shortcuts_html())


def test_reading_the_drawing_in_inches_makes_it_25_4_times_larger(
    window: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    window.documents.open_files([FEET])
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    settled(window.session)
    before = window.session.state.outlines[0].region.area
    window.actions_by_name["read_inch"].trigger()
    qtbot.waitUntil(lambda: window.session.state.outlines[0].region.area != before, timeout=20_000)
    assert window.session.state.outlines[0].region.area == pytest.approx(before * 25.4**2, rel=1e-4)
    window.session.undo()
    assert window.session.state.outlines[0].region.area == before
    settled(window.session)


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_a_height_that_cannot_be_is_refused_in_the_window(open_discs: MainWindow) -> None:
    box = open_discs.sentence.box("glue")
    assert isinstance(box, FormBox)
    before = open_discs.session.state
    open_discs.sentence._do_stack(lambda stack: replace(stack, glue_mm=-1.0))
    assert open_discs.session.state is before
    assert "give 0 for none" in open_discs.notice.text
    length = box.popup.findChild(LengthBox)
    assert isinstance(length, LengthBox)
    length.lineEdit().setText("-1")
    QTest.keyClick(length.lineEdit(), Qt.Key.Key_Return)
    assert length.refusal
    assert open_discs.session.state is before


def test_no_check_is_called_open_or_not_before_the_first_answer(
    window: MainWindow, settled: Callable[[Session], None]
) -> None:
    window.session.start(discs(1))
    assert window.sentence.checks_button.text() == "No checks yet"
    settled(window.session)
    assert "open" in window.sentence.checks_button.text()
