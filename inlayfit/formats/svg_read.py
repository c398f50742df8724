"""Read an SVG file into a drawing: true curves, in mm, y up, lower left corner of the page at (0, 0).

The way of a file
    svg_document   bytes to nodes, safely
    svg_css, svg_style   which element looks how
    svg_page       what a user unit is, in millimetres
    svg_tree       the walk: nodes to figures, with use, symbol, nested svg and clip paths
    svg_shapes, svg_path_data, svg_outline   what one element draws
    svg_notes      what could not be read, or not as it was meant

Painted shapes become figures with their fill rule; a shape with only a line becomes a figure without fill
whose contours are the line's middle, its width beside them. What cannot be an outline (text, pictures,
masks, filters) is a finding with advice, never dropped in silence.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np

from inlayfit.drawing import Drawing, Figure
from inlayfit.errors import NoOutlineError
from inlayfit.finding import Finding, heaviest_first
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.svg_clip import figure_bounds
from inlayfit.formats.svg_document import Node, parse_document, read_bytes, unpacked
from inlayfit.formats.svg_notes import Notes
from inlayfit.formats.svg_page import Page, read_page
from inlayfit.formats.svg_place import Place
from inlayfit.formats.svg_style import INITIAL
from inlayfit.formats.svg_tree import Walker
from inlayfit.geometry.transform import Transform
from inlayfit.wording import Worded

_DEFAULT = ReadOptions()
PASTED = Path("pasted.svg")
"""The source of a drawing that came as text."""


def read_svg(path: Path, options: ReadOptions = _DEFAULT) -> ReadResult:
    """Read an SVG or SVGZ file.

    Raises:
        NotADrawingError: it is no readable SVG file.
        HostileFileError: it was refused for safety.
        NoOutlineError: nothing in it can be shown.
    """
    return _read(read_bytes(path), path, options)


def read_svg_text(text: str | bytes, *, source: Path = PASTED, options: ReadOptions = _DEFAULT) -> ReadResult:
    """Read SVG that came as text or bytes, from the clipboard say; raises as `read_svg`."""
    data = _without_declaration(text).encode("utf-8", "surrogatepass") if isinstance(text, str) else text
    return _read(unpacked(data, source), source, options)


def _without_declaration(text: str) -> str:
    """Text is no longer in the encoding that its XML declaration names."""
    text = text.lstrip("\ufeff \t\r\n")
    end = text.find("?>")
    return text[end + 2 :] if text.startswith("<?xml") and end > 0 else text


def _read(data: bytes, source: Path, options: ReadOptions) -> ReadResult:
    root = parse_document(data, source)
    notes = Notes()
    with np.errstate(all="ignore"):  # a number too large is found where it lands, as one that is not finite
        walker = Walker(root, source, notes)
        page, figures = _walk(root, walker, options)
    if walker.hidden:
        message = Worded(
            "{hidden} elements are hidden or painted with nothing; they were left out.", hidden=walker.hidden
        )
        notes.add("hidden-skipped", message)
    if not figures:
        raise NoOutlineError(_nothing_left(source, root, notes.findings()), path=source)
    if page.height_mm is None:
        lowest = figure_bounds(figures)[1]
        figures = [figure.moved(Transform.shift(0.0, -lowest)) for figure in figures]
        notes.move(-lowest)
    _check_page(page, figures, notes)
    if page.file_unit is None and options.unit is None:
        notes.add("unit-missing", _sizes_to_choose_from(page, figures))
    drawing = Drawing(tuple(figures))
    return ReadResult(drawing, source, page.file_unit, page.assumed_unit, notes.findings(), walker.visits)


def _walk(root: Node, walker: Walker, options: ReadOptions) -> tuple[Page, list[Figure]]:
    own = walker.declared(root)
    page = read_page({**root.attributes, **own}, options.unit, walker.notes)
    figures: list[Figure] = []
    walker.draw_root(page, Place(page.transform, INITIAL, page.viewport, figures))
    return page, figures


def _nothing_left(source: Path, root: Node, findings: tuple[Finding, ...]) -> str:
    if not findings and any(node.tag == "symbol" for node in root.children):
        return Worded(
            "“{name}” only defines symbols and places none; open the drawing that uses them.",
            name=source.name,
        )
    if not findings:
        return Worded(
            "“{name}” is empty: it draws nothing; save the drawing again with its shapes.", name=source.name
        )
    worst = heaviest_first(findings)[0]
    return Worded(
        "“{name}” holds no outline: {message} {remedy}",
        name=source.name,
        message=worst.message,
        remedy=worst.remedy,
    )


def _check_page(page: Page, figures: list[Figure], notes: Notes) -> None:
    """Name what lies wholly outside the page; it is kept."""
    if page.width_mm is None or page.height_mm is None:
        return
    for figure in figures:
        x, y = figure.contours[0].start
        if 0 <= x <= page.width_mm and 0 <= y <= page.height_mm:
            continue
        x0, y0, x1, y1 = figure_bounds([figure])
        if x1 < 0 or y1 < 0 or x0 > page.width_mm or y0 > page.height_mm:
            name = (
                Worded("“{name}”", name=figure.name[:60]) if figure.name else Worded("A shape without a name")
            )
            notes.add(
                "outside-page", Worded("{name} lies outside of the page; it was kept.", name=name), (x0, y0)
            )


def _sizes_to_choose_from(page: Page, figures: list[Figure]) -> Worded:
    """The size of the drawing under each reading of its unit."""
    x0, y0, x1, y1 = figure_bounds(figures)
    wide, high = (x1 - x0) / page.unit_mm, (y1 - y0) / page.unit_mm
    now, mm, inch = (
        f"{wide * unit:.4g} × {high * unit:.4g} mm ({wide * unit / 25.4:.4g} × {high * unit / 25.4:.4g} in)"
        for unit in (page.unit_mm, 1.0, 25.4)
    )
    return Worded(
        "The file states no physical size. As it is now, 1 px = 1/96 in: {now}; 1 unit = 1 mm: {mm}; "
        "1 unit = 1 in: {inch}.",
        now=now,
        mm=mm,
        inch=inch,
    )
