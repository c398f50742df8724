"""A drag is answered before it is dropped: what will come of it, or in one sentence why nothing will."""

from __future__ import annotations

import gzip
import shutil
from collections.abc import Sequence
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from inlayfit.app.canvas.drop_halves import DropOffer
from inlayfit.app.files.content import kind_of, offer_for
from inlayfit.app.pages import prompts
from inlayfit.app.pages.prompts import Unsaved
from inlayfit.app.window import MainWindow
from inlayfit.document.imports import import_drawing
from inlayfit.document.project_file import save_project, to_bytes
from inlayfit.fit.spec import Half
from tests.app.conftest import FEET, LEAF, discs

COPY, MOVE, IGNORE = Qt.DropAction.CopyAction, Qt.DropAction.MoveAction, Qt.DropAction.IgnoreAction
LEFT, NONE = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
POINTS = b"x mm, y mm\n0, 0\n40, 0\n40, 20\n"


def data_of(urls: Sequence[str | Path]) -> QMimeData:
    data = QMimeData()
    data.setUrls([QUrl(u) if isinstance(u, str) else QUrl.fromLocalFile(str(u)) for u in urls])
    return data


def offer_of(urls: Sequence[str | Path]) -> DropOffer:
    offer = offer_for(data_of(urls))
    assert offer is not None
    return offer


def _count(drawing: Path) -> int:
    return len(import_drawing(drawing).outlines)


def drag(target: QWidget, at: QPointF, data: QMimeData) -> Qt.DropAction:
    """Enter and move; answers what the other program is told would happen."""
    entering = QDragEnterEvent(at.toPoint(), COPY, data, LEFT, NONE)
    QApplication.sendEvent(target, entering)
    moving = QDragMoveEvent(at.toPoint(), COPY, data, LEFT, NONE)
    QApplication.sendEvent(target, moving)
    return moving.dropAction() if moving.isAccepted() else IGNORE


def drop(target: QWidget, at: QPointF, data: QMimeData) -> None:
    drag(target, at, data)
    QApplication.sendEvent(target, QDropEvent(at, COPY, data, LEFT, NONE))


def test_content_decides_what_a_file_is() -> None:
    assert kind_of(LEAF.read_bytes()[:2048]) == "an SVG drawing"
    assert kind_of(FEET.read_bytes()[:2048]) == "a DXF drawing"
    assert kind_of(to_bytes(discs())[:2048]) == "a project"
    assert kind_of(POINTS) == "a table of points"
    assert kind_of("\ufeff<?xml version='1.0'?><svg/>".encode("utf-16")) == "an SVG drawing"
    for other in (b"", b"hello", b"%PDF-1.4", b"\x89PNG", b"{}"):
        assert kind_of(other) == ""


def test_every_file_that_can_be_opened_is_offered(tmp_path: Path) -> None:
    renamed, packed, points = (tmp_path / name for name in ("thing.png", "leaf.svgz", "pocket.csv"))
    renamed.write_bytes(LEAF.read_bytes())
    packed.write_bytes(gzip.compress(LEAF.read_bytes()))
    points.write_bytes(POINTS)
    assert offer_of([renamed]) == DropOffer("thing.png: an SVG drawing")
    assert offer_of([packed]) == DropOffer("leaf.svgz: an SVG drawing")
    assert offer_of([points]) == DropOffer("pocket.csv: a table of points")
    assert offer_of([renamed, FEET]) == DropOffer("2 drawings")


def _refused(tmp_path: Path) -> dict[str, list[str | Path]]:
    names = ("photo.png", "empty.svg", "parts", "tray.inlayfit")
    picture, empty, folder, project = (tmp_path / name for name in names)
    picture.write_bytes(b"\x89PNG\r\n\x1a\n")
    empty.touch()
    folder.mkdir()
    save_project(discs(), project)
    return {
        "“photo.png” is a picture (PNG); save the drawing as DXF or SVG.": [LEAF, picture],
        "“empty.svg” is empty; save the drawing again.": [empty],
        "“parts” is a folder; drop the drawings in it.": [folder],
        "“none.svg” cannot be read; look whether it is there and yours to read.": [tmp_path / "none.svg"],
        "“a.svg” lies on another computer; save it on this one first.": ["https://example.org/x/a.svg"],
        "“tray.inlayfit” is a project; drop it alone.": [project, LEAF],
    }


def test_what_cannot_be_used_is_refused_in_one_sentence(tmp_path: Path) -> None:
    for sentence, urls in _refused(tmp_path).items():
        offer = offer_of(urls)
        assert offer.is_refused
        assert offer.sentence == sentence
    text = QMimeData()
    text.setText("hello")
    of_text = offer_for(text)
    assert of_text is not None
    assert of_text.is_refused
    assert offer_for(QMimeData()) is None


@pytest.fixture(params=[False, True], ids=["empty window", "over the map"])
def target(window: MainWindow, request: pytest.FixtureRequest) -> QWidget:
    """What lies below the pointer: the window while nothing is open, else the map."""
    if not request.param:
        return window
    window.session.start(discs())
    return window.work.map


def test_a_refused_drag_says_no_by_its_pointer_and_why_in_the_window(
    window: MainWindow, target: QWidget, tmp_path: Path
) -> None:
    before = window.session.state
    for sentence, urls in _refused(tmp_path).items():
        window.notice.dismiss()
        assert drag(target, QPointF(300, 200), data_of(urls)) is IGNORE
        assert window.notice.text == ""
        QApplication.sendEvent(target, QDragLeaveEvent())
        assert window.notice.text == sentence
    assert window.session.state is before


def test_a_drop_never_asks_the_other_program_to_give_its_file_away(
    window: MainWindow, target: QWidget, qtbot: QtBot
) -> None:
    """A program that is told its file was moved may delete it."""
    before = len(window.session.state.outlines)
    data = data_of([LEAF])  # an event does not keep it alive
    entering = QDragEnterEvent(QPoint(300, 200), COPY | MOVE, data, LEFT, NONE)
    entering.setDropAction(MOVE)
    QApplication.sendEvent(target, entering)
    assert entering.dropAction() is COPY
    falling = QDropEvent(QPointF(300, 200), COPY | MOVE, data, LEFT, NONE)
    falling.setDropAction(MOVE)
    QApplication.sendEvent(target, falling)
    assert falling.isAccepted()
    assert falling.dropAction() is COPY
    qtbot.waitUntil(lambda: len(window.session.state.outlines) > before, timeout=20_000)


def test_several_drawings_on_the_plug_half_are_all_plugs(
    window: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    halves = window.empty.halves
    right = QPointF(halves.mapTo(window, QPoint(halves.width() - 30, 60)))
    drop(window, right, data_of([FEET, LEAF]))
    session = window.session
    qtbot.waitUntil(lambda: len(session.state.outlines) == _count(FEET) + _count(LEAF), timeout=20_000)
    assert {fitting.drawn for fitting in session.state.fittings} == {Half.PLUG}


def test_a_project_is_opened_wherever_it_is_dropped(
    window: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    project = tmp_path / "tray.inlayfit"
    save_project(discs(3), project)
    assert offer_of([project]) == DropOffer("tray.inlayfit", heading="Open the project")
    drop(window, QPointF(500, 300), data_of([project]))
    qtbot.waitUntil(lambda: len(window.session.state.outlines) == 3, timeout=20_000)
    shutil.copy(project, tmp_path / "other.inlayfit")
    asked: list[str] = []

    def let_go(*_: object) -> Unsaved:
        asked.append("asked")
        return Unsaved.DROP

    monkeypatch.setattr(prompts, "unsaved_work", let_go)
    window.actions_by_name["unit_thou"].trigger()
    drop(window.work.map, QPointF(100, 100), data_of([tmp_path / "other.inlayfit"]))
    qtbot.waitUntil(lambda: window.session.title == "other", timeout=20_000)
    assert asked == ["asked"]
    assert len(window.session.state.outlines) == 3
