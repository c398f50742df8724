"""Options for reading a drawing, and for a pocket that has none and is typed by its size."""

from __future__ import annotations

import argparse
import re
from dataclasses import dataclass, replace
from pathlib import Path

from inlayfit.commands.asking import length, unit
from inlayfit.commands.files import check_is_file
from inlayfit.document.imports import DEFAULT_GAP_MM, Imported, import_drawing
from inlayfit.document.measured import circle, rectangle, slot
from inlayfit.document.outlines import Outline
from inlayfit.errors import LengthError, SpecError
from inlayfit.geometry.tolerance import EXACT, Tolerance
from inlayfit.typed_length import parse_length
from inlayfit.units import Unit

VALUE_OPTIONS = frozenset({"--layer", "--gap", "--simplify", "--circle", "--rectangle", "--slot"})
"""Options whose value may begin with a minus: a layer so named, or a length to be refused with its reason."""
_WIDEST_GAP_MM = 10.0
_MOST_SIMPLIFIED_MM = 0.1
_TIMES = re.compile(r"\s*(?:[x×X]|\bby\b)\s*")
_RADIUS = re.compile(r"\s+r\s*(?=[\d.,])", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class HowRead:
    """How drawings are read.

    Attributes:
        unit: one drawing unit; None believes the file.
        gap_mm: gaps up to this wide are closed.
        strokes_as_areas: whether painted lines cover their width.
        layers: only these; None for all that hold outlines.
        tolerance: of the geometry.
    """

    unit: Unit | None
    gap_mm: float
    strokes_as_areas: bool
    layers: tuple[str, ...] | None
    tolerance: Tolerance

    def read(self, file: Path) -> Imported:
        """Read a drawing so; errors as `import_drawing`."""
        return import_drawing(
            file,
            unit=self.unit,
            gap_mm=self.gap_mm,
            strokes_as_areas=self.strokes_as_areas,
            layers=self.layers,
            tolerance=self.tolerance,
        )


def add_reading(asking: argparse.ArgumentParser) -> None:
    """The options for how a drawing is read."""
    add = asking.add_argument_group("reading the drawing").add_argument
    add("--layer", action="append", metavar="NAME", help="only this layer; can be repeated")
    add("--strokes-as-areas", action="store_true", help="a painted line covers its width")
    add("--gap", metavar="G", help=f"close gaps up to this wide; {DEFAULT_GAP_MM:g} if not given")
    add("--simplify", metavar="T", help=f"most a wall may move; {EXACT.simplify_mm:g} if not given")


def how_read(asked: argparse.Namespace) -> HowRead:
    """What is asked.

    Raises:
        LengthError, SpecError: a tolerance is none.
    """
    gap = _within(asked.gap, "--gap", DEFAULT_GAP_MM, _WIDEST_GAP_MM)
    simplify = _within(asked.simplify, "--simplify", EXACT.simplify_mm, _MOST_SIMPLIFIED_MM)
    layers = None if asked.layer is None else tuple(asked.layer)
    tolerance = replace(EXACT, simplify_mm=simplify)
    return HowRead(unit(asked.unit), gap, asked.strokes_as_areas, layers, tolerance)


def _within(text: str | None, option: str, default: float, most: float) -> float:
    value = default if text is None else length(text, option)
    if not 0 <= value <= most:
        raise SpecError(f"{option}: {value:g} mm is outside 0 to {most:g} mm; type a length in between.")
    return value


def add_sizes(asking: argparse.ArgumentParser) -> None:
    """The options for a pocket that is typed by its size instead of FILE."""
    group = asking.add_argument_group("a pocket without a drawing, instead of FILE")
    one = group.add_mutually_exclusive_group()
    one.add_argument("--circle", metavar="D", help="its diameter")
    one.add_argument("--rectangle", metavar="'W x H r R'", help="width, height, corner radius if any")
    one.add_argument("--slot", metavar="'L x W'", help="length over its round ends, and width")


def typed_outline(asked: argparse.Namespace) -> Outline | None:
    """The outline that was typed by its size, or None; a bare number is in `--unit`, else millimetres.

    Raises:
        LengthError: a length is not clear.
        SpecError: there is a file as well or neither, or the sizes make no shape.
    """
    sizes = {"--circle": asked.circle, "--rectangle": asked.rectangle, "--slot": asked.slot}
    typed = [(option, text) for option, text in sizes.items() if text is not None]
    if not typed:
        if asked.file is None:
            raise SpecError(
                "There is no pocket; name a drawing, or type a size with --circle, --rectangle or --slot."
            )
        check_is_file(asked.file)
        return None
    option, text = typed[0]
    if asked.file is not None:
        raise SpecError(f"{option} stands for a pocket without a drawing; leave out “{asked.file}”, or it.")
    if asked.outline:
        raise SpecError(f"--outline chooses from a drawing; leave it out beside {option}.")
    return _shape(option, text, unit(asked.unit) or Unit.MM)


def _shape(option: str, text: str, default: Unit) -> Outline:
    if option == "--circle":
        return circle(_mm(text, option, default))
    sizes, *radius = _RADIUS.split(text)
    lengths = [part for part in _TIMES.split(sizes.strip()) if part]
    takes_radius = option == "--rectangle"
    if len(lengths) != 2 or len(radius) > takes_radius:
        example = "“40 x 20” or “40 x 20 r 3”" if takes_radius else "“30 x 8”"
        raise SpecError(f"{option}: “{text[:40]}” is not of the form {example}; type it so.")
    _check_units_agree(option, text, [*lengths, *radius])
    first, second = (_mm(part, option, default) for part in lengths)
    if not takes_radius:
        return slot(first, second)
    return rectangle(first, second, corner_radius_mm=_mm(radius[0], option, default) if radius else 0.0)


def _check_units_agree(option: str, text: str, parts: list[str]) -> None:
    """Refuse “2 x 1 in”, which may mean 2 mm as well as 2 in."""
    bare = [re.fullmatch(r"[\d.,/\s−-]+", part) is not None for part in parts]
    if any(bare) and not all(bare):
        raise SpecError(f"{option}: “{text[:40]}” gives a unit to some lengths only; give it to each.")


def _mm(text: str, option: str, default: Unit) -> float:
    try:
        return float(parse_length(text, default=default))
    except LengthError as refusal:
        raise LengthError(f"{option}: {refusal}", text=text) from None
