from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.overlaps import clear_overlaps
from inlayfit.geometry.path import Path

spans = st.tuples(st.integers(0, 40), st.integers(1, 20)).map(lambda s: (s[0] / 2, (s[0] + s[1]) / 2))


def covered(intervals: list[tuple[float, float]]) -> float:
    total, reach = 0.0, -math.inf
    for low, high in sorted(intervals):
        total += max(0.0, high - max(low, reach))
        reach = max(reach, high)
    return total


@given(
    st.lists(spans, min_size=1, max_size=8), st.floats(-math.pi, math.pi), st.lists(st.booleans(), min_size=8)
)
def test_stretches_of_one_line_keep_the_length_of_their_union(
    intervals: list[tuple[float, float]], angle: float, flips: list[bool]
) -> None:
    along, away = np.array([math.cos(angle), math.sin(angle)]), np.array([-math.sin(angle), math.cos(angle)])
    segments = [
        Path.polyline(np.array([low, high])[:: -1 if flip else 1, None] * along + 3 * away, closed=False)
        for (low, high), flip in zip(intervals, flips, strict=False)
    ]
    cleared = clear_overlaps(segments, tolerance=0.001)
    kept = [float(np.hypot(*(s.vertices[1] - s.vertices[0]))) for s in cleared.segments]
    assert sum(kept) == pytest.approx(covered(intervals), abs=1e-6)
    assert len(kept) + cleared.removed == len(segments)


@given(st.floats(0.3, 3), st.floats(0.3, 2.9), st.floats(0, 6))
def test_two_arcs_of_one_circle_become_the_arc_over_both(first: float, second: float, start: float) -> None:
    def arc(low: float, sweep: float) -> Path:
        ends = 7 * np.array([[math.cos(a), math.sin(a)] for a in (low, low + sweep)])
        return Path(ends, np.array([math.tan(sweep / 4)]), closed=False)

    middle = start + first * 0.6
    cleared = clear_overlaps([arc(start, first), arc(middle, second).reversed()], tolerance=0.001)
    union = max(first, 0.6 * first + second)
    swept = sum(4 * math.atan(abs(float(s.bulges[0]))) for s in cleared.segments)
    assert swept == pytest.approx(union, abs=1e-6)


def test_parallel_lines_are_not_the_same_line() -> None:
    one = Path.polyline([(0, 0), (10, 0)], closed=False)
    other = Path.polyline([(0, 0.1), (10, 0.1)], closed=False)
    assert clear_overlaps([one, other], tolerance=0.001).removed == 0
