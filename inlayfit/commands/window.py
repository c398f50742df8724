"""`inlayfit [FILE…]`: the window."""

from __future__ import annotations

import os
import sys
from pathlib import Path

from inlayfit import __version__
from inlayfit.commands.asking import check_is_file, parser
from inlayfit.commands.saying import DONE, say

_COMMANDS = """commands:
  inlayfit [FILE …]          open the window
  inlayfit demo --out DIR    the whole job on the sample tea trays
  inlayfit inspect FILE      the outlines a drawing holds
  inlayfit fit FILE …        solve and write the outlines

Each command explains itself with --help. Exit code: 0 done, 1 the work found a blocking problem,
2 wrong usage or a file that cannot be read or written."""


def run(arguments: list[str]) -> int:
    """Open the window; the exit code is the answer."""
    asking = parser("inlayfit", "From the drawing of a pocket to a plug that fits it.", epilog=_COMMANDS)
    asking.add_argument("files", nargs="*", type=Path, metavar="FILE", help="drawing or project to open")
    asking.add_argument("--version", action="store_true", help="print the version and leave")
    asked = asking.parse_args(arguments)
    if asked.version:
        say(f"inlayfit {__version__}")
        return DONE
    for file in asked.files:
        check_is_file(file)
    _check_has_screen()
    from inlayfit.app.main import run as open_window

    return open_window([str(file) for file in asked.files])


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
