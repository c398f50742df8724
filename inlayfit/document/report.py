"""The answer of a fit as JSON: `fit.json`, and what `inlayfit fit --json` prints.

    {"fittings": [{"id", "clearance_mm",
                   "gap": {"min_mm", "mean_mm", "max_mm", "tightest_mm": [x, y],
                           "loosest_mm", "tight_spots": [{"place_mm", "gap_mm"}]},
                   "overlap_mm2",
                   "pocket": {"area_mm2", "perimeter_mm", "holes", "pieces", "bounds_mm", "state",
                              "cutter_mm", "kerf_mm", "finishing_allowance_mm", "changed", "left_over_mm2",
                              "relief", "t_bone_wall", "corner_cutter_mm", "kerf_taper_mm", "edge_break_mm"},
                   "plug": the same,
                   "reliefs": [{"half", "kind", "place_mm", "area_mm2", "bite_mm", "straight"}],
                   "hand_work": [{"half", "place_mm", "area_mm2"}],
                   "findings": […]}],
     "files": [names], "written": [{"name", "points_in", "segments_out", "arcs_out", "deviation_mm"}],
     "findings": those of the export}

All lengths are millimetres, whatever the drawing's unit. Keys are only added, never renamed or dropped.
Where there is nothing to measure, as with a plug that clearance has eaten, the value is null.
"""

from __future__ import annotations

import json
import math
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import shapely

from inlayfit.finding import Finding
from inlayfit.fit.hand_work import hand_work
from inlayfit.fit.result import FitResult, GapMap, HalfResult, ReliefCut, Spot
from inlayfit.fit.spec import Half, HalfSpec

_DIGITS = 6  # a thousandth of a micrometre: below all that is promised, and short to read
_MOST_SPOTS = 20


def fit_json(
    results: Sequence[tuple[str, FitResult]],
    *,
    files: Iterable[str] = (),
    written: Iterable[dict[str, Any]] = (),
    findings: Iterable[Finding] = (),
    details: Mapping[str, Mapping[str, Any]] | None = None,
) -> dict[str, Any]:
    """The promised form; see the module docstring.

    Args:
        results: outline id and answer of each fitting.
        files: names of the files written.
        written: what is known about each of them.
        findings: those of the export; each fitting carries its own.
        details: more keys for a fitting, by its id; see `document.details`.
    """
    return {
        "fittings": [{**_fitting(name, result), **(details or {}).get(name, {})} for name, result in results],
        "files": list(files),
        "written": list(written),
        "findings": [finding.to_json() for finding in findings],
    }


def json_text(value: dict[str, Any]) -> str:
    """The value as the text of a file; refuses numbers that JSON does not know."""
    return json.dumps(value, indent=2, ensure_ascii=False, allow_nan=False) + "\n"


def _fitting(name: str, result: FitResult) -> dict[str, Any]:
    return {
        "id": name,
        "clearance_mm": _number(result.spec.clearance_mm),
        "gap": _gap(result.gap),
        "overlap_mm2": _number(result.gap.overlap_mm2),
        "pocket": _half(result.spec.pocket, result.pocket),
        "plug": _half(result.spec.plug, result.plug),
        "reliefs": [_relief(cut) for cut in result.reliefs],
        "hand_work": _hand_work(result),
        "findings": [finding.to_json() for finding in result.findings],
    }


def _gap(gap: GapMap) -> dict[str, Any]:
    return {
        "min_mm": _number(gap.min_mm),
        "mean_mm": _number(gap.mean_mm),
        "max_mm": _number(gap.max_mm),
        "tightest_mm": _place(gap.tightest[0].place_mm) if gap.tightest else None,
        "loosest_mm": _place(gap.loosest.place_mm) if gap.loosest else None,
        "tight_spots": [_spot(spot) for spot in gap.tightest[:_MOST_SPOTS]],
    }


def _spot(spot: Spot) -> dict[str, Any]:
    return {"place_mm": _place(spot.place_mm), "gap_mm": _number(spot.gap_mm)}


def _half(spec: HalfSpec, half: HalfResult) -> dict[str, Any]:
    outline = half.outline
    return {
        "area_mm2": _number(outline.area),
        "perimeter_mm": _number(outline.perimeter),
        "holes": outline.hole_count,
        "pieces": len(outline.polygons),
        "bounds_mm": None if outline.is_empty else [_number(value) for value in outline.bounds],
        "state": spec.state.value,
        "cutter_mm": _number(spec.cutter_mm),
        "kerf_mm": _number(spec.kerf_mm),
        "finishing_allowance_mm": _number(spec.finishing_allowance_mm),
        "changed": half.changed,
        "left_over_mm2": _number(half.left_over.area),
        "relief": spec.relief.value,
        "t_bone_wall": spec.t_bone_wall.value,
        "corner_cutter_mm": _number(spec.corner_cutter_mm),
        "kerf_taper_mm": _number(spec.kerf_taper_mm),
        "edge_break_mm": _number(spec.edge_break_mm),
    }


def _relief(cut: ReliefCut) -> dict[str, Any]:
    return {
        "half": cut.half.value,
        "kind": cut.kind.value,
        "place_mm": _place(cut.place_mm),
        "area_mm2": _number(cut.area_mm2),
        "bite_mm": _number(cut.bite_mm),
        "straight": cut.straight,
    }


def _hand_work(result: FitResult) -> list[dict[str, Any]]:
    halves = [
        (Half.POCKET, result.pocket, result.spec.pocket),
        (Half.PLUG, result.plug, result.spec.plug),
    ]
    listed = []
    for half, answer, spec in halves:
        for piece in hand_work(answer, spec):
            point = shapely.point_on_surface(piece.shape)
            place = _place((point.x, point.y))
            listed.append({"half": half.value, "place_mm": place, "area_mm2": _number(piece.area)})
    return listed


def _place(place: tuple[float, float]) -> list[float]:
    return [round(float(value), _DIGITS) for value in place]


def _number(value: float) -> float | None:
    """Rounded; null for what cannot be measured (JSON has no nan); never a negative zero."""
    return round(float(value), _DIGITS) + 0.0 if math.isfinite(value) else None
