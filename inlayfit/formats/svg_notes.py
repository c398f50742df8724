"""What the SVG reader has to say: findings, each kind with its weight and its remedy, none without end.

The first `SHOWN_PER_KIND` of a kind are listed one by one with their place; the rest are counted in one
closing finding of the same code, so that a file of 50,000 texts does not bury the one that matters.
"""

from __future__ import annotations

import math
from collections import Counter
from dataclasses import dataclass, field, replace

from inlayfit.finding import Finding, Severity
from inlayfit.wording import Worded

SHOWN_PER_KIND = 20

_WARN, _NOTE = Severity.WARN, Severity.NOTE
KINDS: dict[str, tuple[Severity, Worded]] = {
    "text-skipped": (_WARN, Worded("Convert the text to paths in the drawing program and save again.")),
    "image-skipped": (
        _WARN,
        Worded("Trace the picture in the drawing program, or draw the outline again as a path."),
    ),
    "foreign-skipped": (_WARN, Worded("Draw it with SVG shapes; other content cannot be cut.")),
    "mask-ignored": (
        _WARN,
        Worded("Cut the shape with a path operation in the drawing program; it is shown whole here."),
    ),
    "filter-ignored": (
        _WARN,
        Worded("Remove the effect in the drawing program; the plain shape is shown here."),
    ),
    "pattern-as-fill": (
        _WARN,
        Worded("The whole shape counts as filled; convert the pattern to paths if it matters."),
    ),
    "gradient-as-fill": (
        _NOTE,
        Worded("The whole shape counts as filled; nothing to do unless parts should be left out."),
    ),
    "marker-ignored": (_WARN, Worded("Convert the line with its arrowheads to paths if they should be cut.")),
    "clip-ignored": (
        _WARN,
        Worded("Cut the shape with a path operation in the drawing program; it is shown whole here."),
    ),
    "script-ignored": (_NOTE, Worded("Scripts are never run; save the drawing as it should look.")),
    "animation-ignored": (_NOTE, Worded("The drawing is read as it is before any movement.")),
    "path-broken": (_WARN, Worded("Draw it again, or correct the path data.")),
    "transform-broken": (_WARN, Worded("Correct the transform; the element is shown without it.")),
    "shape-empty": (_NOTE, Worded("Nothing to do, or delete it.")),
    "coordinate-huge": (_WARN, Worded("Delete it, or move it back near the drawing.")),
    "reference-missing": (_WARN, Worded("Draw the missing part again, or delete the reference.")),
    "reference-outside": (
        _WARN,
        Worded("Put the part into this file; other files and addresses are never opened."),
    ),
    "reference-loops": (_WARN, Worded("Delete the reference that leads back to itself.")),
    "style-skipped": (
        _NOTE,
        Worded("Check that the drawing looks right; else save it with plain attributes."),
    ),
    "element-unknown": (_NOTE, Worded("Check that nothing is missing; else convert it to paths.")),
    "hidden-skipped": (_NOTE, Worded("Show it in the drawing program and save again if it should be cut.")),
    "unit-font-relative": (
        _WARN,
        Worded("Check the size; lengths in em and ex were taken for a font of 16 px."),
    ),
    "unit-missing": (_WARN, Worded("Choose the unit that gives the size it should have.")),
    "page-size-broken": (_WARN, Worded("Check the size of the drawing.")),
    "outside-page": (_NOTE, Worded("Move it onto the page, or delete it, if it was not meant to be there.")),
    "alternative-skipped": (_NOTE, Worded("Nothing to do; the drawing offers another form for this reader.")),
}


@dataclass(slots=True)
class Notes:
    """Collects findings."""

    _shown: list[Finding] = field(default_factory=list)
    _counts: Counter[str] = field(default_factory=Counter)

    def add(self, code: str, message: Worded, place_mm: tuple[float, float] | None = None) -> None:
        """Note one finding; its weight and remedy come from `KINDS`."""
        self._counts[code] += 1
        if self._counts[code] > SHOWN_PER_KIND:
            return
        severity, remedy = KINDS[code]
        if place_mm is not None and not all(map(math.isfinite, place_mm)):
            place_mm = None
        self._shown.append(Finding(code, severity, message, remedy, place_mm))

    def has(self, code: str) -> bool:
        """Whether one of this kind was noted."""
        return self._counts[code] > 0

    def move(self, up_mm: float) -> None:
        """Move all places up, as the drawing was."""
        for number, finding in enumerate(self._shown):
            if finding.place_mm is not None:
                x, y = finding.place_mm
                self._shown[number] = replace(finding, place_mm=(x, y + up_mm))

    def findings(self) -> tuple[Finding, ...]:
        """All of them, and one count for each kind that was cut short."""
        more = [
            Finding(
                code,
                KINDS[code][0],
                Worded("{more} more of this kind.", more=count - SHOWN_PER_KIND),
                KINDS[code][1],
            )
            for code, count in self._counts.items()
            if count > SHOWN_PER_KIND
        ]
        return (*self._shown, *more)
