"""What each command of `inlayfit.app.actions` does to a window."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from inlayfit.app import help_pages
from inlayfit.app.settings_page import SettingsPage
from inlayfit.document import edits
from inlayfit.document.settings import Settings, settings_file, write_settings
from inlayfit.errors import InlayfitError
from inlayfit.fit.result import Half
from inlayfit.units import Unit

if TYPE_CHECKING:
    from inlayfit.app.window import MainWindow


def handlers(window: MainWindow) -> Mapping[str, Callable[[], object]]:
    """The handler of every command."""
    session, documents, view = window.session, window.documents, window.map
    return {
        "open": documents.open_with_prompt,
        "add": lambda: documents.open_with_prompt(adds=True),
        "sample": documents.open_sample,
        "save": documents.save,
        "save_as": documents.save_as,
        "export": documents.export_with_prompt,
        "settings": lambda: _show_settings(window),
        "quit": window.close,
        "undo": lambda: _undo(window),
        "redo": lambda: _redo(window),
        "paste": documents.paste,
        "choose_all": lambda: session.do(lambda s: edits.choose(s, [o.id for o in s.outlines])),
        "choose_none": lambda: session.do(lambda s: edits.choose(s, [])),
        "remove": lambda: session.do(edits.remove_chosen),
        "fit_view": view.fit_to_view,
        "zoom_in": view.zoom_in,
        "zoom_out": view.zoom_out,
        "next_spot": lambda: session.choose_spot(session.spot + 1),
        "previous_spot": lambda: session.choose_spot(session.spot - 1),
        "show_spot": lambda: window.side.show_page(window.spot),
        "show_checks": lambda: window.side.show_page(window.checks_panel),
        "show_outlines": lambda: window.side.show_page(window.outlines),
        "next_panel": lambda: window.next_panel(1),
        "previous_panel": lambda: window.next_panel(-1),
        "edit_clearance": lambda: _edit_clearance(window),
        "unit_mm": lambda: session.do(lambda s: edits.set_unit(s, Unit.MM)),
        "unit_inch": lambda: session.do(lambda s: edits.set_unit(s, Unit.INCH)),
        "unit_thou": lambda: session.do(lambda s: edits.set_unit(s, Unit.THOU)),
        "theme_system": lambda: _set_theme(window, "system"),
        "theme_light": lambda: _set_theme(window, "light"),
        "theme_dark": lambda: _set_theme(window, "dark"),
        "theme_contrast": lambda: _set_theme(window, "high-contrast"),
        "use_pocket": lambda: session.do(lambda s: edits.use_as(s, Half.POCKET)),
        "use_plug": lambda: session.do(lambda s: edits.use_as(s, Half.PLUG)),
        "read_mm": lambda: documents.read_again(Unit.MM),
        "read_inch": lambda: documents.read_again(Unit.INCH),
        "guide": lambda: _show_page(window, window.tr("Guide"), help_pages.guide_html()),
        "shortcuts": lambda: _show_page(window, window.tr("Keyboard"), help_pages.shortcuts_html()),
        "about": lambda: _show_page(window, window.tr("About Inlayfit"), help_pages.about_html()),
    }


def keep_settings(window: MainWindow, settings: Settings) -> None:
    """Use settings from now on and remember them."""
    window.session.change_settings(settings)
    try:
        write_settings(settings, window.settings_file or settings_file())
    except InlayfitError as error:
        window.notice.complain(str(error))


def _undo(window: MainWindow) -> None:
    window.session.cancel_gesture()
    words = window.session.undo_stack.undoText()
    window.session.undo_stack.undo()
    if words:
        window.strip.say(window.tr("Taken back: {0}").format(words))


def _redo(window: MainWindow) -> None:
    window.session.cancel_gesture()
    words = window.session.undo_stack.redoText()
    window.session.undo_stack.redo()
    if words:
        window.strip.say(window.tr("Done again: {0}").format(words))


def _edit_clearance(window: MainWindow) -> None:
    box = window.sentence.clearance_box
    box.setFocus(Qt.FocusReason.ShortcutFocusReason)
    box.selectAll()


def _set_theme(window: MainWindow, name: str) -> None:
    keep_settings(window, window.session.settings.with_value("theme", name))


def _show_settings(window: MainWindow) -> None:
    page = SettingsPage(
        window.session.settings,
        lambda settings: keep_settings(window, settings),
        unit=window.session.state.unit,
        file=window.settings_file or settings_file(),
        parent=window,
    )
    page.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    page.open()


def _show_page(window: MainWindow, title: str, html: str) -> None:
    help_pages.TextPage(title, html, window).show()
