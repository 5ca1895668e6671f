"""A ball pulls its rail home from as far as its notch reaches, and no further."""

import numpy as np
import pytest

from twoshaft.models.shift import mechanism
from twoshaft.models.shift.mechanism import _home
from twoshaft.units import load_unit


@pytest.fixture(scope="module")
def rail():
    shift = load_unit("tarnbeck-b5").shift
    return next(body for body in shift.passive if body.id == "rail-third-fourth")


@pytest.mark.parametrize(
    ("snap_mm", "at_mm", "home_mm"),
    [(2.0, 1.5, 0.0), (2.0, 2.0, 0.0), (2.0, 3.0, 3.0), (2.0, -5.5, -7.0), (3.5, 4.0, 7.0)],
)
def test_home_of_a_place(rail, snap_mm, at_mm, home_mm):
    body = rail.model_copy(update={"snap_mm": snap_mm})
    place = np.arange(-7, 7.01, 0.5)
    at = int(np.flatnonzero(place == at_mm)[0])
    assert place[_home(body, place, at)] == home_mm


def test_a_rail_let_go_between_notches_goes_home():
    """With the finger drawn back to the middle the rail is in a notch again."""
    machine = mechanism(load_unit("tarnbeck-b5").shift, 1.0)
    number = [body.id for body in machine.shift.passive].index("rail-third-fourth")
    places = machine.places_mm[number]
    (state,) = machine.starts()
    seen, queue = {state}, [state]
    middle = int(np.argmin(abs(machine.turn_mm)))
    while queue:
        for after in machine.next_states(queue.pop()):
            if after not in seen and abs(machine.travel_mm[after[0]]) < 0.1:
                seen.add(after)
                queue.append(after)
    free = {places[state[2 + number]] for state in seen if state[1] == middle}
    assert free <= {-7.0, 0.0, 7.0}
