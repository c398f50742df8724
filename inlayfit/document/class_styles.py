"""How the five classes of gap look, on the screen and on paper: this is the one place that says it.

Every class has a colour, a stroke and a letter, so that it is told apart in grey and by every eye (WCAG 2.2,
1.4.1). The colours on light ground stand out more the more dangerous the class is; all reach a contrast of
3:1 against the canvas (1.4.11). Dark grounds have colours of their own, in the themes of the window.

Nothing heavy is imported here: the window's theme needs the colours before anything else.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Stroke(Enum):
    """How a band is drawn."""

    SOLID = "solid"
    TICKED = "solid with inward ticks"
    DASHED = "dashed"
    DOTTED = "dotted"


@dataclass(frozen=True, slots=True)
class ClassStyle:
    """One class.

    Attributes:
        colour: on light ground.
        stroke: how it is drawn.
        width_px: of the band on the screen.
        width_mm: of the band on paper.
    """

    colour: str
    stroke: Stroke
    width_px: float
    width_mm: float


STYLES = (
    ClassStyle("#260B5E", Stroke.TICKED, 5.0, 1.6),
    ClassStyle("#5A3CB4", Stroke.SOLID, 4.0, 1.3),
    ClassStyle("#3F6C6B", Stroke.SOLID, 2.0, 0.65),
    ClassStyle("#935600", Stroke.DASHED, 4.0, 1.3),
    ClassStyle("#C27C00", Stroke.DOTTED, 5.0, 1.6),
)
"""In the order of `inlayfit.fit.classes.GapClass`, from bites to loose."""
