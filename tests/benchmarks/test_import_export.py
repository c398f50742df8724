"""Import of 100,000 segments beside the libraries that only read them, and export at four sizes.

    pytest tests/benchmarks/test_import_export.py --benchmark-enable -s

prints two tables: medians in milliseconds, the ratio of both, and how far the working set of a fresh process
rose in MiB. Ours ends with outlines: chained, nested, checked and simplified. The other ends with
what its library holds after reading: `ezdxf.readfile` for DXF; for SVG `defusedxml` and, for each path,
`svgelements.Path`. Each runs in a process of its own, so that no cache and no memory is shared. Without
`--benchmark-enable` a small drawing is walked through once.
"""

from __future__ import annotations

import json
import math
import statistics
import subprocess
import sys
import time
from pathlib import Path as FilePath

import ezdxf.filemanagement
import numpy as np
import pytest
from ezdxf.document import Drawing as DxfDocument

from inlayfit.document.imports import import_drawing
from inlayfit.drawing import Drawing, Figure
from inlayfit.formats.dxf_write import dxf_text
from inlayfit.formats.svg_write import svg_text
from inlayfit.geometry.arcs import region_paths
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region

SEGMENTS = 100_000
SIZES = (100, 1_000, 10_000, 100_000)
IN_A_SHAPE = 100
MOST_TIMES_AS_LONG = 1.5
"""What is asked of the import, beside reading alone."""

_PROGRAM = """
import json, statistics, sys, time
def peak():
    try:
        lines = open("/proc/self/status").read().splitlines()
    except OSError:
        return float("nan")  # told on Linux only
    return next(int(line.split()[1]) / 1024 for line in lines if line.startswith("VmHWM"))
{imports}
def work(path):
    return {work}
before, took = peak(), []
for _ in range(int(sys.argv[2])):
    start = time.perf_counter()
    kept = work(sys.argv[1])
    took.append(time.perf_counter() - start)
    if len(took) == 1:
        rose = peak() - before
    del kept
print(json.dumps([1000 * statistics.median(took), rose]))
"""
_OURS = (
    "from pathlib import Path; from inlayfit.document.imports import import_drawing",
    "import_drawing(Path(path))",
)
_EZDXF = ("import ezdxf.filemanagement", "ezdxf.filemanagement.readfile(path)")
_XML = (
    "from defusedxml.ElementTree import parse; from svgelements import Path",
    "[Path(each.get('d')) for each in parse(path).iter('{http://www.w3.org/2000/svg}path')]",
)


def corners(number: int) -> list[tuple[float, float]]:
    """A star-like ring of 100 corners in a place of its own."""
    row, column = divmod(number, 32)
    angles = np.arange(IN_A_SHAPE) * (2 * math.pi / IN_A_SHAPE)
    radius = 4 + 0.5 * np.cos(7 * angles)
    x, y = 10 * column + radius * np.cos(angles), 10 * row + radius * np.sin(angles)
    return [(float(a), float(b)) for a, b in zip(x, y, strict=True)]


def dxf_of_lines(folder: FilePath, segments: int) -> FilePath:
    """Every segment an entity of its own."""
    drawing = ezdxf.filemanagement.new("R2000", units=4)
    space = drawing.modelspace()
    for number in range(segments // IN_A_SHAPE):
        ring = corners(number)
        for start, end in zip(ring, [*ring[1:], ring[0]], strict=True):
            space.add_line(start, end)
    return _saved(drawing, folder / "lines.dxf")


def dxf_of_polylines(folder: FilePath, segments: int) -> FilePath:
    """A hundred segments a polyline, every second one an arc."""
    drawing = ezdxf.filemanagement.new("R2000", units=4)
    space = drawing.modelspace()
    for number in range(segments // IN_A_SHAPE):
        points = [(x, y, 0.1 * (i % 2)) for i, (x, y) in enumerate(corners(number))]
        space.add_lwpolyline(points, format="xyb", close=True)
    return _saved(drawing, folder / "polylines.dxf")


def _saved(drawing: DxfDocument, path: FilePath) -> FilePath:
    drawing.saveas(path)
    return path


def svg_of_paths(folder: FilePath, segments: int) -> FilePath:
    """A hundred segments a path, every second one a Bézier curve."""
    paths = []
    for number in range(segments // IN_A_SHAPE):
        ring = corners(number)
        data = [f"M{ring[0][0]:.4f} {ring[0][1]:.4f}"]
        for i, (x, y) in enumerate([*ring[1:], ring[0]]):
            px, py = ring[i]
            if i % 2:
                data.append(
                    f"C{px + (x - px) / 3:.4f} {py + (y - py) / 3:.4f} "
                    f"{px + 2 * (x - px) / 3:.4f} {py + 2 * (y - py) / 3:.4f} {x:.4f} {y:.4f}"
                )
            else:
                data.append(f"L{x:.4f} {y:.4f}")
        paths.append(f'<path d="{" ".join(data)}Z"/>')
    path = folder / "paths.svg"
    body = "\n".join(paths)
    path.write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="400mm" viewBox="0 0 400 400">'
        f"{body}</svg>",
        encoding="utf-8",
    )
    return path


def measured(file: FilePath, program: tuple[str, str], runs: int) -> tuple[float, float]:
    """Median milliseconds and MiB of one way to read a file, in a process of its own."""
    imports, work = program
    text = _PROGRAM.replace("{imports}", imports).replace("{work}", work)
    done = subprocess.run(
        [sys.executable, "-c", text, str(file), str(runs)], capture_output=True, text=True, check=True
    )
    took_ms, rose_mib = json.loads(done.stdout.splitlines()[-1])
    return float(took_ms), float(rose_mib)


def test_importing_takes_little_longer_than_reading(
    request: pytest.FixtureRequest, tmp_path: FilePath
) -> None:
    timed = request.config.getoption("benchmark_enable")
    segments, runs = (SEGMENTS, 5) if timed else (1_000, 1)
    rows: list[tuple[str, str, float, float, float, float]] = []
    for make, program, other in (
        (dxf_of_lines, _EZDXF, "ezdxf"),
        (dxf_of_polylines, _EZDXF, "ezdxf"),
        (svg_of_paths, _XML, "defusedxml + svgelements"),
    ):
        file = make(tmp_path, segments)
        assert len(import_drawing(file).outlines) == segments // IN_A_SHAPE
        rows.append((file.name, other, *measured(file, _OURS, runs), *measured(file, program, runs)))
    assert all(row[2] > 0 and row[4] > 0 for row in rows)
    if timed:
        print(f"\n{segments:,} segments   import ms    MiB   reading alone ms    MiB    ratio")  # noqa: T201
        for name, other, ms, mib, other_ms, other_mib in rows:
            told = (
                f"{name:17}{ms:10.0f}{mib:7.0f}{other_ms:19.0f}{other_mib:7.0f}{ms / other_ms:9.2f} {other}"
            )
            print(told)  # noqa: T201
        print(f"wanted: {MOST_TIMES_AS_LONG} times as long at most")  # noqa: T201


def lobed(vertices: int) -> Region:
    """A disk with nine lobes."""
    angles = np.arange(vertices) * (2 * np.pi / vertices)
    radius = 40 + 4 * np.sin(9 * angles)
    return Region.of_ring(np.column_stack([radius * np.cos(angles), radius * np.sin(angles)]))


def test_exporting_at_every_size(request: pytest.FixtureRequest) -> None:
    timed = request.config.getoption("benchmark_enable")
    rows = []
    for size in SIZES if timed else SIZES[:1]:
        region = lobed(size)
        recovered = region_paths(region)
        drawing = Drawing((Figure(recovered.paths, layer="PLUG"),))
        chords = Drawing((Figure(tuple(Path.polyline(ring) for ring in region.rings()), layer="PLUG"),))
        rows.append(
            (
                size,
                recovered.tally.segments_out,
                recovered.tally.worst_mm,
                median_ms(lambda region=region: region_paths(region)),
                median_ms(lambda drawing=drawing: dxf_text(drawing)),
                median_ms(lambda drawing=drawing: svg_text(drawing)),
                median_ms(lambda chords=chords: dxf_text(chords)),
            )
        )
        assert recovered.tally.worst_mm <= 0.001
    if timed:
        print("\n vertices  segments    off µm   arcs ms    DXF ms    SVG ms   DXF of chords ms")  # noqa: T201
        for size, out, off, *took in rows:
            cells = "".join(f"{ms:10.1f}" for ms in took)
            print(f"{size:9,}{out:10,}{1000 * off:10.2f}{cells}")  # noqa: T201


def median_ms(work: object, *, runs: int = 3) -> float:
    """Median of a few runs."""
    assert callable(work)
    took = []
    for _ in range(runs):
        start = time.perf_counter()
        work()
        took.append(time.perf_counter() - start)
    return 1000 * statistics.median(took)
