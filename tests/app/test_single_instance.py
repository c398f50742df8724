from __future__ import annotations

import socket
import subprocess
import sys
import uuid
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtNetwork import QLocalSocket
from pytestqt.qtbot import QtBot

from inlayfit.app.running import may_be_running, socket_name
from inlayfit.app.single_instance import Listener, hand_over


@pytest.fixture
def name() -> str:
    return f"inlayfit-test-{uuid.uuid4().hex[:8]}"


@pytest.fixture
def listener(qtbot: QtBot, name: str) -> Iterator[Listener]:
    made = Listener(name)
    yield made
    made.close()


def test_without_a_running_program_nothing_is_taken(qtbot: QtBot, name: str) -> None:
    assert not hand_over([Path("a.dxf")], name=name)


def test_a_running_program_is_seen_before_it_is_asked(listener: Listener, name: str) -> None:
    assert may_be_running(name)
    listener.close()
    assert sys.platform == "win32" or not may_be_running(name)


def test_the_first_gets_the_files_of_the_second(
    listener: Listener, name: str, qtbot: QtBot, tmp_path: Path
) -> None:
    program = (
        "import sys; from pathlib import Path; from inlayfit.app.single_instance import hand_over;"
        "sys.exit(0 if hand_over([Path(sys.argv[1])], name=sys.argv[2]) else 1)"
    )
    second = subprocess.Popen([sys.executable, "-c", program, str(tmp_path / "a b.dxf"), name])
    with qtbot.waitSignal(listener.files_given, timeout=20_000) as given:
        pass
    assert given.args == [[(tmp_path / "a b.dxf").resolve()]]
    assert second.wait(10) == 0


@pytest.mark.parametrize("message", [b"\n", b"{}\n", b"[1]\n", b"\xff\n", b'"x"\n'])
def test_nonsense_is_dropped(listener: Listener, name: str, qtbot: QtBot, message: bytes) -> None:
    given: list[object] = []
    listener.files_given.connect(given.append)
    stranger = QLocalSocket()
    stranger.connectToServer(name)
    assert stranger.waitForConnected(2000)
    stranger.write(message)
    qtbot.waitUntil(lambda: stranger.bytesAvailable() > 0)
    assert given == []
    stranger.disconnectFromServer()


@pytest.mark.skipif(sys.platform == "win32", reason="a socket file is left behind on POSIX only")
def test_a_socket_left_by_a_killed_program_is_taken_over(qtbot: QtBot, name: str) -> None:
    first = Listener(name)
    path = Path(first._server.fullServerName())
    first.close()
    dead = socket.socket(socket.AF_UNIX)
    dead.bind(str(path))
    dead.close()  # the file stays, nobody listens
    assert not hand_over([], name=name)
    second = Listener(name)
    assert second._server.isListening()
    second.close()


def test_two_people_do_not_meet() -> None:
    assert socket_name("anna") != socket_name("ben")
    assert "anna" not in socket_name("anna")


@pytest.mark.skipif(sys.platform != "linux", reason="the variables are those of freedesktop.org")
@pytest.mark.parametrize("variable", ["XDG_STATE_HOME", "DISPLAY", "WAYLAND_DISPLAY"])
def test_two_homes_or_screens_of_one_person_do_not_meet(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, variable: str
) -> None:
    here = socket_name("anna")
    assert socket_name("anna") == here
    monkeypatch.setenv(variable, str(tmp_path / "other"))
    assert socket_name("anna") != here
