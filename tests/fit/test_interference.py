"""A press fit that is as tight as meant blocks nothing."""

from __future__ import annotations

import pytest

from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, Relief
from inlayfit.geometry.region import Region

ELL = Region.of_ring([[10, 10], [40, 10], [40, 22], [24, 22], [24, 30], [10, 30]])


@pytest.mark.parametrize("of_pocket", list(Relief))
@pytest.mark.parametrize("of_plug", list(Relief))
def test_a_sharp_corner_of_the_host_is_not_taken_for_a_bite(of_pocket: Relief, of_plug: Relief) -> None:
    spec = FitSpec(-0.02, HalfSpec(6.0, relief=of_pocket), HalfSpec(3.0, relief=of_plug))
    codes = {finding.code for finding in solve(ELL, spec).findings}
    assert "bites" not in codes
    assert "interference" in codes
