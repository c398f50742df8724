from __future__ import annotations

import json

import pytest

from inlayfit.document.worded_json import worded_from_json, worded_to_json
from inlayfit.fit.spec import Half
from inlayfit.measures import area, at, length, per_side, point, size
from inlayfit.units import Unit
from inlayfit.wording import Worded, values_of

TEXT = Worded(
    "The {half} on layer {layer} has {count} gaps of {gap} at {place}, {point}, {size}, {area}{rest}.",
    half=Half.POCKET,
    layer="{pocket}",
    count=1250,
    gap=per_side(0.05),
    place=at((1.0, -2.0)),
    point=point((1.0, 2.0)),
    size=size(3.0, 4.0, "g"),
    area=area(5.0),
    rest=Worded(", {most} at most", most=length(0.1)),
)


def _german(text: str) -> str:
    return {"pocket": "Tasche", "{side} per side ({overall} overall)": "{side} je Seite"}.get(text, text)


def test_a_sentence_comes_back_with_all_it_remembers() -> None:
    record = json.loads(json.dumps(worded_to_json(TEXT)))
    again = worded_from_json(str(TEXT), record)
    assert isinstance(again, Worded)
    assert again == TEXT
    assert again.said(_german) == TEXT.said(_german)
    assert "Tasche on layer {pocket} has 1,250 gaps of 0.050 mm je Seite" in again.said(_german)
    assert values_of(again)["place"] == values_of(TEXT)["place"]
    assert at((25.4, 25.4)).in_unit(Unit.INCH).text == "x 1.0000, y 1.0000"


def test_a_plain_text_has_no_record() -> None:
    assert worded_to_json("plain") is None
    assert worded_from_json("plain", None) == "plain"


_DEEP: dict[str, object] = {"pattern": "a", "values": {}}
for _ in range(50):
    _DEEP = {"pattern": "{a}", "values": {"a": _DEEP}}


@pytest.mark.parametrize(
    "record",
    [
        5,
        [],
        {},
        {"pattern": "a"},
        {"pattern": "a", "values": []},
        {"pattern": "{a}", "values": {}},
        {"pattern": "another text", "values": {}},
        {"pattern": "{a}", "values": {"a": None}},
        {"pattern": "{a}", "values": {"a": {"kind": "length", "text": "a"}}},
        {"pattern": "{a}", "values": {"a": {"kind": "no kind", "text": "a", "numbers": [1]}}},
        {"pattern": "{a}", "values": {"a": {"kind": "size", "text": "a", "numbers": [1]}}},
        {"pattern": "{a}", "values": {"a": {"kind": "length", "text": "a", "numbers": [1e999]}}},
        {"pattern": "{a}", "values": {"a": {"kind": "length", "text": "a", "numbers": ["x"]}}},
        {"pattern": "{a}", "values": {"a": {"kind": [], "text": "a", "numbers": {}}}},
        _DEEP,
    ],
)
def test_a_record_that_is_not_of_the_text_is_left_aside(record: object) -> None:
    assert type(worded_from_json("a", record)) is str
