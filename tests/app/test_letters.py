"""Alt and a letter does one thing in each window and language: of two it could do, Qt does neither."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QMenuBar, QWidget

from inlayfit.app.panels.sentence_box import FormBox
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document.sample import sample_state
from inlayfit.document.state import State
from inlayfit.shipped import shipped_folder

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support")

Settled = Callable[[Session], None]


@pytest.fixture(params=["en", "de"])
def language(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[str]:
    translator = QTranslator()
    if request.param == "de":
        assert translator.load(str(shipped_folder("resources") / "translations" / "inlayfit_de.qm"))
        QCoreApplication.installTranslator(translator)
    yield str(request.param)
    QCoreApplication.removeTranslator(translator)


def lettered(window: QWidget) -> list[str]:
    """What can be chosen by Alt and a letter in a window as it stands."""
    words = [action.text() for bar in window.findChildren(QMenuBar) for action in bar.actions()]
    shown = [w for w in window.findChildren(QWidget) if w.isVisible() and w.window() is window]
    words += [w.text() for w in shown if isinstance(w, QAbstractButton)]
    words += [w.text() for w in shown if isinstance(w, QLabel) and w.buddy() is not None]
    return [text for text in words if not QKeySequence.mnemonic(text).isEmpty()]


def clashes(window: QWidget) -> list[list[str]]:
    by_letter: dict[str, list[str]] = {}
    for text in lettered(window):
        by_letter.setdefault(QKeySequence.mnemonic(text).toString(), []).append(text)
    return [texts for texts in by_letter.values() if len(texts) > 1]


def test_a_letter_does_one_thing_before_there_is_work(language: str, window: MainWindow) -> None:
    assert len(lettered(window)) >= 8
    assert clashes(window) == []


def test_a_letter_does_one_thing_while_there_is_work(
    language: str, window: MainWindow, settled: Settled
) -> None:
    window.session.start(sample_state(State()), title="Sample")
    settled(window.session)
    for page in ("show_spot", "show_checks", "show_outlines", "show_workshop"):
        window.actions_by_name[page].trigger()
        assert clashes(window) == []
    for box in window.sentence.findChildren(FormBox):
        box.click()
        assert lettered(box.popup)
        assert clashes(box.popup) == [], box.accessibleName()
        box.popup.close()
