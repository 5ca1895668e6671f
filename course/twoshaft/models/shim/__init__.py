"""Shims: the stack with its signs, what its measurement is worth, and which shim to take."""

from twoshaft.models.shim.choice import Choice, Reach, choose, reach
from twoshaft.models.shim.stack import Stack, Term, shim_from_float, shim_sign, term_sign
from twoshaft.models.shim.support import (
    choose_for,
    reach_of,
    shim_range,
    stack_budget,
    target_interference,
)
from twoshaft.models.shim.uncertainty import (
    Budget,
    Measured,
    Source,
    normal,
    propagate,
    rectangular,
    repeated,
    resolution,
)

__all__ = [
    "Budget",
    "Choice",
    "Measured",
    "Reach",
    "Source",
    "Stack",
    "Term",
    "choose",
    "choose_for",
    "normal",
    "propagate",
    "reach",
    "reach_of",
    "rectangular",
    "repeated",
    "resolution",
    "shim_from_float",
    "shim_range",
    "shim_sign",
    "stack_budget",
    "target_interference",
    "term_sign",
]
