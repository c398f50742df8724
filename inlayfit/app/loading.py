"""Loads what is heavy while the window is already looked at.

A window shows itself from a few light modules; numpy, shapely and all that stands on them take several times
as long as that to load. They are loaded in two ways at once, so that nothing freezes:

- what says nothing of Qt, on a thread of its own: first what the bench is made of; when that is there, what
  only reading, solving and writing need
- the parts of the window, on the window's thread as Qt wants it, one module each time it is idle; then the
  widgets that are made of them, a step each time

The lists name the slow ones; whatever else is needed follows as the ordinary imports of these.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from importlib import import_module

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from inlayfit.app import garbage
from inlayfit.app.tasks import LatestTask
from inlayfit.progress import Progress

FIRST = ("numpy", "shapely", "inlayfit.document.verdict", "inlayfit.document.journal")
"""What the bench needs and knows no Qt."""
PARTS = (
    "inlayfit.app.canvas.scene",
    "inlayfit.app.canvas.gap_map",
    "inlayfit.app.panels.spot_panel",
    "inlayfit.app.files.documents",
    "inlayfit.app.files.rereading",
    "inlayfit.app.work_page",
    "inlayfit.app.commands",
)
"""The parts of the window, each resting on those before it."""
LATER = (
    "inlayfit.fit.solve",
    "inlayfit.document.reading",
    "inlayfit.document.imports",
    "inlayfit.document.exports",
)
"""What the first drawing will need."""


_MADE = object()


class Loading(QObject):
    """Loads everything once, and takes the steps that make something of it.

    Signals:
        failed(error): a module cannot be loaded; the program is not complete.
    """

    failed = Signal(object)

    def __init__(self, making: Iterator[None], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._making = making
        self._parts = list(PARTS)
        self._thread = LatestTask(self)
        self._thread.finished.connect(self._on_thread_finished)
        self._thread.failed.connect(lambda _number, error: self.failed.emit(error))
        self._step = QTimer(self)
        self._step.setInterval(0)
        self._step.timeout.connect(self._on_step_timeout)

    def start(self) -> None:
        """Begin; nothing is waited for."""
        self._first = self._thread.submit(lambda progress: _load(FIRST, progress))

    def close(self) -> None:
        """Stop after the module that is being loaded, or the step that is being taken."""
        self._step.stop()
        self._thread.close()

    @Slot(int, object)
    def _on_thread_finished(self, number: int, _answer: object) -> None:
        if number == self._first:
            self._step.start()

    @Slot()
    def _on_step_timeout(self) -> None:
        try:
            if self._parts:
                import_module(self._parts.pop(0))
            elif next(self._making, _MADE) is _MADE:
                self._step.stop()
                self._thread.submit(lambda progress: _load(LATER, progress))
        except ImportError as error:
            self._step.stop()
            self.failed.emit(error)


def _load(modules: Sequence[str], progress: Progress) -> None:
    for module in modules:
        progress.raise_if_cancelled()
        import_module(module)
    garbage.keep()
