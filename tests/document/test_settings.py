from __future__ import annotations

import json
from pathlib import Path

import pytest

from inlayfit.document.settings import BY_KEY, TABLE, Kind, Settings, read_settings, write_settings


def test_every_row_accepts_its_own_default_and_explains_itself() -> None:
    for setting in TABLE:
        assert setting.accepts(setting.default), setting.key
        assert setting.label
        assert setting.why.endswith(".")
    assert len(BY_KEY) == len(TABLE)


def test_read_after_write_is_the_same(tmp_path: Path) -> None:
    settings = Settings().with_value("clearance_mm", 0.05).with_value("theme", "dark")
    settings = settings.with_value("strokes_as_areas", True)
    file = tmp_path / "deep" / "settings.json"
    write_settings(settings, file)
    assert read_settings(file) == (settings, ())


def test_only_what_differs_is_written(tmp_path: Path) -> None:
    file = tmp_path / "settings.json"
    write_settings(Settings().with_value("wheel", "scroll"), file)
    assert json.loads(file.read_text()) == {"wheel": "scroll"}


def test_a_missing_file_gives_the_usual_settings(tmp_path: Path) -> None:
    assert read_settings(tmp_path / "none.json") == (Settings(), ())


@pytest.mark.parametrize("content", [b"", b"\xff\xfe", b"[1]", b"{", b'"x"'])
def test_a_file_that_makes_no_sense_is_said_so(tmp_path: Path, content: bytes) -> None:
    file = tmp_path / "settings.json"
    file.write_bytes(content)
    settings, complaints = read_settings(file)
    assert settings == Settings()
    assert len(complaints) == 1


@pytest.mark.parametrize(
    ("key", "value"),
    [("clearance_mm", 1e9), ("clearance_mm", "wide"), ("theme", "pink"), ("strokes_as_areas", 1),
     ("plug_cutter_mm", 0), ("plug_cutter_mm", True), ("clearance_mm", float("nan"))],
)  # fmt: skip
def test_a_value_that_does_not_pass_falls_back_and_is_named(tmp_path: Path, key: str, value: object) -> None:
    file = tmp_path / "settings.json"
    file.write_text(json.dumps({key: value, "wheel": "scroll"}))
    settings, complaints = read_settings(file)
    assert settings[key] == BY_KEY[key].default
    assert settings["wheel"] == "scroll"
    assert BY_KEY[key].label in complaints[0]
    with pytest.raises(ValueError, match="cannot be"):
        Settings().with_value(key, value)  # type: ignore[arg-type]  # the very point


def test_choices_have_words() -> None:
    for setting in TABLE:
        assert bool(setting.choices) == (setting.kind is Kind.CHOICE)
