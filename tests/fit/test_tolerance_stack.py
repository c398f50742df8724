"""Sums of errors against closed forms, ISO 286 rows and parts cut one by one."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import norm

from inlayfit.bench.limits import fit_limits
from inlayfit.errors import SpecError
from inlayfit.fit.tolerance_stack import (
    SAMPLES,
    SIGMAS_IN_HALF_WIDTH,
    STOP_SENTENCE,
    Contribution,
    CutBy,
    Distribution,
    ToleranceResult,
    WantedZone,
    cutter_diameter,
    cutter_error_effect,
    repeatability,
    runout,
    stop_adjusting,
    temperature,
    thickness,
    tolerance_stack,
)
from inlayfit.geometry.morphology import dilate, erode
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.units import Unit

SNUG = WantedZone(0.0, 0.05)

contributions = st.builds(
    Contribution,
    st.sampled_from(["cutter", "machine", "stock"]),
    st.floats(0, 0.2),
    st.sampled_from(Distribution),
    st.floats(-2, 2),
    st.floats(-0.1, 0.1),
)


def quick(clearance: float, errors: list[Contribution], zone: WantedZone = SNUG) -> ToleranceResult:
    return tolerance_stack(clearance, errors, zone=zone, samples=500)


@given(st.floats(-0.2, 0.5), st.lists(contributions, max_size=6))
def test_root_sum_square_lies_inside_the_worst_case_and_shares_make_one(
    clearance: float, errors: list[Contribution]
) -> None:
    result = quick(clearance, errors)
    (worst_low, worst_high), (low, high) = result.worst_mm, result.root_sum_square_mm
    assert worst_low - 1e-12 <= low <= result.mean_mm <= high <= worst_high + 1e-12
    shares = result.shares
    assert shares.too_tight + shares.wanted + shares.too_loose == pytest.approx(1)
    assert min(shares.too_tight, shares.wanted, shares.too_loose) >= 0
    assert shares.go_in == pytest.approx(1 - shares.too_tight)


@given(st.floats(-0.2, 0.5), st.lists(contributions, max_size=6))
def test_the_worst_case_is_the_worst_of_all_corners(clearance: float, errors: list[Contribution]) -> None:
    corners = [clearance]
    for error in errors:
        ends = (error.shift_mm - error.half_width_mm, error.shift_mm + error.half_width_mm)
        corners = [corner + error.sensitivity * end for corner in corners for end in ends]
    assert quick(clearance, errors).worst_mm == pytest.approx((min(corners), max(corners)), abs=1e-12)


@given(st.floats(-0.2, 0.5), st.lists(contributions, min_size=1, max_size=6), st.randoms())
def test_order_and_splitting_off_a_zero_error_change_nothing(
    clearance: float, errors: list[Contribution], random: object
) -> None:
    result = quick(clearance, errors)
    shuffled = list(errors)
    random.shuffle(shuffled)  # type: ignore[attr-defined]  # hypothesis hands out a random.Random
    other = quick(clearance, [*shuffled, Contribution("nothing", 0.0)])
    assert other.worst_mm == pytest.approx(result.worst_mm, abs=1e-12)
    assert other.root_sum_square_mm == pytest.approx(result.root_sum_square_mm, abs=1e-12)


@given(st.lists(contributions, max_size=4), st.integers(0, 2**32 - 1))
def test_the_same_seed_gives_the_same_shares(errors: list[Contribution], seed: int) -> None:
    first = tolerance_stack(0.02, errors, zone=SNUG, samples=300, seed=seed)
    assert tolerance_stack(0.02, errors, zone=SNUG, samples=300, seed=seed) == first


# --- ISO 286: hole and shaft zones as errors ---------------------------------------------------------


@pytest.mark.parametrize(
    ("size", "name", "least", "greatest"),
    [
        (25, "H7/g6", 7, 41),  # Aeronautical Engineer's Data Book, table 12.6
        (25, "H8/f7", 20, 74),  # the same
        (25, "H11/c11", 110, 370),  # the same
        (34, "H11/c11", 120, 440),  # Shigley, 9th ed., example 7-7
        (50, "H8/f7", 25, 89),  # an encyclopaedia's worked example
        (40, "H7/s6", -59, -18),  # Shigley's solutions, 3-64
        (3, "H7/p6", -12, 4),  # ANSI B4.2, footnote
    ],
)
def test_a_circle_fit_has_the_published_least_and_greatest_clearance(
    size: float, name: str, least: float, greatest: float
) -> None:
    fit = fit_limits(size, name)
    hole = Contribution("hole", fit.hole.half_width_mm, sensitivity=0.5, shift_mm=fit.hole.middle_mm)
    shaft = Contribution("shaft", fit.shaft.half_width_mm, sensitivity=-0.5, shift_mm=fit.shaft.middle_mm)
    overall = [2000 * v for v in quick(0.0, [hole, shaft]).worst_mm]
    assert overall == pytest.approx([least, greatest])


# --- shares ------------------------------------------------------------------------------------------


@settings(max_examples=15)
@given(
    st.floats(-0.05, 0.1),
    st.lists(st.builds(Contribution, st.just("n"), st.floats(0.001, 0.1)), min_size=1, max_size=5),
)
def test_normal_errors_give_the_normal_share(clearance: float, errors: list[Contribution]) -> None:
    # The sum of independent normal errors is normal; scipy.stats.norm gives its shares.
    result = tolerance_stack(clearance, errors, zone=SNUG)
    sigma = math.sqrt(sum(e.half_width_mm**2 for e in errors)) / SIGMAS_IN_HALF_WIDTH
    law = norm(clearance, sigma)
    wanted = float(law.cdf(0.05) - law.cdf(0.0))
    allowed = 5 * math.sqrt(wanted * (1 - wanted) / SAMPLES) + 1e-4
    assert result.shares.wanted == pytest.approx(wanted, abs=allowed)
    assert result.shares.too_tight == pytest.approx(float(law.cdf(0.0)), abs=allowed + 0.005)


@settings(max_examples=10)
@given(st.floats(0.005, 0.1), st.floats(0.005, 0.1), st.floats(-0.05, 0.05))
def test_two_uniform_errors_give_the_trapezoid(one: float, other: float, limit: float) -> None:
    # The sum of two uniform errors has a trapezoid for a density (the convolution of two rectangles).
    errors = [
        Contribution("one", one, Distribution.UNIFORM),
        Contribution("other", other, Distribution.UNIFORM),
    ]
    result = tolerance_stack(0.0, errors, zone=WantedZone(limit, math.inf))
    grid = np.linspace(-one, one, 20001)
    below = np.clip((limit - grid + other) / (2 * other), 0, 1)
    assert result.shares.wanted == pytest.approx(1 - float(below.mean()), abs=0.006)


def test_round_parts_cut_one_by_one_have_the_reckoned_share() -> None:
    # A disc in a round pocket, paths reckoned for 6.00 mm: each part has its cutter and its two cuts; radii
    # follow from where the cutter's edge runs. Its clearance is normal, and the share known in closed form.
    random = np.random.default_rng(7)
    count, drawn, cutter_error, width_error = 100_000, 0.03, 0.03, 0.012
    cutter = 6.0 + random.normal(0, cutter_error / 3, count)
    pocket_path, plug_path = 25.0 - 6.0 / 2, 25.0 - drawn + 6.0 / 2
    pocket = 2 * (pocket_path + cutter / 2) + random.normal(0, width_error / 3, count)
    plug = 2 * (plug_path - cutter / 2) + random.normal(0, width_error / 3, count)
    clearance = (pocket - plug) / 2
    cut = float(((clearance >= 0) & (clearance <= 0.05)).mean())
    errors = [cutter_diameter(cutter_error, cuts=CutBy.BOTH), *repeatability(width_error)]
    shares = tolerance_stack(drawn, errors, zone=SNUG).shares
    sigma = math.sqrt(cutter_error**2 + 2 * (width_error / 2) ** 2) / 3
    exact = float(norm.cdf(0.05, drawn, sigma) - norm.cdf(0.0, drawn, sigma))
    assert shares.wanted == pytest.approx(exact, abs=4 * shares.error)
    assert shares.wanted == pytest.approx(cut, abs=0.006)


# --- the cutter's diameter ---------------------------------------------------------------------------


def test_a_cutter_of_5_95_for_6_costs_0_05_per_side() -> None:
    effect = cutter_error_effect(5.95, 6.0, CutBy.BOTH)
    assert effect.clearance_change_mm == pytest.approx(-0.05)
    assert effect.pocket_wall_mm == pytest.approx(-0.025)
    assert effect.plug_wall_mm == pytest.approx(0.025)
    assert "0.050 mm" in effect.sentence
    assert "pocket comes out small and the plug big" in effect.sentence
    assert "whole error" in effect.sentence


@settings(max_examples=25)
@given(st.floats(1, 8), st.floats(-0.2, 0.2), st.sampled_from(CutBy))
def test_the_cutters_error_moves_the_gap_as_geometry_says(diameter: float, error: float, cuts: CutBy) -> None:
    # The path of the nominal cutter is swept with the real one: the pocket is what the path covers, the plug
    # is what it leaves.
    drawn = Region.of_ring([(0, 0), (40, 0), (40, 30), (0, 30)])
    clearance = 0.3
    pocket_cutter = diameter + (0 if cuts is CutBy.PLUG else error)
    plug_cutter = diameter + (0 if cuts is CutBy.POCKET else error)
    pocket = dilate(erode(drawn, diameter / 2, EXACT), pocket_cutter / 2, EXACT)
    plug = erode(dilate(erode(drawn, clearance, EXACT), diameter / 2, EXACT), plug_cutter / 2, EXACT)
    effect = cutter_error_effect(diameter + error, diameter, cuts)
    gap = (np.array(plug.bounds) - np.array(pocket.bounds)) * [1, 1, -1, -1]
    # Where the cutters differ by less than the chords tell, a corner's chords reach a little over the wall.
    within = EXACT.arc_mm
    assert gap == pytest.approx(np.full(4, clearance + effect.clearance_change_mm), abs=within)
    assert abs(effect.clearance_change_mm) == pytest.approx(cuts.sensitivity * abs(error), abs=1e-12)


def test_one_half_cut_costs_half_the_error() -> None:
    assert cutter_error_effect(5.95, 6.0, CutBy.PLUG).clearance_change_mm == pytest.approx(-0.025)
    assert "plug comes out big" in cutter_error_effect(5.95, 6.0, CutBy.PLUG).sentence
    assert "pocket comes out big" in cutter_error_effect(3.02, 3.0, CutBy.POCKET).sentence
    assert "nothing changes" in cutter_error_effect(3.0, 3.0).sentence
    assert "measures 3.15 mm, not 3.175 mm" in cutter_error_effect(3.15, 3.175).sentence
    assert " in" in cutter_error_effect(3.15, 3.175, unit=Unit.INCH).sentence


@pytest.mark.parametrize(
    ("measured", "nominal"),
    [(0, 6), (6, 0), (-3, 3), (math.nan, 3), (3, math.inf), (3, 6), (25.4, 1), (0.4, 1)],
)
def test_two_diameters_that_are_not_one_cutter_are_refused(measured: float, nominal: float) -> None:
    with pytest.raises(SpecError, match="cutter"):
        cutter_error_effect(measured, nominal)


# --- the usual errors --------------------------------------------------------------------------------


def test_one_cutter_for_both_counts_whole_and_two_cutters_half_each() -> None:
    both = quick(0.1, [cutter_diameter(0.02, cuts=CutBy.BOTH)])
    apart = quick(0.1, [cutter_diameter(0.02, cuts=CutBy.POCKET), cutter_diameter(0.02, cuts=CutBy.PLUG)])
    assert both.worst_mm == pytest.approx((0.08, 0.12))
    assert apart.worst_mm == pytest.approx((0.08, 0.12))
    # One error cannot cancel itself; two may.
    assert both.root_sum_square_mm == pytest.approx((0.08, 0.12))
    assert apart.root_sum_square_mm == pytest.approx((0.1 - 0.02 / math.sqrt(2), 0.1 + 0.02 / math.sqrt(2)))


def test_runout_only_loosens() -> None:
    result = quick(0.03, [runout(0.02, cuts=CutBy.BOTH)])
    assert result.worst_mm == pytest.approx((0.03, 0.05))
    assert result.mean_mm == pytest.approx(0.04)


def test_warmth_follows_the_worked_example() -> None:
    # By hand: 100 mm of plastic in aluminium, Δα 97e-6 per kelvin, 25 K: 0.24 overall, 0.12 per side.
    warm = temperature(25, width_mm=100, expansion_difference_per_k=97e-6)
    assert warm.reach_mm == pytest.approx(0.12125)
    assert warm.sensitivity == -1


def test_thickness_acts_by_the_slope_of_the_wall() -> None:
    assert thickness(0.2, wall_slope=0.02).reach_mm == pytest.approx(0.004)


def test_the_largest_error_is_named() -> None:
    errors = [cutter_diameter(0.02, cuts=CutBy.BOTH), *repeatability(0.01)]
    assert quick(0.03, errors).largest == "cutter diameter, both halves"
    assert quick(0.03, []).largest == ""


# --- when to stop ------------------------------------------------------------------------------------


@given(st.floats(-0.2, 0.2), st.floats(0, 0.2))
def test_one_stops_just_when_the_change_is_inside_the_repeatability(change: float, repeat: float) -> None:
    advice = stop_adjusting(change, repeat)
    assert advice.stop == (abs(change) < repeat or change == 0)
    assert (advice.sentence == STOP_SENTENCE) == advice.stop


def test_the_sentences_of_the_last_step() -> None:
    assert stop_adjusting(0.008, 0.01).sentence == (
        "Stop adjusting: you are inside your machine's repeatability."
    )
    assert stop_adjusting(-0.02, 0.01).sentence == (
        "Take off 0.020 mm per side (0.040 mm overall) of clearance."
    )
    assert stop_adjusting(0.02, 0.01).sentence.startswith("Add 0.020 mm per side")


@pytest.mark.parametrize(
    "build",
    [
        lambda: Contribution("x", -0.1),
        lambda: Contribution("x", math.nan),
        lambda: Contribution("x", 0.1, sensitivity=math.inf),
        lambda: WantedZone(0.05, 0.0),
        lambda: WantedZone(math.nan, 0.0),
        lambda: quick(math.nan, []),
        lambda: tolerance_stack(0.0, [], zone=SNUG, samples=0),
        lambda: tolerance_stack(0.0, [], zone=SNUG, samples=10**9),
        lambda: stop_adjusting(math.nan, 0.01),
        lambda: stop_adjusting(0.01, -0.01),
        lambda: runout(-0.01, cuts=CutBy.BOTH),
        lambda: temperature(-5, width_mm=10, expansion_difference_per_k=1e-6),
        lambda: temperature(math.inf, width_mm=10, expansion_difference_per_k=1e-6),
    ],
)
def test_numbers_that_make_no_sense_are_refused(build: object) -> None:
    with pytest.raises(SpecError):
        build()  # type: ignore[operator]  # a table of lambdas
