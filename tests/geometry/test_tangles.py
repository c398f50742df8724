from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.path import Path
from inlayfit.geometry.tangles import Untangled, untangle
from inlayfit.geometry.tolerance import EXACT

RECTANGLE = [(0.0, 0.0), (10.0, 0.0), (10.0, 5.0), (0.0, 5.0)]


def box(x: float, y: float, w: float, h: float) -> Path:
    return Path.polyline([(x, y), (x + w, y), (x + w, y + h), (x, y + h)])


def line(*points: Sequence[float]) -> Path:
    return Path.polyline(points, closed=False)


def sides(points: Sequence[tuple[float, float]]) -> list[Path]:
    return [line(a, b) for a, b in zip(points, [*points[1:], points[0]], strict=True)]


def sorted_out(*paths: Path, gap: float = 0.01) -> Untangled:
    return untangle(paths, gap=gap, tolerance=EXACT)


def face_areas(found: Untangled) -> list[float]:
    return sorted(face.area for meeting in found.meetings for face in meeting.faces)


@given(st.floats(1, 9))
def test_a_line_from_wall_to_wall_parts_the_area_in_two(at: float) -> None:
    found = sorted_out(box(0, 0, 10, 5), line((at, 0), (at, 5)))
    assert face_areas(found) == pytest.approx(sorted([5 * at, 5 * (10 - at)]))
    assert sorted(found.meetings[0].places) == [(at, 0.0), (at, 5.0)]


def test_a_dividing_line_that_ends_just_before_the_wall_is_joined_to_it() -> None:
    found = sorted_out(box(0, 0, 10, 5), line((4, 0.006), (4, 4.995)))
    assert face_areas(found) == pytest.approx([20, 30], rel=1e-6)
    assert sorted(gap.width for gap in found.gaps) == pytest.approx([0.005, 0.006])


def test_lines_that_overshoot_their_corners_bound_the_face_between_them() -> None:
    found = sorted_out(
        line((-1, 0), (11, 0)), line((10, -1), (10, 6)), line((11, 5), (-1, 5)), line((0, 6), (0, -1))
    )
    assert face_areas(found) == pytest.approx([50])
    assert len(found.meetings[0].places) == 4


def test_a_centre_mark_across_a_circle_is_left_out_and_the_circle_keeps_its_arcs() -> None:
    found = sorted_out(Path.circle((0, 0), 5), line((-7, 0), (7, 0)), line((0, -7), (0, 7)))
    assert len(found.rings) == 1
    assert found.rings[0].bulges.all()
    assert len(found.crossing) == 2
    assert not found.meetings


def test_sectors_of_an_annulus_are_areas_and_its_middle_is_a_hole() -> None:
    spokes = [line((3 * math.cos(a), 3 * math.sin(a)), (5 * math.cos(a), 5 * math.sin(a))) for a in (0, 2, 4)]
    found = sorted_out(Path.circle((0, 0), 5), Path.circle((0, 0), 3), *spokes)
    assert len(face_areas(found)) == 3
    assert sum(face_areas(found)) == pytest.approx(math.pi * 16, rel=1e-4)


def test_rings_that_share_a_wall_stay_two_areas() -> None:
    assert face_areas(sorted_out(box(0, 0, 10, 5), box(10, 0, 4, 5))) == pytest.approx([20, 50])


def test_rings_that_cross_count_by_the_even_odd_rule() -> None:
    found = sorted_out(box(0, 0, 10, 10), box(5, 5, 10, 10))
    assert face_areas(found) == pytest.approx([75, 75])  # 100 − 25 each; the shared 25 is in both


@given(st.permutations(sides(RECTANGLE) * 2))
def test_lines_drawn_twice_count_once(twice: list[Path]) -> None:
    found = sorted_out(*twice)
    assert len(found.rings) == 1
    assert not found.meetings
    assert found.doubled_pieces == 4 or len(found.doubled_rings) == 1


def test_stretches_of_one_circle_that_overlap_count_once_and_stay_arcs() -> None:
    quarter = math.tan(math.pi / 8)
    start, top = (10.0, 0.0), (10.0, 4.0)
    arc = Path(np.array([start, top]), np.array([1.0]), closed=False)
    part = Path(np.array([(12.0, 2.0), top]), np.array([quarter]), closed=False)
    found = sorted_out(arc, part, line(top, (0, 4)), line((0, 4), (0, 0)), line((0, 0), start))
    assert found.doubled_pieces == 1
    assert len(found.rings) == 1
    assert sum(map(abs, found.rings[0].bulges)) == pytest.approx(1.0)


def test_a_ring_drawn_twice_counts_once_however_it_starts() -> None:
    turned = Path.polyline([RECTANGLE[2], RECTANGLE[1], RECTANGLE[0], RECTANGLE[3]])
    found = sorted_out(Path.polyline(RECTANGLE), turned)
    assert len(found.rings) == 1
    assert len(found.doubled_rings) == 1


def test_a_scribble_is_named_and_not_cut_apart() -> None:
    points = np.random.default_rng(5).random((2000, 2)) * 100
    found = sorted_out(*(line(a, b) for a, b in points.reshape(-1, 2, 2)[:1000]), gap=0.0)
    assert len(found.scribbles) == 1
    assert not found.meetings
