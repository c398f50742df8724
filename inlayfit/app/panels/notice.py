"""A complaint or an offer, in the window: what went wrong, or was done, and what to do about it."""

from __future__ import annotations

from collections.abc import Callable
from enum import Enum, auto

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QApplication, QFrame, QHBoxLayout, QLabel, QPushButton, QWidget
from shiboken6 import isValid

from inlayfit.app.panels.severity_sign import SeveritySign
from inlayfit.finding import Severity


class Until(Enum):
    """What a complaint waits for, if nobody puts it away."""

    DISMISSED = auto()
    """Nothing else: it holds whatever is done next."""
    DONE = auto()
    """The next thing that goes well."""
    OPENED = auto()
    """The next file or paste that can be used: it is about one that could not."""


class Notice(QFrame):
    """One sentence with a button to put it away, and with one more if it offers something.

    Signals:
        complained(): it says another sentence.
    """

    complained = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("notice")
        self._words = QLabel()
        self._words.setWordWrap(True)
        self._words.setTextFormat(Qt.TextFormat.PlainText)
        self._words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.close_button = QPushButton(self.tr("Dismiss"))
        self.close_button.clicked.connect(self.dismiss)
        row = QHBoxLayout(self)
        row.setContentsMargins(24, 8, 24, 8)
        row.setSpacing(12)
        self._sign = SeveritySign(Severity.BLOCK)
        self.offer_button = QPushButton(self.tr("Bring it back"))
        self.offer_button.clicked.connect(self._on_offer_button_clicked)
        self._offered: Callable[[], object] | None = None
        row.addWidget(self._sign)
        row.addWidget(self._words, 1)
        row.addWidget(self.offer_button)
        row.addWidget(self.close_button)
        self._before: QWidget | None = None
        self._until = Until.DISMISSED
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.focusChanged.connect(self._on_focus_changed)
        self.hide()

    @property
    def text(self) -> str:
        """What it says; empty if nothing."""
        return "" if self.isHidden() else self._words.text()

    @Slot(str)
    def complain(self, text: str, until: Until = Until.DISMISSED) -> None:
        """Say another sentence."""
        self._until = until
        self._say(text, Severity.BLOCK)

    def settle(self, *done: Until) -> None:
        """Put away a complaint that waited for one of these."""
        if self._until in done:
            self.dismiss()

    def offer(self, text: str, do: Callable[[], object]) -> None:
        """Say what was done, with a button that brings back what was there, until something else is done."""
        self._until = Until.DONE
        self._say(text, Severity.NOTE, do)

    def _say(self, text: str, severity: Severity, offered: Callable[[], object] | None = None) -> None:
        self._offered = offered
        self.offer_button.setVisible(offered is not None)
        self._sign.show_severity(severity)
        self.setProperty("offer", offered is not None)
        self.style().unpolish(self)
        self.style().polish(self)
        self._words.setText(text)
        self.setAccessibleName(text)
        self.show()
        self.complained.emit()

    @Slot()
    def dismiss(self) -> None:
        """Put it away; the keyboard goes back to where it was."""
        had_keyboard = self.isAncestorOf(QApplication.focusWidget() or self.window())
        before, self._before = self._before, None
        self.hide()
        if had_keyboard and before is not None and isValid(before) and before.isVisible():
            before.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _on_offer_button_clicked(self) -> None:
        offered, self._offered = self._offered, None
        self.dismiss()
        if offered is not None:
            offered()

    @Slot(QWidget, QWidget)
    def _on_focus_changed(self, old: QWidget | None, new: QWidget | None) -> None:
        if new is self.close_button and old is not None and old is not new:
            self._before = old
