"""`inlayfit fit FILE …`: solve each fitting, look at it with what is known of the workshop, write it all."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from dataclasses import dataclass, replace

from inlayfit.commands.asking import with_values_attached
from inlayfit.commands.export_options import export_options, file_lines
from inlayfit.commands.files import check_is_file
from inlayfit.commands.fit_options import VALUE_OPTIONS, fit_parser, fit_spec, pocket_model, workshop
from inlayfit.commands.import_options import HowRead, how_read, typed_outline
from inlayfit.commands.saying import BLOCKED, DONE, print_json, say
from inlayfit.document.details import details_json, details_lines
from inlayfit.document.exports import write_fit
from inlayfit.document.imports import Imported, Outline
from inlayfit.document.pairing import paired
from inlayfit.document.summary import finding_lines, fit_text
from inlayfit.errors import NoOutlineError, SpecError
from inlayfit.finding import Finding, has_open_block, heaviest_first
from inlayfit.fit.measured import PocketModel
from inlayfit.fit.readings import as_measured, fitted_as_it_stands
from inlayfit.fit.seating import Seat, seat, seated_finding
from inlayfit.fit.spec import FitSpec, Seating
from inlayfit.fit.workshop import Examined, Workshop, examined
from inlayfit.geometry.region import Region


@dataclass(frozen=True, slots=True)
class _Question:
    """What is asked of every outline."""

    spec: FitSpec
    workshop: Workshop
    model: PocketModel | None
    seating: Seating


@dataclass(frozen=True, eq=False, slots=True)
class _Answer:
    """One fitting answered."""

    name: str
    fit: Examined
    seat: Seat | None
    plug_outline: str


def run(arguments: list[str]) -> int:
    """Run the command; the exit code is the answer."""
    asked = _asked(arguments)
    question = _Question(fit_spec(asked), workshop(asked), pocket_model(asked), Seating(asked.seat))
    typed, how = typed_outline(asked), how_read(asked)
    _check_files(asked, question.spec)
    pockets, findings = ([typed], []) if typed is not None else _read(asked, how)
    plugs: list[Outline | None] = [None] * len(pockets)
    if asked.plug_drawing is not None:
        made = how.read(asked.plug_drawing)
        pairs, found = paired(
            pockets,
            _chosen(made, asked.plug_outline),
            clearance_mm=question.spec.clearance_mm,
            seating=question.seating,
            chosen=bool(asked.plug_outline),
        )
        pockets, plugs = [pocket for pocket, _ in pairs], [plug for _, plug in pairs]
        findings += [*made.findings, *found]
    answers = [_answered(pocket, plug, question) for pocket, plug in zip(pockets, plugs, strict=True)]
    return _told(asked, question, answers, findings)


def _read(asked: argparse.Namespace, how: HowRead) -> tuple[list[Outline], list[Finding]]:
    imported = how.read(asked.file)
    return _chosen(imported, asked.outline), list(imported.findings)


def _asked(arguments: list[str]) -> argparse.Namespace:
    file_first = not (arguments and arguments[0].startswith("-"))
    return fit_parser(file_first=file_first).parse_args(with_values_attached(arguments, VALUE_OPTIONS))


def _check_files(asked: argparse.Namespace, spec: FitSpec) -> None:
    both_made = not spec.pocket.may_move and not spec.plug.may_move
    if both_made and asked.plug_drawing is None:
        raise SpecError(
            "Both halves are already cut; name the drawing of the plug with --plug-drawing, "
            "or set one of them to cut."
        )
    if asked.plug_drawing is None:
        if asked.plug_outline:
            raise SpecError("--plug-outline chooses from --plug-drawing; name that drawing too.")
        return
    check_is_file(asked.plug_drawing)
    if not both_made:
        raise SpecError(
            "A drawing of the plug is for two halves that are both made; set --pocket-state and --plug-state "
            "to already-cut or finished, or leave --plug-drawing out."
        )


def _chosen(imported: Imported, ids: list[str] | None) -> list[Outline]:
    by_id = {outline.id: outline for outline in imported.outlines}
    for wanted in ids or ():
        if wanted not in by_id:
            known = ", ".join(list(by_id)[:8]) + (", …" if len(by_id) > 8 else "")
            raise NoOutlineError(
                f"There is no outline “{wanted}” in “{imported.source.name}”; choose from {known}.",
                path=imported.source,
            )
    return [by_id[one] for one in dict.fromkeys(ids)] if ids else list(imported.outlines)


def _answered(outline: Outline, plug: Outline | None, question: _Question) -> _Answer:
    from inlayfit.fit.solve import solve

    pocket, spec = outline.region, question.spec
    found: list[Finding] = []
    if question.model is not None:
        pocket, notes = as_measured(pocket, spec, question.model)
        found += notes
        spec = fitted_as_it_stands(spec)
    place, made = _seated(pocket, plug, question.seating)
    note = seated_finding(place) if place is not None else None
    found += [note] if note is not None else []
    result = solve(pocket, spec, plug_drawn=made)
    findings = heaviest_first([*result.findings, *found])
    fit = examined(replace(result, spec=question.spec, findings=findings), question.workshop)
    return _Answer(outline.id, fit, place, "" if plug is None else plug.id)


def _seated(pocket: Region, plug: Outline | None, seating: Seating) -> tuple[Seat | None, Region | None]:
    if plug is None:
        return None, None
    if seating is Seating.AS_DRAWN:
        return None, plug.region
    place = seat(pocket, plug.region, may_turn=seating is Seating.TURN)
    return place, plug.region.moved(place.motion) if place.is_moved else plug.region


def _told(
    asked: argparse.Namespace, question: _Question, answers: Sequence[_Answer], findings: Sequence[Finding]
) -> int:
    """Write everything, say it, and answer the exit code."""
    results = [(each.name, each.fit.result) for each in answers]
    model = question.model
    report = write_fit(
        results,
        asked.out,
        export_options(asked, has_kerf=_has_kerf(question), milling=question.workshop.milling),
        source=asked.file,
        other_sources=[file for file in (asked.plug_drawing, asked.readings) if file is not None],
        drawing_findings=findings,
        details={
            each.name: details_json(each.fit, seat=each.seat, plug_outline=each.plug_outline, model=model)
            for each in answers
        },
    )
    if asked.json:
        print_json(report.answer)
    else:
        texts = [fit_text(a.name, a.fit.result, more=details_lines(a.fit, model=model)) for a in answers]
        written = [f"Written to {asked.out}:", *file_lines(report)]
        say("\n".join([*texts, *finding_lines(report.findings), *written]))
    found = [finding for _, result in results for finding in result.findings]
    return BLOCKED if has_open_block([*report.findings, *found]) else DONE


def _has_kerf(question: _Question) -> bool:
    return bool(question.spec.pocket.kerf_mm or question.spec.plug.kerf_mm)
