"""A hand on the fit ruler in real time, and a watch that counts what the window makes of it.

The *hand* is a thread of its own that posts mouse moves 125 times a second, none merged with the next,
which is harder on the window than any system makes it; the window's thread turns its event loop as in use.
Times are those at which the hand was to move, so a window that keeps it waiting is charged for that.

Terms
    frame: one pass of painting in the window, whatever it painted.
    answer: a solution that a frame showed on the map; each counts once.
    lag: from a move to the end of the first frame whose map shows the answer to it, or to a later one.
    follow: from a move to the end of the first frame in which the ruler's handle stands there, or further on.
    stall: how much later than due the clock of the event loop ticked.
    share: processor time of a stage in its own thread; the two threads share one interpreter.
"""

from __future__ import annotations

import threading
import time
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QPointF, Qt, QTimer, Slot
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QWidget

from inlayfit.app.session import Change, Session
from inlayfit.app.widgets.fit_ruler import FitRuler
from inlayfit.app.widgets.paint_ruler import band_rect, x_of
from inlayfit.app.window import MainWindow
from inlayfit.app.work_page import WorkPage
from inlayfit.document.state import State

HAND_HZ = 125
_TICK_MS = 5
_LOW_UM, _HIGH_UM = 5, 115


def swept(count: int, start_um: int) -> list[int]:
    """Micrometres of so many moves: up and down the middle of the ruler, one step a move."""
    values, value, step = [], start_um, 1
    for _ in range(count):
        if not _LOW_UM < value + step < _HIGH_UM:
            step = -step
        value += step
        values.append(value)
    return values


class Hand(threading.Thread):
    """Presses the handle, moves it, and releases it. `moves` are (time due, micrometres)."""

    def __init__(self, ruler: FitRuler, values_um: list[int], hz: float = HAND_HZ) -> None:
        super().__init__(name="hand")
        look = ruler._look()
        self._ruler = ruler
        self._y = band_rect(look).center().y()
        self._places = [x_of(look, um) for um in (ruler.value(), *values_um)]
        self._pause = 1 / hz
        begin = time.perf_counter() + 0.05
        self.moves = [(begin + k * self._pause, um) for k, um in enumerate(values_um)]

    def run(self) -> None:
        self._post(QEvent.Type.MouseButtonPress, self._places[0])
        for (due, _), x in zip(self.moves, self._places[1:], strict=True):
            time.sleep(max(0.0, due - time.perf_counter()))
            self._post(QEvent.Type.MouseMove, x)

    def release(self) -> None:
        """Let go, in the window's thread."""
        self._post(QEvent.Type.MouseButtonRelease, self._places[-1])

    def _post(self, kind: QEvent.Type, x: float) -> None:
        left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
        button = none if kind is QEvent.Type.MouseMove else left
        held = none if kind is QEvent.Type.MouseButtonRelease else left
        at = QPointF(x, self._y)
        event = QMouseEvent(kind, at, at, button, held, Qt.KeyboardModifier.NoModifier)
        QCoreApplication.postEvent(self._ruler, event)


@dataclass
class Stage:
    """What one stage took in all, in seconds."""

    calls: int = 0
    wall: float = 0.0
    own: float = 0.0


class Stages:
    """Adds up wall and processor time of named stages; a stage inside another counts in both."""

    def __init__(self) -> None:
        self.of: dict[str, Stage] = {}

    def clear(self) -> None:
        """Begin to add up again."""
        for stage in self.of.values():
            stage.calls, stage.wall, stage.own = 0, 0.0, 0.0

    def timed(self, name: str, work: Callable[..., Any]) -> Callable[..., Any]:
        """The same work, with its time added up."""
        stage = self.of.setdefault(name, Stage())

        def watched(*args: Any, **options: Any) -> Any:
            wall, own = time.perf_counter(), time.thread_time()
            try:
                return work(*args, **options)
            finally:
                stage.calls += 1
                stage.wall += time.perf_counter() - wall
                stage.own += time.thread_time() - own

        return watched


@dataclass
class Watch(QObject):
    """Counts frames and answers of a window, and notes when each move was shown.

    Attributes:
        shown: (time, moves whose answer is on the map, moves the handle made) at the end of each frame.
        frames, map_frames: how many passes painted anything, and how many painted the map.
        answers: distinct answers painted.
    """

    window: MainWindow
    stages: Stages
    asked_um: list[int]
    shown: list[tuple[float, int, int]] = field(default_factory=list)
    frames: int = 0
    map_frames: int = 0
    answers: int = 0
    _ticks: list[float] = field(default_factory=list)

    def __post_init__(self) -> None:
        super().__init__()
        self._painted: Counter[str] = Counter()
        self._last_answer: object = None
        self._moves = 0
        self._states: list[tuple[State, int]] = []
        self._map_moves = 0
        parts = {
            "map": self.window.work.map,
            "ruler": self.window.work.ruler.ruler,
            "loupe": self.window.work.spot.loupe,
            "legend": self.window.work.legend,
        }
        self._names = {id(part): name for name, part in parts.items()}
        self._watched: list[QWidget] = [self.window, *parts.values()]
        self._paints = {name: self.stages.timed(f"paint {name}", _sent) for name in parts}
        self._frame = self.stages.timed("frame", _sent)
        self._moved = self.stages.timed("move", _sent)
        self._clock = QTimer(self)
        self._clock.setTimerType(Qt.TimerType.PreciseTimer)
        self._clock.timeout.connect(lambda: self._ticks.append(time.perf_counter()))

    def start(self) -> None:
        for part in self._watched:
            part.installEventFilter(self)
        self.window.session.state_changed.connect(self._on_session_state_changed)
        self._ticks.append(time.perf_counter())
        self._clock.start(_TICK_MS)

    def stop(self) -> None:
        self._clock.stop()
        self.window.session.state_changed.disconnect(self._on_session_state_changed)
        self._ticks.append(time.perf_counter())
        for part in self._watched:
            part.removeEventFilter(self)

    @property
    def stall(self) -> float:
        """Seconds by which the latest tick of the loop's clock came late."""
        return float(np.diff(self._ticks).max()) - _TICK_MS / 1000

    def eventFilter(self, part: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        kind = event.type()
        if kind == QEvent.Type.UpdateRequest and part is self.window:
            self._painted.clear()
            self._frame(part, event)
            self._note_frame()
            return True
        name = self._names.get(id(part))
        if kind == QEvent.Type.Paint and name is not None:
            self._painted[name] += 1
            return bool(self._paints[name](part, event))
        if kind == QEvent.Type.MouseMove and name == "ruler":
            self._moves += 1
            self._moved(part, event)
            return True
        return False

    def _note_frame(self) -> None:
        if not self._painted:
            return
        self.frames += 1
        if self._painted["map"]:
            self.map_frames += 1
            solution = self.window.session.solution
            if solution is not self._last_answer:
                self._last_answer = solution
                self.answers += 1
            self._map_moves = self._moves_in(solution.state)
        self.shown.append((time.perf_counter(), self._map_moves, self._moves_made()))

    def _moves_made(self) -> int:
        """How many moves the handle has made."""
        value = self.window.work.ruler.ruler.value()
        made = self.shown[-1][2] if self.shown else 0
        for number in range(self._moves, made, -1):
            if self.asked_um[number - 1] == value:
                return number
        return made

    def _moves_in(self, state: State) -> int:
        """How many moves had been made when this state was shown first."""
        for shown, moves in reversed(self._states):
            if shown is state:
                return moves
        return self._map_moves

    @Slot(object)
    def _on_session_state_changed(self, change: Change) -> None:
        self._states.append((change.after, self._moves))


def _sent(part: QObject, event: QEvent) -> bool:
    part.event(event)
    return True


@dataclass(frozen=True)
class Account:
    """What a run came to. Rates a second, times in seconds."""

    seconds: float
    frames: float
    map_frames: float
    answers: float
    lags: np.ndarray[Any, Any]
    follows: np.ndarray[Any, Any]
    stall: float
    window_own: float
    worker_own: float
    stages: dict[str, Stage]

    def lines(self, title: str) -> Iterator[str]:
        """The table, ready to print."""
        yield f"{title}: {self.seconds:.2f} s"
        yield (
            f"  a second: frames {self.frames:.1f}, frames of the map {self.map_frames:.1f}, "
            f"answers {self.answers:.1f}"
        )
        for name, times in (("lag", self.lags), ("follow", self.follows)):
            low, high = (1000 * np.percentile(times, p) for p in (50, 95))
            yield f"  {name}: median {low:.0f} ms, p95 {high:.0f} ms, longest {1000 * times.max():.0f} ms"
        yield f"  stall {1000 * self.stall:.0f} ms"
        per = 1000 / max(1.0, self.answers * self.seconds)
        window, worker = per * self.window_own, per * self.worker_own
        yield f"  processor an answer: window {window:.1f} ms, worker {worker:.1f} ms"
        for name, stage in self.stages.items():
            if stage.calls:
                each = 1000 / stage.calls
                yield (
                    f"    {name:14} {stage.calls:5} calls, each {each * stage.own:6.2f} ms own, "
                    f"{each * stage.wall:6.2f} ms wall"
                )


def drag(
    window: MainWindow, hand: Hand, stages: Stages, turn: Callable[[Callable[[], bool]], None]
) -> Account:
    """Let the hand drag; `turn` turns the event loop until its argument says so. The gesture stays open."""
    watch = Watch(window, stages, [um for _, um in hand.moves])
    whole, own, begin = time.process_time(), time.thread_time(), time.perf_counter()
    watch.start()
    hand.start()
    count = len(hand.moves)
    turn(lambda: bool(watch.shown) and watch.shown[-1][1:] == (count, count))
    watch.stop()
    hand.join()
    seconds = time.perf_counter() - begin
    own, whole = time.thread_time() - own, time.process_time() - whole
    return Account(
        seconds=seconds,
        frames=watch.frames / seconds,
        map_frames=watch.map_frames / seconds,
        answers=watch.answers / seconds,
        lags=_waits(hand.moves, [(when, on_map) for when, on_map, _ in watch.shown]),
        follows=_waits(hand.moves, [(when, made) for when, _, made in watch.shown]),
        stall=watch.stall,
        window_own=own,
        worker_own=whole - own,
        stages=stages.of,
    )


def _waits(moves: list[tuple[float, int]], shown: list[tuple[float, int]]) -> np.ndarray[Any, Any]:
    """For each move, how long until a frame showed it or a later one."""
    waits: list[float] = []
    for when, upto in shown:
        waits += [when - due for due, _ in moves[len(waits) : upto]]
    return np.array(waits)


@contextmanager
def staged(stages: Stages) -> Iterator[None]:
    """Watch the stages of a frame, wherever they are called from."""
    import inlayfit.app.answers.solving as solving_module
    import inlayfit.app.canvas.gap_map as gap_map_module
    import inlayfit.app.canvas.layer_cache as cache_module
    import inlayfit.fit.solve as solve_module
    from inlayfit.app.canvas.layer_cache import LayerCache

    places: tuple[tuple[Any, str, str], ...] = (
        (solve_module, "solve", "w: solve"),
        (solve_module, "gap_map", "w: gap map"),
        (solving_module, "picture_of", "w: scene"),
        (Session, "_take", "take answer"),
        (WorkPage, "_show_results", "panels"),
        (cache_module, "build_picture", "build picture"),
        (LayerCache, "_repaint", "paint layer"),
        (gap_map_module, "paint_annotations", "annotations"),
    )
    kept = [(owner, name, getattr(owner, name)) for owner, name, _ in places]
    for owner, name, stage in places:
        setattr(owner, name, stages.timed(stage, getattr(owner, name)))
    try:
        yield
    finally:
        for owner, name, work in kept:
            setattr(owner, name, work)
