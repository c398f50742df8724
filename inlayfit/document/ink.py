"""The inks of a picture on paper: its grounds, and the few marks it is made of, in millimetres of paper.

How the classes of gap look is said in `inlayfit.document.class_styles`.
"""

from __future__ import annotations

from xml.etree.ElementTree import Element, SubElement

from inlayfit.document import class_styles
from inlayfit.document.class_styles import ClassStyle, Stroke
from inlayfit.fit.classes import GapClass
from inlayfit.geometry.path import Points

FONT = "Inter, 'Noto Sans', 'DejaVu Sans', Arial, sans-serif"
CANVAS, INK, SOFT = "#FBFAF7", "#23211E", "#5D574E"
HOST, HATCH, PLUG = "#E8E2D6", "#D3C9B6", "#F1EEE7"


STYLES = dict(zip(GapClass, class_styles.STYLES, strict=True))

_DASHES_MM = {Stroke.DASHED: "2.6 1.3", Stroke.DOTTED: "0 2.4"}


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
    """Draw an element's line in the style of a class; dots are round dashes without length."""
    element.set("stroke", style.colour)
    element.set("stroke-width", f"{style.width_mm:g}")
    element.set("stroke-linecap", "round" if style.stroke is Stroke.DOTTED else "butt")
    if style.stroke in _DASHES_MM:
        element.set("stroke-dasharray", _DASHES_MM[style.stroke])


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
