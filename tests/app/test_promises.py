"""The window promises nothing that is not measured, and counts no places that do not stand out."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app.canvas.annotations import paint_card
from inlayfit.app.canvas.scene import worth_walking
from inlayfit.app.first_size import take_room
from inlayfit.app.panels.verdict_bar import VerdictBar
from inlayfit.app.session import Session
from inlayfit.app.theme import LIGHT
from inlayfit.app.window import MainWindow
from inlayfit.document import edits
from inlayfit.document.verdict import Answer, Verdict
from inlayfit.fit.classes import GapClass, classify
from inlayfit.fit.result import GapMap, Spot
from inlayfit.fit.spec import Half, Relief
from tests.app.conftest import discs

Settled = Callable[[Session], None]


@given(st.lists(st.floats(-0.2, 0.4), min_size=1, max_size=12), st.floats(0, 0.1))
def test_all_places_tighter_than_meant_are_walked_and_else_only_the_tightest(
    gaps: list[float], clearance: float
) -> None:
    spots = tuple(Spot((0.0, 0.0), (0.0, g), g) for g in sorted(gaps))
    gap = GapMap((), (), spots, spots[-1], min(gaps), float(np.mean(gaps)), max(gaps), 0.0)
    walked = worth_walking(gap, clearance)
    tighter = [s for s in spots if classify([s.gap_mm], clearance)[0] < GapClass.ON]
    assert list(walked) == (tighter or [spots[0]])


@pytest.mark.parametrize("answer", [Answer.GOES_IN, Answer.PRESS])
def test_numbers_that_are_not_exact_promise_nothing(qtbot: QtBot, answer: Answer) -> None:
    bar = VerdictBar()
    qtbot.addWidget(bar)
    bar.show_verdict(Verdict(answer, "Goes in.", "Tightest 0.030."), is_stale=True)
    assert bar.headline == "Preview."
    bar.show_verdict(Verdict(answer, "Goes in.", "Tightest 0.030."), is_stale=False)
    assert bar.headline == "Goes in."


def test_an_old_answer_says_nothing_about_new_numbers(
    window: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    assert "Goes in" not in window.work.verdict_bar.headline
    window.session.start(discs(1))
    assert window.session.is_stale
    assert window.work.verdict_bar.headline == "Working it out."
    settled(window.session)
    assert window.work.verdict_bar.headline == "Goes in."
    window.session.do(lambda s: edits.set_clearance(s, -0.02))
    assert window.session.is_stale
    assert window.work.verdict_bar.headline == "Working it out."
    settled(window.session)
    assert window.work.verdict_bar.headline == "Has to be pressed in."


def test_an_even_gap_is_called_even_and_not_counted(
    window: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    window.session.start(discs(1))
    settled(window.session)
    assert window.session.spot_count == 1
    assert window.work.spot.which == "the gap is even all round"
    assert not window.work.spot.next.isEnabled()


def test_showing_a_check_says_where_the_loupe_looks_and_the_next_walk_goes_back(
    window: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    window.documents.open_sample()
    settled(window.session)
    check = next(check for check in window.work.checks if check.finding.place_mm is not None)
    window.work.show_check(check)
    assert window.work.map.marked_place == check.finding.place_mm
    assert window.work.spot.which == "at the place of the check"
    window.actions_by_name["next_spot"].trigger()
    assert window.work.map.marked_place is None
    assert window.work.spot.which == "the gap is even all round"
    window.session.do(lambda s: edits.set_relief(s, Half.PLUG, Relief.DOG_BONE))
    settled(window.session)
    assert window.work.spot.which == "the tightest spot"


def test_the_sample_is_nobodys_recent_work(window: MainWindow, qtbot: QtBot, settled: Settled) -> None:
    window.documents.open_sample()
    settled(window.session)
    assert window.documents.recent == ()


def test_enter_presses_the_button_that_has_the_keyboard(
    window: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    window.session.start(discs(2))
    settled(window.session)
    for tab in (window.work.checks_tab, window.work.outlines_tab):
        tab.setFocus()
        QTest.keyClick(tab, Qt.Key.Key_Return)
        assert tab.isChecked()
    assert window.work.side.current_page is window.work.outlines


@pytest.mark.parametrize("width", [300, 500, 900])
def test_the_maps_card_and_its_buttons_never_cover_each_other(qtbot: QtBot, width: int) -> None:
    ground = QImage(width, 200, QImage.Format.Format_ARGB32_Premultiplied)
    painter = QPainter(ground)
    buttons = QRectF(width - 416, 12, 400, 30)
    card = paint_card(painter, QPointF(20, 12), "Gap map", "Band width.", LIGHT, below=[buttons])
    painter.end()
    assert not card.intersects(buttons)
    assert (card.top() == 12) == (buttons.left() > card.right() + 8)


def test_only_a_window_that_keeps_its_place_fills_a_small_screen(qtbot: QtBot) -> None:
    """The offscreen platform's screen is 800 by 800."""
    for of_screen in (True, False):
        window = QWidget()
        qtbot.addWidget(window)
        take_room(window, of_screen=of_screen)
        assert window.isMaximized() is of_screen
        assert (window.size().toTuple() == (1440, 900)) is not of_screen


def test_the_spot_need_not_be_scrolled_at_the_usual_size(
    window: MainWindow, qtbot: QtBot, settled: Settled
) -> None:
    window.resize(1440, 880)
    window.session.start(discs(1))
    settled(window.session)
    qtbot.waitUntil(lambda: window.work.spot.verticalScrollBar().maximum() == 0, timeout=5_000)
