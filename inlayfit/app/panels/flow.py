"""A layout that sets its items like words: in lines, and a word that must not start a line stays behind.

Items marked *clinging* (a comma, a full stop) keep to the item before them. Runs from the reading side of
the layout direction, so a right-to-left language starts at the right.
"""

from __future__ import annotations

from typing import TypeAlias

from PySide6.QtCore import QMargins, QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget

LINE_HEIGHT_PX = 36

_Sized: TypeAlias = tuple[QLayoutItem, QSize]


class FlowLayout(QLayout):
    """Sets widgets in lines as wide as it is."""

    def __init__(self, *, word_gap_px: int = 5, line_height_px: int = LINE_HEIGHT_PX) -> None:
        super().__init__()
        self._items: list[QLayoutItem] = []
        self._clinging: set[QWidget] = set()
        self._heights: dict[int, int] = {}
        self._kept: list[list[_Sized]] | None = None
        self._word_gap = word_gap_px
        self._line_height = line_height_px
        self.setContentsMargins(QMargins(0, 0, 0, 0))

    def add(self, widget: QWidget, *, clings: bool = False) -> None:
        """Add a widget; one that clings never starts a line and follows without a gap."""
        if clings:
            self._clinging.add(widget)
        self.addWidget(widget)

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)
        self._kept = None

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        self._kept = None
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        if width not in self._heights:
            self._heights[width] = self._place(QRect(0, 0, width, 0), dry=True)
        return self._heights[width]

    def invalidate(self) -> None:
        self._heights.clear()
        self._kept = None
        super().invalidate()

    def sizeHint(self) -> QSize:
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        widest = max((size.width() for unit in self._units() for _, size in unit), default=0)
        return QSize(widest, self._line_height)

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._place(rect, dry=False)

    def _place(self, rect: QRect, *, dry: bool) -> int:
        """Lay the lines into `rect`; answers the height they take."""
        x, line = 0, 0
        for unit in self._units():
            width = sum(size.width() for _, size in unit)
            if x > 0 and x + self._word_gap + width > rect.width():
                x, line = 0, line + 1
            elif x > 0:
                x += self._word_gap
            for item, size in unit:
                if not dry:
                    self._put(item, size, rect, x, line)
                x += size.width()
        return (line + 1) * self._line_height if self._items else 0

    def _units(self) -> list[list[_Sized]]:
        """Items with those that cling to them; kept until something in the layout changes."""
        if self._kept is None:
            self._kept = []
            for item in self._items:
                widget = item.widget()
                if widget is not None and widget.isHidden():
                    continue
                sized = item, item.sizeHint()
                if self._kept and widget in self._clinging:
                    self._kept[-1].append(sized)
                else:
                    self._kept.append([sized])
        return self._kept

    def _put(self, item: QLayoutItem, size: QSize, rect: QRect, x: int, line: int) -> None:
        top = rect.y() + line * self._line_height + (self._line_height - size.height()) // 2
        parent = self.parentWidget()
        backwards = parent is not None and parent.layoutDirection() is Qt.LayoutDirection.RightToLeft
        left = rect.right() + 1 - x - size.width() if backwards else rect.x() + x
        item.setGeometry(QRect(QPoint(left, top), size))
