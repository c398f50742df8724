"""Seats that were searched for, kept: a slider or another clearance moves no plug.

A seat follows from two outlines and from whether the plug may turn, and from nothing else. The search takes
from a tenth of a second to some seconds, so it is done once, on the thread that solves.
"""

from __future__ import annotations

from collections import OrderedDict
from threading import Lock
from typing import TYPE_CHECKING

from inlayfit.fit.spec import Seating
from inlayfit.progress import Progress

if TYPE_CHECKING:
    from inlayfit.document.outlines import Outline
    from inlayfit.fit.seating import Seat

_MOST_KEPT = 100


class Seats:
    """The seats found so far, of the outlines used last. Safe to use from any thread."""

    def __init__(self) -> None:
        self._found: OrderedDict[tuple[int, int, bool], tuple[Outline, Outline, Seat]] = OrderedDict()
        self._lock = Lock()
        self.searches = 0

    def seat(self, pocket: Outline, plug: Outline, how: Seating, progress: Progress) -> Seat | None:
        """Where a made plug sits best; None if it stays as it is drawn.

        Raises:
            SpecError: an outline is empty.
            Cancelled: the search was stopped.
        """
        if how is Seating.AS_DRAWN:
            return None
        key = id(pocket), id(plug), how is Seating.TURN
        with self._lock:
            kept = self._found.get(key)
            if kept is not None and kept[0] is pocket and kept[1] is plug:
                self._found.move_to_end(key)
                return kept[2]
        from inlayfit.fit.seating import seat  # heavy; not before it is needed

        self.searches += 1
        found = seat(pocket.region, plug.region, may_turn=how is Seating.TURN, progress=progress)
        with self._lock:
            self._found[key] = pocket, plug, found
            while len(self._found) > _MOST_KEPT:
                self._found.popitem(last=False)
        return found
