"""What is open: the frozen state, its edits, the project file, import and export."""
