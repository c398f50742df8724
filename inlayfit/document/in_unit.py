"""Sentences in another unit.

A sentence is worded where it is found, in millimetres. Shown to a person who works in inches, its lengths,
places and areas are put into inches; the rest of it stays. Shown in lines, a number keeps its unit or its "x"
beside it.
"""

from __future__ import annotations

from inlayfit.measures import Measure
from inlayfit.units import Unit
from inlayfit.wording import Worded


def text_in_unit(text: str, unit: Unit) -> str:
    """A sentence as it is shown in a unit; one that does not remember its measures stays as it is.

    No line of it ends between a number and what belongs to it.
    """
    if not isinstance(text, Worded):
        return text
    return text.changed(lambda value: value.in_unit(unit).unbroken() if isinstance(value, Measure) else value)
