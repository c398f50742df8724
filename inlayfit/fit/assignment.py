"""Which of several plugs that exist belongs to which of several pockets: the assignment that fits best.

What is least is the sum, over all pairs, of the squared distance of the gap from the wanted clearance, root
of its mean square over both walls at the seat (`fit.seating.closeness`). Squares, and not the distances
themselves: of two sizes of the same shape the smaller plug then goes to the smaller pocket, even if the plugs
have another clearance than was wanted. The sum is least over all one-to-one assignments at once
(`scipy.optimize.linear_sum_assignment`, after Crouse 2016), so one pair's good fit cannot spoil all others.

Seating a plug takes milliseconds, and there are many pairs. So every pair has an estimate first
(`fit.likeness`); the best assignment by what is known is made, its pairs that were only estimated are
measured, and it is made anew until all its pairs are measured. Outlines that are alike are measured once.

Plugs that are alike may be exchanged. Among them the nearest pocket is taken if the plugs lie upon the
pockets already, else the order of reading. What is off by more than a twentieth of the pocket's size is no
pair. What is left over is tried turned, and flipped over: a person must know that, so it is said.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import linear_sum_assignment

from inlayfit.fit.likeness import ALIKE_MM, Signature, estimates, kinds, likeliest_turn
from inlayfit.fit.orientation import Motion
from inlayfit.fit.seating import Closeness, closeness
from inlayfit.fit.spec import Seating
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

_LARGEST_SHARE = 0.05  # of the pocket's size: a plug that is farther off was made for another pocket
_ESTIMATE_FACTOR = 2.0  # an estimate is never so far below what is measured
_SAME_COST = ALIKE_MM**2
_MEASURED_BELOW = 0.1**2  # an exchange that seems to cost less is measured before it is judged
_BETTER = 0.5


@dataclass(frozen=True, slots=True)
class OtherWay:
    """How a plug has to be held that does not go in as it is drawn.

    Attributes:
        motion: turned only, or flipped over.
        turn_rad: by how much it is turned; of a flipped one, after mirroring left and right.
    """

    motion: Motion
    turn_rad: float


@dataclass(frozen=True, slots=True)
class Pair:
    """A pocket and its plug, by their numbers.

    Attributes:
        pocket, plug: their numbers.
        other_way: how the plug has to be held, or None if as it is drawn.
    """

    pocket: int
    plug: int
    other_way: OtherWay | None = None


@dataclass(frozen=True, slots=True)
class Assignment:
    """Who belongs to whom.

    Attributes:
        pairs: in the pockets' order.
        exchangeable: numbers of the pairs whose pocket or plug has another one like it.
        doubtful: numbers of the pairs that another plug or pocket fits as well, without being like it.
        by_place: whether the exchangeable ones were told apart by where they lie; else by their order.
    """

    pairs: tuple[Pair, ...]
    exchangeable: tuple[int, ...] = ()
    doubtful: tuple[int, ...] = ()
    by_place: bool = False


def assigned(
    pockets: Sequence[Region], plugs: Sequence[Region], *, clearance_mm: float, seating: Seating
) -> Assignment:
    """The best one-to-one assignment; see the module docstring.

    Args:
        pockets: none of them empty, in reading order.
        plugs: the same.
        clearance_mm: the gap that is wanted.
        seating: how the plugs may move to their seats.
    """
    if not pockets or not plugs:
        return Assignment(())
    table = _Table(pockets, plugs, clearance_mm, seating)
    found = table.best()
    pairs = [Pair(i, j, table.other_way(i, j)) for i, j in found]
    pairs += _of_left_over(table, found)
    pairs.sort(key=lambda pair: pair.pocket)
    return Assignment(
        tuple(pairs),
        tuple(k for k, pair in enumerate(pairs) if table.has_a_like(pair.pocket, pair.plug)),
        table.doubtful(pairs),
        table.by_place,
    )


def other_way(pocket: Region, plug: Region, *, clearance_mm: float, seating: Seating) -> OtherWay | None:
    """How a plug has to be held that bites as drawn, if held otherwise it fits at least twice as well."""
    one, other = Signature(pocket), Signature(plug)
    return _other_way(one, other, _closeness(one, other, clearance_mm, seating), clearance_mm, seating)


def _other_way(
    pocket: Signature, plug: Signature, as_is: Closeness, clearance: float, seating: Seating
) -> OtherWay | None:
    goes_in = min(0.0, clearance) - ALIKE_MM
    if as_is.gap_mm >= goes_in:
        return None
    way, close = _best_other_way(pocket, plug, clearance, seating)
    return way if close.off_mm < _BETTER * as_is.off_mm and close.gap_mm >= goes_in else None


def _closeness(pocket: Signature, plug: Signature, clearance: float, seating: Seating) -> Closeness:
    may_turn = seating is Seating.TURN
    turn = likeliest_turn(pocket, plug, clearance=clearance) if may_turn else 0.0
    return closeness(pocket.region, plug.region, clearance_mm=clearance, seating=seating, turn_rad=turn)


def _best_other_way(
    pocket: Signature, plug: Signature, clearance: float, seating: Seating
) -> tuple[OtherWay, Closeness]:
    """Turned, if that was not allowed, or flipped over: whichever is closer."""
    ways = []
    for motion in Motion:
        if motion is Motion.TURNED and seating is Seating.TURN:
            continue
        held = plug if motion is Motion.TURNED else plug.mirrored()
        turn = likeliest_turn(pocket, held, clearance=clearance)
        close = closeness(
            pocket.region, held.region, clearance_mm=clearance, seating=Seating.TURN, turn_rad=turn
        )
        ways.append((OtherWay(motion, close.turn_rad), close))
    return min(ways, key=lambda way: way[1].off_mm)


def _of_left_over(table: _Table, found: Sequence[tuple[int, int]]) -> list[Pair]:
    """Pairs among what is left that fit turned or flipped; none where the plugs may not move at all."""
    pockets = sorted(set(range(len(table.pockets))) - {i for i, _ in found})
    plugs = sorted(set(range(len(table.plugs))) - {j for _, j in found})
    if not pockets or not plugs or table.seating is Seating.AS_DRAWN:
        return []
    costs = np.full((len(pockets), len(plugs)), np.inf)
    ways: dict[tuple[int, int], OtherWay] = {}
    for row, i in enumerate(pockets):
        pocket = table.pockets[i]
        seen = [table.plugs[j] for j in plugs]
        either = [estimates(pocket, held, clearance=table.clearance, may_turn=True)
                  for held in (seen, [plug.mirrored() for plug in seen])]  # fmt: skip
        limit = _limit(pocket)
        for column in np.flatnonzero(np.minimum(*either) < _ESTIMATE_FACTOR**2 * limit):
            plug = table.plugs[plugs[column]]
            way, close = _best_other_way(pocket, plug, table.clearance, table.seating)
            if close.off_mm**2 <= limit:
                costs[row, column] = close.off_mm**2
                ways[i, plugs[column]] = way
    return [Pair(pockets[r], plugs[c], ways[pockets[r], plugs[c]]) for r, c in _least(costs)]


def _limit(pocket: Signature) -> float:
    return (_LARGEST_SHARE * pocket.size) ** 2


def _least(costs: Points) -> list[tuple[int, int]]:
    """As many pairs as can be, and of these assignments the one of least cost; no pair costs infinity."""
    allowed = np.isfinite(costs)
    if not allowed.any():
        return []
    barred = (min(costs.shape) + 1) * (float(costs[allowed].max()) + _SAME_COST)
    rows, columns = linear_sum_assignment(np.where(allowed, costs, barred))
    return [(int(i), int(j)) for i, j in zip(rows, columns, strict=True) if allowed[i, j]]


class _Table:
    """The squared distances of all kinds of pockets and plugs, estimated or measured; infinity: no pair."""

    def __init__(
        self, pockets: Sequence[Region], plugs: Sequence[Region], clearance: float, seating: Seating
    ) -> None:
        self.clearance, self.seating = clearance, seating
        self.pockets = [Signature(region) for region in pockets]
        self.plugs = [Signature(region) for region in plugs]
        may_turn = seating is Seating.TURN
        self._rows, self._columns = _kinds(self.pockets, seating), _kinds(self.plugs, seating)
        self._costs = np.full((len(pockets), len(plugs)), np.inf)
        self._measured: NDArray[np.bool_] = np.zeros(self._costs.shape, dtype=np.bool_)
        self._seen: dict[tuple[int, int], Closeness] = {}
        columns = np.unique(self._columns)
        kept = [self.plugs[j] for j in columns]
        for i in np.unique(self._rows):
            row = estimates(self.pockets[i], kept, clearance=clearance, may_turn=may_turn)
            row[row > _ESTIMATE_FACTOR**2 * _limit(self.pockets[i])] = np.inf
            self._costs[i, columns] = row
        if seating is Seating.AS_DRAWN:
            self._costs[~_overlapping(pockets, plugs)] = np.inf
        self.by_place, self._order = _order(self.pockets, self.plugs, self._rows, self._columns)

    def cost(self, i: int, j: int) -> float:
        """The best that is known of a pocket and a plug."""
        return float(self._costs[self._rows[i], self._columns[j]])

    def best(self) -> list[tuple[int, int]]:
        """The assignment of least cost, all its pairs measured."""
        while True:
            costs = self._costs[self._rows][:, self._columns]
            share = _SAME_COST / max(self._order.shape)
            found = _least(costs + share * self._order)
            if not self._measure(found):
                return found

    def _measure(self, pairs: Sequence[tuple[int, int]]) -> bool:
        """Measure those that were only estimated; whether there were any."""
        open_ = {(int(self._rows[i]), int(self._columns[j])) for i, j in pairs}
        open_ = {pair for pair in open_ if not self._measured[pair] and np.isfinite(self._costs[pair])}
        for i, j in open_:
            close = _closeness(self.pockets[i], self.plugs[j], self.clearance, self.seating)
            square = close.off_mm**2
            self._seen[i, j] = close
            self._costs[i, j] = square if square <= _limit(self.pockets[i]) else np.inf
            self._measured[i, j] = True
        return bool(open_)

    def other_way(self, i: int, j: int) -> OtherWay | None:
        """How a plug that was measured has to be held, if not as drawn."""
        i, j = int(self._rows[i]), int(self._columns[j])
        return _other_way(self.pockets[i], self.plugs[j], self._seen[i, j], self.clearance, self.seating)

    def has_a_like(self, i: int, j: int) -> bool:
        """Whether another pocket is like this one, or another plug like that one."""
        rows, columns = self._rows == self._rows[i], self._columns == self._columns[j]
        return bool(rows.sum() > 1 or columns.sum() > 1)

    def doubtful(self, pairs: Sequence[Pair]) -> tuple[int, ...]:
        """Numbers of the pairs that could be exchanged for others at no cost, without being alike."""
        straight = [(k, pair) for k, pair in enumerate(pairs) if pair.other_way is None]
        rows = self._rows[[pair.pocket for _, pair in straight]]
        columns = self._columns[[pair.plug for _, pair in straight]]
        costs = self._costs[np.ix_(rows, columns)]
        own = np.diagonal(costs)
        near = (costs - own[:, None]) + (costs - own).T <= _MEASURED_BELOW
        near &= (rows[:, None] != rows) & (columns[:, None] != columns)
        found: set[int] = set()
        for one, two in np.argwhere(np.triu(near)).tolist():
            pair, other = straight[one][1], straight[two][1]
            if self._costs_nothing([(pair.pocket, other.plug), (other.pocket, pair.plug)], [pair, other]):
                found |= {straight[one][0], straight[two][0]}
        spare_plugs = set(range(len(self.plugs))) - {pair.plug for pair in pairs}
        spare_pockets = set(range(len(self.pockets))) - {pair.pocket for pair in pairs}
        for k, pair in straight:
            others = [(pair.pocket, j) for j in spare_plugs] + [(i, pair.plug) for i in spare_pockets]
            if any(self._costs_nothing([other], [pair]) for other in others):
                found.add(k)
        return tuple(sorted(found))

    def _costs_nothing(self, others: Sequence[tuple[int, int]], pairs: Sequence[Pair]) -> bool:
        """Whether other pairs would cost no more, and none of them is the same but for an outline alike."""
        mine = {(int(self._rows[pair.pocket]), int(self._columns[pair.plug])) for pair in pairs}
        theirs = {(int(self._rows[i]), int(self._columns[j])) for i, j in others}
        now = sum(self.cost(pair.pocket, pair.plug) for pair in pairs)
        if mine & theirs or sum(self.cost(i, j) for i, j in others) - now > _MEASURED_BELOW:
            return False
        self._measure(others)
        return sum(self.cost(i, j) for i, j in others) - now < _SAME_COST


def _kinds(outlines: Sequence[Signature], seating: Seating) -> NDArray[np.intp]:
    if seating is Seating.AS_DRAWN:  # where each lies is part of what it is
        return np.arange(len(outlines), dtype=np.intp)
    return kinds(outlines, may_turn=seating is Seating.TURN)


def _boxes(outlines: Sequence[Region]) -> Points:
    return np.array([outline.bounds for outline in outlines])


def _overlapping(pockets: Sequence[Region], plugs: Sequence[Region]) -> NDArray[np.bool_]:
    a, b = _boxes(pockets)[:, None], _boxes(plugs)[None]
    shared = np.minimum(a[..., 2:], b[..., 2:]) - np.maximum(a[..., :2], b[..., :2])
    together: NDArray[np.bool_] = shared.min(axis=-1) > 0
    return together


def _order(
    pockets: Sequence[Signature],
    plugs: Sequence[Signature],
    rows: NDArray[np.intp],
    columns: NDArray[np.intp],
) -> tuple[bool, Points]:
    """What decides between those alike: whether by place, and (n, m) numbers from 0 to 1, best first.

    By place if most plugs lie upon a pocket; else by their order among those of their kind. The numbers are
    squares, so that of two pairs the crossed ones never do as well.
    """
    a, b = (_boxes([each.region for each in some]) for some in (pockets, plugs))
    middles = (b[:, :2] + b[:, 2:]) / 2
    upon = ((middles > a[:, None, :2]) & (middles < a[:, None, 2:])).all(-1).any(0)
    by_place = bool(upon.mean() > 0.5)
    if by_place:
        apart = (((a[:, :2] + a[:, 2:]) / 2)[:, None] - middles) ** 2
        far = apart.sum(-1)
    else:
        far = (_ranks(rows)[:, None] - _ranks(columns)[None]).astype(float) ** 2
    return by_place, far / max(float(far.max()), 1e-300)


def _ranks(kind: NDArray[np.intp]) -> NDArray[np.intp]:
    """How many of the same kind come before each."""
    ranks: NDArray[np.intp] = np.array([(kind[:n] == kind[n]).sum() for n in range(len(kind))], dtype=np.intp)
    return ranks
