"""A pocket that was measured: the outline the readings make of the drawn one, to fit a plug to.

The readings (`fit.measured`) speak of the pocket as its cutter left it, so the drawn outline is opened with
that cutter first; what the cutter could never have left is said. Then scale and offset are applied. The
corners of what results are real, so the plug is fitted to them as they stand.
"""

from __future__ import annotations

from dataclasses import replace

from inlayfit.errors import SpecError
from inlayfit.finding import Finding, Severity
from inlayfit.fit import check
from inlayfit.fit.measured import PocketModel, apply, parts_changed
from inlayfit.fit.residue import Residue, residues
from inlayfit.fit.spec import FitSpec, Half
from inlayfit.geometry.morphology import opened
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, Tolerance
from inlayfit.wording import Worded

_NOTHING: tuple[Residue, ...] = ()


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
        SpecError: the pocket is still to be cut, or nothing of it would be left.
    """
    if spec.pocket.may_move:
        raise SpecError(
            Worded(
                "Readings are taken in a pocket that exists; set the pocket's state to already cut, "
                "or leave the readings out."
            )
        )
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
    found = (note, *check.of_given_half(left, spec.pocket, Half.POCKET), *parts_changed(cut, pocket))
    return pocket, found


def fitted_as_it_stands(spec: FitSpec) -> FitSpec:
    """The spec with no cutter behind the pocket: its outline is known, corners and all."""
    pocket = replace(spec.pocket, cutter_mm=0.0, corner_cutter_mm=0.0, kerf_mm=0.0)
    return replace(spec, pocket=pocket)
