"""The journal: a recovery copy of unsaved work, so that a crash costs two seconds and not an evening.

One file a running window, in the platform's state folder: a first line of JSON that says which project it
belongs to and when it was written, then a whole project file. It is replaced whole, so the copy on the
disk is always complete; its lock is held by the operating system for as long as the process lives, so a
copy without a living owner is known at the next start, whatever ended its process. Saving or discarding
removes the copy; what a dead process left beside it is swept at the next start. The project itself is never
touched.
"""

from __future__ import annotations

import contextlib
import json
import os
import sys
import time
import uuid
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import IO, Any

import platformdirs

from inlayfit.document.atomic import parts_of, write_atomically
from inlayfit.document.project_file import from_bytes, to_bytes
from inlayfit.document.state import State
from inlayfit.errors import ProjectError
from inlayfit.wording import Worded

LONGEST_DELAY_S = 2.0
"""At most so much work is lost."""
_COPY, _LOCK = ".recovery", ".lock"
_TRIES = 5


def journal_folder() -> Path:
    """Where recovery copies are kept on this platform."""
    return Path(platformdirs.user_state_dir("inlayfit", appauthor=False)) / "recovery"


@dataclass(frozen=True, slots=True)
class Recovery:
    """Unsaved work of a process that is gone.

    Attributes:
        copy: the recovery copy.
        project: the project file it belongs to, or None if it never had one.
        title: what the work was called.
        written_at: seconds since the epoch.
    """

    copy: Path
    project: Path | None
    title: str
    written_at: float

    def state(self) -> State:
        """The document as it was; ProjectError if the copy is damaged."""
        _, _, body = self.copy.read_bytes().partition(b"\n")
        return from_bytes(body, name="The recovery copy")

    def discard(self) -> None:
        """Remove the copy."""
        self.copy.unlink(missing_ok=True)
        self.copy.with_suffix(_LOCK).unlink(missing_ok=True)


class Journal:
    """The recovery copy of one running window."""

    def __init__(self, folder: Path | None = None) -> None:
        self._folder = journal_folder() if folder is None else folder
        self._folder.mkdir(parents=True, exist_ok=True)
        _keep_private(self._folder)
        self._copy, self._lock = _place_of_its_own(self._folder)

    @property
    def copy(self) -> Path:
        """Where this window's recovery copy is, or would be."""
        return self._copy

    def write(self, state: State, *, project: Path | None, title: str) -> None:
        """Put this state in the place of the last copy; WriteError if the disk refuses."""
        head = {"project": None if project is None else str(project), "title": title, "time": time.time()}
        write_atomically(self._copy, json.dumps(head).encode() + b"\n" + to_bytes(state))

    def clear(self) -> None:
        """Remove the copy: the work is saved, or given up."""
        self._copy.unlink(missing_ok=True)

    def close(self) -> None:
        """Remove the copy and let go of the lock: the window closes in good order."""
        self.clear()
        _let_go(self._lock, self._copy.with_suffix(_LOCK))


def left_behind(folder: Path | None = None) -> tuple[Recovery, ...]:
    """Recovery copies whose process is gone, newest first. Copies that cannot be read are left out."""
    where = journal_folder() if folder is None else folder
    found = [recovery for recovery in _ownerless(where) if recovery is not None]
    return tuple(sorted(found, key=lambda recovery: -recovery.written_at))


def _ownerless(folder: Path) -> Iterator[Recovery | None]:
    for lock_file in sorted({file.with_suffix(_LOCK) for file in _copies_and_locks(folder)}):
        lock = _locked(lock_file)
        if lock is None:
            continue
        copy = lock_file.with_suffix(_COPY)
        for part in parts_of(copy):
            part.unlink(missing_ok=True)
        if copy.exists():
            lock.close()
            yield _described(copy)
        else:
            _let_go(lock, lock_file)


def _copies_and_locks(folder: Path) -> list[Path]:
    return [*folder.glob(f"*{_COPY}"), *folder.glob(f"*{_LOCK}")] if folder.is_dir() else []


def _place_of_its_own(folder: Path) -> tuple[Path, IO[bytes]]:
    """A name for a copy, and its lock; another start that sweeps just now may take a name or two."""
    for _ in range(_TRIES):
        copy = folder / f"{uuid.uuid4().hex}{_COPY}"
        lock = _locked(copy.with_suffix(_LOCK))
        if lock is not None:
            return copy, lock
    raise ProjectError(Worded("The recovery folder is in use; close other windows and try again."))


def _let_go(lock: IO[bytes], file: Path) -> None:
    """Remove a lock while it is held, so that nobody takes it in between; Windows wants it closed first."""
    if os.name == "posix":
        file.unlink(missing_ok=True)
        lock.close()
    else:
        lock.close()
        with contextlib.suppress(OSError):
            file.unlink(missing_ok=True)


def _described(copy: Path) -> Recovery | None:
    try:
        with copy.open("rb") as file:
            head: Any = json.loads(file.readline(100_000))
        project = head["project"]
        return Recovery(
            copy=copy,
            project=None if project is None else Path(str(project)),
            title=str(head["title"]),
            written_at=float(head["time"]),
        )
    except (OSError, ValueError, TypeError, KeyError):
        return None


def _locked(path: Path) -> IO[bytes] | None:
    """The open lock file, locked for this process; None if a living process has it."""
    file = path.open("ab")
    try:
        if sys.platform == "win32":
            import msvcrt

            file.seek(0)
            msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)
        else:
            import fcntl

            fcntl.flock(file.fileno(), fcntl.LOCK_EX | fcntl.LOCK_NB)
        is_there = os.path.samestat(os.fstat(file.fileno()), path.stat())
    except OSError:
        file.close()
        return None
    if not is_there:  # another start swept the file away between opening and locking
        file.close()
        return None
    return file


def _keep_private(folder: Path) -> None:
    """Let only this person read the recovery folder, where the platform knows such a thing."""
    if os.name == "posix":
        folder.chmod(0o700)
