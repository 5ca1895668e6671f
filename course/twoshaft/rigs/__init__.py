"""Interactive simulators, one for each model."""
