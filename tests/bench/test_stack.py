"""Laws of the stack, and the floor fillet against brute force."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, box
from shapely.affinity import translate

from inlayfit.bench.stack import (
    BARE,
    BuildUp,
    Height,
    Met,
    Spread,
    Stack,
    Target,
    compressed_mm,
    edge_break_needed_mm,
    fillet_height_mm,
    height_word,
    hold_up_mm,
    verdict,
)
from inlayfit.errors import SpecError
from inlayfit.units import Unit

films = st.floats(0, 0.2)
heights = st.floats(0.5, 10)
small = st.floats(0, 0.5)


def spreads(middle: st.SearchStrategy[float]) -> st.SearchStrategy[Spread]:
    return st.lists(middle, min_size=1, max_size=5).map(Spread.of)


stacks = st.builds(
    Stack,
    spreads(heights),
    spreads(heights),
    spreads(small),
    st.builds(BuildUp, films, films, films, films, films, films),
    small,
)


def bare(plug: float = 3.0, depth: float = 3.0, **more: object) -> Stack:
    return Stack(Spread.exact(plug), Spread.exact(depth), **more)  # type: ignore[arg-type]  # test shorthand


@given(films, heights, heights)
def test_coating_rim_and_floor_leaves_the_height_and_closes_the_width_by_two(
    film: float, plug: float, depth: float
) -> None:
    coat = BuildUp.host(film)
    assert bare(plug, depth, build_up=coat).proud.middle_mm == pytest.approx(plug - depth)
    assert coat.depth_change_mm == 0
    assert coat.pocket_width_change_mm == -2 * film
    assert coat.clearance_change_mm == -film


@given(films, films)
def test_each_way_of_coating_moves_the_height_as_reckoned_by_hand(host: float, plug: float) -> None:
    # Acceptance: host only, plug only, both, masked floor. 3.00 in 3.00 is flush when bare.
    both = BuildUp.host(host).with_coat(BuildUp.plug(plug))
    cases = {
        BARE: 0.0,
        BuildUp.host(host): 0.0,
        BuildUp.plug(plug): 2 * plug,
        both: 2 * plug,
        BuildUp.host(host, floor_masked=True): -host,
        BuildUp.host(host, floor_masked=True).with_coat(BuildUp.plug(plug)): 2 * plug - host,
    }
    for coat, proud in cases.items():
        assert bare(build_up=coat).proud.middle_mm == pytest.approx(proud, abs=1e-12)
    assert both.clearance_change_mm == pytest.approx(-(host + plug))
    assert both.clearance_change_mm == pytest.approx(
        (both.pocket_width_change_mm - both.plug_width_change_mm) / 2
    )


def test_a_film_of_50_um_that_grows_half_outwards_closes_a_hole_by_50_um() -> None:
    # A European hard-anodiser's page: 50 µm of film, +25 µm on a flat; make the hole 50 µm larger.
    assert BuildUp.host(0.025).pocket_width_change_mm == pytest.approx(-0.05)
    # A finisher's page: a plate 1.000 in thick with 0.002 in of film ends 1.002 in thick.
    assert BuildUp.plug(0.001 * 25.4).thickness_change_mm == pytest.approx(0.002 * 25.4)


def test_the_worked_sum_of_the_bench_question() -> None:
    stack = Stack(
        Spread.of([3.04, 3.05, 3.06]),
        Spread.of([3.13, 3.10, 3.12, 3.13]),
        Spread.plus_minus(compressed_mm(0.1, 0.2), 0.01),
    )
    assert stack.proud.middle_mm == pytest.approx(3.05 + 0.08 - 3.12)
    assert stack.proud.low_mm == pytest.approx(3.04 + 0.07 - 3.13)
    assert stack.proud.high_mm == pytest.approx(3.06 + 0.09 - 3.10)


@given(stacks, st.integers(0, 2**32 - 1))
def test_no_combination_inside_the_spreads_leaves_the_answer(stack: Stack, seed: int) -> None:
    random = np.random.default_rng(seed)

    def pick(spread: Spread) -> float:
        return float(random.uniform(spread.low_mm, spread.high_mm))

    coat = stack.build_up
    top = max(pick(stack.bed), stack.hold_up_mm) + pick(stack.plug) + coat.top_mm + coat.bottom_mm
    face = pick(stack.depth) + coat.rim_mm - coat.floor_mm
    assert stack.proud.low_mm - 1e-12 <= top - face <= stack.proud.high_mm + 1e-12
    assert stack.proud.low_mm <= stack.proud.middle_mm <= stack.proud.high_mm


def test_tape_thicker_than_the_hold_up_hides_it() -> None:
    assert bare(bed=Spread.exact(0.3), hold_up_mm=0.2).proud.middle_mm == pytest.approx(0.3)
    assert bare(bed=Spread.exact(0.1), hold_up_mm=0.2).proud.middle_mm == pytest.approx(0.2)
    assert bare(bed=Spread.exact(0.1), hold_up_mm=0.2).held_by_fillet


# --- the floor fillet --------------------------------------------------------------------------------


def brute_hold_up(radius: float, chamfer: float, side: float) -> float:
    """Lower a plug's section into a pocket's section until they overlap: bisection on polygon areas."""
    angles = np.linspace(math.pi, 1.5 * math.pi, 1001)
    arc = np.column_stack([radius + radius * np.cos(angles), radius + radius * np.sin(angles)])
    fillet = Polygon([*arc, (0.0, 0.0)])
    host = fillet.union(box(-5, -5, 0, 20)).union(box(-5, -5, 20, 0))
    plug = Polygon([(side, chamfer), (side + chamfer, 0), (15, 0), (15, 15), (side, 15)])
    low, high = 0.0, radius + chamfer + 1
    for _ in range(40):
        middle = (low + high) / 2
        if host.intersection(translate(plug, 0, middle)).area > 1e-13:
            low = middle
        else:
            high = middle
    return high


@given(st.floats(0.05, 2), st.floats(0.001, 2), st.floats(0, 2))
def test_hold_up_is_what_brute_force_finds(radius: float, chamfer: float, side: float) -> None:
    found = brute_hold_up(radius, chamfer, side)
    # Where the fillet leaves the wall, an overlap of 1e-13 mm² is up to 0.1 µm deep.
    assert hold_up_mm(radius, edge_break_mm=chamfer, clearance_mm=side) == pytest.approx(found, abs=2e-4)


@given(st.floats(0.01, 3), st.floats(-0.2, 3))
def test_edge_break_and_clearance_together_reach_the_radius(radius: float, clearance: float) -> None:
    needed = edge_break_needed_mm(radius, clearance_mm=clearance)
    assert hold_up_mm(radius, edge_break_mm=needed, clearance_mm=clearance) == pytest.approx(0, abs=1e-6)
    if needed > 0.002:
        assert hold_up_mm(radius, edge_break_mm=0.9 * needed, clearance_mm=clearance) > 0


@given(st.floats(0.01, 3), st.floats(0, 3), st.floats(0, 3), st.floats(0, 1), st.floats(0, 1))
def test_a_wider_break_or_more_clearance_never_holds_higher(
    radius: float, chamfer: float, side: float, more: float, wider: float
) -> None:
    first = hold_up_mm(radius, edge_break_mm=chamfer, clearance_mm=side)
    assert hold_up_mm(radius, edge_break_mm=chamfer + more, clearance_mm=side + wider) <= first + 1e-12
    assert 0 <= first <= radius


def test_a_sharp_edge_against_the_wall_stands_on_the_top_of_the_fillet() -> None:
    # A quarter circle is at the wall as high as its radius, and at r·(1 − 1/√2) as high as it is far.
    assert hold_up_mm(0.5, edge_break_mm=0, clearance_mm=0) == 0.5
    assert hold_up_mm(0.5, edge_break_mm=0, clearance_mm=-0.02) == 0.5
    half_way = 0.5 * (1 - math.sqrt(0.5))
    assert fillet_height_mm(half_way, 0.5) == pytest.approx(half_way)


# --- the verdict -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("plug", "target", "met", "height"),
    [
        ([3.02, 3.03], Target(Height.FLUSH, 0, 0.05), Met.SURE, Height.FLUSH),
        ([2.98, 3.12], Target(Height.FLUSH, 0, 0.05), Met.LIKELY, Height.FLUSH),
        ([3.19, 3.21], Target(Height.PROUD, 0.2, 0.05), Met.SURE, Height.PROUD),
        ([3.2], Target(Height.BELOW, 0.2, 0.05), Met.MISSED, Height.PROUD),
        ([2.8], Target(Height.BELOW, 0.2, 0.0), Met.SURE, Height.BELOW),
        ([2.8], Target(Height.FLUSH, 0, 0.05), Met.MISSED, Height.BELOW),
        ([3.05], Target(Height.FLUSH, 0, 0.05), Met.SURE, Height.FLUSH),
    ],
)
def test_a_verdict_tells_where_the_plug_is_and_how_surely(
    plug: list[float], target: Target, met: Met, height: Height
) -> None:
    answer = verdict(Stack(Spread.of(plug), Spread.exact(3.0)), target)
    assert (answer.met, answer.height) == (met, height)
    assert answer.off_mm == pytest.approx(sum(plug) / len(plug) - 3.0 - target.aim_mm)


def test_a_missed_target_says_what_to_do() -> None:
    assert "shim" in verdict(bare(2.8), Target()).sentence
    assert "deeper" in verdict(bare(3.2), Target()).sentence
    assert "lower edge" in verdict(bare(3.0, hold_up_mm=0.2), Target()).sentence
    assert "0.2" in verdict(bare(3.2), Target(), unit=Unit.MM).sentence
    assert " in " in verdict(bare(3.2), Target(), unit=Unit.INCH).sentence


@given(st.floats(-1, 1), st.floats(0, 0.3))
def test_a_mirrored_height_has_the_mirrored_word(proud: float, tolerance: float) -> None:
    mirrored = {Height.PROUD: Height.BELOW, Height.BELOW: Height.PROUD, Height.FLUSH: Height.FLUSH}
    assert height_word(-proud, tolerance) is mirrored[height_word(proud, tolerance)]


@pytest.mark.parametrize(
    "build",
    [
        lambda: Spread.of([]),
        lambda: Spread.of([math.nan]),
        lambda: Spread(2, 1, 3),
        lambda: BuildUp(rim_mm=-0.01),
        lambda: BuildUp(floor_mm=math.inf),
        lambda: bare(plug=0),
        lambda: bare(bed=Spread.exact(-0.1)),
        lambda: bare(hold_up_mm=math.nan),
        lambda: Target(Height.FLUSH, 0.1),
        lambda: Target(Height.PROUD, 0),
        lambda: Target(Height.PROUD, -0.1),
        lambda: Target(Height.PROUD, math.nan),
        lambda: compressed_mm(0.1, 1.0),
        lambda: compressed_mm(-0.1, 0.0),
        lambda: hold_up_mm(-1, edge_break_mm=0, clearance_mm=0),
        lambda: hold_up_mm(1, edge_break_mm=math.nan, clearance_mm=0),
    ],
)
def test_numbers_that_make_no_sense_are_refused(build: object) -> None:
    with pytest.raises(SpecError):
        build()  # type: ignore[operator]  # a table of lambdas
