"""The colours: readable (WCAG 2.2), and the gap classes apart for every eye.

Published sources: WCAG 2.2 (contrast ratio; 1.4.1, 1.4.3, 1.4.11); Sharma, Wu and Dalal 2005, "The CIEDE2000
color-difference formula: implementation notes, supplementary test data", table 1 (values from memory);
Machado, Oliveira and Fernandes 2009, "A physiologically-based model for simulation of color vision
deficiency", severity 1.0 (matrices from memory); IEC 61966-2-1 (sRGB).
"""

from __future__ import annotations

import itertools

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtGui import QFont, QFontMetricsF
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from inlayfit.app import theme
from inlayfit.app.theme import Theme, Tokens

Numbers = NDArray[np.float64]

SHARMA_PAIRS = np.array(
    [
        (50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425),
        (50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615),
        (50, 2.8361, -74.0200, 50, 0, -82.7485, 3.4412),
        (50, -1.3802, -84.2814, 50, 0, -82.7485, 1.0),
        (50, -1.1848, -84.8006, 50, 0, -82.7485, 1.0),
        (50, -0.9009, -85.5211, 50, 0, -82.7485, 1.0),
        (50, 0, 0, 50, -1, 2, 2.3669),
        (50, -1, 2, 50, 0, 0, 2.3669),
        (50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792),
        (50, 2.49, -0.001, 50, -2.49, 0.0010, 7.1792),
        (50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195),
        (50, 2.49, -0.001, 50, -2.49, 0.0012, 7.2195),
        (50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045),
        (50, -0.001, 2.49, 50, 0.0010, -2.49, 4.8045),
        (50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461),
        (50, 2.5, 0, 50, 0, -2.5, 4.3065),
        (50, 2.5, 0, 73, 25, -18, 27.1492),
        (50, 2.5, 0, 61, -5, 29, 22.8977),
        (50, 2.5, 0, 56, -27, -3, 31.9030),
        (50, 2.5, 0, 58, 24, 15, 19.4535),
        (50, 2.5, 0, 50, 3.1736, 0.5854, 1.0),
        (50, 2.5, 0, 50, 3.2972, 0, 1.0),
        (50, 2.5, 0, 50, 1.8634, 0.5757, 1.0),
        (50, 2.5, 0, 50, 3.2592, 0.3350, 1.0),
        (60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644),
        (63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.2630),
        (61.2901, 3.7196, -5.3901, 61.4292, 2.2480, -4.9620, 1.8731),
        (35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645),
        (22.7233, 20.0904, -46.6940, 23.0331, 14.9730, -42.5619, 2.0373),
        (36.4612, 47.8580, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146),
        (90.8027, -2.0831, 1.4410, 91.1528, -1.6435, 0.0447, 1.4441),
        (90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381),
        (6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377),
        (2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082),
    ]
)

SIGHTS = {
    "normal": np.eye(3),
    "protanopia": np.array(
        [
            [0.152286, 1.052583, -0.204868],
            [0.114503, 0.786281, 0.099216],
            [-0.003882, -0.048116, 1.051998],
        ]
    ),
    "deuteranopia": np.array(
        [
            [0.367322, 0.860646, -0.227968],
            [0.280085, 0.672501, 0.047413],
            [-0.011820, 0.042940, 0.968881],
        ]
    ),
    "tritanopia": np.array(
        [
            [1.255528, -0.076749, -0.178779],
            [-0.078411, 0.930809, 0.147602],
            [0.004733, 0.691367, 0.303900],
        ]
    ),
}


def linear_rgb(token: str) -> Numbers:
    """sRGB decoded to linear light (IEC 61966-2-1)."""
    value = np.array([int(token[i : i + 2], 16) for i in (1, 3, 5)]) / 255
    return np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)


def contrast(one: str, other: str) -> float:
    """WCAG 2.2: (L1 + 0.05) / (L2 + 0.05) with the lighter on top."""
    lights = sorted(float(linear_rgb(c) @ (0.2126, 0.7152, 0.0722)) for c in (one, other))
    return (lights[1] + 0.05) / (lights[0] + 0.05)


def lab(linear: Numbers) -> Numbers:
    """CIE L*a*b* (D65) of linear sRGB."""
    to_xyz = np.array(
        [
            [0.4124564, 0.3575761, 0.1804375],
            [0.2126729, 0.7151522, 0.0721750],
            [0.0193339, 0.1191920, 0.9503041],
        ]
    )
    t = to_xyz @ np.clip(linear, 0, 1) / to_xyz.sum(axis=1)
    f = np.where(t > (6 / 29) ** 3, np.cbrt(t), t / (3 * (6 / 29) ** 2) + 4 / 29)
    return np.array([116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])])


def ciede2000(one: Numbers, other: Numbers) -> float:
    """The CIEDE2000 colour difference, after Sharma, Wu and Dalal 2005, equations 2 to 22."""
    (l1, a1, b1), (l2, a2, b2) = one, other
    mean_c = (np.hypot(a1, b1) + np.hypot(a2, b2)) / 2
    g = 0.5 * (1 - np.sqrt(mean_c**7 / (mean_c**7 + 25**7)))
    a1, a2 = (1 + g) * a1, (1 + g) * a2
    c1, c2 = np.hypot(a1, b1), np.hypot(a2, b2)
    h1, h2 = np.degrees(np.arctan2(b1, a1)) % 360, np.degrees(np.arctan2(b2, a2)) % 360
    grey = c1 * c2 == 0
    dh = 0.0 if grey else (h2 - h1 + 180) % 360 - 180
    if not grey and h2 - h1 == 180:
        dh = 180.0
    d_l, d_c = l2 - l1, c2 - c1
    d_h = 2 * np.sqrt(c1 * c2) * np.sin(np.radians(dh / 2))
    mean_l, mean_c = (l1 + l2) / 2, (c1 + c2) / 2
    if grey:
        mean_h = h1 + h2
    elif abs(h1 - h2) <= 180:
        mean_h = (h1 + h2) / 2
    else:
        mean_h = (h1 + h2 + (360 if h1 + h2 < 360 else -360)) / 2
    hue = np.radians(mean_h)
    t = (
        1
        - 0.17 * np.cos(hue - np.radians(30))
        + 0.24 * np.cos(2 * hue)
        + 0.32 * np.cos(3 * hue + np.radians(6))
        - 0.20 * np.cos(4 * hue - np.radians(63))
    )
    s_l = 1 + 0.015 * (mean_l - 50) ** 2 / np.sqrt(20 + (mean_l - 50) ** 2)
    s_c, s_h = 1 + 0.045 * mean_c, 1 + 0.015 * mean_c * t
    turn = 30 * np.exp(-(((mean_h - 275) / 25) ** 2))
    r_t = -np.sin(np.radians(2 * turn)) * 2 * np.sqrt(mean_c**7 / (mean_c**7 + 25**7))
    l_part, c_part, h_part = d_l / s_l, d_c / s_c, d_h / s_h
    return float(np.sqrt(l_part**2 + c_part**2 + h_part**2 + r_t * c_part * h_part))


each_theme = pytest.mark.parametrize("look", [theme.tokens(t) for t in Theme], ids=[t.value for t in Theme])


def test_our_colour_difference_is_the_published_one() -> None:
    ours = [ciede2000(row[:3], row[3:6]) for row in SHARMA_PAIRS]
    assert np.abs(np.array(ours) - SHARMA_PAIRS[:, 6]).max() < 1e-4


def test_black_on_white_has_the_contrast_of_the_guideline() -> None:
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21)
    assert contrast("#777777", "#FFFFFF") == pytest.approx(4.48, abs=0.01)


@each_theme
def test_lettering_reads_on_every_surface(look: Tokens) -> None:
    """WCAG 2.2, 1.4.3."""
    surfaces = (
        look.window,
        look.panel,
        look.canvas,
        look.field,
        look.hover,
        look.accent_soft,
        look.host_tint,
    )
    assert min(contrast(look.text, surface) for surface in surfaces) >= 7
    assert min(contrast(look.muted, surface) for surface in surfaces[:4]) >= 4.5
    pairs = [
        (look.on_accent, look.accent),
        (look.accent, look.panel),
        (look.accent, look.window),
        (look.blocks, look.panel),
        (look.on_blocks, look.blocks),
        (look.host_line, look.host_tint),
        (look.host_line, look.canvas),
        (look.text, look.zone),
        (look.text, look.plug_tint),
    ]
    assert min(contrast(*pair) for pair in pairs) >= 4.5


@each_theme
def test_controls_and_gap_classes_stand_out(look: Tokens) -> None:
    """WCAG 2.2, 1.4.11."""
    for surface in (look.window, look.panel, look.canvas, look.field):
        assert contrast(look.edge, surface) >= 3
        assert contrast(look.focus, surface) >= 3
    assert min(contrast(c, look.canvas) for c in look.gap_colours) >= 3


@pytest.mark.parametrize("which", [Theme.HIGH_CONTRAST, Theme.HIGH_CONTRAST_WHITE])
def test_high_contrast_is_higher(which: Theme) -> None:
    """WCAG 2.2, 1.4.6: at least 7 to 1 for lettering; and as much for what has to be seen of controls."""
    look = theme.tokens(which)
    for surface in (look.window, look.panel, look.canvas, look.field, look.hover, look.accent_soft):
        assert contrast(look.muted, surface) >= 7
    for surface in (look.window, look.panel, look.canvas, look.field):
        for ink in (
            look.text,
            look.edge,
            look.hairline,
            look.focus,
            look.accent,
            look.blocks,
            look.host_line,
        ):
            assert contrast(ink, surface) >= 7
    assert contrast(look.on_accent, look.accent) >= 7


@each_theme
def test_contrast_rises_with_danger(look: Tokens) -> None:
    bites, tight, on, slack, loose = (contrast(c, look.canvas) for c in look.gap_colours)
    assert bites > tight > max(on, slack)
    assert min(on, slack) > loose


@each_theme
def test_class_letters_read_on_their_colour(look: Tokens) -> None:
    *others, loose = look.gap_colours
    assert min(contrast(look.canvas, c) for c in others) >= 4.5
    assert contrast(look.on_loose, loose) >= 3.9


@each_theme
@pytest.mark.parametrize("sight", SIGHTS)
def test_gap_classes_stay_apart(look: Tokens, sight: str) -> None:
    """WCAG 2.2, 1.4.1: colour is not the only cue, and still it is told apart."""
    seen = [lab(SIGHTS[sight] @ linear_rgb(c)) for c in look.gap_colours]
    apart = [ciede2000(a, b) for a, b in itertools.combinations(seen, 2)]
    assert min(apart) >= 13


@pytest.mark.parametrize("which", list(Theme))
def test_a_palette_tells_its_theme(which: Theme) -> None:
    assert theme.theme_of(theme.palette_of(which)) is which


def test_a_widget_finds_the_theme_that_was_applied(qtbot: QtBot, qapp: QApplication) -> None:
    button = QPushButton("Cut")
    qtbot.addWidget(button)
    for which in (Theme.DARK, Theme.LIGHT):
        theme.apply(qapp, which)
        assert theme.tokens_of(button) is theme.tokens(which)


def test_a_hyphen_in_a_word_is_no_wider_than_usual(qtbot: QtBot, qapp: QApplication) -> None:
    theme.apply(qapp, Theme.LIGHT)
    usual = QFont(theme.font(theme.READING))
    usual.clearFeatures()
    word = "tap-in"
    assert QFontMetricsF(theme.font(theme.READING)).horizontalAdvance(word) == pytest.approx(
        QFontMetricsF(usual).horizontalAdvance(word), abs=0.1
    )


def test_figures_have_equal_width(qtbot: QtBot, qapp: QApplication) -> None:
    theme.apply(qapp, Theme.LIGHT)
    metrics = QFontMetricsF(theme.font(theme.READING))
    assert len({metrics.horizontalAdvance(figure) for figure in "0123456789"}) == 1
    assert qapp.font().family() == "Inter"
