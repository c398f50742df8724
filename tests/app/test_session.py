from __future__ import annotations

import gc
import random
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from pytestqt.qtbot import QtBot

from inlayfit.app.session import Change, Session
from inlayfit.document import edits
from inlayfit.document.edits import Edit, set_clearance
from inlayfit.document.state import HalfName, State
from inlayfit.fit.feel import Feel
from inlayfit.fit.spec import Half, HalfState, Relief
from inlayfit.units import Unit
from tests.app.conftest import discs

Settled = Callable[[Session], None]


def _random_edit(rng: random.Random, state: State) -> Edit:
    half = rng.choice(list(Half))
    choices: list[Callable[[], Edit]] = [
        lambda: edits.set_clearance(state, rng.randint(-50, 150) / 1000),
        lambda: edits.set_feel(state, rng.choice(list(Feel))),
        lambda: edits.set_cutter(state, half, rng.randint(5, 60) / 10),
        lambda: edits.set_half_state(state, half, rng.choice(list(HalfState))),
        lambda: edits.set_relief(state, half, rng.choice(list(Relief))),
        lambda: edits.set_finishing_allowance(state, rng.randint(0, 5) / 10),
        lambda: edits.name_half(state, half, HalfName(f"part {rng.randint(0, 9)}", "copper")),
        lambda: edits.set_unit(state, rng.choice([Unit.MM, Unit.INCH, Unit.THOU])),
        lambda: edits.choose(state, rng.sample([o.id for o in state.outlines], rng.randint(0, 2))),
        lambda: edits.rename_outline(state, "o1", f"disc {rng.randint(0, 99)}"),
    ]
    return rng.choice(choices)()


def test_two_hundred_edits_undo_to_an_equal_document_and_redo_again(session: Session) -> None:
    """The states on the way back are those on the way there, one by one."""
    rng = random.Random(11)
    session.start(discs(3))
    states = [session.state]
    while len(states) <= 200:
        session.perform(_random_edit(rng, session.state))
        if session.state is not states[-1]:
            states.append(session.state)
    assert len(session.history.done) == 200
    for before in reversed(states[:-1]):
        session.undo()
        assert session.state == before
    for after in states[1:]:
        session.redo()
        assert session.state == after


def test_a_gesture_is_one_step_whatever_it_passed_through(session: Session, settled: Settled) -> None:
    session.start(discs())
    start = session.state
    for um in range(30, 90, 7):
        session.preview(edits.set_clearance(session.state, um / 1000))
        assert session.state is start
        assert session.shown.fitting("o0").spec.clearance_mm == um / 1000
    session.finish_gesture(edits.set_clearance(session.state, 0.086))
    settled(session)
    assert len(session.history.done) == 1
    assert session.history.done[-1].text == "Set clearance to 0.086 mm per side"
    session.undo()
    assert session.state == start


def test_a_cancelled_gesture_leaves_no_trace(session: Session, settled: Settled) -> None:
    session.start(discs())
    settled(session)
    start, answer = session.state, session.solution.lead
    session.preview(edits.set_clearance(session.state, 0.09))
    session.cancel_gesture()
    settled(session)
    assert session.shown is start
    assert len(session.history.done) == 0
    assert session.solution.lead is answer


def test_a_gesture_that_ends_where_it_began_is_no_step(session: Session) -> None:
    session.start(discs())
    session.preview(edits.set_clearance(session.state, 0.09))
    session.finish_gesture(edits.set_clearance(session.state, 0.03))
    assert len(session.history.done) == 0
    assert not session.is_modified


def test_the_answer_is_exact_in_the_end_and_for_what_is_shown(session: Session, settled: Settled) -> None:
    session.start(discs())
    for um in range(20, 120, 3):
        session.preview(edits.set_clearance(session.state, um / 1000))
    session.finish_gesture(edits.set_clearance(session.state, 0.1))
    settled(session)
    lead = session.solution.lead
    assert lead is not None
    assert not session.solution.is_preview
    assert lead.spec.clearance_mm == 0.1
    assert abs(lead.gap.min_mm - 0.1) < 0.0005  # a circle of 25 mm at c gives a plug of 25 − 2c


def test_a_preview_answer_is_marked_and_stale(session: Session, qtbot: QtBot, settled: Settled) -> None:
    session.start(discs())
    settled(session)
    with qtbot.waitSignal(session.solved):
        session.preview(edits.set_clearance(session.state, 0.07))
    assert session.solution.is_preview
    assert session.is_stale
    session.cancel_gesture()
    settled(session)


def test_only_what_changed_is_solved_anew(session: Session, settled: Settled) -> None:
    session.start(discs(2))
    session.do(lambda s: edits.choose(s, ["o0", "o1"]))
    settled(session)
    other = session.solution.solved["o1"]
    session.do(lambda s: edits.choose(s, ["o0"]))
    session.do(lambda s: edits.set_clearance(s, 0.08))
    session.do(lambda s: edits.choose(s, ["o0", "o1"]))
    settled(session)
    assert session.solution.solved["o1"] is other


def test_a_refused_edit_changes_nothing_and_says_why(session: Session, qtbot: QtBot) -> None:
    session.start(discs())
    start = session.state
    with qtbot.waitSignal(session.refused) as said:
        assert not session.do(lambda s: edits.set_finishing_allowance(s, -1.0))
    assert session.state is start
    assert isinstance(said.args, list)
    assert "cannot be negative" in said.args[0]


def test_changes_say_who_asked(session: Session) -> None:
    session.start(discs())
    heard: list[Change] = []
    session.state_changed.connect(heard.append)
    me = object()
    session.do(lambda s: edits.set_clearance(s, 0.05), initiator=me)
    session.undo()
    assert [change.initiator for change in heard] == [me, None]


def test_two_halves_that_are_both_made_are_a_problem_not_a_crash(session: Session, settled: Settled) -> None:
    session.start(discs())
    session.do(lambda s: edits.set_half_state(s, Half.PLUG, HalfState.ALREADY_CUT))
    session.do(lambda s: edits.set_half_state(s, Half.POCKET, HalfState.ALREADY_CUT))
    settled(session)
    assert "both" in session.solution.solved["o0"].problem.lower()


def test_saving_marks_clean_and_undo_marks_dirty_again(session: Session) -> None:
    session.start(discs())
    session.do(lambda s: edits.set_clearance(s, 0.05))
    assert session.is_modified
    session.mark_saved(Path("tray.inlayfit"))
    assert (session.is_modified, session.title) == (False, "tray")
    session.undo()
    assert (session.is_modified, session.title) == (True, "tray")


def test_a_preview_has_its_roughing_pass_only_if_that_is_looked_at(session: Session, qtbot: QtBot) -> None:
    allowed = replace(discs(1).fittings[0].spec.plug, finishing_allowance_mm=0.2)
    start = discs(1)
    spec = replace(start.fittings[0].spec, plug=allowed)
    session.start(replace(start, fittings=(replace(start.fittings[0], spec=spec),)))
    qtbot.waitUntil(lambda: not session.is_stale, timeout=20_000)
    exact = session.solution.lead
    assert exact is not None
    assert exact.plug.rough is not None
    for number, looked_at in enumerate((False, True)):
        session.preview_passes(looked_at)
        with qtbot.waitSignal(session.solved, timeout=20_000):
            session.preview(set_clearance(session.state, 0.04 + 0.01 * number))
        preview = session.solution.lead
        assert preview is not None
        assert session.solution.is_preview
        assert (preview.plug.rough is not None) is looked_at
    session.cancel_gesture()


def test_no_garbage_is_searched_during_a_gesture_and_again_after_it(session: Session, qtbot: QtBot) -> None:
    session.start(discs(1))
    frozen = gc.get_freeze_count()
    ends: tuple[Callable[[], None], ...] = (
        session.cancel_gesture,
        lambda: session.finish_gesture(set_clearance(session.state, 0.05)),
        session.close,
    )
    for end in ends:
        qtbot.waitUntil(gc.isenabled)
        for clearance in (0.06, 0.07):
            session.preview(set_clearance(session.state, clearance))
            assert not gc.isenabled()
        end()
    assert gc.isenabled()
    assert gc.get_freeze_count() == frozen


def test_a_preview_of_the_clearance_is_known_as_such(session: Session) -> None:
    session.start(discs(2))
    changes: list[Change] = []
    session.state_changed.connect(changes.append)
    for edit in (
        set_clearance(session.state, 0.04),
        set_clearance(session.state, 0.05),
        edits.set_cutter(session.state, Half.PLUG, 1.0),
        edits.choose(session.state, ["o1"]),
    ):
        session.preview(edit)
    session.cancel_gesture()
    assert [change.is_of_clearance for change in changes] == [True, True, False, False, False]
