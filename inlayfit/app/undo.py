"""Undo: one command, which puts whole states in each other's place.

No command ever computes backwards: `before` and `after` share all that did not change, so keeping both is
cheap, and undoing gives back the very value that was there.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import count

from PySide6.QtGui import QUndoCommand

from inlayfit.document.state import State

_NO_GESTURE = -1
_gestures = count(1)


def new_gesture() -> int:
    """A number for one gesture: edits that carry it become one step."""
    return next(_gestures)


class SwapState(QUndoCommand):
    """Replaces one state by another."""

    def __init__(
        self,
        before: State,
        after: State,
        text: str,
        apply: Callable[[State], None],
        *,
        gesture: int = _NO_GESTURE,
    ) -> None:
        super().__init__(text)
        self.before = before
        self.after = after
        self._apply = apply
        self._gesture = gesture

    def id(self) -> int:
        return self._gesture

    def mergeWith(self, other: QUndoCommand) -> bool:
        if not isinstance(other, SwapState) or other.id() != self._gesture:
            return False
        self.after = other.after
        self.setText(other.text())
        self.setObsolete(self.after == self.before)
        return True

    def undo(self) -> None:
        self._apply(self.before)

    def redo(self) -> None:
        self._apply(self.after)
