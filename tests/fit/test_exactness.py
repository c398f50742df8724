"""The fit against closed forms: twelve shapes whose answers are worked out on paper.

Plane geometry and Steiner's formula (tests/oracles.py) give areas and perimeters; areas are compared as a
wall's distance: an area may be off by half a micrometre times the wall's length.
"""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.morphology import opened
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from tests.oracles import boundary_samples, distances_to_boundary, spread, steiner_area, steiner_perimeter
from tests.strategies import PARAMETRIC, KnownShape, examples, lengths

HALF_MICROMETRE = 0.0005


def drawn_shape(data: st.DataObject, name: str, *, widest: float = 5.0) -> tuple[KnownShape, float]:
    shape = data.draw(PARAMETRIC[name]())
    return shape, data.draw(lengths(0.1, min(shape.widest_cutter, widest)))


@pytest.mark.parametrize("name", PARAMETRIC)
@examples(3, 200)
@given(data=st.data())
def test_a_pocket_as_cut_has_the_area_and_perimeter_of_its_closed_form(
    name: str, data: st.DataObject
) -> None:
    shape, radius = drawn_shape(data, name)
    as_cut = opened(shape.region, radius, EXACT)
    area, perimeter = shape.as_cut(radius)
    assert abs(as_cut.area - area) <= HALF_MICROMETRE * perimeter
    assert as_cut.perimeter == pytest.approx(perimeter, abs=perimeter * 1e-4 + 0.002)


@pytest.mark.parametrize("name", PARAMETRIC)
@examples(3, 200)
@given(data=st.data())
def test_both_halves_have_the_areas_of_their_closed_forms(name: str, data: st.DataObject) -> None:
    """Pocket: fillets in every corner, of the pocket's cutter and of ρ = Rm − c. Plug: Steiner's formula."""
    shape, radius = drawn_shape(data, name)
    clearance = data.draw(lengths(-0.4, min(0.4, radius)))
    rho = data.draw(lengths(0.05, min(shape.widest_cutter, 5.0)))
    if rho + clearance < 0.01:
        rho = 0.05 - clearance
    spec = FitSpec(clearance, HalfSpec(2 * radius), HalfSpec(2 * (rho + clearance)))
    result = solve(shape.region, spec)
    area, perimeter = shape.matched(radius, rho)
    assert abs(result.pocket.outline.area - area) <= HALF_MICROMETRE * perimeter
    plug_area = steiner_area(area, perimeter, -clearance, euler=shape.euler)
    plug_perimeter = steiner_perimeter(perimeter, -clearance, euler=shape.euler)
    assert abs(result.plug.outline.area - plug_area) <= HALF_MICROMETRE * plug_perimeter
    assert not [f for f in result.findings if f.code in ("neck", "dead-end", "cutters-conflict")]


@examples(20, 200)
@given(diameter=lengths(3, 120), clearance=lengths(-0.5, 1.0), cutter=lengths(0.2, 2.9))
def test_a_circle_gives_a_plug_smaller_by_twice_the_clearance(
    diameter: float, clearance: float, cutter: float
) -> None:
    ring = flatten(Path.circle((7.0, -3.0), diameter / 2), 0.00005)
    result = solve(Region.of_ring(ring), FitSpec(clearance, HalfSpec(cutter), HalfSpec(cutter)))
    points = boundary_samples(result.plug.outline.shape, 0.1)
    radii = np.hypot(points[:, 0] - 7.0, points[:, 1] + 3.0)
    assert np.abs(2 * radii - (diameter - 2 * clearance)).max() <= HALF_MICROMETRE


def test_a_circle_of_25_mm_at_a_twentieth_gives_a_plug_of_24_9() -> None:
    circle = Region.of_ring(flatten(Path.circle((0, 0), 12.5), EXACT.arc_mm))
    plug = solve(circle, FitSpec(0.05, HalfSpec(3), HalfSpec(3))).plug.outline
    x0, y0, x1, y1 = plug.bounds
    assert x1 - x0 == pytest.approx(24.9, abs=HALF_MICROMETRE)
    assert y1 - y0 == pytest.approx(24.9, abs=HALF_MICROMETRE)


def rounded_rectangle(a: float, b: float, radius: float) -> Region:
    """The closed form of a rectangle cut by a round cutter, as a path of lines and quarter circles."""
    r, quarter = radius, math.tan(math.pi / 8)
    corners = [(r, 0), (a - r, 0), (a, r), (a, b - r), (a - r, b), (r, b), (0, b - r), (0, r)]
    return Region.of_ring(flatten(Path(np.array(corners), np.array([0, quarter] * 4)), 0.00005))


@examples(20, 200)
@given(a=lengths(8, 80), b=lengths(8, 80), radius=lengths(0.1, 3.9))
def test_a_rectangle_as_cut_is_its_closed_form_everywhere(a: float, b: float, radius: float) -> None:
    as_cut = opened(Region.of_ring([(0, 0), (a, 0), (a, b), (0, b)]), radius, EXACT)
    assert as_cut.area == pytest.approx(a * b - (4 - math.pi) * radius**2, abs=HALF_MICROMETRE * 2 * (a + b))
    assert spread(as_cut, rounded_rectangle(a, b, radius)) <= HALF_MICROMETRE


@examples(20, 200)
@given(a=lengths(8, 80), b=lengths(8, 80), radius=lengths(0.6, 3.9), clearance=lengths(-0.5, 0.5))
def test_the_plug_of_a_rectangle_has_corners_smaller_by_the_clearance(
    a: float, b: float, radius: float, clearance: float
) -> None:
    rectangle = Region.of_ring([(0, 0), (a, 0), (a, b), (0, b)])
    plug = solve(rectangle, FitSpec(clearance, HalfSpec(2 * radius), HalfSpec(2))).plug.outline
    expected = rounded_rectangle(a - 2 * clearance, b - 2 * clearance, radius - clearance)
    moved = expected.shape.bounds[0] + clearance
    points = boundary_samples(plug.shape, 0.1) - moved
    assert distances_to_boundary(points, expected.shape).max() <= HALF_MICROMETRE


@pytest.mark.parametrize("name", PARAMETRIC)
@examples(2, 60)
@given(data=st.data())
def test_the_plug_of_a_cut_pocket_is_the_pocket_moved_in(name: str, data: st.DataObject) -> None:
    """Nothing must give way to a plug cutter smaller than the clearance, so the plug's area is Steiner's.

    A sharp concave corner of the pocket takes a sector out of the plug where a round one would; the sum of
    all turns is χ whole turns either way.
    """
    shape, radius = drawn_shape(data, name)
    clearance = data.draw(lengths(0.01, min(0.3, radius)))
    pocket = opened(shape.region, radius, EXACT)
    spec = FitSpec(clearance, HalfSpec(2 * radius, HalfState.ALREADY_CUT), HalfSpec(1.8 * clearance))
    result = solve(pocket, spec)
    area, perimeter = shape.as_cut(radius)
    expected = steiner_area(area, perimeter, -clearance, euler=shape.euler)
    assert abs(result.plug.outline.area - expected) <= HALF_MICROMETRE * perimeter
    assert not result.plug.reliefs
