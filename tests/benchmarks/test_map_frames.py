"""How long a frame of the gap map takes, by stage, at 2,000, 10,000 and 100,000 vertices.

Run with `pytest tests/benchmarks/test_map_frames.py --benchmark-enable`. The scene is built away from the
GUI thread; picture and painting are what a frame costs there. Two thousandths of a second more at a hundred
times the vertices is the aim: the cost follows the wall in view.
"""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication
from pytest_benchmark.fixture import BenchmarkFixture

from inlayfit.app.canvas.paint_layers import Layers, paint_layers
from inlayfit.app.canvas.picture import build_picture
from inlayfit.app.canvas.scene import FittingScene, GapScene
from inlayfit.app.canvas.view_transform import ViewTransform
from inlayfit.app.theme import LIGHT
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.result import FitResult, HalfResult
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState
from inlayfit.geometry.region import Region

WIDTH, HEIGHT = 1030, 560
sizes = pytest.mark.parametrize("vertices", [2_000, 10_000, 100_000])


@cache
def fit(vertices: int) -> FitResult:
    """A lobed disk and one a little smaller and off its middle: every class is on the wall."""
    angles = np.arange(vertices) * (2 * np.pi / vertices)
    radius = 20 * (1 + 0.18 * np.cos(7 * angles))
    ring = np.column_stack([1.6 * radius * np.cos(angles), radius * np.sin(angles)])
    pocket = Region.of_ring(ring)
    plug = Region.of_ring(ring * 0.9985 + np.array([0.03, 0.01]))
    spec = FitSpec(0.03, HalfSpec(2.0, HalfState.ALREADY_CUT), HalfSpec(3.0))
    return FitResult(spec, HalfResult(pocket), HalfResult(plug), gap_map(pocket, plug))


def scene_of(vertices: int) -> GapScene:
    words = ("cherry pocket", "already cut, stays"), ("copper plug", "may move")
    fitting = FittingScene.of_result(
        "leaf", "Leaf", fit(vertices), pocket_words=words[0], plug_words=words[1]
    )
    return GapScene.of((fitting,))


@sizes
def test_building_the_scene(vertices: int, benchmark: BenchmarkFixture) -> None:
    assert not benchmark(scene_of, vertices).is_empty


@sizes
def test_building_the_picture(vertices: int, benchmark: BenchmarkFixture) -> None:
    scene = scene_of(vertices)
    view = ViewTransform.fitted(scene.bounds, WIDTH, HEIGHT)
    picture = benchmark(build_picture, scene, view, WIDTH, HEIGHT)
    assert len(picture.crowd) > 100


@sizes
@pytest.mark.parametrize("ratio", [1, 2])
def test_painting_the_picture(
    vertices: int, ratio: int, benchmark: BenchmarkFixture, qapp: QApplication
) -> None:
    scene = scene_of(vertices)
    picture = build_picture(scene, ViewTransform.fitted(scene.bounds, WIDTH, HEIGHT), WIDTH, HEIGHT)
    image = QImage(WIDTH * ratio, HEIGHT * ratio, QImage.Format.Format_ARGB32_Premultiplied)
    image.setDevicePixelRatio(ratio)

    def paint() -> None:
        painter = QPainter(image)
        paint_layers(painter, QRectF(0, 0, WIDTH, HEIGHT), picture, LIGHT, Layers())
        painter.end()

    benchmark(paint)
    assert image.pixelColor(2, 2).name() == LIGHT.host_tint.lower()
