"""Coatings in the section: a band on each coated face and on no other, and what it adds said in words."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.theme import LIGHT, Theme
from inlayfit.app.widgets.paint_coating import FILM_PX, bare_body
from inlayfit.app.widgets.paint_stack import SectionShape, StackSection, paint_section, section_shape
from inlayfit.app.widgets.stack_view import StackView
from inlayfit.bench.stack import BARE, BuildUp, Spread, Stack
from inlayfit.document.coating import FACES, Face
from inlayfit.fit.spec import Half
from inlayfit.units import Unit

AREA = QRectF(0, 0, 360, 212)


@pytest.fixture(autouse=True, scope="module")
def lettering(qapp: QApplication) -> None:
    """The layout leaves room for words, which nothing can measure before there is an application."""
    theme.apply(qapp, Theme.LIGHT)


def section(coating: BuildUp) -> StackSection:
    stack = Stack(Spread.exact(3.0), Spread.exact(3.0), Spread.exact(0.1), coating)
    return StackSection(stack, coating_words="plug coated" if coating != BARE else "")


def middles(coating: BuildUp) -> dict[Face, QPointF]:
    """The middle of each face's band, if it has one."""
    shape: SectionShape = section_shape(AREA, section(coating))
    body, half = bare_body(shape.plug, coating), FILM_PX / 2
    return {
        Face.RIM: QPointF(10, shape.bare_y - half),
        Face.POCKET_WALL: QPointF(shape.left + half, (shape.face_y + shape.floor_y) / 2),
        Face.FLOOR: QPointF((shape.left + shape.right) / 2 + 30, shape.floor_y - half),
        Face.TOP: QPointF(body.left() + 15, body.top() - half),
        Face.PLUG_WALL: QPointF(body.right() + half, body.center().y()),
        Face.BOTTOM: QPointF(body.center().x(), body.bottom() + half),
    }


def colours(coating: BuildUp) -> dict[Face, QColor]:
    image = QImage(360, 212, QImage.Format.Format_RGB32)
    image.fill(QColor(LIGHT.canvas))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint_section(painter, AREA, section(coating), LIGHT, Unit.MM, held=None, dimmed=False)
    painter.end()
    return {face: image.pixelColor(at.toPoint()) for face, at in middles(coating).items()}


def coated_only(faces: tuple[Face, ...]) -> BuildUp:
    return BuildUp(**{face.value: 0.02 for face in faces})


@pytest.mark.parametrize("face", Face)
def test_a_coated_face_has_a_band_and_the_others_have_none(face: Face) -> None:
    band = QColor(LIGHT.edge)
    painted = colours(coated_only((face,)))
    assert painted.pop(face) == band
    assert band not in painted.values()


@pytest.mark.parametrize("half", Half)
def test_a_half_coated_all_over_has_a_band_on_each_of_its_faces(half: Half) -> None:
    painted = colours(coated_only(FACES[half]))
    coated = {face for face, colour in painted.items() if colour == QColor(LIGHT.edge)}
    assert coated == set(FACES[half])


def test_the_step_is_drawn_between_the_coated_faces() -> None:
    """Coat the host's face and the floor alike, and nothing moves but the bare face (bench/stack.py)."""
    bare, coated = (section_shape(AREA, section(c)) for c in (BARE, BuildUp.host(0.02)))
    assert coated.face_y == bare.face_y
    assert coated.plug.top() == bare.plug.top()
    assert coated.bare_y == bare.face_y + FILM_PX
    masked = section_shape(AREA, section(BuildUp.host(0.02, floor_masked=True)))
    assert masked.plug.top() > bare.plug.top(), "a deeper pocket lets the plug sit lower"


@pytest.mark.parametrize("height_px", [158, 180, 212])
def test_what_a_plug_grows_by_is_said_only_where_it_has_room(height_px: int) -> None:
    """Words that reach beyond the plug's body would run through its coated faces."""
    area = QRectF(0, 0, 330, height_px)
    film = BuildUp.plug(0.01).with_coat(BuildUp.host(0.01))
    flush = Stack(Spread.exact(2.88), Spread.exact(3.0), Spread.exact(0.1), film)
    shown = StackSection(flush, plug_word="copper")
    image = QImage(330, height_px, QImage.Format.Format_RGB32)
    image.fill(QColor(LIGHT.canvas))
    painter = QPainter(image)
    paint_section(painter, area, shown, LIGHT, Unit.INCH, held=None, dimmed=False)
    painter.end()
    shape = section_shape(area, shown)
    body = bare_body(shape.plug, shown.stack.build_up)
    for y in (body.top() - 2.5, body.bottom() + 1.5):
        row = {
            image.pixelColor(x, round(y)).name()
            for x in range(round(body.left()) + 12, round(body.center().x()) - 12)
        }
        assert row == {LIGHT.edge.lower()}


def test_a_screen_reader_is_told(qtbot: QtBot) -> None:
    view = StackView()
    qtbot.addWidget(view)
    view.set_section(section(BARE))
    assert "plug coated" not in view.accessibleDescription()
    view.set_section(replace(section(BuildUp.plug(0.01))))
    assert "plug coated" in view.accessibleDescription()
