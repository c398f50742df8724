"""Small turns of phrase: how many of a thing, how large it is, and when something was."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from inlayfit.units import Unit, format_length

if TYPE_CHECKING:
    import datetime


def counted(number: int, one: str, many: str) -> str:
    """How many: `one` for 1, else `many` with the number for {0}; both already in the window's language."""
    return one if number == 1 else many.format(number)


def size_words(wide_mm: float, high_mm: float, unit: Unit) -> str:
    """How wide and how high something is."""
    return f"{format_length(wide_mm, unit, with_unit=False)} × {format_length(high_mm, unit)}"


def when_words(seconds: float, *, today: datetime.date | None = None) -> str:
    """The words for a moment, in the window's language."""
    import datetime  # not before there is recent work

    moment = datetime.datetime.fromtimestamp(seconds)
    now = today or datetime.date.today()
    days = (now - moment.date()).days
    if days == 0:
        return _tr("today at {0}").format(f"{moment:%H:%M}")
    if days == 1:
        return _tr("yesterday")
    date = QDate(moment.year, moment.month, moment.day)
    return QLocale().toString(date, _tr("d MMMM") if moment.year == now.year else _tr("d MMMM yyyy"))


def _tr(text: str) -> str:
    return QCoreApplication.translate("when", text)
