"""Differences of walls that nearly coincide: nothing thick is missing, nothing else is in them."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from inlayfit.geometry.departures import departing_pieces
from inlayfit.geometry.morphology import closed, opened
from inlayfit.geometry.outlines import Piece
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE, bulges_out
from tests.strategies import examples, glyphs, lengths, regions, rigid_motions, turns

FILM = 0.0005  # a piece may be cut short, or reach too far, by less than counts


def left_of_opening(wall: Region, opened_wall: Region, radius: float) -> list[Piece]:
    return departing_pieces(wall, opened_wall, wall_is_outside=True, thickness=EXACT.settle_mm, reach=radius)


def left_of_closing(wall: Region, closed_wall: Region, radius: float) -> list[Piece]:
    return departing_pieces(wall, closed_wall, wall_is_outside=False, thickness=EXACT.settle_mm, reach=radius)


def together(pieces: list[Piece]) -> Region:
    return Region.of(shapely.union_all([piece.region.shape for piece in pieces]))


def assert_nothing_added(found: Region, whole: Region) -> None:
    """Films apart, also in area: a hole that was filled has the same boundary as before."""
    assert found.is_empty or bulges_out(found, whole) <= FILM
    assert found.minus(whole).area <= FILM * found.perimeter


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
    found = together(left_of_closing(shape, filled, radius))
    assert bulges_out(filled.minus(shape), found) <= MICROMETRE


@examples(30, 400)
@given(region=st.one_of(regions(), glyphs()), radius=lengths(0.2, 6.0), motion=rigid_motions())
def test_of_an_opening_nothing_is_missing_and_nothing_is_added(
    region: Region, radius: float, motion: Transform
) -> None:
    """GEOS's difference of the whole regions tells what there is."""
    shape = region.moved(motion)
    reached = opened(shape, radius, EXACT)
    assume(not reached.is_empty)
    found, whole = together(left_of_opening(shape, reached, radius)), shape.minus(reached)
    assert bulges_out(whole, found) <= MICROMETRE
    assert_nothing_added(found, whole)


@examples(30, 400)
@given(region=st.one_of(regions(), glyphs()), radius=lengths(0.2, 6.0), motion=rigid_motions())
def test_of_a_closing_nothing_is_missing_and_nothing_is_added(
    region: Region, radius: float, motion: Transform
) -> None:
    shape = region.moved(motion)
    filled = closed(shape, radius, EXACT)
    found, whole = together(left_of_closing(shape, filled, radius)), filled.minus(shape)
    assert bulges_out(whole, found) <= MICROMETRE
    assert_nothing_added(found, whole)


@examples(20, 300)
@given(region=st.one_of(regions(), glyphs()), radius=lengths(0.2, 3.0), outside=st.booleans())
def test_the_piece_lies_to_the_left_of_its_mouths(region: Region, radius: float, outside: bool) -> None:
    other = (closed if outside else opened)(region, radius, EXACT)
    assume(not other.is_empty)
    for piece in (left_of_closing if outside else left_of_opening)(region, other, radius):
        for mouth in piece.mouths:
            if piece.depth < 0.01 or len(mouth) < 5:
                continue
            start, end = mouth[
                len(mouth) // 2 - 1 : len(mouth) // 2 + 1
            ]  # an edge of the arc, not of the wall
            left = np.array([start[1] - end[1], end[0] - start[0]]) / math.dist(start, end)
            x, y = ((start + end) / 2 + 1e-4 * left).tolist()
            assert shapely.intersects_xy(piece.region.shape, x, y)


@examples(40, 400)
@given(radius=lengths(0.3, 3.0), depth_um=st.floats(1.0, 3.0), motion=rigid_motions())
def test_one_shallow_corner_is_found_however_little_area_it_has(
    radius: float, depth_um: float, motion: Transform
) -> None:
    """A disk stays r·(1/sin(half the angle) − 1) away from a corner (plane geometry).

    Round the rest of the outline chords take or give more area than that piece has.
    """
    half = math.asin(radius / (radius + depth_um / 1000))
    rise = 30 / math.tan(half)
    notched = shapely.Polygon([(-30, -20), (30, -20), (30, rise), (0, 0), (-30, rise)])
    bumps = [shapely.buffer(shapely.Point(x, -20), 2.0, quad_segs=16) for x in range(-25, 26, 5)]
    shape = Region.of(shapely.union_all([notched, *bumps])).moved(motion)
    pieces = left_of_closing(shape, closed(shape, radius, EXACT), radius)
    corner = motion.points(np.zeros((1, 2)))[0]
    (piece,) = (piece for piece in pieces if math.dist(piece.tip, corner) < 1)
    assert piece.depth == pytest.approx(depth_um / 1000, abs=0.0004)


@examples(20, 200)
@given(chords=st.integers(160, 200), share=st.floats(0.4, 0.9), outside=st.booleans(), motion=rigid_motions())
def test_a_circle_of_chords_that_the_disk_follows_is_no_piece(
    chords: int, share: float, outside: bool, motion: Transform
) -> None:
    """At a corner that turns by t the disk stays r·(1/cos(t/2) − 1) away: about half a micrometre here."""
    turn = 2 * math.pi / chords
    radius = 0.0005 / (1 / math.cos(turn / 2) - 1)
    angles = turn * np.arange(chords)
    circle = shapely.Polygon(radius / share * np.column_stack([np.cos(angles), np.sin(angles)]))
    x0, y0, x1, y1 = circle.bounds
    beside = shapely.box(2 * x1, y0, 4 * x1, y1)  # something that does leave pieces
    both = shapely.union(circle, beside)
    sheet = shapely.box(3 * x0, 3 * y0, 6 * x1, 3 * y1)
    shape = Region.of(sheet.difference(both) if outside else both).moved(motion)
    other = (closed if outside else opened)(shape, radius, EXACT)
    pieces = (left_of_closing if outside else left_of_opening)(shape, other, radius)
    assert len(pieces) == 4
    assert not any(piece.is_apart for piece in pieces)


def room_and_chamber(entry: float, island: float) -> Region:
    """A room, and a chamber behind an entry; an island in the chamber."""
    parts = [shapely.box(0, 0, 30, 30), shapely.box(29, 15 - entry / 2, 41, 15 + entry / 2)]
    chamber = shapely.box(40, 10, 50, 20).difference(
        shapely.box(45 - island, 15 - island, 45 + island, 15 + island)
    )
    return Region.of(shapely.union_all([*parts, chamber]))


@pytest.mark.parametrize("entry", [3.0, 0.3, 0.0005])
@pytest.mark.parametrize("island", [0.5, 3.0])
@pytest.mark.parametrize("angle", [0.0, 0.4, 2.1])
def test_a_chamber_the_disk_cannot_enter_is_a_piece_with_the_island_in_it_left_out(
    entry: float, island: float, angle: float
) -> None:
    """Of an entry thinner than dust both walls pass for one, and the chamber has to be found by itself."""
    shape, radius = room_and_chamber(entry, island).moved(Transform.turn(angle)), 2.9
    reached = opened(shape, radius, EXACT)
    assert len(reached.polygons) == 1
    pieces = left_of_opening(shape, reached, radius)
    (chamber,) = (piece for piece in pieces if piece.region.area > 40)
    assert chamber.region.hole_count == 1
    assert bulges_out(shape.minus(reached), together(pieces)) <= MICROMETRE


@pytest.mark.parametrize("angle", [0.0, 0.4, 2.1])
def test_an_island_that_the_disk_just_touches_is_left_out_of_the_corner_it_stands_in(angle: float) -> None:
    radius = 3.0
    touch = radius * (1 - math.sqrt(0.5))
    island = shapely.Polygon([(touch, touch), (touch - 0.3, touch), (touch, touch - 0.3)])
    shape = Region.of(shapely.box(0, 0, 20, 20).difference(island)).moved(Transform.turn(angle))
    reached = opened(shape, radius, EXACT)
    found, whole = together(left_of_opening(shape, reached, radius)), shape.minus(reached)
    assert bulges_out(whole, found) <= MICROMETRE
    assert_nothing_added(found, whole)


def test_a_hole_the_disk_cannot_enter_is_a_piece_that_touches_nothing() -> None:
    shape = Region.of(shapely.box(0, 0, 30, 30).difference(shapely.box(10, 10, 12, 12)))
    filled = closed(shape, 3.0, EXACT)
    (piece,) = left_of_closing(shape, filled, 3.0)
    assert piece.is_apart
    assert piece.mouths == ()
    assert piece.region.area == pytest.approx(4.0)


@examples(40, 400)
@given(
    radius=lengths(0.3, 3.0),
    half=st.floats(0.2, 1.5),
    apart_um=st.sampled_from([0.0, 0.0001, 0.01, 0.1, 1.0]),
    sign=st.sampled_from([-1, 1]),
    motion=rigid_motions(),
)
def test_a_wall_between_two_tips_that_the_disk_just_passes_is_not_tilted(
    radius: float, half: float, apart_um: float, sign: int, motion: Transform
) -> None:
    """The arcs leave the tips a few micrometres round the corner, where the edges between are long."""
    tip, far = radius + sign * apart_um / 1000, 6 * radius
    low = [
        (0, -tip),
        (far * math.sin(half), -tip - far * math.cos(half)),
        (-far * math.sin(half), -tip - far * math.cos(half)),
    ]
    high = [(-x, -y) for x, y in low]
    box = shapely.box(-10 * radius, -6 * radius, 10 * radius, 6 * radius)
    shape = Region.of(
        shapely.difference(box, shapely.union(shapely.Polygon(low), shapely.Polygon(high)))
    ).moved(motion)
    reached = opened(shape, radius, EXACT)
    found, whole = together(left_of_opening(shape, reached, radius)), shape.minus(reached)
    assert bulges_out(whole, found) <= MICROMETRE
    assert_nothing_added(found, whole)


@pytest.mark.parametrize("chords", [100, 140, 160, 180, 200, 240, 400])
def test_a_circle_of_chords_is_not_lost_because_the_disk_touches_no_vertex(chords: int) -> None:
    """From 160 to 200 chords every vertex departs by more than a film, and no arc by enough for a mouth."""
    angles = np.arange(chords) * (2 * math.pi / chords)
    circle = shapely.Polygon(6 * np.column_stack([np.cos(angles), np.sin(angles)]))
    shape = Region.of(shapely.union(circle, shapely.box(20, -5, 30, 5)))
    reached = opened(shape, 3.0, EXACT)
    assert not [piece for piece in left_of_opening(shape, reached, 3.0) if piece.is_apart]
    holed = Region.of(shapely.difference(shapely.box(-20, -20, 20, 20), circle))
    filled = closed(holed, 3.0, EXACT)
    assert not [piece for piece in left_of_closing(holed, filled, 3.0) if piece.is_apart]


def test_a_passage_has_two_mouths_and_a_corner_one() -> None:
    rooms = [shapely.box(0, 0, 20, 20), shapely.box(30, 0, 50, 20), shapely.box(19, 9, 31, 11)]
    shape = Region.of(shapely.union_all(rooms))
    pieces = left_of_opening(shape, opened(shape, 3.0, EXACT), 3.0)
    assert sorted(len(piece.mouths) for piece in pieces) == [1] * 8 + [2]


def test_a_slit_thinner_than_a_chord_is_found_whole() -> None:
    """The chord across its mouth has no vertex inside; the slit is 400 times as deep as it is wide."""
    slit = shapely.box(-0.01, -1, 0.01, 14)
    shape = Region.of(shapely.union(shapely.box(-20, -20, 20, 6), slit)).moved(Transform.turn(0.3))
    reached = opened(shape, 3.0, EXACT)
    found = together(left_of_opening(shape, reached, 3.0))
    assert bulges_out(Region.of(shapely.box(-0.01, 6.001, 0.01, 14)).moved(Transform.turn(0.3)), found) == 0
