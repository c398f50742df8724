"""Progress: what long work reports to, and how it is stopped."""

from __future__ import annotations

import threading

import pytest

from inlayfit.errors import Cancelled, InlayfitError
from inlayfit.progress import Progress, unwatched


def test_reports_arrive_in_order() -> None:
    seen: list[tuple[float, str]] = []
    progress = Progress(lambda share, note: seen.append((share, note)))
    progress.report(0.0, "halves")
    progress.report(0.5)
    assert seen == [(0.0, "halves"), (0.5, "")]


def test_cancelling_stops_the_next_report_and_the_next_question() -> None:
    seen: list[float] = []
    progress = Progress(lambda share, _: seen.append(share))
    progress.report(0.1)
    states = [progress.cancelled]
    progress.cancel()
    states.append(progress.cancelled)
    assert states == [False, True]
    with pytest.raises(Cancelled):
        progress.report(0.2)
    with pytest.raises(Cancelled, match="stopped; nothing was changed"):
        progress.raise_if_cancelled()
    assert seen == [0.1]


def test_cancelling_twice_is_cancelling_once() -> None:
    progress = Progress()
    progress.cancel()
    progress.cancel()
    assert progress.cancelled


def test_another_thread_may_cancel() -> None:
    progress = Progress()
    thread = threading.Thread(target=progress.cancel)
    thread.start()
    thread.join()
    with pytest.raises(Cancelled):
        progress.raise_if_cancelled()


def test_being_cancelled_is_one_of_our_own_errors() -> None:
    assert issubclass(Cancelled, InlayfitError)


def test_unwatched_work_is_never_stopped() -> None:
    progress = unwatched()
    progress.report(0.5, "anything")
    progress.raise_if_cancelled()
    assert not progress.cancelled
    assert unwatched() is not progress
