"""Collects every word of the window into the translation source, and releases it for the program.

    python resources/translations/collect.py          updates inlayfit_de.ts and inlayfit_de.qm

Words are found where they stand: `self.tr("…")` belongs to its class, `_tr("…")` to the context that its
module names, `QT_TRANSLATE_NOOP("core", "…")` to its first word, `Worded("…")` and `say("…")` anywhere in the
program to "core", and the tables of commands, menus, settings and help to theirs. A new word is entered as
unfinished; a word that is gone is dropped. The file is of Qt's own kind (TS); `pyside6-lrelease` makes the
released form.
"""

from __future__ import annotations

import ast
import re
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = ROOT / "inlayfit"
APP = PROGRAM / "app"
TS = Path(__file__).with_name("inlayfit_de.ts")

Word = tuple[str, str]
"""Context and English."""


def collected() -> list[Word]:
    """Every word of the window, in the order of the code, each once."""
    found: list[Word] = []
    for file in sorted(APP.rglob("*.py")):
        found += _words_in(ast.parse(file.read_text(encoding="utf-8")))
    found += _words_in_tables()
    for file in sorted(PROGRAM.rglob("*.py")):
        found += [("core", pattern) for pattern in patterns_in(ast.parse(file.read_text(encoding="utf-8")))]
    return list(dict.fromkeys(found))


def patterns_in(tree: ast.Module) -> Iterator[str]:
    """The patterns of sentences, but those that hold nothing to translate beside their values."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and ast.unparse(node.func) in ("Worded", "say") and node.args:
            texts = [_text(choice) for choice in _choices(node.args[0]) if _is_text(choice)]
            yield from (text for text in texts if re.search("[a-z“]", re.sub(r"\{\w+\}", "", text)))


def _choices(node: ast.AST) -> Iterator[ast.AST]:
    """Both branches of `a if … else b`, else the expression itself."""
    if isinstance(node, ast.IfExp):
        yield from (*_choices(node.body), *_choices(node.orelse))
    else:
        yield node


def _words_in(tree: ast.Module) -> Iterator[Word]:
    module_context = next(
        (
            call.args[0].value
            for call in ast.walk(tree)
            if isinstance(call, ast.Call) and _called(call) == "translate" and _is_text(call.args[0])
        ),
        "",
    )
    yield from _walk(tree, "", str(module_context))


def _walk(node: ast.AST, class_name: str, module_context: str) -> Iterator[Word]:
    for child in ast.iter_child_nodes(node):
        inside = child.name if isinstance(child, ast.ClassDef) else class_name
        if isinstance(child, ast.Call) and child.args:
            name, first = _called(child), child.args[0]
            if name == "QT_TRANSLATE_NOOP" and _is_text(child.args[1]):
                yield _text(first), _text(child.args[1])
            elif name == "tr" and _is_text(first):
                yield inside, _text(first)
            elif name == "_tr" and _is_text(first):
                yield module_context, _text(first)
        yield from _walk(child, inside, module_context)


def _called(call: ast.Call) -> str:
    function = call.func
    if isinstance(function, ast.Attribute):
        return function.attr
    return function.id if isinstance(function, ast.Name) else ""


def _is_text(node: ast.AST) -> bool:
    return isinstance(node, ast.Constant) and isinstance(node.value, str)


def _text(node: ast.AST) -> str:
    return str(node.value) if isinstance(node, ast.Constant) else ""


def _words_in_tables() -> Iterator[Word]:
    sys.path.insert(0, str(ROOT))
    from inlayfit.app import actions, menus
    from inlayfit.app.pages import help_pages
    from inlayfit.document import settings

    for command in actions.TABLE:
        yield "actions", command.text
        yield "actions", command.why
    for title, entries in menus.TABLE:
        yield "menus", title
        yield from (("menus", entry[0]) for entry in entries if isinstance(entry, tuple))
    for setting in settings.TABLE:
        yield from (("settings", text) for text in (setting.group, setting.label, setting.why))
        if setting.instead:
            yield "settings", setting.instead
        yield from (("settings", text) for _, text in setting.choices)
        yield "core", setting.label
    for title, lines in help_pages.GUIDE:
        yield from (("help", text) for text in (title, *lines))
    yield from (("help", text) for text in help_pages.PICTURE_WORDS)
    for table in (actions.CANVAS_KEYS, actions.RULER_KEYS, actions.STACK_KEYS, actions.LIST_KEYS):
        yield from (("help", text) for row in table for text in row if len(text) > 2)


def read_ts(path: Path = TS) -> dict[Word, str]:
    """The translations so far; unfinished ones are left out."""
    if not path.exists():
        return {}
    known: dict[Word, str] = {}
    for context in ET.parse(path).getroot().iter("context"):
        name = context.findtext("name") or ""
        for message in context.iter("message"):
            text = message.findtext("translation") or ""
            if text:
                known[name, message.findtext("source") or ""] = text
    return known


def write_ts(words: list[Word], known: dict[Word, str], path: Path = TS) -> None:
    """Write the source file, contexts together."""
    root = ET.Element("TS", version="2.1", language="de_DE", sourcelanguage="en")
    for name in dict.fromkeys(context for context, _ in words):
        context = ET.SubElement(root, "context")
        ET.SubElement(context, "name").text = name
        for word in (w for w in words if w[0] == name):
            message = ET.SubElement(context, "message")
            ET.SubElement(message, "source").text = word[1]
            translation = ET.SubElement(message, "translation")
            translation.text = known.get(word, "")
            if not translation.text:
                translation.set("type", "unfinished")
    ET.indent(root, " ")
    body = ET.tostring(root, encoding="unicode")
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', encoding="utf-8")


def main() -> None:
    """Update both files."""
    words, known = collected(), read_ts()
    write_ts(words, known)
    missing = [word for word in words if word not in known]
    sys.stdout.write(f"{len(words)} words, {len(missing)} without a translation\n")
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    subprocess.run([str(tool), str(TS), "-qm", str(TS.with_suffix(".qm")), "-silent"], check=True)


if __name__ == "__main__":
    main()
