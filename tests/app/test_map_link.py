from __future__ import annotations

import pytest

from inlayfit.app.map_link import percent_words


@pytest.mark.parametrize(
    ("percent", "words"), [(0.1234, "0.12"), (3.4, "3.4"), (9.96, "10"), (42.4, "42"), (317405.2, "317405")]
)
def test_a_zoom_never_reads_as_nothing(percent: float, words: str) -> None:
    assert percent_words(percent) == words
