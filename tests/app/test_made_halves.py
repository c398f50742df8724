"""Two halves that are made, in the window: the plug is chosen, seated, judged, and written."""

from __future__ import annotations

import json
import math
import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from pytestqt.qtbot import QtBot

from inlayfit.app.pages import prompts
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.cli import main
from inlayfit.document import edits, made_edits
from inlayfit.document.made_plug import MadePlug
from inlayfit.document.outlines import Outline, region_of_contours
from inlayfit.document.state import Fitting, State
from inlayfit.fit import seating
from inlayfit.fit.seating import Seat
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState, Seating
from inlayfit.geometry.path import Path as Line
from inlayfit.progress import Progress

CUT = HalfState.ALREADY_CUT


def _l_shape(number: int, at: tuple[float, float], inset: float, turn_rad: float = 0.0) -> Outline:
    """An L of 30 by 20, each wall moved in, turned about its corner and laid somewhere."""
    i = inset
    corners = [(i, i), (30 - i, i), (30 - i, 8 - i), (8 - i, 8 - i), (8 - i, 20 - i), (i, 20 - i)]
    c, s = math.cos(turn_rad), math.sin(turn_rad)
    points = [(at[0] + c * x - s * y, at[1] + s * x + c * y) for x, y in corners]
    path = (Line.polyline(points),)
    return Outline(f"o{number}", "", "0", region_of_contours(path), path)


def _pair(inset: float = 0.03, turn_rad: float = 0.0) -> State:
    """A pocket, and beside it a plug that was cut for it."""
    outlines = (_l_shape(1, (0, 0), 0.0), _l_shape(2, (50, 3), inset, turn_rad))
    spec = FitSpec(0.03, HalfSpec(2.0, CUT), HalfSpec(3.0, CUT))
    return State(outlines=outlines, fittings=tuple(Fitting(o.id, spec) for o in outlines), chosen=("o1",))


@pytest.fixture
def opened(
    window: MainWindow, settled: Callable[[Session], None], qtbot: QtBot
) -> Callable[[State], MainWindow]:
    def open_(state: State) -> MainWindow:
        window.session.start(state, title="pair")
        looked_at(window.session, settled, qtbot)
        return window

    return open_


def looked_at(session: Session, settled: Callable[[Session], None], qtbot: QtBot) -> None:
    """Wait until the answers are exact and were looked at."""
    settled(session)
    qtbot.waitUntil(lambda: not session.examiner.is_busy, timeout=20_000)


def test_two_made_halves_ask_for_the_plug_and_lead_to_the_choice(
    opened: Callable[..., MainWindow], monkeypatch: pytest.MonkeyPatch
) -> None:
    window = opened(_pair())
    work = window.work
    listed: list[bool] = []
    monkeypatch.setattr(work.spot.seat.plug_box, "showPopup", lambda: listed.append(True))
    assert work.verdict_bar.fix_button.text() == "Choose the plug"
    assert work.spot.seat.isVisible()
    work.verdict_bar.fix_button.click()
    assert listed == [True]


def test_the_plug_is_chosen_seated_and_judged(
    opened: Callable[..., MainWindow], settled: Callable[[Session], None], qtbot: QtBot
) -> None:
    window = opened(_pair())
    box = window.work.spot.seat.plug_box
    box.setCurrentIndex(box.findData("o2"))
    box.activated.emit(box.currentIndex())
    looked_at(window.session, settled, qtbot)
    assert window.session.state.fittings[0].made == MadePlug("o2")
    solved = window.session.solution.solved["o1"]
    assert solved.seat is not None
    assert solved.seat.shift_mm == pytest.approx((-50, -3), abs=2e-3)
    assert "−50.000 mm along X and −3.000 mm along Y." in window.work.spot.seat.told.text()
    assert window.work.verdict_bar.headline == "Goes in."
    assert window.work.map.scene.fitting("o1") is not None
    assert not window.work.map.scene.outlines, "the plug is shown where it sits"
    before = window.session.state
    window.actions_by_name["undo"].trigger()
    assert window.session.state == _same_but(before, made=None)
    window.actions_by_name["redo"].trigger()
    assert window.session.state is before


def _same_but(state: State, *, made: MadePlug | None) -> State:
    return state.with_fittings((replace(state.fittings[0], made=made),))


def test_a_plug_that_binds_says_by_how_much_where_and_what_to_take_off(
    opened: Callable[..., MainWindow],
) -> None:
    state = made_edits.give_plug(_pair(inset=-0.02), "o2").state
    window = opened(state)
    assert window.work.verdict_bar.headline == "Will not go in as it is."
    result = window.session.results["o1"]
    codes = [finding.code for finding in result.findings]
    assert "bites" in codes
    ease = [finding for finding in result.findings if finding.code == "ease-here"]
    assert ease
    assert all(finding.place_mm is not None for finding in ease)
    amount = 0.03 + 0.02 * math.sqrt(2)  # at a corner the overlap is that of its diagonal
    assert f"{amount:.3f} mm per side off the plug" in ease[0].remedy
    shown = [check for check in window.work.checks if check.finding.code == "ease-here"]
    window.work.show_check(shown[0])
    assert window.work.side.current_page is window.work.spot


def test_a_turn_is_told_only_if_it_was_allowed(
    opened: Callable[..., MainWindow], settled: Callable[[Session], None], qtbot: QtBot
) -> None:
    window = opened(made_edits.give_plug(_pair(turn_rad=0.4), "o2").state)
    assert window.work.verdict_bar.headline == "Will not go in as it is."
    check = next(check for check in window.work.checks if check.finding.code == "plug-turned")
    window.work.fix_check(check)
    looked_at(window.session, settled, qtbot)
    assert window.session.state.fittings[0].made == MadePlug("o2", Seating.TURN)
    assert "plug-turned" not in [check.finding.code for check in window.work.checks]
    assert window.work.verdict_bar.headline == "Goes in."
    assert f"turned by −{math.degrees(0.4):.3f}°" in window.work.spot.seat.told.text()


def test_clearance_and_unit_move_no_plug_so_no_seat_is_searched_again(
    opened: Callable[..., MainWindow], settled: Callable[[Session], None], qtbot: QtBot
) -> None:
    window = opened(made_edits.give_plug(_pair(), "o2").state)
    session = window.session
    assert session.seats.searches == 1
    for step in range(1, 5):
        session.preview(edits.set_clearance(session.state, 0.03 + 0.01 * step))
    session.finish_gesture(edits.set_clearance(session.state, 0.07))
    session.do(lambda s: edits.set_half_state(s, Half.PLUG, HalfState.FINISHED))
    looked_at(session, settled, qtbot)
    assert session.seats.searches == 1
    assert window.work.verdict_bar.headline == "Goes in, tighter than wanted."


def test_cancel_leaves_the_document_and_says_what_is_not_known(
    opened: Callable[..., MainWindow], settled: Callable[[Session], None], qtbot: QtBot
) -> None:
    window = opened(_pair())
    session = window.session
    session.do(lambda s: made_edits.give_plug(s, "o2"))
    asked = session.state
    window.strip.cancel_asked.emit()
    qtbot.waitUntil(lambda: not session.solver.is_busy)
    assert session.state is asked
    assert not session.is_stale
    assert [check.finding.code for check in window.work.checks][:1] == ["seat-not-searched"]
    assert window.work.verdict_bar.fix_button.text() == "Leave it as drawn"
    assert window.work.spot.seat.again.isVisible()
    window.work.spot.seat.again.click()
    looked_at(session, settled, qtbot)
    assert window.work.verdict_bar.headline == "Goes in."
    assert not window.work.spot.seat.again.isVisible()


def test_a_drawing_dropped_as_plug_on_two_made_halves_is_their_plug(
    opened: Callable[..., MainWindow],
    settled: Callable[[Session], None],
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    state = _pair()
    alone = State(outlines=state.outlines[:1], fittings=state.fittings[:1], chosen=("o1",))
    window = opened(alone)
    plug = _drawing(tmp_path / "plug.dxf", state.outlines[1])
    window.documents.open_files([tmp_path / "gone.dxf"], used_as=Half.PLUG, adds=True)
    qtbot.waitUntil(lambda: "gone.dxf" in window.notice.text, timeout=20_000)
    window.work.map_link.take_drop([plug], "", Half.PLUG)
    qtbot.waitUntil(lambda: len(window.session.state.outlines) == 2, timeout=20_000)
    looked_at(window.session, settled, qtbot)
    assert window.session.state.chosen == ("o1",)
    assert window.session.state.fittings[0].made == MadePlug("o1-2")
    assert window.notice.text == ""
    assert window.work.verdict_bar.headline == "Goes in."
    assert "o1 of plug.dxf" in window.work.spot.seat.plug_box.currentText()
    assert "made plug" in window.work.outlines.list.item(1).toolTip()


def test_each_of_several_pockets_gets_its_own_plug_of_a_drawing(
    opened: Callable[..., MainWindow],
    settled: Callable[[Session], None],
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    pockets = (_l_shape(1, (0, 0), 0.0), _slot(2, (50, 0), 4.0))
    plugs = (_slot(1, (0, 0), 3.97), _l_shape(2, (40, 0), 0.03))
    spec = FitSpec(0.03, HalfSpec(2.0, CUT), HalfSpec(3.0, CUT))
    fittings = tuple(Fitting(o.id, spec) for o in pockets)
    window = opened(State(outlines=pockets, fittings=fittings, chosen=("o1", "o2")))
    drawing = _drawing(tmp_path / "plugs.dxf", *plugs)
    window.work.map_link.take_drop([drawing], "", Half.PLUG)
    qtbot.waitUntil(lambda: len(window.session.state.outlines) == 4, timeout=20_000)
    looked_at(window.session, settled, qtbot)
    state = window.session.state
    assert state.chosen == ("o1", "o2")
    for fitting, area in zip(
        state.chosen_fittings, (plugs[1].region.area, plugs[0].region.area), strict=True
    ):
        plug = state.made_plug(fitting)
        assert plug is not None
        assert plug.region.area == pytest.approx(area)
    gaps = [result.gap.min_mm for result in window.session.results.values()]
    assert gaps == pytest.approx([0.03, 0.03], abs=2e-3)
    window.actions_by_name["undo"].trigger()
    assert len(window.session.state.outlines) == 2


def _slot(number: int, at: tuple[float, float], radius: float) -> Outline:
    x, y = at
    ends = ((x, y - radius), (x + 20, y - radius), (x + 20, y + radius), (x, y + radius))
    path = (Line(np.array(ends), np.array([0.0, 1.0, 0.0, 1.0])),)
    return Outline(f"o{number}", "", "0", region_of_contours(path), path)


def _drawing(path: Path, *outlines: Outline) -> Path:
    from inlayfit.drawing import Drawing, Figure, Role
    from inlayfit.formats.dxf_write import write_dxf

    figures = tuple(Figure(o.contours, layer="0", name=o.id, role=Role.POCKET) for o in outlines)
    write_dxf(Drawing(figures), path)
    return path


@pytest.mark.parametrize(
    ("how", "turn_rad"),
    [(Seating.SHIFT, 0.0), (Seating.AS_DRAWN, 0.0), (Seating.SHIFT, 0.4), (Seating.TURN, 0.4)],
)
def test_window_and_command_line_write_equal_answers(
    window: MainWindow,
    settled: Callable[[Session], None],
    qtbot: QtBot,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    how: Seating,
    turn_rad: float,
) -> None:
    """A pocket in one drawing, its plug in another; both ways write the same `fit.json`."""
    pocket = _drawing(tmp_path / "pocket.dxf", _l_shape(1, (0, 0), 0.0))
    plug = _drawing(tmp_path / "plug.dxf", _l_shape(1, (0.01, 0), -0.01, turn_rad))
    options = "--clearance 0.03 --pocket-cutter 0 --plug-cutter 0 --pocket-state already-cut "
    options += f"--plug-state finished --seat {how.value} --line edge"
    main(["fit", str(pocket), "--plug-drawing", str(plug), *options.split(), "--out", str(tmp_path / "cli")])
    session = window.session
    window.documents.open_files([pocket])
    qtbot.waitUntil(lambda: session.state.lead is not None, timeout=20_000)
    for half, half_state in ((Half.POCKET, CUT), (Half.PLUG, HalfState.FINISHED)):
        session.perform(edits.set_cutter(session.state, half, 0.0))
        session.perform(edits.set_half_state(session.state, half, half_state))
    session.do(lambda s: edits.set_clearance(s, 0.03))
    monkeypatch.setattr(prompts, "open_files", lambda *_: [plug])
    window.work.spot.seat.other_drawing_asked.emit()
    qtbot.waitUntil(lambda: len(session.state.outlines) == 2, timeout=20_000)
    assert session.state.outlines[1].drawing == str(plug)
    session.do(lambda s: made_edits.set_seating(s, how))
    looked_at(session, settled, qtbot)
    window.documents.exporter.write(tmp_path / "window")
    qtbot.waitUntil(lambda: (tmp_path / "window" / "fit.json").exists(), timeout=20_000)
    ours, theirs = (json.loads((tmp_path / where / "fit.json").read_text()) for where in ("window", "cli"))
    assert ours["fittings"][0]["orientations"]
    assert ours["fittings"][0]["bench"]["spots"]
    assert ours == theirs


def test_a_long_search_shows_how_far_it_is_and_cancel_stops_it_at_once(
    opened: Callable[..., MainWindow], qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    steps: list[int] = []

    def never_found(*_: object, progress: Progress, **__: object) -> Seat:
        for step in range(10_000):
            steps.append(step)
            progress.report(step / 10_000, "seat")
            time.sleep(0.005)
        pytest.fail("nobody stopped the search")

    window = opened(_pair())
    monkeypatch.setattr(seating, "seat", never_found)
    session, strip = window.session, window.strip
    asked = made_edits.give_plug(session.state, "o2").state
    session.do(lambda s: made_edits.give_plug(s, "o2"))
    qtbot.waitUntil(strip.cancel_button.isVisible, timeout=5_000)
    qtbot.waitUntil(lambda: "seat of the plug" in strip.message, timeout=5_000)
    strip.cancel_button.click()
    done = len(steps)
    qtbot.waitUntil(lambda: not session.solver.is_busy)
    assert len(steps) <= done + 1, "the search ends with the step it is at"
    qtbot.waitUntil(lambda: not strip.cancel_button.isVisible())
    assert session.state == asked
    assert [check.finding.code for check in window.work.checks][:1] == ["seat-not-searched"]
