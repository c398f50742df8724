"""Style sheets: which declarations apply to which element (CSS 2.2 and Selectors Level 3, a part).

Read are rules whose selectors are made of an element name or `*`, `.class`, `#id`, `[attribute]` and
`[attribute=value]`, `:first-child`, joined by nothing, a space (inside) or `>` (directly inside). A rule
with any other selector, and every at-rule except `@media all` or `screen`, is left out and named in a
finding. Order of strength: `!important`, then the `style` attribute, then ids, classes, names, then the
later rule; presentation attributes are the weakest of all (SVG 2, section 6.7).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from inlayfit.errors import HostileFileError
from inlayfit.formats.svg_document import Node
from inlayfit.wording import Worded

_COMMENT = re.compile(r"/\*.*?(?:\*/|\Z)|<!--|-->", re.DOTALL)
_BLOCK_EDGE = re.compile(r"[{};]")
_SIMPLE = re.compile(
    r"(?P<name>[a-zA-Z_][\w-]*|\*)|\.(?P<cls>-?[a-zA-Z_][\w-]*)|\#(?P<id>[\w-]+)"
    r"|\[\s*(?P<attr>[\w:-]+)\s*(?:=\s*(?P<quote>[\"']?)(?P<value>[^\"'\]]*)(?P=quote)\s*)?\]"
    r"|(?P<first>:first-child)"
)
_BRACE = re.compile(r"[{}]")
_DECLARATION = re.compile(r"(?:[^;(\"']++|\([^)]*+\)?+|\"[^\"]*+\"?+|'[^']*+'?+)++")
_MOST_RULES = 20_000
_MOST_TESTS = 500_000

Declarations = dict[str, str]


@dataclass(frozen=True, slots=True)
class Compound:
    """Conditions on one element.

    Attributes:
        direct: whether it must be the parent of what follows, not any ancestor.
    """

    name: str = ""
    ids: tuple[str, ...] = ()
    classes: tuple[str, ...] = ()
    attributes: tuple[tuple[str, str | None], ...] = ()
    first: bool = False
    direct: bool = False

    def matches(self, node: Node) -> bool:
        """Whether the element meets all conditions."""
        attributes = node.attributes
        return (
            (self.name in ("", node.tag))
            and all(attributes.get("id") == wanted for wanted in self.ids)
            and (not self.classes or set(self.classes) <= set(attributes.get("class", "").split()))
            and all(_attribute_fits(attributes.get(name), value) for name, value in self.attributes)
            and (not self.first or (node.parent is not None and node.parent.children[0] is node))
        )


def _attribute_fits(found: str | None, wanted: str | None) -> bool:
    return found is not None and (wanted is None or found == wanted)


@dataclass(frozen=True, slots=True)
class Rule:
    """One selector with its declarations; `compounds` run from the element outwards."""

    compounds: tuple[Compound, ...]
    strength: tuple[int, int, int, int]
    plain: Declarations
    important: Declarations

    def matches(self, node: Node) -> bool:
        """Whether the selector selects the element."""
        chain = [node]
        while len(self.compounds) > 1 and (parent := chain[-1].parent) is not None:
            chain.append(parent)
        alive = {0} if self.compounds[0].matches(node) else set()
        for compound in self.compounds[1:]:
            if not alive:
                return False
            places = {i + 1 for i in alive} if compound.direct else range(min(alive) + 1, len(chain))
            alive = {i for i in places if i < len(chain) and compound.matches(chain[i])}
        return bool(alive)


@dataclass(slots=True)
class StyleSheet:
    """All rules of a document, weakest first, found by what their last part asks for.

    Attributes:
        left_out: selectors and at-rules that were not understood.
    """

    left_out: list[str] = field(default_factory=list)
    _rules: dict[str, list[Rule]] = field(default_factory=dict)
    _count: int = 0
    _tests: int = 0

    def add(self, text: str) -> None:
        """Read the text of one `style` element."""
        for selectors, body in self._blocks(_COMMENT.sub("", text)):
            plain, important = parse_declarations(body)
            for selector in selectors.split(","):
                self._add_rule(selector.strip(), plain, important)

    def matching(self, node: Node) -> list[Rule]:
        """The rules for an element, weakest first."""
        if not self._rules:
            return []
        keys = ["*", node.tag, "#" + node.id, *("." + c for c in node.attributes.get("class", "").split())]
        candidates = [rule for key in dict.fromkeys(keys) for rule in self._rules.get(key, ())]
        self._tests += len(candidates)
        if self._tests > _MOST_TESTS:
            raise HostileFileError(
                Worded("The drawing has too many style rules for its elements; save it as plain SVG.")
            )
        return sorted((rule for rule in candidates if rule.matches(node)), key=lambda rule: rule.strength)

    def _add_rule(self, selector: str, plain: Declarations, important: Declarations) -> None:
        compounds = parse_selector(selector)
        if compounds is None or self._count >= _MOST_RULES:
            self.left_out.append(selector)
            return
        self._count += 1
        ids = sum(len(c.ids) for c in compounds)
        classes = sum(len(c.classes) + len(c.attributes) + c.first for c in compounds)
        names = sum(bool(c.name) for c in compounds)
        rule = Rule(compounds, (ids, classes, names, self._count), plain, important)
        self._rules.setdefault(_key(compounds[0]), []).append(rule)

    def _blocks(self, text: str) -> Iterator[tuple[str, str]]:
        """Selector text and declaration text of each rule; at-rules are noted and stepped over."""
        position, prelude = 0, 0
        while edge := _BLOCK_EDGE.search(text, position):
            head = text[prelude : edge.start()].strip()
            position = prelude = edge.end()
            if edge[0] == "}" or not head:
                continue
            if edge[0] == ";":
                if not head.startswith("@charset"):
                    self.left_out.append(head)
                continue
            if re.fullmatch(r"@media\s+(?:only\s+)?(?:all|screen)", head):
                continue  # its rules are read as if they stood outside
            end = _end_of_block(text, position)
            if head.startswith("@"):
                self.left_out.append(head)
            else:
                yield head, text[position : end - 1]
            position = prelude = end


def _end_of_block(text: str, position: int) -> int:
    """The place after the brace that closes the block that starts here."""
    depth = 1
    for edge in _BRACE.finditer(text, position):
        depth += 1 if edge[0] == "{" else -1
        if depth == 0:
            return edge.end()
    return len(text) + 1


def _key(compound: Compound) -> str:
    if compound.ids:
        return "#" + compound.ids[0]
    if compound.classes:
        return "." + compound.classes[0]
    return compound.name or "*"


def parse_selector(text: str) -> tuple[Compound, ...] | None:
    """A selector's parts from the element outwards, or None if it is not one of those read here."""
    parts = re.sub(r"\s*>\s*", " >", text.strip()).split()
    compounds: list[Compound] = []
    for part in parts:
        compound = _parse_compound(part.removeprefix(">"))
        if compound is None or (part.startswith(">") and not compounds):
            return None
        if part.startswith(">"):
            last = compounds[-1]
            compounds[-1] = Compound(
                last.name, last.ids, last.classes, last.attributes, last.first, direct=True
            )
        compounds.append(compound)
    return tuple(reversed(compounds)) or None


def _parse_compound(text: str) -> Compound | None:
    name, first, position = "", False, 0
    ids: list[str] = []
    classes: list[str] = []
    attributes: list[tuple[str, str | None]] = []
    while position < len(text):
        match = _SIMPLE.match(text, position)
        if match is None or (match["name"] and position > 0):
            return None
        if match["name"]:
            name = "" if match["name"] == "*" else match["name"]
        elif match["cls"]:
            classes.append(match["cls"])
        elif match["id"]:
            ids.append(match["id"])
        elif match["attr"]:
            attributes.append((match["attr"], match["value"]))
        else:
            first = True
        position = match.end()
    return Compound(name, tuple(ids), tuple(classes), tuple(attributes), first) if text else None


def parse_declarations(text: str) -> tuple[Declarations, Declarations]:
    """The declarations of a rule or a `style` attribute: plain ones, and those marked important."""
    plain: Declarations = {}
    important: Declarations = {}
    for piece in _DECLARATION.findall(text):
        name, colon, value = piece.partition(":")
        name, value = name.strip().lower(), value.strip()
        if not colon or not name or not value:
            continue
        bare = re.sub(r"\s*!\s*important\s*\Z", "", value, flags=re.IGNORECASE)
        (plain if bare == value else important)[name] = bare
    return plain, important
