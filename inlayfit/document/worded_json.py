"""Sentences of a project file that can still be said in another language or unit when it is opened again.

Beside its plain text a sentence keeps `{"pattern": "…", "values": {name: value}}`. A value is a text, a whole
number, another such record, or a measure: `{"kind": "length", "text": "5 mm", "numbers": [5.0]}`. The plain
text is what holds: a record that does not come to it, in whatever way, is left aside.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from enum import Enum
from typing import Any

from inlayfit.measures import Kind, Measure
from inlayfit.wording import Worded

_DEEPEST = 8


def worded_to_json(text: str) -> dict[str, Any] | None:
    """The record of a sentence; None if it is a plain text."""
    if not isinstance(text, Worded):
        return None
    values = {name: _value_to_json(value) for name, value in text.values.items()}
    return {"pattern": text.pattern, "values": values}


def worded_from_json(text: str, record: object) -> str:
    """The sentence with its pattern and values, or the plain text if the record is not of it."""
    try:
        worded = _worded(record, _DEEPEST)
    except (KeyError, TypeError, ValueError):
        return text
    return worded if worded == text else text


def _value_to_json(value: object) -> object:
    if isinstance(value, Worded):
        return worded_to_json(value)
    if isinstance(value, Enum):
        return {"pattern": str(value.value), "values": {}}
    if isinstance(value, Measure):
        return {"kind": value.kind.value, "text": value.text, "numbers": list(value.numbers)}
    return value if isinstance(value, int) else str(value)


def _worded(record: object, depth: int) -> Worded:
    if not isinstance(record, Mapping) or not isinstance(record["values"], Mapping) or depth == 0:
        raise TypeError
    return Worded.again(
        str(record["pattern"]), {n: _value(v, depth - 1) for n, v in record["values"].items()}
    )


def _value(value: object, depth: int) -> object:
    if isinstance(value, str | int):
        return value
    if not isinstance(value, Mapping) or "kind" not in value:
        return _worded(value, depth)
    kind = Kind(value["kind"])
    numbers = tuple(float(number) for number in value["numbers"])
    is_pair = kind in (Kind.PLACE, Kind.POINT, Kind.SIZE)
    if len(numbers) != (2 if is_pair else 1) or not all(map(math.isfinite, numbers)):
        raise ValueError
    return Measure(str(value["text"]), kind, numbers)
