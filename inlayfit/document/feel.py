"""Feel words: what a fit is like under the thumb, and between which clearances that is so.

The words and their starting limits are common practice at the bench, not a standard; a person's own
trials replace the limits. Limits are clearance per side in millimetres.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class FeelZone:
    """One word on the ruler.

    Attributes:
        word: the feel.
        low_mm: where it starts, per side; -inf for the tightest.
        high_mm: where it ends; inf for the loosest.
        test: how one tells at the bench.
    """

    word: str
    low_mm: float
    high_mm: float
    test: str

    @property
    def middle_mm(self) -> float:
        """The clearance to start from when this feel is wanted; just past the limit of an open zone."""
        if self.low_mm == float("-inf"):
            return self.high_mm - 0.01
        if self.high_mm == float("inf"):
            return self.low_mm + 0.05
        return round((self.low_mm + self.high_mm) / 2, 3)


SEED_ZONES: tuple[FeelZone, ...] = (
    FeelZone("won't start", float("-inf"), -0.05, "it does not begin to enter"),
    FeelZone("press", -0.05, -0.02, "goes in with a vice or an arbor press"),
    FeelZone("tap-in", -0.02, 0.0, "goes in with a mallet and a block"),
    FeelZone("snug", 0.0, 0.05, "thumb pressure, no play"),
    FeelZone("slip", 0.05, 0.15, "drops in and slides out"),
    FeelZone("rattles", 0.15, float("inf"), "moves when shaken"),
)
"""Starting limits; common practice, from memory, to be replaced by a person's own trials."""


def feel_of(clearance_mm: float, zones: tuple[FeelZone, ...] = SEED_ZONES) -> FeelZone:
    """The zone a clearance lies in; a limit belongs to the looser zone."""
    for zone in zones:
        if clearance_mm < zone.high_mm:
            return zone
    return zones[-1]


def zone_named(word: str, zones: tuple[FeelZone, ...] = SEED_ZONES) -> FeelZone:
    """The zone of a word; KeyError if there is none."""
    for zone in zones:
        if zone.word == word:
            return zone
    raise KeyError(word)
