"""What a cutter leaves, told apart by shape, however the drawing lies."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.fit.residue import Residue, ResidueKind, residues, residues_outside
from inlayfit.geometry.morphology import closed, opened
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from tests.strategies import PARAMETRIC, examples, lengths, regions, rigid_motions, star_rings, turns


def left_by(shape: Region, radius: float) -> tuple[Residue, ...]:
    return residues(shape, opened(shape, radius, EXACT), radius, EXACT)


def kinds(left: tuple[Residue, ...]) -> list[ResidueKind]:
    return sorted(residue.kind for residue in left)


@pytest.mark.parametrize("name", PARAMETRIC)
@examples(4, 100)
@given(data=st.data())
def test_every_sharp_corner_leaves_one_corner(name: str, data: st.DataObject) -> None:
    shape = data.draw(PARAMETRIC[name]())
    radius = data.draw(lengths(0.3, min(4.0, shape.widest_cutter)))
    moved = shape.region.moved(data.draw(rigid_motions()))
    left = left_by(moved, radius)
    # Stock less than a micrometre deep is dust; what is near that may count either way.
    depths = np.array([radius * (1 / math.sin(angle / 2) - 1) for angle in shape.convex])
    assert (depths > 0.01).sum() <= len(left) <= (depths > 0.0005).sum()
    allowed = {ResidueKind.CORNER}
    if min(shape.convex, default=math.pi) < math.radians(35):  # so sharp a wedge is as good as a dead end
        allowed.add(ResidueKind.DEAD_END)
    assert {residue.kind for residue in left} <= allowed


@examples(15, 300)
@given(ring=star_rings(), radius=lengths(0.3, 3.0), motion=rigid_motions())
def test_a_convex_shape_has_no_neck(ring: np.ndarray, radius: float, motion: Transform) -> None:
    hull = Region.of(shapely.convex_hull(shapely.Polygon(ring))).moved(motion)
    for residue in left_by(hull, radius):
        assert residue.kind in (ResidueKind.CORNER, ResidueKind.DEAD_END)


@examples(20, 200)
@given(share=st.floats(0.3, 0.99), length=lengths(2.0, 30.0), diameter=lengths(1.0, 6.0), angle=turns())
def test_a_passage_narrower_than_the_cutter_is_a_neck(
    share: float, length: float, diameter: float, angle: float
) -> None:
    width = share * diameter
    # The cutter's disks reach into the passage from both ends; it must be longer than that to be left.
    length += 2 * diameter
    rooms = [shapely.box(-20, -15, 0, 15), shapely.box(length, -15, length + 20, 15)]
    passage = shapely.box(-1, -width / 2, length + 1, width / 2)
    shape = Region.of(shapely.union_all([passage, *rooms])).moved(Transform.turn(angle))
    left = left_by(shape, diameter / 2)
    assert kinds(left) == [ResidueKind.CORNER] * 8 + [ResidueKind.NECK]
    (neck,) = (r for r in left if r.kind is ResidueKind.NECK)
    assert neck.area == pytest.approx(width * length, rel=0.6)


@examples(20, 200)
@given(share=st.floats(0.3, 0.95), depth=st.floats(1.5, 8.0), diameter=lengths(1.0, 6.0), angle=turns())
def test_a_channel_narrower_than_the_cutter_is_a_dead_end(
    share: float, depth: float, diameter: float, angle: float
) -> None:
    width = share * diameter
    room, channel = shapely.box(-30, -20, 0, 20), shapely.box(-1, -width / 2, depth * diameter, width / 2)
    shape = Region.of(shapely.union(room, channel)).moved(Transform.turn(angle))
    left = left_by(shape, diameter / 2)
    assert kinds(left) == [ResidueKind.CORNER] * 4 + [ResidueKind.DEAD_END]


@examples(20, 200)
@given(size=lengths(0.5, 2.9), diameter=lengths(3.0, 6.0), angle=turns())
def test_a_piece_smaller_than_the_cutter_is_lost(size: float, diameter: float, angle: float) -> None:
    crumb, block = shapely.box(0, 0, 20, size), shapely.box(0, 10, 30, 40)
    shape = Region.of(shapely.union(crumb, block)).moved(Transform.turn(angle))
    left = left_by(shape, diameter / 2)
    assert kinds(left) == [ResidueKind.CORNER] * 4 + [ResidueKind.LOST_PIECE]
    (lost,) = (r for r in left if r.kind is ResidueKind.LOST_PIECE)
    assert lost.area == pytest.approx(20 * size)


@examples(12, 200)
@given(shape=regions(), radius=lengths(0.3, 3.0), motion=rigid_motions())
def test_moving_the_drawing_changes_no_judgement(shape: Region, radius: float, motion: Transform) -> None:
    radius += 0.01234567  # not exactly as wide as any stroke, where rounding decides
    grave = (ResidueKind.NECK, ResidueKind.LOST_PIECE)
    here = [r for r in left_by(shape, radius) if r.kind in grave and r.area > 0.01]
    there = [r for r in left_by(shape.moved(motion), radius) if r.kind in grave and r.area > 0.01]
    assert kinds(tuple(here)) == kinds(tuple(there))


@examples(12, 200)
@given(shape=regions(), radius=lengths(0.3, 3.0))
def test_residues_and_what_is_reached_make_up_the_whole(shape: Region, radius: float) -> None:
    reached = opened(shape, radius, EXACT)
    left = residues(shape, reached, radius, EXACT)
    total = reached.area + sum(residue.area for residue in left)
    assert abs(total - shape.area) <= EXACT.settle_mm * shape.perimeter
    for residue in left:
        assert shapely.distance(shapely.Point(residue.place), residue.region.shape) <= 1e-9
        assert list(left) == sorted(left, key=lambda r: -r.area)


@examples(12, 100)
@given(shape=regions(), radius=lengths(0.3, 2.0))
def test_the_residues_of_a_closing_lie_outside_the_shape(shape: Region, radius: float) -> None:
    filled = closed(shape, radius, EXACT)
    for residue in residues_outside(shape, filled, radius, EXACT):
        assert shapely.intersection(residue.region.shape, shape.shape).area <= 1e-6
