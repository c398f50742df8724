"""The feel words and their bench tests in the window's language."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from inlayfit.fit.feel import Feel


def feel_word(feel: Feel) -> str:
    """The word."""
    return {
        Feel.WONT_START: _tr("won\N{RIGHT SINGLE QUOTATION MARK}t start"),
        Feel.PRESS: _tr("press"),
        Feel.TAP_IN: _tr("tap-in"),
        Feel.SNUG: _tr("snug"),
        Feel.SLIP: _tr("slip"),
        Feel.RATTLES: _tr("rattles"),
    }[feel]


def feel_test(feel: Feel) -> str:
    """How it is told at the bench."""
    return {
        Feel.WONT_START: _tr("the corner does not enter"),
        Feel.PRESS: _tr("vice or arbor"),
        Feel.TAP_IN: _tr("mallet and block"),
        Feel.SNUG: _tr("thumb pressure, no play"),
        Feel.SLIP: _tr("drops in, slides out"),
        Feel.RATTLES: _tr("moves when shaken"),
    }[feel]


def _tr(text: str) -> str:
    return QCoreApplication.translate("feel", text)
