"""Draws the pictures of the mathematics page in DEVELOPERS.md with the program's own results. Not a test.

Run from the root: python tests/pictures_maths.py
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from xml.etree.ElementTree import Element, SubElement, tostring

import numpy as np
from shapely import Point

from inlayfit.document.ink import CANVAS, FONT, HOST, INK, PLUG, SOFT, STYLES, line_data, number, text_at
from inlayfit.fit.classes import GapClass
from inlayfit.fit.result import FitResult
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.geometry.morphology import closed, erode, opened
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT

FOLDER = Path(__file__).resolve().parent.parent / "resources" / "maths"
ELL = Region.of_ring([[0, 0], [40, 0], [40, 15], [20, 15], [20, 30], [0, 30]])
RADIUS = 4.0
CLEARANCE = 1.2  # far too much for a part, enough for a picture
BITES = STYLES[GapClass.BITES].colour
ON = STYLES[GapClass.ON].colour
SLACK = STYLES[GapClass.SLACK].colour


class Panel:
    """One picture: a window onto the drawing, y up, with a caption."""

    def __init__(self, box: tuple[float, float, float, float], caption: str, width: float = 88.0) -> None:
        self.x0, self.y0, x1, y1 = box
        self.scale = width / (x1 - self.x0)
        height = (y1 - self.y0) * self.scale
        self.y1 = y1
        self.svg = Element(
            "svg", xmlns="http://www.w3.org/2000/svg", viewBox=f"0 0 {width:g} {height + 9:.3f}"
        )
        self.svg.set("width", f"{width * 5:g}")
        self.svg.set("font-family", FONT)
        SubElement(self.svg, "rect", width="100%", height="100%", fill=CANVAS)
        clip = SubElement(SubElement(self.svg, "clipPath", id="panel"), "rect")
        clip.set("width", number(width))
        clip.set("height", number(height))
        self.inside = SubElement(self.svg, "g")
        self.inside.set("clip-path", "url(#panel)")
        # Not every renderer clips, so the caption has a ground of its own.
        SubElement(self.svg, "rect", y=number(height), width="100%", height="9", fill=CANVAS)
        text_at(self.svg, 1.5, height + 5.8, caption, size=3.1, colour=SOFT)

    def area(self, region: Region, fill: str, opacity: float = 1.0) -> None:
        path = self._path(region)
        path.set("fill", fill)
        path.set("fill-opacity", f"{opacity:g}")

    def line(self, region: Region, colour: str, width: float = 0.45, dashes: str = "") -> None:
        path = self._path(region)
        path.set("fill", "none")
        path.set("stroke", colour)
        path.set("stroke-width", f"{width:g}")
        if dashes:
            path.set("stroke-dasharray", dashes)

    def words(self, place: tuple[float, float], words: str, colour: str = INK) -> None:
        x, y = self._points(np.array([place]))[0].tolist()
        text_at(self.inside, x, y, words, size=3.1, weight="600", colour=colour)

    def _path(self, region: Region) -> Element:
        data = " ".join(line_data(self._points(ring), closed=True) for ring in region.rings())
        path = SubElement(self.inside, "path", d=data)
        path.set("fill-rule", "evenodd")
        return path

    def _points(
        self, points: np.ndarray[tuple[int, int], np.dtype[np.float64]]
    ) -> np.ndarray[tuple[int, int], np.dtype[np.float64]]:
        return np.column_stack([(points[:, 0] - self.x0) * self.scale, (self.y1 - points[:, 1]) * self.scale])


def disk(x: float, y: float, radius: float = RADIUS) -> Region:
    """The cutter at a place."""
    return Region.of(Point(x, y).buffer(radius, quad_segs=90))


def fitted(relief: Relief, pocket_state: HalfState = HalfState.TO_CUT) -> FitResult:
    """The L solved with everything exaggerated."""
    half = HalfSpec(2 * RADIUS, relief=relief)
    return solve(ELL, FitSpec(CLEARANCE, HalfSpec(2 * RADIUS, pocket_state, relief), half, thin_mm=0))


def as_cut() -> Panel:
    """Step 1."""
    panel = Panel((-3, -3, 43, 33), "1  As cut: drawn (dashed), reached (light), left over (dark)")
    reached = opened(ELL, RADIUS, EXACT)
    panel.area(disk(20, 15, 100), HOST)
    panel.area(reached, CANVAS)
    panel.area(ELL.minus(reached), BITES, 0.85)
    panel.line(ELL, INK, 0.35, "1.4 1")
    panel.line(disk(4, 26), ON)
    panel.words((2, 25.5), "cutter", ON)
    return panel


def target() -> Panel:
    """Steps 2 and 3."""
    panel = Panel((8, 3, 34, 26), "2  Target T, and Z: where a plug cut to T would bind")
    aim = erode(ELL, CLEARANCE, EXACT)
    cut = closed(aim, RADIUS, EXACT)
    panel.area(disk(20, 15, 100), HOST)
    panel.area(ELL, CANVAS)
    panel.area(aim, PLUG)
    panel.area(cut.minus(aim), BITES, 0.85)
    panel.line(aim, INK)
    panel.line(ELL, SOFT, 0.3, "1.4 1")
    panel.line(disk(20 - CLEARANCE + RADIUS, 15 - CLEARANCE + RADIUS), ON)
    panel.words((21.3, 17.6), "cutter", ON)
    panel.words((17.0, 12.4), "Z", BITES)
    panel.words((10, 6), "T")
    return panel


def result_panel(result: FitResult, caption: str, box: tuple[float, float, float, float]) -> Panel:
    """Both halves of a solved fit."""
    panel = Panel(box, caption)
    panel.area(disk(20, 15, 100), HOST)
    panel.area(result.pocket.outline, CANVAS)
    panel.area(result.plug.outline, PLUG)
    panel.line(ELL, SOFT, 0.3, "1.4 1")
    panel.line(result.pocket.outline, INK)
    panel.line(result.plug.outline, ON)
    for cut in result.reliefs:
        x, y = cut.place_mm
        panel.area(disk(x, y, 0.35), SLACK)
    return panel


WHOLE = (-7.0, -7.0, 47.0, 37.0)
PICTURES: dict[str, Callable[[], Panel]] = {
    "as-cut": as_cut,
    "target": target,
    "rounded": lambda: result_panel(
        fitted(Relief.ROUNDED), "3  Rounded: both walls match, the gap is c", WHOLE
    ),
    "dog-bone": lambda: result_panel(fitted(Relief.DOG_BONE), "4  Dog-bone in both halves", WHOLE),
    "t-bone": lambda: result_panel(fitted(Relief.T_BONE), "5  T-bone in both halves", WHOLE),
    "already-cut": lambda: result_panel(
        fitted(Relief.DOG_BONE, HalfState.ALREADY_CUT),
        "6  Pocket already cut: only the plug gives way",
        WHOLE,
    ),
}


def main() -> None:
    """Write all pictures."""
    FOLDER.mkdir(parents=True, exist_ok=True)
    for name, make in PICTURES.items():
        (FOLDER / f"{name}.svg").write_bytes(tostring(make().svg) + b"\n")


if __name__ == "__main__":
    main()
