"""Double-click on a project file: the entry that tells a desktop which program opens it.

A desktop after the standards of freedesktop.org looks into the person's data folder for three files:

| file | says | standard |
|---|---|---|
| `applications/inlayfit.desktop` | how the program is called and started | Desktop Entry |
| `mime/packages/inlayfit.xml` | how a project is known, by name and by contents | Shared MIME-info Database |
| `icons/hicolor/scalable/apps/inlayfit.svg` | the picture of both | Icon Theme |

A wheel carries them for a whole system, but pip gives them a place that a desktop looks at only where it
installs for everybody or for one person, and never tells the desktop's caches. So the program can write
them itself, with the full name of the very program that runs, and take them away again. The entry notes
which folders were made for it; these go with it.

It claims project files only: a person's programs for DXF and SVG stay what they are.
"""

from __future__ import annotations

import contextlib
import os
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from pathlib import Path
from types import MappingProxyType

from inlayfit.document.atomic import write_atomically
from inlayfit.errors import WriteError, reason_of
from inlayfit.shipped import shipped_folder
from inlayfit.wording import Worded

ENTRY = Path("applications/inlayfit.desktop")
KIND = Path("mime/packages/inlayfit.xml")
PICTURE = Path("icons/hicolor/scalable/apps/inlayfit.svg")
_MADE_KEY = "X-Inlayfit-Folders"
_RESERVED = frozenset(" \t\n\"'\\><~|&;$*?#()`")
"""Characters that need quotes (Desktop Entry Specification, "The Exec key")."""
_WITHIN_QUOTES = frozenset('"`$\\')
"""Those that need a backslash even there."""
_GENERAL: Mapping[str, str] = MappingProxyType({"\\": "\\\\", "\n": "\\n", "\t": "\\t", "\r": "\\r"})
"""Escapes of every value of type string, undone before the quoting (ibid., "Possible value types")."""
_TOOL_S = 20.0


class Opens(Enum):
    """Who opens a project file at a double click, as far as the person's own folder says."""

    THIS = "this program"
    ANOTHER = "another copy of it"
    NOBODY = "nobody"


@dataclass(frozen=True, slots=True)
class Told:
    """What became of telling the desktop's caches.

    Attributes:
        missing: tools that are not installed, by name.
        failed: tools that ended with an error.
    """

    missing: tuple[str, ...] = ()
    failed: tuple[str, ...] = ()


def is_supported() -> bool:
    """Whether desktops of this system keep to the standards of freedesktop.org."""
    return sys.platform not in ("win32", "darwin", "cygwin")


def data_folder() -> Path:
    """The person's data folder (XDG Base Directory Specification: a relative path counts as none)."""
    named = Path(os.environ.get("XDG_DATA_HOME", ""))
    return named if named.is_absolute() else Path.home() / ".local" / "share"


def start_command() -> tuple[str, ...]:
    """What starts this very program, with full paths: its script if it has one, else Python."""
    root = Path(__file__).resolve().parents[2]
    started = Path(sys.argv[0]).resolve()
    is_installed = False
    for scheme in (sysconfig.get_default_scheme(), f"{os.name}_user"):
        script = Path(sysconfig.get_path("scripts", scheme)) / "inlayfit"
        folders = {Path(sysconfig.get_path(name, scheme)).resolve() for name in ("purelib", "platlib")}
        is_installed = is_installed or root in folders
        if script.is_file() and (root in folders or script.resolve() == started):
            return (str(script),)
    python = (sys.executable, "-m", "inlayfit")
    return python if is_installed else (shutil.which("env") or "env", f"PYTHONPATH={root}", *python)


def program_file() -> Path:
    """The file to pick where a person must say by hand what opens a project."""
    script = Path(sysconfig.get_path("scripts")) / ("inlayfit.exe" if sys.platform == "win32" else "inlayfit")
    return script if script.is_file() else Path(sys.argv[0]).resolve()


def exec_value(command: Sequence[str]) -> str:
    """The value of the key Exec for a command that takes files.

    Raises:
        WriteError: the program's path holds "=", which the standard does not allow, or is not UTF-8.
    """
    program = command[0]
    if "=" in program or not _is_utf8("".join(command)):
        what = Worded("“=”") if "=" in program else Worded("letters that are not UTF-8")
        where = program.encode("utf-8", "replace").decode()
        raise WriteError(
            Worded(
                "A desktop cannot start a program whose path holds {what} ({where}); install "
                "it in another folder.",
                what=what,
                where=where,
            )
        )
    return string_value(" ".join([*(_quoted(argument) for argument in command), "%F"]))


def string_value(text: str) -> str:
    """A text as the value of a key of type string."""
    escaped = "".join(_GENERAL.get(letter, letter) for letter in text)
    return "\\s" + escaped[1:] if escaped.startswith(" ") else escaped


def _is_utf8(text: str) -> bool:
    """Whether a text has a UTF-8 form; a file name of other bytes has none (PEP 383)."""
    return not any("\ud800" <= letter <= "\udfff" for letter in text)


def _quoted(argument: str) -> str:
    plain = argument.replace("%", "%%")
    if argument and not _RESERVED & set(argument):
        return plain
    return '"' + "".join("\\" + a if a in _WITHIN_QUOTES else a for a in plain) + '"'


def entry_text(command: Sequence[str], *, made: Sequence[Path] = ()) -> str:
    """The desktop entry for a command: the shipped one, started by it; `made` are folders made for it."""
    shipped = (shipped_folder("resources") / "desktop" / ENTRY.name).read_text(encoding="utf-8")
    changed = {"Exec": exec_value(command)}
    lines = []
    for line in shipped.splitlines():
        key = line.partition("=")[0]
        lines.append(f"{key}={changed[key]}" if key in changed else line)
    lines.append(f"TryExec={string_value(_program(command))}")
    if made:
        lines.append(f"{_MADE_KEY}=" + "".join(f"{folder.as_posix()};" for folder in made))
    return "\n".join(lines) + "\n"


def _program(command: Sequence[str]) -> str:
    """What must be there for the command to work: the program behind `env NAME=VALUE`, if that starts it."""
    if Path(command[0]).name != "env":
        return command[0]
    return next((argument for argument in command[1:] if "=" not in argument), command[0])


def who_opens(data: Path, command: Sequence[str]) -> Opens:
    """Who opens project files, as the data folder says."""
    started = _value(data / ENTRY, "Exec")
    if started is None or not (data / KIND).exists():
        return Opens.NOBODY
    return Opens.THIS if started == exec_value(command) else Opens.ANOTHER


def write_entry(data: Path, command: Sequence[str]) -> Told:
    """Let a double click on a project start `command`; all files are written, or none.

    Raises:
        WriteError: a file could not be written, or the command cannot be started by a desktop.
    """
    resources = shipped_folder("resources")
    made = list(dict.fromkeys([*_made_before(data), *_missing_folders(data)]))
    contents = {
        PICTURE: (resources / "icons" / PICTURE.name).read_bytes(),
        KIND: (resources / "desktop" / KIND.name).read_bytes(),
        ENTRY: entry_text(command, made=made).encode(),
    }
    before = {name: _bytes_of(data / name) for name in contents}
    try:
        for name, content in contents.items():
            _make_folder(data / name)
            write_atomically(data / name, content)
    except WriteError:
        _put_back(data, before, made)
        raise
    return _tell(data)


def remove_entry(data: Path) -> Told:
    """Take away what `write_entry` wrote, and the folders made for it unless others use them now.

    Raises:
        WriteError: a file could not be removed.
    """
    made = _made_before(data)
    for name in (ENTRY, KIND, PICTURE):
        try:
            (data / name).unlink(missing_ok=True)
        except OSError as error:
            reason = reason_of(error, otherwise=Worded("it could not be removed"))
            raise WriteError(
                Worded(
                    "{file} was not removed: {reason}; remove it by hand.", file=data / name, reason=reason
                )
            ) from error
    told = _tell(data)
    _remove_folders(data, made)
    return told


def _value(entry: Path, key: str) -> str | None:
    with contextlib.suppress(OSError, UnicodeDecodeError):
        for line in entry.read_text(encoding="utf-8").splitlines():
            if line.startswith(f"{key}="):
                return line.partition("=")[2]
    return None


def _made_before(data: Path) -> list[Path]:
    """Folders that an earlier entry was given; a name that leads elsewhere is none of ours."""
    named = (_value(data / ENTRY, _MADE_KEY) or "").split(";")
    ours = {folder for name in (ENTRY, KIND, PICTURE) for folder in _folders_of(name)}
    return [folder for text in named if text and (folder := Path(text)) in ours]


def _missing_folders(data: Path) -> Iterator[Path]:
    for name in (ENTRY, KIND, PICTURE):
        yield from (folder for folder in _folders_of(name) if not (data / folder).exists())


def _folders_of(name: Path) -> list[Path]:
    """The folders on the way to a file, the outermost first."""
    return [*reversed(name.parents)][1:]


def _bytes_of(file: Path) -> bytes | None:
    with contextlib.suppress(OSError):
        return file.read_bytes()
    return None


def _make_folder(file: Path) -> None:
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        reason = reason_of(error, otherwise=Worded("it could not be made"))
        raise WriteError(
            Worded(
                "The folder {parent} was not made: {reason}; make room for it.",
                parent=file.parent,
                reason=reason,
            )
        ) from error


def _put_back(data: Path, before: Mapping[Path, bytes | None], made: Sequence[Path]) -> None:
    for name, content in before.items():
        with contextlib.suppress(OSError, WriteError):
            if content is None:
                (data / name).unlink(missing_ok=True)
            elif _bytes_of(data / name) != content:
                write_atomically(data / name, content)
    if before[ENTRY] is None:
        _remove_folders(data, made)


def _remove_folders(data: Path, made: Sequence[Path]) -> None:
    """Remove folders made for the entry that hold nothing now but what the caches are made of."""
    if Path("mime") in made and not any((data / "mime" / "packages").glob("*")):
        shutil.rmtree(data / "mime", ignore_errors=True)
    applications = data / ENTRY.parent
    if ENTRY.parent in made and [f.name for f in applications.glob("*")] == ["mimeinfo.cache"]:
        (applications / "mimeinfo.cache").unlink(missing_ok=True)
    for folder in sorted(made, key=lambda folder: -len(folder.parts)):
        with contextlib.suppress(OSError):
            (data / folder).rmdir()


def _tell(data: Path) -> Told:
    """Have the desktop's caches made anew; without that a new entry is not looked at."""
    with contextlib.suppress(OSError):
        os.utime(data / "icons" / "hicolor")  # a cache of pictures older than its folder is not believed
    missing, failed = [], []
    for tool, folder in (("update-mime-database", "mime"), ("update-desktop-database", "applications")):
        program = shutil.which(tool)
        if program is None:
            missing.append(tool)
        elif (data / folder).is_dir() and not _runs_well([program, str(data / folder)]):
            failed.append(tool)
    return Told(tuple(missing), tuple(failed))


def _runs_well(command: Sequence[str]) -> bool:
    try:
        done = subprocess.run(command, capture_output=True, timeout=_TOOL_S, check=False)
    except (OSError, subprocess.TimeoutExpired):
        return False
    return done.returncode == 0
