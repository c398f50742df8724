"""The area of polygons inside stadiums, against GEOS's intersections and buffers."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Point

from inlayfit.geometry.region import Region
from inlayfit.geometry.stadiums import Edges, Stadiums
from tests.strategies import examples, lengths, regions, turns


def stadium(origin: tuple[float, float], angle: float, length: float, radius: float) -> Stadiums:
    unit = np.array([[math.cos(angle), math.sin(angle)]])
    return Stadiums(np.array([origin]), unit, np.array([length]), radius)


@examples(40, 1000)
@given(
    region=regions(),
    place=st.tuples(st.floats(-20, 20), st.floats(-20, 20)),
    angle=turns(),
    length=st.floats(0, 25),
    radius=lengths(0.3, 12.0),
)
def test_the_area_is_that_of_the_intersection(
    region: Region, place: tuple[float, float], angle: float, length: float, radius: float
) -> None:
    (area,) = stadium(place, angle, length, radius).areas_inside(
        Edges.of(np.array([region.shape], dtype=object)), np.array([0])
    )
    end = (place[0] + length * math.cos(angle), place[1] + length * math.sin(angle))
    line = LineString([place, end]) if length > 1e-6 else Point(place)
    drawn = shapely.buffer(line, radius, quad_segs=1024)  # its chords leave 4e-7 of a disk's area
    whole = math.pi * radius**2 + 2 * radius * length
    assert area == pytest.approx(shapely.intersection(drawn, region.shape).area, abs=1e-6 * whole)


def test_a_half_plane_takes_half_and_the_whole_plane_takes_all() -> None:
    """πr² + 2Lr, and half of it on either side of the axis."""
    whole = math.pi * 1.5**2 + 2 * 4 * 1.5
    shapes = np.array(
        [shapely.box(-99, 0, 99, 99), shapely.box(-99, -99, 99, 99), shapely.Polygon()], dtype=object
    )
    (one,) = (stadium((1.0, 0.0), 0.0, 4.0, 1.5) for _ in range(1))
    three = Stadiums(np.repeat(one.origins, 3, 0), np.repeat(one.units, 3, 0), np.repeat(one.lengths, 3), 1.5)
    areas = three.areas_inside(Edges.of(shapes), np.array([0, 1, 2]))
    assert areas == pytest.approx([whole / 2, whole, 0.0], abs=1e-9)


def test_shapes_are_chosen_by_number_and_holes_count_as_such() -> None:
    ring = shapely.box(-9, -9, 9, 9).difference(shapely.box(-1, -1, 1, 1))
    shapes = np.array(
        [ring, shapely.MultiPolygon([shapely.box(0, 0, 1, 1), shapely.box(2, 2, 3, 3)])], dtype=object
    )
    two = Stadiums(np.zeros((2, 2)), np.array([[1.0, 0.0], [1.0, 0.0]]), np.zeros(2), 5.0)
    areas = two.areas_inside(Edges.of(shapes), np.array([1, 0]))
    assert areas == pytest.approx([2.0, math.pi * 25 - 4])
