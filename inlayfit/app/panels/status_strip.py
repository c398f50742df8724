"""The strip at the bottom: where the pointer is, the unit, the zoom, and whether all is saved."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QMenu,
    QProgressBar,
    QPushButton,
    QToolButton,
    QWidget,
)

from inlayfit.app.panels.elided import ElidedLabel
from inlayfit.app.widgets.under_mouse import look_for_mouse
from inlayfit.units import Unit

_NOTICE_MS = 6000
_PATIENCE_MS = 300
SHOWN_UNITS = (Unit.MM, Unit.INCH, Unit.THOU)


class StatusStrip(QWidget):
    """The bottom line of the window.

    Signals:
        unit_asked(Unit): show lengths in another unit.
        cancel_asked(): stop the long work that is shown.
    """

    unit_asked = Signal(object)
    cancel_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFixedHeight(40)
        self._notice = ElidedLabel()
        self._notice.setAccessibleName(self.tr("Message"))
        self._notice_clock = QTimer(self)
        self._notice_clock.setSingleShot(True)
        self._notice_clock.timeout.connect(lambda: self._notice.say(""))
        self._progress = QProgressBar()
        self._progress.setFixedWidth(160)
        self._progress.setTextVisible(False)
        self._progress.setAccessibleName(self.tr("Progress"))
        self._progress_clock = QTimer(self)
        self._progress_clock.setSingleShot(True)
        self._progress_clock.timeout.connect(lambda: self.show_progress(0.0))
        self.cancel_button = QPushButton(self.tr("Cancel"))
        self.cancel_button.clicked.connect(self.cancel_asked)
        self._place = QLabel()
        self._gap = QLabel()
        self._zoom = QLabel()
        self._saved = QLabel()
        self.unit_button = self._unit_button()
        row = QHBoxLayout(self)
        row.setContentsMargins(24, 0, 24, 0)
        row.setSpacing(20)
        row.addWidget(self._notice, 1)
        row.addWidget(self._progress)
        row.addWidget(self.cancel_button)
        for label in (self._place, self._gap):
            row.addWidget(label)
        row.addWidget(self.unit_button)
        row.addWidget(self._zoom)
        row.addWidget(self._saved)
        self.show_progress(None)

    def show_unit(self, unit: Unit) -> None:
        """Mark the unit in force."""
        self.unit_button.setText(self.tr("unit {0}").format(unit.symbol))
        for action, of in self._unit_actions:
            action.setChecked(of is unit)

    def show_pointer(self, place: str, gap: str) -> None:
        """Where the pointer is and the gap under it; empty if it is elsewhere."""
        self._place.setText(place)
        self._gap.setText(gap)

    def show_zoom(self, words: str) -> None:
        """How large the map is drawn."""
        self._zoom.setText(words)

    def show_saved(self, words: str) -> None:
        """Whether all work is saved."""
        self._saved.setText(words)

    def say(self, words: str) -> None:
        """A passing message."""
        self._notice.say(words)
        self._notice_clock.start(_NOTICE_MS)

    @property
    def message(self) -> str:
        """The message that shows now."""
        return self._notice.text()

    def show_progress(self, fraction: float | None, words: str = "") -> None:
        """How far long work is; None when there is none."""
        self._progress_clock.stop()
        self._progress.setVisible(fraction is not None)
        self.cancel_button.setVisible(fraction is not None)
        if fraction is not None:
            self._progress.setRange(0, 100 if fraction > 0 else 0)
            self._progress.setValue(round(100 * fraction))
            if words:
                self._notice.say(words)

    def show_progress_soon(self, fraction: float, words: str = "") -> None:
        """Show progress of work that has taken a while already; short work shows none."""
        if self._progress.isVisible():
            self.show_progress(fraction, words)
        elif not self._progress_clock.isActive():
            self._progress_clock.start(_PATIENCE_MS)

    def _unit_button(self) -> QToolButton:
        button = QToolButton()
        button.setObjectName("quiet")
        button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        button.setAccessibleName(self.tr("Unit"))
        button.setToolTip(self.tr("<b>Unit</b><br>Shows every length in another unit; nothing else changes."))
        menu = QMenu(button)
        group = QActionGroup(menu)
        self._unit_actions: list[tuple[QAction, Unit]] = []
        words = {
            Unit.MM: self.tr("millimetres"),
            Unit.INCH: self.tr("inches"),
            Unit.THOU: self.tr("thou (0.001 in)"),
        }
        for unit in SHOWN_UNITS:
            action = menu.addAction(words[unit])
            action.setCheckable(True)
            group.addAction(action)
            action.triggered.connect(lambda _=False, u=unit: self.unit_asked.emit(u))
            self._unit_actions.append((action, unit))
        menu.aboutToHide.connect(lambda: look_for_mouse(button))
        button.setMenu(menu)
        return button
