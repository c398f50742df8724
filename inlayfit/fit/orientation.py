"""Ways a plug can be put in wrongly: turned, or flipped and turned.

For every turn, and for the mirror image at every turn, the plug is laid over itself about its centroid and
shifted to where it fits best; its *misfit* is the largest distance between the two walls. A misfit that
the eye does not see (`sight_mm`) makes a person try it that way. Then it depends on the clearance: where
the turned plug still goes in, nothing is lost; where it does not, it is the piece people force, and it
must carry a match mark.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from scipy.spatial import cKDTree

from inlayfit.fit.result import PROMISED_MM
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform
from inlayfit.progress import Progress, unwatched

SIGHT_MM = 0.3
"""A smaller difference is not seen while sorting pieces on the bench; common practice, no source."""

_SAMPLES = 720
_STEPS = 360
_SETTLE_ROUNDS = 12
_SAME_TURN_RAD = math.radians(4)
_ROUND_SHARE = 0.5  # more than this share of all turns looks the same: the piece is round to the eye
_MOST_OF_ROUND = 8


class Motion(StrEnum):
    """How the piece was moved."""

    TURNED = "turned"
    FLIPPED = "flipped"


class Need(StrEnum):
    """What an orientation asks for."""

    NOTHING = "goes in either way"
    MARK = "looks the same but does not go in: mark it"


@dataclass(frozen=True, slots=True)
class Orientation:
    """A wrong way to hold the piece that the eye does not tell from the right one.

    Attributes:
        motion: turned in the plane, or flipped over.
        angle_rad: the turn; of a flipped piece, after mirroring left and right.
        misfit_mm: largest distance between the two outlines when laid over each other as well as possible.
        need: whether a match mark is compulsory.
    """

    motion: Motion
    angle_rad: float
    misfit_mm: float
    need: Need


@dataclass(frozen=True, slots=True)
class Orientations:
    """All lookalike orientations of a piece.

    Attributes:
        lookalikes: each with what it asks for, worst misfit first.
        is_round: whether most turns look the same, so that no turn can be told from another.
    """

    lookalikes: tuple[Orientation, ...]
    is_round: bool

    @property
    def mark_is_compulsory(self) -> bool:
        """Whether the piece can be forced in wrongly."""
        return any(way.need is Need.MARK for way in self.lookalikes)

    @property
    def mirror_matters(self) -> bool:
        """Whether the flipped piece, however turned, fails to go in: seen or not."""
        return not any(w.motion is Motion.FLIPPED and w.need is Need.NOTHING for w in self.lookalikes)


def orientations(
    plug: Region, *, clearance_mm: float, sight_mm: float = SIGHT_MM, progress: Progress | None = None
) -> Orientations:
    """Look at a plug from every side.

    Args:
        plug: its finished outline.
        clearance_mm: what it has per side in its pocket; a misfit up to it still goes in.
        sight_mm: a misfit that the eye does not see.
        progress: asked before each turn that is looked at closely whether to stop.

    Raises:
        Cancelled: the work was stopped.
    """
    watched = progress or unwatched()
    if plug.is_empty:
        return Orientations((), is_round=False)
    centre = np.array([plug.shape.centroid.x, plug.shape.centroid.y])
    wall = evenly(plug, _SAMPLES) - centre
    index = BoundaryIndex(plug.moved(Transform.shift(-float(centre[0]), -float(centre[1]))))
    found: list[Orientation] = []
    shares = []
    for motion in Motion:
        held = wall if motion is Motion.TURNED else wall * np.array([-1.0, 1.0])
        misfits = _rough_misfits(held, wall)
        shares.append(float((misfits < sight_mm).mean()))
        dips = _dips(misfits, 2 * sight_mm, skip_zero=motion is Motion.TURNED)
        if shares[-1] > _ROUND_SHARE:  # any turn will do: a few, evenly spread, show whether all go in
            dips = dips[:: max(1, math.ceil(len(dips) / _MOST_OF_ROUND))]
        for angle in dips:
            watched.raise_if_cancelled()
            turn, misfit = settled(held, angle, index)
            if misfit > sight_mm or (motion is Motion.TURNED and _is_nothing(turn)):
                continue
            need = Need.NOTHING if misfit <= max(0.0, clearance_mm) + PROMISED_MM else Need.MARK
            found.append(Orientation(motion, turn, misfit, need))
    found.sort(key=lambda way: -way.misfit_mm)
    return Orientations(_one_a_turn(found), is_round=shares[0] > _ROUND_SHARE)


def evenly(region: Region, count: int) -> Points:
    """Points spread evenly over all rings."""
    step = region.perimeter / count
    pieces = []
    for ring in region.rings():
        closed = np.vstack([ring, ring[:1]])
        way = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(closed, axis=0).T))])
        at = np.linspace(0, way[-1], max(3, round(way[-1] / step)), endpoint=False)
        pieces.append(np.column_stack([np.interp(at, way, closed[:, k]) for k in (0, 1)]))
    return np.vstack(pieces)


def _turn(points: Points, angle: float) -> Points:
    return Transform.turn(angle).points(points)


def _rough_misfits(held: Points, wall: Points) -> Points:
    """Largest distance to the sampled wall at each evenly spaced turn, half a step too large at most."""
    tree = cKDTree(wall)
    few = held[:: max(1, len(held) // 180)]
    angles = 2 * math.pi * np.arange(_STEPS) / _STEPS
    turned = np.vstack([_turn(few, angle) for angle in angles])
    distances, _ = tree.query(turned)
    misfits: Points = np.asarray(distances).reshape(_STEPS, -1).max(axis=1)
    return misfits


def _dips(misfits: Points, margin: float, *, skip_zero: bool) -> list[float]:
    """Turns at which the rough misfit is a local minimum and low enough to look closer.

    A turn by one step moves a point at the rim by its distance times the step; a dip may hide as much.
    """
    low = (misfits <= np.roll(misfits, 1)) & (misfits <= np.roll(misfits, -1))
    hidden = float(np.abs(np.diff(misfits)).max())
    candidates = [int(i) for i in np.flatnonzero(low & (misfits < margin + hidden)) if i or not skip_zero]
    return [2 * math.pi * i / _STEPS for i in candidates]


def settled(held: Points, angle: float, index: BoundaryIndex) -> tuple[float, float]:
    """The turn and shift nearby that fit best, and the misfit there.

    Each round moves the piece by the rigid motion that brings its points closest to their nearest wall
    points, in the least-squares sense (the iterative closest point method of Besl and McKay, 1992).
    """
    moved, total = _turn(held, angle), angle
    distances, partners = index.nearest(moved)
    best = (total, float(distances.max()))
    for _ in range(_SETTLE_ROUNDS):
        middle, goal = moved.mean(axis=0), partners.mean(axis=0)
        one, other = moved - middle, partners - goal
        cross = float((one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0]).sum())
        turn = math.atan2(cross, float((one * other).sum()))
        moved, total = _turn(one, turn) + goal, total + turn
        distances, partners = index.nearest(moved)
        best = min(best, (total, float(distances.max())), key=lambda pair: pair[1])
    return best


def _is_nothing(angle: float) -> bool:
    return abs(math.remainder(angle, 2 * math.pi)) < _SAME_TURN_RAD


def _one_a_turn(found: list[Orientation]) -> tuple[Orientation, ...]:
    """Of several at nearly the same turn the best fitting one."""
    kept: list[Orientation] = []
    for way in sorted(found, key=lambda w: w.misfit_mm):
        same = [
            k
            for k in kept
            if k.motion is way.motion
            and abs(math.remainder(k.angle_rad - way.angle_rad, 2 * math.pi)) < _SAME_TURN_RAD
        ]
        if not same:
            kept.append(way)
    return tuple(sorted(kept, key=lambda w: -w.misfit_mm))
