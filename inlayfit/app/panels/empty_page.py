"""What stands there before anything is open: a sentence, two halves to drop on, two buttons, recent work."""

from __future__ import annotations

import json
from collections.abc import Sequence
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPainterPath, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from inlayfit.app import theme
from inlayfit.app.core_words import core
from inlayfit.app.files.recent import RecentWork
from inlayfit.app.widgets.lettering import muted_label, title_label
from inlayfit.fit.spec import Half
from inlayfit.shipped import shipped_folder

if TYPE_CHECKING:
    from inlayfit.app.canvas.drop_halves import DropOffer


@lru_cache(maxsize=1)
def leaf_path() -> QPainterPath:
    """The sample leaf, coarse, about the origin, 100 wide; empty if the picture is not there."""
    path = QPainterPath()
    try:
        picture: Any = json.loads((shipped_folder("resources") / "leaf_picture.json").read_bytes())
        rings = [[float(v) for v in ring] for ring in picture["rings"]]
    except (OSError, ValueError, KeyError, TypeError):
        return path
    for ring in rings:
        path.addPolygon(QPolygonF([QPointF(ring[i], ring[i + 1]) for i in range(0, len(ring) - 1, 2)]))
        path.closeSubpath()
    return path


class DropHalves(QFrame):
    """The dashed field: its left half takes a pocket, its right half a plug.

    While something hovers, the half below the pointer says what will happen.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._hovered: Half | None = None
        self._offer: DropOffer | None = None
        self.setMinimumHeight(200)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Drop an outline: left half as pocket, right half as plug"))

    def hover(self, half: Half | None, offer: DropOffer | None = None) -> None:
        """Mark the half below the pointer, and say what would be dropped there, or why it cannot be."""
        if (half, offer) != (self._hovered, self._offer):
            self._hovered, self._offer = half, offer
            self.update()

    @property
    def hovered(self) -> tuple[Half | None, str]:
        """The half that is marked, and what would be dropped there."""
        return self._hovered, "" if self._offer is None else self._offer.sentence

    def sizeHint(self) -> QSize:
        return QSize(820, 340)

    def paintEvent(self, _event: QPaintEvent) -> None:
        look = theme.tokens_of(self)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        middle = self.width() / 2
        if self._offer is not None and self._offer.heading:
            from inlayfit.app.canvas.drop_halves import paint_whole  # not before something is dragged

            paint_whole(painter, QRectF(self.rect()).adjusted(8, 8, -8, -8), look, self._offer)
            return
        self._paint_half(painter, look, QRectF(0, 0, middle, self.height()), Half.POCKET)
        self._paint_half(painter, look, QRectF(middle, 0, middle, self.height()), Half.PLUG)
        painter.setPen(QPen(theme.colour(look.hairline), 1))
        painter.drawLine(QPointF(middle, 24), QPointF(middle, self.height() - 24))

    def _paint_half(self, painter: QPainter, look: theme.Tokens, area: QRectF, half: Half) -> None:
        is_pocket = half is Half.POCKET
        inner = area.adjusted(24, 48, -24, -16)
        if self._hovered is half:
            painter.setPen(QPen(theme.colour(look.focus), 2))
            painter.setBrush(theme.colour(look.accent_soft))
            painter.drawRoundedRect(area.adjusted(8, 8, -8, -8), 6, 6)
        elif is_pocket:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(theme.colour(look.host_tint))
            painter.drawRoundedRect(inner, 4, 4)
        painter.setPen(theme.colour(look.text if self._hovered is half else look.muted))
        painter.setFont(theme.font(theme.BASE))
        words = (
            self.tr("drop on this half: use as pocket")
            if is_pocket
            else self.tr("drop on this half: use as plug")
        )
        if self._hovered is half:
            words = self.tr("Use as pocket") if is_pocket else self.tr("Use as plug")
            words = f"{words}: {self._offer.sentence}" if self._offer is not None else words
        painter.drawText(area.adjusted(0, 18, 0, 0), int(Qt.AlignmentFlag.AlignHCenter), words)
        leaf = leaf_path()
        size = leaf.boundingRect().size()
        if size.isEmpty():
            return
        scale = 0.86 * min(inner.width() / size.width(), inner.height() / size.height())
        painter.save()
        painter.translate(inner.center())
        painter.scale(scale, scale)
        pen = QPen(theme.colour(look.host_line if is_pocket else look.text), 1.4)
        pen.setCosmetic(True)
        painter.setPen(pen)
        painter.setBrush(theme.colour(look.canvas) if is_pocket else Qt.BrushStyle.NoBrush)
        painter.drawPath(leaf)
        painter.restore()


class RecentRow(QPushButton):
    """One piece of recent work, with its picture."""

    def __init__(self, work: RecentWork, when: str) -> None:
        super().__init__()
        self.work = work
        self.is_there = work.path.exists()
        self.setObjectName("recent")
        self.setFixedHeight(72)
        self._when = when if self.is_there else self.tr("moved or on another disk, press to look for it")
        self._summary = core(work.summary)
        said = (work.path.stem, self._summary.rstrip("."), self._when)
        self.setAccessibleName(". ".join(part for part in said if part))
        self.setToolTip(str(work.path))

    def paintEvent(self, _event: QPaintEvent) -> None:
        look = theme.tokens_of(self)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.underMouse() or self.hasFocus():
            painter.setPen(QPen(theme.colour(look.focus), 2) if self.hasFocus() else Qt.PenStyle.NoPen)
            painter.setBrush(theme.colour(look.hover))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 6, 6)
        frame = QRectF(10, 8, 74, 56)
        painter.setPen(QPen(theme.colour(look.hairline), 1))
        painter.setBrush(theme.colour(look.canvas))
        painter.drawRoundedRect(frame, 4, 4)
        self._paint_picture(painter, look, frame.adjusted(6, 6, -6, -6))
        self._paint_words(painter, look)

    def _paint_picture(self, painter: QPainter, look: theme.Tokens, area: QRectF) -> None:
        path = QPainterPath()
        for ring in self.work.rings:
            points = [QPointF(ring[i], -ring[i + 1]) for i in range(0, len(ring), 2)]
            path.moveTo(points[0])
            for point in points[1:]:
                path.lineTo(point)
            path.closeSubpath()
        box = path.boundingRect()
        if box.width() <= 0 or box.height() <= 0:
            return
        scale = min(area.width() / box.width(), area.height() / box.height())
        painter.save()
        painter.translate(area.center())
        painter.scale(scale, scale)
        painter.translate(-box.center())
        pen = QPen(theme.colour(look.text if self.is_there else look.muted), 1.2)
        pen.setCosmetic(True)
        if not self.is_there:
            pen.setStyle(Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(path)
        painter.restore()

    def _paint_words(self, painter: QPainter, look: theme.Tokens) -> None:
        lines = (
            (self.work.path.stem, theme.TITLE, look.text if self.is_there else look.muted),
            (self._summary, theme.CAPTION, look.muted),
            (self._when, theme.CAPTION, look.muted),
        )
        for number, (words, size, ink) in enumerate(lines):
            painter.setFont(theme.font(size))
            painter.setPen(theme.colour(ink))
            short = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, self.width() - 108)
            painter.drawText(QRectF(98, 9 + number * 18, self.width() - 104, 18), 0, short)


class EmptyPage(QWidget):
    """The page before anything is open.

    Signals:
        open_asked(), sample_asked(), size_asked(): a button was pressed.
    """

    open_asked = Signal()
    sample_asked = Signal()
    size_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("empty")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        headline = QLabel(self.tr("Drop the outline of a pocket or a plug here."))
        headline.setFont(theme.font(theme.HEADLINE))
        headline.setWordWrap(True)
        words = self.tr("You get the other half, where it will be tight, and files to cut.")
        below = muted_label(words, wraps=True)
        below.setFont(theme.font(theme.TypeSize(15, theme.BASE.weight)))
        self.halves = DropHalves()
        self.open_button = QPushButton(self.tr("&Open outline"))
        self.open_button.setProperty("step", "next")
        self.sample_button = QPushButton(self.tr("Try the &sample"))
        self.size_button = QPushButton(self.tr("&Pocket by size"))
        for button in (self.open_button, self.sample_button, self.size_button):
            button.setMinimumSize(132, 36)
            button.setFont(theme.font(theme.TypeSize(15, button.font().weight())))
        self.open_button.clicked.connect(self.open_asked)
        self.sample_button.clicked.connect(self.sample_asked)
        self.size_button.clicked.connect(self.size_asked)
        note = muted_label(self.tr("DXF or SVG. Paste works too. Your file is never changed."))
        note.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        field = QFrame()
        field.setObjectName("dropfield")
        field.setMaximumWidth(1100)
        inside = QVBoxLayout(field)
        inside.setContentsMargins(8, 8, 8, 20)
        inside.addWidget(self.halves, 1)
        inside.addLayout(_centred(self.open_button, self.sample_button, self.size_button))
        inside.addWidget(note)
        column = QVBoxLayout(self)
        column.setContentsMargins(64, 32, 64, 32)
        column.setSpacing(8)
        column.addWidget(headline)
        column.addWidget(below)
        column.addSpacing(8)
        column.addWidget(field, 1)


class RecentPanel(QWidget):
    """Recent work beside the empty page.

    Signals:
        work_asked(Path): open it.
        missing_asked(Path): it is not where it was; look for it.
        clear_asked(): forget the list.
    """

    work_asked = Signal(object)
    missing_asked = Signal(object)
    clear_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("recentwork")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(16, 24, 24, 24)
        self._column.setSpacing(4)
        self.rows: list[RecentRow] = []

    def show_works(self, works: Sequence[RecentWork], *, when: Sequence[str]) -> None:
        """Show other entries."""
        while (item := self._column.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.deleteLater()
        title = QLabel(self.tr("Recent work"))
        title.setFont(theme.font(theme.VERDICT))
        title.setContentsMargins(8, 0, 0, 4)
        self._column.addWidget(title)
        self.rows = [RecentRow(work, words) for work, words in zip(works, when, strict=True)]
        for row in self.rows:
            row.clicked.connect(lambda _=False, r=row: self._on_row_clicked(r))
            self._column.addWidget(row)
            row.show()  # at once, so that it can be given the keyboard
        if self.rows:
            clear = QPushButton(self.tr("Clear list"))
            clear.clicked.connect(self.clear_asked)
            self._column.addWidget(clear, 0, Qt.AlignmentFlag.AlignRight)
        else:
            nothing = muted_label(self.tr("What you open will be listed here."), wraps=True)
            nothing.setContentsMargins(8, 0, 0, 0)
            self._column.addWidget(nothing)
        self._column.addSpacing(16)
        self._column.addWidget(self._about_sentence())
        self._column.addSpacing(8)
        self._column.addWidget(self._about_sample())
        self._column.addStretch(1)

    def _about_sentence(self) -> QFrame:
        words = self.tr(
            "The whole job is the sentence above. Once an outline is open, every part of it can be changed."
        )
        return _card(self.tr("About the sentence"), words)

    def _about_sample(self) -> QFrame:
        words = self.tr(
            "A leaf fitted into a disc, with one check left open on purpose. "
            "Change anything; undo takes it all back."
        )
        return _card(self.tr("About the sample"), words)

    def _on_row_clicked(self, row: RecentRow) -> None:
        (self.work_asked if row.is_there else self.missing_asked).emit(row.work.path)


def _card(title: str, words: str) -> QFrame:
    card = QFrame()
    card.setObjectName("card")
    column = QVBoxLayout(card)
    column.setContentsMargins(16, 12, 16, 12)
    column.addWidget(title_label(title))
    column.addWidget(muted_label(words, wraps=True))
    return card


def _centred(*widgets: QWidget) -> QHBoxLayout:
    row = QHBoxLayout()
    row.setSpacing(10)
    row.addStretch(1)
    for widget in widgets:
        row.addWidget(widget)
    row.addStretch(1)
    return row
