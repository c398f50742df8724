"""Seating: where a plug that exists sits in a pocket that exists.

The two drawings need not lie upon each other, so the plug is moved, never changed, to where its *smallest
gap is largest*: the place a careful hand finds by pushing the piece until it binds nowhere. The search is
over shifts; over turns too only if that is asked for, because a drawing normally knows which way up it is.

How. Let z be the shift (and turn), and g_i(z) the signed gap at sample i of either wall: a point w on the
plug, a point v on the pocket, gap positive where they are clear of each other. Moving the plug by d changes
it by n·d, n = (w − v)/g, and turning it about its centroid by θ changes it by θ·(r × n), r = w − centroid.
So near z the smallest gap is the lower envelope of planes, and the best move within a trust region is a
linear programme in three or four unknowns:

    maximise s − ε·|move|   with   s ≤ g_i + n_i·d + θ·(r_i × n_i)   for all i,   |d|, |θ·R| ≤ trust

(Sequential linear programming with a trust region for a minimax problem, after K. Madsen, Minimization of
Non-linear Approximation Functions, 1985; cuts of refused moves are kept, as in a bundle method.) A move that
does not help halves the trust twice; the end is where the programme itself sees nothing to gain. The small
penalty ε keeps a plug that may slide (in a long slot) where it lay, instead of at an arbitrary end.

It starts with the centroids, and with the middles of the bounds, upon each other, and as drawn unless the
plug lies elsewhere on its sheet; and keeps the best. A plug that was eroded from its pocket has one best seat
(shifted by t it would have to lie inside itself), which is found within a micrometre. Every hill is climbed
with few samples first, and only the two highest with all; of equal seats the least turned one is taken.

Does not handle: plugs turned by more than a few degrees unless a turn is asked for; a plug that goes in
only tilted.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import linprog

from inlayfit.errors import SpecError
from inlayfit.finding import Finding, Severity
from inlayfit.fit.spec import Seating
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.groups import members
from inlayfit.geometry.path import Points
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform
from inlayfit.measures import length
from inlayfit.progress import Progress, unwatched
from inlayfit.wording import Worded

_SAMPLES = 1200
_ROUNDS = 60
_PENALTY = 1e-3  # share of a gap that a move must win to be worth making
_GAIN_MM = 1e-7  # a tenth of a nanometre: the linear programme's own accuracy
_SMALLEST_TRUST_MM = 1e-7
_TOUCHING_MM = 1e-9
_FEW = 400  # samples of both walls that tell one hill from another
_ROUGH_GAIN_MM = 1e-3
_FOLLOWED = 2  # hills climbed to their tops
_FIRST_TRUST = 0.02  # of the plug's size
_WAYS = 24  # slopes that differ by less than a 24th are nearly alike
_COARSE_TURNS = 36
_TURNS_FOLLOWED = 3
_MOVED_MM = 5e-4  # a move below half a micrometre is the arithmetic's


@dataclass(frozen=True, slots=True)
class Closeness:
    """How closely a plug fills a pocket, by few samples of both walls.

    Attributes:
        off_mm: how far the gap is from the one that was wanted: root of the mean square over both walls.
        gap_mm: the smallest gap.
        turn_rad: how far the plug is turned there.
    """

    off_mm: float
    gap_mm: float
    turn_rad: float = 0.0


@dataclass(frozen=True, slots=True)
class Seat:
    """How a plug was moved to its seat.

    Attributes:
        shift_mm: of its centroid.
        turn_rad: about its centroid, counter-clockwise.
        about_mm: the centroid as drawn.
        gap_mm: smallest gap there, as sampled.
    """

    shift_mm: tuple[float, float]
    turn_rad: float
    about_mm: tuple[float, float]
    gap_mm: float

    @property
    def motion(self) -> Transform:
        """The move as a map of the plane."""
        (x, y), (dx, dy) = self.about_mm, self.shift_mm
        there = Transform.shift(x + dx, y + dy)
        return there.after(Transform.turn(self.turn_rad)).after(Transform.shift(-x, -y))

    @property
    def is_moved(self) -> bool:
        """Whether the plug lies elsewhere than it was drawn."""
        return math.hypot(*self.shift_mm) > _MOVED_MM or abs(self.turn_rad) > 1e-6


def seat(pocket: Region, plug: Region, *, may_turn: bool = False, progress: Progress | None = None) -> Seat:
    """Where a plug sits best in a pocket; see the module docstring.

    Args:
        pocket: its outline.
        plug: its outline, anywhere on its sheet.
        may_turn: whether it may be turned too.
        progress: asked at every step whether to stop.

    Raises:
        SpecError: one of them is empty.
        Cancelled: the work was stopped.
    """
    if pocket.is_empty or plug.is_empty:
        raise SpecError(
            Worded("A plug can be seated only where both outlines are there; choose closed outlines.")
        )
    watched = progress or unwatched()
    watched.report(0.0, "seat")
    search = _Search(pocket, plug, may_turn=may_turn, progress=watched)
    starts, rough = search.starts(), []
    for number, start in enumerate(starts):
        watched.report((1 + number) / (2 + len(starts)), "seat")
        rough.append(search.climbed(start, every=search.stride, enough=_ROUGH_GAIN_MM))
    as_high = max(gap for _, gap in rough) - 2 * _ROUGH_GAIN_MM
    rough.sort(key=lambda end: (0.0, search.turn_of(end[0])) if end[1] > as_high else (1.0, -end[1]))
    ends = [search.climbed(start) for start, _ in rough[:_FOLLOWED]]
    best = max(gap for _, gap in ends)
    pose, gap = min(
        (end for end in ends if end[1] > best - _MOVED_MM), key=lambda end: search.turn_of(end[0])
    )
    x, y = search.centre.tolist()
    turn = math.remainder(float(pose[2]) / search.reach, 2 * math.pi)
    return Seat((float(pose[0]), float(pose[1])), turn, (x, y), gap)


def closeness(
    pocket: Region,
    plug: Region,
    *,
    clearance_mm: float,
    seating: Seating = Seating.SHIFT,
    turn_rad: float = 0.0,
) -> Closeness:
    """How closely a plug fills a pocket where it sits: quick, by few samples, to compare many pairs.

    A plug far too small has a large gap everywhere, so the smallest gap alone cannot tell the right one: it
    is the gap's distance from the wanted one that counts, seen from both walls.

    Args:
        pocket: its outline; not empty.
        plug: its outline, anywhere on its sheet; not empty.
        clearance_mm: the gap that is wanted.
        seating: how the plug may move.
        turn_rad: the turn to start from.
    """
    search = _Search(pocket, plug, may_turn=seating is Seating.TURN, progress=unwatched())
    if seating is Seating.AS_DRAWN:
        return search.closeness(np.zeros(3), clearance_mm)
    pose, _ = search.climbed(search.start(turn_rad), every=search.stride, enough=_ROUGH_GAIN_MM)
    return search.closeness(pose, clearance_mm)


def seated_finding(seat: Seat) -> Finding | None:
    """A note that says what was moved; None if nothing was."""
    if not seat.is_moved:
        return None
    dx, dy = (length(value) for value in seat.shift_mm)
    degrees = math.degrees(seat.turn_rad)
    turn = f"{degrees:.3f}".replace("-", "\u2212")
    turned = Worded(" and turned by {turn}°", turn=turn) if abs(degrees) > 1e-4 else ""
    return Finding(
        "plug-seated",
        Severity.NOTE,
        Worded(
            "The plug was moved by {dx} in X and {dy} in Y{turned} to where its smallest gap is largest.",
            dx=dx,
            dy=dy,
            turned=turned,
        ),
        Worded("Its outline is as drawn; the gaps are those of this seat."),
    )


class _Search:
    """Both walls sampled, and the climb to the largest smallest gap.

    A pose is (dx, dy, φ): the shift of the plug's centroid, and the turn times the plug's reach, so that all
    three are lengths.
    """

    def __init__(self, pocket: Region, plug: Region, *, may_turn: bool, progress: Progress) -> None:
        self._progress = progress
        self.centre: Points = np.array([plug.shape.centroid.x, plug.shape.centroid.y])
        self._pocket, self._plug = BoundaryIndex(pocket), BoundaryIndex(plug)
        self._plug_wall, self._plug_normals = _sampled(plug)
        self._pocket_wall, self._pocket_normals = _sampled(pocket)
        self.reach = float(np.hypot(*(self._plug_wall - self.centre).T).max())
        self._free = 3 if may_turn else 2
        self.stride = max(1, (len(self._plug_wall) + len(self._pocket_wall)) // _FEW)
        self._middles = [
            np.array([pocket.shape.centroid.x, pocket.shape.centroid.y]) - self.centre,
            _middle(pocket) - _middle(plug),
        ]

    def turn_of(self, pose: Points) -> float:
        """How far a pose is turned from the drawn one, either way, in radians."""
        return abs(math.remainder(float(pose[2]) / self.reach, 2 * math.pi))

    def starts(self) -> list[Points]:
        """The poses to start from."""
        lies_apart = np.abs(self._middles[1]).max() > self.reach  # elsewhere on its sheet
        shifts = self._middles if lies_apart else [np.zeros(2), *self._middles]
        poses = [np.array([*shift, 0.0]) for shift in shifts]
        if self._free == 3:
            angles = 2 * math.pi * np.arange(1, _COARSE_TURNS) / _COARSE_TURNS
            turned = [np.array([*self._middles[0], angle * self.reach]) for angle in angles]
            turned.sort(key=lambda pose: -self._smallest(pose))
            poses += turned[:_TURNS_FOLLOWED]
        distinct: list[Points] = []
        for pose in poses:
            if all(np.abs(pose - other).max() > _MOVED_MM for other in distinct):
                distinct.append(pose)
        return distinct

    def start(self, turn: float) -> Points:
        """The pose with the middles upon each other, or the centroids, whichever has the larger gap."""
        poses = [np.array([*shift, turn * self.reach]) for shift in self._middles[: 1 if turn else 2]]
        return max(poses, key=self._smallest)

    def closeness(self, pose: Points, clearance: float) -> Closeness:
        """How closely the walls lie together at a pose; each sample counts for the wall about it."""
        gaps, _ = self._planes(pose, self.stride)
        off = float(np.sqrt(np.mean((gaps - clearance) ** 2)))
        return Closeness(off, float(gaps.min()), math.remainder(float(pose[2]) / self.reach, 2 * math.pi))

    def climbed(self, pose: Points, *, every: int = 1, enough: float = _GAIN_MM) -> tuple[Points, float]:
        """The pose uphill of a start, and the smallest gap there, by every so-manieth sample.

        It stops where the linear programme promises no more than `enough`.
        """
        gaps, slopes = self._planes(pose, every)
        best, trust = float(gaps.min()), max(_FIRST_TRUST * self.reach, 2 * abs(float(gaps.min())))
        cuts = [(gaps - slopes @ pose, slopes)]
        for _ in range(_ROUNDS):
            step, promised = _best_step(cuts, pose, trust, self._free)
            if promised - best < enough or trust < _SMALLEST_TRUST_MM:
                break
            trial = pose + step
            gaps, slopes = self._planes(trial, every)
            cut = (gaps - slopes @ trial, slopes)
            reached = float(gaps.min())
            if reached > best:
                if reached - best > 0.75 * (promised - best):
                    trust *= 2
                pose, best, cuts = trial, reached, [cut]
            else:
                trust, cuts = trust / 4, [*cuts, cut]
        return pose, best

    def _smallest(self, pose: Points) -> float:
        return float(self._planes(pose, self.stride)[0].min())

    def _planes(self, pose: Points, every: int) -> tuple[Points, Points]:
        """(n,) gaps at a pose and their (n, 3) slopes, of both walls."""
        self._progress.raise_if_cancelled()
        turn = float(pose[2]) / self.reach
        there = Transform.turn(turn)
        middle = self.centre + pose[:2]
        plug_wall, pocket_wall = self._plug_wall[::every], self._pocket_wall[::every]
        on_plug = there.points(plug_wall - self.centre) + middle
        gaps, partners = self._pocket.signed(on_plug)
        back = Transform.turn(-turn).points(pocket_wall - middle) + self.centre
        far_gaps, far_partners = self._plug.signed(back)
        on_plug = np.vstack([on_plug, there.points(far_partners - self.centre) + middle])
        on_pocket = np.vstack([partners, pocket_wall])
        gaps = np.concatenate([gaps, -far_gaps])
        normals = np.vstack([there.points(self._plug_normals[::every]), self._pocket_normals[::every]])
        apart = np.abs(gaps) > _TOUCHING_MM
        safe = np.where(apart, gaps, 1.0)[:, None]
        normals = np.where(apart[:, None], (on_plug - on_pocket) / safe, normals)
        arms = on_plug - middle
        about = (arms[:, 0] * normals[:, 1] - arms[:, 1] * normals[:, 0]) / self.reach
        return gaps, np.column_stack([normals, about])


def _best_step(
    cuts: Sequence[tuple[Points, Points]], pose: Points, trust: float, free: int
) -> tuple[Points, float]:
    """The move within the trust region that the planes promise most for, and the gap they promise."""
    heights = np.concatenate([base + slopes @ pose for base, slopes in cuts])
    slopes = np.vstack([slopes for _, slopes in cuts])[:, :free]
    lowest = float(heights.min())
    near = _lowest_each_way(heights, slopes, below=lowest + 2 * free * trust)
    # Unknowns in units of the trust: the move as plus and minus parts, then s above the lowest plane.
    planes = np.column_stack([-slopes[near], slopes[near], np.ones(len(near))])
    cost = np.concatenate([np.full(2 * free, _PENALTY), [-1.0]])
    limits = [(0.0, 1.0)] * (2 * free) + [(None, None)]
    answer = linprog(cost, A_ub=planes, b_ub=(heights[near] - lowest) / trust, bounds=limits, method="highs")
    step = np.zeros(3)
    if answer.x is None:
        return step, lowest
    step[:free] = (answer.x[:free] - answer.x[free : 2 * free]) * trust
    return step, lowest + float(answer.x[-1]) * trust


def _lowest_each_way(heights: Points, slopes: Points, *, below: float) -> NDArray[np.intp]:
    """Of planes that slope nearly alike only the lowest can matter; the programme gets no more than these."""
    near = np.flatnonzero(heights <= below)
    near = near[np.argsort(heights[near], kind="stable")]
    ways = np.round(slopes[near] * _WAYS).astype(np.int64) + 2 * _WAYS
    keys = ways @ (8 * _WAYS) ** np.arange(slopes.shape[1])
    _, first = np.unique(keys, return_index=True)
    return near[first]


def _sampled(region: Region) -> tuple[Points, Points]:
    """Vertices and points between them, and at each the direction into the region, as unit vectors."""
    step = region.perimeter / _SAMPLES
    points, normals = [], []
    for ring in region.rings():
        spans = np.roll(ring, -1, axis=0) - ring
        lengths = np.hypot(spans[:, 0], spans[:, 1])
        left = np.column_stack([-spans[:, 1], spans[:, 0]]) / np.maximum(lengths, 1e-300)[:, None]
        corner = left + np.roll(left, 1, axis=0)
        corner /= np.maximum(np.hypot(corner[:, 0], corner[:, 1]), 1e-12)[:, None]
        pieces = np.maximum(1, np.ceil(lengths / step)).astype(np.intp)
        owner, number = members(pieces)
        points.append(ring[owner] + spans[owner] * (number / pieces[owner])[:, None])
        normals.append(np.where((number == 0)[:, None], corner[owner], left[owner]))
    return np.vstack(points), np.vstack(normals)


def _middle(region: Region) -> Points:
    x0, y0, x1, y1 = region.bounds
    return np.array([(x0 + x1) / 2, (y0 + y1) / 2])
