"""What is known of the workshop, in the window: typed, undone, judged beside the slider, and written."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from inlayfit.app.panels.spoken_form import SpokenForm
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.bench.milling import Milling
from inlayfit.cli import main
from inlayfit.document import edits, made_edits
from inlayfit.document.exports import ExportOptions, Line
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.spec import Half
from inlayfit.units import Unit
from tests.app.conftest import FEET, discs


@pytest.fixture
def looked_at(settled: Callable[[Session], None], qtbot: QtBot) -> Callable[[Session], None]:
    """Wait until the answers are exact and were looked at."""

    def wait(session: Session) -> None:
        settled(session)
        qtbot.waitUntil(lambda: not session.examiner.is_busy, timeout=20_000)

    return wait


@pytest.fixture
def open_discs(window: MainWindow, looked_at: Callable[[Session], None]) -> MainWindow:
    window.session.start(discs(2), title="discs")
    looked_at(window.session)
    return window


def _type(window: MainWindow, qtbot: QtBot, name: str, text: str) -> None:
    box = window.work.workshop.boxes[name]
    window.work.side.show_page(window.work.workshop_page)
    box.setFocus()
    box.selectAll()
    QTest.keyClicks(box.lineEdit(), text)
    QTest.keyClick(box.lineEdit(), Qt.Key.Key_Return)


def _codes(window: MainWindow) -> list[str]:
    return [check.finding.code for check in window.work.checks]


def test_errors_that_are_typed_say_how_many_parts_fit_and_undo_takes_it_back(
    open_discs: MainWindow, qtbot: QtBot, looked_at: Callable[[Session], None]
) -> None:
    session, parts = open_discs.session, open_discs.work.workshop.parts
    assert not parts.picture.isVisible()
    before = session.state
    _type(open_discs, qtbot, "cutter_varies_mm", "0.1")
    looked_at(session)
    assert session.state.workshop.errors.cutter_varies_mm == 0.1
    assert parts.picture.isVisible()
    look = session.look("o0")
    assert look is not None
    scatter = look.whole.scatter
    assert scatter is not None
    assert f"{100 * scatter.stack.shares.wanted:.1f} %" in parts.headline.text()
    assert parts.picture.accessibleDescription() == parts.headline.text()
    assert "cutter diameter" in parts.largest
    assert "parts-vary" in _codes(open_discs)
    open_discs.actions_by_name["undo"].trigger()
    looked_at(session)
    assert session.state is before
    assert "parts-vary" not in _codes(open_discs)
    assert not parts.picture.isVisible()


def test_a_repeatability_that_is_wider_than_the_change_says_stop(
    open_discs: MainWindow, looked_at: Callable[[Session], None]
) -> None:
    session = open_discs.session
    session.do(lambda s: made_edits.set_workshop(s, WorkshopNumbers(MachineErrors(repeatability_mm=0.02))))
    looked_at(session)
    assert open_discs.work.workshop.parts.advice.startswith("Stop adjusting")


def test_warmth_waits_for_both_numbers(open_discs: MainWindow, looked_at: Callable[[Session], None]) -> None:
    panel, session = open_discs.work.workshop, open_discs.session
    open_discs.work.side.show_page(open_discs.work.workshop_page)
    panel.kelvin.setValue(10)
    assert session.state.workshop.errors.temperature_varies_k == 0
    assert panel.kelvin.value() == 10
    assert panel.warmth_note.isVisible()
    panel.expansion.setValue(97)
    errors = session.state.workshop.errors
    assert (errors.temperature_varies_k, errors.expansion_difference_per_k) == (10, 97e-6)
    assert not panel.warmth_note.isVisible()


def test_a_floor_fillet_that_holds_the_plug_up_is_mended_by_breaking_its_edge(
    open_discs: MainWindow, looked_at: Callable[[Session], None]
) -> None:
    session = open_discs.session
    session.do(lambda s: made_edits.set_workshop(s, WorkshopNumbers(floor_fillet_mm=0.3)))
    looked_at(session)
    check = next(check for check in open_discs.work.checks if check.finding.code == "held-up")
    assert check.fix is not None
    assert check.fix.label == "Break the plug's lower edge"
    open_discs.work.fix_check(check)
    looked_at(session)
    assert session.state.fittings[0].spec.plug.edge_break_mm > 0
    assert "held-up" not in _codes(open_discs)


def test_numbers_that_contradict_each_other_are_refused_aloud_and_not_taken(
    open_discs: MainWindow, qtbot: QtBot
) -> None:
    before = open_discs.session.state
    _type(open_discs, qtbot, "floor_allowance_mm", "0.2")
    assert open_discs.session.state is before
    assert "floor allowance needs" in open_discs.notice.text
    assert open_discs.work.workshop.boxes["floor_allowance_mm"].mm == 0


def test_a_contradiction_that_comes_later_is_a_check_and_the_fit_is_still_shown(
    open_discs: MainWindow, looked_at: Callable[[Session], None]
) -> None:
    """The label of a cutter, while no half is to be cut by one."""
    session = open_discs.session
    session.do(lambda s: made_edits.set_workshop(s, WorkshopNumbers(MachineErrors(cutter_nominal_mm=3.0))))
    for half in Half:
        session.perform(edits.set_kerf(session.state, half, 0.2))
    looked_at(session)
    assert "workshop-numbers" in _codes(open_discs)
    assert session.results["o0"].gap.min_mm == pytest.approx(0.03, abs=1e-3)


def test_nothing_slow_is_done_behind_the_slider(
    open_discs: MainWindow, looked_at: Callable[[Session], None], qtbot: QtBot
) -> None:
    session = open_discs.session
    session.do(lambda s: made_edits.set_workshop(s, WorkshopNumbers(MachineErrors(runout_mm=0.02))))
    looked_at(session)
    submitted: list[object] = []
    session.examiner.busy_changed.connect(submitted.append)
    for step in range(5):
        session.preview(edits.set_clearance(session.state, 0.04 + 0.01 * step))
        qtbot.waitUntil(lambda: not session.solver.is_busy, timeout=20_000)
    assert submitted == []
    parts = open_discs.work.workshop.parts
    assert not parts.isEnabled(), "an answer that lags behind is dimmed"
    assert not parts.picture.isHidden(), "and stays where it is"
    session.finish_gesture(edits.set_clearance(session.state, 0.09))
    looked_at(session)
    assert submitted[:1] == [True]
    look = session.look("o0")
    assert look is not None
    assert look.result.spec.clearance_mm == 0.09
    assert parts.isEnabled()


def test_lookalikes_are_told_and_drawn(open_discs: MainWindow) -> None:
    turns = open_discs.work.turns
    open_discs.work.side.show_page(open_discs.work.checks_panel)
    assert turns.isVisible()
    assert turns.told.text() == "Round: it goes in at any turn."
    assert not turns.view.isVisible(), "a circle looks the same anyhow"


def test_inches_are_shown_in_inches(open_discs: MainWindow, looked_at: Callable[[Session], None]) -> None:
    session = open_discs.session
    session.do(lambda s: made_edits.set_workshop(s, WorkshopNumbers(MachineErrors(runout_mm=0.0254))))
    session.do(lambda s: edits.set_unit(s, Unit.INCH))
    looked_at(session)
    assert open_discs.work.workshop.boxes["runout_mm"].shown_text().startswith("0.001")


def test_new_work_starts_with_the_workshop_of_the_settings_and_open_work_keeps_its_own(
    window: MainWindow, looked_at: Callable[[Session], None], qtbot: QtBot
) -> None:
    session = window.session
    session.change_settings(session.settings.with_value("runout_mm", 0.02))
    window.documents.open_files([FEET])
    qtbot.waitUntil(lambda: session.state.lead is not None, timeout=20_000)
    assert session.state.workshop.errors == MachineErrors(runout_mm=0.02)
    session.change_settings(session.settings.with_value("runout_mm", 0.05))
    looked_at(session)
    assert session.state.workshop.errors.runout_mm == 0.02


def test_a_form_of_sentences_needs_each_box_once(qtbot: QtBot) -> None:
    with pytest.raises(ValueError, match="each box exactly once"):
        SpokenForm("no place", {"box": SpokenForm("", {})})


ERRORS = "--cutter-varies 0.01 --runout 0.02 --repeatability 0.008 --thickness-varies 0.05"
WARMTH = "--temperature-varies 10 --expansion-difference 97e-6"
PASSES = "--depth 3 --depth-per-pass 0.8 --floor-allowance 0.1 --floor-fillet 0.3 --cut climb"


@pytest.mark.parametrize("beam", [False, True])
def test_window_and_command_line_write_equal_answers(
    window: MainWindow, looked_at: Callable[[Session], None], qtbot: QtBot, tmp_path: Path, beam: bool
) -> None:
    """All that a workshop knows, for cutters and for a beam with a taper."""
    cutters = "--pocket-cutter 2 --plug-cutter 0 --kerf 0.2 --kerf-taper 0.04"
    options = f"--clearance 0.05 {cutters if beam else '--pocket-cutter 2 --plug-cutter 3'}"
    main(["fit", str(FEET), *f"{options} {ERRORS} {WARMTH} {PASSES}".split(), "--out", str(tmp_path / "cli")])
    session = window.session
    window.documents.open_files([FEET])
    qtbot.waitUntil(lambda: session.state.lead is not None, timeout=20_000)
    session.do(lambda s: edits.set_clearance(s, 0.05))
    if beam:
        session.do(lambda s: edits.set_kerf(s, Half.PLUG, 0.2))
        session.do(lambda s: made_edits.set_kerf_taper(s, 0.04))
    errors = MachineErrors(0.0, 0.01, 0.02, 0.008, 0.05, 10.0, 97e-6)
    numbers = WorkshopNumbers(errors, 0.8, 0.1, Milling.CLIMB, 0.3)
    session.do(lambda s: made_edits.set_workshop(s, numbers))
    looked_at(session)
    line = Line.KERF if beam else Line.EDGE
    window.documents.exporter.write(tmp_path / "window", ExportOptions(line=line, milling=Milling.CLIMB))
    qtbot.waitUntil(lambda: (tmp_path / "window" / "fit.json").exists(), timeout=20_000)
    ours, theirs = (json.loads((tmp_path / where / "fit.json").read_text()) for where in ("window", "cli"))
    first = ours["fittings"][0]
    assert {"orientations", "tolerance", "floor", "passes", "contours"} <= first.keys()
    assert ("faces" in first) == beam
    assert ours == theirs
    for name in ("plug.dxf", "pocket.svg"):
        assert (tmp_path / "window" / name).read_bytes() == (tmp_path / "cli" / name).read_bytes()


def test_what_is_not_given_says_so_and_what_is_used_instead(open_discs: MainWindow) -> None:
    panel = open_discs.work.workshop
    given = {"depth_mm", "floor_allowance_mm", "edge_break_mm"}
    for name, box in panel.boxes.items():
        assert (box.text() == "not given") is (name not in given), name
        assert ("Not given: " in box.toolTip()) is (name not in given), name
    for spin in (panel.kelvin, panel.expansion):
        assert spin.text() == "not given"
        assert "Not given: " in spin.toolTip()
    open_discs.session.do(
        lambda s: made_edits.set_workshop(
            s,
            WorkshopNumbers(
                MachineErrors(runout_mm=0.02, temperature_varies_k=5, expansion_difference_per_k=9e-6)
            ),
        )
    )
    assert panel.boxes["runout_mm"].text() == "0.020 mm"
    assert "Not given" not in panel.boxes["runout_mm"].toolTip()
    assert (panel.kelvin.text(), panel.expansion.text()) == ("5.0 K", "9.0 ×10⁻⁶/K")
    open_discs.actions_by_name["undo"].trigger()
    assert panel.boxes["runout_mm"].text() == panel.kelvin.text() == "not given"
