"""DXF as written: read with GDAL and with ezdxf, neither of which is ours."""

from __future__ import annotations

import io
import math
from pathlib import Path as FilePath
from typing import Any

import numpy as np
import pyogrio
import pytest
import shapely
from ezdxf.filemanagement import read, readfile
from ezdxf.lldxf.encoding import decode_dxf_unicode
from ezdxf.math import bulge_to_arc
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.drawing import Drawing, Figure
from inlayfit.formats.dxf_write import NAME_TAG, DxfVersion, dxf_text, layer_name, write_dxf
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Bezier, Path

FINE = 1e-5


def gdal_lines(path: FilePath) -> list[tuple[str, Any]]:
    """Layer and geometry of everything GDAL finds, arcs in steps of 0.1°."""
    pyogrio.set_gdal_config_options({"OGR_ARC_STEPSIZE": "0.1"})
    meta, _, shapes, fields = pyogrio.raw.read(path, columns=["Layer"])
    assert list(meta["fields"]) == ["Layer"]
    return list(zip(fields[0].tolist(), shapely.from_wkb(shapes), strict=True))


def slot() -> Path:
    corners = np.array([[0.0, -3], [20, -3], [20, 3], [0, 3]])
    return Path(corners, np.array([0.0, 1.0, 0.0, 1.0]))


@pytest.mark.parametrize("version", list(DxfVersion))
def test_gdal_finds_the_areas_and_layers_that_were_meant(version: DxfVersion, tmp_path: FilePath) -> None:
    with_hole = Figure((slot(), Path.circle((5, 0), 2.0).reversed()), layer="POCKET", name="foot-1")
    drawing = Drawing((with_hole, Figure((Path.circle((-30, 7), 12.5),), layer="POCKET_ROUGH")))
    write_dxf(drawing, tmp_path / "pocket.dxf", version=version)
    found = gdal_lines(tmp_path / "pocket.dxf")
    assert [layer for layer, _ in found] == ["POCKET", "POCKET", "POCKET_ROUGH"]
    areas = [shapely.Polygon(shape.coords).area for _, shape in found]
    exact = [20 * 6 + math.pi * 9, math.pi * 4, math.pi * 12.5**2]
    assert areas == pytest.approx(exact, rel=1e-5)
    assert all(shape.is_ring for _, shape in found)


@given(st.floats(0.01, 5.9), st.booleans())
def test_bulge_is_the_tangent_of_a_quarter_of_the_sweep(sweep: float, clockwise: bool) -> None:
    """DXF reference, group 42: tan(θ/4), negative clockwise. Two points of a circle of radius 10 mm."""
    turn = -sweep if clockwise else sweep
    ends = np.array([[10.0, 0.0], [10 * math.cos(turn), 10 * math.sin(turn)]])
    path = Path(ends, np.array([math.tan(turn / 4)]), closed=False)
    (entity,) = _entities(dxf_text(Drawing((Figure((path,)),))))
    (_, _, _, _, bulge), _ = entity.get_points()
    centre, *_, radius = bulge_to_arc(ends[0], ends[1], bulge)
    assert 4 * math.atan(bulge) == pytest.approx(turn, abs=1e-9)
    assert radius == pytest.approx(10.0, rel=1e-6)
    assert math.dist(centre, (0, 0)) < 1e-5


def _entities(text: str) -> list[Any]:
    return list(read(io.StringIO(text)).modelspace())


def test_the_header_says_millimetres_and_the_version() -> None:
    document = read(io.StringIO(dxf_text(Drawing((Figure((slot(),)),)))))
    assert document.header["$INSUNITS"] == 4  # DXF reference, $INSUNITS: 4 = millimetres
    assert document.header["$MEASUREMENT"] == 1
    assert document.dxfversion == "AC1015"  # DXF reference, $ACADVER: AC1015 = R2000
    assert document.header["$EXTMAX"][:2] == pytest.approx((23.0, 3.0))
    assert not document.audit().has_errors


def test_r12_states_no_unit_and_uses_polylines() -> None:
    text = dxf_text(Drawing((Figure((slot(),), layer="PLUG ROUGH", name="a"),)), version=DxfVersion.R12)
    document = read(io.StringIO(text))
    assert document.dxfversion == "AC1009"
    assert "$INSUNITS" not in text
    entity: Any
    (entity,) = document.modelspace()
    assert entity.dxftype() == "POLYLINE"
    assert entity.is_closed
    assert [vertex.dxf.bulge for vertex in entity.vertices] == [0, 1, 0, 1]
    assert entity.dxf.layer == "PLUG_ROUGH"


def test_a_figures_name_travels_with_its_polylines() -> None:
    (entity,) = _entities(dxf_text(Drawing((Figure((slot(),), name="foot 1"),))))
    assert entity.get_xdata(NAME_TAG)[0] == (1000, "foot 1")


def test_the_same_drawing_gives_the_same_bytes() -> None:
    drawing = Drawing((Figure((slot(),), layer="PLUG", name="a"),))
    assert dxf_text(drawing) == dxf_text(drawing)
    assert dxf_text(drawing, version=DxfVersion.R12) == dxf_text(drawing, version=DxfVersion.R12)


def test_beziers_become_arcs_within_tolerance(tmp_path: FilePath) -> None:
    curve = Bezier(np.array([[0.0, 0], [15, 25], [30, -25], [40, 0]]))
    quarter = Bezier(np.array([[40.0, 0], [40, -30], [10, -30]]), np.array([1, math.sqrt(0.5), 1]))
    path = Path(np.array([[0.0, 0], [40, 0], [10, -30]]), np.zeros(3), True, {0: curve, 1: quarter})
    write_dxf(Drawing((Figure((path,)),)), tmp_path / "curves.dxf")
    ((_, shape),) = gdal_lines(tmp_path / "curves.dxf")
    exact = shapely.LinearRing(flatten(path, FINE))
    assert shapely.hausdorff_distance(shape, exact) < 0.0012 + 2e-3  # GDAL's steps of 0.1° on 30 mm
    assert shapely.distance(shapely.points(np.asarray(shape.coords)), exact).max() < 0.0011


def test_open_paths_stay_open() -> None:
    path = Path.polyline([(0, 0), (1, 0), (1, 1)], closed=False)
    (entity,) = _entities(dxf_text(Drawing((Figure((path,)),))))
    assert not entity.closed
    assert len(entity) == 3


@pytest.mark.parametrize(("asked", "given_"), [("A*B|C", "A_B_C"), ("  ", "0"), ("Füße", "Füße")])
def test_layer_names_are_those_dxf_allows(asked: str, given_: str) -> None:
    assert layer_name(asked) == given_


def test_letters_beyond_the_code_page_come_back(tmp_path: FilePath) -> None:
    drawing = Drawing((Figure((slot(),), layer="Füße 葉"),))
    for version in DxfVersion:
        write_dxf(drawing, tmp_path / "a.dxf", version=version)
        document = readfile(tmp_path / "a.dxf")
        (entity,) = document.modelspace()
        assert decode_dxf_unicode(entity.dxf.layer) == layer_name("Füße 葉", version=version)


@pytest.mark.parametrize("version", list(DxfVersion))
def test_writing_says_nothing_behind_the_callers_back(
    version: DxfVersion, caplog: pytest.LogCaptureFixture, capfd: pytest.CaptureFixture[str]
) -> None:
    dxf_text(Drawing((Figure((slot(),)),)), version=version)
    assert not caplog.records
    assert capfd.readouterr() == ("", "")
