"""The menu bar, as a table of command names; "-" is a line, a tuple is a menu inside."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypeAlias

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QMenu, QMenuBar

from inlayfit.app.actions import BY_NAME

Entry: TypeAlias = "str | tuple[str, tuple[Entry, ...]]"

RECENT = "recent"
"""Stands for the menu of recent work."""
TABLE: tuple[tuple[str, tuple[Entry, ...]], ...] = (
    (
        "&File",
        (
            "open", RECENT, "sample", "type_size", "-", "add", "reading", "-", "save", "save_as", "-",
            "export", "-", "settings", "-", "quit",
        ),
    ),
    (
        "&Edit",
        (
            "undo", "redo", "-", "paste", "-", "choose_all", "choose_none", "remove", "-",
            "edit_clearance",
        ),
    ),
    (
        "&View",
        (
            "fit_view", "zoom_in", "zoom_out", "-", "next_spot", "previous_spot", "-",
            "show_spot", "show_checks", "show_outlines", "show_workshop", "-",
            ("&Unit", ("unit_mm", "unit_inch", "unit_thou")),
            (
                "Colou&rs",
                ("theme_system", "theme_light", "theme_dark", "theme_contrast", "theme_contrast_white"),
            ),
            "-", "next_panel", "previous_panel",
        ),
    ),
    ("H&alves", ("use_pocket", "use_plug", "made_plug", "-", "measured", "-", "read_mm", "read_inch")),
    ("&Help", ("guide", "shortcuts", "-", "about")),
)  # fmt: skip


def fill_menu_bar(bar: QMenuBar, actions: Mapping[str, QAction]) -> QMenu:
    """Make the menus; answers the one for recent work, which is filled when it opens."""
    recent = QMenu(_tr("Open rece&nt"), bar)
    groups: dict[str, QActionGroup] = {}
    for title, entries in TABLE:
        menu = bar.addMenu(_tr(title))
        menu.setToolTipsVisible(True)
        _fill(menu, entries, actions, groups, recent)
    return recent


def _fill(
    menu: QMenu,
    entries: tuple[Entry, ...],
    actions: Mapping[str, QAction],
    groups: dict[str, QActionGroup],
    recent: QMenu,
) -> None:
    for entry in entries:
        if isinstance(entry, tuple):
            inner = menu.addMenu(_tr(entry[0]))
            _fill(inner, entry[1], actions, groups, recent)
        elif entry == "-":
            menu.addSeparator()
        elif entry == RECENT:
            menu.addMenu(recent)
        else:
            menu.addAction(actions[entry])
            group = BY_NAME[entry].group
            if group:
                groups.setdefault(group, QActionGroup(menu)).addAction(actions[entry])


def _tr(text: str) -> str:
    return QCoreApplication.translate("menus", text)
