"""ISO 286 limits of size: what H7, g6 or IT8 means in millimetres.

A *grade* IT5 … IT14 is the width of a tolerance zone; it depends on the band a size lies in ("over A, up to
and including B"). A *letter* puts the zone beside the nominal size: a capital for a hole, a small one for a
shaft. H starts at the nominal size and lies above it, h lies below it, js and JS lie astride.

Known here: holes H and JS; shafts c d e f g h js k m n p s u; sizes over 0 up to 500 mm; grades 5 to 14.
Other letters are refused rather than guessed. The letter k is as tabulated for grades 5 to 7 and starts at
the nominal size above. js is exactly half the grade on either side; the text of 1988 rounded it in grades 7
to 11, newer tables do not.

Sources: ISO 286-1:2010, tables of standard tolerances and fundamental deviations, from public transcriptions
and a package that agree in all cells compared (the standard's own text was not seen). Grades 12 to 14 are ten
times grades 7 to 9 in every printed column; the two bands above 315 mm follow that rule and were not seen
printed. Clearances here are *overall*, on the diameter, as the standard has them; `per_side` halves them.
"""

from __future__ import annotations

import math
import re
from bisect import bisect_left
from dataclasses import dataclass

from inlayfit.errors import SpecError
from inlayfit.wording import Worded

LARGEST_SIZE_MM = 500.0
"""Above this ISO 286 has other tables."""

_BANDS = (3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500)

_GRADES_UM: dict[int, tuple[int, ...]] = {
    5: (4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27),
    6: (6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40),
    7: (10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63),
    8: (14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97),
    9: (25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155),
    10: (40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250),
    11: (60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400),
    12: (100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520, 570, 630),
    13: (140, 180, 220, 270, 330, 390, 460, 540, 630, 720, 810, 890, 970),
    14: (250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150, 1300, 1400, 1550),
}

# Letters that lie below the nominal size: their upper deviation es, µm.
_UPPER_UM: dict[str, tuple[int, ...]] = {
    "d": (-20, -30, -40, -50, -65, -80, -100, -120, -145, -170, -190, -210, -230),
    "e": (-14, -20, -25, -32, -40, -50, -60, -72, -85, -100, -110, -125, -135),
    "f": (-6, -10, -13, -16, -20, -25, -30, -36, -43, -50, -56, -62, -68),
    "g": (-2, -4, -5, -6, -7, -9, -10, -12, -14, -15, -17, -18, -20),
    "h": (0,) * 13,
}
# Letters that lie above it: their lower deviation ei, µm.
_LOWER_UM: dict[str, tuple[int, ...]] = {
    "k": (0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5),
    "m": (2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23),
    "n": (4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40),
    "p": (6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68),
}

# Three letters change inside the bands too: upper end of each finer band, and the deviation there, µm.
_FINE_BANDS_C = (
    3, 6, 10, 18, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
)  # fmt: skip
_UPPER_C_UM = (
    -60, -70, -80, -95, -110, -120, -130, -140, -150, -170, -180, -200, -210, -230, -240, -260, -280, -300,
    -330, -360, -400, -440, -480,
)  # fmt: skip
_FINE_BANDS_S = (
    3, 6, 10, 18, 30, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
)  # fmt: skip
_LOWER_S_UM = (
    14, 19, 23, 28, 35, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208, 232, 252,
)  # fmt: skip
_FINE_BANDS_U = (
    3, 6, 10, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450,
    500,
)  # fmt: skip
_LOWER_U_UM = (
    18, 23, 28, 33, 41, 48, 60, 70, 87, 102, 124, 144, 170, 190, 210, 236, 258, 284, 315, 350, 390, 435, 490,
    540,
)  # fmt: skip

_LAST_K_GRADE = 7
_ZONE = re.compile(r"([A-Za-z]{1,2})([0-9]{1,2})")
_SHOWN_CHARACTERS = 20


@dataclass(frozen=True, slots=True)
class Zone:
    """Where a size may lie, as deviations from the nominal size in millimetres.

    Attributes:
        lower_mm: EI of a hole, ei of a shaft.
        upper_mm: ES or es.
    """

    lower_mm: float
    upper_mm: float

    @property
    def middle_mm(self) -> float:
        """Deviation of the middle of the zone."""
        return (self.lower_mm + self.upper_mm) / 2

    @property
    def half_width_mm(self) -> float:
        """The ± about the middle."""
        return (self.upper_mm - self.lower_mm) / 2


@dataclass(frozen=True, slots=True)
class FitLimits:
    """A hole and a shaft of one nominal size.

    Attributes:
        size_mm: nominal size, a diameter or a width.
        hole: zone of the hole (the pocket).
        shaft: zone of the shaft (the plug).
    """

    size_mm: float
    hole: Zone
    shaft: Zone

    @property
    def overall_mm(self) -> tuple[float, float]:
        """Least and greatest clearance on the diameter; negative is interference."""
        return self.hole.lower_mm - self.shaft.upper_mm, self.hole.upper_mm - self.shaft.lower_mm

    @property
    def per_side_mm(self) -> tuple[float, float]:
        """Least and greatest clearance at one wall, the plug centred."""
        least, greatest = self.overall_mm
        return least / 2, greatest / 2

    @property
    def kind(self) -> str:
        """Whether it is never tight ("clearance"), never loose ("interference"), or either ("transition").

        Line to line at the worst counts as the kind it touches (10 H7/p6 is an interference fit).
        """
        least, greatest = self.overall_mm
        if least >= 0:
            return "clearance"
        return "interference" if greatest <= 0 else "transition"


def grade_mm(size_mm: float, grade: int) -> float:
    """Width of the tolerance zone IT`grade` at a size.

    Raises:
        SpecError: the size or the grade is not in the table.
    """
    _check_size(size_mm)
    return _grade_um(size_mm, grade) / 1000


def hole_zone(size_mm: float, zone: str) -> Zone:
    """Limits of a hole, such as "H7".

    Raises:
        SpecError: the size, the letter or the grade is not known here.
    """
    _check_size(size_mm)
    letter, grade = _letter_and_grade(zone)
    width = _grade_um(size_mm, grade)
    if letter == "H":
        return Zone(0.0, width / 1000)
    if letter == "JS":
        return Zone(-width / 2000, width / 2000)
    raise SpecError(
        Worded("A hole “{zone}” is not in the table here; use H or JS, such as H7.", zone=_shown(zone))
    )


def shaft_zone(size_mm: float, zone: str) -> Zone:
    """Limits of a shaft, such as "g6".

    Raises:
        SpecError: the size, the letter or the grade is not known here.
    """
    _check_size(size_mm)
    letter, grade = _letter_and_grade(zone)
    width = _grade_um(size_mm, grade)
    if letter == "js":
        return Zone(-width / 2000, width / 2000)
    upper = _upper_um(size_mm, letter)
    if upper is not None:
        return Zone((upper - width) / 1000, upper / 1000)
    lower = _lower_um(size_mm, letter, grade)
    if lower is not None:
        return Zone(lower / 1000, (lower + width) / 1000)
    raise SpecError(
        Worded(
            "A shaft “{zone}” is not in the table here; use c d e f g h js k m n p s or u, such as g6.",
            zone=_shown(zone),
        )
    )


def fit_limits(size_mm: float, fit: str) -> FitLimits:
    """Hole and shaft of a fit, such as "H7/g6".

    Raises:
        SpecError: the text is not a fit, or a part of it is not known here.
    """
    hole, slash, shaft = fit.replace(" ", "").partition("/")
    if not slash:
        raise SpecError(
            Worded("“{fit}” is not a fit; write a hole and a shaft, such as H7/g6.", fit=_shown(fit))
        )
    return FitLimits(size_mm, hole_zone(size_mm, hole), shaft_zone(size_mm, shaft))


def _grade_um(size_mm: float, grade: int) -> int:
    widths = _GRADES_UM.get(grade)
    if widths is None:
        raise SpecError(Worded("Grade IT{grade} is not in the table here; use IT5 to IT14.", grade=grade))
    return widths[bisect_left(_BANDS, size_mm)]


def _upper_um(size_mm: float, letter: str) -> int | None:
    if letter == "c":
        return _UPPER_C_UM[bisect_left(_FINE_BANDS_C, size_mm)]
    row = _UPPER_UM.get(letter)
    return None if row is None else row[bisect_left(_BANDS, size_mm)]


def _lower_um(size_mm: float, letter: str, grade: int) -> int | None:
    if letter == "s":
        return _LOWER_S_UM[bisect_left(_FINE_BANDS_S, size_mm)]
    if letter == "u":
        return _LOWER_U_UM[bisect_left(_FINE_BANDS_U, size_mm)]
    if letter == "k" and grade > _LAST_K_GRADE:
        return 0
    row = _LOWER_UM.get(letter)
    return None if row is None else row[bisect_left(_BANDS, size_mm)]


def _letter_and_grade(zone: str) -> tuple[str, int]:
    match = _ZONE.fullmatch(zone.strip())
    if match is None:
        raise SpecError(
            Worded(
                "“{zone}” is not a tolerance zone; write a letter and a grade, such as H7.", zone=_shown(zone)
            )
        )
    return match[1], int(match[2])


def _check_size(size_mm: float) -> None:
    if not math.isfinite(size_mm) or not 0 < size_mm <= LARGEST_SIZE_MM:
        raise SpecError(
            Worded(
                "A size of {size} mm is outside the table, which runs up to {largest} mm; "
                "check it and its unit.",
                size=f"{size_mm:g}",
                largest=f"{LARGEST_SIZE_MM:g}",
            )
        )


def _shown(text: str) -> str:
    plain = "".join(c for c in text if c.isprintable())
    return plain if len(plain) <= _SHOWN_CHARACTERS else f"{plain[:_SHOWN_CHARACTERS]}…"
