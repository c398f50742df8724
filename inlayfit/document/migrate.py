"""Steps that turn an old project file's record into the present form, one version at a time.

`STEPS[n]` takes a record of version n to version n + 1. A step is a plain function on the parsed JSON; it
never looks at today's classes, so it stays right when they change.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, TypeAlias

CURRENT_VERSION = 1
Record: TypeAlias = dict[str, Any]

STEPS: Mapping[int, Callable[[Record], Record]] = {}


def migrated(record: Record, version: int) -> Record:
    """A record in the present form."""
    for number in range(version, CURRENT_VERSION):
        record = STEPS[number](record)
    return record
