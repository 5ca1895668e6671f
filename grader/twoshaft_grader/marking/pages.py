"""Templates of what marking shows; everything a learner typed is escaped."""

from __future__ import annotations

from typing import Any

import jinja2

_ENVIRONMENT = jinja2.Environment(
    loader=jinja2.PackageLoader("twoshaft_grader.marking"),
    autoescape=True,
    trim_blocks=True,
    lstrip_blocks=True,
    undefined=jinja2.StrictUndefined,
)


def fill(template: str, **values: Any) -> str:
    """Return a template filled with values."""
    return _ENVIRONMENT.get_template(template).render(**values)
