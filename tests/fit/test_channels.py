"""Ways into channels: along the middle, from a mouth, however narrow and wherever they lie."""

from __future__ import annotations

import math

import numpy as np
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.fit.channels import ways_into_channels
from inlayfit.fit.residue import Residue, ResidueKind, residues
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.morphology import opened, room_inside
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE
from tests.strategies import examples, lengths, rigid_motions


def room_with_channel(width: float, length: float) -> Region:
    """A room to the left of x = 0, and a channel to the right of it, about the x axis."""
    room, channel = shapely.box(-30, -20, 0, 20), shapely.box(-1, -width / 2, length, width / 2)
    return Region.of(shapely.union(room, channel))


def left_in(shape: Region, radius: float) -> tuple[Residue, ...]:
    return residues(shape, opened(shape, radius, EXACT), radius, EXACT)


@examples(20, 200)
@given(
    radius=lengths(0.5, 3.0),
    short_um=st.floats(2.0, 400.0),
    radii_long=st.floats(3.0, 12.0),
    motion=rigid_motions(),
)
def test_a_dead_end_is_entered_along_its_middle(
    radius: float, short_um: float, radii_long: float, motion: Transform
) -> None:
    """Plane geometry: the middle is the x axis, and the cutter comes from the room."""
    shape = room_with_channel(2 * radius - min(short_um / 1000, radius), radii_long * radius)
    moved = shape.moved(motion)
    left = left_in(moved, radius)
    assert [residue.kind for residue in left].count(ResidueKind.DEAD_END) == 1
    ways = ways_into_channels(left, BoundaryIndex(room_inside(moved, radius, EXACT)), radius)
    (target,) = ways.target.tolist()
    assert left[target].kind is ResidueKind.DEAD_END
    middle = motion.points(np.array([[0.0, 0.0], [1.0, 0.0]]))
    assert math.dist(ways.units[0], middle[1] - middle[0]) <= 1e-3
    normal = np.array([-ways.units[0, 1], ways.units[0, 0]])
    assert abs(float((ways.origins[0] - middle[0]) @ normal)) <= 2e-3
    assert float((ways.origins[0] - middle[0]) @ ways.units[0]) <= 0


@examples(10, 100)
@given(short_um=st.floats(2.0, 60.0), motion=rigid_motions())
def test_a_channel_barely_too_narrow_is_cleared_by_one_straight_plunge(
    short_um: float, motion: Transform
) -> None:
    shape = room_with_channel(2.0 - short_um / 1000, 12.0).moved(motion)
    plug = HalfSpec(0.0, HalfState.ALREADY_CUT)
    result = solve(shape, FitSpec(0.0, HalfSpec(2.0, relief=Relief.DOG_BONE), plug))
    assert all(cut.straight for cut in result.pocket.reliefs)
    assert shape.minus(result.pocket.outline).area <= EXACT.settle_mm * shape.perimeter


@examples(20, 200)
@given(short_um=st.floats(2.0, 100.0), slope=st.floats(0.001, 0.2), motion=rigid_motions())
def test_a_dead_end_at_the_end_of_a_funnel_is_entered(
    short_um: float, slope: float, motion: Transform
) -> None:
    """The cutter's centres end in a tip, into which the middle line runs at a grazing angle."""
    half, deep = 1.0 - short_um / 2000, 6.0
    wall = [(0.0, half), (-6.0, half + 6.0 * slope), (-6.0, 5.0), (-20.0, 5.0)]
    ring = [(deep, half), *wall, *[(x, -y) for x, y in reversed(wall)], (deep, -half)]
    moved = Region.of_ring(ring).moved(motion)
    left = [residue for residue in left_in(moved, 1.0) if residue.region.area > 1.0]
    centres = BoundaryIndex(room_inside(moved, 1.0, EXACT))
    ways = ways_into_channels(left, centres, 1.0)
    assert ways.target.tolist() == [0]
    assert centres.signed(ways.origins)[0].min() >= -MICROMETRE


def test_corners_have_no_middle() -> None:
    box = Region.of(shapely.box(0, 0, 20, 10))
    ways = ways_into_channels(left_in(box, 1.0), BoundaryIndex(room_inside(box, 1.0, EXACT)), 1.0)
    assert len(ways.target) == 0
