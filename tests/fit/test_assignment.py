"""Which plug belongs to which pocket: found again however the plugs were shuffled, shifted and turned.

The right answer is known because each plug is its pocket eroded (`shapely.buffer`, independent of the fit).
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.fit.assignment import assigned, other_way
from inlayfit.fit.likeness import Signature, kinds
from inlayfit.fit.orientation import Motion
from inlayfit.fit.seating import closeness
from inlayfit.fit.spec import Seating
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform
from tests.strategies import examples, regions

ELL = Region.of_ring([(0, 0), (30, 0), (30, 8), (12, 8), (12, 22), (0, 22)])


def square(size: float) -> Region:
    return Region.of_ring([(0, 0), (size, 0), (size, size), (0, size)])


def plug_of(pocket: Region, clearance: float) -> Region:
    return Region.of(shapely.buffer(pocket.shape, -clearance, join_style="mitre"))


def spread(outlines: list[Region]) -> list[Region]:
    """On a sheet, none upon another."""
    return [each.moved(Transform.shift(70 * (n % 6), -70 * (n // 6))) for n, each in enumerate(outlines)]


def elsewhere(outline: Region, numbers: np.random.Generator, *, turned: bool) -> Region:
    turn = Transform.turn(numbers.uniform(-math.pi, math.pi)) if turned else Transform()
    dx, dy = numbers.uniform(-500, 500, 2)
    return outline.moved(Transform.shift(float(dx), float(dy)).after(turn))


def shape_numbers(outlines: list[Region]) -> list[int]:
    return [int(kind) for kind in kinds([Signature(each) for each in outlines], may_turn=True)]


@examples(12, 100)
@given(
    st.lists(regions(), min_size=2, max_size=6),
    st.integers(0, 2),
    st.floats(0.02, 0.2),
    st.sampled_from([Seating.SHIFT, Seating.TURN]),
    st.integers(0, 10_000),
)
def test_shuffled_and_moved_plugs_find_their_pockets(
    shapes: list[Region], twins: int, clearance: float, seating: Seating, seed: int
) -> None:
    numbers = np.random.default_rng(seed)
    pockets = spread([*shapes, *shapes[:twins]])
    plugs = [plug_of(pocket, clearance) for pocket in pockets]
    if any(plug.ring_count != pocket.ring_count for plug, pocket in zip(plugs, pockets, strict=True)):
        return
    order = numbers.permutation(len(pockets)).tolist()
    moved = [elsewhere(plugs[k], numbers, turned=seating is Seating.TURN) for k in order]
    found = assigned(pockets, moved, clearance_mm=0.05, seating=seating)
    kind = shape_numbers(pockets)
    assert len(found.pairs) == len(pockets)
    assert [kind[order[pair.plug]] for pair in found.pairs] == kind
    assert all(pair.other_way is None for pair in found.pairs)


def test_fifty_of_nearly_the_same_size_are_told_apart_and_few_of_their_pairs_are_seated(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Of 2,500 pairs only those that can matter are worth a seat, which is what takes long."""
    seated: list[object] = []

    def counted(*asked: Any, **how: Any) -> object:
        seated.append(asked)
        return closeness(*asked, **how)

    monkeypatch.setattr("inlayfit.fit.assignment.closeness", counted)
    numbers = np.random.default_rng(5)
    pockets = spread([square(20 + 0.05 * step) for step in range(50)])
    order = numbers.permutation(50).tolist()
    plugs = [elsewhere(plug_of(pockets[k], 0.1), numbers, turned=False) for k in order]
    found = assigned(pockets, plugs, clearance_mm=0.05, seating=Seating.SHIFT)
    assert 50 <= len(seated) <= 400
    assert [order[pair.plug] for pair in found.pairs] == list(range(50))
    assert found.exchangeable == found.doubtful == ()


def test_feet_that_are_alike_keep_the_order_and_those_that_lie_in_their_pockets_stay_there() -> None:
    feet = spread([square(12)] * 10)
    apart = [plug_of(foot, 0.05).moved(Transform.shift(900, 0)) for foot in feet]
    by_order = assigned(feet, apart, clearance_mm=0.05, seating=Seating.SHIFT)
    assert [pair.plug for pair in by_order.pairs] == list(range(10))
    assert not by_order.by_place
    assert by_order.exchangeable == tuple(range(10))
    order = np.random.default_rng(1).permutation(10).tolist()
    upon = [plug_of(feet[k], 0.05).moved(Transform.shift(0.6, -0.4)) for k in order]
    by_place = assigned(feet, upon, clearance_mm=0.05, seating=Seating.SHIFT)
    assert [order[pair.plug] for pair in by_place.pairs] == list(range(10))
    assert by_place.by_place
    assert by_place.doubtful == ()


def test_two_sizes_with_another_clearance_than_wanted_are_not_crossed() -> None:
    """The larger plug is as far off in the smaller pocket as each is in its own: squares decide."""
    pockets = spread([square(20.0), square(20.1)])
    plugs = [plug_of(pocket, 0.05).moved(Transform.shift(300, 0)) for pocket in reversed(pockets)]
    found = assigned(pockets, plugs, clearance_mm=0.1, seating=Seating.SHIFT)
    assert [pair.plug for pair in found.pairs] == [1, 0]


def test_pairs_that_would_do_as_well_are_doubtful() -> None:
    """A plug in the middle of two spare ones: 19.90 and 19.914 are 7 µm per side off 19.907 either way."""
    pockets = spread([square(20.0), ELL])
    plugs = spread([square(19.893), square(19.907), plug_of(ELL, 0.05)])
    found = assigned(pockets, plugs, clearance_mm=0.05, seating=Seating.SHIFT)
    assert found.doubtful == (0,)
    assert found.exchangeable == ()


def test_a_plug_of_no_pocket_is_left_out() -> None:
    pockets = spread([square(20), ELL])
    plugs = spread([plug_of(ELL, 0.05), square(11), plug_of(square(20), 0.1)])
    found = assigned(pockets, plugs, clearance_mm=0.05, seating=Seating.SHIFT)
    assert [(pair.pocket, pair.plug) for pair in found.pairs] == [(0, 2), (1, 0)]


def test_as_drawn_only_those_that_lie_upon_each_other_are_pairs() -> None:
    pockets = spread([square(20), square(20)])
    plugs = [plug_of(pockets[1], 0.05), plug_of(pockets[0], 0.05).moved(Transform.shift(0, 300))]
    found = assigned(pockets, plugs, clearance_mm=0.05, seating=Seating.AS_DRAWN)
    assert [(pair.pocket, pair.plug) for pair in found.pairs] == [(1, 0)]


@pytest.mark.parametrize("seating", list(Seating))
def test_a_plug_for_the_other_hand_is_paired_and_told(seating: Seating) -> None:
    mirrored = plug_of(ELL, 0.05).moved(Transform.mirror_x())
    way = other_way(ELL, mirrored.moved(Transform.shift(30, 0)), clearance_mm=0.05, seating=seating)
    assert way is not None
    assert way.motion is Motion.FLIPPED
    pockets = spread([square(20), ELL])
    plugs = [mirrored, plug_of(square(20), 0.05)]
    if seating is Seating.AS_DRAWN:
        return
    found = assigned(pockets, plugs, clearance_mm=0.05, seating=seating)
    assert [(pair.pocket, pair.plug) for pair in found.pairs] == [(0, 1), (1, 0)]
    assert [pair.other_way is None for pair in found.pairs] == [True, False]


def test_both_hands_of_a_shape_go_to_their_own_pockets_and_a_quarter_turn_is_told() -> None:
    right, left = ELL, ELL.moved(Transform.mirror_x())
    pockets = spread([right, left])
    plugs = [plug_of(left, 0.05), plug_of(right, 0.05).moved(Transform.turn(math.pi / 2))]
    turned = assigned(pockets, plugs, clearance_mm=0.05, seating=Seating.TURN)
    assert [(pair.plug, pair.other_way) for pair in turned.pairs] == [(1, None), (0, None)]
    shifted = assigned(pockets, plugs, clearance_mm=0.05, seating=Seating.SHIFT)
    assert [pair.plug for pair in shifted.pairs] == [1, 0]
    way = shifted.pairs[0].other_way
    assert way is not None
    assert way.motion is Motion.TURNED
    assert math.degrees(way.turn_rad) == pytest.approx(-90, abs=0.5)


@pytest.mark.parametrize("clearance", [0.05, -0.03])
def test_a_plug_that_only_bites_is_not_called_flipped(clearance: float) -> None:
    tight = plug_of(ELL, clearance - 0.04)
    assert other_way(ELL, tight, clearance_mm=clearance, seating=Seating.SHIFT) is None
