"""Writing a file so that a reader sees the old one or the new one, never half of either.

The bytes go to a hidden file beside the target, are flushed to the disk, and take its name in one step
(POSIX `rename`; `os.replace` does the same on Windows). The new file can be read by those who could read the
old one, a link stays a link, and a file that its owner has locked against writing stays as it is. A process
killed outright can leave its hidden file behind; the next write of that file sweeps it away once it is an
hour old.
"""

from __future__ import annotations

import contextlib
import os
import stat
import time
from collections.abc import Iterator
from pathlib import Path

from inlayfit.errors import WriteError, reason_of
from inlayfit.wording import Worded

_PART = ".part"
_STALE_AFTER_S = 3600.0
_EVERYBODY_AS_USUAL = 0o666
"""Who may read and write a new file, before the person's umask (POSIX `open`)."""


def write_atomically(path: Path, data: bytes) -> None:
    """Put `data` in the place of whatever `path` holds.

    Raises:
        WriteError: the folder is missing, full or not ours to write in, or the file is locked against
            writing; what was there is untouched.
    """
    try:
        target = path.resolve() if path.is_symlink() else path
        mode = _mode_of(target)
        beside = target.with_name(f".{target.name}.{os.urandom(16).hex()}{_PART}")
        handle = os.open(
            beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), _EVERYBODY_AS_USUAL
        )
    except OSError as error:
        raise _failed(path, error) from error
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        if mode is not None:
            beside.chmod(mode)
        beside.replace(target)
    except OSError as error:
        beside.unlink(missing_ok=True)
        raise _failed(path, error) from error
    _sweep(target)


def parts_of(path: Path) -> Iterator[Path]:
    """Hidden files beside `path` that were to become it."""
    start = f".{path.name}."
    with contextlib.suppress(OSError):
        for file in path.parent.iterdir():
            if file.name.startswith(start) and file.name.endswith(_PART):
                yield file


def _mode_of(target: Path) -> int | None:
    """Who may do what with the file that is there; None if there is none.

    Raises:
        PermissionError: it is locked against writing.
    """
    try:
        mode = stat.S_IMODE(target.stat().st_mode)
    except FileNotFoundError:
        return None
    if not os.access(target, os.W_OK):
        raise PermissionError(0, Worded("it is locked against writing"))
    return mode


def _sweep(target: Path) -> None:
    """Remove what a killed process left of earlier writes of this file."""
    for part in parts_of(target):
        with contextlib.suppress(OSError):
            if time.time() - part.stat().st_mtime > _STALE_AFTER_S:
                part.unlink()


def _failed(path: Path, error: OSError) -> WriteError:
    reason = reason_of(error, otherwise=Worded("it could not be written"))
    return WriteError(
        Worded("{name} was not written: {reason}; choose another folder.", name=path.name, reason=reason),
        path=path,
    )
