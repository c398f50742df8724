"""Steps that turn an old project file's record into the present form, one version at a time.

`STEPS[n]` takes a record of version n to version n + 1. A step is a plain function on the parsed JSON; it
never looks at today's classes, so it stays right when they change; it may change the record it is given.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, TypeAlias

CURRENT_VERSION = 2
Record: TypeAlias = dict[str, Any]


def _know_the_workshop(record: Record) -> Record:
    """1 to 2: made plugs, the workshop's numbers, and the edges and tapers of a half; none was known."""
    for fitting in _records(record.get("fittings")):
        fitting["made_plug"] = None
        for half in ("pocket", "plug"):
            for spec in _records([fitting.get(half)]):
                spec |= {
                    "kerf_taper_mm": 0.0,
                    "corner_cutter_mm": 0.0,
                    "t_bone_wall": "long",
                    "edge_break_mm": 0.0,
                }
    errors = dict.fromkeys(
        (
            "cutter_nominal_mm", "cutter_varies_mm", "runout_mm", "repeatability_mm", "thickness_varies_mm",
            "temperature_varies_k", "expansion_difference_per_k",
        ),
        0.0,
    )  # fmt: skip
    cutting = dict.fromkeys(("depth_per_pass_mm", "floor_allowance_mm", "floor_fillet_mm"), 0.0)
    return {**record, "workshop": {"errors": errors, **cutting, "milling": None}}


def _records(values: Any) -> list[Record]:
    """Those of the values that are records; what is wrong is told by the reader, at its place."""
    return [value for value in values if isinstance(value, dict)] if isinstance(values, list) else []


STEPS: Mapping[int, Callable[[Record], Record]] = {1: _know_the_workshop}


def migrated(record: Record, version: int) -> Record:
    """A record in the present form."""
    for number in range(version, CURRENT_VERSION):
        record = STEPS[number](record)
    return record
