"""What to look at before cutting: the fit's findings, each with its place and a remedy."""

from __future__ import annotations

import math

import shapely

from inlayfit.finding import Finding, Severity
from inlayfit.fit.residue import Residue, ResidueKind
from inlayfit.fit.result import PROMISED_MM, GapMap, Half, HalfResult, ReliefCut
from inlayfit.fit.spec import FitSpec, HalfSpec, Relief
from inlayfit.geometry.morphology import thick_parts
from inlayfit.geometry.region import Region
from inlayfit.geometry.width import Passage

_SEEN_MM = 0.005  # a corner rounded by less cannot be felt with a fingernail; common practice, no source


def _mm(value: float, digits: int = 3) -> str:
    return f"{value:.{digits}f}".replace("-", "\u2212")


def _per_side(clearance_mm: float) -> str:
    each = round(clearance_mm, 3)
    return f"{_mm(each)} mm per side ({_mm(2 * each)} overall)"


def _at(place: tuple[float, float]) -> str:
    return f"x {_mm(place[0], 2)}, y {_mm(place[1], 2)}"


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
    (ResidueKind.LOST_PIECE, Half.POCKET): "is larger than a part of the pocket",
    (ResidueKind.LOST_PIECE, Half.PLUG): "is larger than a hole of the plug",
    (ResidueKind.NECK, Half.POCKET): "cannot pass a passage of the pocket",
    (ResidueKind.NECK, Half.PLUG): "cannot pass a slot of the plug",
    (ResidueKind.DEAD_END, Half.POCKET): "cannot enter a narrow end of the pocket",
    (ResidueKind.DEAD_END, Half.PLUG): "cannot enter a narrow slot of the plug",
}
_CODES = {
    ResidueKind.LOST_PIECE: "cutter-too-large",
    ResidueKind.NECK: "neck",
    ResidueKind.DEAD_END: "dead-end",
}


def _unreached(residue: Residue, half: HalfSpec, which: Half, narrow: tuple[Passage, ...]) -> Finding:
    wide = [passage for passage in narrow if _is_of(passage, residue)]
    size = f", {_mm(wide[0].width, 2)} mm wide" if wide else ""
    passes = f"Take a cutter of {_mm(_rounded_down(wide[0].width), 2)} mm or less" if wide else ""
    return Finding(
        _CODES[residue.kind],
        Severity.WARN if residue.kind is ResidueKind.DEAD_END else Severity.BLOCK,
        f"The {_mm(2 * half.radius_mm, 2)} mm cutter {_UNREACHED[residue.kind, which]} at "
        f"{_at(residue.place)}{size}; the fit leaves it out.",
        f"{passes or 'Take a smaller cutter'}, or widen the outline there.",
        wide[0].place if wide else residue.place,
    )


def _is_of(passage: Passage, residue: Residue) -> bool:
    return bool(shapely.dwithin(residue.region.shape, shapely.Point(passage.place), passage.width / 2))


def _rounded_down(width: float) -> float:
    return math.floor(width * 100) / 100


def _corners_rounded(corners: list[Residue], half: HalfSpec) -> Finding:
    largest = max(corners, key=lambda residue: residue.depth)
    count = "1 corner is" if len(corners) == 1 else f"{len(corners)} corners are"
    return Finding(
        "corners-rounded",
        Severity.NOTE,
        f"{count} rounded to the {_mm(half.radius_mm, 2)} mm radius of the pocket's cutter; "
        f"at most {_mm(largest.depth, 2)} mm of the drawing is left, at {_at(largest.place)}.",
        "Both halves match; choose another corner relief to keep the corners sharp.",
        largest.place,
    )


def of_conflict(left: tuple[Residue, ...]) -> list[Finding]:
    """Findings for places where no form suits both cutters."""
    return [
        Finding(
            "cutters-conflict",
            Severity.BLOCK,
            f"At {_at(residue.place)} what the plug's cutter needs is too narrow for the pocket's cutter.",
            "Take a smaller cutter for one half, or relieve the corners instead of rounding them.",
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
    count = "1 corner" if len(sharper) == 1 else f"{len(sharper)} corners"
    other = "plug" if which is Half.POCKET else "pocket"
    return [
        *lost,
        Finding(
            "sharper-than-cutter",
            Severity.WARN,
            f"The {which.value} is called cut, but {count} of its outline cannot be what a "
            f"{_mm(2 * half.radius_mm, 2)} mm cutter leaves (first at {_at(largest.place)}); the {other} "
            "is fitted to what the cutter leaves there.",
            f"If those corners really are sharp, set the {which.value}'s cutter to 0.",
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
                f"A clearance of {_per_side(spec.clearance_mm)} leaves nothing of the plug.",
                "Give a smaller clearance; check its unit.",
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
                    f"A clearance of {_per_side(spec.clearance_mm)} leaves nothing of the piece at "
                    f"{_at(place)}.",
                    "Give a smaller clearance, or leave that outline out.",
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
                f"The clearance takes the plug apart into {len(target.polygons)} pieces; the smallest is at "
                f"{_at(place)}.",
                "Give a smaller clearance, or widen the outline where it is thin.",
                place,
            )
        )
    return findings


def judge(spec: FitSpec, pocket: HalfResult, plug: HalfResult, gap: GapMap) -> list[Finding]:
    """Findings of the finished fit: where it bites, what was relieved, what is left for the bench."""
    findings = [*_of_gap(spec, gap)]
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


def _of_gap(spec: FitSpec, gap: GapMap) -> list[Finding]:
    if gap.is_empty:
        return []
    if _tightest_against(spec, gap) < min(0.0, spec.clearance_mm) - PROMISED_MM:
        spot = gap.tightest[0]
        return [
            Finding(
                "bites",
                Severity.BLOCK,
                f"The plug will not go in: it bites {_per_side(-gap.min_mm)} at {_at(spot.place_mm)}.",
                "Relieve the corner, give more clearance, or let the other half give way.",
                spot.place_mm,
            )
        ]
    if spec.clearance_mm < 0:
        return [
            Finding(
                "interference",
                Severity.NOTE,
                f"The plug is larger than the pocket by {_per_side(-spec.clearance_mm)}: press it in.",
                "Load it straight, wear eye protection, and keep hands clear; brittle stock may crack.",
                gap.tightest[0].place_mm,
            )
        ]
    return []


def _of_eaten_plug(cut: ReliefCut) -> Finding:
    return Finding(
        "relief-eats-plug",
        Severity.BLOCK,
        f"Relieving the plug's corners leaves nothing of it, first at {_at(cut.place_mm)}.",
        "Take a smaller cutter for the plug.",
        cut.place_mm,
    )


def _of_reliefs(which: Half, cuts: tuple[ReliefCut, ...]) -> Finding:
    largest = max(cuts, key=lambda cut: cut.bite_mm)
    area = sum(cut.area_mm2 for cut in cuts)
    count = "1 corner is" if len(cuts) == 1 else f"{len(cuts)} corners are"
    return Finding(
        "relieved",
        Severity.NOTE,
        f"{count} relieved in the {which.value}: {_mm(area, 2)} mm² removed, the largest bite "
        f"{_mm(largest.bite_mm, 2)} mm at {_at(largest.place_mm)}.",
        "Look at the relieved corners: what is removed there shows as a gap.",
        largest.place_mm,
    )


def _of_led_over(which: Half, cut: ReliefCut) -> Finding:
    return Finding(
        "relief-wide",
        Severity.WARN,
        f"No straight plunge clears the {which.value} at {_at(cut.place_mm)}: {_mm(cut.area_mm2, 2)} mm² are "
        "removed there.",
        "Take a smaller cutter for this half if so large a gap must not show.",
        cut.place_mm,
    )


def _of_hand_work(which: Half, half: HalfResult) -> list[Finding]:
    pieces = thick_parts(half.left_over, _SEEN_MM).polygons
    if not pieces:
        return []
    largest = max(pieces, key=lambda piece: piece.area)
    point = shapely.point_on_surface(largest)
    place = (float(point.x), float(point.y))
    count = "1 corner" if len(pieces) == 1 else f"{len(pieces)} corners"
    return [
        Finding(
            "hand-work",
            Severity.WARN,
            f"{count} of the {which.value} must be pared by hand before the plug goes in; the largest is at "
            f"{_at(place)}.",
            "Pare to the drawn line with a sharp chisel or file, away from the other hand.",
            place,
        )
    ]
