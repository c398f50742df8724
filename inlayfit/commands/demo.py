"""`inlayfit demo --out DIR`: the whole job on the sample tea trays."""

from __future__ import annotations

from pathlib import Path

from inlayfit.commands.asking import parser
from inlayfit.commands.saying import BLOCKED, DONE, print_json, say


def run(arguments: list[str]) -> int:
    """Run the command; the exit code is the answer."""
    asking = parser("inlayfit demo", "The whole job on the sample tea trays, without a window.")
    asking.add_argument("--out", required=True, type=Path, metavar="DIR", help="folder for the files")
    asking.add_argument("--json", action="store_true", help="print one JSON object and nothing else")
    asked = asking.parse_args(arguments)
    from inlayfit.document.demo import run_demo

    demo = run_demo(asked.out)
    if asked.json:
        print_json(demo.json)
    else:
        say(demo.text)
    return BLOCKED if demo.is_blocked else DONE
