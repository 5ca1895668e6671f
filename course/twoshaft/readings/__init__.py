"""An apprentice's own readings, the same at every run."""
