from __future__ import annotations

from collections.abc import Iterable

import numpy as np
import pytest
from shapely import box

from inlayfit.finding import Finding, Severity
from inlayfit.geometry.faults import check_ring, size_findings, tiny_finding
from inlayfit.geometry.tolerance import EXACT


def codes(findings: Iterable[Finding]) -> list[str]:
    return [finding.code for finding in findings]


def test_a_sound_ring_passes_without_a_word() -> None:
    checked = check_ring(np.array([(0, 0), (4, 0), (4, 3.0)]), EXACT, name="It")
    assert [area.area for area in checked.areas] == [6]
    assert checked.findings == ()


def test_a_bow_tie_is_mended_by_the_even_odd_rule_and_its_crossing_is_shown() -> None:
    # Two triangles of base 10 and height 5: 25 each, crossing in the middle of the square.
    checked = check_ring(np.array([(0, 0), (10, 10), (10, 0), (0, 10.0)]), EXACT, name="It")
    assert sum(area.area for area in checked.areas) == pytest.approx(50)
    (finding,) = checked.findings
    assert (finding.code, finding.severity, finding.fixed) == ("outline-self-crossing", Severity.WARN, True)
    assert finding.place_mm == pytest.approx((5, 5))


@pytest.mark.parametrize(
    ("points", "code"),
    [
        ([(0, 0), (10, 0), (5, 0)], "outline-without-area"),
        ([(0, 0), (10, 0)], "outline-without-area"),
        ([(0, 0), (10, np.nan), (5, 5)], "outline-not-finite"),
        ([(0, 0), (10, 0), (10, 1e-6), (0, 1e-6)], "outline-without-area"),
    ],
)
def test_a_ring_that_encloses_nothing_is_turned_away_with_its_place(
    points: list[tuple[float, float]], code: str
) -> None:
    checked = check_ring(np.array(points, dtype=float), EXACT, name="It")
    assert checked.areas == ()
    assert codes(checked.findings) == [code]
    assert checked.findings[0].place_mm == (0, 0)


def test_sizes_that_nobody_draws_are_suspected() -> None:
    assert codes(size_findings((0, 0, 10_001, 5), count=1)) == ["size-absurd"]
    assert codes(size_findings((0, 0, 0.05, 0.02), count=1)) == ["size-tiny"]
    assert not size_findings((0, 0, 9_999, 5), count=1)
    tiny = tiny_finding(box(3, 4, 3.02, 4.05), "It")
    assert tiny is not None
    assert tiny.place_mm == pytest.approx((3, 4))
    assert tiny_finding(box(0, 0, 0.2, 0.05), "It") is None
