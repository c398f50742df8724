"""Readers and writers of DXF can be loaded by two threads at once, as a window does at its start."""

from __future__ import annotations

import subprocess
import sys

import pytest

_BOTH = """
import threading
failed = []
def load(name):
    try:
        __import__(name)
    except ImportError as error:
        failed.append(error)
threads = [threading.Thread(target=load, args=(name,)) for name in {names!r}]
for thread in threads: thread.start()
for thread in threads: thread.join()
raise SystemExit(str(failed) if failed else 0)
"""


def test_two_threads_may_load_what_reads_and_what_writes() -> None:
    names = ["inlayfit.document.exports", "inlayfit.document.reading"]
    done = subprocess.run(
        [sys.executable, "-c", _BOTH.format(names=names)], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr


@pytest.mark.parametrize("module", ["dxf_read", "dxf_write", "registry"])
def test_the_whole_library_is_loaded_before_any_part_of_it(module: str) -> None:
    """Watched from inside: the first of its names that is asked for is the library itself."""
    watch = (
        "import sys, builtins\n"
        "asked = []\n"
        "class Watch:\n"
        "    def find_spec(self, name, path=None, target=None):\n"
        "        if name.split('.')[0] == 'ezdxf': asked.append(name)\n"
        "sys.meta_path.insert(0, Watch())\n"
        "real = builtins.__import__\n"
        "def spy(name, globals=None, locals=None, fromlist=(), level=0):\n"
        "    if name.startswith('ezdxf.') and 'ezdxf' not in sys.modules: asked.append('part ' + name)\n"
        "    return real(name, globals, locals, fromlist, level)\n"
        "builtins.__import__ = spy\n"
        f"import inlayfit.formats.{module}\n"
        "raise SystemExit(0 if asked[0] == 'ezdxf' else asked[0])\n"
    )
    done = subprocess.run([sys.executable, "-c", watch], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
