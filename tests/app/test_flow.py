from __future__ import annotations

from PySide6.QtCore import QRect, Qt
from PySide6.QtWidgets import QLabel, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app.panels.flow import FlowLayout


def _words(host: QWidget, words: list[str]) -> tuple[FlowLayout, list[QLabel]]:
    flow = FlowLayout(word_gap_px=5, line_height_px=36)
    host.setLayout(flow)
    labels = [QLabel(word) for word in words]
    for label in labels:
        label.setFixedSize(60 if label.text() not in ",." else 6, 20)
        flow.add(label, clings=label.text() in ",.")
    return flow, labels


def test_lines_break_at_the_width_and_a_comma_stays_with_its_word(qtbot: QtBot) -> None:
    host = QWidget()
    qtbot.addWidget(host)
    flow, labels = _words(host, ["one", ",", "two", ",", "three", "."])
    assert flow.heightForWidth(400) == 36
    assert flow.heightForWidth(140) == 72
    assert flow.heightForWidth(70) == 108
    flow.setGeometry(QRect(0, 0, 132, 200))
    for word, mark in ((0, 1), (2, 3), (4, 5)):
        assert labels[word].geometry().right() + 1 == labels[mark].geometry().left()
        assert labels[mark].geometry().center().y() == labels[word].geometry().center().y()
    assert labels[2].y() > labels[0].y() or labels[2].x() > labels[1].x()


def test_it_runs_from_the_right_where_reading_does(qtbot: QtBot) -> None:
    host = QWidget()
    qtbot.addWidget(host)
    host.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    flow, labels = _words(host, ["one", "two"])
    flow.setGeometry(QRect(0, 0, 400, 40))
    assert labels[0].geometry().right() == 399
    assert labels[1].geometry().right() < labels[0].geometry().left()


def test_hidden_words_take_no_room(qtbot: QtBot) -> None:
    host = QWidget()
    qtbot.addWidget(host)
    flow, labels = _words(host, ["one", "two"])
    labels[0].hide()
    flow.setGeometry(QRect(0, 0, 400, 40))
    assert labels[1].x() == 0
