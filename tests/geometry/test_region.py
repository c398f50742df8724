"""Regions: always valid and oriented, and an algebra of sets."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform
from tests.strategies import examples, nested, regions, rigid_motions


def signed_area(ring: np.ndarray) -> float:
    """The shoelace formula: positive for a counter-clockwise ring."""
    x, y = ring.T
    return float((x * np.roll(y, -1) - np.roll(x, -1) * y).sum() / 2)


@examples(30, 300)
@given(region=regions())
def test_outer_rings_run_counter_clockwise_and_holes_clockwise(region: Region) -> None:
    assert shapely.is_valid(region.shape)
    rings = iter(region.rings())
    for polygon in region.polygons:
        assert signed_area(next(rings)) > 0
        for _ in polygon.interiors:
            assert signed_area(next(rings)) < 0


@examples(30, 300)
@given(region=regions())
def test_area_and_perimeter_are_those_of_the_rings(region: Region) -> None:
    assert region.area == pytest.approx(sum(signed_area(ring) for ring in region.rings()))
    lengths = [np.hypot(*(np.roll(ring, -1, axis=0) - ring).T).sum() for ring in region.rings()]
    assert region.perimeter == pytest.approx(sum(lengths))
    assert region.vertex_count == sum(len(ring) for ring in region.rings())
    assert region.hole_count == len(region.rings()) - len(region.polygons)


@examples(30, 300)
@given(region=regions(), motion=rigid_motions())
def test_a_rigid_motion_keeps_size_and_orientation(region: Region, motion: Transform) -> None:
    moved = region.moved(motion)
    assert moved.area == pytest.approx(region.area)
    assert moved.perimeter == pytest.approx(region.perimeter)
    assert all(signed_area(np.asarray(p.exterior.coords)[:-1]) > 0 for p in moved.polygons)


@examples(20, 200)
@given(one=regions(), other=regions())
def test_areas_add_up_as_sets_do(one: Region, other: Region) -> None:
    union, common = one.union(other), one.common(other)
    assert union.area + common.area == pytest.approx(one.area + other.area)
    assert one.minus(other).area == pytest.approx(one.area - common.area, abs=1e-6)
    assert one.minus(one).is_empty
    assert one.union(Region.empty()).area == pytest.approx(one.area)


@examples(15, 100)
@given(region=nested())
def test_the_pieces_make_up_the_region(region: Region) -> None:
    assert len(region.pieces) == len(region.polygons)
    assert sum(piece.area for piece in region.pieces) == pytest.approx(region.area)
    assert sum(piece.hole_count for piece in region.pieces) == region.hole_count


def test_lines_and_points_have_no_area_and_are_left_out() -> None:
    square, line = shapely.box(0, 0, 2, 2), shapely.LineString([(5, 5), (9, 9)])
    mixed = shapely.GeometryCollection([square, line, shapely.Point(7, 7), shapely.Polygon()])
    region = Region.of(mixed)
    assert len(region.polygons) == 1
    assert region.area == 4
    assert Region.of(line).is_empty


def test_nothing_is_empty() -> None:
    nothing = Region.empty()
    assert nothing.is_empty
    assert (nothing.area, nothing.perimeter, nothing.hole_count) == (0, 0, 0)
    assert np.isnan(nothing.bounds).all()
    assert len(nothing.rings()) == 0


def test_a_ring_with_a_hole() -> None:
    region = Region.of_ring([(0, 0), (0, 9), (9, 9), (9, 0)], [[(2, 2), (4, 2), (4, 4), (2, 4)]])
    assert region.area == 81 - 4
    assert region.bounds == (0, 0, 9, 9)


def test_a_ring_cannot_be_written_to() -> None:
    ring = Region.of(shapely.box(0, 0, 9, 9)).rings()[0]
    with pytest.raises(ValueError, match="read-only"):
        ring[0, 0] = 1.0


@examples(30, 300)
@given(region=regions(), corner=st.tuples(st.floats(-20, 20), st.floats(-20, 20)), size=st.floats(0.01, 30))
def test_what_lies_in_a_box(region: Region, corner: tuple[float, float], size: float) -> None:
    x, y = corner
    part = region.within(x, y, x + size, y + size)
    assert shapely.is_valid(part.shape)
    assert part.area == pytest.approx(
        shapely.intersection(region.shape, shapely.box(x, y, x + size, y + size)).area
    )


@examples(30, 300)
@given(region=regions())
def test_equal_regions_have_equal_hashes_and_others_are_told_apart(region: Region) -> None:
    """The hash is of bounds and vertices alone: what has both in common must be told apart by its walls."""
    again = Region.of(shapely.from_wkb(shapely.to_wkb(region.shape)))
    assert again == region
    assert hash(again) == hash(region)
    assert hash(Region.empty()) == hash(Region.empty())
    x0, y0, x1, y1 = region.bounds
    turned = region.moved(Transform(-1.0, 0.0, 0.0, -1.0, x0 + x1, y0 + y1))
    kept = {region: "here", turned: "turned"}
    assert kept[again] == ("turned" if turned == region else "here")
