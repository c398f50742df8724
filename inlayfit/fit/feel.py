"""What a clearance feels like at the bench, in six words, and where each word begins.

    won't start   the corner does not enter
    press         vice or arbor
    tap-in        mallet and block
    snug          thumb pressure, no play
    slip          drops in, slides out
    rattles       moves when shaken

The first edges between them are common practice for small parts in wood, plastic and light metal, no
standard. They are a place to start, and give way to what a person's own trials have shown.
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from inlayfit.errors import SpecError
from inlayfit.wording import Worded


class Feel(StrEnum):
    """The six words, tightest first."""

    WONT_START = "won't start"
    PRESS = "press"
    TAP_IN = "tap-in"
    SNUG = "snug"
    SLIP = "slip"
    RATTLES = "rattles"

    @property
    def test(self) -> str:
        """How it is told at the bench."""
        return _TESTS[self]


_TESTS = {
    Feel.WONT_START: "the corner does not enter",
    Feel.PRESS: "vice or arbor",
    Feel.TAP_IN: "mallet and block",
    Feel.SNUG: "thumb pressure, no play",
    Feel.SLIP: "drops in, slides out",
    Feel.RATTLES: "moves when shaken",
}

_ORDER = tuple(Feel)


@dataclass(frozen=True, slots=True)
class FeelZones:
    """Where each word begins, as clearance per side.

    Attributes:
        edges_mm: the five edges between the six words, rising.
    """

    edges_mm: tuple[float, float, float, float, float]

    def __post_init__(self) -> None:
        if any(low >= high for low, high in pairwise(self.edges_mm)):
            raise SpecError(
                Worded("The feel words' edges must rise from press to rattles; check the trials behind them.")
            )

    def feel_at(self, clearance_mm: float) -> Feel:
        """The word for a clearance; an edge belongs to the tighter of its two words."""
        return _ORDER[bisect_left(self.edges_mm, clearance_mm)]

    def span_mm(self, feel: Feel) -> tuple[float, float]:
        """Where a word begins and ends; infinite at both ends of the row."""
        edges = (float("-inf"), *self.edges_mm, float("inf"))
        number = _ORDER.index(feel)
        return edges[number], edges[number + 1]

    def middle_mm(self, feel: Feel) -> float:
        """The clearance to start from for a word: its middle, or just outside the last edge."""
        low, high = self.span_mm(feel)
        if feel is Feel.WONT_START:
            return high - 0.01
        return low + 0.05 if feel is Feel.RATTLES else (low + high) / 2


SEED_ZONES = FeelZones((-0.05, -0.02, 0.0, 0.05, 0.15))
"""Common practice, per side; replaced by a person's own log."""
