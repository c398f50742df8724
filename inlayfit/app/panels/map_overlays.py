"""The buttons over the gap map that switch what it shows besides the halves."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QHBoxLayout, QToolButton, QWidget

from inlayfit.app.canvas.gap_map import GapMapView
from inlayfit.app.icons import IconButton, IconName


class OverlayButtons(QWidget):
    """A short row in the upper right corner of the map."""

    def __init__(self, view: GapMapView) -> None:
        super().__init__(view)
        self._view = view
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        self.rough = self._switch(
            IconName.ROUGH, self.tr("Roughing"), self.tr("The outlines of the roughing pass, if any.")
        )
        self.left_over = self._switch(
            IconName.LEFT_OVER, self.tr("Left in corners"), self.tr("Stock the cutter cannot reach.")
        )
        self.relieved = self._switch(
            IconName.RELIEF, self.tr("Relief"), self.tr("Where a corner was cut away.")
        )
        self.cutter = self._switch(
            IconName.CUTTER, self.tr("Cutter"), self.tr("The cutter at the pointer, to scale.")
        )
        self.measure = self._switch(
            IconName.MEASURE, self.tr("Measure"), self.tr("Click two points; they snap. Key M.")
        )
        self.left_over.setChecked(True)
        self.relieved.setChecked(True)
        for button in (self.rough, self.left_over, self.relieved, self.cutter, self.measure):
            row.addWidget(button)
        for button in (self.rough, self.left_over, self.relieved, self.cutter):
            button.toggled.connect(self._on_any_toggled)
        self.measure.toggled.connect(view.set_measuring)
        view.measuring_changed.connect(self.measure.setChecked)
        view.installEventFilter(self)

    def _switch(self, icon: IconName, words: str, why: str) -> QToolButton:
        button = IconButton(icon, words)
        button.setObjectName("over")
        button.setCheckable(True)
        button.setAccessibleName(words)
        button.setToolTip(f"<b>{words}</b><br>{why}")
        button.setCursor(Qt.CursorShape.ArrowCursor)
        return button

    def _on_any_toggled(self) -> None:
        self._view.set_overlays(
            rough=self.rough.isChecked(),
            left_over=self.left_over.isChecked(),
            relieved=self.relieved.isChecked(),
            cutter=self.cutter.isChecked(),
        )

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Show):
            self.adjustSize()
            self.move(self._view.width() - self.width() - 16, 12)
        elif event.type() is QEvent.Type.DragEnter:
            self.hide()
        elif event.type() in (QEvent.Type.DragLeave, QEvent.Type.Drop):
            self.show()
        return False
