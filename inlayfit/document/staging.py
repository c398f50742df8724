"""Several files written as one: all of them appear, or none.

Files are made in a hidden folder inside the one they are meant for (so that moving them is one step of
the same disk), checked there, flushed to the disk, and only then given their names (POSIX `rename`;
`os.replace` does the same on Windows). Whatever stops the work before that leaves the folder as it was.
A process killed outright can leave its hidden folder behind, never a half-written file; the next export
sweeps such remains away once they are an hour old.
"""

from __future__ import annotations

import errno
import os
import shutil
import tempfile
import time
from collections.abc import Iterable, Sequence
from pathlib import Path
from types import TracebackType
from typing import Self

from inlayfit.errors import WriteError
from inlayfit.wording import Worded

_PREFIX = ".inlayfit-export-"
_STALE_AFTER_S = 3600.0


class Staging:
    """A hidden folder for files in the making; use it in a `with` block and `commit` at its end."""

    def __init__(
        self, folder: Path, *, protected: Path | None = None, also_protected: Sequence[Path] = ()
    ) -> None:
        """Prepare to write into `folder`, which is made if it is missing.

        Args:
            folder: where the files are meant to be.
            protected: a file that must never be overwritten: the drawing that was read.
            also_protected: more such files.
        """
        self._folder = folder
        self._protected = [*([] if protected is None else [protected]), *also_protected]
        self._names: list[str] = []
        self._outdated: list[str] = []
        self._made: list[Path] = []
        self._hidden = folder

    def __enter__(self) -> Self:
        try:
            self._made = _missing_folders(self._folder)
            self._folder.mkdir(parents=True, exist_ok=True)
            _sweep(self._folder)
            self._hidden = Path(tempfile.mkdtemp(prefix=_PREFIX, dir=self._folder))
        except OSError as error:
            self._remove_made_folders()
            raise write_error(self._folder, error) from error
        return self

    def path(self, name: str) -> Path:
        """Where to write the file that will be called `name`.

        Raises:
            WriteError: a file of that name is the drawing itself, or a folder.
        """
        target = self._folder / name
        if any(is_same_file(target, source) for source in self._protected):
            raise WriteError(
                Worded(
                    "{target} is the drawing that was opened and will not be overwritten; "
                    "choose another folder to write to.",
                    target=target,
                ),
                path=target,
            )
        if target.is_dir():
            raise WriteError(
                Worded("{target} is a folder; move it or choose another folder.", target=target), path=target
            )
        if name not in self._names:
            self._names.append(name)
        return self._hidden / name

    def remove(self, name: str) -> None:
        """Let no file of this name be there after `commit`, whatever an earlier export left."""
        self.path(name)
        self._names.remove(name)
        self._outdated.append(name)

    def target(self, name: str) -> Path:
        """Where the file called `name` will be."""
        return self._folder / name

    def commit(self) -> tuple[Path, ...]:
        """Flush every file and give it its name; answers their paths in the order they were asked for."""
        written = list(self._names)
        try:
            for name in written:
                _flush(self._hidden / name)
            for name in written:
                (self._hidden / name).replace(self._folder / name)
            for name in self._outdated:
                (self._folder / name).unlink(missing_ok=True)
            _flush_folder(self._folder)
        except OSError as error:
            raise write_error(self._folder, error) from error
        self._made = []
        return tuple(self._folder / name for name in written)

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        shutil.rmtree(self._hidden, ignore_errors=True)
        self._remove_made_folders()
        if isinstance(error, OSError) and not isinstance(error, WriteError):
            raise write_error(self._folder, error) from error

    def _remove_made_folders(self) -> None:
        """Take back the folders made for an export that failed, the innermost first."""
        for folder in self._made:
            try:
                folder.rmdir()
            except OSError:
                return


def is_same_file(a: Path, b: Path) -> bool:
    """Whether both names lead to one file: by links, by hard links, or by other spellings of the path."""
    try:
        return a.samefile(b)
    except OSError:
        return a.resolve() == b.resolve()


def write_error(place: Path, error: OSError) -> WriteError:
    """One sentence for a person: what went wrong, where, and what to do."""
    reasons = {
        errno.EACCES: Worded("You may not write into {place}; choose another folder.", place=place),
        errno.EPERM: Worded("You may not write into {place}; choose another folder.", place=place),
        errno.EROFS: Worded(
            "{place} is on a disk that cannot be written to; choose another folder.", place=place
        ),
        errno.ENOSPC: Worded(
            "The disk that holds {place} is full; free some space and export again.", place=place
        ),
        errno.EDQUOT: Worded(
            "Your share of the disk that holds {place} is used up; free some space and try again.",
            place=place,
        ),
        errno.ENOTDIR: Worded("{place} is not a folder; choose a folder to write to.", place=place),
        errno.EEXIST: Worded("{place} is not a folder; choose a folder to write to.", place=place),
        errno.ENAMETOOLONG: Worded(
            "The name {name}… is too long; choose a shorter one.", name=place.name[:40]
        ),
    }
    known = reasons.get(error.errno or 0)
    other = Worded(
        "Nothing could be written into {place} ({reason}); choose another folder.",
        place=place,
        reason=error.strerror or error,
    )
    return WriteError(known or other, path=place)


def _missing_folders(folder: Path) -> list[Path]:
    return [place for place in (folder, *folder.parents) if not place.exists()]


def _flush(path: Path) -> None:
    with path.open("rb+") as stream:
        os.fsync(stream.fileno())


def _flush_folder(folder: Path) -> None:
    """Make the new names last through a power cut, where the system lets a folder be flushed."""
    if os.name != "posix":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _sweep(folder: Path) -> None:
    """Remove hidden folders of exports that were killed long ago."""
    for remains in _stale(folder.glob(_PREFIX + "*"), time.time() - _STALE_AFTER_S):
        shutil.rmtree(remains, ignore_errors=True)


def _stale(folders: Iterable[Path], before: float) -> list[Path]:
    return [f for f in folders if f.is_dir() and not f.is_symlink() and f.stat().st_mtime < before]
