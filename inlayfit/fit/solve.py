"""From one drawn outline and a `FitSpec` to both halves as cut, and the gap between them. Pure.

What is drawn is the pocket, unless only the pocket may be cut: then it is the plug that exists. The
steps, with the disk operations of `geometry.morphology` (Rp, Rm the cutters' radii, c the clearance per
side):

Both halves to cut
    The *form* F stands for both: the pocket is F, the plug F eroded by c. Rounding both to match asks for
    opened(F, Rp) = F, so that the pocket's cutter reaches everywhere, and closed(F, ρ) = F with
    ρ = max(0, Rm − c), since eroding by c turns a concave radius ρ into ρ + c ≥ Rm. One opening and one
    closing settle it unless a passage is too narrow for one of them; that is a finding. A half that is
    relieved instead of rounded keeps its part of the drawn form and gets the plunges of `fit.relief`.
Pocket fixed
    The plug's target is the pocket eroded by c. Where the plug's cutter leaves stock, the plug gives way.
    The pocket is never changed.
Plug fixed
    The mirror image: the pocket's target is the plug dilated by c.
Both fixed
    Nothing moves; the gap is measured.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
import shapely

from inlayfit.errors import SpecError
from inlayfit.finding import Finding, heaviest_first
from inlayfit.fit import check
from inlayfit.fit.gaps import gap_map
from inlayfit.fit.reach import unreached
from inlayfit.fit.relief import Sweep, removed_by, sweeps_for
from inlayfit.fit.residue import Residue, ResidueKind, residues, residues_outside
from inlayfit.fit.result import FitResult, HalfResult, ReliefCut
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, Relief
from inlayfit.fit.strength import host_around, thin_places
from inlayfit.geometry.departures import departing_pieces
from inlayfit.geometry.morphology import (
    closed,
    closed_with_bars,
    dilate,
    erode,
    opened,
    opened_with_room,
    room_inside,
    simplified,
    thick_parts,
    thinned,
    without_films,
)
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import EXACT, Tolerance
from inlayfit.geometry.width import Passage, passages
from inlayfit.progress import Progress, unwatched
from inlayfit.wording import Worded

_MOST_ROUNDS = 4
_SAMPLES = 2000
_SEEN_MM2 = 5e-4  # too shallow to feel, 5 µm, over a length the eye still resolves, 0.1 mm; common practice


def solve(
    drawn: Region,
    spec: FitSpec,
    *,
    plug_drawn: Region | None = None,
    tolerance: Tolerance = EXACT,
    progress: Progress | None = None,
) -> FitResult:
    """Solve one fitting.

    Args:
        drawn: the pocket's outline; the plug's where only the pocket is to cut.
        spec: clearance, cutters and states.
        plug_drawn: the plug's outline where both halves are fixed, lying as it sits in the pocket.
        tolerance: `EXACT` for what is cut, `PREVIEW` for a picture that follows a slider.
        progress: asked between stages whether to stop.

    Raises:
        SpecError: the outline is empty, or both halves are fixed and the plug is not given.
        Cancelled: the work was stopped.
    """
    watched = progress or unwatched()
    if drawn.is_empty:
        raise SpecError(Worded("The outline is empty; choose a closed outline."))
    watched.report(0.0, "halves")
    if not tolerance.is_for_cutting:
        drawn = _coarse(drawn, tolerance)
    pocket, plug, findings = _halves(drawn, spec, plug_drawn, tolerance, watched)
    watched.report(0.7, "gap map")
    samples = _SAMPLES if tolerance.is_for_cutting else _SAMPLES // 4
    gap = gap_map(pocket.finished, plug.finished, samples=samples)
    watched.report(0.9, "checks")
    found = [*findings, *check.judge(spec, pocket, plug, gap, tolerance)]
    if tolerance.is_for_cutting:
        found += thin_places(pocket, plug, spec)
    return FitResult(spec, pocket, plug, gap, heaviest_first(found))


_Halves = tuple[HalfResult, HalfResult, list[Finding]]


def _halves(
    drawn: Region, spec: FitSpec, plug_drawn: Region | None, tolerance: Tolerance, progress: Progress
) -> _Halves:
    match spec.pocket.may_move, spec.plug.may_move:
        case True, True:
            return _both_to_cut(drawn, spec, tolerance, progress)
        case False, True:
            return _plug_to_cut(drawn, spec, tolerance, progress)
        case True, False:
            return _pocket_to_cut(drawn, spec, tolerance, progress)
        case _:
            if plug_drawn is None:
                raise SpecError(
                    Worded(
                        "Both halves are already cut; set one of them to cut, or give the plug's outline too."
                    )
                )
            return HalfResult(drawn, changed=False), HalfResult(plug_drawn, changed=False), []


def _both_to_cut(drawn: Region, spec: FitSpec, tolerance: Tolerance, progress: Progress) -> _Halves:
    form = _own_form(drawn, spec.pocket, tolerance)
    progress.raise_if_cancelled()
    if spec.plug.relief is Relief.ROUNDED:
        form = _closed_for_plug(form, spec, tolerance, progress)
        pocket = _pocket_of(form, spec.pocket, tolerance)
    else:
        pocket = _own_pocket(drawn, spec.pocket, tolerance)
    progress.raise_if_cancelled()
    target = thinned(erode(form.region, spec.clearance_mm, tolerance), tolerance)
    # Interference grows the form: where the disks that closed it barely overlapped, the plug's cutter, which
    # is smaller by that, no longer meets itself, and leaves stock between two cusps.
    suits = form.suits_plug and spec.clearance_mm >= 0
    plug = HalfResult(target) if suits else _shaped_plug(target, spec.plug, tolerance)
    return (
        pocket,
        _with_passes(plug, spec.plug, Half.PLUG, tolerance),
        [*form.findings, *check.of_target(form.region, target, spec)],
    )


def _plug_to_cut(drawn: Region, spec: FitSpec, tolerance: Tolerance, progress: Progress) -> _Halves:
    """The pocket stays as it is, byte for byte.

    A cutter cannot have left corners sharper than itself; where the outline says so, the plug is fitted to
    what the cutter leaves, which goes into either, and a finding says it.
    """
    left, sharper = _pocket_reach(drawn, spec.pocket.radius_mm, tolerance)
    host = left if sharper else drawn
    progress.raise_if_cancelled()
    target = thinned(erode(host, spec.clearance_mm, tolerance), tolerance)
    plug = _shaped_plug(target, _giving_way(spec.plug), tolerance)
    findings = [*check.of_given_half(sharper, spec.pocket, Half.POCKET), *check.of_target(host, target, spec)]
    return HalfResult(drawn, changed=False), _with_passes(plug, spec.plug, Half.PLUG, tolerance), findings


def _pocket_to_cut(drawn: Region, spec: FitSpec, tolerance: Tolerance, progress: Progress) -> _Halves:
    """The plug stays as it is; the mirror image of `_plug_to_cut`."""
    cut = closed(drawn, spec.plug.radius_mm, tolerance).union(drawn)
    sharper = residues_outside(drawn, cut, spec.plug.radius_mm, tolerance)
    plug = cut if sharper else drawn
    progress.raise_if_cancelled()
    target = thinned(dilate(plug, spec.clearance_mm, tolerance), tolerance)
    pocket = _shaped_pocket(target, _giving_way(spec.pocket), tolerance)
    findings = [*check.of_given_half(sharper, spec.plug, Half.PLUG), *check.of_target(plug, target, spec)]
    return (
        _with_passes(pocket, spec.pocket, Half.POCKET, tolerance),
        HalfResult(drawn, changed=False),
        findings,
    )


def _giving_way(half: HalfSpec) -> HalfSpec:
    """A half that must fit a fixed one cannot round its partner's corners to match: it is relieved."""
    return replace(half, relief=Relief.DOG_BONE) if half.relief is Relief.ROUNDED else half


@dataclass(frozen=True, slots=True)
class _Form:
    """What both halves share.

    Attributes:
        region: the form.
        swept: what the pocket's cutter reaches of the drawing.
        corners: what of the drawing it leaves out because the pocket's cutter is round.
        findings: what to look at.
        suits_plug: whether the plug's cutter reaches every corner of a plug of this form.
        is_closed: whether it was closed for that, so that the pocket's cutter may reach more than it swept.
    """

    region: Region
    swept: Region
    corners: Region
    findings: tuple[Finding, ...]
    suits_plug: bool = False
    is_closed: bool = False


@lru_cache(maxsize=16)
def _coarse(drawn: Region, tolerance: Tolerance) -> Region:
    """The outline with the few points a preview needs; kept, because a slider asks for it again."""
    return simplified(drawn, tolerance)


@lru_cache(maxsize=16)
def _pocket_reach(drawn: Region, radius: float, tolerance: Tolerance) -> tuple[Region, tuple[Residue, ...]]:
    """What a cutter leaves of a drawn pocket, and its residues; kept, because a slider asks for it again."""
    reached = _within(opened(drawn, radius, tolerance), drawn, tolerance)
    return reached, residues(drawn, reached, radius, tolerance)


def _within(reached: Region, drawn: Region, tolerance: Tolerance) -> Region:
    """An opening lies inside what was opened; chords can carry it past the tip of a thin spike."""
    return reached.common(drawn) if tolerance.is_for_cutting else reached


@lru_cache(maxsize=16)
def _own_form(drawn: Region, half: HalfSpec, tolerance: Tolerance) -> _Form:
    """The form that suits the pocket alone; kept, because a slider asks for it again."""
    reached, left = _pocket_reach(drawn, half.radius_mm, tolerance)
    narrow = _narrow_places(drawn, left, half, tolerance)
    findings = tuple(check.of_reach(left, half, Half.POCKET, narrow))
    corners = _together(r.region for r in left if r.kind is ResidueKind.CORNER)
    if half.relief is Relief.ROUNDED:
        region = reached
    else:
        region = _reached_and_corners(drawn, reached, left, half.radius_mm, tolerance)
    return _Form(thinned(region, tolerance), reached, corners, findings)


@lru_cache(maxsize=16)
def _own_pocket(drawn: Region, half: HalfSpec, tolerance: Tolerance) -> HalfResult:
    """The pocket of its own form; kept, because a slider for the clearance asks for it again."""
    return _pocket_of(_own_form(drawn, half, tolerance), half, tolerance)


def _pocket_of(form: _Form, half: HalfSpec, tolerance: Tolerance) -> HalfResult:
    """The pocket cut to a form, with its other outlines."""
    pocket = _shaped_pocket(form.region, half, tolerance, form)
    if half.relief is Relief.ROUNDED:
        pocket = replace(pocket, left_over=form.corners)
    return _with_passes(pocket, half, Half.POCKET, tolerance)


def _reached_and_corners(
    drawn: Region, reached: Region, left: tuple[Residue, ...], radius: float, tolerance: Tolerance
) -> Region:
    """The drawn form without what is not a corner of it.

    Taking the necks away from the drawing would leave films of dust where their walls leave the reached area.
    Where those lie is chance, and the plug's cutter would be kept out by them. So only what is near a corner
    is added to what is reached: as near as the wall and the mouth's arc are apart by less than dust (the
    sagitta s²/2r of an arc).
    """
    others = [residue.region for residue in left if residue.kind is not ResidueKind.CORNER]
    if not others:
        return drawn
    corners = _together(residue.region for residue in left if residue.kind is ResidueKind.CORNER)
    near = dilate(corners, math.sqrt(2 * radius * tolerance.settle_mm), tolerance).common(drawn)
    return without_films(reached.union(near.minus(_together(others))), tolerance.settle_mm)


def _narrow_places(
    drawn: Region, left: tuple[Residue, ...], half: HalfSpec, tolerance: Tolerance
) -> tuple[Passage, ...]:
    """The measured passages a cutter cannot enter, if it left any."""
    if not tolerance.is_for_cutting or all(residue.kind is ResidueKind.CORNER for residue in left):
        return ()
    return passages(drawn, below=2 * half.radius_mm)


def _closed_for_plug(form: _Form, spec: FitSpec, tolerance: Tolerance, progress: Progress) -> _Form:
    """The form with the host's corners eased until the plug's cutter reaches every corner of the plug."""
    radius = max(0.0, spec.plug.radius_mm - spec.clearance_mm)
    pocket_radius = spec.pocket.radius_mm if spec.pocket.relief is Relief.ROUNDED else 0.0
    filled = thinned(closed(form.region, radius, tolerance), tolerance)
    eased = residues_outside(form.region, filled, radius, tolerance)
    findings = [*form.findings, *check.of_reach(eased, spec.plug, Half.PLUG)]
    narrow = unreached(eased, filled, pocket_radius, tolerance)
    for _ in range(_MOST_ROUNDS):
        if not narrow:
            break
        progress.raise_if_cancelled()
        reached = filled.minus(_together(r.region for r in narrow))
        filled = thinned(closed(reached, radius, tolerance), tolerance)
        eased = residues_outside(reached, filled, radius, tolerance)
        narrow = unreached(eased, filled, pocket_radius, tolerance)
    findings += check.of_conflict(narrow)
    return replace(form, region=filled, is_closed=True, suits_plug=not narrow, findings=tuple(findings))


def _swept_again(form: _Form, radius: float, tolerance: Tolerance) -> Region:
    """What the pocket's cutter reaches of a form: all it swept of the drawing, and what closing opened to it.

    A passage that it barely goes through is one slack too narrow after the sweep, and would be lost.
    """
    if not form.is_closed or form.swept.is_empty:
        return form.swept
    reached = opened(form.region, radius, tolerance)
    if reached.is_empty:
        return form.swept
    lost = departing_pieces(
        form.swept, reached, wall_is_outside=True, thickness=tolerance.settle_mm, reach=radius
    )
    # Joining the pieces alone would leave cracks, and notches in passages that have no width to spare.
    return reached.union(form.swept) if lost else reached


def _shaped_pocket(
    wanted: Region, half: HalfSpec, tolerance: Tolerance, form: _Form | None = None
) -> HalfResult:
    """The pocket that the cutter leaves of what is wanted, relieved or left for hand work as asked.

    Its outline is what the cutter reaches and sweeps; films of what is wanted between the two are dust.
    """
    radius = half.radius_mm
    if half.relief is Relief.ROUNDED or radius == 0 or wanted.is_empty:
        return HalfResult(wanted)
    if form:
        reached, centres = _swept_again(form, radius, tolerance), None
    else:
        reached, centres = opened_with_room(wanted, radius, tolerance)
    left = residues(wanted, reached, radius, tolerance)
    if not left:
        return HalfResult(reached if half.relief is Relief.BY_HAND else wanted)
    if half.relief is Relief.BY_HAND:
        return HalfResult(reached, left_over=_together(r.region for r in left), pared=wanted)
    if centres is None:
        centres = room_inside(wanted, radius, tolerance.after_a_sweep)
    host = host_around(wanted, 4 * radius)
    sweeps = sweeps_for(left, centres, host, half, tolerance)
    outline = reached.union(_together(sweep.swept for sweep in sweeps))
    return HalfResult(outline, reliefs=_cuts(Half.POCKET, half.relief, sweeps))


def _shaped_plug(target: Region, half: HalfSpec, tolerance: Tolerance) -> HalfResult:
    """The plug that the cutter leaves of its target, relieved or left for hand work as asked."""
    if half.radius_mm == 0 or target.is_empty:
        return HalfResult(target)
    cut, centres = closed_with_bars(target, half.radius_mm, tolerance)
    left = residues_outside(target, cut, half.radius_mm, tolerance)
    if not left:
        return HalfResult(target)
    if half.relief is Relief.BY_HAND:
        return HalfResult(cut, left_over=_together(r.region for r in left), pared=target)
    kind = Relief.T_BONE if half.relief is Relief.T_BONE else Relief.DOG_BONE
    sweeps = sweeps_for(left, centres, target, half, tolerance)
    outline = target.minus(_together(sweep.swept for sweep in sweeps))
    return HalfResult(outline, reliefs=_cuts(Half.PLUG, kind, sweeps))


def _cuts(half: Half, kind: Relief, sweeps: tuple[Sweep, ...]) -> tuple[ReliefCut, ...]:
    """The report of each sweep that takes what can be seen."""
    return tuple(
        _cut_of(half, kind, sweep, bite)
        for sweep, bite in zip(sweeps, removed_by(sweeps), strict=True)
        if bite.area > _SEEN_MM2
    )


def _cut_of(half: Half, kind: Relief, sweep: Sweep, bite: Region) -> ReliefCut:
    """The report of one sweep; its bite is how far the removed area reaches beyond the corner."""
    offsets = shapely.get_coordinates(bite.shape) - sweep.corner
    depth = float(np.hypot(offsets[:, 0], offsets[:, 1]).max(initial=0.0))
    return ReliefCut(half, kind, sweep.corner, bite.area, depth, straight=sweep.straight, removed=bite)


def _together(regions: Iterable[Region]) -> Region:
    pieces = [region.shape for region in regions]
    return Region.of(shapely.disjoint_subset_union_all(pieces)) if pieces else Region.empty()


def _with_passes(result: HalfResult, half: HalfSpec, which: Half, tolerance: Tolerance) -> HalfResult:
    """A half with its other outlines: roughing, rest corners and broken edge.

    Of a pocket the cutter runs inside and roughing leaves it smaller; of a plug it runs outside, and
    everything turns round.
    """
    is_pocket = which is Half.POCKET
    outward = 1.0 if is_pocket else -1.0
    swept = opened if is_pocket else closed
    outline, rough, rest, edge = result.outline, None, Region.empty(), None
    if half.finishing_allowance_mm > 0:
        cut = opened_with_room if is_pocket else closed_with_bars
        rough, _ = cut(outline, half.main_radius_mm, tolerance, allowance=half.finishing_allowance_mm)
        rough = thinned(rough, tolerance)
    if half.corner_cutter_mm > 0:
        main = swept(outline, half.main_radius_mm, tolerance)
        left = outline.minus(main) if is_pocket else main.minus(outline)
        near = dilate(thick_parts(left, tolerance.settle_mm), half.radius_mm, tolerance)
        rest = near.common(outline) if is_pocket else near.minus(outline)
    if half.edge_break_mm > 0:
        edge = dilate(outline, outward * half.edge_break_mm, tolerance)
    return replace(result, rough=rough, rest=rest, edge_break=edge)
