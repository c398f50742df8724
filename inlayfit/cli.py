"""The command line: the same flow as the window, without one.

    inlayfit [FILE…]            opens the window
    inlayfit demo --out DIR     the whole job on the shipped sample
    inlayfit inspect FILE       the outlines a drawing holds
    inlayfit fit FILE …         solves and writes the outlines

What the person asked for goes to stdout; with `--json` that is one JSON object and nothing else. What
went wrong goes to stderr, in one sentence that says what to do. Exit 0: done. 1: the work found a
blocking problem. 2: wrong usage, or a file that cannot be read or written. 130: stopped from the
keyboard. No traceback reaches a person; set INLAYFIT_TRACEBACK=1 to see one.

Everything heavy is imported inside the command that needs it, argparse too: `inlayfit --version` answers
in about the time Python takes to start.
"""

from __future__ import annotations

import os
import sys

from inlayfit import __version__

_COMMANDS = """commands:
  inlayfit [FILE …]          open the window
  inlayfit demo --out DIR    the whole job on the sample tea trays
  inlayfit inspect FILE      the outlines a drawing holds
  inlayfit fit FILE …        solve and write the outlines

Each command explains itself with --help. Exit code: 0 done, 1 the work found a blocking problem,
2 wrong usage or a file that cannot be read or written."""

_FIT_NOTES = """Lengths take a unit (0.05, 0.05mm, 2 thou, 1/8in); a bare number is millimetres.
A kerf goes to each half whose cutter is 0, or to the plug if neither is; the written
line runs half a kerf off the finished edge, on the side of the waste."""

TYPE_CHECKING = False  # typing itself would cost a third of the time that `--version` takes
if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable, Sequence
    from pathlib import Path
    from typing import Any, NoReturn, TextIO

    from inlayfit.document.imports import Imported, Outline
    from inlayfit.fit.spec import FitSpec
    from inlayfit.units import Unit

DONE, BLOCKED, WRONG, STOPPED = 0, 1, 2, 130
_LENGTH_OPTIONS = ("--clearance", "--pocket-cutter", "--plug-cutter", "--finishing-allowance", "--kerf")
_PLAIN = str.maketrans({"−": "-", "–": "-", "“": '"', "”": '"', "×": "x", "µ": "u", "²": "2", "…": "..."})


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command; the exit code is the answer."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    try:
        code = _version() if arguments == ["--version"] else _answer(arguments)
        sys.stdout.flush()
    except KeyboardInterrupt:
        return _complain("Stopped; no file is half-written. Start the command again to go on.", STOPPED)
    except BrokenPipeError:
        # Whoever reads our output has seen enough; nothing may complain when Python closes stdout.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return DONE
    except Exception as error:  # noqa: BLE001 - the last line: no traceback reaches a person
        return _complain(_sentence(error))
    return code


def _answer(arguments: list[str]) -> int:
    commands: dict[str, Callable[[list[str]], int]] = {"demo": _demo, "inspect": _inspect, "fit": _fit}
    command = commands.get(arguments[0]) if arguments else None
    try:
        return command(arguments[1:]) if command else _window(arguments)
    except SystemExit as leaving:  # argparse, after --help or a complaint
        return leaving.code if isinstance(leaving.code, int) else WRONG


def _version() -> int:
    _say(f"inlayfit {__version__}")
    return DONE


# --- what is said ------------------------------------------------------------------------------------


def _say(text: str, stream: TextIO | None = None) -> None:
    """One or more lines; a terminal that lacks a character gets the nearest plain one."""
    stream = stream or sys.stdout
    encoding = stream.encoding or "ascii"
    try:
        text.encode(encoding)
    except UnicodeEncodeError:
        text = text.translate(_PLAIN).encode(encoding, "replace").decode(encoding)
    print(text, file=stream)


def _complain(sentence: str, code: int = WRONG) -> int:
    _say(f"inlayfit: {' '.join(sentence.split())}", sys.stderr)
    return code


def _sentence(error: Exception) -> str:
    """What a person reads of an error."""
    from inlayfit.errors import InlayfitError

    if os.environ.get("INLAYFIT_TRACEBACK"):
        raise error
    if isinstance(error, InlayfitError):
        return str(error)
    if isinstance(error, MemoryError):
        return "The drawing needs more memory than there is; take a smaller part of it."
    if isinstance(error, OSError):
        place = f"“{error.filename}”: " if error.filename else ""
        return f"{place}{error.strerror or error}; check the path and try again."
    return (
        f"The program met something it was not made for ({type(error).__name__}: {error}); nothing was "
        "written. Please report it with the file that caused it."
    )


def _print_json(answer: dict[str, Any]) -> None:
    import json

    _say(json.dumps(answer, indent=2, allow_nan=False))


# --- what is asked -----------------------------------------------------------------------------------


def _parser(command: str, about: str, **options: Any) -> argparse.ArgumentParser:
    """A parser that complains in one sentence."""
    import argparse

    class Parser(argparse.ArgumentParser):  # here, so that `--version` need not load argparse
        def error(self, message: str) -> NoReturn:
            sentence = message.removeprefix("argument ").rstrip(".")
            self.exit(_complain(f"{sentence}; run “{self.prog} --help” to see how it is used."))

    shape = argparse.RawDescriptionHelpFormatter
    return Parser(prog=command, description=about, allow_abbrev=False, formatter_class=shape, **options)


def _parsed(parser: argparse.ArgumentParser, arguments: list[str]) -> argparse.Namespace:
    return parser.parse_args(_with_lengths_attached(arguments))


def _with_lengths_attached(arguments: list[str]) -> list[str]:
    """Write `--clearance -2thou` as `--clearance=-2thou`, so that no length is taken for an option."""
    attached: list[str] = []
    rest = iter(arguments)
    for argument in rest:
        value = next(rest, None) if argument in _LENGTH_OPTIONS else None
        if value is None:
            attached.append(argument)
        elif value.startswith("--"):
            attached += [argument, value]
        else:
            attached.append(f"{argument}={value}")
    return attached


def _length(text: str, option: str) -> float:
    """Millimetres of a typed length; a bare number is millimetres."""
    from inlayfit.errors import LengthError
    from inlayfit.units import Unit, parse_length

    try:
        return float(parse_length(text, default=Unit.MM))
    except LengthError as refusal:
        raise LengthError(f"{option}: {refusal}", text=text) from None


def _unit(text: str | None) -> Unit | None:
    from inlayfit.errors import LengthError
    from inlayfit.units import parse_unit

    try:
        return None if text is None else parse_unit(text)
    except LengthError as refusal:
        raise LengthError(f"--unit: {refusal}", text=refusal.text) from None


# --- the window --------------------------------------------------------------------------------------


def _window(arguments: list[str]) -> int:
    from pathlib import Path

    parser = _parser("inlayfit", "From the drawing of a pocket to a plug that fits it.", epilog=_COMMANDS)
    parser.add_argument("files", nargs="*", type=Path, metavar="FILE", help="drawing or project to open")
    parser.add_argument("--version", action="store_true", help="print the version and leave")
    asked = _parsed(parser, arguments)
    if asked.version:
        return _version()
    for file in asked.files:
        _check_is_file(file)
    _check_has_screen()
    from inlayfit.app.main import run

    return run([str(file) for file in asked.files])


def _check_is_file(file: Path) -> None:
    from inlayfit.errors import NotADrawingError

    if not file.exists():
        raise NotADrawingError(f"There is no file “{file}”; check its name and folder.", path=file)
    if file.is_dir():
        raise NotADrawingError(f"“{file}” is a folder; name the drawing in it.", path=file)


def _check_has_screen() -> None:
    """Qt ends the whole process, without a word Python could catch, where there is no screen."""
    from inlayfit.errors import InlayfitError

    knows_screens = sys.platform in ("win32", "darwin")
    screens = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    if not knows_screens and not any(os.environ.get(name) for name in screens):
        raise InlayfitError(
            "There is no screen to open a window on; use inlayfit fit or inlayfit demo, "
            "or start it from a desktop."
        )


# --- inspect -----------------------------------------------------------------------------------------


def _inspect(arguments: list[str]) -> int:
    parser = _parser("inlayfit inspect", "The outlines a drawing holds, with areas, holes and findings.")
    _add_drawing(parser)
    asked = _parsed(parser, arguments)
    _check_is_file(asked.file)
    from inlayfit.document.imports import import_drawing
    from inlayfit.document.summary import inspect_json, inspect_text
    from inlayfit.finding import has_open_block

    imported = import_drawing(asked.file, unit=_unit(asked.unit))
    if asked.json:
        _print_json(inspect_json(imported))
    else:
        _say(inspect_text(imported))
    return BLOCKED if has_open_block(imported.findings) else DONE


def _add_drawing(parser: argparse.ArgumentParser) -> None:
    from pathlib import Path

    parser.add_argument("file", type=Path, metavar="FILE", help="drawing in DXF or SVG")
    parser.add_argument("--unit", metavar="U", help="unit of the drawing, whatever the file says: mm, in, …")
    parser.add_argument("--json", action="store_true", help="print one JSON object and nothing else")


# --- demo --------------------------------------------------------------------------------------------


def _demo(arguments: list[str]) -> int:
    from pathlib import Path

    parser = _parser("inlayfit demo", "The whole job on the sample tea trays, without a window.")
    parser.add_argument("--out", required=True, type=Path, metavar="DIR", help="folder for the files")
    parser.add_argument("--json", action="store_true", help="print one JSON object and nothing else")
    asked = _parsed(parser, arguments)
    from inlayfit.document.demo import run_demo

    demo = run_demo(asked.out)
    if asked.json:
        _print_json(demo.json)
    else:
        _say(demo.text)
    return BLOCKED if demo.is_blocked else DONE


# --- fit ---------------------------------------------------------------------------------------------


def _fit(arguments: list[str]) -> int:
    file_first = not (arguments and arguments[0].startswith("-"))
    asked = _parsed(_fit_parser(file_first=file_first), arguments)
    spec = _spec(asked)
    _check_is_file(asked.file)
    from inlayfit.document.exports import ExportOptions, Line, write_fit
    from inlayfit.document.imports import import_drawing
    from inlayfit.document.summary import finding_lines, fit_text
    from inlayfit.finding import has_open_block
    from inlayfit.fit.solve import solve

    imported = import_drawing(asked.file, unit=_unit(asked.unit))
    results = [(each.id, solve(each.region, spec)) for each in _chosen(imported, asked.outline)]
    has_kerf = spec.pocket.kerf_mm or spec.plug.kerf_mm
    options = ExportOptions(line=Line.KERF if has_kerf else Line.EDGE)
    report = write_fit(results, asked.out, options, source=asked.file, drawing_findings=imported.findings)
    if asked.json:
        _print_json(report.answer)
    else:
        lines = [fit_text(*each) for each in results] + finding_lines(report.findings)
        names = ", ".join(path.name for path in report.paths)
        _say("\n".join([*lines, f"Written to {asked.out}: {names}."]))
    found = [finding for _, result in results for finding in result.findings]
    return BLOCKED if has_open_block([*report.findings, *found]) else DONE


def _fit_parser(*, file_first: bool) -> argparse.ArgumentParser:
    """Behind FILE, `--outline` takes all ids that follow; before it only one, which FILE is not."""
    from pathlib import Path

    from inlayfit.fit.spec import HalfState, Relief

    parser = _parser(
        "inlayfit fit",
        "Solve the fit of each outline and write both halves, ready to cut.",
        epilog=_FIT_NOTES,
    )
    _add_drawing(parser)
    lengths = parser.add_argument
    lengths("--clearance", required=True, metavar="C", help="gap at one wall; negative is interference")
    lengths("--pocket-cutter", required=True, metavar="D", help="measured diameter; 0 for a beam or blade")
    lengths("--plug-cutter", required=True, metavar="D", help="measured diameter; 0 for a beam or blade")
    states = [state.value for state in HalfState]
    for half in ("pocket", "plug"):
        parser.add_argument(
            f"--{half}-state", choices=states, default="to-cut", help=f"may the {half} still change?"
        )
    reliefs = [relief.value for relief in Relief]
    parser.add_argument("--relief", choices=reliefs, default="rounded", help="corners no cutter can reach")
    lengths("--finishing-allowance", default="0", metavar="A", help="stock a roughing pass leaves, per side")
    lengths("--kerf", default="0", metavar="K", help="width of a beam's or blade's cut, see below")
    many = "+" if file_first else 1
    parser.add_argument(
        "--outline", action="extend", nargs=many, metavar="ID", help="only these outlines; can be repeated"
    )
    parser.add_argument("--out", required=True, type=Path, metavar="DIR", help="folder for the files")
    return parser


def _spec(asked: argparse.Namespace) -> FitSpec:
    from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief

    allowance = _length(asked.finishing_allowance, "--finishing-allowance")
    kerf = _length(asked.kerf, "--kerf")

    pocket_mm = _length(asked.pocket_cutter, "--pocket-cutter")
    plug_mm = _length(asked.plug_cutter, "--plug-cutter")
    # A beam or blade has no cutter. Where both halves have one, the kerf is that of the sheet: the plug's.
    pocket_kerf = 0.0 if pocket_mm else kerf
    plug_kerf = 0.0 if plug_mm and pocket_kerf else kerf

    def half(cutter_mm: float, state: str, kerf_mm: float) -> HalfSpec:
        return HalfSpec(
            cutter_mm,
            HalfState(state),
            Relief(asked.relief),
            finishing_allowance_mm=allowance,
            kerf_mm=kerf_mm,
        )

    pocket = half(pocket_mm, asked.pocket_state, pocket_kerf)
    plug = half(plug_mm, asked.plug_state, plug_kerf)
    return FitSpec(_length(asked.clearance, "--clearance"), pocket, plug)


def _chosen(imported: Imported, ids: list[str] | None) -> list[Outline]:
    from inlayfit.errors import NoOutlineError

    by_id = {outline.id: outline for outline in imported.outlines}
    for wanted in ids or ():
        if wanted not in by_id:
            known = ", ".join(list(by_id)[:8]) + (", …" if len(by_id) > 8 else "")
            raise NoOutlineError(
                f"There is no outline “{wanted}” in “{imported.source.name}”; choose from {known}.",
                path=imported.source,
            )
    return [by_id[one] for one in dict.fromkeys(ids)] if ids else list(imported.outlines)
