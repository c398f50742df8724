"""Import, solve, gap map and export at 100 to 100,000 vertices, beside the same solve through clipper2-py.

    pytest tests/benchmarks/test_whole_chain.py --benchmark-enable -s

prints one row a size: medians in milliseconds, and ratios taken in the same run, since this says more on a
shared machine than seconds do. Without `--benchmark-enable` only the smallest size is walked through once.

    import, export   a DXF read into outlines; both halves written as DXF text
    solve            both halves to cut, rounded to match, 3 mm and 2 mm cutters, 0.05 mm clearance,
                     its gap map included
    in GEOS          the part of it spent inside the geometry library's calls, and the whole over it
    chain            the opening, the closing and the offset alone
    clipper2         opening, closing and offset at the same arc tolerance; of that, "calls" is what
                     Clipper2 itself takes, without turning rings into its integers and back
    preview          the same solve at the tolerance of a dragged slider
"""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path as FilePath
from types import FunctionType
from typing import Any

import clipper2
import numpy as np
import pytest
import shapely
from shapely.geometry.base import BaseGeometry

from inlayfit.document.imports import import_drawing
from inlayfit.drawing import Drawing, Figure
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec
from inlayfit.formats.dxf_write import dxf_text, write_dxf
from inlayfit.geometry.morphology import closed, erode, opened
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, PREVIEW
from tests.oracles import CLIPPER_SCALE, MICROMETRE, clipper_matched_halves, spread

SIZES = (100, 1_000, 10_000, 100_000)
SPEC = FitSpec(0.05, HalfSpec(3.0), HalfSpec(2.0))
NOT_GEOS = {"transform", "from_wkt"}
"""Calls that run our own functions, or none of ours makes."""
GEOS_METHODS = ("difference", "intersection", "union", "area", "length", "bounds", "is_empty")


def lobed(vertices: int) -> Path:
    """A disk with nine lobes, the same form at every number of vertices; its hollows hold both cutters."""
    angles = np.arange(vertices) * (2 * np.pi / vertices)
    radius = 40 + 4 * np.sin(9 * angles)
    return Path.polyline(np.column_stack([radius * np.cos(angles), radius * np.sin(angles)]))


def median_ms(work: Callable[[], object], *, seconds: float = 2.0) -> float:
    """Median of as many runs as fit into the time, at least three."""
    took: list[float] = []
    while len(took) < 3 or sum(took) < seconds:
        start = time.perf_counter()
        work()
        took.append(time.perf_counter() - start)
        if len(took) == 40:
            break
    return 1000 * statistics.median(took)


@contextmanager
def counted_geos(patch: pytest.MonkeyPatch) -> Iterator[list[float]]:
    """Adds up the seconds spent in all calls of the geometry library, calls within calls counted once."""
    spent = [0.0]
    depth = [0]

    def timed(call: Callable[..., Any]) -> Callable[..., Any]:
        def run(*args: Any, **kwargs: Any) -> Any:
            depth[0] += 1
            start = time.perf_counter()
            try:
                return call(*args, **kwargs)
            finally:
                depth[0] -= 1
                if depth[0] == 0:
                    spent[0] += time.perf_counter() - start

        return run

    with patch.context() as patched:
        for name, call in vars(shapely).items():
            if isinstance(call, FunctionType) and name not in NOT_GEOS:
                patched.setattr(shapely, name, timed(call))
        for name in GEOS_METHODS:
            member = getattr(BaseGeometry, name)
            if isinstance(member, property) and member.fget is not None:
                patched.setattr(BaseGeometry, name, property(timed(member.fget)))
            else:
                patched.setattr(BaseGeometry, name, timed(member))
        yield spent


def clipper_calls_ms(region: Region) -> float:
    """What Clipper2 itself takes for the same five offsets, in its own integers all the way."""

    def chain() -> None:
        rings = [np.rint(ring * CLIPPER_SCALE).astype(np.int64) for ring in region.rings()]
        rho = SPEC.plug.radius_mm - SPEC.clearance_mm
        r = SPEC.pocket.radius_mm
        for distance in (-r, r, rho, -rho, -SPEC.clearance_mm):
            offset = clipper2.ClipperOffset(2.0, EXACT.arc_mm * CLIPPER_SCALE)
            offset.add_paths(rings, clipper2.JoinType.ROUND, clipper2.EndType.POLYGON)
            rings = offset.execute(distance * CLIPPER_SCALE)

    return median_ms(chain)


def figures_of(region: Region, layer: str) -> Drawing:
    return Drawing((Figure(tuple(Path.polyline(ring) for ring in region.rings()), layer=layer),))


def measured(vertices: int, folder: FilePath, patch: pytest.MonkeyPatch) -> dict[str, float]:
    """One row: medians in milliseconds."""
    path = lobed(vertices)
    region = Region.of_ring(path.vertices)
    file = folder / f"lobed-{vertices}.dxf"
    write_dxf(Drawing((Figure((path,)),)), file)
    # A slider that moves asks for another clearance each time; nothing is to be had from the last answer.
    clearances = iter(0.05 + np.arange(10_000) * 1e-7)

    def solved() -> object:
        return solve(region, SPEC.with_clearance(float(next(clearances))))

    def chain() -> Region:
        form = closed(opened(region, SPEC.pocket.radius_mm, EXACT), SPEC.plug.radius_mm - 0.05, EXACT)
        return erode(form, 0.05, EXACT)

    result = solve(region, SPEC)
    pocket, plug = result.pocket.finished, result.plug.finished
    row = {
        "vertices": float(vertices),
        "import": median_ms(lambda: import_drawing(file)),
        "chain": median_ms(chain),
        "solve": median_ms(solved),
        "gap map": median_ms(lambda: gap_map(pocket, plug)),
        "export": median_ms(lambda: dxf_text(figures_of(pocket, "POCKET") + figures_of(plug, "PLUG"))),
        "preview": median_ms(lambda: solve(region, SPEC, tolerance=PREVIEW)),
    }
    with counted_geos(patch) as spent:
        start = time.perf_counter()
        runs = 3
        for _ in range(runs):
            solved()
        whole = time.perf_counter() - start
    row["whole/GEOS"] = whole / spent[0]
    row["in GEOS"] = 1000 * spent[0] / runs
    small = vertices <= 10_000  # beyond, Clipper2 takes minutes
    radii = SPEC.pocket.radius_mm, SPEC.plug.radius_mm
    row["clipper2"] = median_ms(lambda: clipper_matched_halves(region, 0.05, *radii)) if small else np.nan
    row["calls"] = clipper_calls_ms(region) if small else np.nan
    row["calls/chain"] = row["calls"] / row["chain"]
    row["clipper2/solve"] = row["clipper2"] / row["solve"]
    if vertices <= 1_000:
        theirs = clipper_matched_halves(region, 0.05, *radii)
        assert spread(pocket, theirs[0]) <= MICROMETRE, "the two answers are the same"
        assert spread(plug, theirs[1]) <= MICROMETRE
    return row


def test_the_whole_chain_at_every_size(
    request: pytest.FixtureRequest, tmp_path: FilePath, monkeypatch: pytest.MonkeyPatch
) -> None:
    timed = request.config.getoption("benchmark_enable")
    rows = [measured(size, tmp_path, monkeypatch) for size in (SIZES if timed else SIZES[:1])]
    assert all(row["solve"] > 0 for row in rows)
    if timed:
        print(f"\n{''.join(f'{name:>15}' for name in rows[0])}{'growth of solve':>18}")  # noqa: T201
        for before, row in zip([None, *rows], rows, strict=False):
            growth = f"{row['solve'] / before['solve']:18.1f}" if before else ""
            print("".join(f"{value:15.1f}" for value in row.values()) + growth)  # noqa: T201
