"""What is left to the hand: the corners that a half relieved *by hand* still has to lose."""

from __future__ import annotations

from inlayfit.fit.result import HalfResult
from inlayfit.fit.spec import HalfSpec, Relief
from inlayfit.geometry.morphology import thick_parts
from inlayfit.geometry.region import Region

_DUST_MM = 0.001


def hand_work(half: HalfResult, spec: HalfSpec) -> tuple[Region, ...]:
    """The pieces to pare away, largest first; none unless that is how the half is relieved."""
    if not (spec.may_move and spec.relief is Relief.BY_HAND) or half.left_over.is_empty:
        return ()
    return tuple(sorted(thick_parts(half.left_over, _DUST_MM).pieces, key=lambda piece: -piece.area))
