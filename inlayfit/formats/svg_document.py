"""From the bytes of an SVG file to a tree of nodes, safely.

A file is hostile until shown otherwise. Entities and external references are refused (defusedxml), no
other file and no network address is ever opened, and size, depth and number of elements are capped while
the parser runs, so a small file cannot grow large in memory. A gzip-compressed file (`.svgz`) is
decompressed up to the same size cap.

Elements of other namespaces (editor data, metadata) do not paint; they and their children are kept out
of the tree.
"""

from __future__ import annotations

import zlib
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, NoReturn
from xml.etree.ElementTree import ParseError

from defusedxml.common import DefusedXmlException
from defusedxml.ElementTree import DefusedXMLParser

from inlayfit.errors import HostileFileError, NotADrawingError
from inlayfit.wording import Worded

SVG_NAMESPACE = "http://www.w3.org/2000/svg"
XLINK_HREF = "{http://www.w3.org/1999/xlink}href"
LARGEST_FILE_BYTES = 48 * 1024 * 1024
"""Real drawings stay far below; the parser needs several times this in memory."""
MOST_ELEMENTS = 100_000
DEEPEST_NESTING = 120
"""Elements in elements; drawing programs stay below 40."""
_GZIP_MARK = b"\x1f\x8b"


@dataclass(slots=True, eq=False)
class Node:
    """One SVG element.

    Attributes:
        tag: local name; attributes of no namespace keep their name, others stand as "{namespace}name".
        line: line of the file on which it starts.
        children: SVG elements inside it.
        text: its own character data; kept for `style` only.
    """

    tag: str
    attributes: dict[str, str]
    line: int
    parent: Node | None = None
    children: list[Node] = field(default_factory=list)
    text: str = ""

    @property
    def id(self) -> str:
        """Its id, or an empty text."""
        return self.attributes.get("id", "")

    @property
    def href(self) -> str | None:
        """What it refers to, by SVG 2's `href` or SVG 1.1's `xlink:href`."""
        value = self.attributes.get("href", self.attributes.get(XLINK_HREF))
        return None if value is None else value.strip()

    @property
    def label(self) -> Worded:
        """How to speak of it to a person: <path id="foot"> in line 12."""
        name = f' id="{self.id[:60]}"' if self.id else ""
        return Worded("{element} in line {line}", element=f"<{self.tag}{name}>", line=str(self.line))

    def walk(self) -> Iterator[Node]:
        """The node and all below it, in document order."""
        waiting = [self]
        while waiting:
            node = waiting.pop()
            yield node
            waiting.extend(reversed(node.children))


def read_bytes(path: Path) -> bytes:
    """The file's bytes, decompressed, never more than `LARGEST_FILE_BYTES`.

    Raises:
        NotADrawingError: missing, a folder, unreadable, or empty.
        HostileFileError: too large.
    """
    try:
        if not path.exists():
            raise NotADrawingError(
                Worded("There is no file “{name}”; check its name and folder.", name=path.name), path=path
            )
        if not path.is_file():
            raise NotADrawingError(
                Worded("“{name}” is not a file; choose an SVG file.", name=path.name), path=path
            )
        with path.open("rb") as stream:
            data = stream.read(LARGEST_FILE_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or Worded("the name cannot be used")
        message = Worded(
            "“{name}” cannot be read ({reason}); check its permissions.", name=path.name, reason=reason
        )
        raise NotADrawingError(message, path=path) from error
    return unpacked(data, path)


def unpacked(data: bytes, path: Path) -> bytes:
    """The bytes, decompressed if they are gzip; checked for size."""
    if data.startswith(_GZIP_MARK):
        unzip = zlib.decompressobj(wbits=31)
        try:
            data = unzip.decompress(data, LARGEST_FILE_BYTES + 1)
        except zlib.error as error:
            message = Worded(
                "“{name}” is compressed, but damaged; save it again as plain SVG.", name=path.name
            )
            raise NotADrawingError(message, path=path) from error
        if not unzip.eof and len(data) <= LARGEST_FILE_BYTES:
            message = Worded(
                "“{name}” is compressed, but cut off; save it again as plain SVG.", name=path.name
            )
            raise NotADrawingError(message, path=path)
    if len(data) > LARGEST_FILE_BYTES:
        megabytes = LARGEST_FILE_BYTES // 2**20
        raise HostileFileError(
            Worded(
                "“{name}” is larger than {megabytes} MB; save only the outlines you need.",
                name=path.name,
                megabytes=megabytes,
            ),
            path=path,
        )
    if not data.strip(b" \t\r\n\0\xef\xbb\xbf\xff\xfe"):
        raise NotADrawingError(
            Worded("“{name}” is empty; save the drawing again.", name=path.name), path=path
        )
    return data


class _TreeTarget:
    """Builds the nodes while the parser runs, and stops it at the caps."""

    def __init__(self, source: Path) -> None:
        self.source = source
        self.parser: Any = None  # the expat parser, for line numbers
        self.root: Node | None = None
        self._open: list[Node | None] = []  # None inside a foreign element
        self._count = 0

    def start(self, name: str, attributes: dict[str, str]) -> None:
        self._count += 1
        if self._count > MOST_ELEMENTS:
            self._refuse(
                Worded("holds more than {most} elements; save only the outlines you need", most=MOST_ELEMENTS)
            )
        if len(self._open) >= DEEPEST_NESTING:
            self._refuse(
                Worded(
                    "nests elements more than {most} deep; ungroup and save it again", most=DEEPEST_NESTING
                )
            )
        parent = self._open[-1] if self._open else None
        namespace, _, tag = name.rpartition("}")
        if namespace not in ("", "{" + SVG_NAMESPACE) or (self._open and parent is None):
            self._open.append(None)
            return
        node = Node(tag, attributes, self.parser.CurrentLineNumber, parent)
        if parent is not None:
            parent.children.append(node)
        elif self.root is None:
            self.root = node
        self._open.append(node)

    def end(self, _name: str) -> None:
        self._open.pop()

    def data(self, text: str) -> None:
        node = self._open[-1] if self._open else None
        if node is not None and node.tag == "style":
            node.text += text

    def close(self) -> Node | None:
        return self.root

    def _refuse(self, why: Worded) -> NoReturn:
        raise HostileFileError(Worded("“{name}” {why}.", name=self.source.name, why=why), path=self.source)


def parse_document(data: bytes, source: Path) -> Node:
    """The root `svg` node.

    Raises:
        NotADrawingError: not XML, not well formed, or its root is not `svg`.
        HostileFileError: it declares entities, refers outside, or passes a cap.
    """
    target = _TreeTarget(source)
    try:
        parser = DefusedXMLParser(target=target)
        target.parser = parser.parser
        parser.feed(data)
        root: Any = parser.close()  # what the target returns, not an Element
    except DefusedXmlException as error:
        raise HostileFileError(
            Worded(
                "“{name}” declares XML entities or refers to other files, which is not safe "
                "to open; save it again as plain SVG.",
                name=source.name,
            ),
            path=source,
        ) from error
    except (ParseError, ValueError, LookupError) as error:
        raise NotADrawingError(_not_well_formed(source, error), path=source) from error
    if not isinstance(root, Node) or root.tag != "svg":
        message = Worded("“{name}” is XML, but not an SVG drawing; choose an SVG file.", name=source.name)
        raise NotADrawingError(message, path=source)
    return root


def _not_well_formed(source: Path, error: Exception) -> str:
    position = getattr(error, "position", None)
    if position is None:
        return Worded(
            "“{name}” is in a text encoding that cannot be read; save it again as UTF-8.", name=source.name
        )
    line, column = position
    reason = str(error).partition(":")[0]
    return Worded(
        "“{name}” is not well-formed SVG ({reason}, line {line}, column {column}); "
        "save it again from the drawing program.",
        name=source.name,
        reason=reason,
        line=str(line),
        column=str(column + 1),
    )
