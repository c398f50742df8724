"""All files appear or none; the drawing is never overwritten; a killed export leaves nothing half-written."""

from __future__ import annotations

import errno
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from inlayfit.document.staging import Staging, is_same_file, write_error
from inlayfit.errors import WriteError

OLD, NEW = "old", "new" * 1000


def listing(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def put(staging: Staging, *names: str) -> None:
    for name in names:
        staging.path(name).write_text(NEW)


def export(
    folder: Path, *names: str, protected: Path | None = None, stop: BaseException | None = None
) -> None:
    with Staging(folder, protected=protected) as staging:
        put(staging, *names)
        if stop is not None:
            raise stop
        staging.commit()


def test_files_appear_only_on_commit_and_all_together(tmp_path: Path) -> None:
    (tmp_path / "a.dxf").write_text(OLD)
    with Staging(tmp_path) as staging:
        put(staging, "a.dxf", "b.svg")
        assert (tmp_path / "a.dxf").read_text() == OLD
        assert not (tmp_path / "b.svg").exists()
        written = staging.commit()
    assert written == (tmp_path / "a.dxf", tmp_path / "b.svg")
    assert [path.read_text() for path in written] == [NEW, NEW]
    assert listing(tmp_path) == ["a.dxf", "b.svg"]


def test_work_that_stops_leaves_the_folder_as_it_was(tmp_path: Path) -> None:
    (tmp_path / "a.dxf").write_text(OLD)
    with pytest.raises(KeyboardInterrupt):
        export(tmp_path, "a.dxf", "b.svg", stop=KeyboardInterrupt())
    assert listing(tmp_path) == ["a.dxf"]
    assert (tmp_path / "a.dxf").read_text() == OLD


def test_a_folder_made_for_an_export_that_failed_is_taken_back(tmp_path: Path) -> None:
    with pytest.raises(ZeroDivisionError):
        export(tmp_path / "deep" / "er", "a.dxf", stop=ZeroDivisionError())
    assert listing(tmp_path) == []


def test_a_missing_folder_is_made(tmp_path: Path) -> None:
    with Staging(tmp_path / "deep" / "er") as staging:
        put(staging, "a.dxf")
        staging.commit()
    assert listing(tmp_path / "deep" / "er") == ["a.dxf"]


@pytest.mark.parametrize("kind", ["same", "symlink", "hardlink", "folder-symlink", "dotted"])
def test_the_drawing_is_never_overwritten_by_whatever_name_it_is_reached(kind: str, tmp_path: Path) -> None:
    folder = tmp_path / "drawings"
    folder.mkdir()
    drawing = folder / "pocket.dxf"
    drawing.write_text(OLD)
    out, source = folder, drawing
    if kind == "symlink":
        source = tmp_path / "link.dxf"
        source.symlink_to(drawing)
    elif kind == "hardlink":
        source = tmp_path / "twin.dxf"
        source.hardlink_to(drawing)
    elif kind == "folder-symlink":
        out = tmp_path / "out"
        out.symlink_to(folder, target_is_directory=True)
    elif kind == "dotted":
        out = folder / ".." / "drawings"
    with pytest.raises(WriteError, match="will not be overwritten"):
        export(out, "plug.dxf", "pocket.dxf", protected=source)
    assert listing(folder) == ["pocket.dxf"]
    assert drawing.read_text() == OLD


def test_an_output_name_that_links_to_the_drawing_is_refused(tmp_path: Path) -> None:
    drawing = tmp_path / "tray.dxf"
    drawing.write_text(OLD)
    out = tmp_path / "out"
    out.mkdir()
    (out / "pocket.dxf").symlink_to(drawing)
    with pytest.raises(WriteError, match="will not be overwritten"):
        export(out, "pocket.dxf", protected=drawing)
    assert drawing.read_text() == OLD


def test_an_outdated_file_is_gone_after_commit_but_not_before(tmp_path: Path) -> None:
    (tmp_path / "plug.dxf").write_text(OLD)
    with Staging(tmp_path) as staging:
        put(staging, "pocket.dxf")
        staging.remove("plug.dxf")
        assert (tmp_path / "plug.dxf").exists()
        staging.commit()
    assert listing(tmp_path) == ["pocket.dxf"]


def test_a_folder_in_the_way_is_named(tmp_path: Path) -> None:
    (tmp_path / "pocket.dxf").mkdir()
    with pytest.raises(WriteError, match=r"pocket\.dxf is a folder"), Staging(tmp_path) as staging:
        put(staging, "pocket.dxf")


def test_a_file_where_the_folder_should_be_is_named(tmp_path: Path) -> None:
    (tmp_path / "out").write_text(OLD)
    for folder in (tmp_path / "out", tmp_path / "out" / "deeper"):
        with pytest.raises(WriteError, match="not a folder"), Staging(folder):
            pytest.fail("must not get here")
    assert (tmp_path / "out").read_text() == OLD


@pytest.mark.skipif(os.name != "posix", reason="permissions of POSIX")
@pytest.mark.skipif(hasattr(os, "geteuid") and os.geteuid() == 0, reason="root may write anywhere")
def test_a_folder_one_may_not_write_into_is_named(tmp_path: Path) -> None:
    tmp_path.chmod(0o500)
    try:
        with pytest.raises(WriteError, match="may not write"), Staging(tmp_path):
            pytest.fail("must not get here")
    finally:
        tmp_path.chmod(0o700)


@pytest.mark.parametrize(
    ("code", "words"),
    [
        (errno.ENOSPC, "is full; free some space"),
        (errno.EACCES, "may not write"),
        (errno.EROFS, "cannot be written to"),
        (errno.EIO, "choose another folder"),
    ],
)
def test_a_disk_error_at_the_last_moment_is_one_sentence_and_leaves_nothing(
    code: int, words: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fails(_handle: int) -> None:
        raise OSError(code, os.strerror(code))

    (tmp_path / "a.dxf").write_text(OLD)
    monkeypatch.setattr(os, "fsync", fails)
    with pytest.raises(WriteError, match=words) as caught:
        export(tmp_path, "a.dxf", "b.dxf")
    assert "\n" not in str(caught.value)
    assert listing(tmp_path) == ["a.dxf"]
    assert (tmp_path / "a.dxf").read_text() == OLD


def test_a_disk_error_while_writing_is_one_sentence_too(tmp_path: Path) -> None:
    with pytest.raises(WriteError, match="is full"):
        export(tmp_path, "a.dxf", stop=OSError(errno.ENOSPC, "No space left on device"))
    assert listing(tmp_path) == []


KILLED = """
import sys, time
from pathlib import Path
from inlayfit.document.staging import Staging
with Staging(Path(sys.argv[1])) as staging:
    staging.path("pocket.dxf").write_text("half a dra")
    print("writing", flush=True)
    time.sleep(60)
"""


def test_a_process_killed_in_the_middle_leaves_nothing_half_written(tmp_path: Path) -> None:
    (tmp_path / "pocket.dxf").write_text(OLD)
    child = subprocess.Popen([sys.executable, "-c", KILLED, str(tmp_path)], stdout=subprocess.PIPE, text=True)
    assert child.stdout is not None
    with child:
        assert child.stdout.readline().strip() == "writing"
        child.send_signal(signal.SIGKILL if os.name == "posix" else signal.SIGTERM)
    assert (tmp_path / "pocket.dxf").read_text() == OLD
    (remains,) = (name for name in listing(tmp_path) if name != "pocket.dxf")
    assert remains.startswith(".")

    with Staging(tmp_path) as staging:  # too young to be called remains: another export may be at work
        put(staging, "plug.dxf")
        staging.commit()
    assert remains in listing(tmp_path)
    long_ago = time.time() - 7200
    os.utime(tmp_path / remains, (long_ago, long_ago))
    with Staging(tmp_path) as staging:
        put(staging, "plug.dxf")
        staging.commit()
    assert listing(tmp_path) == ["plug.dxf", "pocket.dxf"]


def test_names_that_do_not_exist_are_compared_as_paths(tmp_path: Path) -> None:
    assert is_same_file(tmp_path / "x", tmp_path / "y" / ".." / "x")
    assert not is_same_file(tmp_path / "x", tmp_path / "z")


def test_an_unknown_error_still_says_what_to_do() -> None:
    assert str(write_error(Path("out"), OSError("odd"))).endswith("choose another folder.")
