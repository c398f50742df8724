"""Controls drawn by ourselves: they take plain values and say in signals what was done to them."""
