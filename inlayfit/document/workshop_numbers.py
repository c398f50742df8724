"""What the workshop gets wrong and how it cuts, as it is kept with a document.

The numbers stand in the project and not in the settings: checks, `fit.json` and the share of parts that fit
all follow from them, so the work must open elsewhere with the answers it was saved with, and undo must reach
them. New work starts with the errors of the settings, since a machine outlives a job. The depth is the one of
each fitting's stack; nothing is typed twice.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from inlayfit.bench.milling import Milling
from inlayfit.document.settings import Settings
from inlayfit.errors import SpecError
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.wording import Worded

if TYPE_CHECKING:  # heavy; a window must not wait for it
    from inlayfit.fit.workshop import Workshop


@dataclass(frozen=True, slots=True)
class WorkshopNumbers:
    """Errors and ways of cutting; every length 0 where nothing is known.

    Attributes:
        errors: what the machine and its cutters get wrong.
        depth_per_pass_mm: most that one pass takes.
        floor_allowance_mm: stock left on the floor for a last pass.
        milling: climb or conventional; None leaves the direction open.
        floor_fillet_mm: radius that the worn corner of the pocket's cutter leaves between wall and floor.
    """

    errors: MachineErrors = field(default_factory=MachineErrors)
    depth_per_pass_mm: float = 0.0
    floor_allowance_mm: float = 0.0
    milling: Milling | None = None
    floor_fillet_mm: float = 0.0

    def __post_init__(self) -> None:
        if min(self.depth_per_pass_mm, self.floor_allowance_mm, self.floor_fillet_mm) < 0:
            raise SpecError(Worded("Depths and radii are 0 or more; give lengths such as 0.5 mm."))

    def at_depth(self, depth_mm: float) -> Workshop:
        """The workshop's view of a fitting of that depth.

        Raises:
            SpecError: the numbers contradict each other or the depth.
        """
        from inlayfit.fit.workshop import Workshop

        return Workshop(
            self.errors,
            depth_mm=depth_mm,
            depth_per_pass_mm=self.depth_per_pass_mm,
            floor_allowance_mm=self.floor_allowance_mm,
            milling=self.milling,
            floor_fillet_mm=self.floor_fillet_mm,
        )


def workshop_of_new_work(settings: Settings) -> WorkshopNumbers:
    """The errors that new work starts with."""
    return WorkshopNumbers(
        MachineErrors(
            cutter_varies_mm=settings.number("cutter_varies_mm"),
            runout_mm=settings.number("runout_mm"),
            repeatability_mm=settings.number("repeatability_mm"),
            thickness_varies_mm=settings.number("thickness_varies_mm"),
        )
    )
