"""Compare answers with a reference and say why."""
