"""The unit file: what stands on the bench, as data."""
