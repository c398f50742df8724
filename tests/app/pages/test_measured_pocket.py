"""A pocket as measured, in the window: read, looked at again, changed, taken back, saved, and written."""

from __future__ import annotations

import json
import math
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from inlayfit.app.pages import prompts
from inlayfit.app.pages.stations_page import StationsPage
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.cli import main
from inlayfit.document import edits
from inlayfit.document.measured_edits import apply_readings
from inlayfit.document.pocket_readings import PocketReadings
from inlayfit.document.project_file import from_bytes, to_bytes
from inlayfit.fit import readings as fit_readings
from inlayfit.fit.measured import Axis, Reading
from inlayfit.fit.spec import Half, HalfState
from inlayfit.units import Unit
from tests.app.conftest import discs

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support")

ROUND = [(25.0, 25.05), (8.0, 8.05), (25.0, 25.05), (8.0, 8.05)]
"""Drawn and read widths of a disc of 25 mm, two along X and two along Y: 0.050 mm overall more everywhere."""


def page_of(window: MainWindow) -> StationsPage:
    window.actions_by_name["measured"].trigger()
    pages = [w for w in QApplication.topLevelWidgets() if isinstance(w, StationsPage) and w.isVisible()]
    return pages[-1]


def typed_in(page: StationsPage, widths: Sequence[tuple[float, float]]) -> None:
    for row, (drawn, read) in zip(page.rows, widths, strict=True):
        row.drawn.set_length(drawn)
        row.read.set_length(read)
    page._judge()


def measured(window: MainWindow, widths: Sequence[tuple[float, float]] = ROUND) -> None:
    page = page_of(window)
    typed_in(page, widths)
    page.use_button.click()


def plug_area(session: Session) -> float:
    assert session.solution.lead is not None
    return session.solution.lead.plug.outline.area


def test_readings_show_their_residuals_and_make_an_already_cut_pocket(
    window: MainWindow, settled: Callable[[Session], None]
) -> None:
    window.session.start(discs(1))
    drawn = window.session.state.outlines[0]
    page = page_of(window)
    assert "X has no reading" in page.answer.text()
    page.use_button.click()
    assert page.isVisible()
    typed_in(page, ROUND)
    assert [row.off.text() for row in page.rows] == ["0.000 mm"] * 4
    assert "0.025 mm per side (0.050 mm overall) larger" in page.answer.text()
    page.use_button.click()
    assert window.session.state.outlines == (drawn,)
    assert window.session.state.fittings[0].spec.pocket.state is HalfState.ALREADY_CUT
    settled(window.session)
    lead = window.session.solution.lead
    assert lead is not None
    assert lead.pocket.outline.area == pytest.approx(math.pi * 12.525**2, rel=1e-4)
    assert lead.plug.outline.area == pytest.approx(math.pi * 12.495**2, rel=1e-4)
    assert "pocket-as-measured" in {finding.code for finding in lead.findings}


def test_the_page_opened_again_shows_what_was_read_and_takes_a_change(
    window: MainWindow, settled: Callable[[Session], None]
) -> None:
    window.session.start(discs(1))
    page = page_of(window)
    page.more.click()
    page.rows[4].axis.setCurrentText("Y")
    page.repeats.set_length(0.02)
    typed_in(page, [*ROUND, (16.0, 16.06)])
    offs = [row.off.text() for row in page.rows]
    assert offs[4] != "0.000 mm"
    told = page.answer.text()
    page.use_button.click()
    again = page_of(window)
    assert [(row.axis.currentText(), row.drawn.mm, row.read.mm) for row in again.rows] == [
        (axis, *widths) for axis, widths in zip("XXYYY", [*ROUND, (16.0, 16.06)], strict=True)
    ]
    assert again.repeats.mm == 0.02
    assert [row.off.text() for row in again.rows] == offs
    assert again.answer.text() == told
    before = window.session.state
    again.use_button.click()
    assert window.session.state is before, "nothing was changed"
    changed = page_of(window)
    changed.rows[4].read.set_length(0.0)
    changed.use_button.click()
    readings = window.session.state.fittings[0].readings
    assert readings is not None
    assert [(r.nominal_mm, r.measured_mm) for r in readings.readings] == ROUND
    settled(window.session)
    assert plug_area(window.session) == pytest.approx(math.pi * 12.495**2, rel=1e-4)


def test_readings_typed_in_another_unit_are_shown_again_to_the_last_digit(window: MainWindow) -> None:
    window.session.start(discs(1))
    window.session.do(lambda state: edits.set_unit(state, Unit.INCH))
    widths = [(0.98425 * 25.4, 0.98617 * 25.4), (0.315 * 25.4, 0.31692 * 25.4)] * 2
    measured(window, widths)
    page = page_of(window)
    assert [(row.drawn.mm, row.read.mm) for row in page.rows] == widths
    before = window.session.state
    page.use_button.click()
    assert window.session.state is before


def test_undo_takes_the_readings_back_and_the_page_can_leave_them_out(
    window: MainWindow, settled: Callable[[Session], None]
) -> None:
    session = window.session
    session.start(discs(1))
    settled(session)
    drawn, as_drawn_area = session.state, plug_area(session)
    first = page_of(window)
    assert not hasattr(first, "leave_out_button")
    first.reject()
    measured(window)
    with_readings = session.state
    session.undo()
    assert session.state is drawn
    session.redo()
    assert session.state is with_readings
    page_of(window).leave_out_button.click()
    assert session.state.fittings[0].readings is None
    settled(session)
    assert plug_area(session) == pytest.approx(as_drawn_area, rel=1e-3)
    session.undo()
    assert session.state is with_readings


def test_a_project_opened_again_answers_as_it_was_saved(
    window: MainWindow, settled: Callable[[Session], None]
) -> None:
    window.session.start(discs(1))
    measured(window)
    settled(window.session)
    area = plug_area(window.session)
    window.session.start(from_bytes(to_bytes(window.session.state)))
    settled(window.session)
    assert plug_area(window.session) == area
    assert [row.read.mm for row in page_of(window).rows] == [read for _, read in ROUND]


def test_a_clearance_does_not_correct_the_pocket_again_and_another_cutter_does(
    session: Session, settled: Callable[[Session], None], monkeypatch: pytest.MonkeyPatch
) -> None:
    corrected: list[object] = []
    real = fit_readings.as_measured

    def counted(*asked: Any) -> object:
        corrected.append(asked)
        return real(*asked)

    axes = (Axis.X, Axis.X, Axis.Y, Axis.Y)
    read = tuple(Reading(axis, *widths) for axis, widths in zip(axes, ROUND, strict=True))
    session.start(discs(1))
    session.do(lambda state: apply_readings(state, PocketReadings(read, 0.01)))
    settled(session)
    monkeypatch.setattr(fit_readings, "as_measured", counted)
    for clearance in (0.04, 0.05):
        session.perform(edits.set_clearance(session.state, clearance))
        settled(session)
    assert plug_area(session) == pytest.approx(math.pi * 12.475**2, rel=1e-4)
    assert corrected == []
    session.do(lambda state: edits.set_cutter(state, Half.POCKET, 1.0))
    settled(session)
    assert len(corrected) == 1


def test_a_pocket_that_is_to_be_cut_again_is_as_drawn(
    window: MainWindow, settled: Callable[[Session], None]
) -> None:
    session = window.session
    session.start(discs(1))
    measured(window)
    session.do(lambda state: edits.set_half_state(state, Half.POCKET, HalfState.TO_CUT))
    settled(session)
    assert session.solution.lead is not None
    assert session.solution.lead.pocket.outline.area == pytest.approx(math.pi * 12.5**2, rel=1e-4)
    assert session.solution.solved["o0"].readings is None


PLATE = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="40mm" viewBox="0 0 60 40">'
    '<path d="M5 5 H35 V25 H25 V15 H5 Z" fill="none" stroke="#000"/></svg>'
)
STATIONS = [
    ("X", 30.0, 30.06),
    ("X", 10.0, 10.055),
    ("Y", 20.0, 19.98),
    ("Y", 10.0, 9.985),
    ("Y", 10.0, 9.98),
]


@pytest.mark.parametrize("state", [HalfState.ALREADY_CUT, HalfState.FINISHED])
def test_window_and_command_line_write_equal_answers_for_the_same_readings(
    window: MainWindow,
    settled: Callable[[Session], None],
    qtbot: QtBot,
    tmp_path: Path,
    state: HalfState,
) -> None:
    drawing, table = tmp_path / "plate.svg", tmp_path / "readings.csv"
    drawing.write_text(PLATE, "utf-8")
    table.write_text("".join(f"{axis}; {drawn}; {read}\n" for axis, drawn, read in STATIONS), "utf-8")
    options = f"--clearance 0.03 --pocket-cutter 2 --plug-cutter 3 --pocket-state {state.value} --line edge"
    readings = ["--readings", str(table), "--reading-repeats", "0.015"]
    main(["fit", str(drawing), *options.split(), *readings, "--out", str(tmp_path / "cli")])
    session = window.session
    window.documents.open_files([drawing])
    qtbot.waitUntil(lambda: session.state.lead is not None, timeout=20_000)
    for half, cutter in ((Half.POCKET, 2.0), (Half.PLUG, 3.0)):
        session.perform(edits.set_cutter(session.state, half, cutter))
    session.perform(edits.set_half_state(session.state, Half.POCKET, state))
    session.do(lambda s: edits.set_clearance(s, 0.03))
    page = page_of(window)
    page.more.click()
    for row, (axis, _, _) in zip(page.rows, STATIONS, strict=True):
        row.axis.setCurrentText(axis)
    page.repeats.set_length(0.015)
    typed_in(page, [(drawn, read) for _, drawn, read in STATIONS])
    page.use_button.click()
    settled(session)
    qtbot.waitUntil(lambda: not session.examiner.is_busy, timeout=20_000)
    window.documents.exporter.write(tmp_path / "window")
    qtbot.waitUntil(lambda: (tmp_path / "window" / "fit.json").exists(), timeout=20_000)
    ours, theirs = (json.loads((tmp_path / where / "fit.json").read_text()) for where in ("window", "cli"))
    assert len(theirs["fittings"][0]["measured"]["residuals"]) == 5
    assert ours == theirs


def test_a_made_plug_is_seated_in_the_measured_pocket_as_by_the_command_line(
    window: MainWindow,
    settled: Callable[[Session], None],
    qtbot: QtBot,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    pocket, plug, table = tmp_path / "plate.svg", tmp_path / "plug.svg", tmp_path / "readings.csv"
    for path in (pocket, plug):
        path.write_text(PLATE, "utf-8")
    table.write_text("".join(f"{axis}; {drawn}; {read}\n" for axis, drawn, read in STATIONS), "utf-8")
    options = (
        "--clearance 0.03 --pocket-cutter 0 --plug-cutter 0 --pocket-state finished --plug-state finished"
    )
    files = ["--plug-drawing", str(plug), "--readings", str(table), "--out", str(tmp_path / "cli")]
    main(["fit", str(pocket), *options.split(), *files])
    session = window.session
    window.documents.open_files([pocket])
    qtbot.waitUntil(lambda: session.state.lead is not None, timeout=20_000)
    for half in Half:
        session.perform(edits.set_cutter(session.state, half, 0.0))
        session.perform(edits.set_half_state(session.state, half, HalfState.FINISHED))
    session.do(lambda s: edits.set_clearance(s, 0.05))
    monkeypatch.setattr(prompts, "open_files", lambda *_: [plug])
    window.work.spot.seat.other_drawing_asked.emit()
    qtbot.waitUntil(lambda: len(session.state.outlines) == 2, timeout=20_000)
    read = tuple(Reading(Axis(axis), drawn, width) for axis, drawn, width in STATIONS)
    session.do(lambda s: apply_readings(s, PocketReadings(read, 0.01)))
    settled(session)
    searches = session.seats.searches
    session.do(lambda s: edits.set_clearance(s, 0.03))
    settled(session)
    assert session.seats.searches == searches, "a clearance moves no plug"
    qtbot.waitUntil(lambda: not session.examiner.is_busy, timeout=20_000)
    window.documents.exporter.write(tmp_path / "window")
    qtbot.waitUntil(lambda: (tmp_path / "window" / "fit.json").exists(), timeout=20_000)
    ours, theirs = (json.loads((tmp_path / where / "fit.json").read_text()) for where in ("window", "cli"))
    assert {"measured", "seating", "bench"} <= theirs["fittings"][0].keys()
    assert ours == theirs


def test_a_measured_pocket_that_is_read_anew_in_another_unit_says_so_and_keeps_its_readings(
    window: MainWindow, settled: Callable[[Session], None], qtbot: QtBot, tmp_path: Path
) -> None:
    drawing = tmp_path / "plate.svg"
    drawing.write_text(PLATE, "utf-8")
    session = window.session
    window.documents.open_files([drawing])
    qtbot.waitUntil(lambda: session.state.lead is not None, timeout=20_000)
    read = PocketReadings(tuple(Reading(Axis(axis), drawn, width) for axis, drawn, width in STATIONS), 0.01)
    session.do(lambda s: apply_readings(s, read))
    settled(session)
    area = plug_area(session)

    def code_in(unit: Unit) -> str:
        window.documents.read_again(unit)
        qtbot.waitUntil(lambda: session.state.settings.unit is unit, timeout=20_000)
        settled(session)
        assert session.state.fittings[0].readings == read
        row = window.work.checks_panel.rows[0]
        assert "the unit that the drawing is read in" in row.check.finding.remedy
        return row.check.finding.code

    assert code_in(Unit.INCH) == "readings-short"
    assert "Choose the unit…" in [b.text() for b in window.work.checks_panel.findChildren(QPushButton)]
    assert code_in(Unit.PIXEL) == "not-solved"
    assert session.solution.lead is None
    session.undo()
    session.undo()
    settled(session)
    assert plug_area(session) == area
