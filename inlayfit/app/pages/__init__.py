"""Pages of their own over the window: what is asked, set, read or explained in them."""
