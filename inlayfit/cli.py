"""The command line: the same flow as the window, without one.

    inlayfit [FILE…]            opens the window
    inlayfit demo --out DIR     the whole job on the shipped sample
    inlayfit inspect FILE       the outlines a drawing holds
    inlayfit fit FILE …         solves and writes the outlines

What the person asked for goes to stdout; with `--json` that is one JSON object and nothing else. What
went wrong goes to stderr, in one sentence that says what to do. Exit 0: done. 1: the work found a
blocking problem. 2: wrong usage, or a file that cannot be read or written. 130: stopped from the
keyboard. No traceback reaches a person; set INLAYFIT_TRACEBACK=1 to see one.

Each command has a file in `commands`. Everything heavy is imported inside the command that needs it,
argparse too: `inlayfit --version` answers in about the time Python takes to start.
"""

from __future__ import annotations

import os
import sys

from inlayfit import __version__
from inlayfit.commands.saying import DONE, STOPPED, WRONG, complain, say, sentence_of

TYPE_CHECKING = False  # typing itself would cost a third of the time that `--version` takes
if TYPE_CHECKING:
    from collections.abc import Sequence

_COMMANDS = ("demo", "inspect", "fit")


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command; the exit code is the answer."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    try:
        code = _version() if arguments == ["--version"] else _answer(arguments)
        sys.stdout.flush()
    except KeyboardInterrupt:
        return complain("Stopped; no file is half-written. Start the command again to go on.", STOPPED)
    except BrokenPipeError:
        # Whoever reads our output has seen enough; nothing may complain when Python closes stdout.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return DONE
    except Exception as error:  # noqa: BLE001 - the last line: no traceback reaches a person
        return complain(sentence_of(error))
    return code


def _answer(arguments: list[str]) -> int:
    try:
        command = arguments[0] if arguments else ""
        if command == "demo":
            from inlayfit.commands.demo import run
        elif command == "inspect":
            from inlayfit.commands.inspect import run
        elif command == "fit":
            from inlayfit.commands.fit import run
        else:
            from inlayfit.commands.window import run
        return run(arguments[1:] if command in _COMMANDS else arguments)
    except SystemExit as leaving:  # argparse, after --help or a complaint
        return leaving.code if isinstance(leaving.code, int) else WRONG


def _version() -> int:
    say(f"inlayfit {__version__}")
    return DONE
