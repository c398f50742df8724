from __future__ import annotations

import datetime
from pathlib import Path

import pytest

from inlayfit.app.recent import MOST, RecentWork, read_recent, with_work, write_recent
from inlayfit.app.recent_pictures import small_picture
from inlayfit.app.words import counted, when_words
from tests.app.conftest import discs


def test_read_after_write_is_the_same_list(tmp_path: Path) -> None:
    works = with_work((), RecentWork(tmp_path / "a.svg", "Goes in.", 1.5, small_picture(discs())))
    works = with_work(works, RecentWork(tmp_path / "b.svg", "Nothing is chosen.", 2.5))
    write_recent(works, tmp_path / "deep" / "recent.json")
    assert read_recent(tmp_path / "deep" / "recent.json") == works


def test_the_newest_is_first_once_and_the_list_ends(tmp_path: Path) -> None:
    works: tuple[RecentWork, ...] = ()
    for n in range(MOST + 3):
        works = with_work(works, RecentWork(tmp_path / f"{n}.svg", "", float(n)))
    works = with_work(works, RecentWork(tmp_path / "5.svg", "", 99.0))
    assert works[0].path.name == "5.svg"
    assert len(works) == MOST
    assert len({work.path for work in works}) == MOST


@pytest.mark.parametrize(
    "content",
    [b"", b"{", b"{}", b'[{"path": 1}]', b'[{"path": "a", "summary": "", "opened_at": 0, "rings": [[1]]}]'],
)
def test_a_damaged_list_is_an_empty_one(tmp_path: Path, content: bytes) -> None:
    file = tmp_path / "recent.json"
    file.write_bytes(content)
    assert read_recent(file) == ()


def test_a_small_picture_fits_its_square() -> None:
    numbers = [v for ring in small_picture(discs(3)) for v in ring]
    assert min(numbers) >= -0.1
    assert max(numbers) <= 100.1


def test_moments_are_said_as_one_says_them() -> None:
    moment = datetime.datetime(2025, 11, 3, 14, 5)
    seconds = moment.timestamp()
    assert when_words(seconds, today=datetime.date(2025, 11, 3)) == "today at 14:05"
    assert when_words(seconds, today=datetime.date(2025, 11, 4)) == "yesterday"
    assert when_words(seconds, today=datetime.date(2025, 12, 1)) == "3 November"
    assert when_words(seconds, today=datetime.date(2026, 1, 1)) == "3 November 2025"
    assert (counted(1, "one", "{0} of them"), counted(3, "one", "{0} of them")) == ("one", "3 of them")
