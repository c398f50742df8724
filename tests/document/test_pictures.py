"""The gap picture: well formed, complete in words, and painted by resvg where it says it is."""

from __future__ import annotations

import re
from xml.etree.ElementTree import Element, fromstring

import numpy as np
import pytest
import resvg_py
from numpy.typing import NDArray
from PySide6.QtGui import QImage

from inlayfit.document.ink import CANVAS, HOST, STYLES
from inlayfit.document.pictures import gap_picture
from inlayfit.fit.classes import GapClass
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.result import FitResult, HalfResult
from inlayfit.fit.spec import FitSpec
from inlayfit.geometry.morphology import erode
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT
from inlayfit.geometry.transform import Transform

SVG = "{http://www.w3.org/2000/svg}"


def square(x: float = 0.0, size: float = 20.0) -> Region:
    return Region.of_ring([(x, 0), (x + size, 0), (x + size, size), (x, size)])


def fitted(pocket: Region, *, clearance: float = 0.05, dx: float = 0.0) -> FitResult:
    plug = erode(pocket, clearance, EXACT).moved(Transform.shift(dx, 0))
    return FitResult(FitSpec(clearance), HalfResult(pocket), HalfResult(plug), gap_map(pocket, plug))


def words(root: Element) -> list[str]:
    return [text.text or "" for text in root.iter(f"{SVG}text")]


def pixels(svg: str) -> NDArray[np.uint8]:
    data = bytes(
        resvg_py.svg_to_bytes(svg_string=svg, dpi=96, width=1120)
    )  # four pixels a millimetre of paper
    image = QImage.fromData(data).convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)


def ink(svg: str, colour: str) -> int:
    """How many pixels have exactly this colour."""
    wanted = np.array([int(colour[i : i + 2], 16) for i in (1, 3, 5)])
    return int((pixels(svg) == wanted).all(axis=2).sum())


def luminance(colour: str) -> float:
    """WCAG 2.1, definition of relative luminance."""
    channels = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    bright, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (bright + 0.05) / (dark + 0.05)


def test_the_words_say_what_was_meant_and_what_was_found() -> None:
    said = words(fromstring(gap_picture([("foot", fitted(square()))]).encode()))
    assert said[0] == "Gap round foot"
    assert said[1].startswith("Meant: 0.050 per side (0.100 overall). Found: 0.050 to 0.050 mm per side;")
    assert "0.050 (0.100)" in said
    assert {"even all round · O", "0.045 to 0.055 per side"} <= set(said)


def test_every_class_stands_in_the_legend_with_its_letter_and_length() -> None:
    said = words(fromstring(gap_picture([("foot", fitted(square(), dx=0.08))]).encode()))
    for kind in GapClass:
        assert f"{kind.letter}  {kind.word}" in said
    assert sum(text.count("mm of wall") for text in said) >= 3
    percent = sum(int(m[1]) for text in said if (m := re.search(r"wall, (\d+) %", text)))
    assert 97 <= percent <= 102


def test_a_class_is_painted_only_if_the_map_holds_it() -> None:
    ids = {e.get("id") for e in fromstring(gap_picture([("a", fitted(square()))]).encode()).iter()}
    assert "gap-on" in ids
    assert not {"gap-bites", "gap-tight", "gap-slack", "gap-loose"} & ids
    ids = {e.get("id") for e in fromstring(gap_picture([("a", fitted(square(), dx=0.08))]).encode()).iter()}
    assert {"gap-bites", "gap-bites-ticks", "gap-loose"} <= ids


def test_resvg_paints_the_bands_in_their_colours() -> None:
    on, moved = (gap_picture([("a", fitted(square(), dx=dx))]) for dx in (0.0, 0.08))
    legend = ink(gap_picture([("a", _nothing())]), STYLES[GapClass.BITES].colour)
    assert ink(on, STYLES[GapClass.BITES].colour) < 2 * legend + 50
    assert ink(moved, STYLES[GapClass.BITES].colour) > 10 * legend
    assert ink(on, STYLES[GapClass.ON].colour) > ink(moved, STYLES[GapClass.ON].colour)
    assert ink(on, HOST) > 50_000


def _nothing() -> FitResult:
    empty = Region.empty()
    return FitResult(FitSpec(0.05), HalfResult(square()), HalfResult(empty), gap_map(square(), empty))


def test_a_plug_that_is_gone_is_said_and_drawn_as_an_empty_pocket() -> None:
    root = fromstring(gap_picture([("foot", _nothing())]).encode())
    assert "no plug is left" in words(root)[1]
    assert not list(next(g for g in root.iter(f"{SVG}g") if g.get("id") == "plugs"))


@pytest.mark.parametrize("size", [0.02, 20.0, 5000.0])
@pytest.mark.parametrize("stretch", [0.02, 1.0, 50.0])
def test_any_size_and_shape_fits_on_the_page(size: float, stretch: float) -> None:
    pocket = square(1e4, size).moved(Transform.scale(1, stretch))
    root = fromstring(
        gap_picture([("a", fitted(pocket, clearance=0.001 * min(size, size * stretch)))]).encode()
    )
    x0, y0, width, height = (float(v) for v in root.get("viewBox", "").split())
    for path in root.iter(f"{SVG}path"):
        numbers = re.findall(r"M(-?[\d.]+) (-?[\d.]+)", path.get("d", ""))
        assert all(x0 <= float(x) <= width and y0 - 1 <= float(y) <= height for x, y in numbers)


def test_many_fittings_carry_two_flags_in_all_and_few_carry_two_each_or_one_if_even() -> None:
    def flags(count: int, dx: float = 0.03, word: str = "est · ") -> int:
        results = [(f"foot-{i}", fitted(square(30.0 * i), dx=dx)) for i in range(count)]
        return sum(word in text for text in words(fromstring(gap_picture(results).encode())))

    assert [flags(1), flags(3), flags(9)] == [2, 6, 2]
    assert [flags(n, 0.0) for n in (1, 3, 9)] == [0, 0, 0]
    assert [flags(n, 0.0, "even all round · ") for n in (1, 3, 9)] == [1, 3, 1]


def test_names_cannot_break_the_picture() -> None:
    svg = gap_picture([('<script>"&', fitted(square()))])
    assert "<script>" not in svg
    assert words(fromstring(svg.encode()))[0] == 'Gap round <script>"&'


def test_different_clearances_are_compared_with_their_own() -> None:
    results = [("a", fitted(square())), ("b", fitted(square(30), clearance=0.2))]
    said = words(fromstring(gap_picture(results).encode()))
    assert "several clearances" in said[1]
    assert "as meant" in said


@pytest.mark.parametrize("kind", list(GapClass))
def test_every_class_is_told_from_the_canvas(kind: GapClass) -> None:
    """WCAG 2.1, 1.4.11: at least 3:1; and the more dangerous of two neighbours never stands out less."""
    assert contrast(STYLES[kind].colour, CANVAS) >= 3
    if kind in (GapClass.BITES, GapClass.TIGHT):
        assert contrast(STYLES[kind].colour, CANVAS) > contrast(STYLES[GapClass(kind + 1)].colour, CANVAS)
