"""Cautions: what is said before cutting, gluing and pressing, in the program's own words.

They remind; they do not teach. The manual of the machine, the sheet that comes with a material and the rules
of the place come first, and each list ends by saying so. Facts behind them: OSHA, HSE and NIOSH pages on wood
dust and noise, laboratories' lists of what may go under a laser, makers' handling pages for acetal; where
laboratories disagree (acetal) the text says to ask. Small parts and press fits: common practice.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Hazard(StrEnum):
    """What work a caution belongs to."""

    ANY = "any"
    CUTTER = "cutter"
    LASER = "laser"
    PRESS = "press"
    FINISH = "finish"


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution.

    Attributes:
        code: a stable kebab-case word.
        hazard: the work it belongs to.
        text: one or two sentences.
        materials: words of materials it is about; empty if it is about all.
    """

    code: str
    hazard: Hazard
    text: str
    materials: tuple[str, ...] = ()


DEFER = Caution(
    "local-rules-first",
    Hazard.ANY,
    "The machine's manual, the material's safety sheet and the rules of your place come before this list.",
)

CAUTIONS: tuple[Caution, ...] = (
    Caution("eyes", Hazard.CUTTER, "Wear eye protection: cutters break, and small parts fly."),
    Caution("ears", Hazard.CUTTER, "Wear ear protection: a router soon passes 85 dB."),
    Caution("dust", Hazard.CUTTER, "Draw the dust off at the cutter and wear a mask for what is left."),
    Caution(
        "sensitising-wood",
        Hazard.CUTTER,
        "The dust of this wood irritates or sensitises some people: skin, eyes and lungs.",
        ("walnut", "rosewood", "ebony", "iroko", "oak", "mahogany", "padauk", "wenge"),
    ),
    Caution(
        "leaded-brass",
        Hazard.CUTTER,
        "Free-cutting brass holds lead: keep the dust down and wash your hands.",
        ("brass",),
    ),
    Caution(
        "small-parts",
        Hazard.CUTTER,
        "Hold a small part by tabs, tape or vacuum before the last pass frees it; never with a finger.",
    ),
    Caution(
        "acetal-heat",
        Hazard.CUTTER,
        "Acetal that overheats gives off formaldehyde: sharp cutter, full chip, no rubbing.",
        ("acetal",),
    ),
    Caution(
        "laser-fumes", Hazard.LASER, "Run the extraction, stay with the machine, keep an extinguisher near."
    ),
    Caution(
        "laser-vinyl",
        Hazard.LASER,
        "Never put vinyl or any PVC under a laser: its fumes harm lungs and machine.",
        ("vinyl", "pvc"),
    ),
    Caution(
        "laser-acetal",
        Hazard.LASER,
        "Acetal burns with formaldehyde in its smoke and some laboratories forbid it: ask the lab.",
        ("acetal",),
    ),
    Caution(
        "laser-smoky",
        Hazard.LASER,
        "This plastic melts, soots or burns under a laser, and many laboratories forbid it: ask the lab.",
        ("polycarbonate", "hdpe", "abs"),
    ),
    Caution(
        "press-shatter",
        Hazard.PRESS,
        "A part under a press can shatter or jump: eye protection, straight load, hands clear.",
    ),
    Caution(
        "press-brittle",
        Hazard.PRESS,
        "Do not press into brittle stock; give it clearance and glue.",
        ("acrylic", "ceramic", "glass", "stone", "shell"),
    ),
    Caution("resin", Hazard.FINISH, "Uncured epoxy sensitises the skin: wear gloves, raise no dust of it."),
    Caution(
        "cyanoacrylate",
        Hazard.FINISH,
        "Thin instant glue bonds skin at once and its vapour stings: ventilate.",
    ),
    Caution(
        "lacquer", Hazard.FINISH, "Spray lacquer burns and its vapour creeps along the floor: no flame near."
    ),
)


def cautions_for(hazards: frozenset[Hazard], materials: tuple[str, ...] = ()) -> tuple[Caution, ...]:
    """The cautions for some work, always ending with `DEFER`.

    Args:
        hazards: the work planned.
        materials: names of the materials; a caution about a material shows if a name contains its word.
    """
    names = " ".join(materials).lower()
    chosen = [
        caution
        for caution in CAUTIONS
        if caution.hazard in hazards
        and (not caution.materials or any(word in names for word in caution.materials))
    ]
    return (*chosen, DEFER)
