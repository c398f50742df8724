"""What a workshop adds to a fit: its errors, its passes, its worn cutters; and what they do to one fitting.

`solve` answers with true cutters and perfect cuts. `examined` looks at such an answer once more, with what is
known about the machine, and adds findings and numbers: bench advice where both halves are made, the other
face of a tapered kerf, lookalikes that need a mark, a floor fillet that holds the plug up, a cutter that is
not what its label says, and how many parts of many have the wanted feel.

All of it is slow beside the solving and belongs behind a command or an export, never behind a slider.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, fields, replace

from inlayfit.bench.cutting import passes_mm
from inlayfit.bench.milling import Milling
from inlayfit.bench.stack import edge_break_needed_mm, hold_up_mm
from inlayfit.errors import SpecError
from inlayfit.finding import Finding, Severity, heaviest_first
from inlayfit.fit.bench_advice import BenchWork, advised, bench_work, goes_in
from inlayfit.fit.faces import Faces, faces_of, taper_finding
from inlayfit.fit.lookalikes import mark_finding, orientations_of
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.orientation import Orientations
from inlayfit.fit.result import FitResult
from inlayfit.fit.scatter import Scatter, nominal_findings, scatter_finding, scatter_of
from inlayfit.measures import length
from inlayfit.progress import Progress
from inlayfit.wording import Worded

_FELT_MM = 0.005
_NAMES = {
    "depth_mm": Worded("depth"),
    "depth_per_pass_mm": Worded("depth per pass"),
    "floor_allowance_mm": Worded("floor allowance"),
    "floor_fillet_mm": Worded("floor fillet"),
}


@dataclass(frozen=True, slots=True)
class Workshop:
    """What is known about the cutting; every length 0 where nothing is known.

    Attributes:
        errors: what the machine and its cutters get wrong.
        depth_mm: of the cut.
        depth_per_pass_mm: most that one pass takes.
        floor_allowance_mm: stock left on the floor for a last pass.
        milling: climb or conventional; None leaves the direction open.
        floor_fillet_mm: radius that the worn corner of the pocket's cutter leaves between wall and floor.
    """

    errors: MachineErrors = field(default_factory=MachineErrors)
    depth_mm: float = 0.0
    depth_per_pass_mm: float = 0.0
    floor_allowance_mm: float = 0.0
    milling: Milling | None = None
    floor_fillet_mm: float = 0.0

    def __post_init__(self) -> None:
        for each in fields(self):
            value = getattr(self, each.name)
            if isinstance(value, float) and (not math.isfinite(value) or value < 0):
                raise SpecError(
                    Worded(
                        "The {name} is 0 or more; give it as a length such as 2 mm.", name=_NAMES[each.name]
                    )
                )
        if bool(self.depth_per_pass_mm) and not self.depth_mm:
            raise SpecError(Worded("A depth per pass needs the depth of the cut; give both."))
        if self.floor_allowance_mm and not self.depth_per_pass_mm:
            raise SpecError(
                Worded("A floor allowance needs the depth and the depth per pass; give all three.")
            )
        _ = self.passes  # refused now rather than after the solving

    @property
    def passes(self) -> tuple[float, ...]:
        """Depths of the passes in mm, shallowest first; none if the depths are not known."""
        if not (self.depth_mm and self.depth_per_pass_mm):
            return ()
        return passes_mm(
            self.depth_mm, per_pass_mm=self.depth_per_pass_mm, floor_allowance_mm=self.floor_allowance_mm
        )


@dataclass(frozen=True, slots=True)
class FloorRest:
    """How a floor fillet meets the plug's lower edge.

    Attributes:
        fillet_mm: radius of the fillet.
        hold_up_mm: how high it holds the plug at the tightest gap.
        edge_break_needed_mm: width of the chamfer that lets the plug down.
    """

    fillet_mm: float
    hold_up_mm: float
    edge_break_needed_mm: float


@dataclass(frozen=True, eq=False, slots=True)
class Examined:
    """A fit looked at with a workshop's eyes; what does not apply is empty or None.

    Attributes:
        result: with the findings of all below.
        orientations: ways of holding the plug that look alike.
        bench: where two made halves are too tight.
        faces: both faces of a tapered cut.
        floor: a floor fillet and the plug's lower edge.
        scatter: what the errors do to many parts.
        passes_mm: depths of the passes.
    """

    result: FitResult
    orientations: Orientations
    bench: tuple[BenchWork, ...] = ()
    faces: Faces | None = None
    floor: FloorRest | None = None
    scatter: Scatter | None = None
    passes_mm: tuple[float, ...] = ()

    @property
    def both_made(self) -> bool:
        """Whether nothing could move."""
        return not self.result.spec.pocket.may_move and not self.result.spec.plug.may_move


def examined(result: FitResult, workshop: Workshop, *, progress: Progress | None = None) -> Examined:
    """Look at an answer with what is known about the cutting.

    Raises:
        SpecError: two numbers contradict each other.
        Cancelled: the work was stopped.
    """
    works = bench_work(result)
    ways = orientations_of(result, progress=progress)
    faces = faces_of(result)
    floor = _floor(result, workshop.floor_fillet_mm)
    scatter = scatter_of(result, workshop.errors, depth_mm=workshop.depth_mm)
    found = [
        taper_finding(faces, result.spec) if faces else None,
        mark_finding(ways) if goes_in(result) else None,
        _held_up(floor) if floor else None,
        *nominal_findings(result.spec, workshop.errors),
        scatter_finding(scatter) if scatter else None,
    ]
    result = advised(result, works)
    findings = [*result.findings, *(finding for finding in found if finding is not None)]
    result = replace(result, findings=heaviest_first(findings))
    passes = workshop.passes if result.spec.pocket.may_move or result.spec.plug.may_move else ()
    return Examined(result, ways, works, faces, floor, scatter, passes)


def _floor(result: FitResult, fillet_mm: float) -> FloorRest | None:
    if not fillet_mm or result.gap.is_empty:
        return None
    gap = result.gap.min_mm
    held = hold_up_mm(fillet_mm, edge_break_mm=result.spec.plug.edge_break_mm, clearance_mm=gap)
    return FloorRest(fillet_mm, held, edge_break_needed_mm(fillet_mm, clearance_mm=gap))


def _held_up(floor: FloorRest) -> Finding | None:
    if floor.hold_up_mm <= _FELT_MM:
        return None
    needed = math.ceil(floor.edge_break_needed_mm * 100) / 100
    return Finding(
        "held-up",
        Severity.WARN,
        Worded(
            "The floor fillet of {fillet} holds the plug {height} above the floor.",
            fillet=length(floor.fillet_mm),
            height=length(floor.hold_up_mm),
        ),
        Worded(
            "Break the plug's lower edge by {needed}, or cut the floor with a sharp cutter.",
            needed=length(needed),
        ),
    )
