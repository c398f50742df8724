"""Work off the window's thread: the newest request wins.

`LatestTask.submit` starts pure work on a thread of its own. A newer request cancels the one that runs and
drops the one that waits; answers come back on the window's thread, in order, and never from a request
that a newer one has overtaken. A *patient* request lets the running one finish first and takes the
waiting place: a picture that follows a slider then always moves, however fast the hand is.

While any work runs no garbage is searched (`garbage`).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any, TypeAlias

from PySide6.QtCore import QObject, QRunnable, Qt, QThreadPool, Signal, Slot

from inlayfit.app.core_words import core
from inlayfit.app.garbage import Hold
from inlayfit.errors import Cancelled
from inlayfit.progress import Progress
from inlayfit.wording import Worded

Work: TypeAlias = Callable[[Progress], Any]


class _Post(QObject):
    """Carries answers from the working thread to the window's."""

    reported = Signal(int, float, str)
    ended = Signal(int, object, object)


@dataclass(eq=False)
class _Request:
    number: int
    work: Work
    progress: Progress = field(default_factory=Progress)


class _Run(QRunnable):
    def __init__(self, request: _Request, post: _Post) -> None:
        super().__init__()
        self._request = request
        self._post = post

    def run(self) -> None:
        answer, error = None, None
        try:
            self._request.progress.raise_if_cancelled()
            answer = self._request.work(self._request.progress)
        except Exception as caught:  # noqa: BLE001 - delivered to the window's thread, which shows it
            error = caught
        self._post.ended.emit(self._request.number, answer, error)


class LatestTask(QObject):
    """One line of work. See the module docstring.

    Signals:
        finished(number, answer): the work of that request ended well.
        failed(number, error): it raised; a cancelled request says nothing.
        progressed(number, fraction, note): how far it is.
        busy_changed(busy): whether anything runs or waits.
    """

    finished = Signal(int, object)
    failed = Signal(int, object)
    progressed = Signal(int, float, str)
    busy_changed = Signal(bool)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._post = _Post(self)
        self._post.ended.connect(self._on_post_ended, Qt.ConnectionType.QueuedConnection)
        self._post.reported.connect(self._on_post_reported, Qt.ConnectionType.QueuedConnection)
        self._last_number = 0
        self._running: _Request | None = None
        self._waiting: _Request | None = None
        self._closed = False
        self._hold = Hold()
        self.destroyed.connect(self._hold.end)

    @property
    def is_busy(self) -> bool:
        """Whether a request runs or waits."""
        return self._running is not None

    def submit(self, work: Work, *, patient: bool = False) -> int:
        """Ask for work; answers the request's number, higher for each request."""
        self._last_number += 1
        number = self._last_number
        request = _Request(number, work)
        request.progress = Progress(lambda part, note: self._post.reported.emit(number, part, _note(note)))
        if self._closed:
            return number
        if self._running is None:
            self._start(request)
            self.busy_changed.emit(True)
            return number
        self._waiting = request
        if not patient:
            self._running.progress.cancel()
        return number

    def cancel(self) -> None:
        """Stop what runs and drop what waits; neither answers."""
        self._waiting = None
        if self._running is not None:
            self._running.progress.cancel()

    def finish(self) -> None:
        """Let what runs end, then stop for good; it does not answer any more."""
        self._waiting = None
        self._pool.waitForDone()
        self.close()

    def close(self) -> None:
        """Stop for good and wait until the thread is free."""
        self._closed = True
        self.cancel()
        self._pool.waitForDone()
        self._running = None
        self._hold.end()

    def _start(self, request: _Request) -> None:
        self._running = request
        self._hold.begin()
        self._pool.start(_Run(request, self._post))

    @Slot(int, float, str)
    def _on_post_reported(self, number: int, fraction: float, note: str) -> None:
        if self._running is not None and self._running.number == number:
            self.progressed.emit(number, fraction, note)

    @Slot(int, object, object)
    def _on_post_ended(self, number: int, answer: object, error: Exception | None) -> None:
        ended = self._running
        if self._closed or ended is None or ended.number != number:
            return
        self._running = None
        waiting, self._waiting = self._waiting, None
        if waiting is not None:
            self._start(waiting)
        else:
            self._hold.end()
        self._deliver(ended, answer, error)
        if self._running is None:
            self.busy_changed.emit(False)

    def _deliver(self, ended: _Request, answer: object, error: Exception | None) -> None:
        if ended.progress.cancelled or isinstance(error, Cancelled):
            return
        if error is not None:
            self.failed.emit(ended.number, error)
        else:
            self.finished.emit(ended.number, answer)


def _note(note: str) -> str:
    """What the work does now, in the window's language; a name stays."""
    return core(note) if isinstance(note, Worded) else note
