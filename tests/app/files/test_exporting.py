"""Writing from the window: into a folder, over earlier files only if wanted, only the exact answer."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from inlayfit.app.pages import prompts
from inlayfit.app.pages.export_page import ExportWish
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.document import edits
from tests.app.conftest import discs


@pytest.fixture
def open_discs(window: MainWindow, settled: Callable[[Session], None]) -> MainWindow:
    window.session.start(discs(2), title="discs")
    settled(window.session)
    return window


def test_export_writes_both_halves_into_the_folder(
    open_discs: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(prompts, "export_wish", lambda *_, **__: ExportWish(tmp_path / "cut"))
    open_discs.actions_by_name["export"].trigger()
    qtbot.waitUntil(lambda: "Wrote" in open_discs.strip.message, timeout=20_000)
    names = {p.name for p in (tmp_path / "cut").iterdir()}
    assert {"pocket.dxf", "plug.dxf", "pocket.svg", "plug.svg", "gap.svg", "fit.json"} <= names
    assert open_discs.notice.text == ""


def test_files_of_an_earlier_export_are_replaced_only_if_that_is_wanted(
    open_discs: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "plug.dxf").write_text("mine")
    monkeypatch.setattr(prompts, "export_wish", lambda *_, **__: ExportWish(tmp_path))
    asked: list[list[str]] = []
    for answer in (False, True):
        monkeypatch.setattr(
            prompts,
            "replace_files",
            lambda _w, _f, names, a=answer: (asked.append(names), a)[1],  # type: ignore[func-returns-value]
        )
        open_discs.actions_by_name["export"].trigger()
        if not answer:
            assert (tmp_path / "plug.dxf").read_text() == "mine"
    qtbot.waitUntil(lambda: "Wrote" in open_discs.strip.message, timeout=20_000)
    assert asked == [["plug.dxf"], ["plug.dxf"]]
    assert (tmp_path / "plug.dxf").read_text() != "mine"


def test_export_waits_for_the_exact_answer(
    open_discs: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    import json

    monkeypatch.setattr(prompts, "export_wish", lambda *_, **__: ExportWish(tmp_path / "cut"))
    open_discs.session.do(lambda s: edits.set_clearance(s, 0.123))
    assert open_discs.session.is_stale
    open_discs.actions_by_name["export"].trigger()
    qtbot.waitUntil(lambda: (tmp_path / "cut" / "fit.json").exists(), timeout=20_000)
    fit = json.loads((tmp_path / "cut" / "fit.json").read_text())
    assert fit["fittings"][0]["clearance_mm"] == 0.123


def test_a_plug_that_ends_at_another_height_than_wanted_is_told_in_the_answer(
    open_discs: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    session = open_discs.session
    for number, proud_mm in enumerate((0.0, 1.0)):
        lead = session.state.lead
        assert lead is not None
        session.perform(edits.set_stack(session.state, replace(lead.stack, target_proud_mm=proud_mm)))
        qtbot.waitUntil(lambda: not session.is_stale, timeout=20_000)
        folder = tmp_path / f"cut {number}"
        open_discs.documents.exporter.write(folder)
        qtbot.waitUntil((folder / "fit.json").exists, timeout=20_000)
        (fitting,) = json.loads((folder / "fit.json").read_text())["fittings"]
        told = [finding["code"] for finding in fitting["findings"]]
        assert ("height-missed" in told) is (proud_mm > 0)
