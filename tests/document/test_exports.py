"""The whole export: what is written, where, with what names, and what never happens.

Areas are measured by GDAL, which shares no line with our reader.
"""

from __future__ import annotations

import json
import math
import re
from dataclasses import replace
from pathlib import Path as FilePath
from typing import Any

import numpy as np
import pyogrio
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from inlayfit.document import exports
from inlayfit.document.exports import (
    ExportOptions,
    Line,
    Origin,
    Passes,
    Split,
    WrittenFile,
    tally_words,
    write_fit,
)
from inlayfit.errors import Cancelled, ReadBackError, WriteError
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.result import FitResult, HalfResult
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.dxf_read import read_dxf
from inlayfit.formats.dxf_write import DxfVersion
from inlayfit.geometry.arcs import Tally
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform
from inlayfit.progress import Progress
from tests.strategies import examples, regions

ALL_FILES = {"pocket.dxf", "plug.dxf", "pocket.svg", "plug.svg", "gap.svg", "fit.json"}


def foot(x: float = 0.0, *, allowance: float = 0.0, kerf: float = 0.0, diameter: float = 25.0) -> FitResult:
    """A round glide foot in its pocket, 0.05 mm per side."""
    ring = flatten(Path.circle((x + 20, 15), diameter / 2), EXACT.arc_mm)
    half = HalfSpec(0.0 if kerf else 3.0, finishing_allowance_mm=allowance, kerf_mm=kerf)
    return solve(Region.of_ring(ring), FitSpec(0.05, half, half))


def lid() -> FitResult:
    drawn = Region.of_ring([(0, 0), (40, 0), (40, 10), (12, 10), (12, 30), (0, 30)])
    return solve(drawn.moved(Transform.shift(60, 0)), FitSpec(0.05, HalfSpec(3.0), HalfSpec(2.0)))


def gdal_areas(path: FilePath) -> list[tuple[str, float]]:
    """Layer and enclosed area of each line, arcs in steps of 0.1°."""
    pyogrio.set_gdal_config_options({"OGR_ARC_STEPSIZE": "0.1"})
    _, _, shapes, fields = pyogrio.raw.read(path, columns=["Layer"])
    lines: Any = shapely.from_wkb(shapes)
    areas = [shapely.Polygon(line.coords).area for line in lines]
    return list(zip(fields[0].tolist(), areas, strict=True))


def bounds(path: FilePath) -> tuple[float, float, float, float]:
    boxes = np.array([c.bounds() for figure in read_dxf(path).drawing for c in figure.contours])
    return (*boxes[:, :2].min(axis=0).tolist(), *boxes[:, 2:].max(axis=0).tolist())


def names_in(folder: FilePath) -> set[str]:
    return {path.name for path in folder.iterdir()}


def test_the_six_files_hold_what_the_fit_answered(tmp_path: FilePath) -> None:
    result = foot()
    report = write_fit([("foot", result)], tmp_path)
    assert names_in(tmp_path) == {path.name for path in report.paths} == ALL_FILES
    for half, radius in (("pocket", 12.5), ("plug", 12.45)):
        ((layer, area),) = gdal_areas(tmp_path / f"{half}.dxf")
        assert layer == half.upper()
        assert area == pytest.approx(math.pi * radius**2, rel=2e-5)
    answer = json.loads((tmp_path / "fit.json").read_text())
    assert answer["files"] == [path.name for path in report.paths]
    assert answer["fittings"][0]["id"] == "foot"
    assert report.answer["files"] == [str(path) for path in report.paths]
    assert not report.findings


def test_a_round_foot_is_two_arcs_and_the_report_says_so(tmp_path: FilePath) -> None:
    report = write_fit([("foot", foot())], tmp_path)
    plug = next(file for file in report.files if file.path.name == "plug.dxf")
    assert plug.tally is not None
    assert (plug.tally.segments_out, plug.tally.arcs_out) == (2, 2)
    assert plug.tally.worst_mm < 0.001
    assert plug.deviation_mm < 0.001
    assert "points became 2 arcs, off by 0." in plug.sentence
    (contour,) = read_dxf(plug.path).drawing.figures[0].contours
    assert np.abs(contour.bulges).tolist() == [1, 1]


@pytest.mark.parametrize(
    ("tally", "words"),
    [
        (Tally(3635, 4, 4, 0.00021), "3,635 points became 4 arcs, off by 0.2 µm at most"),
        (Tally(180, 8, 4, 0.00024), "180 points became 4 arcs and 4 lines, off by 0.2 µm at most"),
        (Tally(4, 4, 0, 0.0), "4 points became 4 lines, off by 0.0 µm at most"),
        (Tally(40, 2, 1, 0.0), "40 points became 1 arc and 1 line, off by 0.0 µm at most"),
    ],
)
def test_the_tally_reads_as_a_sentence(tally: Tally, words: str) -> None:
    assert tally_words(tally) == words
    assert WrittenFile(FilePath("a.dxf"), tally).sentence == f"a.dxf: {words}."


def test_several_fittings_share_the_files_and_keep_their_names(tmp_path: FilePath) -> None:
    report = write_fit([("foot-1", foot()), ("lid", lid())], tmp_path)
    assert names_in(tmp_path) == ALL_FILES
    svg = (tmp_path / "pocket.svg").read_text()
    assert 'id="foot-1"' in svg
    assert 'id="lid"' in svg
    assert [fitting["id"] for fitting in report.answer["fittings"]] == ["foot-1", "lid"]
    assert len(gdal_areas(tmp_path / "plug.dxf")) == 2


def test_svg_and_dxf_of_both_halves_lie_upon_each_other(tmp_path: FilePath) -> None:
    write_fit([("foot", foot())], tmp_path)
    pages = [
        re.findall(r'viewBox="([^"]*)"', (tmp_path / f"{half}.svg").read_text())
        for half in ("pocket", "plug")
    ]
    assert pages[0] == pages[1]
    assert [float(v) for v in pages[0][0].split()] == pytest.approx([7.5, -27.5, 25, 25], abs=0.001)


def test_roughing_outlines_lie_on_their_own_layer(tmp_path: FilePath) -> None:
    write_fit([("foot", foot(allowance=0.3))], tmp_path)
    pocket, plug = dict(gdal_areas(tmp_path / "pocket.dxf")), dict(gdal_areas(tmp_path / "plug.dxf"))
    assert pocket["POCKET_ROUGH"] == pytest.approx(math.pi * 12.2**2, rel=2e-4)
    assert plug["PLUG_ROUGH"] == pytest.approx(math.pi * 12.75**2, rel=2e-4)
    write_fit([("foot", foot(allowance=0.3))], tmp_path, ExportOptions(passes=Passes.ROUGH))
    assert [layer for layer, _ in gdal_areas(tmp_path / "plug.dxf")] == ["PLUG_ROUGH"]
    write_fit([("foot", foot(allowance=0.3))], tmp_path, ExportOptions(passes=Passes.FINISH))
    assert [layer for layer, _ in gdal_areas(tmp_path / "plug.dxf")] == ["PLUG"]


def test_a_line_shifted_for_kerf_leaves_the_finished_edge_where_it_was(tmp_path: FilePath) -> None:
    write_fit([("foot", foot(kerf=0.2))], tmp_path, ExportOptions(line=Line.KERF))
    ((_, pocket),) = gdal_areas(tmp_path / "pocket.dxf")
    ((_, plug),) = gdal_areas(tmp_path / "plug.dxf")
    assert pocket == pytest.approx(math.pi * (12.5 - 0.1) ** 2, rel=2e-4)
    assert plug == pytest.approx(math.pi * (12.45 + 0.1) ** 2, rel=2e-4)


def test_only_a_beam_of_unknown_kerf_is_worth_a_warning(tmp_path: FilePath) -> None:
    options = ExportOptions(line=Line.KERF)
    milled = foot()
    assert not write_fit([("foot", milled)], tmp_path, options).findings
    assert gdal_areas(tmp_path / "plug.dxf")[0][1] == pytest.approx(math.pi * 12.45**2, rel=2e-5)
    beam = replace(milled, spec=replace(milled.spec, plug=HalfSpec(0.0)))
    (finding,) = write_fit([("foot", beam)], tmp_path, options).findings
    assert finding.code == "export-no-kerf"
    assert "plug" in finding.message


def test_a_half_already_cut_is_written_as_it_is(tmp_path: FilePath) -> None:
    cut = foot(kerf=0.2)
    pocket = replace(cut.spec.pocket, state=HalfState.ALREADY_CUT)
    write_fit(
        [("foot", replace(cut, spec=replace(cut.spec, pocket=pocket)))],
        tmp_path,
        ExportOptions(line=Line.KERF),
    )
    assert gdal_areas(tmp_path / "pocket.dxf")[0][1] == pytest.approx(math.pi * 12.5**2, rel=2e-5)
    assert gdal_areas(tmp_path / "plug.dxf")[0][1] == pytest.approx(math.pi * 12.55**2, rel=2e-4)


def test_nothing_to_write_is_a_sentence(tmp_path: FilePath) -> None:
    with pytest.raises(WriteError, match="no fitting to write"):
        write_fit([], tmp_path)
    assert names_in(tmp_path) == set()


def test_a_mirrored_plug_is_a_mirror_image_in_its_place(tmp_path: FilePath) -> None:
    plain, mirrored = tmp_path / "plain", tmp_path / "mirrored"
    write_fit([("lid", lid())], plain)
    report = write_fit([("lid", lid())], mirrored, ExportOptions(mirrored=frozenset({Half.PLUG})))
    assert [finding.code for finding in report.findings] == ["export-mirrored"]
    assert (mirrored / "pocket.dxf").read_bytes() == (plain / "pocket.dxf").read_bytes()
    before, after = (read_dxf(folder / "plug.dxf").drawing.figures[0] for folder in (plain, mirrored))
    x0, _, x1, _ = lid().plug.outline.bounds
    back = after.moved(Transform.shift(x0 + x1, 0).after(Transform.mirror_x()))
    shapes = [shapely.Polygon(flatten(figure.contours[0], 1e-5)) for figure in (before, back)]
    assert shapes[0].symmetric_difference(shapes[1]).area < 1e-4
    assert flatten(after.contours[0], 1e-3).mean() != pytest.approx(flatten(before.contours[0], 1e-3).mean())
    assert shapely.LinearRing(flatten(after.contours[0], 1e-3)).is_ccw


def test_the_origin_is_where_it_was_asked_for(tmp_path: FilePath) -> None:
    write_fit([("lid", lid())], tmp_path, ExportOptions(origin=Origin.LOWER_LEFT))
    assert bounds(tmp_path / "pocket.dxf")[:2] == pytest.approx((0, 0), abs=1e-6)
    assert bounds(tmp_path / "plug.dxf")[:2] == pytest.approx((0, 0), abs=1e-6)
    write_fit([("lid", lid())], tmp_path, ExportOptions(origin=Origin.CENTRE))
    x0, y0, x1, y1 = bounds(tmp_path / "pocket.dxf")
    assert (x0 + x1, y0 + y1) == pytest.approx((0, 0), abs=1e-6)
    write_fit([("lid", lid())], tmp_path)
    assert bounds(tmp_path / "pocket.dxf") == pytest.approx((60, 0, 100, 30), abs=0.001)


def test_a_file_for_each_piece_has_a_name_of_its_own(tmp_path: FilePath) -> None:
    names = ["foot", "Foot", "../foot", "leaf:1"]
    results = [(name, foot(30.0 * i)) for i, name in enumerate(names)]
    write_fit(results, tmp_path, ExportOptions(split=Split.PER_PIECE, halves=(Half.PLUG,)))
    assert names_in(tmp_path) == {"gap.svg", "fit.json"} | {
        f"plug-{name}.{ending}" for name in ("foot", "Foot-2", "_foot", "leaf_1") for ending in ("dxf", "svg")
    }


def test_r12_comes_with_a_warning_about_its_unit(tmp_path: FilePath) -> None:
    report = write_fit([("foot", foot())], tmp_path, ExportOptions(dxf_version=DxfVersion.R12))
    assert [finding.code for finding in report.findings] == ["export-no-unit"]
    assert gdal_areas(tmp_path / "plug.dxf")[0][1] == pytest.approx(math.pi * 12.45**2, rel=2e-5)


def test_a_plug_that_is_gone_leaves_no_file_of_an_earlier_one(tmp_path: FilePath) -> None:
    write_fit([("foot", foot())], tmp_path)
    result = foot()
    nothing = FitResult(
        result.spec, result.pocket, HalfResult(Region.empty()), gap_map(result.pocket.outline, Region.empty())
    )
    report = write_fit([("foot", nothing)], tmp_path)
    assert names_in(tmp_path) == ALL_FILES - {"plug.dxf", "plug.svg"}
    assert [finding.code for finding in report.findings] == ["export-nothing-left"]
    assert report.answer["fittings"][0]["gap"]["min_mm"] is None


@pytest.mark.parametrize("name", sorted(ALL_FILES))
def test_the_drawing_that_was_opened_is_never_overwritten(name: str, tmp_path: FilePath) -> None:
    drawing = tmp_path / name
    drawing.write_text("the only copy")
    with pytest.raises(WriteError, match="will not be overwritten"):
        write_fit([("foot", foot())], tmp_path, source=drawing)
    assert drawing.read_text() == "the only copy"
    assert names_in(tmp_path) == {name}


def test_stopped_work_writes_nothing(tmp_path: FilePath) -> None:
    seen: list[float] = []
    progress = Progress(lambda fraction, _note: seen.append(fraction))

    def stop_late(fraction: float, _note: str) -> None:
        if fraction > 0.4:
            progress.cancel()
            progress.raise_if_cancelled()

    progress._report = stop_late
    with pytest.raises(Cancelled):
        write_fit([("foot", foot())], tmp_path, progress=progress)
    assert names_in(tmp_path) == set()


def test_a_file_that_does_not_read_back_takes_the_whole_export_with_it(
    tmp_path: FilePath, monkeypatch: pytest.MonkeyPatch
) -> None:
    def shifted(path: FilePath, options: ReadOptions) -> ReadResult:
        result = read_dxf(path, options)
        return ReadResult(
            result.drawing.moved(Transform.shift(0.01, 0)), path, result.file_unit, result.assumed_unit
        )

    monkeypatch.setattr(exports, "read_dxf", shifted)
    with pytest.raises(ReadBackError, match=r"pocket\.dxf"):
        write_fit([("foot", foot())], tmp_path)
    assert names_in(tmp_path) == set()


def test_the_same_fit_gives_the_same_bytes(tmp_path: FilePath) -> None:
    for folder in ("a", "b"):
        write_fit([("foot", foot()), ("lid", lid())], tmp_path / folder)
    for name in ALL_FILES:
        assert (tmp_path / "a" / name).read_bytes() == (tmp_path / "b" / name).read_bytes()


@settings(parent=examples(12, 100))
@given(regions(), st.floats(-0.03, 0.3))
def test_what_is_written_is_what_was_solved(
    tmp_path_factory: pytest.TempPathFactory, region: Region, clearance: float
) -> None:
    """Any valid region, through solve, arcs, DXF and GDAL: the area is off by at most 1 µm of wall."""
    folder = tmp_path_factory.mktemp("export")
    result = solve(region, FitSpec(clearance, HalfSpec(0.5), HalfSpec(0.5)))
    if result.plug.outline.is_empty or result.pocket.outline.is_empty:
        return
    write_fit([("any", result)], folder)
    for half, outline in (("pocket", result.pocket.outline), ("plug", result.plug.outline)):
        signed = _nested_area([area for _, area in gdal_areas(folder / f"{half}.dxf")], outline)
        # 0.1° steps of GDAL lose up to (1 − cos 0.05°)·2/3 of an arc's segment: a few parts in a million.
        assert abs(signed - outline.area) <= 0.0011 * outline.perimeter + 5e-6 * outline.area


def _nested_area(areas: list[float], outline: Region) -> float:
    """Areas with holes counted negative; rings are written polygon by polygon, the outer one first."""
    signs = [sign for polygon in outline.polygons for sign in (1, *[-1] * len(polygon.interiors))]
    assert len(signs) == len(areas)
    return sum(sign * area for sign, area in zip(signs, areas, strict=True))
