"""What a machine and its cutters get wrong, as far as a person knows it. What it does, `scatter` says."""

from __future__ import annotations

import math
from dataclasses import dataclass, fields

from inlayfit.errors import SpecError
from inlayfit.wording import Worded

_LARGEST_EXPANSION_PER_K = 1e-3
_NAMES = {
    "cutter_nominal_mm": Worded("cutter nominal"),
    "cutter_varies_mm": Worded("cutter varies"),
    "runout_mm": Worded("runout"),
    "repeatability_mm": Worded("repeatability"),
    "thickness_varies_mm": Worded("thickness varies"),
    "temperature_varies_k": Worded("temperature varies"),
    "expansion_difference_per_k": Worded("expansion difference per"),
}


@dataclass(frozen=True, slots=True)
class MachineErrors:
    """What a machine and its cutters get wrong; 0 where it is not known.

    Attributes:
        cutter_nominal_mm: the diameter the path is reckoned with, where it is not the measured one.
        cutter_varies_mm: ± with which the diameter is known.
        runout_mm: total reading of a dial gauge on the turning cutter.
        repeatability_mm: ± with which the width of one half comes out again.
        thickness_varies_mm: ± of the stock's thickness.
        temperature_varies_k: ± of the temperature, in kelvin.
        expansion_difference_per_k: expansion of the plug less that of the host, per kelvin.
    """

    cutter_nominal_mm: float = 0.0
    cutter_varies_mm: float = 0.0
    runout_mm: float = 0.0
    repeatability_mm: float = 0.0
    thickness_varies_mm: float = 0.0
    temperature_varies_k: float = 0.0
    expansion_difference_per_k: float = 0.0

    def __post_init__(self) -> None:
        for each in fields(self):
            value = getattr(self, each.name)
            signed = each.name == "expansion_difference_per_k"
            if not math.isfinite(value) or (value < 0 and not signed):
                raise SpecError(
                    Worded("The {name} is 0 or more; give it as a plain length.", name=_NAMES[each.name])
                )
        if abs(self.expansion_difference_per_k) > _LARGEST_EXPANSION_PER_K:
            raise SpecError(
                Worded("An expansion is a few millionths per kelvin, such as 97e-6; check the number.")
            )
        if bool(self.temperature_varies_k) != bool(self.expansion_difference_per_k):
            raise SpecError(
                Worded("Warmth needs two numbers, the kelvin and the difference in expansion; give both.")
            )

    @property
    def scatters(self) -> bool:
        """Whether any error is known that differs from part to part."""
        spread = (self.cutter_varies_mm, self.runout_mm, self.repeatability_mm, self.thickness_varies_mm)
        return any(spread) or bool(self.temperature_varies_k)
