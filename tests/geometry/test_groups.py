"""Groups in one array, against going through them one by one."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.geometry.groups import first_and_last, largest_of_each, members, starts_of
from tests.strategies import examples


@examples(60, 500)
@given(st.lists(st.integers(0, 7), max_size=12))
def test_each_member_knows_its_group_and_its_place_in_it(sizes: list[int]) -> None:
    counts = np.array(sizes, dtype=np.intp)
    own, within = members(counts)
    expected = [(group, place) for group, size in enumerate(sizes) for place in range(size)]
    assert list(zip(own.tolist(), within.tolist(), strict=True)) == expected
    assert starts_of(counts).tolist() == [sum(sizes[:group]) for group in range(len(sizes))]


@examples(60, 500)
@given(st.lists(st.tuples(st.integers(0, 4), st.floats(-5, 5)), max_size=30))
def test_the_largest_of_each_group_is_none_smaller_than_any_of_it(pairs: list[tuple[int, float]]) -> None:
    groups = np.array([group for group, _ in pairs], dtype=np.intp)
    values = np.array([value for _, value in pairs])
    found = largest_of_each(groups, values)
    assert groups[found].tolist() == sorted(set(groups.tolist()))
    for place in found.tolist():
        assert values[place] == values[groups == groups[place]].max()


def test_runs_of_equal_numbers_have_their_first_and_last_place() -> None:
    first, last = first_and_last(np.array([0, 0, 2, 2, 2, 1]))
    assert (first.tolist(), last.tolist()) == ([0, 2, 5], [1, 4, 5])
    assert all(len(ends) == 0 for ends in first_and_last(np.empty(0, dtype=np.intp)))
