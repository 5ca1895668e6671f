"""What not knowing earns is measured as it is said to be."""

import pytest

from twoshaft_grader.notebooks import ignorance

MODULE = "03-threaded-joints"


@pytest.fixture(scope="module")
def found(module):
    measured = ignorance.measure(module.solution, module.unit, 3)
    return {one.how: one for one in measured}


def test_every_way_is_measured_once(found):
    assert len(found) == 10


def test_the_proof_names_who_passes_without_knowing(module, monkeypatch):
    lucky = ignorance.Ignorance("the longest", earned=0.01, passed=0.4, right=0.5)
    careless = ignorance.Ignorance(ignorance.HANDED_DOWN, earned=0.01, passed=0.1, right=0.11)
    harmless = ignorance.Ignorance("the first", earned=0.5, passed=0.05, right=0.9)
    monkeypatch.setattr(ignorance, "measure", lambda *_: [lucky, careless, harmless])
    monkeypatch.setattr(ignorance, "SAFE_MUST_PASS", {module.solution.module})
    said = list(ignorance.must_pass_findings(module.solution, module.unit))
    assert [one.split(" passes ")[0] for one in said] == ["the longest", "the list handed down"]
    assert not harmless.holds and harmless.holds_must_pass
    monkeypatch.setattr(ignorance, "SAFE_MUST_PASS", set())
    assert list(ignorance.must_pass_findings(module.solution, module.unit)) == []


def test_nothing_ticked_earns_nothing(found):
    nothing = found["tick nothing"]
    assert nothing.earned == nothing.passed == nothing.right == 0 and nothing.holds


def test_ones_own_full_sheet_carried_over_earns_everything(module):
    own = ignorance._Sheet.of(module.solution, module.unit, "somebody", 1)
    sheet = own.filled(ignorance._copied(own))
    mark = ignorance.mark_sheet(sheet, own.issued, module.solution, unit=module.unit)
    assert mark.points == mark.maximum


def test_the_longest_option_is_ticked(module):
    own = ignorance._Sheet.of(module.solution, module.unit, "somebody", 1)
    way = dict(ignorance._ways(ignorance.Counter(), [own]))["the longest"]
    ticked = 0
    for name in own.clean.references:
        picks, answer = own.picks(name), way(own, name)
        if len(picks) == 1 and not picks[0].several:
            options = picks[0].options
            assert len(options[answer]) == max(map(len, options.values()))
            ticked += 1
        else:
            assert (answer is not None) == bool(picks)
    assert ticked
