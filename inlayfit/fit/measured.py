"""The measured pocket: from a few readings to the outline that was really cut.

A reading is the width of the recess at one *station*: what the drawing says there (nominal) and what the
caliper says (measured), along X or along Y, between two walls that face each other across the recess. Two
kinds of error show in it, and each axis has its own:

    measured = nominal·(1 + scale) + offset

*Offset* is the same at every length: a cutter that is not what its label says, or deflection. It is the
error of both walls together, so it is **twice the error per side**. *Scale* grows with the length: steps of
the axis. One long station and one short one tell the two apart. With more, the line is laid by least
squares:

    1 + scale = Sxy / Sxx,   offset = ȳ − (1 + scale)·x̄,   Sxx = Σ(x − x̄)²,   Sxy = Σ(x − x̄)(y − ȳ)

and for readings that repeat to ± r (95 %) the 95 % intervals are

    scale ± r / √Sxx         offset ± r·√(1/n + x̄²/Sxx)

(Simple linear regression with a known error of the readings; standard formulas, as in any textbook of
statistics. The error is known, so normal quantiles hold and not Student's.) Residuals far beyond r mean that
one reading is wrong: Σ(residual/σ)² is compared with its χ² limit of 99 %, σ = r / 1.96.

The model of the pocket is the drawn one scaled about the middle of its bounds, then its walls moved out by
half the offset of their axis. A wall that faces X moves by a = offset_x/2, one that faces Y by b =
offset_y/2, and one with the unit normal (nx, ny) by √(a²·nx² + b²·ny²): the pocket is dilated (or eroded, if
both are negative) by the ellipse with the half axes a and b, which is the usual disk when they are equal.
Stretching the plane makes the ellipse a disk and back. If the signs differ there is no such ellipse, and the
two axes follow one another, the growing one first: dilation by a straight stroke of ± a along X, then
erosion by one of ± |b| along Y, so a slanting wall moves by a·|nx| − |b|·|ny|. A stroke is also what an
ellipse becomes when one of its axes is nothing.

Does not handle: pockets turned against the axes of the machine, walls that are not square to the floor,
widths measured over an island (an island shrinks when its pocket grows).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
import shapely
from scipy.special import chdtri
from shapely.geometry.base import BaseGeometry

from inlayfit.errors import SpecError
from inlayfit.finding import Finding, Severity
from inlayfit.geometry.morphology import dilate, thinned
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, Tolerance
from inlayfit.geometry.transform import Transform
from inlayfit.measures import entry, length, per_side
from inlayfit.units import LARGEST_LENGTH_MM, MINUS, Unit, format_length
from inlayfit.wording import Worded

REPEATABILITY_MM = 0.01
"""± of one reading, 95 %: pins or an internal micrometer by a careful hand (common practice)."""
OFFSET_MATTERS_MM = 0.05
"""Overall: an offset known less well than ± this is no help; 0.025 per side is half of a snug fit's range."""
LARGEST_SCALE = 0.05
"""No axis is out by one part in twenty: beyond it two numbers do not belong together, or have other units."""
LARGEST_OFFSET_MM = 2.0
"""A cutter a millimetre off per side and more is another cutter."""
_NORMAL_95 = 1.959964  # two-sided 95 % quantile of the normal distribution
_DOUBTFUL = 0.01  # readings that chance makes this bad only so often are refused
_SAME_LENGTH_MM = 1e-3
_NO_STROKE_MM = 5e-5  # a half axis below this is nothing: a twentieth of a micrometre


class Axis(StrEnum):
    """Along which axis of the machine a width was taken."""

    X = "X"
    Y = "Y"


@dataclass(frozen=True, slots=True)
class Reading:
    """One width of the recess.

    Attributes:
        axis: along which it was taken.
        nominal_mm: what the drawing says at this station.
        measured_mm: what was read.
    """

    axis: Axis
    nominal_mm: float
    measured_mm: float

    def __post_init__(self) -> None:
        if not (math.isfinite(self.nominal_mm) and math.isfinite(self.measured_mm)):
            raise SpecError(
                Worded("A reading in {axis} is not a finite number; type both lengths.", axis=self.axis)
            )
        if self.nominal_mm <= 0 or self.measured_mm <= 0:
            raise SpecError(
                Worded(
                    "A reading in {axis} is not more than 0; type both widths of the recess.", axis=self.axis
                )
            )
        if max(self.nominal_mm, self.measured_mm) > LARGEST_LENGTH_MM:
            raise SpecError(
                Worded("A reading in {axis} is longer than a kilometre; check its unit.", axis=self.axis)
            )


@dataclass(frozen=True, slots=True)
class Residual:
    """How far a reading is from the model.

    Attributes:
        reading: the reading.
        off_mm: measured less what the model says.
    """

    reading: Reading
    off_mm: float


Interval = tuple[float, float]
"""Lowest and highest value, 95 %."""


@dataclass(frozen=True, slots=True)
class Intervals:
    """Between what limits the four numbers of a model lie, 95 %, given the repeatability of a reading."""

    scale_x: Interval
    offset_x_mm: Interval
    scale_y: Interval
    offset_y_mm: Interval


@dataclass(frozen=True, slots=True)
class PocketModel:
    """What the readings say about a pocket; see the module docstring.

    Attributes:
        scale_x: growth along X, 0.001 for one part in a thousand.
        offset_x_mm: both walls together, overall.
        scale_y: growth along Y.
        offset_y_mm: both walls together, overall.
        residuals: what is left of each reading, in the order given.
        intervals: how surely the four numbers are known.
    """

    scale_x: float
    offset_x_mm: float
    scale_y: float
    offset_y_mm: float
    residuals: tuple[Residual, ...]
    intervals: Intervals

    def predicted_mm(self, axis: Axis, nominal_mm: float) -> float:
        """The width the model gives at a station."""
        if axis is Axis.X:
            return nominal_mm * (1 + self.scale_x) + self.offset_x_mm
        return nominal_mm * (1 + self.scale_y) + self.offset_y_mm


@dataclass(frozen=True, slots=True)
class _Line:
    scale: float
    offset_mm: float
    scale_half_mm: float
    offset_half_mm: float

    def off(self, reading: Reading) -> float:
        return reading.measured_mm - (reading.nominal_mm * (1 + self.scale) + self.offset_mm)

    @property
    def scale_interval(self) -> Interval:
        return self.scale - self.scale_half_mm, self.scale + self.scale_half_mm

    @property
    def offset_interval(self) -> Interval:
        return self.offset_mm - self.offset_half_mm, self.offset_mm + self.offset_half_mm


def fit_pocket(
    readings: Iterable[Reading],
    *,
    repeatability_mm: float = REPEATABILITY_MM,
    offset_matters_mm: float = OFFSET_MATTERS_MM,
) -> PocketModel:
    """Offset and scale of a pocket, X and Y apart.

    Args:
        readings: two stations or more along each axis, one long and one short.
        repeatability_mm: ± with which one reading comes out again, 95 %.
        offset_matters_mm: refuse if the offset is not known to ± this, overall.

    Raises:
        SpecError: the readings cannot tell, contradict each other, or make no sense.
    """
    for value in (repeatability_mm, offset_matters_mm):
        if not math.isfinite(value) or value <= 0:
            raise SpecError(
                Worded("A repeatability is more than 0; measure one width several times to learn it.")
            )
    taken = tuple(readings)
    x, y = (
        _line([r for r in taken if r.axis is axis], axis, repeatability_mm, offset_matters_mm)
        for axis in Axis
    )
    return PocketModel(
        x.scale,
        x.offset_mm,
        y.scale,
        y.offset_mm,
        tuple(Residual(r, (x if r.axis is Axis.X else y).off(r)) for r in taken),
        Intervals(x.scale_interval, x.offset_interval, y.scale_interval, y.offset_interval),
    )


def _line(readings: Sequence[Reading], axis: Axis, repeatability_mm: float, matters_mm: float) -> _Line:
    count = len(readings)
    if count < 2:
        raise SpecError(
            Worded(
                "{axis} has 1 reading; measure at two stations or more, one long and one short.", axis=axis
            )
            if count
            else Worded(
                "{axis} has no readings; measure at two stations or more, one long and one short.", axis=axis
            )
        )
    nominal = np.array([r.nominal_mm for r in readings])
    measured = np.array([r.measured_mm for r in readings])
    if np.ptp(nominal) < _SAME_LENGTH_MM:
        raise SpecError(
            Worded(
                "All {axis} readings are of the same length and cannot tell offset from scale; "
                "measure a longer or a shorter place too.",
                axis=axis,
            )
        )
    middle, from_middle = nominal.mean(), nominal - nominal.mean()
    spread = float((from_middle**2).sum())
    # The line is laid through measured − nominal, a small number, so that no digits are lost.
    error = measured - nominal
    scale = float((from_middle * error).sum()) / spread
    line = _Line(
        scale,
        float(error.mean() - scale * middle),
        repeatability_mm / math.sqrt(spread),
        repeatability_mm * math.sqrt(1 / count + float(middle) ** 2 / spread),
    )
    if line.offset_half_mm > matters_mm:
        raise SpecError(
            Worded(
                "The {axis} readings know the offset only to ± {offset}; "
                "measure places that differ more in length, or measure more often.",
                axis=axis,
                offset=length(line.offset_half_mm),
            )
        )
    _check_sense(line, axis)
    _check_agreement(line, readings, axis, repeatability_mm)
    return line


def _check_sense(line: _Line, axis: Axis) -> None:
    if abs(line.scale) > LARGEST_SCALE:
        raise SpecError(
            Worded(
                "The {axis} readings give a scale of {scale}, which no machine has; "
                "check which reading belongs to which width, and the unit.",
                axis=axis,
                scale=_percent(line.scale),
            )
        )
    if abs(line.offset_mm) > LARGEST_OFFSET_MM:
        raise SpecError(
            Worded(
                "The {axis} readings give an offset of {offset}, "
                "which is another cutter; check the readings, and that they are widths of the recess.",
                axis=axis,
                offset=length(line.offset_mm),
            )
        )


def _check_agreement(line: _Line, readings: Sequence[Reading], axis: Axis, repeatability_mm: float) -> None:
    freedom = len(readings) - 2
    if freedom == 0:
        return
    offs = [line.off(reading) for reading in readings]
    sigma = repeatability_mm / _NORMAL_95
    if sum((off / sigma) ** 2 for off in offs) <= float(chdtri(freedom, _DOUBTFUL)):
        return
    worst = max(range(len(readings)), key=lambda i: abs(offs[i]))
    raise SpecError(
        Worded(
            "The {axis} readings do not lie on one line: the one at {nominal} is off by {off}; "
            "measure again, or state a larger repeatability.",
            axis=axis,
            nominal=entry(readings[worst].nominal_mm),
            off=length(offs[worst]),
        )
    )


# --- the model on the outline ------------------------------------------------------------------------


def apply(model: PocketModel, region: Region, *, tolerance: Tolerance = EXACT) -> Region:
    """The pocket as the readings say it is.

    Args:
        model: from `fit_pocket`.
        region: the pocket as its nominal cutter would leave it.
        tolerance: of the geometry.

    Raises:
        SpecError: nothing would be left of the pocket.
    """
    if region.is_empty:
        return region
    x0, y0, x1, y1 = region.bounds
    x, y = (x0 + x1) / 2, (y0 + y1) / 2
    stretch = Transform.scale(1 + model.scale_x, 1 + model.scale_y)
    scaled = region.moved(Transform.shift(x, y).after(stretch).after(Transform.shift(-x, -y)))
    moved = with_walls_moved(scaled, model.offset_x_mm / 2, model.offset_y_mm / 2, tolerance)
    if moved.is_empty:
        raise SpecError(Worded("By these readings nothing is left of the pocket; check them and their unit."))
    return moved


def parts_changed(before: Region, after: Region) -> tuple[Finding, ...]:
    """A finding if parts of a pocket joined, split or vanished when its walls moved."""
    old = (len(before.polygons), before.hole_count)
    new = (len(after.polygons), after.hole_count)
    if old == new:
        return ()
    return (
        Finding(
            "measured-pocket-parts-changed",
            Severity.WARN,
            Worded(
                "By the readings the pocket has {new} where the drawing has {old}.",
                new=_parts(*new),
                old=_parts(*old),
            ),
            Worded("Look at its thinnest walls and narrowest passages, and measure there."),
        ),
    )


def with_walls_moved(region: Region, x_mm: float, y_mm: float, tolerance: Tolerance) -> Region:
    """Move walls that face X out by `x_mm` and walls that face Y by `y_mm`; negative moves them in.

    Slanting walls move in between; see the module docstring.
    """
    if x_mm == y_mm:
        return dilate(region, x_mm, tolerance)
    if min(abs(x_mm), abs(y_mm)) >= _NO_STROKE_MM and (x_mm > 0) == (y_mm > 0):
        return _by_ellipse(region, x_mm, y_mm, tolerance)
    for along_x, along_y in sorted([(x_mm, 0.0), (0.0, y_mm)], key=sum, reverse=True):
        if max(abs(along_x), abs(along_y)) >= _NO_STROKE_MM:
            region = thinned(_by_stroke(region, along_x, along_y), tolerance)
    return region


def _by_ellipse(region: Region, x_mm: float, y_mm: float, tolerance: Tolerance) -> Region:
    """Dilate or erode by an ellipse: the plane stretched so that it is a disk of the larger half axis.

    Stretching back only shrinks, so the chords of the disk stay within the tolerance.
    """
    radius = max(abs(x_mm), abs(y_mm))
    to_disk = Transform.scale(radius / abs(x_mm), radius / abs(y_mm))
    back = Transform.scale(abs(x_mm) / radius, abs(y_mm) / radius)
    return dilate(region.moved(to_disk), math.copysign(radius, x_mm), tolerance).moved(back)


def _by_stroke(region: Region, x_mm: float, y_mm: float) -> Region:
    """Dilate by the straight stroke from −(x, y) to (x, y) along one axis; a negative length erodes.

    The points that the stroke cannot stand on without crossing the boundary are the boundary swept by it:
    a dilation adds them, an erosion takes them away.
    """
    band = _swept_boundary(region, abs(x_mm), abs(y_mm))
    if min(x_mm, y_mm) < 0:
        return Region.of(region.shape.difference(band))
    return Region.of(region.shape.union(band))


def _swept_boundary(region: Region, x_mm: float, y_mm: float) -> BaseGeometry:
    starts = np.vstack(region.rings())
    ends = np.vstack([np.roll(ring, -1, axis=0) for ring in region.rings()])
    half = np.array([x_mm, y_mm])
    quads = np.stack([starts - half, ends - half, ends + half, starts + half], axis=1)
    along = ends - starts
    has_area = along[:, 0] * y_mm - along[:, 1] * x_mm != 0
    return shapely.union_all(shapely.polygons(quads[has_area]))


# --- sentences ---------------------------------------------------------------------------------------


def describe(model: PocketModel, *, unit: Unit = Unit.MM) -> tuple[Worded, Worded]:
    """One sentence an axis: offset per side and overall, scale, and how surely each is known."""
    known = model.intervals
    return (
        _axis_sentence(Axis.X, model.scale_x, model.offset_x_mm, known.scale_x, known.offset_x_mm, unit),
        _axis_sentence(Axis.Y, model.scale_y, model.offset_y_mm, known.scale_y, known.offset_y_mm, unit),
    )


def _axis_sentence(
    axis: Axis, scale: float, offset_mm: float, scale_known: Interval, offset_known_mm: Interval, unit: Unit
) -> Worded:
    sure = format_length((offset_known_mm[1] - offset_known_mm[0]) / 2, unit, with_unit=False)
    return Worded(
        "{axis}: {offset} {larger} at every length, ± {sure} overall, and {scale} by scale, ± {scale_sure}.",
        axis=axis,
        offset=per_side(abs(offset_mm) / 2, unit),
        larger=Worded("smaller") if offset_mm < 0 else Worded("larger"),
        sure=sure,
        scale=_percent(scale),
        scale_sure=_percent((scale_known[1] - scale_known[0]) / 2),
    )


def _percent(share: float) -> str:
    number = f"{abs(100 * share):.3f}"
    return f"{MINUS if share < 0 and float(number) else ''}{number} %"


def _parts(pieces: int, holes: int) -> Worded:
    piece = Worded("1 piece") if pieces == 1 else Worded("{count} pieces", count=pieces)
    island = Worded("1 island") if holes == 1 else Worded("{count} islands", count=holes)
    return Worded("{pieces} and {islands}", pieces=piece, islands=island)
