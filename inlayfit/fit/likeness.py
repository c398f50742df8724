"""How alike outlines are, cheaply: what does not change when one is moved, to know which to look at closely.

A *signature* holds a region's area, perimeter and number of holes, and its *profile*: the farthest point of
the boundary from the centroid, in each of 120 directions. Shifting changes none of them. Turning rolls the
profile round; mirroring left and right reverses it. So the best turn of one outline upon another is where the
two profiles, rolled against each other, differ least, and all rolls together are one circular correlation
(by fast Fourier transform: Σ(a − b)² = Σa² + Σb² − 2·Σab).

Of a plug and a pocket the *estimate* of how far the gap is from the wanted clearance c, squared, is

    (ΔA / L̄ − c)²  +  ¼ · mean (r_pocket − r_plug − c)²

ΔA the difference of the areas and L̄ the mean perimeter: between parallel walls ΔA / L̄ is the mean gap
(Steiner's formula), and no spread about a mean makes the mean square smaller than its square. The second term
tells shapes of equal area apart.

*Alike* are two outlines whose walls, laid over each other, are nowhere farther apart than `ALIKE_MM`.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from inlayfit.fit.orientation import evenly, settled
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform

ALIKE_MM = 0.005
"""Outlines that differ by less are the same to the bench: nobody files so little (common practice)."""
_DIRECTIONS = 120
_SAMPLES = 720
_PROFILE_SHARE = 0.25
_HOLE_SHARE = 0.05  # of the size: what a missing or added hole counts for
_TURNS_TRIED = 3
_AS_LIKELY = 4.0  # times the least mean square: a dip of the profiles that deep is looked at


@dataclass(frozen=True, eq=False)
class Signature:
    """What of an outline does not change when it is moved, and the outline itself about its centroid."""

    region: Region

    @cached_property
    def size(self) -> float:
        """Side of the square of the same area."""
        return math.sqrt(self.region.area)

    @cached_property
    def wall(self) -> Points:
        """(n, 2) points spread evenly over the boundary, from the centroid."""
        middle = self.region.shape.centroid
        points: Points = evenly(self.region, _SAMPLES) - np.array([middle.x, middle.y])
        return points

    @cached_property
    def index(self) -> BoundaryIndex:
        """The boundary about the centroid, for distances."""
        middle = self.region.shape.centroid
        return BoundaryIndex(self.region.moved(Transform.shift(-middle.x, -middle.y)))

    @cached_property
    def profile(self) -> Points:
        """(120,) farthest boundary point in each direction."""
        angles = np.arctan2(self.wall[:, 1], self.wall[:, 0])
        slots = np.round(angles / (2 * math.pi) * _DIRECTIONS).astype(np.intp) % _DIRECTIONS
        farthest = np.zeros(_DIRECTIONS)
        np.maximum.at(farthest, slots, np.hypot(self.wall[:, 0], self.wall[:, 1]))
        seen = np.flatnonzero(farthest)
        filled: Points = np.interp(np.arange(_DIRECTIONS), seen, farthest[seen], period=_DIRECTIONS)
        return filled

    def mirrored(self) -> Signature:
        """The same outline mirrored left and right."""
        return Signature(self.region.moved(Transform.mirror_x()))


def estimates(pocket: Signature, plugs: Sequence[Signature], *, clearance: float, may_turn: bool) -> Points:
    """For each plug, (n,), how far its gap in the pocket is from the clearance, squared; see the module."""
    areas = np.array([plug.region.area for plug in plugs])
    lengths = np.array([plug.region.perimeter for plug in plugs])
    gaps = (pocket.region.area - areas) / ((pocket.region.perimeter + lengths) / 2)
    unlike = _rolled(pocket, plugs, clearance)
    shapes = unlike.min(axis=1) if may_turn else unlike[:, 0]
    holes = np.array([plug.region.hole_count for plug in plugs]) - pocket.region.hole_count
    answer: Points = (
        (gaps - clearance) ** 2 + _PROFILE_SHARE * shapes + (_HOLE_SHARE * pocket.size * holes) ** 2
    )
    return answer


def likely_turns(pocket: Signature, plug: Signature, *, clearance: float) -> tuple[float, ...]:
    """Turns of the plug, in radians, at which it looks most like the pocket; best first."""
    unlike = _rolled(pocket, [plug], clearance)[0]
    dips = np.flatnonzero((unlike <= np.roll(unlike, 1)) & (unlike <= np.roll(unlike, -1)))
    best = dips[np.argsort(unlike[dips], kind="stable")][:_TURNS_TRIED]
    best = best[unlike[best] <= _AS_LIKELY * unlike[best[0]] + ALIKE_MM**2]
    return tuple(math.remainder(2 * math.pi * int(roll) / _DIRECTIONS, 2 * math.pi) for roll in best)


def likeliest_turn(pocket: Signature, plug: Signature, *, clearance: float) -> float:
    """The turn, in radians, at which the plug's wall is nowhere far from the pocket's; exact to the wall."""
    turns = likely_turns(pocket, plug, clearance=clearance)
    return min((settled(plug.wall[::3], turn, pocket.index) for turn in turns), key=lambda end: end[1])[0]


def _rolled(pocket: Signature, plugs: Sequence[Signature], clearance: float) -> Points:
    """(n, 120) mean squares of the difference of the profiles, the plug turned by so many steps."""
    wide, narrow = pocket.profile - clearance, np.array([plug.profile for plug in plugs])
    products = np.fft.irfft(np.fft.rfft(wide) * np.conj(np.fft.rfft(narrow)), _DIRECTIONS)
    squares = (wide**2).sum() + (narrow**2).sum(axis=1)
    unlike: Points = np.maximum(0.0, squares[:, None] - 2 * products) / _DIRECTIONS
    return unlike


def kinds(outlines: Sequence[Signature], *, may_turn: bool) -> NDArray[np.intp]:
    """A number for each outline, the same for those that are alike: that of the first of its kind."""
    firsts: list[int] = []
    kind = np.arange(len(outlines), dtype=np.intp)
    for number, outline in enumerate(outlines):
        known = next((f for f in firsts if _are_alike(outlines[f], outline, may_turn=may_turn)), None)
        if known is None:
            firsts.append(number)
        else:
            kind[number] = known
    return kind


def _are_alike(one: Signature, other: Signature, *, may_turn: bool) -> bool:
    """Whether the walls are nowhere farther apart than `ALIKE_MM` when laid over each other."""
    if one.region.ring_count != other.region.ring_count:
        return False
    if abs(one.region.area - other.region.area) > ALIKE_MM * one.region.perimeter:
        return False
    if not may_turn:
        there, _ = one.index.nearest(other.wall)
        back, _ = other.index.nearest(one.wall)
        return bool(max(there.max(), back.max()) <= ALIKE_MM)
    turns = likely_turns(one, other, clearance=0.0)
    return any(settled(other.wall, turn, one.index)[1] <= ALIKE_MM for turn in turns)
