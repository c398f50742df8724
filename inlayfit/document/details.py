"""What a workshop adds to the answer of a fit, as JSON keys and as lines for a person.

Keys that a fitting gets in `fit.json` beside those of `document.report`; each stands only where it applies,
but `orientations` always:

    "orientations": {"is_round", "mark", "mirror_matters",
                     "lookalikes": [{"motion", "turn_deg", "misfit_mm", "goes_in"}]}
    "bench": {"goes_in", "verdict", "spots": [{"place_mm", "gap_mm", "take_off_mm", "length_mm", "halves"}]}
    "seating": {"shift_mm": [x, y], "turn_deg", "plug_outline"}
    "faces": {"show_mm", "bed_mm", "governs"}
    "floor": {"fillet_mm", "hold_up_mm", "edge_break_needed_mm"}
    "passes": {"count", "depths_mm"}
    "tolerance": {"nominal_mm", "mean_mm", "worst_mm": [a, b], "root_sum_square_mm": [a, b], "feel",
                  "shares": {"wanted", "too_tight", "too_loose", "error"}, "largest", "stop", "advice"}
    "measured": {"x": {"offset_mm", "offset_interval_mm", "scale", "scale_interval"}, "y": the same,
                 "residuals": [{"axis", "nominal_mm", "measured_mm", "off_mm"}]}
    "contours": [{"half", "layer", "turn", "milling"}]      (written by `document.exports`)

Lengths are millimetres, overall for an offset, angles degrees, scales and shares plain numbers.
"""

from __future__ import annotations

import math
from typing import Any

from inlayfit.fit.bench_advice import goes_in, verdict_sentence
from inlayfit.fit.lookalikes import orientation_sentence
from inlayfit.fit.measured import Interval, PocketModel, describe
from inlayfit.fit.orientation import Need, Orientations
from inlayfit.fit.scatter import Scatter
from inlayfit.fit.seating import Seat
from inlayfit.fit.workshop import Examined
from inlayfit.units import MINUS, Unit, format_length

_DIGITS = 6


def details_json(
    fit: Examined,
    *,
    seat: Seat | None = None,
    plug_outline: str = "",
    model: PocketModel | None = None,
) -> dict[str, Any]:
    """The keys that apply; see the module docstring.

    Args:
        fit: the fitting.
        seat: how a plug that exists was moved.
        plug_outline: the id of that plug in its own drawing.
        model: from the readings taken in a pocket.
    """
    found: dict[str, Any] = {"orientations": _orientations(fit.orientations)}
    if fit.both_made and not fit.result.gap.is_empty:
        found["bench"] = _bench(fit)
    if seat is not None:
        found["seating"] = {
            "shift_mm": _pair(seat.shift_mm),
            "turn_deg": _round(math.degrees(seat.turn_rad)),
            "plug_outline": plug_outline,
        }
    if fit.faces is not None:
        show, bed = _pair((fit.faces.show_mm, fit.faces.bed_mm))
        found["faces"] = {"show_mm": show, "bed_mm": bed, "governs": fit.faces.governing}
    if fit.floor is not None:
        found["floor"] = {
            "fillet_mm": _round(fit.floor.fillet_mm),
            "hold_up_mm": _round(fit.floor.hold_up_mm),
            "edge_break_needed_mm": _round(fit.floor.edge_break_needed_mm),
        }
    if fit.passes_mm:
        depths = [_round(depth) for depth in fit.passes_mm]
        found["passes"] = {"count": len(depths), "depths_mm": depths}
    if fit.scatter is not None:
        found["tolerance"] = _tolerance(fit.scatter)
    if model is not None:
        found["measured"] = _measured(model)
    return found


def details_lines(fit: Examined, *, model: PocketModel | None = None) -> list[str]:
    """The same for a person, a line each, in the form of `document.summary.fit_text`."""
    lines = []
    if fit.both_made and not fit.result.gap.is_empty:
        lines.append(f"  bench   {verdict_sentence(fit.result)}")
    if goes_in(fit.result):
        lines.append(f"  turned  {orientation_sentence(fit.orientations)}")
    if fit.passes_mm:
        lines.append(f"  passes  {passes_words(fit.passes_mm)}")
    if fit.scatter is not None:
        lines.append(f"  parts   {fit.scatter.sentence}")
        if fit.scatter.advice is not None:
            lines.append(f"          {fit.scatter.advice.sentence}")
    return lines + (_measured_lines(model) if model is not None else [])


def passes_words(depths_mm: tuple[float, ...]) -> str:
    """In words: 4, to 0.500, 1.000, 1.500 and 2.000 mm; many are cut short."""
    shown = [format_length(depth, Unit.MM, with_unit=False) for depth in depths_mm]
    if len(shown) > 8:
        shown = [*shown[:3], "…", shown[-1]]
    listed = ", ".join(shown[:-1])
    return f"{len(depths_mm)}, to {listed + ' and ' if listed else ''}{shown[-1]} mm"


def _orientations(ways: Orientations) -> dict[str, Any]:
    return {
        "is_round": ways.is_round,
        "mark": ways.mark_is_compulsory,
        "mirror_matters": ways.mirror_matters,
        "lookalikes": [
            {
                "motion": way.motion.value,
                "turn_deg": _round(math.degrees(way.angle_rad) % 360),
                "misfit_mm": _round(way.misfit_mm),
                "goes_in": way.need is Need.NOTHING,
            }
            for way in ways.lookalikes
        ],
    }


def _bench(fit: Examined) -> dict[str, Any]:
    return {
        "goes_in": goes_in(fit.result),
        "verdict": verdict_sentence(fit.result),
        "spots": [
            {
                "place_mm": _pair(work.place_mm),
                "gap_mm": _round(work.gap_mm),
                "take_off_mm": _round(work.take_off_mm),
                "length_mm": _round(work.length_mm),
                "halves": [half.value for half in work.halves],
            }
            for work in fit.bench
        ],
    }


def _tolerance(scatter: Scatter) -> dict[str, Any]:
    stack, advice = scatter.stack, scatter.advice
    return {
        "nominal_mm": _round(stack.nominal_mm),
        "mean_mm": _round(stack.mean_mm),
        "worst_mm": _pair(stack.worst_mm),
        "root_sum_square_mm": _pair(stack.root_sum_square_mm),
        "feel": scatter.feel.value,
        "shares": {
            "wanted": _round(stack.shares.wanted),
            "too_tight": _round(stack.shares.too_tight),
            "too_loose": _round(stack.shares.too_loose),
            "error": _round(stack.shares.error),
        },
        "largest": stack.largest,
        "stop": None if advice is None else advice.stop,
        "advice": None if advice is None else advice.sentence,
    }


def _measured(model: PocketModel) -> dict[str, Any]:
    known = model.intervals

    def axis(offset: float, offset_known: Interval, scale: float, scale_known: Interval) -> dict[str, Any]:
        return {
            "offset_mm": _round(offset),
            "offset_interval_mm": _pair(offset_known),
            "scale": round(scale, 9),
            "scale_interval": [round(value, 9) for value in scale_known],
        }

    return {
        "x": axis(model.offset_x_mm, known.offset_x_mm, model.scale_x, known.scale_x),
        "y": axis(model.offset_y_mm, known.offset_y_mm, model.scale_y, known.scale_y),
        "residuals": [
            {
                "axis": residual.reading.axis.value,
                "nominal_mm": _round(residual.reading.nominal_mm),
                "measured_mm": _round(residual.reading.measured_mm),
                "off_mm": _round(residual.off_mm),
            }
            for residual in model.residuals
        ],
    }


def _measured_lines(model: PocketModel) -> list[str]:
    x, y = describe(model)
    offs = []
    for residual in model.residuals:
        off = format_length(residual.off_mm, Unit.MM, with_unit=False)
        sign = "" if off.startswith(MINUS) else "+"
        offs.append(f"{residual.reading.axis} {residual.reading.nominal_mm:g}: {sign}{off}")
    return [f"  read    {x}", f"          {y}", f"          residuals in mm: {', '.join(offs)}"]


def _round(value: float) -> float:
    return round(float(value), _DIGITS) + 0.0


def _pair(values: tuple[float, float]) -> list[float]:
    return [_round(value) for value in values]
