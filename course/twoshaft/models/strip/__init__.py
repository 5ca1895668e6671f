"""Taking a unit apart: the build's rules read backwards, what is read before it is lost, its oil.

* :func:`strip_unit` gives the steps of taking apart as a unit of its own, so that every model of
  the order of work serves it too.
* :func:`reading_state`, :func:`covered_by` and :func:`lost_with` say when a reading can be taken.
* :func:`settling_time`, :func:`still_floating` and :func:`litres_missing` read the oil.
* :func:`backlash_at` and :func:`shim_from_float` work out what was read.
"""

from twoshaft.models.strip.audit import audit_strip
from twoshaft.models.strip.backwards import strip_task, strip_unit
from twoshaft.models.strip.lost import (
    COVERED,
    LOST,
    NOW,
    covered_by,
    lost_with,
    reading_state,
)
from twoshaft.models.strip.oil import (
    litres_at,
    litres_missing,
    settling_time,
    still_floating,
    viscosity,
)
from twoshaft.models.strip.play import backlash_at, shim_from_float

__all__ = [
    "COVERED",
    "LOST",
    "NOW",
    "audit_strip",
    "backlash_at",
    "covered_by",
    "litres_at",
    "litres_missing",
    "lost_with",
    "reading_state",
    "settling_time",
    "shim_from_float",
    "still_floating",
    "strip_task",
    "strip_unit",
    "viscosity",
]
