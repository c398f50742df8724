"""The look of the window is the one that was asked for, everywhere in it."""

from __future__ import annotations

import types

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from inlayfit.app import looks, theme
from inlayfit.app.theme import Theme
from inlayfit.app.window import MainWindow


@pytest.mark.parametrize(
    ("contrast", "scheme", "expected"),
    [
        ("HighContrast", Qt.ColorScheme.Light, Theme.HIGH_CONTRAST_WHITE),
        ("HighContrast", Qt.ColorScheme.Dark, Theme.HIGH_CONTRAST),
        ("HighContrast", Qt.ColorScheme.Unknown, Theme.HIGH_CONTRAST),
        ("NoPreference", Qt.ColorScheme.Light, Theme.LIGHT),
        ("NoPreference", Qt.ColorScheme.Dark, Theme.DARK),
        ("NoPreference", Qt.ColorScheme.Unknown, Theme.LIGHT),
    ],
)
def test_what_the_system_asks_for_is_followed(
    monkeypatch: pytest.MonkeyPatch,
    contrast: str,
    scheme: Qt.ColorScheme,
    expected: Theme,
) -> None:
    if not hasattr(Qt, "ContrastPreference"):
        pytest.skip("this Qt does not know what contrast the system asks for (before 6.10)")
    preference = Qt.ContrastPreference[contrast]
    accessibility = types.SimpleNamespace(contrastPreference=lambda: preference)
    hints = types.SimpleNamespace(colorScheme=lambda: scheme, accessibility=lambda: accessibility)
    monkeypatch.setattr(looks, "QGuiApplication", types.SimpleNamespace(styleHints=lambda: hints))
    assert looks.system_theme() is expected


@pytest.mark.parametrize("order", [1, -1])
def test_every_part_of_the_window_draws_in_the_theme_that_was_chosen(
    open_discs: MainWindow, order: int
) -> None:
    """Style sheets give some parts palettes of their own, which must not be taken for another theme."""
    commands = {
        Theme.LIGHT: "theme_light",
        Theme.DARK: "theme_dark",
        Theme.HIGH_CONTRAST: "theme_contrast",
        Theme.HIGH_CONTRAST_WHITE: "theme_contrast_white",
    }
    open_discs.actions_by_name["show_workshop"].trigger()
    for which in list(Theme)[::order]:
        open_discs.actions_by_name[commands[which]].trigger()
        parts = open_discs.findChildren(QWidget)
        others = [w for w in parts if theme.tokens_of(w) is not theme.tokens(which)]
        assert not others, (which, [type(w).__name__ for w in others])
