"""What a workshop adds: passes, a floor fillet, the other face of a taper, errors, lookalikes, hand work.

Numbers come from closed forms worked out beside each check; the standard errors and the normal distribution
are SciPy's.
"""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import norm

from inlayfit.errors import Cancelled, SpecError
from inlayfit.finding import Severity
from inlayfit.fit.faces import Faces, faces_of
from inlayfit.fit.hand_work import hand_work
from inlayfit.fit.lookalikes import mark_finding, orientation_sentence, orientations_of
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.result import FitResult
from inlayfit.fit.scatter import cutter_effects, nominal_findings, scatter_finding, scatter_of
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.fit.tolerance_stack import STOP_SENTENCE
from inlayfit.fit.workshop import Examined, Workshop, examined
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.progress import Progress
from tests.strategies import examples, regions

ELL = Region.of_ring([(0, 0), (30, 0), (30, 12), (11, 12), (11, 20), (0, 20)])
SQUARE = Region.of_ring([(0, 0), (20, 0), (20, 20), (0, 20)])


def disk(radius: float) -> Region:
    return Region.of_ring(flatten(Path.circle((0, 0), radius), EXACT.arc_mm))


def fit(
    clearance: float = 0.05,
    *,
    pocket: HalfSpec | None = None,
    plug: HalfSpec | None = None,
    region: Region = ELL,
) -> FitResult:
    return solve(region, FitSpec(clearance, pocket or HalfSpec(2.0), plug or HalfSpec(2.0)))


def codes(each: Examined) -> set[str]:
    return {finding.code for finding in each.result.findings}


# --- passes and floor --------------------------------------------------------------------------------


def test_passes_reach_the_depth_in_equal_steps_and_leave_the_floor_for_last() -> None:
    shop = Workshop(depth_mm=2.0, depth_per_pass_mm=0.6, floor_allowance_mm=0.2)
    assert examined(fit(), shop).passes_mm == pytest.approx((0.6, 1.2, 1.8, 2.0))
    assert examined(fit(), Workshop()).passes_mm == ()


@pytest.mark.parametrize(
    ("numbers", "says"),
    [
        ({"depth_per_pass_mm": 1.0}, "needs the depth of the cut"),
        ({"depth_mm": 2.0, "floor_allowance_mm": 0.1}, "give all three"),
        ({"depth_mm": -1.0}, "depth is 0 or more"),
        ({"floor_fillet_mm": math.nan}, "floor fillet is 0 or more"),
        ({"depth_mm": 5.0, "depth_per_pass_mm": 1e-4}, "passes"),
    ],
)
def test_a_workshop_that_contradicts_itself_is_refused(numbers: dict[str, float], says: str) -> None:
    with pytest.raises(SpecError, match=says):
        Workshop(**numbers)  # type: ignore[arg-type]  # the numbers are all lengths


def test_a_floor_fillet_holds_a_sharp_edge_up_until_the_edge_is_broken_enough() -> None:
    """A circle of radius r about (r, r): at the distance c from the wall it is r − √(r² − (r − c)²) high."""
    radius, gap = 0.4, 0.05
    each = examined(fit(gap), Workshop(floor_fillet_mm=radius))
    assert each.floor is not None
    height = radius - math.sqrt(radius**2 - (radius - gap) ** 2)
    assert each.floor.hold_up_mm == pytest.approx(height, abs=2e-3)
    (finding,) = [f for f in each.result.findings if f.code == "held-up"]
    assert finding.severity is Severity.WARN
    assert "by 0.360 mm" in finding.remedy  # 0.35 and the gap's last fraction, rounded up
    broken = HalfSpec(2.0, edge_break_mm=0.36)
    assert "held-up" not in codes(examined(fit(gap, plug=broken), Workshop(floor_fillet_mm=radius)))


# --- the other face ----------------------------------------------------------------------------------

BEAM = HalfSpec(0.0, kerf_mm=0.2, kerf_taper_mm=0.06)


def test_a_taper_takes_half_of_itself_from_the_gap_on_the_bed_side() -> None:
    each = examined(fit(0.05, plug=BEAM), Workshop())
    assert each.faces is not None
    assert each.faces.bed_mm == pytest.approx(each.faces.show_mm - 0.03, abs=1e-9)
    assert each.faces.governing == "bed side"
    (finding,) = [f for f in each.result.findings if f.code == "taper"]
    assert finding.severity is Severity.WARN
    assert "Ask for 0.080 mm per side (0.160 mm overall)" in finding.remedy


def test_two_tapered_halves_take_it_twice_and_a_bite_blocks() -> None:
    each = examined(fit(0.05, pocket=BEAM, plug=BEAM), Workshop())
    assert each.faces is not None
    assert each.faces.bed_mm == pytest.approx(each.faces.show_mm - 0.06, abs=1e-9)
    (finding,) = [f for f in each.result.findings if f.code == "taper-bites"]
    assert finding.severity is Severity.BLOCK


def test_a_kerf_narrower_on_the_show_side_leaves_that_side_to_govern() -> None:
    narrow = HalfSpec(0.0, kerf_mm=0.2, kerf_taper_mm=-0.06)
    each = examined(fit(0.05, plug=narrow), Workshop())
    assert each.faces is not None
    assert each.faces.governing == "show side"
    assert next(f for f in each.result.findings if f.code == "taper").severity is Severity.NOTE


@examples(12, 100)
@given(regions(), st.floats(0.03, 0.2), st.floats(0.01, 0.05))
def test_the_bed_side_is_where_a_plug_grown_by_half_the_taper_stands(
    drawn: Region, clearance: float, taper: float
) -> None:
    """Checked with shapely's buffer and distance, which share nothing with the gap map."""
    result = fit(
        clearance, pocket=HalfSpec(0.5), plug=HalfSpec(0.0, kerf_mm=0.2, kerf_taper_mm=taper), region=drawn
    )
    faces = faces_of(result)
    if faces is None:  # nothing is left of the plug
        return
    on_the_bed = shapely.buffer(result.plug.outline.shape, taper / 2, quad_segs=64)
    assert shapely.distance(on_the_bed.boundary, result.pocket.outline.shape.boundary) == pytest.approx(
        faces.bed_mm, abs=0.001
    )


def test_square_walls_have_one_face() -> None:
    assert faces_of(fit()) is None
    cut = HalfSpec(0.0, HalfState.ALREADY_CUT, kerf_mm=0.2, kerf_taper_mm=0.06)
    assert faces_of(fit(plug=HalfSpec(2.0), pocket=cut)) is None
    assert Faces(0.05, 0.02).governing == "bed side"


# --- errors ------------------------------------------------------------------------------------------


def test_worst_case_and_root_sum_square_of_one_cutter_for_both_halves() -> None:
    """Diameter ±0.01 counts whole; each half's ±0.02 counts half: 0.01 + 0.01 + 0.01, and their root."""
    errors = MachineErrors(cutter_varies_mm=0.01, repeatability_mm=0.02)
    scatter = scatter_of(fit(0.05), errors)
    assert scatter is not None
    assert scatter.stack.worst_mm == pytest.approx((0.02, 0.08))
    root = math.sqrt(3) * 0.01
    assert scatter.stack.root_sum_square_mm == pytest.approx((0.05 - root, 0.05 + root))


def test_two_cutters_are_two_errors_and_a_made_half_has_none() -> None:
    errors = MachineErrors(cutter_varies_mm=0.01, repeatability_mm=0.02)
    two = scatter_of(fit(0.05, plug=HalfSpec(1.5)), errors)
    assert two is not None
    assert two.stack.worst_mm == pytest.approx((0.02, 0.08))
    assert two.stack.root_sum_square_mm[1] - 0.05 == pytest.approx(math.sqrt(2 * 0.005**2 + 2 * 0.01**2))
    made = scatter_of(fit(0.05, pocket=HalfSpec(2.0, HalfState.ALREADY_CUT)), errors)
    assert made is not None
    assert made.stack.worst_mm == pytest.approx((0.05 - 0.015, 0.05 + 0.015))


def test_the_share_with_the_wanted_feel_is_that_of_the_normal_distribution() -> None:
    """Two widths of ±0.03 (three deviations) and half of each: σ = √2·0.005, about 0.025 in (0, 0.05]."""
    scatter = scatter_of(fit(0.025), MachineErrors(repeatability_mm=0.03))
    assert scatter is not None
    assert scatter.feel.value == "snug"
    share = 1 - 2 * norm.cdf(-0.025 / (math.sqrt(2) * 0.005))
    assert scatter.stack.shares.wanted == pytest.approx(share, abs=4 * scatter.stack.shares.error + 1e-4)
    assert scatter_finding(scatter) is None


def test_many_parts_that_miss_the_feel_are_a_warning() -> None:
    scatter = scatter_of(fit(0.045), MachineErrors(repeatability_mm=0.03))
    assert scatter is not None
    finding = scatter_finding(scatter)
    assert finding is not None
    assert finding.code == "parts-vary"
    assert "part to part" in finding.remedy


def test_advice_stops_inside_the_repeatability_and_corrects_beyond_it() -> None:
    """Runout of 0.01 adds half of itself on average; ±0.02 a half is ±0.0141 on the clearance."""
    stop = scatter_of(fit(), MachineErrors(runout_mm=0.01, repeatability_mm=0.02))
    assert stop is not None
    assert stop.advice is not None
    assert stop.advice.sentence == STOP_SENTENCE
    go = scatter_of(fit(), MachineErrors(runout_mm=0.01, repeatability_mm=0.002))
    assert go is not None
    assert go.advice is not None
    assert go.advice.sentence == "Take off 0.005 mm per side (0.010 mm overall) of clearance."


def test_a_cutter_off_its_label_moves_the_clearance_by_its_whole_error() -> None:
    finding = nominal_findings(fit().spec, MachineErrors(cutter_nominal_mm=2.03))[0]
    assert finding.code == "cutter-not-nominal"
    assert "falls by the whole error, 0.030 mm, to 0.020 mm per side (0.040 mm overall)" in finding.message
    one = FitSpec(0.05, HalfSpec(2.0), HalfSpec(6.0))
    (effect,) = cutter_effects(one, MachineErrors(cutter_nominal_mm=2.03))
    assert effect.clearance_change_mm == pytest.approx(-0.015)
    assert nominal_findings(fit().spec, MachineErrors(cutter_nominal_mm=2.0)) == []


def test_a_label_of_no_cutter_is_refused() -> None:
    with pytest.raises(SpecError, match="cannot be the one"):
        cutter_effects(fit().spec, MachineErrors(cutter_nominal_mm=12.0))
    with pytest.raises(SpecError, match="leave the nominal diameter out"):
        cutter_effects(FitSpec(0.05, BEAM, BEAM), MachineErrors(cutter_nominal_mm=2.0))


def test_thickness_counts_where_a_wall_leans_and_needs_the_depth_for_it() -> None:
    errors = MachineErrors(thickness_varies_mm=0.3)
    square = scatter_of(fit(), errors)
    assert square is not None
    assert square.stack.worst_mm == (0.05, 0.05)
    with pytest.raises(SpecError, match="depends on the depth"):
        scatter_of(fit(plug=BEAM), errors)
    leaning = scatter_of(fit(plug=BEAM), errors, depth_mm=3.0)
    assert leaning is not None
    assert leaning.stack.worst_mm == pytest.approx((0.05 - 0.003, 0.05 + 0.003))


def test_warmth_counts_over_half_the_longest_width() -> None:
    """ELL's plug is 29.9 mm wide: 70e-6 · 29.9 / 2 · 15 K."""
    scatter = scatter_of(fit(), MachineErrors(temperature_varies_k=15, expansion_difference_per_k=70e-6))
    assert scatter is not None
    reach = 70e-6 * 29.9 / 2 * 15
    assert scatter.stack.worst_mm == pytest.approx((0.05 - reach, 0.05 + reach), abs=1e-6)


@pytest.mark.parametrize(
    "numbers",
    [{"runout_mm": -0.1}, {"runout_mm": math.inf}, {"temperature_varies_k": 5.0},
     {"temperature_varies_k": 5.0, "expansion_difference_per_k": 20.0}],
)  # fmt: skip
def test_errors_that_make_no_sense_are_refused(numbers: dict[str, float]) -> None:
    with pytest.raises(SpecError):
        MachineErrors(**numbers)


# --- lookalikes --------------------------------------------------------------------------------------


def test_a_nearly_square_plug_must_be_marked_and_a_square_one_not() -> None:
    """Turned by 90° a plug 0.2 mm longer than wide is off by 0.1 mm at its walls: more than its clearance."""
    nearly = Region.of_ring([(0, 0), (20.2, 0), (20.2, 20), (0, 20)])
    finding = mark_finding(orientations_of(fit(0.02, region=nearly)))
    assert finding is not None
    assert finding.severity is Severity.NOTE
    assert "0.100 mm" in finding.message
    square = orientations_of(fit(0.02, region=SQUARE))
    assert mark_finding(square) is None
    assert (
        orientation_sentence(square)
        == "looks the same flipped, turned by 90°, flipped and turned by 90°, turned by 180° and 3 more, "
        "and goes in"
    )


def test_a_round_plug_is_called_round_and_an_odd_one_goes_in_one_way() -> None:
    assert (
        orientation_sentence(orientations_of(fit(region=disk(9))))
        == "round: any turn looks the same and goes in"
    )
    assert orientation_sentence(orientations_of(fit())) == "goes in one way only, and looks it"


# --- hand work ---------------------------------------------------------------------------------------


def test_hand_work_is_what_the_cutter_leaves_in_each_corner() -> None:
    """(1 − π/4)·r² in each right corner of a square pocket."""
    by_hand = HalfSpec(3.0, relief=Relief.BY_HAND)
    result = fit(pocket=by_hand, plug=HalfSpec(0.0), region=SQUARE)
    pieces = hand_work(result.pocket, result.spec.pocket)
    assert [piece.area for piece in pieces] == pytest.approx([(1 - math.pi / 4) * 1.5**2] * 4, abs=2e-3)
    assert hand_work(result.plug, result.spec.plug) == ()


def test_looking_closely_stops_when_it_is_asked_to() -> None:
    """A square has three turns and four flips to look at; none is begun after the stop."""
    result = solve(SQUARE, FitSpec(0.05, HalfSpec(2.0), HalfSpec(2.0)))
    stopped = Progress()
    stopped.cancel()
    with pytest.raises(Cancelled):
        examined(result, Workshop(), progress=stopped)
    assert len(examined(result, Workshop(), progress=Progress()).orientations.lookalikes) == 7
