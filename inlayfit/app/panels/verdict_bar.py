"""The verdict: will it go in, why, and the one button that mends it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QWidget

from inlayfit.app import theme
from inlayfit.app.core_words import core
from inlayfit.app.panels.elided import ElidedLabel
from inlayfit.app.panels.severity_sign import SeveritySign
from inlayfit.document.verdict import Answer, Check, Verdict
from inlayfit.finding import Severity

SIGN_OF_ANSWER = {
    Answer.BLOCKED: Severity.BLOCK,
    Answer.LOOK: Severity.WARN,
    Answer.PRESS: Severity.NOTE,
    Answer.NOTHING: None,
    Answer.WAITING: None,
    Answer.GOES_IN: None,
}


class VerdictBar(QWidget):
    """One line under the sentence.

    Signals:
        show_asked(Check): lead to the place.
        fix_asked(Check): do the fix.
    """

    show_asked = Signal(object)
    fix_asked = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("verdict")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._check: Check | None = None
        self._sign = SeveritySign()
        self._headline = QLabel()
        self._headline.setFont(theme.font(theme.VERDICT))
        self._headline.setAccessibleName(self.tr("Verdict"))
        self._why = ElidedLabel()
        self._show = QPushButton(self.tr("Show"))
        self._show.setToolTip(self.tr("<b>Show</b><br>Goes to the place in the gap map and the loupe."))
        self._fix = QPushButton(self.tr("Mend"))
        self._fix.setProperty("step", "next")
        self._show.clicked.connect(self._on_show_clicked)
        self._fix.clicked.connect(self._on_fix_clicked)
        row = QHBoxLayout(self)
        row.setContentsMargins(24, 6, 24, 6)
        row.setSpacing(8)
        row.addWidget(self._sign)
        row.addSpacing(4)
        row.addWidget(self._headline)
        row.addSpacing(4)
        row.addWidget(self._why, 1)
        row.addWidget(self._show)
        row.addWidget(self._fix)
        self.setFixedHeight(44)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    @property
    def fix_button(self) -> QPushButton:
        """The one filled button."""
        return self._fix

    @property
    def headline(self) -> str:
        """The few words that show now."""
        return self._headline.text()

    def show_verdict(self, verdict: Verdict, *, is_stale: bool) -> None:
        """Say another verdict; a stale one is dimmed and promises nothing."""
        self._check = verdict.check
        severity = SIGN_OF_ANSWER[verdict.answer]
        self._sign.show_severity(severity)
        promises = verdict.answer in {Answer.GOES_IN, Answer.PRESS}
        self._sign.setVisible(
            verdict.answer not in {Answer.NOTHING, Answer.WAITING} and not (promises and is_stale)
        )
        self._headline.setText(self.tr("Preview.") if promises and is_stale else verdict.headline)
        self._headline.setEnabled(not is_stale)
        self._why.say(verdict.explanation)
        self._why.setEnabled(not is_stale)
        check = verdict.check
        has_place = check is not None and check.finding.place_mm is not None
        self._show.setVisible(has_place)
        fix = None if check is None else check.fix
        self._fix.setVisible(fix is not None)
        if fix is not None and check is not None:
            self._fix.setText(core(fix.label))
            self._fix.setToolTip(f"<b>{core(fix.label)}</b><br>{check.finding.remedy}")

    def _on_show_clicked(self) -> None:
        if self._check is not None:
            self.show_asked.emit(self._check)

    def _on_fix_clicked(self) -> None:
        if self._check is not None:
            self.fix_asked.emit(self._check)
