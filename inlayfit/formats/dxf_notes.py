"""What the DXF reader has to say: one finding a kind, with how many there were and where the first lies."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from inlayfit.finding import Finding, Severity
from inlayfit.measures import point
from inlayfit.wording import Worded

_WARN, _NOTE = Severity.WARN, Severity.NOTE
_CONVERT = Worded("Convert what should be cut to lines in the drawing program, and save again.")
_NOTHING = Worded("Draw as lines what should be cut; else there is nothing to do.")
_SHOW = Worded("Show the layer in the drawing program, or choose it here, if it should be cut.")

KINDS: dict[str, tuple[Severity, Worded, Worded, Worded]] = {
    "text-skipped": (
        _WARN,
        Worded("text"),
        Worded("texts"),
        Worded("Convert the text to lines in the drawing program and save again."),
    ),
    "dimension-skipped": (
        _NOTE,
        Worded("dimension or leader"),
        Worded("dimensions and leaders"),
        _NOTHING,
    ),
    "point-skipped": (
        _NOTE,
        Worded("point"),
        Worded("points"),
        _NOTHING,
    ),
    "image-skipped": (
        _WARN,
        Worded("picture"),
        Worded("pictures"),
        Worded("Trace the picture, or draw the outline again as lines."),
    ),
    "solid-3d-skipped": (
        _WARN,
        Worded("three-dimensional body or mesh"),
        Worded("three-dimensional bodies and meshes"),
        Worded("Save a flat view of its outline (a projection or a section) as DXF."),
    ),
    "endless-line-skipped": (
        _NOTE,
        Worded("endless construction line"),
        Worded("endless construction lines"),
        _NOTHING,
    ),
    "outside-file-skipped": (
        _WARN,
        Worded("part that lies in another file"),
        Worded("parts that lie in other files"),
        Worded("Bind the outside file into this drawing; other files are never opened."),
    ),
    "entity-skipped": (
        _WARN,
        Worded("element of a kind that is not read"),
        Worded("elements of a kind that is not read"),
        _CONVERT,
    ),
    "entity-degenerate": (
        _WARN,
        Worded("element without size or with impossible numbers"),
        Worded("elements without size or with impossible numbers"),
        Worded("Draw again what is missing, or delete what has no size."),
    ),
    "coordinate-huge": (
        _WARN,
        Worded("element too far away to be meant"),
        Worded("elements too far away to be meant"),
        Worded("Delete what is not meant, or move it back near the drawing."),
    ),
    "tilted": (
        _WARN,
        Worded("element that does not lie flat; it is seen from above"),
        Worded("elements that do not lie flat; they are seen from above"),
        Worded("Save a flat drawing if its size matters."),
    ),
    "line-width": (
        _NOTE,
        Worded("line with a width; its middle is taken"),
        Worded("lines with a width; their middles are taken"),
        Worded("Draw the edges of the wide line if these are the outline."),
    ),
    "zero-length": (
        _NOTE,
        Worded("piece without length was left out"),
        Worded("pieces without length were left out"),
        Worded("Nothing to do."),
    ),
    "hidden-skipped": (
        _NOTE,
        Worded("element on a layer that is off or frozen was set aside"),
        Worded("elements on layers that are off or frozen were set aside"),
        _SHOW,
    ),
    "construction-skipped": (
        _NOTE,
        Worded("line drawn for construction, dimensions or centres was set aside"),
        Worded("lines drawn for construction, dimensions or centres were set aside"),
        Worded("Choose the layer here if these lines should be cut."),
    ),
    "fill-on-lines": (
        _NOTE,
        Worded("filled area whose edge is also drawn as lines; the lines count"),
        Worded("filled areas whose edges are also drawn as lines; the lines count"),
        Worded("Nothing to do."),
    ),
    "block-missing": (
        _WARN,
        Worded("reference to a block that is not in the file"),
        Worded("references to blocks that are not in the file"),
        Worded("Save the drawing again together with its blocks."),
    ),
    "block-too-deep": (
        _WARN,
        Worded("reference to a block too deep inside of others"),
        Worded("references to blocks too deep inside of others"),
        Worded("Explode the blocks in the drawing program and save again."),
    ),
    "block-recursion": (
        _WARN,
        Worded("block that contains itself was left out"),
        Worded("blocks that contain themselves were left out"),
        Worded("Delete the reference that leads back to its own block."),
    ),
}
"""Severity, words for one and for more, remedy."""
_FIXED = frozenset({"zero-length"})

SKIPPED = {
    "TEXT": "text-skipped", "MTEXT": "text-skipped", "ATTRIB": "text-skipped", "ATTDEF": "text-skipped",
    "ARCALIGNEDTEXT": "text-skipped", "RTEXT": "text-skipped", "ACAD_TABLE": "text-skipped",
    "DIMENSION": "dimension-skipped", "ARC_DIMENSION": "dimension-skipped",
    "LARGE_RADIAL_DIMENSION": "dimension-skipped", "LEADER": "dimension-skipped",
    "MULTILEADER": "dimension-skipped", "MLEADER": "dimension-skipped", "TOLERANCE": "dimension-skipped",
    "POINT": "point-skipped",
    "IMAGE": "image-skipped", "WIPEOUT": "image-skipped", "OLEFRAME": "image-skipped",
    "OLE2FRAME": "image-skipped",
    "3DFACE": "solid-3d-skipped", "3DSOLID": "solid-3d-skipped", "BODY": "solid-3d-skipped",
    "REGION": "solid-3d-skipped", "SURFACE": "solid-3d-skipped", "MESH": "solid-3d-skipped",
    "EXTRUDEDSURFACE": "solid-3d-skipped", "LOFTEDSURFACE": "solid-3d-skipped",
    "REVOLVEDSURFACE": "solid-3d-skipped", "SWEPTSURFACE": "solid-3d-skipped",
    "PLANESURFACE": "solid-3d-skipped", "HELIX": "solid-3d-skipped",
    "RAY": "endless-line-skipped", "XLINE": "endless-line-skipped",
    "PDFUNDERLAY": "outside-file-skipped", "DWFUNDERLAY": "outside-file-skipped",
    "DGNUNDERLAY": "outside-file-skipped",
}  # fmt: skip
"""Kinds of entities that are never an outline, and what is said about them."""
WITHOUT_WORD = frozenset({"VIEWPORT", "SEQEND", "VERTEX", "LIGHT", "SUN", "LAYOUT"})
"""Kinds that draw nothing."""


@dataclass(slots=True)
class Notes:
    """Counts what was skipped or changed, by kind."""

    _counts: dict[str, int] = field(default_factory=dict)
    _places: dict[str, tuple[float, float]] = field(default_factory=dict)
    _names: dict[str, dict[str, None]] = field(default_factory=dict)

    def add(
        self, code: str, place_mm: tuple[float, float] | None = None, *, count: int = 1, name: str = ""
    ) -> None:
        """Count one more of a kind; the first place stays, names are collected."""
        self._counts[code] = self._counts.get(code, 0) + count
        if place_mm is not None and all(math.isfinite(v) and abs(v) < 1e12 for v in place_mm):
            self._places.setdefault(code, place_mm)
        if name:
            self._names.setdefault(code, {})[name[:40]] = None

    def count(self, code: str) -> int:
        """How many of a kind there were."""
        return self._counts.get(code, 0)

    def findings(self) -> list[Finding]:
        """One finding a kind."""
        return [self._finding(code, count) for code, count in self._counts.items()]

    def _finding(self, code: str, count: int) -> Finding:
        severity, one, more, remedy = KINDS[code]
        place = self._places.get(code)
        where: str = ""
        if place is not None:
            there = point(place, ".1f")
            where = (
                Worded(", the first at {there}", there=there)
                if count > 1
                else Worded(", at {there}", there=there)
            )
        message = Worded(
            "{count} {what}{names}{where}.",
            count=count,
            what=one if count == 1 else more,
            names=_listed(list(self._names.get(code, ()))),
            where=where,
        )
        return Finding(code, severity, message, remedy, place, fixed=code in _FIXED)


def _listed(names: list[str]) -> str:
    if not names:
        return ""
    shown = ", ".join(names[:5])
    return Worded(" ({names} and more)", names=shown) if len(names) > 5 else f" ({shown})"
