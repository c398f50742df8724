"""Painted area and lines as areas.

Checked against Clipper2 (by `clipper2-py`, an independent polygon library) for random rings that cross
themselves and each other, against the angle sum that defines a winding number, and against plane geometry.
"""

import math

import clipper2
import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from inlayfit.geometry.paint import dashed, painted, stroked, winding_numbers
from inlayfit.geometry.path import Points
from inlayfit.geometry.transform import Transform
from tests.oracles import CLIPPER_SCALE

ARC = 1e-4
SQUARE = np.array([[0.0, 0], [10, 0], [10, 10], [0, 10]])
few = settings(max_examples=40, deadline=None)


def rings(*, most: int = 12) -> st.SearchStrategy[list[Points]]:
    """One to four rings of random points: they cross themselves and each other."""
    number = st.integers(-400, 400).map(lambda n: n / 8)
    ring = st.lists(st.tuples(number, number), min_size=3, max_size=most).map(np.array)
    return st.lists(ring, min_size=1, max_size=4)


def clipper_area(contours: list[Points], *, evenodd: bool) -> float:
    scaled = [np.rint(ring * CLIPPER_SCALE).astype(np.int64) for ring in contours]
    rule = clipper2.FillRule.EVEN_ODD if evenodd else clipper2.FillRule.NON_ZERO
    outlines = clipper2.union(scaled, rule)
    return sum(float(clipper2.area(path)) for path in outlines) / CLIPPER_SCALE**2


@few
@given(rings(), st.booleans())
def test_painted_area_agrees_with_clipper2(contours: list[Points], evenodd: bool) -> None:
    ours = painted(contours, evenodd=evenodd)
    assert shapely.is_valid(ours.shape)
    assert ours.area == pytest.approx(clipper_area(contours, evenodd=evenodd), abs=1e-3)


@few
@given(rings())
def test_direction_of_all_rings_does_not_matter(contours: list[Points]) -> None:
    for evenodd in (False, True):
        there = painted(contours, evenodd=evenodd)
        back = painted([ring[::-1] for ring in contours], evenodd=evenodd)
        assert there.area == pytest.approx(back.area, abs=1e-9)


@few
@given(rings())
def test_even_odd_area_lies_within_the_nonzero_area(contours: list[Points]) -> None:
    odd, any_turn = painted(contours, evenodd=True), painted(contours, evenodd=False)
    assert odd.minus(any_turn).area <= 1e-9


@few
@given(rings(), st.tuples(st.floats(-50, 50), st.floats(-50, 50)))
def test_winding_number_is_the_sum_of_angles(contours: list[Points], point: tuple[float, float]) -> None:
    spokes = [ring - np.array(point) for ring in contours]
    nearest = min(shapely.Point(point).distance(shapely.LinearRing(ring)) for ring in contours)
    if nearest < 1e-6:
        return  # on the line itself there is no winding number
    total = 0.0
    for spoke in spokes:
        after = np.roll(spoke, -1, axis=0)
        cross = spoke[:, 0] * after[:, 1] - spoke[:, 1] * after[:, 0]
        total += float(np.arctan2(cross, (spoke * after).sum(axis=1)).sum())
    closed = np.array([shapely.LinearRing(ring) for ring in contours])
    assert winding_numbers(np.array([point]), closed)[0] == round(total / (2 * math.pi))


def test_pentagram_has_a_hole_only_by_even_odd() -> None:
    angles = math.pi / 2 + 4 * math.pi / 5 * np.arange(5)
    star = np.column_stack([np.cos(angles), np.sin(angles)])
    # Plane geometry: inner pentagon of circumradius 1/phi², five tips on its sides.
    phi = (1 + math.sqrt(5)) / 2
    inner = 5 / 2 * (1 / phi**2) ** 2 * math.sin(2 * math.pi / 5)
    whole = 5 * math.sin(math.pi / 5) * (1 / phi**2)
    assert painted([star], evenodd=False).area == pytest.approx(whole, rel=1e-12)
    assert painted([star], evenodd=True).area == pytest.approx(whole - inner, rel=1e-12)


def test_nested_rings_become_holes_and_islands() -> None:
    frame = [SQUARE, SQUARE[::-1] * 0.8 + 1, SQUARE * 0.4 + 3]
    region = painted(frame, evenodd=False)
    assert region.area == pytest.approx(100 - 64 + 16)
    assert (len(region.polygons), region.hole_count) == (2, 1)
    same_way = painted([SQUARE, SQUARE * 0.8 + 1], evenodd=False)
    assert same_way.area == pytest.approx(100)
    assert same_way.hole_count == 0


def test_ring_drawn_twice_counts_twice() -> None:
    assert painted([SQUARE, SQUARE], evenodd=True).is_empty
    assert painted([SQUARE, SQUARE], evenodd=False).area == pytest.approx(100)
    assert painted([SQUARE, SQUARE[::-1]], evenodd=False).is_empty


@pytest.mark.parametrize(
    "bad",
    [
        np.empty((0, 2)),
        np.array([[0.0, 0], [1, 1]]),
        np.array([[0.0, 0], [1, 0], [0, 0], [1, 0]]),
        np.array([[0.0, 0], [math.nan, 1], [2, 2]]),
        np.array([[0.0, 0], [math.inf, 1], [2, 2]]),
        np.array([[3.0, 3], [3, 3], [3, 3]]),
    ],
)
def test_ring_that_encloses_nothing_changes_nothing(bad: Points) -> None:
    assert painted([bad], evenodd=False).is_empty
    assert painted([SQUARE, bad], evenodd=True).area == pytest.approx(100)


def test_area_of_many_crossing_bars_is_exact() -> None:
    # A grid of bars that overlap: inclusion-exclusion gives the area.
    bars = [np.array([[i, 0.0], [i + 0.5, 0], [i + 0.5, 60], [i, 60]]) for i in range(60)]
    bars += [ring[:, ::-1][::-1] for ring in bars]
    covered = 60 * 30.0 * 2 - 3600 * 0.25
    assert painted(bars, evenodd=False).area == pytest.approx(covered, rel=1e-9)


def test_sliver_whose_pieces_overlap_by_rounding_is_still_painted() -> None:
    # Found by changing files at random: cut at its crossing, two of its faces overlap by one rounding error.
    sliver = np.array(
        [
            [-7.645468904157198, 29.463620808993408],
            [-8.095651444159412, 29.452461346139714],
            [-9.045928066642347, 29.42890517563768],
            [-15.491367650239258, 29.269130779215008],
        ]
    )
    for evenodd in (False, True):
        found = painted([sliver, SQUARE], evenodd=evenodd)
        assert shapely.is_valid(found.shape)
        assert found.area == pytest.approx(100, abs=1e-9)


# Lines as areas


@pytest.mark.parametrize(("cap", "ends"), [("butt", 0.0), ("square", 4.0 * 4.0), ("round", math.pi * 2.0**2)])
def test_straight_line_covers_its_length_times_its_width_and_its_ends(cap: str, ends: float) -> None:
    line = np.array([[1.0, 2], [13, 7]])
    area = stroked(line, 4.0, closed=False, arc_tolerance=ARC, cap=cap).area  # type: ignore[arg-type] # the cases
    assert area == pytest.approx(13 * 4 + ends, rel=1e-4)


@pytest.mark.parametrize(("join", "corner"), [("miter", 4.0), ("bevel", 2.0), ("round", math.pi)])
def test_closed_square_line_is_a_frame_with_such_corners(join: str, corner: float) -> None:
    # Outside: a strip along each side and four quarters of the corner; inside: mitred always.
    area = stroked(SQUARE, 4.0, closed=True, arc_tolerance=ARC, join=join).area  # type: ignore[arg-type] # the cases
    assert area == pytest.approx(4 * 10 * 2 + 4 * corner + (100 - 36), rel=1e-4)


@few
@given(st.floats(20, 160), st.floats(1.0, 12.0))
def test_mitre_reaches_out_until_its_limit(angle_deg: float, limit: float) -> None:
    angle = math.radians(angle_deg)
    line = np.array([[100.0, 0], [0, 0], [100 * math.cos(angle), 100 * math.sin(angle)]])
    reach = 1 / math.sin(angle / 2)  # SVG 2, 13.5.5: miter length / stroke width
    if abs(reach - limit) < 1e-6:
        return
    area = stroked(line, 2.0, closed=False, arc_tolerance=ARC, join="miter", miter_limit=limit).area
    half_turn = (math.pi - angle) / 2
    bevel = math.sin(2 * half_turn) / 2
    tip = math.tan(half_turn) if reach <= limit else bevel
    inner = math.tan(half_turn)  # overlap of the two strips on the inner side
    assert area == pytest.approx(2 * 2 * 100 - inner + tip, rel=1e-5)


def test_line_that_returns_to_its_start_has_two_ends_and_no_corner() -> None:
    ring = np.vstack([SQUARE, SQUARE[:1]])
    area = stroked(ring, 2.0, closed=False, arc_tolerance=ARC, join="miter").area
    assert area == pytest.approx(12**2 - 8**2 - 1.0, rel=1e-9)  # the corner square at the start is missing


@pytest.mark.parametrize(("cap", "area"), [("butt", 0.0), ("square", 16.0), ("round", math.pi * 4)])
def test_line_without_length_shows_only_its_ends(cap: str, area: float) -> None:
    dot = np.array([[3.0, 3], [3, 3]])
    found = stroked(dot, 4.0, closed=False, arc_tolerance=ARC, cap=cap).area  # type: ignore[arg-type] # the cases
    assert found == pytest.approx(area, rel=1e-4)


def test_oval_pen_is_the_stretched_image_of_a_round_one() -> None:
    stretch = Transform(2.0, 0.3, -0.2, 0.5)
    size = math.sqrt(stretch.determinant)
    pen = Transform(*(v / size for v in (stretch.a, stretch.b, stretch.c, stretch.d)))
    line = np.array([[0.0, 0], [10, 3], [4, 9]])
    before = stroked(line, 2.0, closed=False, arc_tolerance=1e-5, join="round")
    after = stroked(stretch.points(line), 2.0 * size, closed=False, arc_tolerance=1e-5, join="round", pen=pen)
    assert after.area == pytest.approx(before.area * stretch.determinant, rel=1e-5)


@pytest.mark.parametrize("width", [0.0, -1.0, math.nan, math.inf])
def test_line_without_usable_width_covers_nothing(width: float) -> None:
    assert stroked(SQUARE, width, closed=True, arc_tolerance=ARC).is_empty


@few
@given(
    st.lists(st.floats(0.5, 9), min_size=2, max_size=6).filter(lambda v: len(v) % 2 == 0),
    st.floats(-30, 30),
)
def test_dashes_follow_the_pattern_along_the_line(lengths: list[float], offset: float) -> None:
    pieces = dashed(SQUARE, lengths, offset, closed=True)
    drawn = sum(shapely.LineString(piece).length for piece in pieces)
    samples = (np.arange(40_000) + 0.5) / 40_000 * 40 + offset
    place = np.mod(samples, sum(lengths))
    edges = np.cumsum(lengths)
    on = np.searchsorted(edges, place, side="right") % 2 == 0
    assert drawn == pytest.approx(on.mean() * 40, abs=0.01)


@pytest.mark.parametrize("offset", [1e300, -1e300, math.inf, math.nan])
def test_pattern_offset_beyond_measure_does_no_harm(offset: float) -> None:
    pieces = dashed(SQUARE, (3.0, 2.0), offset, closed=True)
    assert sum(shapely.LineString(piece).length for piece in pieces) <= 40 + 1e-9


def test_pattern_too_fine_to_draw_leaves_the_line_whole() -> None:
    pieces = dashed(SQUARE, (1e-9, 1e-9), 0.0, closed=True)
    assert len(pieces) == 1
    assert shapely.LineString(pieces[0]).length == pytest.approx(40)
