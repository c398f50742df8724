"""`inlayfit inspect FILE`: the outlines a drawing holds, and how it was read."""

from __future__ import annotations

from inlayfit.commands.asking import add_drawing, parser, with_values_attached
from inlayfit.commands.files import check_is_file
from inlayfit.commands.saying import BLOCKED, DONE, print_json, say


def run(arguments: list[str]) -> int:
    """Run the command; the exit code is the answer."""
    from inlayfit.commands.import_options import VALUE_OPTIONS, add_reading, how_read
    from inlayfit.document.import_notes import reading_json, reading_lines
    from inlayfit.document.summary import inspect_json, inspect_text
    from inlayfit.finding import has_open_block

    asking = parser("inlayfit inspect", "The outlines a drawing holds, with areas, holes and findings.")
    add_drawing(asking)
    add_reading(asking)
    asked = asking.parse_args(with_values_attached(arguments, VALUE_OPTIONS))
    check_is_file(asked.file)
    how = how_read(asked)
    imported = how.read(asked.file)
    if asked.json:
        told = reading_json(imported, gap_mm=how.gap_mm, tolerance=how.tolerance)
        print_json({**inspect_json(imported), **told})
    else:
        lines = reading_lines(imported, gap_mm=how.gap_mm, tolerance=how.tolerance)
        say("\n".join([inspect_text(imported), *lines]))
    return BLOCKED if has_open_block(imported.findings) else DONE
