"""A case on a hoist: what is wrong with it, and a picture that shows it and does not say it."""

import re
from dataclasses import replace

import pytest

from twoshaft.models.lifting import Hung, hung_faults
from twoshaft.plots.hung_case import HungPicture
from twoshaft.readings import draw
from twoshaft.units import load_unit

GOOD = Hung(mass_kg=30, mark_kg=50, broken=0, aside_cm=1, person=False)


@pytest.mark.parametrize(
    ("other", "faults"),
    [({"mark_kg": 30}, ()), ({"mark_kg": 29}, ("sling",)), ({"broken": 1}, ("sling",)),
     ({"aside_cm": -2}, ()), ({"aside_cm": 9}, ("place",)), ({"person": True}, ("place",)),
     ({"person": True, "broken": 3}, ("sling", "place"))],
)  # fmt: skip
def test_sling_hook_and_floor(other, faults):
    assert hung_faults(replace(GOOD, **other)) == faults


def test_of_six_cases_one_is_right_one_wrong_in_each_way_and_none_says_so():
    unit, letters = load_unit("tarnbeck-b5"), set()
    for n in range(40):
        acts = draw("course-and-safety", unit, salt="s", learner=f"a{n}", attempt=1).acts
        found = [hung_faults(one) for one in acts.hung]
        assert sorted(map(len, found)) == [0, 1, 1, 2, 2, 2]
        assert {line.id for line in acts.asked} == {"lift", "sling", "place"}
        letters.add(tuple(found.index(one) for one in ((), ("sling",), ("place",))))
        shown = [HungPicture(one) for one in acts.hung]
        assert len({one.svg for one in shown}) == len({one.felt for one in shown}) == 6
        for one in shown:
            assert not re.search("wrong|correct|goes on|danger|safe|faulty", one.felt)
            assert len(one.svg) < 6000
    assert len(letters) > 20
