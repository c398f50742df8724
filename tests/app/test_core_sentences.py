"""The sentences that the core says: each remembers its pattern, and each has its German."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator
from pytestqt.qtbot import QtBot

from inlayfit import errors
from inlayfit.app.core_words import core, core_error
from inlayfit.document.imports import import_drawing
from inlayfit.document.verdict import checks
from inlayfit.errors import InlayfitError
from inlayfit.finding import Finding
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.shipped import shipped_folder
from inlayfit.typed_length import parse_length
from inlayfit.units import Unit
from inlayfit.wording import PLACE, Worded
from tests.app.conftest import discs

PROGRAM = Path(errors.__file__).parent
SOURCES = [
    (file, ast.parse(file.read_text(encoding="utf-8")))
    for file in sorted(PROGRAM.rglob("*.py"))
    if "commands" not in file.parts and file.name != "cli.py"  # the command line speaks English
]
REFUSALS = {
    name for name, kind in vars(errors).items() if isinstance(kind, type) and issubclass(kind, InlayfitError)
}
PATTERNS = sorted(
    {
        call.args[0].value
        for _, tree in SOURCES
        for call in ast.walk(tree)
        if isinstance(call, ast.Call) and ast.unparse(call.func) == "Worded"
        if isinstance(call.args[0], ast.Constant) and isinstance(call.args[0].value, str)
    }
)


def _calls(name_is: set[str]) -> Iterator[tuple[str, ast.Call, ast.AST]]:
    """Calls by name, with their place and the function or module around them."""
    for file, tree in SOURCES:
        functions = [node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)]
        for scope in [tree, *functions]:
            for node in ast.walk(scope):
                if isinstance(node, ast.Call) and ast.unparse(node.func) in name_is:
                    yield f"{file.relative_to(PROGRAM)}:{node.lineno}", node, scope


def _is_plain(node: ast.AST, scope: ast.AST) -> bool:
    """Whether an expression is a text that nobody can say in another language."""
    if isinstance(node, ast.IfExp):
        return _is_plain(node.body, scope) or _is_plain(node.orelse, scope)
    if isinstance(node, ast.Name):
        given = [n.value for n in ast.walk(scope) if isinstance(n, ast.Assign) and _names(n) == [node.id]]
        return any(_is_plain(value, ast.Module([], [])) for value in given)
    return isinstance(node, ast.JoinedStr | ast.BinOp) or (
        isinstance(node, ast.Constant) and isinstance(node.value, str)
    )


def _names(assignment: ast.Assign) -> list[str]:
    return [target.id for target in assignment.targets if isinstance(target, ast.Name)]


def test_a_pattern_is_a_literal_and_its_places_are_its_values() -> None:
    for place, call, _ in _calls({"Worded"}):
        pattern = call.args[0]
        assert isinstance(pattern, ast.Constant), f"{place}: the tools cannot find this pattern"
        text = str(pattern.value)
        names = {keyword.arg for keyword in call.keywords}
        assert names == set(PLACE.findall(text)) or None in names, f"{place}: {text}"
        assert "{" not in PLACE.sub("", text), f"{place}: a place is a name in braces"


def test_every_finding_and_every_refusal_remembers_its_pattern() -> None:
    spoken = [
        (place, argument, scope) for place, call, scope in _calls({"Finding"}) for argument in call.args[2:4]
    ]
    spoken += [(place, call.args[0], scope) for place, call, scope in _calls(REFUSALS) if call.args]
    assert len(spoken) > 200
    assert [place for place, argument, scope in spoken if _is_plain(argument, scope)] == []


def test_no_word_of_the_window_hides_between_values() -> None:
    """An f-string cannot be translated: its words must come from `tr` or a `Worded` pattern."""
    words = re.compile(r"(^|\s)[A-Za-z]{3,}(\s|$)")
    hidden = [
        f"{file.relative_to(PROGRAM)}:{part.lineno} {part.value!s}"
        for file, tree in SOURCES
        if "app" in file.parts
        for text in ast.walk(tree)
        if isinstance(text, ast.JoinedStr)
        for part in text.values
        if isinstance(part, ast.Constant) and words.search(str(part.value))
    ]
    style, title = "px solid", "Inlayfit"
    assert [place for place in hidden if style not in place and title not in place] == []


@pytest.fixture
def german(qtbot: QtBot) -> Iterator[None]:
    translator = QTranslator()
    assert translator.load(str(shipped_folder("resources") / "translations" / "inlayfit_de.qm"))
    QCoreApplication.installTranslator(translator)
    yield
    QCoreApplication.removeTranslator(translator)


@pytest.mark.parametrize("pattern", PATTERNS)
def test_every_pattern_is_said_in_german_with_all_its_values(pattern: str, german: None) -> None:
    values = {name: f"<{name}>" for name in PLACE.findall(pattern)}
    text = core(Worded(pattern, **values))
    assert "{" not in text
    assert all(value in text for value in values.values())


def test_a_refusal_still_ends_with_what_to_do(german: None) -> None:
    for _, call, _ in _calls(REFUSALS):
        worded = call.args[0] if call.args else None
        if isinstance(worded, ast.Call) and worded.args and isinstance(worded.args[0], ast.Constant):
            pattern = str(worded.args[0].value)
            assert ("; " in pattern) == ("; " in core(pattern)), pattern


BAD = {
    "cross.svg": '<path id="bow" d="M10 10 L40 40 L10 40 L40 10 Z"/><rect width="9" height="9"/>',
    "open.svg": '<path d="M10 10 H40 V40" fill="none" stroke="#000"/><text>x</text>',
    "gap.svg": '<path d="M50 40 H70 V55 H50 V40.004" fill="none" stroke="#000"/><image/>',
    "empty.svg": "",
    "text.svg": "<text>x</text>",
    "broken.svg": '<rect width="9" height="9"/><path d="M 1 2 L x"/><use href="#no"/><circle r="-1"/><a',
    "far.svg": '<rect width="9" height="9" transform="scale(0)"/><rect x="9e9" width="9" height="9"/>',
}


def _said_by(path: Path) -> list[str]:
    try:
        findings: tuple[Finding, ...] = import_drawing(path).findings
    except InlayfitError as error:
        return [error.message]
    return [text for finding in findings for text in (finding.message, finding.remedy)]


def test_nothing_english_is_left_in_the_notes_on_a_bad_drawing(tmp_path: Path, german: None) -> None:
    said = []
    for name, body in BAD.items():
        (tmp_path / name).write_text(
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 80 60">{body}</svg>'
        )
        said += _said_by(tmp_path / name)
    (tmp_path / "picture.svg").write_bytes(b"\x89PNG")
    said += [*_said_by(tmp_path / "picture.svg"), *_said_by(tmp_path / "none.svg")]
    assert len(said) > 12
    for text in said:
        assert isinstance(text, Worded), text
        assert core(text) != text
        assert not {"the", "is", "of", "and", "was"} & set(core(text).split()), core(text)


def test_nothing_english_is_left_in_the_checks_of_a_fit(german: None) -> None:
    state = discs(1)
    made = HalfSpec(3.0, state=HalfState.FINISHED)
    specs = [
        FitSpec(-0.02),
        FitSpec(15.0),
        FitSpec(0.05, pocket=HalfSpec(30.0)),
        FitSpec(0.05, pocket=made, plug=HalfSpec(6.0, relief=Relief.BY_HAND)),
        FitSpec(0.05, pocket=HalfSpec(2.0, relief=Relief.DOG_BONE)),
    ]
    for spec in specs:
        result = solve(state.outlines[0].region, spec)
        for check in checks(state, {state.outlines[0].id: result}, {}, core):
            words = f"{check.finding.message} {check.finding.remedy}".split()
            assert not {"the", "The", "is", "of", "and"} & set(words), words


def test_a_refusal_is_said_in_german(german: None) -> None:
    with pytest.raises(InlayfitError) as caught:
        parse_length("1 apple", default=Unit.MM)
    assert core_error(caught.value).startswith("„apple“ ist hier als Einheit unbekannt; nehmen Sie mm,")
    assert core_error(OSError("no")) == "no"
    with pytest.raises(InlayfitError) as refused:
        FitSpec(500.0)
    assert (
        core_error(refused.value)
        == "Ein Spiel von 500 mm je Seite ist mehr als 20 mm; prüfen Sie die Einheit."
    )
