"""Twoshaft: learn to rebuild two-shaft manual transaxles."""

import sys

# An optional helper of jsonschema, which nbformat and JupyterLab load: on import it compiles a
# grammar of international web addresses for 1.6 s, and nothing here checks such an address. None
# says "not installed", as jsonschema allows; set before anything loads it.
sys.modules.setdefault("rfc3987_syntax", None)  # type: ignore[arg-type]

__version__ = "0.1.0"

DEFAULT_UNIT = "tarnbeck-b5"
"""Id of the shipped unit that stands on the bench where nobody names another."""
