"""The loupe: true scale, the right cutter, the right numbers, whatever the size of the drawing."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.canvas.loupe import Loupe, brief_length
from inlayfit.app.canvas.loupe_view import LoupeSpot, build_loupe, fitting_scale
from inlayfit.app.canvas.reading_text import signed, signed_overall, spoken
from inlayfit.app.canvas.scene import FittingScene
from inlayfit.app.panels.legend import Legend
from inlayfit.app.theme import Theme
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.geometry.region import Region
from inlayfit.units import Unit
from tests.app.canvas.known_fits import RADIUS_MM, shifted_fitting

FITTING = shifted_fitting(0.06)
TIGHTEST = LoupeSpot(FITTING.spots[0].place_mm, FITTING.spots[0].partner_mm, FITTING.spots[0].gap_mm)


@given(st.floats(20, 5000))
def test_both_walls_stand_at_true_scale(scale: float) -> None:
    view = build_loupe(FITTING, TIGHTEST, scale, 360, 180)
    start = np.array(view.view.to_px(*TIGHTEST.place_mm))
    end = np.array(view.view.to_px(*TIGHTEST.partner_mm))
    assert np.hypot(*(end - start)) == pytest.approx(abs(TIGHTEST.gap_mm) * scale, rel=1e-6)
    assert (start + end) / 2 == pytest.approx([180, 90])


@given(st.floats(-0.2, 0.4), st.floats(-0.1, 0.2))
def test_the_scale_that_suits_a_gap_shows_it_and_the_clearance(gap: float, clearance: float) -> None:
    scale = fitting_scale(gap, clearance)
    assert max(abs(gap), abs(clearance)) * scale <= 30 + 1e-6 or scale == 10
    assert scale <= 3000


def test_where_the_plug_bites_the_overlap_is_shown_and_elsewhere_not() -> None:
    assert build_loupe(FITTING, TIGHTEST, 800, 360, 180).overlap
    loosest = FITTING.loosest
    assert loosest is not None
    there = LoupeSpot(loosest.place_mm, loosest.partner_mm, loosest.gap_mm)
    assert not build_loupe(FITTING, there, 300, 360, 180).overlap


def test_the_cutter_of_the_half_to_cut_touches_its_wall_from_its_own_side() -> None:
    """The plug's cutter runs outside the plug; the pocket's inside the pocket."""
    plug_cutter = build_loupe(FITTING, TIGHTEST, 400, 360, 180).cutter
    assert plug_cutter is not None
    assert plug_cutter.radius_mm == 1.5
    assert math.dist(plug_cutter.centre_mm, TIGHTEST.place_mm) == pytest.approx(1.5)
    assert math.hypot(*plug_cutter.centre_mm) > RADIUS_MM + 1.4
    other = shifted_fitting(0.06, fixed="plug")
    pocket_cutter = build_loupe(other, TIGHTEST, 400, 360, 180).cutter
    assert pocket_cutter is not None
    assert pocket_cutter.radius_mm == 1.0
    assert math.hypot(*pocket_cutter.centre_mm) == pytest.approx(RADIUS_MM - 1.0, abs=0.01)


def test_only_what_is_in_sight_is_built() -> None:
    view = build_loupe(FITTING, TIGHTEST, 5000, 360, 180)
    assert sum(len(ring) for ring in (*view.pocket, *view.plug)) < 60


@given(st.floats(-1, 1))
def test_the_overall_is_twice_the_shown_number(gap: float) -> None:
    def number(text: str) -> float:
        return float(text.strip("()").replace("\N{MINUS SIGN}", "-"))

    for unit in (Unit.MM, Unit.THOU, Unit.INCH):
        side, overall = signed(gap, unit), signed_overall(gap, unit)
        assert number(overall) == pytest.approx(2 * number(side), abs=1e-9)
        assert (side[0] == "+") == (number(side) > 0)


def test_words_for_the_ear() -> None:
    minus = "\N{MINUS SIGN}"
    assert spoken(-0.072, Unit.MM) == f"{minus}0.072 per side ({minus}0.144 overall)"
    assert spoken(0.0, Unit.MM) == "0.000 per side (0.000 overall)"


@pytest.fixture
def loupe(qtbot: QtBot, qapp: QApplication) -> Loupe:
    theme.apply(qapp, Theme.DARK)
    widget = Loupe()
    qtbot.addWidget(widget)
    widget.resize(360, 236)
    widget.set_spot(FITTING, FITTING.spots[0])
    widget.show()
    return widget


def test_keys_zoom_and_step(loupe: Loupe) -> None:
    steps: list[int] = []
    loupe.stepped.connect(steps.append)
    start = loupe.scale
    QTest.keyClick(loupe, Qt.Key.Key_Plus)
    assert loupe.scale == pytest.approx(1.25 * start)
    QTest.keyClick(loupe, Qt.Key.Key_Home)
    assert loupe.scale == start
    for key in (Qt.Key.Key_Right, Qt.Key.Key_Left, Qt.Key.Key_N):
        QTest.keyClick(loupe, key)
    assert steps == [1, -1, 1]


def test_zooming_past_the_end_comes_back_at_once(loupe: Loupe) -> None:
    for _ in range(60):
        loupe.zoom_by(1.25)
    end = loupe.scale
    loupe.zoom_by(1 / 1.25)
    assert loupe.scale < end


def test_it_says_the_gap_and_paints_with_and_without_a_spot(loupe: Loupe) -> None:
    assert loupe.accessibleDescription() == spoken(FITTING.spots[0].gap_mm, Unit.MM)
    with_spot = loupe.grab().toImage()
    loupe.set_stale(True)
    assert loupe.grab().toImage() != with_spot
    loupe.set_spot(None, None)
    loupe.grab()
    assert loupe.accessibleDescription() == ""


def test_the_loupe_shows_the_walls_that_meet_and_what_a_hand_takes_away_before() -> None:
    """An L whose inner corner a round plug cutter leaves full: the gap is measured without that stock."""
    shape = Region.of(shapely.Polygon([(0, 0), (30, 0), (30, 10), (10, 10), (10, 30), (0, 30)]))
    spec = FitSpec(0.05, HalfSpec(0.0, HalfState.ALREADY_CUT), HalfSpec(4.0, relief=Relief.BY_HAND))
    fitting = FittingScene.of_result("l", "L", solve(shape, spec))
    corner = LoupeSpot((9.95, 9.95), (10.0, 10.0), 0.05)
    view = build_loupe(fitting, corner, 100.0, 360, 180)
    assert view.pared
    assert not view.overlap
    as_cut = replace(fitting, plug_pared=Region.empty())
    assert build_loupe(as_cut, corner, 100.0, 360, 180).overlap


@pytest.mark.parametrize("unit", list(Unit))
@pytest.mark.parametrize("radius_mm", [0.2, 0.3, 0.5, 1.5, 3.175])
def test_a_cutter_is_known_by_what_the_loupe_says_of_it(unit: Unit, radius_mm: float) -> None:
    """In each unit within 0.02 mm, so that neighbouring sizes of a cutter chart stay apart."""
    for mm in (radius_mm, 2 * radius_mm):
        assert float(brief_length(mm, unit)) * float(unit.mm) == pytest.approx(mm, abs=0.02)


@pytest.mark.parametrize("unit", list(Unit))
def test_lengths_of_wall_are_said_with_no_digit_that_counts_for_nothing(qtbot: QtBot, unit: Unit) -> None:
    legend = Legend()
    qtbot.addWidget(legend)
    legend.show_fitting(FITTING, unit, is_stale=False)
    lengths = [part.rsplit(": ", 1)[1] for part in legend.accessibleDescription().split(", ")]
    assert len(lengths) == 5
    for text in lengths:
        _, _, digits = text.split(" ")[0].partition(".")
        assert not digits or 0.05 <= float(unit.mm) / 10 ** len(digits) <= 0.5
