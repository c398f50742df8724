"""`$INSUNITS`: the code of the length that one drawing unit stands for (DXF reference, HEADER section).

A usable unit is one in which somebody could have drawn a part. Codes of other units than those this program
shows are converted without loss and read as millimetres.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from inlayfit.finding import Finding, Severity
from inlayfit.units import Unit
from inlayfit.wording import Worded

_DIRECT = {1: Unit.INCH, 2: Unit.FOOT, 4: Unit.MM, 5: Unit.CM, 6: Unit.M, 9: Unit.THOU, 13: Unit.MICROMETRE}
_SURVEY_FOOT_MM = Fraction(1200, 3937) * 1000  # by definition 1200/3937 m (NIST SP 811, appendix B)
_CONVERTED = {
    8: (Worded("microinches"), Fraction(254, 10_000_000)),
    10: (Worded("yards"), Fraction(9144, 10)),
    12: (Worded("nanometres"), Fraction(1, 1_000_000)),
    14: (Worded("decimetres"), Fraction(100)),
    15: (Worded("decametres"), Fraction(10_000)),
    16: (Worded("hectometres"), Fraction(100_000)),
    21: (Worded("US survey feet"), _SURVEY_FOOT_MM),
    22: (Worded("US survey inches"), _SURVEY_FOOT_MM / 12),
    23: (Worded("US survey yards"), _SURVEY_FOOT_MM * 3),
}
_UNUSABLE = {
    3: Worded("miles"), 7: Worded("kilometres"), 11: Worded("angstroms"), 17: Worded("gigametres"),
    18: Worded("astronomical units"),
    19: Worded("light years"), 20: Worded("parsecs"), 24: Worded("US survey miles"),
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class UnitReading:
    """What a file says about its unit.

    Attributes:
        stated: the unit it states, None if none or no usable one.
        mm: how many millimetres a drawing unit is taken for.
        finding: what there is to say about it.
    """

    stated: Unit | None
    mm: Fraction
    finding: Finding | None = None


def read_unit_code(code: int) -> UnitReading:
    """The unit behind an `$INSUNITS` code; a missing or unusable one is read as millimetres."""
    if code in _DIRECT:
        return UnitReading(_DIRECT[code], _DIRECT[code].mm)
    if code in _CONVERTED:
        name, mm = _CONVERTED[code]
        message = Worded("The drawing is in {name}; it was converted to millimetres.", name=name)
        remedy = Worded("Nothing to do, unless the size is wrong: then choose another unit.")
        return UnitReading(Unit.MM, mm, Finding("unit-converted", Severity.NOTE, message, remedy, fixed=True))
    if code == 0:
        return UnitReading(None, Fraction(1))
    said = (
        Worded("says its unit is {unit}", unit=_UNUSABLE[code])
        if code in _UNUSABLE
        else Worded("states an unknown unit ({code})", code=str(code))
    )
    message = Worded(
        "The drawing {said}, which no part is drawn in; it is read as if it were in millimetres.", said=said
    )
    remedy = Worded("Choose the unit that gives the size it should have.")
    return UnitReading(None, Fraction(1), Finding("unit-unusable", Severity.WARN, message, remedy))
