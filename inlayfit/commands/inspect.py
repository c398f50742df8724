"""`inlayfit inspect FILE`: the outlines a drawing holds."""

from __future__ import annotations

from inlayfit.commands.asking import add_drawing, check_is_file, parser, unit
from inlayfit.commands.saying import BLOCKED, DONE, print_json, say


def run(arguments: list[str]) -> int:
    """Run the command; the exit code is the answer."""
    asking = parser("inlayfit inspect", "The outlines a drawing holds, with areas, holes and findings.")
    add_drawing(asking)
    asked = asking.parse_args(arguments)
    check_is_file(asked.file)
    from inlayfit.document.imports import import_drawing
    from inlayfit.document.summary import inspect_json, inspect_text
    from inlayfit.finding import has_open_block

    imported = import_drawing(asked.file, unit=unit(asked.unit))
    if asked.json:
        print_json(inspect_json(imported))
    else:
        say(inspect_text(imported))
    return BLOCKED if has_open_block(imported.findings) else DONE
