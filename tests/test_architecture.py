"""The shape of the project: who may import whom, how long a file may be, what lies at the top."""

from __future__ import annotations

import ast
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest
from importlinter.cli import EXIT_STATUS_SUCCESS, lint_imports

import inlayfit

ROOT = Path(__file__).resolve().parent.parent
PACKAGE = ROOT / "inlayfit"
SOURCES = sorted(PACKAGE.rglob("*.py"))
LONGEST_FILE = 500
LONGEST_FUNCTION = 55
TOP_LEVEL = {
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "pyproject.toml",
    "inlayfit",
    "resources",
    "sample_shapes",
    "tests",
}


def named(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def test_imports_run_downwards_only(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(ROOT)
    status = lint_imports(config_filename="pyproject.toml", no_cache=True, verbose=False)
    assert status == EXIT_STATUS_SUCCESS, capsys.readouterr().out


def test_a_file_without_a_layer_would_be_an_error() -> None:
    contracts = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["importlinter"]
    layers = next(c for c in contracts["contracts"] if c["type"] == "layers")
    assert layers["exhaustive"] is True


@pytest.mark.parametrize("path", SOURCES + sorted((ROOT / "tests").rglob("*.py")), ids=named)
def test_no_file_is_longer_than_a_reader_can_hold(path: Path) -> None:
    assert len(path.read_text(encoding="utf-8").splitlines()) <= LONGEST_FILE


@pytest.mark.parametrize("path", SOURCES, ids=named)
def test_no_function_is_longer_than_a_screen(path: Path) -> None:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            body = node.body[1:] if ast.get_docstring(node) else node.body
            length = body[-1].end_lineno - body[0].lineno + 1 if body and body[-1].end_lineno else 0
            assert length <= LONGEST_FUNCTION, f"{named(path)}: {node.name} has {length} lines"


@pytest.mark.parametrize("path", [p for p in SOURCES if p.name == "__init__.py"], ids=named)
def test_an_init_file_holds_a_docstring_and_nothing_else(path: Path) -> None:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    assert ast.get_docstring(tree)
    rest = [ast.unparse(node).split(" = ")[0] for node in tree.body[1:]]
    assert rest == (["__version__"] if path.parent == PACKAGE else [])


@pytest.mark.parametrize("path", [p for p in SOURCES if PACKAGE / "app" not in p.parents], ids=named)
def test_only_app_says_the_name_of_the_window_toolkit(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert "PySide" not in text
    assert "shiboken" not in text


def test_all_but_the_window_works_without_the_toolkit() -> None:
    app = PACKAGE / "app"
    modules = [
        ".".join(path.relative_to(ROOT).with_suffix("").parts)
        for path in SOURCES
        if app not in path.parents and path.name not in ("__init__.py", "__main__.py")
    ]
    program = (
        "import importlib, sys\n"
        "sys.modules['PySide6'] = None\n"
        f"for name in {modules!r}: importlib.import_module(name)\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr


def test_only_the_agreed_entries_lie_at_the_top() -> None:
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=False)
    if listed.returncode != 0:
        pytest.skip(
            "not a git checkout, so what belongs to the project cannot be told from what was made in it"
        )
    entries = {line.split("/")[0] for line in listed.stdout.splitlines()}
    assert {entry for entry in entries if not entry.startswith(".")} <= TOP_LEVEL


def test_the_two_places_that_state_the_version_agree() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert project["version"] == inlayfit.__version__


def test_every_dependency_has_a_lower_and_an_upper_bound() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    for requirement in project["dependencies"] + project["optional-dependencies"]["test"]:
        assert ">=" in requirement, requirement
        assert ",<" in requirement, requirement


def test_tests_mirror_the_package() -> None:
    rooms = {path.name for path in PACKAGE.iterdir() if path.is_dir() and (path / "__init__.py").exists()}
    folders = {
        path.name for path in (ROOT / "tests").iterdir() if path.is_dir() and list(path.glob("test_*.py"))
    }
    assert folders - {"benchmarks", "corpus"} <= rooms
