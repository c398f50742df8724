"""Every command of the window in one table: its words, its keys, and why one wants it.

The menus (`inlayfit.app.menus`), the tooltips and the list of shortcuts are made from it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import TypeAlias

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget

Keys: TypeAlias = "QKeySequence.StandardKey | str"
_Standard = QKeySequence.StandardKey


@dataclass(frozen=True, slots=True)
class Command:
    """One row.

    Attributes:
        name: what the program calls it.
        text: what the menu says; & before the letter that chooses it.
        why: one sentence for the tooltip and the status line.
        keys: every key sequence that starts it, the shown one first.
        is_switch: whether it is on or off.
        group: switches of one group exclude each other.
    """

    name: str
    text: str
    why: str
    keys: tuple[Keys, ...] = ()
    is_switch: bool = False
    group: str = ""


TABLE: tuple[Command, ...] = (
    Command("open", "&Open outline…", "Reads a DXF or SVG drawing, or a project.", (_Standard.Open,)),
    Command("add", "&Add outlines…", "Reads further outlines into this work.", ("Ctrl+Shift+O",)),
    Command("sample", "Try the sa&mple", "Opens a leaf that is let into a disc, ready to change."),
    Command("type_size", "&Type a pocket by size…", "A circle, rectangle or slot that has no drawing."),
    Command("reading", "&Read the drawing anew…", "Another unit, gaps, painted lines, layers."),
    Command("save", "&Save project", "Keeps outlines and fits in one file.", (_Standard.Save,)),
    Command("save_as", "Save &project as…", "Keeps this work under another name.", (_Standard.SaveAs,)),
    Command("export", "Save outlines to &cut…", "Writes both halves as DXF and SVG.", ("Ctrl+E",)),
    Command("settings", "S&ettings…", "Units, new fits, colours.", (_Standard.Preferences, "Ctrl+,")),
    Command("quit", "&Quit", "Closes the window.", (_Standard.Quit, "Ctrl+Q")),
    Command("undo", "&Undo", "Takes the last change back.", (_Standard.Undo,)),
    Command("redo", "&Redo", "Does again what was taken back.", (_Standard.Redo,)),
    Command("paste", "&Paste outlines", "Reads SVG or DXF text from the clipboard.", (_Standard.Paste,)),
    Command("choose_all", "Choose &all outlines", "Fits every outline.", (_Standard.SelectAll,)),
    Command("choose_none", "Choose &nothing", "Fits nothing.", ("Ctrl+Shift+A",)),
    Command("remove", "Re&move chosen outlines", "The drawing file keeps them.", ("Ctrl+Del",)),
    Command("fit_view", "&Fit to view", "Shows everything.", ("Ctrl+0",)),
    Command("zoom_in", "Zoom &in", "Shows more detail.", (_Standard.ZoomIn, "Ctrl+=")),
    Command("zoom_out", "Zoom &out", "Shows more at once.", (_Standard.ZoomOut,)),
    Command("next_spot", "&Next tight spot", "Walks the tightest places, the worst first.", ("F4",)),
    Command("previous_spot", "&Previous tight spot", "Walks back.", ("Shift+F4",)),
    Command("show_spot", "Show the &spot", "Loupe and stack beside the map.", ("Ctrl+Shift+1",)),
    Command("show_checks", "Show &checks", "What to look at before cutting.", ("Ctrl+Shift+2",)),
    Command("show_outlines", "Show out&lines", "The outlines as a list.", ("Ctrl+Shift+3",)),
    Command("show_workshop", "Show the &workshop", "Errors, passes, many parts.", ("Ctrl+Shift+4",)),
    Command("next_panel", "Next p&anel", "Moves the keyboard to the next part of the window.", ("F6",)),
    Command("previous_panel", "Pre&vious panel", "Moves the keyboard back.", ("Shift+F6",)),
    Command("edit_clearance", "Type a &clearance", "Moves the keyboard to the clearance.", ("Ctrl+L",)),
    Command("unit_mm", "&Millimetres", "Shows lengths in mm.", ("Ctrl+Shift+M",), True, "unit"),
    Command("unit_inch", "&Inches", "Shows lengths in inches.", ("Ctrl+Shift+I",), True, "unit"),
    Command("unit_thou", "&Thou", "Shows lengths in 0.001 in.", ("Ctrl+Shift+T",), True, "unit"),
    Command("theme_system", "As the s&ystem", "Follows the system's colours.", (), True, "theme"),
    Command("theme_light", "&Light", "For a bright bench.", (), True, "theme"),
    Command("theme_dark", "&Dark", "For a dim one.", (), True, "theme"),
    Command("theme_contrast", "&High contrast, black", "Strong outlines on black.", (), True, "theme"),
    Command("theme_contrast_white", "High contrast, &white", "Strong outlines on white.", (), True, "theme"),
    Command("use_pocket", "The drawing is a &pocket", "The plug is made to fit it."),
    Command("use_plug", "The drawing is a p&lug", "It is made already; the pocket is cut to fit it."),
    Command("made_plug", "Plug from a &drawing…", "For two made halves: reads the outline of the plug."),
    Command("measured", "Pocket &as measured…", "Fits to a pocket that is cut already, by its widths."),
    Command("read_mm", "One drawing unit is one &mm", "Reads the drawing again, in millimetres."),
    Command("read_inch", "One drawing unit is one &inch", "Reads the drawing again, in inches."),
    Command("guide", "&Guide", "From a drawing to a plug that fits.", (_Standard.HelpContents, "F1")),
    Command("shortcuts", "&Keyboard", "Every key that does something.", ("Ctrl+?", "Ctrl+/")),
    Command("about", "&About Inlayfit", "Version and licence."),
)  # fmt: skip
BY_NAME: Mapping[str, Command] = {command.name: command for command in TABLE}

CANVAS_KEYS: tuple[tuple[str, str], ...] = (
    ("N", "next tight spot"),
    ("Shift+N", "previous tight spot"),
    ("+ −", "zoom about the middle"),
    ("arrows", "move the map"),
    ("Home", "fit to view"),
    ("M", "measure between two points: move by arrows, set each by Enter"),
    ("Space and drag", "move the map; the loupe follows the pointer while Space is held"),
)
"""Keys that work while the gap map has the keyboard, for the list of shortcuts."""
RULER_KEYS: tuple[tuple[str, str], ...] = (
    ("arrows", "1 micrometre"),
    ("Shift and arrows", "10 micrometres"),
    ("Page Up, Page Down", "50 micrometres"),
    ("Esc", "back to where the drag began"),
)
"""Keys of the fit ruler."""
STACK_KEYS: tuple[tuple[str, str], ...] = (
    ("Left, Right", "take hold of another face"),
    ("Up, Down", "move it by 0.01 mm"),
    ("Shift and arrows", "move it by 0.1 mm"),
    ("Enter", "type its height"),
)
"""Keys of the stack."""
LIST_KEYS: tuple[tuple[str, str], ...] = (
    ("Space, arrows", "choose one outline"),
    ("Shift and arrows", "choose several that follow each other"),
    ("Ctrl and arrows, Ctrl+Space", "go to another one, and add it or take it out"),
    ("F2", "give it another name"),
)
"""Keys of the list of outlines."""


def translated(text: str) -> str:
    """A text of the table in the window's language."""
    return QCoreApplication.translate("actions", text)


def key_sequences(command: Command) -> list[QKeySequence]:
    """The key sequences of a command on this platform, without doubles."""
    found: list[QKeySequence] = []
    for keys in command.keys:
        sequences = [QKeySequence(keys)] if isinstance(keys, str) else QKeySequence.keyBindings(keys)
        found += [sequence for sequence in sequences[:2] if sequence not in found]
    return found


def make_actions(parent: QWidget, handlers: Mapping[str, Callable[[], object]]) -> dict[str, QAction]:
    """An action for every command; each needs its handler."""
    actions: dict[str, QAction] = {}
    for command in TABLE:
        action = QAction(translated(command.text), parent)
        action.setObjectName(command.name)
        action.setShortcuts(key_sequences(command))
        why = translated(command.why)
        keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        plain = action.text().replace("&", "").rstrip("…")
        action.setStatusTip(why)
        action.setToolTip(f"<b>{plain}</b><br>{why}" + (f"<br>{keys}" if keys else ""))
        action.setCheckable(command.is_switch)
        action.triggered.connect(lambda _=False, do=handlers[command.name]: do())
        parent.addAction(action)
        actions[command.name] = action
    return actions
