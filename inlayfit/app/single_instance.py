"""One running program a person: a second start hands its files to the first and ends.

The first listens on a local socket (`running` says which). What is handed over is a JSON list of absolute
paths; anything else is dropped.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtNetwork import QLocalServer, QLocalSocket

from inlayfit.app.running import socket_name

_WAIT_MS = 1000
_LONGEST_MESSAGE = 1_000_000


def hand_over(files: Sequence[Path], *, name: str | None = None) -> bool:
    """Give files to a running program; False if none runs."""
    socket = QLocalSocket()
    socket.connectToServer(name or socket_name())
    if not socket.waitForConnected(_WAIT_MS):
        return False
    socket.write(json.dumps([str(file.resolve()) for file in files]).encode() + b"\n")
    taken = socket.waitForReadyRead(_WAIT_MS)
    socket.disconnectFromServer()
    return taken


class Listener(QObject):
    """Takes files from later starts.

    Signals:
        files_given(paths): a later start was asked to open these; may be empty.
    """

    files_given = Signal(object)

    def __init__(self, name: str | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._server = QLocalServer(self)
        self._server.setSocketOptions(QLocalServer.SocketOption.UserAccessOption)
        self._server.newConnection.connect(self._on_server_new_connection)
        wanted = name or socket_name()
        if not self._server.listen(wanted):
            QLocalServer.removeServer(wanted)  # left by a program that was killed: hand_over got no answer
            self._server.listen(wanted)

    def close(self) -> None:
        """Stop listening."""
        self._server.close()

    @Slot()
    def _on_server_new_connection(self) -> None:
        while (socket := self._server.nextPendingConnection()) is not None:
            socket.readyRead.connect(lambda s=socket: self._read(s))
            socket.disconnected.connect(socket.deleteLater)
            self._read(socket)

    def _read(self, socket: QLocalSocket) -> None:
        if socket.bytesAvailable() > _LONGEST_MESSAGE:
            socket.abort()
            return
        if not socket.canReadLine():
            return
        line = bytes(socket.readLine().data())
        socket.write(b"taken\n")
        socket.flush()
        try:
            names = json.loads(line)
        except ValueError:
            return
        if isinstance(names, list) and all(isinstance(name, str) for name in names):
            self.files_given.emit([Path(name) for name in names])
