"""Shared ways: a passage a little too narrow for the cutter is gone through once, straight."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString

from inlayfit.fit.plunges import Targets, Ways, plunge_lengths
from inlayfit.fit.shared_ways import stadiums_along, with_shared_ways
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE, bulges_out, clipper_closed
from tests.strategies import examples, lengths, rigid_motions

SHARP = HalfSpec(0.0, HalfState.ALREADY_CUT)


def two_rooms(radius: float, short: float, apart: float) -> Region:
    """Round rooms joined by a passage narrower than the cutter by `short`, about the x axis.

    At its mouths the cutter comes to places `apart` from each other: there it touches both corners.
    """
    half, room = radius - short / 2, 2.4 * radius
    length = apart - 2 * math.sqrt(radius**2 - half**2)
    middle = length / 2 + math.sqrt(room**2 - half**2)
    disks = [shapely.buffer(shapely.Point(x, 0), room, quad_segs=64) for x in (-middle, middle)]
    return Region.of(shapely.union_all([shapely.box(-middle, -half, middle, half), *disks]))


@pytest.mark.parametrize("relief", [Relief.DOG_BONE, Relief.T_BONE])
@examples(12, 100)
@given(
    radius=lengths(0.5, 3.0),
    short_share=st.floats(0.005, 0.03),
    apart_share=st.floats(0.75, 0.99),
    motion=rigid_motions(),
)
def test_both_walls_of_a_passage_are_cleared_by_one_straight_pass(
    relief: Relief, radius: float, short_share: float, apart_share: float, motion: Transform
) -> None:
    """The cutter's last disks on both sides overlap and leave a cusp at each wall.

    What a pass through the whole passage takes is plane geometry, drawn by shapely.
    """
    apart = 2 * radius * apart_share
    drawn = two_rooms(radius, 2 * radius * short_share, apart)
    result = solve(drawn.moved(motion), FitSpec(0.0, HalfSpec(2 * radius, relief=relief), SHARP))
    (cut,) = result.pocket.reliefs
    through = shapely.buffer(LineString([(-apart / 2, 0), (apart / 2, 0)]), radius, quad_segs=256)
    taken = shapely.difference(through, drawn.shape).area
    assert cut.straight
    assert 0.5 * taken < cut.area_mm2 <= taken + 0.002 * apart
    assert result.pocket.outline.area - drawn.area <= taken + 0.002 * apart


@examples(8, 60)
@given(interference=st.floats(0.1, 0.2), apart_share=st.floats(0.2, 0.8), motion=rigid_motions())
def test_a_plug_that_interference_narrows_a_passage_of_can_still_be_cut(
    interference: float, apart_share: float, motion: Transform
) -> None:
    """The disk that closes the form overlaps itself in the passage; the smaller cutter would not."""
    cutter_radius = 1.5
    radius = cutter_radius + interference
    apart = 2 * (cutter_radius + apart_share * interference)
    host = two_rooms(radius, 0.04 * radius, apart)
    drawn = Region.of(shapely.box(-30, -20, 30, 20)).minus(host).moved(motion)
    pocket = HalfSpec(0.5, relief=Relief.BY_HAND)
    spec = FitSpec(-interference, pocket, HalfSpec(2 * cutter_radius))
    plug = solve(drawn, spec).plug.outline
    assert bulges_out(clipper_closed(plug, cutter_radius - MICROMETRE), plug) <= MICROMETRE


def ways_of(*each: tuple[tuple[float, float], float]) -> Ways:
    origins = np.array([origin for origin, _ in each])
    units = np.array([(math.cos(angle), math.sin(angle)) for _, angle in each])
    return Ways(np.arange(len(each)), origins, units)


@pytest.mark.parametrize("angle", [0.0, 0.01, math.pi - 0.01, math.pi])
def test_a_way_is_taken_over_where_it_takes_less_beside_the_earlier_one(angle: float) -> None:
    """The later target lies across the passage; it was entered from the other end, or a little askew."""
    targets = Targets(np.array([(4.0, 0.9), (6.0, 0.9), (4.0, -0.9), (6.0, -0.9)]), np.array([2, 2]))
    half = Region.of(shapely.box(-20, -20, 20, 20)).minus(Region.of(shapely.box(-30, -0.95, 30, 0.95)))
    ways = ways_of(((0.0, 0.0), 0.0), ((10.0 if angle > 1 else 0.0, 0.0), angle))
    shared, are_shared = with_shared_ways(ways, targets, half, 1.0, EXACT)
    assert are_shared.tolist() == [True, True]
    assert shared.units.tolist() == [[1.0, 0.0], [1.0, 0.0]]
    assert shared.origins.tolist() == [[0.0, 0.0], [0.0, 0.0]]


def test_ways_to_corners_apart_stay_as_they_are() -> None:
    """The earlier way would cover the later target too, but only through much of the half."""
    targets = Targets(np.array([(2.0, 0.0), (9.0, 0.2)]), np.array([1, 1]))
    half = Region.of(shapely.box(-20, -20, 20, 20)).minus(Region.of(shapely.box(-0.5, -15, 0.5, 15)))
    ways = ways_of(((0.0, 0.0), 0.0), ((9.0, 2.5), -math.pi / 2))
    assert np.isfinite(
        plunge_lengths(Ways(np.array([1]), ways.origins[:1], ways.units[:1]), targets, 1.0)
    ).all()
    shared, are_shared = with_shared_ways(ways, targets, half, 1.0, EXACT)
    assert not are_shared.any()
    assert shared.units.tolist() == ways.units.tolist()


def test_a_stadium_is_all_within_the_radius_of_its_way() -> None:
    """Its area is a disk and a rectangle (plane geometry), within the arcs' tolerance."""
    (stadium,) = stadiums_along(ways_of(((1.0, 2.0), 0.7)), np.array([3.0]), 1.5, EXACT)
    assert stadium.area == pytest.approx(
        math.pi * 1.5**2 + 2 * 1.5 * 3.0, abs=2 * math.pi * 1.5 * EXACT.arc_mm
    )
