"""The sealant film: laid by strokes, closed to a gap, then searched for a way through."""

from twoshaft.models.film.closing import (
    bead_to_film,
    ready_for_oil,
    squeeze_gap_disc,
    squeeze_gap_strip,
    squeeze_time_disc,
    squeeze_time_strip,
)
from twoshaft.models.film.land import Kind, Land
from twoshaft.models.film.laying import Film, Stroke, good_strokes
from twoshaft.models.film.leaks import Leak, find_leaks
from twoshaft.models.film.seal import Pocket, Seal, State, close
from twoshaft.models.film.spreading import spread

__all__ = [
    "Film",
    "Kind",
    "Land",
    "Leak",
    "Pocket",
    "Seal",
    "State",
    "Stroke",
    "bead_to_film",
    "close",
    "find_leaks",
    "good_strokes",
    "ready_for_oil",
    "spread",
    "squeeze_gap_disc",
    "squeeze_gap_strip",
    "squeeze_time_disc",
    "squeeze_time_strip",
]
