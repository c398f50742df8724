"""How a project file is told from others: by how it begins, never by its name."""

from __future__ import annotations

SUFFIX = ".inlayfit"
FORMAT = "inlayfit project"
"""Stands at the head of every project file."""


def looks_like_project(data: bytes) -> bool:
    """Whether the beginning of a file says that it is a project; for deciding by content."""
    start = data[:200].lstrip()
    return start.startswith(b"{") and FORMAT.encode() in start
