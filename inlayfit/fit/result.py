"""What a fit answers: both halves as cut, the gap between them, and what to look at before cutting."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from inlayfit.finding import Finding
from inlayfit.fit.spec import FitSpec, Half, Relief
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region

PROMISED_MM = 0.001
"""Accuracy promised for a solved fit: a gap that differs by less is the arithmetic's, not the fit's."""


@dataclass(frozen=True, slots=True)
class ReliefCut:
    """One place where a half was cut away so that the other can go in.

    Attributes:
        half: which half was cut.
        kind: how.
        place_mm: where, at the corner it relieves.
        area_mm2: how much was removed.
        bite_mm: how far the removed area reaches from that corner, at most.
        straight: False where no straight plunge covers the corner and the cutter must be led over it.
        removed: the area itself.
    """

    half: Half
    kind: Relief
    place_mm: tuple[float, float]
    area_mm2: float
    bite_mm: float
    straight: bool = True
    removed: Region = field(default_factory=Region.empty)


@dataclass(frozen=True, slots=True)
class HalfResult:
    """One half.

    Attributes:
        outline: the finished wall, as a round cutter leaves it; of a fixed half, what was given.
        rough: outline of the roughing pass, or None without a finishing allowance.
        rest: where the corner cutter still has to go after the main one; empty without a corner cutter.
        edge_break: the chamfer's other edge, inside a plug and outside a pocket, or None without one.
        left_over: stock the cutter leaves in corners of what was wanted (for hand work, or by rounding).
        pared: the wall once the hand work is done, or None if there is none to do.
        reliefs: where the half was relieved.
        changed: whether the program shaped it; False for a half already cut.
    """

    outline: Region
    rough: Region | None = None
    rest: Region = field(default_factory=Region.empty)
    edge_break: Region | None = None
    left_over: Region = field(default_factory=Region.empty)
    pared: Region | None = None
    reliefs: tuple[ReliefCut, ...] = ()
    changed: bool = True

    @property
    def finished(self) -> Region:
        """The wall that meets the other half in the end."""
        return self.outline if self.pared is None else self.pared


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on the wall and the gap there.

    Attributes:
        place_mm: on the plug's wall.
        partner_mm: the nearest point of the pocket's wall.
        gap_mm: signed; negative where the plug bites.
    """

    place_mm: tuple[float, float]
    partner_mm: tuple[float, float]
    gap_mm: float


@dataclass(frozen=True, eq=False, slots=True)
class WallGap:
    """Gaps along one closed ring of a wall, in the ring's order.

    Attributes:
        points: (n, 2) sample points on the ring, its vertices among them; not repeating the first.
        gaps: (n,) signed gap at each.
        partners: (n, 2) nearest points on the other wall.
    """

    points: Points
    gaps: Points
    partners: Points


@dataclass(frozen=True, eq=False, slots=True)
class GapMap:
    """The signed gap along both walls.

    Attributes:
        plug_walls: gap along each ring of the plug, to the pocket's wall.
        pocket_walls: gap along each ring of the pocket, to the plug's wall.
        tightest: local minima, tightest first.
        loosest: the place with the widest gap along the plug's wall, or None if there is no plug.
        min_mm, mean_mm, max_mm: over the plug's wall and, for the minimum, the pocket's too; the mean is by
            length of wall. nan if there is no plug.
        overlap_mm2: plug area outside the pocket.
    """

    plug_walls: tuple[WallGap, ...]
    pocket_walls: tuple[WallGap, ...]
    tightest: tuple[Spot, ...]
    loosest: Spot | None
    min_mm: float
    mean_mm: float
    max_mm: float
    overlap_mm2: float

    @property
    def is_empty(self) -> bool:
        """Whether there is no wall to measure."""
        return not self.plug_walls

    def share_below(self, gap_mm: float) -> float:
        """Share of the plug's wall samples with a smaller gap."""
        gaps = np.concatenate([wall.gaps for wall in self.plug_walls]) if self.plug_walls else np.zeros(0)
        return float((gaps < gap_mm).mean()) if len(gaps) else 0.0


@dataclass(frozen=True, eq=False, slots=True)
class FitResult:
    """The answer to a `FitSpec`."""

    spec: FitSpec
    pocket: HalfResult
    plug: HalfResult
    gap: GapMap
    findings: tuple[Finding, ...] = ()

    @property
    def reliefs(self) -> tuple[ReliefCut, ...]:
        """All relief cuts of both halves."""
        return self.pocket.reliefs + self.plug.reliefs
