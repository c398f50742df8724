"""Writing a file so that a reader sees the old one or the new one, never half of either.

The bytes go to a temporary file beside the target, are flushed to the disk, and take its name in one
step (POSIX `rename`; `os.replace` does the same on Windows).
"""

from __future__ import annotations

import os
import tempfile
from pathlib import Path

from inlayfit.errors import WriteError


def write_atomically(path: Path, data: bytes) -> None:
    """Put `data` in the place of whatever `path` holds.

    Raises:
        WriteError: the folder is missing, full or not ours to write in; what was there is untouched.
    """
    try:
        handle, name = tempfile.mkstemp(prefix=f".{path.name}.", suffix=".part", dir=path.parent)
    except OSError as error:
        raise _failed(path, error) from error
    beside = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        beside.replace(path)
    except OSError as error:
        beside.unlink(missing_ok=True)
        raise _failed(path, error) from error


def _failed(path: Path, error: OSError) -> WriteError:
    reason = (error.strerror or "it could not be written").lower()
    return WriteError(f"{path.name} was not written: {reason}; choose another folder.", path=path)
