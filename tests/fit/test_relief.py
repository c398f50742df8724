"""Corner relief: what it takes, against closed forms and brute force; and that it is enough."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import LineString

from inlayfit.fit.relief import sweeps_for
from inlayfit.fit.residue import residues, residues_outside
from inlayfit.fit.result import ReliefCut
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState, Relief, WallChoice
from inlayfit.geometry.morphology import closed, dilate, erode, opened, thick_parts
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE, bulges_out, clipper_closed, clipper_offset, dog_bone_bite, stands_out
from tests.strategies import examples, glyphs, lengths, regions, turns

SHARP = HalfSpec(0.0, HalfState.ALREADY_CUT)
"""A half that exists with truly sharp corners."""


def wedge(angle: float, *, side: float = 40.0) -> Region:
    """An isosceles triangle whose corner at the origin, opening towards +x, has this interior angle."""
    half = angle / 2
    x, y = side * math.cos(half), side * math.sin(half)
    return Region.of_ring([(0, 0), (x, -y), (x, y)])


def notched_block(angle: float) -> Region:
    """A block with that wedge cut out of it: one concave corner, of a plug, at the origin."""
    return Region.of(shapely.box(-60, -80, 30, 80)).minus(wedge(angle, side=120.0))


def at_the_origin(cuts: tuple[ReliefCut, ...]) -> ReliefCut:
    (cut,) = (cut for cut in cuts if math.dist(cut.place_mm, (0, 0)) < 0.05)
    return cut


# --- the dog-bone against its closed form ------------------------------------------------------------------


@examples(25, 200)
@given(angle=st.floats(math.radians(40), math.radians(150)), radius=lengths(0.3, 2.0), turn=turns())
def test_a_dog_bone_in_a_pocket_takes_its_closed_form(angle: float, radius: float, turn: float) -> None:
    """Plane geometry, derived in `tests.oracles.dog_bone_bite`: the plunge along the bisector."""
    drawn = wedge(angle).moved(Transform.turn(turn))
    spec = FitSpec(0.05, HalfSpec(2 * radius, relief=Relief.DOG_BONE), HalfSpec(0.0))
    cut = at_the_origin(solve(drawn, spec).pocket.reliefs)
    assert cut.straight
    expected = dog_bone_bite(angle, radius)
    # The wall may give or take a micrometre along the plunge.
    assert cut.area_mm2 == pytest.approx(expected, abs=0.003 * radius)


@pytest.mark.parametrize("radius", [0.5, 1.0, 1.5, 3.0])
def test_a_dog_bone_in_a_plain_corner_takes_0_571_squared_radii(radius: float) -> None:
    """90°: two circle segments of 90°, (π/2 − 1)·r² together (plane geometry)."""
    box = Region.of(shapely.box(0, 0, 40, 30))
    spec = FitSpec(0.05, HalfSpec(2 * radius, relief=Relief.DOG_BONE), HalfSpec(0.0))
    result = solve(box, spec)
    assert len(result.pocket.reliefs) == 4
    for cut in result.pocket.reliefs:
        assert cut.half is Half.POCKET
        assert cut.area_mm2 == pytest.approx((math.pi / 2 - 1) * radius**2, abs=0.002 * radius)
        assert cut.bite_mm == pytest.approx(math.sqrt(2) * radius, abs=0.01)
        assert cut.removed.area == pytest.approx(cut.area_mm2)
        assert cut.removed.minus(result.pocket.outline).area < 1e-6
    removed = result.pocket.outline.area - box.area
    assert removed == pytest.approx(4 * (math.pi / 2 - 1) * radius**2, abs=0.01 * radius)


@examples(20, 150)
@given(angle=st.floats(math.radians(45), math.radians(150)), radius=lengths(0.3, 2.0), turn=turns())
def test_a_dog_bone_in_a_plug_takes_the_same(angle: float, radius: float, turn: float) -> None:
    """At no clearance the plug's concave corner is as sharp as the pocket's convex one."""
    drawn = notched_block(angle).moved(Transform.turn(turn))
    result = solve(drawn, FitSpec(0.0, SHARP, HalfSpec(2 * radius)))
    cut = at_the_origin(result.plug.reliefs)
    assert cut.half is Half.PLUG
    assert cut.area_mm2 == pytest.approx(dog_bone_bite(angle, radius), abs=0.003 * radius)


@examples(15, 100)
@given(angle=st.floats(math.radians(40), math.radians(150)), radius=lengths(0.3, 2.0))
def test_no_straight_plunge_takes_less_than_the_dog_bone(angle: float, radius: float) -> None:
    """Brute force: every direction in steps of 1°, from where the cutter stands in the corner."""
    drawn = wedge(angle)
    reached = opened(drawn, radius, EXACT)
    left = tuple(
        r for r in residues(drawn, reached, radius, EXACT) if math.dist(r.place, (0, 0)) < 4 * radius
    )
    assume(len(left) == 1)
    host = Region.of(shapely.box(-30, -50, 60, 50)).minus(drawn)
    (sweep,) = sweeps_for(
        left, erode(drawn, radius, EXACT), host, HalfSpec(2 * radius, relief=Relief.DOG_BONE), EXACT
    )
    taken = host.common(sweep.swept).area
    start = np.array([radius / math.sin(angle / 2), 0.0])
    vertices = np.vstack(left[0].region.rings())
    least = math.inf
    for degrees in range(-80, 81):
        way = Transform.turn(math.pi + math.radians(degrees)).points(np.array([[1.0, 0.0]]))[0]
        offsets = vertices - start
        along, off = offsets @ way, np.abs(offsets[:, 0] * way[1] - offsets[:, 1] * way[0])
        if off.max() > radius:
            continue
        reach = max(0.0, float((along - np.sqrt(radius**2 - off**2)).max()))
        stadium = shapely.buffer(LineString([start, start + reach * way]), radius, quad_segs=64)
        if left[0].region.shape.difference(stadium).area < 1e-4 * radius:
            least = min(least, float(shapely.intersection(host.shape, stadium).area))
    assert taken <= least * 1.02 + 0.003 * radius


# --- the T-bone --------------------------------------------------------------------------------------------


@pytest.mark.parametrize("wall", WallChoice)
@examples(6, 60)
@given(radius=lengths(0.3, 3.0), turn=turns())
def test_a_t_bone_bites_into_one_wall_only(wall: WallChoice, radius: float, turn: float) -> None:
    """90°: the cutter runs along one wall until its circle passes through the corner; in the other wall
    lies half a circle, π·r²/2 (plane geometry).
    """
    drawn = Region.of(shapely.box(0, 0, 40, 30)).moved(Transform.turn(turn))
    half = HalfSpec(2 * radius, relief=Relief.T_BONE, t_bone_wall=wall)
    result = solve(drawn, FitSpec(0.05, half, HalfSpec(0.0)))
    assert len(result.pocket.reliefs) == 4
    for cut in result.pocket.reliefs:
        assert cut.kind is Relief.T_BONE
        assert cut.area_mm2 == pytest.approx(math.pi / 2 * radius**2, abs=0.004 * radius)
    bites = thick_parts(result.pocket.outline.minus(drawn), MICROMETRE)
    within_short = Region.of(shapely.box(MICROMETRE, -10, 40 - MICROMETRE, 40))
    within_long = Region.of(shapely.box(-10, MICROMETRE, 50, 30 - MICROMETRE))
    beyond_short, beyond_long = (
        bites.minus(strip.moved(Transform.turn(turn))).area for strip in (within_short, within_long)
    )
    # No place lies beyond two walls, so what lies beyond either is all there is.
    assert beyond_long + beyond_short == pytest.approx(bites.area, abs=0.02 * radius)
    half_circles = np.array([beyond_long, beyond_short]) / (math.pi / 2 * radius**2)
    assert np.abs(half_circles - np.rint(half_circles)).max() <= 0.05
    if wall is WallChoice.LONG:
        assert np.rint(half_circles).tolist() == [4, 0]
    if wall is WallChoice.SHORT:
        assert np.rint(half_circles).tolist() == [0, 4]


# --- relief is enough --------------------------------------------------------------------------------------


@pytest.mark.parametrize("kind", [Relief.DOG_BONE, Relief.T_BONE])
@examples(12, 250)
@given(drawn=st.one_of(glyphs(), regions()), clearance=lengths(0.0, 0.3), cutter=lengths(0.4, 6.0))
def test_a_relieved_plug_can_be_cut_and_stays_in_its_target(
    kind: Relief, drawn: Region, clearance: float, cutter: float
) -> None:
    """By its own closing, also through clipper2, and by what the same pocket gives without a cutter."""
    result = solve(drawn, FitSpec(clearance, SHARP, HalfSpec(cutter, relief=kind)))
    plug = result.plug.outline
    assume(not plug.is_empty)
    assert bulges_out(clipper_closed(plug, cutter / 2 - MICROMETRE), plug) <= MICROMETRE
    target = solve(drawn, FitSpec(clearance, SHARP, HalfSpec(0.0))).plug.outline
    assert stands_out(plug, target) <= MICROMETRE
    assert result.gap.min_mm >= clearance - MICROMETRE


@pytest.mark.parametrize("overlap_um", [-20.0, -0.5, 0.0, 0.4, 0.6, 1.5, 3.0, 20.0])
def test_two_dog_bones_that_barely_meet_can_be_cut(overlap_um: float) -> None:
    """Two slots face each other; each bone reaches (1 − 1/√2)·r beyond its slot's end (plane geometry).

    Where they meet, the web between the slots comes apart, in tips as sharp as one likes.
    """
    radius = 1.5
    web = 2 * (1 - math.sqrt(0.5)) * radius - overlap_um / 1000
    slots = [shapely.box(-5, web / 2, 5, 30), shapely.box(-5, -30, 5, -web / 2)]
    drawn = Region.of(shapely.box(-30, -20, 30, 20)).minus(Region.of(shapely.union_all(slots)))
    plug = solve(drawn, FitSpec(0.0, SHARP, HalfSpec(2 * radius))).plug.outline
    assert bulges_out(clipper_closed(plug, radius - MICROMETRE), plug) <= MICROMETRE
    if overlap_um:
        assert len(plug.polygons) == (3 if overlap_um > 0 else 1)


@pytest.mark.parametrize("left_um", [1.5, 3.0, 12.0])
def test_metal_left_in_a_bone_would_be_seen(left_um: float) -> None:
    """What the laws here ask with is blind to neither a thin coat nor a bone of too small a cutter."""
    radius = 1.5
    plug = solve(notched_block(math.pi / 2), FitSpec(0.0, SHARP, HalfSpec(2 * radius))).plug.outline
    cut_short = clipper_offset(plug, left_um / 1000)
    assert bulges_out(cut_short, plug) == pytest.approx(left_um / 1000, abs=MICROMETRE / 2)
    smaller = solve(notched_block(math.pi / 2), FitSpec(0.0, SHARP, HalfSpec(2 * radius - 0.1))).plug.outline
    assert bulges_out(clipper_closed(smaller, radius - MICROMETRE), smaller) > MICROMETRE


@examples(12, 150)
@given(drawn=glyphs(), clearance=lengths(0.0, 0.3), cutter=lengths(0.4, 6.0))
def test_what_is_reported_as_removed_is_what_was_removed(
    drawn: Region, clearance: float, cutter: float
) -> None:
    result = solve(drawn, FitSpec(clearance, SHARP, HalfSpec(cutter)))
    target = solve(drawn, FitSpec(clearance, SHARP, HalfSpec(0.0))).plug.outline
    removed = sum(cut.area_mm2 for cut in result.plug.reliefs)
    assert target.area - result.plug.outline.area == pytest.approx(removed, abs=MICROMETRE * target.perimeter)
    for cut in result.plug.reliefs:
        assert cut.area_mm2 >= 0
        assert cut.bite_mm >= 0


@examples(10, 100)
@given(drawn=regions(), radius=lengths(0.3, 3.0), kind=st.sampled_from([Relief.DOG_BONE, Relief.T_BONE]))
def test_every_sweep_covers_its_residue(drawn: Region, radius: float, kind: Relief) -> None:
    reached = closed(drawn, radius, EXACT)
    left = residues_outside(drawn, reached, radius, EXACT)
    sweeps = sweeps_for(left, dilate(drawn, radius, EXACT), drawn, HalfSpec(2 * radius, relief=kind), EXACT)
    assert len(sweeps) == len(left)
    for residue, sweep in zip(left, sweeps, strict=True):
        assert stands_out(residue.region, sweep.swept) <= 2 * MICROMETRE
        if sweep.straight:
            length = math.dist(sweep.start, sweep.end)
            stadium = 2 * radius * length + math.pi * radius**2
            assert sweep.swept.area == pytest.approx(stadium, rel=0.002)


def test_by_hand_leaves_the_corner_on_the_plug_and_says_so() -> None:
    block = notched_block(math.pi / 2)
    result = solve(block, FitSpec(0.0, SHARP, HalfSpec(3.0, relief=Relief.BY_HAND)))
    (finding,) = (f for f in result.findings if f.code == "hand-work")
    assert finding.place_mm is not None
    assert math.dist(finding.place_mm, (0, 0)) < 3
    # The fillet of a right angle: (1 − π/4)·r² (plane geometry).
    assert result.plug.left_over.area == pytest.approx((1 - math.pi / 4) * 1.5**2, abs=0.005)
    assert not result.plug.reliefs
    assert result.gap.min_mm == pytest.approx(0.0, abs=MICROMETRE)
