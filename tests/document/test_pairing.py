"""Which plug belongs to which pocket; nothing is left out without a word."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document.measured import circle
from inlayfit.document.outlines import Outline
from inlayfit.document.pairing import paired
from tests.strategies import examples


def outlines(count: int) -> list[Outline]:
    return [replace(circle(10.0), id=f"o{number + 1}") for number in range(count)]


def test_one_and_one_belong_together_without_a_word() -> None:
    pairs, findings = paired(outlines(1), outlines(1), chosen=False)
    assert len(pairs) == 1
    assert findings == ()


def test_several_are_paired_by_order_and_that_is_said_unless_the_order_was_given() -> None:
    pairs, findings = paired(outlines(3), outlines(3), chosen=False)
    assert [(a.id, b.id) for a, b in pairs] == [("o1", "o1"), ("o2", "o2"), ("o3", "o3")]
    assert [finding.code for finding in findings] == ["paired-by-order"]
    assert paired(outlines(3), outlines(3), chosen=True)[1] == ()


@examples(20, 100)
@given(st.integers(1, 12), st.integers(1, 12), st.booleans())
def test_every_outline_is_in_a_pair_or_in_a_finding(pockets: int, plugs: int, chosen: bool) -> None:
    pairs, findings = paired(outlines(pockets), outlines(plugs), chosen=chosen)
    assert len(pairs) == min(pockets, plugs)
    left = [finding for finding in findings if finding.code == "left-unpaired"]
    assert len(left) == (pockets != plugs)
    if left:
        rest = abs(pockets - plugs)
        first = f"o{len(pairs) + 1}"
        assert first in left[0].message
        assert rest == 1 or f"{rest} " in left[0].message
