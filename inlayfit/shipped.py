"""Where the files that travel with the program are: its icon, fonts, words and pictures, and the samples."""

from __future__ import annotations

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent


def shipped_folder(name: str) -> Path:
    """The folder `resources` or `sample_shapes`.

    In a wheel it lies inside the package, in a checkout beside it.
    """
    inside = _PACKAGE / name
    return inside if inside.is_dir() else _PACKAGE.parent / name


def is_shipped(path: Path) -> bool:
    """Whether a file came with the program."""
    return path.resolve().is_relative_to(shipped_folder("sample_shapes").resolve())
