"""What every test shares: offscreen Qt, hypothesis profiles, order by layer, no thread left behind."""

from __future__ import annotations

import os
import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

TESTS = Path(__file__).resolve().parent

# A loaded machine stalls now and then, so no test fails on its own slowness alone. Everyday runs try the same
# examples each time, so that red means a change; the thorough profile looks for new ones.
settings.register_profile(
    "dev",
    max_examples=50,
    deadline=None,
    derandomize=True,
    database=None,
    suppress_health_check=[HealthCheck.too_slow],
    print_blob=True,
)
settings.register_profile("ci", parent=settings.get_profile("dev"), max_examples=500, derandomize=False)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "dev"))

# Lowest layer first, so that the first failure is the nearest to its cause.
ORDER = (
    "test_architecture.py",
    "test_errors.py",
    "test_finding.py",
    "test_shipped.py",
    "test_progress.py",
    "test_units.py",
    "geometry",
    "test_drawing.py",
    "bench",
    "formats",
    "fit",
    "paper",
    "sheet",
    "trials",
    "document",
    "app",
    "commands",
    "test_cli.py",
    "test_samples.py",
    "test_readme.py",
    "benchmarks",
)


def layer_of(path: Path) -> int:
    """Where a test file stands in `ORDER`; a stranger comes last."""
    top = path.resolve().relative_to(TESTS).parts[0]
    return ORDER.index(top) if top in ORDER else len(ORDER)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    items.sort(key=lambda item: layer_of(item.path))


@pytest.fixture(autouse=True)
def no_thread_outlives_its_test() -> Iterator[None]:
    """Fail a test that leaves a Python thread running behind it."""
    before = set(threading.enumerate())
    yield
    patience = time.monotonic() + 2.0
    while True:
        # A thread of Qt's pool that once ran Python shows up as a dummy; Qt ends it, not the test.
        left = [t for t in threading.enumerate() if t not in before and not t.name.startswith("Dummy")]
        if not left:
            return
        if time.monotonic() > patience:
            pytest.fail(f"threads left running: {', '.join(t.name for t in left)}")
        left[0].join(timeout=0.05)
