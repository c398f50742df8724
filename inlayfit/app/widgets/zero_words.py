"""Words in the place of a 0 that means that nobody gave a number.

They stand where the number would, muted and in the lettering of plain words, so that nobody takes them for a
measured zero. Whoever empties the box, or types the words, means them.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtWidgets import QAbstractSpinBox

from inlayfit.app import theme

BARE = "border: none; background: transparent; padding: 0 2px;"
"""The line of text has no frame of its own; the box paints one."""


@dataclass(frozen=True, slots=True)
class ZeroWords:
    """What a box says instead of 0.

    Attributes:
        words: a word or two, such as "not given"; "" if 0 is a number like any other.
        instead: a sentence: what is used then.
    """

    words: str = ""
    instead: str = ""

    def mean(self, text: str) -> bool:
        """Whether a text in the box stands for these words."""
        return bool(self.words) and text.strip().casefold() in ("", self.words.casefold())

    def stand_in(self, text: str) -> bool:
        """Whether the box shows the words now."""
        return bool(self.words) and text == self.words


def dress(box: QAbstractSpinBox, *, as_words: bool) -> None:
    """Letter a box as words, or as the number that is typed. Its line of text has no font of its own."""
    font = theme.font(theme.BASE if as_words else theme.INPUT)
    if box.font() != font:
        box.setFont(font)
    style = f"{BARE} color: {theme.tokens_of(box).muted};" if as_words else BARE
    if box.lineEdit().styleSheet() != style:
        box.lineEdit().setStyleSheet(style)
