"""Which plug belongs to which of fifty pockets: how long it takes, and how many pairs were seated for it.

    pytest tests/benchmarks/test_assignment.py --benchmark-enable -s

prints a row for each kind of fifty, with the plugs only shifted and with turns: seconds of the processor, the
best of three, and seats that were measured, of 2,500 pairs. Times are never asserted, they depend on the
machine. Without `--benchmark-enable` five of each are told apart once.

    stars        of 12 to 61 vertices, each another form
    squares      0.05 mm apart, from 20 mm up
    identical    fifty times the same L
"""

from __future__ import annotations

import math
import time
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest

from inlayfit.fit.assignment import Assignment, assigned
from inlayfit.fit.seating import closeness
from inlayfit.fit.spec import Seating
from inlayfit.geometry.region import Region
from tests.fit.test_assignment import ELL, elsewhere, plug_of, spread, square

COUNT, FEW, RUNS = 50, 5, 3
WANTED_MM = 0.05


def star(number: int) -> Region:
    """A star of its own, drawn by lot from its number."""
    numbers = np.random.default_rng(number)
    angles = np.arange(12 + number) * 2 * math.pi / (12 + number)
    radii = numbers.uniform(9, 15, len(angles))
    return Region.of_ring([(r * math.cos(a), r * math.sin(a)) for r, a in zip(radii, angles, strict=True)])


def outlines(kind: str, count: int) -> list[Region]:
    """So many pockets of a kind, beside each other."""
    makers: dict[str, Callable[[int], Region]] = {
        "stars": star,
        "squares": lambda number: square(20 + 0.05 * number),
        "identical": lambda _number: ELL,
    }
    return spread([makers[kind](number) for number in range(count)])


def told_apart(pockets: list[Region], seating: Seating) -> tuple[Assignment, list[int]]:
    """The answer for shuffled plugs, and whose plug each is."""
    numbers = np.random.default_rng(5)
    order = numbers.permutation(len(pockets)).tolist()
    turned = seating is Seating.TURN
    plugs = [elsewhere(plug_of(pockets[k], 0.1), numbers, turned=turned) for k in order]
    return assigned(pockets, plugs, clearance_mm=WANTED_MM, seating=seating), order


@pytest.mark.parametrize("seating", [Seating.SHIFT, Seating.TURN])
@pytest.mark.parametrize("kind", ["stars", "squares", "identical"])
def test_fifty_plugs_and_fifty_pockets(
    kind: str,
    seating: Seating,
    request: pytest.FixtureRequest,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    in_earnest = bool(request.config.getoption("benchmark_enable"))
    pockets = outlines(kind, COUNT if in_earnest else FEW)
    seats: list[object] = []

    def counted(*asked: Any, **how: Any) -> object:
        seats.append(asked)
        return closeness(*asked, **how)

    monkeypatch.setattr("inlayfit.fit.assignment.closeness", counted)
    took_s = []
    for _ in range(RUNS if in_earnest else 1):
        seats.clear()
        start = time.process_time()
        found, order = told_apart(pockets, seating)
        took_s.append(time.process_time() - start)
        assert len(found.pairs) == len(pockets)
        if kind != "identical":
            assert [order[pair.plug] for pair in found.pairs] == list(range(len(pockets)))
    if in_earnest:
        with capsys.disabled():
            row = f"{kind:12}{seating.value:8}{min(took_s):8.2f} s{len(seats):8} seats"
            print(f"\n{row}", end="")  # noqa: T201 - this is the report
