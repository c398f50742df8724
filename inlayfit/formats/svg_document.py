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
    def label(self) -> str:
        """How to speak of it to a person: <path id="foot">, line 12."""
        name = f' id="{self.id[:60]}"' if self.id else ""
        return f"<{self.tag}{name}> in line {self.line}"

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
            raise NotADrawingError(f"There is no file “{path.name}”; check its name and folder.", path=path)
        if not path.is_file():
            raise NotADrawingError(f"“{path.name}” is not a file; choose an SVG file.", path=path)
        with path.open("rb") as stream:
            data = stream.read(LARGEST_FILE_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "the name cannot be used"
        message = f"“{path.name}” cannot be read ({reason}); check its permissions."
        raise NotADrawingError(message, path=path) from error
    return unpacked(data, path)


def unpacked(data: bytes, path: Path) -> bytes:
    """The bytes, decompressed if they are gzip; checked for size."""
    if data.startswith(_GZIP_MARK):
        unzip = zlib.decompressobj(wbits=31)
        try:
            data = unzip.decompress(data, LARGEST_FILE_BYTES + 1)
        except zlib.error as error:
            message = f"“{path.name}” is compressed, but damaged; save it again as plain SVG."
            raise NotADrawingError(message, path=path) from error
        if not unzip.eof and len(data) <= LARGEST_FILE_BYTES:
            message = f"“{path.name}” is compressed, but cut off; save it again as plain SVG."
            raise NotADrawingError(message, path=path)
    if len(data) > LARGEST_FILE_BYTES:
        megabytes = LARGEST_FILE_BYTES // 2**20
        raise HostileFileError(
            f"“{path.name}” is larger than {megabytes} MB; save only the outlines you need.", path=path
        )
    if not data.strip(b" \t\r\n\0\xef\xbb\xbf\xff\xfe"):
        raise NotADrawingError(f"“{path.name}” is empty; save the drawing again.", path=path)
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
            self._refuse(f"holds more than {MOST_ELEMENTS:,} elements; save only the outlines you need")
        if len(self._open) >= DEEPEST_NESTING:
            self._refuse(f"nests elements more than {DEEPEST_NESTING} deep; ungroup and save it again")
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

    def _refuse(self, why: str) -> NoReturn:
        raise HostileFileError(f"“{self.source.name}” {why}.", path=self.source)


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
            f"“{source.name}” declares XML entities or refers to other files, which is not safe to open; "
            "save it again as plain SVG.",
            path=source,
        ) from error
    except (ParseError, ValueError, LookupError) as error:
        raise NotADrawingError(_not_well_formed(source, error), path=source) from error
    if not isinstance(root, Node) or root.tag != "svg":
        message = f"“{source.name}” is XML, but not an SVG drawing; choose an SVG file."
        raise NotADrawingError(message, path=source)
    return root


def _not_well_formed(source: Path, error: Exception) -> str:
    position = getattr(error, "position", None)
    if position is None:
        return f"“{source.name}” is in a text encoding that cannot be read; save it again as UTF-8."
    line, column = position
    reason = str(error).partition(":")[0]
    return (
        f"“{source.name}” is not well-formed SVG ({reason}, line {line}, column {column + 1}); "
        "save it again from the drawing program."
    )
