"""The files that a command is given."""

from __future__ import annotations

from pathlib import Path


def check_is_file(file: Path) -> None:
    """Refuse what is no file before anything is read."""
    from inlayfit.errors import NotADrawingError

    if not file.exists():
        raise NotADrawingError(f"There is no file “{file}”; check its name and folder.", path=file)
    if file.is_dir():
        raise NotADrawingError(f"“{file}” is a folder; name the drawing in it.", path=file)
