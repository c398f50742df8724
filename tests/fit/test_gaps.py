"""The gap map: every distance right, the tightest place found, whatever the walls look like."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import affinity

from inlayfit.fit.gaps import gap_map
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.morphology import erode
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE, dense_minimum
from tests.strategies import examples, glyphs, lengths, nested, regions, rounded, stars

NANOMETRE = 1e-6


def disk(radius: float, x: float = 0.0) -> Region:
    return Region.of_ring(flatten(Path.circle((x, 0), radius), 0.00001))


@examples(15, 200)
@given(pocket=stars(), other=regions(), share=st.floats(0.3, 1.1), turn=st.floats(-0.3, 0.3))
def test_every_gap_is_the_distance_that_shapely_measures(
    pocket: Region, other: Region, share: float, turn: float
) -> None:
    """Point by point; positive where the plug's wall is inside the pocket, the pocket's outside the plug."""
    plug = other.moved(Transform.scale(share).after(Transform.turn(turn)))
    gaps = gap_map(pocket, plug)
    sides = ((gaps.plug_walls, pocket, True), (gaps.pocket_walls, plug, False))
    for walls, region, free_inside in sides:
        for wall in walls:
            points = shapely.points(wall.points)
            distances = shapely.distance(shapely.boundary(region.shape), points)
            assert np.abs(np.abs(wall.gaps) - distances).max() <= NANOMETRE
            free = shapely.intersects_xy(region.shape, *wall.points.T) == free_inside
            clear = distances > NANOMETRE
            assert (np.sign(wall.gaps[clear]) == np.where(free, 1, -1)[clear]).all()
            assert np.abs(np.hypot(*(wall.points - wall.partners).T) - distances).max() <= NANOMETRE


@examples(15, 200)
@given(pocket=regions(), turn=st.floats(-0.02, 0.02), shift=st.floats(-0.2, 0.2), share=st.floats(0.9, 1.02))
def test_the_minimum_is_that_of_a_dense_check(
    pocket: Region, turn: float, shift: float, share: float
) -> None:
    """A plug that sits askew and bites here and there; sampled every half micrometre near its worst."""
    askew = Transform.shift(shift, -shift).after(Transform.scale(share).after(Transform.turn(turn)))
    plug = pocket.moved(askew)
    gaps = gap_map(pocket, plug)
    near = [np.array(spot.place_mm) for spot in gaps.tightest[:3]]
    assert gaps.min_mm == pytest.approx(dense_minimum(pocket, plug, near=near), abs=MICROMETRE)


@examples(10, 150)
@given(drawn=glyphs(), clearance=lengths(-0.3, 0.5), pocket=lengths(0.2, 5), plug=lengths(0.2, 5))
def test_the_tightest_spot_of_a_solved_fit_is_that_of_a_dense_check(
    drawn: Region, clearance: float, pocket: float, plug: float
) -> None:
    spec = FitSpec(clearance, HalfSpec(pocket, HalfState.ALREADY_CUT), HalfSpec(plug))
    result = solve(drawn, spec)
    assume(not result.gap.is_empty)
    dense = dense_minimum(result.pocket.finished, result.plug.finished)
    assert result.gap.min_mm == pytest.approx(dense, abs=MICROMETRE)


@pytest.mark.parametrize("kind", [stars, rounded, nested, glyphs])
@examples(8, 100)
@given(data=st.data())
def test_spots_come_tightest_first_and_lie_where_they_say(kind, data: st.DataObject) -> None:  # type: ignore[no-untyped-def]
    pocket = data.draw(kind())
    plug = erode(pocket, data.draw(lengths(0.01, 0.4)), EXACT)
    assume(not plug.is_empty)
    gaps = gap_map(pocket, plug)
    widths = [spot.gap_mm for spot in gaps.tightest]
    assert widths == sorted(widths)
    assert gaps.min_mm <= widths[0]
    assert gaps.min_mm == pytest.approx(widths[0], abs=NANOMETRE)
    assert gaps.min_mm <= gaps.mean_mm <= gaps.max_mm
    assert gaps.loosest is not None
    assert gaps.loosest.gap_mm == gaps.max_mm
    for spot in (*gaps.tightest, gaps.loosest):
        assert math.dist(spot.place_mm, spot.partner_mm) == pytest.approx(abs(spot.gap_mm), abs=NANOMETRE)
        assert shapely.distance(shapely.boundary(plug.shape), shapely.Point(spot.place_mm)) <= NANOMETRE
        assert shapely.distance(shapely.boundary(pocket.shape), shapely.Point(spot.partner_mm)) <= NANOMETRE


@pytest.mark.parametrize(("radius", "shift"), [(9.9, 0.0), (9.9, 0.05), (9.9, 0.1), (9.9, 0.25), (10.1, 0.0)])
def test_a_pin_in_a_bore_has_the_gaps_of_its_closed_form(radius: float, shift: float) -> None:
    """Two circles R and r, s apart: R − r − s at the tightest, R − r + s at the loosest (plane geometry)."""
    gaps = gap_map(disk(10.0), disk(radius, shift))
    assert gaps.min_mm == pytest.approx(10 - radius - shift, abs=MICROMETRE / 10)
    assert gaps.max_mm == pytest.approx(10 - radius + shift, abs=MICROMETRE / 10)
    assert gaps.overlap_mm2 == pytest.approx(disk(radius, shift).minus(disk(10.0)).area, abs=1e-6)
    if shift:
        x, y = gaps.tightest[0].place_mm
        assert x == pytest.approx(radius + shift, abs=0.2)
        assert abs(y) <= 1.2


def test_a_bite_in_the_middle_of_a_long_wall_is_found() -> None:
    """The deepest place lies on no vertex: a flat plug wall bites deepest where the pocket bulges."""
    pocket = Region.of(shapely.box(0, 0, 100, 20)).minus(disk(30.0, 43.21).moved(Transform.shift(0, 49.9)))
    plug = Region.of(shapely.box(1, 1, 99, 19.98))
    gaps = gap_map(pocket, plug)
    # The wall runs level 19.98; the disk about (43.21, 49.9) reaches down to 19.9: 0.08 mm deep there.
    assert gaps.min_mm == pytest.approx(-0.08, abs=MICROMETRE)
    assert gaps.tightest[0].place_mm[0] == pytest.approx(43.21, abs=1.0)


def test_the_mean_is_by_length_of_wall() -> None:
    """Long walls 0.1 off and short walls 0.3 off a 80 × 20 plug: (160·0.1 + 40·0.3)/200."""
    gaps = gap_map(Region.of(shapely.box(-0.3, -0.1, 80.3, 20.1)), Region.of(shapely.box(0, 0, 80, 20)))
    assert gaps.min_mm == pytest.approx(0.1)
    assert gaps.max_mm == pytest.approx(0.3)
    assert gaps.mean_mm == pytest.approx((160 * 0.1 + 40 * 0.3) / 200, abs=0.001)


def test_the_share_below_a_gap() -> None:
    gaps = gap_map(Region.of(shapely.box(-0.3, -0.1, 80.3, 20.1)), Region.of(shapely.box(0, 0, 80, 20)))
    assert gaps.share_below(0.05) == 0
    assert gaps.share_below(0.2) == pytest.approx(0.8, abs=0.02)
    assert gaps.share_below(1.0) == 1


def test_a_plug_outside_its_pocket_overlaps_with_all_it_has() -> None:
    pocket, plug = (
        Region.of(shapely.box(0, 0, 10, 10)),
        Region.of(affinity.translate(shapely.box(0, 0, 4, 4), 30)),
    )
    gaps = gap_map(pocket, plug)
    assert gaps.overlap_mm2 == pytest.approx(16)
    assert gaps.min_mm == pytest.approx(-math.hypot(24, 0), abs=0.01)


@pytest.mark.parametrize("shape", [Region.empty(), Region.of(shapely.box(0, 0, 5, 5))])
def test_without_a_plug_or_a_pocket_there_is_no_gap(shape: Region) -> None:
    for gaps in (gap_map(Region.empty(), shape), gap_map(shape, Region.empty())):
        assert gaps.is_empty
        assert math.isnan(gaps.min_mm)
        assert gaps.tightest == ()
        assert gaps.share_below(1.0) == 0.0


@examples(10, 100)
@given(drawn=regions(), clearance=lengths(0.02, 0.3), relief=st.sampled_from(Relief))
def test_a_fit_that_goes_in_overlaps_nowhere(drawn: Region, clearance: float, relief: Relief) -> None:
    spec = FitSpec(clearance, HalfSpec(2.0, relief=relief), HalfSpec(1.0, relief=relief))
    result = solve(drawn, spec)
    if not result.gap.is_empty and result.gap.min_mm > 0:
        assert result.gap.overlap_mm2 == 0
