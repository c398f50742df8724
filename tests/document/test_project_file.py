from __future__ import annotations

import difflib
import json
import math
from pathlib import Path as FilePath
from typing import Any

import pytest
from hypothesis import given

from inlayfit.bench.milling import Milling
from inlayfit.document import edits, migrate
from inlayfit.document.in_unit import text_in_unit
from inlayfit.document.made_plug import MadePlug
from inlayfit.document.project_file import from_bytes, load_project, save_project, to_bytes
from inlayfit.document.project_kind import looks_like_project
from inlayfit.document.state import State
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.errors import ProjectError
from inlayfit.fit.spec import Seating
from inlayfit.units import Unit
from tests.document.states import documents
from tests.strategies import examples

OLD = FilePath(__file__).parent.parent / "old_projects"


@given(documents())
@examples(60, 400)
def test_read_after_write_is_the_same_document(state: State) -> None:
    data = to_bytes(state)
    back = from_bytes(data)
    assert back == state
    assert to_bytes(back) == data
    assert looks_like_project(data)


@given(documents(least=1))
@examples(20, 100)
def test_one_number_is_one_line_of_difference(state: State) -> None:
    one = edits.choose(state, [state.outlines[0].id]).state
    other = edits.set_clearance(one, one.fittings[0].spec.clearance_mm + 0.5).state
    lines = list(difflib.ndiff(to_bytes(one).decode().splitlines(), to_bytes(other).decode().splitlines()))
    assert len([line for line in lines if line.startswith("- ")]) == 1


def test_a_project_stays_small(tmp_path: FilePath) -> None:
    """A thousand vertices stay below 60 bytes each."""
    from inlayfit.document.state import Fitting
    from inlayfit.geometry.path import Path
    from tests.document.states import outline

    points = [(20 * math.cos(a), 20 * math.sin(a)) for a in (2 * math.pi * i / 1000 for i in range(1000))]
    state = State(outlines=(outline(0, (Path.polyline(points),)),), fittings=(Fitting("o0"),), chosen=("o0",))
    save_project(state, tmp_path / "a.inlayfit")
    assert (tmp_path / "a.inlayfit").stat().st_size < 60_000
    assert load_project(tmp_path / "a.inlayfit") == state


@pytest.mark.parametrize(
    "content",
    [b"", b"{", b"[]", b"null", b"\x00\x01", b'{"format": "other"}', b"<svg/>", b"[" * 100_000],
)
def test_what_is_no_project_is_refused_in_one_sentence(content: bytes) -> None:
    with pytest.raises(ProjectError, match="not a project file"):
        from_bytes(content, name="thing.inlayfit")


def test_a_newer_version_is_refused_with_what_to_do() -> None:
    record = {"format": "inlayfit project", "version": migrate.CURRENT_VERSION + 1}
    with pytest.raises(ProjectError, match="newer version"):
        from_bytes(json.dumps(record).encode())


@pytest.mark.parametrize("version", [None, 0, -1, "1", 1.5, True])
def test_a_version_that_is_none_is_refused(version: object) -> None:
    with pytest.raises(ProjectError, match="which version"):
        from_bytes(json.dumps({"format": "inlayfit project", "version": version}).encode())


def _record() -> dict[str, Any]:
    name = f"version-{migrate.CURRENT_VERSION}.inlayfit"
    record: dict[str, Any] = json.loads((OLD / name).read_bytes())
    return record


KEPT: list[str | int] = ["fittings", 0, "readings"]
STATIONS = [
    {"axis": axis, "nominal_mm": nominal, "measured_mm": nominal + 0.04}
    for axis in ("X", "Y")
    for nominal in (24.0, 8.0)
]

UNTOLD: list[list[dict[str, Any]]] = [
    [],
    STATIONS[:3],
    STATIONS * 11,
    [{**station, "axis": "Z"} for station in STATIONS],
    [{**station, "nominal_mm": 5} for station in STATIONS],
    [{**station, "measured_mm": -1} for station in STATIONS],
]
"""Readings that cannot tell."""

WRONG: list[tuple[list[str | int], Any]] = [
    (["unit"], "FURLONG"),
    (["outlines"], {}),
    (["outlines", 0, "id"], 5),
    (["outlines", 0, "contours"], []),
    (["outlines", 0, "contours", 0, "points"], [[0, 0], [1]]),
    (["outlines", 0, "contours", 0, "points"], [[0, 0], [1e300, 1]]),
    (["outlines", 0, "contours", 0, "points"], "many"),
    (["outlines", 0, "contours", 0, "points"], [[0, 0], [1, 0]]),
    (["outlines", 0, "contours", 0, "bulges"], {"99": 1.0}),
    (["outlines", 0, "contours", 0, "bulges"], {"-1": 1.0}),
    (["outlines", 0, "contours", 0, "bulges"], {"0": "round"}),
    (["outlines", 0, "contours", 0, "curves"], {"0": {"control": [[0, 0]]}}),
    (["fittings"], []),
    (["fittings", 0, "clearance_mm"], 1e9),
    (["fittings", 0, "clearance_mm"], None),
    (["fittings", 0, "plug", "cutter_mm"], -3),
    (["fittings", 0, "plug", "state"], "melted"),
    (["chosen"], ["nobody"]),
    (["chosen"], [1]),
    (["source", "size_bytes"], -1),
    (["trials"], None),
    (["fittings", 0, "made_plug"], {"outline": "nobody", "seating": "shift"}),
    (["fittings", 0, "made_plug"], {"outline": "foot", "seating": "shift"}),
    (["fittings", 0, "made_plug"], {"outline": "disc", "seating": "thrown"}),
    (["fittings", 0, "made_plug"], "disc"),
    (["fittings", 0, "plug", "t_bone_wall"], "middle"),
    (["workshop"], None),
    (["workshop", "milling"], "sideways"),
    (["workshop", "depth_per_pass_mm"], -1),
    (["workshop", "errors", "runout_mm"], -0.1),
    (["workshop", "errors", "temperature_varies_k"], 5),
    (["outlines", 0, "drawn_as"], 3),
    (KEPT, None),
    (KEPT, {"stations": STATIONS}),
    *((KEPT, {"stations": stations, "repeatability_mm": 0.01}) for stations in UNTOLD),
    (KEPT, {"stations": STATIONS, "repeatability_mm": 0}),
]


@pytest.mark.parametrize(("where", "value"), WRONG)
def test_a_wrong_value_is_refused_and_its_place_named(where: list[str | int], value: Any) -> None:
    record = _record()
    at: Any = record
    for key in where[:-1]:
        at = at[key]
    at[where[-1]] = value
    with pytest.raises(ProjectError, match=r"damaged: .*; restore an earlier copy\.$"):
        from_bytes(json.dumps(record).encode())


def test_not_a_number_is_refused() -> None:
    data = (OLD / "version-1.inlayfit").read_bytes().replace(b'"clearance_mm": 0.05', b'"clearance_mm": NaN')
    with pytest.raises(ProjectError):
        from_bytes(data)


def test_any_missing_key_is_refused_never_a_traceback() -> None:
    def paths(value: Any, here: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
        found = []
        if isinstance(value, dict):
            for key, inner in value.items():
                found += [(*here, key), *paths(inner, (*here, key))]
        elif isinstance(value, list):
            for i, inner in enumerate(value):
                found += paths(inner, (*here, i))
        return found

    for path in paths(_record()):
        record = _record()
        at: Any = record
        for key in path[:-1]:
            at = at[key]
        del at[path[-1]]
        try:
            from_bytes(json.dumps(record).encode())
        except ProjectError:
            continue
        assert path[-1] in {
            "bulges",
            "curves",
            "closed",
            "weights",
            "measured_mm",
            "place_mm",
            "drawn_as",
            "drawing",
            "0",
            "1",
            "2",
        }, path


def test_there_is_an_old_file_for_every_version_and_each_opens() -> None:
    for version in range(1, migrate.CURRENT_VERSION + 1):
        state = load_project(OLD / f"version-{version}.inlayfit")
        assert state.unit is Unit.MM
        assert len(state.outlines) == 2
        assert state.fittings[0].spec.clearance_mm == 0.05
        assert state.outlines[0].contours[0].curves
        assert state.outlines[1].contours[0].bulges.all()
    assert set(migrate.STEPS) == set(range(1, migrate.CURRENT_VERSION))


def test_an_older_project_knows_no_made_plug_and_no_errors() -> None:
    state = load_project(OLD / "version-1.inlayfit")
    assert all(fitting.made is None for fitting in state.fittings)
    assert state.workshop == WorkshopNumbers()


def test_a_project_without_readings_has_none_and_writes_none() -> None:
    for version in range(1, migrate.CURRENT_VERSION + 1):
        state = load_project(OLD / f"version-{version}.inlayfit")
        assert all(fitting.readings is None for fitting in state.fittings)
        assert b"readings" not in to_bytes(state)


def test_readings_of_a_saved_project_come_back_with_what_they_say() -> None:
    record = _record()
    record["fittings"][0]["readings"] = {"stations": STATIONS, "repeatability_mm": 0.02}
    readings = from_bytes(json.dumps(record).encode()).fittings[0].readings
    assert readings is not None
    assert [(r.axis.value, r.nominal_mm, r.measured_mm) for r in readings.readings] == [
        tuple(station.values()) for station in STATIONS
    ]
    assert readings.repeatability_mm == 0.02
    assert readings.model.offset_x_mm == pytest.approx(0.04)
    assert readings.model.scale_y == pytest.approx(0, abs=1e-9)


def test_made_plug_and_errors_of_a_saved_project_come_back() -> None:
    state = load_project(OLD / "version-2.inlayfit")
    assert state.fittings[0].made == MadePlug("disc", Seating.TURN)
    assert state.workshop.errors.runout_mm == 0.02
    assert state.workshop.milling is Milling.CLIMB
    assert state.outlines[1].id_there == "o1"
    assert state.outlines[1].drawing == "plug.dxf"


def test_a_failed_save_leaves_the_old_file(tmp_path: FilePath) -> None:
    from inlayfit.errors import WriteError

    target = tmp_path / "missing" / "a.inlayfit"
    with pytest.raises(WriteError):
        save_project(State(), target)
    good = tmp_path / "a.inlayfit"
    save_project(State(), good)
    before = good.read_bytes()
    tmp_path.chmod(0o500)
    try:
        if not _can_write(tmp_path):  # root may write anywhere
            with pytest.raises(WriteError):
                save_project(State(unit=Unit.INCH), good)
            assert good.read_bytes() == before
    finally:
        tmp_path.chmod(0o700)


def _can_write(folder: FilePath) -> bool:
    import os

    return os.access(folder, os.W_OK)


def test_a_file_that_is_not_there_is_said_so(tmp_path: FilePath) -> None:
    with pytest.raises(ProjectError, match="was not opened"):
        load_project(tmp_path / "none.inlayfit")


def test_notes_on_a_drawing_can_still_be_said_in_another_unit_when_reopened(tmp_path: FilePath) -> None:
    from inlayfit.document.imports import import_drawing

    drawing = tmp_path / "gap.svg"
    drawing.write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" width="80mm" height="60mm" viewBox="0 0 80 60">'
        '<path d="M50 40 H70 V55 H50 V40.005" fill="none" stroke="#000"/></svg>',
        encoding="utf-8",
    )
    state = State(findings=import_drawing(drawing).findings)
    reopened = from_bytes(to_bytes(state), name="gap.inlayfit")
    (gap,) = [f.message for f in reopened.findings if f.code == "gap-closed"]
    shown = text_in_unit(gap, Unit.THOU).replace("\N{NO-BREAK SPACE}", " ")
    assert shown == "A gap of 0.2 thou at (1968.5, 787.3) thou was closed."


@pytest.mark.parametrize("share", [0.2, 0.5, 0.99])
def test_a_project_that_is_cut_off_is_called_damaged_and_not_something_else(share: float) -> None:
    data = to_bytes(State())
    with pytest.raises(ProjectError, match=r"damaged: it ends in the middle.*; restore an earlier copy\.$"):
        from_bytes(data[: int(len(data) * share)])
