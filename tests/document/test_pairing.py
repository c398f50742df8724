"""Which plug belongs to which pocket; nothing is left out without a word."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document.measured import circle, rectangle
from inlayfit.document.outlines import Outline
from inlayfit.document.pairing import paired
from inlayfit.errors import NoOutlineError
from inlayfit.finding import Finding, Severity
from inlayfit.fit.spec import Seating
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform
from tests.strategies import examples


def outlines(count: int) -> list[Outline]:
    return [replace(circle(10.0), id=f"o{number + 1}") for number in range(count)]


def drawn(*regions: Region) -> list[Outline]:
    return [Outline(f"o{n + 1}", "", "0", region, ()) for n, region in enumerate(regions)]


def pairs_of(
    pockets: list[Outline], plugs: list[Outline], *, chosen: bool = False, seating: Seating = Seating.SHIFT
) -> tuple[list[tuple[str, str]], tuple[Finding, ...]]:
    pairs, findings = paired(pockets, plugs, clearance_mm=0.05, seating=seating, chosen=chosen)
    return [(pocket.id, plug.id) for pocket, plug in pairs], findings


FLAG = Region.of_ring([(0, 0), (30, 0), (30, 8), (12, 8), (12, 22), (0, 22)])
FLIPPED = FLAG.moved(Transform.mirror_x())


def test_one_and_one_belong_together_without_a_word() -> None:
    assert pairs_of(outlines(1), outlines(1)) == ([("o1", "o1")], ())


def test_those_alike_are_paired_by_order_and_that_is_said_unless_the_order_was_given() -> None:
    apart = [replace(one, region=one.region.moved(Transform.shift(90, 0))) for one in outlines(3)]
    pairs, (finding,) = pairs_of(outlines(3), apart)
    assert pairs == [("o1", "o1"), ("o2", "o2"), ("o3", "o3")]
    assert (finding.code, finding.severity) == ("paired-by-order", Severity.NOTE)
    assert "o2 + o2" in finding.message
    assert pairs_of(outlines(3), outlines(3), chosen=True)[1] == ()
    assert pairs_of(outlines(3), outlines(3))[1][0].code == "paired-by-place"


def test_the_persons_order_stands_whatever_the_shapes() -> None:
    pockets = [replace(circle(10.0), id="o1"), replace(rectangle(30, 20), id="o2")]
    assert pairs_of(pockets, pockets[::-1], chosen=True)[0] == [("o1", "o2"), ("o2", "o1")]
    assert pairs_of(pockets, pockets[::-1])[0] == [("o1", "o1"), ("o2", "o2")]


@pytest.mark.parametrize("chosen", [False, True])
def test_a_plug_of_the_other_hand_is_never_paired_silently(chosen: bool) -> None:
    pairs, (finding,) = pairs_of(drawn(FLAG), drawn(FLIPPED), chosen=chosen)
    assert pairs == [("o1", "o1")]
    assert (finding.code, finding.severity) == ("plug-mirrored", Severity.WARN)
    assert "flipped over would go in (pocket + plug): o1 + o1." in finding.message
    turned = FLAG.moved(Transform.turn(1.0))
    (other,) = pairs_of(drawn(FLAG), drawn(turned), chosen=chosen)[1]
    assert other.code == "plug-turned"
    assert "o1 + o1 (−57°)" in other.message


def test_plugs_that_fit_nowhere_are_one_sentence() -> None:
    with pytest.raises(NoOutlineError, match="None of the plugs fits any of the pockets"):
        pairs_of(outlines(2), drawn(FLAG, FLIPPED))


@examples(20, 100)
@given(st.integers(1, 12), st.integers(1, 12), st.booleans())
def test_every_outline_is_in_a_pair_or_in_a_finding(pockets: int, plugs: int, chosen: bool) -> None:
    pairs, findings = pairs_of(outlines(pockets), outlines(plugs), chosen=chosen)
    assert len(pairs) == min(pockets, plugs)
    left = [finding for finding in findings if finding.code == "left-unpaired"]
    assert len(left) == (pockets != plugs)
    if left:
        rest = abs(pockets - plugs)
        first = f"o{len(pairs) + 1}"
        assert first in left[0].message
        assert rest == 1 or f"{rest} " in left[0].message
