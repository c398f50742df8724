"""Tolerance: what the errors of a workshop do to the clearance, and how many parts go in.

The clearance per side is (width of pocket − width of plug) / 2. Every error moves it by its own size times a
*sensitivity*:

    error                                      sensitivity, on the clearance per side
    diameter of the cutter that cuts both      1      the pocket's wall stands back by half of it, the plug's
    of a cutter that cuts one half             1/2    too: both take it away from the gap, so it counts whole
    runout (total reading) of the same         like the diameter, but only ever growing the cut
    width of one half, part to part            1/2    a width has two walls
    stock's thickness under a slanting cut     slope of the wall: the edge moves slope × thickness
    warmth, W wide, expansion differing by Δα  Δα·W/2 per kelvin

Three answers:

    worst case        nominal ± Σ |s|·a                   every error at its limit at once
    root sum square   nominal ± √Σ (s·a)²                 the usual statistical sum of tolerances
    share of parts    how many of many random parts end in the wanted zone of clearance

with a the half width (the ±) of each error. For the share a *normal* error has a standard deviation of a
third of its half width, so 99.73 % of parts lie within (the convention of statistical tolerancing, which is
what makes the root sum square a limit of the same kind); a *uniform* one a/√3 (JCGM 100, Guide to the
expression of uncertainty in measurement, 4.3.7). The draws are seeded: the same question has the same answer.
The errors are taken as independent; what two halves share (one cutter for both) is one error, not two.

Does not handle: errors that follow each other, drift over a batch, shape errors along the wall.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from inlayfit.errors import SpecError
from inlayfit.geometry.path import Points
from inlayfit.measures import entry, length
from inlayfit.units import Unit, format_per_side
from inlayfit.wording import Worded

SIGMAS_IN_HALF_WIDTH = 3.0
"""Standard deviations in the ± of a normal error."""
SAMPLES = 200_000
"""Random parts drawn: a share near 90 % is then known to ± 0.2 % (two standard errors)."""
MOST_SAMPLES = 10_000_000
SEED = 286
"""Any fixed number would do."""
LARGEST_CUTTER_ERROR_MM = 1.0
"""More than this between a cutter and its label is another cutter."""
STOP_SENTENCE = "Stop adjusting: you are inside your machine's repeatability."


class Distribution(StrEnum):
    """How an error is spread between its limits."""

    NORMAL = "normal"
    UNIFORM = "uniform"


class CutBy(StrEnum):
    """Which halves one cutter cuts."""

    POCKET = "pocket"
    PLUG = "plug"
    BOTH = "both"

    @property
    def sensitivity(self) -> float:
        """What an error of the diameter does to the clearance per side: half of it for each half."""
        return 1.0 if self is CutBy.BOTH else 0.5


@dataclass(frozen=True, slots=True)
class Contribution:
    """One error.

    Attributes:
        name: what it is called in a list.
        half_width_mm: its ±, 0 or more.
        distribution: how it is spread.
        sensitivity: change of the clearance per side for each millimetre of it.
        shift_mm: its mean, if it is not as likely one way as the other (runout only grows a cut).
    """

    name: str
    half_width_mm: float
    distribution: Distribution = Distribution.NORMAL
    sensitivity: float = 1.0
    shift_mm: float = 0.0

    def __post_init__(self) -> None:
        if not all(math.isfinite(v) for v in (self.half_width_mm, self.sensitivity, self.shift_mm)):
            raise SpecError(
                Worded("The tolerance “{name}” is not a finite number; give its ± in mm.", name=self.name)
            )
        if self.half_width_mm < 0:
            raise SpecError(
                Worded("The tolerance “{name}” is negative; give its ± as 0 or more.", name=self.name)
            )

    @property
    def reach_mm(self) -> float:
        """Most it moves the clearance per side from its mean effect, either way."""
        return abs(self.sensitivity) * self.half_width_mm

    @property
    def mean_mm(self) -> float:
        """Its mean effect on the clearance per side."""
        return self.sensitivity * self.shift_mm

    @property
    def deviation_mm(self) -> float:
        """Standard deviation of its effect on the clearance per side."""
        normal = self.distribution is Distribution.NORMAL
        return self.reach_mm / (SIGMAS_IN_HALF_WIDTH if normal else math.sqrt(3))

    def drawn(self, random: np.random.Generator, count: int) -> Points:
        """(count,) random effects on the clearance per side."""
        if self.distribution is Distribution.NORMAL:
            return random.normal(self.mean_mm, self.deviation_mm, count)
        return random.uniform(self.mean_mm - self.reach_mm, self.mean_mm + self.reach_mm, count)


@dataclass(frozen=True, slots=True)
class WantedZone:
    """The clearances per side that have the wanted feel, limits included.

    Attributes:
        low_mm: tightest; -inf if none is too tight.
        high_mm: loosest; inf if none is too loose.
    """

    low_mm: float
    high_mm: float

    def __post_init__(self) -> None:
        if not self.low_mm <= self.high_mm:
            raise SpecError(Worded("The wanted zone of clearance is empty; give its tight limit first."))


@dataclass(frozen=True, slots=True)
class Shares:
    """Shares of many parts, adding up to 1.

    Attributes:
        too_tight: below the zone.
        wanted: inside it.
        too_loose: above it.
        error: standard error of `wanted`, √(p·(1 − p)/n).
    """

    too_tight: float
    wanted: float
    too_loose: float
    error: float

    @property
    def go_in(self) -> float:
        """Share that is not too tight, loose ones counted."""
        return self.wanted + self.too_loose


@dataclass(frozen=True, slots=True)
class ToleranceResult:
    """What the errors do to a clearance; lengths are clearances per side.

    Attributes:
        nominal_mm: as drawn.
        mean_mm: with the mean effects of the errors.
        worst_mm: tightest and loosest if every error is at its limit.
        root_sum_square_mm: the same by root sum square.
        shares: shares of parts by feel.
        largest: name of the error that reaches farthest, "" if there is none.
    """

    nominal_mm: float
    mean_mm: float
    worst_mm: tuple[float, float]
    root_sum_square_mm: tuple[float, float]
    shares: Shares
    largest: str


def tolerance_stack(
    clearance_mm: float,
    contributions: Iterable[Contribution],
    *,
    zone: WantedZone,
    samples: int = SAMPLES,
    seed: int = SEED,
) -> ToleranceResult:
    """Worst case, root sum square and share of parts for a clearance and its errors.

    Args:
        clearance_mm: per side, as drawn.
        contributions: the errors, independent of each other.
        zone: the clearances with the wanted feel.
        samples: random parts to draw.
        seed: of the draws.

    Raises:
        SpecError: the clearance or the number of samples makes no sense.
    """
    if not math.isfinite(clearance_mm):
        raise SpecError(Worded("The clearance is not a finite number; type a length such as 0.05 mm."))
    if not 1 <= samples <= MOST_SAMPLES:
        raise SpecError(
            Worded("Between 1 and {most} parts can be drawn; change their number.", most=str(MOST_SAMPLES))
        )
    errors = tuple(contributions)
    mean = clearance_mm + math.fsum(error.mean_mm for error in errors)
    worst = math.fsum(error.reach_mm for error in errors)
    square = math.sqrt(math.fsum(error.reach_mm**2 for error in errors))
    widest = max(errors, key=lambda error: error.reach_mm, default=None)
    return ToleranceResult(
        nominal_mm=clearance_mm,
        mean_mm=mean,
        worst_mm=(mean - worst, mean + worst),
        root_sum_square_mm=(mean - square, mean + square),
        shares=_shares(clearance_mm, errors, zone, samples, seed),
        largest="" if widest is None else widest.name,
    )


def _shares(
    clearance_mm: float, errors: Iterable[Contribution], zone: WantedZone, count: int, seed: int
) -> Shares:
    random = np.random.default_rng(seed)
    clearances = np.full(count, clearance_mm)
    for error in errors:
        clearances += error.drawn(random, count)
    tight = int((clearances < zone.low_mm).sum())
    loose = int((clearances > zone.high_mm).sum())
    wanted = (count - tight - loose) / count
    return Shares(tight / count, wanted, loose / count, math.sqrt(wanted * (1 - wanted) / count))


# --- the usual errors --------------------------------------------------------------------------------


def cutter_diameter(half_width_mm: float, *, cuts: CutBy) -> Contribution:
    """How surely a cutter's diameter is known: ± on the diameter."""
    name = _named(Worded("cutter diameter"), cuts)
    return Contribution(name, half_width_mm, sensitivity=cuts.sensitivity)


def runout(total_reading_mm: float, *, cuts: CutBy) -> Contribution:
    """Runout of collet and cutter, as the total reading of a dial gauge, 0 up to this.

    A cutter that runs out by e off its axis cuts a circle 2e wider, and the gauge reads 2e. So it works like
    a larger diameter: it widens the pocket, thins the plug and adds clearance, by half its reading on
    average. Leave it out if the cutter was measured by the width of a trial slot, which has it in.
    """
    half = total_reading_mm / 2
    name = _named(Worded("runout"), cuts)
    return Contribution(name, half, Distribution.UNIFORM, sensitivity=cuts.sensitivity, shift_mm=half)


def repeatability(half_width_mm: float) -> tuple[Contribution, Contribution]:
    """The machine's repeatability: ± with which the width of one half comes out again; one for each half."""
    return (
        Contribution(Worded("pocket, part to part"), half_width_mm, sensitivity=0.5),
        Contribution(Worded("plug, part to part"), half_width_mm, sensitivity=-0.5),
    )


def thickness(half_width_mm: float, *, wall_slope: float) -> Contribution:
    """Thickness of stock that is cut with a slant, as by a beam.

    Args:
        half_width_mm: ± of the thickness.
        wall_slope: how far the wall leans in or out over a millimetre of thickness, per side.
    """
    name = Worded("stock thickness")
    return Contribution(name, half_width_mm, Distribution.UNIFORM, sensitivity=wall_slope)


def temperature(half_width_k: float, *, width_mm: float, expansion_difference_per_k: float) -> Contribution:
    """Warmth: plug and host of different materials.

    Args:
        half_width_k: ± of the temperature, in kelvin.
        width_mm: width of the plug, where it is widest.
        expansion_difference_per_k: expansion of the plug less that of the host, per kelvin (97e-6, say). The
            gap at one wall shrinks by this times half the width.
    """
    per_kelvin = expansion_difference_per_k * width_mm / 2
    reach, way = half_width_k * abs(per_kelvin), math.copysign(1, -per_kelvin)
    return Contribution(Worded("temperature"), reach, Distribution.UNIFORM, way)


def _named(what: str, cuts: CutBy) -> str:
    which = Worded("both halves") if cuts is CutBy.BOTH else cuts
    return Worded("{what}, {which}", what=what, which=which)


# --- sentences ---------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class CutterEffect:
    """What a cutter that is not what its label says does.

    Attributes:
        pocket_wall_mm: how far the pocket's wall stands back from where it was meant; negative if in.
        plug_wall_mm: the same for the plug's wall, seen from the plug: negative is a smaller plug.
        clearance_change_mm: change of the clearance per side.
        clause: the same in words, without a full stop.
    """

    pocket_wall_mm: float
    plug_wall_mm: float
    clearance_change_mm: float
    clause: Worded

    @property
    def sentence(self) -> str:
        """The same in a sentence of its own."""
        return f"{self.clause}."


def cutter_error_effect(
    measured_mm: float, nominal_mm: float, cuts: CutBy = CutBy.BOTH, *, unit: Unit = Unit.MM
) -> CutterEffect:
    """What it does to cut with one diameter along a path reckoned for another.

    Args:
        measured_mm: diameter of the cutter.
        nominal_mm: diameter the path was reckoned with.
        cuts: which halves it cut.
        unit: of the lengths in the sentence.

    Raises:
        SpecError: a diameter makes no sense, or the two are too far apart to be one cutter.
    """
    for diameter in (measured_mm, nominal_mm):
        if not math.isfinite(diameter) or diameter <= 0:
            raise SpecError(
                Worded("A cutter's diameter is more than 0; give what you measured and what was assumed.")
            )
    error = measured_mm - nominal_mm
    if abs(error) > min(LARGEST_CUTTER_ERROR_MM, nominal_mm / 2):
        raise SpecError(
            Worded(
                "A cutter of {measured} cannot be the one of {nominal}; check both numbers.",
                measured=length(measured_mm, "g"),
                nominal=length(nominal_mm, "g"),
            )
        )
    pocket = 0.0 if cuts is CutBy.PLUG else error / 2
    plug = 0.0 if cuts is CutBy.POCKET else -error / 2
    change = pocket - plug
    return CutterEffect(pocket, plug, change, _cutter_clause(measured_mm, nominal_mm, cuts, change, unit))


_SMALLER = {
    CutBy.BOTH: Worded("both halves are cut with it, so the pocket comes out small and the plug big"),
    CutBy.POCKET: Worded("the pocket comes out small"),
    CutBy.PLUG: Worded("the plug comes out big"),
}
_LARGER = {
    CutBy.BOTH: Worded("both halves are cut with it, so the pocket comes out big and the plug small"),
    CutBy.POCKET: Worded("the pocket comes out big"),
    CutBy.PLUG: Worded("the plug comes out small"),
}


def _cutter_clause(
    measured_mm: float, nominal_mm: float, cuts: CutBy, change_mm: float, unit: Unit
) -> Worded:
    measured, nominal = entry(measured_mm, unit), entry(nominal_mm, unit)
    if change_mm == 0:
        return Worded("The cutter measures {measured}, as reckoned with: nothing changes", measured=measured)
    smaller = change_mm < 0
    whole = Worded("the whole error") if cuts is CutBy.BOTH else Worded("half the error")
    return Worded(
        "The cutter measures {measured}, not {nominal}: {effect}, and the clearance per side "
        "{falls} by {whole}, "
        "{amount}",
        measured=measured,
        nominal=nominal,
        effect=(_SMALLER if smaller else _LARGER)[cuts],
        falls=Worded("falls") if smaller else Worded("rises"),
        whole=whole,
        amount=length(abs(change_mm)).in_unit(unit),
    )


@dataclass(frozen=True, slots=True)
class StopAdvice:
    """Whether another correction is worth cutting.

    Attributes:
        stop: True if the machine cannot tell the change from chance.
        sentence: what to do.
    """

    stop: bool
    sentence: str


def stop_adjusting(next_change_mm: float, repeatability_mm: float, *, unit: Unit = Unit.MM) -> StopAdvice:
    """Whether the next change of clearance is smaller than what the machine repeats to.

    Args:
        next_change_mm: change of the clearance per side that is proposed.
        repeatability_mm: ± with which the clearance per side comes out again.
        unit: of the lengths in the sentence.

    Raises:
        SpecError: a number is not finite, or the repeatability is negative.
    """
    if not (math.isfinite(next_change_mm) and math.isfinite(repeatability_mm)) or repeatability_mm < 0:
        raise SpecError(
            Worded("A repeatability is a length of 0 or more; measure the same cut several times.")
        )
    if abs(next_change_mm) < repeatability_mm or next_change_mm == 0:
        return StopAdvice(True, STOP_SENTENCE)
    verb = "Add" if next_change_mm > 0 else "Take off"
    amount = format_per_side(abs(next_change_mm), unit, with_unit=True)
    return StopAdvice(False, f"{verb} {amount} of clearance.")
