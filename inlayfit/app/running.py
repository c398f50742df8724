"""Whether this person may have the program running already, told before anything is loaded that asks it.

The name of its socket holds the person's number or name, the folder of the person's work and the screen, so
that two people on one machine do not meet, nor two homes of one person, and nobody's files open on a screen
that nobody looks at.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

import platformdirs
from PySide6.QtCore import QCryptographicHash, QDir


def socket_name(person: str | None = None) -> str:
    """The name of the socket for a person; the one who runs this if None."""
    who = _person() if person is None else person
    work = platformdirs.user_state_dir("inlayfit", appauthor=False)
    screens = [os.environ.get(name, "") for name in ("WAYLAND_DISPLAY", "DISPLAY")]
    meant = "\n".join((who, work, *screens))
    digest = QCryptographicHash.hash(meant.encode(), QCryptographicHash.Algorithm.Sha256)
    return f"inlayfit-{digest.toHex().toStdString()[:16]}"


def may_be_running(name: str | None = None) -> bool:
    """Whether a program may listen there; False only if certainly none does."""
    if sys.platform == "win32":  # pipes have no file to look for
        return True
    return Path(QDir.tempPath(), name or socket_name()).exists()  # where Qt keeps local sockets


def _person() -> str:
    """Who runs this: the user's number on POSIX systems, the name on Windows."""
    return os.environ.get("USERNAME", "") if sys.platform == "win32" else str(os.getuid())
