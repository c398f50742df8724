"""What a command is asked: parsers that complain in one sentence, lengths, units and files."""

from __future__ import annotations

import argparse
import math
from collections.abc import Collection
from pathlib import Path
from typing import TYPE_CHECKING, Any, NoReturn

from inlayfit.commands.saying import complain, say

if TYPE_CHECKING:
    from inlayfit.units import Unit


class Parser(argparse.ArgumentParser):
    """A parser that complains in one sentence, and explains itself on terminals of few characters too."""

    def print_help(self, file: Any = None) -> None:
        """Print the help."""
        say(self.format_help().rstrip("\n"), file)

    def error(self, message: str) -> NoReturn:
        """Say what is wrong and leave."""
        sentence = message.removeprefix("argument ").rstrip(".")
        self.exit(complain(f"{sentence}; run “{self.prog} --help” to see how it is used."))


def parser(command: str, about: str, **options: Any) -> Parser:
    """A parser for one command."""
    shape = argparse.RawDescriptionHelpFormatter
    return Parser(prog=command, description=about, allow_abbrev=False, formatter_class=shape, **options)


def with_values_attached(arguments: list[str], options: Collection[str]) -> list[str]:
    """Write `--clearance -2thou` as `--clearance=-2thou`, so that no length is taken for an option."""
    attached: list[str] = []
    rest = iter(arguments)
    for argument in rest:
        value = next(rest, None) if argument in options else None
        if value is None:
            attached.append(argument)
        elif value.startswith("--"):
            attached += [argument, value]
        else:
            attached.append(f"{argument}={value}")
    return attached


def length(text: str, option: str) -> float:
    """Millimetres of a typed length; a bare number is millimetres."""
    from inlayfit.errors import LengthError
    from inlayfit.typed_length import parse_length
    from inlayfit.units import Unit

    try:
        return float(parse_length(text, default=Unit.MM))
    except LengthError as refusal:
        raise LengthError(f"{option}: {refusal}", text=text) from None


def number(text: str, option: str) -> float:
    """A plain number, for what is no length."""
    from inlayfit.errors import SpecError

    try:
        value = float(text.replace("\N{MINUS SIGN}", "-"))
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        raise SpecError(f"{option}: “{text[:40]}” is not a plain number; type one such as 15 or 97e-6.")
    return value


def unit(text: str | None) -> Unit | None:
    """A typed unit of a drawing; None believes the file."""
    from inlayfit.errors import LengthError
    from inlayfit.typed_length import parse_unit

    try:
        return None if text is None else parse_unit(text)
    except LengthError as refusal:
        raise LengthError(f"--unit: {refusal}", text=refusal.text) from None


def add_drawing(asking: argparse.ArgumentParser, *, may_lack: bool = False) -> None:
    """FILE, its unit, and the choice of JSON."""
    add = asking.add_argument
    about = "drawing in DXF or SVG, or a table of points"
    add("file", type=Path, metavar="FILE", nargs="?" if may_lack else None, help=about)
    add("--unit", metavar="U", help="unit of every drawing, whatever its file says: mm, in, …")
    add("--json", action="store_true", help="print one JSON object and nothing else")
