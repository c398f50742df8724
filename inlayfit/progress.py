"""Progress and cancellation for long work, without threads of its own.

Long work takes a `Progress`, reports now and then, and asks at every loop, region and stage boundary
whether it should stop. One GEOS call cannot be interrupted, so those boundaries are what makes
*Cancel* quick.
"""

from __future__ import annotations

from collections.abc import Callable
from threading import Event

from inlayfit.errors import Cancelled
from inlayfit.wording import Worded


class Progress:
    """What long work reports to. Safe to cancel from another thread."""

    def __init__(self, report: Callable[[float, str], None] | None = None) -> None:
        self._report = report
        self._cancelled = Event()

    def cancel(self) -> None:
        """Ask the work to stop at its next boundary."""
        self._cancelled.set()

    @property
    def cancelled(self) -> bool:
        """Whether the work was asked to stop."""
        return self._cancelled.is_set()

    def raise_if_cancelled(self) -> None:
        """Raise `Cancelled` if the work was asked to stop."""
        if self._cancelled.is_set():
            raise Cancelled(Worded("The work was stopped; nothing was changed."))

    def report(self, fraction: float, note: str = "") -> None:
        """Say how far the work is (0 to 1) and what it does now; stops the work if asked to."""
        self.raise_if_cancelled()
        if self._report is not None:
            self._report(fraction, note)


def unwatched() -> Progress:
    """A progress that nobody watches and nobody cancels."""
    return Progress()
