"""Units and lengths: millimetres inside, typed lengths read and shown only here.

What a person may type is a sum of terms, each a number with a unit:

    number  0.2   0,2   .035   35   1/8   1 3/8   1-1/2   1½   2e-3
    unit    mm  cm  m  µm  in  "  ft  '  thou (0.001 in)  tenths (0.0001 in)
    sum     3 mm - 8 thou     1 in + 1/8 in     −0.02 (a true minus, or a hyphen)

A number without a unit has the unit of the box it was typed in. A text that could mean two lengths is
refused, with a remedy, rather than guessed. The value is kept as an exact fraction of millimetres, since
an inch is exactly 25.4 mm (international yard and pound agreement, 1959; NIST SP 811, appendix B), so
showing it in another unit and going back changes nothing.
"""

from __future__ import annotations

import math
import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from functools import lru_cache
from typing import NoReturn

from inlayfit.errors import LengthError
from inlayfit.wording import Worded

LARGEST_LENGTH_MM = 1_000_000
"""A kilometre: above this a length is a typing mistake."""
_LONGEST_TEXT = 80
_LARGEST_EXPONENT = 12
_KEPT_NUMBERS = 4096
MINUS = "\N{MINUS SIGN}"


class Unit(Enum):
    """A unit of length; its value is how many millimetres it has, exactly."""

    MM = Fraction(1)
    CM = Fraction(10)
    M = Fraction(1000)
    INCH = Fraction(254, 10)
    THOU = Fraction(254, 10_000)
    FOOT = Fraction(3048, 10)
    MICROMETRE = Fraction(1, 1000)
    TENTH = Fraction(254, 100_000)
    PIXEL = Fraction(254, 960)
    """The CSS pixel, 1/96 in: what a user unit of an SVG file is when nothing else is said."""

    @property
    def mm(self) -> Fraction:
        """Millimetres in one of this unit, exactly."""
        return self.value

    @property
    def symbol(self) -> str:
        """What stands behind a number: "mm", "in", "thou"."""
        return _SHOWN[self][0]

    @property
    def readout_decimals(self) -> int:
        """Decimals of a shown clearance: whole micrometres in mm, tenths in thou and inches."""
        return _SHOWN[self][1]

    @property
    def entry_decimals(self) -> int:
        """Decimals that carry every whole micrometre there and back."""
        return _SHOWN[self][2]


_SHOWN: dict[Unit, tuple[str, int, int]] = {
    Unit.MM: ("mm", 3, 3),
    Unit.CM: ("cm", 4, 4),
    Unit.M: ("m", 6, 6),
    Unit.INCH: ("in", 4, 5),
    Unit.THOU: ("thou", 1, 2),
    Unit.FOOT: ("ft", 5, 6),
    Unit.MICROMETRE: ("µm", 0, 0),
    Unit.TENTH: ("tenths", 0, 1),
    Unit.PIXEL: ("px", 3, 3),
}

_NAMES: dict[str, Unit] = {
    **dict.fromkeys(("mm", "millimetre", "millimetres", "millimeter", "millimeters"), Unit.MM),
    **dict.fromkeys(("cm", "centimetre", "centimetres", "centimeter", "centimeters"), Unit.CM),
    **dict.fromkeys(("m", "metre", "metres", "meter", "meters"), Unit.M),
    **dict.fromkeys(("in", "inch", "inches", '"', "''"), Unit.INCH),
    **dict.fromkeys(("thou", "thous"), Unit.THOU),
    **dict.fromkeys(("ft", "foot", "feet", "'"), Unit.FOOT),
    **dict.fromkeys(("um", "µm", "micron", "microns", "micrometre", "micrometres"), Unit.MICROMETRE),
    **dict.fromkeys(("micrometer", "micrometers"), Unit.MICROMETRE),
    **dict.fromkeys(("tenth", "tenths"), Unit.TENTH),
    **dict.fromkeys(("px", "pixel", "pixels"), Unit.PIXEL),
}


@dataclass(frozen=True, slots=True, order=True)
class Length:
    """A length as an exact number of millimetres."""

    mm: Fraction

    @classmethod
    def of(cls, value: Fraction | int, unit: Unit) -> Length:
        """So many of a unit."""
        return cls(value * unit.mm)

    def in_unit(self, unit: Unit) -> Fraction:
        """How many of a unit it is, exactly."""
        return self.mm / unit.mm

    def __float__(self) -> float:
        return float(self.mm)


def parse_unit(text: str) -> Unit:
    """The unit a name, symbol or abbreviation stands for.

    Raises:
        LengthError: the name is unknown or has two meanings.
    """
    name = _normalised(text).strip().lower().removesuffix(".")
    if name in ("mil", "mils"):
        raise LengthError(
            Worded(
                "“{text}” means a thousandth of an inch to some and a millimetre to others; "
                "write thou or mm.",
                text=_shown(text),
            ),
            text=text,
        )
    unit = _NAMES.get(name)
    if unit is None:
        raise LengthError(
            Worded(
                "“{text}” is not a unit known here; use mm, cm, m, µm, in, ft, thou, tenths or px.",
                text=_shown(text),
            ),
            text=text,
        )
    return unit


def parse_length(text: str, *, default: Unit) -> Length:
    """The length a person typed; see the module docstring for the forms.

    Args:
        text: what was typed.
        default: the unit of a number that has none.

    Raises:
        LengthError: the text is not one clear length; the message says why and what to type.
    """
    return _Reader(text, default).length()


def format_length(
    mm: float | Fraction | Length, unit: Unit, *, decimals: int | None = None, with_unit: bool = True
) -> str:
    """A length as shown: rounded to `decimals` (the unit's readout if None), a true minus, never −0.

    A half rounds away from zero, and a float counts as the shortest decimal that means it, so 0.0305 shows
    as 0.031. A number that is not finite shows as a dash.
    """
    places = unit.readout_decimals if decimals is None else decimals
    number = _number(mm, unit, places)
    return "–" if number is None else f"{number} {unit.symbol}" if with_unit else number


@lru_cache(maxsize=_KEPT_NUMBERS, typed=True)
def _number(mm: float | Fraction | Length, unit: Unit, places: int) -> str | None:
    """The number alone, None if it is not finite. Kept: scales and labels say the same at every repaint."""
    exact = _exact_mm(mm)
    return None if exact is None else _fixed(_rounded(exact / unit.mm, places), places)


def format_entry(mm: float | Fraction | Length, unit: Unit) -> str:
    """A length for a box to edit: enough decimals for whole micrometres, no needless zeros."""
    number = format_length(mm, unit, decimals=unit.entry_decimals, with_unit=False)
    if "." in number:
        number = number.rstrip("0").removesuffix(".")
    return f"{number} {unit.symbol}"


@lru_cache(maxsize=_KEPT_NUMBERS, typed=True)
def format_per_side(clearance_mm: float | Fraction | Length, unit: Unit, *, with_unit: bool = False) -> str:
    """A clearance as always shown: "0.030 per side (0.060 overall)".

    The gap at one wall is rounded first and then doubled, so the two numbers always agree.
    """
    exact = _exact_mm(clearance_mm)
    if exact is None:
        return "–"
    places = unit.readout_decimals
    side = _rounded(exact / unit.mm, places)
    symbol = f" {unit.symbol}" if with_unit else ""
    return f"{_fixed(side, places)}{symbol} per side ({_fixed(2 * side, places)}{symbol} overall)"


def format_in_both(mm: float | Fraction | Length, unit: Unit) -> str:
    """What a box echoes: the length in its unit, and in the other system ("3.175 mm = 0.125 in")."""
    metric = unit in (Unit.MM, Unit.CM, Unit.M, Unit.MICROMETRE)
    other = Unit.INCH if metric else Unit.MM
    return f"{format_entry(mm, unit)} = {format_entry(mm, other)}"


def _exact_mm(value: float | Fraction | Length) -> Fraction | None:
    if isinstance(value, Length):
        return value.mm
    if isinstance(value, float):
        return Fraction(repr(float(value))) if math.isfinite(value) else None
    return Fraction(value)


def _rounded(value: Fraction, places: int) -> Fraction:
    """To so many decimals, halves away from zero."""
    scale: int = 10**places
    steps = math.floor(abs(value) * scale + Fraction(1, 2))
    return Fraction(steps if value > 0 else -steps, scale)


def _fixed(value: Fraction, places: int) -> str:
    """A decimal with exactly so many places; `value` has no more."""
    digits = f"{abs(value.numerator) * 10**places // value.denominator:0{places + 1}d}"
    number = f"{digits[:-places]}.{digits[-places:]}" if places else digits
    return f"{MINUS}{number}" if value < 0 else number


# --- reading -----------------------------------------------------------------------------------------

_TOKEN = re.compile(
    r"(?P<number>(?:[0-9][0-9.,]*|[.,][0-9][0-9.,]*)(?:[eE][+-]?[0-9]+)?)"
    r"|(?P<vulgar>[¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉])"
    r"|(?P<unit>[A-Za-zµ]+\.?|''|[\"'])"
    r"|(?P<sign>[+-])|(?P<slash>/)|(?P<space> +)|(?P<other>.)",
    re.DOTALL,
)
_SAME = str.maketrans(
    {
        MINUS: "-",
        "\N{FRACTION SLASH}": "/",
        "\N{DIVISION SLASH}": "/",
        "\N{DOUBLE PRIME}": '"',
        "\N{RIGHT DOUBLE QUOTATION MARK}": '"',
        "\N{PRIME}": "'",
        "\N{RIGHT SINGLE QUOTATION MARK}": "'",
        "\N{GREEK SMALL LETTER MU}": "µ",
        "\t": " ",
        "\N{NO-BREAK SPACE}": " ",
        "\N{NARROW NO-BREAK SPACE}": " ",
        "\N{THIN SPACE}": " ",
    }
)
_NOT_NUMBERS = {"nan", "inf", "infinity"}


@dataclass(frozen=True, slots=True)
class _Token:
    kind: str
    text: str
    tight: bool  # no space before it


_END = _Token("end", "", tight=False)


def _normalised(text: str) -> str:
    return text.translate(_SAME)


def _shown(text: str) -> str:
    """The text as quoted in a message: on one line, and not longer than a glance."""
    plain = "".join(c if c.isprintable() else " " for c in text).strip()
    return plain if len(plain) <= 40 else f"{plain[:37]}…"


def _tokens(text: str) -> list[_Token]:
    tokens: list[_Token] = []
    tight = True
    for match in _TOKEN.finditer(_normalised(text)):
        kind = match.lastgroup or "other"
        if kind != "space":
            tokens.append(_Token(kind, match.group(), tight))
        tight = kind != "space"
    return tokens


class _Reader:
    """Reads one typed length; a recursive-descent reader over a handful of tokens."""

    def __init__(self, text: str, default: Unit) -> None:
        self._text = text
        self._default = default
        self._at = 0
        self._tokens: Sequence[_Token] = () if len(text) > _LONGEST_TEXT else _tokens(text)

    def length(self) -> Length:
        if len(self._text) > _LONGEST_TEXT:
            self._refuse(Worded("is too long to be a length; type a number and a unit, such as 0.05 mm"))
        if not self._tokens:
            raise LengthError(
                Worded("No length was given; type a number and a unit, such as 0.05 mm."), text=self._text
            )
        for token in self._tokens:
            if token.kind == "other":
                culprit = (
                    Worded("“{text}”", text=_shown(token.text))
                    if token.text.isprintable()
                    else Worded("an invisible character")
                )
                self._refuse(
                    Worded("holds {culprit}, which has no meaning in a length; remove it", culprit=culprit)
                )
        terms = self._terms()
        self._check_units([unit for _, unit in terms])
        total = sum((value * (unit or self._default).mm for value, unit in terms), Fraction(0))
        if abs(total) > LARGEST_LENGTH_MM:
            self._refuse(Worded("is longer than a kilometre; check the number and its unit"))
        return Length(total)

    def _terms(self) -> list[tuple[Fraction, Unit | None]]:
        terms: list[tuple[Fraction, Unit | None]] = []
        sign = -1 if self._take_sign() == "-" else 1
        while True:
            value = sign * self._number()
            terms.append((value, self._unit()))
            operator = self._take_sign()
            if operator is None:
                break
            sign = -1 if operator == "-" else 1
        self._check_end()
        return terms

    def _check_end(self) -> None:
        token = self._peek()
        if token.kind in ("number", "vulgar"):
            self._refuse(Worded("holds two lengths side by side; put + or - between them"))
        if token.kind == "unit":
            self._refuse(Worded("has two units behind one number; keep one of them"))
        if token.kind == "slash":
            self._refuse(
                Worded("divides a length; type the result, or a fraction of whole numbers such as 1/8 in")
            )

    def _check_units(self, units: Sequence[Unit | None]) -> None:
        """A bare number beside one with a foreign unit could have either unit."""
        if None in units and any(unit not in (None, self._default) for unit in units):
            self._refuse(Worded("has a unit on some of its numbers only; give every number its unit"))

    # -- numbers

    def _number(self) -> Fraction:
        token = self._take()
        if token.kind == "vulgar":
            return _vulgar(token.text)
        if token.kind != "number":
            self._refuse_start(token)
        if self._peek().kind == "slash":
            return self._fraction(token)
        if self._mixed_follows():
            whole = self._whole(token)
            if self._peek().kind == "sign":
                self._take()
            part = self._take()
            fraction = _vulgar(part.text) if part.kind == "vulgar" else self._fraction(part)
            if fraction >= 1:
                self._refuse(
                    Worded(
                        "has a whole number in front of a fraction that is not less than one; "
                        "type it as a decimal or as one fraction"
                    )
                )
            return whole + fraction
        if self._peek().kind == "number":
            self._refuse(
                Worded("holds two numbers side by side; use one decimal mark, or put + or - between them")
            )
        return self._decimal(token)

    def _mixed_follows(self) -> bool:
        """Whether a fraction follows that belongs to the whole number just read (1 3/8, 1½, 1-1/2)."""
        ahead, after, last = (self._peek(i) for i in range(3))
        if ahead.kind == "vulgar" or (ahead.kind == "number" and after.kind == "slash"):
            return True
        is_fraction = after.kind == "vulgar" or (after.kind == "number" and last.kind == "slash")
        if not (ahead.kind == "sign" and ahead.text == "-" and is_fraction):
            return False
        if ahead.tight != after.tight:
            self._refuse(
                Worded("can be read as a sum or as a mixed number; write 1 1/2 in, or 1 in - 1/2 in")
            )
        return ahead.tight and self._tokens[self._at - 1].text.isdigit()

    def _fraction(self, numerator: _Token) -> Fraction:
        self._take()
        denominator = self._take()
        if denominator.kind != "number":
            self._refuse(Worded("has no whole number behind the fraction bar; type one, such as 1/8 in"))
        below = self._whole(denominator)
        if below == 0:
            self._refuse(Worded("divides by zero; type a fraction such as 1/8 in"))
        return self._whole(numerator) / below

    def _whole(self, token: _Token) -> Fraction:
        if not token.text.isdigit():
            self._refuse(
                Worded(
                    "has a fraction of numbers that are not whole; type a decimal, or a fraction such as 1/8"
                )
            )
        return Fraction(int(token.text))

    def _decimal(self, token: _Token) -> Fraction:
        number, _, exponent = token.text.lower().partition("e")
        marks = number.count(".") + number.count(",")
        if marks > 1:
            self._refuse(Worded("has more than one decimal mark; leave out the marks between thousands"))
        before, comma, after = number.partition(",")
        if comma and len(after) == 3 and 1 <= len(before) <= 3 and before[0] != "0":
            self._refuse(
                Worded(
                    "has a comma that may mean thousands or a decimal; write {point} or {whole}",
                    point=f"{before}.{after}",
                    whole=f"{before}{after}",
                )
            )
        power = int(exponent or "0")
        if abs(power) > _LARGEST_EXPONENT:
            self._refuse(Worded("has an exponent that no length needs; check it, or type the number out"))
        return Fraction(number.replace(",", ".")) * Fraction(10) ** power

    # -- tokens

    def _unit(self) -> Unit | None:
        if self._peek().kind != "unit":
            return None
        token = self._take()
        self._refuse_not_a_number(token)
        return self._unit_of(token)

    def _unit_of(self, token: _Token) -> Unit:
        try:
            return parse_unit(token.text)
        except LengthError as refusal:
            raise LengthError(refusal.message, text=self._text) from None

    def _peek(self, ahead: int = 0) -> _Token:
        at = self._at + ahead
        return self._tokens[at] if at < len(self._tokens) else _END

    def _take(self) -> _Token:
        token = self._peek()
        self._at += 1
        return token

    def _take_sign(self) -> str | None:
        return self._take().text if self._peek().kind == "sign" else None

    def _refuse_start(self, token: _Token) -> NoReturn:
        """Say what stands where a number should."""
        if token.kind == "end":
            self._refuse(Worded("ends with + or -; type the length that follows, or remove the sign"))
        if token.kind == "sign":
            self._refuse(Worded("has two signs in a row; keep one of them"))
        if token.kind == "slash":
            self._refuse(Worded("has no whole number in front of the fraction bar; type one, such as 1/8 in"))
        self._refuse_not_a_number(token)
        self._unit_of(token)
        self._refuse(Worded("has a unit without a number; type the number in front of it, such as 0.05 mm"))

    def _refuse_not_a_number(self, token: _Token) -> None:
        if token.text.lower() in _NOT_NUMBERS:
            self._refuse(Worded("is not a finite number; type a length such as 0.05 mm"))

    def _refuse(self, complaint: Worded) -> NoReturn:
        words = Worded("“{text}” {complaint}.", text=_shown(self._text), complaint=complaint)
        raise LengthError(words, text=self._text)


def _vulgar(character: str) -> Fraction:
    """½ as a fraction: Unicode decomposes each such character into numerator, fraction slash, denominator."""
    above, _, below = unicodedata.normalize("NFKC", character).partition("\N{FRACTION SLASH}")
    return Fraction(int(above), int(below))
