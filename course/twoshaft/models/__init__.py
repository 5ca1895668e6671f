"""Pure models of the work: no widgets, no marking, no files."""
