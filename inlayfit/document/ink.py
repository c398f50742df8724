"""The inks of a picture: how classes of gap look on light ground, and the few marks a picture is made of.

Every class has a colour, a stroke and a letter, so that it is told apart in grey and by every eye. The
colours stand out more the more dangerous the class is; all reach a contrast of 3:1 against the canvas
(WCAG 2.1, 1.4.11).
"""

from __future__ import annotations

from dataclasses import dataclass
from xml.etree.ElementTree import Element, SubElement

from inlayfit.fit.classes import GapClass
from inlayfit.geometry.path import Points

FONT = "Inter, 'Noto Sans', 'DejaVu Sans', Arial, sans-serif"
CANVAS, INK, SOFT = "#FBFAF7", "#23211E", "#5D574E"
HOST, HATCH, PLUG = "#E8E2D6", "#D3C9B6", "#F1EEE7"


@dataclass(frozen=True, slots=True)
class ClassStyle:
    """How a class is drawn on light ground: colour, width in mm of paper, dashes."""

    colour: str
    width: float
    dashes: str = ""
    cap: str = "butt"


STYLES = {
    GapClass.BITES: ClassStyle("#260B5E", 1.6),
    GapClass.TIGHT: ClassStyle("#5A3CB4", 1.3),
    GapClass.ON: ClassStyle("#3F6C6B", 0.65),
    GapClass.SLACK: ClassStyle("#935600", 1.3, "2.6 1.3"),
    GapClass.LOOSE: ClassStyle("#C27C00", 1.6, "0 2.4", "round"),
}


def rectangle(
    parent: Element, box: tuple[float, float, float, float], *, fill: str, radius: float = 0.0
) -> Element:
    """Put a rectangle (x, y, width, height) into a picture."""
    x, y, width, height = (number(value) for value in box)
    return SubElement(parent, "rect", x=x, y=y, width=width, height=height, rx=number(radius), fill=fill)


def line_data(points: Points, *, closed: bool) -> str:
    """Path data through (n, 2) points."""
    pairs = " ".join(f"{number(x)} {number(y)}" for x, y in points.tolist())
    return f"M{pairs}{'Z' if closed else ''}"


def stroke_as(element: Element, style: ClassStyle) -> None:
    """Draw an element's line in the style of a class."""
    element.set("stroke", style.colour)
    element.set("stroke-width", f"{style.width:g}")
    element.set("stroke-linecap", style.cap)
    if style.dashes:
        element.set("stroke-dasharray", style.dashes)


def halo(text: Element, colour: str) -> None:
    """Keep a text legible where it lies upon lines."""
    text.set("stroke", colour)
    text.set("stroke-width", "0.9")
    text.set("stroke-linejoin", "round")
    text.set("paint-order", "stroke")


def text_at(
    parent: Element, x: float, y: float, words: str, *, size: float, weight: str = "400", colour: str = INK
) -> Element:
    """Put words into a picture; (x, y) is where their base line starts."""
    text = SubElement(parent, "text", x=number(x), y=number(y), fill=colour)
    text.set("font-size", f"{size:g}")
    text.set("font-weight", weight)
    text.text = words
    return text


def number(value: float) -> str:
    """A length in mm of paper as SVG wants it, to a thousandth."""
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
