"""The unit a person chose for drawings that state none, remembered for the folder they lie in.

Kept as JSON in the platform's configuration folder: folder name to unit name, the latest last. What cannot
be read is forgotten; nothing depends on it but a question that is asked once more.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from inlayfit.document.atomic import write_atomically
from inlayfit.document.settings import settings_file
from inlayfit.units import Unit

_MOST_FOLDERS = 200


def folder_units_file() -> Path:
    """Where the choices are kept on this platform."""
    return settings_file().with_name("folder-units.json")


def unit_for(drawing: Path, file: Path | None = None) -> Unit | None:
    """The unit chosen for the folder of a drawing; None if none was."""
    name = _read(file or folder_units_file()).get(_folder(drawing))
    return Unit[name] if isinstance(name, str) and name in Unit.__members__ else None


def remember_unit(drawing: Path, unit: Unit, file: Path | None = None) -> None:
    """Remember a choice for the folder of a drawing; OSError or WriteError if it cannot be kept."""
    target = file or folder_units_file()
    known = _read(target)
    known.pop(_folder(drawing), None)
    known[_folder(drawing)] = unit.name
    latest = dict(list(known.items())[-_MOST_FOLDERS:])
    target.parent.mkdir(parents=True, exist_ok=True)
    write_atomically(target, (json.dumps(latest, indent=2, ensure_ascii=False) + "\n").encode())


def _folder(drawing: Path) -> str:
    return str(drawing.resolve().parent)


def _read(file: Path) -> dict[str, Any]:
    try:
        record = json.loads(file.read_bytes())
    except (OSError, ValueError):
        return {}
    return record if isinstance(record, dict) else {}
