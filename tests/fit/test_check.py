"""The findings of a fit: the right code, the right weight, a place on the drawing, and a way out."""

from __future__ import annotations

import json
import math
import re

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document.sample import sample_state
from inlayfit.document.state import State
from inlayfit.finding import Finding, Severity, heaviest_first
from inlayfit.fit.result import FitResult
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, PREVIEW
from tests.strategies import examples, glyphs, lengths, regions

CUT = HalfState.ALREADY_CUT
BOX = Region.of(shapely.box(0, 0, 40, 30))
ELL = Region.of_ring([(0, 0), (40, 0), (40, 10), (10, 10), (10, 40), (0, 40)])


def only(result: FitResult, code: str) -> Finding:
    (finding,) = (finding for finding in result.findings if finding.code == code)
    return finding


def test_rounded_corners_are_noted() -> None:
    finding = only(solve(BOX, FitSpec(0.05, HalfSpec(6), HalfSpec(3))), "corners-rounded")
    assert finding.severity is Severity.NOTE
    assert "4 corners" in finding.message
    # In a right angle (√2 − 1)·r of the corner is left (plane geometry): 1.24 mm of a 3 mm radius.
    assert "1.24 mm" in finding.message


def test_a_channel_the_cutter_cannot_enter_is_a_warning() -> None:
    shape = Region.of(shapely.union(shapely.box(0, 0, 30, 30), shapely.box(29, 14, 50, 16)))
    finding = only(solve(shape, FitSpec(0.05, HalfSpec(3), HalfSpec(3))), "dead-end")
    assert finding.severity is Severity.WARN
    assert finding.place_mm is not None
    assert 30 <= finding.place_mm[0] <= 50
    assert 14 <= finding.place_mm[1] <= 16


def test_an_interference_is_noted_with_its_amount() -> None:
    finding = only(solve(BOX, FitSpec(-0.03, HalfSpec(3), HalfSpec(3))), "interference")
    assert finding.severity is Severity.NOTE
    assert "0.030 mm per side (0.060 overall)" in finding.message


def test_a_plug_that_bites_blocks() -> None:
    spec = FitSpec(0.05, HalfSpec(3, CUT), HalfSpec(3, CUT))
    result = solve(BOX, spec, plug_drawn=Region.of(shapely.box(0.1, 0.1, 40.2, 29.9)))
    finding = only(result, "bites")
    assert finding.severity is Severity.BLOCK
    assert "0.200 mm per side (0.400 overall)" in finding.message
    assert finding.place_mm is not None
    assert finding.place_mm[0] == pytest.approx(40.2)


def test_a_pocket_that_its_cutter_cannot_have_left_is_a_warning() -> None:
    finding = only(solve(BOX, FitSpec(0.05, HalfSpec(6, CUT), HalfSpec(3))), "sharper-than-cutter")
    assert finding.severity is Severity.WARN
    assert "4 corners" in finding.message


def test_a_cut_pocket_smaller_than_its_cutter_blocks() -> None:
    result = solve(Region.of(shapely.box(0, 0, 20, 5)), FitSpec(0.05, HalfSpec(6, CUT), HalfSpec(1)))
    assert only(result, "cutter-too-large").severity is Severity.BLOCK


def test_a_relieved_plug_says_how_much_went() -> None:
    result = solve(ELL, FitSpec(0.05, HalfSpec(1, CUT, Relief.ROUNDED), HalfSpec(4)))
    finding = only(result, "relieved")
    assert finding.severity is Severity.NOTE
    assert "1 corner is relieved in the plug" in finding.message
    assert finding.place_mm is not None
    assert math.dist(finding.place_mm, (10, 10)) < 0.2


def test_a_clearance_that_eats_one_piece_blocks_at_that_piece() -> None:
    two = Region.of(shapely.union(shapely.box(0, 0, 30, 30), shapely.box(50, 0, 53, 30)))
    result = solve(two, FitSpec(1.6, HalfSpec(2), HalfSpec(2)))
    finding = only(result, "clearance-eats-piece")
    assert finding.severity is Severity.BLOCK
    assert finding.place_mm is not None
    assert 50 <= finding.place_mm[0] <= 53


def test_a_clearance_that_takes_the_plug_apart_is_a_warning() -> None:
    ends, waist = [shapely.box(0, 0, 20, 20), shapely.box(30, 0, 50, 20)], shapely.box(19, 8, 31, 11)
    drawn = Region.of(shapely.union_all([*ends, waist]))
    result = solve(drawn, FitSpec(1.6, HalfSpec(2), HalfSpec(2)))
    assert only(result, "plug-in-pieces").severity is Severity.WARN
    assert len(result.plug.outline.polygons) == 2


@examples(15, 200)
@given(
    drawn=st.one_of(glyphs(), regions()),
    clearance=lengths(-0.3, 0.8),
    pocket=lengths(0.2, 9),
    plug=lengths(0.2, 9),
    relief=st.sampled_from(Relief),
    state=st.sampled_from(HalfState),
)
def test_every_finding_is_fit_to_be_shown(
    drawn: Region, clearance: float, pocket: float, plug: float, relief: Relief, state: HalfState
) -> None:
    """One sentence each, a place near the drawing, JSON as promised, heaviest first."""
    spec = FitSpec(clearance, HalfSpec(pocket, state, relief), HalfSpec(plug, relief=relief))
    findings = solve(drawn, spec).findings
    assert findings == heaviest_first(findings)
    x0, y0, x1, y1 = drawn.bounds
    for finding in findings:
        assert finding.code == finding.code.lower().replace(" ", "-")
        for sentence in (finding.message, finding.remedy):
            assert sentence.endswith(".")
            assert sentence[0].isupper() or sentence[0].isdigit()
            assert "\n" not in sentence
            assert "nan" not in sentence.split()
            assert not re.search(r"(^|\s)-\d", sentence), "a true minus"
        assert finding.place_mm is not None
        x, y = finding.place_mm
        margin = 2 + pocket + plug
        assert x0 - margin <= x <= x1 + margin
        assert y0 - margin <= y <= y1 + margin
        shown = finding.to_json()
        assert json.loads(json.dumps(shown, allow_nan=False)) == shown
        assert list(shown) == ["code", "severity", "place_mm", "message", "remedy", "fixed"]


@pytest.mark.parametrize("clearance", [-0.02, -0.008, 0.0])
@pytest.mark.parametrize("relief", [Relief.ROUNDED, Relief.T_BONE])
def test_a_preview_is_not_alarmed_by_its_own_coarseness(clearance: float, relief: Relief) -> None:
    leaf = sample_state(State()).outlines[0].region
    spec = FitSpec(clearance, HalfSpec(0.6), HalfSpec(1.0, relief=relief))
    for tolerance in (EXACT, PREVIEW):
        result = solve(leaf, spec, tolerance=tolerance)
        assert "bites" not in {finding.code for finding in result.findings}
    # A bite that is larger than both chords is seen in a preview too.
    made = FitSpec(0.0, HalfSpec(3, CUT), HalfSpec(3, CUT))
    wide = Region.of(shapely.box(-0.02, 0, 40, 30))
    assert only(solve(BOX, made, plug_drawn=wide, tolerance=PREVIEW), "bites").severity is Severity.BLOCK
