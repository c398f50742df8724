"""Leads what the gap map says to the session, the loupe and the status strip."""

from __future__ import annotations

import math
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Qt, Slot
from PySide6.QtGui import QGuiApplication

from inlayfit.app.canvas.drop_halves import Dropped, DropUse
from inlayfit.app.canvas.gap_map import GapMapView
from inlayfit.app.canvas.pointing import Measurement, PointerReading, reading_at
from inlayfit.app.canvas.reading_text import spoken
from inlayfit.app.files.content import offer_for
from inlayfit.app.files.documents import Documents
from inlayfit.app.files.opening import is_project
from inlayfit.app.panels.spot_panel import SpotPanel
from inlayfit.app.panels.status_strip import StatusStrip
from inlayfit.app.session import Session
from inlayfit.document.edits import choose
from inlayfit.fit.spec import Half
from inlayfit.units import format_length

_SAME_PLACE_MM = 1.0
_ADDING = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier


class MapLink(QObject):
    """The wires between the map and the rest."""

    def __init__(
        self, view: GapMapView, session: Session, documents: Documents, strip: StatusStrip, spot: SpotPanel
    ) -> None:
        super().__init__(view)
        self._map = view
        self._session = session
        self._documents = documents
        self._strip = strip
        self._spot = spot
        view.set_drop_reader(offer_for)
        view.drawing_dropped.connect(self._on_map_drawing_dropped)
        view.drop_refused.connect(documents.turned_down)
        view.spot_chosen.connect(session.choose_spot)
        view.fitting_chosen.connect(self._on_map_fitting_chosen)
        view.outline_chosen.connect(self._on_map_outline_chosen)
        view.pointer_moved.connect(self._on_map_pointer_moved)
        view.pointer_left.connect(self._on_map_pointer_left)
        view.measured.connect(self._on_map_measured)
        view.view_changed.connect(self._on_map_view_changed)
        session.spot_chosen.connect(self._on_session_spot_chosen)

    def show_place(self, place: tuple[float, float]) -> None:
        """Bring a place into view, and look at the tight spot there, or at the wall nearest to it."""
        fitting = self._map.chosen_fitting
        spots = fitting.spots if fitting is not None else ()
        apart = [math.dist(spot.place_mm, place) for spot in spots]
        self._map.centre_on(*place)
        if apart and min(apart) <= _SAME_PLACE_MM:
            self._session.choose_spot(apart.index(min(apart)))
        elif fitting is not None:
            self._map.set_marked_place(place)
            reading = reading_at(self._map.scene, *place, math.inf)
            self._spot.follow(reading, words=self.tr("at the place of the check"))

    def take_drop(self, files: Sequence[Path], text: str, half: Half) -> None:
        """Read what was dropped: opened if nothing is open yet, else added; a project is always opened."""
        if files:
            adds = not self._session.state.is_empty and not is_project(files[0])
            self._documents.open_files(files, used_as=half, adds=adds)
        elif text:
            self._documents.read_text(text, used_as=half)

    @Slot(object)
    def _on_map_drawing_dropped(self, content: Dropped) -> None:
        half = Half.PLUG if content.use is DropUse.PLUG else Half.POCKET
        self.take_drop([Path(name) for name in content.files], content.text, half)

    @Slot(int)
    def _on_session_spot_chosen(self, number: int) -> None:
        if self._map.chosen_spot != number or self._map.marked_place is not None:
            self._map.set_chosen_spot(number)
        self._say_spot(number)

    def _say_spot(self, number: int) -> None:
        """Say which place is looked at and how tight it is; where the gap is even, that it is."""
        fitting, unit = self._map.chosen_fitting, self._session.shown.unit
        if fitting is None or not 0 <= number < len(fitting.spots):
            return
        gap = spoken(fitting.spots[number].gap_mm, unit)
        if len(fitting.spots) > 1:
            words = self.tr("Spot {0} of {1}: {2}").format(number + 1, len(fitting.spots), gap)
        elif fitting.is_even:
            words = self.tr("The gap is even all round, {0}; no place is tighter.").format(gap)
        else:
            words = self.tr("No other place stands out; the tightest has {0}.").format(gap)
        self._strip.say(words)
        self._session.announced.emit(words)

    @Slot(str)
    def _on_map_fitting_chosen(self, key: str) -> None:
        self._choose(key, added=bool(QGuiApplication.keyboardModifiers() & _ADDING))

    @Slot(str, bool)
    def _on_map_outline_chosen(self, key: str, added: bool) -> None:
        self._choose(key, added=added)

    def _choose(self, key: str, *, added: bool) -> None:
        chosen = self._session.state.chosen
        if not added:
            wanted: tuple[str, ...] = (key,)
        elif key in chosen:
            wanted = tuple(i for i in chosen if i != key)
        else:
            wanted = (*chosen, key)
        self._session.do(lambda state: choose(state, wanted))

    @Slot(object)
    def _on_map_pointer_moved(self, reading: PointerReading) -> None:
        unit = self._session.shown.unit
        places = max(1, unit.readout_decimals - 1)
        x, y = (
            format_length(v, unit, decimals=places, with_unit=False) for v in (reading.x_mm, reading.y_mm)
        )
        gap = "" if reading.gap_mm is None else self.tr("gap {0}").format(spoken(reading.gap_mm, unit))
        self._strip.show_pointer(f"x {x}   y {y}", gap)
        if reading.following:
            self._spot.follow(reading)

    @Slot()
    def _on_map_pointer_left(self) -> None:
        self._strip.show_pointer("", "")

    @Slot(object)
    def _on_map_measured(self, measured: Measurement) -> None:
        unit = self._session.shown.unit
        lengths = (measured.distance_mm, abs(measured.across_mm), abs(measured.up_mm))
        words = self.tr("Measured {0}: {1} across, {2} up")
        self._strip.say(words.format(*(format_length(length, unit) for length in lengths)))

    @Slot(float)
    def _on_map_view_changed(self, percent: float) -> None:
        self._strip.show_zoom(self.tr("zoom {0} %").format(percent_words(percent)))


def percent_words(percent: float) -> str:
    """A zoom as a person reads it: two digits that count, whole above 10."""
    return f"{percent:.0f}" if percent >= 10 else f"{percent:.2g}"
