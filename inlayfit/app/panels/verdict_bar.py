"""The verdict: will it go in, why, and the one button that mends it."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QWidget

from inlayfit.app import theme
from inlayfit.app.core_words import core
from inlayfit.app.panels.elided import ElidedLabel
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


class SeveritySign(QWidget):
    """Block, warn or note as a shape: an octagon, a triangle, a ring; a tick when all is well."""

    def __init__(self, severity: Severity | None = None, *, size: int = 20) -> None:
        super().__init__()
        self._severity = severity
        self._size = size
        self.setFixedSize(size, size)

    def show_severity(self, severity: Severity | None) -> None:
        """Another shape; None is the tick."""
        if severity is not self._severity:
            self._severity = severity
            self.update()

    def sizeHint(self) -> QSize:
        return QSize(self._size, self._size)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_severity(painter, self._severity, self._size, theme.tokens_of(self))


def paint_severity(painter: QPainter, severity: Severity | None, size: float, look: theme.Tokens) -> None:
    """Paint a severity's sign into a square of that size at the origin."""
    unit = size / 20
    painter.save()
    painter.scale(unit, unit)
    if severity is Severity.BLOCK:
        points = [(6.3, 1), (13.7, 1), (19, 6.3), (19, 13.7), (13.7, 19), (6.3, 19), (1, 13.7), (1, 6.3)]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.colour(look.blocks))
        painter.drawPolygon(_polygon(points))
        painter.fillRect(5, 9, 10, 2, theme.colour(look.on_blocks))
    elif severity is Severity.WARN:
        painter.setPen(QPen(theme.colour(look.warns), 1.7, j=Qt.PenJoinStyle.RoundJoin))
        painter.drawPolygon(_polygon([(10, 2), (18.5, 17.5), (1.5, 17.5)]))
        painter.fillRect(9, 7, 2, 6, theme.colour(look.warns))
        painter.fillRect(9, 14, 2, 2, theme.colour(look.warns))
    elif severity is Severity.NOTE:
        painter.setPen(QPen(theme.colour(look.text), 1.7))
        painter.drawEllipse(2, 2, 16, 16)
        painter.fillRect(9, 5, 2, 2, theme.colour(look.text))
        painter.fillRect(9, 9, 2, 6, theme.colour(look.text))
    else:
        painter.setPen(QPen(theme.colour(look.on), 2.4, c=Qt.PenCapStyle.RoundCap))
        painter.drawPolyline(_polygon([(3.5, 10.5), (8, 15), (16.5, 5.5)]))
    painter.restore()


def _polygon(points: list[tuple[float, float]]) -> QPolygonF:
    from PySide6.QtCore import QPointF

    return QPolygonF([QPointF(x, y) for x, y in points])


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
    def show_button(self) -> QPushButton:
        """Leads to the place."""
        return self._show

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
