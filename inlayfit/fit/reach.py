"""Whether a cutter still reaches all of a form to which something was added.

A form is all that the pocket's cutter can sweep. Closing it for the plug's cutter fills its concave corners
with arcs; at such an arc the cutter runs round the outside, and what can stop it is a wall facing it. So
the question is asked of *tangent disks*: at the middle of every new piece of wall, the disk of the cutter's
radius that touches it there must lie inside the form. As the pieces are shallower than the radius, those
disks cover them; all else the cutter swept before.

That takes a distance a piece of wall. Only where a disk does not fit is the form opened, which answers for
every case but is slow: eroding an arc by nearly its own radius makes all its chords meet in one point.
"""

from __future__ import annotations

import numpy as np

from inlayfit.fit.residue import Residue, residues
from inlayfit.geometry.distance import BoundaryIndex
from inlayfit.geometry.morphology import opened
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance

_LOOSE_MM = 0.005


def unreached(
    added: tuple[Residue, ...], form: Region, radius: float, tolerance: Tolerance
) -> tuple[Residue, ...]:
    """What the cutter cannot reach of a form, all of which it reached before some pieces were added.

    It is taken a little smaller than it is, so that a passage it made itself does not count as too narrow.
    """
    if radius == 0 or not added:
        return ()
    loose = radius - min(_LOOSE_MM, radius / 4)
    if _tangent_disks_fit(added, form, loose, tolerance):
        return ()
    return residues(form, opened(form, loose, tolerance), radius, tolerance)


def _tangent_disks_fit(added: tuple[Residue, ...], form: Region, radius: float, tolerance: Tolerance) -> bool:
    """Whether disks that touch the new pieces of wall stay inside; False where that is not enough."""
    if max(piece.depth for piece in added) > radius:
        return False
    lines = [line for piece in added for line in piece.mouths]
    if not lines:
        return True
    starts, ends = np.vstack([line[:-1] for line in lines]), np.vstack([line[1:] for line in lines])
    spans = ends - starts
    sizes = np.hypot(spans[:, 0], spans[:, 1])
    some = sizes > 0
    inward = np.column_stack([-spans[some, 1], spans[some, 0]]) / sizes[some, None]
    room, _ = BoundaryIndex(form).signed((starts + ends)[some] / 2 + radius * inward)
    return bool(room.min(initial=radius) >= radius - tolerance.settle_mm / 2)
