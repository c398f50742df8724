"""The bench of one window: what it does its work with.

Documents that come and go, what reads a drawing anew, the page with the work, and the recovery copy of it.
All that is heavy hangs on this module, so a window shows itself first and is given its bench a moment later.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QWidget

from inlayfit.app import theme
from inlayfit.app.files.autosave import Autosave
from inlayfit.app.files.documents import Documents
from inlayfit.app.files.rereading import Rereading
from inlayfit.app.icons import dress
from inlayfit.app.panels.notice import Notice
from inlayfit.app.panels.sentence_bar import SentenceBar
from inlayfit.app.panels.spot_panel import SpotPanel
from inlayfit.app.panels.status_strip import StatusStrip
from inlayfit.app.session import Session
from inlayfit.app.speaking import alert, announce
from inlayfit.app.work_page import WorkPage
from inlayfit.document.journal import Journal, Recovery, left_behind
from inlayfit.document.state import State
from inlayfit.errors import InlayfitError


class Bench:
    """What the commands act upon.

    Attributes:
        window: the parent of dialogs; closing it quits.
        session, documents: what is open, and how it comes and goes.
        work: the page with the work.
        sentence: the fit sentence, which stands above the page.
        strip, notice: the parts of the window around the page that commands lead to.
        settings_file: where settings are kept; None for the usual place.
        next_panel: moves the keyboard by so many parts.
        rereading: asks how the drawing shall be read.
    """

    def __init__(
        self,
        window: QWidget,
        session: Session,
        *,
        sentence: SentenceBar,
        spot: SpotPanel,
        strip: StatusStrip,
        notice: Notice,
        next_panel: Callable[[int], None],
        settings_file: Path | None,
        recent_file: Path | None,
    ) -> None:
        self.window = window
        self.session = session
        self.sentence, self.strip, self.notice = sentence, strip, notice
        self.next_panel = next_panel
        self.settings_file = settings_file
        self.documents = Documents(session, window, recent=recent_file)
        self.rereading = Rereading(window, session, self.documents)
        self.work = WorkPage(
            session, self.documents, self.rereading, sentence_bar=sentence, spot=spot, strip=strip
        )
        self._autosave: Autosave | None = None
        self._speak()

    def _speak(self) -> None:
        """Tell a screen reader what it would not find by itself, and what was complained of already."""
        self.session.announced.connect(lambda text: announce(self.window, text))
        self.notice.complained.connect(lambda: alert(self.notice))
        if self.notice.text:
            alert(self.notice)

    def show_icons(self, actions: Mapping[str, QAction]) -> None:
        """Give commands their icons, in the colours of now."""
        dress(actions, theme.tokens_of(self.window))

    def keep_safe(self) -> None:
        """Keep a recovery copy of unsaved work from now on."""
        try:
            journal = Journal()
        except (OSError, InlayfitError) as error:
            words = _tr("No recovery copy is kept ({0}); save your work often.")
            self.notice.complain(words.format(error))
            return
        self._autosave = Autosave(self.session, journal, self.window)
        self._autosave.failed.connect(self.notice.complain)
        self.documents.recovered.connect(self._autosave.take_over)

    def offer_recovery(self) -> list[tuple[State, Recovery]]:
        """Ask about work that was left behind; answers the documents that windows of their own shall show."""
        return self.documents.offer_recovery(left_behind())

    def close(self) -> None:
        """Stop for good."""
        self.documents.close()
        if self._autosave is not None:
            self._autosave.close()


def _tr(text: str) -> str:
    return QCoreApplication.translate("bench", text)
