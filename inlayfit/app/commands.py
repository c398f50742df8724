"""What each command of `inlayfit.app.actions` does to a window."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QCoreApplication, Qt

from inlayfit.app.bench import Bench
from inlayfit.app.core_words import core, core_error
from inlayfit.app.pages import help_pages
from inlayfit.app.pages.settings_page import SettingsPage
from inlayfit.document import edits
from inlayfit.document.settings import Settings, settings_file, write_settings
from inlayfit.errors import InlayfitError
from inlayfit.fit.spec import Half
from inlayfit.units import Unit


def handlers(bench: Bench) -> Mapping[str, Callable[[], object]]:
    """The handler of every command."""
    session, documents, work = bench.session, bench.documents, bench.work
    view, side = work.map, work.side
    return {
        "open": documents.open_with_prompt,
        "add": lambda: documents.open_with_prompt(adds=True),
        "sample": documents.open_sample,
        "type_size": lambda: _type_size(bench),
        "reading": bench.rereading.ask,
        "made_plug": documents.open_plug_with_prompt,
        "measured": lambda: _measured(bench),
        "save": documents.save,
        "save_as": documents.save_as,
        "export": documents.exporter.ask,
        "settings": lambda: _show_settings(bench),
        "undo": lambda: _undo(bench),
        "redo": lambda: _redo(bench),
        "paste": documents.paste,
        "choose_all": lambda: session.do(
            lambda s: edits.choose(s, [o.id for o in s.outlines if o.id not in s.plug_ids])
        ),
        "choose_none": lambda: session.do(lambda s: edits.choose(s, [])),
        "remove": lambda: session.do(edits.remove_chosen),
        "fit_view": view.fit_to_view,
        "zoom_in": view.zoom_in,
        "zoom_out": view.zoom_out,
        "next_spot": lambda: session.choose_spot(session.spot + 1),
        "previous_spot": lambda: session.choose_spot(session.spot - 1),
        "show_spot": lambda: side.go_to_page(work.spot),
        "show_checks": lambda: side.go_to_page(work.checks_panel),
        "show_outlines": lambda: side.go_to_page(work.outlines),
        "show_workshop": lambda: side.go_to_page(work.workshop_page),
        "next_panel": lambda: bench.next_panel(1),
        "previous_panel": lambda: bench.next_panel(-1),
        "edit_clearance": lambda: _edit_clearance(bench),
        "unit_mm": lambda: session.do(lambda s: edits.set_unit(s, Unit.MM)),
        "unit_inch": lambda: session.do(lambda s: edits.set_unit(s, Unit.INCH)),
        "unit_thou": lambda: session.do(lambda s: edits.set_unit(s, Unit.THOU)),
        "theme_system": lambda: _set_theme(bench, "system"),
        "theme_light": lambda: _set_theme(bench, "light"),
        "theme_dark": lambda: _set_theme(bench, "dark"),
        "theme_contrast": lambda: _set_theme(bench, "high-contrast"),
        "theme_contrast_white": lambda: _set_theme(bench, "high-contrast-white"),
        "use_pocket": lambda: session.do(lambda s: edits.use_as(s, Half.POCKET)),
        "use_plug": lambda: session.do(lambda s: edits.use_as(s, Half.PLUG)),
        "read_mm": lambda: documents.read_again(Unit.MM),
        "read_inch": lambda: documents.read_again(Unit.INCH),
        "guide": lambda: _show_page(bench, _tr("Guide"), help_pages.guide_html()),
        "shortcuts": lambda: _show_page(bench, _tr("Keyboard"), help_pages.shortcuts_html()),
        "about": lambda: _show_page(bench, _tr("About Inlayfit"), help_pages.about_html()),
    }


def keep_settings(bench: Bench, settings: Settings) -> None:
    """Use settings from now on and remember them."""
    bench.session.change_settings(settings)
    try:
        write_settings(settings, bench.settings_file or settings_file())
    except InlayfitError as error:
        bench.notice.complain(core_error(error))


def _type_size(bench: Bench) -> None:
    from inlayfit.app.pages.measured_pocket import ask_size  # heavy; not before it is needed

    ask_size(bench.window, bench.session)


def _measured(bench: Bench) -> None:
    from inlayfit.app.pages.measured_pocket import ask_stations  # heavy; not before it is needed

    ask_stations(bench.window, bench.session)


def _undo(bench: Bench) -> None:
    step = bench.session.undo()
    if step is not None:
        bench.strip.say(_tr("Taken back: {0}").format(core(step.text)))


def _redo(bench: Bench) -> None:
    step = bench.session.redo()
    if step is not None:
        bench.strip.say(_tr("Done again: {0}").format(core(step.text)))


def _edit_clearance(bench: Bench) -> None:
    box = bench.sentence.clearance_box
    box.setFocus(Qt.FocusReason.ShortcutFocusReason)
    box.selectAll()


def _set_theme(bench: Bench, name: str) -> None:
    keep_settings(bench, bench.session.settings.with_value("theme", name))


def _show_settings(bench: Bench) -> None:
    page = SettingsPage(
        bench.session.settings,
        lambda settings: keep_settings(bench, settings),
        unit=bench.session.state.unit,
        file=bench.settings_file or settings_file(),
        parent=bench.window,
    )
    page.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    page.open()


def _show_page(bench: Bench, title: str, html: str) -> None:
    help_pages.TextPage(title, html, bench.window).show()


def _tr(text: str) -> str:
    return QCoreApplication.translate("commands", text)
