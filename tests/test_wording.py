from __future__ import annotations

import copy
import json
import pickle
from enum import StrEnum

import pytest

from inlayfit.errors import InlayfitError, WriteError
from inlayfit.measures import length, size
from inlayfit.wording import Worded, said, values_of

# German is from memory; any other words would do.
GERMAN = {
    "The {half} has {count} corners on layer {layer}: "
    "{why}.": "Auf Ebene {layer} hat die {half} {count} Ecken: {why}.",
    "its gap is {gap}": "ihr Spalt misst {gap}",
    "pocket": "Tasche",
    "1,000": "1\N{NARROW NO-BREAK SPACE}000",
}


class Half(StrEnum):
    POCKET = "pocket"


def german(text: str) -> str:
    return GERMAN.get(text, text)


TEXT = Worded(
    "The {half} has {count} corners on layer {layer}: {why}.",
    half=Half.POCKET,
    count=1250,
    layer="pocket",
    why=Worded("its gap is {gap}", gap=length(0.05)),
)


def test_it_is_its_english_text() -> None:
    english = "The pocket has 1,250 corners on layer pocket: its gap is 0.050 mm."
    assert english == TEXT
    assert json.dumps([TEXT]) == json.dumps([english])
    assert hash(TEXT) == hash(english)


def test_patterns_and_words_are_said_in_another_language_and_a_persons_own_text_is_not() -> None:
    assert said(TEXT, german) == (
        "Auf Ebene pocket hat die Tasche 1\N{NARROW NO-BREAK SPACE}250 Ecken: ihr Spalt misst 0.050 mm."
    )
    assert said("pocket", german) == "Tasche"
    assert said("its own words", german) == "its own words"


def test_what_was_said_can_be_said_again() -> None:
    once = TEXT.said(german)
    assert once.said(german) == once
    assert once.said(str) == TEXT


@pytest.mark.parametrize("again", [copy.copy, copy.deepcopy, lambda text: pickle.loads(pickle.dumps(text))])
def test_a_copy_remembers(again) -> None:  # type: ignore[no-untyped-def]  # three builtins of unlike types
    other = again(TEXT)
    assert other == TEXT
    assert other.said(german) == TEXT.said(german)


def test_a_value_is_never_taken_for_a_pattern() -> None:
    hostile = Worded("There is no layer {name}.", name="{name.__class__} {0} %s {{}")
    assert hostile == "There is no layer {name.__class__} {0} %s {{}."
    assert said(hostile, german) == hostile


def test_thousands_are_grouped_as_the_language_does() -> None:
    wide = Worded("{size}", size=size(12000, 1500, ",.0f"))
    assert said(wide, german).replace("\N{NARROW NO-BREAK SPACE}", "_") == "12_000 × 1_500 mm"


def test_a_missing_value_is_noticed_at_once() -> None:
    with pytest.raises(KeyError):
        Worded("A {thing}.")


def test_values_are_found_by_name() -> None:
    assert values_of(TEXT)["count"] == 1250
    assert values_of("a plain text") == {}


def test_an_error_keeps_what_it_was_given() -> None:
    assert InlayfitError(TEXT).message is TEXT
    assert str(WriteError(TEXT)) == TEXT
    assert InlayfitError("plain").message == "plain"
