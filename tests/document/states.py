"""Documents for tests: random valid outlines with true arcs and curves, fits, and edits of them."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from hypothesis import strategies as st

from inlayfit.bench.milling import Milling
from inlayfit.bench.stack import BARE, BuildUp
from inlayfit.document import edits, made_edits
from inlayfit.document.edits import Edit
from inlayfit.document.imports import Outline
from inlayfit.document.made_plug import MadePlug
from inlayfit.document.measured_edits import apply_readings, leave_readings_out
from inlayfit.document.outlines import region_of_contours
from inlayfit.document.pocket_readings import PocketReadings
from inlayfit.document.state import Facing, Fitting, HalfName, Source, StackNumbers, State, Trial
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.errors import SpecError
from inlayfit.finding import Finding, Severity
from inlayfit.fit.feel import Feel
from inlayfit.fit.machine_errors import MachineErrors
from inlayfit.fit.measured import Axis, Reading
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, HalfState, Relief, Seating, WallChoice
from inlayfit.geometry.path import Bezier, Path
from inlayfit.units import Unit
from inlayfit.wording import Worded
from tests.strategies import lengths, star_rings

WORDS = st.text("abcdefghij äß“{}", max_size=8)


@st.composite
def contours(draw: st.DrawFn) -> tuple[Path, ...]:
    """A star with an arc or a curve in it, and sometimes a round hole."""
    ring = draw(star_rings())
    bulges = np.zeros(len(ring))
    bulges[0] = draw(st.sampled_from([0.0, 0.1, -0.05]))
    curves = {}
    if draw(st.booleans()):
        a, b = ring[2], ring[3]
        weights = draw(st.sampled_from([None, np.array([1.0, 0.9, 1.0])]))
        curves[2] = Bezier(np.array([a, (a + b) / 2 * 1.02, b]), weights)
    outer = Path(ring, bulges, True, curves)
    hole = Path.circle((0, 0), 1 / draw(st.integers(1, 7)))
    return (outer, hole) if draw(st.booleans()) else (outer,)


def outline(number: int, paths: tuple[Path, ...]) -> Outline:
    return Outline(
        id=f"o{number}",
        name=f"outline {number}",
        layer="0",
        region=region_of_contours(paths),
        contours=paths,
    )


def half_specs() -> st.SearchStrategy[HalfSpec]:
    return st.builds(
        HalfSpec,
        cutter_mm=lengths(0.5, 6),
        state=st.sampled_from(HalfState),
        relief=st.sampled_from(Relief),
        finishing_allowance_mm=lengths(0, 0.5),
        kerf_taper_mm=lengths(0, 0.1),
        t_bone_wall=st.sampled_from(WallChoice),
        edge_break_mm=lengths(0, 0.5),
    )


def workshops() -> st.SearchStrategy[WorkshopNumbers]:
    """Numbers that fit any depth from 0.5 mm up."""
    errors = st.builds(MachineErrors, *[lengths(0, 0.1)] * 5)
    return st.builds(
        WorkshopNumbers,
        errors,
        depth_per_pass_mm=lengths(0.1, 0.5),
        floor_allowance_mm=lengths(0, 0.05),
        milling=st.none() | st.sampled_from(Milling),
        floor_fillet_mm=lengths(0, 0.5),
    )


def pocket_readings() -> st.SearchStrategy[PocketReadings]:
    """A long and a short width along each axis, all off by as much."""

    def made(off_mm: float, repeats_mm: float) -> PocketReadings:
        read = tuple(Reading(axis, n, n + off_mm) for axis in Axis for n in (30.0, 8.0))
        return PocketReadings(read, repeats_mm)

    return st.builds(made, lengths(-0.05, 0.1), lengths(0.005, 0.02))


def names() -> st.SearchStrategy[HalfName]:
    return st.builds(HalfName, WORDS, WORDS)


def stacks() -> st.SearchStrategy[StackNumbers]:
    films = st.sampled_from([0.0, 0.004, 0.025])
    coatings = st.just(BARE) | st.builds(BuildUp, films, films, films, films, films, films)
    return st.builds(
        StackNumbers, depth_mm=lengths(0.5, 5), plug_mm=lengths(0.5, 5), glue=WORDS, coating=coatings
    )


@st.composite
def documents(draw: st.DrawFn, *, least: int = 0) -> State:
    outlines = tuple(
        outline(i, paths) for i, paths in enumerate(draw(st.lists(contours(), min_size=least, max_size=3)))
    )
    specs = st.builds(FitSpec, lengths(-0.05, 0.2), half_specs(), half_specs())

    def readings_of() -> PocketReadings | None:
        return draw(pocket_readings()) if draw(st.booleans()) else None

    def plug_of(number: int) -> MadePlug | None:
        others = [o.id for o in outlines if o.id != f"o{number}"]
        if not others or draw(st.booleans()):
            return None
        return MadePlug(draw(st.sampled_from(others)), draw(st.sampled_from(Seating)))

    fittings = tuple(
        Fitting(
            o.id, draw(specs), draw(names()), draw(names()), draw(stacks()), draw(st.sampled_from(Facing)),
            plug_of(number), readings_of(),
        )
        for number, o in enumerate(outlines)
    )  # fmt: skip
    ids = [o.id for o in outlines]
    findings = st.builds(Finding, WORDS, st.sampled_from(Severity), WORDS, WORDS, fixed=st.booleans())
    trials = st.builds(Trial, WORDS, lengths(-0.05, 0.2), WORDS, st.none() | lengths(-0.05, 0.2))
    return State(
        source=Source(draw(WORDS), "ab12", 7),
        outlines=outlines,
        fittings=fittings,
        chosen=tuple(i for i in ids if draw(st.booleans())) if not least else tuple(ids),
        unit=draw(st.sampled_from([Unit.MM, Unit.INCH, Unit.THOU])),
        findings=tuple(draw(st.lists(findings, max_size=2))),
        trials=tuple(draw(st.lists(trials, max_size=2))),
        workshop=draw(workshops()),
    )


def edits_of() -> st.SearchStrategy[Callable[[State], Edit]]:
    """Random edits, each a function of the state it meets."""
    halves = st.sampled_from(Half)
    makers: list[st.SearchStrategy[Callable[[State], Edit]]] = [
        st.builds(lambda c: lambda s: edits.set_clearance(s, c), lengths(-0.05, 0.2)),
        st.builds(lambda w: lambda s: edits.set_feel(s, w), st.sampled_from(Feel)),
        st.builds(lambda h, d: lambda s: edits.set_cutter(s, h, d), halves, lengths(0.5, 6)),
        st.builds(lambda h, d: lambda s: edits.set_kerf(s, h, d), halves, lengths(0.1, 0.5)),
        st.builds(lambda a: lambda s: edits.set_finishing_allowance(s, a), lengths(0, 0.5)),
        st.builds(lambda h, x: lambda s: edits.set_half_state(s, h, x), halves, st.sampled_from(HalfState)),
        st.builds(lambda h, r: lambda s: edits.set_relief(s, h, r), halves, st.sampled_from(Relief)),
        st.builds(
            lambda p, q: lambda s: edits.set_corners(s, pocket=p, plug=q),
            st.sampled_from(Relief),
            st.sampled_from(Relief),
        ),
        st.builds(lambda h: lambda s: edits.use_as(s, h), halves),
        st.builds(lambda h, n: lambda s: edits.name_half(s, h, n), halves, names()),
        st.builds(lambda k: lambda s: edits.set_stack(s, k), stacks()),
        st.builds(lambda f: lambda s: edits.set_facing(s, f), st.sampled_from(Facing)),
        st.builds(lambda u: lambda s: edits.set_unit(s, u), st.sampled_from([Unit.MM, Unit.INCH])),
        st.builds(lambda n: lambda s: edits.choose(s, [f"o{n}", "none"]), st.integers(0, 3)),
        st.just(lambda s: edits.choose(s, [o.id for o in s.outlines])),
        st.builds(lambda w: lambda s: edits.rename_outline(s, "o0", w), WORDS),
        st.builds(lambda n: lambda s: _plug_given(s, f"o{n}"), st.integers(0, 3)),
        st.builds(lambda w: lambda s: made_edits.set_seating(s, w), st.sampled_from(Seating)),
        st.builds(lambda w: lambda s: made_edits.set_workshop(s, w), workshops()),
        st.builds(lambda t: lambda s: made_edits.set_kerf_taper(s, t), lengths(0, 0.1)),
        st.builds(lambda h, w: lambda s: made_edits.set_edge_break(s, h, w), halves, lengths(0, 0.5)),
        st.builds(lambda r: lambda s: _if_possible(s, lambda t: apply_readings(t, r)), pocket_readings()),
        st.just(lambda s: _if_possible(s, leave_readings_out)),
    ]
    return st.one_of(makers)


def _plug_given(state: State, outline_id: str) -> Edit:
    """The outline as the lead's plug, where it can be one."""
    return _if_possible(state, lambda given: made_edits.give_plug(given, outline_id))


def _if_possible(state: State, edit: Callable[[State], Edit]) -> Edit:
    """The edit, where it is not refused."""
    try:
        return edit(state)
    except SpecError:
        return Edit(state, Worded("Nothing"))
