"""Two made halves: the verdict, the places and the amounts, against plane geometry worked out by hand."""

from __future__ import annotations

import pytest

from inlayfit.finding import Severity
from inlayfit.fit.bench_advice import advised, bench_work, goes_in, verdict_sentence
from inlayfit.fit.result import FitResult
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState
from inlayfit.geometry.region import Region

Ring = list[tuple[float, float]]
CUT, FINISHED = HalfState.ALREADY_CUT, HalfState.FINISHED
POCKET: Ring = [(0, 0), (40, 0), (40, 20), (0, 20)]
PLUG: Ring = [(0.1, 0.1), (39.9, 0.1), (39.9, 19.9), (0.1, 19.9)]
BUMP: Ring = [
    (0.1, 0.1),
    (15, 0.1),
    (15, 0.03),
    (21, 0.03),
    (21, 0.1),
    (39.9, 0.1),
    (39.9, 19.9),
    (0.1, 19.9),
]
"""0.1 mm all round, but for 6 mm of the lower wall, which has 0.03."""


def made(
    plug: Ring, *, clearance: float = 0.1, pocket_state: HalfState = CUT, plug_state: HalfState = CUT
) -> FitResult:
    spec = FitSpec(clearance, HalfSpec(0, pocket_state), HalfSpec(0, plug_state))
    result = solve(Region.of_ring(POCKET), spec, plug_drawn=Region.of_ring(plug))
    return advised(result, bench_work(result))


def codes(result: FitResult) -> list[str]:
    return [finding.code for finding in result.findings]


def test_a_plug_as_wanted_has_nothing_to_do() -> None:
    result = made(PLUG)
    assert bench_work(result) == ()
    assert result.findings == ()
    assert verdict_sentence(result).startswith("Goes in as wanted: 0.100 mm per side (0.200 mm overall)")


def test_a_bump_is_found_with_its_place_its_length_and_its_amount() -> None:
    result = made(BUMP)
    (work,) = bench_work(result)
    assert work.gap_mm == pytest.approx(0.03, abs=1e-6)
    assert work.take_off_mm == pytest.approx(0.07, abs=1e-6)
    assert 15 <= work.place_mm[0] <= 21
    # the bump and its two flanks, down to where the gap is that wanted
    assert work.length_mm == pytest.approx(6 + 2 * 0.07, abs=0.15)
    assert work.halves == (Half.PLUG, Half.POCKET)
    (finding,) = result.findings
    assert finding.code == "ease-here"
    assert "0.070 mm per side" in finding.message
    assert "off the plug there, or off the pocket" in finding.remedy
    assert goes_in(result)
    assert "tighter than wanted" in verdict_sentence(result)


@pytest.mark.parametrize(
    ("pocket_state", "plug_state", "says"),
    [
        (CUT, CUT, "off the plug there, or off the pocket."),
        (FINISHED, CUT, "off the plug there."),
        (CUT, FINISHED, "off the pocket there."),
        (FINISHED, FINISHED, "Neither half may be worked there: remake one, or choose another partner."),
    ],
)
def test_a_finished_half_is_never_to_be_worked(
    pocket_state: HalfState, plug_state: HalfState, says: str
) -> None:
    (finding,) = made(BUMP, pocket_state=pocket_state, plug_state=plug_state).findings
    assert finding.remedy.endswith(says)
    if pocket_state is FINISHED:
        assert "pocket" not in finding.remedy


def test_a_plug_that_bites_is_blocked_and_the_remedy_is_of_the_bench() -> None:
    high = [(x, -0.04 if y == 0.03 else y) for x, y in BUMP]
    result = made(high)
    block = result.findings[0]
    assert (block.code, block.severity) == ("bites", Severity.BLOCK)
    assert block.remedy.startswith("Work the spots listed")
    (work,) = bench_work(result)
    assert work.take_off_mm == pytest.approx(0.14, abs=1e-6)
    assert not goes_in(result)
    assert (
        verdict_sentence(result)
        == "Will not go in as it is: it binds by 0.040 mm per side (0.080 mm overall)."
    )
    assert (
        "choose another partner" in made(high, pocket_state=FINISHED, plug_state=FINISHED).findings[0].remedy
    )


def test_what_is_too_much_for_a_file_is_remade() -> None:
    result = made([(x - 2 if x < 1 else x, y) for x, y in PLUG])
    assert {f.remedy for f in result.findings} == {
        "That is too much for a file: remake one half, or choose another partner."
    }
    assert [f.code for f in result.findings] == ["bites", "ease-here"]


def test_a_loose_plug_is_shimmed_by_what_is_spare() -> None:
    result = made(PLUG, clearance=0.04)
    (finding,) = result.findings
    assert finding.code == "looser-than-wanted"
    assert "Shim each wall by 0.060 mm" in finding.remedy


def test_a_plug_too_large_all_round_is_one_stretch_of_its_whole_wall() -> None:
    result = made(PLUG, clearance=0.15)
    (work,) = bench_work(result)
    assert work.length_mm == pytest.approx(2 * (39.8 + 19.8), abs=1e-6)
    assert work.take_off_mm == pytest.approx(0.05, abs=1e-6)


def test_a_half_still_to_cut_needs_no_bench() -> None:
    result = solve(Region.of_ring(POCKET), FitSpec(0.1, HalfSpec(0, CUT), HalfSpec(2.0)))
    assert bench_work(result) == ()
    assert advised(result, ()) is result


def test_only_the_tightest_spots_are_named_and_the_others_counted() -> None:
    bumps: Ring = [(0.1, 0.1)]
    for i in range(8):
        x, y = 2 + 4.5 * i, 0.02 + 0.005 * i
        bumps += [(x, 0.1), (x, y), (x + 2, y), (x + 2, 0.1)]
    result = made([*bumps, (39.9, 0.1), (39.9, 19.9), (0.1, 19.9)])
    works = bench_work(result)
    assert [round(work.gap_mm, 6) for work in works] == [round(0.02 + 0.005 * i, 6) for i in range(8)]
    assert codes(result).count("ease-here") == 5
    assert "3 more spots are tighter" in next(f.message for f in result.findings if f.code == "ease-more")
