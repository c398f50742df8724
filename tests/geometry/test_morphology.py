"""Disk operations: their algebra, tight sweeps, and walls that stay where they are drawn."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import MultiPolygon

from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.morphology import (
    closed,
    dilate,
    erode,
    opened,
    simplified,
    thick_parts,
    thinned,
    without_films,
)
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, PREVIEW
from inlayfit.geometry.transform import Transform
from tests.oracles import (
    MICROMETRE,
    Raster,
    clipper_closed,
    clipper_offset,
    clipper_opened,
    spread,
    stands_out,
    steiner_area,
    steiner_perimeter,
)
from tests.strategies import examples, lengths, regions, rigid_motions, rounded, star_rings, stars, turns

radii = lengths(0.1, 3.0)


def rounded_box(a: float, b: float, radius: float) -> Region:
    r, quarter = radius, math.tan(math.pi / 8)
    corners = [(r, 0), (a - r, 0), (a, r), (a, b - r), (a - r, b), (r, b), (0, b - r), (0, r)]
    return Region.of_ring(flatten(Path(np.array(corners), np.array([0, quarter] * 4)), EXACT.arc_mm))


# --- walls stay where they are drawn ---------------------------------------------------------------------


@pytest.mark.parametrize("fillet", [0.002, 0.005, 0.01, 0.02, 0.05, 0.1])
@pytest.mark.parametrize("radius", [0.5, 1.5, 3.0])
def test_a_tiny_fillet_does_not_tilt_the_wall_beside_it(fillet: float, radius: float) -> None:
    """GEOS alone tilts the whole wall by up to a hundredth of the radius: 19 µm at 20 µm fillets."""
    as_cut = opened(rounded_box(40, 25, fillet), radius, EXACT)
    assert spread(as_cut, rounded_box(40, 25, radius)) <= MICROMETRE / 2


@pytest.mark.parametrize("first", [0.159, 0.5, 1.0, 1.5])
@pytest.mark.parametrize("then", [0.3, 0.6, 1.0, 2.0])
def test_an_opening_leaves_a_concave_corner_fit_for_a_closing(first: float, then: float) -> None:
    """A T with six convex corners and two concave ones; each gets its own fillet and nothing else."""
    tee = Region.of_ring([(0, 24), (11, 24), (11, 0), (21, 0), (21, 24), (40, 24), (40, 34), (0, 34)])
    form = closed(opened(tee, first, EXACT), then, EXACT)
    expected = 640 - 6 * (1 - math.pi / 4) * first**2 + 2 * (1 - math.pi / 4) * then**2
    assert abs(form.area - expected) <= MICROMETRE / 2 * tee.perimeter / 10


# --- against others --------------------------------------------------------------------------------------


@examples(25, 300)
@given(region=regions(), distance=st.one_of(lengths(0.05, 3.0), lengths(-3.0, -0.05)))
def test_an_offset_agrees_with_clipper2(region: Region, distance: float) -> None:
    ours, theirs = dilate(region, distance, EXACT), clipper_offset(region, distance)
    # Where a piece is about to vanish one library may keep a speck of it that the other loses.
    ours, theirs = (thick_parts(one, 2 * MICROMETRE) for one in (ours, theirs))
    assert spread(ours, theirs) <= MICROMETRE


@examples(25, 300)
@given(region=regions(), radius=radii)
def test_opening_and_closing_agree_with_clipper2(region: Region, radius: float) -> None:
    """By what one covers and the other does not: a tight sweep is ours alone, and is checked below."""
    ours, theirs = opened(region, radius, EXACT), clipper_opened(region, radius)
    assert stands_out(theirs, ours) <= MICROMETRE
    loose = clipper_opened(region, radius - EXACT.cutter_slack_mm)
    assert stands_out(ours, loose) <= MICROMETRE
    ours, theirs = closed(region, radius, EXACT), clipper_closed(region, radius)
    assert stands_out(ours, theirs) <= MICROMETRE
    loose = clipper_closed(region, radius - EXACT.cutter_slack_mm)
    assert stands_out(loose, ours) <= MICROMETRE


@examples(4, 30)
@given(region=regions(), radius=lengths(0.6, 3.0))
def test_disk_operations_agree_with_a_raster_within_two_pixels(region: Region, radius: float) -> None:
    """scipy.ndimage's exact Euclidean distance transform, of pixels inside and of pixels touched."""
    raster = Raster(region, 0.08, 4.0)
    eroded = raster.grown(raster.filled, -radius)
    grown = raster.sampled(dilate(region, radius, EXACT))
    assert raster.beyond(grown, raster.grown(raster.touched(region), radius)) <= 1
    assert raster.beyond(raster.grown(raster.filled, radius), grown) <= 1
    swept = raster.grown(eroded, radius)
    ours = raster.sampled(opened(region, radius, EXACT))
    inside = raster.grown(raster.grown(raster.filled, -radius - 2 * raster.pixel), radius + 2 * raster.pixel)
    outside = raster.grown(raster.grown(raster.filled, -radius + 2 * raster.pixel), radius - 2 * raster.pixel)
    assert raster.beyond(ours, outside) <= 2
    assert raster.beyond(inside, ours) <= 2
    assert raster.beyond(inside, swept) <= 2


@examples(25, 200)
@given(ring=star_rings(), distance=lengths(0.01, 5.0))
def test_a_convex_shape_grows_by_steiners_formula(ring: np.ndarray, distance: float) -> None:
    """Steiner's formula for convex bodies: A + P·d + π·d², P + 2·π·d (Schneider, Convex Bodies, ch. 4)."""
    hull = Region.of(shapely.convex_hull(shapely.Polygon(ring)))
    grown = dilate(hull, distance, EXACT)
    area = steiner_area(hull.area, hull.perimeter, distance)
    perimeter = steiner_perimeter(hull.perimeter, distance)
    assert abs(grown.area - area) <= EXACT.arc_mm * perimeter
    assert grown.perimeter == pytest.approx(perimeter, abs=0.001 * distance + MICROMETRE)


# --- the algebra of erosion and dilation -----------------------------------------------------------------


@examples(25, 300)
@given(region=regions(), radius=radii)
def test_opening_shrinks_and_closing_grows(region: Region, radius: float) -> None:
    assert stands_out(opened(region, radius, EXACT), region) <= MICROMETRE
    assert stands_out(region, closed(region, radius, EXACT)) <= MICROMETRE


@examples(20, 200)
@given(region=regions(), radius=radii)
def test_opening_twice_is_opening_once(region: Region, radius: float) -> None:
    once = opened(region, radius, EXACT)
    assert stands_out(once, opened(once, radius - EXACT.cutter_slack_mm, EXACT)) <= MICROMETRE


@examples(20, 200)
@given(region=regions(), radius=radii, more=lengths(0.01, 2.0))
def test_a_larger_cutter_reaches_no_more(region: Region, radius: float, more: float) -> None:
    assert stands_out(opened(region, radius + more, EXACT), opened(region, radius, EXACT)) <= MICROMETRE


@examples(20, 200)
@given(region=regions(), radius=radii)
def test_closing_is_the_opening_of_the_outside(region: Region, radius: float) -> None:
    x0, y0, x1, y1 = region.bounds
    margin = 4 * radius
    around = Region.of(shapely.box(x0 - margin, y0 - margin, x1 + margin, y1 + margin))
    outside = opened(around.minus(region), radius, EXACT)
    hole = Region.of(shapely.box(x0 - radius, y0 - radius, x1 + radius, y1 + radius))
    assert spread(hole.minus(outside), closed(region, radius, EXACT)) <= 2 * MICROMETRE


@examples(15, 100)
@given(region=regions(), radius=radii, motion=rigid_motions())
def test_moving_commutes_with_opening(region: Region, radius: float, motion: Transform) -> None:
    there = opened(region.moved(motion), radius, EXACT)
    assert (
        stands_out(there, opened(region, radius - EXACT.cutter_slack_mm, EXACT).moved(motion)) <= MICROMETRE
    )
    assert (
        stands_out(
            opened(region, radius, EXACT).moved(motion),
            opened(region.moved(motion), radius - EXACT.cutter_slack_mm, EXACT),
        )
        <= MICROMETRE
    )


@given(region=regions(), distance=lengths(-2.0, 2.0))
@examples(15, 100)
def test_eroding_is_dilating_by_the_opposite(region: Region, distance: float) -> None:
    assert erode(region, distance, EXACT).shape.equals_exact(dilate(region, -distance, EXACT).shape)


@examples(15, 100)
@given(region=regions())
def test_no_distance_and_no_region_change_nothing(region: Region) -> None:
    assert dilate(region, 0.0, EXACT) is region
    assert opened(region, 0.0, EXACT) is region
    assert closed(region, -1.0, EXACT) is region
    for operation in (dilate, erode, opened, closed):
        assert operation(Region.empty(), 1.0, EXACT).is_empty


# --- slots as wide as the cutter ---------------------------------------------------------------------------


def dumbbell(width: float, *, angle: float = 0.0) -> Region:
    """Two bores of 12 mm joined by a straight slot."""
    slot = shapely.box(0, -width / 2, 30, width / 2)
    bores = [shapely.buffer(shapely.Point(x, 0), 6, quad_segs=200) for x in (0, 30)]
    return Region.of(shapely.union_all([slot, *bores])).moved(Transform.turn(angle))


def bow(width: float) -> Region:
    """Two bores joined by a slot that runs along an arc of 20 mm radius, its walls within 0.02 µm."""
    angles = np.linspace(0.0, 2.0, 1500)
    walls = [(20 + side * width / 2) * np.column_stack([np.cos(angles), np.sin(angles)]) for side in (1, -1)]
    slot = shapely.Polygon(np.vstack([walls[0], walls[1][::-1]]))
    ends = [20 * np.array([math.cos(a), math.sin(a)]) for a in (0.0, 2.0)]
    bores = [shapely.buffer(shapely.Point(*end), 6, quad_segs=200) for end in ends]
    return Region.of(shapely.union_all([slot, *bores]))


@pytest.mark.parametrize("width", [1.0, 3.0, 6.0])
@pytest.mark.parametrize("angle", [0.0, 0.3, math.pi / 4, 1.1, 3.0])
def test_a_slot_exactly_one_cutter_wide_survives(width: float, angle: float) -> None:
    shape = dumbbell(width, angle=angle)
    as_cut = opened(shape, width / 2, EXACT)
    assert len(as_cut.polygons) == 1
    assert as_cut.area == pytest.approx(shape.area, abs=0.1)
    too_wide = opened(shape, width / 2 + MICROMETRE, EXACT)
    assert len(too_wide.polygons) == 2


@pytest.mark.parametrize("width", [1.0, 3.0, 6.0])
def test_a_curved_slot_exactly_one_cutter_wide_survives(width: float) -> None:
    assert len(opened(bow(width), width / 2, EXACT).polygons) == 1
    assert len(opened(bow(width), width / 2 + MICROMETRE, EXACT).polygons) == 2


@pytest.mark.parametrize("diameter", [0.5, 1, 2, 3, 3.175, 6, 6.35, 12, 25, 50])
def test_a_bore_exactly_one_cutter_wide_survives(diameter: float) -> None:
    bore = Region.of_ring(flatten(Path.circle((3.3, -7.1), diameter / 2), EXACT.arc_mm))
    as_cut = opened(bore, diameter / 2, EXACT)
    assert spread(as_cut, bore) <= MICROMETRE + 1e-4 * diameter
    block = Region.of(shapely.box(-40, -50, 50, 40)).minus(bore)
    assert spread(closed(block, diameter / 2, EXACT), block) <= MICROMETRE + 1e-4 * diameter
    assert opened(bore, diameter / 2 + 2 * MICROMETRE + 1e-4 * diameter, EXACT).is_empty


@examples(100, 1000)
@given(
    angles=st.tuples(turns(), turns()),
    lengths_=st.tuples(lengths(3.0, 6.0), lengths(3.0, 6.0)),
    shift=st.sampled_from([0.0, 1.0, 10.0, 58.3]),
)
def test_what_hangs_on_strokes_exactly_one_cutter_wide_is_not_lost(
    angles: tuple[float, float], lengths_: tuple[float, float], shift: float
) -> None:
    """Of one in ten such shapes GEOS lost a whole bore, in the erosion of it or the dilation of its block.

    The centres stay where they are, but for the bores' rims, if the cutter is a little smaller.
    """
    x, y, parts = 0.0, shift, [shapely.buffer(shapely.Point(0.0, shift), 1.5, quad_segs=32)]
    for angle, length in zip(angles, lengths_, strict=True):
        start, x, y = (x, y), x + length * math.cos(angle), y + length * math.sin(angle)
        stroke = shapely.LineString([start, (x, y)])
        parts.append(shapely.buffer(stroke, 1.0, cap_style="square", join_style="mitre"))
        parts.append(shapely.buffer(shapely.Point(x, y), 1.5, quad_segs=32))
    shape = Region.of(shapely.union_all(parts))
    block = Region.of(shapely.box(-20, shift - 20, 20, shift + 20)).minus(shape)
    for moved in (erode(shape, 1.0, EXACT), dilate(block, 1.0, EXACT)):
        assert shapely.is_valid(moved.shape)
    assert erode(shape, 1.0, EXACT).area == pytest.approx(erode(shape, 0.999999, EXACT).area, abs=0.001)
    assert dilate(block, 1.0, EXACT).area == pytest.approx(dilate(block, 0.999999, EXACT).area, abs=0.001)


@pytest.mark.parametrize("angle", [0.0, 0.3, 1.1])
def test_a_gap_exactly_one_cutter_wide_stays_open(angle: float) -> None:
    block = Region.of(shapely.box(-20, -20, 50, 20)).moved(Transform.turn(angle))
    part = block.minus(dumbbell(3.0, angle=angle))
    assert closed(part, 1.5, EXACT).area == pytest.approx(part.area, abs=0.1)
    assert closed(part, 1.5 + MICROMETRE, EXACT).area > part.area + 30


# --- dust and needless points ------------------------------------------------------------------------------


def test_thick_parts_keep_what_is_thicker_and_drop_what_is_thinner() -> None:
    thick, thin = shapely.box(0, 0, 10, 0.01), shapely.box(0, 1, 10, 1.0005)
    kept = thick_parts(Region.of(shapely.union(thick, thin)), MICROMETRE)
    assert kept.area == pytest.approx(thick.area)


def test_films_go_and_all_else_stays_whole() -> None:
    film, speck = shapely.box(0, 0, 20, 0.0006), shapely.Polygon([(30, 0), (30.01, 0.01), (30.02, 0.02)])
    tailed = shapely.union(shapely.box(0, 5, 2, 7), shapely.box(1, 6, 20, 6.0002))
    assert without_films(Region.of(shapely.union(film, tailed)), MICROMETRE).area == pytest.approx(
        tailed.area
    )
    assert without_films(Region(MultiPolygon([speck])), MICROMETRE).is_empty
    assert without_films(Region.empty(), MICROMETRE).is_empty


def test_thick_parts_joined_by_a_film_come_apart() -> None:
    film = shapely.box(0, 0, 20, 0.0002)
    blobs = [shapely.box(x, -1, x + 2, 1) for x in (0, 18)]
    kept = thick_parts(Region.of(shapely.union_all([film, *blobs])), MICROMETRE)
    assert len(kept.polygons) == 2
    assert kept.area == pytest.approx(8, abs=0.01)


@examples(20, 200)
@given(region=rounded())
def test_leaving_out_points_moves_no_wall_farther_than_it_says(region: Region) -> None:
    for tolerance in (EXACT, PREVIEW):
        fewer = simplified(region, tolerance)
        assert spread(fewer, region) <= tolerance.simplify_mm + 1e-9
        assert fewer.vertex_count <= region.vertex_count
        assert spread(thinned(region, tolerance), region) <= tolerance.thin_mm + 1e-9


@examples(15, 100)
@given(region=stars(), radius=radii)
def test_a_preview_differs_from_the_exact_result_by_no_more_than_its_arcs(
    region: Region, radius: float
) -> None:
    rough, exact = dilate(region, radius, PREVIEW), dilate(region, radius, EXACT)
    assert spread(rough, exact) <= 2.25 * (PREVIEW.arc_mm + EXACT.arc_mm)
