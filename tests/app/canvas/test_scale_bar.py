"""The scale bar is round in its unit, fits its width, and is drawn as long as it says."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.app.canvas.scale_bar import round_below, scale_bar
from inlayfit.typed_length import parse_length
from inlayfit.units import Unit

units = st.sampled_from([Unit.MM, Unit.INCH, Unit.THOU])


@given(st.floats(0.02, 40_000), units, st.floats(40, 300))
def test_its_text_is_its_length_and_it_fits(scale: float, unit: Unit, widest: float) -> None:
    bar = scale_bar(scale, unit, widest_px=widest)
    assert float(parse_length(bar.text, default=unit).mm) == pytest.approx(bar.length_mm)
    assert bar.length_px == pytest.approx(bar.length_mm * scale)
    assert bar.length_px <= widest * (1 + 1e-6)
    assert bar.length_px > widest / 2.6


@given(st.floats(1e-6, 1e6))
def test_round_numbers_are_one_two_five(value: float) -> None:
    low = round_below(value)
    assert low <= value * (1 + 1e-8)
    assert value < low * 2.6
    assert re.fullmatch(r"[125]e[+-]\d+", f"{low:.0e}")


def test_inches_below_one_are_fractions() -> None:
    assert scale_bar(4, Unit.INCH, widest_px=60).text == "1/2 in"
