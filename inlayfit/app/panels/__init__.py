"""The parts of the window: each shows the session and sends edits to it; none talks to another."""
