"""Work that follows a hand, but no faster than an eye can read."""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtCore import QObject, Qt, QTimer

READING_MS = 100
"""Words and numbers that change more often than ten times a second cannot be read (common practice)."""

FRAME_MS = 15
"""A little less than a frame of a screen that shows sixty a second."""


class Pace(QObject):
    """Does its work at most once in a while, and always once more after the last time it was asked."""

    def __init__(self, work: Callable[[], object], *, every_ms: int = READING_MS, parent: QObject) -> None:
        super().__init__(parent)
        self._work = work
        self._every = every_ms / 1000
        self._last = -self._every
        self._clock = QTimer(self)
        self._clock.setSingleShot(True)
        self._clock.setTimerType(Qt.TimerType.PreciseTimer)
        self._clock.timeout.connect(self.now)

    def ask(self) -> None:
        """Do it now if it was not done for long enough, else as soon as it will have been."""
        if self._clock.isActive():
            return
        rest = self._last + self._every - time.monotonic()
        if rest <= 0:
            self.now()
        else:
            self._clock.start(round(1000 * rest))

    def now(self) -> None:
        """Do it now; what was asked for before is done with it."""
        self._clock.stop()
        self._last = time.monotonic()
        self._work()
