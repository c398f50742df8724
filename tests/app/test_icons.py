"""Icons: each name has its file and each file its name, they take the theme's colour, and they leave ink."""

from __future__ import annotations

import re

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QSize
from PySide6.QtGui import QIcon, QImage
from PySide6.QtWidgets import QApplication

from inlayfit.app import theme
from inlayfit.app.icons import OF_COMMANDS, IconButton, IconName, icon
from inlayfit.app.theme import DARK, LIGHT, Tokens
from inlayfit.app.window import MainWindow
from inlayfit.document.settings import Settings
from inlayfit.shipped import shipped_folder

FOLDER = shipped_folder("resources") / "icons"
PROGRAM_ICON = "inlayfit"


def test_names_and_files_are_the_same() -> None:
    assert {path.stem for path in FOLDER.glob("*.svg")} == {name.value for name in IconName} | {PROGRAM_ICON}


@pytest.mark.parametrize("name", list(IconName))
def test_an_icon_has_no_colour_of_its_own(name: IconName) -> None:
    text = (FOLDER / f"{name}.svg").read_text()
    assert 'viewBox="0 0 20 20"' in text
    assert not re.search(r"#[0-9a-fA-F]{3,8}\b|rgb\(", text)


@pytest.mark.parametrize("look", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("name", list(IconName))
def test_it_is_drawn_in_the_colour_of_the_theme(name: IconName, look: Tokens, qapp: QApplication) -> None:
    pixels = levels(icon(name, look), QIcon.Mode.Normal)
    solid = pixels[pixels[:, 3] == 255]
    assert len(solid) > 20
    wanted = [int(look.text[i : i + 2], 16) for i in (5, 3, 1)]
    assert np.abs(solid[:, :3].astype(int) - wanted).max() <= 2


def test_disabled_is_fainter(qapp: QApplication) -> None:
    mark = icon(IconName.OPEN, LIGHT)
    assert not np.array_equal(levels(mark, QIcon.Mode.Normal), levels(mark, QIcon.Mode.Disabled))


@pytest.mark.parametrize("size", [16, 20, 24, 32])
def test_it_is_there_at_every_size_and_ratio(size: int, qapp: QApplication) -> None:
    mark = icon(IconName.MEASURE, LIGHT)
    for ratio in (1.0, 2.0):
        assert mark.pixmap(QSize(size, size), ratio).size() == QSize(size, size) * ratio


@pytest.mark.parametrize("chosen", ["light", "dark", "high-contrast"])
def test_the_icons_of_a_window_follow_its_theme(window: MainWindow, chosen: str) -> None:
    window.session.change_settings(Settings().with_value("theme", chosen))
    look = theme.tokens(theme.Theme(chosen))
    for command, name in OF_COMMANDS.items():
        worn = levels(window.actions_by_name[command].icon(), QIcon.Mode.Normal)
        assert np.array_equal(worn, levels(icon(name, look), QIcon.Mode.Normal))
    buttons = window.findChildren(IconButton)
    assert len(buttons) >= 7
    wanted = [int(look.text[i : i + 2], 16) for i in (5, 3, 1)]
    for button in buttons:
        pixels = levels(button.icon(), QIcon.Mode.Normal)
        solid = pixels[pixels[:, 3] == 255]
        assert np.abs(solid[:, :3].astype(int) - wanted).max() <= 2


def levels(mark: QIcon, mode: QIcon.Mode) -> NDArray[np.uint8]:
    image = mark.pixmap(QSize(32, 32), 1.0, mode).toImage().convertToFormat(QImage.Format.Format_ARGB32)
    return np.frombuffer(image.constBits(), np.uint8).reshape(-1, 4).copy()
