"""What a command says: lines, one JSON object, one sentence when something is wrong; and the exit codes."""

from __future__ import annotations

import os
import sys

TYPE_CHECKING = False  # typing itself would cost a third of the time that `--version` takes
if TYPE_CHECKING:
    from typing import Any, TextIO

DONE, BLOCKED, WRONG, STOPPED = 0, 1, 2, 130
_PLAIN = str.maketrans(
    {
        "−": "-",
        "–": "-",
        "“": '"',
        "”": '"',
        "×": "x",
        "µ": "u",
        "²": "2",
        "…": "...",
        "±": "+/-",
        "°": " deg",
    }
)


def say(text: str, stream: TextIO | None = None) -> None:
    """One or more lines; a terminal that lacks a character gets the nearest plain one."""
    stream = stream or sys.stdout
    encoding = stream.encoding or "ascii"
    try:
        text.encode(encoding)
    except UnicodeEncodeError:
        text = text.translate(_PLAIN).encode(encoding, "replace").decode(encoding)
    stream.write(f"{text}\n")


def complain(sentence: str, code: int = WRONG) -> int:
    """One sentence on stderr; answers the exit code."""
    say(f"inlayfit: {' '.join(sentence.split())}", sys.stderr)
    return code


def sentence_of(error: Exception) -> str:
    """What a person reads of an error."""
    from inlayfit.errors import InlayfitError

    if os.environ.get("INLAYFIT_TRACEBACK"):
        raise error
    if isinstance(error, InlayfitError):
        return str(error)
    if isinstance(error, MemoryError):
        return "The drawing needs more memory than there is; take a smaller part of it."
    if isinstance(error, OSError):
        place = f"“{error.filename}”: " if error.filename else ""
        return f"{place}{error.strerror or error}; check the path and try again."
    return (
        f"The program met something it was not made for ({type(error).__name__}: {error}); nothing was "
        "written. Please report it with the file that caused it."
    )


def print_json(answer: dict[str, Any]) -> None:
    """One JSON object on stdout."""
    import json

    say(json.dumps(answer, indent=2, allow_nan=False))
