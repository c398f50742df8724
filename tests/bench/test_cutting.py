"""Passes, directions and feeds; directions against the motion of a tooth."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from inlayfit.bench.cutting import (
    MOST_PASSES,
    Stays,
    Turn,
    contour_turn,
    directed_rings,
    feed_mm_min,
    passes_mm,
    spindle_rpm,
    turn_of,
)
from inlayfit.bench.milling import Milling
from inlayfit.errors import SpecError
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

RADIUS = 1.5


@given(st.floats(0.1, 60), st.floats(0.1, 10), st.floats(0, 0.09))
def test_passes_are_equal_few_and_end_at_the_depth(depth: float, step: float, allowance: float) -> None:
    depths = passes_mm(depth, per_pass_mm=step, floor_allowance_mm=allowance)
    assert depths[-1] == depth
    takes = np.diff([0.0, *depths])
    rough = takes[:-1] if allowance else takes
    assert rough == pytest.approx([rough[0]] * len(rough))
    assert max(takes) <= step * (1 + 1e-6)
    if allowance:
        assert takes[-1] == pytest.approx(allowance, abs=1e-9)
    if len(rough) > 1:
        assert (depth - allowance) / (len(rough) - 1) > step


def test_passes_by_hand() -> None:
    assert passes_mm(3.0, per_pass_mm=1.0) == pytest.approx((1, 2, 3))
    assert passes_mm(0.3, per_pass_mm=0.1) == pytest.approx((0.1, 0.2, 0.3))  # 0.3 / 0.1 is not quite 3
    assert passes_mm(3.0, per_pass_mm=0.8, floor_allowance_mm=0.2) == pytest.approx((0.7, 1.4, 2.1, 2.8, 3.0))
    assert passes_mm(0.5, per_pass_mm=2.0) == (0.5,)


@pytest.mark.parametrize(
    ("depth", "step", "allowance"),
    [
        (0, 1, 0),
        (1, 0, 0),
        (-1, 1, 0),
        (math.nan, 1, 0),
        (1, math.inf, 0),
        (3, 1, 3),
        (3, 1, -0.1),
        (3, 0.1, 0.2),
        (1, 1e-9, 0),
        (1e9, 1e-300, 0),
    ],
)
def test_depths_that_make_no_sense_are_refused(depth: float, step: float, allowance: float) -> None:
    with pytest.raises(SpecError):
        passes_mm(depth, per_pass_mm=step, floor_allowance_mm=allowance)


def test_most_passes_is_still_allowed() -> None:
    assert len(passes_mm(MOST_PASSES * 1.0, per_pass_mm=1.0)) == MOST_PASSES


# --- direction ---------------------------------------------------------------------------------------


def chip_when_a_tooth_meets_the_wall(
    ring: Points, at: int, material: BaseGeometry, *, clockwise_spindle: bool
) -> tuple[float, float]:
    """Chip thickness where a tooth enters the material that is left, and where it leaves it.

    The cutter stands beside the ring's segment `at`, on the side without material, and feeds along it. A
    tooth is followed once round; in the material its chip is the feed's share along the tooth's radius
    (feed per tooth times the cosine of the angle between them). Only the last third of a radius towards the
    wall is not cut yet.
    """
    start, end = ring[at], ring[(at + 1) % len(ring)]
    along = (end - start) / np.linalg.norm(end - start)
    normal = np.array([-along[1], along[0]])
    if material.contains(Point((start + end) / 2 + 1e-3 * normal)):
        normal = -normal
    sign = -1.0 if clockwise_spindle else 1.0
    first = math.atan2(*(-along)[::-1])  # behind the cutter, where everything is cut
    angles = first + sign * np.linspace(0, 2 * math.pi, 721)
    radial = np.column_stack([np.cos(angles), np.sin(angles)])
    ahead = radial @ along
    beside = -(radial @ normal) * RADIUS  # towards the wall
    in_stock = (ahead > 1e-3) & (beside > RADIUS * 2 / 3)
    chips = ahead[in_stock]
    assert len(chips) > 10
    return float(chips[0]), float(chips[-1])


L_SHAPE = Polygon([(0, 0), (40, 0), (40, 12), (14, 12), (14, 30), (0, 30)])


@pytest.mark.parametrize("clockwise_spindle", [True, False])
@pytest.mark.parametrize("milling", list(Milling))
@pytest.mark.parametrize("stays", list(Stays))
def test_climb_starts_thick_and_conventional_starts_thin(
    milling: Milling, stays: Stays, clockwise_spindle: bool
) -> None:
    # Cutter makers' guides: a climb chip starts thick, a conventional one starts at nothing and rubs first.
    shape = L_SHAPE.difference(Polygon([(4, 4), (10, 4), (10, 9), (4, 9)]))
    material = shape if stays is Stays.INSIDE else box(-50, -50, 90, 80).difference(shape)
    rings = directed_rings(Region.of(shape), milling, stays=stays, clockwise_spindle=clockwise_spindle)
    assert len(rings) == 2
    for ring in rings:
        for at in range(len(ring)):
            enters, leaves = chip_when_a_tooth_meets_the_wall(
                ring, at, material, clockwise_spindle=clockwise_spindle
            )
            assert (enters > leaves) == (milling is Milling.CLIMB)


def test_the_rule_as_written() -> None:
    assert contour_turn(Milling.CLIMB, Stays.INSIDE) is Turn.CLOCKWISE
    assert contour_turn(Milling.CLIMB, Stays.OUTSIDE) is Turn.COUNTER_CLOCKWISE
    assert contour_turn(Milling.CONVENTIONAL, Stays.INSIDE) is Turn.COUNTER_CLOCKWISE
    assert contour_turn(Milling.CONVENTIONAL, Stays.OUTSIDE) is Turn.CLOCKWISE


@given(st.sampled_from(Milling), st.sampled_from(Stays), st.booleans())
def test_rings_run_as_the_rule_says_and_holes_the_other_way(
    milling: Milling, stays: Stays, clockwise: bool
) -> None:
    hole = Polygon([(4, 4), (10, 4), (10, 9), (4, 9)])
    region = Region.of(L_SHAPE.difference(hole))
    outer, inner = directed_rings(region, milling, stays=stays, clockwise_spindle=clockwise)
    other = Stays.OUTSIDE if stays is Stays.INSIDE else Stays.INSIDE
    assert turn_of(outer) is contour_turn(milling, stays, clockwise_spindle=clockwise)
    assert turn_of(inner) is contour_turn(milling, other, clockwise_spindle=clockwise)
    assert Region.of_ring(outer, [inner]).area == pytest.approx(region.area)


def test_a_ring_far_from_the_origin_still_has_a_turn() -> None:
    ring = np.array([(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)]) + 1e6
    assert turn_of(ring) is Turn.COUNTER_CLOCKWISE
    assert turn_of(ring[::-1]) is Turn.CLOCKWISE
    with pytest.raises(SpecError):
        turn_of(np.array([(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)]))


# --- feeds -------------------------------------------------------------------------------------------


def test_speed_and_feed_are_as_the_catalogues_print_them() -> None:
    # A tool maker's catalogue: vc 262, D 125: 667 rpm; z 8, fz 0.24: 1281 mm/min.
    assert round(spindle_rpm(262, cutter_mm=125)) == 667
    assert round(feed_mm_min(667, teeth=8, chip_mm=0.24)) == 1281
    # A second maker: vc 200, D 125: 510 rpm (rounded); z 8, fz 0.2: 816 mm/min.
    assert spindle_rpm(200, cutter_mm=125) == pytest.approx(510, abs=1)
    assert feed_mm_min(510, teeth=8, chip_mm=0.2) == pytest.approx(816)
    # A cutter supplier: two teeth, 0.1 mm, 18 000 rpm: 3 600 mm/min.
    assert feed_mm_min(18_000, teeth=2, chip_mm=0.1) == pytest.approx(3600)


@pytest.mark.parametrize("bad", [0.0, -1.0, math.nan, math.inf])
def test_feeds_of_nonsense_are_refused(bad: float) -> None:
    with pytest.raises(SpecError):
        spindle_rpm(bad, cutter_mm=3)
    with pytest.raises(SpecError):
        spindle_rpm(100, cutter_mm=bad)
    with pytest.raises(SpecError):
        feed_mm_min(1000, teeth=2, chip_mm=bad)
