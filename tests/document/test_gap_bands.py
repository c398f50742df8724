"""Bands of the gap map: they cover the wall once, lie inside the plug, and say what the map says."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document.gap_bands import band_runs, class_lengths
from inlayfit.fit.classes import GapClass
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.result import FitResult, HalfResult
from inlayfit.fit.spec import FitSpec
from inlayfit.geometry.morphology import erode
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.strategies import examples, regions


def fitted(pocket: Region, *, clearance: float = 0.05, dx: float = 0.0, dy: float = 0.0) -> FitResult:
    plug = erode(pocket, clearance, EXACT).moved(Transform.shift(dx, dy))
    return FitResult(FitSpec(clearance), HalfResult(pocket), HalfResult(plug), gap_map(pocket, plug))


def square(size: float = 20.0) -> Region:
    return Region.of_ring([(0, 0), (size, 0), (size, size), (0, size)])


def test_a_plug_on_target_is_one_closed_band() -> None:
    (run,) = band_runs(fitted(square()), half_band_mm=0.3, step_mm=0.1)
    assert run.closed
    assert run.gap_class is GapClass.ON
    assert run.length_mm == pytest.approx(4 * (19.9 - 0.6), abs=0.01)


def test_a_plug_pushed_to_one_side_bites_there_and_is_loose_opposite() -> None:
    runs = band_runs(fitted(square(), dx=0.08), half_band_mm=0.3, step_mm=0.1)
    side = {run.gap_class: run.points[:, 0].mean() for run in runs if run.length_mm > 10 and not run.closed}
    assert side[GapClass.BITES] > 19
    assert side[GapClass.LOOSE] < 1


@examples(20, 100)
@given(regions(), st.floats(-0.1, 0.1), st.floats(0.05, 0.6))
def test_bands_lie_inside_the_plug_and_turn_around_it_with_the_plug_to_the_left(
    pocket: Region, dx: float, half_band: float
) -> None:
    result = fitted(pocket, dx=dx)
    for run in band_runs(result, half_band_mm=half_band, step_mm=0.2):
        inside = shapely.dwithin(result.plug.outline.shape, shapely.points(run.points), 1e-6)
        assert inside.all()
        assert len(run.points) >= 2


@examples(20, 100)
@given(regions(), st.floats(-0.1, 0.1))
def test_the_lengths_of_all_classes_are_the_wall(pocket: Region, dx: float) -> None:
    result = fitted(pocket, dx=dx)
    lengths = class_lengths(result.gap, 0.05)
    assert sum(lengths.values()) == pytest.approx(result.plug.outline.perimeter, rel=1e-9)
    assert list(lengths) == list(GapClass)


def test_a_plug_thinner_than_its_band_is_coloured_on_its_wall() -> None:
    thin = Region.of_ring([(0, 0), (20, 0), (20, 0.5), (0, 0.5)])
    runs = band_runs(fitted(thin), half_band_mm=0.4, step_mm=0.1)
    assert sum(run.length_mm for run in runs) == pytest.approx(fitted(thin).plug.outline.perimeter, rel=0.02)


def test_a_sharp_tip_is_coloured_to_its_end() -> None:
    needle = Region.of_ring([(0, 0), (40, 2), (0, 4)])
    runs = band_runs(fitted(needle), half_band_mm=0.4, step_mm=0.1)
    farthest = max(run.points[:, 0].max() for run in runs)
    assert farthest > fitted(needle).plug.outline.bounds[2] - 0.1


def test_no_plug_no_band() -> None:
    spec = FitSpec(0.05)
    empty = Region.empty()
    result = FitResult(spec, HalfResult(square()), HalfResult(empty), gap_map(square(), empty))
    assert band_runs(result, half_band_mm=0.3, step_mm=0.1) == ()
    assert sum(class_lengths(result.gap, 0.05).values()) == 0


def test_neighbouring_runs_meet() -> None:
    runs = [
        r
        for r in band_runs(fitted(square(), dx=0.04, dy=0.03), half_band_mm=0.3, step_mm=0.1)
        if not r.closed
    ]
    starts = np.array([run.points[0] for run in runs])
    ends = np.array([run.points[-1] for run in runs])
    assert len(runs) >= 2
    for end in ends:
        assert np.hypot(*(starts - end).T).min() < 1e-9
