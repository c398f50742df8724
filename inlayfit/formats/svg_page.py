"""The page: how user units of the outermost `svg` become millimetres with y up.

    width, height   physical (mm, cm, Q, in, pt, pc): the file states its size
                    px, a bare number, a percentage, nothing: it states none, and 1 px is taken as 1/96 in
    viewBox         the part of user space that fills the page, by `preserveAspectRatio`

The lower left corner of the page comes to (0, 0). Without a height, the page ends at the lowest figure.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from inlayfit.formats.svg_notes import Notes
from inlayfit.formats.svg_transform import Box, parse_transform, parse_view_box, view_box_transform
from inlayfit.formats.svg_units import MM_PER_PX, Size, Viewport, parse_size
from inlayfit.geometry.transform import Transform
from inlayfit.units import Unit
from inlayfit.wording import Worded

_UNKNOWN_SIDE = 100.0
"""Pixels that 100 % are where neither size nor view box says anything; such lengths get a finding."""


@dataclass(frozen=True, slots=True)
class Page:
    """Where the drawing lies.

    Attributes:
        transform: user units of the outermost `svg` to millimetres, y up.
        viewport: what percentages refer to, in user units.
        width_mm: of the page; None if the file does not say.
        height_mm: the same.
        file_unit: the unit the file states, or None.
        assumed_unit: the unit it was scaled by.
        px_mm: millimetres in one px of the file.
        unit_mm: millimetres in one user unit (of the geometric mean, if stretched).
    """

    transform: Transform
    viewport: Viewport
    width_mm: float | None
    height_mm: float | None
    file_unit: Unit | None
    assumed_unit: Unit
    px_mm: float
    unit_mm: float


_WORDS = {"width": Worded("width"), "height": Worded("height")}


def read_page(attributes: Mapping[str, str], unit: Unit | None, notes: Notes) -> Page:
    """The page of the outermost `svg`; `unit` is what a user unit is, whatever the file says."""
    sizes = [_side(attributes.get(name), name, notes) for name in ("width", "height")]
    view_box = parse_view_box(attributes.get("viewBox"))
    if view_box is None and attributes.get("viewBox", "").strip():
        notes.add("page-size-broken", Worded("The viewBox of the drawing is broken and was left out."))
    stated = next((size.physical_unit for size in sizes if size is not None and size.physical_unit), None)
    width, height = _sides_px(sizes, view_box)
    aspect = attributes.get("preserveAspectRatio")
    if unit is not None:
        to_page, px_mm = _by_unit(view_box), float(unit.mm)
        width, height = (view_box[2], view_box[3]) if view_box else (width, height)
    else:
        to_page, px_mm = _by_size(view_box, width, height, aspect), float(MM_PER_PX)
    width_mm, height_mm = (None if side is None else side * px_mm for side in (width, height))
    if not 0 < abs(to_page.determinant) < math.inf:
        notes.add(
            "page-size-broken", Worded("The viewBox does not fit the size of the drawing and was left out.")
        )
        to_page = Transform()
    flip = Transform(a=px_mm, d=-px_mm, f=height_mm or 0.0)
    own = parse_transform(attributes.get("transform", ""))  # of the page as a whole (SVG 2, section 8.5)
    if own is None or not 0 < abs(own.determinant) < math.inf:
        notes.add("transform-broken", Worded("The transform of the whole drawing is broken."))
        own = Transform()
    transform = flip.after(own).after(to_page)
    inner = view_box[2:] if view_box else (width or _UNKNOWN_SIDE, height or _UNKNOWN_SIDE)
    return Page(
        transform,
        Viewport(*inner),
        width_mm,
        height_mm,
        stated,
        unit or stated or Unit.PIXEL,
        px_mm,
        abs(transform.determinant) ** 0.5,
    )


def _side(text: str | None, name: str, notes: Notes) -> Size | None:
    size = parse_size(text)
    if text is not None and text.strip() not in ("", "auto") and (size is None or size.number <= 0):
        notes.add(
            "page-size-broken",
            Worded(
                "The {name} of the drawing, “{text}”, is no size and was left out.",
                name=_WORDS[name],
                text=text[:40],
            ),
        )
        return None
    if size is not None and size.depends_on_font:
        notes.add(
            "unit-font-relative",
            Worded("The {name} of the drawing is given in {unit}.", name=_WORDS[name], unit=size.unit),
        )
    return None if size is None or size.unit == "%" else size


def _sides_px(sizes: list[Size | None], view_box: Box | None) -> tuple[float | None, float | None]:
    """Width and height in px; one that is missing follows from the view box."""
    width, height = (None if size is None else size.px(0.0, 16.0) for size in sizes)
    if view_box is None:
        return width, height
    ratio = view_box[3] / view_box[2]
    if width is None and height is None:
        return view_box[2], view_box[3]
    if width is None and height is not None:
        return height / ratio, height
    if width is not None and height is None:
        return width, width * ratio
    return width, height


def _by_unit(view_box: Box | None) -> Transform:
    return Transform() if view_box is None else Transform.shift(-view_box[0], -view_box[1])


def _by_size(
    view_box: Box | None, width: float | None, height: float | None, aspect: str | None
) -> Transform:
    if view_box is None or width is None or height is None:
        return Transform()
    return view_box_transform(view_box, width, height, aspect)
