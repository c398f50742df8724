"""Files of the window: what is opened, read anew, kept safe, written and remembered."""
