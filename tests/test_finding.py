"""Findings: their JSON, as the command line promises it, and their order."""

from __future__ import annotations

import json

from hypothesis import given
from hypothesis import strategies as st

from inlayfit.finding import Finding, Severity, has_open_block, heaviest_first

numbers = st.floats(-1e6, 1e6, allow_nan=False)
findings = st.builds(
    Finding,
    code=st.sampled_from(["neck", "outline-open", "bites"]),
    severity=st.sampled_from(Severity),
    message=st.text(max_size=20),
    remedy=st.text(max_size=20),
    place_mm=st.none() | st.tuples(numbers, numbers),
    fixed=st.booleans(),
)


@given(finding=findings)
def test_json_has_the_promised_keys(finding: Finding) -> None:
    shown = finding.to_json()
    assert list(shown) == ["code", "severity", "place_mm", "message", "remedy", "fixed"]
    assert shown["severity"] in ("block", "warn", "note")
    assert isinstance(shown["fixed"], bool)
    if finding.place_mm is None:
        assert shown["place_mm"] is None
    else:
        # A millionth of a millimetre is more than any drawing means.
        assert all(abs(a - b) <= 5e-7 for a, b in zip(shown["place_mm"], finding.place_mm, strict=True))
    assert json.loads(json.dumps(shown, allow_nan=False)) == shown


@given(some=st.lists(findings, max_size=12))
def test_the_heaviest_come_first_and_the_open_before_the_fixed(some: list[Finding]) -> None:
    ordered = heaviest_first(some)
    assert sorted(map(id, ordered)) == sorted(map(id, some))
    ranks = [(finding.fixed, list(Severity).index(finding.severity)) for finding in ordered]
    assert ranks == sorted(ranks)
    assert heaviest_first(ordered) == ordered, "the rest keeps its order"


@given(some=st.lists(findings, max_size=12))
def test_only_an_open_block_blocks(some: list[Finding]) -> None:
    assert has_open_block(some) == any(f.severity == "block" and not f.fixed for f in some)
    assert not has_open_block(finding.as_fixed() for finding in some)


@given(finding=findings)
def test_mending_changes_nothing_else(finding: Finding) -> None:
    mended = finding.as_fixed()
    assert mended.fixed
    assert mended.to_json() | {"fixed": finding.fixed} == finding.to_json()


def test_severities_weigh_as_they_are_listed() -> None:
    assert [severity.rank for severity in Severity] == [0, 1, 2]
    assert [severity.value for severity in Severity] == ["block", "warn", "note"]
