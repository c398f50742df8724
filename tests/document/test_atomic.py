"""A file is the old one or the new one, and stays what it was but for its bytes."""

from __future__ import annotations

import os
import stat
import sys
import time
from pathlib import Path

import pytest

from inlayfit.document.atomic import parts_of, write_atomically
from inlayfit.errors import WriteError

posix = pytest.mark.skipif(sys.platform == "win32", reason="modes and links are POSIX's")


def _mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


def test_the_bytes_are_there_and_nothing_else(tmp_path: Path) -> None:
    file = tmp_path / "tray.inlayfit"
    for data in (b"one", b"two"):
        write_atomically(file, data)
        assert file.read_bytes() == data
        assert list(tmp_path.iterdir()) == [file]


@posix
def test_a_new_file_can_be_read_by_those_the_umask_lets(tmp_path: Path) -> None:
    """POSIX open(2): mode & ~umask. Others at the workshop's share read what is saved there."""
    before = os.umask(0o022)
    try:
        write_atomically(tmp_path / "tray.inlayfit", b"new")
    finally:
        os.umask(before)
    assert _mode(tmp_path / "tray.inlayfit") == 0o644


@posix
@pytest.mark.parametrize("mode", [0o600, 0o640, 0o664])
def test_a_file_keeps_its_mode(tmp_path: Path, mode: int) -> None:
    file = tmp_path / "tray.inlayfit"
    file.write_bytes(b"old")
    file.chmod(mode)
    write_atomically(file, b"new")
    assert _mode(file) == mode


@posix
def test_a_link_stays_a_link(tmp_path: Path) -> None:
    (tmp_path / "deep").mkdir()
    real, link = tmp_path / "deep" / "real.inlayfit", tmp_path / "link.inlayfit"
    real.write_bytes(b"old")
    link.symlink_to(real)
    write_atomically(link, b"new")
    assert link.is_symlink()
    assert real.read_bytes() == b"new"


def test_a_file_that_is_locked_against_writing_stays(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "tray.inlayfit"
    file.write_bytes(b"old")
    monkeypatch.setattr(os, "access", lambda *_: False)  # whoever runs the tests may be allowed everything
    with pytest.raises(WriteError, match=r"^tray\.inlayfit was not written: it is locked against writing; "):
        write_atomically(file, b"new")
    assert file.read_bytes() == b"old"
    assert list(tmp_path.iterdir()) == [file]


def test_a_missing_folder_is_one_sentence(tmp_path: Path) -> None:
    with pytest.raises(WriteError, match="choose another folder"):
        write_atomically(tmp_path / "none" / "tray.inlayfit", b"new")


def test_what_a_killed_process_left_is_swept_when_it_is_old(tmp_path: Path) -> None:
    file = tmp_path / "tray.inlayfit"
    old, young, stranger = (
        tmp_path / name for name in (".tray.inlayfit.a.part", ".tray.inlayfit.b.part", ".other.a.part")
    )
    for part in (old, young, stranger):
        part.write_bytes(b"half")
    two_hours_ago = time.time() - 7200
    os.utime(old, (two_hours_ago, two_hours_ago))
    os.utime(stranger, (two_hours_ago, two_hours_ago))
    write_atomically(file, b"new")
    assert set(tmp_path.iterdir()) == {file, young, stranger}
    assert list(parts_of(file)) == [young]
