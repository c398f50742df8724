"""The window's entry: one program a person, settings, recovery, and the event loop."""

from __future__ import annotations

import signal
import sys
from collections.abc import Sequence
from pathlib import Path

import platformdirs
from PySide6.QtCore import QEvent, QLibraryInfo, QLocale, QObject, QSettings, Qt, QTimer, QTranslator
from PySide6.QtGui import QCloseEvent, QFileOpenEvent, QIcon
from PySide6.QtWidgets import QApplication

from inlayfit import __version__
from inlayfit.app.autosave import Autosave
from inlayfit.app.session import Session
from inlayfit.app.single_instance import Listener, hand_over
from inlayfit.app.window import MainWindow
from inlayfit.document.journal import Journal, Recovery, left_behind
from inlayfit.document.settings import Settings, read_settings, settings_file
from inlayfit.document.state import State
from inlayfit.errors import InlayfitError
from inlayfit.shipped import shipped_folder

_SIGNAL_LOOK_MS = 500
_WARM_UP_MS = 150
_SWITCH_S = 0.001
"""How long the solving thread may keep the interpreter while the window waits; Python's usual 5 ms show."""


class Program(QApplication):
    """The application: opens what the system asks for, keeps its windows."""

    def __init__(self, arguments: Sequence[str]) -> None:
        super().__init__(list(arguments))
        self.setApplicationName("inlayfit")
        self.setApplicationDisplayName("Inlayfit")
        self.setApplicationVersion(__version__)
        self.setDesktopFileName("inlayfit")
        icon = shipped_folder("resources") / "icons" / "inlayfit.svg"
        if icon.exists():
            self.setWindowIcon(QIcon(str(icon)))
        self.windows: list[BenchWindow] = []

    def open_window(self, settings: Settings, *, first: bool = True) -> BenchWindow:
        """Another window on a document of its own."""
        window = BenchWindow(settings, keeps_placement=first)
        self.windows.append(window)
        window.destroyed.connect(lambda: self._forget(window))
        window.show()
        return window

    def _forget(self, window: BenchWindow) -> None:
        if window in self.windows:
            self.windows.remove(window)

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QFileOpenEvent) and self.windows:
            self.windows[0].documents.open_files([Path(event.file())])
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
            window.documents.open_files(list(files))


class BenchWindow(MainWindow):
    """A window with its own session, recovery copy and placement."""

    def __init__(self, settings: Settings, *, keeps_placement: bool = True) -> None:
        keep = _placement() if keeps_placement else None
        super().__init__(Session(settings), keep=keep)
        self.session.setParent(self)
        self.autosave = Autosave(self.session, Journal(), self)
        self.autosave.failed.connect(self.notice.complain)
        self.documents.recovered.connect(self.autosave.take_over)

    def closeEvent(self, event: QCloseEvent) -> None:
        super().closeEvent(event)
        if event.isAccepted():
            self.autosave.close()


def _placement() -> QSettings:
    """Where the window's place and size are kept; nothing else is."""
    folder = Path(platformdirs.user_state_dir("inlayfit", appauthor=False))
    return QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat)


def run(files: Sequence[str]) -> int:
    """Open the window on files; answers the exit code. Hands over to a running program if there is one."""
    paths = [Path(name) for name in files]
    sys.setswitchinterval(_SWITCH_S)
    program = Program(["inlayfit"])
    if hand_over(paths):
        return 0
    settings, complaints = read_settings(settings_file())
    _translate(program, settings)
    try:
        window = program.open_window(settings)
    except InlayfitError as error:
        sys.stderr.write(f"inlayfit: {error}\n")
        return 2
    for complaint in complaints:
        window.notice.complain(complaint)
    listener = Listener(parent=program)
    listener.files_given.connect(program.take_files)
    QTimer.singleShot(_WARM_UP_MS, window.documents.warm_up)
    QTimer.singleShot(0, lambda: _start_work(program, window, settings, paths))
    _leave_on_interrupt(program)
    code = program.exec()
    listener.close()
    return code


def _start_work(program: Program, window: BenchWindow, settings: Settings, paths: list[Path]) -> None:
    """Offer recovery first, then open what was asked for."""
    others = window.documents.offer_recovery(left_behind())
    for state, recovery in others:
        _show_both(program, settings, window, state, recovery.project, recovery)
    if paths:
        window.documents.open_files(paths, adds=not window.session.state.is_empty)


def _show_both(
    program: Program,
    settings: Settings,
    window: BenchWindow,
    state: State,
    project: Path | None,
    recovery: Recovery,
) -> None:
    """The saved project in the first window, the recovered work in a second."""
    if project is not None and project.exists():
        window.documents.open_files([project])
    second = program.open_window(settings, first=False)
    second.documents.recover(state, recovery)


def _leave_on_interrupt(program: QObject) -> None:
    """Let Ctrl+C in the terminal end the program: Python needs a moment now and then to notice."""
    signal.signal(signal.SIGINT, lambda *_: QApplication.quit())
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
