"""The laws of a fit, over random regions: what it promises at every wall, whatever may move."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from inlayfit.errors import Cancelled, SpecError
from inlayfit.finding import Severity, has_open_block
from inlayfit.fit.result import FitResult
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState, Relief
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.morphology import closed, erode, opened
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, PREVIEW
from inlayfit.geometry.transform import Transform
from inlayfit.progress import Progress
from tests.oracles import (
    MICROMETRE,
    boundary_samples,
    bulges_out,
    clipper_matched_halves,
    clipper_offset,
    dense_minimum,
    distances_to_boundary,
    spread,
    stands_out,
)
from tests.strategies import examples, glyphs, lengths, nested, regions, rigid_motions, rounded, stars

TO_CUT, CUT, FINISHED = HalfState
ARC = 0.25 * MICROMETRE  # what the measuring itself may be off, on top of the promise
HAIR = 2 * MICROMETRE  # paring by hand, as a difference of differences, leaves spikes without width
cutters = lengths(0.4, 6.0)
clearances = st.one_of(lengths(0.01, 0.6), lengths(-0.3, -0.01), st.just(0.0))
reliefs = st.sampled_from(Relief)


def codes(result: FitResult) -> set[str]:
    return {finding.code for finding in result.findings}


def both(clearance: float, pocket: float, plug: float) -> FitSpec:
    return FitSpec(clearance, HalfSpec(pocket), HalfSpec(plug))


# --- the gap ---------------------------------------------------------------------------------------------


@examples(15, 200)
@given(drawn=regions(), clearance=clearances, pocket=cutters, plug=cutters)
def test_both_to_cut_leaves_the_same_gap_everywhere(
    drawn: Region, clearance: float, pocket: float, plug: float
) -> None:
    """Every place of the plug's wall is one clearance from the pocket's, and the other way round."""
    pocket = max(pocket, 2.1 * clearance)  # a sharper pocket corner is farther from a round plug corner
    result = solve(drawn, both(clearance, pocket, plug))
    assume("cutters-conflict" not in codes(result))
    if result.gap.is_empty:
        assert has_open_block(result.findings)
        return
    gaps = np.concatenate([wall.gaps for wall in result.gap.plug_walls])
    assert np.abs(gaps - clearance).max() <= MICROMETRE
    if "clearance-eats-piece" in codes(result) or "plug-in-pieces" in codes(result):
        return
    if not {"neck", "dead-end", "cutter-too-large"} & codes(result):
        gaps = np.concatenate([wall.gaps for wall in result.gap.pocket_walls])
        assert np.abs(gaps - clearance).max() <= MICROMETRE


@pytest.mark.parametrize("states", [(TO_CUT, TO_CUT), (CUT, TO_CUT), (TO_CUT, FINISHED)])
@pytest.mark.parametrize("relief", Relief)
@examples(5, 100)
@given(drawn=regions(), other=reliefs, clearance=clearances, pocket=cutters, plug=cutters)
def test_whatever_moves_and_however_corners_are_relieved_the_gap_is_never_less(
    states: tuple[HalfState, HalfState],
    relief: Relief,
    drawn: Region,
    other: Relief,
    clearance: float,
    pocket: float,
    plug: float,
) -> None:
    """Measured by the gap map and, independently, by a dense check.

    With interference the promise is for the plug's wall. A sharp corner of the host bites deeper by
    geometry: its point lies |c|/sin(half its angle) inside a plug that is |c| larger all round.
    """
    pocket_half, plug_half = HalfSpec(pocket, states[0], other), HalfSpec(plug, states[1], relief)
    result = solve(drawn, FitSpec(clearance, pocket_half, plug_half))
    if result.gap.is_empty:
        assert has_open_block(result.findings)
        return
    if {"cutters-conflict", "bites"} & codes(result):
        assert has_open_block(result.findings)
        return
    pocket_wall, plug_wall = result.pocket.finished, result.plug.finished
    if Relief.BY_HAND in (other, relief):
        pocket_wall, plug_wall = closed(pocket_wall, HAIR, EXACT), opened(plug_wall, HAIR, EXACT)
    elif clearance >= 0:
        assert result.gap.min_mm >= clearance - MICROMETRE - ARC
        assert dense_minimum(pocket_wall, plug_wall) >= clearance - MICROMETRE - ARC
    points = boundary_samples(plug_wall.shape, plug_wall.perimeter / 4000)
    inside = shapely.covers(pocket_wall.shape, shapely.points(points))
    distances = distances_to_boundary(points, pocket_wall.shape)
    assert np.where(inside, distances, -distances).min() >= clearance - MICROMETRE - ARC


@examples(10, 200)
@given(drawn=regions(), relief=reliefs, clearance=clearances, pocket=cutters, plug=cutters)
def test_a_half_that_exists_is_not_changed_by_one_byte(
    drawn: Region, relief: Relief, clearance: float, pocket: float, plug: float
) -> None:
    before = shapely.to_wkb(drawn.shape)
    for state in (CUT, FINISHED):
        fixed_pocket = FitSpec(clearance, HalfSpec(pocket, state), HalfSpec(plug, relief=relief))
        assert shapely.to_wkb(solve(drawn, fixed_pocket).pocket.outline.shape) == before
        fixed_plug = FitSpec(clearance, HalfSpec(pocket, relief=relief), HalfSpec(plug, state))
        assert shapely.to_wkb(solve(drawn, fixed_plug).plug.outline.shape) == before


@examples(10, 100)
@given(drawn=regions(), clearance=lengths(0.01, 0.5))
def test_two_halves_that_exist_are_only_measured(drawn: Region, clearance: float) -> None:
    plug = erode(drawn, clearance, EXACT)
    assume(not plug.is_empty)
    spec = FitSpec(0.2, HalfSpec(3, CUT), HalfSpec(3, FINISHED))
    result = solve(drawn, spec, plug_drawn=plug)
    assert result.pocket.outline is drawn
    assert result.plug.outline is plug
    assert result.gap.min_mm == pytest.approx(clearance, abs=MICROMETRE)
    assert "bites" in codes(solve(plug, spec, plug_drawn=drawn))


# --- what the cutters can do -----------------------------------------------------------------------------


@pytest.mark.parametrize("states", [(TO_CUT, TO_CUT), (CUT, TO_CUT)])
@examples(8, 200)
@given(drawn=regions(), relief=reliefs, clearance=clearances, pocket=cutters, plug=cutters)
def test_the_cut_plug_is_its_own_closing(
    states: tuple[HalfState, HalfState],
    drawn: Region,
    relief: Relief,
    clearance: float,
    pocket: float,
    plug: float,
) -> None:
    """With a cutter smaller by the slack, since a sweep exactly one cutter wide is otherwise filled again."""
    spec = FitSpec(clearance, HalfSpec(pocket, states[0]), HalfSpec(plug, states[1], relief))
    result = solve(drawn, spec)
    assume("cutters-conflict" not in codes(result))
    outline = result.plug.outline
    assert bulges_out(closed(outline, plug / 2 - MICROMETRE, EXACT), outline) <= MICROMETRE + ARC


@pytest.mark.parametrize("states", [(TO_CUT, TO_CUT), (TO_CUT, CUT)])
@examples(8, 200)
@given(drawn=regions(), relief=reliefs, clearance=clearances, pocket=cutters, plug=cutters)
def test_the_cut_pocket_is_its_own_opening(
    states: tuple[HalfState, HalfState],
    drawn: Region,
    relief: Relief,
    clearance: float,
    pocket: float,
    plug: float,
) -> None:
    spec = FitSpec(clearance, HalfSpec(pocket, states[0], relief), HalfSpec(plug, states[1]))
    result = solve(drawn, spec)
    assume("cutters-conflict" not in codes(result))
    outline = result.pocket.outline
    assert bulges_out(outline, opened(outline, pocket / 2 - MICROMETRE, EXACT)) <= MICROMETRE + ARC


@examples(10, 100)
@given(drawn=regions(), relief=reliefs, clearance=clearances, plug=cutters)
def test_relief_only_takes_away(drawn: Region, relief: Relief, clearance: float, plug: float) -> None:
    """The plug stays inside its target: what a plug for the same pocket is without any cutter."""
    target = solve(drawn, FitSpec(clearance, HalfSpec(0, CUT), HalfSpec(0))).plug.outline
    result = solve(drawn, FitSpec(clearance, HalfSpec(0, CUT), HalfSpec(plug, relief=relief)))
    finished = result.plug.finished
    if relief is Relief.BY_HAND:
        finished = opened(finished, HAIR, EXACT)
    assert stands_out(finished, target) <= MICROMETRE


# --- order and symmetry ----------------------------------------------------------------------------------


@pytest.mark.parametrize("state", [TO_CUT, CUT])
@examples(10, 150)
@given(drawn=regions(), clearance=lengths(-0.3, 0.5), more=lengths(0.005, 0.3), cutter=cutters)
def test_a_larger_clearance_gives_a_plug_inside_the_previous_one(
    state: HalfState, drawn: Region, clearance: float, more: float, cutter: float
) -> None:
    """The target shrinks everywhere; of a plug rounded to match, also what its own rounding gives.

    Where interference leaves stock that has to be relieved, that belongs to the plug it was taken of.
    """
    pocket = HalfSpec(cutter, state)
    plug = HalfSpec(0.0 if state is CUT else 0.4)
    loose = solve(drawn, FitSpec(clearance + more, pocket, plug)).plug.outline
    tight = solve(drawn, FitSpec(clearance, pocket, plug))
    relieved = [cut.removed.shape for cut in tight.reliefs if cut.half is Half.PLUG]
    whole = Region.of(shapely.union_all([tight.plug.outline.shape, *relieved]))
    assert stands_out(loose, whole) <= MICROMETRE


@pytest.mark.parametrize("states", [(TO_CUT, TO_CUT), (CUT, TO_CUT), (TO_CUT, CUT)])
@examples(5, 100)
@given(
    drawn=st.one_of(stars(), rounded(), nested()),
    motion=rigid_motions(),
    clearance=clearances,
    pocket=cutters,
    plug=cutters,
)
def test_moving_and_mirroring_commute_with_the_fit(
    states: tuple[HalfState, HalfState],
    drawn: Region,
    motion: Transform,
    clearance: float,
    pocket: float,
    plug: float,
) -> None:
    spec = FitSpec(clearance, HalfSpec(pocket, states[0]), HalfSpec(plug, states[1]))
    here, there = solve(drawn, spec), solve(drawn.moved(motion), spec)
    assert has_open_block(here.findings) == has_open_block(there.findings)
    if has_open_block(here.findings):  # where a neck is given up, rounding may decide how
        return
    assert here.gap.min_mm == pytest.approx(there.gap.min_mm, abs=MICROMETRE, nan_ok=True)
    # A plunge may go either way in a symmetric corner, so relieved walls are compared by what they leave.
    if not here.reliefs and "dead-end" not in codes(here):
        assert spread(here.pocket.outline.moved(motion), there.pocket.outline) <= 1.5 * MICROMETRE
        assert spread(here.plug.outline.moved(motion), there.plug.outline) <= 1.5 * MICROMETRE
    else:
        assert there.plug.outline.area == pytest.approx(here.plug.outline.area, rel=0.002, abs=0.05)


@examples(10, 150)
@given(drawn=regions(), by=lengths(0.01, 0.4), cutter=lengths(0.9, 4.0))
def test_interference_is_clearance_with_the_sign_turned(drawn: Region, by: float, cutter: float) -> None:
    """A pocket for a plug that exists and a plug for a pocket that exists trade places with the sign."""
    form = closed(opened(drawn, 2.1, EXACT), 2.1, EXACT)
    assume(not form.is_empty)
    pocket_fixed, plug_fixed = (HalfSpec(0.0, CUT), HalfSpec(0.0)), (HalfSpec(0.0), HalfSpec(0.0, CUT))
    for clearance in (by, -by):
        plug = solve(form, FitSpec(clearance, *pocket_fixed)).plug.outline
        pocket = solve(form, FitSpec(-clearance, *plug_fixed)).pocket.outline
        assert spread(plug, pocket) <= MICROMETRE
        assert spread(plug, clipper_offset(form, -clearance)) <= MICROMETRE


@examples(6, 60)
@given(drawn=regions(), clearance=clearances, pocket=cutters, plug=cutters)
def test_the_same_question_has_the_same_answer(
    drawn: Region, clearance: float, pocket: float, plug: float
) -> None:
    spec = both(clearance, pocket, plug)
    one, two = solve(drawn, spec), solve(drawn, spec)
    assert one.plug.outline.shape.equals_exact(two.plug.outline.shape, 0.0)
    assert one.findings == two.findings


# --- against another library -----------------------------------------------------------------------------


@examples(12, 200)
@given(drawn=regions(), clearance=clearances, pocket=cutters, plug=cutters)
def test_the_same_pipeline_through_clipper2_agrees(
    drawn: Region, clearance: float, pocket: float, plug: float
) -> None:
    """Opening, closing and offset through clipper2-py, wherever no passage is too narrow for a cutter.

    Nor exactly as wide as one: that is lost there by rounding, and is a law of its own here.
    """
    result = solve(drawn, both(clearance, pocket, plug))
    assume(codes(result) <= {"corners-rounded", "interference"})
    theirs = clipper_matched_halves(drawn, clearance, pocket / 2, plug / 2)
    loose = clipper_matched_halves(drawn, clearance, pocket / 2 - 2 * MICROMETRE, plug / 2)
    assume(spread(theirs[0], loose[0]) <= 0.1)
    assert spread(result.pocket.outline, theirs[0]) <= MICROMETRE
    assert spread(result.plug.outline, theirs[1]) <= MICROMETRE


# --- slots, bores, published fits ------------------------------------------------------------------------


def dumbbell(width: float, angle: float) -> Region:
    slot = shapely.box(0, -width / 2, 30, width / 2)
    rooms = [shapely.box(x - 8, -8, x + 8, 8) for x in (-7, 37)]
    return Region.of(shapely.union_all([slot, *rooms])).moved(Transform.turn(angle))


def bow(width: float) -> Region:
    angles = np.linspace(0.0, 2.0, 1500)
    walls = [(20 + side * width / 2) * np.column_stack([np.cos(angles), np.sin(angles)]) for side in (1, -1)]
    slot = shapely.Polygon(np.vstack([walls[0], walls[1][::-1]]))
    first = shapely.box(14, -9, 26, 0.5)
    second = Region.of(shapely.box(14, -0.5, 26, 9)).moved(Transform.turn(2.0)).shape
    return Region.of(shapely.union_all([slot, first, second]))


@pytest.mark.parametrize("angle", [0.0, 0.3, math.pi / 4, 1.1, 3.0])
@pytest.mark.parametrize("cutter", [1.0, 3.0, 6.0])
def test_a_slot_exactly_one_cutter_wide_is_cut(cutter: float, angle: float) -> None:
    result = solve(dumbbell(cutter, angle), both(0.05, cutter, 1.0))
    assert len(result.pocket.outline.polygons) == 1
    assert len(result.plug.outline.polygons) == 1
    assert not has_open_block(result.findings)
    assert result.gap.min_mm == pytest.approx(0.05, abs=MICROMETRE)


@pytest.mark.parametrize("angle", [0.0, 0.3, math.pi / 4, 1.1, 3.0])
@pytest.mark.parametrize("cutter", [1.0, 3.0, 6.0])
def test_a_slot_two_micrometres_narrower_is_a_neck(cutter: float, angle: float) -> None:
    result = solve(dumbbell(cutter - 0.002, angle), both(0.05, cutter, 1.0))
    (neck,) = (f for f in result.findings if f.code == "neck")
    assert neck.severity is Severity.BLOCK
    assert neck.place_mm is not None
    x, y = Transform.turn(-angle).points(np.array([neck.place_mm]))[0]
    assert 0 <= x <= 30
    assert abs(y) <= cutter / 2
    assert len(result.pocket.outline.polygons) == 2


@pytest.mark.parametrize("cutter", [1.0, 3.0, 6.0])
def test_a_curved_slot_is_judged_alike(cutter: float) -> None:
    assert not has_open_block(solve(bow(cutter), both(0.05, cutter, 1.0)).findings)
    assert "neck" in codes(solve(bow(cutter - 0.002), both(0.05, cutter, 1.0)))


@pytest.mark.parametrize("cutter", [1.0, 3.0])
def test_a_bare_slot_two_micrometres_too_narrow_is_too_small_for_the_cutter(cutter: float) -> None:
    slot = Path(np.array([(0, 0), (30, 0), (30, cutter), (0, cutter)]), np.array([0.0, 1, 0, 1]))
    fits = solve(Region.of_ring(flatten(slot, 0.00001)), both(0.05, cutter, cutter))
    assert not has_open_block(fits.findings)
    narrow = Path(slot.vertices * np.array([1, (cutter - 0.002) / cutter]), slot.bulges)
    result = solve(Region.of_ring(flatten(narrow, 0.00001)), both(0.05, cutter, cutter))
    assert "cutter-too-large" in codes(result)
    assert result.gap.is_empty


ISO_286 = [
    # nominal mm, fit, hole EI/ES µm, shaft ei/es µm, clearance min/max µm
    (25, "H7/g6", (0, 21), (-20, -7), (7, 41)),
    (25, "H7/h6", (0, 21), (-13, 0), (0, 34)),
    (25, "H7/k6", (0, 21), (2, 15), (-15, 19)),
    (25, "H7/p6", (0, 21), (22, 35), (-35, -1)),
    (25, "H7/s6", (0, 21), (35, 48), (-48, -14)),
    (25, "H8/f7", (0, 33), (-41, -20), (20, 74)),
    (25, "H11/c11", (0, 130), (-240, -110), (110, 370)),
    (40, "H7/s6", (0, 25), (43, 59), (-59, -18)),
    (50, "H8/f7", (0, 39), (-50, -25), (25, 89)),
]


@pytest.mark.parametrize(("nominal", "name", "hole", "shaft", "clearance"), ISO_286)
def test_published_fits_of_holes_and_shafts_come_out(
    nominal: int, name: str, hole: tuple[int, int], shaft: tuple[int, int], clearance: tuple[int, int]
) -> None:
    """ISO 286 limits as printed in the Aeronautical Engineer's Data Book, table 12.6 (25 mm; from BS 4500),
    in the solutions to Shigley's Mechanical Engineering Design, 3-64 (40 mm), and an encyclopaedia's worked
    example (50 mm). The published clearance is of the diameter, so twice the clearance per side.
    """
    for bore, pin, published in ((hole[0], shaft[1], clearance[0]), (hole[1], shaft[0], clearance[1])):
        assert bore - pin == published, name
        per_side = published / 2000
        ring = flatten(Path.circle((0, 0), nominal / 2 + bore / 2000), 0.00001)
        result = solve(Region.of_ring(ring), both(per_side, 3.0, 3.0))
        radii = np.hypot(*np.vstack(result.plug.outline.rings()).T)
        assert np.abs(2 * radii - (nominal + pin / 1000)).max() <= MICROMETRE / 2
        assert 2 * result.gap.min_mm == pytest.approx(published / 1000, abs=MICROMETRE)


# --- preview, stopping -----------------------------------------------------------------------------------


@examples(8, 100)
@given(drawn=regions(), clearance=lengths(0.05, 0.5), pocket=cutters, plug=cutters)
def test_a_preview_looks_like_the_result(drawn: Region, clearance: float, pocket: float, plug: float) -> None:
    """Within 0.04 mm, half a pixel where 80 mm fill a thousand of them; sharp corners move most."""
    spec = both(clearance, pocket, plug)
    exact, preview = solve(drawn, spec), solve(drawn, spec, tolerance=PREVIEW)
    assume(not {"neck", "dead-end", "cutter-too-large", "cutters-conflict"} & codes(exact))
    assume(not exact.gap.is_empty and not preview.gap.is_empty)
    assert spread(exact.pocket.outline, preview.pocket.outline) <= 0.04
    assert preview.gap.min_mm == pytest.approx(exact.gap.min_mm, abs=0.04)


def test_work_that_was_cancelled_before_it_starts_does_nothing() -> None:
    progress = Progress()
    progress.cancel()
    with pytest.raises(Cancelled):
        solve(Region.of(shapely.box(0, 0, 30, 20)), both(0.05, 3, 2), progress=progress)


@pytest.mark.parametrize("states", [(TO_CUT, TO_CUT), (CUT, TO_CUT), (TO_CUT, CUT)])
def test_work_can_be_cancelled_at_every_stage(states: tuple[HalfState, HalfState]) -> None:
    ell = Region.of_ring([(0, 0), (30, 0), (30, 10), (10, 10), (10, 30), (0, 30)])
    spec = FitSpec(0.05, HalfSpec(3, states[0]), HalfSpec(3, states[1]))
    notes: list[str] = []
    solve(ell, spec, progress=Progress(lambda _, note: notes.append(note)))
    assert len(notes) >= 3
    for last in notes[:-1]:
        seen: list[str] = []
        with pytest.raises(Cancelled):
            solve(ell, spec, progress=cancelled_at(last, seen))
        assert seen[-1] == last


def cancelled_at(note: str, seen: list[str]) -> Progress:
    """A progress that is cancelled as soon as the work says so."""

    def report(_: float, said: str) -> None:
        seen.append(said)
        if said == note:
            progress.cancel()

    progress = Progress(report)
    return progress


@examples(8, 60)
@given(drawn=glyphs(), clearance=clearances, pocket=cutters, plug=cutters, relief=reliefs)
def test_progress_only_grows(
    drawn: Region, clearance: float, pocket: float, plug: float, relief: Relief
) -> None:
    shares: list[float] = []
    spec = FitSpec(clearance, HalfSpec(pocket, relief=relief), HalfSpec(plug, relief=relief))
    solve(drawn, spec, progress=Progress(lambda share, _: shares.append(share)))
    assert shares == sorted(shares)
    assert all(0 <= share <= 1 for share in shares)


# --- what cannot be asked --------------------------------------------------------------------------------


def test_an_empty_outline_is_refused_in_one_sentence() -> None:
    with pytest.raises(SpecError, match=r"^The outline is empty; [^.]+\.$"):
        solve(Region.empty(), both(0.05, 3, 3))


def test_two_halves_that_exist_need_both_outlines() -> None:
    spec = FitSpec(0.05, HalfSpec(3, CUT), HalfSpec(3, CUT))
    with pytest.raises(SpecError, match=r"^Both halves are already cut; [^.]+\.$"):
        solve(Region.of(shapely.box(0, 0, 30, 20)), spec)


@examples(10, 100)
@given(drawn=regions(), clearance=lengths(11.0, 19.9))
def test_a_clearance_that_eats_the_plug_blocks_and_says_where(drawn: Region, clearance: float) -> None:
    result = solve(drawn, both(clearance, 1.0, 1.0))
    assume(result.plug.outline.is_empty)
    (finding,) = (f for f in result.findings if f.code == "clearance-eats-plug")
    assert finding.severity is Severity.BLOCK
    assert finding.place_mm is not None
    assert shapely.intersects(drawn.shape, shapely.Point(finding.place_mm))


def test_a_cutter_larger_than_the_pocket_blocks_and_leaves_nothing() -> None:
    result = solve(Region.of(shapely.box(0, 0, 4, 4)), both(0.05, 6, 6))
    assert result.pocket.outline.is_empty
    assert "cutter-too-large" in codes(result)
    assert has_open_block(result.findings)
