"""How the window looks: named colours, type sizes and spacing, in light, dark and two of high contrast.

A *token* is a colour by its use. Widgets ask for the tokens of the palette in force (`tokens_of`), so a
change of theme reaches them as an ordinary palette change and the program keeps no state of its own for it.

Rules that the tests hold (WCAG 2.2):
    1.4.3   text and muted text against every surface they stand on: at least 4.5 to 1.
    1.4.11  control outlines, the focus ring and every gap class against the canvas: at least 3 to 1.
    1.4.1   colour is never the only cue: each gap class has a stroke and a letter as well, and the five
            colours stay apart (CIEDE2000 of at least 13) for normal and three deficient colour visions.
Contrast with the canvas rises with danger. Violet and ochre never stand on a control; blue never in the map,
except for what is chosen.
"""

from __future__ import annotations

from dataclasses import dataclass, fields
from enum import StrEnum
from functools import cache, lru_cache

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontDatabase, QFontMetricsF, QPalette
from PySide6.QtWidgets import QApplication, QWidget

from inlayfit.document.class_styles import STYLES
from inlayfit.shipped import shipped_folder


class Theme(StrEnum):
    """The looks; those of high contrast are white on black and black on white."""

    LIGHT = "light"
    DARK = "dark"
    HIGH_CONTRAST = "high-contrast"
    HIGH_CONTRAST_WHITE = "high-contrast-white"


@dataclass(frozen=True, slots=True)
class Tokens:
    """Colours by use, each "#RRGGBB".

    Attributes:
        window, panel, canvas, field: surfaces, from the frame of the window to what is typed into.
        hover, pressed: a control's surface under the pointer and held down.
        hairline: decoration only; never the only outline of a control.
        edge: outline of a control.
        text, muted: lettering.
        accent, on_accent, accent_soft: the next sensible step; lettering on it; a chosen row or zone.
        focus: the ring round what has the keyboard, and what is chosen in the map.
        blocks, on_blocks: a check that blocks, and lettering on it.
        warns: a check that warns.
        host_tint, host_line: the fixed half's material and its wall.
        plug_tint: the plug's material where the plug is the fixed half.
        bites, tight, on, slack, loose: the gap classes.
        on_loose: lettering on `loose`; on the other four it is the canvas colour.
        zone: every second zone of the fit ruler.
        grid: lines behind a picture, and signs of what cannot be used now; weaker than any wall.
    """

    window: str
    panel: str
    canvas: str
    field: str
    hover: str
    pressed: str
    hairline: str
    edge: str
    text: str
    muted: str
    accent: str
    on_accent: str
    accent_soft: str
    focus: str
    blocks: str
    on_blocks: str
    warns: str
    host_tint: str
    host_line: str
    plug_tint: str
    bites: str
    tight: str
    on: str
    slack: str
    loose: str
    on_loose: str
    zone: str
    grid: str

    @property
    def gap_colours(self) -> tuple[str, str, str, str, str]:
        """The five classes from bites to loose."""
        return self.bites, self.tight, self.on, self.slack, self.loose


LIGHT = Tokens(
    window="#ECE8E0",
    panel="#F6F3EC",
    canvas="#FBFAF7",
    field="#FFFFFF",
    hover="#EAE4D9",
    pressed="#DED6C8",
    hairline="#DAD3C6",
    edge="#857E70",
    text="#1E1C19",
    muted="#5C564B",
    accent="#005A96",
    on_accent="#FFFFFF",
    accent_soft="#DDE9F1",
    focus="#0A6FB8",
    blocks="#A0231A",
    on_blocks="#FFFFFF",
    warns="#1E1C19",
    host_tint="#F6EDE2",
    host_line="#6E452B",
    plug_tint="#F3DCCB",
    bites=STYLES[0].colour,
    tight=STYLES[1].colour,
    on=STYLES[2].colour,
    slack=STYLES[3].colour,
    loose=STYLES[4].colour,
    on_loose="#1E1C19",
    zone="#E7DFD1",
    grid="#DAD3C6",
)

DARK = Tokens(
    window="#131517",
    panel="#202327",
    canvas="#1B1D20",
    field="#15171A",
    hover="#2B3035",
    pressed="#363C42",
    hairline="#353A40",
    edge="#808790",
    text="#ECE9E2",
    muted="#ABA79B",
    accent="#74BDEF",
    on_accent="#0E1216",
    accent_soft="#1F3A4D",
    focus="#8CCBF7",
    blocks="#FF9C8F",
    on_blocks="#2A0B08",
    warns="#ECE9E2",
    host_tint="#262220",
    host_line="#B99478",
    plug_tint="#3C2A20",
    bites="#F1E9FF",
    tight="#C3A9FF",
    on="#7FA5A4",
    slack="#C98A1E",
    loose="#96601A",
    on_loose="#FFFFFF",
    zone="#2B2E32",
    grid="#353A40",
)

HIGH_CONTRAST = Tokens(
    window="#000000",
    panel="#000000",
    canvas="#010101",
    field="#000000",
    hover="#1F2A33",
    pressed="#2E3D4A",
    hairline="#FFFFFF",
    edge="#FFFFFF",
    text="#FFFFFF",
    muted="#E6E3DC",
    accent="#8FD0FF",
    on_accent="#000000",
    accent_soft="#10354F",
    focus="#FFE04A",
    blocks="#FFA79B",
    on_blocks="#000000",
    warns="#FFFFFF",
    host_tint="#1A120C",
    host_line="#F0C9A8",
    plug_tint="#3A2417",
    bites="#F7F2FF",
    tight="#C3A9FF",
    on="#86B5B3",
    slack="#DE9A24",
    loose="#AC6F1E",
    on_loose="#FFFFFF",
    zone="#26292D",
    grid="#4E565E",
)

HIGH_CONTRAST_WHITE = Tokens(
    window="#FFFFFF",
    panel="#FFFFFF",
    canvas="#FFFFFF",
    field="#FFFFFF",
    hover="#E3E9EF",
    pressed="#C9D4DE",
    hairline="#000000",
    edge="#000000",
    text="#000000",
    muted="#1F1D1A",
    accent="#00335C",
    on_accent="#FFFFFF",
    accent_soft="#CDE2F5",
    focus="#0047C2",
    blocks="#86000B",
    on_blocks="#FFFFFF",
    warns="#000000",
    host_tint="#FAF1E6",
    host_line="#522E17",
    plug_tint="#F0D2BC",
    bites=STYLES[0].colour,
    tight=STYLES[1].colour,
    on=STYLES[2].colour,
    slack=STYLES[3].colour,
    loose=STYLES[4].colour,
    on_loose="#000000",
    zone="#E6E1D8",
    grid="#A8A49B",
)

_KEPT, _KEPT_WIDTHS = 256, 4096

_TOKENS = {
    Theme.LIGHT: LIGHT,
    Theme.DARK: DARK,
    Theme.HIGH_CONTRAST: HIGH_CONTRAST,
    Theme.HIGH_CONTRAST_WHITE: HIGH_CONTRAST_WHITE,
}
_MARK = QPalette.ColorRole.BrightText
"""Tells a theme's palette: style sheets give widgets palettes with other surfaces and inks, but keep this."""
_BY_MARK = {tokens.blocks.lower(): theme for theme, tokens in _TOKENS.items()}

STYLE = ("-style", "fusion")
"""Arguments of the application: the style our sheets are made for. Set later, it would be set up twice."""
RADIUS_PX = 5
"""Corner radius of a control."""
FOCUS_RING_PX = 2
"""Width of the ring round what has the keyboard."""
SMALLEST_TARGET_PX = 24
"""Hit area of anything that can be pressed or dragged (WCAG 2.2, 2.5.8)."""


@dataclass(frozen=True, slots=True)
class TypeSize:
    """A use of lettering: size in logical pixels and weight."""

    pixels: int
    weight: QFont.Weight


CAPTION = TypeSize(12, QFont.Weight.Normal)
BASE = TypeSize(13, QFont.Weight.Normal)
TITLE = TypeSize(13, QFont.Weight.DemiBold)
VERDICT = TypeSize(15, QFont.Weight.DemiBold)
INPUT = TypeSize(15, QFont.Weight.Medium)
SENTENCE = TypeSize(19, QFont.Weight.Normal)
READING = TypeSize(24, QFont.Weight.DemiBold)
HEADLINE = TypeSize(28, QFont.Weight.DemiBold)


def tokens(theme: Theme) -> Tokens:
    """The colours of a theme."""
    return _TOKENS[theme]


def theme_of(palette: QPalette) -> Theme:
    """Which theme a palette was made by; of a foreign one, light or dark by its window's lightness."""
    known = _BY_MARK.get(palette.color(_MARK).name())
    if known is not None:
        return known
    return Theme.DARK if palette.color(QPalette.ColorRole.Window).lightnessF() < 0.5 else Theme.LIGHT


def tokens_of(widget: QWidget) -> Tokens:
    """The colours a widget is to draw with: by its own palette if a theme made it, else the program's."""
    own = widget.testAttribute(Qt.WidgetAttribute.WA_SetPalette)
    known = _BY_MARK.get(widget.palette().color(_MARK).name()) if own else None
    return tokens(known or theme_of(QApplication.palette()))


@lru_cache(maxsize=_KEPT)
def colour(token: str, alpha: float = 1.0) -> QColor:
    """A token as a colour, with an opacity from 0 to 1. Kept and shared: do not change it."""
    result = QColor(token)
    result.setAlphaF(alpha)
    return result


@lru_cache(maxsize=_KEPT)
def font(size: TypeSize, *, family: str = "") -> QFont:
    """A font for a use, with figures of equal width so that a changing number does not jiggle.

    Kept and shared until `apply` changes the program's typeface: do not change it.
    """
    result = QFont(family) if family else QFont(QApplication.font())
    result.setPixelSize(size.pixels)
    result.setWeight(size.weight)
    tabular = QFont.Tag.fromString("tnum")
    if tabular is not None:
        result.setFeature(tabular, 1)
    return result


@lru_cache(maxsize=_KEPT_WIDTHS)
def text_width(words: str, size: TypeSize) -> float:
    """How wide words are in a font of `font`, in logical pixels; kept, because every repaint asks again."""
    return QFontMetricsF(font(size)).horizontalAdvance(words)


def palette_of(theme: Theme) -> QPalette:
    """A palette for the stock controls."""
    look = tokens(theme)
    palette = QPalette()
    role = QPalette.ColorRole
    pairs = {
        role.Window: look.window,
        role.WindowText: look.text,
        role.Base: look.field,
        role.AlternateBase: look.panel,
        role.Text: look.text,
        role.PlaceholderText: look.muted,
        role.Button: look.panel,
        role.ButtonText: look.text,
        role.BrightText: look.blocks,
        role.Highlight: look.accent,
        role.HighlightedText: look.on_accent,
        role.Accent: look.accent,
        role.Link: look.accent,
        role.LinkVisited: look.accent,
        role.ToolTipBase: look.field,
        role.ToolTipText: look.text,
        role.Light: look.field,
        role.Midlight: look.hover,
        role.Mid: look.edge,
        role.Dark: look.edge,
        role.Shadow: look.hairline,
    }
    for which, token in pairs.items():
        palette.setColor(which, colour(token))
    for which in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, colour(look.muted))
    palette.setColor(QPalette.ColorGroup.Disabled, role.Highlight, colour(look.hairline))
    return palette


@cache
def load_fonts() -> str:
    """Make the shipped typeface known to Qt; its family, or "" if it is not there (the system's serves)."""
    family = ""
    for file in sorted(shipped_folder("resources").joinpath("fonts").glob("*.ttf")):
        number = QFontDatabase.addApplicationFont(str(file))
        families = QFontDatabase.applicationFontFamilies(number) if number >= 0 else []
        family = families[0] if families else family
    return family


def style_sheet(theme: Theme) -> str:
    """The little that a palette cannot say: rounded outlines, focus rings, the one filled button."""
    look = tokens(theme)
    names = {field.name: getattr(look, field.name) for field in fields(look)}
    return _SHEET.format(radius=RADIUS_PX, **names)


_SHEET = """
QToolTip {{ background: {field}; color: {text}; border: 1px solid {edge}; padding: 6px 8px; }}
QPushButton {{ background: {field}; color: {text}; border: 1px solid {edge}; border-radius: {radius}px;
  min-height: 18px; padding: 4px 12px; }}
QPushButton:hover {{ background: {hover}; }}
QPushButton:pressed {{ background: {pressed}; }}
QPushButton:focus {{ border: 2px solid {focus}; padding: 3px 11px; }}
QPushButton:disabled {{ background: transparent; color: {muted}; border-color: {hairline}; }}
QPushButton[step="next"] {{ background: {accent}; color: {on_accent}; border-color: {accent};
  font-weight: 600; }}
QPushButton[step="next"]:hover {{ border-color: {text}; }}
QPushButton[step="next"]:focus {{ border: 3px double {on_accent}; padding: 2px 10px; }}
QPushButton[step="next"]:disabled {{ background: transparent; color: {muted}; border-color: {hairline}; }}
QLineEdit, QPlainTextEdit {{ background: {field}; color: {text}; border: 1px solid {edge};
  border-radius: {radius}px; padding: 4px 8px; selection-background-color: {accent};
  selection-color: {on_accent}; }}
QLineEdit:focus, QPlainTextEdit:focus {{ border: 2px solid {focus}; padding: 3px 7px; }}
QCheckBox {{ border: 2px solid transparent; border-radius: {radius}px; padding: 2px 4px; }}
QCheckBox:focus {{ border-color: {focus}; }}
QCheckBox::indicator:unchecked, QListView::indicator:unchecked {{ background: {field};
  border: 1px solid {edge}; border-radius: 3px; width: 13px; height: 13px; }}
QMenuBar {{ background: {window}; color: {text}; }}
QMenuBar::item {{ padding: 4px 10px; background: transparent; border: 1px solid transparent;
  border-radius: {radius}px; }}
QMenuBar::item:selected {{ background: {hover}; border-color: {focus}; }}
QMenu {{ background: {field}; color: {text}; border: 1px solid {edge}; padding: 4px; }}
QMenu::item {{ padding: 4px 23px 4px 11px; border: 1px solid transparent; border-radius: 4px; }}
QMenu::item:selected {{ background: {accent_soft}; color: {text}; border-color: {focus}; }}
QMenu::item:disabled {{ color: {muted}; }}
QMenu::separator {{ height: 1px; background: {hairline}; margin: 4px 8px; }}
"""


def apply(app: QApplication, theme: Theme) -> None:
    """Give the whole program a theme: palette, typeface, and the short style sheet for the style `STYLE`."""
    family = load_fonts()
    app.setPalette(palette_of(theme))
    app.setFont(font(BASE, family=family))
    font.cache_clear()
    text_width.cache_clear()
    app.setStyleSheet(style_sheet(theme))
