"""Ways into channels: dead ends and necks that a plunge can only clear along their middle.

In a channel barely narrower than the cutter a plunge must not be out of line by more than the difference,
so the places and directions that suit a corner meet it by chance only. The middle line is that of the
smallest rectangle round the channel, whose long sides lie on its walls. The plunge begins where that line,
followed out of the channel, first meets the cutter's centres.

A neck is also gone through from the centres nearest to one mouth to those nearest to the other. It may be
wider than it is long; so both middle lines of its rectangle say where its mouths are.

Where the cutter comes so far into a passage from both sides that its two last disks overlap, what is left are
two *cusps*, one at each wall. Each has one mouth and narrows like a corner, but the cutter has to go past it,
along the wall, from one of the disks to the other; towards its tip it would bite deep into the wall.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from inlayfit.fit.plunges import Ways
from inlayfit.fit.residue import Residue, ResidueKind
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.groups import Numbers
from inlayfit.geometry.path import Points

_MOST_STEPS = 40
_ARRIVED_MM = 4e-4  # half of what counts as dust: a line that enters at a grazing angle never quite arrives
_FARTHEST_RADII = 2.0
_ONE_PLACE_MM = 0.01  # between centres nearer than this the direction is chance


def ways_into_channels(residues: Sequence[Residue], centres: BoundaryIndex, radius: float) -> Ways:
    """Along each channel's middle: from its mouth, or from both mouths of a neck.

    Args:
        residues: of all kinds; corners have no middle line.
        centres: the boundary of the cutter's centres.
        radius: the cutter's.
    """
    kinds = [residue.kind for residue in residues]
    channels = np.array(
        [i for i, kind in enumerate(kinds) if kind in (ResidueKind.DEAD_END, ResidueKind.NECK)], dtype=np.intp
    )
    if len(channels) == 0:
        return Ways(channels, np.empty((0, 2)), np.empty((0, 2)))
    along, across = _middle_lines([residues[i] for i in channels.tolist()])
    necks = np.array([kinds[i] is ResidueKind.NECK for i in channels.tolist()])
    distances, feet = centres.nearest(np.vstack([along.reshape(-1, 2), across.reshape(-1, 2)]))
    away = distances[: 2 * len(channels)].reshape(-1, 2)
    row, end = np.nonzero(necks[:, None] | (away <= away.min(axis=1, keepdims=True)))
    ways = Ways.towards(channels[row], along[row, end], along[row, 1 - end])
    ways = _begun_at_centres(ways, centres, _FARTHEST_RADII * radius)
    for one, other in feet.reshape(2, -1, 2, 2)[:, necks].swapaxes(1, 2):
        ways = ways.joined(Ways.towards(channels[necks], one, other))
        ways = ways.joined(Ways.towards(channels[necks], other, one))
    return ways


def ways_past_cusps(residues: Sequence[Residue], centres: BoundaryIndex) -> Ways:
    """Between the centres nearest to both ends of a residue's mouth, both ways, where those are two places.

    The last vertices of a mouth lie on the wall; those beside them are the first of the disk's arc.

    Args:
        residues: of all kinds; those with several mouths are channels.
        centres: the boundary of the cutter's centres.
    """
    single: Numbers = np.flatnonzero([len(residue.mouths) == 1 for residue in residues])
    mouths = [residues[i].mouths[0] for i in single.tolist()]
    ends = np.array([mouth[[1, -2] if len(mouth) > 3 else [0, -1]] for mouth in mouths]).reshape(-1, 2)
    one, other = centres.nearest(ends)[1].reshape(-1, 2, 2).swapaxes(0, 1)
    two = np.flatnonzero(np.hypot(*(other - one).T) > _ONE_PLACE_MM)
    forth = Ways.towards(single[two], one[two], other[two])
    return forth.joined(Ways.towards(single[two], other[two], one[two]))


def _middle_lines(channels: list[Residue]) -> tuple[Points, Points]:
    """The middle lines of the smallest rectangle round each, lengthwise and across; their ends, (n, 2, 2)."""
    rectangles = shapely.oriented_envelope([channel.region.shape for channel in channels])
    corners = shapely.get_coordinates(rectangles).reshape(-1, 5, 2)[:, :4]
    sides = np.hypot(*np.moveaxis(corners[:, 1:3] - corners[:, :2], -1, 0))
    turned = np.where((sides[:, 0] > sides[:, 1])[:, None, None], np.roll(corners, -1, axis=1), corners)
    along = (turned[:, [0, 2]] + turned[:, [1, 3]]) / 2
    across = (turned[:, [1, 3]] + turned[:, [2, 0]]) / 2
    return along, across


def _begun_at_centres(ways: Ways, centres: BoundaryIndex, farthest: float) -> Ways:
    """The ways that meet the centres within a distance when followed backwards, from there.

    Nothing of the boundary is nearer than its distance, so one can step back by that much at a time.
    """
    back = np.zeros(len(ways.target))
    distances = np.full(len(ways.target), np.inf)
    for _ in range(_MOST_STEPS):
        distances, _ = centres.nearest(ways.ends(-back))
        if (distances <= _ARRIVED_MM).all():
            break
        back = np.minimum(back + np.where(distances > _ARRIVED_MM, distances, 0.0), farthest)
    arrived: Numbers = np.flatnonzero(distances <= _ARRIVED_MM)
    return Ways(ways.target[arrived], ways.ends(-back)[arrived], ways.units[arrived])
