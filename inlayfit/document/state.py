"""What is open: one frozen value that holds everything a person could want back.

Terms
    outline: one closed figure of the drawing, in millimetres, with its true curves.
    fitting: an outline together with what was asked of it; each outline has exactly one.
    chosen: the outlines that are worked upon now; every edit of a fit acts on all that are chosen.
    lead: the first chosen outline, whose numbers the fit sentence reads out.

A `State` is a value: edits (`inlayfit.document.edits`) answer with a new one that shares all it did not
change. Undo therefore puts an old value back and needs no arithmetic. Results of a fit are not part of
it: they follow from it.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from enum import StrEnum
from typing import TYPE_CHECKING

from inlayfit.bench.stack import BARE, BuildUp, Spread, Stack
from inlayfit.document.made_plug import MadePlug
from inlayfit.document.pocket_readings import PocketReadings
from inlayfit.document.workshop_numbers import WorkshopNumbers
from inlayfit.errors import SpecError
from inlayfit.finding import Finding
from inlayfit.fit.spec import FitSpec, Half, HalfSpec
from inlayfit.units import Unit
from inlayfit.wording import Worded

if TYPE_CHECKING:  # geometry is heavy; a window that shows an empty state need not wait for it
    from inlayfit.document.outlines import Outline


@dataclass(frozen=True, slots=True)
class Source:
    """The file the outlines came from. It is read, never written.

    Attributes:
        path: as it was given; empty for pasted outlines.
        sha256: fingerprint of its bytes in hexadecimal, or empty if it is unknown.
        size_bytes: its length.
    """

    path: str = ""
    sha256: str = ""
    size_bytes: int = 0


@dataclass(frozen=True, slots=True)
class HalfName:
    """How a person speaks of a half: "copper" and "leaf plug". Either may be empty."""

    name: str = ""
    material: str = ""


class Facing(StrEnum):
    """Which side of the plug faces the cutter."""

    UP = "up"
    DOWN = "down"


@dataclass(frozen=True, slots=True)
class StackNumbers:
    """What lies above what, at rest: the numbers behind proud, flush and below.

    Attributes:
        depth_mm: depth of the pocket.
        plug_mm: thickness of the plug.
        glue_mm: thickness of tape or glue under it, as it ends up.
        glue: what it is called.
        target_proud_mm: how far above the host face it is meant to end; negative for below.
        spread_mm: half the range of the readings of depth and thickness together.
        coating: what each coated face grows by, after depth and thickness were measured.

    Raises:
        SpecError: a height is not one.
    """

    depth_mm: float = 3.0
    plug_mm: float = 3.0
    glue_mm: float = 0.0
    glue: str = "no glue"
    target_proud_mm: float = 0.0
    spread_mm: float = 0.03
    coating: BuildUp = BARE

    def __post_init__(self) -> None:
        if self.spread_mm < 0:
            raise SpecError(Worded("Readings vary by 0 or more; give half the range of what was measured."))
        Stack(*self._parts())

    def _parts(self) -> tuple[Spread, Spread, Spread]:
        """Plug, depth and bed; the spread of both readings is put on the depth."""
        depth = Spread.plus_minus(self.depth_mm, self.spread_mm)
        return Spread.exact(self.plug_mm), depth, Spread.exact(self.glue_mm)

    @property
    def heights(self) -> Stack:
        """The same numbers as the bench reckons with them."""
        return Stack(*self._parts(), build_up=self.coating)

    @property
    def proud_mm(self) -> float:
        """How far the plug stands above the host face; negative is below."""
        return self.heights.proud.middle_mm


@dataclass(frozen=True, slots=True)
class Fitting:
    """What is asked for one outline.

    Attributes:
        outline_id: the outline.
        spec: clearance, cutters and states.
        pocket, plug: what the halves are called.
        stack: what lies above what.
        facing: which side of the plug faces the cutter.
        made: the plug's own outline, used where both halves are made; None if nobody gave it.
        readings: widths read in the pocket, used where it is made; None if nobody measured it.
    """

    outline_id: str
    spec: FitSpec = field(default_factory=lambda: FitSpec(0.03))
    pocket: HalfName = HalfName("pocket", "")
    plug: HalfName = HalfName("plug", "")
    stack: StackNumbers = StackNumbers()
    facing: Facing = Facing.UP
    made: MadePlug | None = None
    readings: PocketReadings | None = None

    @property
    def both_made(self) -> bool:
        """Whether neither half may move, so that each has an outline of its own."""
        return not self.spec.pocket.may_move and not self.spec.plug.may_move

    @property
    def readings_used(self) -> PocketReadings | None:
        """The readings, where the pocket they were taken in exists; one still to cut is as drawn."""
        return None if self.spec.pocket.may_move else self.readings

    @property
    def drawn(self) -> Half:
        """The half that the outline shows: a plug that is made while its pocket is not, else the pocket."""
        plug_is_made = not self.spec.plug.may_move and self.spec.pocket.may_move
        return Half.PLUG if plug_is_made else Half.POCKET

    def half(self, half: Half) -> HalfSpec:
        """The spec of one half."""
        return self.spec.pocket if half is Half.POCKET else self.spec.plug

    def name(self, half: Half) -> HalfName:
        """How one half is called."""
        return self.pocket if half is Half.POCKET else self.plug


@dataclass(frozen=True, slots=True)
class SettingsUsed:
    """The settings that this work depends on, kept with it so that it opens elsewhere as it was.

    Attributes:
        gap_mm: ends of lines that lie this close were joined when the drawing was read.
        strokes_as_areas: whether painted lines were read as areas.
        unit: what a person said one drawing unit is; None believes the file.
        layers: the layers that were read; None for all that hold outlines.
    """

    gap_mm: float = 0.01
    strokes_as_areas: bool = False
    unit: Unit | None = None
    layers: tuple[str, ...] | None = None


@dataclass(frozen=True, slots=True)
class Trial:
    """One cut and measured attempt at a fitting.

    Attributes:
        outline_id: the fitting.
        clearance_mm: what was asked for, per side.
        feel: the word that was noted.
        measured_mm: clearance per side as measured, or None.
    """

    outline_id: str
    clearance_mm: float
    feel: str
    measured_mm: float | None = None


@dataclass(frozen=True, slots=True)
class State:
    """The whole document. See the module docstring for its terms.

    Attributes:
        source: where the outlines came from.
        outlines: in the order of the drawing; ids are unique.
        fittings: one an outline, in the same order.
        chosen: ids of the outlines worked upon, the lead first.
        unit: the unit lengths are shown in and bare numbers are read as.
        findings: what was found while reading the drawing.
        settings: the settings this work depends on.
        trials: attempts, oldest first.
        workshop: what the machine gets wrong, and how it cuts.
    """

    source: Source = Source()
    outlines: tuple[Outline, ...] = ()
    fittings: tuple[Fitting, ...] = ()
    chosen: tuple[str, ...] = ()
    unit: Unit = Unit.MM
    findings: tuple[Finding, ...] = ()
    settings: SettingsUsed = SettingsUsed()
    trials: tuple[Trial, ...] = ()
    workshop: WorkshopNumbers = field(default_factory=WorkshopNumbers)

    def __post_init__(self) -> None:
        ids = [outline.id for outline in self.outlines]
        if len(set(ids)) != len(ids):
            raise ValueError("two outlines have one id")
        if [fitting.outline_id for fitting in self.fittings] != ids:
            raise ValueError("each outline needs exactly one fitting, in the same order")
        if not set(self.chosen) <= set(ids) or len(set(self.chosen)) != len(self.chosen):
            raise ValueError("only existing outlines can be chosen, each once")
        if any(f.made is not None and f.made.outline_id not in ids for f in self.fittings):
            raise ValueError("only an existing outline can be a made plug")
        if any(f.made is not None and f.made.outline_id == f.outline_id for f in self.fittings):
            raise ValueError("an outline cannot be the plug of itself")

    @property
    def is_empty(self) -> bool:
        """Whether nothing is open."""
        return not self.outlines

    @property
    def lead(self) -> Fitting | None:
        """The fitting whose numbers are read out: of the first chosen outline."""
        return self.fitting(self.chosen[0]) if self.chosen else None

    def fitting(self, outline_id: str) -> Fitting:
        """The fitting of an outline; KeyError if there is none."""
        for fitting in self.fittings:
            if fitting.outline_id == outline_id:
                return fitting
        raise KeyError(outline_id)

    def outline(self, outline_id: str) -> Outline:
        """An outline by its id; KeyError if there is none."""
        for outline in self.outlines:
            if outline.id == outline_id:
                return outline
        raise KeyError(outline_id)

    def made_plug(self, fitting: Fitting) -> Outline | None:
        """The outline of the plug of two made halves; None where one half may move, or none was given."""
        if fitting.made is None or not fitting.both_made:
            return None
        return self.outline(fitting.made.outline_id)

    @property
    def plug_ids(self) -> frozenset[str]:
        """Outlines that are the made plug of another outline."""
        return frozenset(f.made.outline_id for f in self.fittings if f.made is not None)

    @property
    def chosen_fittings(self) -> tuple[Fitting, ...]:
        """The chosen fittings in the order they were chosen."""
        by_id = {fitting.outline_id: fitting for fitting in self.fittings}
        return tuple(by_id[outline_id] for outline_id in self.chosen)

    def with_fittings(self, changed: tuple[Fitting, ...]) -> State:
        """The same state with these fittings in the place of those for the same outlines."""
        by_id = {fitting.outline_id: fitting for fitting in changed}
        return replace(self, fittings=tuple(by_id.get(f.outline_id, f) for f in self.fittings))
