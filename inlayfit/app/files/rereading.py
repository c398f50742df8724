"""Reads the drawing anew in another way: looks at the file, asks with its page, and lets it be read."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QObject, Qt, Slot
from PySide6.QtWidgets import QWidget

from inlayfit.app.core_words import core_error
from inlayfit.app.files.documents import Documents
from inlayfit.app.pages.reading_fixes import Part, gap_that_closes, part_for
from inlayfit.app.pages.reading_page import ReadingPage
from inlayfit.app.session import Session
from inlayfit.app.tasks import LatestTask
from inlayfit.errors import InlayfitError
from inlayfit.finding import Finding
from inlayfit.progress import Progress

if TYPE_CHECKING:
    from inlayfit.document.import_notes import DrawingLook


class Rereading(QObject):
    """Asks for one window how its drawing shall be read."""

    def __init__(self, window: QWidget, session: Session, documents: Documents) -> None:
        super().__init__(window)
        self._window = window
        self._session = session
        self._documents = documents
        self._lead: tuple[Part, float | None] | None = None
        self.page: ReadingPage | None = None
        self._looker = LatestTask(self)
        self._looker.finished.connect(self._on_looker_finished)
        self._looker.failed.connect(self._on_looker_failed)
        window.destroyed.connect(self._looker.close)

    def ask(self, finding: Finding | None = None) -> None:
        """Ask how to read the drawing that is open, or that could not be; leads to what mends a note."""
        source = self._documents.readable_source()
        if source is None:
            words = _tr("The drawing is not there any more; open it again to read it in another way.")
            self._documents.turned_down.emit(words)
            return
        part = None if finding is None else part_for(finding)
        self._lead = None
        if finding is not None and part is not None:
            self._lead = part, gap_that_closes(finding) if part is Part.GAP else None

        def work(_progress: Progress) -> DrawingLook:
            from inlayfit.document.import_notes import look_at  # heavy; not before it is needed

            return look_at(source)

        self._looker.submit(work)

    @Slot(int, object)
    def _on_looker_finished(self, _number: int, look: DrawingLook) -> None:
        state = self._session.state
        page = ReadingPage(look, self._documents.how_read(), unit=state.unit, parent=self._window)
        page.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        page.chosen.connect(lambda how: self._documents.read_as(look.path, how))
        page.destroyed.connect(self._forget_page)
        self.page = page
        page.open()
        if self._lead is not None:
            page.lead_to(self._lead[0], gap_mm=self._lead[1])

    @Slot()
    def _forget_page(self) -> None:
        self.page = None

    @Slot(int, object)
    def _on_looker_failed(self, _number: int, error: Exception) -> None:
        if isinstance(error, InlayfitError):
            self._documents.turned_down.emit(core_error(error))
        else:
            words = _tr("The drawing could not be looked at ({0}); open it again.")
            self._documents.turned_down.emit(words.format(type(error).__name__))


def _tr(text: str) -> str:
    return QCoreApplication.translate("reading", text)
