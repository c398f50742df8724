"""A page that is made when it is first looked at: one with many boxes takes as long as all the others."""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property
from typing import Generic, TypeVar

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

Content = TypeVar("Content", bound=QWidget)


class LatePage(QWidget, Generic[Content]):
    """Holds the place of its content until that is wanted."""

    def __init__(self, make: Callable[[], Content], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._make = make
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)

    @cached_property
    def content(self) -> Content:
        """What is on the page; made at once if it is asked for before it is looked at."""
        content = self._make()
        self._column.addWidget(content)
        return content

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.content.show()
        self._column.activate()  # the keyboard may go there before the next turn of the event loop
