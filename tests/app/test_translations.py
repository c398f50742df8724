"""The German words: complete, with the same places for numbers, and released as they stand in the source."""

from __future__ import annotations

import importlib.util
import re
from collections.abc import Iterator
from types import ModuleType

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator
from pytestqt.qtbot import QtBot

from inlayfit.app.actions import BY_NAME
from inlayfit.app.core_words import CORE_WORDS, core
from inlayfit.app.menus import RECENT, TABLE, Entry
from inlayfit.app.pages import help_pages
from inlayfit.app.pages.help_pages import PICTURE_WORDS, picture_svg
from inlayfit.document import edits, made_edits
from inlayfit.document.edits import FACING_WORDS, corner_words
from inlayfit.document.sentence import PATTERN, parts, sentence
from inlayfit.document.state import Fitting
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.fit.classes import GapClass
from inlayfit.fit.feel import Feel
from inlayfit.fit.spec import Half, HalfState, Relief, Seating
from inlayfit.shipped import shipped_folder
from inlayfit.units import Unit
from tests.app.conftest import discs

FOLDER = shipped_folder("resources") / "translations"


@pytest.fixture(scope="module")
def collect() -> ModuleType:
    spec = importlib.util.spec_from_file_location("collect", FOLDER / "collect.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def german(qtbot: QtBot) -> Iterator[None]:
    translator = QTranslator()
    assert translator.load(str(FOLDER / "inlayfit_de.qm"))
    QCoreApplication.installTranslator(translator)
    yield
    QCoreApplication.removeTranslator(translator)


def test_every_word_has_its_german(collect: ModuleType) -> None:
    known = collect.read_ts()
    missing = [word for word in collect.collected() if word not in known]
    assert missing == [], "run resources/translations/collect.py and fill in what is unfinished"


def test_places_and_letters_of_choice_are_kept(collect: ModuleType) -> None:
    for (_, english), translated in collect.read_ts().items():
        places = sorted(re.findall(r"\{\w*\}", english))
        assert sorted(re.findall(r"\{\w*\}", translated)) == places, english
        assert (translated.count("&") == 1) == (english.count("&") == 1), english
        assert english.endswith("…") == translated.endswith("…"), english


def _letters(entries: tuple[Entry, ...], known: dict[tuple[str, str], str]) -> list[str]:
    """The letters of choice of one menu, in German if the words are given."""
    found = []
    for entry in entries:
        if entry == "-":
            continue
        if isinstance(entry, tuple):
            word = ("menus", entry[0])
        else:
            word = ("menus", "Open rece&nt") if entry == RECENT else ("actions", BY_NAME[entry].text)
        letter = re.search("&(.)", known.get(word, word[1]))
        assert letter is not None, word
        found.append(letter[1].lower())
    return found


def test_each_letter_chooses_one_entry_of_its_menu(collect: ModuleType) -> None:
    menus = [*TABLE, *(entry for _, menu in TABLE for entry in menu if isinstance(entry, tuple))]
    english: dict[tuple[str, str], str] = {}
    for known in (english, collect.read_ts()):
        for title, entries in menus:
            letters = _letters(entries, known)
            assert sorted(letters) == sorted(set(letters)), (title, letters)


def test_the_guides_pictures_say_no_word_that_is_not_translated(german: None) -> None:
    pictures = [name for _, names in help_pages._PICTURES for name in names]
    texts = [words for name in pictures for words in re.findall(">([^<>]+)</text>", picture_svg(name))]
    assert len(texts) >= len(pictures)
    for text in texts:
        words = text.lstrip("0123456789 ")
        assert words not in PICTURE_WORDS
        assert len(words) == 1 or words in {QCoreApplication.translate("help", w) for w in PICTURE_WORDS}


def test_the_released_file_says_what_the_source_says(collect: ModuleType, german: None) -> None:
    for (context, english), translated in collect.read_ts().items():
        assert QCoreApplication.translate(context, english) == translated


def test_the_sentence_puts_its_places_in_another_order(german: None) -> None:
    english = [part.text for part in parts(PATTERN) if part.is_place]
    other = [part.text for part in parts(core(PATTERN)) if part.is_place]
    assert sorted(english) == sorted(other)
    assert english != other
    said_in_german = sentence(Fitting("a"), Unit.MM, core)
    assert said_in_german.startswith("Einlage, zu schneiden mit Fräser 3 mm, in Tasche")
    assert "je Seite (0.060 gesamt)" in said_in_german


def test_every_word_that_is_no_pattern_is_listed() -> None:
    words = {half.value for half in Half} | {feel.value for feel in Feel} | {c.word for c in GapClass}
    assert words <= set(CORE_WORDS)


@pytest.mark.parametrize("pocket", Relief)
@pytest.mark.parametrize("plug", Relief)
def test_corners_are_said_in_german(pocket: Relief, plug: Relief, german: None) -> None:
    words = core(corner_words(pocket=pocket, plug=plug)).split()
    assert not {"both", "the", "plug", "pocket", "left", "rounded"} & set(words), words


def test_what_undo_says_is_said_in_german_for_every_edit(german: None) -> None:
    state = discs(2)
    made = [
        edits.set_clearance(state, 0.1), edits.set_feel(state, Feel.SLIP), edits.choose(state, []),
        edits.choose(state, ["o1"]), edits.choose(state, ["o0", "o1"]), edits.set_unit(state, Unit.INCH),
        edits.remove_chosen(state), edits.rename_outline(state, "o0", "x"),
        edits.set_finishing_allowance(state, 0.1), edits.set_stack(state, state.fittings[0].stack),
        edits.set_corners(state, pocket=Relief.ROUNDED, plug=Relief.DOG_BONE),
        made_edits.give_plug(state, "o1"), made_edits.set_kerf_taper(state, 0.05),
        made_edits.set_workshop(state, WorkshopNumbers(floor_fillet_mm=0.2)),
    ]  # fmt: skip
    for half in Half:
        made += [
            edits.set_cutter(state, half, 1.0), edits.set_kerf(state, half, 0.2), edits.use_as(state, half),
            edits.set_half_state(state, half, HalfState.FINISHED),
            edits.set_relief(state, half, Relief.T_BONE),
        ]  # fmt: skip
    made += [made_edits.set_edge_break(state, half, 0.2) for half in Half]
    made += [made_edits.set_seating(state, seating) for seating in Seating]
    made += [edits.set_facing(state, facing) for facing in FACING_WORDS]
    for edit in made:
        assert core(edit.text) != edit.text, edit.text
