"""`inlayfit [FILE…]`: the window.

A window is waited for, so what only explains or complains (argparse) is imported where a person asks for it.
What the window needs and knows no Qt is loaded before it: the binding of Qt reads the source of every module
that comes later, to learn whether it may switch features on, and a tenth of a millisecond each adds up.
"""

from __future__ import annotations

import os
import signal
import sys
from pathlib import Path

import inlayfit.document.new_work
import inlayfit.document.sentence  # noqa: F401 - for the window; see above
from inlayfit.app import garbage
from inlayfit.commands.files import check_is_file
from inlayfit.commands.saying import DONE


def run(arguments: list[str]) -> int:
    """Open the window; the exit code is the answer."""
    files = _asked_files(arguments)
    if files is None:
        return DONE
    for file in files:
        check_is_file(file)
    _check_has_screen()
    signal.signal(signal.SIGINT, signal.SIG_DFL)  # Qt may swallow the exception while it loads
    garbage.put_off()  # until `app.main` has loaded what stays
    from inlayfit.app.main import run as open_window

    return open_window([str(file) for file in files])


def _asked_files(arguments: list[str]) -> list[Path] | None:
    """The files to open; None if no window is wanted."""
    if not any(argument.startswith("-") for argument in arguments):
        return [Path(argument) for argument in arguments]
    from inlayfit.commands.window_options import asked_files

    return asked_files(arguments)


def _check_has_screen() -> None:
    """Qt ends the whole process, without a word Python could catch, where there is no screen."""
    from inlayfit.errors import InlayfitError

    knows_screens = sys.platform in ("win32", "darwin")
    screens = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    if not knows_screens and not any(os.environ.get(name) for name in screens):
        raise InlayfitError(
            "There is no screen to open a window on; use inlayfit fit or inlayfit demo, "
            "or start it from a desktop."
        )
