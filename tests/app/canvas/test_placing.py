"""Labels stand off each other and off the walls, in view, and stay put while the drawing moves."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF, QSizeF

from inlayfit.app.canvas.placing import Placing, leader

VIEW = QRectF(0, 0, 600, 400)
NOTHING = np.zeros((0, 2))
points = st.builds(QPointF, st.floats(60, 540), st.floats(60, 340))


@given(st.lists(points, min_size=1, max_size=8))
def test_labels_never_cover_each_other_nor_leave_the_view(places: list[QPointF]) -> None:
    placing = Placing(VIEW, NOTHING, {})
    boxes = [placing.place(str(n), at, QSizeF(80, 30), (20, 50, 90)) for n, at in enumerate(places)]
    placed = [box for box in boxes if box is not None]
    assert all(VIEW.contains(box) for box in placed)
    assert not any(a.intersects(b) for n, a in enumerate(placed) for b in placed[n + 1 :])


@given(points)
def test_the_side_without_walls_is_taken(at: QPointF) -> None:
    wall = np.column_stack([np.full(200, at.x() + 30), np.linspace(0, 400, 200)])
    box = Placing(VIEW, wall, {}).place("a", at, QSizeF(40, 20), (14,), must=True)
    assert box is not None
    assert box.right() < at.x() + 30


@given(points, st.floats(-15, 15), st.floats(-15, 15))
def test_a_label_keeps_its_side_while_the_drawing_moves(at: QPointF, dx: float, dy: float) -> None:
    before: dict[str, int] = {}
    rng = np.random.default_rng(3)
    walls = rng.uniform(0, 400, (12, 2))
    first = Placing(VIEW, walls, before).place("a", at, QSizeF(40, 20), (14, 30), must=True)
    step = QPointF(dx, dy)
    second = Placing(VIEW.translated(step), walls + np.array([dx, dy]), before).place(
        "a", at + step, QSizeF(40, 20), (14, 30), must=True
    )
    assert first is not None
    assert second is not None
    moved = second.topLeft() - first.topLeft() - step
    assert abs(moved.x()) + abs(moved.y()) < 1e-9


def test_where_there_is_no_room_it_is_left_out_unless_it_must_be_shown() -> None:
    crowded = Placing(VIEW, NOTHING, {}, [VIEW])
    at = QPointF(300, 200)
    assert crowded.place("a", at, QSizeF(40, 20), (14,)) is None
    assert crowded.place("a", at, QSizeF(40, 20), (14,), must=True) is not None


@given(points, points)
def test_the_leader_starts_on_the_edge_of_the_label(corner: QPointF, at: QPointF) -> None:
    box = QRectF(corner, QSizeF(80, 30))
    start, end = leader(box, at)
    assert end == at
    assert box.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(start)
