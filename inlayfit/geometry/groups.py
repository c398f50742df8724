"""Groups of different sizes in one array, member after member: what NumPy has no rows for."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Flags = NDArray[np.bool_]
Numbers = NDArray[np.intp]


def members(counts: Numbers) -> tuple[Numbers, Numbers]:
    """For groups of so many members: the group of each member, and which of its members it is, from 0."""
    own = np.repeat(np.arange(len(counts)), counts)
    return own, np.arange(len(own)) - np.repeat(starts_of(counts), counts)


def starts_of(counts: Numbers) -> Numbers:
    """Where each group starts."""
    starts: Numbers = np.cumsum(counts) - counts
    return starts


def first_and_last(groups: Numbers) -> tuple[Numbers, Numbers]:
    """Where each run of equal numbers begins and ends; none of them is negative."""
    return np.flatnonzero(np.diff(groups, prepend=-1)), np.flatnonzero(np.diff(groups, append=-1))


def largest_of_each(groups: Numbers, values: NDArray[np.float64]) -> Numbers:
    """The place of the largest value of each group, by the groups' numbers."""
    order = np.lexsort((values, groups))
    largest: Numbers = order[first_and_last(groups[order])[1]]
    return largest
