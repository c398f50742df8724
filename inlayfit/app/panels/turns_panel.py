"""Turned and flipped: which wrong ways to hold the plug look right, and whether it needs a mark."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from inlayfit.app.core_words import core
from inlayfit.app.session import Session
from inlayfit.app.widgets.lettering import title_label
from inlayfit.app.widgets.turns_view import MOST_WAYS, TurnsView, Way
from inlayfit.wording import Worded, said

if TYPE_CHECKING:
    from inlayfit.fit.orientation import Orientation, Orientations


class TurnsPanel(QWidget):
    """Lookalikes of the plug; it shows only where the plug goes in at all."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        title = title_label(self.tr("Turned and flipped"))
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.told.setAccessibleName(title.text())
        self.view = TurnsView()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        for part in (title, self.told, self.view):
            column.addWidget(part)
        session.examined.connect(self._show)
        session.settled.connect(self._show)
        self.hide()

    @Slot()
    def _show(self) -> None:
        if self._session.is_in_gesture:
            return
        lead = self._session.shown.lead
        look = None if lead is None else self._session.look(lead.outline_id)
        fit = None if look is None else look.examined
        if fit is None:
            if lead is None or self._session.solution.result(lead.outline_id) is None:
                self.hide()
            return
        from inlayfit.fit.bench_advice import goes_in  # loaded with what was examined

        self.setVisible(goes_in(fit.result))
        ways = fit.orientations
        self.told.setText(self._words(ways))
        worth_drawing = bool(ways.lookalikes) and not ways.is_round
        self.view.setVisible(worth_drawing)
        if worth_drawing:
            drawn = tuple(_way(way) for way in _ordered(ways))
            self.view.show_ways(fit.result.plug.outline, drawn, self.told.text())

    def _words(self, ways: Orientations) -> str:
        """What looks alike, and what to do."""
        if ways.is_round and ways.mark_is_compulsory:
            return self.tr("Round, but it does not go in at every turn: mark plug and pocket.")
        if ways.is_round:
            return self.tr("Round: it goes in at any turn.")
        if not ways.lookalikes:
            return self.tr("It goes in one way only, and looks it.")
        from inlayfit.fit.lookalikes import motion_words

        ordered = _ordered(ways)
        names = ", ".join(said(motion_words(way), core) for way in ordered[:MOST_WAYS])
        if len(ordered) > MOST_WAYS:
            names = self.tr("{0} and {1} more").format(names, len(ordered) - MOST_WAYS)
        if ways.mark_is_compulsory:
            words = self.tr("It looks the same {0}, but does not go in every way: mark plug and pocket.")
            return words.format(names)
        return self.tr("It looks the same {0}, and goes in each way.").format(names)


def _ordered(ways: Orientations) -> list[Orientation]:
    """Turns before flips, those that need a mark first."""
    from inlayfit.fit.orientation import Motion, Need

    return sorted(
        ways.lookalikes,
        key=lambda way: (way.need is not Need.MARK, way.motion is Motion.FLIPPED, way.angle_rad),
    )


def _way(way: Orientation) -> Way:
    from inlayfit.fit.orientation import Motion, Need

    degrees = round(math.degrees(way.angle_rad)) % 360
    is_flipped = way.motion is Motion.FLIPPED
    words = [_flipped()] * is_flipped + [f"{degrees}°"] * (bool(degrees) or not is_flipped)
    return Way(way.angle_rad, is_flipped, way.need is Need.NOTHING, " ".join(words))


def _flipped() -> str:
    return said(Worded("flipped"), core)
