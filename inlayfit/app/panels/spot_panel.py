"""The spot: the seat of a made plug, the loupe on one of the tightest places, and the stack there."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QToolButton, QVBoxLayout, QWidget

from inlayfit.app.canvas.loupe import READING_ONLY_PX, Loupe
from inlayfit.app.canvas.loupe_view import LoupeSpot
from inlayfit.app.canvas.pointing import PointerReading
from inlayfit.app.canvas.scene import FittingScene
from inlayfit.app.icons import IconButton, IconName
from inlayfit.app.panels.seat_panel import SeatPanel
from inlayfit.app.panels.stack_panel import StackPanel
from inlayfit.app.session import Session
from inlayfit.app.widgets.lettering import muted_label, thin_rule, title_label

_LOUPE_PX, _LOW_LOUPE_PX, _HIGH_LOUPE_PX = 196, 150, 250
_LOWEST_LOUPE_PX = 140
_GAP_PX = 6


class SpotPanel(QScrollArea):
    """Seat of a made plug, loupe and stack."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._fitting: FittingScene | None = None
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        title = title_label(self.tr("Loupe"))
        self._which = muted_label()
        self.previous = self._arrow(IconName.PREVIOUS, self.tr("Previous tight spot"), -1)
        self.next = self._arrow(IconName.NEXT, self.tr("Next tight spot"), 1)
        self.loupe = Loupe()
        self.loupe.setFixedHeight(_LOUPE_PX)
        self.loupe.stepped.connect(self._step)
        head = QHBoxLayout()
        head.setSpacing(8)
        head.addWidget(title)
        head.addWidget(self._which, 1)
        head.addWidget(self.previous)
        head.addWidget(self.next)
        self._rule = thin_rule()
        self.stack = StackPanel(session)
        body = QWidget()
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(_GAP_PX)
        self.seat = SeatPanel(session)
        column.addWidget(self.seat)
        column.addLayout(head)
        column.addWidget(self.loupe)
        column.addWidget(self._rule)
        column.addWidget(self.stack)
        column.addStretch(1)
        self.setWidget(body)
        body.installEventFilter(self)
        self.stack.opened.connect(self._on_stack_opened)
        session.spot_chosen.connect(self._on_session_spot_chosen)

    def _arrow(self, icon: IconName, name: str, step: int) -> QToolButton:
        button = IconButton(icon)
        button.setObjectName("arrow")
        button.setAccessibleName(name)
        button.setToolTip(f"<b>{name}</b><br>{self.tr('Walks the tightest places, the worst first.')}")
        button.clicked.connect(lambda: self._step(step))
        return button

    @Slot(int)
    def _step(self, step: int) -> None:
        self._session.choose_spot(self._session.spot + step)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_loupe()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.LayoutRequest:
            self._fit_loupe()
        return super().eventFilter(watched, event)

    def _fit_loupe(self) -> None:
        """Give the loupe what the stack leaves, so that nothing has to be scrolled if it need not.

        Where that would be too little, the stack is asked to do with less; while its boxes are wanted there
        too, the loupe shows its number only.
        """
        body = self.widget()
        if body is None:
            return
        room = self.viewport().height()
        rest = body.minimumSizeHint().height() - self.loupe.height()
        rule = 0 if not self._rule.isHidden() else self._rule.height() + _GAP_PX
        full = rest + rule - self.stack.minimumSizeHint().height() + self.stack.full_height()
        is_tight = full + _LOW_LOUPE_PX > room
        self._rule.setVisible(not is_tight)
        self.stack.set_tight(is_tight)
        if is_tight and self.stack.opener.isChecked():
            self.loupe.setFixedHeight(READING_ONLY_PX)
            return
        rest = body.minimumSizeHint().height() - self.loupe.height()
        self.loupe.setFixedHeight(min(_HIGH_LOUPE_PX, max(_LOWEST_LOUPE_PX, room - rest)))

    @Slot()
    def _on_stack_opened(self) -> None:
        """Bring the boxes into sight once they have their place."""
        QTimer.singleShot(0, self, lambda: self.ensureWidgetVisible(self.stack.numbers, 0, 0))

    @property
    def which(self) -> str:
        """The words that say which place is looked at."""
        return self._which.text()

    def show_fitting(self, fitting: FittingScene | None) -> None:
        """Look at another fitting, or at another answer for it."""
        self._fitting = fitting
        self.loupe.set_unit(self._session.shown.unit)
        self.loupe.set_stale(self._session.is_stale)
        self._show_spot()

    def ask_for_plug(self) -> None:
        """Lead to the choice of the plug of two made halves."""
        self.ensureWidgetVisible(self.seat)
        self.seat.plug_box.setFocus(Qt.FocusReason.OtherFocusReason)
        self.seat.plug_box.showPopup()

    def follow(self, reading: PointerReading, *, words: str = "") -> None:
        """Look at the wall nearest to a place until another spot is chosen; `words` say what place it is."""
        if self._fitting is None or None in (reading.wall_mm, reading.partner_mm, reading.gap_mm):
            return
        assert reading.wall_mm is not None
        assert reading.partner_mm is not None
        assert reading.gap_mm is not None
        self._which.setText(words or self.tr("at the pointer"))
        self.loupe.look_at(self._fitting, LoupeSpot(reading.wall_mm, reading.partner_mm, reading.gap_mm))

    @Slot(int)
    def _on_session_spot_chosen(self, _number: int) -> None:
        self._show_spot()

    def _show_spot(self) -> None:
        spots = self._fitting.spots if self._fitting is not None else ()
        number = min(self._session.spot, len(spots) - 1)
        for button in (self.previous, self.next):
            button.setEnabled(len(spots) > 1)
        if number < 0:
            self._which.setText("")
            self.loupe.set_spot(self._fitting, None)
            return
        self._which.setText(self._words_for(number))
        self.loupe.set_spot(self._fitting, spots[number])

    def _words_for(self, number: int) -> str:
        """Which place is looked at; where no place stands out, nothing is counted."""
        assert self._fitting is not None
        if len(self._fitting.spots) > 1:
            return self.tr("spot {0} of {1}").format(number + 1, len(self._fitting.spots))
        return self.tr("the gap is even all round") if self._fitting.is_even else self.tr("the tightest spot")
