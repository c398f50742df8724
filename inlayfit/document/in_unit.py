"""Sentences in another unit.

A sentence is worded where it is found, in millimetres. Shown to a person who works in inches, its lengths,
places and areas are put into inches; the rest of it stays.
"""

from __future__ import annotations

from inlayfit.measures import Measure
from inlayfit.units import Unit
from inlayfit.wording import Worded


def text_in_unit(text: str, unit: Unit) -> str:
    """A sentence as it is shown in a unit; one that does not remember its measures stays as it is."""
    if unit is Unit.MM or not isinstance(text, Worded):
        return text
    return text.changed(lambda value: value.in_unit(unit) if isinstance(value, Measure) else value)
