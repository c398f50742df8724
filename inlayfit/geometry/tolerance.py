"""Every tolerance of the geometry, in one frozen value that is passed in, never global."""

from __future__ import annotations

from dataclasses import dataclass, replace


@dataclass(frozen=True, slots=True)
class Tolerance:
    """Lengths in millimetres below which two things count as the same.

    Attributes:
        arc_mm: largest distance between a true curve and the chords that stand for it. 0.25 µm keeps a
            chain of one erosion and two dilations within 0.5 µm of the analytic answer.
        cutter_slack_mm: how much smaller than its real radius a cutter is taken when we ask where it can
            go. Without it a slot exactly one cutter wide vanishes, in every geometry library.
        simplify_mm: largest distance a boundary may move when points that say nothing are left out, once,
            at the door.
        thin_mm: the same for a result, whose arcs carry more chords than their tolerance needs.
        settle_mm: a residue thinner than this is numerical dust, not a shape.
        join_mm: two ends nearer than this are the same point, whatever the file says; a larger gap is
            closed only at the user's wish, and reported.
    """

    arc_mm: float = 0.00025
    cutter_slack_mm: float = 0.00075
    simplify_mm: float = 0.0005
    thin_mm: float = 0.0001
    settle_mm: float = 0.0008
    join_mm: float = 1e-6

    @property
    def is_for_cutting(self) -> bool:
        """Whether results may be cut; else they are for looking at while a slider moves."""
        return self.arc_mm <= EXACT.arc_mm

    @property
    def after_a_sweep(self) -> Tolerance:
        """For a shape that a cutter swept before: its tightest passages are one slack too narrow already."""
        return replace(self, cutter_slack_mm=2 * self.cutter_slack_mm)


EXACT = Tolerance()
"""For results that are cut or reported."""

PREVIEW = Tolerance(arc_mm=0.005, cutter_slack_mm=0.006, simplify_mm=0.005, thin_mm=0.002, settle_mm=0.02)
"""For a picture that follows a slider: a few micrometres coarse, several times faster."""
