"""Painted area of our own small drawings, against an independent renderer (resvg, by `resvg_py`).

Each case exercises one rule of SVG 2, CSS Masking 1 or CSS; the chapter is named beside it. The area from
our reader (fills and lines, clipped, united, cut to the page) must agree with the sum of alpha of the
renderer's bitmap within 0.2 % of the painted area.
"""

import numpy as np
import pytest
import resvg_py
import shapely
from PySide6.QtGui import QImage

from inlayfit.document.painted import figure_region
from inlayfit.formats.contract import ReadOptions
from inlayfit.formats.svg_read import read_svg_text
from inlayfit.geometry.tolerance import Tolerance
from inlayfit.units import Unit

PAGE = 1.25 * 25.4
FINE = Tolerance(arc_mm=2e-5)
HEAD = (
    '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" '
    'width="1.25in" height="1.25in" viewBox="0 0 120 120">'
)
STAR = "M60 10L90 100L10 45H110L30 100Z"

CASES = {
    # SVG 2, 13.4.2 fill-rule
    "nonzero star": f'<path d="{STAR}"/>',
    "even-odd star": f'<path fill-rule="evenodd" d="{STAR}"/>',
    "ring by direction": '<path d="M10 10H110V110H10ZM30 30V90H90V30Z"/>',
    "no ring, same direction": '<path d="M10 10H110V110H10ZM30 30H90V90H30Z"/>',
    "three squares, even-odd": (
        '<path fill-rule="evenodd" d="M0 0H100V100H0ZM10 10H80V80H10ZM20 20H60V110H20Z"/>'
    ),
    "open subpath is filled as if closed": '<path d="M10 10L110 20L60 110"/>',
    # SVG 2, 9.3 path data
    "all commands": (
        '<path d="M10 60c0-40 30-40 40 0s30 40 40 0q10-60 20 0t5 50l-5 5h-90v-5zm20-50h10v10h-10z"/>'
    ),
    "arc flags": '<path d="M60 60L60 20A40 40 0 1 0 100 60ZM65 55V20A35 35 0 0 1 100 55Z"/>',
    "arc radii too small": '<path d="M10 60A5 3 20 0 1 110 60Z"/>',
    "turned ellipse arcs": '<path d="M20 60A50 20 30 1 1 90 80A50 20 30 0 1 20 60Z"/>',
    "arc flags without separators": '<path d="M60 10a50 50 0 01.5 99.5a50 50 0 10-.5-99.5"/>',
    "error ends the path": '<path d="M10 10H110V110L20 100,x 50 50Z"/>',
    # SVG 2, chapter 10 basic shapes
    "rounded rect": '<rect x="10" y="20" width="90" height="60" rx="20"/>',
    "rect with two radii": '<rect x="10" y="20" width="90" height="60" rx="80" ry="10"/>',
    "ellipse and circle": '<ellipse cx="60" cy="40" rx="50" ry="20"/><circle cx="60" cy="85" r="30"/>',
    "polygon and polyline": '<polygon points="10,10 60,10 35 50"/><polyline points="70 70 110 70 90 110"/>',
    # CSS Values 4, 5 and 6: units, percentages
    "units": '<rect x="1mm" y="2pt" width="1.5in" height="3pc"/><circle cx="1cm" cy="2.4cm" r="10mm"/>',
    "percentages": '<rect x="10%" y="20%" width="50%" height="25%"/><circle cx="50%" cy="75%" r="20%"/>',
    "em": (
        '<g font-size="10"><rect width="3em" height="4em"/>'
        '<rect x="50" font-size="2em" width="2em" height="1em"/></g>'
    ),
    # CSS Transforms 1
    "transforms": (
        '<g transform="translate(60 60) rotate(30) scale(1.5 .5) skewX(20)">'
        '<rect x="-20" y="-30" width="40" height="60" rx="9"/></g>'
    ),
    "matrix": '<circle r="30" transform="matrix(1 .3 -.4 1.2 70 40)"/>',
    "rotate about": '<rect x="20" y="50" width="80" height="20" transform="rotate(45, 60, 60)"/>',
    "mirror": '<path transform="translate(120) scale(-1 1)" d="M10 10A60 60 0 0 1 70 70L10 70Z"/>',
    # SVG 2, 13.5 strokes
    "butt miter": '<path fill="none" stroke="red" stroke-width="8" d="M20 20L100 20L30 60L100 100"/>',
    "round": (
        '<path fill="none" stroke="red" stroke-width="12" stroke-linecap="round" '
        'stroke-linejoin="round" d="M20 20L100 20L30 60L100 100"/>'
    ),
    "square bevel": (
        '<path fill="none" stroke="red" stroke-width="12" stroke-linecap="square" '
        'stroke-linejoin="bevel" d="M20 20L100 20L30 60L100 100"/>'
    ),
    "miter limit": (
        '<path fill="none" stroke="red" stroke-width="9" stroke-miterlimit="1.5" d="M20 20L100 '
        '20L30 60L100 100"/>'
    ),
    "miter tips": (
        '<path fill="none" stroke="red" stroke-width="6" stroke-miterlimit="20" d="M30 20L60 100L90 20"/>'
    ),
    "closed stroke": '<path fill="none" stroke="red" stroke-width="10" d="M20 20H100V100H20Z"/>',
    "nearly closed stroke": '<path fill="none" stroke="red" stroke-width="10" d="M20 20H100V100H20V20"/>',
    "curved stroke": (
        '<path fill="none" stroke="red" stroke-width="20" d="M20 90C20 0 60 0 60 60S100 120 100 30"/>'
    ),
    "fill and stroke": '<circle cx="60" cy="60" r="40" stroke="blue" stroke-width="10"/>',
    "dot by round cap": '<path stroke="red" stroke-width="40" stroke-linecap="round" d="M60 60h0"/>',
    "dashes": (
        '<path fill="none" stroke="red" stroke-width="8" stroke-dasharray="20 10 5" '
        'stroke-dashoffset="7" d="M10 20H110V100H20"/>'
    ),
    "dashed circle": (
        '<circle cx="60" cy="60" r="40" fill="none" stroke="red" stroke-width="8" '
        'stroke-linecap="round" stroke-dasharray="15 20"/>'
    ),
    "stretched stroke": (
        '<g transform="scale(3 1)">'
        '<circle cx="20" cy="60" r="14" fill="none" stroke="red" stroke-width="4"/></g>'
    ),
    "skewed stroke": (
        '<path transform="skewX(30) scale(.8)" fill="none" stroke="red" stroke-width="9" '
        'stroke-linejoin="round" d="M10 20H70L20 100Z"/>'
    ),
    "stroke width in percent": '<path fill="none" stroke="red" stroke-width="10%" d="M10 60H110"/>',
    # SVG 2, 5.2, 5.6: nested svg, symbol, use
    "nested svg": (
        '<svg x="10" y="20" width="80" height="60" viewBox="0 0 40 40"><rect width="40" height="40"/>'
        '<circle cx="50" cy="20" r="15"/></svg>'
    ),
    "nested svg, overflow": (
        '<svg x="10" y="20" width="80" height="60" viewBox="0 0 40 40" overflow="visible">'
        '<circle cx="30" cy="20" r="22"/></svg>'
    ),
    "nested svg, percent": (
        '<svg x="50%" y="25%" width="50%" height="50%"><rect width="50%" height="100%"/></svg>'
    ),
    "symbol": (
        '<symbol id="s" viewBox="0 0 10 20"><rect width="10" height="20"/>'
        '<circle cx="12" cy="5" r="8"/></symbol><use href="#s" x="10" y="10" width="80" height="60"/>'
    ),
    "use of a group": (
        '<defs><g id="g" transform="translate(5 5)"><rect width="20" height="10"/>'
        '<circle cx="30" cy="30" r="9"/></g></defs><use xlink:href="#g" x="10"/>'
        '<use href="#g" transform="rotate(20) scale(1.4)" x="40" y="20"/>'
    ),
    "use inherits": (
        '<defs><rect id="r" width="40" height="40"/></defs>'
        '<use href="#r" fill="none" stroke="red" stroke-width="6" x="20" y="20"/>'
        '<use href="#r" x="70" y="70"/>'
    ),
    "clip of a use moves with it": (
        '<clipPath id="c"><circle cx="40" cy="40" r="30"/></clipPath>'
        '<defs><rect id="r" width="120" height="120"/></defs>'
        '<use href="#r" x="30" y="40" clip-path="url(#c)"/>'
    ),
    "clipped clip by box": (
        '<clipPath id="a"><circle cx="50" cy="60" r="35"/></clipPath>'
        '<clipPath id="b" clipPathUnits="objectBoundingBox" clip-path="url(#a)">'
        '<circle cx=".7" cy=".5" r=".4"/></clipPath>'
        '<rect x="10" y="20" width="90" height="80" clip-path="url(#b)"/>'
    ),
    "line there and back": (
        '<path d="M20 20L100 60Z" fill="none" stroke="red" stroke-width="20" stroke-linejoin="round"/>'
        '<path d="M20 90H90Z" fill="none" stroke="red" stroke-width="20" stroke-linecap="round"/>'
    ),
    "use of svg": (
        '<defs><svg id="s" width="10" height="10" viewBox="0 0 10 10"><circle cx="5" cy="5" r="6"/>'
        '</svg></defs><use href="#s" x="10" y="10" width="90" height="60"/>'
    ),
    # SVG 2, 8.2 preserveAspectRatio
    **{
        f"aspect {align} {fit}": f'<svg x="10" y="10" width="100" height="50" viewBox="0 0 30 40" '
        f'preserveAspectRatio="{align} {fit}"><path d="M0 0H30V40H20V10H0Z"/></svg>'
        for align in ("none", "xMinYMin", "xMidYMid", "xMaxYMax", "xMidYMax")
        for fit in ("meet", "slice")
    },
    # CSS Masking 1: clip paths
    "clip": (
        '<clipPath id="c"><circle cx="60" cy="60" r="30"/></clipPath>'
        '<rect width="60" height="120" clip-path="url(#c)"/>'
    ),
    "clip-rule": (
        f'<clipPath id="c"><path clip-rule="evenodd" d="{STAR}"/></clipPath>'
        '<rect width="120" height="120" clip-path="url(#c)"/>'
    ),
    "clip of two that overlap": (
        '<clipPath id="c"><path d="M10 10H70V70H10Z"/><path d="M50 50V100H100V50Z"/></clipPath>'
        '<rect width="120" height="120" clip-path="url(#c)"/>'
    ),
    "clip by box": (
        '<clipPath id="c" clipPathUnits="objectBoundingBox"><circle cx=".5" cy=".5" r=".5"/>'
        '</clipPath><rect x="10" y="20" width="100" height="60" clip-path="url(#c)"/>'
    ),
    "clip by box of a group": (
        '<clipPath id="c" clipPathUnits="objectBoundingBox"><path d="M0 0H.5V1H0Z"/></clipPath>'
        '<g clip-path="url(#c)"><circle cx="40" cy="40" r="30"/>'
        '<rect x="80" y="80" width="30" height="30"/></g>'
    ),
    "clip with transforms": (
        '<clipPath id="c" transform="translate(10 0)">'
        '<rect width="40" height="40" transform="rotate(20)"/></clipPath><g transform="scale(2)">'
        '<circle cx="30" cy="20" r="20" clip-path="url(#c)"/></g>'
    ),
    "clipped clip": (
        '<clipPath id="a"><circle cx="40" cy="60" r="35"/></clipPath>'
        '<clipPath id="b" clip-path="url(#a)"><circle cx="80" cy="60" r="35"/></clipPath>'
        '<rect width="120" height="120" clip-path="url(#b)"/>'
    ),
    "clip child clipped": (
        '<clipPath id="a"><rect width="60" height="120"/></clipPath><clipPath id="b">'
        '<circle cx="60" cy="60" r="40" clip-path="url(#a)"/></clipPath>'
        '<rect width="120" height="120" clip-path="url(#b)"/>'
    ),
    "clip by use": (
        '<defs><circle id="k" cx="60" cy="60" r="30"/></defs><clipPath id="c"><use href="#k" x="10"/>'
        '</clipPath><rect width="120" height="60" clip-path="url(#c)"/>'
    ),
    "clip of a stroke": (
        '<clipPath id="c"><rect x="20" y="20" width="80" height="80"/></clipPath>'
        '<circle cx="60" cy="60" r="40" fill="none" stroke="red" stroke-width="20" '
        'clip-path="url(#c)"/>'
    ),
    "two clips": (
        '<clipPath id="a"><rect width="70" height="120"/></clipPath><clipPath id="b">'
        '<circle cx="60" cy="60" r="50"/></clipPath><g clip-path="url(#a)">'
        '<rect width="120" height="120" clip-path="url(#b)"/></g>'
    ),
    "empty clip hides": (
        '<clipPath id="c"/><rect width="50" height="50" clip-path="url(#c)"/>'
        '<rect x="60" width="30" height="30"/>'
    ),
    # SVG 2, chapter 6: style
    "style sheet": (
        "<style>"
        ".h{fill:none} #k{fill:none;stroke:red;stroke-width:4} g>rect{fill:red} g g rect{fill:none}"
        '</style><rect class="h" width="40" height="40"/>'
        '<circle id="k" cx="60" cy="60" r="30" fill="red"/><g><rect y="90" width="30" height="30"/>'
        '<g><rect x="90" y="90" width="30" height="30"/></g></g>'
    ),
    "style attribute wins": (
        '<style>rect{fill:none}</style><rect width="40" height="40" style="fill:red"/>'
        '<rect x="50" width="40" height="40" fill="red"/>'
    ),
    "important wins": (
        '<style>rect{fill:none!important}</style><rect width="40" height="40" style="fill:red"/>'
        '<circle cx="90" cy="90" r="9"/>'
    ),
    "inherit": (
        '<g fill="none" stroke="red"><rect x="9" y="9" width="40" height="40" stroke-width="5"/>'
        '<g fill="red" stroke="none"><circle cx="90" cy="90" r="20"/></g></g>'
    ),
    "display and visibility": (
        '<g display="none"><rect width="90" height="90"/></g><g visibility="hidden">'
        '<rect width="50" height="50"/>'
        '<rect x="60" y="60" width="50" height="50" visibility="visible"/></g>'
    ),
    "paints of nothing": (
        '<rect width="30" height="30" fill="transparent"/>'
        '<rect x="30" width="30" height="30" fill="rgba(1,2,3,0)"/>'
        '<rect x="60" width="30" height="30" fill-opacity="0"/>'
        '<rect y="30" width="30" height="30" opacity="0"/><rect y="60" width="30" height="30"/>'
    ),
    "current colour": '<g color="red"><rect width="40" height="40" fill="currentColor"/></g>',
    "paint fallback": (
        '<rect width="40" height="40" fill="url(#no) red"/>'
        '<rect x="50" width="40" height="40" fill="url(#no) none"/>'
    ),
    # SVG 2, 5.7 conditional processing
    "switch": (
        '<switch><rect width="90" height="90" requiredExtensions="x"/>'
        '<rect width="50" height="50" systemLanguage="de"/>'
        '<circle cx="60" cy="60" r="20" systemLanguage="en-GB,en"/><rect width="99" height="99"/>'
        "</switch>"
    ),
    "a": '<a href="#x"><rect width="40" height="40"/></a>',
}


def rendered_share(text: str) -> float:
    image = QImage.fromData(
        bytes(resvg_py.svg_to_bytes(svg_string=text, width=1000, dpi=96, languages=["en"]))
    )
    image = image.convertToFormat(QImage.Format.Format_Alpha8)
    rows = np.frombuffer(image.constBits(), dtype=np.uint8).reshape(image.height(), image.bytesPerLine())
    return float(rows[:, : image.width()].sum(dtype=np.int64)) / 255 / (image.width() * image.height())


@pytest.mark.parametrize("name", CASES)
def test_painted_area_agrees_with_an_independent_renderer(name: str) -> None:
    text = HEAD + CASES[name] + "</svg>"
    areas = [figure_region(f, FINE, strokes_as_areas=True).shape for f in read_svg_text(text).drawing]
    page = shapely.box(0, 0, PAGE, PAGE)
    ours = shapely.union_all(areas).intersection(page).area / page.area
    theirs = rendered_share(text)
    assert theirs > 0.003, "the case paints too little to judge"
    assert ours == pytest.approx(theirs, rel=0.002)


def test_user_unit_given_by_hand_scales_the_same_drawing() -> None:
    text = HEAD + CASES["transforms"] + "</svg>"
    as_drawn = read_svg_text(text).drawing.figures[0]
    in_inches = read_svg_text(text, options=ReadOptions(unit=Unit.INCH)).drawing.figures[0]
    ratio = (
        figure_region(in_inches, Tolerance(arc_mm=1e-3), strokes_as_areas=False).area
        / figure_region(as_drawn, FINE, strokes_as_areas=False).area
    )
    assert ratio == pytest.approx(96**2, rel=1e-4)  # a user unit was 1/96 in
