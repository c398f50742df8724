"""The checks: what to look at before cutting, heaviest first, each with its place and its fix, if any.

Two groups: the fit's own checks, and the notes of the drawing, which lead to their place in it.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from inlayfit.app import theme
from inlayfit.app.core_words import core
from inlayfit.app.keyboard import kept_focus
from inlayfit.app.pages.reading_fixes import label_for
from inlayfit.app.panels.severity_sign import SeveritySign
from inlayfit.app.widgets.lettering import title_label
from inlayfit.document.verdict import Check
from inlayfit.finding import Finding, Severity

_MOST_ROWS = 60


class CheckRow(QFrame):
    """One check."""

    show_asked = Signal(object)
    fix_asked = Signal(object)

    def __init__(self, check: Check, whose: str) -> None:
        super().__init__()
        self.check = check
        self.setObjectName("row")
        finding = check.finding
        message = _wrapped(finding.message)
        message.setFont(theme.font(theme.BASE))
        remedy = _wrapped(finding.remedy)
        remedy.setProperty("muted", True)
        word = self._severity_word(finding.severity)
        self.setAccessibleName(f"{word}: {finding.message} {finding.remedy}")
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(message)
        words.addWidget(remedy)
        if whose:
            owner = _wrapped(whose)
            owner.setProperty("muted", True)
            words.addWidget(owner)
        buttons = self._buttons(check)
        if buttons is not None:
            words.addLayout(buttons)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 10, 0, 10)
        row.setSpacing(10)
        row.addWidget(SeveritySign(finding.severity), 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(words, 1)

    def _severity_word(self, severity: Severity) -> str:
        return {
            Severity.BLOCK: self.tr("Blocks"),
            Severity.WARN: self.tr("Look"),
            Severity.NOTE: self.tr("Note"),
        }[severity]

    def _buttons(self, check: Check) -> QHBoxLayout | None:
        words = core(check.fix.label) if check.fix is not None else label_for(check.finding)
        if check.finding.place_mm is None and not words:
            return None
        line = QHBoxLayout()
        line.setSpacing(8)
        line.setContentsMargins(0, 4, 0, 0)
        if check.finding.place_mm is not None:
            show = QPushButton(self.tr("Show"))
            show.setAccessibleName(self.tr("Show: {0}").format(check.finding.message))
            show.clicked.connect(lambda: self.show_asked.emit(self.check))
            line.addWidget(show)
        if words:
            fix = QPushButton(words)
            fix.setAccessibleDescription(check.finding.remedy)
            fix.clicked.connect(lambda: self.fix_asked.emit(self.check))
            line.addWidget(fix)
        line.addStretch(1)
        return line


class ChecksPanel(QScrollArea):
    """All checks.

    Signals:
        show_asked(Check): lead to the place.
        fix_asked(Check): do the fix.
    """

    show_asked = Signal(object)
    fix_asked = Signal(object)

    def __init__(self, parent: QWidget | None = None, *, foot: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setObjectName("checks")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Checks"))
        self._shown: tuple[tuple[Check, str], ...] | None = None
        self._list = QWidget()
        body = QWidget()
        body.setObjectName("plain")
        self._column = QVBoxLayout(body)
        self._column.setContentsMargins(6, 2, 8, 6)
        self._column.setSpacing(16)
        self._column.addWidget(self._list)
        if foot is not None:
            self._column.addWidget(foot)
        self._column.addStretch(1)
        self.setWidget(body)

    @property
    def rows(self) -> list[CheckRow]:
        """The rows from the top."""
        return self._list.findChildren(CheckRow)

    def show_checks(self, checks: Sequence[Check], names: dict[str, str], *, is_made: bool = False) -> None:
        """Show other checks.

        Args:
            checks: the heaviest first.
            names: whose they are, by outline id, if there are several.
            is_made: whether both halves are made, so that nothing is left to cut.
        """
        pairs = tuple((check, names.get(check.outline_id, "")) for check in checks)
        if self._shown is not None and _said(pairs) == _said(self._shown):
            return
        self._shown = pairs
        listed = QWidget()
        column = QVBoxLayout(listed)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        if not pairs:
            column.addWidget(_wrapped(self.tr("Nothing stands in the way of cutting.")))
        title = self.tr("At the bench") if is_made else self.tr("Before cutting")
        self._add_group(column, title, [pair for pair in pairs if pair[0].outline_id])
        of_drawing = [pair for pair in pairs if not pair[0].outline_id]
        self._add_group(column, self.tr("Notes on the drawing"), of_drawing)
        with kept_focus(self):
            self._column.replaceWidget(self._list, listed)
            self._list.hide()
            self._list.deleteLater()
            listed.show()
        self._list = listed

    def _add_group(self, column: QVBoxLayout, title: str, pairs: Sequence[tuple[Check, str]]) -> None:
        if not pairs:
            return
        heading = title_label(title)
        heading.setContentsMargins(0, 8, 0, 2)
        column.addWidget(heading)
        for check, whose in pairs[:_MOST_ROWS]:
            row = CheckRow(check, whose)
            row.show_asked.connect(self.show_asked)
            row.fix_asked.connect(self.fix_asked)
            column.addWidget(row)
        if len(pairs) > _MOST_ROWS:
            more = self.tr("{0} more of the same kind are in the report that the export writes.")
            column.addWidget(_wrapped(more.format(len(pairs) - _MOST_ROWS)))


def _said(pairs: Sequence[tuple[Check, str]]) -> list[tuple[Finding, str, bool]]:
    """What is seen of checks."""
    return [(check.finding, whose, check.fix is None) for check, whose in pairs]


def _wrapped(text: str) -> QLabel:
    label = QLabel(text)
    label.setWordWrap(True)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    label.setTextFormat(Qt.TextFormat.PlainText)
    return label
