"""The pages that ask how to read, how large a pocket is, what was measured, and what to write."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable
from pathlib import Path

import ezdxf.filemanagement
import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from inlayfit.app.looks import window_sheet
from inlayfit.app.pages import prompts
from inlayfit.app.pages.export_page import ExportPage, ExportWish
from inlayfit.app.pages.help_pages import TextPage, about_html, guide_html, said_keys
from inlayfit.app.pages.prompts import export_wish
from inlayfit.app.pages.reading_page import ReadingPage
from inlayfit.app.pages.size_page import SizePage
from inlayfit.app.pages.stations_page import StationsPage
from inlayfit.app.theme import Theme
from inlayfit.app.window import MainWindow
from inlayfit.document.exports import ExportOptions, Line, Origin, Passes, Split
from inlayfit.document.folder_units import unit_for
from inlayfit.document.project_json import state_from_json, state_to_json
from inlayfit.fit.spec import Half
from inlayfit.formats.dxf_write import DxfVersion
from inlayfit.units import Unit
from tests.app.conftest import discs
from tests.app.test_accessible_names import nameless

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support")


@pytest.fixture
def loose(tmp_path: Path) -> Path:
    """A square of 4 units with an open corner of 0.04, a whole one beside it, construction; no unit."""
    drawing = ezdxf.filemanagement.new("R12")
    space = drawing.modelspace()
    corners = [(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0), (0.0, 0.04)]
    for start, end in itertools.pairwise(corners):
        space.add_line(start, end, dxfattribs={"layer": "CUT"})
    whole = [(10, 0), (14, 0), (14, 4), (10, 4), (10, 0)]
    for a, b in itertools.pairwise(whole):
        space.add_line(a, b, dxfattribs={"layer": "CUT"})
    for a, b in zip([(1, 1), (2, 1), (2, 2)], [(2, 1), (2, 2), (1, 1)], strict=True):
        space.add_line(a, b, dxfattribs={"layer": "CONSTRUCTION"})
    path = tmp_path / "drawings" / "loose.dxf"
    path.parent.mkdir()
    drawing.saveas(path)
    return path


def opened(window: MainWindow, qtbot: QtBot, path: Path) -> None:
    window.documents.open_files([path])
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)


def page_of(window: MainWindow, qtbot: QtBot, press: Callable[[], object]) -> ReadingPage:
    press()
    qtbot.waitUntil(lambda: window.bench.rereading.page is not None, timeout=20_000)
    assert window.bench.rereading.page is not None
    return window.bench.rereading.page


def button_of(window: MainWindow, code: str) -> QPushButton:
    """The button of a note that mends it."""
    (row,) = [r for r in window.work.checks_panel.rows if r.check.finding.code == code]
    return row.findChildren(QPushButton)[-1]


# --- reading -----------------------------------------------------------------------------------------


def test_a_note_on_a_missing_unit_leads_to_its_choice_which_is_remembered_for_the_folder(
    window: MainWindow, qtbot: QtBot, loose: Path
) -> None:
    opened(window, qtbot, loose)
    page = page_of(window, qtbot, button_of(window, "unit-missing").click)
    inches = page.unit.findData(Unit.INCH.name)
    assert "355.600 × 101.600 mm" in page.unit.itemText(inches)
    assert "14.0000 × 4.0000 in" in page.unit.itemText(inches)
    page.unit.setCurrentIndex(inches)
    page.read_button.click()
    qtbot.waitUntil(lambda: window.session.state.settings.unit is Unit.INCH, timeout=20_000)
    (outline,) = window.session.state.outlines
    assert outline.region.area == pytest.approx(16 * 25.4**2)
    assert unit_for(loose) is Unit.INCH
    other = loose.with_name("other.dxf")
    other.write_bytes(loose.read_bytes())
    window.session.mark_saved(loose.with_suffix(".inlayfit"))
    window.documents.open_files([other])
    qtbot.waitUntil(lambda: window.session.state.source.path == str(other), timeout=20_000)
    assert window.session.state.outlines[0].region.area == pytest.approx(16 * 25.4**2)
    assert [f.code for f in window.session.state.findings if f.code.startswith("unit")] == ["unit-remembered"]


def test_a_note_on_an_open_line_closes_it_by_as_much_as_it_needs(
    window: MainWindow, qtbot: QtBot, loose: Path
) -> None:
    opened(window, qtbot, loose)
    assert len(window.session.state.outlines) == 1
    (row,) = [r for r in window.work.checks_panel.rows if r.check.finding.code == "outline-open"][:1]
    page = page_of(window, qtbot, row.findChildren(QPushButton)[-1].click)
    assert page.gap.mm == 0.05
    page.read_button.click()
    qtbot.waitUntil(lambda: len(window.session.state.outlines) == 2, timeout=20_000)
    assert window.session.state.settings.gap_mm == 0.05
    window.session.undo()
    assert len(window.session.state.outlines) == 1


def test_a_chosen_unit_can_be_chosen_again_but_not_forgotten_into_itself(
    window: MainWindow, qtbot: QtBot, loose: Path
) -> None:
    opened(window, qtbot, loose)
    window.documents.read_again(Unit.INCH)
    qtbot.waitUntil(lambda: window.session.state.settings.unit is Unit.INCH, timeout=20_000)
    page = page_of(window, qtbot, window.actions_by_name["reading"].trigger)
    assert page.unit.currentData() == Unit.INCH.name
    assert page.unit.findData(None) == -1
    page.unit.setCurrentIndex(page.unit.findData(Unit.MM.name))
    page.read_button.click()
    qtbot.waitUntil(lambda: window.session.state.settings.unit is Unit.MM, timeout=20_000)
    assert unit_for(loose) is Unit.MM


def test_a_note_leads_to_its_place_on_the_map(window: MainWindow, qtbot: QtBot, loose: Path) -> None:
    opened(window, qtbot, loose)
    row = next(r for r in window.work.checks_panel.rows if r.check.finding.code == "outline-open")
    place = row.check.finding.place_mm
    assert place is not None
    row.findChildren(QPushButton)[0].click()
    x, y = window.work.map.view.to_px(*place)
    middle = window.work.map.rect().center()
    assert abs(x - middle.x()) <= 2
    assert abs(y - middle.y()) <= 2


def test_layers_are_ticked_and_kept_with_the_work(window: MainWindow, qtbot: QtBot, loose: Path) -> None:
    opened(window, qtbot, loose)
    page = page_of(window, qtbot, window.actions_by_name["reading"].trigger)
    names = [page.layers.item(row).text() for row in range(page.layers.count())]
    assert names[0].startswith("CUT")
    assert names[1].startswith("CONSTRUCTION")
    ticks = [page.layers.item(row).checkState() for row in range(2)]
    assert ticks == [Qt.CheckState.Checked, Qt.CheckState.Unchecked]
    for row in range(2):
        page.layers.item(row).setCheckState(Qt.CheckState.Unchecked)
    page.read_button.click()
    assert page.refusal.text()
    page.layers.item(1).setCheckState(Qt.CheckState.Checked)
    page.read_button.click()
    qtbot.waitUntil(lambda: window.session.state.settings.layers == ("CONSTRUCTION",), timeout=20_000)
    state = window.session.state
    assert [o.layer for o in state.outlines] == ["CONSTRUCTION"]
    assert state_from_json(state_to_json(state)).settings == state.settings


def test_a_drawing_that_could_not_be_opened_can_be_read_in_another_way(
    window: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    path = tmp_path / "open.svg"
    path.write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">'
        '<path d="M10 10H40V30H10V10.2" fill="none" stroke="black"/></svg>',
        encoding="utf-8",
    )
    window.documents.open_files([path])
    qtbot.waitUntil(lambda: window.notice.text != "", timeout=20_000)
    page = page_of(window, qtbot, window.actions_by_name["reading"].trigger)
    page.gap.set_length(0.3)
    page.read_button.click()
    qtbot.waitUntil(lambda: not window.session.state.is_empty, timeout=20_000)
    assert window.session.state.outlines[0].region.area == pytest.approx(600, abs=0.1)


def test_construction_lines_are_shown_but_are_no_outlines(
    window: MainWindow, qtbot: QtBot, loose: Path
) -> None:
    opened(window, qtbot, loose)
    qtbot.waitUntil(lambda: len(window.work.map.scene.marks) > 0, timeout=20_000)
    assert {o.layer for o in window.session.state.outlines} == {"CUT"}
    window.session.start(discs(1))
    assert window.work.map.scene.marks == ()


# --- typed and measured ------------------------------------------------------------------------------


def test_a_pocket_is_typed_by_its_size_on_an_empty_bench_and_taken_back(
    window: MainWindow, qtbot: QtBot
) -> None:
    window.empty.size_button.click()
    (page,) = [w for w in QApplication.topLevelWidgets() if isinstance(w, SizePage) and w.isVisible()]
    page.shape.setCurrentIndex(page.shape.findData("rectangle"))
    page.boxes["radius"].set_length(11.0)
    page._show_refusal()
    assert "at most 10 mm" in page.refusal.text()
    page.use_button.click()
    assert page.isVisible()
    page.boxes["radius"].set_length(3.0)
    page.use_button.click()
    (outline,) = window.session.state.outlines
    assert outline.region.area == pytest.approx(800 - (4 - math.pi) * 9, abs=0.01)
    assert window.session.state.chosen == (outline.id,)
    window.session.undo()
    assert window.session.state.is_empty


def test_a_second_typed_pocket_has_an_id_of_its_own(window: MainWindow) -> None:
    for _ in range(2):
        window.actions_by_name["type_size"].trigger()
        page = next(w for w in QApplication.topLevelWidgets() if isinstance(w, SizePage) and w.isVisible())
        page.use_button.click()
    assert [o.id for o in window.session.state.outlines] == ["o1", "o2"]


# --- export ------------------------------------------------------------------------------------------


def export_page(qtbot: QtBot, tmp_path: Path) -> ExportPage:
    page = ExportPage(ExportOptions(), tmp_path, has_kerf=True, browse=lambda _w, _f: tmp_path / "there")
    qtbot.addWidget(page)
    page.show()
    return page


def test_every_choice_of_an_export_reaches_its_option(qtbot: QtBot, tmp_path: Path) -> None:
    page = export_page(qtbot, tmp_path)
    assert not page.warning.isVisible()
    for combo, value in (
        (page.halves, "plug"), (page.passes, "finish"), (page.line, "kerf"), (page.mirrored, "plug"),
        (page.origin, "centre"), (page.split, "per-piece"), (page.version, "R12"),
    ):  # fmt: skip
        combo.setCurrentIndex(combo.findData(value))
    assert page.warning.isVisible()
    assert "R12" in page.warning.text()
    page.write_button.click()
    wanted = ExportOptions(
        (Half.PLUG,), Passes.FINISH, Line.KERF, frozenset({Half.PLUG}), Origin.CENTRE, Split.PER_PIECE,
        DxfVersion.R12,
    )  # fmt: skip
    assert page.wish == ExportWish(tmp_path, wanted)


def test_the_question_before_an_export_answers_with_the_wish_or_nothing(
    window: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    def answer(accepts: bool) -> None:
        page = next(w for w in QApplication.topLevelWidgets() if isinstance(w, ExportPage) and w.isVisible())
        page.accept() if accepts else page.reject()

    for accepts, wanted in ((True, ExportWish(tmp_path, ExportOptions())), (False, None)):
        QTimer.singleShot(0, lambda accepts=accepts: answer(accepts))
        assert export_wish(window, ExportOptions(), tmp_path, has_kerf=False) == wanted


def test_what_was_not_touched_stays_as_the_fit_suggests(qtbot: QtBot, tmp_path: Path) -> None:
    page = export_page(qtbot, tmp_path)
    page.write_button.click()
    assert page.wish == ExportWish(tmp_path, ExportOptions())


def test_writing_is_the_step_that_stands_out(qtbot: QtBot, tmp_path: Path) -> None:
    page = export_page(qtbot, tmp_path)
    next_steps = [b for b in page.findChildren(QPushButton) if b.property("step") == "next"]
    assert next_steps == [page.write_button]


def test_the_label_of_a_row_stands_beside_the_middle_of_its_box(qtbot: QtBot, tmp_path: Path) -> None:
    """The row holds a note below its box; the label belongs to the box."""
    page = export_page(qtbot, tmp_path)
    for box in (page.halves, page.version, page.folder):
        label = next(label for label in page.findChildren(QLabel) if label.buddy() is box)
        words = label.fontMetrics().boundingRect(label.contentsRect(), int(label.alignment()), label.text())
        middle = label.mapTo(page, words.center()).y()
        assert abs(middle - box.mapTo(page, box.rect().center()).y()) <= 2


def test_a_page_to_read_is_no_larger_than_its_words_need(qtbot: QtBot) -> None:
    about, guide = TextPage("About", about_html()), TextPage("Guide", guide_html())
    for page in (about, guide):
        qtbot.addWidget(page)
        page.setStyleSheet(window_sheet(Theme.LIGHT))  # it has a padding that the page must know of
        page.show()
    assert about.height() < 240
    assert about.text.verticalScrollBar().maximum() == 0
    assert guide.height() > 600


def test_the_list_of_keys_names_only_keys_that_keyboards_have() -> None:
    """X11 binds keys of old workstations too (F14 undoes, a key named Open): true, but no help to anybody."""
    usual = [QKeySequence(text) for text in ("Ctrl+Z", "Shift+F12", "Ctrl+Del", "Ctrl++", "Page Up")]
    named = [QKeySequence(k) for k in (Qt.Key.Key_F14, Qt.Key.Key_Open, Qt.Key.Key_Exit, Qt.Key.Key_ZoomIn)]
    assert said_keys([*named, *usual]) == said_keys(usual)
    assert said_keys(usual).startswith("Ctrl+Z, Shift+F12, Ctrl+Del, Ctrl++")


def test_a_folder_that_is_a_file_is_refused(qtbot: QtBot, tmp_path: Path) -> None:
    page = export_page(qtbot, tmp_path)
    (tmp_path / "file").write_text("mine")
    page.folder.setText(str(tmp_path / "file"))
    page.write_button.click()
    assert page.wish is None
    assert page.warning.isVisible()


def test_after_an_export_the_arcs_and_their_deviation_are_told(
    window: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.session.start(discs(1))
    options = ExportOptions(halves=(Half.PLUG,), split=Split.PER_PIECE)
    wish = ExportWish(tmp_path / "cut", options)
    monkeypatch.setattr(prompts, "export_wish", lambda *_, **__: wish)
    window.actions_by_name["export"].trigger()
    qtbot.waitUntil(lambda: "Wrote" in window.strip.message, timeout=20_000)
    assert "plug-o0.dxf: " in window.strip.message
    assert "points became 2 arcs and 0 lines, off by 0." in window.strip.message
    names = {p.name for p in (tmp_path / "cut").iterdir()}
    assert names == {"plug-o0.dxf", "plug-o0.svg", "gap.svg", "fit.json"}


# --- for everyone ------------------------------------------------------------------------------------


def test_every_control_of_the_pages_has_a_name_and_the_keyboard_reaches_it(
    window: MainWindow, qtbot: QtBot, loose: Path, tmp_path: Path
) -> None:
    opened(window, qtbot, loose)
    pages: list[QDialog] = [page_of(window, qtbot, window.actions_by_name["reading"].trigger)]
    for name in ("type_size", "measured"):
        window.actions_by_name[name].trigger()
    pages += [
        w for w in QApplication.topLevelWidgets() if isinstance(w, SizePage | StationsPage) and w.isVisible()
    ]
    pages.append(export_page(qtbot, tmp_path))
    assert len(pages) == 4
    for page in pages:
        assert nameless(page) == [], type(page).__name__
        page.close()
