"""Leads the pages for a pocket without a drawing, and for one that was measured, to the document."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QDialog, QWidget

from inlayfit.app.pages.size_page import SizePage
from inlayfit.app.pages.stations_page import StationsPage
from inlayfit.app.session import Session
from inlayfit.document.edits import Edit
from inlayfit.document.measured_edits import apply_readings, leave_readings_out, type_pocket
from inlayfit.document.new_work import in_unit, template_fitting
from inlayfit.document.outlines import Outline
from inlayfit.document.state import State
from inlayfit.fit.spec import Half
from inlayfit.units import Unit


def ask_size(window: QWidget, session: Session) -> SizePage:
    """Ask for a pocket by its size and add it to the work."""
    unit = Unit[session.settings.text("unit")] if session.state.is_empty else session.state.unit
    page = SizePage(unit=unit, parent=window)

    def add(outline: Outline) -> None:
        def edit(state: State) -> Edit:
            start = in_unit(state, session.settings) if state.is_empty else state
            return type_pocket(start, outline, template=template_fitting(session.settings, Half.POCKET))

        session.do(edit)

    page.typed.connect(add)
    _show(page)
    return page


def ask_stations(window: QWidget, session: Session) -> StationsPage | None:
    """Ask for the readings of the chosen pocket, showing those it has, and fit to it as it is."""
    lead = session.state.lead
    if lead is None or len(session.state.chosen) != 1 or lead.drawn is Half.PLUG:
        session.refused.emit(_tr("Readings belong to one pocket; choose the outline of that pocket alone."))
        return None
    x0, y0, x1, y1 = session.state.outline(lead.outline_id).region.bounds
    page = StationsPage(
        wide_mm=x1 - x0, high_mm=y1 - y0, unit=session.state.unit, known=lead.readings, parent=window
    )
    page.measured.connect(lambda readings: session.do(lambda state: apply_readings(state, readings)))
    page.left_out.connect(lambda: session.do(leave_readings_out))
    _show(page)
    return page


def _show(page: QDialog) -> None:
    page.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    page.open()


def _tr(text: str) -> str:
    return QCoreApplication.translate("measured", text)
