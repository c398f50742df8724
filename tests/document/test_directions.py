"""Written contours run the way they are cut: what stays is on the right of a climbing cutter."""

from __future__ import annotations

from pathlib import Path as FilePath

import pytest
import shapely

from inlayfit.bench.cutting import Turn
from inlayfit.bench.milling import Milling
from inlayfit.document.directions import directed
from inlayfit.document.exports import ExportOptions, write_fit
from inlayfit.drawing import Drawing, Figure
from inlayfit.fit.result import FitResult
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState
from inlayfit.formats.dxf_read import read_dxf
from inlayfit.formats.svg_read import read_svg
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT

RINGED = Region.of_ring([(0, 0), (40, 0), (40, 30), (0, 30)], [[(10, 10), (10, 20), (30, 20), (30, 10)]])


def fit(*, plug: HalfSpec | None = None, pocket: HalfSpec | None = None) -> FitResult:
    return solve(RINGED, FitSpec(0.05, pocket or HalfSpec(3.0), plug or HalfSpec(3.0)))


def stays_on_the_right(contour: Path, kept: Region) -> bool:
    """Whether a point a little to the right of the first straight stretch is in the material that stays."""
    points = flatten(contour, EXACT.arc_mm)
    a, b = points[0], points[1]
    along = (b - a) / ((b - a) ** 2).sum() ** 0.5
    x, y = (a + b) / 2 + 0.02 * along[[1, 0]] * (1, -1)
    return bool(shapely.contains_xy(kept.shape, x, y))


@pytest.mark.parametrize("milling", Milling)
@pytest.mark.parametrize("half", Half)
def test_the_material_that_stays_is_on_the_right_of_a_climbing_cutter(
    half: Half, milling: Milling, tmp_path: FilePath
) -> None:
    result = fit()
    report = write_fit([("ring", result)], tmp_path, ExportOptions(milling=milling))
    host = Region.of(shapely.box(-10, -10, 50, 40)).minus(result.pocket.outline)
    kept = host if half is Half.POCKET else result.plug.outline
    figure = read_dxf(tmp_path / f"{half.value}.dxf").drawing.figures
    contours = [contour for each in figure for contour in each.contours]
    assert len(contours) == 2
    assert {stays_on_the_right(contour, kept) for contour in contours} == {milling is Milling.CLIMB}
    listed = report.answer["fittings"][0]["contours"]
    notes = [note for note in listed if note["half"] == half.value]
    turns = [Turn.CLOCKWISE if _is_clockwise(c) else Turn.COUNTER_CLOCKWISE for c in contours]
    assert [note["turn"] for note in notes] == [turn.value for turn in turns]
    assert {note["milling"] for note in notes} == {milling.value}


def _is_clockwise(contour: Path) -> bool:
    return not shapely.LinearRing(flatten(contour, 0.01)).is_ccw


def test_svg_and_dxf_run_the_same_way(tmp_path: FilePath) -> None:
    write_fit([("ring", fit())], tmp_path, ExportOptions(milling=Milling.CLIMB))
    ways = [
        [_is_clockwise(c) for figure in drawing for c in figure.contours]
        for drawing in (read_dxf(tmp_path / "plug.dxf").drawing, read_svg(tmp_path / "plug.svg").drawing)
    ]
    assert ways[0] == ways[1] == [True, False]


def test_a_mirrored_plug_still_climbs(tmp_path: FilePath) -> None:
    """The direction is that of the lines as written, which is how the machine runs them."""
    options = ExportOptions(milling=Milling.CLIMB, mirrored=frozenset({Half.PLUG}))
    write_fit([("ring", fit())], tmp_path, options)
    contours = [c for f in read_dxf(tmp_path / "plug.dxf").drawing for c in f.contours]
    assert [_is_clockwise(c) for c in contours] == [True, False]


def test_a_half_that_is_not_milled_has_no_direction(tmp_path: FilePath) -> None:
    result = fit(plug=HalfSpec(0.0, kerf_mm=0.2), pocket=HalfSpec(3.0, HalfState.ALREADY_CUT))
    report = write_fit([("ring", result)], tmp_path, ExportOptions(milling=Milling.CLIMB))
    assert "contours" not in report.answer["fittings"][0]


def test_rest_corners_are_small_pockets_and_marks_have_no_direction() -> None:
    circle = Path.circle((0, 0), 1)
    layers = ("PLUG", "PLUG_ROUGH", "PLUG_REST", "MARKS")
    drawing = Drawing(tuple(Figure((circle,), layer=layer, name="o1") for layer in layers))
    _, notes = directed(drawing, Half.PLUG, Milling.CLIMB, cut=["o1"])
    turns = {note.layer: note.turn for note in notes}
    assert turns == {
        "PLUG": Turn.CLOCKWISE,
        "PLUG_ROUGH": Turn.CLOCKWISE,
        "PLUG_REST": Turn.COUNTER_CLOCKWISE,
    }
    assert directed(drawing, Half.PLUG, None, cut=["o1"]) == (drawing, ())
