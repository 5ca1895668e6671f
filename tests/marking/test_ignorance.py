"""What not knowing earns is measured as it is said to be."""

import pytest

from twoshaft_grader.marking import mark_sheet
from twoshaft_grader.notebooks import ignorance
from twoshaft_grader.notebooks.sheets import Sheet, Sheets

MODULE = "03-threaded-joints"


@pytest.fixture(scope="module")
def own(module):
    return Sheet.of(module.solution, module.unit, "somebody")


@pytest.fixture(scope="module")
def found(module):
    measured = ignorance.measure(Sheets(module.solution, module.unit), 3)
    return {one.how: one for one in measured}


def test_every_way_is_measured_once(found):
    assert len(found) == 10


@pytest.fixture
def said(module, monkeypatch):
    """What the proof says of what was measured."""

    def say(measured):
        monkeypatch.setattr(ignorance, "measure", lambda _: measured)
        return list(ignorance.findings(Sheets(module.solution, module.unit)))

    return say


def test_the_proof_names_who_passes_without_knowing(said):
    lucky = ignorance.Ignorance("the longest", earned=0.01, passed=0.4, right=0.5)
    careless = ignorance.Ignorance(ignorance.HANDED_DOWN, earned=0.01, passed=0.1, right=0.11)
    harmless = ignorance.Ignorance("the first", earned=0.01, passed=0.05, right=0.9)
    sentences = said([lucky, careless, harmless])
    assert [one.split(" passes ")[0] for one in sentences] == [
        "the longest",
        "the list handed down",
    ]
    assert harmless.holds


def test_the_proof_names_who_earns_points_without_knowing(said):
    rich = ignorance.Ignorance("the first", earned=0.05, passed=0.0, right=0.5)
    copied = ignorance.Ignorance(ignorance.COPIED, earned=0.15, passed=0.0, right=0.0)
    poor = [ignorance.Ignorance("the first", earned=0.049, passed=0.0, right=0.0),
            ignorance.Ignorance(ignorance.HANDED_DOWN, earned=0.099, passed=0.0, right=0.0)]  # fmt: skip
    assert said([rich, copied, *poor]) == [
        "the first earns 5.0 % of the points without knowing the work; it must stay below 5 %.",
        "a friend's sheet earns 15.0 % of the points without knowing the work; it must stay below 15 %.",
    ]


def test_a_mark_that_is_not_explained_is_the_same_mark(own, module):
    wrong = own.filled(
        own.right | {name: "17" for name, one in own.clean.fields.items() if one.kind == "number"}
    )
    told, bare = (
        mark_sheet(wrong, own.issued, module.solution, unit=module.unit, explain=explain)
        for explain in (True, False)
    )
    assert 0 < told.points < told.maximum
    assert [(f.share, f.passed) for f in told.fields] == [(f.share, f.passed) for f in bare.fields]
    assert told.points == bare.points and told.outcomes == bare.outcomes


def test_nothing_ticked_earns_nothing(found):
    nothing = found["tick nothing"]
    assert nothing.earned == nothing.passed == nothing.right == 0 and nothing.holds


def test_ones_own_full_sheet_carried_over_earns_everything(own, module):
    copied = ignorance._copied(own)
    sheet = own.filled({name: copied(own, name) for name in own.clean.references})
    mark = mark_sheet(sheet, own.issued, module.solution, unit=module.unit)
    assert mark.points == mark.maximum


def test_the_longest_option_is_ticked(own):
    way = dict(ignorance._ways(ignorance.Counter(), [own]))["the longest"]
    ticked = 0
    for name in own.clean.references:
        picks, answer = own.picks(name), way(own, name)
        if len(picks) == 1 and not picks[0].several:
            options = picks[0].options
            if isinstance(answer, list):  # of a picture with one line: the line, then the letter
                answer = answer[0].split("=")[1]
            assert len(options[answer]) == max(map(len, options.values()))
            ticked += 1
        else:
            assert (answer is not None) == bool(picks)
    assert ticked
