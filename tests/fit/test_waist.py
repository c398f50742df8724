"""Strokes that narrow to about the cutter's width: the whole cutter sweeps what is called swept."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, Relief
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE, bulges_out, clipper_opened
from tests.strategies import examples, lengths, rigid_motions


@pytest.mark.parametrize("relief", [Relief.BY_HAND, Relief.DOG_BONE, Relief.T_BONE])
@examples(10, 100)
@given(
    slope=st.floats(0.002, 0.05),
    waist_um=st.one_of(lengths(0.0, 3.0), lengths(5.0, 60.0)),
    plug_relief=st.sampled_from([Relief.BY_HAND, Relief.ROUNDED]),
    motion=rigid_motions(),
)
def test_a_stroke_with_a_waist_is_swept_by_the_whole_cutter(
    relief: Relief, slope: float, waist_um: float, plug_relief: Relief, motion: Transform
) -> None:
    """A cutter smaller by a few micrometres would get farther into the waist by many times as much."""
    cutter, half = 2.5, (2.5 - waist_um / 1000) / 2
    upper = [(14.0, half + 14 * slope), (0.0, half), (-14.0, half + 14 * slope)]
    drawn = Region.of_ring([*upper, *[(x, -y) for x, y in reversed(upper)]]).moved(motion)
    spec = FitSpec(0.1, HalfSpec(cutter, relief=relief), HalfSpec(2.0, relief=plug_relief))
    outline = solve(drawn, spec).pocket.outline
    assert bulges_out(outline, clipper_opened(outline, cutter / 2 - MICROMETRE)) <= MICROMETRE
