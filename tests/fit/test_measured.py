"""Measured pockets: seeded errors come back, useless readings are refused, walls move as they should."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.stats import linregress
from shapely import LineString, MultiPoint, Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from inlayfit.errors import SpecError
from inlayfit.fit.measured import (
    Axis,
    PocketModel,
    Reading,
    apply,
    describe,
    fit_pocket,
    parts_changed,
    with_walls_moved,
)
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from inlayfit.units import Unit

scales = st.floats(-0.01, 0.01)
offsets = st.floats(-0.2, 0.2)
# A pocket like a fat T: 80 wide at the top and 14 at the foot, 60 high in the middle and 16 at the arms.
T_SHAPE = Region.of_ring([(33, 0), (47, 0), (47, 44), (80, 44), (80, 60), (0, 60), (0, 44), (33, 44)])


def seen(axis: Axis, nominal: float, scale: float, offset: float, *, step: float = 0.0) -> Reading:
    measured = nominal * (1 + scale) + offset
    return Reading(axis, nominal, round(measured / step) * step if step else measured)


def chord(region: Region, axis: Axis, at: float) -> float:
    """Width of a region along an axis, at a coordinate of the other one."""
    line = LineString([(-500, at), (500, at)] if axis is Axis.X else [(at, -500), (at, 500)])
    return float(region.shape.intersection(line).length)


# --- the readings ------------------------------------------------------------------------------------


@given(scales, offsets, scales, offsets, st.floats(30, 400), st.floats(2, 10))
def test_two_exact_stations_give_the_seeded_errors(
    scale_x: float, offset_x: float, scale_y: float, offset_y: float, long: float, times: float
) -> None:
    readings = [
        seen(Axis.X, long, scale_x, offset_x),
        seen(Axis.Y, long, scale_y, offset_y),
        seen(Axis.X, long / times, scale_x, offset_x),
        seen(Axis.Y, long / times, scale_y, offset_y),
    ]
    model = fit_pocket(readings)
    found = (model.scale_x, model.offset_x_mm, model.scale_y, model.offset_y_mm)
    assert found == pytest.approx((scale_x, offset_x, scale_y, offset_y), abs=1e-9)
    assert all(abs(residual.off_mm) < 1e-9 for residual in model.residuals)
    assert [residual.reading for residual in model.residuals] == readings


@settings(max_examples=30)
@given(scales, offsets, scales, offsets)
def test_readings_to_a_micrometre_recover_the_real_pocket_to_two(
    scale_x: float, offset_x: float, scale_y: float, offset_y: float
) -> None:
    micrometre = 0.001
    readings = [seen(Axis.X, n, scale_x, offset_x, step=micrometre) for n in (80, 14)]
    readings += [seen(Axis.Y, n, scale_y, offset_y, step=micrometre) for n in (60, 16)]
    model = fit_pocket(readings)
    assert model.offset_x_mm == pytest.approx(offset_x, abs=0.002)
    assert model.offset_y_mm == pytest.approx(offset_y, abs=0.002)
    real = apply(model, T_SHAPE)
    # Measured again in the model, at the stations: the drawing's T keeps its shape, each width its own error.
    for axis, at, nominal, scale, offset in [
        (Axis.X, 52, 80, scale_x, offset_x),
        (Axis.X, 20, 14, scale_x, offset_x),
        (Axis.Y, 40, 60, scale_y, offset_y),
        (Axis.Y, 15, 16, scale_y, offset_y),
    ]:
        assert chord(real, axis, at) == pytest.approx(nominal * (1 + scale) + offset, abs=0.002)
        assert model.predicted_mm(axis, nominal) == pytest.approx(nominal * (1 + scale) + offset, abs=0.002)


@given(
    st.lists(st.floats(5, 200), min_size=3, max_size=8, unique=True),
    scales,
    offsets,
    st.integers(0, 2**32 - 1),
)
def test_least_squares_and_its_intervals_agree_with_a_statistics_library(
    nominals: list[float], scale: float, offset: float, seed: int
) -> None:
    assume(np.std(nominals) > 20)
    noise = np.random.default_rng(seed).uniform(-0.004, 0.004, len(nominals))
    readings = [
        Reading(Axis.X, n, n * (1 + scale) + offset + e) for n, e in zip(nominals, noise, strict=True)
    ]
    readings += [seen(Axis.Y, 50, 0, 0), seen(Axis.Y, 10, 0, 0)]
    model = fit_pocket(readings, repeatability_mm=0.02, offset_matters_mm=1)
    measured = [r.measured_mm for r in readings[: len(nominals)]]
    line = linregress(nominals, measured)
    assert model.scale_x == pytest.approx(line.slope - 1, abs=1e-9)
    assert model.offset_x_mm == pytest.approx(line.intercept, abs=1e-8)
    # polyfit with weights of 1/σ and an unscaled covariance is the fit with a known error of the readings.
    weights = np.full(len(nominals), 1.959964 / 0.02)
    _, covariance = np.polyfit(nominals, measured, 1, w=weights, cov="unscaled")
    halves = 1.959964 * np.sqrt(np.diag(covariance))
    for (low, high), half in zip((model.intervals.scale_x, model.intervals.offset_x_mm), halves, strict=True):
        assert (high - low) / 2 == pytest.approx(half, rel=1e-6)


def test_the_stated_interval_holds_the_truth_as_often_as_it_says() -> None:
    random = np.random.default_rng(11)
    stations = np.array([80.0, 45.0, 14.0])
    held = refused = 0
    for _ in range(600):
        noise = random.normal(0, 0.01 / 1.959964, 3)
        readings = [Reading(Axis.X, n, n * 1.002 - 0.06 + e) for n, e in zip(stations, noise, strict=True)]
        try:
            model = fit_pocket([*readings, seen(Axis.Y, 50, 0, 0), seen(Axis.Y, 10, 0, 0)])
        except SpecError:
            refused += 1
            continue
        low, high = model.intervals.offset_x_mm
        held += low <= -0.06 <= high
    assert 0.92 < held / (600 - refused) < 0.98  # 95 %, three standard errors of 600 trials
    assert refused / 600 < 0.03  # honest readings are doubted once in a hundred


GOOD_Y = [seen(Axis.Y, 50, 0.0, 0.0), seen(Axis.Y, 10, 0.0, 0.0)]


@pytest.mark.parametrize(
    ("x", "says"),
    [
        ([], "X has no readings"),
        ([(80, 80.1)], "X has 1 reading;"),
        ([(80, 80.1), (80, 80.1), (80, 80.11)], "same length"),
        ([(80, 80.1), (79, 79.1)], "only to ±"),
        ([(80, 80.1), (79.99, 82.1)], "only to ±"),
        ([(80, 80.1), (80 + 1e-13, 80.1)], "same length"),
        ([(80, 80.1), (14, 18.0)], "scale"),
        ([(80, 14.1), (14, 80.1)], "scale"),
        ([(80, 80 / 25.4), (14, 14 / 25.4)], "scale"),
        ([(80, 83.0), (14, 17.0)], "another cutter"),
        ([(80, 80.1), (45, 45.3), (14, 14.1)], "do not lie on one line"),
    ],
)
def test_readings_that_cannot_tell_are_refused_in_one_sentence(
    x: list[tuple[float, float]], says: str
) -> None:
    with pytest.raises(SpecError, match=says) as refusal:
        fit_pocket([*(Reading(Axis.X, n, m) for n, m in x), *GOOD_Y])
    assert str(refusal.value).endswith(".")
    assert ";" in str(refusal.value)


def test_the_doubtful_reading_is_named() -> None:
    with pytest.raises(SpecError, match="the one at 45 mm is off by 0"):
        fit_pocket([Reading(Axis.X, 80, 80.1), Reading(Axis.X, 45, 45.3), Reading(Axis.X, 14, 14.1), *GOOD_Y])


@pytest.mark.parametrize(
    "numbers", [(0, 1), (1, 0), (-5, 5), (5, -5), (math.nan, 1), (1, math.inf), (1e300, 1)]
)
def test_a_reading_that_is_no_width_is_refused(numbers: tuple[float, float]) -> None:
    with pytest.raises(SpecError, match="reading in Y"):
        Reading(Axis.Y, *numbers)


@pytest.mark.parametrize("bad", [0.0, -0.01, math.nan, math.inf])
def test_a_repeatability_must_be_stated(bad: float) -> None:
    readings = [seen(Axis.X, 50, 0, 0), seen(Axis.X, 10, 0, 0), *GOOD_Y]
    with pytest.raises(SpecError, match="repeatability"):
        fit_pocket(readings, repeatability_mm=bad)


@given(st.floats(2, 79), st.floats(0.001, 0.03))
def test_what_is_known_too_badly_is_refused_and_the_rest_is_not(short: float, repeatability: float) -> None:
    # Two stations: offset ± r·√(1/2 + x̄²/Sxx), by hand ± r·√(l² + s²)/(l − s).
    known = repeatability * math.hypot(80, short) / (80 - short)
    assume(abs(known - 0.05) > 1e-9)
    readings = [seen(Axis.X, 80, 0.001, 0.02), seen(Axis.X, short, 0.001, 0.02), *GOOD_Y]
    if known > 0.05:
        with pytest.raises(SpecError, match="only to ±"):
            fit_pocket(readings, repeatability_mm=repeatability)
    else:
        low, high = fit_pocket(readings, repeatability_mm=repeatability).intervals.offset_x_mm
        assert (high - low) / 2 == pytest.approx(known)


# --- walls -------------------------------------------------------------------------------------------


@st.composite
def convex_outlines(draw: st.DrawFn) -> Region:
    drawn = st.tuples(st.floats(-30, 30), st.floats(-30, 30))
    points = draw(st.lists(drawn, min_size=5, max_size=12))
    hull = MultiPoint(np.round(points, 6)).convex_hull  # no side is so short that its length is none
    assume(hull.area > 200 and hull.buffer(-3).area > 20)
    return Region.of(hull)


@st.composite
def star_outlines(draw: st.DrawFn) -> Region:
    """A star polygon about the origin, with a hole."""
    radii = draw(st.lists(st.floats(10, 30), min_size=5, max_size=14))
    angles = np.arange(len(radii)) * 2 * math.pi / len(radii) + draw(st.floats(0, 1))
    ring = np.column_stack([radii * np.cos(angles), radii * np.sin(angles)])
    outer = Polygon(ring)
    return Region.of(outer.difference(Point(0, 0).buffer(3)))


def halfplanes_moved(region: Region, x: float, y: float) -> BaseGeometry:
    """A convex outline with each side moved by √(a²nx² + b²ny²) (or its mixed form), by half planes."""
    result: BaseGeometry = box(-500, -500, 500, 500)
    ring = region.rings()[0]
    for start, end in zip(ring, np.roll(ring, -1, axis=0), strict=True):
        along = (end - start) / np.linalg.norm(end - start)
        normal = np.array([along[1], -along[0]])
        if x * y >= 0:
            move = math.copysign(math.hypot(x * normal[0], y * normal[1]), x + y)
        else:
            move = x * abs(normal[0]) + y * abs(normal[1])
        a, b = start - 2000 * along + move * normal, start + 2000 * along + move * normal
        result = result.intersection(Polygon([a, b, b - 3000 * normal, a - 3000 * normal]))
    return result


def support(points: Points, angle: float) -> float:
    return float((points @ np.array([math.cos(angle), math.sin(angle)])).max())


@settings(max_examples=30)
@given(convex_outlines(), st.floats(0.001, 0.5), st.floats(0.001, 0.5))
def test_growing_adds_the_ellipse_in_every_direction(region: Region, x: float, y: float) -> None:
    # The support function of a Minkowski sum is the sum of the two (Schneider, Convex Bodies, theorem 1.7.5).
    grown = with_walls_moved(region, x, y, EXACT)
    before, after = region.rings()[0], grown.rings()[0]
    for angle in np.linspace(0, 2 * math.pi, 73):
        ellipse = math.hypot(x * math.cos(angle), y * math.sin(angle))
        assert support(after, angle) == pytest.approx(support(before, angle) + ellipse, abs=5e-4)


@settings(max_examples=30)
@given(convex_outlines(), st.floats(0, 0.5), st.floats(0, 0.5))
def test_shrinking_moves_each_side_by_its_own_amount(region: Region, x: float, y: float) -> None:
    shrunk = with_walls_moved(region, -x, -y, EXACT)
    assert shrunk.shape.hausdorff_distance(halfplanes_moved(region, -x, -y)) < 2e-3


@settings(max_examples=30)
@given(convex_outlines(), st.floats(0.01, 0.4), st.floats(0.01, 0.4), st.booleans())
def test_with_mixed_signs_a_side_grows_by_one_axis_and_shrinks_by_the_other(
    region: Region, grow: float, shrink: float, along_x: bool
) -> None:
    x, y = (grow, -shrink) if along_x else (-shrink, grow)
    moved = with_walls_moved(region, x, y, EXACT)
    # New sides appear where the stroke moves a corner: compare sides in their own directions only.
    wanted = halfplanes_moved(region, x, y)
    assert moved.shape.buffer(-2e-3).difference(wanted).area < 1e-6
    x0, y0, x1, y1 = region.bounds
    frame = box(x0 - x, y0 - y, x1 + x, y1 + y)
    assert wanted.intersection(frame).buffer(-2e-3).difference(moved.shape).area < 1e-6


@settings(max_examples=30)
@given(star_outlines(), st.floats(0.02, 0.5), st.floats(0.02, 0.5), st.integers(0, 2**32 - 1))
def test_a_point_is_in_the_grown_pocket_just_if_its_ellipse_meets_the_old_one(
    region: Region, x: float, y: float, seed: int
) -> None:
    grown = with_walls_moved(region, x, y, EXACT)
    unit = region.moved(Transform.scale(1 / x, 1 / y)).shape  # the ellipse is a disk of radius 1 there
    random = np.random.default_rng(seed)
    rings = np.vstack(region.rings())
    near = rings[random.integers(0, len(rings), 60)] + random.normal(0, 0.5, (60, 2))
    for point in near:
        reach = float(unit.distance(Point(point / [x, y]))) - 1
        if abs(reach) * min(x, y) > 1e-3:
            assert grown.shape.contains(Point(point)) == (reach < 0)


@settings(max_examples=30)
@given(star_outlines(), st.floats(-0.4, 0.4), st.floats(-0.4, 0.4))
def test_growing_a_pocket_is_shrinking_what_is_round_it(region: Region, x: float, y: float) -> None:
    assume(x * y >= 0)
    frame = Region.of(box(-100, -100, 100, 100))
    outside = with_walls_moved(frame.minus(region), -x, -y, EXACT)
    moved = with_walls_moved(region, x, y, EXACT)
    inner = box(-90, -90, 90, 90)
    both = Region.of(inner).minus(outside)
    assert moved.shape.symmetric_difference(both.shape).area < 1e-3 * moved.perimeter


@settings(max_examples=20)
@given(star_outlines(), st.floats(-0.3, 0.3), st.floats(-0.3, 0.3))
def test_moving_walls_commutes_with_a_quarter_turn_and_a_mirror(region: Region, x: float, y: float) -> None:
    swap = Transform(0, 1, 1, 0)
    for change, pair in ((swap, (y, x)), (Transform.mirror_x(), (x, y))):
        one = with_walls_moved(region, x, y, EXACT).moved(change)
        other = with_walls_moved(region.moved(change), *pair, EXACT)
        assert one.shape.symmetric_difference(other.shape).area < 1e-3 * one.perimeter


@pytest.mark.parametrize("pair", [(0.2, 0.1), (-0.2, -0.1), (0.2, -0.1), (-0.2, 0.1), (0.2, 0), (0, -0.2)])
def test_upright_walls_of_a_t_move_by_their_own_axis(pair: tuple[float, float]) -> None:
    x, y = pair
    moved = with_walls_moved(T_SHAPE, x, y, EXACT)
    widths = [
        chord(moved, Axis.X, 52),
        chord(moved, Axis.X, 20),
        chord(moved, Axis.Y, 40),
        chord(moved, Axis.Y, 9),
    ]
    assert widths == pytest.approx([80 + 2 * x, 14 + 2 * x, 60 + 2 * y, 16 + 2 * y], abs=5e-7)
    assert moved.bounds == pytest.approx((-x, -y, 80 + x, 60 + y), abs=5e-7)


def test_an_island_shrinks_when_its_pocket_grows() -> None:
    ring = Region.of(box(0, 0, 40, 30).difference(box(15, 10, 25, 20)))
    moved = with_walls_moved(ring, 0.2, -0.1, EXACT)
    (_, inner) = moved.rings()
    assert np.ptp(inner, axis=0) == pytest.approx([10 - 0.4, 10 + 0.2], abs=1e-6)


def test_scale_acts_about_the_middle_and_nothing_changes_nothing() -> None:
    readings = [seen(Axis.X, n, 0.004, 0) for n in (80, 14)] + [seen(Axis.Y, n, -0.002, 0) for n in (60, 16)]
    scaled = apply(fit_pocket(readings), T_SHAPE)
    assert scaled.bounds == pytest.approx((-0.16, 0.06, 80.16, 59.94), abs=1e-6)
    same = fit_pocket([seen(Axis.X, 80, 0, 0), seen(Axis.X, 14, 0, 0), *GOOD_Y])
    assert apply(same, T_SHAPE).shape.equals(T_SHAPE.shape)
    assert apply(same, Region.empty()).is_empty


def moving(x: float, y: float) -> PocketModel:
    """A model with these overall offsets."""
    pairs = [(Axis.X, 80, x), (Axis.X, 14, x), (Axis.Y, 60, y), (Axis.Y, 16, y)]
    return fit_pocket([seen(axis, nominal, 0, offset) for axis, nominal, offset in pairs])


def test_a_pocket_that_would_vanish_is_refused_and_one_that_splits_is_a_finding() -> None:
    with pytest.raises(SpecError, match="nothing is left"):
        apply(moving(-1.5, -1.5), Region.of_ring([(0, 0), (1, 0), (1, 40), (0, 40)]))
    barbell = Region.of(box(0, 0, 10, 10).union(box(20, 0, 30, 10)).union(box(10, 4.6, 20, 5.4)))
    split = apply(moving(-1.0, -1.0), barbell)
    (finding,) = parts_changed(barbell, split)
    assert finding.code == "measured-pocket-parts-changed"
    assert "2 pieces and 0 islands where the drawing has 1 piece and 0 islands" in finding.message
    assert parts_changed(barbell, barbell) == ()


def test_the_sentences_give_per_side_and_overall() -> None:
    x, y = describe(moving(-0.04, 0.0))
    assert x.startswith("X: 0.020 mm per side (0.040 mm overall) smaller at every length")
    assert y.startswith("Y: 0.000 mm per side (0.000 mm overall) larger")
    assert " in " in describe(moving(-0.04, 0.0), unit=Unit.INCH)[0]
