"""The window's entry: one program a person, settings, recovery, and the event loop.

The window is shown before anything heavy is loaded; recovery and files follow when its bench is there
(`inlayfit.app.window`).
"""

from __future__ import annotations

import signal
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import platformdirs
from PySide6.QtCore import QEvent, QLibraryInfo, QLocale, QObject, QSettings, Qt, QTimer, QTranslator
from PySide6.QtGui import QFileOpenEvent, QIcon
from PySide6.QtWidgets import QApplication

from inlayfit import __version__
from inlayfit.app import garbage, theme
from inlayfit.app.core_words import core
from inlayfit.app.running import may_be_running
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document.settings import Settings, read_settings, settings_file
from inlayfit.shipped import shipped_folder

if TYPE_CHECKING:  # what is heavy comes with the bench
    from inlayfit.app.bench import Bench
    from inlayfit.document.journal import Recovery
    from inlayfit.document.state import State

_SIGNAL_LOOK_MS = 500
SWITCH_S = 0.001
"""How long the solving thread may keep the interpreter while the window waits; Python's usual 5 ms show."""


class Program(QApplication):
    """The application: opens what the system asks for, keeps its windows."""

    def __init__(self, arguments: Sequence[str]) -> None:
        super().__init__([*arguments, *theme.STYLE])
        self.setApplicationName("inlayfit")
        self.setApplicationDisplayName("Inlayfit")
        self.setApplicationVersion(__version__)
        self.setDesktopFileName("inlayfit")
        icon = shipped_folder("resources") / "icons" / "inlayfit.svg"
        if icon.exists():
            self.setWindowIcon(QIcon(str(icon)))
        self.windows: list[MainWindow] = []

    def open_window(self, settings: Settings, *, first: bool = True, awaits: str = "") -> MainWindow:
        """Another window on a document of its own, the name of which is given if it is on its way."""
        session = Session(settings)
        window = MainWindow(session, keep=_placement() if first else None)
        session.setParent(window)
        window.when_ready(lambda bench: bench.keep_safe())
        if awaits:
            window.await_work(awaits)
        self.windows.append(window)
        window.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        window.destroyed.connect(lambda: self.windows.remove(window))
        window.show()
        return window

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QFileOpenEvent) and self.windows:
            self.take_files([Path(event.file())])
            return True
        return super().event(event)

    def take_files(self, files: Sequence[Path]) -> None:
        """A later start handed these over: show them, and the window."""
        if not self.windows:
            return
        window = self.windows[0]
        window.setWindowState(window.windowState() & ~Qt.WindowState.WindowMinimized)
        window.raise_()
        window.activateWindow()
        if files:
            window.when_ready(lambda bench: bench.documents.open_files(list(files)))


def _placement() -> QSettings:
    """Where the window's place and size are kept; nothing else is."""
    folder = Path(platformdirs.user_state_dir("inlayfit", appauthor=False))
    return QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat)


def run(files: Sequence[str]) -> int:
    """Open the window on files; answers the exit code. Hands over to a running program if there is one."""
    paths = [Path(name) for name in files]
    sys.setswitchinterval(SWITCH_S)
    program = Program(["inlayfit"])
    _leave_on_interrupt(program)
    if may_be_running() and _handed_over(paths):
        return 0
    settings, complaints = read_settings(settings_file())
    _translate(program, settings)
    window = program.open_window(settings, awaits=paths[0].name if paths else "")
    for complaint in complaints:
        window.notice.complain(core(complaint))
    window.first_painted.connect(lambda: _listen(program))
    window.when_ready(lambda _bench: garbage.settle())
    window.when_ready(lambda bench: _start_work(program, bench, settings, paths))
    return program.exec()


def _handed_over(paths: list[Path]) -> bool:
    """Whether a running program took the files; what talks to it is loaded only where there may be one."""
    from inlayfit.app.single_instance import hand_over

    return hand_over(paths)


def _listen(program: Program) -> None:
    """Take files from later starts; what listens is loaded when the window is on the screen."""
    from inlayfit.app.single_instance import Listener

    listener = Listener(parent=program)
    listener.files_given.connect(program.take_files)
    program.aboutToQuit.connect(listener.close)


def _start_work(program: Program, bench: Bench, settings: Settings, paths: list[Path]) -> None:
    """Offer recovery first, then open what was asked for."""
    for state, recovery in bench.offer_recovery():
        _show_both(program, settings, bench, state, recovery)
    if paths:
        bench.documents.open_files(paths, adds=not bench.session.state.is_empty)


def _show_both(program: Program, settings: Settings, bench: Bench, state: State, recovery: Recovery) -> None:
    """The saved project in the first window, the recovered work in a second."""
    if recovery.project is not None and recovery.project.exists():
        bench.documents.open_files([recovery.project])
    second = program.open_window(settings, first=False)
    second.when_ready(lambda its: its.documents.recover(state, recovery))


def _leave_on_interrupt(program: QObject) -> None:
    """Let Ctrl+C in the terminal end the program: Python needs a moment now and then to notice.

    It may notice anywhere, in the middle of an import too, so the windows are closed a turn later.
    """
    signal.signal(signal.SIGINT, lambda *_: QTimer.singleShot(0, QApplication.quit))
    look = QTimer(program)
    look.timeout.connect(lambda: None)
    look.start(_SIGNAL_LOOK_MS)


def _translate(program: QApplication, settings: Settings) -> None:
    """Load the words of the chosen language, ours and Qt's own."""
    wanted = settings.text("language")
    locale = QLocale() if wanted == "system" else QLocale(wanted)
    QLocale.setDefault(locale)
    folders = (
        ("qtbase", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)),
        ("inlayfit", str(shipped_folder("resources") / "translations")),
    )
    for name, folder in folders:
        translator = QTranslator(program)
        if translator.load(locale, name, "_", folder):
            program.installTranslator(translator)
