"""The sealant film: laid by strokes, closed to a gap, then searched for a way through."""

from twoshaft.models.film.choosing import Bar, bars
from twoshaft.models.film.closing import (
    bead_to_film,
    ready_for_oil,
    squeeze_time_strip,
)
from twoshaft.models.film.edge import SHOWN_MM, SeenEdge, SeenEdgeLike, edge_faults
from twoshaft.models.film.holes import leaking_holes
from twoshaft.models.film.land import Kind, Land
from twoshaft.models.film.laying import Film, Stroke, good_strokes
from twoshaft.models.film.leaks import Leak, find_leaks
from twoshaft.models.film.passes import (
    BESIDE_HOLE_MM,
    Hand,
    Pass,
    Side,
    bead_lines_mm,
    line_mm,
    nearest_stretch,
    stroke,
)
from twoshaft.models.film.seal import Pocket, Seal, State, close
from twoshaft.models.film.sliding import slide
from twoshaft.models.film.spreading import spread
from twoshaft.models.film.surplus import half_round, half_round_radius, surplus
from twoshaft.models.film.work import Closed, Pace, Spot, Work

__all__ = [
    "BESIDE_HOLE_MM",
    "SHOWN_MM",
    "Bar",
    "Closed",
    "Film",
    "Hand",
    "Kind",
    "Land",
    "Leak",
    "Pace",
    "Pass",
    "Pocket",
    "Seal",
    "SeenEdge",
    "SeenEdgeLike",
    "Side",
    "Spot",
    "State",
    "Stroke",
    "Work",
    "bars",
    "bead_lines_mm",
    "bead_to_film",
    "close",
    "edge_faults",
    "find_leaks",
    "good_strokes",
    "half_round",
    "half_round_radius",
    "leaking_holes",
    "line_mm",
    "nearest_stretch",
    "ready_for_oil",
    "slide",
    "spread",
    "squeeze_time_strip",
    "stroke",
    "surplus",
]
