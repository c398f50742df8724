"""Distances to a boundary, point by point against another library, at every scale."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.region import Region
from tests.oracles import distances_to_boundary
from tests.strategies import examples, regions

NANOMETRE = 1e-6


def scattered(region: Region, seed: int, count: int = 200) -> np.ndarray:
    """Points in and around a region, on its vertices and close to its edges."""
    random = np.random.default_rng(seed)
    x0, y0, x1, y1 = region.bounds
    margin = 0.3 * max(x1 - x0, y1 - y0)
    far = random.uniform((x0 - margin, y0 - margin), (x1 + margin, y1 + margin), (count, 2))
    vertices = np.vstack(region.rings())
    chosen = vertices[random.integers(len(vertices), size=count)]
    near = chosen + random.normal(scale=10.0 ** random.uniform(-9, 0, (count, 1)), size=(count, 2))
    return np.vstack([far, near, chosen])


@examples(20, 300)
@given(region=regions(), seed=st.integers(0, 10**6))
def test_distances_are_those_of_shapely(region: Region, seed: int) -> None:
    """shapely.distance point by point, and an R-tree over the segments."""
    points = scattered(region, seed)
    distances, partners = BoundaryIndex(region).nearest(points)
    boundary = shapely.boundary(region.shape)
    assert np.abs(distances - shapely.distance(boundary, shapely.points(points))).max() <= NANOMETRE
    assert np.abs(distances - distances_to_boundary(points, region.shape)).max() <= NANOMETRE
    assert np.abs(np.hypot(*(points - partners).T) - distances).max() <= NANOMETRE
    assert shapely.distance(boundary, shapely.points(partners)).max() <= NANOMETRE


@examples(20, 300)
@given(region=regions(), seed=st.integers(0, 10**6))
def test_the_sign_is_positive_inside(region: Region, seed: int) -> None:
    points = scattered(region, seed)
    signed, _ = BoundaryIndex(region).signed(points)
    plain, _ = BoundaryIndex(region).nearest(points)
    inside = shapely.contains_xy(region.shape, points[:, 0], points[:, 1])
    assert (np.sign(signed[plain > 0]) == np.where(inside, 1, -1)[plain > 0]).all()
    assert (np.abs(signed) == plain).all()


@pytest.mark.parametrize(
    "shape",
    [
        shapely.box(0, 0, 1000, 0.001),
        shapely.box(0, 0, 0.001, 0.001),
        shapely.union(shapely.box(0, 0, 1000, 10), shapely.box(0, 10.001, 0.002, 10.002)),
        shapely.Polygon([(0, 0), (1000, 0), (1000, 1), (0, 0.001)]),
        shapely.Point(0, 0).buffer(0.01, quad_segs=400).union(shapely.box(-1000, 5, 1000, 6)),
        shapely.box(0, 0, 10_000, 10_000).difference(shapely.box(5, 5, 5.001, 9_000)),
    ],
    ids=["sliver", "crumb", "crumb beside a wall", "wedge", "many and few", "ten metres"],
)
def test_slivers_and_metre_long_edges_are_no_harder(shape: shapely.Polygon) -> None:
    region = Region.of(shape)
    points = scattered(region, 7, 500)
    distances, _ = BoundaryIndex(region).nearest(points)
    expected = shapely.distance(shapely.boundary(region.shape), shapely.points(points))
    assert np.abs(distances - expected).max() <= NANOMETRE


def test_a_point_on_the_wall_is_at_no_distance() -> None:
    index = BoundaryIndex(Region.of(shapely.box(0, 0, 20, 10)))
    distances, partners = index.nearest(np.array([(5.0, 0.0), (20.0, 10.0)]))
    assert distances.tolist() == [0, 0]
    assert partners.tolist() == [[5, 0], [20, 10]]


def test_the_centre_of_a_circle_is_as_far_from_every_chord() -> None:
    """A regular polygon's apothem is r·cos(π/n) (plane geometry)."""
    angles = np.linspace(0, 2 * math.pi, 300, endpoint=False)
    index = BoundaryIndex(Region.of_ring(7 * np.column_stack([np.cos(angles), np.sin(angles)])))
    distance, _ = index.nearest(np.zeros((1, 2)))
    assert distance[0] == pytest.approx(7 * math.cos(math.pi / 300), abs=1e-12)


def test_an_empty_region_has_no_boundary() -> None:
    with pytest.raises(ValueError, match="empty region"):
        BoundaryIndex(Region.empty())
