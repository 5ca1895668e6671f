"""One figure for each idea."""
