"""Inspect and decide: wear worked out, a reading held against its limit, damage told apart.

* :func:`guard_band`, :func:`verdict`, :func:`chance_beyond` and :func:`shares_wrong` decide by
  ISO 14253-1 and JCGM 106; :func:`break_even` and :func:`ways_cost` weigh what errors cost.
* :func:`groove_depth`, :func:`needle_play` and :func:`float_with` work out what was measured.
* :func:`race_damage` and :func:`flank_damage` tell damage apart by its marks, which
  :func:`marks_of` lays; :func:`felt` says what a hand and a lens find.
* :func:`worn_of` lays a worn part of the shift beside a scale, :func:`judged` says whether it goes
  in again by what is read on it, :func:`becomes` what is done, :func:`found_on` what is read.
* :func:`load_repairs` gives the repair of a thread as an order of work.
"""

from twoshaft.models.inspect.audit import audit_inspect
from twoshaft.models.inspect.damage import (
    FLANK,
    NAMES,
    RACE,
    Mark,
    Shape,
    felt,
    flank_damage,
    marks_of,
    race_damage,
)
from twoshaft.models.inspect.decide import (
    AGAIN,
    BAD,
    GOOD,
    break_even,
    chance_beyond,
    guard_band,
    mean_uncertainty,
    shares_wrong,
    verdict,
    ways_cost,
)
from twoshaft.models.inspect.repairs import load_repairs
from twoshaft.models.inspect.wear import float_with, groove_depth, needle_play
from twoshaft.models.inspect.worn import LIMITS_MM as WORN_LIMITS_MM
from twoshaft.models.inspect.worn import WEAR_MM, WEARS, Worn, becomes, found_on, judged, worn_of

__all__ = [
    "AGAIN",
    "BAD",
    "FLANK",
    "GOOD",
    "NAMES",
    "RACE",
    "WEARS",
    "WEAR_MM",
    "WORN_LIMITS_MM",
    "Mark",
    "Shape",
    "Worn",
    "audit_inspect",
    "becomes",
    "break_even",
    "chance_beyond",
    "felt",
    "flank_damage",
    "float_with",
    "found_on",
    "groove_depth",
    "guard_band",
    "judged",
    "load_repairs",
    "marks_of",
    "mean_uncertainty",
    "needle_play",
    "race_damage",
    "shares_wrong",
    "verdict",
    "ways_cost",
    "worn_of",
]
