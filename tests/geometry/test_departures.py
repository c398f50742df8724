"""Differences of walls that nearly coincide: nothing thick is missing, nothing else is in them."""

from __future__ import annotations

import math

import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from inlayfit.geometry.departures import departing_pieces
from inlayfit.geometry.morphology import closed, opened
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE, bulges_out
from tests.strategies import examples, glyphs, lengths, regions, rigid_motions, turns


def between(wall: Region, other: Region, radius: float) -> Region:
    """All pieces together."""
    pieces = departing_pieces(wall, other, thickness=EXACT.settle_mm, reach=radius)
    return Region.of(shapely.union_all([piece.region.shape for piece in pieces]))


def wedge(place: tuple[float, float], angle: float, facing: float) -> Region:
    """A long wedge whose tip is at a place, its middle line running off in a direction."""
    ends = [(20 * math.cos(side), 20 * math.sin(side)) for side in (-angle / 2, angle / 2)]
    there = Transform.shift(*place).after(Transform.turn(facing))
    return Region.of_ring([(0.0, 0.0), *ends]).moved(there)


@examples(60, 1000)
@given(
    radius=lengths(0.5, 3.0),
    short_um=st.floats(0.0, 100.0),
    angles=st.tuples(st.floats(0.3, 3.1), st.floats(0.3, 3.1)),
    leans=st.tuples(st.floats(-0.9, 0.9), st.floats(-0.9, 0.9)),
    turn=turns(),
)
def test_between_two_tips_nothing_is_missing(
    radius: float,
    short_um: float,
    angles: tuple[float, float],
    leans: tuple[float, float],
    turn: float,
) -> None:
    """A disk that does not quite pass leaves pieces short beside its radius, in the middle of a wall."""
    apart = 2 * radius - short_um / 1000
    low = wedge((0.0, 0.0), angles[0], -math.pi / 2 + leans[0])
    high = wedge((0.0, apart), angles[1], math.pi / 2 + leans[1])
    assume(low.common(high).is_empty)
    shape = low.union(high).moved(Transform.turn(turn))
    filled = closed(shape, radius, EXACT)
    found = between(shape, filled, radius)
    assert bulges_out(filled.minus(shape), found) <= MICROMETRE


@examples(30, 400)
@given(region=st.one_of(regions(), glyphs()), radius=lengths(0.2, 6.0), motion=rigid_motions())
def test_of_an_opening_nothing_is_missing_and_nothing_is_added(
    region: Region, radius: float, motion: Transform
) -> None:
    shape = region.moved(motion)
    reached = opened(shape, radius, EXACT)
    assume(not reached.is_empty)
    found = between(shape, reached, radius)
    whole = shape.minus(reached)
    assert bulges_out(whole, found) <= MICROMETRE
    assert found.minus(whole).area <= 1e-9 * max(1.0, shape.area)


def test_a_slit_thinner_than_a_chord_is_found_whole() -> None:
    """The chord across its mouth has no vertex inside; the slit is 400 times as deep as it is wide."""
    slit = shapely.box(-0.01, -1, 0.01, 14)
    shape = Region.of(shapely.union(shapely.box(-20, -20, 20, 6), slit)).moved(Transform.turn(0.3))
    reached = opened(shape, 3.0, EXACT)
    found = between(shape, reached, 3.0)
    assert bulges_out(Region.of(shapely.box(-0.01, 6.001, 0.01, 14)).moved(Transform.turn(0.3)), found) == 0
