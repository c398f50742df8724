"""The pocket that a fitting is solved with: as it is drawn, or as its readings say that it stands.

What the readings make of a drawn pocket follows from its outline, from how it was cut and from them. Neither
clearance nor plug changes it, so an answer keeps it and a slider does not wait for it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from inlayfit.document.pocket_readings import PocketReadings
from inlayfit.document.state import Fitting
from inlayfit.finding import Finding, heaviest_first
from inlayfit.fit.spec import FitSpec, HalfSpec

if TYPE_CHECKING:  # results are heavy; a window without any need not wait for them
    from inlayfit.document.outlines import Outline
    from inlayfit.fit.result import FitResult


@dataclass(frozen=True, slots=True)
class Standing:
    """A pocket as it stands.

    Attributes:
        drawn: its outline as drawn.
        half: how it was cut.
        readings: what was read in it; None leaves it as drawn.
        pocket: its outline as it stands.
        findings: what to know about it.
    """

    drawn: Outline
    half: HalfSpec
    readings: PocketReadings | None
    pocket: Outline
    findings: tuple[Finding, ...] = ()

    def asked(self, spec: FitSpec) -> FitSpec:
        """What is to be solved: no cutter stands behind a pocket that was measured."""
        if self.readings is None:
            return spec
        from inlayfit.fit.readings import fitted_as_it_stands  # heavy; not before it is needed

        return fitted_as_it_stands(spec)

    def told(self, result: FitResult, spec: FitSpec, *more: Finding) -> FitResult:
        """The answer to what a person asked, with what to know about the pocket and more findings."""
        if not (self.findings or more):
            return result
        return replace(result, spec=spec, findings=heaviest_first([*result.findings, *self.findings, *more]))


def standing_of(drawn: Outline, fitting: Fitting, known: Standing | None) -> Standing:
    """The pocket of a fitting as it stands.

    Args:
        drawn: its outline as drawn.
        fitting: with its readings, if any.
        known: how it stood last; taken if nothing changed.

    Raises:
        SpecError: nothing of it would be left.
    """
    half, readings = fitting.spec.pocket, fitting.readings_used
    if readings is None:
        return Standing(drawn, half, None, drawn)
    if known is not None and known.drawn is drawn and (known.half, known.readings) == (half, readings):
        return known
    from inlayfit.fit.readings import as_measured  # heavy; not before it is needed

    region, findings = as_measured(drawn.region, fitting.spec, readings.model)
    return Standing(drawn, half, readings, replace(drawn, region=region), findings)
