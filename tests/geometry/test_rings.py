"""Going round rings by number, against going round them one by one."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.rings import Rings
from tests.strategies import examples


@st.composite
def rings_with_marks(draw: st.DrawFn) -> tuple[list[np.ndarray], list[np.ndarray]]:
    """Rings of distinct points, some of them marked."""
    sizes = draw(st.lists(st.integers(3, 9), min_size=1, max_size=4))
    marks = [np.array(draw(st.lists(st.booleans(), min_size=n, max_size=n)), dtype=bool) for n in sizes]
    points = np.arange(2.0 * sum(sizes)).reshape(-1, 2)
    return np.split(points, np.cumsum(sizes)[:-1]), marks


@examples(100, 1000)
@given(rings_with_marks())
def test_runs_are_the_longest_stretches_of_marked_points(
    drawn: tuple[list[np.ndarray], list[np.ndarray]],
) -> None:
    points, marks = drawn
    rings = Rings.of(points)
    runs = rings.runs(np.hstack(marks))
    covered = np.zeros(len(rings.points), dtype=int)
    for first, last in runs.tolist():
        own, _ = rings.stretches(np.array([first]), rings.between(np.array([first]), np.array([last])) + 1)
        covered[own] += 1
        before, after = rings.after(np.array([first]), -1), rings.after(np.array([last]))
        assert not np.hstack(marks)[[*before, *after]].any()
    partly = np.hstack([own & ~own.all() for own in marks])
    assert np.array_equal(covered, partly.astype(int))
    assert rings.whole(np.hstack(marks)).tolist() == [
        int(start) for start, own in zip(rings.starts, marks, strict=True) if own.all()
    ]


@examples(60, 500)
@given(drawn=rings_with_marks(), steps=st.integers(-20, 20))
def test_so_many_steps_on_from_a_point_is_where_rolling_its_ring_leads(
    drawn: tuple[list[np.ndarray], list[np.ndarray]], steps: int
) -> None:
    points, _ = drawn
    rings = Rings.of(points)
    rolled = np.vstack([np.roll(ring, -steps, axis=0) for ring in points])
    assert np.array_equal(rings.points[rings.after(np.arange(len(rings.points)), steps)], rolled)


@examples(60, 500)
@given(drawn=rings_with_marks(), data=st.data())
def test_a_stretch_goes_on_or_back_one_point_at_a_time(
    drawn: tuple[list[np.ndarray], list[np.ndarray]], data: st.DataObject
) -> None:
    rings = Rings.of(drawn[0])
    firsts = np.array(data.draw(st.lists(st.integers(0, len(rings.points) - 1), max_size=4)), dtype=np.intp)
    counts = np.array([data.draw(st.integers(0, 12)) for _ in firsts], dtype=np.intp)
    step = data.draw(st.sampled_from([1, -1]))
    numbers, own = rings.stretches(firsts, counts, step)
    expected = [
        int(rings.after(np.array([first]), step * k)[0])
        for first, n in zip(firsts, counts, strict=True)
        for k in range(n)
    ]
    assert numbers.tolist() == expected
    assert own.tolist() == np.repeat(np.arange(len(firsts)), counts).tolist()
