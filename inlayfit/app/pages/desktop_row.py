"""The row of the settings page that lets a double click on a project file open this program."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from inlayfit.app.core_words import core_error
from inlayfit.app.pages.forms import LABEL_PX
from inlayfit.app.tasks import LatestTask
from inlayfit.app.widgets.lettering import muted_label
from inlayfit.document import desktop_entry
from inlayfit.document.desktop_entry import Opens, Told
from inlayfit.errors import InlayfitError
from inlayfit.progress import Progress

_PACKAGE_OF = {"update-mime-database": "shared-mime-info", "update-desktop-database": "desktop-file-utils"}
"""What a distribution calls the package of a tool (common practice)."""


class DesktopRow(QWidget):
    """A button that writes the desktop entry or takes it away, and one sentence that says how things are."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._data = desktop_entry.data_folder()
        self._task = LatestTask(self)
        self._task.finished.connect(self._on_task_finished)
        self._task.failed.connect(self._on_task_failed)
        self._removes = False
        self.button = QPushButton()
        self.button.clicked.connect(self._on_button_clicked)
        self.label = QLabel(self.tr("&Double click"))
        self.label.setBuddy(self.button)
        self.label.setMinimumWidth(LABEL_PX)
        self.note = muted_label(wraps=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(self.button)
        column.addWidget(self.note)
        self._say(self._how_it_is())

    def close_work(self) -> None:
        """Wait for what is being written."""
        self._task.finish()

    def _opens(self) -> Opens:
        try:
            return desktop_entry.who_opens(self._data, desktop_entry.start_command())
        except InlayfitError:
            return Opens.NOBODY

    def _how_it_is(self) -> str:
        if not desktop_entry.is_supported():
            words = self.tr(
                "This system is told by hand: choose “Open with” on a .inlayfit file and pick {0}."
            )
            return words.format(desktop_entry.program_file())
        said = {
            Opens.THIS: self.tr("A double click on a .inlayfit file opens this program."),
            Opens.ANOTHER: self.tr("A double click on a .inlayfit file opens another copy of this program."),
            Opens.NOBODY: self.tr("Your desktop does not know .inlayfit files yet; this tells it."),
        }
        return said[self._opens()]

    def _say(self, sentence: str, *, again: bool = False) -> None:
        """Show a sentence, and the button for what can be done now; `again` keeps it as it is."""
        self._removes = not again and desktop_entry.is_supported() and self._opens() is Opens.THIS
        take = self.tr("No longer open .inlayfit files with this program")
        give = self.tr("Open .inlayfit files with this program")
        self.button.setText(take if self._removes else give)
        self.button.setEnabled(desktop_entry.is_supported())
        self.button.setToolTip(
            self.tr(
                "<b>Double click</b><br>Three small files in {0} say it; DXF and SVG stay as they are."
            ).format(self._data)
        )
        self.button.setAccessibleDescription(sentence)
        self.note.setText(sentence)

    @Slot()
    def _on_button_clicked(self) -> None:
        data, removes = self._data, self._removes

        def work(_progress: Progress) -> Told:
            if removes:
                return desktop_entry.remove_entry(data)
            return desktop_entry.write_entry(data, desktop_entry.start_command())

        self.button.setEnabled(False)
        self._task.submit(work)

    @Slot(int, object)
    def _on_task_finished(self, _number: int, told: Told) -> None:
        if self._removes:
            self._say(self.tr("Taken away; nothing of it is left in {0}.").format(self._data))
        elif told.missing:
            packages = ", ".join(_PACKAGE_OF[tool] for tool in told.missing)
            words = self.tr("Written, but your desktop is not told: install {0}, then press again.")
            self._say(words.format(packages), again=True)
        elif told.failed:
            words = self.tr("Written, but {0} failed; press again, or sign in anew.")
            self._say(words.format(", ".join(told.failed)), again=True)
        else:
            self._say(self._how_it_is())

    @Slot(int, object)
    def _on_task_failed(self, _number: int, error: Exception) -> None:
        self._say(core_error(error))
