"""What was cut away for relief is shown as the area it is, where it is large enough to be seen."""

from __future__ import annotations

import math

import pytest
import shapely
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from inlayfit.app.canvas.paint_layers import Layers, paint_layers
from inlayfit.app.canvas.picture import build_picture
from inlayfit.app.canvas.scene import FittingScene, GapScene
from inlayfit.app.canvas.view_transform import ViewTransform
from inlayfit.app.theme import LIGHT
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, Relief
from inlayfit.geometry.region import Region

WIDTH, HEIGHT = 600, 450


@pytest.fixture(scope="module")
def scene() -> GapScene:
    """A plain box with a dog-bone of 3 mm in each corner."""
    box = Region.of(shapely.box(0, 0, 40, 30))
    result = solve(box, FitSpec(0.05, HalfSpec(6.0, relief=Relief.DOG_BONE), HalfSpec(0.0)))
    return GapScene.of((FittingScene.of_result("box", "Box", result),))


def test_every_relief_large_enough_to_be_seen_has_an_area(scene: GapScene) -> None:
    view = ViewTransform.fitted(scene.bounds, WIDTH, HEIGHT)
    (shown,) = build_picture(scene, view, WIDTH, HEIGHT).fittings
    # A dog-bone removes a circle segment of each wall of its corner; the two meet in the corner, as one area
    # or as two by the last digit.
    boxes = [path.boundingRect() for path in shown.relieved]
    cut = 3.0 * math.sqrt(2.0)  # from a corner along each wall
    bite = 3.0 - 3.0 / math.sqrt(2.0)
    for x, inward_x in ((0.0, 1), (40.0, -1)):
        for y, inward_y in ((0.0, 1), (30.0, -1)):
            for beyond in (
                (x + inward_x * cut / 2, y - inward_y * bite / 2),
                (x - inward_x * bite / 2, y + inward_y * cut / 2),
            ):
                place = QPointF(*view.to_px(*beyond))
                assert any(box.contains(place) for box in boxes)
    assert len(boxes) <= 2 * 4
    far = ViewTransform.fitted((-9e4, -9e4, 9e4, 9e4), WIDTH, HEIGHT)
    (shown,) = build_picture(scene, far, WIDTH, HEIGHT).fittings
    assert shown.relieved == ()


def test_the_area_is_inked_only_while_relief_is_shown(scene: GapScene, qapp: QApplication) -> None:
    view = ViewTransform.fitted(scene.bounds, WIDTH, HEIGHT)
    picture = build_picture(scene, view, WIDTH, HEIGHT)
    middle = scene.fittings[0].relieved[0].removed.shape.representative_point()
    x, y = (round(v) for v in view.to_px(middle.x, middle.y))
    inks = []
    for relieved in (True, False):
        image = QImage(WIDTH, HEIGHT, QImage.Format.Format_ARGB32_Premultiplied)
        painter = QPainter(image)
        paint_layers(painter, QRectF(0, 0, WIDTH, HEIGHT), picture, LIGHT, Layers(relieved=relieved))
        painter.end()
        inks.append(image.pixelColor(x, y).name())
    assert inks[0] != inks[1]
