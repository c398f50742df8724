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
    QT_TRANSLATE_NOOP("core", "to cut"),
    QT_TRANSLATE_NOOP("core", "already cut"),
    QT_TRANSLATE_NOOP("core", "finished"),
    QT_TRANSLATE_NOOP("core", "{0}, stays"),
    QT_TRANSLATE_NOOP("core", "a {0} cutter"),
    QT_TRANSLATE_NOOP("core", "a {0} kerf"),
    QT_TRANSLATE_NOOP("core", "no cutter radius"),
    QT_TRANSLATE_NOOP("core", "won't start"),
    QT_TRANSLATE_NOOP("core", "press"),
    QT_TRANSLATE_NOOP("core", "tap-in"),
    QT_TRANSLATE_NOOP("core", "snug"),
    QT_TRANSLATE_NOOP("core", "slip"),
    QT_TRANSLATE_NOOP("core", "rattles"),
    QT_TRANSLATE_NOOP("core", "rounded to match"),
    QT_TRANSLATE_NOOP("core", "left for hand work"),
    QT_TRANSLATE_NOOP("core", "rounded"),
    QT_TRANSLATE_NOOP("core", "dog-bone"),
    QT_TRANSLATE_NOOP("core", "T-bone"),
    QT_TRANSLATE_NOOP("core", "dog-bone in both"),
    QT_TRANSLATE_NOOP("core", "T-bone in both"),
    QT_TRANSLATE_NOOP("core", "dog-bone in the plug"),
    QT_TRANSLATE_NOOP("core", "T-bone in the plug"),
    QT_TRANSLATE_NOOP("core", "left for hand work in the plug"),
    QT_TRANSLATE_NOOP("core", "dog-bone in the pocket"),
    QT_TRANSLATE_NOOP("core", "T-bone in the pocket"),
    QT_TRANSLATE_NOOP("core", "left for hand work in the pocket"),
    QT_TRANSLATE_NOOP("core", "dog-bone in the pocket, T-bone in the plug"),
    QT_TRANSLATE_NOOP("core", "dog-bone in the pocket, left for hand work in the plug"),
    QT_TRANSLATE_NOOP("core", "T-bone in the pocket, dog-bone in the plug"),
    QT_TRANSLATE_NOOP("core", "T-bone in the pocket, left for hand work in the plug"),
    QT_TRANSLATE_NOOP("core", "left for hand work in the pocket, dog-bone in the plug"),
    QT_TRANSLATE_NOOP("core", "left for hand work in the pocket, T-bone in the plug"),
    QT_TRANSLATE_NOOP("core", "Both halves get corners that both cutters can reach."),
    QT_TRANSLATE_NOOP("core", "The plug's notches are cut deeper, along the corner's middle."),
    QT_TRANSLATE_NOOP("core", "The plug's notches are cut deeper, along one wall."),
    QT_TRANSLATE_NOOP("core", "The pocket's corners are cut deeper, along one wall."),
    QT_TRANSLATE_NOOP("core", "The pocket's corners are pared with a chisel."),
    QT_TRANSLATE_NOOP("core", "The pocket's corners are cut deeper; the plug stays sharp."),
    QT_TRANSLATE_NOOP("core", "The plug's notches are filed."),
    QT_TRANSLATE_NOOP("core", "no roughing pass"),
    QT_TRANSLATE_NOOP("core", "{0} left to finish"),
    QT_TRANSLATE_NOOP("core", "flush"),
    QT_TRANSLATE_NOOP("core", "{0} proud"),
    QT_TRANSLATE_NOOP("core", "{0} below"),
    QT_TRANSLATE_NOOP("core", "no glue"),
    QT_TRANSLATE_NOOP("core", "cut face up"),
    QT_TRANSLATE_NOOP("core", "cut face down"),
    # what was done, for undo
    QT_TRANSLATE_NOOP("core", "Open {0}"),
    QT_TRANSLATE_NOOP("core", "Add {0} outlines"),
    QT_TRANSLATE_NOOP("core", "Remove {0} outlines"),
    QT_TRANSLATE_NOOP("core", "Choose outlines"),
    QT_TRANSLATE_NOOP("core", "Choose nothing"),
    QT_TRANSLATE_NOOP("core", "Choose {0}"),
    QT_TRANSLATE_NOOP("core", "Choose {0} outlines"),
    QT_TRANSLATE_NOOP("core", "Name an outline {0}"),
    QT_TRANSLATE_NOOP("core", "Set clearance to {0} per side"),
    QT_TRANSLATE_NOOP("core", "Ask for a {0} fit"),
    QT_TRANSLATE_NOOP("core", "Set pocket cutter to {0}"),
    QT_TRANSLATE_NOOP("core", "Set plug cutter to {0}"),
    QT_TRANSLATE_NOOP("core", "Set pocket kerf to {0}"),
    QT_TRANSLATE_NOOP("core", "Set plug kerf to {0}"),
    QT_TRANSLATE_NOOP("core", "Set finishing allowance to {0}"),
    QT_TRANSLATE_NOOP("core", "Mark pocket as {0}"),
    QT_TRANSLATE_NOOP("core", "Mark plug as {0}"),
    QT_TRANSLATE_NOOP("core", "Set pocket corners to {0}"),
    QT_TRANSLATE_NOOP("core", "Set plug corners to {0}"),
    QT_TRANSLATE_NOOP("core", "Set corners to {0}"),
    QT_TRANSLATE_NOOP("core", "Use as pocket"),
    QT_TRANSLATE_NOOP("core", "Use as plug"),
    QT_TRANSLATE_NOOP("core", "Call the pocket {0}"),
    QT_TRANSLATE_NOOP("core", "Call the plug {0}"),
    QT_TRANSLATE_NOOP("core", "nothing"),
    QT_TRANSLATE_NOOP("core", "Change the stack"),
    QT_TRANSLATE_NOOP("core", "Cut face up"),
    QT_TRANSLATE_NOOP("core", "Cut face down"),
    QT_TRANSLATE_NOOP("core", "Show lengths in {0}"),
    QT_TRANSLATE_NOOP("core", "Change how the drawing is read"),
    QT_TRANSLATE_NOOP("core", "Read the drawing in {0}"),
    QT_TRANSLATE_NOOP("core", "Record a {0} trial"),
    QT_TRANSLATE_NOOP("core", "Add a {0} by its size"),
    QT_TRANSLATE_NOOP("core", "Fit the pocket as measured"),
    QT_TRANSLATE_NOOP("core", "Take {0} for the plug"),
    QT_TRANSLATE_NOOP("core", "Take the plug from {0}"),
    QT_TRANSLATE_NOOP("core", "Lay the plug {0}"),
    QT_TRANSLATE_NOOP("core", "to its seat, not turned"),
    QT_TRANSLATE_NOOP("core", "to its seat, turned if need be"),
    QT_TRANSLATE_NOOP("core", "as it is drawn"),
    QT_TRANSLATE_NOOP("core", "Change the workshop's numbers"),
    QT_TRANSLATE_NOOP("core", "Set the kerf's taper to {0}"),
    QT_TRANSLATE_NOOP("core", "Break the plug's lower edge by {0}"),
    QT_TRANSLATE_NOOP("core", "Break the pocket's rim by {0}"),
    QT_TRANSLATE_NOOP("core", "circle"),
    QT_TRANSLATE_NOOP("core", "rectangle"),
    QT_TRANSLATE_NOOP("core", "slot"),
    QT_TRANSLATE_NOOP("core", "pasted outlines"),
    # the verdict and the fixes
    QT_TRANSLATE_NOOP("core", "Nothing is chosen."),
    QT_TRANSLATE_NOOP("core", "Click an outline to fit it."),
    QT_TRANSLATE_NOOP("core", "Open the outline of a pocket or a plug."),
    QT_TRANSLATE_NOOP("core", "Will not go in yet."),
    QT_TRANSLATE_NOOP("core", "Not ready to cut."),
    QT_TRANSLATE_NOOP("core", "Look before cutting."),
    QT_TRANSLATE_NOOP("core", "Has to be pressed in."),
    QT_TRANSLATE_NOOP("core", "Goes in."),
    QT_TRANSLATE_NOOP("core", "Working it out."),
    QT_TRANSLATE_NOOP("core", "No word on the fit until every wall is measured."),
    QT_TRANSLATE_NOOP("core", "Tightest {0}, over {1} fittings."),
    QT_TRANSLATE_NOOP("core", "Tightest {0}, loosest {1}."),
    QT_TRANSLATE_NOOP("core", "{0} per side ({1} overall)"),
    QT_TRANSLATE_NOOP("core", "No word on the fit yet."),
    QT_TRANSLATE_NOOP("core", "It binds by {0}."),
    QT_TRANSLATE_NOOP("core", "Will not go in as it is."),
    QT_TRANSLATE_NOOP("core", "Goes in, tighter than wanted."),
    QT_TRANSLATE_NOOP("core", "Goes in, looser than wanted."),
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
    QT_TRANSLATE_NOOP("core", "Relieve the plug"),
    QT_TRANSLATE_NOOP("core", "Relieve the pocket"),
    QT_TRANSLATE_NOOP("core", "Use a snug clearance"),
    QT_TRANSLATE_NOOP("core", "Its corners are sharp"),
    QT_TRANSLATE_NOOP("core", "Choose the plug"),
    QT_TRANSLATE_NOOP("core", "Leave it as drawn"),
    QT_TRANSLATE_NOOP("core", "Turn it to its seat"),
    QT_TRANSLATE_NOOP("core", "Break the plug's lower edge"),
    QT_TRANSLATE_NOOP("core", "Change the fit sentence."),
    QT_TRANSLATE_NOOP("core", "1,000"),
)
"""Every single word the layers below hand to the window."""
