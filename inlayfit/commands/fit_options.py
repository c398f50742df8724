"""The options of `inlayfit fit`, and what they come to: a `FitSpec`, a `Workshop`, readings.

Options that take a length are rows of a table, so that the parser, the reading of negative lengths and the
help all come from one place. An option for one half overrides the one for both.
"""

from __future__ import annotations

import argparse
import re
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

from inlayfit.bench.milling import Milling
from inlayfit.commands.asking import Parser, add_drawing, length, number, parser
from inlayfit.commands.export_options import add_writing
from inlayfit.commands.files import check_is_file
from inlayfit.commands.import_options import VALUE_OPTIONS as IMPORT_VALUES
from inlayfit.commands.import_options import add_reading, add_sizes
from inlayfit.errors import SpecError
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.measured import REPEATABILITY_MM, Axis, PocketModel, Reading, fit_pocket
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief, Seating, WallChoice
from inlayfit.fit.workshop import Workshop

_NOTES = """Lengths take a unit (0.05, 0.05mm, 2 thou, 1/8in); a bare number is millimetres.
A kerf goes to each half whose cutter is 0, or to the plug if neither is; the written
line runs half a kerf off the finished edge, on the side of the waste."""


@dataclass(frozen=True, slots=True)
class _Value:
    """One option that takes a length, or a plain number where its metavar is N."""

    flag: str
    metavar: str
    help: str
    required: bool = False


_HALVES = (
    _Value("--clearance", "C", "gap at one wall; negative is interference", required=True),
    _Value("--pocket-cutter", "D", "measured diameter; 0 for a beam or blade", required=True),
    _Value("--plug-cutter", "D", "measured diameter; 0 for a beam or blade", required=True),
    _Value("--thin", "T", "warn of walls and necks thinner than this"),
)
_CORNERS = (
    _Value("--pocket-corner-cutter", "D", "smaller cutter for what the pocket's leaves in corners"),
    _Value("--plug-corner-cutter", "D", "smaller cutter for what the plug's leaves in corners"),
    _Value("--pocket-edge-break", "W", "width of the chamfer on the pocket's rim"),
    _Value("--plug-edge-break", "W", "width of the chamfer on the plug's lower edge"),
)
_CUTTING = (
    _Value("--finishing-allowance", "A", "stock a roughing pass leaves, per side"),
    _Value("--pocket-allowance", "A", "the same for the pocket alone"),
    _Value("--plug-allowance", "A", "the same for the plug alone"),
    _Value("--floor-allowance", "A", "stock left on the floor for a last pass"),
    _Value("--depth", "D", "depth of the cut"),
    _Value("--depth-per-pass", "D", "most that one pass takes"),
    _Value("--floor-fillet", "R", "radius a worn cutter leaves between wall and floor"),
)
_BEAM = (
    _Value("--kerf", "K", "width of a beam's or blade's cut, see below"),
    _Value("--kerf-taper", "T", "how much wider it is on the show side than on the bed side"),
)
_ERRORS = (
    _Value("--cutter-nominal", "D", "diameter the path is reckoned with, if not the measured one"),
    _Value("--cutter-varies", "E", "± with which a cutter's diameter is known"),
    _Value("--runout", "E", "total reading of a dial gauge on the turning cutter"),
    _Value("--repeatability", "E", "± with which the width of one half comes out again"),
    _Value("--thickness-varies", "E", "± of the stock's thickness, for walls that lean"),
    _Value("--temperature-varies", "K", "± in kelvin"),
    _Value("--expansion-difference", "N", "plug less host, per kelvin"),
)
_READINGS = (_Value("--reading-repeats", "E", "± with which one reading comes out again"),)
_VALUES = (*_HALVES, *_CORNERS, *_CUTTING, *_BEAM, *_ERRORS, *_READINGS)

VALUE_OPTIONS = frozenset({option.flag for option in _VALUES} | IMPORT_VALUES)
"""Options whose value may begin with a minus."""

_READING = re.compile(r"\s*([xXyY])\s*[: ]\s*([^=]+)=([^=]+)")


def fit_parser(*, file_first: bool) -> Parser:
    """Behind FILE, `--outline` takes all ids that follow; before it only one, which FILE is not."""
    asking = parser(
        "inlayfit fit", "Solve the fit of each outline and write both halves, ready to cut.", epilog=_NOTES
    )
    add_drawing(asking, may_lack=True)
    add_sizes(asking)
    add_reading(asking)
    _ids(asking, "--outline", "only these outlines; can be repeated", many=file_first)
    asking.add_argument("--out", required=True, type=Path, metavar="DIR", help="folder for the files")
    halves = _group(asking, "the two halves", _HALVES)
    for half in ("pocket", "plug"):
        _choice(halves, f"--{half}-state", HalfState, f"may the {half} still change?", default="to-cut")
    made = asking.add_argument_group("two halves that are made")
    made.add_argument("--plug-drawing", type=Path, metavar="FILE", help="drawing of the plug that exists")
    _ids(made, "--plug-outline", "its outline for each pocket, in order", many=file_first)
    _choice(made, "--seat", Seating, "how the plug may move to where it sits best", default="shift")
    corners = _group(asking, "corners and edges", _CORNERS)
    _choice(corners, "--relief", Relief, "corners no cutter can reach", default="rounded")
    for half in ("pocket", "plug"):
        _choice(corners, f"--{half}-relief", Relief, f"the same for the {half} alone")
    _choice(corners, "--t-bone-wall", WallChoice, "wall a T-bone bites into", default="long")
    cutting = _group(asking, "cutting", _CUTTING)
    _choice(cutting, "--cut", Milling, "direction of the written contours")
    beam = _group(asking, "beam or blade", _BEAM)
    beam.add_argument(
        "--kerf-face", choices=("show", "bed"), default="show", help="side the kerf was measured on"
    )
    _group(asking, "errors of the machine", _ERRORS)
    readings = _group(asking, "a pocket that was measured", _READINGS)
    readings.add_argument(
        "--measured", action="append", metavar="'X N=M'", help="drawn and read width along X or Y; repeat"
    )
    readings.add_argument(
        "--readings", type=Path, metavar="FILE", help="table of them: axis, drawn and read width a line"
    )
    add_writing(asking)
    return asking


def _group(asking: Parser, title: str, options: tuple[_Value, ...]) -> argparse._ArgumentGroup:
    group = asking.add_argument_group(title)
    for option in options:
        group.add_argument(option.flag, metavar=option.metavar, help=option.help, required=option.required)
    return group


def _ids(group: argparse._ActionsContainer, flag: str, text: str, *, many: bool) -> None:
    group.add_argument(flag, action="extend", nargs="+" if many else 1, metavar="ID", help=text)


def _choice(
    group: argparse._ArgumentGroup,
    flag: str,
    words: type[StrEnum],
    text: str,
    *,
    default: str | None = None,
) -> None:
    group.add_argument(flag, choices=[word.value for word in words], default=default, help=text)


class _Lengths:
    """The typed lengths, each read when it is asked for."""

    def __init__(self, asked: argparse.Namespace) -> None:
        self._asked = asked

    def __call__(self, flag: str, otherwise: float = 0.0) -> float:
        text = getattr(self._asked, flag.removeprefix("--").replace("-", "_"))
        return otherwise if text is None else length(text, flag)


def fit_spec(asked: argparse.Namespace) -> FitSpec:
    """What is asked of the fit.

    Raises:
        LengthError: a length is not one clear length.
        SpecError: the numbers contradict each other.
    """
    lengths = _Lengths(asked)
    pocket_mm, plug_mm = lengths("--pocket-cutter"), lengths("--plug-cutter")
    taper = lengths("--kerf-taper")
    kerf = lengths("--kerf")
    if taper and not kerf:
        raise SpecError("A kerf's taper needs the kerf too; give its width with --kerf.")
    if asked.kerf_face == "bed":
        kerf += taper
    # A beam or blade has no cutter. Where both halves have one, the kerf is that of the sheet: the plug's.
    pocket_kerf = 0.0 if pocket_mm else kerf
    plug_kerf = 0.0 if plug_mm and pocket_kerf else kerf
    both = lengths("--finishing-allowance")

    def half(name: str, cutter_mm: float, kerf_mm: float) -> HalfSpec:
        return HalfSpec(
            cutter_mm,
            HalfState(getattr(asked, f"{name}_state")),
            Relief(getattr(asked, f"{name}_relief") or asked.relief),
            finishing_allowance_mm=lengths(f"--{name}-allowance", both),
            kerf_mm=kerf_mm,
            kerf_taper_mm=taper if kerf_mm else 0.0,
            corner_cutter_mm=lengths(f"--{name}-corner-cutter"),
            t_bone_wall=WallChoice(asked.t_bone_wall),
            edge_break_mm=lengths(f"--{name}-edge-break"),
        )

    pocket, plug = half("pocket", pocket_mm, pocket_kerf), half("plug", plug_mm, plug_kerf)
    clearance = lengths("--clearance")
    return FitSpec(clearance, pocket, plug, thin_mm=lengths("--thin", FitSpec(clearance).thin_mm))


def workshop(asked: argparse.Namespace) -> Workshop:
    """What is known about the cutting.

    Raises:
        LengthError, SpecError: as `fit_spec`.
    """
    lengths = _Lengths(asked)
    warmth, expansion = asked.temperature_varies, asked.expansion_difference
    errors = MachineErrors(
        cutter_nominal_mm=lengths("--cutter-nominal"),
        cutter_varies_mm=lengths("--cutter-varies"),
        runout_mm=lengths("--runout"),
        repeatability_mm=lengths("--repeatability"),
        thickness_varies_mm=lengths("--thickness-varies"),
        temperature_varies_k=number(warmth, "--temperature-varies") if warmth else 0.0,
        expansion_difference_per_k=number(expansion, "--expansion-difference") if expansion else 0.0,
    )
    return Workshop(
        errors,
        depth_mm=lengths("--depth"),
        depth_per_pass_mm=lengths("--depth-per-pass"),
        floor_allowance_mm=lengths("--floor-allowance"),
        milling=None if asked.cut is None else Milling(asked.cut),
        floor_fillet_mm=lengths("--floor-fillet"),
    )


def pocket_model(asked: argparse.Namespace) -> PocketModel | None:
    """What the readings say of the pocket; None without readings.

    Raises:
        SpecError: the readings cannot tell, or one is not of the form "X 40=40.052".
        ReadError: the table of readings cannot be used.
    """
    readings = [_reading(text) for text in asked.measured or ()]
    if asked.readings is not None:
        readings += _table(asked.readings)
    if not readings:
        return None
    repeats = _Lengths(asked)("--reading-repeats", REPEATABILITY_MM)
    return fit_pocket(readings, repeatability_mm=repeats)


def _table(path: Path) -> list[Reading]:
    from inlayfit.formats.readings_read import read_readings

    check_is_file(path)
    where = f"--readings, line {{}} of “{path.name}”"
    return [
        Reading(
            Axis(row.axis),
            length(row.drawn, where.format(row.line)),
            length(row.read, where.format(row.line)),
        )
        for row in read_readings(path)
    ]


def _reading(text: str) -> Reading:
    found = _READING.fullmatch(text)
    if found is None:
        raise SpecError(
            f"--measured: “{text[:40]}” is not a reading; type the axis, the drawn width and the width read, "
            'such as "X 40=40.052".'
        )
    axis, nominal, measured = found.groups()
    return Reading(Axis(axis.upper()), length(nominal, "--measured"), length(measured, "--measured"))
