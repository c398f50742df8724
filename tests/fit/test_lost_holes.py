"""What the plug's cutter cannot enter is never left out silently."""

from __future__ import annotations

import pytest
import shapely

from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.geometry.region import Region


def pocket_with_island(width: float) -> Region:
    island = shapely.box(20 - width / 2, 10 - 3, 20 + width / 2, 10 + 3)
    return Region.of(shapely.box(0, 0, 40, 20).difference(island))


def test_an_island_narrower_than_the_plugs_cutter_blocks_when_both_are_rounded() -> None:
    result = solve(pocket_with_island(2.0), FitSpec(0.05, HalfSpec(1.0), HalfSpec(3.0)))
    assert result.plug.outline.hole_count == 0
    (found,) = [f for f in result.findings if f.code == "cutter-too-large"]
    assert found.severity == "block"
    assert found.place_mm == pytest.approx((20, 10), abs=1.01)


def test_an_island_wide_enough_stays() -> None:
    result = solve(pocket_with_island(4.0), FitSpec(0.05, HalfSpec(1.0), HalfSpec(3.0)))
    assert result.plug.outline.hole_count == 1
    assert not [f for f in result.findings if f.severity == "block"]


def test_a_hole_smaller_than_the_cutter_is_drilled_when_the_pocket_is_fixed() -> None:
    pocket = HalfSpec(0.0, state=HalfState.ALREADY_CUT)
    shape = Region.of(shapely.box(0, 0, 40, 20).difference(shapely.Point(20, 10).buffer(0.9)))
    result = solve(shape, FitSpec(0.05, pocket, HalfSpec(3.0, relief=Relief.DOG_BONE)))
    (hole,) = result.plug.outline.polygons[0].interiors
    assert shapely.Polygon(hole).area == pytest.approx(3.141593 * 1.5**2, rel=1e-3)
    (cut,) = result.reliefs
    assert cut.place_mm == pytest.approx((20, 10), abs=0.01)
    assert result.gap.min_mm >= 0.05 - 0.001
