"""History: what was done to a document, as whole states in each other's place.

No step ever computes backwards. The state before and the state after share all that did not change, so
keeping both is cheap, and undoing gives back the very value that was there.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from inlayfit.document.state import State
from inlayfit.wording import Worded


@dataclass(frozen=True, slots=True)
class Step:
    """One thing that was done.

    Attributes:
        before, after: the document without it and with it.
        text: what was done ("Set clearance to 0.050 mm per side").
    """

    before: State
    after: State
    text: Worded


@dataclass(frozen=True, slots=True)
class History:
    """The steps that lead to a document, and those that were taken back.

    Attributes:
        done: the steps in the order in which they were done.
        undone: the steps that were taken back; the last of them can be done again next.
        saved: how many steps of `done` the project file holds; None if no undo or redo leads to it.
    """

    done: tuple[Step, ...] = ()
    undone: tuple[Step, ...] = ()
    saved: int | None = 0

    @property
    def is_saved(self) -> bool:
        """Whether the project file holds just what was done."""
        return self.saved == len(self.done)

    @property
    def to_undo(self) -> Step | None:
        """The step that can be taken back, if there is one."""
        return self.done[-1] if self.done else None

    @property
    def to_redo(self) -> Step | None:
        """The step that can be done again, if there is one."""
        return self.undone[-1] if self.undone else None

    def with_step(self, step: Step) -> History:
        """One more step; what was taken back before it is forgotten."""
        is_reached = self.saved is not None and self.saved <= len(self.done)
        return History((*self.done, step), (), self.saved if is_reached else None)

    def after_undo(self) -> History:
        """The last step taken back; ValueError if there is none."""
        if not self.done:
            raise ValueError("there is no step to take back")
        return replace(self, done=self.done[:-1], undone=(*self.undone, self.done[-1]))

    def after_redo(self) -> History:
        """The step taken back last done again; ValueError if there is none."""
        if not self.undone:
            raise ValueError("there is no step to do again")
        return replace(self, done=(*self.done, self.undone[-1]), undone=self.undone[:-1])

    def marked_saved(self) -> History:
        """The project file holds what was done."""
        return replace(self, saved=len(self.done))
