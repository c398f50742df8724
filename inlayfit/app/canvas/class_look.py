"""How the five gap classes look: width, stroke and letter beside the colour (WCAG 2.2, 1.4.1)."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from inlayfit.app.theme import Tokens
from inlayfit.fit.classes import GapClass, classify


class Stroke(Enum):
    """How a band is drawn."""

    SOLID = "solid"
    TICKED = "solid with inward ticks"
    DASHED = "dashed"
    DOTTED = "dotted"


@dataclass(frozen=True, slots=True)
class ClassLook:
    """One class.

    Attributes:
        gap_class: which.
        width_px: of the band.
        stroke: how it is drawn.
    """

    gap_class: GapClass
    width_px: float
    stroke: Stroke

    def colour(self, tokens: Tokens) -> str:
        """Its colour in a theme."""
        return tokens.gap_colours[self.gap_class]

    def lettering(self, tokens: Tokens) -> str:
        """The colour of its letter on its own colour."""
        return tokens.on_loose if self.gap_class is GapClass.LOOSE else tokens.canvas


LOOKS = (
    ClassLook(GapClass.BITES, 5.0, Stroke.TICKED),
    ClassLook(GapClass.TIGHT, 4.0, Stroke.SOLID),
    ClassLook(GapClass.ON, 2.0, Stroke.SOLID),
    ClassLook(GapClass.SLACK, 4.0, Stroke.DASHED),
    ClassLook(GapClass.LOOSE, 5.0, Stroke.DOTTED),
)
"""In the order of `GapClass`, from bites to loose."""


def look_of(gap_mm: float, clearance_mm: float) -> ClassLook:
    """The look of one gap."""
    return LOOKS[int(classify([gap_mm], clearance_mm)[0])]
