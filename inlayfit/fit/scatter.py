"""A workshop's errors in one fitting: which of them apply, and how many parts have the wanted feel.

The sums are those of `fit.tolerance_stack`; here it is decided which error touches which half. A half that is
already made has no errors any more: what it is, is drawn. A cutter that cuts both halves is one error, told
by the two diameters being the same; two cutters are two. A beam has no runout. A wall leans only where a
kerf is tapered, by half the taper over the depth, so only there the stock's thickness counts.

The *wanted feel* is the word for the clearance that was asked for, and its zone reaches to the next words.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from inlayfit.errors import SpecError
from inlayfit.finding import Finding, Severity
from inlayfit.fit.faces import bed_side_loss_mm
from inlayfit.fit.feel import SEED_ZONES, Feel
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.result import PROMISED_MM, FitResult
from inlayfit.fit.spec import FitSpec
from inlayfit.fit.tolerance_stack import (
    Contribution,
    CutBy,
    CutterEffect,
    StopAdvice,
    ToleranceResult,
    WantedZone,
    cutter_diameter,
    cutter_error_effect,
    repeatability,
    runout,
    stop_adjusting,
    temperature,
    thickness,
    tolerance_stack,
)
from inlayfit.measures import per_side
from inlayfit.units import Unit, format_length
from inlayfit.wording import Worded

_MANY_GO_WRONG = 0.05


@dataclass(frozen=True, slots=True)
class Scatter:
    """What the errors do to many parts.

    Attributes:
        stack: worst case, root sum square and shares.
        feel: the word that is wanted.
        advice: whether to change the clearance; None without a repeatability.
    """

    stack: ToleranceResult
    feel: Feel
    advice: StopAdvice | None

    @property
    def sentence(self) -> str:
        """The three answers in one line."""
        low, high = (format_length(v, Unit.MM, with_unit=False) for v in self.stack.worst_mm)
        near, far = (format_length(v, Unit.MM, with_unit=False) for v in self.stack.root_sum_square_mm)
        shares = self.stack.shares
        return (
            f"per side {low} to {high} mm at worst, {near} to {far} mm by root sum square; "
            f"{_percent(shares.wanted)} {self.feel.value}, {_percent(shares.too_tight)} tighter, "
            f"{_percent(shares.too_loose)} looser"
        )


def scatter_of(result: FitResult, errors: MachineErrors, *, depth_mm: float = 0.0) -> Scatter | None:
    """The errors of a fitting added up; None if none is known that differs from part to part.

    Args:
        result: the fitting.
        errors: what is known.
        depth_mm: of the cut, for walls that lean.

    Raises:
        SpecError: the thickness varies, the wall leans, and the depth is not known.
    """
    if not errors.scatters or result.plug.outline.is_empty:
        return None
    spec = result.spec
    feel = SEED_ZONES.feel_at(spec.clearance_mm)
    repeats = _repeats(spec, errors)
    found = [*_cutters(spec, errors), *repeats, *_others(result, errors, depth_mm)]
    found += [
        Contribution(Worded("cutter not as its label says"), 0.0, shift_mm=effect.clearance_change_mm)
        for effect in cutter_effects(spec, errors)
    ]
    stack = tolerance_stack(spec.clearance_mm, found, zone=WantedZone(*SEED_ZONES.span_mm(feel)))
    advice = None
    if repeats:
        spread = math.sqrt(math.fsum(each.reach_mm**2 for each in repeats))
        advice = stop_adjusting(spec.clearance_mm - stack.mean_mm, spread)
    return Scatter(stack, feel, advice)


def scatter_finding(scatter: Scatter) -> Finding | None:
    """A warning if too many parts miss the wanted feel."""
    shares = scatter.stack.shares
    if 1 - shares.wanted <= _MANY_GO_WRONG:
        return None
    return Finding(
        "parts-vary",
        Severity.WARN,
        Worded(
            "Only {wanted} of parts have the wanted feel ({feel}): {tighter} are tighter, {looser} looser.",
            wanted=_percent(shares.wanted),
            feel=scatter.feel,
            tighter=_percent(shares.too_tight),
            looser=_percent(shares.too_loose),
        ),
        Worded(
            "The largest error is {largest}: make it smaller, or cut a few parts and choose.",
            largest=scatter.stack.largest,
        ),
    )


def cutter_effects(spec: FitSpec, errors: MachineErrors) -> tuple[CutterEffect, ...]:
    """What it does to reckon with the diameter on the label; one effect a cutter.

    Raises:
        SpecError: none of the cutters can be the one of the label.
    """
    if not errors.cutter_nominal_mm:
        return ()
    cuts = _cutter_groups(spec)
    if not cuts:
        raise SpecError(Worded("No half is still to be cut with a cutter; leave the nominal diameter out."))
    effects, refused = [], None
    for diameter, by in cuts:
        try:
            effects.append(cutter_error_effect(diameter, errors.cutter_nominal_mm, by))
        except SpecError as refusal:  # the label of the other half's cutter
            refused = refusal
    if refused is not None and not effects:
        raise refused
    return tuple(effects)


def nominal_findings(spec: FitSpec, errors: MachineErrors) -> list[Finding]:
    """A warning for each cutter whose label would spoil the fit."""
    findings = []
    for effect in cutter_effects(spec, errors):
        change = effect.clearance_change_mm
        if abs(change) < PROMISED_MM:
            continue
        left = per_side(spec.clearance_mm + change)
        findings.append(
            Finding(
                "cutter-not-nominal",
                Severity.WARN,
                Worded("{effect}, to {left}.", effect=effect.clause, left=left),
                Worded("Reckon the path with the measured diameter, and this does not happen."),
            )
        )
    return findings


def _cutter_groups(spec: FitSpec) -> list[tuple[float, CutBy]]:
    """The cutters still to be used: diameter, and which halves each cuts."""
    halves = [(spec.pocket, CutBy.POCKET), (spec.plug, CutBy.PLUG)]
    used = [(half.cutter_mm, by) for half, by in halves if half.may_move and half.cutter_mm]
    if len(used) == 2 and used[0][0] == used[1][0]:
        return [(used[0][0], CutBy.BOTH)]
    return used


def _cutters(spec: FitSpec, errors: MachineErrors) -> list[Contribution]:
    kinds: list[tuple[Callable[..., Contribution], float]] = [
        (cutter_diameter, errors.cutter_varies_mm),
        (runout, errors.runout_mm),
    ]
    return [kind(size, cuts=by) for kind, size in kinds if size for _, by in _cutter_groups(spec)]


def _repeats(spec: FitSpec, errors: MachineErrors) -> list[Contribution]:
    if not errors.repeatability_mm:
        return []
    pocket, plug = repeatability(errors.repeatability_mm)
    return [*([pocket] if spec.pocket.may_move else []), *([plug] if spec.plug.may_move else [])]


def _others(result: FitResult, errors: MachineErrors, depth_mm: float) -> list[Contribution]:
    found = []
    leans = bed_side_loss_mm(result.spec)
    if errors.thickness_varies_mm and leans:
        if not depth_mm:
            raise SpecError(
                Worded("How a varying thickness moves a leaning wall depends on the depth; give it too.")
            )
        found.append(thickness(errors.thickness_varies_mm, wall_slope=leans / depth_mm))
    if errors.temperature_varies_k:
        x0, y0, x1, y1 = result.plug.outline.bounds
        difference = errors.expansion_difference_per_k
        width = max(x1 - x0, y1 - y0)
        found.append(
            temperature(errors.temperature_varies_k, width_mm=width, expansion_difference_per_k=difference)
        )
    return found


def _percent(share: float) -> str:
    return f"{100 * share:.1f} %"
