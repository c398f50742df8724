"""Roughing leaves the allowance, and goes wherever its cutter can."""

from __future__ import annotations

import numpy as np
import shapely
from hypothesis import assume, given

from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec
from inlayfit.geometry.morphology import closed, opened
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE, bulges_out, dense_minimum
from tests.strategies import examples, lengths, regions, rigid_motions


@examples(8, 100)
@given(drawn=regions(), allowance=lengths(0.05, 0.8), cutter=lengths(0.5, 4.0))
def test_roughing_leaves_at_least_the_allowance(drawn: Region, allowance: float, cutter: float) -> None:
    half = HalfSpec(cutter, finishing_allowance_mm=allowance)
    result = solve(drawn, FitSpec(0.05, half, half))
    assume(not result.plug.outline.is_empty)
    rough_pocket, rough_plug = result.pocket.rough, result.plug.rough
    assert rough_pocket is not None
    assert rough_plug is not None
    if not rough_pocket.is_empty:
        assert dense_minimum(result.pocket.outline, rough_pocket) >= allowance - MICROMETRE
    assert dense_minimum(rough_plug, result.plug.outline) >= allowance - MICROMETRE
    assert bulges_out(rough_pocket, opened(rough_pocket, cutter / 2 - MICROMETRE, EXACT)) <= MICROMETRE
    assert bulges_out(closed(rough_plug, cutter / 2 - MICROMETRE, EXACT), rough_plug) <= MICROMETRE


@examples(12, 200)
@given(cutter=lengths(0.5, 6.0), allowance=lengths(0.05, 0.5), motion=rigid_motions())
def test_a_slot_that_just_takes_the_cutter_and_both_allowances_is_roughed(
    cutter: float, allowance: float, motion: Transform
) -> None:
    """Whatever the last digits of the coordinates: else the finishing pass would cut it from solid."""
    width = cutter + 2 * allowance
    slot = shapely.box(0, -width / 2, 30, width / 2)
    shape = Region.of(shapely.union(slot, shapely.box(-20, -20, 1, 20))).moved(motion)
    half = HalfSpec(cutter, finishing_allowance_mm=allowance)
    rough = solve(shape, FitSpec(0.05, half, HalfSpec(0.5))).pocket.rough
    assert rough is not None
    (end,) = motion.points(np.array([[30 - allowance - cutter / 2, 0.0]]))
    assert shapely.intersects_xy(rough.shape, *end)


def test_without_an_allowance_there_is_no_roughing_outline() -> None:
    result = solve(Region.of(shapely.box(0, 0, 30, 20)), FitSpec(0.05, HalfSpec(3.0), HalfSpec(3.0)))
    assert result.pocket.rough is None
    assert result.plug.rough is None
