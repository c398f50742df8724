"""The view: there and back again, zoom about a point, everything in sight when fitted."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.app.canvas.view_transform import LARGEST_SCALE, SMALLEST_SCALE, ViewTransform

coordinates = st.floats(-1000, 1000)
views = st.builds(ViewTransform, st.floats(0.05, 5000), coordinates, coordinates)


@given(views, coordinates, coordinates)
def test_pixels_go_back_to_the_same_millimetres(view: ViewTransform, x: float, y: float) -> None:
    assert view.to_mm(*view.to_px(x, y)) == pytest.approx((x, y), abs=1e-6)


@given(views, coordinates, coordinates)
def test_one_point_and_many_agree(view: ViewTransform, x: float, y: float) -> None:
    assert view.points_px(np.array([[x, y]]))[0] == pytest.approx(view.to_px(x, y))


@given(views, st.floats(0.1, 10), st.floats(0, 800), st.floats(0, 600))
def test_zooming_keeps_the_point_under_the_pointer(
    view: ViewTransform, factor: float, x: float, y: float
) -> None:
    place = view.to_mm(x, y)
    assert view.zoomed(factor, x, y).to_px(*place) == pytest.approx((x, y), abs=1e-3)


@given(views, st.floats(-500, 500), st.floats(-500, 500))
def test_panning_moves_by_pixels_and_back(view: ViewTransform, dx: float, dy: float) -> None:
    x, y = view.to_px(1, 2)
    assert view.panned(dx, dy).to_px(1, 2) == pytest.approx((x + dx, y + dy), abs=1e-5)
    there_and_back = view.panned(dx, dy).panned(-dx, -dy)
    assert there_and_back.to_px(1, 2) == pytest.approx((x, y), abs=1e-5)


@given(
    coordinates,
    coordinates,
    st.floats(0.01, 500),
    st.floats(0.01, 500),
    st.floats(60, 2000),
    st.floats(60, 2000),
)
def test_fitting_shows_everything_in_the_middle(
    x0: float, y0: float, wide: float, high: float, width: float, height: float
) -> None:
    view = ViewTransform.fitted((x0, y0, x0 + wide, y0 + high), width, height)
    left, bottom = view.to_px(x0, y0)
    right, top = view.to_px(x0 + wide, y0 + high)
    assert -1e-6 <= left < right <= width + 1e-6
    assert -1e-6 <= top < bottom <= height + 1e-6
    assert (left + right) / 2 == pytest.approx(width / 2, abs=1e-3)
    assert (top + bottom) / 2 == pytest.approx(height / 2, abs=1e-3)


def test_up_on_the_drawing_is_up_on_the_screen() -> None:
    view = ViewTransform(4.0, 0.0, 10.0)
    assert view.to_px(0, 10)[1] < view.to_px(0, 9)[1]


@pytest.mark.parametrize("factor", [1e-9, 1e9])
def test_the_scale_stays_within_its_limits(factor: float) -> None:
    assert SMALLEST_SCALE <= ViewTransform().zoomed(factor, 10, 10).scale <= LARGEST_SCALE


def test_nothing_to_see_is_no_error() -> None:
    nan = float("nan")
    assert ViewTransform.fitted((nan, nan, nan, nan), 100, 100) == ViewTransform()
    assert ViewTransform.fitted((0, 0, 1, 1), 0, 0) == ViewTransform()
