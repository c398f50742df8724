"""Where a made plug sits: an eroded plug finds its way back, whatever way it was pushed.

Checked against what is known without the search: an eroded plug's only seat is where it was eroded, a disk in
a round hole has R − r all round, and shapely's own distance between the walls is the gap it claims.
"""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.errors import SpecError
from inlayfit.finding import Severity
from inlayfit.fit.seating import Seat, seat, seated_finding
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.morphology import erode
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.strategies import examples, regions

MICROMETRE = 0.001


def off_mm(place: Seat, moved_by: tuple[float, float]) -> float:
    return math.hypot(place.shift_mm[0] + moved_by[0], place.shift_mm[1] + moved_by[1])


def whole_erosion(pocket: Region, clearance: float) -> Region | None:
    """The pocket eroded, or None where that loses a piece."""
    plug = erode(pocket, clearance, EXACT)
    return plug if len(plug.polygons) == len(pocket.polygons) else None


def disk(radius: float, x: float = 0.0, y: float = 0.0) -> Region:
    return Region.of_ring(flatten(Path.circle((x, y), radius), EXACT.arc_mm))


@examples(20, 200)
@given(regions(), st.floats(0.01, 0.3), st.floats(0, 1), st.floats(-math.pi, math.pi), st.booleans())
def test_a_plug_moved_by_up_to_its_clearance_is_seated_back(
    pocket: Region, clearance: float, share: float, angle: float, elsewhere: bool
) -> None:
    plug = whole_erosion(pocket, clearance)
    if plug is None:
        return
    by = (clearance * share * math.cos(angle), clearance * share * math.sin(angle))
    if elsewhere:  # on another place of its sheet
        by = (by[0] + 130.0, by[1] - 45.0)
    place = seat(pocket, plug.moved(Transform.shift(*by)))
    assert off_mm(place, by) <= MICROMETRE
    assert place.turn_rad == 0
    assert place.gap_mm == pytest.approx(clearance, abs=MICROMETRE)


@examples(4, 60)
@given(regions(), st.floats(0.05, 0.3), st.floats(-0.02, 0.02))
def test_a_turned_plug_is_turned_back_if_that_is_asked_for(
    pocket: Region, clearance: float, angle: float
) -> None:
    """The smallest gap at the seat is never less than at the place it was eroded from."""
    plug = whole_erosion(pocket, clearance)
    if plug is None:
        return
    x, y = plug.shape.centroid.x, plug.shape.centroid.y
    about = Transform.shift(x, y).after(Transform.turn(angle)).after(Transform.shift(-x, -y))
    turned = plug.moved(about)
    seated = turned.moved(seat(pocket, turned, may_turn=True).motion)
    assert shapely.within(seated.shape, pocket.shape)
    assert seated.shape.boundary.distance(pocket.shape.boundary) >= clearance - MICROMETRE


@examples(10, 100)
@given(regions(), st.floats(0.02, 0.3), st.floats(0, 0.9), st.floats(-math.pi, math.pi))
def test_seating_moves_and_never_changes_the_plug(
    pocket: Region, clearance: float, share: float, angle: float
) -> None:
    plug = whole_erosion(pocket, clearance)
    if plug is None:
        return
    moved = plug.moved(Transform.shift(share * math.cos(angle), share * math.sin(angle)))
    place = seat(pocket, moved)
    seated = moved.moved(place.motion)
    assert seated.area == pytest.approx(plug.area, rel=1e-9)
    gap = seated.shape.boundary.distance(pocket.shape.boundary)
    assert gap == pytest.approx(abs(place.gap_mm), abs=1e-6)


def test_of_seats_that_are_alike_the_least_turned_one_is_taken() -> None:
    """A square goes in four ways; turned by 2° it is turned back by 2°, not by 92°."""
    pocket = Region.of_ring([(0, 0), (20, 0), (20, 20), (0, 20)])
    about = Transform.shift(40, 10).after(Transform.turn(math.radians(2))).after(Transform.shift(-10, -10))
    place = seat(pocket, erode(pocket, 0.05, EXACT).moved(about), may_turn=True)
    assert math.degrees(place.turn_rad) == pytest.approx(-2, abs=0.01)
    assert place.gap_mm == pytest.approx(0.05, abs=MICROMETRE)


def test_a_disk_sits_in_the_middle_of_a_round_hole() -> None:
    place = seat(disk(10.0, 3.0, 4.0), disk(9.7, 60.0, -20.0))
    assert (place.shift_mm[0] + 57, place.shift_mm[1] - 24) == pytest.approx((0, 0), abs=MICROMETRE)
    assert place.gap_mm == pytest.approx(0.3, abs=MICROMETRE)


def test_a_disk_that_is_too_large_bites_evenly() -> None:
    place = seat(disk(10.0), disk(10.2, 0.05, 0.0))
    assert place.gap_mm == pytest.approx(-0.2, abs=MICROMETRE)
    assert place.shift_mm[0] == pytest.approx(-0.05, abs=MICROMETRE)


def test_a_plug_that_may_slide_stays_where_it_lay() -> None:
    """A block 10 long in a slot 30 long has 0.1 above and below wherever it lies."""
    slot = Region.of_ring([(0, 0), (30, 0), (30, 5), (0, 5)])
    block = Region.of_ring([(7, 0.02), (17, 0.02), (17, 4.82), (7, 4.82)])
    place = seat(slot, block)
    assert place.gap_mm == pytest.approx(0.1, abs=1e-6)
    assert place.shift_mm[1] == pytest.approx(0.08, abs=1e-6)
    seated = block.moved(place.motion)
    assert seated.bounds[0] > 0.1 - 1e-6
    assert seated.bounds[2] < 29.9 + 1e-6


def test_a_plug_in_its_seat_is_left_there_without_a_word() -> None:
    pocket = Region.of_ring([(0, 0), (30, 0), (30, 12), (11, 12), (11, 20), (0, 20)])
    place = seat(pocket, erode(pocket, 0.05, EXACT))
    assert not place.is_moved
    assert seated_finding(place) is None


def test_a_move_is_told() -> None:
    finding = seated_finding(Seat((0.03, -1.5), math.radians(2), (0, 0), 0.05))
    assert finding is not None
    assert finding.severity is Severity.NOTE
    assert "0.030 mm in X and −1.500 mm in Y and turned by 2.000°" in finding.message


def test_nothing_cannot_be_seated() -> None:
    with pytest.raises(SpecError, match="both outlines"):
        seat(disk(5), Region.empty())
