"""From the bytes of a DXF file to a document, safely.

The bytes are read once, so a file that changes meanwhile cannot show two faces. Their form is looked at
before any parser runs: text DXF (pairs of lines: a group code, a value) or binary DXF (a fixed sentinel,
DXF reference, "Binary DXF files"). The strict loader goes first, since it also knows binary DXF; what it
refuses goes through the recovering one, and everything that one mended is a finding.
"""

from __future__ import annotations

import gc
import io
import logging
import re
import stat
import struct
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from ezdxf import recover
from ezdxf.document import Drawing as DxfDocument
from ezdxf.filemanagement import dxf_stream_info, read
from ezdxf.lldxf.const import DXFError
from ezdxf.lldxf.tagger import binary_tags_loader

from inlayfit.errors import HostileFileError, NotADrawingError, ReadError
from inlayfit.finding import Finding, Severity
from inlayfit.wording import Worded

BINARY_SENTINEL = b"AutoCAD Binary DXF\r\n\x1a\x00"
"""How a binary DXF file starts (DXF reference)."""
LARGEST_BYTES = 192 * 1024 * 1024
MOST_LINES = 3_500_000
"""About 140,000 segments or 850,000 vertices: five seconds of reading on a slow computer."""
MOST_POINTS = 600_000
"""Seen before anything is parsed, by group code 10, which starts every point."""
MOST_RECOVERED_LINES = 1_200_000
"""Recovery takes three times as long as plain reading."""
_LOOKED_AT = 65_536
_BYTE_ORDER_MARK = b"\xef\xbb\xbf"
_POINT_MARKS = (b"\n10\n", b"\n 10\n", b"\n10\r\n", b"\n 10\r\n")
_PADDED = re.compile(rb"SECTION[ \t]+\r?\n")
_FIRST_PAIR = re.compile(rb"\A(?:\xef\xbb\xbf)?\s*\d{1,4}[ \t]*\r?[\n\r]")

_BROKEN = (
    DXFError, ValueError, KeyError, IndexError, TypeError, AttributeError, UnicodeError, struct.error,
    ArithmeticError, RecursionError, EOFError, AssertionError, StopIteration,
)  # fmt: skip
"""What the libraries raise on broken files."""


def read_file_bytes(path: Path, *, largest: int = LARGEST_BYTES) -> bytes:
    """All bytes of a regular file.

    Raises:
        NotADrawingError: it is missing, a folder, empty, or not a regular file.
        HostileFileError: it is larger than `largest`.
        ReadError: the system refuses to read it, or it changed while it was read.
    """
    try:
        before = path.stat()
        if stat.S_ISDIR(before.st_mode):
            raise NotADrawingError(
                Worded("“{name}” is a folder; choose a DXF or SVG file.", name=path.name), path=path
            )
        if not stat.S_ISREG(before.st_mode):
            raise NotADrawingError(
                Worded("“{name}” is no plain file; choose a DXF or SVG file.", name=path.name), path=path
            )
        if before.st_size > largest:
            raise HostileFileError(
                Worded(
                    "“{name}” has {megabytes} MB, more than {most} MB, and is not read; "
                    "save only the outline as a file of its own.",
                    name=path.name,
                    megabytes=round(before.st_size / 1e6),
                    most=round(largest / 1e6),
                ),
                path=path,
            )
        with path.open("rb") as file:
            data = file.read(largest + 1)
        after = path.stat()
    except FileNotFoundError as error:
        raise NotADrawingError(
            Worded("“{name}” does not exist; check its name and folder.", name=path.name), path=path
        ) from error
    except PermissionError as error:
        raise ReadError(
            Worded("“{name}” may not be read; ask for permission to read it.", name=path.name), path=path
        ) from error
    except (OSError, ValueError) as error:
        raise ReadError(
            Worded("“{name}” could not be read; copy it to this computer and try again.", name=path.name),
            path=path,
        ) from error
    if len(data) != after.st_size or after.st_mtime_ns != before.st_mtime_ns:
        raise ReadError(
            Worded(
                "“{name}” changed while it was read; wait until it is saved, then open it again.",
                name=path.name,
            ),
            path=path,
        )
    if not data.strip(b"\0 \t\r\n"):
        raise NotADrawingError(
            Worded("“{name}” is empty; save the drawing again.", name=path.name), path=path
        )
    return data


def looks_like_dxf(data: bytes) -> bool:
    """Whether the bytes start like binary or text DXF."""
    if data.startswith(BINARY_SENTINEL):
        return True
    head = data[:_LOOKED_AT]
    return bool(_FIRST_PAIR.match(head)) and b"SECTION" in head.upper()


def open_document(data: bytes, path: Path) -> tuple[DxfDocument, list[Finding]]:
    """The document in the bytes, and what had to be mended to get it.

    Raises:
        NotADrawingError: it is not DXF, or broken beyond recovery.
        HostileFileError: it holds more than can be read in reasonable time.
    """
    if not looks_like_dxf(data):
        raise NotADrawingError(
            Worded("“{name}” is not a DXF file; save the drawing as DXF or SVG.", name=path.name), path=path
        )
    data = data.removeprefix(_BYTE_ORDER_MARK)
    if _PADDED.search(data[:_LOOKED_AT]):
        data = b"\n".join(line.rstrip() for line in data.splitlines())
    lines = data.count(b"\n") or data.count(b"\r")
    if lines > MOST_LINES:
        raise HostileFileError(
            Worded(
                "“{name}” holds {values} values, more than the {most} that are read; "
                "save only the outline, with fewer points, as a file of its own.",
                name=path.name,
                values=lines // 2,
                most=MOST_LINES // 2,
            ),
            path=path,
        )
    points = sum(data.count(mark) for mark in _POINT_MARKS)
    if points > MOST_POINTS:
        raise HostileFileError(
            Worded(
                "“{name}” holds {points} points, more than the {most} that are read; save "
                "the outline with fewer points.",
                name=path.name,
                points=points,
                most=MOST_POINTS,
            ),
            path=path,
        )
    try:
        return _strict(data), []
    except _BROKEN:
        return _recovered(data, path, lines)


@contextmanager
def undisturbed() -> Iterator[None]:
    """No garbage collection and no log lines while a document is built and walked.

    It leaves no cycles to collect yet, and looking for them takes a fifth of the time.
    """
    logger = logging.getLogger("ezdxf")
    level, collecting = logger.level, gc.isenabled()
    logger.setLevel(logging.CRITICAL + 1)
    gc.disable()
    try:
        yield
    finally:
        logger.setLevel(level)
        if collecting:
            gc.enable()


def _strict(data: bytes) -> DxfDocument:
    if data.startswith(BINARY_SENTINEL):
        return DxfDocument.load(binary_tags_loader(data, errors="surrogateescape"))
    head = data[: 4 * _LOOKED_AT].decode("utf-8", "ignore")
    encoding = dxf_stream_info(io.StringIO(head, newline=None)).encoding
    text = io.TextIOWrapper(io.BytesIO(data), encoding=encoding, errors="surrogateescape")
    return read(text)


def _completed(data: bytes) -> bytes:
    """A file that ends in the middle, without its last, incomplete entity and with the missing end."""
    lines = data.splitlines()
    last = len(lines) - len(lines) % 2 - 2
    while last > 0 and lines[last].strip() != b"0":  # group code 0 starts an entity
        last -= 2
    return b"\n".join([*lines[: max(last, 0)], b"0", b"ENDSEC", b"0", b"EOF", b""])


def _recovered(data: bytes, path: Path, lines: int) -> tuple[DxfDocument, list[Finding]]:
    broken = Worded(
        "“{name}” is damaged beyond repair; save it again from the drawing program.", name=path.name
    )
    if data.startswith(BINARY_SENTINEL):
        raise NotADrawingError(broken, path=path)
    if lines > MOST_RECOVERED_LINES:
        raise HostileFileError(
            Worded("“{name}” is damaged and too large to repair; save it again.", name=path.name), path=path
        )
    cut_off = b"EOF" not in data[-200:]
    if cut_off:
        data = _completed(data)
    try:
        document, auditor = recover.read(io.BytesIO(data), errors="surrogateescape")
    except _BROKEN as error:
        raise NotADrawingError(broken, path=path) from error
    flaws = len(auditor.fixes) + len(auditor.errors)
    mended: str = Worded(" ({flaws} flaws mended)", flaws=flaws) if flaws else ""
    mended = Worded(" (one flaw mended)") if flaws == 1 else mended
    message = (
        Worded("The file ends in the middle; what could be read was recovered{mended}.", mended=mended)
        if cut_off
        else Worded("The file is damaged; what could be read was recovered{mended}.", mended=mended)
    )
    remedy = Worded("Check that nothing is missing, or save it again from the drawing program.")
    return document, [Finding("file-damaged", Severity.WARN, message, remedy, fixed=not cut_off)]
