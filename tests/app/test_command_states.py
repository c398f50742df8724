"""A command can be used when it would do something, and only then."""

from __future__ import annotations

from inlayfit.app.window import MainWindow
from inlayfit.units import Unit


def test_redo_can_be_chosen_right_after_undo(open_discs: MainWindow) -> None:
    """Whatever was undone: also a change that needs no new answer, such as another unit."""
    window = open_discs
    actions = window.actions_by_name
    actions["unit_thou"].trigger()
    assert "thou" in actions["undo"].text()
    actions["undo"].trigger()
    assert actions["redo"].isEnabled()
    assert not actions["undo"].isEnabled()
    actions["redo"].trigger()
    assert window.session.state.unit is Unit.THOU
    assert not actions["redo"].isEnabled()
