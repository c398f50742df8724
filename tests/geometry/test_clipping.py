"""Clipping to many boxes at once is clipping to each."""

from __future__ import annotations

import numpy as np
import shapely
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.clipping import clipped
from inlayfit.geometry.region import Region
from tests.strategies import examples, regions


@examples(20, 300)
@given(region=regions(), seed=st.integers(0, 10**6), count=st.integers(0, 60))
def test_each_box_gets_what_it_would_get_alone(region: Region, seed: int, count: int) -> None:
    """shapely's own intersection, one box at a time."""
    random = np.random.default_rng(seed)
    x0, y0, x1, y1 = region.bounds
    corners = random.uniform((x0 - 1, y0 - 1), (x1 + 1, y1 + 1), (count, 2))
    boxes = np.hstack([corners, corners + random.uniform(0.01, 0.4 * (x1 - x0), (count, 2))])
    parts = clipped(region, boxes)
    assert len(parts) == count
    for part, box in zip(parts, boxes.tolist(), strict=True):
        alone = region.shape.intersection(shapely.box(*box))
        assert part.symmetric_difference(alone).area <= 1e-12 * region.area


def test_what_only_touches_a_box_is_not_in_it() -> None:
    region = Region.of(shapely.box(0, 0, 10, 10))
    beside = np.array([(10.0, 0.0, 12.0, 10.0), (10.0, 10.0, 11.0, 11.0), (20.0, 0.0, 21.0, 1.0)])
    for part in clipped(region, beside):
        assert part.is_empty
        assert part.geom_type in ("Polygon", "MultiPolygon")


def test_no_box_holds_nothing() -> None:
    assert len(clipped(Region.of(shapely.box(0, 0, 1, 1)), np.empty((0, 4)))) == 0
