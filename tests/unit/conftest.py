"""What readings tests share: Tarnbeck B5, and what a file's learners are given.

A file of a module's readings names its ``LEARNERS`` and has ``given_to(unit, learner)``; ``drawn`` is
what each of them is given, by learner.
"""

import pytest

from twoshaft.units import load_unit


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


@pytest.fixture(scope="module")
def drawn(request, unit):
    file = request.module
    return {learner: file.given_to(unit, learner) for learner in file.LEARNERS}
