"""A pocket that was measured: the outline the readings make of the drawn one, to fit a plug to.

The readings (`fit.measured`) speak of the pocket as its cutter left it, so the drawn outline is opened with
that cutter first; what the cutter could never have left is said. Then scale and offset are applied. The
corners of what results are real, so the plug is fitted to them as they stand.

Readings carry the size of the pocket they were taken in: none is wider than it. One that is wider belongs to
another pocket, or the drawing is read in another unit than it was then, and nothing follows from it. Readings
that reach over less than half of it are used, but what they say of its far ends is a guess, which is said.
"""

from __future__ import annotations

from dataclasses import replace

from inlayfit.errors import SpecError
from inlayfit.finding import Finding, Severity
from inlayfit.fit import check
from inlayfit.fit.measured import LARGEST_SCALE, Axis, PocketModel, apply, parts_changed
from inlayfit.fit.residue import Residue, residues
from inlayfit.fit.spec import FitSpec, Half
from inlayfit.geometry.morphology import opened
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, Tolerance
from inlayfit.measures import length
from inlayfit.wording import Worded

_NOTHING: tuple[Residue, ...] = ()
_FARTHEST_GUESS = 2.0
"""A pocket this many times as wide as its longest reading; every mixed-up unit is farther off."""


def as_measured(
    drawn: Region, spec: FitSpec, model: PocketModel, *, tolerance: Tolerance = EXACT
) -> tuple[Region, tuple[Finding, ...]]:
    """The pocket that exists, and what to know about it.

    Args:
        drawn: the pocket's outline as drawn.
        spec: whose pocket is already cut or finished.
        model: from the readings.
        tolerance: of the geometry.

    Raises:
        SpecError: the pocket is still to be cut, is smaller than its readings, or nothing of it would stay.
    """
    if spec.pocket.may_move:
        raise SpecError(
            Worded(
                "Readings are taken in a pocket that exists; set the pocket's state to already cut, "
                "or leave the readings out."
            )
        )
    guessed = _of_its_size(drawn, model)
    cut, left = drawn, _NOTHING
    if spec.pocket.radius_mm:
        cut = opened(drawn, spec.pocket.radius_mm, tolerance).common(drawn)
        left = residues(drawn, cut, spec.pocket.radius_mm, tolerance)
    if cut.is_empty:
        raise SpecError(Worded("The pocket's cutter is larger than the drawn pocket; check its diameter."))
    pocket = apply(model, cut if left else drawn, tolerance=tolerance)
    note = Finding(
        "pocket-as-measured",
        Severity.NOTE,
        Worded("The plug is fitted to the pocket as measured, not as drawn."),
        Worded("Compare the residuals of the readings with what one reading repeats to."),
    )
    found = (
        note,
        *guessed,
        *check.of_given_half(left, spec.pocket, Half.POCKET),
        *parts_changed(cut, pocket),
    )
    return pocket, found


def _of_its_size(drawn: Region, model: PocketModel) -> tuple[Finding, ...]:
    """Compare the readings with the pocket they are said to be of.

    Raises:
        SpecError: a reading is wider than the pocket, by more than any machine is off.
    """
    x0, y0, x1, y1 = drawn.bounds
    farthest = _FARTHEST_GUESS
    found: tuple[Finding, ...] = ()
    for axis, wide_mm in ((Axis.X, x1 - x0), (Axis.Y, y1 - y0)):
        nominals = [each.reading.nominal_mm for each in model.residuals if each.reading.axis is axis]
        longest_mm = max(nominals, default=wide_mm)
        values = {"axis": axis, "read": length(longest_mm), "wide": length(wide_mm)}
        if longest_mm > wide_mm * (1 + LARGEST_SCALE):
            raise SpecError(
                Worded(
                    "A reading along {axis} is of a width drawn as {read}, but the pocket is only {wide} "
                    "wide; check the readings, and the unit that the drawing is read in.",
                    **values,
                )
            )
        if wide_mm > longest_mm * farthest:
            farthest = wide_mm / longest_mm
            found = (_guessed(values),)
    return found


def _guessed(values: dict[str, object]) -> Finding:
    return Finding(
        "readings-short",
        Severity.WARN,
        Worded(
            "The longest reading along {axis} is of a width drawn as {read}, but the pocket is {wide} wide: "
            "its far ends are guessed.",
            **values,
        ),
        Worded("Check the unit that the drawing is read in, and measure a longer place if there is one."),
    )


def fitted_as_it_stands(spec: FitSpec) -> FitSpec:
    """The spec with no cutter behind the pocket: its outline is known, corners and all."""
    pocket = replace(spec.pocket, cutter_mm=0.0, corner_cutter_mm=0.0, kerf_mm=0.0)
    return replace(spec, pocket=pocket)
