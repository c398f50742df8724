from __future__ import annotations

import gc
import threading
from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from inlayfit.app.tasks import LatestTask
from inlayfit.progress import Progress


@pytest.fixture
def task(qtbot: QtBot) -> Iterator[LatestTask]:
    made = LatestTask()
    yield made
    made.close()


class Gate:
    """Work that waits to be let through, and notes what became of it."""

    def __init__(self, answer: object) -> None:
        self.answer = answer
        self.started = threading.Event()
        self.opened = threading.Event()
        self.thread: threading.Thread | None = None

    def __call__(self, progress: Progress) -> object:
        self.thread = threading.current_thread()
        self.started.set()
        while not self.opened.wait(0.002):
            progress.raise_if_cancelled()
        return self.answer


def collect(task: LatestTask) -> list[object]:
    answers: list[object] = []
    task.finished.connect(lambda _number, answer: answers.append(answer))
    task.failed.connect(lambda _number, error: answers.append(error))
    return answers


def test_an_answer_comes_back_on_the_thread_that_asked(task: LatestTask, qtbot: QtBot) -> None:
    heard: list[threading.Thread] = []
    task.finished.connect(lambda *_: heard.append(threading.current_thread()))
    with qtbot.waitSignal(task.finished) as done:
        task.submit(lambda _p: threading.current_thread())
    assert heard == [threading.main_thread()]
    assert isinstance(done.args, list)
    assert done.args[0] == 1
    assert done.args[1] is not threading.main_thread()


def test_a_newer_request_stops_the_older_which_says_nothing(task: LatestTask, qtbot: QtBot) -> None:
    answers, old, new = collect(task), Gate("old"), Gate("new")
    task.submit(old)
    assert old.started.wait(5)
    task.submit(new)
    new.opened.set()
    qtbot.waitUntil(lambda: answers == ["new"])
    qtbot.wait(20)
    assert answers == ["new"]


def test_of_many_waiting_only_the_last_is_worked(task: LatestTask, qtbot: QtBot) -> None:
    answers = collect(task)
    gates = [Gate(n) for n in range(6)]
    for gate in gates:
        task.submit(gate)
    gates[-1].opened.set()
    qtbot.waitUntil(lambda: answers == [5])
    assert not any(gate.started.is_set() for gate in gates[1:-1])


def test_a_patient_request_lets_the_running_one_answer(task: LatestTask, qtbot: QtBot) -> None:
    answers, first, second, third = collect(task), Gate(1), Gate(2), Gate(3)
    task.submit(first)
    assert first.started.wait(5)
    task.submit(second, patient=True)
    task.submit(third, patient=True)
    first.opened.set()
    third.opened.set()
    qtbot.waitUntil(lambda: answers == [1, 3])


def test_an_error_is_delivered_and_the_next_request_works(task: LatestTask, qtbot: QtBot) -> None:
    def fail(_progress: Progress) -> None:
        raise RuntimeError("broken")

    with qtbot.waitSignal(task.failed) as failed:
        task.submit(fail)
    assert isinstance(failed.args, list)
    assert str(failed.args[1]) == "broken"
    with qtbot.waitSignal(task.finished):
        task.submit(lambda _p: None)
    assert not task.is_busy


def test_cancelling_is_silent_and_quick(task: LatestTask, qtbot: QtBot) -> None:
    answers, gate = collect(task), Gate("never")
    task.submit(gate)
    assert gate.started.wait(5)
    with qtbot.waitSignal(task.busy_changed, timeout=1000) as idle:
        task.cancel()
    assert idle.args == [False]
    assert answers == []


def test_closing_waits_and_later_requests_are_dropped(qtbot: QtBot) -> None:
    task = LatestTask()
    answers, gate = collect(task), Gate("never")
    task.submit(gate)
    assert gate.started.wait(5)
    task.close()
    task.submit(lambda _p: "late")
    qtbot.wait(20)
    assert answers == []
    assert not task.is_busy


def test_busy_is_said_once_when_it_begins_and_once_when_it_ends(task: LatestTask, qtbot: QtBot) -> None:
    said: list[bool] = []
    task.busy_changed.connect(said.append)
    gates = [Gate(n) for n in range(3)]
    for gate in gates:
        task.submit(gate, patient=True)
        gate.opened.set()
    qtbot.waitUntil(lambda: not task.is_busy)
    assert said == [True, False]


def test_progress_of_the_running_request_is_passed_on(task: LatestTask, qtbot: QtBot) -> None:
    heard: list[tuple[float, str]] = []
    task.progressed.connect(lambda _n, part, note: heard.append((part, note)))

    def steps(progress: Progress) -> None:
        progress.report(0.25, "a")
        progress.report(0.5, "b")

    with qtbot.waitSignal(task.finished):
        task.submit(steps)
    assert heard == [(0.25, "a"), (0.5, "b")]


class Knot:
    """Garbage that only a search can find."""

    def __init__(self) -> None:
        self.other = self


def test_garbage_is_never_searched_by_a_working_thread(task: LatestTask, qtbot: QtBot) -> None:
    """What belongs to Qt may be garbage, and ending it in another thread ends the program."""
    searched: set[int] = set()

    def note(phase: str, _info: dict[str, int]) -> None:
        searched.add(threading.get_ident())

    def litter(_progress: Progress) -> int:
        return len([Knot() for _ in range(20_000)])

    gc.callbacks.append(note)
    try:
        with qtbot.waitSignal(task.finished):
            task.submit(litter)
        qtbot.waitUntil(lambda: not task.is_busy)
        assert [Knot() for _ in range(20_000)]
    finally:
        gc.callbacks.remove(note)
    assert searched == {threading.get_ident()}


def test_garbage_is_searched_again_once_all_work_has_ended(qtbot: QtBot) -> None:
    tasks = [LatestTask(), LatestTask(), LatestTask()]
    gates = [Gate(n) for n in range(3)]
    for task, gate in zip(tasks, gates, strict=True):
        task.submit(gate)
        task.submit(gate, patient=True)
        assert gate.started.wait(5)
        assert not gc.isenabled()
    for number, (task, gate) in enumerate(zip(tasks, gates, strict=True)):
        with qtbot.waitSignal(task.busy_changed):
            gate.opened.set()
        assert gc.isenabled() is (number == 2)
    lost = LatestTask()
    lost.submit(lambda _p: None)
    lost.deleteLater()
    qtbot.waitUntil(gc.isenabled)
    for task in tasks:
        task.close()


def test_what_is_asked_for_is_done_before_a_task_is_finished(task: LatestTask) -> None:
    """Even if its thread had no time to begin."""
    done: list[bool] = []
    task.submit(lambda _progress: done.append(True))
    task.finish()
    assert done == [True]
    task.submit(lambda _progress: done.append(False))
    task.finish()
    assert done == [True]
