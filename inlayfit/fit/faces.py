"""Two faces: what a tapered kerf does to the gap on the other side of the sheet.

A beam cuts a slot that is wider on one face than on the other. The finished edge that the fit speaks of is
the one on the *show side*; with a kerf that is wider there by the *taper* t, each cut edge on the bed side
stands t/2 further into the slot. A plug is so larger on the bed side, a pocket smaller, both by t/2 per
side, and both take it from the gap:

    gap on the bed side = gap on the show side − t_plug/2 − t_pocket/2

with the two bed sides meeting, as they do when the plug goes in the way it was cut. (Plane geometry, derived
here; the edges taken as straight.) The face with the smaller gap governs whether the plug goes in.
"""

from __future__ import annotations

from dataclasses import dataclass

from inlayfit.finding import Finding, Severity
from inlayfit.fit.result import PROMISED_MM, FitResult
from inlayfit.fit.spec import FitSpec, HalfSpec
from inlayfit.measures import length, per_side
from inlayfit.wording import Worded


@dataclass(frozen=True, slots=True)
class Faces:
    """The smallest gap on both faces.

    Attributes:
        show_mm: on the show side, where the outlines are.
        bed_mm: on the bed side.
    """

    show_mm: float
    bed_mm: float

    @property
    def governing(self) -> str:
        """The face that decides whether the plug goes in."""
        return Worded("bed side") if self.bed_mm < self.show_mm else Worded("show side")


def faces_of(result: FitResult) -> Faces | None:
    """Both faces of a fit that a tapered kerf has a part in; None for square walls."""
    lost = bed_side_loss_mm(result.spec)
    if lost == 0 or result.gap.is_empty:
        return None
    return Faces(result.gap.min_mm, result.gap.min_mm - lost)


def bed_side_loss_mm(spec: FitSpec) -> float:
    """What the bed side has less of gap than the show side; negative if it has more."""
    return _half_taper(spec.plug) + _half_taper(spec.pocket)


def _half_taper(half: HalfSpec) -> float:
    return half.kerf_taper_mm / 2 if half.kerf_mm and half.may_move else 0.0


def taper_finding(faces: Faces, spec: FitSpec) -> Finding:
    """What to know about the face that is not seen: it bites, is tight, or is well."""
    told = Worded(
        "The kerf's taper makes the gap {bed} on the bed side; the {governing} governs.",
        bed=per_side(faces.bed_mm),
        governing=faces.governing,
    )
    lost = spec.clearance_mm - (faces.bed_mm - faces.show_mm)
    ask = per_side(lost)
    if faces.bed_mm < min(0.0, spec.clearance_mm) - PROMISED_MM:
        return Finding(
            "taper-bites",
            Severity.BLOCK,
            Worded("{told} There the plug bites.", told=told),
            Worded(
                "Ask for {ask}, so that the bed side has what is wanted, or cut with less taper.", ask=ask
            ),
        )
    if faces.bed_mm < faces.show_mm - PROMISED_MM:
        remedy = Worded("Ask for {ask} if the bed side must have what is wanted.", ask=ask)
        return Finding("taper", Severity.WARN, told, remedy)
    more = length(faces.bed_mm - faces.show_mm)
    remedy = Worded("Expect {more} more gap per side below than is seen.", more=more)
    return Finding("taper", Severity.NOTE, told, remedy)
