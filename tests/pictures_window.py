"""Pictures of the window for people: the README's screenshot, and every theme and page to look at.

Run it by hand, it is no test:

    python tests/pictures_window.py                 resources/screenshot.png
    python tests/pictures_window.py --all DIR       all themes and pages into a folder

Pictures of whole windows are looked at, never compared.
"""

from __future__ import annotations

import argparse
import os
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("QT_SCALE_FACTOR", "1.5")

from PySide6.QtWidgets import QApplication

from inlayfit.app.session import Session
from inlayfit.app.theme import STYLE
from inlayfit.app.window import MainWindow
from inlayfit.document import edits
from inlayfit.document.settings import Settings
from inlayfit.fit.spec import Half, Relief
from inlayfit.shipped import shipped_folder

PATIENCE_S = 60
SIZE = (1440, 900)


def settle(app: QApplication, done: Callable[[], bool]) -> None:
    """Run the event loop until something is so, and a moment longer for the painting."""
    limit = time.monotonic() + PATIENCE_S
    while not done() and time.monotonic() < limit:
        app.processEvents()
        time.sleep(0.005)
    for _ in range(20):
        app.processEvents()
        time.sleep(0.005)


def window_on_sample(app: QApplication, theme: str, *, relieved: bool = True) -> MainWindow:
    """A window with the sample; its one check mended if asked."""
    settings = Settings().with_value("theme", theme)
    folder = Path(tempfile.mkdtemp())
    window = MainWindow(
        Session(settings), recent=folder / "recent.json", settings_file=folder / "settings.json"
    )
    window.resize(*SIZE)
    window.show()
    window.documents.open_sample()
    if relieved:
        window.session.do(lambda state: edits.set_relief(state, Half.PLUG, Relief.DOG_BONE))
    settle(app, lambda: not window.session.is_stale)
    return window


def close(window: MainWindow) -> None:
    """Stop its work."""
    window.documents.close()
    window.session.close()
    window.hide()


def take_all(app: QApplication, folder: Path) -> None:
    """Every theme, every page, a small window, and the empty one."""
    folder.mkdir(parents=True, exist_ok=True)
    for theme in ("light", "dark", "high-contrast"):
        window = window_on_sample(app, theme, relieved=False)
        work = window.work
        for name, page in (
            ("spot", work.spot), ("checks", work.checks_panel), ("outlines", work.outlines)
        ):  # fmt: skip
            work.side.show_page(page)
            settle(app, lambda: True)
            window.grab().save(str(folder / f"{theme}-{name}.png"))
        window.resize(1100, 700)
        settle(app, lambda: True)
        window.grab().save(str(folder / f"{theme}-small.png"))
        close(window)
        empty = MainWindow(Session(Settings().with_value("theme", theme)), recent=folder / "none.json")
        empty.resize(*SIZE)
        empty.show()
        settle(app, lambda: True)
        empty.grab().save(str(folder / f"{theme}-empty.png"))
        close(empty)


def main() -> None:
    """Take the pictures asked for."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--all", type=Path, metavar="DIR")
    asked = parser.parse_args()
    app = QApplication(["pictures", *STYLE])
    if asked.all is not None:
        take_all(app, asked.all)
        return
    window = window_on_sample(app, "light")
    window.work.map.clearFocus()
    settle(app, lambda: True)
    window.grab().save(str(shipped_folder("resources") / "screenshot.png"))
    close(window)


if __name__ == "__main__":
    main()
