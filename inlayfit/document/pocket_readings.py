"""The readings of a pocket as they are kept with its fitting, and what they say of it.

The outline stays as it was drawn. What the readings make of it (`fit.readings`) follows from the two whenever
it is asked for, so readings can be seen, changed and taken out again, and a drawing that is read anew is
corrected anew.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from inlayfit.errors import SpecError
from inlayfit.wording import Worded

if TYPE_CHECKING:  # heavy; a window must not wait for it
    from inlayfit.fit.measured import PocketModel, Reading

MOST_READINGS = 40
"""Nobody reads more widths of one pocket by hand; a page can still show them all."""


@dataclass(frozen=True, slots=True)
class PocketReadings:
    """Widths of a pocket, as drawn and as read.

    Attributes:
        readings: in the order they were typed.
        repeatability_mm: ± with which one reading comes out again, 95 %.
        model: what they say of the pocket; it follows from them.

    Raises:
        SpecError: they cannot tell, contradict each other, make no sense, or are too many.
    """

    readings: tuple[Reading, ...]
    repeatability_mm: float
    model: PocketModel = field(init=False, compare=False, repr=False)

    def __post_init__(self) -> None:
        from inlayfit.fit.measured import fit_pocket

        if len(self.readings) > MOST_READINGS:
            raise SpecError(
                Worded(
                    "A pocket has {count} readings; keep the {most} that tell the most.",
                    count=len(self.readings),
                    most=MOST_READINGS,
                )
            )
        model = fit_pocket(self.readings, repeatability_mm=self.repeatability_mm)
        object.__setattr__(self, "model", model)
