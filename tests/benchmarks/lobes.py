"""The shape that drags are measured on."""

from __future__ import annotations

import numpy as np

from inlayfit.document.outlines import Outline
from inlayfit.document.state import Fitting, State
from inlayfit.fit.spec import FitSpec, HalfSpec
from inlayfit.geometry.region import Region


def lobed(vertices: int) -> State:
    """A disk with 24 lobes that every cutter reaches."""
    angles = np.arange(vertices) * (2 * np.pi / vertices)
    radius = 40 + 2 * np.sin(24 * angles)
    ring = np.column_stack([radius * np.cos(angles), radius * np.sin(angles)])
    outline = Outline("o0", "lobes", "0", Region.of_ring(ring), ())
    spec = FitSpec(0.03, HalfSpec(2.0), HalfSpec(3.0))
    return State(outlines=(outline,), fittings=(Fitting("o0", spec),), chosen=("o0",))
