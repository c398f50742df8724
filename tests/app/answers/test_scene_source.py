"""What the map shows of a document: never nothing where something was drawn."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document.state import Fitting, State
from inlayfit.fit.spec import FitSpec, HalfSpec
from tests.app.conftest import disc

Settled = Callable[[Session], None]


@pytest.mark.parametrize("radius", [0.1, 0.5])
def test_a_pocket_that_the_cutter_cannot_enter_is_shown_as_drawn(
    window: MainWindow, settled: Settled, radius: float
) -> None:
    outline = disc(0, radius=radius)
    spec = FitSpec(0.03, HalfSpec(2.0), HalfSpec(3.0))
    state = State(outlines=(outline,), fittings=(Fitting(outline.id, spec),), chosen=(outline.id,))
    window.session.start(state)
    settled(window.session)
    scene = window.work.map.scene
    assert [o.key for o in scene.outlines] == [outline.id]
    assert scene.bounds == pytest.approx((-radius, -radius, radius, radius), abs=2.5e-4)  # chords of arcs
    x0, _ = window.work.map.view.to_px(-radius, 0)
    x1, _ = window.work.map.view.to_px(radius, 0)
    assert x1 - x0 > 100
