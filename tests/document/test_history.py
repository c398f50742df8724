"""What was done to a document, taken back and done again."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document.history import History, Step
from inlayfit.document.state import Source, State
from inlayfit.wording import Worded

STATES = tuple(State(source=Source(f"drawing {number}.svg")) for number in range(40))
WAYS = st.lists(st.sampled_from(["do", "undo", "redo", "save"]), max_size=60)


@given(WAYS)
def test_undo_gives_back_the_very_states_and_saved_means_equal_to_the_file(ways: list[str]) -> None:
    """Beside a model of its own: a list of states, a place in it, and the state in the file."""
    line, place, saved, number = [STATES[0]], 0, STATES[0], 0
    history = History()
    for way in ways:
        if way == "do" and number + 1 < len(STATES):
            number += 1
            history = history.with_step(Step(line[place], STATES[number], Worded("step")))
            line = [*line[: place + 1], STATES[number]]
            place += 1
        elif way == "undo" and place:
            step = history.to_undo
            assert step is not None
            assert step.before is line[place - 1]
            history, place = history.after_undo(), place - 1
        elif way == "redo" and place + 1 < len(line):
            step = history.to_redo
            assert step is not None
            assert step.after is line[place + 1]
            history, place = history.after_redo(), place + 1
        elif way == "save":
            history, saved = history.marked_saved(), line[place]
        assert (history.to_undo is None) is (place == 0)
        assert (history.to_redo is None) is (place + 1 == len(line))
        assert history.is_saved is (line[place] is saved)


def test_nothing_can_be_taken_back_or_done_again_in_an_empty_history() -> None:
    with pytest.raises(ValueError, match="take back"):
        History().after_undo()
    with pytest.raises(ValueError, match="do again"):
        History().after_redo()
