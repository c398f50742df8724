"""A measured pocket: the plug fits what was read, not what was drawn; seeded errors come back."""

from __future__ import annotations

import math

import pytest

from inlayfit.errors import SpecError
from inlayfit.finding import Severity
from inlayfit.fit.measured import Axis, PocketModel, Reading, fit_pocket
from inlayfit.fit.readings import as_measured, fitted_as_it_stands
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState
from inlayfit.geometry.region import Region

DRAWN = Region.of_ring([(0, 0), (40, 0), (40, 20), (0, 20)])
CUT = FitSpec(0.05, HalfSpec(3.0, HalfState.ALREADY_CUT), HalfSpec(2.0))


def model(offset_x: float, scale_x: float, offset_y: float, scale_y: float) -> PocketModel:
    readings = [Reading(Axis.X, n, n * (1 + scale_x) + offset_x) for n in (10.0, 40.0)]
    readings += [Reading(Axis.Y, n, n * (1 + scale_y) + offset_y) for n in (5.0, 20.0)]
    return fit_pocket(readings)


@pytest.mark.parametrize("offset", [0.06, -0.06])
def test_seeded_errors_come_back_in_the_width_of_the_pocket_within_2_um(offset: float) -> None:
    pocket, findings = as_measured(DRAWN, CUT, model(offset, 0.001, offset / 2, -0.0005))
    x0, y0, x1, y1 = pocket.bounds
    assert x1 - x0 == pytest.approx(40 * 1.001 + offset, abs=0.002)
    assert y1 - y0 == pytest.approx(20 * 0.9995 + offset / 2, abs=0.002)
    assert [finding.code for finding in findings] == ["pocket-as-measured", "sharper-than-cutter"]


def test_the_corners_are_those_its_cutter_left() -> None:
    """Corners of radius 1.5, its walls moved out by 0.03: radius 1.53."""
    pocket, _ = as_measured(DRAWN, CUT, model(0.06, 0.0, 0.06, 0.0))
    assert pocket.area == pytest.approx(40.06 * 20.06 - (4 - math.pi) * 1.53**2, abs=0.01)


@pytest.mark.parametrize("offset", [0.06, -0.06])
def test_the_plug_keeps_its_clearance_to_what_was_read(offset: float) -> None:
    pocket, _ = as_measured(DRAWN, CUT, model(offset, 0.0, offset, 0.0))
    result = solve(pocket, fitted_as_it_stands(CUT))
    assert result.gap.min_mm == pytest.approx(0.05, abs=0.001)
    x0, _, x1, _ = result.plug.outline.bounds
    assert x1 - x0 == pytest.approx(40 + offset - 0.1, abs=0.002)
    assert not result.findings or {f.code for f in result.findings} <= {"relieved"}


def test_a_pocket_still_to_cut_has_no_readings() -> None:
    with pytest.raises(SpecError, match="set the pocket's state to already cut"):
        as_measured(DRAWN, FitSpec(0.05), model(0, 0, 0, 0))


def test_a_cutter_larger_than_the_pocket_is_refused() -> None:
    spec = FitSpec(0.05, HalfSpec(25.0, HalfState.ALREADY_CUT), HalfSpec(2.0))
    with pytest.raises(SpecError, match="larger than the drawn pocket"):
        as_measured(DRAWN, spec, model(0, 0, 0, 0))


# Millimetres in a foot, an inch and a centimetre are exact by definition (international yard and pound
# agreement of 1959); a pixel is 1/96 in (CSS Values and Units Module Level 4, 6.2).
MIXED_UP = [304.8, 25.4, 10.0, 96 / 25.4, 25.4 / 10]


@pytest.mark.parametrize("factor", MIXED_UP)
def test_readings_of_a_pocket_that_is_read_in_a_smaller_unit_are_refused(factor: float) -> None:
    smaller = Region.of_ring([(0, 0), (40 / factor, 0), (40 / factor, 20 / factor), (0, 20 / factor)])
    spec = FitSpec(0.05, HalfSpec(0.0, HalfState.ALREADY_CUT), HalfSpec(2.0))
    with pytest.raises(
        SpecError, match=r"drawn as 40\.000 mm, but the pocket is only .* wide; check"
    ) as told:
        as_measured(smaller, spec, model(0.06, 0, 0.06, 0))
    assert "the unit that the drawing is read in" in str(told.value)


@pytest.mark.parametrize("factor", MIXED_UP)
def test_readings_of_a_pocket_that_is_read_in_a_larger_unit_say_that_they_guess(factor: float) -> None:
    larger = Region.of_ring([(0, 0), (40 * factor, 0), (40 * factor, 20 * factor), (0, 20 * factor)])
    _, findings = as_measured(larger, CUT, model(0.06, 0, 0.06, 0))
    short = [finding for finding in findings if finding.code == "readings-short"]
    assert len(short) == 1, "once, not for each axis"
    assert short[0].severity is Severity.WARN
    assert "drawn as 40.000 mm" in short[0].message
    assert "unit" in short[0].remedy


def test_the_axis_with_the_farther_guess_is_named() -> None:
    long = Region.of_ring([(0, 0), (120, 0), (120, 100), (0, 100)])
    _, findings = as_measured(long, CUT, model(0.0, 0, 0.0, 0))
    assert [f.message for f in findings if f.code == "readings-short"] == [
        "The longest reading along Y is of a width drawn as 20.000 mm, but the pocket is 100.000 mm wide: "
        "its far ends are guessed."
    ]


@pytest.mark.parametrize("offset", [0.06, -0.06])
def test_a_reading_across_the_whole_pocket_is_of_its_size_whatever_the_machine_made_of_it(
    offset: float,
) -> None:
    _, findings = as_measured(DRAWN, CUT, model(offset, 0.01, offset, -0.01))
    assert "readings-short" not in {finding.code for finding in findings}
