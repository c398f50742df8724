"""The project file: a document as JSON that a person can read and a version system can compare.

Outlines are kept as paths with their true arcs and curves, never flattened, and numbers are written so
that they read back bit for bit (the shortest decimal that means the same double, as JSON writers do).
One record a line, points in rows of eight: a small change is a small difference.

Path record: `points` (n, 2) vertices; `bulges` only where not 0, by segment number; `curves` the Bézier
segments, by segment number, as control points (and weights of a rational one); `closed` only if false.
A finding has, beside its sentences, the patterns and values that they were made from (`worded_json`).

Versions (a new one needs a step in `inlayfit.document.migrate` and an old file in tests/old_projects):

| version | since | what changed |
|---|---|---|
| 1 | 0.1.0 | the first |
| 2 | 0.1.0 | the made plug of a pocket, the workshop's numbers, edges and tapers of each half |

A project file is as untrusted as any other: every value is checked, and a file that is not right is
refused in one sentence.
"""

from __future__ import annotations

import json
from pathlib import Path as FilePath
from typing import Any

from inlayfit.document.atomic import write_atomically
from inlayfit.document.migrate import CURRENT_VERSION, migrated
from inlayfit.document.project_json import state_from_json, state_to_json
from inlayfit.document.project_kind import FORMAT, looks_like_project
from inlayfit.document.state import State
from inlayfit.errors import ProjectError, reason_of
from inlayfit.wording import Worded

LARGEST_BYTES = 500_000_000
"""Above this a project file is not one of ours: 100,000 vertices take about 5 MB."""
_POINTS_A_ROW = 8


def to_bytes(state: State) -> bytes:
    """A document as the bytes of a project file, the same for equal documents."""
    record = {"format": FORMAT, "version": CURRENT_VERSION, **state_to_json(state)}
    return (_laid_out(record, 0) + "\n").encode()


def from_bytes(data: bytes, *, name: str = "This file") -> State:
    """The document in the bytes of a project file.

    Raises:
        ProjectError: not a project file, from a newer version, or damaged; the message says which.
    """
    if len(data) > LARGEST_BYTES:
        raise ProjectError(
            Worded("{name} is too large to be a project file; choose a .inlayfit file.", name=name)
        )
    try:
        record: Any = json.loads(data, parse_constant=_refuse_constant)
    except (ValueError, RecursionError) as error:
        raise _unreadable(data, name) from error
    if not isinstance(record, dict) or record.get("format") != FORMAT:
        raise ProjectError(Worded("{name} is not a project file; open drawings as DXF or SVG.", name=name))
    version = record.get("version")
    if type(version) is not int or version < 1:
        raise ProjectError(
            Worded("{name} does not say which version it is; restore an earlier copy.", name=name)
        )
    if version > CURRENT_VERSION:
        raise ProjectError(
            Worded("{name} was saved by a newer version of Inlayfit; update Inlayfit to open it.", name=name)
        )
    try:
        return state_from_json(migrated(record, version))
    except (ProjectError, ArithmeticError) as error:
        why = error.message if isinstance(error, ProjectError) else str(error)
        raise ProjectError(
            Worded("{name} is damaged: {error}; restore an earlier copy.", name=name, error=why)
        ) from error


def _unreadable(data: bytes, name: str) -> ProjectError:
    """What is said of bytes that are no whole record: a project that came to harm, or none at all."""
    if looks_like_project(data):
        why = Worded("it ends in the middle, or was changed")
        return ProjectError(
            Worded("{name} is damaged: {error}; restore an earlier copy.", name=name, error=why)
        )
    return ProjectError(Worded("{name} is not a project file; open drawings as DXF or SVG.", name=name))


def save_project(state: State, path: FilePath) -> None:
    """Write a document, whole or not at all; WriteError if it cannot be."""
    write_atomically(path, to_bytes(state))


def load_project(path: FilePath) -> State:
    """Read a document; ProjectError if it cannot be."""
    try:
        if path.stat().st_size > LARGEST_BYTES:
            raise ProjectError(Worded("{name} is too large to be a project file.", name=path.name), path=path)
        data = path.read_bytes()
    except OSError as error:
        reason = reason_of(error, otherwise=Worded("it cannot be read"))
        raise ProjectError(
            Worded("{name} was not opened: {reason}; choose another file.", name=path.name, reason=reason),
            path=path,
        ) from error
    return from_bytes(data, name=path.name)


def _refuse_constant(name: str) -> float:
    raise ValueError(f"{name} is not a length")


def _laid_out(value: Any, depth: int) -> str:
    """JSON with one record a line and points in rows."""
    inner, outer = "  " * (depth + 1), "  " * depth
    if isinstance(value, dict) and value and not _is_flat(value):
        rows = [f"{inner}{json.dumps(k)}: {_laid_out(v, depth + 1)}" for k, v in value.items()]
        return "{\n" + ",\n".join(rows) + "\n" + outer + "}"
    if isinstance(value, list) and value and not _is_flat(value):
        if all(_is_point(item) for item in value):
            texts = [json.dumps(item) for item in value]
            rows = [
                inner + ", ".join(texts[i : i + _POINTS_A_ROW]) for i in range(0, len(texts), _POINTS_A_ROW)
            ]
        else:
            rows = [inner + _laid_out(item, depth + 1) for item in value]
        return "[\n" + ",\n".join(rows) + "\n" + outer + "]"
    return json.dumps(value, ensure_ascii=False)


def _is_flat(value: dict[str, Any] | list[Any]) -> bool:
    items = value.values() if isinstance(value, dict) else value
    return not any(isinstance(item, dict | list) for item in items)


def _is_point(item: Any) -> bool:
    return isinstance(item, list) and len(item) == 2 and all(isinstance(n, int | float) for n in item)
