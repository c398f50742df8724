"""Recent work: paths with a small picture, newest first, kept in the platform's state folder.

A picture is the outlines as rings in a square of 100 (`recent_pictures`), so that the list shows work whose
file has moved too.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import platformdirs

from inlayfit.document.atomic import write_atomically
from inlayfit.errors import WriteError

MOST = 8


@dataclass(frozen=True, slots=True)
class RecentWork:
    """One entry.

    Attributes:
        path: a project or a drawing.
        summary: a few words about it in English ("Goes in."); a window says them in its own language.
        opened_at: seconds since the epoch.
        rings: closed rings, each a flat tuple x0, y0, x1, y1, … in a square of 100, y up.
    """

    path: Path
    summary: str
    opened_at: float
    rings: tuple[tuple[float, ...], ...] = ()


def recent_file() -> Path:
    """Where the list is kept."""
    return Path(platformdirs.user_state_dir("inlayfit", appauthor=False)) / "recent.json"


def read_recent(file: Path) -> tuple[RecentWork, ...]:
    """The list; entries that make no sense are left out."""
    try:
        raw: Any = json.loads(file.read_bytes())
    except (OSError, ValueError):
        return ()
    entries = [_entry(item) for item in raw] if isinstance(raw, list) else []
    return tuple(entry for entry in entries if entry is not None)[:MOST]


def _entry(item: Any) -> RecentWork | None:
    try:
        rings = tuple(tuple(float(v) for v in ring) for ring in item["rings"])
        if any(len(ring) % 2 or len(ring) < 6 for ring in rings):
            return None
        return RecentWork(Path(str(item["path"])), str(item["summary"]), float(item["opened_at"]), rings)
    except (KeyError, TypeError, ValueError):
        return None


def write_recent(entries: tuple[RecentWork, ...], file: Path) -> None:
    """Keep the list; a disk that refuses costs only the list."""
    rows = [
        {"path": str(e.path), "summary": e.summary, "opened_at": e.opened_at, "rings": e.rings}
        for e in entries[:MOST]
    ]
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
        write_atomically(file, (json.dumps(rows, indent=1) + "\n").encode())
    except (OSError, WriteError):
        return


def with_work(entries: tuple[RecentWork, ...], work: RecentWork) -> tuple[RecentWork, ...]:
    """The list with this work at its head."""
    return (work, *(e for e in entries if e.path != work.path))[:MOST]
