from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.loops import chain_loops
from inlayfit.geometry.path import Bezier, Path
from inlayfit.geometry.tolerance import EXACT


def pieces_of(path: Path) -> list[Path]:
    starts, ends = path.segment_ends()
    return [
        Path(np.array([a, b]), np.array([bulge]), False, {0: path.curves[i]} if i in path.curves else {})
        for i, (a, b, bulge) in enumerate(zip(starts, ends, path.bulges, strict=True))
    ]


def area(path: Path) -> float:
    x, y = flatten(path, 1e-4).T
    return abs(float(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1)))) / 2


@st.composite
def shuffled_star(draw: st.DrawFn) -> tuple[Path, list[Path]]:
    """A star polygon about a centre, some sides bulged, taken apart, turned about and shuffled."""
    count = draw(st.integers(3, 12))
    radii = draw(st.lists(st.floats(5, 9), min_size=count, max_size=count))
    bulges = draw(st.lists(st.sampled_from([0.0, 0.1, -0.1]), min_size=count, max_size=count))
    angles = 2 * np.pi * np.arange(count) / count
    path = Path(
        np.column_stack([np.cos(angles), np.sin(angles)]) * np.array(radii)[:, None], np.array(bulges)
    )
    flips = draw(st.lists(st.booleans(), min_size=count, max_size=count))
    loose = [p.reversed() if flip else p for p, flip in zip(pieces_of(path), flips, strict=True)]
    return path, draw(st.permutations(loose))


@given(shuffled_star())
def test_a_loop_taken_apart_and_shuffled_comes_together_again(star: tuple[Path, list[Path]]) -> None:
    path, loose = star
    found = chain_loops(loose, gap=0.01, tolerance=EXACT)
    assert len(found.loops) == 1
    assert not found.chains
    assert not found.tangles
    assert not found.gaps
    loop = found.loops[0]
    assert sorted(np.abs(loop.bulges)) == sorted(np.abs(path.bulges))
    assert area(loop) == pytest.approx(area(path), rel=1e-9)


@given(shuffled_star(), st.floats(0.002, 0.009))
def test_every_gap_within_tolerance_is_closed_and_reported_with_its_width(
    star: tuple[Path, list[Path]], width: float
) -> None:
    _, loose = star
    moved = loose[0].vertices + 0.0
    moved[-1] += (width * 0.6, width * 0.8)
    broken = [Path(moved, np.array([0.0]), closed=False), *loose[1:]]
    found = chain_loops(broken, gap=0.01, tolerance=EXACT)
    assert len(found.loops) == 1
    assert len(found.gaps) == 1
    assert found.gaps[0].width == pytest.approx(width, rel=1e-6)
    assert math.dist(found.gaps[0].place, moved[-1]) <= width


def test_a_gap_wider_than_tolerance_stays_open() -> None:
    corner = [Path.polyline([(0, 0), (10, 0), (10, 10)], closed=False)]
    rest = [Path.polyline([(10, 10.02), (0, 10), (0, 0)], closed=False)]
    found = chain_loops(corner + rest, gap=0.01, tolerance=EXACT)
    assert not found.loops
    assert len(found.chains) == 1
    assert len(chain_loops(corner + rest, gap=0.03, tolerance=EXACT).loops) == 1


def test_three_lines_at_one_point_are_a_tangle_of_all_that_hang_together() -> None:
    legs = [Path.polyline([(0, 0), (math.cos(a), math.sin(a))], closed=False) for a in (0, 2, 4)]
    apart = Path.polyline([(10, 0), (12, 0), (11, 2), (10, 0)], closed=False)
    found = chain_loops([*legs, apart], gap=0.01, tolerance=EXACT)
    assert [len(t) for t in found.tangles] == [3]
    assert len(found.loops) == 1


def test_curves_keep_their_control_points_when_run_through_backwards() -> None:
    curve = Bezier(np.array([(0.0, 0.0), (3.0, 5.0), (7.0, 5.0), (10.0, 0.0)]))
    bent = Path(np.array([(0.0, 0.0), (10.0, 0.0)]), np.zeros(1), False, {0: curve})
    base = Path.polyline([(0, 0), (10, 0)], closed=False)
    (loop,) = chain_loops([base, bent], gap=0.01, tolerance=EXACT).loops
    (kept,) = loop.curves.values()
    assert kept in (curve, curve.reversed())
    t = np.linspace(0, 1, 20_001)
    x, y = curve.at(t).T
    analytic = abs(float(np.sum((x[1:] - x[:-1]) * (y[1:] + y[:-1]) / 2)))
    assert area(loop) == pytest.approx(analytic, rel=1e-4)


def test_a_speck_shorter_than_the_gap_is_not_closed_on_itself() -> None:
    speck = Path.polyline([(0, 0), (0.004, 0)], closed=False)
    found = chain_loops([speck], gap=0.01, tolerance=EXACT)
    assert not found.loops
    assert len(found.chains) == 1
