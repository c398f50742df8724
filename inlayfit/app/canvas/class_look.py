"""The five gap classes on the screen: their style, with the colours of the theme in force."""

from __future__ import annotations

from dataclasses import dataclass

from inlayfit.app.theme import Tokens
from inlayfit.document.class_styles import STYLES, Stroke
from inlayfit.fit.classes import GapClass, classify


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


LOOKS = tuple(
    ClassLook(gap_class, style.width_px, style.stroke)
    for gap_class, style in zip(GapClass, STYLES, strict=True)
)
"""In the order of `GapClass`, from bites to loose."""


def look_of(gap_mm: float, clearance_mm: float) -> ClassLook:
    """The look of one gap."""
    return LOOKS[int(classify([gap_mm], clearance_mm)[0])]
