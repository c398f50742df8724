"""Coatings of a fitting: which faces grow by how much, and what they leave of the clearance.

Paint, lacquer or an anodic film makes each coated surface grow by its *build-up* (`inlayfit.bench.stack`).
On faces that lie above each other it changes the height at which the plug ends; on walls it takes clearance:
of each half its own build-up per side. Depth, thickness and clearance are those before coating, so a half
that was measured coated has none here.

A half is spoken of as coated by one thickness, with some of its faces masked. A face that is coated by
another thickness, which only a project written by hand can say, keeps it until the thickness is typed anew.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from enum import StrEnum
from types import MappingProxyType
from typing import TYPE_CHECKING

from inlayfit.bench.stack import BuildUp
from inlayfit.document.edits import Edit, set_clearance
from inlayfit.document.remedies import Fix
from inlayfit.document.state import Fitting, State
from inlayfit.finding import Finding, Severity
from inlayfit.fit.feel import SEED_ZONES, Feel
from inlayfit.fit.spec import Half
from inlayfit.measures import per_side
from inlayfit.wording import Worded

if TYPE_CHECKING:  # heavy; a window must not wait for it
    from inlayfit.fit.result import FitResult

COATING_CODE = "coating-bites"
"""Code of the finding for walls whose coating takes more clearance than there is."""
_DIGITS = 6
"""To a picometre: sums of decimals."""


class Face(StrEnum):
    """A face that can be coated, by its field of `BuildUp`."""

    RIM = "rim_mm"
    FLOOR = "floor_mm"
    POCKET_WALL = "pocket_wall_mm"
    TOP = "top_mm"
    BOTTOM = "bottom_mm"
    PLUG_WALL = "plug_wall_mm"


FACES: Mapping[Half, tuple[Face, Face, Face]] = MappingProxyType(
    {
        Half.POCKET: (Face.RIM, Face.FLOOR, Face.POCKET_WALL),
        Half.PLUG: (Face.TOP, Face.BOTTOM, Face.PLUG_WALL),
    }
)
"""The faces of the host with its pocket, and of the plug: upper, lower, walls."""


def build_up_mm(coating: BuildUp, face: Face) -> float:
    """What one face grows by."""
    value: float = getattr(coating, face.value)
    return value


def thickness_mm(coating: BuildUp, half: Half) -> float:
    """What a coated face of a half grows by; 0 if none is coated."""
    return max(build_up_mm(coating, face) for face in FACES[half])


def with_thickness(coating: BuildUp, half: Half, mm: float) -> BuildUp:
    """The coated faces of a half grow by that much; all of them if none was coated."""
    coated = [face for face in FACES[half] if build_up_mm(coating, face)] or FACES[half]
    return replace(coating, **{face.value: mm for face in coated})


def with_face(coating: BuildUp, face: Face, *, coated: bool) -> BuildUp:
    """One face coated as the others of its half, or masked."""
    half = Half.POCKET if face in FACES[Half.POCKET] else Half.PLUG
    return replace(coating, **{face.value: thickness_mm(coating, half) if coated else 0.0})


def set_coating(state: State, coating: BuildUp) -> Edit:
    """Coat the chosen fittings so; their other heights stay."""
    changed = tuple(replace(f, stack=replace(f.stack, coating=coating)) for f in state.chosen_fittings)
    after = state if changed == state.chosen_fittings else state.with_fittings(changed)
    return Edit(after, Worded("Change the coating"))


def left_mm(clearance_mm: float, coating: BuildUp) -> float:
    """What coated walls leave of a clearance per side."""
    return round(clearance_mm + coating.clearance_change_mm, _DIGITS)


def coating_finding(fitting: Fitting, result: FitResult | None) -> Finding | None:
    """Whether a plug that goes in bare will not go in once its walls, or those of its pocket, are coated.

    What counts is the clearance that is asked for, and of two made halves the smallest gap there is.
    """
    coating = fitting.stack.coating
    bare = fitting.spec.clearance_mm
    if fitting.both_made:
        if result is None or result.gap.is_empty:
            return None
        bare = result.gap.min_mm
    left = left_mm(bare, coating)
    if not coating.clearance_change_mm or not _is_too_tight(bare, left):
        return None
    message = Worded(
        "The coating takes {taken} of the clearance; then the plug bites by {bite}.",
        taken=per_side(-coating.clearance_change_mm),
        bite=per_side(-left),
    )
    return Finding(COATING_CODE, Severity.WARN, message, _remedy(fitting))


def coating_fix(fitting: Fitting) -> Fix | None:
    """The clearance that leaves, once coated, what is asked for now."""
    if fitting.both_made:
        return None
    needed = _needed_mm(fitting)
    return Fix(Worded("Add it to the clearance"), lambda state: set_clearance(state, needed))


def _is_too_tight(bare_mm: float, left_mm: float) -> bool:
    """Whether a gap becomes a bite, or a press fit one that does not start."""
    if bare_mm >= 0:
        return left_mm < 0
    stuck = Feel.WONT_START
    return SEED_ZONES.feel_at(left_mm) is stuck and SEED_ZONES.feel_at(bare_mm) is not stuck


def _needed_mm(fitting: Fitting) -> float:
    return round(fitting.spec.clearance_mm - fitting.stack.coating.clearance_change_mm, _DIGITS)


def _remedy(fitting: Fitting) -> Worded:
    if fitting.both_made:
        return Worded("Mask the walls, or take as much off one of them before it is coated.")
    return Worded("Cut it with {needed}, or mask the walls.", needed=per_side(_needed_mm(fitting)))
