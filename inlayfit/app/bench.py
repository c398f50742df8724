"""The bench of one window: what it does its work with.

Documents that come and go, what reads a drawing anew, and the page with the work. All that is heavy hangs on
this module.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QWidget

from inlayfit.app.documents import Documents
from inlayfit.app.panels.notice import Notice
from inlayfit.app.panels.sentence_bar import SentenceBar
from inlayfit.app.panels.status_strip import StatusStrip
from inlayfit.app.rereading import Rereading
from inlayfit.app.session import Session
from inlayfit.app.work_page import WorkPage


class Bench:
    """What the commands act upon.

    Attributes:
        window: the parent of dialogs; closing it quits.
        session, documents: what is open, and how it comes and goes.
        work: the page with the work.
        sentence, strip, notice: the parts of the window around the page that commands lead to.
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
        self.work = WorkPage(session, self.documents, self.rereading, sentence_bar=sentence, strip=strip)
