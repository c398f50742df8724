"""The promised form of fit.json: keys that stay, numbers that JSON knows, lengths in millimetres."""

from __future__ import annotations

import json
import math

import pytest

from inlayfit.document.report import fit_json, json_text
from inlayfit.finding import Finding, Severity
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.result import FitResult, HalfResult, ReliefCut
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, Relief
from inlayfit.geometry.region import Region

PROMISED = {"id", "clearance_mm", "gap", "overlap_mm2", "pocket", "plug", "reliefs", "findings"}
FINDING = Finding("neck", Severity.BLOCK, "Too narrow.", "Use a smaller cutter.", (1.23456789, 2.0))


def square(size: float, inset: float = 0.0) -> Region:
    return Region.of_ring(
        [(inset, inset), (size - inset, inset), (size - inset, size - inset), (inset, size - inset)]
    )


def result(plug: Region | None = None) -> FitResult:
    pocket, plug = square(20), square(20, 0.05) if plug is None else plug
    cut = ReliefCut(Half.PLUG, Relief.DOG_BONE, (0.1234567891, 3.0), 1.5, 0.4)
    spec = FitSpec(0.05, HalfSpec(3.0), HalfSpec(2.0, finishing_allowance_mm=0.2))
    halves = HalfResult(pocket), HalfResult(plug, reliefs=(cut,))
    return FitResult(spec, *halves, gap_map(pocket, plug), (FINDING,))


def test_the_keys_are_those_that_were_promised() -> None:
    answer = fit_json([("a1", result())], files=["pocket.dxf"])
    assert {"fittings", "files"} <= set(answer)
    (fitting,) = answer["fittings"]
    assert set(fitting) >= PROMISED
    assert {"min_mm", "mean_mm", "max_mm", "tightest_mm"} <= set(fitting["gap"])
    assert "area_mm2" in fitting["pocket"]
    assert "area_mm2" in fitting["plug"]
    assert answer["files"] == ["pocket.dxf"]


def test_the_numbers_are_those_of_the_fit() -> None:
    (fitting,) = fit_json([("a1", result())])["fittings"]
    assert fitting["id"] == "a1"
    assert fitting["clearance_mm"] == 0.05
    assert fitting["gap"]["min_mm"] == pytest.approx(0.05, abs=1e-6)
    assert fitting["pocket"]["area_mm2"] == 400
    assert fitting["plug"]["area_mm2"] == pytest.approx(19.9**2)
    assert fitting["plug"]["bounds_mm"] == [0.05, 0.05, 19.95, 19.95]
    assert fitting["plug"]["cutter_mm"] == 2
    (relief,) = fitting["reliefs"]
    assert relief == {
        "half": "plug",
        "kind": "dog-bone",
        "place_mm": [0.123457, 3],
        "area_mm2": 1.5,
        "bite_mm": 0.4,
        "straight": True,
    }
    assert fitting["findings"] == [FINDING.to_json()]


def test_what_cannot_be_measured_is_null_and_the_text_is_strict_json() -> None:
    answer = fit_json([("a1", result(Region.empty()))])
    (fitting,) = answer["fittings"]
    gap = fitting["gap"]
    assert [gap[key] for key in ("min_mm", "mean_mm", "max_mm", "tightest_mm", "loosest_mm")] == [None] * 5
    assert fitting["plug"]["bounds_mm"] is None

    def refuse(word: str) -> float:
        raise AssertionError(f"{word} is not JSON")

    assert json.loads(json_text(answer), parse_constant=refuse) == answer


def test_numbers_json_does_not_know_are_refused() -> None:
    with pytest.raises(ValueError, match="not JSON compliant"):
        json_text({"area": math.nan})


def test_no_number_is_a_negative_zero() -> None:
    assert "-0.0" not in json_text(fit_json([("a1", result(square(20)))]))
