"""Pages of the records: templates filled in, everything that was typed escaped."""

from __future__ import annotations

import jinja2

_ENVIRONMENT = jinja2.Environment(
    loader=jinja2.PackageLoader("twoshaft_grader.records"),
    autoescape=True,
    trim_blocks=True,
    lstrip_blocks=True,
    undefined=jinja2.StrictUndefined,
)


def fill(name: str, **facts: object) -> str:
    """Fill in a template of this package."""
    return _ENVIRONMENT.get_template(name).render(**facts)
