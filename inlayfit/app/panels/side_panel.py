"""The right side: one page at a time of spot, checks, outlines and workshop."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QStackedWidget, QToolButton, QVBoxLayout, QWidget

from inlayfit.app.keyboard import land_in, takers


class SidePanel(QWidget):
    """A row of tabs and the page that is shown."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("side")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._group = QButtonGroup(self)
        self._tabs = QHBoxLayout()
        self._tabs.setSpacing(0)
        self._tabs.addStretch(1)
        self._pages = QStackedWidget()
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 10, 14, 10)
        column.setSpacing(8)
        column.addLayout(self._tabs)
        column.addWidget(self._pages, 1)
        self._group.idClicked.connect(self._pages.setCurrentIndex)

    def add_page(self, words: str, page: QWidget) -> QToolButton:
        """Add a page; answers its tab."""
        number = self._pages.addWidget(page)
        tab = QToolButton()
        tab.setObjectName("tab")
        tab.setText(words)
        tab.setAccessibleName(words)
        tab.setCheckable(True)
        tab.setChecked(number == 0)
        self._group.addButton(tab, number)
        self._tabs.insertWidget(number, tab)
        buttons = self._group.buttons()
        for button in buttons:
            button.setProperty("first", button is buttons[0])
            button.setProperty("last", button is buttons[-1])
        return tab

    def show_page(self, page: QWidget) -> None:
        """Turn to a page."""
        number = self._pages.indexOf(page)
        self._pages.setCurrentIndex(number)
        self._group.button(number).setChecked(True)

    def go_to_page(self, page: QWidget) -> None:
        """Turn to a page and take the keyboard there, or to its tab if nothing on it takes the keyboard."""
        self.show_page(page)
        land_in(page if takers(page) else self)

    @property
    def current_page(self) -> QWidget | None:
        """The page that is shown."""
        return self._pages.currentWidget()
