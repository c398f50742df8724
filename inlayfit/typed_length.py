"""Reads the lengths that a person types.

What a person may type is a sum of terms, each a number with a unit:

    number  0.2   0,2   .035   35   1/8   1 3/8   1-1/2   1½   2e-3
    unit    mm  cm  m  µm  in  "  ft  '  thou (0.001 in)  tenths (0.0001 in)
    sum     3 mm - 8 thou     1 in + 1/8 in     −0.02 (a true minus, or a hyphen)

A number without a unit has the unit of the box it was typed in. A text that could mean two lengths is
refused, with a remedy, rather than guessed.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import NoReturn

from inlayfit.errors import LengthError
from inlayfit.units import LARGEST_LENGTH_MM, MINUS, Length, Unit
from inlayfit.wording import Worded

_LONGEST_TEXT = 80
_LARGEST_EXPONENT = 12

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
