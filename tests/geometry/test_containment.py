from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.containment import nest


def even_odd_area(areas: list[Polygon]) -> float:
    """The even-odd rule by its definition: the symmetric difference of all areas (GEOS, our reference)."""
    whole: BaseGeometry = shapely.Polygon()
    for each in areas:
        whole = shapely.symmetric_difference(whole, each)
    return float(whole.area)


@given(st.lists(st.floats(0.5, 2), min_size=1, max_size=9), st.randoms(use_true_random=False))
def test_areas_in_areas_alternate_between_material_and_hole(steps: list[float], random: object) -> None:
    radii = np.cumsum(steps)
    areas = [Point(0, 0).buffer(float(r)) for r in radii]
    random.shuffle(areas)  # type: ignore[attr-defined] # hypothesis types its random as object here
    pieces = nest(areas)
    assert sum(piece.polygon.area for piece in pieces) == pytest.approx(even_odd_area(areas))
    assert len(pieces) == (len(areas) + 1) // 2
    assert {piece.depth % 2 for piece in pieces} == {0}


def test_an_island_in_a_hole_is_a_piece_of_its_own() -> None:
    pieces = nest([box(0, 0, 10, 10), box(1, 1, 9, 9), box(2, 2, 4, 4), box(6, 6, 8, 8)])
    assert sorted(p.polygon.area for p in pieces) == [4, 4, 36]
    assert [p.holes for p in pieces] == [(1,), (), ()]


def test_areas_of_one_unit_lie_side_by_side_and_make_no_holes() -> None:
    left, right = box(0, 0, 5, 5), box(5, 0, 9, 5)
    pieces = nest([left, right, box(1, 1, 2, 2)], [0, 0, 1])
    assert [p.polygon.area for p in pieces] == [24, 20]


def test_an_area_with_a_hole_of_its_own_does_not_hold_what_lies_in_that_hole() -> None:
    ring = Polygon(box(0, 0, 10, 10).exterior, [box(2, 2, 8, 8).exterior])
    pieces = nest([ring, box(4, 4, 6, 6)])
    assert sorted(p.polygon.area for p in pieces) == [4, 64]


def test_many_areas_nest_without_comparing_all_with_all() -> None:
    squares = [box(3 * i, 3 * j, 3 * i + 2, 3 * j + 2) for i in range(60) for j in range(60)]
    holes = [box(3 * i + 0.5, 3 * j + 0.5, 3 * i + 1, 3 * j + 1) for i in range(60) for j in range(60)]
    pieces = nest([*squares, *holes])
    assert len(pieces) == 3600
    assert sum(p.polygon.area for p in pieces) == pytest.approx(3600 * 3.75)
