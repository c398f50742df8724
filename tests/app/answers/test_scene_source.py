"""What the map shows of a document: never nothing where something was drawn."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document.edits import rename_outline, set_clearance
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


def test_another_drawing_with_the_same_ids_is_shown_whole(window: MainWindow, settled: Settled) -> None:
    """Drawings number their outlines alike, so the answer for the old one must not stand for the new one."""

    def opened(radius: float) -> State:
        outline = disc(0, radius=radius)
        fitting = Fitting(outline.id, FitSpec(0.03, HalfSpec(2.0), HalfSpec(3.0)))
        return State(outlines=(outline,), fittings=(fitting,), chosen=(outline.id,))

    def width_px(radius: float) -> float:
        view = window.work.map.view
        return view.to_px(radius, 0)[0] - view.to_px(-radius, 0)[0]

    window.session.start(opened(10.0))
    settled(window.session)
    whole = width_px(10.0)
    window.session.start(opened(40.0))
    x0, _, x1, _ = window.work.map.scene.bounds
    assert x1 - x0 == pytest.approx(80, abs=0.01)
    settled(window.session)
    assert width_px(40.0) == pytest.approx(whole, rel=0.01)


def test_a_change_of_the_fit_leaves_the_view_alone(open_discs: MainWindow, settled: Settled) -> None:
    view = open_discs.work.map
    view.zoom_in()
    kept = view.view
    open_discs.session.do(lambda state: set_clearance(state, 0.1))
    open_discs.session.do(lambda state: rename_outline(state, "o0", "lid"))
    settled(open_discs.session)
    assert view.view == kept
