"""Words that come from the layers below, which know no Qt, in the window's language.

A `Worded` is put together anew from its pattern, which the translation tools find where it stands. Single
words are named here for them. Words that are neither (a material's name, a file's) come back as they are.
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication

from inlayfit.errors import InlayfitError
from inlayfit.wording import said


def core(text: str) -> str:
    """The text in the window's language."""
    return said(text, _translated)


def core_error(error: Exception) -> str:
    """What an error says, in the window's language; the name of one that says nothing."""
    return core(error.message) if isinstance(error, InlayfitError) else str(error) or type(error).__name__


def _translated(text: str) -> str:
    return QCoreApplication.translate("core", text)


CORE_WORDS: tuple[object, ...] = (
    # the fit sentence
    QT_TRANSLATE_NOOP(
        "core",
        "{plug}, {plug_state} with {plug_cutter}, into {pocket}, {pocket_state} with {pocket_cutter}, "
        "{feel} at {clearance} per side ({overall} overall), corners {corners}, {allowance}, "
        "{seat} on {glue}, {facing}.",
    ),
    QT_TRANSLATE_NOOP("core", "{0} {1}"),
    QT_TRANSLATE_NOOP("core", "a plug"),
    QT_TRANSLATE_NOOP("core", "a pocket"),
    QT_TRANSLATE_NOOP("core", "plug"),
    QT_TRANSLATE_NOOP("core", "pocket"),
    QT_TRANSLATE_NOOP("core", "{0}, stays"),
    QT_TRANSLATE_NOOP("core", "won't start"),
    QT_TRANSLATE_NOOP("core", "press"),
    QT_TRANSLATE_NOOP("core", "tap-in"),
    QT_TRANSLATE_NOOP("core", "snug"),
    QT_TRANSLATE_NOOP("core", "slip"),
    QT_TRANSLATE_NOOP("core", "rattles"),
    QT_TRANSLATE_NOOP("core", "Both halves get corners that both cutters can reach."),
    QT_TRANSLATE_NOOP("core", "The plug's notches are cut deeper, along the corner's middle."),
    QT_TRANSLATE_NOOP("core", "The plug's notches are cut deeper, along one wall."),
    QT_TRANSLATE_NOOP("core", "The pocket's corners are cut deeper, along one wall."),
    QT_TRANSLATE_NOOP("core", "The pocket's corners are pared with a chisel."),
    QT_TRANSLATE_NOOP("core", "The pocket's corners are cut deeper; the plug stays sharp."),
    QT_TRANSLATE_NOOP("core", "The plug's notches are filed."),
    QT_TRANSLATE_NOOP("core", "no glue"),
    # what was done, for undo
    QT_TRANSLATE_NOOP("core", "Use as pocket"),
    QT_TRANSLATE_NOOP("core", "Use as plug"),
    QT_TRANSLATE_NOOP("core", "circle"),
    QT_TRANSLATE_NOOP("core", "rectangle"),
    QT_TRANSLATE_NOOP("core", "slot"),
    # the classes of gap, and the sample
    QT_TRANSLATE_NOOP("core", "bites"),
    QT_TRANSLATE_NOOP("core", "tight"),
    QT_TRANSLATE_NOOP("core", "on"),
    QT_TRANSLATE_NOOP("core", "slack"),
    QT_TRANSLATE_NOOP("core", "loose"),
    QT_TRANSLATE_NOOP("core", "under {0}"),
    QT_TRANSLATE_NOOP("core", "to {0}"),
    QT_TRANSLATE_NOOP("core", "over {0}"),
    QT_TRANSLATE_NOOP("core", "per side ({0} overall)"),
    QT_TRANSLATE_NOOP("core", "copper"),
    QT_TRANSLATE_NOOP("core", "leaf"),
    QT_TRANSLATE_NOOP("core", "cherry"),
    QT_TRANSLATE_NOOP("core", "disc"),
    QT_TRANSLATE_NOOP("core", "thin glue"),
    QT_TRANSLATE_NOOP("core", "1,000"),
)
"""Every single word the layers below hand to the window."""
