"""What the DXF reader has to say: one finding a kind, with how many there were and where the first lies."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from inlayfit.finding import Finding, Severity

_WARN, _NOTE = Severity.WARN, Severity.NOTE
_CONVERT = "Convert it to lines in the drawing program and save again if it should be cut."
_NOTHING = "Nothing to do, unless it should be cut: then draw it as lines."
_SHOW = "Show the layer in the drawing program, or choose it here, if it should be cut."

KINDS: dict[str, tuple[Severity, str, str]] = {
    "text-skipped": (_WARN, "text|texts", "Convert the text to lines in the drawing program and save again."),
    "dimension-skipped": (_NOTE, "dimension or leader|dimensions and leaders", _NOTHING),
    "point-skipped": (_NOTE, "point|points", _NOTHING),
    "image-skipped": (_WARN, "picture|pictures", "Trace the picture, or draw the outline again as lines."),
    "solid-3d-skipped": (
        _WARN,
        "three-dimensional body or mesh|three-dimensional bodies and meshes",
        "Save a flat view of its outline (a projection or a section) as DXF.",
    ),
    "endless-line-skipped": (_NOTE, "endless construction line|endless construction lines", _NOTHING),
    "outside-file-skipped": (
        _WARN,
        "part that lies in another file|parts that lie in other files",
        "Bind the outside file into this drawing; other files are never opened.",
    ),
    "entity-skipped": (
        _WARN,
        "element of a kind that is not read|elements of a kind that is not read",
        _CONVERT,
    ),
    "entity-degenerate": (
        _WARN,
        "element without size or with impossible numbers|elements without size or with impossible numbers",
        "Delete it, or draw it again if something is missing.",
    ),
    "coordinate-huge": (
        _WARN,
        "element too far away to be meant|elements too far away to be meant",
        "Delete it, or move it back near the drawing.",
    ),
    "tilted": (
        _WARN,
        "element that does not lie flat; it is seen from above|"
        "elements that do not lie flat; they are seen from above",
        "Save a flat drawing if its size matters.",
    ),
    "line-width": (
        _NOTE,
        "line with a width; its middle is taken|lines with a width; their middles are taken",
        "Draw the edges of the wide line if these are the outline.",
    ),
    "zero-length": (
        _NOTE,
        "piece without length was left out|pieces without length were left out",
        "Nothing to do.",
    ),
    "hidden-skipped": (
        _NOTE,
        "element on a layer that is off or frozen was set aside|"
        "elements on layers that are off or frozen were set aside",
        _SHOW,
    ),
    "construction-skipped": (
        _NOTE,
        "line drawn for construction, dimensions or centres was set aside|"
        "lines drawn for construction, dimensions or centres were set aside",
        "Choose the layer here if these lines should be cut.",
    ),
    "fill-on-lines": (
        _NOTE,
        "filled area whose edge is also drawn as lines; the lines count|"
        "filled areas whose edges are also drawn as lines; the lines count",
        "Nothing to do.",
    ),
    "block-missing": (
        _WARN,
        "reference to a block that is not in the file|references to blocks that are not in the file",
        "Save the drawing again together with its blocks.",
    ),
    "block-too-deep": (
        _WARN,
        "reference to a block too deep inside of others|references to blocks too deep inside of others",
        "Explode the blocks in the drawing program and save again.",
    ),
    "block-recursion": (
        _WARN,
        "block that contains itself was left out|blocks that contain themselves were left out",
        "Delete the reference that leads back to its own block.",
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
        severity, words, remedy = KINDS[code]
        one, more = words.split("|")
        place = self._places.get(code)
        message = f"{count:,} {one if count == 1 else more}"
        names = list(self._names.get(code, ()))
        if names:
            shown = ", ".join(names[:5]) + (" and more" if len(names) > 5 else "")
            message += f" ({shown})"
        if place is not None:
            message += (
                f", the first at ({place[0]:.1f}, {place[1]:.1f}) mm"
                if count > 1
                else (f", at ({place[0]:.1f}, {place[1]:.1f}) mm")
            )
        return Finding(code, severity, message + ".", remedy, place, fixed=code in _FIXED)
