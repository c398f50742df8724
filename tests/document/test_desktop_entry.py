"""A double click starts the very program that was asked for, whatever its path; nothing is left behind.

What the entry means is read back by the steps of the Desktop Entry Specification (freedesktop.org), with the
POSIX shell for the quoting, which the standard takes from it; and judged by `desktop-file-validate` and asked
of `xdg-mime` where these are installed.
"""

from __future__ import annotations

import configparser
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.document.desktop_entry import (
    ENTRY,
    KIND,
    PICTURE,
    Opens,
    data_folder,
    entry_text,
    exec_value,
    remove_entry,
    start_command,
    who_opens,
    write_entry,
)
from inlayfit.errors import WriteError
from inlayfit.shipped import shipped_folder

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="freedesktop.org's standards")
PROGRAM = ("/home/someone/my venv/bin/inlayfit",)
words = st.text(
    st.sampled_from(list("ab/ \t\n\"'\\><~|&;$*?#()`%s"))
    | st.characters(codec="utf-8", exclude_characters="\0="),
    min_size=1,
    max_size=20,
)


def _unescaped(value: str) -> str:
    """Specification, "Possible value types": the escapes of a string."""
    meant = {"s": " ", "n": "\n", "t": "\t", "r": "\r", "\\": "\\"}
    return re.sub(r"\\(.)", lambda found: meant[found[1]], value)


def _split_by_the_shell(command: str) -> list[str]:
    """POSIX, Shell Command Language, 2.2.3: what stands between double quotes."""
    said = subprocess.run(
        ["sh", "-c", f"printf '%s\\0' {command}"], capture_output=True, check=True, env={"HOME": "/nowhere"}
    )
    return said.stdout.decode().split("\0")[:-1]


def _started(value: str, files: list[str]) -> list[str]:
    """What a desktop starts: escapes undone, then the quoting, then field codes expanded."""
    found: list[str] = []
    for argument in _split_by_the_shell(_unescaped(value)):
        found += files if argument == "%F" else [argument.replace("%%", "%")]
    return found


@given(st.lists(words, min_size=1, max_size=3))
def test_a_desktop_starts_what_was_meant(command: list[str]) -> None:
    value = exec_value(command)
    assert "\n" not in value
    assert _started(value, ["a b.inlayfit", "c"]) == [*command, "a b.inlayfit", "c"]


def test_a_plain_path_needs_no_quotes() -> None:
    """Launchers that know no quotes exist; they shall not meet any without need."""
    assert exec_value(("/opt/venv/bin/inlayfit",)) == "/opt/venv/bin/inlayfit %F"


@pytest.mark.parametrize("program", ["/home/a=b/bin/inlayfit", "/home/\udcff/inlayfit"])
def test_a_path_that_no_entry_can_hold_is_refused_in_one_sentence(tmp_path: Path, program: str) -> None:
    with pytest.raises(WriteError, match=r"^A desktop cannot start .*; install it in another folder\.$"):
        write_entry(tmp_path, (program,))
    assert list(tmp_path.iterdir()) == []


def test_writing_twice_is_writing_once(tmp_path: Path) -> None:
    write_entry(tmp_path, PROGRAM)
    before = {file: file.read_bytes() for file in (tmp_path / ENTRY, tmp_path / KIND, tmp_path / PICTURE)}
    write_entry(tmp_path, PROGRAM)
    assert {file: file.read_bytes() for file in before} == before


def test_removing_leaves_nothing_of_what_was_made(tmp_path: Path) -> None:
    write_entry(tmp_path, PROGRAM)
    write_entry(tmp_path, ("/another/inlayfit",))
    remove_entry(tmp_path)
    assert list(tmp_path.iterdir()) == []
    remove_entry(tmp_path)
    assert list(tmp_path.iterdir()) == []


def test_removing_leaves_what_was_there_before_and_what_others_put_there_since(tmp_path: Path) -> None:
    (tmp_path / "applications").mkdir()
    (tmp_path / "mime" / "packages").mkdir(parents=True)
    write_entry(tmp_path, PROGRAM)
    stranger = tmp_path / PICTURE.with_name("other.svg")
    stranger.write_text("<svg/>")
    remove_entry(tmp_path)
    assert (tmp_path / "applications").is_dir()
    assert (tmp_path / "mime" / "packages").is_dir()
    assert stranger.exists()


def test_an_entry_that_names_strange_folders_removes_none_of_them(tmp_path: Path) -> None:
    write_entry(tmp_path, PROGRAM)
    for folder in ("own", "own/deep"):
        (tmp_path / folder).mkdir()
    entry = tmp_path / ENTRY
    text = re.sub(
        r"(?m)^X-Inlayfit-Folders=.*$", "X-Inlayfit-Folders=own/deep;../..;/;own;", entry.read_text()
    )
    entry.write_text(text)
    remove_entry(tmp_path)
    assert (tmp_path / "own" / "deep").is_dir()


def test_who_opens_is_told_by_what_the_entry_starts(tmp_path: Path) -> None:
    assert who_opens(tmp_path, PROGRAM) is Opens.NOBODY
    write_entry(tmp_path, PROGRAM)
    assert who_opens(tmp_path, PROGRAM) is Opens.THIS
    assert who_opens(tmp_path, ("/another/inlayfit",)) is Opens.ANOTHER


def test_all_is_written_or_nothing(tmp_path: Path) -> None:
    (tmp_path / "applications").write_text("a file where the folder shall be")
    with pytest.raises(WriteError, match="was not made"):
        write_entry(tmp_path, PROGRAM)
    assert [file.name for file in tmp_path.iterdir()] == ["applications"]


def test_missing_tools_are_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(shutil, "which", lambda _: None)
    assert write_entry(tmp_path, PROGRAM).missing == ("update-mime-database", "update-desktop-database")


def test_a_tool_that_fails_is_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    false = shutil.which("false")
    monkeypatch.setattr(shutil, "which", lambda name: false if "mime" in name else None)
    assert write_entry(tmp_path, PROGRAM).failed == ("update-mime-database",)


@pytest.mark.parametrize(("named", "is_taken"), [("/data", True), ("data", False), ("", False)])
def test_a_relative_data_folder_counts_as_none(
    monkeypatch: pytest.MonkeyPatch, named: str, is_taken: bool
) -> None:
    """XDG Base Directory Specification: all paths must be absolute; a relative one is ignored."""
    monkeypatch.setenv("XDG_DATA_HOME", named)
    assert (data_folder() == Path(named)) is is_taken


def test_this_program_starts_by_its_own_command(tmp_path: Path) -> None:
    """From any folder, with nothing of this shell's environment."""
    command = start_command()
    said = subprocess.run(
        [*command, "--version"], capture_output=True, text=True, cwd=tmp_path, env={"HOME": str(tmp_path)}
    )
    assert said.stdout.startswith("inlayfit ")


def test_the_entry_claims_project_files_only() -> None:
    parser = configparser.RawConfigParser(strict=True, delimiters="=")
    parser.optionxform = str  # type: ignore[method-assign, assignment]  # keys are case-sensitive
    parser.read_string(entry_text(PROGRAM))
    assert parser["Desktop Entry"]["MimeType"] == "application/x-inlayfit-project+json;"


@pytest.mark.skipif(
    shutil.which("desktop-file-validate") is None, reason="desktop-file-utils is not installed"
)
def test_the_entry_passes_the_validator(tmp_path: Path) -> None:
    write_entry(tmp_path, PROGRAM)
    for entry in (tmp_path / ENTRY, shipped_folder("resources") / "desktop" / ENTRY.name):
        said = subprocess.run(["desktop-file-validate", str(entry)], capture_output=True, text=True)
        assert (said.returncode, said.stdout) == (0, "")


@pytest.mark.skipif(
    any(
        shutil.which(tool) is None for tool in ("xdg-mime", "update-mime-database", "update-desktop-database")
    ),
    reason="xdg-utils, shared-mime-info or desktop-file-utils is not installed",
)
def test_a_desktop_knows_a_project_by_name_and_by_contents_and_who_opens_it(tmp_path: Path) -> None:
    data = tmp_path / "data"
    write_entry(data, PROGRAM)
    environment = {
        "PATH": os.environ["PATH"], "HOME": str(tmp_path), "XDG_DATA_HOME": str(data),
        "XDG_DATA_DIRS": "/usr/share", "XDG_CONFIG_HOME": str(tmp_path / "config"),
    }  # fmt: skip

    def asked(*question: str) -> str:
        said = subprocess.run(
            ["xdg-mime", "query", *question], capture_output=True, text=True, env=environment
        )
        return said.stdout.strip()

    named = tmp_path / "tray.inlayfit"
    named.write_text('{\n  "format": "inlayfit project",\n  "version": 1\n}\n')
    kind = "application/x-inlayfit-project+json"
    assert asked("filetype", str(named)) == kind
    assert asked("default", kind) == "inlayfit.desktop"
    assert asked("default", "image/svg+xml") != "inlayfit.desktop"
    remove_entry(data)
    assert asked("default", kind) == ""
