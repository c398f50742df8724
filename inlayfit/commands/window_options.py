"""What `inlayfit` says of itself, and the options of the window."""

from __future__ import annotations

from pathlib import Path

from inlayfit import __version__
from inlayfit.commands.asking import parser
from inlayfit.commands.saying import say

_COMMANDS = """commands:
  inlayfit [FILE …]          open the window
  inlayfit demo --out DIR    the whole job on the sample tea trays
  inlayfit inspect FILE      the outlines a drawing holds
  inlayfit fit FILE …        solve and write the outlines

Each command explains itself with --help. Exit code: 0 done, 1 the work found a blocking problem,
2 wrong usage or a file that cannot be read or written."""


def asked_files(arguments: list[str]) -> list[Path] | None:
    """The files to open; None if only the version was asked for, which is said."""
    asking = parser("inlayfit", "From the drawing of a pocket to a plug that fits it.", epilog=_COMMANDS)
    asking.add_argument("files", nargs="*", type=Path, metavar="FILE", help="drawing or project to open")
    asking.add_argument("--version", action="store_true", help="print the version and leave")
    asked = asking.parse_args(arguments)
    if asked.version:
        say(f"inlayfit {__version__}")
        return None
    files: list[Path] = asked.files
    return files
