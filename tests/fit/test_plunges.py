"""Plunges: the shortest one that covers, against sampled lengths; the least one, against true areas."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString

from inlayfit.fit.plunges import Targets, Ways, areas_taken, least_of_each, plunge_lengths
from inlayfit.geometry.stadiums import Edges
from tests.strategies import examples, lengths, turns

MICROMETRE = 0.001


def one_way(origin: tuple[float, float], angle: float, target: int = 0) -> Ways:
    unit = np.array([[math.cos(angle), math.sin(angle)]])
    return Ways(np.array([target]), np.array([origin]), unit)


@examples(40, 400)
@given(seed=st.integers(0, 10**6), radius=lengths(0.5, 3.0), angle=turns())
def test_the_plunge_covers_its_target_and_no_shorter_one_does(seed: int, radius: float, angle: float) -> None:
    """By shapely's distance of each vertex to the line."""
    random = np.random.default_rng(seed)
    ways = one_way((3.0, -2.0), angle)
    along, off = random.uniform(0, 3 * radius, 5), random.uniform(-0.95 * radius, 0.95 * radius, 5)
    unit, normal = ways.units[0], np.array([-ways.units[0, 1], ways.units[0, 0]])
    vertices = ways.origins[0] + along[:, None] * unit + off[:, None] * normal
    (length,) = plunge_lengths(ways, Targets(vertices, np.array([5])), radius).tolist()

    def farthest(reach: float) -> float:
        line = LineString([ways.origins[0], ways.origins[0] + reach * unit])
        return float(shapely.distance(line, shapely.points(vertices)).max())

    assert farthest(length) <= radius + 1e-9
    if length > MICROMETRE:
        assert farthest(length - MICROMETRE) > radius


def test_what_lies_beside_or_behind_the_way_is_not_covered() -> None:
    beside = Targets(np.array([(5.0, 1.1)]), np.array([1]))
    behind = Targets(np.array([(-1.1, 0.0)]), np.array([1]))
    for target in (beside, behind):
        assert np.isnan(plunge_lengths(one_way((0, 0), 0.0), target, 1.0)).all()


def test_there_is_no_way_between_places_that_coincide() -> None:
    points = np.array([(0.0, 0.0), (1.0, 1.0)])
    ways = Ways.towards(np.arange(2), points, np.array([(0.0, 0.0), (1.0, 3.0)]))
    assert ways.target.tolist() == [1]
    assert ways.units.tolist() == [[0.0, 1.0]]


@pytest.mark.parametrize("turn", [0.0, 0.3, 2.0])
def test_the_least_way_is_the_one_whose_stadium_meets_least(turn: float) -> None:
    """Two targets, ways to each at several angles; shapely buffers tell the areas."""
    vertices = np.array([(4.0, 0.2), (4.0, -0.2), (0.0, 14.0), (0.3, 14.1)])
    targets = Targets(vertices, np.array([2, 2]))
    spared = shapely.box(2.0, -0.5, 9.0, 6.0), shapely.box(-4.0, 12.0, 0.1, 20.0)
    near = np.array(spared, dtype=object)
    ways = one_way((0, 0), 0.0)
    for angle in (-0.15, -0.05, 0.05 + turn / 20, 0.15):
        ways = ways.joined(one_way((0, 0), angle)).joined(one_way((0, 10), math.pi / 2 + angle, 1))
    best = least_of_each(ways, areas_taken(ways, targets, Edges.of(near), 1.0))
    reach = plunge_lengths(ways, targets, 1.0)

    def area(i: int) -> float:
        line = LineString([ways.origins[i], ways.ends(reach)[i]])
        return float(shapely.buffer(line, 1.0, quad_segs=64).intersection(near[ways.target[i]]).area)

    for i in best.tolist():
        rivals = np.flatnonzero((ways.target == ways.target[i]) & ~np.isnan(reach)).tolist()
        assert area(i) <= min(area(rival) for rival in rivals) + 0.01
    assert ways.target[best].tolist() == [0, 1]
