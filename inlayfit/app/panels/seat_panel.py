"""The seat: which outline is the plug of two made halves, how it may move, and how it was moved.

It shows only while both halves are made. A plug from another drawing is read on the thread that opens
drawings; its outlines join the others and can be chosen like them.
"""

from __future__ import annotations

import math
from pathlib import Path

from PySide6.QtCore import QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal, Slot
from PySide6.QtGui import QColor, QIcon, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from inlayfit.app import theme
from inlayfit.app.panels.outline_row import outline_picture
from inlayfit.app.session import Session
from inlayfit.app.widgets.lettering import thin_rule, title_label
from inlayfit.app.widgets.listed_box import ListedBox
from inlayfit.app.words import size_words
from inlayfit.document.made_edits import give_plug, set_seating
from inlayfit.document.outlines import Outline
from inlayfit.document.state import Fitting, State
from inlayfit.fit.spec import Seating
from inlayfit.units import MINUS, format_length

_OTHER_DRAWING = "\0"
_ICON_PX = 24
_SMALLEST_TURN_DEG = 5e-4


class SeatPanel(QWidget):
    """Plug and seat of two made halves.

    Signals:
        other_drawing_asked(): the plug is in a drawing that is not open.
    """

    other_drawing_asked = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._listed: tuple[object, ...] = ()
        self._make_boxes()
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.told.setAccessibleName(self.tr("How the plug was moved"))
        self.again = QPushButton(self.tr("Search again"))
        self.again.setToolTip(
            self.tr("<b>Search again</b><br>Looks for the seat; the search was stopped before it had one.")
        )
        self._lay_out()
        self.plug_box.activated.connect(self._on_plug_box_activated)
        self.seating_box.activated.connect(self._on_seating_box_activated)
        self.again.clicked.connect(lambda: session.solve_again())
        session.settled.connect(self._show)
        session.search_progressed.connect(self._on_session_search_progressed)
        self._show()

    def _make_boxes(self) -> None:
        self.plug_box = self._box(
            self.tr("Outline of the plug"),
            self.tr("Both halves are made, so the plug has an outline of its own. It is never changed."),
        )
        self.plug_box.setIconSize(QSize(_ICON_PX, _ICON_PX))
        self.seating_box = self._box(
            self.tr("How the plug may move"),
            self.tr(
                "It is moved to where its smallest gap is largest, as a careful hand would push it. "
                "A turn is tried only if asked for: it could hide a wrong plug."
            ),
        )
        for seating, words in (
            (Seating.SHIFT, self.tr("shift it")),
            (Seating.TURN, self.tr("shift and turn it")),
            (Seating.AS_DRAWN, self.tr("leave it as drawn")),
        ):
            self.seating_box.addItem(words, seating)

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(8)
        grid.setVerticalSpacing(4)
        grid.setColumnStretch(1, 1)
        rows = ((self.tr("Plug"), self.plug_box), (self.tr("To seat it"), self.seating_box))
        for row, (words, box) in enumerate(rows):
            label = title_label(words)
            label.setBuddy(box)
            grid.addWidget(label, row, 0)
            grid.addWidget(box, row, 1)
        rule = thin_rule()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(grid)
        column.addWidget(self.told)
        column.addWidget(self.again, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(rule)

    def _box(self, name: str, why: str) -> ListedBox:
        box = ListedBox()
        box.setAccessibleName(name)
        box.setAccessibleDescription(why)
        box.setToolTip(f"<b>{name}</b><br>{why}")
        box.setSizeAdjustPolicy(ListedBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(12)
        return box

    # --- showing

    @Slot()
    def _show(self) -> None:
        state = self._session.shown
        lead = state.lead
        is_made = lead is not None and lead.both_made
        self.setVisible(is_made)
        if lead is None or not is_made:
            return
        self._list(state, lead)
        seating = lead.made.seating if lead.made is not None else Seating.SHIFT
        with QSignalBlocker(self.seating_box):
            self.seating_box.setCurrentIndex(self.seating_box.findData(seating))
        self.seating_box.setEnabled(lead.made is not None)
        solved = self._session.solution.solved.get(lead.outline_id)
        self.again.setVisible(solved is not None and solved.is_stopped)
        self.told.setText(self._words(state, lead))
        self.told.setVisible(bool(self.told.text()))

    def _list(self, state: State, lead: Fitting) -> None:
        """The outlines that can be the plug, with their pictures; the likest size first."""
        others = [outline for outline in state.outlines if outline.id != lead.outline_id]
        pocket = state.outline(lead.outline_id)
        others.sort(key=lambda outline: abs(outline.region.area - pocket.region.area))
        listed = (lead.outline_id, *others, theme.tokens_of(self))
        with QSignalBlocker(self.plug_box):
            if listed != self._listed:
                self._listed = listed
                self.plug_box.clear()
                ink = theme.colour(theme.tokens_of(self).text)
                for outline in others:
                    self.plug_box.addItem(_icon(outline, ink), self._name(outline), outline.id)
                self.plug_box.addItem(self.tr("From another drawing…"), _OTHER_DRAWING)
                self.plug_box.setPlaceholderText(self.tr("choose the plug"))
            given = "" if lead.made is None else lead.made.outline_id
            self.plug_box.setCurrentIndex(self.plug_box.findData(given) if given else -1)

    def _name(self, outline: Outline) -> str:
        x0, y0, x1, y1 = outline.region.bounds
        size = size_words(x1 - x0, y1 - y0, self._session.shown.unit)
        name = outline.name or outline.id_there
        if outline.drawing:
            name = self.tr("{0} of {1}").format(name, Path(outline.drawing).name)
        return f"{name}, {size}"

    def _words(self, state: State, lead: Fitting) -> str:
        """How the plug was moved, in the words of a hand."""
        if lead.made is None:
            return self.tr("Both halves are made. Choose the outline of the plug, and the fit is measured.")
        solved = self._session.solution.solved.get(lead.outline_id)
        if solved is None or not solved.answers(state, lead) or solved.result is None:
            return ""
        if solved.seat is None:
            return self.tr("It lies as it is drawn.")
        if not solved.seat.is_moved:
            return self.tr("It is drawn where it sits best.")
        x, y = (_signed(format_length(value, state.unit)) for value in solved.seat.shift_mm)
        degrees = math.degrees(solved.seat.turn_rad)
        if abs(degrees) < _SMALLEST_TURN_DEG:
            return self.tr("Moved by {0} along X and {1} along Y.").format(x, y)
        turn = _signed(f"{degrees:.3f}".replace("-", MINUS))
        return self.tr("Moved by {0} along X and {1} along Y, turned by {2}° counter-clockwise.").format(
            x, y, turn
        )

    @Slot(float)
    def _on_session_search_progressed(self, fraction: float) -> None:
        if fraction < 1 and self.isVisible():
            self.told.setText(self.tr("Looking for its seat …"))
            self.told.setVisible(True)

    # --- sending edits

    @Slot(int)
    def _on_plug_box_activated(self, number: int) -> None:
        chosen = self.plug_box.itemData(number)
        if chosen == _OTHER_DRAWING:
            self._show()
            self.other_drawing_asked.emit()
        elif chosen is not None:
            self._session.do(lambda state: give_plug(state, chosen), initiator=self)
            self._show()

    @Slot(int)
    def _on_seating_box_activated(self, number: int) -> None:
        seating = Seating(self.seating_box.itemData(number))
        self._session.do(lambda state: set_seating(state, seating), initiator=self)
        self._show()


def _signed(length: str) -> str:
    """With its sign, whichever it is: a shift has a direction."""
    return length if length.startswith(MINUS) else f"+{length}"


def _icon(outline: Outline, ink: QColor) -> QIcon:
    """The outline as a small picture."""
    ratio = 2.0
    pixmap = QPixmap(round(_ICON_PX * ratio), round(_ICON_PX * ratio))
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    path = outline_picture(outline)
    box: QRectF = path.boundingRect()
    scale = (_ICON_PX - 3) / max(box.width(), box.height(), 1e-9)
    painter.translate(QPointF(_ICON_PX / 2, _ICON_PX / 2))
    painter.scale(scale, scale)
    painter.setPen(QPen(ink, 1.2 / scale))
    painter.drawPath(path)
    painter.end()
    return QIcon(pixmap)
