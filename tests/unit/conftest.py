"""What unit tests share: Tarnbeck B5, what learners are given, hands at the simulated bench.

A file of a module's readings names its ``LEARNERS`` and has ``given_to(unit, learner)``; ``drawn`` is
what each of them is given, by learner.
"""

import pytest

from twoshaft.models.wholebuild import TakeOut
from twoshaft.units import load_unit


@pytest.hookimpl(tryfirst=True)  # before tests are picked by their marks
def pytest_collection_modifyitems(items):
    """What asks for the readings of many learners is slow, whichever test draws them first."""
    for item in items:
        if {"drawn", "lots"}.intersection(item.fixturenames):
            item.add_marker(pytest.mark.slow)


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


@pytest.fixture(scope="module")
def drawn(request, unit):
    file = request.module
    return {learner: file.given_to(unit, learner) for learner in file.LEARNERS}


@pytest.fixture(scope="session")
def play():
    """Return what plays decisions at a simulated bench: the messages that hands would send."""

    def send(rig, decisions):
        for one in decisions:
            if isinstance(one, TakeOut):
                rig.hear({"type": "out", "step": one.step})
                continue
            rig.hear({"type": "take", "step": one.step})
            answers = {name: rig.fields[name].store(value) for name, value in one.choices.items()}
            for late in (False, True):  # what a check shows is weighed after it is made
                if late:
                    rig.hear({"type": "do"})
                for name, value in answers.items():
                    if name.startswith("verdict-") is late:
                        rig.hear({"type": "set", "name": name, "value": value})

    return send
