"""The list of cautions is whole, and the right ones show."""

from __future__ import annotations

from inlayfit.bench.cautions import CAUTIONS, DEFER, Hazard, cautions_for


def codes(*hazards: Hazard, materials: tuple[str, ...] = ()) -> set[str]:
    return {caution.code for caution in cautions_for(frozenset(hazards), materials)}


def test_codes_are_unique_and_texts_are_sentences() -> None:
    all_codes = [caution.code for caution in (*CAUTIONS, DEFER)]
    assert len(set(all_codes)) == len(all_codes)
    for caution in (*CAUTIONS, DEFER):
        assert caution.text.endswith(".")
        assert caution.text[0].isupper()
        assert all(word == word.lower() for word in caution.materials)


def test_every_kind_of_work_has_a_caution_and_defers_last() -> None:
    for hazard in (Hazard.CUTTER, Hazard.LASER, Hazard.PRESS, Hazard.FINISH):
        shown = cautions_for(frozenset({hazard}))
        assert len(shown) > 1
        assert shown[-1] is DEFER


def test_eyes_ears_dust_and_small_parts_show_for_every_cutter() -> None:
    assert {"eyes", "ears", "dust", "small-parts"} <= codes(Hazard.CUTTER)


def test_vinyl_is_never_for_the_laser_and_acetal_is_asked_about() -> None:
    # University laboratories' lists: adhesive vinyl counts as PVC; on acetal they disagree.
    vinyl = cautions_for(frozenset({Hazard.LASER}), ("Adhesive Vinyl, grey",))
    assert any(c.code == "laser-vinyl" and c.text.startswith("Never") for c in vinyl)
    assert "laser-acetal" in codes(Hazard.LASER, materials=("acetal",))
    assert "ask the lab" in next(c.text for c in CAUTIONS if c.code == "laser-acetal")
    assert "laser-vinyl" not in codes(Hazard.LASER, materials=("cherry",))
    assert "laser-vinyl" not in codes(Hazard.CUTTER, materials=("vinyl",))
