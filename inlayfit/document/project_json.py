"""A state as plain JSON values and back, every value checked on the way in.

A `ProjectError` from here names the place of the first wrong value in the words of the file
("outlines[2].contours[0].points is missing"); `project_file` makes a whole sentence of it.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import fields
from enum import Enum
from typing import TYPE_CHECKING, Any, TypeVar

import numpy as np

from inlayfit.bench.milling import Milling
from inlayfit.bench.stack import BARE, BuildUp
from inlayfit.document.made_plug import MadePlug
from inlayfit.document.outlines import Outline, region_of_contours
from inlayfit.document.pocket_readings import PocketReadings
from inlayfit.document.state import (
    Facing,
    Fitting,
    HalfName,
    SettingsUsed,
    Source,
    StackNumbers,
    State,
    Trial,
)
from inlayfit.document.worded_json import worded_from_json, worded_to_json
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.errors import ProjectError, SpecError
from inlayfit.finding import Finding, Severity
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief, Seating, WallChoice
from inlayfit.geometry.path import Bezier, Path
from inlayfit.units import Unit
from inlayfit.wording import Worded

if TYPE_CHECKING:
    from inlayfit.fit.measured import Reading

E = TypeVar("E", bound=Enum)
T = TypeVar("T")
Json = dict[str, Any]
_LARGEST_MM = 1e6


def state_to_json(state: State) -> Json:
    """The state as JSON values."""
    source = state.source
    return {
        "unit": state.unit.name,
        "source": {"path": source.path, "sha256": source.sha256, "size_bytes": source.size_bytes},
        "settings": _settings_to_json(state.settings),
        "chosen": list(state.chosen),
        "fittings": [_fitting_to_json(fitting) for fitting in state.fittings],
        "workshop": _workshop_to_json(state.workshop),
        "outlines": [_outline_to_json(outline) for outline in state.outlines],
        "findings": [_finding_to_json(finding) for finding in state.findings],
        "trials": [
            {
                "outline": trial.outline_id,
                "clearance_mm": trial.clearance_mm,
                "feel": trial.feel,
                "measured_mm": trial.measured_mm,
            }
            for trial in state.trials
        ],
    }


def _outline_to_json(outline: Outline) -> Json:
    """Where an outline came from is written only if that is not the document's own drawing."""
    record: Json = {"id": outline.id, "name": outline.name, "layer": outline.layer}
    if outline.drawn_as:
        record["drawn_as"] = outline.drawn_as
    if outline.drawing:
        record["drawing"] = outline.drawing
    return {**record, "contours": [_path_to_json(path) for path in outline.contours]}


def _workshop_to_json(numbers: WorkshopNumbers) -> Json:
    return {
        "errors": {each.name: getattr(numbers.errors, each.name) for each in fields(MachineErrors)},
        "depth_per_pass_mm": numbers.depth_per_pass_mm,
        "floor_allowance_mm": numbers.floor_allowance_mm,
        "floor_fillet_mm": numbers.floor_fillet_mm,
        "milling": None if numbers.milling is None else numbers.milling.value,
    }


def _workshop(at: _At) -> WorkshopNumbers:
    errors = at.child("errors")
    return WorkshopNumbers(
        MachineErrors(**{each.name: errors.number(each.name) for each in fields(MachineErrors)}),
        depth_per_pass_mm=at.number("depth_per_pass_mm"),
        floor_allowance_mm=at.number("floor_allowance_mm"),
        milling=None if at.value("milling") is None else at.valued("milling", Milling),
        floor_fillet_mm=at.number("floor_fillet_mm"),
    )


def _fitting_to_json(fitting: Fitting) -> Json:
    """Readings are written only if a pocket was measured, a coating only if there is one."""
    stack = fitting.stack
    record: Json = {
        "outline": fitting.outline_id,
        "clearance_mm": fitting.spec.clearance_mm,
        "pocket": _half_to_json(fitting.pocket, fitting.spec.pocket),
        "plug": _half_to_json(fitting.plug, fitting.spec.plug),
        "stack": {
            "depth_mm": stack.depth_mm,
            "insert_mm": stack.plug_mm,  # the name of version 1
            "glue_mm": stack.glue_mm,
            "glue": stack.glue,
            "target_proud_mm": stack.target_proud_mm,
            "spread_mm": stack.spread_mm,
        },
        "facing": fitting.facing.value,
        "made_plug": None
        if fitting.made is None
        else {"outline": fitting.made.outline_id, "seating": fitting.made.seating.value},
    }
    if stack.coating != BARE:
        record["stack"]["coating"] = {
            each.name: getattr(stack.coating, each.name) for each in fields(BuildUp)
        }
    if fitting.readings is not None:
        record["readings"] = _readings_to_json(fitting.readings)
    return record


def _readings_to_json(readings: PocketReadings) -> Json:
    """What was read; what it says of the pocket follows from it."""
    return {
        "repeatability_mm": readings.repeatability_mm,
        "stations": [
            {"axis": each.axis.value, "nominal_mm": each.nominal_mm, "measured_mm": each.measured_mm}
            for each in readings.readings
        ],
    }


def _finding_to_json(finding: Finding) -> Json:
    worded = {
        "message_worded": worded_to_json(finding.message),
        "remedy_worded": worded_to_json(finding.remedy),
    }
    return finding.to_json() | {key: record for key, record in worded.items() if record is not None}


def _half_to_json(name: HalfName, spec: HalfSpec) -> Json:
    return {
        "name": name.name,
        "material": name.material,
        "state": spec.state.value,
        "cutter_mm": spec.cutter_mm,
        "kerf_mm": spec.kerf_mm,
        "relief": spec.relief.value,
        "finishing_allowance_mm": spec.finishing_allowance_mm,
        "kerf_taper_mm": spec.kerf_taper_mm,
        "corner_cutter_mm": spec.corner_cutter_mm,
        "t_bone_wall": spec.t_bone_wall.value,
        "edge_break_mm": spec.edge_break_mm,
    }


def _path_to_json(path: Path) -> Json:
    record: Json = {"points": path.vertices.tolist()}
    if path.bulges.any():
        record["bulges"] = {str(i): float(path.bulges[i]) for i in np.flatnonzero(path.bulges).tolist()}
    if path.curves:
        record["curves"] = {str(i): _curve_to_json(curve) for i, curve in sorted(path.curves.items())}
    if not path.closed:
        record["closed"] = False
    return record


def _curve_to_json(curve: Bezier) -> Json:
    record: Json = {"control": curve.control.tolist()}
    if curve.weights is not None:
        record["weights"] = curve.weights.tolist()
    return record


def state_from_json(record: Json) -> State:
    """The state that JSON values mean; ProjectError if they mean none."""
    at = _At(record, "")
    source, settings = at.child("source"), at.child("settings")
    try:
        return State(
            source=Source(source.text("path"), source.text("sha256"), source.whole("size_bytes")),
            outlines=tuple(at.each("outlines", _outline)),
            fittings=tuple(at.each("fittings", _fitting)),
            chosen=tuple(at.texts("chosen")),
            unit=at.named("unit", Unit),
            findings=tuple(at.each("findings", _finding)),
            settings=_settings(settings),
            trials=tuple(at.each("trials", _trial)),
            workshop=_workshop(at.child("workshop")),
        )
    except ProjectError:
        raise
    except (ValueError, SpecError) as error:
        raise ProjectError(str(error).rstrip(".")) from error


def _settings_to_json(settings: SettingsUsed) -> Json:
    """What a person chose about reading is written only if they chose."""
    record: Json = {"gap_mm": settings.gap_mm, "strokes_as_areas": settings.strokes_as_areas}
    if settings.unit is not None:
        record["unit"] = settings.unit.name
    if settings.layers is not None:
        record["layers"] = list(settings.layers)
    return record


def _settings(at: _At) -> SettingsUsed:
    return SettingsUsed(
        at.number("gap_mm"),
        at.switch("strokes_as_areas"),
        at.named("unit", Unit) if "unit" in at.record else None,
        tuple(at.texts("layers")) if "layers" in at.record else None,
    )


def _outline(at: _At) -> Outline:
    contours = tuple(at.each("contours", _path))
    if not contours:
        raise at.fault("contours", Worded("is empty"))
    region = region_of_contours(contours)
    if region.is_empty:
        raise at.fault("contours", Worded("enclose nothing"))
    drawn_as, drawing = (at.text(key) if key in at.record else "" for key in ("drawn_as", "drawing"))
    return Outline(at.text("id"), at.text("name"), at.text("layer"), region, contours, drawn_as, drawing)


def _path(at: _At) -> Path:
    points = at.points("points", least=1)
    closed = at.switch("closed") if "closed" in at.record else True
    count = len(points) if closed else len(points) - 1
    bulges = np.zeros(count)
    for number, value in at.numbered("bulges", count):
        bulges[number] = at.checked("bulges", value)
    curves = {}
    for number, value in at.numbered("curves", count):
        curve_at = _At(value, f"{at.place}.curves[{number}]")
        curves[number] = _curve(curve_at)
    return Path(points, bulges, closed, curves)


def _curve(at: _At) -> Bezier:
    control = at.points("control", least=2)
    if "weights" not in at.record:
        return Bezier(control)
    weights = np.array(at.numbers("weights"))
    if len(weights) != len(control) or not (weights > 0).all():
        raise at.fault("weights", Worded("must be one positive number a point"))
    return Bezier(control, weights)


def _fitting(at: _At) -> Fitting:
    pocket, plug, stack = at.child("pocket"), at.child("plug"), at.child("stack")
    return Fitting(
        outline_id=at.text("outline"),
        spec=FitSpec(at.number("clearance_mm"), _half(pocket), _half(plug)),
        pocket=HalfName(pocket.text("name"), pocket.text("material")),
        plug=HalfName(plug.text("name"), plug.text("material")),
        stack=StackNumbers(
            depth_mm=stack.number("depth_mm"),
            plug_mm=stack.number("insert_mm"),
            glue_mm=stack.number("glue_mm"),
            glue=stack.text("glue"),
            target_proud_mm=stack.number("target_proud_mm"),
            spread_mm=stack.number("spread_mm"),
            coating=_coating(stack.child("coating")) if "coating" in stack.record else BARE,
        ),
        facing=at.valued("facing", Facing),
        made=None if at.value("made_plug") is None else _made_plug(at.child("made_plug")),
        readings=_readings(at.child("readings")) if "readings" in at.record else None,
    )


def _coating(at: _At) -> BuildUp:
    return BuildUp(**{each.name: at.number(each.name) for each in fields(BuildUp)})


def _readings(at: _At) -> PocketReadings:
    return PocketReadings(tuple(at.each("stations", _reading)), at.number("repeatability_mm"))


def _reading(at: _At) -> Reading:
    from inlayfit.fit.measured import Axis, Reading  # heavy; few projects have any

    return Reading(at.valued("axis", Axis), at.number("nominal_mm"), at.number("measured_mm"))


def _made_plug(at: _At) -> MadePlug:
    return MadePlug(at.text("outline"), at.valued("seating", Seating))


def _half(at: _At) -> HalfSpec:
    return HalfSpec(
        cutter_mm=at.number("cutter_mm"),
        state=at.valued("state", HalfState),
        relief=at.valued("relief", Relief),
        finishing_allowance_mm=at.number("finishing_allowance_mm"),
        kerf_mm=at.number("kerf_mm"),
        kerf_taper_mm=at.number("kerf_taper_mm"),
        corner_cutter_mm=at.number("corner_cutter_mm"),
        t_bone_wall=at.valued("t_bone_wall", WallChoice),
        edge_break_mm=at.number("edge_break_mm"),
    )


def _finding(at: _At) -> Finding:
    place = None if at.record.get("place_mm") is None else at.numbers("place_mm")
    if place is not None and len(place) != 2:
        raise at.fault("place_mm", Worded("must be two numbers"))
    return Finding(
        code=at.text("code"),
        severity=at.valued("severity", Severity),
        message=worded_from_json(at.text("message"), at.record.get("message_worded")),
        remedy=worded_from_json(at.text("remedy"), at.record.get("remedy_worded")),
        place_mm=None if place is None else (place[0], place[1]),
        fixed=at.switch("fixed"),
    )


def _trial(at: _At) -> Trial:
    measured = None if at.record.get("measured_mm") is None else at.number("measured_mm")
    return Trial(at.text("outline"), at.number("clearance_mm"), at.text("feel"), measured)


class _At:
    """A JSON object and where it stands, with checked ways to its values."""

    def __init__(self, record: object, place: str) -> None:
        if not isinstance(record, dict):
            raise ProjectError(Worded("{place} is not a record", place=place or Worded("the file")))
        self.record: Mapping[str, Any] = record
        self.place = place

    def fault(self, key: str, what: Worded) -> ProjectError:
        return ProjectError(Worded("{place} {what}", place=self._path(key), what=what))

    def child(self, key: str) -> _At:
        return _At(self._get(key), self._path(key))

    def text(self, key: str) -> str:
        value = self._get(key)
        if not isinstance(value, str):
            raise self.fault(key, Worded("is not a text"))
        return value

    def switch(self, key: str) -> bool:
        value = self._get(key)
        if not isinstance(value, bool):
            raise self.fault(key, Worded("is neither true nor false"))
        return value

    def whole(self, key: str) -> int:
        value = self._get(key)
        if type(value) is not int or value < 0:
            raise self.fault(key, Worded("is not a whole number"))
        return value

    def number(self, key: str) -> float:
        return self.checked(key, self._get(key))

    def numbers(self, key: str) -> list[float]:
        return [self.checked(key, value) for value in self._list(key)]

    def texts(self, key: str) -> list[str]:
        values = self._list(key)
        if not all(isinstance(value, str) for value in values):
            raise self.fault(key, Worded("must be texts"))
        return values

    def points(self, key: str, *, least: int) -> np.ndarray[Any, np.dtype[np.float64]]:
        try:
            points = np.array(self._list(key), dtype=float)
        except (ValueError, TypeError) as error:
            raise self.fault(key, Worded("are not points")) from error
        if points.ndim != 2 or points.shape[1] != 2 or len(points) < least:
            raise self.fault(key, Worded("are not points"))
        if not (np.abs(points) <= _LARGEST_MM).all():
            raise self.fault(key, Worded("lie too far out"))
        return points

    def each(self, key: str, make: Callable[[_At], T]) -> list[T]:
        return [make(_At(item, f"{self._path(key)}[{i}]")) for i, item in enumerate(self._list(key))]

    def numbered(self, key: str, count: int) -> list[tuple[int, Any]]:
        """Items of an object whose keys are segment numbers below `count`; none if it is missing."""
        items = self.record.get(key, {})
        if not isinstance(items, dict):
            raise self.fault(key, Worded("is not a record"))
        if not all(k.isascii() and k.isdigit() and int(k[:9]) < count for k in items):
            raise self.fault(key, Worded("name a segment that is not there"))
        return [(int(k), value) for k, value in items.items()]

    def valued(self, key: str, kind: type[E]) -> E:
        try:
            return kind(self.text(key))
        except ValueError as error:
            raise self.fault(key, Worded("is not a word known here")) from error

    def named(self, key: str, kind: type[E]) -> E:
        try:
            return kind[self.text(key)]
        except KeyError as error:
            raise self.fault(key, Worded("is not a word known here")) from error

    def checked(self, key: str, value: object) -> float:
        is_number = isinstance(value, int | float) and not isinstance(value, bool)
        if not is_number or not math.isfinite(value) or abs(value) > _LARGEST_MM:  # type: ignore[arg-type]
            raise self.fault(key, Worded("is not a number that makes sense"))
        return float(value)  # type: ignore[arg-type]  # checked above

    def value(self, key: str) -> Any:
        """Whatever stands there."""
        return self._get(key)

    def _list(self, key: str) -> list[Any]:
        value = self._get(key)
        if not isinstance(value, list):
            raise self.fault(key, Worded("is not a list"))
        return value

    def _get(self, key: str) -> Any:
        if key not in self.record:
            raise self.fault(key, Worded("is missing"))
        return self.record[key]

    def _path(self, key: str) -> str:
        return f"{self.place}.{key}" if self.place else key
