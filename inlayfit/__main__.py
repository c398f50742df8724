"""`python -m inlayfit` is the same as the command `inlayfit`."""

from __future__ import annotations

import sys

from inlayfit.cli import main

if __name__ == "__main__":
    sys.exit(main())
