"""What new work begins with, by the settings of the person."""

from __future__ import annotations

from dataclasses import replace

from inlayfit.document.settings import Settings
from inlayfit.document.state import Fitting, SettingsUsed, State
from inlayfit.document.workshop_numbers import workshop_of_new_work
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState
from inlayfit.units import Unit


def template_fitting(settings: Settings, used_as: Half) -> Fitting:
    """The fit that a new outline starts with."""
    allowance = settings.number("finishing_allowance_mm")
    plug_state = HalfState.ALREADY_CUT if used_as is Half.PLUG else HalfState.TO_CUT
    spec = FitSpec(
        settings.number("clearance_mm"),
        pocket=HalfSpec(settings.number("pocket_cutter_mm"), finishing_allowance_mm=allowance),
        plug=HalfSpec(settings.number("plug_cutter_mm"), state=plug_state, finishing_allowance_mm=allowance),
    )
    return Fitting("", spec)


def settings_used(settings: Settings) -> SettingsUsed:
    """How drawings are read by these settings."""
    return SettingsUsed(settings.number("join_gap_mm"), settings.switch("strokes_as_areas"))


def in_unit(state: State, settings: Settings) -> State:
    """A new document in the unit and with the workshop the settings ask for."""
    workshop = workshop_of_new_work(settings)
    return replace(state, unit=Unit[settings.text("unit")], workshop=workshop)
