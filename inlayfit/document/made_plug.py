"""The plug that is made already, and how it is laid into its pocket.

Where both halves are made, the plug has an outline of its own: another outline of the document, or one that
came from another drawing and was added to it. It is named, not copied, so reading the drawing anew or in
another unit reaches the plug as well.
"""

from __future__ import annotations

from dataclasses import dataclass

from inlayfit.fit.spec import Seating
from inlayfit.wording import Worded

STOPPED = Worded("The search for the seat was stopped; search again, or leave the plug as it is drawn.")
"""What is said of a made plug while its seat is not known."""


@dataclass(frozen=True, slots=True)
class MadePlug:
    """Which outline is the made plug of a pocket.

    Attributes:
        outline_id: the outline in this document.
        seating: how it may move.
    """

    outline_id: str
    seating: Seating = Seating.SHIFT
