"""When Python searches for garbage, in one place.

Nearly everything here goes as soon as nobody needs it; the search is for rings of things that keep each
other. It is put off where it would do harm:

- while the program starts, because all that is loaded then stays for good (`put_off`, then `settle`)
- while work runs on another thread, because a search ends what it finds in the thread where it comes up,
  and what belongs to Qt may be ended in the window's thread only (`Hold`)
- while a hand is on a slider, because a search of everything can stop the window for some frames (`Hold`)

For the window's thread only, but for `keep`.
"""

from __future__ import annotations

import gc
from typing import Final

_holding: Final[set[object]] = set()
_START: Final = object()


class Hold:
    """Puts the search off from `begin` to `end`; several holds may overlap."""

    def begin(self) -> None:
        """Put the search off; beginning again changes nothing."""
        _take(self)

    def end(self) -> None:
        """Let the search go on, unless another hold lasts; ending again changes nothing."""
        _release(self)


def put_off() -> None:
    """The program starts: no search until it has settled."""
    _take(_START)


def settle() -> None:
    """The program has started."""
    keep()
    _release(_START)


def keep() -> None:
    """What is there now stays for good: looking through it would stop the window for 50 ms each time."""
    gc.freeze()


def _take(holder: object) -> None:
    _holding.add(holder)
    gc.disable()


def _release(holder: object) -> None:
    _holding.discard(holder)
    if not _holding:
        gc.enable()
