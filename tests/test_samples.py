"""The sample drawings read as what they are, and the demo does the whole job on them.

Areas come from closed forms (circles, stadiums, rounded rectangles) and, for the leaf and the disc, from
painting the SVG with resvg, a renderer that shares nothing with our reader.
"""

from __future__ import annotations

import json
import math
from pathlib import Path

import numpy as np
import pytest
import resvg_py
from ezdxf.filemanagement import readfile
from PySide6.QtGui import QImage

from inlayfit.cli import main
from inlayfit.document.demo import JOBS, Demo, run_demo
from inlayfit.document.imports import Imported, import_drawing
from inlayfit.errors import WriteError
from inlayfit.finding import Severity
from inlayfit.fit.spec import HalfState
from inlayfit.shipped import shipped_folder

SAMPLES = shipped_folder("sample_shapes")
NAMES = sorted(path.name for path in SAMPLES.iterdir())
PX_PER_MM = 20

FOOT = 10 * 12 + math.pi * 6**2
DISC = math.pi * 35**2
MATS = {
    "square": 90**2 - (4 - math.pi) * 16**2 - math.pi * 21**2,
    "ring": math.pi * (45**2 - 31**2),
    "oval": 14 * 14 + math.pi * 7**2 - math.pi * 3.5**2,
    "long": 195 * 60 - (4 - math.pi) * 10**2 - math.pi * 15**2 / 2,
}


def read(name: str) -> Imported:
    return import_drawing(SAMPLES / name)


def areas(name: str) -> list[float]:
    return sorted(outline.region.area for outline in read(name).outlines)


def painted_mm2(name: str) -> float:
    """Area that resvg paints; CSS Values 3, "Absolute lengths": 25.4 mm are 96 px."""
    text = (SAMPLES / name).read_text(encoding="utf-8")
    image = QImage.fromData(bytes(resvg_py.svg_to_bytes(svg_string=text, dpi=96, zoom=PX_PER_MM * 25.4 / 96)))
    image = image.convertToFormat(QImage.Format.Format_Alpha8)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return float(rows[:, : image.width()].sum(dtype=np.int64)) / 255 / PX_PER_MM**2


@pytest.mark.parametrize("name", NAMES)
def test_every_sample_reads_without_a_finding_and_in_millimetres(name: str) -> None:
    imported = read(name)
    assert imported.findings == ()
    assert imported.unit.symbol == "mm"


@pytest.mark.parametrize("name", NAMES)
def test_every_sample_says_that_it_is_invented(name: str) -> None:
    assert "Invented for Inlayfit" in (SAMPLES / name).read_text(encoding="utf-8")[:300]


def test_every_shape_is_there_in_both_formats() -> None:
    assert {"feet", "leaf", "disc", "mats"} == {Path(name).stem for name in NAMES}
    assert len(NAMES) == 8


@pytest.mark.parametrize("name", ["feet.dxf", "feet.svg"])
def test_feet_are_stadiums_and_rounded_triangles(name: str) -> None:
    found = areas(name)
    assert found[:4] == pytest.approx([FOOT] * 4, abs=0.02)
    assert found[4] == pytest.approx(found[5], abs=1e-6)


@pytest.mark.parametrize("name", ["mats.dxf", "mats.svg"])
def test_mats_have_holes_and_an_island(name: str) -> None:
    assert areas(name) == pytest.approx(sorted(MATS.values()), abs=0.05)
    assert sorted(outline.region.hole_count for outline in read(name).outlines) == [0, 1, 1, 1]


def test_the_disc_is_a_circle() -> None:
    assert areas("disc.dxf") == pytest.approx([DISC], abs=0.05)


def test_the_disc_keeps_wood_standing_in_the_pocket_for_the_leaf() -> None:
    regions = [outline.region for outline in read("disc.svg").outlines]
    (leaf,) = areas("leaf.svg")
    assert sum(region.area for region in regions) == pytest.approx(DISC - leaf, abs=0.05)
    assert sum(len(region.polygons) for region in regions) == 9
    assert sum(region.area for region in regions) == pytest.approx(painted_mm2("disc.svg"), rel=5e-4)


@pytest.mark.parametrize("name", ["leaf.dxf", "leaf.svg"])
def test_the_leaf_has_eight_holes_and_is_sixty_long(name: str) -> None:
    (outline,) = read(name).outlines
    _, y0, _, y1 = outline.region.bounds
    assert outline.region.hole_count == 8
    assert y1 - y0 == pytest.approx(60, abs=0.001)
    assert outline.region.area == pytest.approx(painted_mm2("leaf.svg"), rel=5e-4)


@pytest.mark.parametrize(
    ("name", "kinds"),
    [
        ("feet.dxf", {"INSERT"}),
        ("leaf.dxf", {"SPLINE", "ELLIPSE"}),
        ("disc.dxf", {"CIRCLE"}),
        ("mats.dxf", {"LINE", "ARC"}),
    ],
)
def test_the_dxf_samples_exercise_the_entities_they_are_for(name: str, kinds: set[str]) -> None:
    document = readfile(SAMPLES / name)
    assert {entity.dxftype() for entity in document.modelspace()} == kinds
    assert document.header["$INSUNITS"] == 4  # DXF reference: millimetres
    assert not document.audit().has_errors


# --- the demo ----------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Demo:
    return run_demo(tmp_path_factory.mktemp("demo") / "out")


def test_the_demo_has_nothing_that_blocks_or_warns(demo: Demo) -> None:
    findings = [finding for done in demo.jobs for finding in done.findings]
    assert [f.message for f in findings if f.severity is not Severity.NOTE and not f.fixed] == []
    assert not demo.is_blocked


def test_every_gap_of_the_demo_is_what_was_asked(demo: Demo) -> None:
    for done in demo.jobs:
        for _, result in done.results:
            assert result.gap.min_mm >= done.job.spec.clearance_mm - 0.001
            assert result.gap.overlap_mm2 == 0


def test_feet_match_their_pockets_all_round(demo: Demo) -> None:
    feet = next(done for done in demo.jobs if done.job.name == "feet")
    assert len(feet.results) == 6
    for _, result in feet.results:
        assert result.gap.max_mm == pytest.approx(0.02, abs=0.001)
        assert result.plug.rough is not None
        assert result.pocket.rough is not None


def test_the_pocket_of_the_leaf_stays_byte_for_byte_and_the_leaf_is_relieved(demo: Demo) -> None:
    leaf = next(done for done in demo.jobs if done.job.name == "leaf")
    assert leaf.job.spec.pocket.state is HalfState.ALREADY_CUT
    ((_, result),) = leaf.results
    (outline,) = leaf.imported.outlines
    assert result.pocket.outline.shape.wkb == outline.region.shape.wkb
    assert result.reliefs


def test_the_demo_writes_every_promised_file(demo: Demo) -> None:
    promised = {"pocket.dxf", "plug.dxf", "pocket.svg", "plug.svg", "gap.svg", "fit.json"}
    for job in JOBS:
        assert {path.name for path in (demo.folder / job.name).iterdir()} == promised
    answer = json.loads((demo.folder / "fit.json").read_text(encoding="utf-8"))
    assert len(answer["fittings"]) == sum(len(done.results) for done in demo.jobs)
    assert all((demo.folder / name).is_file() for name in answer["files"])


def test_what_the_demo_wrote_reads_back_as_its_answer(demo: Demo) -> None:
    for done in demo.jobs:
        area = sum(result.pocket.outline.area for _, result in done.results)
        if done.job.spec.pocket.finishing_allowance_mm == 0:
            read_back = import_drawing(demo.folder / done.job.name / "pocket.dxf").outlines
            assert sum(outline.region.area for outline in read_back) == pytest.approx(area, rel=1e-4)


def test_the_demo_prints_a_short_summary_and_leaves_with_0(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["demo", "--out", str(tmp_path / "demo")]) == 0
    captured = capsys.readouterr()
    assert captured.err == ""
    assert len(captured.out.splitlines()) <= 12
    assert "0.020 per side (0.040 overall)" in captured.out


def test_a_demo_that_cannot_be_written_says_so(tmp_path: Path) -> None:
    (tmp_path / "taken").write_text("a file", encoding="utf-8")
    with pytest.raises(WriteError, match="not a folder"):
        run_demo(tmp_path / "taken")
