"""Everything that takes the keyboard has a name a screen reader can say."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QAbstractSpinBox, QApplication, QComboBox, QDialog, QFrame, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app.actions import TABLE
from inlayfit.app.menus import RECENT
from inlayfit.app.menus import TABLE as MENUS
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from tests.app.conftest import discs


def nameless(root: QWidget) -> list[str]:
    """Widgets below that take the keyboard and have no name."""
    found = []
    for widget in root.findChildren(QWidget):
        if not widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            continue
        part_of_another = isinstance(widget.parent(), QAbstractSpinBox) or _is_in_a_list_of_choices(widget)
        if widget.objectName().startswith("qt_") or part_of_another:
            continue
        interface = QAccessible.queryAccessibleInterface(widget)
        name = interface.text(QAccessible.Text.Name)
        if not name.strip():
            found.append(f"{type(widget).__name__} in {type(widget.parent()).__name__}")
    return found


def _is_in_a_list_of_choices(widget: QWidget) -> bool:
    """Whether it is the list that a choice opens, which the choice itself speaks for."""
    frame = widget.parentWidget()
    return isinstance(frame, QFrame) and isinstance(frame.parentWidget(), QComboBox)


def test_every_control_of_the_empty_window_has_a_name(window: MainWindow) -> None:
    assert nameless(window) == []


def test_every_control_of_the_open_window_has_a_name(
    window: MainWindow, settled: Callable[[Session], None]
) -> None:
    window.session.start(discs(2))
    settled(window.session)
    work = window.work
    for page in (work.spot, work.checks_panel, work.outlines, work.workshop_page):
        work.side.show_page(page)
        assert nameless(window) == []
    assert work.workshop in window.findChildren(QWidget)


def test_the_sentence_is_read_out_whole(window: MainWindow) -> None:
    window.session.start(discs(1))
    said = window.sentence.accessibleDescription()
    assert said.startswith("Plug, to cut with a 3 mm cutter, into pocket")
    assert "0.030 mm per side (0.060 overall)" in said
    assert said in window.work.map.accessibleDescription() or window.session.is_stale


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_every_setting_and_page_of_help_has_a_name(window: MainWindow, qtbot: QtBot) -> None:
    for name in ("settings", "guide", "shortcuts", "about"):
        window.actions_by_name[name].trigger()
        dialogs = [w for w in QApplication.topLevelWidgets() if isinstance(w, QDialog) and w.isVisible()]
        assert dialogs, name
        for dialog in dialogs:
            assert nameless(dialog) == [], name
            dialog.close()


def test_every_command_is_in_a_menu_and_no_key_is_given_twice(window: MainWindow) -> None:
    in_menus: list[str] = []

    def walk(entries: object) -> None:
        for entry in entries:  # type: ignore[attr-defined]  # a table of menus
            if isinstance(entry, tuple):
                walk(entry[1])
            elif entry not in ("-", RECENT):
                in_menus.append(entry)

    for _, entries in MENUS:
        walk(entries)
    assert sorted(in_menus) == sorted(command.name for command in TABLE)
    keys = [k.toString() for a in window.actions_by_name.values() for k in a.shortcuts()]
    assert len(keys) == len(set(keys))
    for action in window.actions_by_name.values():
        assert action.toolTip()
        assert action.statusTip().endswith(".")
