"""Words that can be said again: a text that remembers the pattern and the values it was made from.

Every sentence that the program says of a drawing or a fit (a finding, its remedy, a refusal) is made where
it is found, in English:

    Worded("The gap is {gap} at {place}.", gap=length(0.05), place=place_of(spot))

It is a `str` like any other, so the command line, the reports and the tests need not know. The window
takes pattern and values out again, looks the pattern up in its own language, and puts the values back in:
`said`. Values that mean something in every language are kept as they are:

- a `Worded`, or a member of an enumeration, is a word: it is looked up too
- a whole number is grouped by thousands as the language does
- a `measures.Measure` can be put into another unit
- any other text belongs to a person, such as the name of a layer: it stays

A pattern is a literal at the place where it is used, because `resources/translations/collect.py` finds it
there. One thing and several things are two patterns: languages differ in more than an s.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from enum import Enum
from typing import TypeAlias

Say: TypeAlias = Callable[[str], str]
"""Puts a word or a pattern into another language; answers with the same if it knows none."""

PLACE = re.compile(r"\{(\w+)\}")
"""A place for a value in a pattern. There is no more to it, so a pattern from a file can do no harm."""
_THOUSAND = "1,000"
"""Looked up to learn how a language groups digits."""
_GROUPING = re.compile(r"(?<=\d),(?=\d{3})")


class Worded(str):
    """A text that can be said again in another language or unit.

    Attributes:
        pattern: the English sentence with a name in braces for each value.
        values: what stands in those places, by name.
    """

    __slots__ = ("pattern", "values")
    pattern: str
    values: Mapping[str, object]

    def __new__(cls, pattern: str, /, **values: object) -> Worded:
        """Put the values into their places; KeyError if one is missing."""
        return cls.again(pattern, values)

    @classmethod
    def again(cls, pattern: str, values: Mapping[str, object]) -> Worded:
        """Put a text together from what was kept of it; KeyError if a value is missing."""
        return cls._of(_filled(pattern, values, str), pattern, values)

    @classmethod
    def _of(cls, text: str, pattern: str, values: Mapping[str, object]) -> Worded:
        worded = super().__new__(cls, text)
        worded.pattern = pattern
        worded.values = values
        return worded

    def __reduce__(self) -> tuple[object, tuple[str, str, Mapping[str, object]]]:
        return self._of, (str(self), self.pattern, self.values)

    def said(self, say: Say) -> Worded:
        """The same in another language; pattern and values stay, so it can be said once more."""
        return self._of(_filled(say(self.pattern), self.values, say), self.pattern, self.values)

    def changed(self, change: Callable[[object], object]) -> Worded:
        """The same with every value changed, also those inside of other words."""
        values = {
            name: value.changed(change) if isinstance(value, Worded) else change(value)
            for name, value in self.values.items()
        }
        return self.again(self.pattern, values)


def said(text: str, say: Say) -> str:
    """Any text in another language: one that remembers its pattern is put together anew."""
    return text.said(say) if isinstance(text, Worded) else say(text)


def values_of(text: str) -> Mapping[str, object]:
    """The values in a text; none if it does not remember them."""
    return text.values if isinstance(text, Worded) else {}


def _filled(pattern: str, values: Mapping[str, object], say: Say) -> str:
    return PLACE.sub(lambda place: _shown(values[place[1]], say), pattern)


def _shown(value: object, say: Say) -> str:
    if isinstance(value, Worded):
        return value if say is str else value.said(say)
    if isinstance(value, Enum):
        return say(str(value.value))
    if isinstance(value, str):
        return value
    text = f"{value:,}" if isinstance(value, int) else str(value)
    return _GROUPING.sub(say(_THOUSAND)[1:-3], text)
