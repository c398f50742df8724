"""Which commands can be used just now, what undo and redo would do, and which switches are on."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction

from inlayfit.app.core_words import core
from inlayfit.app.session import Session
from inlayfit.document.history import Step
from inlayfit.document.state import State

_WITH_OUTLINES = (
    "save", "save_as", "export", "add", "choose_all", "choose_none", "remove", "fit_view",
)  # fmt: skip
_WITH_A_FITTING = (
    "use_pocket", "use_plug", "next_spot", "previous_spot", "edit_clearance", "made_plug",
    "measured",
)  # fmt: skip


def show_commands(actions: Mapping[str, QAction], session: Session, state: State) -> None:
    """Give the commands the texts and the usability that belong to what is shown."""
    _show_undo(actions, session)
    for name in _WITH_OUTLINES:
        actions[name].setEnabled(not state.is_empty)
    for name in _WITH_A_FITTING:
        actions[name].setEnabled(state.lead is not None)
    for name in ("read_mm", "read_inch"):
        actions[name].setEnabled(bool(state.source.path))
    unit = f"unit_{state.unit.name.lower()}"
    if unit in actions:
        actions[unit].setChecked(True)
    chosen_theme = session.settings.text("theme").removeprefix("high-").replace("-", "_")
    actions[f"theme_{chosen_theme}"].setChecked(True)


def _show_undo(actions: Mapping[str, QAction], session: Session) -> None:
    undo, redo = session.history.to_undo, session.history.to_redo
    actions["undo"].setEnabled(undo is not None)
    actions["redo"].setEnabled(redo is not None)
    actions["undo"].setText(_tr("&Undo") + _after(undo))
    actions["redo"].setText(_tr("&Redo") + _after(redo))


def _after(step: Step | None) -> str:
    return "" if step is None else f": {core(step.text)}"


def _tr(text: str) -> str:
    return QCoreApplication.translate("actions", text)
