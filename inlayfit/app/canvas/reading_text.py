"""Gaps as they are written on pictures: signed, and always per side with the overall beside it."""

from __future__ import annotations

import math

from PySide6.QtCore import QCoreApplication

from inlayfit.document.sentence import overall_words
from inlayfit.units import MINUS, Unit, format_length


def signed(gap_mm: float, unit: Unit) -> str:
    """A gap with its sign: "+0.031", "−0.072", "0.000"."""
    text = format_length(gap_mm, unit, with_unit=False)
    return text if text.startswith(MINUS) or not _counts(text) else f"+{text}"


def signed_overall(gap_mm: float, unit: Unit) -> str:
    """Twice the rounded gap, in brackets: "(+0.062)"."""
    if not math.isfinite(gap_mm):
        return ""
    overall = overall_words(gap_mm, unit)
    sign = "" if overall.startswith(MINUS) or not _counts(overall) else "+"
    return f"({sign}{overall})"


def spoken(gap_mm: float, unit: Unit) -> str:
    """A gap for a screen reader: "−0.072 per side (−0.144 overall)"."""
    overall = signed_overall(gap_mm, unit)
    if not overall:
        return _tr("unknown")
    return _tr("{0} per side ({1} overall)").format(signed(gap_mm, unit), overall.strip("()"))


def _counts(text: str) -> bool:
    """Whether any digit is not zero."""
    return any(figure in "123456789" for figure in text)


def _tr(text: str) -> str:
    return QCoreApplication.translate("map", text)
