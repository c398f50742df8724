"""Many parts: what the machine's errors do to a fit, in a picture and in words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from inlayfit.app import theme
from inlayfit.app.core_words import core
from inlayfit.app.widgets.feel_words import feel_word
from inlayfit.app.widgets.lettering import muted_label, title_label
from inlayfit.app.widgets.scatter_view import ScatterPicture, ScatterView
from inlayfit.document.verdict import pair_words
from inlayfit.units import Unit, format_length
from inlayfit.wording import said

if TYPE_CHECKING:
    from inlayfit.fit.scatter import Scatter


class PartsView(QWidget):
    """The answer to the errors of the machine.

    Attributes:
        headline, picture: what it comes to; they stay in sight while numbers are typed.
        details: the lengths behind it and what to do, a widget of its own for the place that scrolls.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.headline = title_label()
        self.headline.setWordWrap(True)
        self.headline.setAccessibleName(self.tr("Share of parts with the wanted feel"))
        self.picture = ScatterView()
        self._worst, self._likely, self._largest = QLabel(), QLabel(), QLabel()
        self._advice = QLabel()
        self._advice.setWordWrap(True)
        self._largest.setWordWrap(True)
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(2)
        self._grid.setColumnStretch(1, 1)
        rows = (
            (self.tr("At worst"), self._worst),
            (self.tr("Root sum square"), self._likely),
            (self.tr("Largest error"), self._largest),
        )
        for row, (words, value) in enumerate(rows):
            label = muted_label(words)
            value.setAccessibleName(words)
            self._grid.addWidget(label, row, 0)
            self._grid.addWidget(value, row, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.headline)
        column.addWidget(self.picture)
        self.details = QWidget()
        below = QVBoxLayout(self.details)
        below.setContentsMargins(0, 0, 0, 0)
        below.setSpacing(6)
        below.addLayout(self._grid)
        below.addWidget(self._advice)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.EnabledChange:
            self.details.setEnabled(self.isEnabled())

    def set_compact(self, compact: bool) -> None:
        """Leave more room for what is typed: only the shares are drawn, the lengths are read."""
        self.picture.set_compact(compact)

    @property
    def advice(self) -> str:
        """Whether to change the clearance."""
        return self._advice.text()

    @property
    def largest(self) -> str:
        """The error that reaches farthest."""
        return self._largest.text()

    def show_scatter(self, scatter: Scatter | None, unit: Unit, otherwise: str) -> None:
        """Show another answer; `otherwise` is said where there is none."""
        for part in (self.picture, self.details):
            part.setVisible(scatter is not None)
        self.headline.setFont(theme.font(theme.BASE if scatter is None else theme.TITLE))
        if scatter is None:
            self.headline.setText(otherwise)
            return
        stack, feel = scatter.stack, feel_word(scatter.feel)
        self.headline.setText(
            self.tr("{0} % of parts have the wanted feel: {1}.").format(
                f"{100 * stack.shares.wanted:.1f}", feel
            )
        )
        self._worst.setText(self._range(stack.worst_mm, unit))
        self._likely.setText(self._range(stack.root_sum_square_mm, unit))
        self._largest.setText(said(stack.largest, core))
        self._advice.setText(self._advice_words(scatter, unit))
        self._advice.setVisible(bool(self._advice.text()))
        self.picture.show_picture(self._picture_of(scatter, feel), unit, self.headline.text())

    def _picture_of(self, scatter: Scatter, feel: str) -> ScatterPicture:
        from inlayfit.fit.feel import SEED_ZONES

        stack, shares = scatter.stack, scatter.stack.shares
        return ScatterPicture(
            stack.worst_mm,
            stack.root_sum_square_mm,
            stack.nominal_mm,
            SEED_ZONES.span_mm(scatter.feel),
            feel,
            (shares.too_tight, shares.wanted, shares.too_loose),
            (self.tr("tighter"), self.tr("looser")),
        )

    def _range(self, ends_mm: tuple[float, float], unit: Unit) -> str:
        """Both ends per side, and overall beside them."""
        low, high = (format_length(end, unit, with_unit=False) for end in ends_mm)
        low2, high2 = (format_length(2 * end, unit, with_unit=False) for end in ends_mm)
        return self.tr("{0} to {1} {4} per side\n({2} to {3} overall)").format(
            low, high, low2, high2, unit.symbol
        )

    def _advice_words(self, scatter: Scatter, unit: Unit) -> str:
        advice, stack = scatter.advice, scatter.stack
        if advice is None:
            return ""
        if advice.stop:
            return self.tr("Stop adjusting: a change would be smaller than what your machine repeats to.")
        change_mm = stack.nominal_mm - stack.mean_mm
        words = self.tr("Add {0} of clearance.") if change_mm > 0 else self.tr("Take off {0} of clearance.")
        return words.format(pair_words(abs(change_mm), unit, core))
