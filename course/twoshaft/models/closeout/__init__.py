"""Close out: the right oil and its level, the breather, the leak test, and what a road test tells.

* :func:`hot_grade` and ``WINTER_C`` are the grades of SAE J306; :func:`litres_to_fill`,
  :func:`kilograms_to_fill` and :func:`level_error` say how much goes in and where it stands.
* :func:`slide` says how far a ring slides until both sides turn alike.
* :func:`pressure_in` is the pressure behind a blocked breather; :func:`pressure_lost`,
  :func:`leak_rate` and :func:`uncertainty_of_loss` work out a leak test.
* :func:`causes_left` and :func:`tell_apart` go from road tests to what is looked at first.
"""

from twoshaft.models.closeout.air import (
    leak_rate,
    pressure_in,
    pressure_lost,
    pressure_per_kelvin,
    uncertainty_of_loss,
)
from twoshaft.models.closeout.audit import GUARD, OUTSIDE_MBAR, audit_close_out
from twoshaft.models.closeout.oil import (
    HOT_GRADES,
    WINTER_C,
    HotGrade,
    hot_grade,
    kilograms_to_fill,
    level_error,
    litres_to_fill,
)
from twoshaft.models.closeout.ring import NEVER, slide
from twoshaft.models.closeout.road import Road, causes_left, load_road, tell_apart

__all__ = [
    "GUARD",
    "HOT_GRADES",
    "NEVER",
    "OUTSIDE_MBAR",
    "WINTER_C",
    "HotGrade",
    "Road",
    "audit_close_out",
    "causes_left",
    "hot_grade",
    "kilograms_to_fill",
    "leak_rate",
    "level_error",
    "litres_to_fill",
    "load_road",
    "pressure_in",
    "pressure_lost",
    "pressure_per_kelvin",
    "slide",
    "tell_apart",
    "uncertainty_of_loss",
]
