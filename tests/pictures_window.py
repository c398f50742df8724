"""Pictures of the window for people: the README's screenshots, and every theme and page to look at.

Run it by hand, it is no test:

    python tests/pictures_window.py                 the pictures of the README, into resources/
    python tests/pictures_window.py --all DIR       all themes and pages into a folder

Pictures of whole windows are looked at, never compared.
"""

from __future__ import annotations

import argparse
import os
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("QT_SCALE_FACTOR", "1.5")

import numpy as np
from PySide6.QtCore import QCoreApplication, QEvent, Qt, QTimer
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QWidget

from inlayfit.app.session import Session
from inlayfit.app.theme import STYLE
from inlayfit.app.window import MainWindow
from inlayfit.document import edits
from inlayfit.document.made_edits import set_workshop
from inlayfit.document.settings import Settings
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.spec import Half, Relief

RESOURCES = Path(__file__).resolve().parent.parent / "resources"
PATIENCE_S = 60
SIZE = (1440, 900)
THEMES = ("light", "dark", "high-contrast", "high-contrast-white")
DIALOGS = ("export", "settings", "reading", "type_size", "measured", "guide", "shortcuts", "about")


def settle(app: QApplication, done: Callable[[], bool] = lambda: True) -> None:
    """Run the event loop until something is so, and a moment longer for the painting."""
    limit = time.monotonic() + PATIENCE_S
    while not done() and time.monotonic() < limit:
        app.processEvents()
        time.sleep(0.005)
    for _ in range(20):
        app.processEvents()
        time.sleep(0.005)


@contextmanager
def window_of(app: QApplication, theme: str) -> Iterator[MainWindow]:
    """A window on an empty bench that leaves nothing behind; it ends before the next one opens."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        session = Session(Settings().with_value("theme", theme))
        window = MainWindow(session, recent=folder / "recent.json", settings_file=folder / "settings.json")
        session.setParent(window)
        window.resize(*SIZE)
        window.show()
        settle(app)
        yield window
        session.mark_saved(folder / "pictures.inlayfit")  # so that nobody is asked
        window.documents.close()
        session.close()
        window.close()
        window.deleteLater()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def open_sample(app: QApplication, window: MainWindow, *, relieved: bool) -> None:
    """Open the sample, its one check mended if asked, and wait until all is known of it."""
    window.documents.open_sample()
    if relieved:
        window.session.do(lambda state: edits.set_relief(state, Half.PLUG, Relief.DOG_BONE))
    settle(app, lambda: not window.session.is_stale)
    settle(app, lambda: not window.session.examiner.is_busy)
    window.work.map.clearFocus()


def keep(widget: QWidget, path: Path) -> None:
    """Write what a widget looks like in its 256 commonest colours, which is a quarter of the size."""
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    pixels = np.frombuffer(image.constBits(), np.uint32)
    colours, counts = np.unique(pixels, return_counts=True)
    commonest = [int(colour) for colour in colours[np.argsort(counts)[::-1][:256]]]
    nearest = Qt.ImageConversionFlag.ThresholdDither
    image.convertToFormat(QImage.Format.Format_Indexed8, commonest, nearest).save(str(path), quality=0)


def take_all(app: QApplication, folder: Path) -> None:
    """Every theme, every page and dialog, a small window, and the empty one."""
    folder.mkdir(parents=True, exist_ok=True)
    for theme in THEMES:
        with window_of(app, theme) as window:
            keep(window, folder / f"{theme}-empty.png")
            open_sample(app, window, relieved=False)
            work = window.work
            for name, page in (
                ("checks", work.checks_panel),
                ("outlines", work.outlines),
                ("workshop", work.workshop_page),
                ("spot", work.spot),
            ):
                work.side.show_page(page)
                settle(app)
                keep(window, folder / f"{theme}-{name}.png")
            for name in DIALOGS:
                take_dialog(app, window, name, folder / f"{theme}-{name}.png")
            window.resize(1100, 700)
            settle(app)
            keep(window, folder / f"{theme}-small.png")


def take_dialog(app: QApplication, window: MainWindow, name: str, path: Path) -> None:
    """The page that a command opens over the window, whether the command waits for its answer or not."""

    def take() -> None:
        for page in [w for w in app.topLevelWidgets() if w.isVisible() and w is not window]:
            keep(page, path)
            page.close()

    path.unlink(missing_ok=True)
    QTimer.singleShot(500, take)
    window.actions_by_name[name].trigger()
    settle(app, path.exists)


def take_for_readme(app: QApplication) -> None:
    """The window, and the page of the workshop with the errors of a small machine, which are invented."""
    with window_of(app, "light") as window:
        open_sample(app, window, relieved=True)
        keep(window, RESOURCES / "screenshot.png")
        errors = MachineErrors(cutter_varies_mm=0.01, runout_mm=0.02, repeatability_mm=0.04)
        window.session.do(lambda state: set_workshop(state, WorkshopNumbers(errors)))
        window.work.side.show_page(window.work.workshop_page)
        window.resize(SIZE[0], 1030)
        settle(app, lambda: not window.session.examiner.is_busy and not window.session.is_stale)
        settle(app)
        keep(window.work.side, RESOURCES / "workshop.png")


def main() -> None:
    """Take the pictures asked for."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--all", type=Path, metavar="DIR")
    asked = parser.parse_args()
    app = QApplication(["pictures", *STYLE])
    if asked.all is not None:
        take_all(app, asked.all)
    else:
        take_for_readme(app)


if __name__ == "__main__":
    main()
