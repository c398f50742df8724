"""Every error this program raises on purpose, and who raises it.

```
InlayfitError
├── LengthError (ValueError)         units: the text is not one clear length
├── ReadError                        formats: nothing of the file can be shown
│   ├── NotADrawingError             neither DXF nor SVG, or empty, or not a file
│   ├── HostileFileError             refused for safety: entities, recursion, absurd size
│   └── NoOutlineError               a drawing, but without one closed outline
├── WriteError (OSError)             formats, document: the file could not be written
│   └── ReadBackError                written, but it does not read back as the same drawing
├── SpecError (ValueError)           fit, bench: the numbers asked for contradict each other
├── ProjectError                     document: a project file that cannot be opened
└── Cancelled                        progress: the person, or a newer request, stopped the work
```

A flawed file is a `Finding`, not an error: readers raise only when there is nothing left to show.
Each message is one sentence that says what is wrong and ends with what to do.
"""

from __future__ import annotations

import errno
from pathlib import Path

from inlayfit.wording import Worded


class InlayfitError(Exception):
    """The root; its text is fit to be shown to a person as it stands."""

    @property
    def message(self) -> str:
        """The text as it was given: of all that the window may show a `Worded`, which can be said again."""
        return str(self) if not self.args or not isinstance(self.args[0], str) else self.args[0]


class LengthError(InlayfitError, ValueError):
    """Raised by `units` for a text that is not one clear length."""

    def __init__(self, message: str, *, text: str) -> None:
        super().__init__(message)
        self.text = text


class ReadError(InlayfitError):
    """Raised by a reader when nothing of the file can be shown."""

    def __init__(self, message: str, *, path: Path | None = None) -> None:
        super().__init__(message)
        self.path = path


class NotADrawingError(ReadError):
    """The file is neither DXF nor SVG, or it is empty, or not a file at all."""


class HostileFileError(ReadError):
    """The file was refused for safety."""


class NoOutlineError(ReadError):
    """The drawing holds no closed outline."""


class WriteError(InlayfitError, OSError):
    """Raised when a file could not be written; nothing half-written is left behind."""

    def __init__(self, message: str, *, path: Path | None = None) -> None:
        super().__init__(message)
        self.path = path


class ReadBackError(WriteError):
    """A file was written but does not read back as the same drawing; it was removed."""


class SpecError(InlayfitError, ValueError):
    """Raised by `fit` and `bench` when numbers contradict each other or make no sense."""


class ProjectError(InlayfitError):
    """Raised by `document` for a project file that cannot be opened."""

    def __init__(self, message: str, *, path: Path | None = None) -> None:
        super().__init__(message)
        self.path = path


class Cancelled(InlayfitError):  # noqa: N818 - a state of the work, not a fault
    """Raised by `progress.Progress.raise_if_cancelled`."""


_REASONS = {
    errno.ENOENT: Worded("no such file or directory"),
    errno.EACCES: Worded("permission denied"),
    errno.EPERM: Worded("operation not permitted"),
    errno.EROFS: Worded("read-only file system"),
    errno.ENOSPC: Worded("no space left on device"),
    errno.EDQUOT: Worded("disk quota exceeded"),
    errno.EISDIR: Worded("is a directory"),
    errno.ENOTDIR: Worded("not a directory"),
    errno.ENAMETOOLONG: Worded("file name too long"),
    errno.EIO: Worded("input/output error"),
    errno.EBUSY: Worded("device or resource busy"),
}


def reason_of(error: OSError, *, otherwise: Worded) -> str:
    """What the system says of a file that would not do, in lower case, for the middle of a sentence.

    The usual reasons can be said in another language (their English is that of POSIX's `strerror`, from
    memory); a rare one comes as the system words it.
    """
    if isinstance(error.strerror, Worded):
        return error.strerror
    return _REASONS.get(error.errno or 0) or (error.strerror or "").lower() or otherwise
