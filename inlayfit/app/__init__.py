"""The window, and the only folder that says PySide6."""
