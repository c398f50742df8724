"""What to look at before cutting: the fit's findings, each with its place and a remedy."""

from __future__ import annotations

import math

import shapely

from inlayfit.finding import Finding, Severity
from inlayfit.fit.residue import Residue, ResidueKind
from inlayfit.fit.result import PROMISED_MM, GapMap, HalfResult, ReliefCut
from inlayfit.fit.spec import FitSpec, Half, HalfSpec, Relief
from inlayfit.geometry.morphology import thick_parts
from inlayfit.geometry.region import Region
from inlayfit.geometry.tolerance import Tolerance
from inlayfit.geometry.width import Passage
from inlayfit.measures import area, at, length, per_side
from inlayfit.wording import Worded

_SEEN_MM = 0.005  # a corner rounded by less cannot be felt with a fingernail; common practice, no source


def _per_side(gap_mm: float) -> Worded:
    return per_side(round(gap_mm, 3), unit_twice=False)


def of_reach(
    left: tuple[Residue, ...], half: HalfSpec, which: Half, narrow: tuple[Passage, ...] = ()
) -> list[Finding]:
    """Findings for what a half's cutter cannot reach: lost pieces, necks, dead ends, and stock in corners.

    `narrow` are the measured passages of what was wanted, to say how narrow and what would pass.
    """
    findings = [
        _unreached(residue, half, which, narrow) for residue in left if residue.kind is not ResidueKind.CORNER
    ]
    corners = [r for r in left if r.kind is ResidueKind.CORNER and r.depth > _SEEN_MM]
    if corners and which is Half.POCKET and half.relief is Relief.ROUNDED:
        findings.append(_corners_rounded(corners, half))
    return findings


_UNREACHED = {
    (ResidueKind.LOST_PIECE, Half.POCKET): Worded("is larger than a part of the pocket"),
    (ResidueKind.LOST_PIECE, Half.PLUG): Worded("is larger than a hole of the plug"),
    (ResidueKind.NECK, Half.POCKET): Worded("cannot pass a passage of the pocket"),
    (ResidueKind.NECK, Half.PLUG): Worded("cannot pass a slot of the plug"),
    (ResidueKind.DEAD_END, Half.POCKET): Worded("cannot enter a narrow end of the pocket"),
    (ResidueKind.DEAD_END, Half.PLUG): Worded("cannot enter a narrow slot of the plug"),
}
_CODES = {
    ResidueKind.LOST_PIECE: "cutter-too-large",
    ResidueKind.NECK: "neck",
    ResidueKind.DEAD_END: "dead-end",
}


def _unreached(residue: Residue, half: HalfSpec, which: Half, narrow: tuple[Passage, ...]) -> Finding:
    wide = [passage for passage in narrow if _is_of(passage, residue)]
    size = Worded(", {width} wide", width=length(wide[0].width, ".2f")) if wide else ""
    remedy = Worded("Take a smaller cutter, or widen the outline there.")
    if wide:
        passes = length(_rounded_down(wide[0].width), ".2f")
        remedy = Worded("Take a cutter of {passes} or less, or widen the outline there.", passes=passes)
    return Finding(
        _CODES[residue.kind],
        Severity.WARN if residue.kind is ResidueKind.DEAD_END else Severity.BLOCK,
        Worded(
            "The {cutter} cutter {fails} at {place}{size}; the fit leaves it out.",
            cutter=length(2 * half.radius_mm, ".2f"),
            fails=_UNREACHED[residue.kind, which],
            place=at(residue.place),
            size=size,
        ),
        remedy,
        wide[0].place if wide else residue.place,
    )


def _is_of(passage: Passage, residue: Residue) -> bool:
    return bool(shapely.dwithin(residue.region.shape, shapely.Point(passage.place), passage.width / 2))


def _rounded_down(width: float) -> float:
    return math.floor(width * 100) / 100


def _corners_rounded(corners: list[Residue], half: HalfSpec) -> Finding:
    largest = max(corners, key=lambda residue: residue.depth)
    return Finding(
        "corners-rounded",
        Severity.NOTE,
        Worded(
            "{corners} rounded to the {radius} radius of the pocket's cutter; "
            "at most {depth} of the drawing is left, at {place}.",
            corners=_corners_are(len(corners)),
            radius=length(half.radius_mm, ".2f"),
            depth=length(largest.depth, ".2f"),
            place=at(largest.place),
        ),
        Worded("Both halves match; choose another corner relief to keep the corners sharp."),
        largest.place,
    )


def _corners_are(count: int) -> Worded:
    return Worded("1 corner is") if count == 1 else Worded("{count} corners are", count=count)


def _corners(count: int) -> Worded:
    return Worded("1 corner") if count == 1 else Worded("{count} corners", count=count)


def of_conflict(left: tuple[Residue, ...]) -> list[Finding]:
    """Findings for places where no form suits both cutters."""
    return [
        Finding(
            "cutters-conflict",
            Severity.BLOCK,
            Worded(
                "At {place} what the plug's cutter needs is too narrow for the pocket's cutter.",
                place=at(residue.place),
            ),
            Worded("Take a smaller cutter for one half, or relieve the corners instead of rounding them."),
            residue.place,
        )
        for residue in left
    ]


def of_given_half(sharper: tuple[Residue, ...], half: HalfSpec, which: Half) -> list[Finding]:
    """A finding where a half that exists is drawn sharper than its cutter leaves it."""
    if not sharper:
        return []
    lost = [
        _unreached(residue, half, which, ()) for residue in sharper if residue.kind is ResidueKind.LOST_PIECE
    ]
    largest = max(sharper, key=lambda residue: residue.depth)
    other = Half.PLUG if which is Half.POCKET else Half.POCKET
    return [
        *lost,
        Finding(
            "sharper-than-cutter",
            Severity.WARN,
            Worded(
                "The {half} is called cut, but {corners} of its outline cannot be what a {cutter} cutter "
                "leaves (first at {place}); the {other} is fitted to what the cutter leaves there.",
                half=which,
                corners=_corners(len(sharper)),
                cutter=length(2 * half.radius_mm, ".2f"),
                place=at(largest.place),
                other=other,
            ),
            Worded("If those corners really are sharp, set the {half}'s cutter to 0.", half=which),
            largest.place,
        ),
    ]


def of_target(form: Region, target: Region, spec: FitSpec) -> list[Finding]:
    """Findings where the clearance eats a piece of the half that moves, or takes it apart."""
    if form.is_empty:  # the cutter left nothing, which is its own finding
        return []
    if target.is_empty:
        point = shapely.point_on_surface(form.shape)
        return [
            Finding(
                "clearance-eats-plug",
                Severity.BLOCK,
                Worded(
                    "A clearance of {clearance} leaves nothing of the plug.",
                    clearance=_per_side(spec.clearance_mm),
                ),
                Worded("Give a smaller clearance; check its unit."),
                (float(point.x), float(point.y)),
            )
        ]
    findings = []
    for piece in form.polygons:
        inside = shapely.intersects(target.shape, piece)
        if not inside:
            point = shapely.point_on_surface(piece)
            place = (float(point.x), float(point.y))
            findings.append(
                Finding(
                    "clearance-eats-piece",
                    Severity.BLOCK,
                    Worded(
                        "A clearance of {clearance} leaves nothing of the piece at {place}.",
                        clearance=_per_side(spec.clearance_mm),
                        place=at(place),
                    ),
                    Worded("Give a smaller clearance, or leave that outline out."),
                    place,
                )
            )
    if spec.clearance_mm > 0 and len(target.polygons) > len(form.polygons) - len(findings):
        point = shapely.point_on_surface(min(target.polygons, key=lambda p: p.area))
        place = (float(point.x), float(point.y))
        findings.append(
            Finding(
                "plug-in-pieces",
                Severity.WARN,
                Worded(
                    "The clearance takes the plug apart into {count} pieces; the smallest is at {place}.",
                    count=len(target.polygons),
                    place=at(place),
                ),
                Worded("Give a smaller clearance, or widen the outline where it is thin."),
                place,
            )
        )
    return findings


def judge(
    spec: FitSpec, pocket: HalfResult, plug: HalfResult, gap: GapMap, tolerance: Tolerance
) -> list[Finding]:
    """Findings of the finished fit: where it bites, what was relieved, what is left for the bench.

    A preview promises less: each of the two walls may be one chord off, and that is no bite.
    """
    promised = PROMISED_MM if tolerance.is_for_cutting else 2 * tolerance.arc_mm
    findings = [*_of_gap(spec, gap, promised)]
    if plug.outline.is_empty and plug.reliefs:
        findings.append(_of_eaten_plug(plug.reliefs[0]))
    for which, half, half_spec in ((Half.POCKET, pocket, spec.pocket), (Half.PLUG, plug, spec.plug)):
        if half.reliefs:
            findings.append(_of_reliefs(which, half.reliefs))
            findings += [_of_led_over(which, cut) for cut in half.reliefs if not cut.straight]
        if half_spec.may_move and half_spec.relief is Relief.BY_HAND and not half.left_over.is_empty:
            findings += _of_hand_work(which, half)
    return findings


def _tightest_against(spec: FitSpec, gap: GapMap) -> float:
    """The gap to compare with the clearance.

    Of a plug that is meant to be pressed in, only its own wall counts: a sharp corner of the host lies deeper
    in the plug than its walls do, by up to √2 in a right angle, although nothing is tighter than meant.
    """
    if spec.clearance_mm >= 0:
        return gap.min_mm
    return min(float(wall.gaps.min()) for wall in gap.plug_walls)


def _of_gap(spec: FitSpec, gap: GapMap, promised_mm: float) -> list[Finding]:
    if gap.is_empty:
        return []
    if _tightest_against(spec, gap) < min(0.0, spec.clearance_mm) - promised_mm:
        spot = gap.tightest[0]
        return [
            Finding(
                "bites",
                Severity.BLOCK,
                Worded(
                    "The plug will not go in: it bites {bite} at {place}.",
                    bite=_per_side(-gap.min_mm),
                    place=at(spot.place_mm),
                ),
                Worded("Relieve the corner, give more clearance, or let the other half give way."),
                spot.place_mm,
            )
        ]
    if spec.clearance_mm < 0:
        return [
            Finding(
                "interference",
                Severity.NOTE,
                Worded(
                    "The plug is larger than the pocket by {interference}: press it in.",
                    interference=_per_side(-spec.clearance_mm),
                ),
                Worded(
                    "Load it straight, wear eye protection, and keep hands clear; brittle stock may crack."
                ),
                gap.tightest[0].place_mm,
            )
        ]
    return []


def _of_eaten_plug(cut: ReliefCut) -> Finding:
    return Finding(
        "relief-eats-plug",
        Severity.BLOCK,
        Worded(
            "Relieving the plug's corners leaves nothing of it, first at {place}.", place=at(cut.place_mm)
        ),
        Worded("Take a smaller cutter for the plug."),
        cut.place_mm,
    )


def _of_reliefs(which: Half, cuts: tuple[ReliefCut, ...]) -> Finding:
    largest = max(cuts, key=lambda cut: cut.bite_mm)
    return Finding(
        "relieved",
        Severity.NOTE,
        Worded(
            "{corners} relieved in the {half}: {removed} removed, the largest bite {bite} at {place}.",
            corners=_corners_are(len(cuts)),
            half=which,
            removed=area(sum(cut.area_mm2 for cut in cuts)),
            bite=length(largest.bite_mm, ".2f"),
            place=at(largest.place_mm),
        ),
        Worded("Look at the relieved corners: what is removed there shows as a gap."),
        largest.place_mm,
    )


def _of_led_over(which: Half, cut: ReliefCut) -> Finding:
    return Finding(
        "relief-wide",
        Severity.WARN,
        Worded(
            "No straight plunge clears the {half} at {place}: {removed} are removed there.",
            half=which,
            place=at(cut.place_mm),
            removed=area(cut.area_mm2),
        ),
        Worded("Take a smaller cutter for this half if so large a gap must not show."),
        cut.place_mm,
    )


def _of_hand_work(which: Half, half: HalfResult) -> list[Finding]:
    pieces = thick_parts(half.left_over, _SEEN_MM).polygons
    if not pieces:
        return []
    largest = max(pieces, key=lambda piece: piece.area)
    point = shapely.point_on_surface(largest)
    place = (float(point.x), float(point.y))
    return [
        Finding(
            "hand-work",
            Severity.WARN,
            Worded(
                "{corners} of the {half} must be pared by hand before the plug goes in; "
                "the largest is at {place}.",
                corners=_corners(len(pieces)),
                half=which,
                place=at(place),
            ),
            Worded("Pare to the drawn line with a sharp chisel or file, away from the other hand."),
            place,
        )
    ]
