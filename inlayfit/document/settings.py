"""Settings: one table that gives each its default, its limits, its place on the page and its words.

The table is all there is: reading, checking, the settings page and the help are made from it. Settings
are kept as JSON in the platform's configuration folder. A value that does not pass falls back to its
default and is named, so a file edited by hand never stops the program.
"""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path
from types import MappingProxyType
from typing import Any, TypeAlias

import platformdirs

from inlayfit.document.atomic import write_atomically
from inlayfit.wording import Worded

Value: TypeAlias = "str | float | bool"


class Kind(StrEnum):
    """What a setting holds, and so which control shows it."""

    LENGTH = "length"
    CHOICE = "choice"
    SWITCH = "switch"
    NUMBER = "number"


@dataclass(frozen=True, slots=True)
class Setting:
    """One row of the table.

    Attributes:
        key: its name in the file; never changes meaning.
        group: heading it stands under on the page.
        kind: what it holds.
        default: used when nothing else is known.
        label: what the page calls it.
        why: what it does and why it matters, one or two sentences.
        low, high: limits of a length (mm) or number, both allowed.
        choices: (value, words) of a choice.
        instead: what is used where 0 means that the length is not given; "" where 0 is a length.
    """

    key: str
    group: str
    kind: Kind
    default: Value
    label: str
    why: str
    low: float = -math.inf
    high: float = math.inf
    choices: tuple[tuple[str, str], ...] = ()
    instead: str = ""

    def accepts(self, value: object) -> bool:
        """Whether a value may stand for this setting."""
        if self.kind is Kind.SWITCH:
            return isinstance(value, bool)
        if self.kind is Kind.CHOICE:
            return value in [choice for choice, _ in self.choices]
        is_number = isinstance(value, int | float) and not isinstance(value, bool)
        return is_number and self.low <= float(value) <= self.high  # type: ignore[arg-type]  # is_number holds


TABLE: tuple[Setting, ...] = (
    Setting(
        "unit", "Lengths", Kind.CHOICE, "MM", "Unit of new work",
        "Lengths are shown in it, and a bare number you type has it. An open document keeps its own.",
        choices=(("MM", "millimetres"), ("INCH", "inches"), ("THOU", "thousandths of an inch")),
    ),
    Setting(
        "clearance_mm", "New fits", Kind.LENGTH, 0.03, "Clearance per side",
        "Where a new fit starts. Your own trials tell you better.", low=-1.0, high=5.0,
    ),
    Setting(
        "pocket_cutter_mm", "New fits", Kind.LENGTH, 2.0, "Pocket cutter",
        "Measured diameter. An error here costs its full amount per side.", low=0.01, high=100.0,
    ),
    Setting(
        "plug_cutter_mm", "New fits", Kind.LENGTH, 3.0, "Plug cutter",
        "Measured diameter. An error here costs its full amount per side.", low=0.01, high=100.0,
    ),
    Setting(
        "finishing_allowance_mm", "New fits", Kind.LENGTH, 0.0, "Finishing allowance",
        "Stock that roughing leaves on the wall for the finishing pass; 0 for no roughing outline.",
        low=0.0, high=5.0,
    ),
    Setting(
        "cutter_varies_mm", "Workshop of new work", Kind.LENGTH, 0.0, "Cutter known to ±",
        "How well its diameter is measured. Work that is open keeps its own numbers.", low=0.0, high=1.0,
        instead="Not given: its diameter counts as exact.",
    ),
    Setting(
        "runout_mm", "Workshop of new work", Kind.LENGTH, 0.0, "Runout",
        "Total reading of a dial gauge on the turning cutter.", low=0.0, high=1.0,
        instead="Not given: it counts as running true.",
    ),
    Setting(
        "repeatability_mm", "Workshop of new work", Kind.LENGTH, 0.0, "A width repeats to ±",
        "How closely the width of one half comes out again.", low=0.0, high=1.0,
        instead="Not given: each width counts as coming out alike.",
    ),
    Setting(
        "thickness_varies_mm", "Workshop of new work", Kind.LENGTH, 0.0, "Thickness varies by ±",
        "That of the stock, from sheet to sheet.", low=0.0, high=10.0,
        instead="Not given: the stock counts as equally thick everywhere.",
    ),
    Setting(
        "join_gap_mm", "Reading drawings", Kind.LENGTH, 0.01, "Join ends closer than",
        "Line ends this close count as one point. Each joint made is listed in the notes.",
        low=0.0, high=1.0,
    ),
    Setting(
        "strokes_as_areas", "Reading drawings", Kind.SWITCH, False, "Painted lines are areas",
        "Reads a thick painted line as the area it covers, not as its middle line.",
    ),
    Setting(
        "theme", "Window", Kind.CHOICE, "system", "Colours",
        "Light for a bright bench, dark for a dim one, high contrast for tired eyes.",
        choices=(
            ("system", "as the system"), ("light", "light"), ("dark", "dark"),
            ("high-contrast", "high contrast, black"), ("high-contrast-white", "high contrast, white"),
        ),
    ),
    Setting(
        "wheel", "Window", Kind.CHOICE, "zoom", "Mouse wheel",
        "Turning it zooms about the pointer or scrolls. With Ctrl it always zooms.",
        choices=(("zoom", "zooms"), ("scroll", "scrolls")),
    ),
    Setting(
        "language", "Window", Kind.CHOICE, "system", "Language",
        "Takes effect when the window is opened again.",
        choices=(("system", "as the system"), ("en", "English"), ("de", "Deutsch")),
    ),
)  # fmt: skip
BY_KEY: Mapping[str, Setting] = MappingProxyType({setting.key: setting for setting in TABLE})


@dataclass(frozen=True, slots=True)
class Settings:
    """A value for every row of the table."""

    values: tuple[Value, ...] = tuple(setting.default for setting in TABLE)

    def __getitem__(self, key: str) -> Value:
        return self.values[_position(key)]

    def text(self, key: str) -> str:
        """The value of a choice."""
        return str(self[key])

    def number(self, key: str) -> float:
        """The value of a length (mm) or number."""
        return float(self[key])

    def switch(self, key: str) -> bool:
        """The value of a switch."""
        return bool(self[key])

    def with_value(self, key: str, value: Value) -> Settings:
        """Settings with one other value; ValueError if the table refuses it."""
        setting = BY_KEY[key]
        if not setting.accepts(value):
            raise ValueError(f"“{setting.label}” cannot be {value}.")
        values = list(self.values)
        values[_position(key)] = value
        return Settings(tuple(values))


def settings_file() -> Path:
    """Where settings are kept on this platform."""
    return Path(platformdirs.user_config_dir("inlayfit", appauthor=False)) / "settings.json"


def read_settings(path: Path) -> tuple[Settings, tuple[str, ...]]:
    """Settings from a file, and a sentence for each value that had to fall back to its default.

    A missing file gives all defaults and no sentence.
    """
    try:
        raw: Any = json.loads(path.read_bytes())
    except FileNotFoundError:
        return Settings(), ()
    except (OSError, ValueError):
        raw = None
    if not isinstance(raw, dict):
        return Settings(), (
            Worded("The settings in {name} cannot be read; the usual ones are used.", name=path.name),
        )
    settings, complaints = Settings(), []
    for key in raw.keys() & BY_KEY.keys():
        if BY_KEY[key].accepts(raw[key]):
            settings = settings.with_value(key, raw[key])
        else:
            complaints.append(
                Worded(
                    "“{label}” cannot be {value}; the usual value is used.",
                    label=Worded.again(BY_KEY[key].label, {}),
                    value=str(raw[key])[:40],
                )
            )
    return settings, tuple(complaints)


def write_settings(settings: Settings, path: Path) -> None:
    """Keep settings; only those that differ from the usual ones are written."""
    changed = {s.key: settings[s.key] for s in TABLE if settings[s.key] != s.default}
    path.parent.mkdir(parents=True, exist_ok=True)
    write_atomically(path, (json.dumps(changed, indent=2, sort_keys=True) + "\n").encode())


def _position(key: str) -> int:
    return [setting.key for setting in TABLE].index(key)
