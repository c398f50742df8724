"""A fit does not depend on where the drawing lies: shifting or turning it shifts or turns the answer.

Shapes like letters, with necks within a few micrometres of the cutter: there the last digits of the
coordinates could decide. Wall distances are compared (area over perimeter), within 2 µm.
"""

from __future__ import annotations

import math
from collections import Counter

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.fit.result import FitResult, ReliefCut
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState, Relief
from inlayfit.geometry.morphology import closed, dilate, opened
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.strategies import examples

WALL_MM = 0.002
SEEN_MM2 = 5e-4
PLAIN_MM2 = 5e-3
NEAR_UM = (0.0, 0.1, 0.3, -0.3, 1.0, 2.5, -2.5, 4.0, -4.0, 20.0, -20.0, 500.0, -500.0)
STATES = (
    (HalfState.TO_CUT, HalfState.TO_CUT),
    (HalfState.ALREADY_CUT, HalfState.TO_CUT),
    (HalfState.TO_CUT, HalfState.ALREADY_CUT),
)


@st.composite
def necked(draw: st.DrawFn, cutter: float) -> Region:
    """Disks joined by strokes as wide as the cutter, or a little more or less."""
    numbers = np.random.default_rng(draw(st.integers(0, 2**32)))
    nodes = [np.zeros(2)]
    parts = [shapely.buffer(shapely.Point(0, 0), cutter * numbers.uniform(0.7, 1.5), quad_segs=32)]
    for off in draw(st.lists(st.sampled_from(NEAR_UM), min_size=1, max_size=4)):
        angle, length = numbers.uniform(0, 2 * math.pi), numbers.uniform(8, 16)
        start = nodes[numbers.integers(len(nodes))]
        end = start + length * np.array([math.cos(angle), math.sin(angle)])
        stroke = shapely.LineString([start, end])
        width = cutter + off / 1000
        parts.append(shapely.buffer(stroke, width / 2, cap_style="square", join_style="mitre"))
        if numbers.random() < 0.7:
            parts.append(
                shapely.buffer(shapely.Point(*end), cutter * numbers.uniform(0.7, 1.6), quad_segs=32)
            )
        nodes.append(end)
    return Region.of(shapely.union_all(parts))


motions = st.builds(
    lambda x, y, angle: Transform.shift(x, y).after(Transform.turn(angle)),
    st.floats(-100, 100),
    st.floats(-100, 100),
    st.one_of(st.just(0.0), st.floats(-3, 3)),
)


def told(result: FitResult) -> tuple[Counter[str], set[str]]:
    """Which findings, and how often; of thin places whether, since neighbours may count as one or two."""
    codes = Counter(finding.code for finding in result.findings)
    thin = {code for code in codes if code.startswith("thin-")}
    for code in thin:
        del codes[code]
    return codes, thin


def loosely_set(cut: ReliefCut, spec: FitSpec) -> float:
    """Area that a T-bone may differ by when the wall it runs along does by a micrometre or two.

    The corner lies one radius r off such a plunge; a wall nearer by e lets it end √(2·r·e) earlier (the
    sagitta of an arc, plane geometry), along the cutter's whole width. Dog-bones end head on.
    """
    radius = (spec.pocket if cut.half is Half.POCKET else spec.plug).radius_mm
    earlier = math.sqrt(2 * radius * 2 * EXACT.cutter_slack_mm)
    return 2 * radius * earlier if cut.kind is Relief.T_BONE else 0.0


def has_the_reliefs_of(one: FitResult, other: FitResult) -> bool:
    """Whether one has as many reliefs as the other has plain ones; at the tip of a film may be one more."""

    def count(result: FitResult, half: Half, least: float) -> int:
        cuts = [cut for cut in result.reliefs if cut.half is half]
        return sum(cut.area_mm2 > least * (PLAIN_MM2 + loosely_set(cut, result.spec)) for cut in cuts)

    return all(count(one, half, 0.5) >= count(other, half, 1.0) for half in Half)


@examples(10, 200)
@given(
    st.sampled_from([2.0, 3.0]).flatmap(lambda cutter: st.tuples(st.just(cutter), necked(cutter))),
    st.sampled_from([1.5, 2.0, 3.0]),
    st.sampled_from([-0.03, 0.0, 0.05, 0.2]),
    st.sampled_from(STATES),
    st.tuples(st.sampled_from(list(Relief)), st.sampled_from(list(Relief))),
    motions,
)
def test_moving_the_drawing_moves_the_answer(
    drawn: tuple[float, Region],
    plug_cutter: float,
    clearance: float,
    states: tuple[HalfState, HalfState],
    reliefs: tuple[Relief, Relief],
    motion: Transform,
) -> None:
    cutter, region = drawn
    spec = FitSpec(
        clearance, HalfSpec(cutter, states[0], reliefs[0]), HalfSpec(plug_cutter, states[1], reliefs[1])
    )
    here, there = solve(region, spec), solve(region.moved(motion), spec)
    for one, other in ((here.pocket, there.pocket), (here.plug, there.plug)):
        apart = abs(one.outline.area - other.outline.area)
        bones = max(sum(loosely_set(cut, spec) for cut in half.reliefs) for half in (one, other))
        assert apart <= WALL_MM * max(one.outline.perimeter, 1.0) + bones
    assert told(here) == told(there)
    assert has_the_reliefs_of(here, there)
    assert has_the_reliefs_of(there, here)
    assert all(cut.area_mm2 > SEEN_MM2 for cut in (*here.reliefs, *there.reliefs))


@pytest.mark.parametrize("shift", [0.0, 1.0, 0.1, 7.7])
def test_growing_never_leaves_a_hole_in_what_was_grown(shift: float) -> None:
    """A neck 2 µm too narrow left films, beside which an offset curve crossed itself."""
    bar = shapely.box(shift, 0, shift + 20, 2.0)
    disks = [shapely.buffer(shapely.Point(shift + x, 1.0), 2.2, quad_segs=32) for x in (0, 20)]
    region = Region.of(shapely.union_all([bar, *disks]))
    for radius in (0.75, 1.0, 1.5):
        assert region.minus(closed(region, radius, EXACT)).area <= EXACT.arc_mm * region.perimeter
        assert opened(region, radius, EXACT).minus(region).area <= EXACT.arc_mm * region.perimeter
        assert dilate(region, radius, EXACT).hole_count == 0
