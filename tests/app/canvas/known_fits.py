"""Fits with a closed form: a round plug off the middle of a round pocket.

The gap at an angle θ from the direction of the shift e is about R − r − e·cos θ (exact to e²/R), so every
class is on the wall, at known places.
"""

from __future__ import annotations

from functools import cache

from inlayfit.app.canvas.scene import FittingScene, GapScene, Shape
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.result import FitResult, HalfResult
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region

RADIUS_MM, CLEARANCE_MM = 10.0, 0.05


@cache
def disk(radius: float, x: float = 0.0, y: float = 0.0, *, tolerance: float = 2.5e-4) -> Region:
    """A disk as a region."""
    return Region.of_ring(flatten(Path.circle((x, y), radius), tolerance))


@cache
def shifted_result(shift_mm: float = 0.06, *, fixed: str = "pocket") -> FitResult:
    """A plug of the right size, pushed along x."""
    pocket, plug = disk(RADIUS_MM), disk(RADIUS_MM - CLEARANCE_MM, shift_mm)
    states = {
        half: HalfState.ALREADY_CUT if half == fixed else HalfState.TO_CUT for half in ("pocket", "plug")
    }
    spec = FitSpec(CLEARANCE_MM, HalfSpec(2.0, states["pocket"]), HalfSpec(3.0, states["plug"]))
    return FitResult(spec, HalfResult(pocket), HalfResult(plug), gap_map(pocket, plug))


@cache
def shifted_fitting(shift_mm: float = 0.06, *, key: str = "foot", fixed: str = "pocket") -> FittingScene:
    """The same as a scene's fitting."""
    return FittingScene.of_result(
        key,
        "Glide foot",
        shifted_result(shift_mm, fixed=fixed),
        pocket_words=("tray", "already cut, stays"),
        plug_words=("acetal foot", "may move"),
    )


@cache
def shifted_scene(shift_mm: float = 0.06, *, fixed: str = "pocket") -> GapScene:
    """The same as a scene."""
    return GapScene.of((shifted_fitting(shift_mm, fixed=fixed),))


def far_disk(x: float) -> Shape:
    """A disk of 4 mm radius elsewhere."""
    return Shape.of(disk(4.0, x))
