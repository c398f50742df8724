"""Which way round each written contour runs, so that the cutter climbs or cuts conventionally along it.

A region keeps itself on the left of its rings, so a figure is right as it is or all its contours are turned
round (`bench.cutting`). Which, depends on where the material that stays lies: round a plug inside the line,
round a pocket outside it, and outside too for rest corners, which are small pockets. Marks have no
direction, nor has the line of a beam.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Any

from inlayfit.bench.cutting import Stays, Turn, contour_turn, turn_of
from inlayfit.bench.milling import Milling
from inlayfit.drawing import Drawing, Figure
from inlayfit.fit.spec import Half
from inlayfit.geometry.flatten import flatten

_FLAT_MM = 0.01  # fine enough to tell left from right


@dataclass(frozen=True, slots=True)
class ContourNote:
    """One written contour.

    Attributes:
        fitting: the outline id it belongs to.
        half: pocket or plug.
        layer: where it is written.
        turn: which way round it runs, seen from the spindle, y up.
        milling: how the cutter meets the work along it.
    """

    fitting: str
    half: Half
    layer: str
    turn: Turn
    milling: Milling

    def to_json(self) -> dict[str, Any]:
        """The form in `fit.json`; the fitting it stands in is not repeated."""
        return {
            "half": self.half.value,
            "layer": self.layer,
            "turn": self.turn.value,
            "milling": self.milling.value,
        }


def directed(
    drawing: Drawing, half: Half, milling: Milling | None, *, cut: Iterable[str]
) -> tuple[Drawing, tuple[ContourNote, ...]]:
    """The drawing with its contours running the way they are cut, and a note of each.

    Args:
        drawing: of one half, outer contours counter-clockwise.
        half: which.
        milling: None leaves it as it is.
        cut: names of the figures that are still to be cut, with a cutter.
    """
    if milling is None:
        return drawing, ()
    named = frozenset(cut)
    figures: list[Figure] = []
    notes: list[ContourNote] = []
    for figure in drawing:
        stays = _stays(figure.layer, half) if figure.name in named else None
        if stays is None:
            figures.append(figure)
            continue
        figure = _run(figure, contour_turn(milling, stays))
        figures.append(figure)
        for contour in figure.contours:
            turn = turn_of(flatten(contour, _FLAT_MM))
            notes.append(ContourNote(figure.name, half, figure.layer, turn, milling))
    return Drawing(tuple(figures)), tuple(notes)


def _stays(layer: str, half: Half) -> Stays | None:
    """Where the material that stays lies; None for a line that is not cut along."""
    if layer.endswith("_REST"):
        return Stays.OUTSIDE
    if layer.startswith(half.value.upper()):
        return Stays.OUTSIDE if half is Half.POCKET else Stays.INSIDE
    return None


def _run(figure: Figure, outer: Turn) -> Figure:
    """The figure with its outer contours running one way; holes run the other."""
    if outer is Turn.COUNTER_CLOCKWISE:
        return figure
    return replace(figure, contours=tuple(contour.reversed() for contour in figure.contours))
